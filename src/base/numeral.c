#include "numeral.h"

#include <stddef.h>

#include "letters.h"
#include "sawbill/wide.h"

enum { DIGITS_MOST = 18 };

static const char WHY_NONE[] = "not a number";
static const char WHY_LONG[] = "a number with too many digits";
static const char WHY_POINT[] = "a decimal point without digits after it";
static const char WHY_COMMA[] = "a comma that does not part thousands: the decimal sign is a point";

int64_t power_of_ten(int exponent)
{
    int64_t power = 1;
    while (exponent-- > 0)
        power *= 10;
    return power;
}

/* Digits appended to *mantissa; returns how many stood there. */
static size_t read_digits(const char **at, int64_t *mantissa, size_t *digits)
{
    size_t count = 0;
    for (; is_digit(**at); (*at)++, count++) {
        if (*mantissa > 0 || **at != '0')
            ++*digits; /* leading zeros do not count */
        if (*digits <= DIGITS_MOST)
            *mantissa = *mantissa * 10 + (**at - '0');
    }
    return count;
}

/* Groups of three behind "1,": *at stands on the first comma. */
static const char *read_groups(const char **at, size_t first, int64_t *mantissa, size_t *digits)
{
    if (first < 1 || first > 3)
        return WHY_COMMA;
    while (**at == ',') {
        (*at)++;
        if (read_digits(at, mantissa, digits) != 3)
            return WHY_COMMA;
    }
    return NULL;
}

const char *numeral_read(const char **at, bool commas, struct numeral *out)
{
    int64_t mantissa = 0;
    size_t digits = 0;
    size_t whole = read_digits(at, &mantissa, &digits);
    size_t places = 0;
    if (commas && **at == ',') {
        const char *why = read_groups(at, whole, &mantissa, &digits);
        if (why)
            return why;
    }
    if (**at == '.') {
        (*at)++;
        places = read_digits(at, &mantissa, &digits);
        if (places == 0)
            return whole ? WHY_POINT : WHY_NONE;
    } else if (whole == 0) {
        return WHY_NONE;
    }
    if (digits > DIGITS_MOST || places > DIGITS_MOST)
        return WHY_LONG;
    *out = (struct numeral){.mantissa = mantissa, .places = (int)places};
    return NULL;
}

bool numeral_scale(struct numeral numeral, int steps, int64_t most, int64_t *out)
{
    if (numeral.places > steps)
        return false;
    wide_t value = (wide_t)numeral.mantissa * power_of_ten(steps - numeral.places);
    if (value > most)
        return false;
    *out = (int64_t)value;
    return true;
}

wide_t divide_round(wide_t value, wide_t divisor)
{
    wide_t quotient = value / divisor, rest = value % divisor;
    if (rest < 0)
        rest = -rest;
    if (rest >= divisor - rest)
        quotient += value < 0 ? -1 : 1;
    return quotient;
}

char *fixed_text(struct arena *arena, int64_t value, int steps, int least, bool commas)
{
    enum { SIZE = 48 }; /* 19 digits, 6 commas, sign, point, leading zeros, NUL */
    char text[SIZE];
    size_t at = SIZE - 1;
    uint64_t rest = value < 0 ? 0 - (uint64_t)value : (uint64_t)value;
    text[at] = '\0';
    while (steps > least && rest % 10 == 0) {
        rest /= 10;
        steps--;
    }
    for (int i = 0; i < steps; i++, rest /= 10)
        text[--at] = (char)('0' + rest % 10);
    if (steps > 0)
        text[--at] = '.';
    int digits = 0;
    do {
        if (commas && digits && digits % 3 == 0)
            text[--at] = ',';
        text[--at] = (char)('0' + rest % 10);
        rest /= 10;
        digits++;
    } while (rest);
    if (value < 0)
        text[--at] = '-';
    return arena_strndup(arena, text + at, SIZE - 1 - at);
}
