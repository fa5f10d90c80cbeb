/* Worked examples of fasteners, single cells of the nail table, and the steps of the yield limit equations. */
#include "published.h"

#include <cjson/cJSON.h>
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "sawbill/joint.h"

struct joint_example {
    const cJSON *inputs;
};

static double given(const struct joint_example *e, const char *key, double otherwise)
{
    const cJSON *item = cJSON_GetObjectItemCaseSensitive(e->inputs, key);
    return cJSON_IsNumber(item) ? item->valuedouble : otherwise;
}

/* Nail, lag screw or wood screw: by what its inputs name. */
static enum joint_kind kind_of(const struct joint_example *e)
{
    return given(e, "tip_in", 0) > 0 ? JOINT_LAG_SCREW : given(e, "D_root_in", 0) > 0 ? JOINT_WOOD_SCREW : JOINT_NAIL;
}

static double withdrawal_inch(const struct joint_example *e)
{
    return joint_withdrawal(kind_of(e), given(e, "G", 0), given(e, "D_in", 0));
}

static double withdrawal(const struct joint_example *e)
{
    double in_wood = given(e, "penetration_in", NAN);
    if (kind_of(e) == JOINT_LAG_SCREW) /* thread in the main member, the tip left out; half of a 4 in screw's length */
        in_wood = given(e, "length_in", 0) - given(e, "side_thickness_in", 0) - joint_lag_tip(given(e, "D_in", 0));
    return withdrawal_inch(e) * in_wood;
}

/* The examples take Fe unrounded; a screw of threads in the shear plane goes by its root, G 0.50 as its title says. */
static struct joint_lateral lateral(const struct joint_example *e)
{
    bool screw = kind_of(e) == JOINT_WOOD_SCREW;
    double nominal = given(e, "D_nominal_in", given(e, "D_in", 0)), root = given(e, "D_root_in", 0);
    double fe = joint_fe_formula(given(e, "G_main", 0.5), screw ? root : nominal, 0);
    struct joint_plane plane = {.nominal_in = nominal,
                                .root_in = root,
                                .fyb_psi = joint_fyb(screw ? JOINT_WOOD_SCREW : JOINT_NAIL, nominal),
                                .side_in = given(e, "side_thickness_in", given(e, "side_in", 0)),
                                .main_in = given(e, "main_dowel_bearing_in", given(e, "main_in", 0)),
                                .fe_side = fe,
                                .fe_main = fe,
                                .double_shear = screw};
    if (screw) /* the weaker of the two side members: the one with the point in it */
        plane.side_in =
            joint_bearing_length(JOINT_WOOD_SCREW, nominal, given(e, "length_in", 0) - plane.main_in - plane.side_in);
    return joint_lateral(&plane);
}

static double lateral_lb(const struct joint_example *e)
{
    return lateral(e).lb;
}

/* The table's own case: Fe to 50 psi, 10 D in the holding member. */
static double table_cell(double diameter, double side, double gravity, double penetration)
{
    double fe = joint_fe_wood(gravity, diameter, 0);
    return joint_lateral(&(struct joint_plane){.nominal_in = diameter,
                                               .fyb_psi = joint_fyb(JOINT_NAIL, diameter),
                                               .side_in = side,
                                               .main_in = joint_bearing_length(JOINT_NAIL, diameter, penetration),
                                               .fe_side = fe,
                                               .fe_main = fe})
        .lb;
}

static double table_lb(const struct joint_example *e)
{
    double diameter = given(e, "D_in", 0);
    return table_cell(diameter, given(e, "side_in", 0), given(e, "G", 0), 10 * diameter);
}

static double by_equations(const struct joint_example *e)
{
    return table_cell(given(e, "D_in", 0), given(e, "side_in", 0), given(e, "G", 0), given(e, "penetration_in", 0));
}

/* The least penetration that counts, and the least that counts in full: found by halving. */
static double threshold(const struct joint_example *e, bool in_full)
{
    double low = 0, high = 5, diameter = given(e, "D_in", 0);
    for (int i = 0; i < 60; i++) {
        double p = (low + high) / 2, counted = joint_bearing_length(JOINT_NAIL, diameter, p);
        *((in_full ? counted >= p : counted > 0) ? &high : &low) = p;
    }
    return high;
}

static double least_penetration(const struct joint_example *e)
{
    return threshold(e, false);
}
static double full_penetration(const struct joint_example *e)
{
    return threshold(e, true);
}
static double first_interface(const struct joint_example *e)
{
    return joint_crossing((int)given(e, "plies", 0), 1, 1, 0, 0, 0).plf; /* hung on face A alone, 1 lb a foot */
}
static double second_interface(const struct joint_example *e)
{
    return joint_crossing((int)given(e, "plies", 0), 2, 1, 0, 0, 0).plf;
}

static const struct {
    const char *key;
    double (*of)(const struct joint_example *);
} values[] = {{"W_lb_per_in", withdrawal_inch},
              {"W_lb", withdrawal},
              {"Z_lb", lateral_lb},
              {"Z_table_lb", table_lb},
              {"Z_yield_equations_lb", by_equations},
              {"p_min_6D_in", least_penetration},
              {"penetration_10D_in", full_penetration},
              {"full_penetration_10D_in", full_penetration},
              {"first_interface_fraction", first_interface},
              {"second_interface_fraction", second_interface}};

static void run_number(struct published *p, struct tally *tally, const struct joint_example *e, const char *id,
                       bool from_memory, const cJSON *expected)
{
    for (size_t i = 0; i < sizeof values / sizeof *values; i++) {
        if (strcmp(expected->string, values[i].key) != 0)
            continue;
        published_count_value(p, tally, from_memory, id, expected, values[i].of(e));
        return;
    }
    tally->left_out++;
}

static void run_example(struct published *p, struct tally *tally, const cJSON *item)
{
    const char *id = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(item, "id"));
    const char *seen = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(item, "seen"));
    struct joint_example e = {cJSON_GetObjectItemCaseSensitive(item, "inputs")};
    bool from_memory = !seen || strcmp(seen, "source") != 0;
    const cJSON *expected;
    cJSON_ArrayForEach(expected, cJSON_GetObjectItemCaseSensitive(item, "expected"))
    {
        const char *mode = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(expected, "value"));
        if (!mode) {
            run_number(p, tally, &e, id ? id : "example", from_memory, expected);
            continue;
        }
        const char *here = joint_mode_name(lateral(&e).mode); /* which mode governs was worked out, not printed */
        published_count(p, tally, true, arena_printf(p->arena, "%s mode", id), !strcmp(mode, here),
                        arena_printf(p->arena, "said %s, %s here", mode, here));
    }
}

static void run_cell(struct published *p, struct tally *tally, const cJSON *cell)
{
    double diameter = published_member(cell, "D_in"), gravity = published_member(cell, "G");
    double printed = published_member(cell, "Z_lb");
    double here = floor(table_cell(diameter, published_member(cell, "side_in"), gravity, 10 * diameter) + 0.5);
    const char *seen = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(cell, "seen"));
    published_count(p, tally, !seen || strcmp(seen, "source") != 0,
                    arena_printf(p->arena, "nail table, %g in, G %g", diameter, gravity), here == printed,
                    arena_printf(p->arena, "printed %g, %g here", printed, here));
}

static void run_examples(struct published *p)
{
    char *text = published_text(p, "examples", "connections.json");
    cJSON *root = text ? cJSON_Parse(text) : NULL;
    if (text && !root)
        diag_add(p->diags, DIAG_F005, &(struct place){.file = "connections.json"}, "not JSON");
    if (!root)
        return;
    struct tally *tally = published_tally(p, "values of worked examples of fasteners");
    tally->why_left_out = "the share p/10D of older editions (here by the equations), and one pattern's spacing";
    const cJSON *item;
    cJSON_ArrayForEach(item, cJSON_GetObjectItemCaseSensitive(root, "examples")) run_example(p, tally, item);
    const cJSON *cells = cJSON_GetObjectItemCaseSensitive(root, "nds_table_12N_rows");
    cJSON_ArrayForEach(item, cJSON_GetObjectItemCaseSensitive(cells, "rows")) run_cell(p, tally, item);
    cJSON_Delete(root);
}

/* yield_limit.csv: bending yield strength, bearing strength and Rd by diameter, step by step. */
static double step_value(const char *what, const char *of, double at)
{
    static const struct {
        const char *of;
        enum joint_kind kind;
    } kinds[] = {{"nail", JOINT_NAIL},
                 {"hardened nail", JOINT_HARDENED_NAIL},
                 {"wood screw", JOINT_WOOD_SCREW},
                 {"lag screw", JOINT_LAG_SCREW},
                 {"bolt", JOINT_BOLT}};
    for (size_t i = 0; !strcmp(what, "Fyb") && i < sizeof kinds / sizeof *kinds; i++)
        if (!strcmp(of, kinds[i].of))
            return joint_fyb(kinds[i].kind, at);
    if (!strcmp(what, "KD"))
        return joint_rd_small(at);
    if (!strcmp(what, "Fe steel"))
        return joint_fe_steel(!strcmp(of, "A36"));
    if (!strcmp(what, "end grain"))
        return joint_ceg_lateral();
    if (!strcmp(what, "toe-nail"))
        return !strcmp(of, "lateral") ? joint_ctn_lateral() : joint_ctn_withdrawal();
    return NAN;
}

static void run_steps(struct published *p)
{
    const struct sheet *sheet = published_sheet(p, "examples", "yield_limit.csv");
    if (!sheet)
        sheet = published_sheet_at(p, arena_printf(p->arena, "%s/tests/data/published/yield_limit.csv", p->source));
    if (!sheet)
        return;
    struct tally *tally = published_tally(p, "steps of the yield limit equations");
    for (size_t row = 1; row < sheet->count; row++) {
        const char *what = published_cell(sheet, row, "what"), *of = published_cell(sheet, row, "of");
        double at = published_number(sheet, row, "at_in"), printed = published_number(sheet, row, "value");
        double here = step_value(what, of, at);
        published_count(p, tally, published_from_memory(sheet, row),
                        arena_printf(p->arena, "%s, %s, %s in", what, of, published_cell(sheet, row, "at_in")),
                        fabs(here - printed) < 1e-9, arena_printf(p->arena, "printed %g, %g here", printed, here));
    }
}

void published_connections(struct published *p)
{
    run_examples(p);
    run_steps(p);
}
