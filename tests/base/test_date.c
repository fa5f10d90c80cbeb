/* Dates: ISO 8601 calendar dates of the Gregorian calendar (a leap year every 4th, not the 100th, but the 400th). */
#include "every.h"

#include "sawbill/date.h"

static bool reads(const char *text, struct date *date)
{
    const char *why = NULL;
    bool good = date_parse(text, date, &why);
    assert_int_equal(good, why == NULL);
    return good;
}

static void test_good_dates(void **state)
{
    (void)state;
    static const struct {
        const char *text;
        struct date date;
    } GOOD[] = {
        {"2025-03-09", {2025, 3, 9}},  {"1900-01-01", {1900, 1, 1}},  {"2200-12-31", {2200, 12, 31}},
        {"2024-02-29", {2024, 2, 29}}, {"2000-02-29", {2000, 2, 29}}, {" 2025-12-31 ", {2025, 12, 31}},
    };
    for (size_t i = 0; i < sizeof GOOD / sizeof *GOOD; i++) {
        struct date date = {0};
        if (!reads(GOOD[i].text, &date))
            fail_msg("'%s' refused", GOOD[i].text);
        assert_int_equal(date.year, GOOD[i].date.year);
        assert_int_equal(date.month, GOOD[i].date.month);
        assert_int_equal(date.day, GOOD[i].date.day);
    }
}

static void test_bad_dates(void **state)
{
    (void)state;
    static const char *const BAD[] = {
        "",           "2025",         "2025-3-9",   "25-03-09",         "2025/03/09",
        "03/09/2025", "9 March 2025", "2025-00-10", "2025-13-01",       "2025-01-00",
        "2025-01-32", "2025-04-31",   "2025-02-29", "1900-02-29",       "2100-02-29",
        "2200-02-29", "1899-12-31",   "2201-01-01", "2025-03-09T00:00", "2025-03-099",
        "2025-03-0x", "-2025-03-09",  "20250309",   "2025-W10-7",
    };
    for (size_t i = 0; i < sizeof BAD / sizeof *BAD; i++) {
        struct date date = {1, 2, 3};
        if (reads(BAD[i], &date))
            fail_msg("'%s' read", BAD[i]);
        assert_int_equal(date.year, 1);
    }
}

/* Days since 1970-01-01 of well-known instants of POSIX time: 951,868,800 s is 2000-03-01, the 32-bit counter ends on
 * 2038-01-19 (2^31 s / 86,400 = 24,855.1); the spreadsheet serial of 1970-01-01 is 25,569 from 1899-12-30. */
static void test_day_numbers(void **state)
{
    (void)state;
    assert_int_equal(date_days((struct date){1970, 1, 1}), 0);
    assert_int_equal(date_days((struct date){2000, 3, 1}), 11017);
    assert_int_equal(date_days((struct date){2038, 1, 19}), 24855);
    assert_int_equal(date_days((struct date){1899, 12, 30}) + 25569, 0);
}

/* A calendar walked day by day with month lengths written out, against the closed form. */
static void test_every_day(void **state)
{
    static const int MONTHS[2][12] = {{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31},
                                      {31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31}};
    long days = date_days((struct date){1900, 1, 1});
    const struct date first = {1900, 1, 1};
    long walked = 0;
    for (int year = 1900; year <= 2200; year++) {
        bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
        for (int month = 1; month <= 12; month++) {
            for (int day = 1; day <= MONTHS[leap][month - 1]; day++, walked++) {
                struct date plus = date_plus(first, walked);
                if (date_days((struct date){year, month, day}) != days + walked || plus.year != year ||
                    plus.month != month || plus.day != day)
                    fail_msg("%d-%d-%d", year, month, day);
            }
        }
    }
    assert_int_equal(walked, 301 * 365 + 73); /* 1904 to 2196 without 2100; 2200 is none: 74 multiples of 4 less 1 */
    assert_string_equal(date_text(*state, date_plus((struct date){2025, 12, 18}, 14)), "2026-01-01");
    assert_string_equal(date_text(*state, date_plus((struct date){2024, 2, 28}, 1)), "2024-02-29");
    assert_string_equal(date_text(*state, date_plus((struct date){2025, 2, 28}, 1)), "2025-03-01");
    assert_string_equal(date_text(*state, date_plus((struct date){2025, 3, 1}, -1)), "2025-02-28");
    assert_string_equal(date_text(*state, (struct date){1900, 1, 2}), "1900-01-02");
}

int main(int argc, char **argv)
{
    int failed = set_locale_from(argc, argv);
    if (failed)
        return failed;
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_good_dates),
        cmocka_unit_test(test_bad_dates),
        cmocka_unit_test(test_day_numbers),
        cmocka_unit_test_setup_teardown(test_every_day, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
