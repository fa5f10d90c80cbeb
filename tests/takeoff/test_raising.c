/* Weights, people, shrinkage and the way in: each figure worked by hand where it is checked. */
#include "house.h"

#include "../../src/takeoff/raising.h"

/* ceil(weight / share), at least 2, at least 3 for more than 12 ft overhead (common practice, no source). */
static void people_to_lift(void **state)
{
    (void)state;
    assert_int_equal(raising_people(48, 50, 10 * LENGTH_FOOT), 2);
    assert_int_equal(raising_people(48, 50, 12 * LENGTH_FOOT), 2);
    assert_int_equal(raising_people(48, 50, 12 * LENGTH_FOOT + 1), 3);
    assert_int_equal(raising_people(150, 50, 10 * LENGTH_FOOT), 3);
    assert_int_equal(raising_people(151, 50, 10 * LENGTH_FOOT), 4);
    assert_int_equal(raising_people(291, 50, 16 * LENGTH_FOOT), 6);
}

/* A thin pole round a corner of 8 ft and 27 ft: (8^(2/3) + 27^(2/3))^(3/2) = (4 + 9)^1.5 = 46.872 ft (the pole and
 * corridor problem of the calculus books; derived by setting the derivative to 0: tan^3 = 8 / 27).
 * Equal passages w, thickness t: by symmetry at 45 degrees, 2 sqrt(2) w - 2 t: 36 in and 1-1/2 in: 98.823 in. */
static void pole_round_a_corner(void **state)
{
    (void)state;
    assert_near(way_round_corner(8, 27, 0), 46.8721666, 1e-6);
    assert_near(way_round_corner(27, 8, 0), 46.8721666, 1e-6);
    assert_near(way_round_corner(36, 36, 1.5), 98.8233765, 1e-6);
    assert_near(way_round_corner(36, 1.5, 1.5), 0, 0);
}

/* Tilted between faces 96 in apart, 100 in long and 7 in deep: with the tilt t, 100 cos t + 7 sin t = 96.
 * 100 cos t + 7 sin t = r cos(t - p), r = sqrt(10,049) = 100.24470, p = atan(0.07) = 4.004173 deg;
 * cos(t - p) = 0.957657, t - p = 16.733 deg, t = 20.737 deg; height 100 sin t + 7 cos t = r sin(t + p) =
 * 100.24470 x sin 24.7414 deg = 41.95 in. */
static void tilted_between_faces(void **state)
{
    (void)state;
    assert_near(way_head_room(100, 7, 96), 41.95, 0.01);
    assert_near(way_head_room(96, 7, 96), 0, 0);
}

/* 9-1/4 in from 19 to 8 %: 9.25 x 0.0025 x 11 = 0.254 in; wet, from 28 %: 9.25 x 0.0025 x 20 = 0.4625 in. */
static void shrinkage_by_moisture(void **state)
{
    struct member member = {.depth = INCHES(9.25), .moisture = "S-DRY"};
    double inches;
    assert_true(member_shrinkage(*state, &member, &inches));
    assert_near(inches, 0.254375, 1e-9);
    member.moisture = "treated, wet when sold";
    assert_true(member_shrinkage(*state, &member, &inches));
    assert_near(inches, 0.4625, 1e-9);
    member.moisture = "engineered";
    assert_true(member_shrinkage(*state, &member, &inches));
    assert_near(inches, 0, 0);
    member.moisture = "";
    assert_false(member_shrinkage(*state, &member, &inches));
}

static const struct raising *raising_of(const struct takeoff *takeoff, const char *beam)
{
    for (size_t i = 0; i < takeoff->raising_count; i++)
        if (strcmp(takeoff->raising[i].design->beam->head.id, beam) == 0)
            return &takeoff->raising[i];
    fail_msg("no raising of %s", beam);
    return NULL;
}

static size_t times_said(const struct house *house, enum diag_code code, const char *text)
{
    size_t said = 0;
    for (size_t i = 0; i < house->diags.count; i++)
        said += house->diags.item[i].code == code && strstr(house->diags.item[i].text, text) != NULL;
    return said;
}

static const struct way_in *way_of(const struct raising *raising, const char *what)
{
    for (size_t i = 0; i < raising->way_count; i++)
        if (strcmp(raising->way[i].what, what) == 0)
            return &raising->way[i];
    fail_msg("no way '%s'", what);
    return NULL;
}

/* Two pockets of 3-1/2 in: a ply 127 in long and 9-1/4 in deep must swing into an opening of 120 in.  Its diagonal is
 * sqrt(127^2 + 9.25^2) = 127.3364 in: 7.336 in past a face.  A room of 7 in is too little, of 8 in enough. */
static void swing_between_pockets(void **state)
{
    struct house *house = house_new(*state);
    struct beam *beam = &house->beam[0];
    beam->end_[0].kind = beam->end_[1].kind = END_POCKET;
    beam->clear_span.length = INCHES(120);
    house->beam_design[0].cut_length = INCHES(127);
    house->member[DFL_2X10].weight_plf = 3.3;
    beam->room_beyond[0] = beam->room_beyond[1] = (struct length_value){INCHES(7), &house->written};
    const struct raising *raising = raising_of(house_count(house), "B1");
    const struct way_in *way = way_of(raising, "swing into its place");
    assert_near(way->needs_in, 7.3364, 1e-4);
    assert_true(way->known);
    assert_false(way->goes);
    assert_int_equal(times_said(house, DIAG_T004, "'beam B1' does not go in: its diagonal is"), 1);
    beam->room_beyond[1].length = INCHES(8);
    assert_true(way_of(raising_of(house_count(house), "B1"), "swing into its place")->goes);
    beam->room_beyond[0].at = beam->room_beyond[1].at = NULL;
    beam->room_beyond[0].length = beam->room_beyond[1].length = 0;
    assert_false(way_of(raising_of(house_count(house), "B1"), "swing into its place")->known);
}

/* B1: a ply of 175 in at 3.30 plf: 48.125 lb; three: 144.375 lb.  Ply by ply two would do, but 14 ft 7 in overhead
 * takes three; whole, 145 / 50: three.  With two hands a lift is counted, and it is said. */
static void weights_of_the_house(void **state)
{
    struct house *house = house_new(*state);
    house->member[DFL_2X10].weight_plf = 3.3;
    house->job.facts.hands.count = 3;
    house->job.facts.lift_share.quantity = (struct quantity){50 * 1000000, UNIT_LB};
    const struct takeoff *takeoff = house_count(house);
    const struct raising *b1 = raising_of(takeoff, "B1");
    assert_near(b1->ply_lb, 48.125, 1e-9);
    assert_near(b1->beam_lb, 144.375, 1e-9);
    assert_int_equal(b1->people, 3);
    assert_false(b1->needs_lift);
    house->job.facts.hands.count = 2;
    takeoff = house_count(house);
    assert_true(raising_of(takeoff, "B1")->needs_lift);
    assert_int_equal(times_said(house, DIAG_T003, "beam B1"), 1);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(people_to_lift),
        cmocka_unit_test(pole_round_a_corner),
        cmocka_unit_test(tilted_between_faces),
        cmocka_unit_test_setup_teardown(shrinkage_by_moisture, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(swing_between_pockets, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(weights_of_the_house, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
