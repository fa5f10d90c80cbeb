/* The joints between the plies of a beam that is loaded on its faces. */
#include "support.h"

#include "sawbill/joint.h"

/* Three plies, dead 200 and live 400 plf on each face.  Joint 1, live on A only: A brings 600 and keeps a third, B's
 * 200 bring a third of 200 against it: 600 x 2/3 - 200 x 1/3 = 400 - 66.7 = 333.3.  Both live: 600 x 2/3 - 600/3 = 200.
 * Joint 2 mirrors it: 600/3 - 200 x 2/3 = 66.7 with live on A, -333.3 with live on B.  All on one face: 600 x 2/3 =
 * 400. */
static void live_on_one_side_governs(void **state)
{
    (void)state;
    struct joint_crossing first = joint_crossing(3, 1, 200, 200, 400, 400);
    assert_near(first.plf, 1000.0 / 3, 1e-9);
    assert_int_equal(first.on, 1);
    struct joint_crossing second = joint_crossing(3, 2, 200, 200, 400, 400);
    assert_near(second.plf, 1000.0 / 3, 1e-9);
    assert_int_equal(second.on, 2);
    assert_near(joint_crossing(3, 1, 600, 600, 0, 0).plf, 200, 1e-9); /* full on both sides, always there */
    assert_near(joint_crossing(3, 1, 200, 0, 400, 0).plf, 400, 1e-9);
    assert_near(joint_crossing(3, 2, 200, 0, 400, 0).plf, 200, 1e-9);
    /* two plies: half of the difference; four: three quarters from the face */
    assert_near(joint_crossing(2, 1, 100, 100, 300, 300).plf, 150, 1e-9);
    assert_near(joint_crossing(4, 1, 0, 0, 400, 0).plf, 300, 1e-9);
    /* load on top of all plies crosses nothing: there is none of it here */
    assert_near(joint_crossing(3, 1, 0, 0, 0, 0).plf, 0, 0);
}

/* Journal of Light Construction, answer on a side-loaded beam of three 2x: two thirds cross the first joint, one third
 * the second.  A wood engineering teacher's rule: (n-1)/n next to the loaded ply. */
static void shares_of_a_one_sided_beam(void **state)
{
    (void)state;
    assert_near(joint_crossing(3, 1, 1, 0, 0, 0).plf, 2.0 / 3, 1e-9);
    assert_near(joint_crossing(3, 2, 1, 0, 0, 0).plf, 1.0 / 3, 1e-9);
    /* cases worked elsewhere: 300 plf on 2 plies 150; 600 on 3, 400; 900 on 3, 600; spacing = 12 rows Z/q */
    static const struct {
        double w, z, rows, q, spacing;
        int plies;
    } cases[] = {{300, 141, 2, 150, 22.56, 2},
                 {600, 141, 2, 300, 11.28, 2},
                 {600, 141, 2, 400, 8.46, 3},
                 {900, 170, 3, 600, 10.2, 3},
                 {600, 100, 3, 400, 9.0, 3}};
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        double q = joint_crossing(cases[i].plies, 1, cases[i].w, 0, 0, 0).plf;
        assert_near(q, cases[i].q, 1e-9);
        assert_near(12 * cases[i].rows * cases[i].z / q, cases[i].spacing, 1e-9);
    }
    assert_near(joint_hung_share(2, 1), 0.5, 1e-12);
    assert_near(joint_hung_share(3, 1), 2.0 / 3, 1e-12); /* on A; on B it is joint 2 */
    assert_near(joint_hung_share(3, 2), 2.0 / 3, 1e-12);
    assert_near(joint_hung_share(4, 2), 0.5, 1e-12);
}

/* A nail of 3-1/2 x 0.162 in through two plies of 1-1/2 in stands 1/2 in in the third: less than 6 D = 0.972 in, so it
 * counts at the joint next to its own face alone.  4-1/2 x 0.207 in: 1-1/2 in in the third, 6 D = 1.242, 10 D = 2.07:
 * half the tip left out, 1.5 - 0.207 = 1.293 in. */
static void a_nail_counts_where_it_reaches(void **state)
{
    (void)state;
    struct joint_plies three = {.plies = 3, .ply_in = 1.5, .gravity = 0.5};
    assert_near(joint_reach(&three, JOINT_NAIL, 0.162, 3.5, 1, false), 1.5, 1e-9); /* 2 in beyond, 1-1/2 in the ply */
    assert_near(joint_reach(&three, JOINT_NAIL, 0.162, 3.5, 2, false), 0, 0);
    assert_near(joint_reach(&three, JOINT_NAIL, 0.162, 3.5, 2, true), 1.5, 1e-9);
    assert_near(joint_reach(&three, JOINT_NAIL, 0.162, 3.5, 1, true), 0, 0);
    assert_near(joint_reach(&three, JOINT_NAIL, 0.207, 4.5, 2, false), 1.293, 1e-9);
    /* 1-3/4 in plies: 3-1/2 in leave 1-3/4 in beyond the joint, over 10 D */
    struct joint_plies lvl = {.plies = 2, .ply_in = 1.75, .gravity = 0.5};
    assert_near(joint_reach(&lvl, JOINT_NAIL, 0.162, 3.5, 1, false), 1.75, 1e-9);
    /* a bolt of 6 in goes through three plies of 1-3/4 in, not through four */
    lvl.plies = 3;
    assert_near(joint_reach(&lvl, JOINT_BOLT, 0.5, 6, 2, false), 1.75, 1e-9);
    lvl.plies = 4;
    assert_near(joint_reach(&lvl, JOINT_BOLT, 0.5, 6, 1, false), 0, 0);
    assert_near(joint_reach(&three, JOINT_NAIL, 0.162, 3.5, 3, false), 0, 0); /* there is no third joint */
}

/* Nails: Commentary to NDS 12.1.6.6, from memory.  Dowels of 1/4 in and more: Tables 12.5.1, 4 D on the loaded edge, 2
 * D and 4 D at the end, as quoted on a structural engineers' list (2008) and in public engineering notes. */
static void distances(void **state)
{
    (void)state;
    struct joint_distances nail = joint_distances(0.162, false);
    assert_near(nail.edge, 0.405, 1e-9);
    assert_near(nail.end, 2.43, 1e-9);
    assert_near(nail.along, 2.43, 1e-9);
    assert_near(nail.between, 0.81, 1e-9);
    assert_near(joint_distances(0.162, true).between, 0.405, 1e-9);
    struct joint_distances bolt = joint_distances(0.5, false);
    assert_near(bolt.edge, 2, 1e-9);
    assert_near(bolt.end, 1, 1e-9);
    assert_near(bolt.full_end, 2, 1e-9);
    assert_near(bolt.between, 1.5, 1e-9);
    assert_near(bolt.full_between, 2, 1e-9);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(live_on_one_side_governs),
        cmocka_unit_test(shares_of_a_one_sided_beam),
        cmocka_unit_test(a_nail_counts_where_it_reaches),
        cmocka_unit_test(distances),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
