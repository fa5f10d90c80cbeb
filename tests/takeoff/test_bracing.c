/* Kickers of an upset beam, and what holds beam ends, counted from the job by hand. */
#include "size/made_job.h"

#include "sawbill/takeoff.h"

static const struct takeoff_line *find(const struct takeoff *takeoff, const char *id)
{
    for (size_t i = 0; i < takeoff->count; i++)
        if (!strcmp(takeoff->line[i].id, id))
            return &takeoff->line[i];
    return NULL;
}

static const struct takeoff *count(struct made *made, const char *every)
{
    made_set(made, "beam", "B1", "set", "upset");
    made_set(made, "beam", "B1", "above joists by", "2 in");
    made_set(made, "beam", "B1", "kickers every", every);
    made_set(made, "beam", "B1", "kickers of", "SPF2-2X4");
    made_size(made);
    return takeoff_job(made->arena, made->job, made->catalog, made->design, &made->diags);
}

/* Span 103 - 3-1/2 in = 99-1/2 in: ceil(99.5/48) - 1 = 2.  Each 2 x 1.41421 = 2.828, up to 2-7/8, + 12 = 14-7/8 in. */
static void kickers(void **state)
{
    struct made made;
    made_start(&made, *state);
    const struct takeoff *takeoff = count(&made, "4 ft");
    const struct takeoff_line *line = find(takeoff, "kickers/B1");
    assert_non_null(line);
    assert_int_equal(line->count, 2 * DECIMAL_ONE);
    assert_int_equal(line->length, 119 * LENGTH_INCH / 8);
    assert_string_equal(line->item, "SPF2-2X4");
    assert_int_equal(find(takeoff, "assembly/kickers/nail kicker")->count, 2 * DECIMAL_ONE);
}

/* Farther apart than the span is long: none. */
static void none_needed(void **state)
{
    struct made made;
    made_start(&made, *state);
    const struct takeoff *takeoff = count(&made, "10 ft");
    assert_null(find(takeoff, "kickers/B1"));
    assert_null(find(takeoff, "assembly/kickers/nail kicker"));
}

/* End 1: two blocks of 14-1/2 in.  End 2: two king studs of 84 in post + 9-1/4 in beam = 93-1/4 in. */
static void ends_held_by_wood(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "held 1", "blocks");
    made_set(&made, "beam", "B1", "held 1 of", "DFL2-2X10");
    made_set(&made, "beam", "B1", "held 2", "king studs");
    made_set(&made, "beam", "B1", "held 2 of", "SPF-STUD-2X4");
    const struct takeoff *takeoff = count(&made, "4 ft");
    const struct takeoff_line *block = find(takeoff, "held/B1/end 1"), *stud = find(takeoff, "held/B1/end 2");
    assert_int_equal(block->count, 2 * DECIMAL_ONE);
    assert_int_equal(block->length, 29 * LENGTH_INCH / 2);
    assert_int_equal(stud->count, 2 * DECIMAL_ONE);
    assert_int_equal(stud->length, 373 * LENGTH_INCH / 4);
    assert_int_equal(find(takeoff, "assembly/held ends/hold beam end")->count, 2 * DECIMAL_ONE);
    /* IRC 2021 Table R602.3(1): item 1, 3 toe nails a block; item 12, 3 end nails a king stud */
    assert_int_equal(find(takeoff, "held/B1/end 1/nails to the plate")->count, 6 * DECIMAL_ONE);
    assert_int_equal(find(takeoff, "held/B1/end 2/nails to the beam")->count, 6 * DECIMAL_ONE);
}

/* Two straps with seven nails at each end; their nails are theirs. */
static void end_held_by_straps(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "held 2", "straps");
    made_set(&made, "beam", "B1", "held 2 of", "STRAP-16GA-18");
    const struct takeoff *takeoff = count(&made, "4 ft");
    assert_int_equal(find(takeoff, "held/B1/end 2")->count, 2 * DECIMAL_ONE);
    assert_int_equal(find(takeoff, "held/B1/end 2/nails at one end")->count, 14 * DECIMAL_ONE);
    assert_int_equal(find(takeoff, "assembly/held ends/hold beam end")->count, DECIMAL_ONE);
    assert_null(find(takeoff, "held/B1/end 2/nails to plates"));
    assert_null(find(takeoff, "held/B1/end 1"));
}

/* Over an inner support likewise: two blocks of 14-1/2 in with 3 toe nails each, and one more place held. */
static void inner_support_held(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "clear span", "16 ft");
    made_set(&made, "beam", "B1", "inner", "wall plate at 8 ft, bearing 3-1/2 in, held by blocks of DFL2-2X10");
    const struct takeoff *takeoff = count(&made, "4 ft");
    assert_int_equal(find(takeoff, "held/B1/inner support 1")->count, 2 * DECIMAL_ONE);
    assert_int_equal(find(takeoff, "held/B1/inner support 1")->length, 29 * LENGTH_INCH / 2);
    assert_int_equal(find(takeoff, "held/B1/inner support 1/nails to the plate")->count, 6 * DECIMAL_ONE);
    assert_int_equal(find(takeoff, "assembly/held ends/hold beam end")->count, DECIMAL_ONE);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(kickers, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(none_needed, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(ends_held_by_wood, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(inner_support_held, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(end_held_by_straps, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
