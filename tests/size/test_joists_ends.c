/* Joists measured one by one, in a whole job: their own sizes, their own hangers, how far off the line they stand. */
#include "made_job.h"

/* Joists of side A stand at 8, 24, 40, 56, 72 and 88 in. */
static const struct joist_end *end_of(const struct made *made, size_t index)
{
    const struct joist_design *side = made->design->beams[0].side[0];
    assert_true(index < side->count);
    assert_int_equal(side->end[index].at, side->place[index]);
    return &side->end[index];
}

/* What a list does not name has the size of its section: 1-1/2 x 9-1/4 in of a 2x10 (NDS Supplement 2018 Table 1A). */
static void own_sizes_take_their_own_hangers(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "joists", "north", "measured widths", "1-5/8 in at 24 in, 2 in from 40 in to 56 in");
    made_set(&made, "joists", "north", "measured depths", "9-3/4 in at 40 in");
    made_size(&made);
    const double inches[][2] = {{1.5, 9.25}, {1.625, 9.25}, {2, 9.75}, {2, 9.25}, {1.5, 9.25}};
    for (size_t i = 0; i < 5; i++) {
        const struct joist_end *end = end_of(&made, i);
        assert_near(length_inches(end->width), inches[i][0], 1e-9);
        assert_near(length_inches(end->depth), inches[i][1], 1e-9);
        assert_int_equal(end->own_size, i > 0 && i < 4);
        assert_non_null(end->hanger);
        assert_true(length_inches(end->hanger->width_from) <= inches[i][0] + 1.0 / 64);
        assert_true(length_inches(end->hanger->width_to) >= inches[i][0] - 1.0 / 64);
    }
    assert_ptr_equal(end_of(&made, 2)->hanger, end_of(&made, 3)->hanger);
    assert_ptr_not_equal(end_of(&made, 0)->hanger, end_of(&made, 1)->hanger);
    assert_ptr_equal(end_of(&made, 0)->hanger, end_of(&made, 4)->hanger);
    (void)made_find(&made, "joists north on beam B1, side A", "joist hanger, 1-5/8\" x 9-1/4\"");
}

/* A joist that no hanger fits fails the job, and the message is of that one. */
static void an_own_size_that_no_hanger_fits(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "joists", "north", "measured widths", "2-1/2 in at 24 in");
    made_size(&made);
    assert_null(end_of(&made, 1)->hanger);
    assert_non_null(end_of(&made, 0)->hanger);
    assert_false(made.design->passes);
}

/* The thinnest joist decides whether the cut ones hold: S = b d^2 / 6, 1-1/4 for 1-1/2 in raises the stress by 1.2. */
static void the_least_one_is_checked(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "joists", "north", "species", "Douglas Fir-Larch");
    made_set(&made, "joists", "north", "grade", "No.2");
    made_size(&made);
    double book = made_find(&made, "joists north, cut", "bending")->demand;
    made_set(&made, "joists", "north", "measured widths", "1-1/4 in at 24 in");
    made.diags = (struct diags){.arena = *state};
    made_size(&made);
    assert_near(made_find(&made, "joists north, cut", "bending")->demand, 1.2 * book, 1e-6 * book);
}

static void off_the_line(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "joists", "north", "high by", "1/4 in at 24 in");
    made_set(&made, "joists", "north", "low by", "3/8 in from 40 in to 56 in");
    made_size(&made);
    const double off[] = {0, 0.25, -0.375, -0.375, 0};
    for (size_t i = 0; i < 5; i++)
        assert_near(length_inches(end_of(&made, i)->off_line), off[i], 1e-9);
    assert_ptr_equal(end_of(&made, 1)->hanger, end_of(&made, 0)->hanger);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(own_sizes_take_their_own_hangers, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(an_own_size_that_no_hanger_fits, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(the_least_one_is_checked, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(off_the_line, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
