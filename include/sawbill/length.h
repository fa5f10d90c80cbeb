/* Exact lengths: signed 64-bit integers of 1/1,016,000 inch.
 *
 * The unit holds 1/64 in (15,875), 0.001 in (1,016), 0.01 ft (121,920) and 0.001 mm (40) exactly:
 * 1 in = 25.4 mm by definition (international yard and pound agreement, 1959). */
#ifndef SAWBILL_LENGTH_H
#define SAWBILL_LENGTH_H

#include <stdbool.h>
#include <stdint.h>

#include "sawbill/arena.h"

typedef int64_t length_t;

#define LENGTH_INCH ((length_t)1016000)
#define LENGTH_FOOT (12 * LENGTH_INCH)
/* Longest length accepted: 1,000,000 ft, far beyond the trade and far from overflow. */
#define LENGTH_MOST (1000000 * LENGTH_FOOT)

/* Reads 14' 6-1/2", 14'-6 1/2", 14'-6-1/2", 14 ft 6.5 in, 14 feet 6 inches, 174.5in, 14.54 ft, 4.43 m, 443 cm,
 * 4430 mm; primes and curly quotes (′ ″ ’ ”), '' for inches, ½ ¼ ¾ ⅛ ⅜ ⅝ ⅞ ⅓ ⅔ and their kin, U+2044;
 * "0" alone is zero; an optional leading minus.  Refused, with *why (static text) set: a bare number without a
 * unit, "12-6", inches of 12 or more after feet, a fraction of zero, anything finer than the unit (1/3 in, 1/128 in),
 * anything beyond LENGTH_MOST, trailing text. */
bool length_parse(const char *text, length_t *out, const char **why);

/* A tape reading to the nearest 1/16 in, half away from zero, with carry: 14' 6-1/2", 9-1/4", 0".
 * Never 0' 12". */
char *length_tape(struct arena *arena, length_t value);
/* The exact value in a form that length_parse() reads back to the same units. */
char *length_exact(struct arena *arena, length_t value);

double length_inches(length_t value);
double length_feet(length_t value);
/* Nearest unit. */
length_t length_from_inches(double inches);

#endif
