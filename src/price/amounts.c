/* Amounts that stay within MONEY_MOST: one that does not fit is held there, and price_job() stops on it. */
#include "price_internal.h"
#include "sawbill/wide.h"

enum { SHEET_PLACES = 100000000 }; /* the 8 decimals of ROUND(..., 8) */

static money_t held(wide_t amount)
{
    if (amount > MONEY_MOST)
        return MONEY_MOST;
    return amount < -MONEY_MOST ? -MONEY_MOST : (money_t)amount;
}

money_t price_sum(money_t a, money_t b)
{
    return held((wide_t)a + b);
}

percent_t price_share(money_t part, money_t whole)
{
    if (whole == 0)
        return 0;
    wide_t top = (wide_t)part * PERCENT_WHOLE;
    return (percent_t)held(whole < 0 ? divide_round(-top, -(wide_t)whole) : divide_round(top, whole));
}

decimal_t packs_for(decimal_t net, percent_t loss, decimal_t pack)
{
    if (net <= 0 || pack <= 0)
        return 0;
    wide_t packs = divide_round((wide_t)net * (PERCENT_WHOLE + loss) * SHEET_PLACES, (wide_t)pack * PERCENT_WHOLE);
    wide_t whole = (packs + SHEET_PLACES - 1) / SHEET_PLACES;
    const wide_t most = INT64_MAX / DECIMAL_ONE;
    return (decimal_t)(whole > most ? most : whole) * DECIMAL_ONE;
}

percent_t class_rate(const struct percent_value *general, const struct percent_value on[CLASS_COUNT],
                     enum cost_class class)
{
    return on[class].at ? on[class].percent : general->percent;
}

enum cost_class class_or(enum cost_class class, enum cost_class fallback)
{
    return class == CLASS_UNANSWERED ? fallback : class;
}

decimal_t price_scale_up(decimal_t a, decimal_t b, decimal_t c)
{
    return (decimal_t)held(((wide_t)a * b + c - 1) / c);
}
