/* Upset beams in whole jobs: 3-2x10 Douglas Fir-Larch No.2, Fv 180, Fb* 990, under 46.658 lb/in on 99.5 in, V = 2,321
 * lb (worked in test_job.c); joists of 2x8 every 16 in from 8 in.  An inch of its depth holds 2/3 x 180 x 4.5 = 540 lb.
 */
#include "size/made_job.h"

static void upset(struct made *made, struct arena *arena)
{
    made_start(made, arena);
    made_set(made, "beam", "B1", "set", "upset");
    made_set(made, "beam", "B1", "above joists by", "2 in");
    made_set(made, "joists", "north", "size", "2x8");
    made_set(made, "joists", "south", "size", "2x8");
}

static const char near_end[] = "shear over joists north, hung low near an end";
static const char farther[] = "shear over joists north, hung low";

/* NDS 2018 3.4.3.3 with the hanger's least depth, 6-3/4 in: 540 x 6.75 = 3,645 lb, x (6.75/9.25)^2 = 1,941 lb within 5
 * d = 46-1/4 in of an end.  Beyond it the joist at 46-1/4 in has the load from 38-1/4 in on: V = 46.658 x (49.75
 * - 36.5). */
static void hung_low(void **state)
{
    struct made made;
    upset(&made, *state);
    made_size(&made);
    const struct check *check = made_check(&made, "beam B1", near_end);
    assert_near(check->demand, 2321, 1);
    assert_near(check->capacity, 1941, 0.5);
    assert_near(check->at_in, 8, 1e-9);
    assert_non_null(strstr(check->clause, "3.4.3.3"));
    check = made_check(&made, "beam B1", farther);
    assert_near(check->demand, 618.2, 0.5);
    assert_near(check->capacity, 3645, 0.01);
    assert_false(made.design->passes);
    assert_true(made_says(&made, DIAG_S002));
    assert_false(made_says(&made, DIAG_S004)); /* 6-3/4 in is above the middle */
}

/* 540 x 4.5 x (4.5/9.25)^2 = 575 lb; below the middle, 4-5/8 in: 3.8.2.  At the middle itself nothing is said. */
static void nail_below_the_middle(void **state)
{
    struct made made;
    upset(&made, *state);
    made_set(&made, "beam", "B1", "top hanger nail", "4-1/2 in");
    made_size(&made);
    assert_near(made_check(&made, "beam B1", near_end)->capacity, 575.1, 0.1);
    assert_true(made_says(&made, DIAG_S004));
    upset(&made, *state);
    made_set(&made, "beam", "B1", "top hanger nail", "4-5/8 in");
    made_size(&made);
    assert_false(made_says(&made, DIAG_S004));
}

/* A flush beam likewise, the upper edges even.  2x10 joists: the hanger's 8-3/4 in of 9-1/4: 540 x 8.75 x (8.75/9.25)^2
 * = 4,228 lb, and 4,725 lb beyond 5 d.  2x8: 2 in below them and 6-3/4 in: the same.  Nails at 4-1/2 in: as above. */
static void flush_beam(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_size(&made);
    assert_near(made_check(&made, "beam B1", near_end)->capacity, 4228, 0.5);
    assert_near(made_check(&made, "beam B1", near_end)->demand, 2321, 1);
    assert_near(made_check(&made, "beam B1", farther)->capacity, 4725, 0.01);
    assert_true(made.design->passes);
    upset(&made, *state);
    made_set(&made, "beam", "B1", "set", "flush");
    made_set(&made, "beam", "B1", "above joists by", NULL);
    made_size(&made);
    assert_near(made_check(&made, "beam B1", near_end)->capacity, 4228, 0.5);
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "top hanger nail", "4-1/2 in");
    made_size(&made);
    assert_near(made_check(&made, "beam B1", near_end)->capacity, 575.1, 0.1);
    assert_true(made_says(&made, DIAG_S004));        /* below the middle: 3.8.2 */
    made_set(&made, "beam", "B1", "set", "dropped"); /* nothing hangs there */
    made.job = job_check(made.arena, "test.ini", &made.entries, &made.diags);
    assert_true(made_says(&made, DIAG_K013));
}

/* Nails as high as the beam leave nothing to split off. */
static void nail_at_the_top(void **state)
{
    struct made made;
    upset(&made, *state);
    made_set(&made, "beam", "B1", "top hanger nail", "9-1/4 in");
    made_size(&made);
    assert_null(made_find(&made, "beam B1", near_end));
}

/* A beam that hangs on it at 40 in of 103, within 5 d of end 1 and beyond 5 d of end 2: both are rated, V on either
 * side of its place. */
static void beam_hung_low(void **state)
{
    struct made made;
    upset(&made, *state);
    made_add(&made, "[area more]\ndead = 10 psf\nlive = 40 psf\nlive is = floor\n[joists east]\nkind = sawn joist\n"
                    "size = 2x8\nspacing = 16 in\nfirst joist = 8 in\nrun = 8 ft\nover the wall = butted\n"
                    "ties the roof = no\narea = area more\n"
                    "[beam B2]\nshore engineer = R. Ames, S4\nclear span = 6 ft\njoists A = joists east\nend 1 = beam "
                    "B1 at 40 in\nend 2 = post P3\n"
                    "wall at end 2 = across\nabove = nothing\nmember = DFL2-2X8\nplies = 2\n"
                    "ply fasteners = NAIL-16D-COMMON\n"
                    "[post P3]\nmember = SPF-STUD-2X4\nplies = 2\nheight = 84 in\nbraced = both\n"
                    "stands on = footing F1\n");
    made_set(&made, "beam", "B1", "top hanger nail", "6 in");
    made_size(&made);
    const struct check *close = made_check(&made, "beam B1", "shear over beam B2, hung low near an end");
    const struct check *away = made_check(&made, "beam B1", "shear over beam B2, hung low");
    assert_near(close->capacity, 540 * 6 * (6 / 9.25) * (6 / 9.25), 0.01);
    assert_near(away->capacity, 540 * 6, 0.01);
    assert_near(close->demand, away->demand, 1e-6);
    /* the reaction at end 1 less the even load on the first 40 in of the wood */
    double reaction = loads_total(&made.design->beams[0].end_lb[0]);
    assert_near(close->demand, reaction - 46.658 * 40, 0.2);
}

/* Kickers every 4 ft at most on 99.5 in: three spaces of 33.167 in.  le = 2.06 x 33.167 = 68.32, RB^2 = 68.32 x
 * 9.25/2.25 = 280.9, FbE = 696,000/280.9 = 2,478, a = 2.503, CL = 1.8437 - sqrt(3.3991 - 2.6347) = 0.9694: 959.7 psi.
 * As if solid: RB^2 = 31.21, a = 22.53, CL = 12.382 - sqrt(153.32 - 23.71) = 0.998. */
static void kickers(void **state)
{
    struct made made;
    upset(&made, *state);
    made_set(&made, "beam", "B1", "kickers every", "4 ft");
    made_set(&made, "beam", "B1", "kickers of", "SPF2-2X4");
    made_size(&made);
    assert_int_equal(made.design->beams[0].kickers, 2);
    const struct check *bending = made_check(&made, "beam B1", "bending");
    assert_near(bending->capacity, 959.7, 0.3);
    assert_non_null(strstr(bending->note, "CL 0.969"));
    assert_non_null(strstr(bending->note, "on the width of all plies CL would be 0.998, not used"));
}

static void take_out(struct made *made, const char *id)
{
    for (size_t i = made->entries.count; i-- > 0;)
        if (name_same(made->entries.item[i].id, id))
            made_take_out(made, i);
}

static void one_side(struct made *made, struct arena *arena)
{
    upset(made, arena);
    made_set(made, "beam", "B1", "joists B", NULL);
    take_out(made, "south");
    take_out(made, "S2");
}

/* Joists on one face turn the beam: asked until kickers hold it, or an engineer. */
static void one_sided_rolls(void **state)
{
    struct made made;
    one_side(&made, *state);
    made_size(&made);
    assert_true(made_says(&made, DIAG_S005));
    one_side(&made, *state);
    made_set(&made, "beam", "B1", "kickers every", "4 ft");
    made_set(&made, "beam", "B1", "kickers of", "SPF2-2X4");
    made_size(&made);
    assert_false(made_says(&made, DIAG_S005));
    one_side(&made, *state);
    made_set(&made, "beam", "B1", "specified by", "R. Ames, PE");
    made_set(&made, "beam", "B1", "specified span", "8 ft");
    made_set(&made, "beam", "B1", "sheet", "S1");
    made_size(&made);
    assert_false(made_says(&made, DIAG_S005));
}

static void kicker_not_in_catalog(void **state)
{
    struct made made;
    upset(&made, *state);
    made_set(&made, "beam", "B1", "kickers every", "4 ft");
    made_set(&made, "beam", "B1", "kickers of", "SPF2-2X5");
    made_size(&made);
    assert_true(made_says(&made, DIAG_C006));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(hung_low, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(nail_below_the_middle, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(flush_beam, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(nail_at_the_top, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(beam_hung_low, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(kickers, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(one_sided_rolls, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(kicker_not_in_catalog, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
