/* Shores: the joists that run past them, their top plate, the lift, each figure worked by hand. */
#include "size/made_job.h"

#include "sawbill/shoring.h"

/* AWC Design Aid No. 6, beam overhanging one support under a uniform load, l = L - a between the supports: R2 = w (l +
 * a)^2 / (2 l), M over it = w a^2 / 2, V2 = w a, V3 = w (l^2 + a^2) / (2 l).  50 psf on joists 16 in apart: 5.5556
 * lb/in; L = 168 in, a = 36, l = 132: R = 593.9 lb, M = 3,600 in-lb, V3 = 5.5556 x (17,424 + 1,296)/264 = 393.9 lb. */
static void past_the_shore(void **state)
{
    (void)state;
    struct shore_tip tip = shore_tip(50.0 * 16 / 144, 168, 36, 0);
    assert_near(tip.reaction_lb, 593.9, 0.05);
    assert_near(tip.moment_inlb, 3600, 0.01);
    assert_near(tip.shear_lb, 393.9, 0.05);
    /* V3 is never less than w a.  1 lb/in, a = 120: l = 48, (2,304 + 14,400)/96 = 174; a = 8: l = 160, (25,600 +
     * 64)/320 = 80.2 */
    assert_near(shore_tip(1, 168, 120, 0).shear_lb, 174, 1e-9);
    assert_near(shore_tip(1, 168, 8, 0).shear_lb, 80.2, 1e-9);
    assert_true(isinf(shore_tip(1, 100, 100, 0).reaction_lb));
    /* 1,000 lb at the tip, L = 144, a = 36: R = 1,000 x 144/108 = 1,333.3, M = 36,000, V = 1,000 beyond, 333.3 before
     */
    assert_near(shore_tip(0, 144, 36, 1000).reaction_lb, 1333.33, 0.01);
    assert_near(shore_tip(0, 144, 36, 1000).moment_inlb, 36000, 1e-9);
    assert_near(shore_tip(0, 144, 36, 1000).shear_lb, 1000, 1e-9);
    /* both, 1 lb/in and 100 lb: beyond 36 + 100 = 136, before (17,424 + 1,296)/264 + 100 x 36/132 = 98.2; with 10 lb
     * beyond 46, before 70.91 + 2.73 = 73.64 */
    assert_near(shore_tip(1, 168, 36, 100).shear_lb, 136, 1e-9);
    assert_near(shore_tip(1, 168, 36, 10).shear_lb, 73.64, 0.005);
    /* of half the run: 12 ft with 3 ft: 1.333 times, with 4 ft: 1.5 times */
    assert_near(shore_tip(1, 144, 36, 0).reaction_lb, 72 * 4.0 / 3, 1e-9);
    assert_near(shore_tip(1, 144, 48, 0).reaction_lb, 108, 1e-9);
}

/* One load: P l / 4.  Two equal moving loads a apart: P (l - a/2)^2 / (2 l), where that is more (formula of handbooks,
 * from memory, and by statics: the middle of the bay halfway between a load and the resultant).  500 lb, bay 24 in: one
 * 3,000; 16 in apart two make 500 x 16^2/48 = 2,667; 12 in apart 500 x 18^2/48 = 3,375.  Bay 36 in, 12 in apart: three,
 * one in the middle: 1.5 P x 18 - P x 12 = 15 P = 7,500. */
static void joists_between_studs(void **state)
{
    (void)state;
    assert_near(shore_plate_moment(500, 16, 24), 3000, 1e-9);
    assert_near(shore_plate_moment(500, 12, 24), 3375, 1e-9);
    assert_near(shore_plate_moment(500, 12, 36), 7500, 1e-9);
    assert_near(shore_plate_moment(500, 0, 24), 3000, 1e-9);
    /* the first 1-1/2 in from a stud, the next at 17-1/2: 500 x (22.5 + 6.5)/24 */
    assert_near(shore_plate_shear(500, 16, 24, 1.5), 604.17, 0.01);
    assert_near(shore_plate_shear(500, 32, 24, 1.5), 468.75, 1e-9);
}

/* NDS 2018 Supplement Table 4A, flat use factors, 2 to 3 in thick: 1.0, 1.1, 1.1, 1.15, 1.15, 1.2 (read in a
 * copy of the table). */
static void flat_use(void **state)
{
    (void)state;
    static const double row[][2] = {{2.5, 1.0}, {3.5, 1.1}, {4.5, 1.1}, {5.5, 1.15}, {7.25, 1.15}, {9.25, 1.2}};
    for (size_t i = 0; i < sizeof row / sizeof *row; i++)
        assert_near(wood_cfu(row[i][0]), row[i][1], 0);
}

static void with_joists(struct made *made, struct arena *arena)
{
    made_start(made, arena);
    made_set(made, "joists", "north", "run", "14 ft");
    made_set(made, "joists", "north", "species", "Douglas Fir-Larch");
    made_set(made, "joists", "north", "grade", "No.2");
}

/* 3,600 in-lb on 21.39 in3: 168.3 psi.  CD 1.25 (5 days), CF 1.1: Fb* = 1,237.5; lower edge free for 36 in: le = 1.33 x
 * 36 = 47.88, RB^2 = 47.88 x 9.25/2.25 = 196.8, FbE = 1.2 x 580,000/196.8 = 3,536, a = 2.857, CL = 2.0302 -
 * sqrt(4.1216 - 3.0077) = 0.9748: 1,206.  Shear 1.5 x 393.9/13.875 = 42.6 of 180 x 1.25.  On the plate 593.9/(1.5 x
 * 3.5) = 113.1 of 425 (Spruce-Pine-Fir).  All joists at 16 in, studs at 16 in: no bending of the plate. */
static void old_joists(void **state)
{
    struct made made;
    with_joists(&made, *state);
    made_size(&made);
    const struct check *bending = made_check(&made, "shore S1", "joists north past the shore, bending");
    assert_near(bending->demand, 168.3, 0.1);
    assert_near(bending->capacity, 1206, 1);
    const struct check *shear = made_check(&made, "shore S1", "joists north at the shore, shear");
    assert_near(shear->demand, 42.6, 0.05);
    assert_near(shear->capacity, 225, 1e-9);
    const struct check *plate = made_check(&made, "shore S1", "joists north on the shore's plate");
    assert_near(plate->demand, 113.1, 0.1);
    assert_near(plate->capacity, 425, 0);
    assert_null(made_find(&made, "shore S1", "top plate, bending"));
    assert_true(made_lists(made.design->basis, made.design->basis_count, "a stud stands under each of joists north"));
    /* lift: 10 psf of it is dead: 593.9/5 = 118.8 */
    assert_true(made_lists(made.design->basis, made.design->basis_count,
                           "lift load at each of joists north: 119 lb of dead load, 594 lb with all"));
    assert_false(made_lists(made.design->unchecked, made.design->unchecked_count, "joists north past"));
    assert_true(made_lists(made.design->unchecked, made.design->unchecked_count, "the floor under shore S1"));
}

/* A month: CD 1.15.  Fb* = 1,138.5, a = 3.1058, CL = 2.1609 - sqrt(4.6696 - 3.2692) = 0.9775: 1,112.9. */
static void days_count(void **state)
{
    struct made made;
    with_joists(&made, *state);
    made_set(&made, "shore", "S1", "days", "30");
    made_size(&made);
    assert_near(made_check(&made, "shore S1", "joists north past the shore, bending")->capacity, 1112.9, 1);
    assert_near(made_check(&made, "shore S1", "joists north at the shore, shear")->capacity, 207, 1e-9);
}

/* Studs at 24 in under joists at 16 in: 593.9 x 24/4 = 3,563.6 in-lb on 3.5 x 1.5^2/6 = 1.3125 in3: 2,715 psi.
 * Spruce-Pine-Fir Stud 675 x 1.25 x CF 1.1 x Cfu 1.1 = 1,020.9.  Shear 593.9 x 29/24 = 717.7 lb: 205 psi of 168.75. */
static void studs_miss_joists(void **state)
{
    struct made made;
    with_joists(&made, *state);
    made_set(&made, "shore", "S1", "spacing", "24 in");
    made_size(&made);
    const struct check *bending = made_check(&made, "shore S1", "top plate, bending");
    assert_near(bending->demand, 2715, 1);
    assert_near(bending->capacity, 1020.9, 0.1);
    assert_near(made_check(&made, "shore S1", "top plate, shear")->demand, 205, 0.2);
    assert_near(made_check(&made, "shore S1", "top plate, shear")->capacity, 168.75, 1e-9);
    assert_false(made.design->shores[0].passes);
}

/* A bottom plate of Hem-Fir (Fc perp 405 psi, NDS 2018 Supplement Table 4A) crushes before a top one of 425. */
static void the_weaker_plate_counts(void **state)
{
    struct made made;
    with_joists(&made, *state);
    made_set(&made, "shore", "S1", "plates", "SPF2-2X4");
    made_size(&made);
    assert_near(made_check(&made, "shore S1", "shore plate")->capacity, 425, 0);
    with_joists(&made, *state);
    made_set(&made, "shore", "S1", "plates", "SPF2-2X4");
    made_set(&made, "shore", "S1", "bottom plate", "HF2-2X4");
    made_size(&made);
    assert_near(made_check(&made, "shore S1", "shore plate")->capacity, 405, 0);
    assert_near(made_check(&made, "shore S1", "joists north on the shore's plate")->capacity, 425, 0);
}

/* Not said what wood: the worst of the catalog; not a sawn joist: not checked, and said. */
static void wood_not_known(void **state)
{
    struct made made;
    with_joists(&made, *state);
    made_set(&made, "joists", "north", "species", NULL);
    made_set(&made, "joists", "north", "grade", NULL);
    made_size(&made);
    const struct check *worst = made_check(&made, "shore S1", "joists north past the shore, bending");
    assert_true(worst->capacity < 1206);
    made_start(&made, *state);
    made_set(&made, "joists", "north", "kind", "rafter");
    made_size(&made);
    assert_true(made_lists(made.design->unchecked, made.design->unchecked_count, "joists north past shore S1"));
}

/* Side A alone: half of 12 ft x 50 psf = 300 plf and the beam's own 9.9: 25.825 lb/in on 99.5 in: 31,960 in-lb on 64.17
 * in3 = 498.0 psi.  Side B: half of 10 ft: 250 + 9.9 plf: 26,802 in-lb, 417.7 psi.  Joists 16 in apart hold the top:
 * 978.5 psi (worked in test_job.c). */
static void beam_half_hung(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_size(&made);
    const struct check *a = made_check(&made, "beam B1, half hung", "bending, side A hung");
    assert_near(a->demand, 498.0, 0.5);
    assert_near(a->capacity, 978.5, 0.5);
    assert_near(made_check(&made, "beam B1, half hung", "bending, side B hung")->demand, 417.7, 0.5);
    assert_true(made_lists(made.design->basis, made.design->basis_count, "at most 4 hangers ahead"));
    assert_true(made_lists(made.design->unchecked, made.design->unchecked_count, "the roll of beam B1"));
    made_set(&made, "beam", "B1", "set", "dropped");
    made_size(&made);
    for (size_t i = 0; i < made.design->member_count; i++)
        assert_null(strstr(made.design->members[i]->id, "half hung"));
}

/* A post of 500 lb (dead) stands on the wall's line: at the tip of one joist, 36 in past the shore: 500 x 36 = 18,000
 * in-lb and the joist's 3,600: 21,600/21.39 = 1,009.8 psi. */
static void post_at_the_tip(void **state)
{
    struct made made;
    with_joists(&made, *state);
    made_set(&made, "beam", "B1", "above", "load X");
    made_add(&made, "[load X]\non = beam B1\nat = 4 ft\ndead = 500 lb\nlive = 0 lb\nheld by = shore S1\n");
    made_size(&made);
    const struct check *bending = made_check(&made, "shore S1", "joists north past the shore, bending");
    assert_near(bending->demand, 1009.8, 0.5);
    assert_non_null(strstr(bending->clause, "P a"));
    /* shear beyond the shore 200 + 500 lb; before it 393.9 + 500 x 36/132 = 530.3 */
    assert_near(made_check(&made, "shore S1", "joists north at the shore, shear")->demand, 1.5 * 700 / 13.875, 0.05);
}

/* Roof braces of 20 sq ft each at 15 psf dead and 20 psf roof live load, 300 + 400 lb: they stand at the tips of joists
 * of 12 ft, 3 ft past the shore, x 12/9.  On one stud with its share of the floor, 106.7 lb dead and 426.7 live: D +
 * 0.75L + 0.75Lr = 106.7 + 800 + 320 + 800 = 2,026.7 lb, more than D + Lr, 1,973.3, and D + L, 1,333.3.  With `post
 * plies` each has a post, and the stud its share alone: 533.3. */
static void roof_braces_on_a_shore(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_add(&made, "[area roof]\ndead = 15 psf\nlive = 20 psf\nlive is = roof\nsnow = 0 psf\nnet uplift = 0 psf\n");
    made_set(&made, "roof", "", "area", "area roof");
    made_set(&made, "roof", "", "braces on", "beam B1");
    made_set(&made, "roof", "", "braces", "2 ft carrying 20 sq ft, 6 ft carrying 20 sq ft");
    made_set(&made, "shore", "S1", "holds", "joists north, roof braces");
    made_size(&made);
    assert_near(made.design->shores[0].stud_lb, 2026.67, 0.01);
    assert_int_equal(made.design->shores[0].posts, 0);
    made_set(&made, "shore", "S1", "post plies", "2");
    made.diags.count = 0;
    made_size(&made);
    assert_near(made.design->shores[0].stud_lb, 533.33, 0.01);
    assert_int_equal(made.design->shores[0].posts, 2);
    made_set(&made, "shore", "S1", "holds", "joists north");
    made_set(&made, "roof", "", "braces own prop", "yes");
    made_size(&made);
    assert_int_equal(made.design->shores[0].posts, 0);
    assert_true(made_lists(made.design->unchecked, made.design->unchecked_count, "the props under the roof braces"));
}

/* An old beam gets a new post: a shore beside it takes what comes down there, without the post's own weight.  50 psf x
 * (6 + 5) ft x 103 in / 2 = 2,360.4 lb, and half of the beam. */
static void post_that_is_changed(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "status", "existing");
    made_set(&made, "post", "P2", "status", "existing");
    made_add(&made, "[shore S3]\nholds = post P1\nstuds = SPF-STUD-2X4\nspacing = 16 in\nlength = 2 ft\n"
                    "height = 7 ft\nbrace rows = 1\nstands on = slab\ndays = 5\n");
    made_size(&made);
    assert_near(made.design->shores[2].stud_lb, 2360.42 + made.design->beams[0].weight_plf * 103 / 24, 0.01);
    assert_near(made.design->shores[2].dead_lb, 10 * 11 * 103.0 / 24 + made.design->beams[0].weight_plf * 103 / 24,
                0.01);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(past_the_shore, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(joists_between_studs, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(flat_use, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(old_joists, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(days_count, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(studs_miss_joists, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(the_weaker_plate_counts, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(wood_not_known, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(beam_half_hung, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(roof_braces_on_a_shore, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(post_that_is_changed, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(post_at_the_tip, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
