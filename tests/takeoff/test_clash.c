/* Hangers that overlap on a face of a beam, by hand. */
#include "house.h"

static size_t clashes(const struct house *house, const char **first)
{
    size_t count = 0;
    for (size_t i = 0; i < house->diags.count; i++)
        if (house->diags.item[i].code == DIAG_T010 && count++ == 0)
            *first = house->diags.item[i].text;
    return count;
}

/* Two single joists want 1-1/2 in + 2 flanges of 1-1/4 in = 4 in between their middles. */
static void two_joists_of_one_face(void **state)
{
    struct house *house = house_new(*state);
    const char *text = NULL;
    (void)house_count(house);
    assert_int_equal(clashes(house, &text), 0);
    house->end[0][1].at = house->end[0][0].at + INCHES(4);
    (void)house_count(house);
    assert_int_equal(clashes(house, &text), 0);
    house->end[0][1].at -= LENGTH_INCH / 16;
    (void)house_count(house);
    assert_int_equal(clashes(house, &text), 1);
    assert_non_null(strstr(text, "on face A of 'beam B1' the hangers of joist A1 at 7\" and joist A2 at 10-15/16\""));
    assert_non_null(strstr(text, "3-15/16\" between their middles, 4\" wanted"));
    house->beam[0].clear_of_hangers.length = INCHES(1); /* narrower flanges: 3-1/2 in */
    house->diags.count = 0;
    (void)house_count(house);
    assert_int_equal(clashes(house, &text), 0);
}

/* A doubled one is 3 in wide: 2-1/4 + 2-1/2 = 4-3/4 in beside a single one. */
static void a_doubled_joist_is_wider(void **state)
{
    struct house *house = house_new(*state);
    const char *text = NULL;
    house->end[1][7].at = house->end[1][8].at - INCHES(4.75);
    (void)house_count(house);
    assert_int_equal(clashes(house, &text), 0);
    house->end[1][7].at += LENGTH_INCH / 16;
    (void)house_count(house);
    assert_int_equal(clashes(house, &text), 1);
}

/* B2, 3 in wide, hangs on B1 at 25 in: joist A2 stands at 23 in, B2 at 23 in too; it fits on no face.  With side B free
 * it hangs there. */
static void a_hung_beam_takes_the_free_face(void **state)
{
    struct house *house = house_new(*state);
    const char *text = NULL;
    house->beam[1].end_[1].at_length = INCHES(25);
    (void)house_count(house);
    assert_int_equal(clashes(house, &text), 1);
    assert_non_null(strstr(text, "joist A2 at 1' 11\" and beam B2 at 2' 1\""));
    house->beam_design[0].side[1] = NULL;
    house->diags.count = 0;
    (void)house_count(house);
    assert_int_equal(clashes(house, &text), 0);
}

/* A trimmer of two 2x10 beside a joist: 1-1/2 + 3/4 + 2-1/2 = 4-3/4 in. */
static void a_trimmer_and_a_joist(void **state)
{
    struct house *house = house_new(*state);
    const char *text = NULL;
    struct opening_design opening = {.opening = &house->opening[0],
                                     .side = &house->joist_design[0],
                                     .trimmer = &house->member[DFL_2X10],
                                     .trimmers = {{.at = INCHES(11.75)}, {.at = INCHES(31)}}};
    house->opening[0].trimmer_plies.count = 2;
    house->design.openings = &opening;
    house->design.opening_count = 1;
    (void)house_count(house);
    assert_int_equal(clashes(house, &text), 0);
    opening.trimmers[0].at -= LENGTH_INCH / 8;
    house->diags.count = 0;
    (void)house_count(house);
    assert_int_equal(clashes(house, &text), 1);
    assert_non_null(strstr(text, "trimmer 1 of opening stair"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(two_joists_of_one_face, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_doubled_joist_is_wider, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_hung_beam_takes_the_free_face, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_trimmer_and_a_joist, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
