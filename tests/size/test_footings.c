/* Footings: the least pad, and what a given one does, each figure worked by hand.  Rules: IRC 2021 R403.1.1 and Table
 * R401.4.1, as adopted by states. */
#include "size/made_job.h"

#include "sawbill/footing.h"

/* A concrete contractor's question-and-answer page on basement footings: 13,000 lb on 1,500 psf want 8.667 sq ft, a
 * side of 2.944 ft (without the pad's own weight). */
static void area_of_a_contractor(void **state)
{
    (void)state;
    struct footing_case at = {.load_lb = 13000, .soil_psf = 1500};
    double side = footing_side_in(&at, 0);
    assert_near(side / 12, 2.944, 0.0005);
    assert_near(side * side / 144, 8.667, 0.0005);
    /* and the pressure under that pad is what the soil may bear */
    struct footing_pad pad = {side, 12};
    assert_near(footing_pressure_psf(13000, &pad, 0), 1500, 1e-9);
}

/* 7,500 lb, 1,500 psf, 12 in thick: 1,500 - 150 = 1,350 psf left, 5.556 sq ft, 28.28 in: made 30 in.  From a post of
 * 4-1/2 in it stands out (30 - 4.5)/2 = 12.75 in, more than 12: 13 in thick.  Then 1,500 - 162.5 = 1,337.5 psf,
 * 5.607 sq ft, 28.42 in: still 30 in. */
static void size_and_thickness_together(void **state)
{
    (void)state;
    struct footing_case at = {
        .load_lb = 7500, .soil_psf = 1500, .concrete_pcf = 150, .post_short_in = 4.5, .post_long_in = 4.5};
    assert_near(footing_side_in(&at, 12), 28.28, 0.005);
    assert_near(footing_side_in(&at, 13), 28.42, 0.005);
    struct footing_pad pad;
    assert_true(footing_least(&at, &pad));
    assert_near(pad.side_in, 30, 0);
    assert_near(pad.thickness_in, 13, 0);
    assert_near(footing_projection_in(&pad, 4.5), 12.75, 1e-12);
    /* 7,500/6.25 + 162.5 = 1,362.5 psf */
    assert_near(footing_pressure_psf(7500, &pad, 150), 1362.5, 1e-9);
}

/* A light post: 12 in x 6 in, the least of the section; 100/1 + 75 = 175 psf. */
static void never_below_the_least(void **state)
{
    (void)state;
    struct footing_case at = {
        .load_lb = 100, .soil_psf = 1500, .concrete_pcf = 150, .post_short_in = 3.5, .post_long_in = 4.5};
    struct footing_pad pad;
    assert_true(footing_least(&at, &pad));
    assert_near(pad.side_in, 12, 0);
    assert_near(pad.thickness_in, 6, 0);
    assert_near(footing_pressure_psf(100, &pad, 150), 175, 1e-9);
    at.post_long_in = 9; /* 2 in beyond it at each side: 13, made 14 in; (14 - 3.5)/2 = 5.25 of 6 in */
    assert_true(footing_least(&at, &pad));
    assert_near(pad.side_in, 14, 0);
    assert_near(pad.thickness_in, 6, 0);
}

/* On 500 psf a pad that must be 40 in thick weighs all that the soil bears. */
static void no_pad_on_weak_ground(void **state)
{
    (void)state;
    struct footing_case at = {
        .load_lb = 20000, .soil_psf = 500, .concrete_pcf = 150, .post_short_in = 3.5, .post_long_in = 3.5};
    struct footing_pad pad;
    assert_false(footing_least(&at, &pad));
}

/* Whatever the load: the pad found keeps all four rules, and one step less in side or thickness breaks one. */
static void the_least_is_the_least(void **state)
{
    (void)state;
    for (int load = 500; load <= 20000; load += 250)
        for (int soil = 1500; soil <= 4000; soil += 500) {
            struct footing_case at = {
                .load_lb = load, .soil_psf = soil, .concrete_pcf = 150, .post_short_in = 3.5, .post_long_in = 4.5};
            struct footing_pad pad;
            assert_true(footing_least(&at, &pad));
            assert_true(footing_pressure_psf(load, &pad, 150) <= soil * (1 + 1e-9));
            assert_true(footing_projection_in(&pad, 3.5) <= pad.thickness_in + 1e-9);
            assert_true(footing_projection_in(&pad, 4.5) >= 2);
            assert_true(pad.side_in >= 12 && pad.thickness_in >= 6);
            struct footing_pad thin = {pad.side_in, pad.thickness_in - 1}, small = {pad.side_in - 2, 6};
            assert_true(thin.thickness_in < 6 || footing_projection_in(&thin, 3.5) > thin.thickness_in);
            while (footing_projection_in(&small, 3.5) > small.thickness_in)
                small.thickness_in++;
            assert_true(small.side_in < 12 || footing_pressure_psf(load, &small, 150) > soil);
        }
}

static const char pad_f2[] = "[footing F2]\nstatus = new\nsoil = 1500 psf\nsize = 24 in\nthickness = 12 in\n";

static void with_pad(struct made *made, struct arena *arena)
{
    made_start(made, arena);
    made_add(made, pad_f2);
    made_set(made, "post", "P2", "stands on", "footing F2");
}

/* Whether the load path has a step from one to what begins with other; its pounds. */
static double step_lb(const struct made *made, const char *from, const char *to)
{
    for (size_t i = 0; i < made->design->path_count; i++) {
        const struct path_step *step = &made->design->path[i];
        if (!strcmp(step->from, from) && !strncmp(step->to, to, strlen(to)))
            return loads_total(&step->lb);
    }
    return -1;
}

/* Half of 559.9 plf x 103/12 ft = 2,402.9 lb comes to each post (worked in test_job.c), and 3 x 1.06 plf x 7 ft = 22.3
 * lb of the post itself: 2,425.2 lb on 4 sq ft = 606.3, and 150 psf of the pad: 756.3 psf.  Projection (24 - 3.5)/2 =
 * 10.25 in of 12.  The least: 1,500 - 75 psf, 1.702 sq ft, 15.66 in: 16 in, that stands out 6.25 in: 7 in thick. */
static void pad_of_a_job(void **state)
{
    struct made made;
    with_pad(&made, *state);
    made_size(&made);
    const struct check *soil = made_check(&made, "footing F2", "soil pressure");
    assert_near(soil->demand, 756.3, 0.1);
    assert_near(soil->capacity, 1500, 0);
    assert_string_equal(soil->combination, "D+L");
    assert_near(made_check(&made, "footing F2", "projection")->demand, 10.25, 1e-9);
    assert_near(made_check(&made, "footing F2", "projection")->capacity, 12, 1e-9);
    const struct footing_design *pad = &made.design->footings[1];
    assert_true(pad->passes);
    assert_near(pad->least_side_in, 16, 0);
    assert_near(pad->least_thick_in, 7, 0);
    assert_near(loads_total(&pad->lb), 2425.2, 0.2);
    /* to the ground: 4 cu ft of concrete more */
    assert_near(step_lb(&made, "footing F2", "ground under footing F2, 756 of 1500 psf"), 2425.2 + 600, 0.2);
    assert_true(made.design->passes);
}

/* 24 in on 8 in of concrete: 10.25/8.  14 in: 2,425.2/1.3611 + 100 = 1,881.8 psf. */
static void pads_that_fail(void **state)
{
    struct made made;
    with_pad(&made, *state);
    made_set(&made, "footing", "F2", "thickness", "8 in");
    made_size(&made);
    assert_near(made_check(&made, "footing F2", "projection")->ratio, 10.25 / 8, 1e-9);
    assert_false(made.design->footings[1].passes);
    assert_false(made.design->passes);
    assert_true(made_says(&made, DIAG_S002));
    with_pad(&made, *state);
    made_set(&made, "footing", "F2", "thickness", "8 in");
    made_set(&made, "footing", "F2", "size", "14 in");
    made_size(&made);
    assert_near(made_check(&made, "footing F2", "soil pressure")->demand, 1881.8, 0.3);
    assert_false(made.design->passes);
}

/* Found in the ground: without a size it is asked for in the list, with one it is checked as the job says. */
static void pads_that_are_there(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_size(&made);
    assert_true(
        made_lists(made.design->unchecked, made.design->unchecked_count, "footing F1: its size is not given: verify"));
    made_set(&made, "footing", "F1", "size", "30 in");
    made_size(&made);
    /* both posts, 4,850.3 lb on 6.25 sq ft = 776.1; as thick as it stands out, 13.25 in: 165.6 psf */
    assert_near(made_check(&made, "footing F1", "soil pressure")->demand, 941.7, 0.2);
    assert_null(made_find(&made, "footing F1", "projection"));
    assert_true(made_lists(made.design->basis, made.design->basis_count, "rest on what the job says; verify"));
    assert_non_null(strstr(made_member(&made, "footing F1")->member, "existing: verify"));
}

/* A value above 3,000 psf is rock's, one below 1,500 psf no table's (IRC 2021 Table R401.4.1). */
static void soil_out_of_the_table(void **state)
{
    static const char *const soil[] = {"3500 psf", "1200 psf"};
    for (size_t i = 0; i < 2; i++) {
        struct made made;
        with_pad(&made, *state);
        made_size(&made);
        assert_false(made_says(&made, DIAG_S004));
        made_set(&made, "footing", "F2", "soil", soil[i]);
        made_size(&made);
        assert_true(made_says(&made, DIAG_S004));
    }
}

/* Post on block on post: 2,425.2 lb and the lower post's 22.3 lb.  The block: three 2x4, 9-1/4 in: le/d 6.17, FcE =
 * 0.822 x 440,000/6.167^2 = 9,511; Fc* = 725 x 1.05 = 761.25; a = 12.49, CP = 8.434 - sqrt(71.13 - 15.62) = 0.983:
 * 761.25 x 0.983 x 15.75 = 11,790 lb. */
static void through_a_block_and_a_lower_post(void **state)
{
    struct made made;
    with_pad(&made, *state);
    made_set(&made, "post", "P2", "stands on", "block K1");
    made_add(&made, "[block K1]\ndepth = 9-1/4 in\nstands on = post P3\n"
                    "[post P3]\nmember = SPF-STUD-2X4\nplies = 3\nheight = 84 in\nbraced = both\n"
                    "stands on = footing F2\n");
    made_size(&made);
    const struct check *block = made_check(&made, "block K1 under post P2", "block");
    assert_near(block->demand, 2425.2, 0.2);
    assert_near(block->capacity, 11790, 15);
    assert_near(made_check(&made, "block K1 under post P2", "end grain of the block")->demand, 2425.2 / 15.75, 0.05);
    assert_near(loads_total(&made.design->posts[2].lb), 2447.5, 0.3);
    assert_string_equal(made.design->posts[2].carries, "post P2");
    assert_near(step_lb(&made, "block K1", "post P3"), 2425.2, 0.2);
    assert_near(loads_total(&made.design->footings[1].lb), 2447.5, 0.3);
}

/* The plate under a block: 2,425.2/15.75 = 154 psi of 425 (Spruce-Pine-Fir). */
static void block_on_a_plate(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "post", "P2", "stands on", "block K1");
    made_add(&made, "[block K1]\ndepth = 9-1/4 in\nstands on = wall W2\n"
                    "[wall W2]\nstatus = stays\nheight = 8 ft\nstuds = SPF2-2X4\n");
    made_size(&made);
    const struct check *plate = made_check(&made, "block K1 under post P2", "plate under the post");
    assert_near(plate->demand, 154, 0.1);
    assert_near(plate->capacity, 425, 0);
}

/* A slab of 4 in is no footing. */
static void slab_is_no_footing(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "post", "P2", "stands on", "the concrete Slab of the basement, 4 in");
    made_size(&made);
    assert_true(made_says(&made, DIAG_S004));
    made_start(&made, *state);
    made_set(&made, "post", "P2", "stands on", "a footing below the slab, seen");
    made_size(&made);
    assert_false(made_says(&made, DIAG_S004));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(area_of_a_contractor, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(size_and_thickness_together, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(never_below_the_least, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(no_pad_on_weak_ground, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(the_least_is_the_least, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(pad_of_a_job, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(pads_that_fail, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(pads_that_are_there, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(soil_out_of_the_table, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(through_a_block_and_a_lower_post, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(block_on_a_plate, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(slab_is_no_footing, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
