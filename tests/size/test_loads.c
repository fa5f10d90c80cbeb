/* What the loads of a job come to: which act together, what snow is left on the roof, what lifts a beam; by hand. */
#include "size/made_job.h"

/* Side B is an attic without storage, 5 + 10 psf over 10 ft: 25 plf dead, 50 plf La.  Side A is a floor, 12 ft: 60 plf
 * dead, `live` x 6 plf L.  Beam 9.9 plf.  The wood is 96 + 2 x 3.5 = 103 in long, each end takes half, 4.2917 ft:
 * D 407.3 lb, La 214.6 lb.  Bearing 4.5 x 3.5 = 15.75 in2. */
static void under_an_attic(struct made *made, struct arena *arena, const char *live)
{
    made_start(made, arena);
    made_set(made, "area", "floor", "live", live);
    made_set(made, "joists", "south", "area", "area attic");
    made_add(made, "[area attic]\ndead = 5 psf\nlive = 10 psf\nlive is = attic no storage\n");
}

static const struct check *bearing_of(struct made *made)
{
    made_size(made);
    return made_check(made, "beam B1, end 1", "bearing of the beam");
}

/* IRC 2021 Table R301.5 note b.  40 psf: L = 240 plf, 1,030 lb: (407.3 + 1030)/15.75 = 91.3 psi, without the attic's
 * 214.6 lb (104.9 with them).  5 psf: L = 30 plf, 128.8 lb, less than the attic's: (407.3 + 214.6)/15.75 = 39.5. */
static void attic_does_not_add(void **state)
{
    struct made made;
    under_an_attic(&made, *state, "40 psf");
    const struct check *bearing = bearing_of(&made);
    assert_string_equal(bearing->combination, "D+L");
    assert_near(bearing->demand, 91.26, 0.01);
    assert_near(made.design->beams[0].end_lb[0].of[LOAD_ATTIC], 214.58, 0.01);
    assert_near(made.design->beams[0].end_lb[0].of[LOAD_LIVE], 1030, 0.01);
    assert_true(made_lists(made.design->basis, made.design->basis_count, "Table R301.5 note b"));
    under_an_attic(&made, *state, "5 psf");
    bearing = bearing_of(&made);
    assert_string_equal(bearing->combination, "D+La");
    assert_near(bearing->demand, 39.48, 0.01);
}

/* With snow, 2,000 lb in the middle, 1,000 lb an end: D + 0.75 (1030 + 1000) = 1929.8 lb, 122.5 psi.  A floor of 5 psf:
 * D + 0.75 (214.6 + 1000) = 1318.3, 83.7 psi; D + S = 1407.3, 89.4 psi governs.  Snow of 500 lb, 250 an end: D + 0.75
 * (214.6 + 250) = 755.7 lb, 48.0 psi; D + S 657.3; D + La 621.9: the attic's own combination with snow governs. */
static void attic_and_snow(void **state)
{
    static const struct {
        const char *live, *snow, *combination;
        double psi;
    } cases[] = {{"40 psf", "2000 lb", "D+0.75L+0.75S", 122.53},
                 {"5 psf", "2000 lb", "D+S", 89.35},
                 {"5 psf", "500 lb", "D+0.75La+0.75S", 47.98}};
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        struct made made;
        under_an_attic(&made, *state, cases[i].live);
        made_set(&made, "beam", "B1", "above", "load X");
        made_add(&made, "[load X]\non = beam B1\nat = 51.5 in\ndead = 0 lb\nheld by = shore S1\n");
        made_set(&made, "load", "X", "snow", cases[i].snow);
        const struct check *bearing = bearing_of(&made);
        assert_string_equal(bearing->combination, cases[i].combination);
        assert_near(bearing->demand, cases[i].psi, 0.02);
    }
}

/* An attic with storage is live load like any other: (407.3 + 1030 + 214.6)/15.75 = 104.9 psi. */
static void storage_adds(void **state)
{
    struct made made;
    under_an_attic(&made, *state, "40 psf");
    made_set(&made, "area", "attic", "live is", "attic storage");
    const struct check *bearing = bearing_of(&made);
    assert_string_equal(bearing->combination, "D+L");
    assert_near(bearing->demand, 104.88, 0.01);
    assert_false(made_lists(made.design->basis, made.design->basis_count, "note b"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(attic_does_not_add, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(attic_and_snow, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(storage_adds, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
