/* The edition or report of the design values behind each line of a result, as the catalogs give it. */
#include "made_job.h"

static struct design_row *design_of(const struct catalog *catalog, const char *species, const char *grade)
{
    for (size_t i = 0; i < catalog->design_count; i++)
        if (!strcmp(catalog->design[i].species, species) && !strcmp(catalog->design[i].grade, grade))
            return &catalog->design[i];
    fail_msg("no design values of %s %s", species, grade);
    return NULL;
}

static const char *values_of(const struct made *made, const char *id, const char *name)
{
    return made_check(made, id, name)->values;
}

/* Sawn beam on stud posts: stresses and deflections rest on Table 4A of the Supplement, a length of bearing on none, a
 * hanger on its own row. */
static void each_line_says_its_own(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_size(&made);
    const char *supplement = "NDS 2018 Supplement (4A)";
    assert_string_equal(values_of(&made, "beam B1", "bending"), supplement);
    assert_string_equal(values_of(&made, "beam B1", "live deflection"), supplement);
    assert_string_equal(values_of(&made, "beam B1", "ply fastening, joint 1"), supplement);
    assert_string_equal(values_of(&made, "beam B1", "ply fastener distances"), "");
    assert_string_equal(values_of(&made, "beam B1, end 1", "bearing of the beam"), supplement);
    assert_string_equal(values_of(&made, "beam B1, end 1", "least bearing length"), "");
    assert_string_equal(values_of(&made, "post P1", "column"), supplement);
    assert_string_equal(values_of(&made, "shore S1", "shore stud"), supplement);
    const struct hanger *hanger = made.design->beams[0].side[0]->end[0].hanger;
    assert_non_null(hanger);
    assert_string_equal(values_of(&made, "joists north on beam B1, side A", "joist hanger"), hanger->source);
}

/* Two woods in one joint: each check names the wood that it presses.  LVL is typical of its class, from no table. */
static void a_joint_of_two_woods(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "member", "LVL-9.5");
    made_size(&made);
    assert_string_equal(values_of(&made, "beam B1", "bending"), "none: not an NDS table (SCL-typical), unverified");
    assert_string_equal(values_of(&made, "beam B1, end 1", "bearing of the beam"),
                        "none: not an NDS table (SCL-typical), unverified");
    assert_string_equal(values_of(&made, "beam B1, end 1", "end grain of the post"), "NDS 2018 Supplement (4A)");
}

/* The user enters the report of the product in hand, and its number stands on the line; a row that is marked as from
 * memory says so there. */
static void what_the_catalog_says(void **state)
{
    struct made made;
    made_start(&made, *state);
    made.catalog = catalog_read(made.arena, SOURCE_DIR "/catalogs", NULL, &made.diags);
    struct design_row *row = design_of(made.catalog, "Douglas Fir-Larch", "No.2");
    row->edition = "report R-77 of 2025 (invented)";
    row->table = "2";
    row->seen = false;
    made_size(&made);
    assert_string_equal(values_of(&made, "beam B1", "shear"), "report R-77 of 2025 (invented) (2), unverified");
    assert_string_equal(values_of(&made, "beam B1, end 1", "end grain of the post"), "NDS 2018 Supplement (4A)");
    assert_true(made_member(&made, "beam B1")->unverified);
    assert_false(made_member(&made, "post P1")->unverified);
}

/* No line of any kind is without an answer: a wood, a listing, or none because it needs none. */
static void no_line_is_left_out(void **state)
{
    static const char *const needs_none[] = {"distances",  "rows of",   "length",    "soil",
                                             "projection", "thickness", "every ply", "strap"};
    struct made made;
    made_start(&made, *state);
    made_set(&made, "footing", "F1", "thickness", "12 in");
    made_set(&made, "footing", "F1", "size", "48 in");
    made_set(&made, "beam", "B1", "end 2", "pocket");
    made_set(&made, "beam", "B1", "bearing 2", "3-1/2 in");
    made_set(&made, "beam", "B1", "wall at end 2", NULL);
    made_set(&made, "joists", "north", "species", "Southern Pine");
    made_set(&made, "joists", "south", "species", "Douglas Fir-Larch");
    made_size(&made);
    size_t lines = 0;
    for (size_t i = 0; i < made.design->member_count; i++)
        for (size_t k = 0; k < made.design->members[i]->count; k++) {
            const struct check *check = &made.design->members[i]->check[k];
            bool none = false;
            for (size_t n = 0; n < sizeof needs_none / sizeof *needs_none; n++)
                none |= strstr(check->name, needs_none[n]) != NULL;
            assert_non_null(check->values);
            if (none != (*check->values == '\0'))
                fail_msg("%s, %s: '%s'", made.design->members[i]->id, check->name, check->values);
            lines++;
        }
    assert_true(lines > 30);
    assert_string_equal(values_of(&made, "joists north, cut", "shear"), "NDS 2018 Supplement (4B)");
    assert_string_equal(values_of(&made, "joists south, cut", "bending"), "NDS 2018 Supplement (4A)");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(each_line_says_its_own, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_joint_of_two_woods, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(what_the_catalog_says, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(no_line_is_left_out, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
