/* Joists that run on over a dropped beam, worked by hand with the equation of three moments: for w on both runs A and B
 * the moment over the beam is (wA A^3 + wB B^3) / (8 (A + B)), and a far bearing has w run / 2 - M / run. */
#include "size/made_job.h"

static void made_over(struct made *made, struct arena *arena, const char *run_south)
{
    made_start(made, arena);
    made_set(made, "beam", "B1", "set", "dropped");
    made_set(made, "joists", "north", "over the wall", "continuous");
    made_set(made, "joists", "south", "over the wall", "continuous");
    made_set(made, "joists", "south", "run", run_south);
    made_size(made);
}

static const char *basis_of(const struct made *made, const char *start)
{
    for (size_t i = 0; i < made->design->basis_count; i++)
        if (!strncmp(made->design->basis[i], start, strlen(start)))
            return made->design->basis[i];
    return "";
}

static const char *said(const struct made *made, enum diag_code code)
{
    for (size_t i = 0; i < made->diags.count; i++)
        if (made->diags.item[i].code == code)
            return made->diags.item[i].text;
    return "";
}

/* Runs 12 and 10 ft, 10 + 40 psf, joists 16 in apart.  Dead: M = 10 x 2728/176 = 155; live on the 12 ft alone: M = 40 x
 * 1728/176 = 392.7; on the 10 ft alone: 40 x 1000/176 = 227.3.
 * North least 60 - 155/12 - 227.3/12 = 28.14, most 60 - 155/12 + 240 - 392.7/12 = 254.4 plf: 37.5 and 339.1 lb a joist.
 * South least 50 - 15.5 - 39.27 = -4.77: it lifts by 6.4 lb; most 50 - 15.5 + 200 - 22.7 = 211.8: 282.4 lb. */
static void far_bearings(void **state)
{
    struct made made;
    made_over(&made, *state, "10 ft");
    assert_non_null(strstr(basis_of(&made, "joists north run on"), " 38 to 339 lb of one joist"));
    assert_non_null(strstr(basis_of(&made, "joists south run on"), " -6 to 282 lb of one joist"));
    const char *uplift = said(&made, DIAG_S004);
    assert_non_null(strstr(uplift, "joists south lift"));
    assert_non_null(strstr(uplift, "holding down by 6 lb"));
    assert_non_null(strstr(uplift, "D+L"));
}

/* Equal runs: dead 3/8 x 10 x 12 = 45, live on the other run alone 40 x 12/16 = 30 less: 15 plf, nothing lifts; on its
 * own run alone 7/16 x 40 x 12 = 210 more: 255 plf, 340 lb a joist.  Beam: 1.25 x 50 x 12 = 750 plf, half from each
 * side. */
static void equal_runs(void **state)
{
    struct made made;
    made_over(&made, *state, "12 ft");
    assert_false(made_says(&made, DIAG_S004));
    assert_non_null(strstr(basis_of(&made, "joists north run on"), " 20 to 340 lb of one joist"));
    for (int side = 0; side < 2; side++)
        assert_near(loads_total(&made.design->beams[0].side[side]->line_plf), 375, 1e-9);
}

/* 4 ft beside 16 ft: dead alone lifts the short end: M = 10 x 4160/160 = 260, 20 - 65 = -45 plf; live on the 16 ft:
 * M = 40 x 4096/160 = 1024, -256 more: -301 plf, 401.3 lb a joist. */
static void short_run_lifts(void **state)
{
    struct made made;
    made_over(&made, *state, "4 ft");
    made_set(&made, "joists", "north", "run", "16 ft");
    made_size(&made);
    assert_non_null(strstr(basis_of(&made, "joists south run on"), " -401 to "));
}

/* Joists that are cut, or end over the beam, are no two spans. */
static void others_do_not(void **state)
{
    struct made made;
    made_over(&made, *state, "10 ft");
    made_set(&made, "beam", "B1", "set", "flush");
    made_size(&made);
    assert_string_equal(basis_of(&made, "joists north run on"), "");
    made_over(&made, *state, "10 ft");
    made_set(&made, "joists", "north", "over the wall", "butted");
    made_set(&made, "joists", "south", "over the wall", "butted");
    made_size(&made);
    assert_string_equal(basis_of(&made, "joists north run on"), "");
    assert_near(loads_total(&made.design->beams[0].side[0]->line_plf), 300, 1e-9);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(far_bearings, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(equal_runs, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(short_run_lifts, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(others_do_not, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
