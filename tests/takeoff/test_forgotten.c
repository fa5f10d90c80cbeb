/* What is usually forgotten: priced, at no cost, excluded, or left blank and asked for in one message. */
#include "house.h"

static struct forgotten rows[] = {
    {.line = "hanging", .priced_by = "sub/hanger; assembly/joists/hang joist"},
    {.line = "parking", .priced_by = "assembly/parking"},
    {.line = "test", .priced_by = "buy/test", .price = 140 * MONEY_DOLLAR, .has_price = true, .class = CLASS_SUBS},
    {.line = "engineer's visit", .priced_by = ""},
};
enum { HANGING, PARKING, TEST, ENGINEER };

static void answer(struct house *house, struct texts_value *key, const char *text)
{
    struct text_value *item = arena_array(house->arena, key->count + 1, sizeof *item);
    for (size_t i = 0; i < key->count; i++)
        item[i] = key->item[i];
    item[key->count] = (struct text_value){text, &house->written};
    *key = (struct texts_value){item, key->count + 1};
}

static struct house *forgetful_house(struct arena *arena)
{
    struct house *house = house_new(arena);
    house->assembly[0] = (struct assembly_line){
        .assembly = "joists", .per = "job", .task = "hang joist", .count = DECIMAL_ONE, .at = {"a.csv", 2, 1, NULL}};
    house->catalog.assembly_count = 1;
    house->catalog.forgotten = rows;
    house->catalog.forgotten_count = COUNT_OF(rows);
    return house;
}

static const char *message(const struct house *house, enum diag_code code, size_t number)
{
    for (size_t i = 0; i < house->diags.count; i++)
        if (house->diags.item[i].code == code && number-- == 0)
            return house->diags.item[i].text;
    return NULL;
}

static void one_message_lists_the_blank(void **state)
{
    struct house *house = forgetful_house(*state);
    const struct takeoff *takeoff = house_count(house);
    assert_non_null(strstr(message(house, DIAG_T008, 0), "left blank: 'parking', 'test', 'engineer's visit'; write"));
    assert_null(message(house, DIAG_T008, 1));
    assert_int_equal(takeoff->forgotten[HANGING].state, FORGOTTEN_PRICED);
    assert_string_equal(takeoff->forgotten[HANGING].by, "assembly/joists/hang joist");
    assert_int_equal(takeoff->forgotten[PARKING].state, FORGOTTEN_BLANK);
    assert_null(line_find(takeoff, "forgotten/test"));
}

/* The price of the row is one line more, of its class, once. */
static void all_answered(void **state)
{
    struct house *house = forgetful_house(*state);
    struct buy *buy = arena_alloc(*state, sizeof *buy);
    *buy = (struct buy){.head = head_of("engineer"), .price = {325 * MONEY_DOLLAR, &house->written}};
    house->job.buys = buy;
    house->job.buy_count = 1;
    answer(house, &house->job.bid.forgotten_priced, "Test");
    answer(house, &house->job.bid.forgotten_priced, "engineer's visit by buy engineer");
    answer(house, &house->job.bid.forgotten_excluded, "parking: the street is full");
    const struct takeoff *takeoff = house_count(house);
    assert_null(message(house, DIAG_T008, 0));
    assert_null(message(house, DIAG_T009, 0));
    const struct takeoff_line *line = line_of(takeoff, "forgotten/test");
    assert_int_equal(line->price, 140 * MONEY_DOLLAR);
    assert_int_equal(line->class, CLASS_SUBS);
    assert_int_equal(line->is, LINE_BUY);
    assert_string_equal(takeoff->forgotten[ENGINEER].by, "buy/engineer");
    assert_int_equal(takeoff->forgotten[PARKING].state, FORGOTTEN_EXCLUDED);
    assert_string_equal(takeoff->forgotten[PARKING].why, "the street is full");
}

static void answers_that_do_not_fit(void **state)
{
    static const struct {
        const char *priced, *zero, *excluded, *says;
    } cases[] = {
        {"towing", NULL, NULL, "forgotten.csv has no line 'towing'"},
        {"test", "test: free", NULL, "'test' of forgotten.csv is answered twice"},
        {"parking", NULL, NULL, "'parking' is said to be priced, and nothing of the job prices it"},
        {"test by buy test", NULL, NULL, "'test' is said to be priced by 'buy test', and nothing"},
        {NULL, "hanging: for nothing", NULL, "'hanging' is said to cost nothing, and 'assembly/joists/hang joist'"},
        {NULL, NULL, "hanging", "'hanging' is said to be excluded, and 'assembly/joists/hang joist' prices it"},
    };
    for (size_t i = 0; i < COUNT_OF(cases); i++) {
        struct house *house = forgetful_house(*state);
        struct bid *bid = &house->job.bid;
        if (cases[i].priced)
            answer(house, &bid->forgotten_priced, cases[i].priced);
        if (cases[i].zero)
            answer(house, &bid->forgotten_zero, cases[i].zero);
        if (cases[i].excluded)
            answer(house, &bid->forgotten_excluded, cases[i].excluded);
        (void)house_count(house);
        assert_non_null(message(house, DIAG_T009, 0));
        assert_non_null(strstr(message(house, DIAG_T009, 0), cases[i].says));
        assert_null(message(house, DIAG_T009, 1));
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(one_message_lists_the_blank, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(all_answered, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(answers_that_do_not_fit, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
