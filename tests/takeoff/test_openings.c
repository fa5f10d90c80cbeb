/* Openings counted, in whole jobs with the shipped catalogs; every count worked out by hand. */
#include "size/made_job.h"

#include "sawbill/takeoff.h"

/* A floor on 8 ft of beam, joists of 12 ft at 8, 24, 40, 56, 72 and 88 in of side A.  Those at 40 and 56 in stop at the
 * stair, those at 24 and 72 in are plies of its trimmers. */
static const char stair[] = "[opening stair]\njoists = joists north\nfrom = 24-3/4 in\nto = 71-1/4 in\nnear = 2 ft\n"
                            "far = 9 ft\nheader = DFL2-2X10\n";

static const struct takeoff *count_with(struct made *made, struct arena *arena, const char *key, const char *value)
{
    made_start(made, arena);
    made_add(made, stair);
    if (key)
        made_set(made, "opening", "stair", key, value);
    made_size(made);
    return takeoff_job(arena, made->job, made->catalog, made->design, &made->diags);
}

static const struct takeoff_line *find(const struct takeoff *takeoff, const char *id)
{
    for (size_t i = 0; i < takeoff->count; i++)
        if (!strcmp(takeoff->line[i].id, id))
            return &takeoff->line[i];
    return NULL;
}

static void assert_counted(const struct takeoff *takeoff, const char *id, int count)
{
    const struct takeoff_line *line = find(takeoff, id);
    if (!line)
        fail_msg("no line %s", id);
    else if (line->count != count * DECIMAL_ONE)
        fail_msg("%s: %lld, not %d", id, (long long)(line->count / DECIMAL_ONE), count);
}

/* Two headers of two plies, 46-1/2 in; two trimmers of two plies, of which the joists at 24 and 72 in are one each, as
 * long as the run less half of the beam (2-1/4 in) and 3-1/2 in on the far bearing: 144 - 2.25 + 3.5 = 145-1/4 in.
 * Side A: 6 joists less 2 that became trimmers: 4 hangers, of which 2 of tails.  A header has a hanger at each end and
 * one for each of its 2 tails.  Joist ends that are cut and hung: 4 + 6 of side B + 2 trimmers. */
static void new_opening(void **state)
{
    struct made made;
    const struct takeoff *takeoff = count_with(&made, *state, NULL, NULL);
    assert_counted(takeoff, "openings/stair/headers", 4);
    assert_near(length_inches(find(takeoff, "openings/stair/headers")->length), 46.5, 0);
    assert_counted(takeoff, "openings/stair/trimmers", 2);
    assert_near(length_inches(find(takeoff, "openings/stair/trimmers")->length), 145.25, 0);
    assert_counted(takeoff, "hangers/north/A", 4);
    assert_counted(takeoff, "hangers/stair/trimmers", 2);
    assert_counted(takeoff, "hangers/stair/near header", 2);
    assert_counted(takeoff, "hangers/stair/far header", 2);
    assert_counted(takeoff, "hangers/stair/near tails", 2);
    assert_counted(takeoff, "hangers/stair/far tails", 2);
    /* HNG-2X10-2: 16 and 6 nails */
    assert_counted(takeoff, "hangers/stair/trimmers/nails in the carrier", 32);
    assert_counted(takeoff, "hangers/stair/far header/nails in the member", 12);
    assert_counted(takeoff, "assembly/joists/hang joist", 12);
    assert_counted(takeoff, "assembly/openings/frame opening", 1);
}

/* From the beam on: no near header, and nothing hangs between the trimmers. */
static void at_the_beam(void **state)
{
    struct made made;
    const struct takeoff *takeoff = count_with(&made, *state, "near", "0");
    assert_counted(takeoff, "openings/stair/headers", 2);
    assert_counted(takeoff, "hangers/north/A", 2);
    assert_null(find(takeoff, "hangers/stair/near header"));
    assert_null(find(takeoff, "hangers/stair/near tails"));
    assert_counted(takeoff, "assembly/joists/hang joist", 10);
}

/* One that is there already: the beam cuts its trimmers, the rest stays as it is. */
static void existing_opening(void **state)
{
    struct made made;
    const struct takeoff *takeoff = count_with(&made, *state, "status", "existing");
    assert_counted(takeoff, "hangers/stair/trimmers", 2);
    assert_counted(takeoff, "hangers/north/A", 4);
    assert_null(find(takeoff, "openings/stair/headers"));
    assert_null(find(takeoff, "openings/stair/trimmers"));
    assert_null(find(takeoff, "hangers/stair/far header"));
    assert_null(find(takeoff, "assembly/openings/frame opening"));
}

/* Beside the pattern: 2 trimmers x 2 faces x 3. */
static void ply_fasteners_under_trimmers(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_add(&made, stair);
    made_set(&made, "beam", "B1", "more at hung beams", "3");
    made_size(&made);
    const struct takeoff *takeoff = takeoff_job(*state, made.job, made.catalog, made.design, &made.diags);
    assert_counted(takeoff, "ply fasteners/B1/hung", 12);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(new_opening, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(at_the_beam, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(existing_opening, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(ply_fasteners_under_trimmers, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
