/* Worked examples printed as a line of figures (nds_misc.csv), and those of beams.json and columns.json that take more
 * than one member: demands, spans by each limit, joists under snow, nails of a post. */
#include "published.h"

#include <cjson/cJSON.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "sawbill/beam.h"
#include "sawbill/joist.h"
#include "sawbill/wood.h"

/* A column of one piece: its slenderness is 8 ft over 5-1/2 in and its kin; E as it stands in the example's edition
 * (0.3 E there is 0.822 Emin' now), so Emin is 0.3/0.822 of E. */
static double old_emin(double e)
{
    return 0.3 / 0.822 * e;
}

static double cp_of(double slender, double emin, double fc_star)
{
    return wood_cp(slender, emin, fc_star, 0.8);
}

static double fce(double slender, double emin)
{
    return 0.822 * emin / (slender * slender);
}

/* 6x8 SPF (South) No.1: 5-1/2 in, 96 in long, Fc 625, E 1,200,000; A 41.25 in2. */
static double post_cp(double cd)
{
    return cp_of(96 / 5.5, old_emin(1200000), 625 * cd);
}
/* 3-1/2 x 7-1/4, Fc 1,000, E 1,300,000. */
static double gere_cp(double length_in)
{
    return cp_of(length_in / 3.5, old_emin(1300000), 1000);
}
static double gere_kips(double length_in)
{
    return 1000 * gere_cp(length_in) * 3.5 * 7.25 / 1000;
}
/* 4x8, 8 ft, 2,000 lb at midspan. */
static double midspan_moment(void)
{
    static const double dead[LOAD_SOURCES] = {1};
    struct beam_load load = {.point = true, .from_in = 48, .to_in = 48, .amount = {{2000}}};
    return beam_solve(96, &load, 1, dead).moment.value;
}
static double midspan_sag(double pounds, double ei)
{
    static const double dead[LOAD_SOURCES] = {1};
    struct beam_load load = {.point = true, .from_in = 48, .to_in = 48, .amount = {{pounds}}};
    return beam_solve(96, &load, 1, dead).sag.value / ei;
}
static const struct design_row four_by_eight = {
    .table = "4A", .species = "example", .grade = "No.1", .fb = 1000, .fv = 180, .fc = 1, .e = 1700000, .emin = 1};
static struct wood_piece piece_4x8(void)
{
    return (struct wood_piece){&four_by_eight, WOOD_SAWN, 3.5, 7.25, 1};
}
static double fb_4x8(void)
{
    struct wood_piece piece = piece_4x8();
    return wood_bending(&piece, 1.25, 1, 0, LE_SPAN_POINT_MID_BRACED, 96).fb;
}
static double fv_4x8(void)
{
    struct wood_factors factors = {.cd = 1.25, .cr = 1, .cl = 1, .cp = 1, .cb = 1, .cf = {1, 1, 1}};
    return wood_adjust(&four_by_eight, &factors).fv;
}
static const struct design_row glulam_24f = {
    .table = "5A", .species = "Southern Pine", .grade = "24F-1.8E", .fb = 2400, .emin = 950000};
static double fb_glulam(void)
{
    struct wood_piece piece = {&glulam_24f, WOOD_GLULAM, 5, 30.25, 1};
    return wood_bending(&piece, 1.15, 1, 0, LE_SPAN_UNIFORM, 32 * 12).fb;
}

struct figure {
    const char *key, *name;
    double here;
};

/* The number after a name in a line of figures; NULL: not there. */
static const char *number_after(struct arena *arena, const char *line, const char *name)
{
    const char *at = *name ? strstr(line, name) : line;
    if (!at)
        return NULL;
    at += strlen(name);
    while (*at == ' ' || *at == '=')
        at++;
    size_t length = strspn(at, "0123456789.,");
    char *text = arena_strdup(arena, at);
    text[length] = '\0';
    char *out = text;
    for (const char *c = text; *c; c++)
        if (*c != ',')
            *out++ = *c;
    *out = '\0';
    return length ? text : NULL;
}

/* What is searched for, ", P ", as it is shown: "P". */
static const char *shown(struct arena *arena, const char *name)
{
    name += strspn(name, ", ");
    return *name ? arena_printf(arena, "%.*s", (int)strcspn(name, " "), name) : "value";
}

static void run_lines(struct published *p)
{
    const struct sheet *sheet = published_sheet(p, "code", "nds_misc.csv");
    if (!sheet)
        return;
    const struct wood_piece beam = piece_4x8();
    const struct figure figures[] = {
        {"X1", "FcE", fce(96 / 5.5, old_emin(1200000))},
        {"X1", "CP", post_cp(1.15)},
        {"X1", "F'c", 625 * 1.15 * post_cp(1.15)},
        {"X1", ", P ", 625 * 1.15 * post_cp(1.15) * 41.25},
        {"X2", "CP", post_cp(1)},
        {"X2", "F'c", 625 * post_cp(1)},
        {"X3 3.5 x 7.25 column, 6 ft", "CP", gere_cp(72)},
        {"X3 3.5 x 7.25 column, 6 ft", ", P ", gere_kips(72)},
        {"X3 3.5 x 7.25 column, 8 ft", "CP", gere_cp(96)},
        {"X3 3.5 x 7.25 column, 8 ft", ", P ", gere_kips(96)},
        {"X3 3.5 x 7.25 column, 10 ft", "CP", gere_cp(120)},
        {"X3 3.5 x 7.25 column, 10 ft", ", P ", gere_kips(120)},
        {"X4", "Fb'", fb_4x8()},
        {"X4", "Fv'", fv_4x8()},
        {"X4", "fb", midspan_moment() / wood_modulus(&beam)},
        {"X4", "fv", 1.5 * 1000 / wood_area(&beam)},
        {"X4", "deflection", midspan_sag(1600, 1700000 * wood_inertia(&beam))},
        {"X5", "le", wood_le(LE_SPAN_POINT_MID_BRACED, 48, 7.25)},
        {"X5", "RB", wood_rb(wood_le(LE_SPAN_POINT_MID_BRACED, 48, 7.25), 7.25, 3.5)},
        {"X6", "RB", wood_rb(1.68 * 48, 9.25, 3.5)}, /* 1.68: the table's row for third points, not held here */
        {"X8", "", fce(120 / 5.5, 440000)},
        {"X9", "CP", cp_of(144 / 5.5, 580000 * 1.76 * 0.85, 1600 * 2.40 * 0.90 * 0.8)}, /* factored values, LRFD */
        {"X10", "CP", cp_of(90 / 5.5, 470000 * 1.76 * 0.85, 850 * 0.91 * 2.40 * 0.90 * 0.8)},
        {"X12", "F'b", fb_glulam()},
    };
    struct tally *tally = published_tally(p, "examples printed as lines of figures");
    tally->why_left_out = "rules in words (those with numbers are among the factors), a wet beam, LRFD of a joist";
    for (size_t row = 1; row < sheet->count; row++) {
        const char *key = published_cell(sheet, row, "key"), *line = published_cell(sheet, row, "published");
        size_t run = 0;
        for (size_t i = 0; i < sizeof figures / sizeof *figures; i++) {
            const char *printed = NULL;
            size_t length = strlen(figures[i].key);
            if (!strncmp(key, figures[i].key, length) && (key[length] == '\0' || key[length] == ' '))
                printed = number_after(p->arena, line, figures[i].name);
            if (!printed)
                continue;
            run++;
            published_count(p, tally, published_from_memory(sheet, row),
                            arena_printf(p->arena, "%s: %s", key, shown(p->arena, figures[i].name)),
                            published_prints(printed, figures[i].here),
                            arena_printf(p->arena, "printed %s, %g here", printed, figures[i].here));
        }
        tally->left_out += run == 0;
    }
}

/* Examples of two more kinds, each figure by name. */
static const double d_alone[LOAD_SOURCES] = {1}, d_and_l[LOAD_SOURCES] = {1, 1};
static const struct combination plain = {"D+L", {1, 1}, 1.0}, with_snow = {"D+S", {1, 0, 0, 1}, 1.15};

static double b05(const char *what)
{
    /* 2x8 at 16 in, 30 + 10 psf; Fb 975, E 1.5e6: L = sqrt(8 Fb' S/w), (384 E I/(5 w 360))^(1/3) */
    static const struct design_row row = {
        .table = "4A", .species = "example", .grade = "No.2", .fb = 975, .fv = 75, .e = 1500000, .emin = 1};
    struct joist_section joist = {.row = &row, .width_in = 1.5, .depth_in = 7.25, .cr = joist_cr(3, 16)};
    struct loads per_inch = {{10 * 16 / 144.0, 30 * 16 / 144.0}};
    bool deflection = !strcmp(what, "span_deflection_ft");
    struct wood_piece one = {&row, WOOD_SAWN, 1.5, 7.25, 1};
    struct joist_rating at_1 = joist_rate(&joist, 1, &per_inch, &plain);
    if (!strcmp(what, "S_in3"))
        return wood_modulus(&one);
    if (!strcmp(what, "I_in4"))
        return wood_inertia(&one);
    if (!strcmp(what, "Fb_adj_psi"))
        return at_1.fb_psi;
    if (strcmp(what, "span_bending_ft") != 0 && !deflection)
        return NAN; /* shear stress factor and bearing of an older edition */
    double low = 1, high = 600;
    for (int i = 0; i < 60; i++) {
        double span = (low + high) / 2;
        struct joist_rating r = joist_rate(&joist, span, &per_inch, &plain);
        bool holds = deflection ? r.live_in <= span / 360 : r.bending_psi <= r.fb_psi;
        *(holds ? &low : &high) = span;
    }
    return low / 12;
}

static double b10(const char *what)
{
    double w = 120 * 16 / 144.0; /* psf at 16 in: lb per inch */
    struct beam_load load = {.to_in = 126, .amount = {{w}}};
    double moment = beam_solve(126, &load, 1, d_alone).moment.value;
    static const struct design_row row = {.table = "4A", .species = "example", .grade = "No.2"};
    struct wood_piece ten = {&row, WOOD_SAWN, 1.5, 9.25, 1};
    return !strcmp(what, "M_inlb")                   ? moment
           : !strcmp(what, "S_required_in3")         ? moment / 1350
           : !strcmp(what, "S_of_selected_2x10_in3") ? wood_modulus(&ten)
                                                     : NAN;
}

static double b11(const char *what)
{
    struct beam_load load = {.to_in = 180, .amount = {{15 * 8 / 12.0, 40 * 8 / 12.0}}};
    struct beam_result result = beam_solve(180, &load, 1, d_and_l);
    return !strcmp(what, "V_max_lb")     ? fabs(result.shear.value)
           : !strcmp(what, "M_max_ftlb") ? result.moment.value / 12
           : !strcmp(what, "w_total_plf")
               ? (beam_load_total(&load).of[LOAD_DEAD] + beam_load_total(&load).of[LOAD_LIVE]) / 15
               : NAN;
}

static double b12(const char *what)
{
    static const struct design_row row = {.table = "4A",
                                          .species = "Douglas Fir-Larch",
                                          .grade = "No.2",
                                          .fb = 900,
                                          .fv = 180,
                                          .e = 1600000,
                                          .emin = 580000};
    struct joist_section joist = {.row = &row, .width_in = 1.5, .depth_in = 7.25, .cr = joist_cr(3, 16)};
    double slope = 33.7 * acos(-1) / 180, along = cos(slope);
    /* the example takes both loads by the rafter's length, and the part of them across it */
    struct loads per_inch = {{10 * 16 / 144.0 * along, 0, 0, 20 * 16 / 144.0 * along}};
    struct joist_rating r = joist_rate(&joist, 14.4 * 12, &per_inch, &with_snow);
    if (!strcmp(what, "bending_ratio_DS"))
        return r.bending_psi / r.fb_psi;
    return !strcmp(what, "deflection_DS_in") ? r.live_in + (r.total_in - r.live_in) / r.creep : NAN;
}

static double c09(const char *what)
{
    return !strcmp(what, "reduction_fraction") ? 1 - wood_kf_nailed() : NAN;
}

static double c10(const char *what)
{
    return !strcmp(what, "more_than_one_row") ? wood_nailing(3, 1.5, 5.5, 0.207).rows > 1 : NAN;
}

static double b13(const char *what)
{
    const char *length = strchr(what, '_'); /* "Cb_1.5" */
    return length ? wood_cb(strtod(length + 1, NULL), 12) : NAN;
}

double published_special(const char *id, const char *what)
{
    static const struct {
        const char *id;
        double (*of)(const char *what);
    } special[] = {{"B05", b05}, {"B10", b10}, {"B11", b11}, {"B12", b12}, {"B13", b13}, {"C09", c09}, {"C10", c10}};
    for (size_t i = 0; i < sizeof special / sizeof *special; i++)
        if (!strcmp(id, special[i].id))
            return special[i].of(what);
    return NAN;
}

void published_misc(struct published *p)
{
    run_lines(p);
}
