/* Columns, solid and built up, against published worked examples; (t): copied, the document itself not opened. */
#include "support.h"

#include "sawbill/wood.h"
#include "size/wood_rows.h"

/* HUD, Residential Structural Design Guide, 2nd edition 2017, Example 5.6 (t): 4x4 Spruce-Pine-Fir No.2, 7.3 ft. */
static void hud_5_6_post(void **state)
{
    (void)state;
    struct wood_post post = {.piece = {.row = &spf_2, .wood = WOOD_SAWN, .ply_in = 3.5, .depth_in = 3.5, .plies = 1},
                             .along_in = 87.6,
                             .across_in = 87.6,
                             .most_slender = 50};
    struct wood_post_rating got = wood_post_rate(&post, 1.0);
    assert_near(got.cp, 0.43783, 0.0002);
    assert_within(got.fc_star * got.cp, 579.03, 0.001);
    assert_near(4800 / got.capacity_lb, 0.67671, 0.001);
}

/* Aghayere and Vigil, Structural Wood Design, 2007, Example 5.7 (t): three 2x6 Douglas Fir-Larch No.1, nailed, 12 ft,
 * free both ways.  Across the plies CP 0.279878 by itself, x Kf 0.6.  (As three single plies le/d would be 96.) */
static void aghayere_5_7_built_up(void **state)
{
    (void)state;
    struct wood_post post = {.piece = {.row = &dfl_1, .wood = WOOD_SAWN, .ply_in = 1.5, .depth_in = 5.5, .plies = 3},
                             .along_in = 144,
                             .across_in = 144,
                             .most_slender = 50,
                             .nailed = true};
    struct wood_post_rating got = wood_post_rate(&post, 1.0);
    assert_near(got.cp_across, 0.167927, 0.0002);
    assert_near(got.cp_across / 0.6, 0.279878, 0.0002);
    assert_near(got.cp, 0.167927, 0.0002);
    assert_false(got.as_single_plies);
    assert_near(wood_cp(144 / 4.5, 620000, 1650, 0.8), 0.279878, 0.0002);
    post.nailed = false; /* not nailed: single plies, le/d 96, beyond 50 */
    got = wood_post_rate(&post, 1.0);
    assert_true(got.too_slender);
    assert_near(got.capacity_lb, 0, 0);
}

/* Journal of Light Construction, answer by a professor of wood construction on solid 6x6 against built-up posts: three
 * 2x6 nailed with 30d at 8 in, rows 2-1/2 in apart, lose 40 % against the solid section.  30d: 0.207 x 4-1/2 in. */
static void jlc_built_up_loss(void **state)
{
    (void)state;
    assert_near(1 - wood_kf_nailed(), 0.40, 1e-9);
    struct wood_nailing rule = wood_nailing(3, 1.5, 5.5, 0.207);
    assert_true(rule.spacing_least <= 8 && 8 <= rule.spacing_most);
    assert_true(rule.row_least <= 2.5 && 2.5 <= rule.row_most);
}

/* "Nailing a built-up wood column", teaching note on NDS 15.3.3 (woodengineering.blogspot.com, February 2013): two rows
 * when the ply depth is over three thicknesses.  The inches are arithmetic from its rules, D = 0.207 in. */
static void nailing_rules(void **state)
{
    (void)state;
    struct wood_nailing rule = wood_nailing(3, 1.5, 5.5, 0.207);
    assert_int_equal(rule.rows, 2); /* 5.5 > 4.5 */
    assert_int_equal(wood_nailing(3, 1.5, 3.5, 0.207).rows, 1);
    assert_near(rule.needed_length, 4.125, 1e-9); /* 1.5 + 1.5 + 0.75 x 1.5 */
    assert_near(wood_nailing(2, 1.5, 3.5, 0.162).needed_length, 2.625, 1e-9);
    assert_near(rule.end_least, 3.105, 1e-9);
    assert_near(rule.end_most, 3.726, 1e-9);
    assert_near(rule.spacing_least, 4.14, 1e-9);
    assert_near(rule.spacing_most, 9.0, 1e-9);
    assert_near(rule.row_least, 2.07, 1e-9);
    assert_near(rule.row_most, 4.14, 1e-9);
    assert_near(rule.edge_least, 1.035, 1e-9);
    assert_near(rule.edge_most, 4.14, 1e-9);
}

/* A shore stud by hand, NDS 2018 3.7.1: 2x4 Spruce-Pine-Fir Stud, 94-1/2 in, CD 1.25.
 * Fc* = 725 x 1.25 x CF 1.05 = 951.6 psi.  Weak axis free: le/d = 94.5/1.5 = 63, FcE = 0.822 x 440,000/63^2 = 91.1,
 * a = 0.0958, CP = 0.68486 - sqrt(0.46903 - 0.11971) = 0.0938: 951.6 x 0.0938 x 5.25 = 469 lb.
 * One row of braces at mid-height: le/d = 31.5, FcE = 364.5, a = 0.3831, CP = 0.86441 - sqrt(0.74720 - 0.47883) =
 * 0.3464: 1,730 lb.  Strong axis: le/d = 27, FcE = 496.1, a = 0.5214, CP = 0.95085 - sqrt(0.90412 - 0.65170) = 0.4484:
 * 2,240. */
static void shore_stud_by_hand(void **state)
{
    (void)state;
    struct wood_post stud = {.piece = {.row = &spf_stud, .wood = WOOD_SAWN, .ply_in = 1.5, .depth_in = 3.5, .plies = 1},
                             .along_in = 94.5,
                             .across_in = 94.5,
                             .most_slender = 75};
    struct wood_post_rating free = wood_post_rate(&stud, 1.25);
    assert_near(free.fc_star, 951.6, 0.1);
    assert_near(free.slenderness, 63, 1e-9);
    assert_near(free.capacity_lb, 469, 1);
    stud.across_in = 47.25;
    assert_near(wood_post_rate(&stud, 1.25).capacity_lb, 1730, 2);
    stud.across_in = 0;
    assert_near(wood_post_rate(&stud, 1.25).capacity_lb, 2240, 2);
    stud.across_in = 94.5;
    stud.most_slender = 50; /* a stud that stays: 63 is beyond 50 (3.7.1.4) */
    assert_true(wood_post_rate(&stud, 1.25).too_slender);
}

/* NDS 2018 15.3.2.2: a built-up column is never rated below the sum of its plies. */
static void never_below_single_plies(void **state)
{
    (void)state;
    for (int plies = 2; plies <= 5; plies++)
        for (int feet = 1; feet <= 6; feet++) {
            double height = 12.0 * feet;
            struct wood_post post = {
                .piece = {.row = &spf_2, .wood = WOOD_SAWN, .ply_in = 1.5, .depth_in = 3.5, .plies = plies},
                .along_in = height,
                .across_in = height,
                .most_slender = 50,
                .nailed = true};
            struct wood_post one = post;
            one.piece.plies = 1;
            double single = wood_post_rate(&one, 1.0).capacity_lb;
            assert_true(wood_post_rate(&post, 1.0).capacity_lb >= plies * single * (1 - 1e-12));
        }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(hud_5_6_post),       cmocka_unit_test(aghayere_5_7_built_up),
        cmocka_unit_test(jlc_built_up_loss),  cmocka_unit_test(nailing_rules),
        cmocka_unit_test(shore_stud_by_hand), cmocka_unit_test(never_below_single_plies),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
