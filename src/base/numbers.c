#include "sawbill/text.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "letters.h"
#include "numeral.h"

bool number_parse(const char *text, double *out)
{
    const char *at = skip_blanks(text);
    struct numeral numeral;
    if (numeral_read(&at, false, &numeral) || *skip_blanks(at) != '\0')
        return false;
    /* Both operands are exact for up to 15 digits, so the one division gives the nearest double. */
    *out = (double)((long double)numeral.mantissa / (long double)power_of_ten(numeral.places));
    return true;
}

enum { SIGNIFICANT = 15 };

/* The 15 significant digits of a positive number, as a spreadsheet program keeps them, and the power of ten of the
 * first.  snprintf rounds to them exactly; whatever the locale puts for the point is skipped. */
static int significant_digits(double value, char digits[SIGNIFICANT + 1])
{
    char text[64];
    (void)snprintf(text, sizeof text, "%.*e", SIGNIFICANT - 1, value); /* at most 15 + point + exponent: fits */
    size_t count = 0;
    const char *at = text;
    for (; *at != 'e' && *at != '\0'; at++)
        if (is_digit(*at) && count < SIGNIFICANT)
            digits[count++] = *at;
    digits[count] = '\0';
    return *at == 'e' ? (int)strtol(at + 1, NULL, 10) : 0;
}

/* Rounds the digits behind the first `keep` half away from zero; returns true when a carry made one more digit. */
static bool round_digits(char *digits, int keep)
{
    bool up = keep < SIGNIFICANT && digits[keep] >= '5';
    memset(digits + keep, '0', (size_t)(SIGNIFICANT - keep));
    if (!up)
        return false;
    for (int i = keep - 1; i >= 0; i--) {
        if (digits[i] != '9') {
            digits[i]++;
            return false;
        }
        digits[i] = '0';
    }
    memmove(digits + 1, digits, SIGNIFICANT - 1);
    digits[0] = '1';
    return true;
}

static char digit_at(const char *digits, int index)
{
    if (index < 0 || index >= SIGNIFICANT)
        return '0';
    return digits[index];
}

char *number_text(struct arena *arena, double value, int decimals)
{
    if (!isfinite(value))
        return arena_strdup(arena, isnan(value) ? "nan" : value > 0 ? "inf" : "-inf");
    char digits[SIGNIFICANT + 1] = "000000000000000";
    int power = value == 0 ? 0 : significant_digits(fabs(value), digits);
    int keep = power + 1 + decimals;
    if (keep < 0)
        memset(digits, '0', SIGNIFICANT);
    else if (keep < SIGNIFICANT && round_digits(digits, keep))
        power++;
    if (strspn(digits, "0") == SIGNIFICANT)
        return arena_strdup(arena, "0");
    int places = decimals;
    while (places > 0 && digit_at(digits, power + places) == '0')
        places--;
    struct buffer text = {.arena = arena};
    if (value < 0)
        buffer_add(&text, "-");
    for (int p = power > 0 ? power : 0; p >= -places; p--) {
        char digit = digit_at(digits, power - p);
        if (p == -1)
            buffer_add(&text, ".");
        buffer_add_n(&text, &digit, 1);
    }
    return text.text;
}
