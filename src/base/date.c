#include "sawbill/date.h"

#include <stddef.h>

#include "letters.h"

enum { YEAR_LEAST = 1900, YEAR_MOST = 2200, DAYS_OF_400_YEARS = 146097, DAYS_TO_1970 = 719468 };

static const char WHY_FORM[] = "not a date: write year-month-day, as 2025-03-09";
static const char WHY_YEAR[] = "a year outside 1900 to 2200";
static const char WHY_MONTH[] = "no such month";
static const char WHY_DAY[] = "no such day in that month";

static int days_in_month(int year, int month)
{
    static const int DAYS[12] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    bool leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
    return DAYS[month - 1] + (month == 2 && leap);
}

/* Exactly `count` digits; -1 otherwise. */
static int read_field(const char **at, int count)
{
    int value = 0;
    for (int i = 0; i < count; i++, (*at)++) {
        if (!is_digit(**at))
            return -1;
        value = value * 10 + (**at - '0');
    }
    return value;
}

static bool read_fields(const char *at, struct date *date)
{
    at = skip_blanks(at);
    date->year = read_field(&at, 4);
    if (date->year < 0 || *at++ != '-')
        return false;
    date->month = read_field(&at, 2);
    if (date->month < 0 || *at++ != '-')
        return false;
    date->day = read_field(&at, 2);
    return date->day >= 0 && *skip_blanks(at) == '\0';
}

bool date_parse(const char *text, struct date *out, const char **why)
{
    struct date date = {0};
    *why = NULL;
    if (!read_fields(text, &date))
        *why = WHY_FORM;
    else if (date.year < YEAR_LEAST || date.year > YEAR_MOST)
        *why = WHY_YEAR;
    else if (date.month < 1 || date.month > 12)
        *why = WHY_MONTH;
    else if (date.day < 1 || date.day > days_in_month(date.year, date.month))
        *why = WHY_DAY;
    if (*why)
        return false;
    *out = date;
    return true;
}

char *date_text(struct arena *arena, struct date date)
{
    return arena_printf(arena, "%04d-%02d-%02d", date.year, date.month, date.day);
}

static long floor_divide(long a, long b)
{
    return a / b - (a % b < 0);
}

/* Years are counted from 1 March, so that the leap day is the last of its year; 400 years repeat exactly. */
long date_days(struct date date)
{
    long year = date.year - (date.month <= 2);
    long era = floor_divide(year, 400);
    long year_of_era = year - era * 400;
    long month = (date.month + 9) % 12; /* March = 0 */
    long day_of_year = (153 * month + 2) / 5 + date.day - 1;
    long day_of_era = year_of_era * 365 + year_of_era / 4 - year_of_era / 100 + day_of_year;
    return era * DAYS_OF_400_YEARS + day_of_era - DAYS_TO_1970;
}

struct date date_plus(struct date date, long days)
{
    long count = date_days(date) + days + DAYS_TO_1970;
    long era = floor_divide(count, DAYS_OF_400_YEARS);
    long day_of_era = count - era * DAYS_OF_400_YEARS;
    long year_of_era = (day_of_era - day_of_era / 1460 + day_of_era / 36524 - day_of_era / 146096) / 365;
    long day_of_year = day_of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
    long month = (5 * day_of_year + 2) / 153; /* March = 0 */
    int calendar_month = (int)(month < 10 ? month + 3 : month - 9);
    return (struct date){
        .year = (int)(year_of_era + era * 400 + (calendar_month <= 2)),
        .month = calendar_month,
        .day = (int)(day_of_year - (153 * month + 2) / 5 + 1),
    };
}
