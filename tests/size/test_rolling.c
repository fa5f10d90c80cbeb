/* What keeps beam ends from rolling over, in whole jobs: 3-2x10 is 4-1/2 x 9-1/4 in, deeper than twice its width (NDS
 * 2018 4.4.1.2). */
#include "size/made_job.h"

static bool basis(const struct made *made, const char *part)
{
    return made_lists(made->design->basis, made->design->basis_count, part);
}

static void start(struct made *made, struct arena *arena, const char *first_joist)
{
    made_start(made, arena);
    made_set(made, "joists", "north", "first joist", first_joist);
}

/* The wood is 103 in long: joists every 16 in from 8 in end 15 in from its other end. */
static void joists_on_both_faces(void **state)
{
    struct made made;
    start(&made, *state, "8 in");
    made_size(&made);
    assert_true(basis(&made, "beam B1, end 1: held against rolling over by joists hung on both faces"));
    assert_true(basis(&made, "beam B1, end 2: held against rolling over by joists hung on both faces"));
    assert_false(made_says(&made, DIAG_S008));
}

/* On one face the first joist stands 25 in from the end, more than 24 in. */
static void first_joist_too_far(void **state)
{
    struct made made;
    start(&made, *state, "25 in");
    made_size(&made);
    assert_true(made_says(&made, DIAG_S008));
    assert_null(made.design->beams[0].held[0]);
    assert_non_null(made.design->beams[0].held[1]);
    start(&made, *state, "25 in");
    made_set(&made, "beam", "B1", "held 1", "blocks");
    made_set(&made, "beam", "B1", "held 1 of", "DFL2-2X10");
    made_size(&made);
    assert_false(made_says(&made, DIAG_S008));
    assert_true(basis(&made, "beam B1, end 1: held against rolling over by a full-depth block on each face"));
}

/* Joists lie on a dropped beam and hold only its top. */
static void dropped_is_asked(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "set", "dropped");
    made_size(&made);
    assert_true(made_says(&made, DIAG_S008));
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "set", "dropped");
    made_set(&made, "beam", "B1", "specified by", "R. Ames, PE");
    made_set(&made, "beam", "B1", "specified span", "8 ft");
    made_set(&made, "beam", "B1", "sheet", "S1");
    made_size(&made);
    assert_false(made_says(&made, DIAG_S008));
    assert_true(made_lists(made.design->unchecked, made.design->unchecked_count, "end 1 of beam B1 from rolling"));
}

/* 4 - 2x10: 6 in wide, 9-1/4 in deep, less than 12 in. */
static void squat(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "set", "dropped");
    made_set(&made, "beam", "B1", "plies", "4");
    made_size(&made);
    assert_false(made_says(&made, DIAG_S008));
    assert_true(basis(&made, "no deeper than twice its width"));
}

/* A 2x8 block is 7-1/4 in, 8-3/4 in are wanted. */
static void block_too_low(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "held 1", "blocks");
    made_set(&made, "beam", "B1", "held 1 of", "DFL2-2X8");
    made_size(&made);
    assert_near(made_check(&made, "beam B1", "end 1, block as deep as the beam")->ratio, 8.75 / 7.25, 1e-9);
    assert_true(made_says(&made, DIAG_S002));
}

static void codes_not_there(void **state)
{
    static const char *const cases[][2] = {{"blocks", "DFL2-2X9"}, {"straps", "HNG-2X10"}, {"straps", "STRAP-9"}};
    for (size_t i = 0; i < 3; i++) {
        struct made made;
        made_start(&made, *state);
        made_set(&made, "beam", "B1", "held 1", cases[i][0]);
        made_set(&made, "beam", "B1", "held 1 of", cases[i][1]);
        made_size(&made);
        assert_true(made_says(&made, DIAG_C006));
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(joists_on_both_faces, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(first_joist_too_far, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(dropped_is_asked, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(squat, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(block_too_low, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(codes_not_there, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
