/* Decimals as written, read and printed digit by digit, so that the locale has no say. */
#ifndef SAWBILL_BASE_NUMERAL_H
#define SAWBILL_BASE_NUMERAL_H

#include <stdbool.h>
#include <stdint.h>

#include "sawbill/arena.h"

/* An unsigned decimal: mantissa / 10^places, at most 18 digits. */
struct numeral {
    int64_t mantissa;
    int places;
};

int64_t power_of_ten(int exponent); /* 0 to 18 */

/* Reads "12", "0.35", ".5" and, with `commas`, "1,234.50" at *at, which moves behind it.  Returns NULL, or (static
 * text) why not. */
const char *numeral_read(const char **at, bool commas, struct numeral *out);
/* mantissa / 10^places in units of 1/10^steps; false when it does not fit in `steps` places or is beyond `most`. */
bool numeral_scale(struct numeral numeral, int steps, int64_t most, int64_t *out);

/* value / 10^steps with at least `least` places, further ones only as far as they are not zero; with `commas`,
 * thousands are set apart. */
char *fixed_text(struct arena *arena, int64_t value, int steps, int least, bool commas);

#endif
