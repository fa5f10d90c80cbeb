/* Net uplift as the job gives it: hangers, beam ends, the beam bent upward; and no combination with wind. */
#include "size/made_job.h"

/* Side A is a roof of 10 + 20 psf, its rafters 12 ft long at 16 in; side B brings nothing.  The wood is 103 in long. */
static void under_a_roof(struct made *made, struct arena *arena, const char *psf)
{
    made_start(made, arena);
    made_set(made, "area", "floor", "dead", "0 psf");
    made_set(made, "area", "floor", "live", "0 psf");
    made_set(made, "joists", "north", "area", "area roof");
    made_add(made, "[area roof]\ndead = 10 psf\nlive = 20 psf\nlive is = roof\nsnow = 0 psf\n");
    if (psf)
        made_set(made, "area", "roof", "net uplift", psf);
}

static bool basis_has(const struct made *made, const char *part)
{
    return made_lists(made->design->basis, made->design->basis_count, part);
}

static bool unchecked_has(const struct made *made, const char *part)
{
    return made_lists(made->design->unchecked, made->design->unchecked_count, part);
}

/* 20 psf x 6 ft x 16/12 ft = 160 lb at each hanger, listed 430 lb up: 0.372; down 30 x 6 x 16/12 = 240 lb of 1,000 or
 * more at CD 1.25, 0.24 at most.  120 plf over 103 in are 1,030 lb, 515 an end; a cap that fits 4-1/2 in is listed 900
 * lb.  The dead load of the roof stands on the beam whole all the while: 10 x 6 x 8.583/2 = 257.5 lb and half of the
 * wood's 84.98. */
static void hangers_and_ends(void **state)
{
    struct made made;
    under_a_roof(&made, *state, "20 psf");
    made_size(&made);
    const struct check *hanger = made_check(&made, "joists north on beam B1, side A", "joist hanger");
    assert_string_equal(hanger->combination, "net uplift");
    assert_near(hanger->demand, 160, 1e-9);
    assert_near(hanger->capacity, 430, 0);
    const struct check *end = made_check(&made, "beam B1, end 1", "held down");
    assert_near(end->demand, 515, 1e-6);
    assert_near(end->capacity, 900, 0);
    assert_string_equal(made.design->beams[0].hold_down[0]->code, "CAP-4.5");
    assert_near(made.design->beams[0].end_lb[0].of[LOAD_DEAD], 257.5 + 42.49, 0.01);
    assert_true(made.design->beams[0].passes);
    assert_true(basis_has(&made, "net uplift of area roof: 20 psf on plan"));
    assert_true(basis_has(&made, "beam B1 is lifted by 515 lb at end 1 and 515 lb at end 2"));
    assert_true(basis_has(&made, "joists north: each end at beam B1 is lifted by 160 lb"));
    assert_true(unchecked_has(&made, "below the ends of beam B1 against its uplift"));
}

/* 120 plf on a span of 99.5 in: 10 x 99.5^2/8 = 12,375 in-lb on 3 x 1.5 x 9.25^2/6 = 64.17 in3: 192.8 psi. */
static void beam_bent_upward(void **state)
{
    struct made made;
    under_a_roof(&made, *state, "20 psf");
    made_size(&made);
    const struct check *bending = made_check(&made, "beam B1", "bending upward");
    assert_near(bending->demand, 192.8, 0.05);
    assert_near(bending->at_in, 51.5, 0.01);
    assert_true(bending->capacity < made_check(&made, "beam B1", "bending")->capacity * 1.6);
}

/* 60 psf: 480 lb at each hanger, more than the 430 of every one that fits; 1,545 lb at the ends, more than the cap. */
static void too_much(void **state)
{
    struct made made;
    under_a_roof(&made, *state, "60 psf");
    made_size(&made);
    const struct check *hanger = made_check(&made, "joists north on beam B1, side A", "joist hanger");
    assert_near(hanger->demand, 480, 1e-9);
    assert_near(hanger->ratio, 480.0 / 430, 1e-9);
    assert_near(made_check(&made, "beam B1, end 2", "held down")->ratio, 1545.0 / 900, 1e-6);
    assert_false(made.design->beams[0].passes);
    /* a strap at both ends: 2,720 lb at the duration of wind */
    made_set(&made, "beam", "B1", "hold down", "STRAP-16GA-48");
    made_size(&made);
    assert_near(made_check(&made, "beam B1, end 2", "held down")->capacity, 2720, 0);
    made_set(&made, "beam", "B1", "hold down", "HNG-2X10");
    made.diags.count = 0;
    made_size(&made);
    assert_true(made_says(&made, DIAG_C006));
}

/* In a pocket nothing of the catalog is chosen: the job names a strap, or who answers. */
static void in_a_pocket(void **state)
{
    struct made made;
    under_a_roof(&made, *state, "20 psf");
    made_set(&made, "beam", "B1", "end 2", "pocket");
    made_set(&made, "beam", "B1", "bearing 2", "3-1/2 in");
    made_set(&made, "beam", "B1", "wall at end 2", NULL);
    made_size(&made);
    assert_near(made_check(&made, "beam B1, end 2", "held down")->capacity, 0, 0);
    assert_null(made.design->beams[0].hold_down[1]);
    assert_false(made.design->beams[0].passes);
    made_set(&made, "beam", "B1", "hold down engineer", "R. Ames, S2");
    made_size(&made);
    assert_null(made_find(&made, "beam B1, end 2", "held down"));
    assert_true(unchecked_has(&made, "what holds beam B1, end 2 down against 515 lb: by the engineer, R. Ames, S2"));
}

/* Roof in pounds: a post in the middle that wind lifts by 1,000 lb, 500 an end, and 1,000 x 99.5/4 = 24,875 in-lb on
 * 64.17 in3 = 387.6 psi upward; a rafter tail beside it, 300 lb more: 150 an end.  The same as 120 plf from end to end:
 * 515 an end.  What no key says is listed. */
static void pounds_of_a_load(void **state)
{
    static const char load[] = "[load X]\non = beam B1\n%s\nsnow level = allowable\nheld by = shore S1\n";
    static const char tail[] =
        "[obstruction tail]\nwhat = rafter tail\non = beam B1\nat = 51.5 in\nthen = lands on the "
        "beam\ndead = 60 lb\nsnow = 90 lb\nsnow level = allowable\nseat = 3-1/2 in\nown prop = "
        "yes\n";
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "above", "load X");
    made_add(&made, arena_printf(*state, load, "at = 51.5 in\ndead = 400 lb\nsnow = 600 lb\nnet uplift = 1000 lb"));
    made_size(&made);
    assert_near(made_check(&made, "beam B1, end 1", "held down")->demand, 500, 1e-6);
    assert_near(made_check(&made, "beam B1", "bending upward")->demand, 387.6, 0.1);
    assert_true(basis_has(&made, "net uplift of load X: 1000 lb, 0.6D + 0.6W as the job gives it"));
    assert_false(unchecked_has(&made, "net uplift of load X"));
    made_add(&made, tail);
    made_size(&made);
    assert_near(made_check(&made, "beam B1, end 2", "held down")->demand, 500, 1e-6);
    assert_true(unchecked_has(&made, "net uplift of obstruction tail, which gives its loads itself"));
    made_set(&made, "obstruction", "tail", "net uplift", "300 lb");
    made_size(&made);
    assert_near(made_check(&made, "beam B1, end 2", "held down")->demand, 650, 1e-6);
    assert_true(basis_has(&made, "net uplift of obstruction tail: 300 lb"));

    made_start(&made, *state);
    made_set(&made, "beam", "B1", "above", "load X");
    made_add(&made,
             arena_printf(*state, load, "from = 0 in\nto = 103 in\ndead = 0 plf\nsnow = 0 plf\nnet uplift = 120 plf"));
    made_size(&made);
    assert_near(made_check(&made, "beam B1, end 1", "held down")->demand, 515, 1e-6);
}

static void asked_and_answered(void **state)
{
    struct made made;
    under_a_roof(&made, *state, NULL);
    made_size(&made);
    assert_true(made_says(&made, DIAG_Q013));
    made_set(&made, "area", "roof", "uplift engineer", "R. Ames, S2");
    made.diags.count = 0;
    made_size(&made);
    assert_false(made_says(&made, DIAG_Q013));
    assert_true(basis_has(&made, "net uplift of area roof: none by the engineer (R. Ames, S2)"));
    assert_null(made_find(&made, "beam B1, end 1", "held down"));
    under_a_roof(&made, *state, "0 psf");
    made_size(&made);
    assert_false(made_says(&made, DIAG_Q013));
    assert_null(made_find(&made, "beam B1", "bending upward"));
}

/* No check is made under a combination with wind or earthquake, and every design says so. */
static void no_wind_is_computed(void **state)
{
    static const char *const level[] = {"allowable", "strength"};
    for (size_t k = 0; k < 2; k++) {
        struct made made;
        under_a_roof(&made, *state, "20 psf");
        made_set(&made, "area", "roof", "snow", "30 psf");
        made_set(&made, "area", "roof", "snow is", "on the roof");
        made_set(&made, "area", "roof", "snow level", level[k]);
        made_size(&made);
        for (size_t i = 0; i < made.design->combination_count; i++)
            assert_null(strpbrk(made.design->combinations[i].name, "WE"));
        for (size_t i = 0; i < made.design->member_count; i++)
            for (size_t c = 0; c < made.design->members[i]->count; c++) {
                const char *under = made.design->members[i]->check[c].combination;
                assert_true(!under || !strpbrk(under, "WE"));
            }
        assert_true(unchecked_has(&made, "wind and earthquake, out of scope here"));
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(hangers_and_ends, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(beam_bent_upward, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(too_much, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(in_a_pocket, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(pounds_of_a_load, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(asked_and_answered, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(no_wind_is_computed, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
