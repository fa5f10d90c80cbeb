/* The catalogs that come with the program: read without a message, complete, and true to the published tables. */
#include "support.h"

#include <string.h>

#include "sawbill/catalog.h"
#include "sawbill/text.h"

static struct catalog *shipped(void **state)
{
    struct diags diags = {.arena = *state};
    struct catalog *catalog = catalog_read(*state, SOURCE_DIR "/catalogs", NULL, &diags);
    for (size_t i = 0; i < diags.count; i++)
        print_error("%s\n", diag_line(*state, &diags.item[i]));
    assert_int_equal(diags.count, 0);
    return catalog;
}

static bool has_price(const struct catalog *catalog, const char *item)
{
    for (size_t i = 0; i < catalog->price_count; i++)
        if (name_same(catalog->prices[i].item, item))
            return true;
    print_error("no price for %s\n", item);
    return false;
}

/* NDS 2018 Supplement, Tables 4A and 4B: Fb, Ft, Fv, Fc perpendicular, Fc, E, Emin (psi); as recalled, and the same in
 * the copy that the rows name as their source. */
static void test_design_values(void **state)
{
    static const struct {
        const char *species, *grade;
        double width, fb, ft, fv, fc_perp, fc, e, emin;
    } ROWS[] = {
        {"Douglas Fir-Larch", "Select Structural", 10, 1500, 1000, 180, 625, 1700, 1.9e6, 690e3},
        {"Douglas Fir-Larch", "No.1", 4, 1000, 675, 180, 625, 1500, 1.7e6, 620e3},
        {"Douglas Fir-Larch", "No.2", 10, 900, 575, 180, 625, 1350, 1.6e6, 580e3},
        {"Douglas Fir-Larch", "Stud", 4, 700, 450, 180, 625, 850, 1.4e6, 510e3},
        {"Douglas Fir-Larch", "Construction", 4, 1000, 650, 180, 625, 1650, 1.5e6, 550e3},
        {"Hem-Fir", "No.1", 8, 975, 625, 150, 405, 1350, 1.5e6, 550e3},
        {"Hem-Fir", "No.2", 12, 850, 525, 150, 405, 1300, 1.3e6, 470e3},
        {"Spruce-Pine-Fir", "No.1", 8, 875, 450, 135, 425, 1150, 1.4e6, 510e3},
        {"Spruce-Pine-Fir", "No.2", 8, 875, 450, 135, 425, 1150, 1.4e6, 510e3},
        {"Spruce-Pine-Fir", "Stud", 6, 675, 350, 135, 425, 725, 1.2e6, 440e3},
        {"Southern Pine", "No.2", 4, 1100, 675, 175, 565, 1450, 1.4e6, 510e3},
        {"Southern Pine", "No.2", 6, 1000, 600, 175, 565, 1400, 1.4e6, 510e3},
        {"Southern Pine", "No.2", 8, 925, 550, 175, 565, 1350, 1.4e6, 510e3},
        {"Southern Pine", "No.2", 10, 800, 475, 175, 565, 1300, 1.4e6, 510e3},
        {"Southern Pine", "No.2", 12, 750, 450, 175, 565, 1250, 1.4e6, 510e3},
        {"Southern Pine", "No.1", 12, 1000, 650, 175, 565, 1400, 1.6e6, 580e3},
    };
    const struct catalog *catalog = shipped(state);
    for (size_t i = 0; i < sizeof ROWS / sizeof *ROWS; i++) {
        const struct design_row *row = catalog_design(catalog, ROWS[i].species, ROWS[i].grade, ROWS[i].width);
        assert_non_null(row);
        assert_near(row->fb, ROWS[i].fb, 0);
        assert_near(row->ft, ROWS[i].ft, 0);
        assert_near(row->fv, ROWS[i].fv, 0);
        assert_near(row->fc_perp, ROWS[i].fc_perp, 0);
        assert_near(row->fc, ROWS[i].fc, 0);
        assert_near(row->e, ROWS[i].e, 0);
        assert_near(row->emin, ROWS[i].emin, 0);
    }
}

/* NDS 2018 Appendix D.4: Emin = 1.03 E (1 - 1.645 COV) / 1.66, COV 0.25 for visually graded sawn wood; the Supplement
 * prints it to 10,000 psi. */
static void test_emin_of_sawn_wood(void **state)
{
    const struct catalog *catalog = shipped(state);
    size_t checked = 0;
    for (size_t i = 0; i < catalog->design_count; i++) {
        const struct design_row *row = &catalog->design[i];
        if (strcmp(row->table, "4A") != 0 && strcmp(row->table, "4B") != 0)
            continue;
        double emin = 1.03 * row->e * (1 - 1.645 * 0.25) / 1.66;
        assert_near(row->emin, 1e4 * floor(emin / 1e4 + 0.5), 0);
        checked++;
    }
    assert_true(checked >= 30);
}

/* What was not read in its source says so; typical values of engineered wood are never passed off as a product's. */
static void test_unread_values_say_so(void **state)
{
    const struct catalog *catalog = shipped(state);
    for (size_t i = 0; i < catalog->design_count; i++) {
        const struct design_row *row = &catalog->design[i];
        assert_true(row->source[0] && row->edition[0]);
        if (!strstr(row->table, "SCL"))
            continue;
        assert_false(row->seen);
        assert_string_equal(row->status, "typical");
        assert_non_null(strstr(row->note, "replace by the evaluation report"));
    }
}

/* American Softwood Lumber Standard PS 20-20, Table 3: minimum dressed dry sizes. */
static void test_sizes(void **state)
{
    static const struct {
        const char *size;
        double width, depth;
    } PS20[] = {{"2x4", 1.5, 3.5},    {"2x6", 1.5, 5.5}, {"2x8", 1.5, 7.25}, {"2x10", 1.5, 9.25},
                {"2x12", 1.5, 11.25}, {"4x4", 3.5, 3.5}, {"4x6", 3.5, 5.5},  {"4x8", 3.5, 7.25}};
    const struct catalog *catalog = shipped(state);
    size_t sawn = 0;
    for (size_t i = 0; i < catalog->member_count; i++) {
        const struct member *member = &catalog->members[i];
        if (member->wood != WOOD_SAWN)
            continue;
        size_t k = 0;
        while (k < sizeof PS20 / sizeof *PS20 && strcmp(PS20[k].size, member->size) != 0)
            k++;
        assert_true(k < sizeof PS20 / sizeof *PS20);
        assert_near(length_inches(member->ply_width), PS20[k].width, 0);
        assert_near(length_inches(member->depth), PS20[k].depth, 0);
        sawn++;
    }
    assert_true(sawn >= 20);
}

/* ASTM F1667 (also NDS 2018 Appendix L, Table L4): common, box and sinker nails; bending yield strength by diameter as
 * in IRC 2021 Table R602.3(1). */
static void test_nails(void **state)
{
    static const struct {
        const char *code;
        double diameter, length, fyb;
    } NAILS[] = {
        {"NAIL-8D-COMMON", 0.131, 2.5, 100e3},  {"NAIL-10D-COMMON", 0.148, 3, 90e3},
        {"NAIL-12D-COMMON", 0.148, 3.25, 90e3}, {"NAIL-16D-COMMON", 0.162, 3.5, 90e3},
        {"NAIL-20D-COMMON", 0.192, 4, 80e3},    {"NAIL-30D-COMMON", 0.207, 4.5, 80e3},
        {"NAIL-10D-BOX", 0.128, 3, 100e3},      {"NAIL-16D-BOX", 0.135, 3.5, 100e3},
        {"NAIL-16D-SINKER", 0.148, 3.25, 90e3}, {"NAIL-10D-SHORT", 0.148, 1.5, 90e3},
    };
    const struct catalog *catalog = shipped(state);
    for (size_t i = 0; i < sizeof NAILS / sizeof *NAILS; i++) {
        const struct fastener *nail = catalog_fastener(catalog, NAILS[i].code);
        assert_non_null(nail);
        assert_near(length_inches(nail->diameter), NAILS[i].diameter, 1e-9);
        assert_near(length_inches(nail->length), NAILS[i].length, 1e-9);
        assert_near(nail->fyb_psi, NAILS[i].fyb, 0);
        assert_true(nail->count_per_lb > 0);
    }
}

/* How many common nails go to a pound: lists of wire nails and of the US Army (subcourse EN0069), of a treatise of 1899
 * (cut nails), and of a nail chart, as read: 8d 94 and 100; 10d 65, 72 and 74; 12d 50 and 60; 16d 44 and 50; 20d 30 and
 * 32; 30d 20.  The catalog's are computed from steel of 0.2836 lb a cubic inch, so that none is beyond what its wire
 * alone weighs (pi/4 D^2 L), nor more than a tenth below for head and point; and each lies within 12 % of a list. */
static void test_nails_a_pound(void **state)
{
    static const struct {
        const char *code;
        double low, high;
    } ROWS[] = {{"NAIL-8D-COMMON", 94, 100}, {"NAIL-10D-COMMON", 65, 74}, {"NAIL-12D-COMMON", 50, 60},
                {"NAIL-16D-COMMON", 44, 50}, {"NAIL-20D-COMMON", 30, 32}, {"NAIL-30D-COMMON", 20, 20}};
    const struct catalog *catalog = shipped(state);
    for (size_t i = 0; i < sizeof ROWS / sizeof *ROWS; i++) {
        const struct fastener *nail = catalog_fastener(catalog, ROWS[i].code);
        double d = length_inches(nail->diameter);
        double wire = 1 / (0.2836 * acos(-1) / 4 * d * d * length_inches(nail->length));
        assert_true(nail->count_per_lb < wire && nail->count_per_lb > 0.9 * wire);
        assert_true(nail->count_per_lb >= 0.88 * ROWS[i].low && nail->count_per_lb <= 1.12 * ROWS[i].high);
    }
}

/* Wood screws by gauge: D = 0.060 + 0.013 n (a screw chart): No. 8 is 0.164 in, No. 6 0.138 in. */
static void test_screw_gauges(void **state)
{
    static const struct {
        const char *code;
        int gauge;
    } ROWS[] = {{"DECK-300", 8}, {"DRYWALL-1.25", 6}, {"DRYWALL-1.625", 6}};
    const struct catalog *catalog = shipped(state);
    for (size_t i = 0; i < 3; i++)
        assert_near(length_inches(catalog_fastener(catalog, ROWS[i].code)->diameter), 0.060 + 0.013 * ROWS[i].gauge,
                    1e-9);
}

/* Weight of wood, 62.4 G / (1 + 0.009 G m) x (1 + m / 100) pounds a cubic foot (as NDS Supplement 3.1.3), at 19 %, the
 * most that S-DRY lumber may hold: Douglas Fir-Larch, G 0.50: 62.4 x 0.5 / 1.0855 x 1.19 = 34.2; Hem-Fir, 0.43: 29.7;
 * Southern Pine, 0.55: 37.3; Spruce-Pine-Fir, 0.42: 29.1. */
static void test_weights(void **state)
{
    static const struct {
        const char *begins;
        double gravity;
    } ROWS[] = {{"DFL", 0.50}, {"HF", 0.43}, {"SYP", 0.55}, {"SPF", 0.42}};
    const struct catalog *catalog = shipped(state);
    size_t checked = 0;
    for (size_t i = 0; i < catalog->member_count; i++)
        for (size_t k = 0; k < 4; k++) {
            const struct member *member = &catalog->members[i];
            if (strcmp(member->moisture, "S-DRY") != 0 ||
                strncmp(member->code, ROWS[k].begins, strlen(ROWS[k].begins)) != 0)
                continue;
            double pcf = 62.4 * ROWS[k].gravity / (1 + 0.009 * ROWS[k].gravity * 19) * 1.19;
            double feet2 = length_inches(member->ply_width) * length_inches(member->depth) / 144;
            assert_near(member->weight_plf, pcf * feet2, 0.011); /* to hundredths */
            checked++;
        }
    assert_true(checked >= 20);
}

/* Rates with a source, hours a foot or square foot.  Peterson & Dagostino, Estimating in Building Construction, Fig.
 * 13.55: walls 18 to 30 hours for 1,000 board feet; a shore 8 ft high has a foot of its length 3/4 of a stud of 5.33
 * board feet, two plates and a brace row of 0.667 and a diagonal: 4 + 2 + 1 = 7, so 0.126 to 0.21; baseboard 1.5 to 2.5
 * for 100 ft.  A course on demolition (web): walls 0.2 to 0.3 a foot, ceilings 0.1 to 0.2 a square foot, an upper
 * bound. Trade page on drywall: a sheet of 32 sq ft 0.25 in open rooms, taping 2.0 to 2.5 and finishing 0.83 to 1.0 for
 * 100 sq ft.  Paint, from memory: 0.5 to 1.0 a coat and 100 sq ft, three coats.  The lowest rate of the catalog lies
 * within each, or above where only open new work was timed; the likely one is never below it. */
static void test_labor_rates(void **state)
{
    static const struct {
        const char *task;
        double least, most;
    } ROWS[] = {{"build shore", 0.126, 0.21}, {"reset base", 0.015, 0.025},      {"demo wall", 0.2, 0.3},
                {"open ceiling", 0, 0.2},     {"hang ceiling board", 0.0078, 1}, {"tape and fill", 0.02, 0.025},
                {"sand", 0.0083, 0.01},       {"prime and paint", 0.015, 0.03},  {"hang joist", 0.05, 0.1}};
    const struct catalog *catalog = shipped(state);
    for (size_t i = 0; i < sizeof ROWS / sizeof *ROWS; i++) {
        const struct task *task = catalog_task(catalog, ROWS[i].task);
        assert_non_null(task);
        double low = decimal_value(task->low);
        assert_true(low >= ROWS[i].least - 1e-9 && low <= ROWS[i].most + 1e-9);
        assert_true(task->likely >= task->low && task->high >= task->likely);
    }
    /* the course: 1.15 to 1.35 for work 10 to 20 ft high */
    for (size_t i = 0; i < catalog->condition_count; i++)
        if (strstr(catalog->conditions[i].source, "1.15 to 1.35"))
            assert_near(decimal_value(catalog->conditions[i].factor), (1.15 + 1.35) / 2, 1e-9);
}

/* Journal of Light Construction, on flush-framed floors: engineered plies come in depths that match sawn joists, 9-1/4
 * and 11-1/4 in, and I-joists, 9-1/2 and 11-7/8; which is wanted must be asked for. */
static void test_depth_families(void **state)
{
    static const double DEPTHS[] = {9.25, 9.5, 11.25, 11.875};
    const struct catalog *catalog = shipped(state);
    for (size_t k = 0; k < 4; k++) {
        size_t found = 0;
        for (size_t i = 0; i < catalog->member_count; i++)
            found += catalog->members[i].wood == WOOD_LVL && catalog->members[i].depth == length_from_inches(DEPTHS[k]);
        assert_true(found > 0);
    }
}

/* A contractor's size. */
static void test_counts(void **state)
{
    const struct catalog *catalog = shipped(state);
    static const char *const SPECIES[] = {"DFL2", "HF2", "SPF2", "SYP2"};
    static const char *const SIZES[] = {"2X4", "2X6", "2X8", "2X10", "2X12"};
    for (size_t i = 0; i < 4; i++)
        for (size_t k = 0; k < 5; k++)
            assert_non_null(catalog_member(catalog, arena_printf(*state, "%s-%s", SPECIES[i], SIZES[k])));
    size_t lvl = 0;
    for (size_t i = 0; i < catalog->member_count; i++)
        lvl += catalog->members[i].wood == WOOD_LVL;
    size_t hangers = 0;
    for (size_t i = 0; i < catalog->hanger_count; i++)
        hangers += catalog->hangers[i].kind == CONNECTOR_HANGER;
    assert_true(lvl >= 3 && hangers >= 15);
    assert_true(catalog->fastener_count >= 12 && catalog->task_count >= 25 && catalog->supplier_count >= 3);
    size_t assemblies = 0;
    for (size_t i = 0; i < catalog->assembly_count; i++)
        assemblies += i == 0 || !name_same(catalog->assemblies[i].assembly, catalog->assemblies[i - 1].assembly);
    assert_true(assemblies >= 10);
}

/* US Army subcourse EN0069, lesson 4: dimension lumber comes in 8 to 20 ft by 2 ft.  Deep sizes in all of them. */
static void test_stock_lengths(void **state)
{
    const struct catalog *catalog = shipped(state);
    static const char *const CODES[] = {"DFL2-2X10", "HF2-2X8", "SPF2-2X12", "SYP2-2X6"};
    for (size_t i = 0; i < 4; i++)
        for (int feet = 8; feet <= 20; feet += 2) {
            size_t found = 0;
            for (size_t k = 0; k < catalog->price_count; k++)
                found +=
                    name_same(catalog->prices[k].item, CODES[i]) && catalog->prices[k].length == feet * LENGTH_FOOT;
            assert_true(found > 0);
        }
    for (size_t i = 0; i < catalog->price_count; i++) {
        const struct price *price = &catalog->prices[i];
        const struct member *member = catalog_member(catalog, price->item);
        assert_int_equal(member != NULL, price->length > 0 || price->increment > 0);
        assert_int_equal(price->index, i);
    }
}

/* Whatever a takeoff can ask for has a price, and every price says that it is invented. */
static void test_everything_has_a_price(void **state)
{
    const struct catalog *catalog = shipped(state);
    for (size_t i = 0; i < catalog->member_count; i++)
        assert_true(has_price(catalog, catalog->members[i].code));
    for (size_t i = 0; i < catalog->hanger_count; i++)
        assert_true(has_price(catalog, catalog->hangers[i].item));
    for (size_t i = 0; i < catalog->fastener_count; i++)
        assert_true(has_price(catalog, catalog->fasteners[i].item));
    for (size_t i = 0; i < catalog->assembly_count; i++)
        if (catalog->assemblies[i].item) {
            const char *item = catalog->assemblies[i].item;
            assert_true(has_price(catalog, item));
            assert_true(catalog_fastener(catalog, item) || catalog_hanger(catalog, item) ||
                        catalog_what(catalog, item) != item);
        }
    for (size_t i = 0; i < catalog->price_count; i++) {
        assert_true(catalog->prices[i].price > 0 && catalog->prices[i].pack > 0);
        assert_memory_equal(catalog->prices[i].note, "invented price", strlen("invented price"));
    }
}

/* Nails of assemblies are counted by the piece: whole ones, and each can be bought by the pound. */
static void test_nails_of_assemblies(void **state)
{
    const struct catalog *catalog = shipped(state);
    for (size_t i = 0; i < catalog->assembly_count; i++) {
        const struct assembly_line *line = &catalog->assemblies[i];
        const struct price *price = line->item ? catalog_cheapest(catalog, line->item) : NULL;
        if (!price || !name_same(price->unit, "lb"))
            continue;
        const struct fastener *nail = catalog_fastener(catalog, line->item);
        assert_true(nail && nail->count_per_lb > 0);
        assert_int_equal(line->count % DECIMAL_ONE, 0);
        assert_true(strncmp(line->note, "lb", 2) != 0);
    }
}

/* A longer load lifts no listed value beyond the steel, and a hanger is as deep as 60 % of what it carries (common
 * practice): its depth range may not reach down to less. */
static void test_hangers(void **state)
{
    const struct catalog *catalog = shipped(state);
    for (size_t i = 0; i < catalog->hanger_count; i++) {
        const struct hanger *hanger = &catalog->hangers[i];
        for (size_t k = 1; k < 4 && hanger->kind != CONNECTOR_CAP; k++)
            assert_true(hanger->load[k] >= hanger->load[k - 1] && hanger->load[k] <= 1.6 * hanger->load[0] + 5);
        if (hanger->kind != CONNECTOR_HANGER)
            continue;
        assert_true(hanger->depth_from * 10 >= hanger->depth_to * 6);
        /* IRC R502.6: at least 1-1/2 in of bearing on wood or metal */
        assert_true(hanger->seat * 2 >= 3 * LENGTH_INCH);
        const struct fastener *nail = catalog_fastener(catalog, hanger->carrier_nail);
        assert_non_null(nail);
        assert_true(nail && hanger->carrier_least >= nail->length); /* the nail stays in the wood */
    }
}

static void test_look_ups(void **state)
{
    const struct catalog *catalog = shipped(state);
    const struct member *member = catalog_member(catalog, "dfl2 2x10");
    assert_ptr_equal(member, catalog_member(catalog, "DFL2-2X10"));
    assert_string_equal(member->code, "DFL2-2X10");
    assert_near(member->values->fb, 900, 0);
    assert_true((member->use & USE_BEAM) && !(member->use & USE_POST));
    assert_near(catalog_member(catalog, "SYP2-2X12")->values->fb, 750, 0);
    assert_null(catalog_member(catalog, "DFL2-2X11"));
    assert_null(catalog_hanger(catalog, "HNG"));
    assert_non_null(catalog_hanger(catalog, "hng-2x10"));
    assert_non_null(catalog_task(catalog, "Hang_Joist"));
    assert_non_null(catalog_trade(catalog, "carpenter"));
    assert_non_null(catalog_supplier(catalog, "yard north"));
    assert_null(catalog_fastener(catalog, ""));
    assert_null(catalog_design(catalog, "Southern Pine", "No.2", 14)); /* Table 4B has no row wider than 12 in */
    assert_null(catalog_design(catalog, "Douglas Fir-Larch", "Construction", 6)); /* graded to 4 in wide */
    assert_string_equal(catalog_design_named(catalog, "Spruce-Pine-Fir No.2", 10)->grade, "No.1/No.2");
    assert_near(catalog_nominal_width("2x10"), 10, 0);
    assert_near(catalog_nominal_width("2 x 6"), 6, 0);
    assert_near(catalog_nominal_width("1-3/4 x 9-1/2"), 0, 0);
    assert_near(catalog_nominal_width(""), 0, 0);
}

/* By price of one, not of a pack: 20.75 for 5 lb beats 6.20 for 1 lb; lengths are left to the cut plan. */
static void test_cheapest(void **state)
{
    const struct catalog *catalog = shipped(state);
    const struct price *price = catalog_cheapest(catalog, "NAIL-16D-COMMON");
    assert_int_equal(price->pack, 5 * DECIMAL_ONE);
    assert_string_equal(price->supplier, "Yard North");
    assert_string_equal(catalog_what(catalog, "plastic 6mil"), "6 mil plastic sheet");
    assert_string_equal(catalog_what(catalog, "DFL2-2X10"), "DFL2-2X10");
    assert_null(catalog_cheapest(catalog, "DFL2-2X10"));
    assert_null(catalog_cheapest(catalog, "LVL-9.5"));
    assert_null(catalog_cheapest(catalog, "nothing of the kind"));
}

static void test_per(void **state)
{
    (void)state;
    assert_true(catalog_per_count() >= 26);
    for (size_t i = 0; i < catalog_per_count(); i++) {
        struct catalog_per per = catalog_per(i);
        assert_true(catalog_per_known(per.per) && per.unit[0] && per.help[0]);
    }
    assert_true(catalog_per_known("Joist_End"));
    assert_true(catalog_per_known("square foot of plaster on lath"));
    assert_false(catalog_per_known("square foot of "));
    assert_false(catalog_per_known("square foot"));
    assert_false(catalog_per_known("gallon"));
}

#define TEST(name) cmocka_unit_test_setup_teardown(name, support_setup, support_teardown)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(test_design_values),
        TEST(test_emin_of_sawn_wood),
        TEST(test_unread_values_say_so),
        TEST(test_sizes),
        TEST(test_nails),
        TEST(test_counts),
        TEST(test_labor_rates),
        TEST(test_depth_families),
        TEST(test_weights),
        TEST(test_screw_gauges),
        TEST(test_nails_a_pound),
        TEST(test_stock_lengths),
        TEST(test_everything_has_a_price),
        TEST(test_hangers),
        TEST(test_look_ups),
        TEST(test_cheapest),
        TEST(test_per),
        TEST(test_nails_of_assemblies),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
