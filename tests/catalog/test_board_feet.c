/* Board feet and prices by the thousand of them. */
#include "support.h"

#include "sawbill/catalog.h"

/* 12 ft of 4x8, 3x10 and 2x12 at $175, $175 and $150 a thousand: 32, 30, 24 board feet; $5.60, $5.25, $3.60.  A
 * question in print of an engineering economy text on which joist is the cheapest; its title is not known to us.  The
 * measure is that of NIST SP 811 and of the American Softwood Lumber Standard PS 20: nominal inches x nominal inches x
 * feet / 12. */
static void test_three_joists(void **state)
{
    (void)state;
    static const struct {
        const char *size;
        int thousand, feet;
        money_t price;
    } JOISTS[] = {{"4x8", 175, 32, 56000}, {"3x10", 175, 30, 52500}, {"2x12", 150, 24, 36000}};
    for (size_t i = 0; i < sizeof JOISTS / sizeof *JOISTS; i++) {
        const length_t length = 12 * LENGTH_FOOT;
        assert_int_equal(board_feet_of_size(JOISTS[i].size, length), JOISTS[i].feet * DECIMAL_ONE);
        assert_int_equal(board_feet_price(JOISTS[i].size, length, JOISTS[i].thousand * MONEY_DOLLAR), JOISTS[i].price);
    }
}

/* A bill of 78 board feet for two layers of inch boards, 46 in x 8 ft: 1 x 46 x 8 / 12 = 30.6667, twice 61.3333,
 * so 16.6667 too many are billed.  Own arithmetic. */
static void test_billed(void **state)
{
    const length_t length = 8 * LENGTH_FOOT;
    assert_int_equal(board_feet_of_size("1x46", length), 306667);
    assert_int_equal(board_feet_of_size("1x46", 2 * length), 613333);
    assert_int_equal(78 * DECIMAL_ONE - board_feet_of_size("1x46", 2 * length), 166667);
    assert_string_equal(board_feet_text(*state, board_feet_of_size("1x46", length)), "30.67 board feet");
    assert_string_equal(board_feet_text(*state, board_feet_of_size("1x46", 2 * length)), "61.33 board feet");
}

/* Thinner than an inch counts as an inch (from memory of the standard); 5/4 is its fraction. */
static void test_sizes(void **state)
{
    (void)state;
    const length_t foot = LENGTH_FOOT;
    assert_int_equal(board_feet_of_size("5/4x6", foot), 6250);
    assert_int_equal(board_feet_of_size("5/4 X 6", foot), 6250);
    assert_int_equal(board_feet_of_size("3/4x12", foot), DECIMAL_ONE);
    static const char *const NOT_NOMINAL[] = {"",         "1-3/4 x 9-1/4", "3-1/2 x 9", "2x",      "x10",
                                              "2x10 S4S", "0x10",          "2/0x10",    "2000x10", "2x99999999999"};
    for (size_t i = 0; i < sizeof NOT_NOMINAL / sizeof *NOT_NOMINAL; i++)
        assert_int_equal(board_feet_of_size(NOT_NOMINAL[i], foot), 0);
    const struct member sawn = {.wood = WOOD_SAWN, .size = "2x10"}, glulam = {.wood = WOOD_GLULAM, .size = "4x10"};
    assert_int_equal(board_feet(&sawn, 8 * foot), 133333);
    assert_int_equal(board_feet(&glulam, 8 * foot), 0);
    assert_int_equal(board_feet(NULL, foot), 0);
}

#define TEST(name) cmocka_unit_test_setup_teardown(name, support_setup, support_teardown)

int main(void)
{
    const struct CMUnitTest tests[] = {TEST(test_three_joists), TEST(test_billed), TEST(test_sizes)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
