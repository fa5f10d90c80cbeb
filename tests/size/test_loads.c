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

/* Nothing but the wood's 9.9 plf and one load from `from` to `to` on B1, whose wood is 103 in long: 99.5 in between the
 * centers of its bearings, the first 1.75 in from the end. */
static void with_load(struct made *made, struct arena *arena, const char *ini)
{
    made_start(made, arena);
    made_set(made, "area", "floor", "dead", "0 psf");
    made_set(made, "area", "floor", "live", "0 psf");
    made_set(made, "beam", "B1", "above", "load X");
    made_add(made, arena_printf(arena, "[load X]\non = beam B1\nheld by = shore S1\n%s", ini));
}

/* A triangle over the whole span, 0 to 240 plf: W = 240 x 8.2917/2 = 995 lb, a third to end 1, 331.67 lb, two thirds to
 * end 2, 663.33 lb.  y = W x (3 x^4 - 10 L^2 x^2 + 7 L^4)/(180 E I L^2) (the formula of every handbook, by
 * integration), most at 0.5193 L = 51.67 in (53.4 in from end 1): 0.0130442 W L^3/(E I) = 0.0130442 x 995
 * x 99.5^3/(1,600,000 x 3 x 98.93) = 0.02692 in. */
static void triangle(void **state)
{
    struct made made;
    with_load(&made, *state, "from = 1-3/4 in\nto = 101-1/4 in\nlive = 0 plf\nlive to = 240 plf\n");
    made_size(&made);
    const struct beam_design *beam = &made.design->beams[0];
    assert_near(beam->end_lb[0].of[LOAD_LIVE], 331.667, 0.001);
    assert_near(beam->end_lb[1].of[LOAD_LIVE], 663.333, 0.001);
    const struct check *live = made_check(&made, "beam B1", "live deflection");
    assert_near(live->demand, 0.02692, 0.00001);
    assert_near(live->at_in, 53.42, 0.01);
}

/* Dead load of 100 to 300 plf from 12 in to 60 in: 200 x 4 = 800 lb, its middle (48/3) (100 + 2 x 300)/(100 + 300) = 28
 * in on, at 40 in: 800 x 38.25/99.5 = 307.54 lb to end 2, 492.46 to end 1; beside them half of the wood's 84.975 lb.
 * Snow of 60 plf all along the same stretch is 240 lb, its middle at 36 in: 240 x 34.25/99.5 = 82.61 lb and 157.39.  A
 * shore holds the heavier end's: 300 plf x 16/12 ft x 12/(12 - 3) for standing 3 ft past it = 533.3 lb of dead load, 60
 * x 16/12 x 12/9 = 106.7 of snow. */
static void trapezoid(void **state)
{
    struct made made;
    with_load(&made, *state, "from = 12 in\nto = 60 in\ndead = 100 plf\ndead to = 300 plf\nsnow = 60 plf\n");
    made_size(&made);
    const struct beam_design *beam = &made.design->beams[0];
    assert_near(beam->end_lb[0].of[LOAD_DEAD], 492.46 + 42.49, 0.01);
    assert_near(beam->end_lb[1].of[LOAD_DEAD], 307.54 + 42.49, 0.01);
    assert_near(beam->end_lb[0].of[LOAD_SNOW], 157.39, 0.01);
    assert_near(beam->end_lb[1].of[LOAD_SNOW], 82.61, 0.01);
    assert_near(made.design->shores[0].stud_lb, 533.33 + 106.67, 0.01);
    for (size_t i = 0; i < made.design->path_count; i++)
        if (!strcmp(made.design->path[i].from, "load X"))
            assert_near(made.design->path[i].lb.of[LOAD_DEAD], 800, 1e-6);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(attic_does_not_add, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(attic_and_snow, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(storage_adds, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(triangle, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(trapezoid, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
