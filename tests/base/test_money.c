/* Money, percentages and decimal counts.  The one rounding rule is ROUND(x,2) of spreadsheet programs (ISO/IEC 26300-4,
 * OpenFormula, ROUND: halves go away from zero). */
#include "every.h"

#include "sawbill/money.h"

enum { ROUNDS = 200000 };

struct reading {
    const char *text;
    int64_t value;
};

static const struct reading MONEY[] = {
    {"0", 0},
    {"1234.5", 12345000},
    {"1,234.50", 12345000},
    {"$1,234.50", 12345000},
    {"$ 1,234.50", 12345000},
    {" $1234.5000 ", 12345000},
    {"-12", -120000},
    {"-$12", -120000},
    {"$-12", -120000},
    {"0.0001", 1},
    {".5", 5000},
    {"1,234,567.89", 12345678900},
    {"007", 70000},
    {"100,000,000,000", MONEY_MOST},
    {"100000000000.0000", MONEY_MOST},
};

static void test_money_readings(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof MONEY / sizeof *MONEY; i++) {
        money_t value = -1;
        const char *why = NULL;
        if (!money_parse(MONEY[i].text, &value, &why))
            fail_msg("'%s' refused: %s", MONEY[i].text, why);
        if (value != MONEY[i].value)
            fail_msg("'%s': %lld", MONEY[i].text, (long long)value);
    }
}

static const char *const NOT_MONEY[] = {
    "",
    " ",
    "$",
    "-",
    "1.00001",
    "1,23.45",
    "12,34",
    "1234,567",
    "1,2345",
    ",123",
    "1,234,5",
    "1.234,5",
    "1,",
    "1.",
    "1.2.3",
    "12 USD",
    "1e3",
    "0x10",
    "nan",
    "inf",
    "--1",
    "$$1",
    "1 000",
    "=1+1",
    "12%",
    "1/2",
    "+1",
    "(12)",
    "\u20ac5",
    "1,23",
    "0,1234.5",
    "1,,234",
    "1'234.50",
    "1_000",
    "100000000000.0001",
    "999999999999999999999999",
};

static void test_money_refusals(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof NOT_MONEY / sizeof *NOT_MONEY; i++) {
        money_t value = 77;
        const char *why = NULL;
        if (money_parse(NOT_MONEY[i], &value, &why))
            fail_msg("'%s' read as %lld", NOT_MONEY[i], (long long)value);
        assert_int_equal(value, 77);
        assert_true(why && *why);
    }
}

static void test_percent_readings(void **state)
{
    (void)state;
    static const struct reading GOOD[] = {
        {"12 %", 120000},
        {"12%", 120000},
        {"8.25 percent", 82500},
        {"8.25 %", 82500},
        {"0", 0},
        {"0 %", 0},
        {"0.0001 %", 1},
        {"12 Percent", 120000},
        {" 33.3333 % ", 333333},
        {"-5 %", -50000},
        {"100 %", PERCENT_WHOLE},
        {"150%", 1500000},
    };
    static const char *const BAD[] = {"12", "0.12",  "12 pct",    "12 % x", "%",
                                      "",   "12 %%", "1.00001 %", "$12 %",  "12 percents"};
    for (size_t i = 0; i < sizeof GOOD / sizeof *GOOD; i++) {
        percent_t value = -1;
        const char *why = NULL;
        if (!percent_parse(GOOD[i].text, &value, &why))
            fail_msg("'%s' refused: %s", GOOD[i].text, why);
        assert_int_equal(value, GOOD[i].value);
    }
    for (size_t i = 0; i < sizeof BAD / sizeof *BAD; i++) {
        percent_t value = 77;
        const char *why = NULL;
        if (percent_parse(BAD[i], &value, &why))
            fail_msg("'%s' read as %lld", BAD[i], (long long)value);
        assert_int_equal(value, 77);
        assert_true(why && *why);
    }
    percent_t value = 0;
    const char *why = NULL;
    assert_false(percent_parse("12", &value, &why));
    assert_non_null(strstr(why, "12 or 0.12")); /* says what the two readings are */
}

static void test_decimal_readings(void **state)
{
    (void)state;
    static const struct reading GOOD[] = {
        {"12", 120000}, {"0.35", 3500}, {".5", 5000}, {"1,000", 10000000}, {"-2", -20000}};
    static const char *const BAD[] = {"", "12 h", "$12", "0.00001", "1/2", "abc"};
    for (size_t i = 0; i < sizeof GOOD / sizeof *GOOD; i++) {
        decimal_t value = -1;
        const char *why = NULL;
        assert_true(decimal_parse(GOOD[i].text, &value, &why));
        assert_int_equal(value, GOOD[i].value);
    }
    for (size_t i = 0; i < sizeof BAD / sizeof *BAD; i++) {
        decimal_t value = 77;
        const char *why = NULL;
        if (decimal_parse(BAD[i], &value, &why))
            fail_msg("'%s' read as %lld", BAD[i], (long long)value);
    }
}

static money_t read_money(const char *text)
{
    money_t value = 0;
    const char *why = NULL;
    if (!money_parse(text, &value, &why))
        fail_msg("'%s' refused: %s", text, why);
    return value;
}

/* Values where printf's "%.2f" of the nearest double and a spreadsheet program's ROUND part: the right column is what
 * ROUND gave in a spreadsheet program (LibreOffice 7.4), as recorded when the rounding rule was chosen. */
static void test_round_as_spreadsheets_do(void **state)
{
    (void)state;
    assert_int_equal(money_round(read_money("1.005")), read_money("1.01"));
    assert_int_equal(money_round(read_money("1.015")), read_money("1.02"));
    assert_int_equal(money_round(read_money("0.285")), read_money("0.29"));
    assert_int_equal(money_round(read_money("244.065")), read_money("244.07"));
    assert_int_equal(money_round(read_money("8.985")), read_money("8.99"));
    /* away from zero on both sides, and only from the half on (OpenFormula, ROUND) */
    assert_int_equal(money_round(read_money("-1.005")), read_money("-1.01"));
    assert_int_equal(money_round(read_money("1.0049")), read_money("1"));
    assert_int_equal(money_round(read_money("-1.0049")), read_money("-1"));
    assert_int_equal(money_round(read_money("0.005")), read_money("0.01"));
    assert_int_equal(money_round(0), 0);
}

/* The same by another way: the cent nearest to the value, found by trying both neighbours. */
static void test_round_is_nearest(void **state)
{
    (void)state;
    uint64_t random = 1005;
    for (int i = 0; i < ROUNDS; i++) {
        money_t value = random_up_to(&random, 2 * MONEY_MOST) - MONEY_MOST;
        money_t rounded = money_round(value);
        assert_int_equal(rounded % MONEY_CENT, 0);
        assert_true(llabs(rounded - value) <= 50);
        if (llabs(rounded - value) == 50)
            assert_true(llabs(rounded) > llabs(value));
        assert_int_equal(money_round(-value), -rounded);
        assert_int_equal(money_round(rounded), rounded);
    }
}

/* Products in whole numbers by long multiplication of the digits, so that nothing of the code under test is used. */
static void test_times_is_exact(void **state)
{
    (void)state;
    uint64_t random = 244065;
    for (int i = 0; i < ROUNDS; i++) {
        money_t each = random_up_to(&random, 99999999);   /* up to $9,999.9999 */
        decimal_t count = random_up_to(&random, 9999999); /* up to 999.9999 */
        int64_t product = each * count;                   /* below 10^15: exact in 64 bits, in 1/10^8 dollar */
        int64_t cents = product / 1000000, rest = product % 1000000;
        int64_t want = (cents + (rest >= 500000)) * MONEY_CENT;
        if (money_times(each, count) != want)
            fail_msg("%lld x %lld", (long long)each, (long long)count);
        assert_int_equal(money_times(-each, count), -want);
        assert_int_equal(money_times(count, each), want);
    }
    /* 128 bits: 12,345,678,901.23 x 8.0001 = 98,766,665,777.7301... worked by hand: 12,345,678,901.23 x 8 =
     * 98,765,431,209.84; x 0.0001 = 1,234,567.890123; sum 98,766,665,777.730123 */
    assert_int_equal(money_times(read_money("12345678901.23"), 80001), read_money("98766665777.73"));
}

static void test_too_large_is_seen(void **state)
{
    (void)state;
    assert_true(money_times(MONEY_MOST, MONEY_MOST) > MONEY_MOST);
    assert_true(money_times(-MONEY_MOST, MONEY_MOST) < -MONEY_MOST);
    assert_true(money_percent(MONEY_MOST, 2 * PERCENT_WHOLE) > MONEY_MOST);
    assert_true(decimal_times(MONEY_MOST, MONEY_MOST, 2) > MONEY_MOST);
    assert_true(money_over_rest(MONEY_MOST, PERCENT_WHOLE - 1) > MONEY_MOST);
    assert_int_equal(money_times(MONEY_MOST, DECIMAL_ONE), MONEY_MOST);
}

/* Markup on cost and margin on price are two things.  Where no source is named: P = C (1 + k), P = C / (1 - m). */
static void test_markup_and_margin(void **state)
{
    (void)state;
    /* cost 20,000, price 25,000: 25 % on top, 20 % of the price (azcentral, "Gross Margins in the Remodeling
     * Construction Industry") */
    assert_int_equal(money_percent(read_money("20000"), 250000), read_money("5000"));
    assert_int_equal(money_over_rest(read_money("20000"), 200000), read_money("25000"));
    /* cost 10,000 at a margin of 33 %: 14,925.37; the margin mistaken for a markup: 13,300 (the mistake: JLC,
     * "Strictly Business: Visualizing Gross Profit"; the figures by hand) */
    assert_int_equal(money_over_rest(read_money("10000"), 330000), read_money("14925.37"));
    assert_int_equal(read_money("10000") + money_percent(read_money("10000"), 330000), read_money("13300"));
    /* 600,000 of direct cost at 50 %: 900,000 (JLC, "Comparing contractor markups can be pointless and very risky") */
    assert_int_equal(read_money("600000") + money_percent(read_money("600000"), 500000), read_money("900000"));
    /* a $1,000 bill at a gross profit of 33 % (Remodeling, "Squeezed for Profits", rounds the factor to 1.49; exact
     * factor 1.492537) */
    assert_int_equal(money_over_rest(read_money("1000"), 330000), read_money("1492.54"));
    assert_int_equal(money_times(read_money("1000"), 14900), read_money("1490"));
    /* material 4,000, tax 7 % = 280; 50 % on top of both 6,420; tax outside the markup 6,280 (by hand) */
    money_t material = read_money("4000"), tax = money_percent(material, 70000);
    assert_int_equal(tax, read_money("280"));
    assert_int_equal(material + tax + money_percent(material + tax, 500000), read_money("6420"));
    assert_int_equal(material + money_percent(material, 500000) + tax, read_money("6280"));
}

/* Markup and margin undo each other: 1/(1-m) = 1 + m/(1-m). */
static void test_margin_property(void **state)
{
    (void)state;
    uint64_t random = 1492;
    for (int i = 0; i < ROUNDS; i++) {
        money_t cost = random_up_to(&random, 10000000) * MONEY_CENT;
        percent_t margin = random_up_to(&random, 900000);
        money_t price = money_over_rest(cost, margin);
        assert_true(price >= cost);
        /* the margin of the rounded price is off by the half cent of that price and the half cent of its own */
        assert_true(llabs(price - money_percent(price, margin) - cost) <= MONEY_CENT);
    }
}

static void test_nearest_step(void **state)
{
    (void)state;
    assert_int_equal(money_nearest(read_money("14925.37"), read_money("50")), read_money("14950"));
    assert_int_equal(money_nearest(read_money("14924.99"), read_money("50")), read_money("14900"));
    assert_int_equal(money_nearest(read_money("14925"), read_money("50")), read_money("14950"));
    assert_int_equal(money_nearest(read_money("-25"), read_money("50")), read_money("-50"));
    assert_int_equal(money_nearest(read_money("12.34"), read_money("0.05")), read_money("12.35"));
}

static void test_decimals(void **state)
{
    (void)state;
    assert_int_equal(decimal_times(15000, 15000, 2), 22500); /* 1.5 x 1.5 = 2.25 */
    assert_int_equal(decimal_times(15000, 15000, 1), 23000); /* 2.3 */
    assert_int_equal(decimal_times(-15000, 15000, 1), -23000);
    assert_int_equal(decimal_times(3333, 3333, 4), 1111); /* 0.11108889 */
    assert_int_equal(decimal_round(23500, 0), 20000);     /* 2.35 */
    assert_int_equal(decimal_round(25000, 0), 30000);
    assert_int_equal(decimal_round(-25000, 0), -30000);
    assert_int_equal(decimal_round(12345, 4), 12345);
    assert_int_equal(decimal_round(12345, 3), 12350);
}

static void test_doubles(void **state)
{
    (void)state;
    assert_near(money_dollars(12345000), 1234.5, 0);
    assert_near(decimal_value(3500), 0.35, 0);
    assert_near(percent_fraction(82500), 0.0825, 0);
}

static void test_texts(void **state)
{
    struct arena *arena = *state;
    assert_string_equal(money_text(arena, 12345000), "1234.50");
    assert_string_equal(money_text(arena, 0), "0.00");
    assert_string_equal(money_text(arena, -5000), "-0.50");
    assert_string_equal(money_text(arena, 12345), "1.2345");
    assert_string_equal(money_text(arena, 12340), "1.234");
    assert_string_equal(money_text(arena, 1), "0.0001");
    assert_string_equal(money_show(arena, 12345000), "$1,234.50");
    assert_string_equal(money_show(arena, 12345678900), "$1,234,567.89");
    assert_string_equal(money_show(arena, 9999900), "$999.99");
    assert_string_equal(money_show(arena, -12345000), "-$1,234.50");
    assert_string_equal(money_show(arena, 0), "$0.00");
    assert_string_equal(percent_text(arena, 82500), "8.25 %");
    assert_string_equal(percent_text(arena, PERCENT_WHOLE), "100 %");
    assert_string_equal(percent_text(arena, 0), "0 %");
    assert_string_equal(decimal_text(arena, 120000), "12");
    assert_string_equal(decimal_text(arena, 3500), "0.35");
    assert_string_equal(decimal_text(arena, -1), "-0.0001");
}

static void test_round_trip(void **state)
{
    uint64_t random = 4;
    for (int i = 0; i < ROUNDS; i++) {
        if (i % 1000 == 0) {
            arena_free(*state);
            assert_int_equal(support_setup(state), 0);
        }
        int64_t value = random_up_to(&random, i % 2 ? 2000000000 : 2 * MONEY_MOST) - (i % 2 ? 1000000000 : MONEY_MOST);
        int64_t back = 0;
        const char *why = NULL;
        assert_true(money_parse(money_text(*state, value), &back, &why));
        assert_int_equal(back, value);
        assert_true(money_parse(money_show(*state, value), &back, &why));
        assert_int_equal(back, value);
        assert_true(percent_parse(percent_text(*state, value), &back, &why));
        assert_int_equal(back, value);
        assert_true(decimal_parse(decimal_text(*state, value), &back, &why));
        assert_int_equal(back, value);
    }
}

int main(int argc, char **argv)
{
    int failed = set_locale_from(argc, argv);
    if (failed)
        return failed;
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_money_readings),
        cmocka_unit_test(test_money_refusals),
        cmocka_unit_test(test_percent_readings),
        cmocka_unit_test(test_decimal_readings),
        cmocka_unit_test(test_round_as_spreadsheets_do),
        cmocka_unit_test(test_round_is_nearest),
        cmocka_unit_test(test_times_is_exact),
        cmocka_unit_test(test_too_large_is_seen),
        cmocka_unit_test(test_markup_and_margin),
        cmocka_unit_test(test_margin_property),
        cmocka_unit_test(test_nearest_step),
        cmocka_unit_test(test_decimals),
        cmocka_unit_test(test_doubles),
        cmocka_unit_test_setup_teardown(test_texts, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_round_trip, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
