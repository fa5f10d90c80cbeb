/* Money in 1/10,000 of a dollar, percentages in 1/10,000 of a percent, decimal counts in 1/10,000:
 * integers, so that no cent depends on a binary fraction.  One rounding rule: to the cent, half away
 * from zero, as ROUND(x,2) of a spreadsheet does. */
#ifndef SAWBILL_MONEY_H
#define SAWBILL_MONEY_H

#include <stdbool.h>
#include <stdint.h>

#include "sawbill/arena.h"

typedef int64_t money_t;   /* 1/10,000 dollar */
typedef int64_t percent_t; /* 1/10,000 percent: 8.25 % = 82,500; 100 % = PERCENT_WHOLE */
typedef int64_t decimal_t; /* 1/10,000 of a count, an hour, a square foot */

#define MONEY_DOLLAR  ((money_t)10000)
#define MONEY_CENT    ((money_t)100)
#define PERCENT_WHOLE ((percent_t)1000000)
#define DECIMAL_ONE   ((decimal_t)10000)
/* Beyond this (100 billion dollars) parsing refuses; sums of a job stay far from overflow. */
#define MONEY_MOST ((money_t)1000000000000000)

/* "1234.5", "1,234.50", "$1,234.50", "-12"; at most 4 decimals; thousands commas only where they
 * belong.  false with *why (static text) otherwise. */
bool money_parse(const char *text, money_t *out, const char **why);
/* "12 %", "12%", "8.25 percent"; a bare number is refused (12 or 0.12?), but "0" is zero. At most 4 decimals. */
bool percent_parse(const char *text, percent_t *out, const char **why);
/* A plain decimal, at most 4 places: "12", "0.35". */
bool decimal_parse(const char *text, decimal_t *out, const char **why);

/* No result of the functions below leaves the range of MONEY_MOST by more than a dollar: what is larger comes back as
 * MONEY_MOST + MONEY_DOLLAR (or its negative), so that a check against MONEY_MOST sees it.
 *
 * Half away from zero, to the cent. */
money_t money_round(money_t value);
/* count x each, rounded to the cent; the product is exact (128 bits) before it is rounded. */
money_t money_times(money_t each, decimal_t count);
/* value x percent, rounded to the cent. */
money_t money_percent(money_t value, percent_t percent);
/* value / (100 % - percent), rounded to the cent; percent below 100 %. */
money_t money_over_rest(money_t value, percent_t percent);
/* Rounded to the nearest multiple of step (> 0), half away from zero. */
money_t money_nearest(money_t value, money_t step);
/* count x each to a decimal of `places` (0 to 4), half away from zero: hours, square feet. */
decimal_t decimal_times(decimal_t a, decimal_t b, int places);
decimal_t decimal_round(decimal_t value, int places);

double money_dollars(money_t value);
double decimal_value(decimal_t value);
double percent_fraction(percent_t value); /* 8.25 % -> 0.0825 */

char *money_text(struct arena *arena, money_t value); /* "1234.50": always two places, more only if not whole cents */
char *money_show(struct arena *arena, money_t value); /* "$1,234.50" */
char *percent_text(struct arena *arena, percent_t value); /* "8.25 %" */
char *decimal_text(struct arena *arena, decimal_t value); /* "12", "0.35" */

#endif
