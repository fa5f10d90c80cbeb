/* Calendar dates, ISO 8601 (YYYY-MM-DD), proleptic Gregorian; no clock is ever read. */
#ifndef SAWBILL_DATE_H
#define SAWBILL_DATE_H

#include <stdbool.h>

#include "sawbill/arena.h"

struct date {
    int year, month, day;
};

bool date_parse(const char *text, struct date *out, const char **why); /* years 1900 to 2200 */
char *date_text(struct arena *arena, struct date date);
long date_days(struct date date); /* days since 1970-01-01 */
struct date date_plus(struct date date, long days);

#endif
