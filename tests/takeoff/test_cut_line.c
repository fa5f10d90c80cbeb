/* Where joists are cut for a beam, on the plain job; and the hangers of joists that were measured one by one. */
#include "../size/made_job.h"
#include "sawbill/takeoff.h"

static const struct takeoff *count_with(struct made *made, struct arena *arena, const char *const (*set)[3],
                                        size_t count)
{
    made_start(made, arena);
    for (size_t i = 0; i < count; i++)
        made_set(made, set[i][0], set[i][0][0] == 'b' ? "B1" : "north", set[i][1], set[i][2]);
    made_size(made);
    return takeoff_job(arena, made->job, made->catalog, made->design, &made->diags);
}

static const struct cut_side *side_of(const struct takeoff *takeoff, size_t index)
{
    assert_int_equal(takeoff->cut_side_count, 2);
    return &takeoff->cut_side[index];
}

/* A beam of 3 x 1-1/2 in: 2-1/4 + 1/16 from its middle; 12 ft less that stays.  A joist brings 10 psf x 16 in x 6 ft =
 * 80 lb of dead load to its end, 50 psf: 400 lb. */
static void cut_line(void **state)
{
    struct made made;
    const struct cut_side *side = side_of(count_with(&made, *state, NULL, 0), 0);
    assert_int_equal(side->clearance, LENGTH_INCH / 16);
    assert_int_equal(side->cut_line, 2 * LENGTH_INCH + 5 * LENGTH_INCH / 16);
    assert_int_equal(side->joist_length, 144 * LENGTH_INCH - side->cut_line);
    assert_int_equal(side->guide_line, 0);
    assert_near(side->rests_lb, 80, 1e-6);
    assert_near(side->most_lb, 400, 1e-6);
}

/* The shoe's edge runs 5 in behind the blade: 2-1/4 + 1/8 + 5. */
static void guide_line(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "job", "", "saw offset", "5 in");
    made_set(&made, "beam", "B1", "clearance", "1/8 in");
    made_size(&made);
    const struct cut_side *side = side_of(takeoff_job(*state, made.job, made.catalog, made.design, &made.diags), 0);
    assert_int_equal(side->guide_line, 59 * LENGTH_INCH / 8);
    assert_int_equal(made_stops(&made), 0);
}

/* Hangers of the shipped catalog are listed for a gap of 1/8 in. */
static void more_than_the_gap_stops(void **state)
{
    struct made made;
    (void)count_with(&made, *state, (const char *const[][3]){{"beam", "clearance", "3/16 in"}}, 1);
    size_t said = 0;
    for (size_t i = 0; i < made.diags.count; i++)
        said += made.diags.item[i].code == DIAG_T007;
    assert_int_equal(said, 1);
    assert_true(made_stops(&made) > 0);
}

static decimal_t count_of(const struct takeoff *takeoff, const char *id)
{
    for (size_t i = 0; i < takeoff->count; i++)
        if (!strcmp(takeoff->line[i].id, id))
            return takeoff->line[i].count;
    return 0;
}

/* Six joists at 8 to 88 in on a beam of 103 in: one 1-5/8 in wide, two of 2 in, three of the book's. */
static void hangers_by_their_own_size(void **state)
{
    struct made made;
    const struct takeoff *takeoff = count_with(
        &made, *state,
        (const char *const[][3]){{"joists", "measured widths", "1-5/8 in at 24 in, 2 in from 40 in to 56 in"}}, 1);
    assert_int_equal(count_of(takeoff, "hangers/north/A"), 3 * DECIMAL_ONE);
    assert_int_equal(count_of(takeoff, "hangers/north/A/HNG-W158-10"), DECIMAL_ONE);
    assert_int_equal(count_of(takeoff, "hangers/north/A/HNG-R2X10"), 2 * DECIMAL_ONE);
    assert_int_equal(count_of(takeoff, "hangers/north/A/HNG-R2X10/nails in the carrier"), 20 * DECIMAL_ONE);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(cut_line, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(guide_line, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(more_than_the_gap_stops, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(hangers_by_their_own_size, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
