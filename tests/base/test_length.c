/* Lengths.  The unit rests on 1 in = 25.4 mm exactly, 12 in = 1 ft (international yard and pound agreement, 1959;
 * NIST SP 811, 2008, appendix B.8).  Expected values are in sixty-fourths of an inch or in micrometers, worked out
 * by hand; the spellings are those of drawings, tapes, mails and word processors (common practice, no source). */
#include "every.h"

#include "sawbill/length.h"

enum { ROUNDS = 200000 };
static const length_t PER_64TH = 15875, PER_MICROMETER = 40;

static void test_unit_is_exact(void **state)
{
    (void)state;
    assert_int_equal(LENGTH_INCH, 25400 * PER_MICROMETER); /* 1 in = 25.4 mm */
    assert_int_equal(LENGTH_INCH, 64 * PER_64TH);
    assert_int_equal(LENGTH_FOOT, 304800 * PER_MICROMETER); /* 1 ft = 0.3048 m */
    assert_int_equal(LENGTH_INCH % 1000, 0);                /* 0.001 in */
    assert_int_equal(LENGTH_FOOT % 100, 0);                 /* 0.01 ft */
}

struct spelling {
    const char *text;
    long sixty_fourths;
};

static const struct spelling IMPERIAL[] = {
    /* 14 ft 6-1/2 in = 174.5 in = 11168/64 in */
    {"14' 6-1/2\"", 11168},
    {"14'-6 1/2\"", 11168},
    {"14'-6-1/2\"", 11168},
    {"14' - 6 1/2\"", 11168},
    {"14'6-1/2\"", 11168},
    {"14'6 1/2\"", 11168},
    {"14' 6.5\"", 11168},
    {"14 ft 6.5 in", 11168},
    {"14 ft 6 1/2 in", 11168},
    {"14 ft. 6-1/2 in.", 11168},
    {"14ft6.5in", 11168},
    {"14 FT 6.5 IN", 11168},
    {"14 Feet 6 1/2 Inches", 11168},
    {"14 feet, 6.5 inches", 11168},
    {"14 feet and 6.5 inches", 11168},
    {"174.5in", 11168},
    {"174.5 in", 11168},
    {"174.5\"", 11168},
    {"174-1/2\"", 11168},
    {"174 1/2 inches", 11168},
    {"  14'  6-1/2\"  ", 11168},
    {"\t14'\t6-1/2\"\r", 11168},
    /* primes, curly quotes, two apostrophes, one-character fractions, fraction slash */
    {"14\u2032 6-1/2\u2033", 11168},
    {"14\u2019 6-1/2\u201d", 11168},
    {"14\u2018 6-1/2\u201c", 11168},
    {"14' 6-1/2''", 11168},
    {"14\u2019 6-1/2\u2019\u2019", 11168},
    {"14\u2032 6-1/2\u2032\u2032", 11168},
    {"14' 6\u00bd\"", 11168},
    {"14' 6 \u00bd\"", 11168},
    {"14'-6-\u00bd\"", 11168},
    {"14\u2032\u20136\u00bd\u2033", 11168},
    {"14' 6 1\u20442\"", 11168},
    {"14'\u00a06\u00a01/2\"", 11168},
    /* 12 ft 6-1/2 in = 150.5 in = 9632/64 */
    {"12' 6 1/2\"", 9632},
    {"12'-6-1/2\"", 9632},
    /* inches alone, feet alone */
    {"78 1/2\"", 5024},
    {"78 1/2 in", 5024},
    {"9-1/4\"", 592},
    {"9.25 in", 592},
    {"1/2\"", 32},
    {"\u00bd\"", 32},
    {".5 in", 32},
    {"0.5 in", 32},
    {"3/64 in", 3},
    {"5/4 in", 80},
    {"14'", 10752},
    {"14 ft", 10752},
    {"1 foot", 768},
    {"1 inch", 64},
    {"14' 0\"", 10752},
    {"14' 0-1/2\"", 10784},
    {"14' 1/2\"", 10784},
    {"14' \u00bd\"", 10784},
    {"0' 6\"", 384},
    {"14' 11-63/64\"", 11519},
    /* every 1/8, 1/4 and 1/64 in one character or two */
    {"\u215b\"", 8},
    {"\u00bc\"", 16},
    {"\u215c\"", 24},
    {"\u215d\"", 40},
    {"\u00be\"", 48},
    {"\u215e\"", 56},
    {"2\u215e\"", 184},
    {"6 13/16\"", 436},
    /* thirds, fifths, sixths of a foot are whole in this unit: 4 in, 8 in; 2.4 in stands in the metric table */
    {"\u2153 ft", 256},
    {"5\u2154 ft", 4352},
    {"5 2/3'", 4352},
    {"\u2159 ft", 128},
    {"14 1/2 ft", 11136},
    {"14.5'", 11136},
    /* zero and minus */
    {"0", 0},
    {"0.0", 0},
    {"0\"", 0},
    {"0 ft", 0},
    {"-0", 0},
    {"-3 1/2\"", -224},
    {"- 3 1/2\"", -224},
    {"\u22123 1/2\"", -224},
    {"-14' 6-1/2\"", -11168},
};

static void test_imperial_spellings(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof IMPERIAL / sizeof *IMPERIAL; i++) {
        length_t value = -1;
        const char *why = NULL;
        if (!length_parse(IMPERIAL[i].text, &value, &why))
            fail_msg("'%s' refused: %s", IMPERIAL[i].text, why);
        if (value != IMPERIAL[i].sixty_fourths * PER_64TH)
            fail_msg("'%s': %lld units", IMPERIAL[i].text, (long long)value);
        assert_null(why);
    }
}

struct micrometers {
    const char *text;
    long long micrometers;
};

static const struct micrometers METRIC[] = {
    {"4430 mm", 4430000},
    {"443 cm", 4430000},
    {"4.43 m", 4430000},
    {"4.43m", 4430000},
    {"4430mm", 4430000},
    {"4 meters", 4000000},
    {"4430 millimeters", 4430000},
    {"443 centimeters", 4430000},
    {"0.001 mm", 1},
    {"38 mm", 38000},
    {"2.5 cm", 25000},
    {"14.54 ft", 4431792}, /* 14.54 x 304.8 mm */
    {"0.01 ft", 3048},
    {"0.1\"", 2540},
    {"\u2155 ft", 60960}, /* 2.4 in = 60.96 mm */
    {"1000000 ft", 304800000000},
    {"304800 m", 304800000000},
};

static void test_metric_and_decimal_feet(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof METRIC / sizeof *METRIC; i++) {
        length_t value = -1;
        const char *why = NULL;
        if (!length_parse(METRIC[i].text, &value, &why))
            fail_msg("'%s' refused: %s", METRIC[i].text, why);
        if (value != METRIC[i].micrometers * PER_MICROMETER)
            fail_msg("'%s': %lld units", METRIC[i].text, (long long)value);
    }
}

struct refusal {
    const char *text, *says;
};

static const struct refusal REFUSALS[] = {
    /* bare numbers: feet or inches?  The message shows how to write it */
    {"14", "no unit"},
    {"14.5", "no unit"},
    {"78 1/2", "78 1/2 in"},
    {"78-1/2", "no unit"},
    {"78\u00bd", "no unit"},
    {"1/2", "no unit"},
    {"-14", "no unit"},
    /* ambiguous digits */
    {"12-6", "run together"},
    {"12-6\"", "run together"},
    {"12 6", "run together"},
    {"12-6-1/2", "run together"},
    {"12-6 1/2\"", "run together"},
    {"12 6 in", "run together"},
    {"14' 6", "mark"},
    {"14'6", "mark"},
    {"14' 6-1/2", "mark"},
    {"14' 12\"", "12 inches or more"},
    {"14' 12-1/2\"", "12 inches or more"},
    {"14' 174\"", "12 inches or more"},
    {"14.5' 6\"", "fraction"},
    {"14 1/2' 6\"", "fraction"},
    {"14' 6'", "inches"},
    {"14' 6 mm", "inches"},
    {"14\" 6'", "follows"},
    {"14\" 6\"", "follows"},
    {"6\" x 2", "follows"},
    {"4 m 30 cm", "follows"},
    {"14' -", "follows"},
    {"14' 6\" 1/2", "follows"},
    {"14' and", "follows"},
    /* fractions */
    {"1/0 in", "zero"},
    {"6 1/0\"", "zero"},
    {"0/0 in", "zero"},
    {"6-9/8\"", "one or more"},
    {"6-8/8\"", "one or more"},
    {"6 1/2/4\"", NULL},
    {"1/\u00bd\"", NULL},
    {"\u00bd4\"", NULL},
    {"6.5 1/2\"", NULL},
    {"6.5/2 in", "decimals"},
    {"1/2.5 in", "decimals"},
    {"2 1/2 m", "metric"},
    /* finer than the unit */
    {"1/3 in", "finer"},
    {"6\u2153\"", "finer"},
    {"1/128 in", "finer"},
    {"0.0001 in", "finer"},
    {"0.001 ft 1", NULL},
    {"0.00001 mm", "finer"},
    {"1/7 ft", "finer"},
    /* too far, too long */
    {"1000000.01 ft", "longer"},
    {"1000000' 1\"", "longer"},
    {"304801 m", "longer"},
    {"999999999999999999 ft", "longer"},
    {"999999999999999999 999999999999999998/999999999999999999 m", NULL},
    {"9999999999999999999 in", "digits"},
    {"99999999999999999999999999999999999999999999 in", "digits"},
    /* other words, signs and decimal commas */
    {"4,43 m", "comma"},
    {"1,250 mm", "comma"},
    {"14 yd", "unit"},
    {"14 lb", "unit"},
    {"14 inchs", "unit"},
    {"in", NULL},
    {"'", NULL},
    {"\"", NULL},
    {"-", NULL},
    {"--14'", NULL},
    {"+14'", NULL},
    {".", NULL},
    {".'", NULL},
    {"14.'", "point"},
    {"14..5'", NULL},
    {"1e3 mm", NULL},
    {"0x10 in", NULL},
    {"nan in", NULL},
    {"14\u00b0", "character"},
    {"14\xff", "character"},
    {"", "nothing"},
    {"   ", "nothing"},
};

static void test_refusals_say_why(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof REFUSALS / sizeof *REFUSALS; i++) {
        length_t value = 77;
        const char *why = NULL;
        if (length_parse(REFUSALS[i].text, &value, &why))
            fail_msg("'%s' read as %lld units", REFUSALS[i].text, (long long)value);
        assert_int_equal(value, 77); /* a refused text changes nothing */
        assert_non_null(why);
        if (REFUSALS[i].says && !strstr(why, REFUSALS[i].says))
            fail_msg("'%s' refused with '%s'", REFUSALS[i].text, why);
    }
}

static void test_overlong_text(void **state)
{
    (void)state;
    char text[4096];
    memset(text, ' ', sizeof text);
    memcpy(text + sizeof text - 4, "1'", 3);
    length_t value = 0;
    const char *why = NULL;
    assert_false(length_parse(text, &value, &why));
    assert_non_null(strstr(why, "too long"));
    memset(text, '0', sizeof text); /* leading zeros are no digits that count, but the text is too long all the same */
    memcpy(text + sizeof text - 2, "'", 2);
    assert_false(length_parse(text, &value, &why));
}

struct tape {
    long sixty_fourths;
    const char *text;
};

/* Nearest 1/16, halves away from zero: 1/32 goes up, 1/64 down. */
static const struct tape TAPES[] = {
    {0, "0\""},           {1, "0\""},
    {2, "1/16\""},        {-1, "0\""},
    {-2, "-1/16\""},      {8, "1/8\""},
    {48, "3/4\""},        {592, "9-1/4\""},
    {704, "11\""},        {766, "1' 0\""}, /* 11-31/32 in carries into the foot */
    {765, "11-15/16\""},  {768, "1' 0\""},
    {772, "1' 0-1/16\""}, {11168, "14' 6-1/2\""},
    {10752, "14' 0\""},   {10784, "14' 0-1/2\""},
    {11518, "15' 0\""},   {-11518, "-15' 0\""},
    {11519, "15' 0\""},   {11517, "14' 11-15/16\""},
};

static void test_tape_rounds_and_carries(void **state)
{
    for (size_t i = 0; i < sizeof TAPES / sizeof *TAPES; i++)
        assert_string_equal(length_tape(*state, TAPES[i].sixty_fourths * PER_64TH), TAPES[i].text);
    /* one unit below and at the half between two sixteenths */
    assert_string_equal(length_tape(*state, 2 * PER_64TH - 1), "0\"");
    assert_string_equal(length_tape(*state, -(2 * PER_64TH - 1)), "0\"");
    assert_string_equal(length_tape(*state, LENGTH_FOOT - 2 * PER_64TH), "1' 0\"");
    assert_string_equal(length_tape(*state, LENGTH_FOOT - 2 * PER_64TH - 1), "11-15/16\"");
    assert_string_equal(length_tape(*state, LENGTH_MOST), "1000000' 0\"");
}

static void test_exact_forms(void **state)
{
    assert_string_equal(length_exact(*state, 0), "0\"");
    assert_string_equal(length_exact(*state, PER_64TH), "1/64\"");
    assert_string_equal(length_exact(*state, 11168 * PER_64TH), "14' 6-1/2\"");
    assert_string_equal(length_exact(*state, 17448 * (LENGTH_INCH / 100)), "174.48\""); /* 14.54 ft */
    assert_string_equal(length_exact(*state, 4430000 * PER_MICROMETER), "4430 mm");     /* 4.43 m */
    assert_string_equal(length_exact(*state, -4430001 * PER_MICROMETER), "-4430.001 mm");
    assert_string_equal(length_exact(*state, 1), "0.000025 mm"); /* 25.4 mm / 1,016,000 */
}

static void check_round_trip(struct arena *arena, length_t value)
{
    const char *why = NULL;
    length_t back = 0;
    const char *exact = length_exact(arena, value);
    if (!length_parse(exact, &back, &why) || back != value)
        fail_msg("%lld units printed as %s: %s, read as %lld", (long long)value, exact, why ? why : "",
                 (long long)back);
    const char *tape = length_tape(arena, value);
    if (!length_parse(tape, &back, &why))
        fail_msg("%lld units on the tape as %s: %s", (long long)value, tape, why);
    /* never farther than half a sixteenth, always a whole number of sixteenths, never 12 inches */
    assert_true(llabs(back - value) <= 2 * PER_64TH);
    assert_int_equal(back % (4 * PER_64TH), 0);
    assert_null(strstr(tape, " 12"));
    assert_null(strchr(exact, ','));
    assert_string_equal(length_tape(arena, back), tape);
}

static void test_round_trip(void **state)
{
    uint64_t random = 20250309;
    (void)state;
    for (int i = 0; i < ROUNDS; i++) {
        if (i % 1000 == 0) {
            arena_free(*state);
            assert_int_equal(support_setup(state), 0);
        }
        length_t value = random_up_to(&random, i % 4 == 0 ? LENGTH_MOST : 60 * LENGTH_FOOT);
        if (i % 3 == 0)
            value -= value % PER_64TH;
        else if (i % 3 == 1)
            value -= value % (LENGTH_INCH / 1000);
        check_round_trip(*state, i % 7 == 0 ? -value : value);
    }
}

/* What a person writes from feet, inches and a fraction means just that, however it is spelled. */
static void test_random_spellings(void **state)
{
    static const char *const FORMS[] = {
        "%d' %d-%d/64\"",         "%d'-%d %d/64\"",          "%d'-%d-%d/64\"",
        "%d ft %d %d/64 in",      "%d feet %d-%d/64 inches", "%d\u2032 %d %d\u204464\u2033",
        "%d\u2019%d-%d/64\u201d", "%dft%d %d/64in",          "%d' %d %d/64''",
    };
    uint64_t random = 1959;
    (void)state;
    for (int i = 0; i < ROUNDS; i++) {
        int feet = (int)random_up_to(&random, 999999), inches = (int)random_up_to(&random, 11);
        int parts = (int)random_up_to(&random, 63);
        char text[80];
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wformat-nonliteral" /* the forms are the table above */
        (void)snprintf(text, sizeof text, FORMS[i % (int)(sizeof FORMS / sizeof *FORMS)], feet, inches, parts);
#pragma GCC diagnostic pop
        length_t value = 0;
        const char *why = NULL;
        if (!length_parse(text, &value, &why))
            fail_msg("'%s' refused: %s", text, why);
        assert_int_equal(value, ((length_t)feet * 768 + (length_t)inches * 64 + parts) * PER_64TH);
    }
}

static void test_doubles(void **state)
{
    (void)state;
    assert_near(length_inches(11168 * PER_64TH), 174.5, 0);
    assert_near(length_feet(11136 * PER_64TH), 14.5, 0);
    assert_int_equal(length_from_inches(174.5), 11168 * PER_64TH);
    assert_int_equal(length_from_inches(-0.001), -1016);
    assert_int_equal(length_from_inches(1e300), LENGTH_MOST);
    assert_int_equal(length_from_inches(-1e300), -LENGTH_MOST);
    assert_int_equal(length_from_inches((double)NAN), 0);
    uint64_t random = 254;
    for (int i = 0; i < ROUNDS; i++) {
        length_t value = random_up_to(&random, 1000 * LENGTH_FOOT);
        assert_int_equal(length_from_inches(length_inches(value)), value);
    }
}

int main(int argc, char **argv)
{
    int failed = set_locale_from(argc, argv);
    if (failed)
        return failed;
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_unit_is_exact),
        cmocka_unit_test(test_imperial_spellings),
        cmocka_unit_test(test_metric_and_decimal_feet),
        cmocka_unit_test(test_refusals_say_why),
        cmocka_unit_test(test_overlong_text),
        cmocka_unit_test_setup_teardown(test_tape_rounds_and_carries, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_exact_forms, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_round_trip, support_setup, support_teardown),
        cmocka_unit_test(test_random_spellings),
        cmocka_unit_test(test_doubles),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
