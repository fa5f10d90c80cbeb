#include "every.h"

#include "sawbill/text.h"

enum { ROUNDS = 100000 };

struct utf8_case {
    const char *bytes;
    size_t length, good; /* good: offset of the first bad byte */
};

/* Ill-formed sequences: The Unicode Standard 15.0, section 3.9, tables 3-8 to 3-11; RFC 3629, sections 3 and 10. */
static const struct utf8_case UTF8[] = {
    {"", 0, 0},
    {"plain", 5, 5},
    {"\x00", 1, 1},
    {"\x7f", 1, 1},
    {"\xc2\x80", 2, 2},
    {"\xdf\xbf", 2, 2},
    {"\xe0\xa0\x80", 3, 3},
    {"\xed\x9f\xbf", 3, 3},
    {"\xee\x80\x80", 3, 3},
    {"\xef\xbf\xbf", 3, 3},
    {"\xf0\x90\x80\x80", 4, 4},
    {"\xf4\x8f\xbf\xbf", 4, 4},
    {"\xc0\xaf\xe0\x80\xbf\xf0\x81\x82\x41", 9, 0}, /* table 3-8: not the shortest form */
    {"\xed\xa0\x80\xed\xbf\xbf\xed\xaf\x41", 9, 0}, /* table 3-9: surrogates */
    {"\xf4\x91\x92\x93\xff\x41\x80\xbf\x42", 9, 0}, /* table 3-10: beyond U+10FFFF and bytes that start nothing */
    {"\xe1\x80\xe2\xf0\x91\x92\xf1\xbf\x41", 9, 0}, /* table 3-11: truncated */
    {"\xc1\xbf", 2, 0},
    {"\xe0\x9f\xbf", 3, 0},
    {"\xf0\x8f\xbf\xbf", 4, 0},
    {"\xf5\x80\x80\x80", 4, 0},
    {"ab\x80", 3, 2},
    {"ab\xc3", 3, 2},
    {"ab\xe2\x80", 4, 2},
    {"ab\xf0\x9f\x98", 5, 2},
    {"ab\xe2\x28\xa1", 5, 2},
    {"14\xe2\x80\xb2 6\xc2\xbd", 9, 9},
    {"14\x92 6", 5, 2}, /* a curly quote of Windows-1252 */
};

static void test_utf8_check(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof UTF8 / sizeof *UTF8; i++) {
        /* in a block of just that size, so that reading past its end is seen */
        char *bytes = malloc(UTF8[i].length ? UTF8[i].length : 1);
        assert_non_null(bytes);
        memcpy(bytes, UTF8[i].bytes, UTF8[i].length);
        size_t good = utf8_check(bytes, UTF8[i].length);
        free(bytes);
        if (good != UTF8[i].good)
            fail_msg("row %zu: bad from %zu", i, good);
    }
}

/* Every code point encoded by the definition of RFC 3629, section 3, is accepted, but for the surrogates. */
static void test_every_code_point(void **state)
{
    (void)state;
    for (unsigned long c = 0; c <= 0x10ffff; c++) {
        char bytes[4];
        size_t size = c < 0x80 ? 1 : c < 0x800 ? 2 : c < 0x10000 ? 3 : 4;
        static const unsigned char LEAD[5] = {0, 0, 0xc0, 0xe0, 0xf0};
        for (size_t i = size - 1, rest = c; i > 0; i--, rest >>= 6)
            bytes[i] = (char)(0x80 | (rest & 0x3f));
        bytes[0] = (char)(LEAD[size] | (unsigned char)(c >> (6 * (size - 1))));
        bool surrogate = c >= 0xd800 && c <= 0xdfff;
        if (utf8_check(bytes, size) != (surrogate ? 0 : size))
            fail_msg("U+%04lX", c);
    }
}

static void test_utf8_count(void **state)
{
    (void)state;
    assert_int_equal(utf8_count("", 0), 0);
    assert_int_equal(utf8_count("14\u2032 6\u00bd", 9), 6);
    assert_int_equal(utf8_count("\U0001f600x", 5), 2);
    assert_int_equal(utf8_count("abc", 2), 2);
}

static void test_names_fold(void **state)
{
    assert_string_equal(name_fold(*state, "Clear_Span"), "clear span");
    assert_string_equal(name_fold(*state, "  clear--SPAN _ "), "clear span");
    assert_string_equal(name_fold(*state, "CLEAR \t SPAN"), "clear span");
    assert_string_equal(name_fold(*state, ""), "");
    assert_string_equal(name_fold(*state, " -_- "), "");
    assert_string_equal(name_fold(*state, "\u00c9tage"), "\u00c9tage"); /* only ASCII case is one */
    assert_true(name_same("Clear_Span", "clear span"));
    assert_true(name_same("-a-", "A"));
    assert_true(name_same("", " "));
    assert_false(name_same("clearspan", "clear span"));
    assert_false(name_same("clear", "clear span"));
}

/* Names are the same when they fold alike. */
static void test_same_as_folded(void **state)
{
    static const char ALPHABET[] = "aB_- b";
    uint64_t random = 3;
    for (int i = 0; i < ROUNDS; i++) {
        char words[2][6] = {{0}};
        for (size_t w = 0; w < 2; w++)
            for (size_t k = 0; k < 5; k++)
                words[w][k] = ALPHABET[random_up_to(&random, 6)];
        if (i % 1000 == 0) {
            arena_free(*state);
            assert_int_equal(support_setup(state), 0);
        }
        bool same = strcmp(name_fold(*state, words[0]), name_fold(*state, words[1])) == 0;
        assert_int_equal(name_same(words[0], words[1]), same);
    }
}

static void test_did_you_mean(void **state)
{
    static const char *const NAMES[] = {"spacing", "clear span", "depth", "run", "from", "to", "first joist", "Grade"};
    enum { COUNT = sizeof NAMES / sizeof *NAMES };
    static const struct {
        const char *word, *want;
    } CASES[] = {
        {"spacng", "spacing"},
        {"spcaing", "spacing"},
        {"SPACING", "spacing"},
        {"clear_sapn", "clear span"},
        {"clearspan", "clear span"},
        {"dpeth", "depth"},
        {"rnu", "run"},
        {"form", "from"},
        {"fist joits", "first joist"},
        {"grad", "Grade"},
        {"xxxxx", NULL},
        {"width", NULL},
        {"x", NULL},
        {"", NULL},
        {"runabout", NULL},
        {"rxy", NULL},
    };
    for (size_t i = 0; i < sizeof CASES / sizeof *CASES; i++) {
        const char *got = did_you_mean(*state, CASES[i].word, NAMES, COUNT);
        if ((got == NULL) != (CASES[i].want == NULL) || (got && strcmp(got, CASES[i].want) != 0))
            fail_msg("'%s': %s", CASES[i].word, got ? got : "nothing");
    }
    assert_null(did_you_mean(*state, "spacing", NULL, 0));
    char huge[5000];
    memset(huge, 's', sizeof huge - 1);
    huge[sizeof huge - 1] = '\0';
    assert_null(did_you_mean(*state, huge, NAMES, COUNT));
    const char *const huge_names[] = {huge, "spacing"};
    assert_string_equal(did_you_mean(*state, "spacng", huge_names, 2), "spacing");
}

/* The limits stated in the header: 1 change up to 4 letters, 2 up to 8, 3 above; and a swap is one change. */
static void test_did_you_mean_limits(void **state)
{
    const char *const four[] = {"abcd"}, *const eight[] = {"abcdefgh"}, *const nine[] = {"abcdefghi"};
    assert_non_null(did_you_mean(*state, "abxd", four, 1));
    assert_null(did_you_mean(*state, "axxd", four, 1));
    assert_non_null(did_you_mean(*state, "badcefghj", nine, 1)); /* two swaps and one change */
    assert_non_null(did_you_mean(*state, "axxdefgh", eight, 1));
    assert_null(did_you_mean(*state, "axxxefgh", eight, 1));
    assert_non_null(did_you_mean(*state, "badcefgh", eight, 1)); /* two swaps */
    assert_non_null(did_you_mean(*state, "axxxefghi", nine, 1));
    assert_null(did_you_mean(*state, "axxxxfghi", nine, 1));
    /* the closest wins, the first of equals */
    const char *const names[] = {"beam 1", "beam 2", "beam 12"};
    assert_string_equal(did_you_mean(*state, "beam 3", names, 3), "beam 1");
    assert_string_equal(did_you_mean(*state, "beam 12", names, 3), "beam 12");
}

static void test_trim_and_split(void **state)
{
    assert_string_equal(text_trim(*state, " \t a b \r\n"), "a b");
    assert_string_equal(text_trim(*state, ""), "");
    assert_string_equal(text_trim(*state, "   "), "");
    char **parts = NULL;
    assert_int_equal(text_split(*state, " 14' , 3 ft,, x ", &parts), 4);
    assert_string_equal(parts[0], "14'");
    assert_string_equal(parts[1], "3 ft");
    assert_string_equal(parts[2], "");
    assert_string_equal(parts[3], "x");
    assert_int_equal(text_split(*state, "", &parts), 1);
    assert_string_equal(parts[0], "");
    assert_int_equal(text_split(*state, "a,", &parts), 2);
    char many[2001];
    memset(many, ',', sizeof many - 1);
    many[sizeof many - 1] = '\0';
    assert_int_equal(text_split(*state, many, &parts), 2001);
}

static void test_number_parse(void **state)
{
    (void)state;
    static const struct {
        const char *text;
        double want; /* the compiler's own reading of the decimal */
    } GOOD[] = {
        {"0", 0},
        {"12", 12},
        {"0.35", 0.35},
        {".5", 0.5},
        {" 1.15 ", 1.15},
        {"0.1", 0.1},
        {"1600000", 1600000},
        {"123.456", 123.456},
        {"0.0001", 0.0001},
        {"00012.50", 12.5},
        {"999999999999999", 999999999999999},
        {"0.000000000000001", 1e-15},
    };
    static const char *const BAD[] = {"",     " ", ".",   "-1",  "+1",   "1,5", "1,000", "1e3",
                                      "1.5x", "x", "nan", "inf", "0x10", "1.",  "1 2",   "9999999999999999999"};
    for (size_t i = 0; i < sizeof GOOD / sizeof *GOOD; i++) {
        double value = -1;
        if (!number_parse(GOOD[i].text, &value))
            fail_msg("'%s' refused", GOOD[i].text);
        assert_near(value, GOOD[i].want, 0);
    }
    for (size_t i = 0; i < sizeof BAD / sizeof *BAD; i++) {
        double value = -1;
        if (number_parse(BAD[i], &value))
            fail_msg("'%s' read as %g", BAD[i], value);
    }
}

/* By hand, from the decimals as written. */
static void test_number_text(void **state)
{
    static const struct {
        double value;
        int decimals;
        const char *want;
    } CASES[] = {
        {0, 2, "0"},
        {-0.0, 2, "0"},
        {1, 0, "1"},
        {1.5, 0, "2"},
        {-1.5, 0, "-2"},
        {0.5, 0, "1"},
        {0.4, 0, "0"},
        {-0.4, 0, "0"},
        {1.005, 2, "1.01"},
        {1.015, 2, "1.02"},
        {0.285, 2, "0.29"},
        {244.065, 2, "244.07"},
        {0.125, 2, "0.13"},
        {2.5, 3, "2.5"},
        {100, 2, "100"},
        {-0.001, 2, "0"},
        {-0.001, 3, "-0.001"},
        {9.995, 2, "10"},
        {99.95, 1, "100"},
        {0.0096, 2, "0.01"},
        {0.004, 2, "0"},
        {1234567.891, 2, "1234567.89"},
        {1e15, 0, "1000000000000000"},
        {123e18, 1, "123000000000000000000"},
        {0.1 + 0.2, 6, "0.3"},
        {8.0 / 3.0, 4, "2.6667"},
        {1e-9, 6, "0"},
        {1e-300, 6, "0"},
        {0.000001, 6, "0.000001"},
        {999999.9999999, 6, "1000000"},
        {0.95, 0, "1"},
        {0.05, 0, "0"},
        {0.05, 1, "0.1"},
    };
    for (size_t i = 0; i < sizeof CASES / sizeof *CASES; i++) {
        const char *text = number_text(*state, CASES[i].value, CASES[i].decimals);
        if (strcmp(text, CASES[i].want) != 0)
            fail_msg("%.17g to %d places: %s", CASES[i].value, CASES[i].decimals, text);
    }
    assert_string_equal(number_text(*state, (double)NAN, 2), "nan");
    assert_string_equal(number_text(*state, (double)INFINITY, 2), "inf");
    assert_string_equal(number_text(*state, -(double)INFINITY, 2), "-inf");
    assert_int_equal(strlen(number_text(*state, 1e308, 2)), 309);
}

/* What is printed reads back to within half of the last place, and prints the same again. */
static void test_number_round_trip(void **state)
{
    uint64_t random = 15;
    for (int i = 0; i < ROUNDS; i++) {
        if (i % 1000 == 0) {
            arena_free(*state);
            assert_int_equal(support_setup(state), 0);
        }
        int decimals = (int)random_up_to(&random, 6);
        double value =
            (double)random_up_to(&random, INT64_C(1000000000000)) / pow(10, (double)random_up_to(&random, 12));
        const char *text = number_text(*state, value, decimals);
        double back = -1;
        if (!number_parse(text, &back))
            fail_msg("%.17g to %d places: %s", value, decimals, text);
        assert_near(back, value, 0.5 * pow(10, -decimals) + 1e-14 * value);
        assert_string_equal(number_text(*state, back, decimals), text);
    }
}

int main(int argc, char **argv)
{
    int failed = set_locale_from(argc, argv);
    if (failed)
        return failed;
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_utf8_check),
        cmocka_unit_test(test_every_code_point),
        cmocka_unit_test(test_utf8_count),
        cmocka_unit_test_setup_teardown(test_names_fold, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_same_as_folded, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_did_you_mean, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_did_you_mean_limits, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_trim_and_split, support_setup, support_teardown),
        cmocka_unit_test(test_number_parse),
        cmocka_unit_test_setup_teardown(test_number_text, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_number_round_trip, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
