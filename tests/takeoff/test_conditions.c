/* Conditions of conditions.csv on the hours of tasks.  All figures by hand. */
#include "house.h"

static struct condition rows[] = {
    {.condition = "occupied house", .task = "hang joist", .factor = 12500, .source = "own figure"},
    {.condition = "attic access", .task = "hang joist", .factor = 15000, .source = "own figure"},
    {.condition = "heavy ply", .task = "hang joist", .factor = 11000, .from_lb = 40, .source = "own figure"},
};

static struct house *house_with(struct arena *arena, const char *const *named, size_t count)
{
    struct house *house = house_new(arena);
    house->assembly[0] = (struct assembly_line){
        .assembly = "joists", .per = "job", .task = "hang joist", .count = DECIMAL_ONE, .at = {"a.csv", 2, 1, NULL}};
    house->catalog.assembly_count = 1;
    house->catalog.conditions = rows;
    house->catalog.condition_count = COUNT_OF(rows);
    struct text_value *item = arena_array(arena, count + 1, sizeof *item);
    for (size_t i = 0; i < count; i++)
        item[i] = (struct text_value){named[i], &house->written};
    house->job.facts.conditions = (struct texts_value){item, count};
    return house;
}

static const struct takeoff_line *hanging(struct house *house)
{
    return line_of(house_count(house), "assembly/joists/hang joist");
}

/* 1.25 x 1.5 = 1.875; the plies of this house weigh nothing, so that the third row does not hold. */
static void factors_multiply(void **state)
{
    static const char *const both[] = {"Occupied_house", "attic access"};
    assert_int_equal(hanging(house_with(*state, NULL, 0))->factor, DECIMAL_ONE);
    assert_int_equal(hanging(house_with(*state, both, 1))->factor, 12500);
    const struct takeoff_line *line = hanging(house_with(*state, both, 2));
    assert_int_equal(line->factor, 18750);
    assert_non_null(strstr(line->counted, "hours x 1.25 for occupied house (own figure)"));
    assert_non_null(strstr(line->counted, "hours x 1.5 for attic access (own figure)"));
}

/* A ply of 175 in at 3.3 plf: 48.1 lb, over 40. */
static void weight_holds_by_itself(void **state)
{
    struct house *house = house_with(*state, NULL, 0);
    house->member[DFL_2X10].weight_plf = 3.3;
    const struct takeoff_line *line = hanging(house);
    assert_int_equal(line->factor, 11000);
    assert_non_null(strstr(line->counted, "hours x 1.1 for heavy ply, 48 lb at once (own figure)"));
}

static void unknown_conditions_stop(void **state)
{
    static const char *const named[] = {"occupied home", "occupied house"};
    struct house *house = house_with(*state, named, 2);
    assert_int_equal(hanging(house)->factor, 12500);
    size_t found = 0;
    for (size_t i = 0; i < house->diags.count; i++)
        if (house->diags.item[i].code == DIAG_C006) {
            found++;
            assert_non_null(strstr(house->diags.item[i].text, "'occupied home' is no condition"));
        }
    assert_int_equal(found, 1);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(factors_multiply, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(weight_holds_by_itself, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(unknown_conditions_stop, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
