/* Worked examples of beams and columns: each value that an example prints and that one function here computes. */
#include "published.h"

#include <cjson/cJSON.h>
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "sawbill/joist.h"
#include "sawbill/text.h"
#include "sawbill/wood.h"

struct example {
    const cJSON *inputs;
    struct design_row row;
    struct wood_piece piece;
    double cd, cr, slenderness, c;
    struct wood_bending bending;
    struct wood_values adjusted;
};

static double given(const struct example *e, const char *key, double otherwise)
{
    const cJSON *item = cJSON_GetObjectItemCaseSensitive(e->inputs, key);
    return cJSON_IsNumber(item) ? item->valuedouble : otherwise;
}

static const char *word(const struct example *e, const char *key)
{
    const char *text = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(e->inputs, key));
    return text ? text : "";
}

/* Which table the size factor comes from: glulam has a volume factor, timbers one by depth, Southern Pine none. */
static void set_wood(struct example *e)
{
    bool glulam = cJSON_HasObjectItem(e->inputs, "exponent_x") || cJSON_HasObjectItem(e->inputs, "stress_class");
    e->row = (struct design_row){.species = word(e, "species"),
                                 .grade = word(e, "grade"),
                                 .fb = given(e, "Fb_psi", 0),
                                 .ft = given(e, "Ft_psi", 0),
                                 .fv = given(e, "Fv_psi", 0),
                                 .fc_perp = given(e, "Fc_perp_psi", 0),
                                 .fc = given(e, "Fc_psi", 0),
                                 .e = given(e, "E_psi", 0),
                                 .emin = given(e, "Emin_psi", given(e, "Ey_min_psi", 0))};
    e->row.table = glulam                                        ? "5A"
                   : strstr(e->row.grade, "Beams and Stringers") ? "4D"
                   : !strcmp(e->row.species, "Southern Pine")    ? "4B"
                                                                 : "4A";
    e->piece = (struct wood_piece){.row = &e->row,
                                   .wood = glulam ? WOOD_GLULAM : WOOD_SAWN,
                                   .ply_in = given(e, "b_in", given(e, "ply_b_in", 1.5)),
                                   .depth_in = given(e, "d_in", given(e, "ply_d_in", 0)),
                                   .plies = (int)given(e, "plies", 1)};
}

static void set_bending(struct example *e)
{
    struct wood_piece piece = e->piece;
    if (e->cr > 1)
        piece.plies = 3; /* one of several side by side */
    enum wood_loading loading = strstr(word(e, "loading"), "concentrated") ? LE_SPAN_POINT_MID : LE_SPAN_UNIFORM;
    e->bending = wood_bending(&piece, e->cd, e->cr, 12 * given(e, "lu_ft", given(e, "lu_uplift_ft", 0)), loading,
                              12 * given(e, "span_ft", 1));
}

/* The axis that may buckle: across the face that sheathing holds, along the depth; else the thinner one. */
static void set_column(struct example *e)
{
    double length_in = 12 * given(e, "height_ft", given(e, "length_ft", 0));
    double thin = *word(e, "weak_axis") ? e->piece.depth_in : fmin(e->piece.plies * e->piece.ply_in, e->piece.depth_in);
    e->slenderness = length_in / thin;
    e->c = given(e, "c", wood_c(e->piece.wood));
    struct wood_factors factors = {.cd = e->cd, .cr = 1, .cl = 1, .cp = 1, .cb = 1};
    factors.cf = wood_cf(&e->row, e->piece.ply_in, e->piece.depth_in);
    e->adjusted = wood_adjust(&e->row, &factors);
}

static struct example example_of(const cJSON *item)
{
    struct example e = {.inputs = cJSON_GetObjectItemCaseSensitive(item, "inputs")};
    e.cd = given(&e, "CD", given(&e, "CD_uplift", 1));
    e.cr = given(&e, "Cr", 1);
    set_wood(&e);
    return e;
}

/* Made anew once the example stands where it stays: its piece points into it. */
static void settle(struct example *e)
{
    e->piece.row = &e->row;
    set_bending(e);
    set_column(e);
}

static double area(const struct example *e)
{
    return wood_area(&e->piece);
}
static double modulus(const struct example *e)
{
    return wood_modulus(&e->piece);
}
static double inertia(const struct example *e)
{
    return wood_inertia(&e->piece);
}
static double le(const struct example *e)
{
    return e->bending.le_in;
}
static double rb(const struct example *e)
{
    return e->bending.rb;
}
static double cl(const struct example *e)
{
    return e->bending.cl;
}
static double cv(const struct example *e)
{
    return e->bending.cv;
}
static double cf(const struct example *e)
{
    return e->bending.cf;
}
static double fb_e(const struct example *e)
{
    return 1.20 * e->row.emin / (e->bending.rb * e->bending.rb);
}
static double fb_star(const struct example *e)
{
    return e->bending.fb_star;
}
static double fb(const struct example *e)
{
    return e->bending.fb;
}
static double moment_ftlb(const struct example *e)
{
    return e->bending.fb * wood_modulus(&e->piece) / 12;
}
static double fv_area(const struct example *e)
{
    return e->adjusted.fv * wood_area(&e->piece);
}
static double ft(const struct example *e)
{
    return e->adjusted.ft;
}
static double fv(const struct example *e)
{
    return e->adjusted.fv;
}
static double fc_perp(const struct example *e)
{
    return e->adjusted.fc_perp;
}
static double modulus_e(const struct example *e)
{
    return e->adjusted.e;
}
static double emin(const struct example *e)
{
    return e->adjusted.emin;
}
static double fc_star(const struct example *e)
{
    return e->adjusted.fc;
}
static double cp(const struct example *e)
{
    return e->slenderness > 0 ? wood_cp(e->slenderness, e->row.emin, e->adjusted.fc, e->c) : 1;
}
static double fc(const struct example *e)
{
    return e->adjusted.fc * cp(e);
}
static double cp_nailed(const struct example *e)
{
    return wood_kf_nailed() * cp(e);
}
static double column_ratio(const struct example *e)
{
    return given(e, "load_lb", NAN) / (fc(e) * wood_area(&e->piece));
}

static const struct {
    const char *key;
    double (*of)(const struct example *);
} values[] = {{"A_in2", area},
              {"S_in3", modulus},
              {"I_in4", inertia},
              {"le_in", le},
              {"RB", rb},
              {"CL", cl},
              {"CL_uplift", cl},
              {"CV", cv},
              {"CF", cf},
              {"FbE_psi", fb_e},
              {"Fb_star_psi", fb_star},
              {"Fb_adj_psi", fb},
              {"M_allow_ftlb", moment_ftlb},
              {"Fv_times_A_lb", fv_area},
              {"Ft_adj_psi", ft},
              {"Fv_adj_psi", fv},
              {"Fc_perp_adj_psi", fc_perp},
              {"E_adj_psi", modulus_e},
              {"Emin_adj_psi", emin},
              {"Fc_star_psi", fc_star},
              {"Fc_adj_psi", fc},
              {"CP", cp},
              {"ratio", column_ratio},
              {"CP_through_plies_without_Kf", cp},
              {"CP_through_plies_Kf_0p6", cp_nailed}};

static void run_value(struct published *p, struct tally *tally, const struct example *e, const char *id,
                      bool from_memory, const cJSON *expected)
{
    double special = published_special(id, expected->string);
    for (size_t i = 0; i < sizeof values / sizeof *values; i++) {
        if (isnan(special) && strcmp(expected->string, values[i].key) != 0)
            continue;
        published_count_value(p, tally, from_memory, id, expected, isnan(special) ? values[i].of(e) : special);
        return;
    }
    tally->left_out++;
}

static void run_example(struct published *p, struct tally *tally, const cJSON *item)
{
    const char *id = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(item, "id"));
    const char *seen = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(item, "seen"));
    struct example e = example_of(item);
    settle(&e);
    const cJSON *expected;
    cJSON_ArrayForEach(expected, cJSON_GetObjectItemCaseSensitive(item, "expected"))
        run_value(p, tally, &e, id ? id : "example", !seen || strcmp(seen, "source") != 0, expected);
}

void published_examples(struct published *p)
{
    static const char *const files[] = {"beams.json", "columns.json"};
    struct tally *tally = NULL;
    for (size_t i = 0; i < sizeof files / sizeof *files; i++) {
        char *text = published_text(p, "examples", files[i]);
        cJSON *root = text ? cJSON_Parse(text) : NULL;
        if (text && !root)
            diag_add(p->diags, DIAG_F005, &(struct place){.file = files[i]}, "not JSON");
        if (!root)
            continue;
        if (!tally)
            tally = published_tally(p, "values of worked examples of beams and columns");
        const cJSON *item;
        cJSON_ArrayForEach(item, cJSON_GetObjectItemCaseSensitive(root, "examples")) run_example(p, tally, item);
        cJSON_Delete(root);
    }
    if (tally)
        tally->why_left_out = "steps of an example that no function here is for (tension with bending, interaction)";
}
