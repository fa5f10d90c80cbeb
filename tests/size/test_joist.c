/* A joist as a simple span.  The span tables of the code run through joist_rate(), too: tests/published. */
#include "support.h"

#include "sawbill/joist.h"
#include "size/wood_rows.h"

static const struct combination dead_and_live = {"D+L", {1, 1, 0, 0}, 1.0};

/* HUD, Residential Structural Design Guide, 2nd edition 2017, Example 5.1, read in a copy of it (the
 * verification tests of an open-source finite-element package): 2x8 joists, 16 in apart, 30 + 10 psf; bending holds to
 * 14.865 ft, the live load sags L/360 at 13.8 ft. */
static void hud_5_1(void **state)
{
    (void)state;
    static const struct design_row row = {.table = "4A", .species = "", .grade = "No.2", .fb = 975, .e = 1500000};
    struct joist_section joist = {.row = &row, .width_in = 1.5, .depth_in = 7.25, .cr = joist_cr(8, 16)};
    struct loads per_inch = {{10.0 * 16 / 144, 30.0 * 16 / 144, 0, 0}};
    struct joist_rating rating = joist_rate(&joist, 14.865 * 12, &per_inch, &dead_and_live);
    assert_within(rating.fb_psi, 1345.0, 0.001);
    assert_within(rating.bending_psi, rating.fb_psi, 0.006); /* 0.3 % in span, its square in bending */
    rating = joist_rate(&joist, 13.8 * 12, &per_inch, &dead_and_live);
    assert_within(rating.live_in, 13.8 * 12 / 360, 0.015); /* 0.5 % in span, its cube in sag against L */
}

/* By hand, 2x10 Douglas Fir-Larch, 2-5/16 in planed off: dn = 6.9375 = 3/4 d.  NDS 2018 3.4.3.2(a): Vr' = (2/3 x 180 x
 * 1.5 x 6.9375) x (3/4)^2 = 1248.75 x 0.5625 = 702.4 lb; without the seat 2/3 x 180 x 1.5 x 9.25 = 1665 lb.  At 100 in
 * and 14.048 lb/in V = 702.4. */
static void planed_seat(void **state)
{
    (void)state;
    struct joist_section joist = {.row = &dfl_2, .width_in = 1.5, .depth_in = 9.25, .cr = 1, .seat_in = 2.3125};
    struct loads per_inch = {{0, 14.048, 0, 0}};
    struct joist_rating rating = joist_rate(&joist, 100, &per_inch, &dead_and_live);
    assert_within(rating.shear_psi, rating.fv_psi, 0.0005);
    joist.seat_in = 0;
    rating = joist_rate(&joist, 100, &per_inch, &dead_and_live);
    assert_within(rating.shear_psi / rating.fv_psi, 702.4 / 1665, 0.0005);
    joist.seat_in = 9.25; /* nothing left */
    rating = joist_rate(&joist, 100, &per_inch, &dead_and_live);
    assert_near(rating.fv_psi, 0, 0);
}

/* NDS 2018 3.5.2: dead load with 1.5 of its sag, 2.0 in green wood.  By hand: a beam under w = 1 lb/in dead and 2 live,
 * 100 in, E I = 1.6e6 x 1.5 x 9.25^3 / 12: 5 w L^4 / (384 E I) is 0.008226 in for each lb/in. */
static void creep(void **state)
{
    (void)state;
    struct joist_section joist = {.row = &dfl_2, .width_in = 1.5, .depth_in = 9.25, .cr = 1};
    struct loads per_inch = {{1, 2, 0, 0}};
    struct joist_rating rating = joist_rate(&joist, 100, &per_inch, &dead_and_live);
    assert_within(rating.live_in, 2 * 0.008226, 0.0005);
    assert_within(rating.total_in, 3.5 * 0.008226, 0.0005);
    joist.green = true;
    rating = joist_rate(&joist, 100, &per_inch, &dead_and_live);
    assert_within(rating.total_in, 4.0 * 0.008226, 0.0005);
}

/* NDS 2018 4.3.9 */
static void repetitive(void **state)
{
    (void)state;
    assert_near(joist_cr(3, 24), 1.15, 0);
    assert_near(joist_cr(2, 16), 1.0, 0);
    assert_near(joist_cr(3, 24.5), 1.0, 0);
}

/* American Wood Council, Design Aid 6, two equal spans under an even load: w L^2/8 over the middle, 3/8 w L at the far
 * ends. */
static void two_equal_spans(void **state)
{
    (void)state;
    double w = 4, length = 120, moment = joist_middle_moment(length, w, length, w);
    assert_within(moment, w * length * length / 8, 1e-12);
    assert_within(w * length / 2 - moment / length, 3.0 / 8 * w * length, 1e-12);
}

/* By hand: 6/12, pairs 16 in apart, 26 ft, 32 psf: 32 x 1.3333 x 26/(4 x 0.5) = 554.7 lb. */
static void thrust(void **state)
{
    (void)state;
    assert_near(rafter_thrust_lb(32, 16.0 / 12, 26, 0.5), 554.67, 0.01);
    assert_true(isinf(rafter_thrust_lb(32, 1, 26, 0)));
    /* 35 x 1.3333 x 26/(4 x 0.5) = 606.7 lb, 455 plf; 5/12, 28 ft, 30 psf: 30 x 1.3333 x 28/(4 x 0.41667) = 672 lb */
    assert_near(rafter_thrust_lb(35, 16.0 / 12, 26, 0.5), 607, 0.5);
    assert_near(rafter_thrust_lb(35, 16.0 / 12, 26, 0.5) / (16.0 / 12), 455, 0.1);
    assert_near(rafter_thrust_lb(30, 16.0 / 12, 28, 5.0 / 12), 672, 1e-6);
}

/* A frame of three hinges, 30 ft, the ridge 10 ft from the left wall and 6 ft up, 35 psf on pairs 16 in apart: 46.667
 * plf.  The left wall takes 46.667 x 15 = 700 lb; about the ridge from the left 700 x 10 - 46.667 x 10 x 5 = 4,666.7
 * lb ft, /6 = 777.8 lb; from the right 700 x 20 - 46.667 x 20 x 10 = 4,666.7 lb ft, the same.  Given by either slope,
 * 6/10 at 10 ft or 6/20 at 20 ft. */
static void ridge_out_of_the_middle(void **state)
{
    (void)state;
    assert_near(rafter_thrust_off_lb(35, 16.0 / 12, 30, 10, 0.6), 777.78, 0.01);
    assert_near(rafter_thrust_off_lb(35, 16.0 / 12, 30, 20, 0.3), 777.78, 0.01);
    assert_near(rafter_thrust_off_lb(35, 16.0 / 12, 26, 13, 0.5), 606.67, 0.01);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(hud_5_1),
        cmocka_unit_test(planed_seat),
        cmocka_unit_test(creep),
        cmocka_unit_test(repetitive),
        cmocka_unit_test(two_equal_spans),
        cmocka_unit_test(thrust),
        cmocka_unit_test(ridge_out_of_the_middle),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
