/* Shores of the invented house: plates of two members, a second shore or a crib below, lumber used twice.  Each count
 * is worked out by hand where it is checked. */
#include "house.h"

static struct shore *shore_of(struct house *house)
{
    return &house->shore[0];
}

static struct shore_design *shore_design_of(struct house *house)
{
    return &house->shore_design[0];
}

static length_t length_of(const struct takeoff *takeoff, const char *id)
{
    return line_of(takeoff, id)->length;
}

/* 200 in: 144 in is the most, so two pieces; half is 100 in, 6 whole spacings of 16 in: 96 in and 104 in. */
static void plates_of_two_members_are_two_lines(void **state)
{
    struct house *house = house_new(*state);
    shore_design_of(house)->bottom_plate = &house->member[DFL_2X10];
    const struct takeoff *takeoff = house_count(house);
    assert_null(line_find(takeoff, "shores/S1/plates"));
    assert_count(takeoff, "shores/S1/top plate", 1);
    assert_count(takeoff, "shores/S1/top plate, last", 1);
    assert_count(takeoff, "shores/S1/bottom plate", 1);
    assert_true(length_of(takeoff, "shores/S1/bottom plate") == INCHES(96));
    assert_true(length_of(takeoff, "shores/S1/bottom plate, last") == INCHES(104));
    assert_ptr_equal(line_of(takeoff, "shores/S1/bottom plate")->member, &house->member[DFL_2X10]);
    assert_true(length_of(takeoff, "shores/S1/studs") == INCHES(90)); /* 93 - 2 x 1-1/2 */
}

/* 80 in below: studs 77 in, as many as above; diagonals 3, run 200/3 in: sqrt(66.67^2 + 80^2) = 104.14, up to 104-3/16.
 */
static void a_second_shore_stands_below(void **state)
{
    struct house *house = house_new(*state);
    struct shore *shore = shore_of(house);
    shore->held_below = (struct choice_value){HELD_BELOW_SHORE, &house->written};
    shore->height_below = (struct length_value){INCHES(80), &house->written};
    const struct takeoff *takeoff = house_count(house);
    assert_count(takeoff, "shores/S1/studs", 14);
    assert_count(takeoff, "shores/S1/below/studs", 14);
    assert_true(length_of(takeoff, "shores/S1/below/studs") == INCHES(77));
    assert_count(takeoff, "shores/S1/below/plates", 2);
    assert_count(takeoff, "shores/S1/below/plates, last", 2);
    assert_count(takeoff, "shores/S1/below/brace rows", 1);
    assert_count(takeoff, "shores/S1/below/diagonals", 3);
    assert_true(length_of(takeoff, "shores/S1/below/diagonals") == INCHES(104.1875));
}

/* Joists that run parallel and no answer: the second shore is counted, the dearer way. */
static void parallel_joists_are_held_unasked(void **state)
{
    struct house *house = house_new(*state);
    struct shore *shore = shore_of(house);
    shore->below = (struct choice_value){BELOW_JOISTS_PARALLEL, &house->written};
    shore->height_below = (struct length_value){INCHES(80), &house->written};
    assert_count(house_count(house), "shores/S1/below/studs", 14);
    shore->below.choice = BELOW_JOISTS_ACROSS;
    assert_null(line_find(house_count(house), "shores/S1/below/studs"));
}

/* Cribs: 200 in / 48 in = 4.2, 5 + 1 = 6.  Timbers 3-1/2 in deep (the 2x4 on edge stands in for one): 30 / 3.5 = 8
 * layers of two: 6 x 8 x 2 = 96. */
static void a_crib_is_counted_by_its_layers(void **state)
{
    struct house *house = house_new(*state);
    struct shore *shore = shore_of(house);
    shore->held_below = (struct choice_value){HELD_BELOW_CRIB, &house->written};
    shore->height_below = (struct length_value){INCHES(30), &house->written};
    shore_design_of(house)->crib_timber = &house->member[SPF_2X4];
    const struct takeoff *takeoff = house_count(house);
    assert_count(takeoff, "shores/S1/crib timbers", 96);
    assert_true(length_of(takeoff, "shores/S1/crib timbers") == INCHES(24));
    assert_null(line_find(takeoff, "shores/S1/below/studs"));
}

/* A second shore, 3 studs more and a brace row more; of one set it needs only what the first does not have. */
static struct house *two_shores(void **state, const char *set_of_second)
{
    struct house *house = house_new(*state);
    house->job.shores = arena_array(house->arena, 2, sizeof(struct shore));
    house->design.shores = arena_array(house->arena, 2, sizeof(struct shore_design));
    for (size_t i = 0; i < 2; i++) {
        house->job.shores[i] = house->shore[0];
        house->design.shores[i] = house->shore_design[0];
        house->design.shores[i].shore = &house->job.shores[i];
        house->job.shores[i].set = (struct text_value){"East side", &house->written};
    }
    house->job.shores[1].head = head_of("S2");
    house->job.shores[1].set.text = set_of_second;
    house->design.shores[1].studs = 17;
    house->design.shores[1].brace_rows = 2;
    house->job.shore_count = house->design.shore_count = 2;
    return house;
}

static void lumber_of_a_set_is_bought_once(void **state)
{
    const struct takeoff *takeoff = house_count(two_shores(state, "east_side"));
    assert_count(takeoff, "shores/S1/studs", 14);
    assert_count(takeoff, "shores/S2/studs", 3);
    assert_count(takeoff, "shores/S2/brace rows", 1);
    assert_null(line_find(takeoff, "shores/S2/plates"));
    assert_null(line_find(takeoff, "shores/S2/diagonals"));
    assert_non_null(strstr(line_of(takeoff, "shores/S2/studs")->counted, "14 of them come from shore S1"));
    takeoff = house_count(two_shores(state, "west side"));
    assert_count(takeoff, "shores/S2/studs", 17);
    assert_count(takeoff, "shores/S2/plates", 2);
}

/* What is built, not what is bought: 17 studs, although 14 come from the first shore. */
static void a_shore_is_kept_as_it_is_built(void **state)
{
    const struct takeoff *takeoff = house_count(two_shores(state, "east_side"));
    int64_t studs = 0, plates = 0; /* plates in two lengths of two */
    for (size_t i = 0; i < takeoff->shore_part_count; i++) {
        const struct shore_part *part = &takeoff->shore_part[i];
        if (strcmp(part->shore->head.id, "S2") != 0)
            continue;
        studs += strcmp(part->what, "shore stud") == 0 ? part->count : 0;
        plates += strcmp(part->what, "shore plate") == 0 ? part->count : 0;
    }
    assert_int_equal(studs, 17);
    assert_int_equal(plates, 4);
}

static decimal_t counted_per(struct house *house, const char *per)
{
    house->assembly[0] = (struct assembly_line){
        .assembly = "shoring", .per = per, .item = "THING", .count = DECIMAL_ONE, .at = {"a.csv", 2, 1, NULL}};
    house->catalog.assembly_count = 1;
    const struct takeoff_line *line = line_find(house_count(house), "assembly/shoring/THING");
    return line ? line->count : 0;
}

/* 2 x 14 studs, 2 x 200 in = 33.33 ft; cribs 6 as above, and then the shore stands once. */
static void what_is_below_is_built_too(void **state)
{
    struct house *house = house_new(*state);
    struct shore *shore = shore_of(house);
    shore->held_below = (struct choice_value){HELD_BELOW_SHORE, &house->written};
    shore->height_below = (struct length_value){INCHES(80), &house->written};
    assert_int_equal(counted_per(house, "shore stud"), 28 * DECIMAL_ONE);
    assert_int_equal(counted_per(house, "foot of shore"), 333300);
    assert_int_equal(counted_per(house, "crib"), 0);
    shore->held_below.choice = HELD_BELOW_CRIB;
    assert_int_equal(counted_per(house, "shore stud"), 14 * DECIMAL_ONE);
    assert_int_equal(counted_per(house, "crib"), 6 * DECIMAL_ONE);
}

static void shore_lumber_comes_back(void **state)
{
    struct house *house = house_new(*state);
    const struct takeoff *takeoff = house_count(house);
    for (size_t i = 0; i < takeoff->count; i++)
        assert_true((strstr(takeoff->line[i].counted, "; comes back for the next job") != NULL) ==
                    (takeoff->line[i].is == LINE_PIECES && strncmp(takeoff->line[i].id, "shores/", 7) == 0));
}

/* Days of a set add up, 5 + 5; shores of no set stand at once. */
static void days_of_a_set_add_up(void **state)
{
    static const struct {
        const char *set;
        int days;
    } rows[] = {{"east side", 10}, {"west side", 5}};
    for (size_t i = 0; i < COUNT_OF(rows); i++) {
        struct house *house = two_shores(state, rows[i].set);
        house->assembly[0] = (struct assembly_line){.assembly = "rent",
                                                    .per = "day of shoring",
                                                    .item = "JACK",
                                                    .count = DECIMAL_ONE,
                                                    .at = {"a.csv", 2, 1, NULL}};
        house->catalog.assembly_count = 1;
        assert_count(house_count(house), "assembly/rent/JACK", rows[i].days);
    }
}

/* 93 in high: 93 - 9-1/4 of strongback - 1-1/2 of plate = 82-1/4 in, 3 posts x 2 plies; hung, the posts reach 91-1/2 in
 * and each of 3 joists has a strap. */
static void a_strongback_stands_on_posts(void **state)
{
    struct house *house = house_new(*state);
    struct shore *shore = shore_of(house);
    static length_t at[] = {INCHES(3), INCHES(100), INCHES(197)};
    shore->strongback = (struct text_value){"DFL2-2X10", &house->written};
    shore->strongback_plies = (struct count_value){2, &house->written};
    shore->supports = (struct lengths_value){at, 3, &house->written};
    shore_design_of(house)->strongback = &house->member[DFL_2X10];
    shore_design_of(house)->studs = 6;
    const struct takeoff *takeoff = house_count(house);
    assert_count(takeoff, "shores/S1/strongback", 2);
    assert_true(length_of(takeoff, "shores/S1/strongback") == INCHES(200));
    assert_count(takeoff, "shores/S1/posts", 6);
    assert_true(length_of(takeoff, "shores/S1/posts") == INCHES(82.25));
    assert_count(takeoff, "shores/S1/bottom plate", 1);
    assert_count(takeoff, "shores/S1/diagonals", 3);
    assert_null(line_find(takeoff, "shores/S1/studs"));
    assert_null(line_find(takeoff, "shores/S1/plates"));
    shore->hung_by = (struct text_value){"STRAP-1", &house->written};
    shore_design_of(house)->hung_by = &house->hanger[STRAP];
    struct ref_value *held = arena_alloc(house->arena, sizeof *held);
    *held = (struct ref_value){.kind = KIND_JOISTS, .index = 0};
    shore->holds = (struct refs_value){.item = held, .count = 1, .at = &house->written};
    house->joist_design[0].count = 3;
    takeoff = house_count(house);
    assert_true(length_of(takeoff, "shores/S1/posts") == INCHES(91.5));
    assert_count(takeoff, "shores/S1/straps", 3);
    assert_count(takeoff, "shores/S1/straps/nails at one end", 3 * house->hanger[STRAP].carrier_count);
}

/* A beam and a post come down on it: 2 posts of 3 plies, as long as the studs, 93 - 3. */
static void posts_stand_under_points(void **state)
{
    struct house *house = house_new(*state);
    shore_of(house)->post_plies = (struct count_value){3, &house->written};
    shore_design_of(house)->posts = 2;
    const struct takeoff *takeoff = house_count(house);
    assert_count(takeoff, "shores/S1/studs", 14);
    assert_count(takeoff, "shores/S1/posts", 6);
    assert_true(length_of(takeoff, "shores/S1/posts") == INCHES(90));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(plates_of_two_members_are_two_lines, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_second_shore_stands_below, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(parallel_joists_are_held_unasked, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_crib_is_counted_by_its_layers, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(lumber_of_a_set_is_bought_once, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_shore_is_kept_as_it_is_built, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(what_is_below_is_built_too, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(shore_lumber_comes_back, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(days_of_a_set_add_up, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_strongback_stands_on_posts, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(posts_stand_under_points, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
