/* Debris by loose volume and weight, and the loads that take it away.
 *
 * By hand, from published figures: a wall 16 ft x 8 ft of 2x4 studs, plastered both sides at 8 psf, the studs at 4 psf:
 * 128 x 4 + 256 x 8 = 2,560 lb, which is 20 psf of wall (Kidder, Construction Superintendence, art. 106: a 4 in stud
 * partition plastered on both sides weighs 20 psf).  With 1/2 in gypsum board at 2 psf: 128 x 4 + 256 x 2 = 1,024 lb, 8
 * psf of wall as a university handout has it. */
#include "house.h"

static struct debris_row rows[] = {
    {.debris = "studs", .per = "square foot of wall out", .solid = 410, .fluff = 30000, .pounds = 40000},
    {.debris = "plaster", .per = "square foot of plaster on lath", .solid = 940, .fluff = 20000, .pounds = 80000},
    {.debris = "board", .per = "square foot of gypsum board", .solid = 417, .fluff = 26000, .pounds = 20000},
};

/* One wall, 16 ft x 8 ft, the same on both sides; assemblies count its loads. */
static struct house *one_wall(struct arena *arena, const char *finish)
{
    struct house *house = house_new(arena);
    house->wall[0].length.length = FEET(16);
    house->wall[0].finish_a.text = house->wall[0].finish_b.text = finish;
    house->job.wall_count = 1;
    house->assembly[0] = (struct assembly_line){
        .assembly = "away", .per = "dump run", .item = "RUN", .count = DECIMAL_ONE, .at = {"a.csv", 2, 1, NULL}};
    house->assembly[1] = house->assembly[0];
    house->assembly[1].per = "dumpster";
    house->assembly[1].item = "DUMPSTER";
    house->catalog.assembly_count = 2;
    house->catalog.debris = rows;
    house->catalog.debris_count = COUNT_OF(rows);
    return house;
}

/* Loose: 128 x 0.041 = 5.248 x 3 = 15.74; 256 x 0.094 = 24.064 x 2 = 48.13: 63.87 cu ft, two runs of 54; by weight
 * 2,560 of 1,500 lb, two as well. */
static void plaster(void **state)
{
    const struct takeoff *takeoff = house_count(one_wall(*state, "plaster on lath"));
    assert_int_equal(takeoff->debris_count, 2);
    assert_int_equal(takeoff->debris_lb, 2560 * DECIMAL_ONE);
    assert_int_equal(takeoff->debris_cuft, 638700);
    assert_int_equal(takeoff->debris_loads, 2);
    assert_count(takeoff, "assembly/away/RUN", 2);
    assert_null(line_find(takeoff, "assembly/away/DUMPSTER"));
}

/* 256 x 0.0417 = 10.6752 cu ft solid, x 2.6 = 27.76 loose (a published check has 10.7 solid and 28 to 35 loose); with
 * the studs 43.5: one run. */
static void board(void **state)
{
    const struct takeoff *takeoff = house_count(one_wall(*state, "gypsum board"));
    assert_int_equal(takeoff->debris_lb, 1024 * DECIMAL_ONE);
    assert_int_equal(takeoff->debris[1].cuft, 277600);
    assert_int_equal(takeoff->debris_cuft, 435000);
    assert_count(takeoff, "assembly/away/RUN", 1);
}

/* The greater of both: 63.87 cu ft in loads of 27 are three, 2,560 lb in loads of 500 six; one dumpster takes all. */
static void loads(void **state)
{
    struct house *house = one_wall(*state, "plaster on lath");
    house->job.facts.load_holds = (struct quantity_value){{1000000, UNIT_CUYD}, &house->written};
    assert_count(house_count(house), "assembly/away/RUN", 3);
    house->job.facts.load_carries = (struct quantity_value){{500000000, UNIT_LB}, &house->written};
    assert_count(house_count(house), "assembly/away/RUN", 6);
    house->job.facts.load_holds.at = house->job.facts.load_carries.at = NULL;
    house->job.facts.debris_by = (struct choice_value){DEBRIS_DUMPSTERS, &house->written};
    assert_count(house_count(house), "assembly/away/DUMPSTER", 1);
    assert_null(line_find(house_count(house), "assembly/away/RUN"));
}

/* Nothing comes out: no load.  No debris.csv: one load. */
static void none(void **state)
{
    struct house *house = one_wall(*state, "plaster on lath");
    house->job.wall_count = 0;
    assert_int_equal(house_count(house)->debris_loads, 0);
    house->catalog.debris_count = 0;
    assert_count(house_count(house), "assembly/away/RUN", 1);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(plaster, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(board, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(loads, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(none, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
