/* Furring, fillers, cap plates, blocks, new joists and finishes on the invented house; every count by hand. */
#include "house.h"

/* W1, 2x4, comes out under B1; P2 stands in it. */
static struct house *fitted_house(struct arena *arena)
{
    struct house *house = house_new(arena);
    const struct entry *at = &house->written;
    house->member[DFL_2X10].size = "2x10";
    house->member[SPF_2X4].size = "2x4";
    house->member[SPF_2X4].use = USE_PLATE;
    house->fastener[NAIL_SHORT].diameter = INCHES(0.131); /* 8d common: the code's nail for blocks */
    house->fastener[NAIL_SHORT].length = INCHES(2.5);
    house->wall[0].under = (struct ref_value){.kind = KIND_BEAM, .id = "b1", .index = 0, .at = at};
    house->wall[0].studs = (struct text_value){"2x4", at};
    house->beam[0].wall_at_end[1] = (struct choice_value){WAY_IN_LINE, at};
    house->beam[0].end_[1].ref.index = 1;
    return house;
}

static decimal_t counted(struct house *house, const char *per)
{
    house->assembly[0] = (struct assembly_line){
        .assembly = "fit up", .per = per, .item = "THING", .count = DECIMAL_ONE, .at = {"assemblies.csv", 2, 1, NULL}};
    house->catalog.assembly_count = 1;
    const struct takeoff_line *line = line_find(house_count(house), "assembly/fit up/THING");
    return line ? line->count * 100 / DECIMAL_ONE : 0;
}

static int said(const struct house *house, enum diag_code code)
{
    int count = 0;
    for (size_t i = 0; i < house->diags.count; i++)
        count += house->diags.item[i].code == code;
    return count;
}

/* The wall came out over 14 ft 10 in, 178 in; the beam is 175 in: 3 in are missing in both layers of its top plate. */
static void cut_plates_are_filled(void **state)
{
    struct house *house = fitted_house(*state);
    house->wall[0].length.length = INCHES(178);
    const struct takeoff_line *line = line_of(house_count(house), "fillers/W1");
    assert_int_equal(line->count, 2 * DECIMAL_ONE);
    assert_int_equal(line->length, INCHES(3));
    assert_ptr_equal(line->member, &house->member[SPF_2X4]); /* of the shore's plates */
    assert_int_equal(counted(house, "plate gap"), 100);
    house->wall[0].length.length = INCHES(175.4375); /* 7/16 in: nobody fills that */
    assert_null(line_find(house_count(house), "fillers/W1"));
    assert_int_equal(counted(house, "plate gap"), 0);
    house->wall[0].length.length = INCHES(175.5);
    assert_int_equal(counted(house, "plate gap"), 100);
    house->wall[0].studs.text = "2x6"; /* no such plate in this catalog: the wall's depth is not known */
    assert_int_equal(counted(house, "plate gap"), 0);
}

/* B1 is 4-1/2 in wide, W1 3-1/2 in deep and in line at end 2: said once.  Its post is no deeper: no furring. */
static void a_wider_beam_is_said(void **state)
{
    struct house *house = fitted_house(*state);
    assert_int_equal(counted(house, "foot of furring"), 0);
    assert_int_equal(said(house, DIAG_T011), 1);
    house->beam_design[0].width = INCHES(3.5);
    house->diags.count = 0;
    (void)house_count(house);
    assert_int_equal(said(house, DIAG_T011), 0);
}

/* A post of 2x10 in a 2x4 wall stands out of it, on two faces 86 in high: 172 in, 14.33 ft.  A dropped beam 4-1/2 in
 * wide does so with any post. */
static void what_stands_out_is_furred(void **state)
{
    struct house *house = fitted_house(*state);
    house->post_design[1].member = &house->member[DFL_2X10];
    assert_int_equal(counted(house, "foot of furring"), 1433);
    house->post_design[1].member = &house->member[SPF_2X4];
    house->beam[0].set.choice = SET_DROPPED;
    assert_int_equal(counted(house, "foot of furring"), 1433);
    house->beam[0].wall_at_end[1].choice = WAY_ACROSS;
    assert_int_equal(counted(house, "foot of furring"), 0);
}

/* A dropped beam 3 in wide under a 2x4 wall: 14 ft x 9-1/4 in = 10.79 sq ft on one face. */
static void a_thin_dropped_beam_is_filled(void **state)
{
    struct house *house = fitted_house(*state);
    house->beam[0].set.choice = SET_DROPPED;
    assert_int_equal(counted(house, "square foot of filler"), 0);
    house->beam_design[0].width = INCHES(3);
    assert_int_equal(counted(house, "square foot of filler"), 1079);
    house->beam[0].set.choice = SET_FLUSH;
    assert_int_equal(counted(house, "square foot of filler"), 0);
}

/* Three plies of 1-1/2 in: a plate of 4-1/2 in on P1; P2 is there already. */
static void new_posts_get_their_cap_plates(void **state)
{
    struct house *house = fitted_house(*state);
    for (size_t i = 0; i < 2; i++)
        house->post_design[i].cap_plate = &house->member[DFL_2X10];
    const struct takeoff *takeoff = house_count(house);
    assert_count(takeoff, "posts/P1/cap plate", 1);
    assert_int_equal(line_of(takeoff, "posts/P1/cap plate")->length, INCHES(4.5));
    assert_null(line_find(takeoff, "posts/P2/cap plate"));
    assert_int_equal(counted(house, "cap plate"), 100);
}

/* Side B open: 175 / 48 = 3.6, four spaces, five blocks.  Dropped: eleven joists of side A, ten bays of 16 - 1-1/2. */
static void blocks_go_where_no_joists_hang(void **state)
{
    struct house *house = fitted_house(*state);
    house->beam[0].blocks_of = (struct text_value){"DFL2-2X10", &house->written};
    house->beam[0].blocks_every.length = INCHES(48);
    house->beam[0].blocks_long.length = INCHES(14.5);
    assert_int_equal(counted(house, "block beside a beam"), 0);
    int notes = said(house, DIAG_T002);
    house->beam_design[0].side[1] = NULL;
    house->diags.count = 0;
    const struct takeoff *takeoff = house_count(house);
    assert_count(takeoff, "blocking/B1/B", 5);
    assert_int_equal(line_of(takeoff, "blocking/B1/B")->length, INCHES(14.5));
    assert_null(line_find(takeoff, "blocking/B1/A"));
    assert_int_equal(said(house, DIAG_T002), notes - 1); /* the note that they count nothing is gone */
    assert_int_equal(counted(house, "block beside a beam"), 500);
    house->beam[0].blocks_every.length = INCHES(35); /* divides 175: five spaces, six blocks */
    assert_int_equal(counted(house, "block beside a beam"), 600);
    house->beam[0].set.choice = SET_DROPPED;
    house->joists[0].spacing.length = INCHES(16);
    house->joist_design[0].width = INCHES(1.5);
    takeoff = house_count(house);
    assert_count(takeoff, "blocking/B1", 10);
    assert_int_equal(line_of(takeoff, "blocking/B1")->length, INCHES(14.5));
}

/* 12 ft of run less half of 4-1/2 in and 3-1/2 in on the far bearing: 145-1/4 in. */
static void new_joists_are_bought(void **state)
{
    static length_t at[] = {INCHES(15), INCHES(31)}, beside[] = {INCHES(39)};
    struct house *house = fitted_house(*state);
    house->joists[0].run.length = FEET(12);
    house->joists[0].new_at = (struct lengths_value){at, 2, &house->written};
    house->joists[0].new_beside = (struct lengths_value){beside, 1, &house->written};
    house->joists[0].new_of = (struct text_value){"DFL2-2X10", &house->written};
    const struct takeoff *takeoff = house_count(house);
    assert_count(takeoff, "joists/north/new", 3);
    assert_int_equal(line_of(takeoff, "joists/north/new")->length, INCHES(145.25));
    assert_int_equal(counted(house, "joist added"), 300);
    house->beam[0].set.choice = SET_DROPPED;
    assert_int_equal(line_of(house_count(house), "joists/north/new")->length, INCHES(147.5));
}

static int asks_for_row(const struct house *house, const char *per)
{
    int count = 0;
    for (size_t i = 0; i < house->diags.count; i++)
        count += house->diags.item[i].code == DIAG_T002 && strstr(house->diags.item[i].text, per) != NULL;
    return count;
}

/* B1 6,387.5 sq in = 44.36 sq ft of plaster, B2 3,460.625 = 24.03 of board; W1 14 ft of strip floor. */
static void finishes_are_told_apart(void **state)
{
    struct house *house = fitted_house(*state);
    house->beam[0].ceiling_finish = (struct text_value){"Plaster on Lath", &house->written};
    house->beam[0].insulation_back.choice = YES;
    house->wall[0].floor_finish = (struct text_value){"strip", &house->written};
    assert_int_equal(counted(house, "square foot of plaster on lath ceiling"), 4436);
    assert_int_equal(asks_for_row(house, "per 'square foot of Plaster on Lath ceiling'"), 0);
    assert_int_equal(asks_for_row(house, "per 'foot of strip floor'"), 1);
    assert_int_equal(counted(house, "square foot of gypsum board ceiling"), 2403);
    assert_int_equal(counted(house, "square foot of plaster ceiling"), 0);
    assert_int_equal(counted(house, "square foot of ceiling opened"), 6839);
    assert_int_equal(counted(house, "square foot of insulation put back"), 4436);
    house->diags.count = 0;
    assert_int_equal(counted(house, "foot of strip floor"), 1400);
    assert_int_equal(asks_for_row(house, "per 'square foot of Plaster on Lath ceiling'"), 1);
    assert_int_equal(asks_for_row(house, "per 'foot of strip floor'"), 0);
    assert_int_equal(counted(house, "foot of oak floor"), 0);
    house->job.facts.area_to_paint = (struct quantity_value){{220500000, UNIT_SQFT}, &house->written};
    assert_int_equal(counted(house, "square foot painted"), 22050);
}

/* B1 in one piece, B2 in two plies. */
static void a_whole_beam_is_raised_once(void **state)
{
    struct house *house = fitted_house(*state);
    house->beam[0].raised.choice = RAISED_WHOLE;
    assert_int_equal(counted(house, "beam raised whole"), 100);
    assert_int_equal(counted(house, "ply lifted"), 200);
    assert_int_equal(counted(house, "ply"), 500);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(cut_plates_are_filled, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_wider_beam_is_said, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(what_stands_out_is_furred, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_thin_dropped_beam_is_filled, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(new_posts_get_their_cap_plates, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(blocks_go_where_no_joists_hang, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(new_joists_are_bought, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_whole_beam_is_raised_once, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(finishes_are_told_apart, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
