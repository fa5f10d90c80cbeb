/* Wet, hot and incised wood.  Factors: NDS 2018 Supplement Tables 4A, 4D and 5A (CM), Table 2.3.3 (Ct), as read in an
 * open program that cites them; Table 4.3.8 (Ci) from memory. */
#include "size/made_job.h"
#include "size/wood_rows.h"

#include "sawbill/joint.h"
#include "sawbill/service.h"

/* 2x10: Fb CF = 900 x 1.1 = 990, no more than 1,150: CM 1.0.  2x4: 900 x 1.5 = 1,350: 0.85.  Fc CF = 1,350 > 750: 0.8.
 */
static void wet_dimension_lumber(void **state)
{
    (void)state;
    const struct service wet = {.wet = true};
    struct service_factors f = service_factors(&dfl_2, WOOD_SAWN, 1.5, 9.25, &wet);
    assert_near(f.fb, 1.0, 0);
    assert_near(f.ft, 1.0, 0);
    assert_near(f.fv, 0.97, 0);
    assert_near(f.fc_perp, 0.67, 0);
    assert_near(f.fc, 0.8, 0);
    assert_near(f.e, 0.9, 0);
    assert_near(service_factors(&dfl_2, WOOD_SAWN, 1.5, 3.5, &wet).fb, 0.85, 0);
    struct design_row weak = dfl_2;
    weak.fc = 700; /* x CF 1.0 of a 2x10 */
    assert_near(service_factors(&weak, WOOD_SAWN, 1.5, 9.25, &wet).fc, 1.0, 0);
}

static void wet_timber_and_glulam(void **state)
{
    (void)state;
    const struct service wet = {.wet = true};
    struct design_row timber = dfl_2;
    timber.table = "4D";
    struct service_factors f = service_factors(&timber, WOOD_SAWN, 5.5, 9.5, &wet);
    assert_near(f.fb, 1.0, 0);
    assert_near(f.fc_perp, 0.67, 0);
    assert_near(f.fc, 0.91, 0);
    assert_near(f.e, 1.0, 0);
    f = service_factors(&dfl_2, WOOD_GLULAM, 3.5, 9, &wet);
    assert_near(f.fb, 0.8, 0);
    assert_near(f.fv, 0.875, 0);
    assert_near(f.fc_perp, 0.53, 0);
    assert_near(f.fc, 0.73, 0);
    assert_near(f.e, 0.833, 0);
}

/* Table 2.3.3: E and Ft 0.9 beyond 100 F; all else 0.8 and 0.7 dry, 0.7 and 0.5 wet.  Wet and 125 F on a 2x10: Fb 1.0 x
 * 0.7, Fv 0.97 x 0.7 = 0.679, E 0.9 x 0.9 = 0.81.  Incised as well: Fv 0.679 x 0.8 = 0.5432, E 0.81 x 0.95 = 0.7695,
 * bearing 0.67 x 0.7 = 0.469 as before. */
static void hot_and_incised(void **state)
{
    (void)state;
    struct service service = {.heat = HEAT_125};
    struct service_factors f = service_factors(&dfl_2, WOOD_SAWN, 1.5, 9.25, &service);
    assert_near(f.fb, 0.8, 0);
    assert_near(f.ft, 0.9, 0);
    assert_near(f.e, 0.9, 0);
    service.heat = HEAT_150;
    assert_near(service_factors(&dfl_2, WOOD_SAWN, 1.5, 9.25, &service).fb, 0.7, 0);
    service.wet = true;
    assert_near(service_factors(&dfl_2, WOOD_SAWN, 1.5, 9.25, &service).fb, 0.5, 0);
    service.heat = HEAT_125;
    f = service_factors(&dfl_2, WOOD_SAWN, 1.5, 9.25, &service);
    assert_near(f.fb, 0.7, 1e-12);
    assert_near(f.fv, 0.679, 1e-12);
    assert_near(f.e, 0.81, 1e-12);
    service.incised = true;
    f = service_factors(&dfl_2, WOOD_SAWN, 1.5, 9.25, &service);
    assert_near(f.fv, 0.5432, 1e-12);
    assert_near(f.e, 0.7695, 1e-12);
    assert_near(f.fc_perp, 0.469, 1e-12);
    struct design_row row = service_row(&dfl_2, &f);
    assert_near(row.fv, 180 * 0.5432, 1e-9);
    assert_near(row.emin, 580000 * 0.7695, 1e-6);
}

/* 8.1.4: composite lumber is for dry use; only sawn lumber has incising factors. */
static void what_is_allowed(void **state)
{
    (void)state;
    const struct service wet = {.wet = true}, incised = {.incised = true}, hot = {.heat = HEAT_150};
    assert_false(service_allowed(WOOD_LVL, &wet));
    assert_true(service_allowed(WOOD_GLULAM, &wet));
    assert_true(service_allowed(WOOD_SAWN, &wet));
    assert_false(service_allowed(WOOD_GLULAM, &incised));
    assert_true(service_allowed(WOOD_SAWN, &incised));
    assert_true(service_allowed(WOOD_LVL, &hot));
}

/* The plain job's 3-2x10, Fb' 990 by CL 1 nearly, wet: Fb as it was, Fv 180 x 0.97 = 174.6, bearing 625 x 0.67 =
 * 418.75, deflection 1/0.9 as much, and of dead load with Kcr 2.0 in place of 1.5 (NDS 2018 3.5.2). */
static void wet_beam(void **state)
{
    struct made dry, wet;
    made_start(&dry, *state);
    made_size(&dry);
    made_start(&wet, *state);
    made_set(&wet, "beam", "B1", "moisture in service", "wet");
    made_size(&wet);
    assert_near(made_check(&wet, "beam B1", "shear")->capacity, 174.6, 1e-9);
    assert_near(made_check(&wet, "beam B1, end 1", "bearing of the beam")->capacity, 418.75, 1e-9);
    double live = made_check(&dry, "beam B1", "live deflection")->demand;
    assert_near(made_check(&wet, "beam B1", "live deflection")->demand, live / 0.9, 1e-9);
    const struct check *total = made_check(&wet, "beam B1", "total deflection");
    double dead = (made_check(&dry, "beam B1", "total deflection")->demand - live) / 1.5;
    assert_near(total->demand, (live + 2 * dead) / 0.9, 1e-9);
    assert_non_null(strstr(made_check(&wet, "beam B1", "bending")->note, "CM Ct Ci: Fb 1, Ft 1, Fv 0.97"));
    /* nails between plies: 0.7 (Table 11.3.3) */
    assert_near(made_check(&wet, "beam B1", "ply fastening, joint 1")->capacity,
                0.7 * made_check(&dry, "beam B1", "ply fastening, joint 1")->capacity, 1e-9);
    assert_true(made_lists(wet.design->unchecked, wet.design->unchecked_count, "hangers at beam B1 in its service"));
    assert_false(made_says(&wet, DIAG_S010));
}

/* The studs of P1, Fc of 4A Stud: incised 0.8; their joists: Fv 180 or less x 0.8. */
static void incised_post_and_joists(void **state)
{
    struct made plain, cut;
    made_start(&plain, *state);
    made_size(&plain);
    made_start(&cut, *state);
    made_set(&cut, "post", "P1", "incised", "yes");
    made_set(&cut, "joists", "north", "incised", "yes");
    made_size(&cut);
    assert_near(made_check(&cut, "post P1", "column")->capacity,
                0.8 * made_check(&plain, "post P1", "column")->capacity, 1e-6);
    assert_true(made_member(&cut, "post P1")->unverified);
    assert_near(made_check(&cut, "joists north, cut", "shear")->capacity,
                0.8 * made_check(&plain, "joists north, cut", "shear")->capacity, 1e-9);
    assert_near(made_check(&cut, "joists north, cut", "live deflection")->demand,
                made_check(&plain, "joists north, cut", "live deflection")->demand / 0.95, 1e-9);
}

static void wet_composite_is_asked(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "member", "LVL-9.5");
    made_set(&made, "beam", "B1", "moisture in service", "wet");
    made_size(&made);
    assert_true(made_says(&made, DIAG_S010));
}

/* So is a composite post, until its engineer is named. */
static void wet_composite_post(void **state)
{
    for (int named = 0; named < 2; named++) {
        struct made made;
        made_start(&made, *state);
        made_set(&made, "post", "P1", "member", "PSL-POST-3.5X5.25");
        made_set(&made, "post", "P1", "plies", "1");
        made_set(&made, "post", "P1", "moisture in service", "wet");
        if (named)
            made_set(&made, "post", "P1", "engineer", "R. Ames, PE, sheet S2");
        made_size(&made);
        assert_int_equal(made_says(&made, DIAG_S010), !named);
    }
}

/* Tables 11.3.3 and 11.3.4, from memory. */
static void joints(void **state)
{
    (void)state;
    assert_near(joint_cm(true), 0.7, 0);
    assert_near(joint_cm(false), 1.0, 0);
    assert_near(joint_ct(0, true), 1.0, 0);
    assert_near(joint_ct(1, false), 0.8, 0);
    assert_near(joint_ct(1, true), 0.7, 0);
    assert_near(joint_ct(2, false), 0.7, 0);
    assert_near(joint_ct(2, true), 0.5, 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(wet_dimension_lumber),
        cmocka_unit_test(wet_timber_and_glulam),
        cmocka_unit_test(hot_and_incised),
        cmocka_unit_test(what_is_allowed),
        cmocka_unit_test_setup_teardown(wet_beam, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(incised_post_and_joists, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(wet_composite_is_asked, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(wet_composite_post, support_setup, support_teardown),
        cmocka_unit_test(joints),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
