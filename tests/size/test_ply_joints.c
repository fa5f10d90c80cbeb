/* The fasteners between the plies, in whole jobs.  Every figure is worked by hand beside it.  One 16d common nail,
 * 0.162 x 3-1/2 in, in Douglas Fir-Larch (G 0.50): Z = 141 lb, NDS Table 12N as quoted on a structural engineers' list
 * (2009); unrounded 140.9. */
#include "size/made_job.h"

/* Joists of 10 ft on both sides: half is 5 ft, x 40 psf dead = 200 plf, x 80 psf live = 400 plf. */
static void heavy(struct made *made, struct arena *arena)
{
    made_start(made, arena);
    made_set(made, "joists", "north", "run", "10 ft");
    made_set(made, "area", "floor", "dead", "40 psf");
    made_set(made, "area", "floor", "live", "80 psf");
}

/* Joint 1, live on side A only: (200 + 400) x 2/3 - 200 x 1/3 = 333.3 plf; joint 2 its mirror.  From each face two rows
 * at 12 in reach the joint next to that face alone: 2 nails a foot x 140.9 = 281.8 plf: 1.18.  At 9 in 2 x 12/9 x 140.9
 * = 375.7 plf: 0.887. */
static void live_on_one_side(void **state)
{
    struct made made;
    heavy(&made, *state);
    made_size(&made);
    for (int joint = 1; joint <= 2; joint++) {
        const struct check *check =
            made_check(&made, "beam B1", joint == 1 ? "ply fastening, joint 1" : "ply fastening, joint 2");
        assert_near(check->demand, 1000.0 / 3, 1e-6);
        assert_near(check->capacity, 281.8, 0.2);
        assert_string_equal(check->combination, "D+L");
        assert_string_equal(check->clause, "NDS 2018 12.3");
        assert_non_null(strstr(check->note, joint == 1 ? "q 333.3 plf, live on side A only" : "live on side B only"));
        assert_non_null(strstr(check->note, "does not reach"));
        assert_non_null(strstr(check->note, "140.9 lb x 2 a foot"));
    }
    assert_false(made.design->passes);
    struct made closer;
    heavy(&closer, *state);
    made_set(&closer, "beam", "B1", "spacing", "9 in");
    made_size(&closer);
    assert_near(made_check(&closer, "beam B1", "ply fastening, joint 1")->ratio, 0.887, 0.001);
    assert_false(made_lists(closer.design->unchecked, closer.design->unchecked_count, "between the plies"));
}

/* From one face the nail stands 1/2 in in the third ply, less than 6 D = 0.972: nothing holds joint 2. */
static void one_face_leaves_a_joint_open(void **state)
{
    struct made made;
    heavy(&made, *state);
    made_set(&made, "beam", "B1", "each face", "no");
    made_size(&made);
    assert_near(made_check(&made, "beam B1", "ply fastening, joint 2")->capacity, 0, 0);
    assert_true(isinf(made_check(&made, "beam B1", "ply fastening, joint 2")->ratio));
    assert_true(made_says(&made, DIAG_S002));
    /* a drywall screw holds no framing: neither joint */
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "ply fasteners", "DRYWALL-1.625");
    made_size(&made);
    assert_near(made_check(&made, "beam B1", "ply fastening, joint 1")->capacity, 0, 0);
    /* two plies, both faces: all four nails a foot hold the one joint: 563.6 plf against half of 600 - 200 = 200 */
    heavy(&made, *state);
    made_set(&made, "beam", "B1", "plies", "2");
    made_size(&made);
    assert_near(made_check(&made, "beam B1", "ply fastening, joint 1")->capacity, 563.6, 0.4);
    assert_near(made_check(&made, "beam B1", "ply fastening, joint 1")->demand, 200, 1e-6);
}

/* Bolts of 1/2 x 6 in go through all three plies and hold both joints.  Across the grain Fe = 6100 x 0.5^1.45/sqrt(0.5)
 * = 3,157, made 3,150 psi; Rt = Re = 1, mode II: k1 = (sqrt(8) - 2)/2 = 0.4142, Rd = 3.6 x 1.25 = 4.5: 0.4142 x 0.5
 * x 1.5 x 3,150/4.5 = 217.5 lb (220 in NDS Table 12A, from memory); two of equal stiffness share alike, Cg 1: 2 a foot,
 * 435 plf. 4 D = 2 in to the loaded edge: 1-1/2 in is too near. */
static void bolts_go_through(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "ply fasteners", "BOLT-500-600");
    made_set(&made, "beam", "B1", "each face", "no");
    made_size(&made);
    assert_near(made_check(&made, "beam B1", "ply fastening, joint 1")->capacity, 435, 0.2);
    assert_near(made_check(&made, "beam B1", "ply fastening, joint 2")->capacity, 435, 0.2);
    assert_near(made_check(&made, "beam B1", "ply fastener distances")->ratio, 2 / 1.5, 1e-9);
    made_set(&made, "beam", "B1", "edge", "2 in");
    made_size(&made);
    assert_near(made_check(&made, "beam B1", "ply fastener distances")->ratio, 1, 1e-9);
}

/* Side A ends at 4 ft: beyond it all comes from B: joint 2 carries (200 + 400) x 2/3 = 400 plf. */
static void one_side_shorter(void **state)
{
    struct made made;
    heavy(&made, *state);
    made_set(&made, "joists", "north", "to", "4 ft");
    made_size(&made);
    const struct check *check = made_check(&made, "beam B1", "ply fastening, joint 2");
    assert_near(check->demand, 400, 1e-6);
    assert_true(check->at_in > 48);
    assert_near(made_check(&made, "beam B1", "ply fastening, joint 1")->demand, 1000.0 / 3, 1e-6);
    /* joists on top of a dropped beam load all plies alike: nothing crosses */
    heavy(&made, *state);
    made_set(&made, "beam", "B1", "set", "dropped");
    made_size(&made);
    assert_null(made_find(&made, "beam B1", "ply fastening, joint 1"));
    assert_true(made_lists(made.design->basis, made.design->basis_count, "only keep the plies together"));
}

/* A beam hangs on two plies and brings about 3,000 lb: 1,500 lb cross the joint, 1,500/141 = 11 nails, within 12 in
 * either side.  The pattern has 4 a foot x 2 ft = 8: 8 x 140.9 = 1,127 lb. */
static void hung_beam(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "area", "floor", "dead", "0 psf");
    made_set(&made, "area", "floor", "live", "0 psf");
    made_set(&made, "beam", "B1", "plies", "2");
    made_set(&made, "beam", "B1", "joists B", NULL);
    made_add(&made, "[beam B2]\nset = flush\nclear span = 7 ft\njoists A = joists south\nend 1 = post P3\n"
                    "end 2 = beam B1 at 4 ft\nwall at end 1 = across\nabove = load Y\nmember = DFL2-2X10\nplies = 2\n"
                    "ply fasteners = NAIL-16D-COMMON\n"
                    "[load Y]\non = beam B2\nat = 43-1/2 in\ndead = 0 lb\nlive = 6000 lb\nheld by = shore S1\n"
                    "[post P3]\nmember = SPF-STUD-2X4\nplies = 2\nheight = 84 in\nbraced = one\n"
                    "stands on = footing F1\n");
    made_size(&made);
    const struct check *check = made_check(&made, "beam B1", "ply fastening under beam B2, end 2");
    double reaction = made.design->beams[1].end_lb[1].of[LOAD_DEAD] + made.design->beams[1].end_lb[1].of[LOAD_LIVE];
    assert_near(reaction, 3000, 60);
    assert_near(check->demand, reaction / 2, 1e-6);
    assert_near(ceil(check->demand / 141), 11, 0);
    assert_near(check->capacity, 1127, 1);
    assert_near(check->at_in, 48, 1e-9);
    assert_true(check->ratio > 1);
    /* two more on each face: 8 + 4 = 12 nails x 140.9 = 1,690 lb */
    made_set(&made, "beam", "B1", "more at hung beams", "2");
    made_size(&made);
    check = made_check(&made, "beam B1", "ply fastening under beam B2, end 2");
    assert_near(check->capacity, 1690, 2);
    assert_true(check->ratio < 1);
}

/* 16d common, from memory: end 15 D = 2.43 in of the 3 in it has: 0.81; spacing of both faces 6 in.  With 2 in: 1.215.
 * One row: the plies turn. */
static void distances(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_size(&made);
    const struct check *check = made_check(&made, "beam B1", "ply fastener distances");
    assert_near(check->demand, 2.43, 1e-9);
    assert_near(check->capacity, 3, 1e-9);
    assert_non_null(strstr(check->clause, "from memory"));
    assert_null(made_find(&made, "beam B1", "rows of ply fasteners"));
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "end", "2 in");
    made_set(&made, "beam", "B1", "rows", "1");
    made_size(&made);
    assert_near(made_check(&made, "beam B1", "ply fastener distances")->ratio, 1.215, 1e-6);
    assert_near(made_check(&made, "beam B1", "rows of ply fasteners")->ratio, 2, 1e-9);
}

/* An engineer's pattern is compared, and decides nothing. */
static void engineers_pattern(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "each face", "no");
    made_set(&made, "beam", "B1", "specified by", "A. Heron, PE (invented)");
    made_set(&made, "beam", "B1", "sheet", "S1");
    made_set(&made, "beam", "B1", "specified span", "8 ft");
    made_size(&made);
    assert_true(isinf(made_check(&made, "beam B1", "ply fastening, joint 2")->ratio));
    assert_true(made_member(&made, "beam B1")->specified);
    assert_true(made_says(&made, DIAG_S004));
    assert_false(made_says(&made, DIAG_S002));
    assert_true(made.design->beams[0].passes);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(live_on_one_side, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(one_face_leaves_a_joint_open, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(bolts_go_through, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(one_side_shorter, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(hung_beam, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(distances, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(engineers_pattern, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
