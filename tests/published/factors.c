/* Factors of the NDS and the values and sizes that the catalogs and the library hold, against the rows of a folder. */
#include "published.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "sawbill/joist.h"
#include "sawbill/shoring.h"
#include "sawbill/wood.h"

#include "size/size.h"

/* One row of factors.csv: what it is for, in words, and what it prints. */
struct factor {
    const char *name, *of, *to, *rule;
    double printed;
};

static bool says(const char *text, const char *part)
{
    return strstr(text, part) != NULL;
}

static const struct design_row sawn = {
    .table = "4A", .species = "any", .grade = "No.2", .fb = 900, .emin = 580000, .fc = 1350};

static double duration(const struct factor *f)
{
    static const char *const first_word[] = {"permanent", "ten years", "two months", "seven days"};
    for (int i = 0; i < 4; i++)
        if (says(f->of, first_word[i]))
            return wood_cd((enum wood_duration)i);
    return NAN; /* wind, earthquake, impact: out of what is sized here */
}

/* The widest of "2-4 in wide", "14 in and wider". */
static double nominal_width(const char *text)
{
    static const struct {
        const char *text;
        double nominal;
    } widths[] = {{"2-4 in wide", 4}, {"2-3 in wide", 3},      {"5-6 in wide", 6}, {"14 in and wider", 14},
                  {"12 in wide", 12}, {"10 in and wider", 10}, {"10 in wide", 10}, {"8 in wide", 8},
                  {"6 in wide", 6},   {"5 in wide", 5},        {"4 in wide", 4}};
    for (size_t i = 0; i < sizeof widths / sizeof *widths; i++)
        if (says(text, widths[i].text))
            return widths[i].nominal;
    return NAN;
}

static double dressed(double nominal)
{
    return nominal < 7 ? nominal - 0.5 : nominal - 0.75; /* PS 20, dry */
}

/* Every factor that the row is for must be the one printed: the first that is not, else that. */
static double size_factor(const struct factor *f)
{
    struct design_row row = sawn;
    double nominal = nominal_width(f->of);
    row.grade = says(f->of, "Stud") ? "Stud" : says(f->of, "Construction") ? "Construction" : "No.2";
    if (says(f->of, "Utility"))
        row.grade = "Utility";
    if (says(f->of, "Southern Pine")) {
        row.table = "4B";
        nominal = 12;
    }
    if (isnan(nominal))
        return NAN;
    struct wood_size_factor cf = wood_cf(&row, says(f->of, "4 in thick") ? 3.5 : 1.5, dressed(nominal));
    const struct {
        const char *stress;
        double value;
    } each[] = {{"Fb", cf.fb}, {"Ft", cf.ft}, {"Fc", cf.fc}};
    double value = NAN;
    for (size_t i = 0; i < sizeof each / sizeof *each; i++)
        if (says(f->to, each[i].stress) && (isnan(value) || value == f->printed))
            value = each[i].value;
    return value;
}

static double flat_use(const struct factor *f)
{
    double nominal = nominal_width(f->of);
    return says(f->of, "4 in thick") || isnan(nominal) ? NAN : wood_cfu(dressed(nominal));
}

static double repetitive(const struct factor *f)
{
    struct wood_piece lvl = {.row = &sawn, .wood = WOOD_LVL, .ply_in = 1.75, .depth_in = 9.25, .plies = 3};
    return says(f->of, "SCL") ? wood_cr(&lvl, 1.15) : joist_cr(3, 24);
}

/* At 5 and at 10 depths: both lengths of the rule, which the row prints as coefficients. */
static double effective_length(const struct factor *f)
{
    static const struct {
        const char *of;
        enum wood_loading loading;
    } loadings[] = {{"cantilever, uniform load", LE_CANTILEVER_UNIFORM},
                    {"cantilever, point load at free end", LE_CANTILEVER_POINT_END},
                    {"single span, uniform load", LE_SPAN_UNIFORM},
                    {"point load at centre, no brace", LE_SPAN_POINT_MID},
                    {"point load at centre, braced", LE_SPAN_POINT_MID_BRACED},
                    {"equal end moments", LE_EQUAL_MOMENTS},
                    {"loading not listed", LE_NOT_LISTED}};
    double near = 0, far = 0, depth = 0, last = 1.84;
    if (sscanf(f->rule, "lu/d < 7: le = %lf lu; lu/d >= 7: le = %lf lu + %lfd", &near, &far, &depth) < 2 &&
        sscanf(f->rule, "lu/d < 7: %lf lu; 7 <= lu/d <= 14.3: %lf lu + %lfd; lu/d > 14.3: %lf", &near, &far, &depth,
               &last) < 4)
        return NAN;
    for (size_t i = 0; i < sizeof loadings / sizeof *loadings; i++) {
        if (!says(f->of, loadings[i].of))
            continue;
        enum wood_loading loading = loadings[i].loading;
        bool same = fabs(wood_le(loading, 50, 10) - near * 50) < 1e-9 &&
                    fabs(wood_le(loading, 100, 10) - (far * 100 + depth * 10)) < 1e-9;
        if (loading == LE_NOT_LISTED)
            same = same && fabs(wood_le(loading, 200, 10) - last * 200) < 1e-9;
        return same; /* a rule, not a number: 1 where it holds */
    }
    return NAN; /* braced at each of several loads: joists hold the edge, and their spacing is lu */
}

static double column_constant(const struct factor *f)
{
    if (says(f->of, "sawn"))
        return wood_c(WOOD_SAWN);
    if (says(f->of, "glulam"))
        return wood_c(WOOD_GLULAM) == wood_c(WOOD_LVL) ? wood_c(WOOD_LVL) : 0;
    return NAN; /* round poles; the limit of slenderness is each caller's */
}

/* Worked here from the rule in words: FcE = 0.822 Emin'/(le/d)^2 = 580 psi at le/d 28.67, Fc* 1,350, c 0.8. */
static double column_rule(void)
{
    double slender = 28.67, fce = 0.822 * 580000 / (slender * slender), a = fce / 1350;
    double half = (1 + a) / 1.6, cp = half - sqrt(half * half - a / 0.8);
    return fabs(wood_cp(slender, 580000, 1350, 0.8) - cp) < 1e-9;
}

static double built_up(const struct factor *f)
{
    if (says(f->of, "nailed"))
        return wood_kf_nailed();
    if (!says(f->of, "strong axis"))
        return NAN; /* bolted posts are none of this library's */
    struct wood_post post = {
        .piece = {&sawn, WOOD_SAWN, 1.5, 5.5, 3}, .along_in = 96, .most_slender = 50, .nailed = true};
    double fc_star = 1350 * wood_cf(&sawn, 1.5, 5.5).fc;
    return wood_post_rate(&post, 1).cp_along / wood_cp(96 / 5.5, 580000, fc_star, 0.8);
}

/* "15 D to 18 D from each end", of a nail of 0.162 in through 1-1/2 in plies 5-1/2 in deep. */
static double nailing(const struct factor *f)
{
    static const double d = 0.162;
    struct wood_nailing n = wood_nailing(3, 1.5, 5.5, d);
    double least = NAN, most = NAN;
    int read = sscanf(f->rule, "%lf D to %lf D", &least, &most);
    if (says(f->of, "end distance"))
        return read == 2 && fabs(n.end_least - least * d) < 1e-9 && fabs(n.end_most - most * d) < 1e-9;
    if (says(f->of, "edge distance"))
        return read == 2 && fabs(n.edge_least - least * d) < 1e-9 && fabs(n.edge_most - most * d) < 1e-9;
    if (says(f->of, "spacing between rows"))
        return read == 2 && fabs(n.row_least - least * d) < 1e-9 && fabs(n.row_most - most * d) < 1e-9;
    if (says(f->of, "spacing in a row"))
        return sscanf(f->rule, "%lf D at least, %lf x", &least, &most) == 2 &&
               fabs(n.spacing_least - least * d) < 1e-9 && fabs(n.spacing_most - most * 1.5) < 1e-9;
    if (says(f->of, "penetration"))
        return says(f->rule, "3/4") && fabs(n.needed_length - (1.5 + 1.5 + 0.75 * 1.5)) < 1e-9;
    if (!strcmp(f->of, "rows")) /* 4-1/2 in is no more than three plies, 5-1/2 in is */
        return n.rows == 2 && wood_nailing(3, 1.5, 4.5, d).rows == 1;
    return NAN;
}

static double bearing_area(const struct factor *f)
{
    double length;
    if (sscanf(f->of, "lb = %lf in", &length) == 1)
        return floor(wood_cb(length, 12) * 100 + 0.5 + 1e-9) / 100; /* printed to two places */
    return says(f->rule, "(lb + 0.375)/lb") ? fabs(wood_cb(1.5, 12) - 1.875 / 1.5) < 1e-9 && wood_cb(1.5, 2.9) == 1
                                            : NAN;
}

/* 18 ft, 6-3/4 x 13-1/2: the exponents of the row's rule. */
static double volume(const struct factor *f)
{
    double x = says(f->of, "Southern Pine") ? 20 : says(f->of, "western") ? 10 : 0;
    if (x == 0)
        return NAN;
    double all = 21.0 / 18 * (12 / 13.5) * (5.125 / 6.75);
    return fabs(wood_cv(18, 13.5, 6.75, x) - fmin(1, pow(all, 1 / x))) < 1e-9;
}

static double creep(const struct factor *f)
{
    return wood_kcr(says(f->of, "unseasoned"));
}

static double stability(const struct factor *f)
{
    if (says(f->of, "slenderness"))
        return fabs(wood_rb(53.28, 7.25, 3.5) - sqrt(53.28 * 7.25 / (3.5 * 3.5))) < 1e-9;
    if (says(f->of, "d <= b")) {
        struct wood_piece square = {&sawn, WOOD_SAWN, 7.25, 7.25, 1};
        return wood_bending(&square, 1, 1, 240, LE_SPAN_UNIFORM, 240).cl;
    }
    double a = 1.20 * 580000 / 400.0 / 900, half = (1 + a) / 1.9;
    return fabs(wood_cl(20, 580000, 900) - (half - sqrt(half * half - a / 0.95))) < 1e-9;
}

static double value_of(const struct factor *f)
{
    static const struct {
        const char *name;
        double (*of)(const struct factor *);
    } by_name[] = {{"CD", duration},
                   {"CF", size_factor},
                   {"Cfu", flat_use},
                   {"Cr", repetitive},
                   {"le", effective_length},
                   {"Kf", built_up},
                   {"built-up nailing", nailing},
                   {"Cb", bearing_area},
                   {"CV", volume},
                   {"Kcr", creep},
                   {"CL", stability}};
    if (!strcmp(f->name, "CP"))
        return isnan(f->printed) && !*f->of ? column_rule() : column_constant(f);
    for (size_t i = 0; i < sizeof by_name / sizeof *by_name; i++)
        if (!strcmp(f->name, by_name[i].name))
            return by_name[i].of(f);
    return NAN;
}

static void run_factors(struct published *p)
{
    const struct sheet *sheet = published_sheet(p, "wood", "factors.csv");
    if (!sheet)
        return;
    struct tally *tally = published_tally(p, "factors of the NDS and its rules for them");
    tally->why_left_out = "wet service, heat, incising, wind, bolted posts, rules of another clause in words";
    for (size_t row = 1; row < sheet->count; row++) {
        struct factor f = {published_cell(sheet, row, "factor"), published_cell(sheet, row, "case"),
                           published_cell(sheet, row, "applies_to"), published_cell(sheet, row, "formula_or_rule"),
                           published_number(sheet, row, "value")};
        double here = value_of(&f);
        if (isnan(here)) {
            tally->left_out++;
            continue;
        }
        double want = isnan(f.printed) ? 1 : f.printed; /* a rule holds, or does not */
        published_count(p, tally, published_from_memory(sheet, row),
                        arena_printf(p->arena, "%s, %s, %s", f.name, f.of, f.to), fabs(here - want) < 1e-6,
                        arena_printf(p->arena, "printed %g, %g here", want, here));
    }
}

/* The row of the catalog that has the same table, species, grade and width; 0: none. */
static size_t same_wood(const struct sheet *shipped, const struct sheet *sheet, size_t row)
{
    static const char *const keys[] = {"table", "species", "grade", "size_class"};
    for (size_t i = 1; i < shipped->count; i++) {
        bool same = true;
        for (size_t k = 0; k < sizeof keys / sizeof *keys; k++)
            same &= !strcmp(published_cell(shipped, i, keys[k]), published_cell(sheet, row, keys[k]));
        if (same)
            return i;
    }
    return 0;
}

/* A row of the shipped catalog is right when all its eight values are those of the folder. */
static void run_design_values(struct published *p)
{
    static const char *const values[] = {"Fb", "Ft", "Fv", "Fc_perp", "Fc", "E", "Emin", "G"};
    const struct sheet *sheet = published_sheet(p, "wood", "design_values.csv");
    const struct sheet *shipped =
        published_sheet_at(p, arena_printf(p->arena, "%s/catalogs/design_values.csv", p->source));
    if (!sheet || !shipped)
        return;
    struct tally *tally = published_tally(p, "rows of design values, all eight of each, as the catalogs ship them");
    tally->why_left_out = "grades and species that the catalogs do not ship";
    for (size_t row = 1; row < sheet->count; row++) {
        size_t ours = same_wood(shipped, sheet, row);
        if (!ours) {
            tally->left_out++;
            continue;
        }
        const char *differs = NULL;
        for (size_t k = 0; k < sizeof values / sizeof *values; k++)
            if (strcmp(published_cell(shipped, ours, values[k]), published_cell(sheet, row, values[k])) != 0)
                differs = values[k];
        published_count(p, tally, published_from_memory(sheet, row),
                        arena_printf(p->arena, "%s %s %s, table %s", published_cell(sheet, row, "species"),
                                     published_cell(sheet, row, "grade"), published_cell(sheet, row, "size_class"),
                                     published_cell(sheet, row, "table")),
                        !differs, differs ? arena_printf(p->arena, "%s differs", differs) : "");
    }
}

/* PS 20: a nominal size, its dressed size when dry, and the properties of that section to the places printed. */
static void run_sizes(struct published *p)
{
    const struct sheet *sheet = published_sheet(p, "wood", "sizes.csv");
    if (!sheet)
        return;
    struct tally *tally = published_tally(p, "dressed sizes of lumber and their section properties");
    tally->why_left_out = "timbers (a member's own size counts) and lengths in stock, which catalogs state";
    for (size_t row = 1; row < sheet->count; row++) {
        const char *size = published_cell(sheet, row, "nominal");
        length_t width = 0, depth = 0;
        if (strcmp(published_cell(sheet, row, "class"), "dimension") != 0 || !joist_book_size(size, &width, &depth)) {
            tally->left_out++;
            continue;
        }
        struct wood_piece piece = {&sawn, WOOD_SAWN, length_inches(width), length_inches(depth), 1};
        bool same = fabs(piece.ply_in - published_number(sheet, row, "dry_b_in")) < 1e-9 &&
                    fabs(piece.depth_in - published_number(sheet, row, "dry_d_in")) < 1e-9 &&
                    published_prints(published_cell(sheet, row, "dry_area_in2"), wood_area(&piece)) &&
                    published_prints(published_cell(sheet, row, "dry_Sx_in3"), wood_modulus(&piece)) &&
                    published_prints(published_cell(sheet, row, "dry_Ix_in4"), wood_inertia(&piece));
        published_count(p, tally, published_from_memory(sheet, row), size, same,
                        arena_printf(p->arena, "%g x %g here", piece.ply_in, piece.depth_in));
    }
}

void published_factors(struct published *p)
{
    run_factors(p);
    run_design_values(p);
    run_sizes(p);
}
