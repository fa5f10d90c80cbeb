/* A shore that is a beam on posts, and a shore that holds an old beam.  Joists north of the plain job: 12 ft, 50 psf,
 * set back 3 ft: 50 x 6 x 12/9 = 400 plf along the shore; one joist's end at 16 in: 533.3 lb.  2 - 2x10 weigh 2 x 3.30
 * plf. All figures by statics, worked by hand. */
#include "made_job.h"

#include <math.h>

#include "sawbill/shoring.h"

static void with_strongback(struct made *made, struct arena *arena, const char *length, const char *supports)
{
    made_start(made, arena);
    made_set(made, "shore", "S1", "strongback", "DFL2-2X10");
    made_set(made, "shore", "S1", "strongback plies", "2");
    made_set(made, "shore", "S1", "length", length);
    made_set(made, "shore", "S1", "supports", supports);
}

/* One span of 6 ft: (406.6/12) x 72^2/8 = 21,956.4 in-lb, and P s/8 = 533.33 x 16/8 = 1,066.7: 23,023.1 on 2 x 21.391 =
 * 42.781 in3: 538.2 psi.  Shear 406.6 x 3 + 533.33/2 = 1,486.5 lb on 27.75 in2 x 1.5: 80.35 psi of 180 x 1.25.  Sag 5 w
 * L^4/(384 E I) = 5 x 33.883 x 72^4/(384 x 1,600,000 x 197.86) = 0.03745 in of 72/360.  Each post 1,486.5 lb: on 1-1/2
 * in of post and 3 in of strongback 330.3 psi of 625; on the plate 1.5 x 3.5: 283.1 psi of 425. */
static void one_span(void **state)
{
    struct made made;
    with_strongback(&made, *state, "6 ft", "0 in, 6 ft");
    made_size(&made);
    const struct check *bending = made_check(&made, "shore S1", "strongback, bending");
    assert_near(bending->demand, 538.2, 0.1);
    assert_string_equal(bending->combination, "D+L");
    const struct check *shear = made_check(&made, "shore S1", "strongback, shear");
    assert_near(shear->demand, 80.35, 0.01);
    assert_near(shear->capacity, 225, 1e-9);
    const struct check *sag = made_check(&made, "shore S1", "strongback, sag");
    assert_near(sag->demand, 0.03745, 0.0001);
    assert_near(sag->capacity, 0.2, 1e-9);
    assert_near(made_check(&made, "shore S1", "strongback on its post")->demand, 330.3, 0.1);
    assert_near(made_check(&made, "shore S1", "plate under the post")->demand, 283.1, 0.1);
    assert_near(made_check(&made, "shore S1", "post under the strongback")->demand, 1486.5, 0.1);
    assert_near(made.design->shores[0].post_lb[0], 1486.5, 0.1);
    assert_near(made.design->shores[0].post_lb[1], 1486.5, 0.1);
    assert_int_equal(made.design->shores[0].studs, 2);
    assert_null(made_find(&made, "shore S1", "shore stud"));
    assert_null(made_find(&made, "shore S1", "post that lifts off"));
}

/* Held at its posts only: lu = 72 in, lu/d = 7.8, between 7 and 14.3: le = 1.63 lu + 3 d = 145.11 in (NDS 2018 Table
 * 3.3.3, note 1).  RB^2 = 145.11 x 9.25/2.25 = 596.6, FbE = 1.2 x 580,000/596.6 = 1,166.7 psi; Fb* = 900 x 1.25 x 1.1 =
 * 1,237.5; a = 0.9428; CL = 1.02252 - sqrt(1.04556 - 0.99240) = 0.7920: 980.0 psi. */
static void top_edge_is_free(void **state)
{
    struct made made;
    with_strongback(&made, *state, "6 ft", "0 in, 6 ft");
    made_size(&made);
    const struct check *bending = made_check(&made, "shore S1", "strongback, bending");
    assert_near(bending->capacity, 980.0, 1);
}

/* 10 ft on posts at 4 ft and 6 ft.  Live load, 320 plf, on one overhang alone: 320 x 4 x 2/2 = 1,280 lb up at the far
 * post; dead 86.6 plf x 10/2 = 433 down: 847 lb of lift.  The near post has of that overhang 320 x 4 x (2 + 2)/2 =
 * 2,560 lb, of the live load between the posts 320, of the dead 433, and half a joist's end, 266.7: 3,579.7 lb. */
static void posts_too_near(void **state)
{
    struct made made;
    with_strongback(&made, *state, "10 ft", "4 ft, 6 ft");
    made_size(&made);
    const struct check *lifts = made_check(&made, "shore S1", "post that lifts off");
    assert_near(lifts->demand, 847, 0.5);
    assert_true(isinf(lifts->ratio));
    assert_false(made.design->shores[0].passes);
    assert_near(made_check(&made, "shore S1", "post under the strongback")->demand, 3579.7, 0.5);
    /* it hogs over the post: 406.6 x 4^2/2 = 3,252.8 lb-ft = 39,033.6 in-lb, and 1,066.7: 40,100/42.781 = 937.3 psi */
    assert_near(made_check(&made, "shore S1", "strongback, bending")->demand, 937.3, 0.2);
}

/* A post of 600 lb (dead) on the wall's line comes to the shore x 12/9 = 800 lb.  In the middle of 6 ft: 800 x 72/4 =
 * 14,400 in-lb more; beside a post 800 lb more of shear and on it. */
static void load_in_one_place(void **state)
{
    struct made made;
    with_strongback(&made, *state, "6 ft", "0 in, 6 ft");
    made_set(&made, "beam", "B1", "above", "load X");
    made_add(&made, "[load X]\non = beam B1\nat = 4 ft\ndead = 600 lb\nlive = 0 lb\nheld by = shore S1\n");
    made_size(&made);
    assert_near(made_check(&made, "shore S1", "strongback, bending")->demand, (23023.1 + 14400) / 42.781, 0.2);
    assert_near(made_check(&made, "shore S1", "post under the strongback")->demand, 2286.5, 0.2);
    assert_near(made_check(&made, "shore S1", "strongback, shear")->demand, 1.5 * 2286.5 / 27.75, 0.05);
}

/* Hung by straps: each carries one joist's end, and none lies on the strongback. */
static void joists_hang(void **state)
{
    struct made made;
    with_strongback(&made, *state, "6 ft", "0 in, 6 ft");
    made_set(&made, "joists", "north", "species", "Douglas Fir-Larch");
    made_set(&made, "joists", "north", "grade", "No.2");
    made_size(&made);
    /* 1-1/2 in of joist on 3 in of strongback */
    assert_near(made_check(&made, "shore S1", "joists north on the shore's strongback")->demand, 533.33 / (1.5 * 3),
                0.1);
    made_set(&made, "shore", "S1", "hung by", "STRAP-16GA-24");
    made_size(&made);
    assert_near(made_check(&made, "shore S1", "joist's strap to the strongback")->demand, 533.3, 0.1);
    assert_null(made_find(&made, "shore S1", "joists north on the shore's strongback"));
    made_set(&made, "shore", "S1", "hung by", "HNG-LVL-14-2");
    made.diags.count = 0;
    made_size(&made);
    assert_true(made_says(&made, DIAG_C006));
}

static void with_old_beam(struct made *made, struct arena *arena)
{
    made_start(made, arena);
    made_set(made, "beam", "B1", "above", "nothing");
    made_add(made,
             "[beam OLD]\nstatus = existing\nset = flush\nclear span = 10 ft\nend 1 = wall plate\n"
             "bearing 1 = 3-1/2 in\nend 2 = beam B1 at 4 ft\nabove = load Y\nmember = DFL2-2X10\nplies = 2\n"
             "ply fasteners = NAIL-16D-COMMON\n"
             "[load Y]\non = beam OLD\nfrom = 0 in\nto = 10 ft\ndead = 60 plf\nlive = 100 plf\nheld by = shore S3\n"
             "[shore S3]\nholds = beam OLD\nset back = 2 ft\nstuds = SPF-STUD-2X4\nspacing = 16 in\nlength = 3 ft\n"
             "height = 94-1/2 in\nbrace rows = 1\nstands on = slab\ndays = 5\npost plies = 3\n");
}

/* The beam's end brings R; held 24 in from it the shore takes R L/(L - 24), on a post of three studs. */
static void old_beam_held(void **state)
{
    struct made made;
    with_old_beam(&made, *state);
    made_set(&made, "load", "Y", "held by", NULL);
    made_size(&made);
    const struct beam_design *old = &made.design->beams[1];
    double span = old->design_span_in, end = loads_total(&old->end_lb[1]);
    assert_true(end > 700 && end < 900); /* half of 166.6 plf x 10 ft and a bit */
    assert_int_equal(made.design->shores[2].posts, 1);
    const struct check *post = made_check(&made, "shore S3", "post in the shore");
    assert_near(post->demand, end * span / (span - 24), 0.1);
    assert_near(made_check(&made, "shore S3", "plate at the post")->demand, post->demand / (4.5 * 3.5), 0.01);
    /* past the shore: its own 6.6 plf over 24 in, and the load, which ends 118.25 in from the middle of bearing 1 */
    double loaded = 24 - (span - 118.25);
    double moment = 6.6 / 12 * 24 * 24 / 2 + 160.0 / 12 * loaded * loaded / 2;
    assert_true(loaded > 20 && loaded < 24);
    assert_near(made_check(&made, "shore S3", "beam OLD past the shore, bending")->demand, moment / 42.781, 0.1);
    assert_non_null(made_find(&made, "shore S3", "beam OLD on the shore's plate"));
    assert_false(made_lists(made.design->unchecked, made.design->unchecked_count, "shore S3 under beam OLD"));
}

/* The plain job: a shore each side, one beam hung from both: two rows, two, one and one.  Dead load is 10 of 50 psf:
 * with the wall up a stud has a fifth of what it has with the wall out. */
static void four_stages(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_size(&made);
    static const int number[] = {1, 1, 2, 2, 3, 4};
    static const char *const what[] = {"shore S1", "shore S2", "shore S1", "shore S2", "beam B1", "beam B1"};
    assert_int_equal(made.design->stage_count, 6);
    for (size_t i = 0; i < 6; i++) {
        assert_int_equal(made.design->stage[i].number, number[i]);
        assert_string_equal(made.design->stage[i].what, what[i]);
        assert_true(made.design->stage[i].ratio >= 0);
    }
    const struct stage *snug = &made.design->stage[0], *out = &made.design->stage[2];
    assert_near(snug->lb, out->lb / 5, 1e-6);
    assert_near(snug->lb, 106.67, 0.01); /* 400 plf x 16/12 / 5 */
    assert_near(snug->ratio, made_check(&made, "shore S1", "shore stud")->ratio / 5, 1e-9);
    assert_non_null(strstr(snug->rule, "107 lb at each of joists north"));
    assert_non_null(strstr(made.design->stage[4].governs, "hung"));
    made_set(&made, "beam", "B1", "set", "dropped");
    made_size(&made);
    assert_int_equal(made.design->stage_count, 6);
    assert_null(made.design->stage[4].governs);
}

/* 2,000 lb of dead load at the tip of one joist, 36 in past the shore, 108 in before it: 2,000 x 36/108 = 666.7 lb up
 * at the far end; the joist's own 13.33 plf: 13.33/12 x (108/2 - 36^2/(2 x 108)) = 53.3 down: 613.3 lb. */
static void far_ends_lift(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "above", "load X");
    made_add(&made, "[load X]\non = beam B1\nat = 4 ft\ndead = 2000 lb\nlive = 0 lb\nheld by = shore S1\n");
    made_size(&made);
    const struct member_checks *checks = made_member(&made, "shore S1");
    const struct check *far = NULL;
    for (size_t i = 0; i < checks->count; i++)
        if (strstr(checks->check[i].name, "at the far bearing"))
            far = &checks->check[i];
    assert_non_null(far);
    assert_true(far->demand >= 613.3 - 0.1); /* more with live load past the shore alone: 40 psf there */
    assert_near(far->demand, 666.67 - 53.33 + 40.0 * 16 / 12 * 3 * 18 / 108, 0.5);
    made_start(&made, *state);
    made_size(&made);
    checks = made_member(&made, "shore S1");
    for (size_t i = 0; i < checks->count; i++)
        assert_null(strstr(checks->check[i].name, "at the far bearing"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(one_span, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(top_edge_is_free, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(posts_too_near, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(load_in_one_place, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(joists_hang, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(old_beam_held, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(four_stages, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(far_ends_lift, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
