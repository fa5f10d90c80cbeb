#include "sawbill/money.h"

#include <assert.h>

#include "letters.h"
#include "numeral.h"
#include "sawbill/wide.h"

enum { PLACES = 4 };

static const char WHY_EMPTY[] = "nothing is written";
static const char WHY_FINE[] = "more than 4 decimals";
static const char WHY_LARGE[] = "too large";
static const char WHY_AFTER[] = "something follows the number";
static const char WHY_PERCENT[] = "a percentage needs its sign, as 12 %: a bare number could mean 12 or 0.12";

/* [-]number at *at, in 1/10,000; `dollar` allows "$" before or behind the minus. */
static const char *read_fixed(const char **at, bool dollar, int64_t *out)
{
    *at = skip_blanks(*at);
    if (**at == '\0')
        return WHY_EMPTY;
    bool minus = false, sign = false;
    while ((**at == '-' && !minus) || (dollar && **at == '$' && !sign)) {
        if (**at == '-')
            minus = true;
        else
            sign = true;
        *at = skip_blanks(*at + 1);
    }
    struct numeral numeral;
    const char *why = numeral_read(at, true, &numeral);
    if (why)
        return why;
    if (numeral.places > PLACES)
        return WHY_FINE;
    if (!numeral_scale(numeral, PLACES, MONEY_MOST, out))
        return WHY_LARGE;
    if (minus)
        *out = -*out;
    return NULL;
}

static bool parse_whole(const char *text, bool dollar, int64_t *out, const char **why)
{
    int64_t value = 0;
    *why = read_fixed(&text, dollar, &value);
    if (!*why && *skip_blanks(text) != '\0')
        *why = WHY_AFTER;
    if (*why)
        return false;
    *out = value;
    return true;
}

bool money_parse(const char *text, money_t *out, const char **why)
{
    return parse_whole(text, true, out, why);
}

bool decimal_parse(const char *text, decimal_t *out, const char **why)
{
    return parse_whole(text, false, out, why);
}

/* The rest of the text is "%" or "percent". */
static bool is_percent_sign(const char *at)
{
    static const char WORD[] = "percent";
    if (*at == '%')
        return *skip_blanks(at + 1) == '\0';
    for (size_t i = 0; i < sizeof WORD - 1; i++, at++)
        if (lower(*at) != WORD[i])
            return false;
    return *skip_blanks(at) == '\0';
}

bool percent_parse(const char *text, percent_t *out, const char **why)
{
    int64_t value = 0;
    *why = read_fixed(&text, false, &value);
    if (*why)
        return false;
    text = skip_blanks(text);
    bool bare = *text == '\0';
    if (bare && value != 0)
        *why = WHY_PERCENT;
    else if (!bare && !is_percent_sign(text))
        *why = WHY_AFTER;
    if (*why)
        return false;
    *out = value;
    return true;
}

/* No result leaves the range in which sums stay exact: beyond it stands the first value past MONEY_MOST, so that the
 * caller's check against MONEY_MOST sees it. */
static int64_t within(wide_t value)
{
    if (value > MONEY_MOST)
        return MONEY_MOST + MONEY_DOLLAR;
    if (value < -MONEY_MOST)
        return -MONEY_MOST - MONEY_DOLLAR;
    return (int64_t)value;
}

money_t money_round(money_t value)
{
    return within(divide_round(value, MONEY_CENT) * MONEY_CENT);
}

money_t money_times(money_t each, decimal_t count)
{
    wide_t product = (wide_t)each * count;
    return within(divide_round(product, (wide_t)DECIMAL_ONE * MONEY_CENT) * MONEY_CENT);
}

money_t money_percent(money_t value, percent_t percent)
{
    wide_t product = (wide_t)value * percent;
    return within(divide_round(product, (wide_t)PERCENT_WHOLE * MONEY_CENT) * MONEY_CENT);
}

money_t money_over_rest(money_t value, percent_t percent)
{
    assert(percent < PERCENT_WHOLE);
    wide_t rest = PERCENT_WHOLE - percent;
    return within(divide_round((wide_t)value * PERCENT_WHOLE, rest * MONEY_CENT) * MONEY_CENT);
}

money_t money_nearest(money_t value, money_t step)
{
    assert(step > 0);
    return within(divide_round(value, step) * step);
}

decimal_t decimal_times(decimal_t a, decimal_t b, int places)
{
    assert(places >= 0 && places <= PLACES);
    int64_t step = power_of_ten(PLACES - places);
    return within(divide_round((wide_t)a * b, (wide_t)DECIMAL_ONE * step) * step);
}

decimal_t decimal_round(decimal_t value, int places)
{
    assert(places >= 0 && places <= PLACES);
    int64_t step = power_of_ten(PLACES - places);
    return within(divide_round(value, step) * step);
}

double money_dollars(money_t value)
{
    return (double)value / (double)MONEY_DOLLAR;
}

double decimal_value(decimal_t value)
{
    return (double)value / (double)DECIMAL_ONE;
}

double percent_fraction(percent_t value)
{
    return (double)value / (double)PERCENT_WHOLE;
}

char *money_text(struct arena *arena, money_t value)
{
    return fixed_text(arena, value, PLACES, 2, false);
}

char *money_show(struct arena *arena, money_t value)
{
    char *text = fixed_text(arena, value, PLACES, 2, true);
    bool minus = *text == '-';
    return arena_printf(arena, "%s$%s", minus ? "-" : "", text + minus);
}

char *percent_text(struct arena *arena, percent_t value)
{
    return arena_printf(arena, "%s %%", fixed_text(arena, value, PLACES, 0, false));
}

char *decimal_text(struct arena *arena, decimal_t value)
{
    return fixed_text(arena, value, PLACES, 0, false);
}
