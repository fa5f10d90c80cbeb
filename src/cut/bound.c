/* Lower bounds of a plan's cost, in integers.
 *
 * All have one form: each item i is given a value y(i) such that what any one stick holds is never worth more than the
 * stick costs; then every plan costs at least the sum of all y (weak duality).  Where the values ignore stock of
 * limited supply, a stick of that stock may hold more than it costs: supply x that surplus is taken off.  Values are in
 * 1/65,536 of the money unit, rounded down. */
#include "cut_internal.h"
#include "sawbill/wide.h"

#define SCALE ((wide_t)65536)

struct values {
    const struct prepared *prepared;
    bool endless_only; /* only stock with endless supply sets the values */
    length_t least;    /* 0: value by length; else: by how many items of at least this size a stick holds */
};

static wide_t value_in(const struct values *values, const struct choice *choice, length_t size)
{
    wide_t cost = choice->stock->cost * SCALE;
    if (values->least == 0)
        return cost * size / choice->room;
    return cost / (choice->room / values->least);
}

/* The least over the stocks that hold the item; 0 when none does. */
static wide_t value_of(const struct values *values, length_t size)
{
    const struct prepared *prepared = values->prepared;
    wide_t least = -1;
    if (size < values->least)
        return 0;
    for (size_t i = 0; i < prepared->choice_count; i++) {
        const struct choice *choice = &prepared->choice[i];
        if (choice->room < size || (values->endless_only && choice->supply > 0))
            continue;
        wide_t value = value_in(values, choice, size);
        if (least < 0 || value < least)
            least = value;
    }
    return least < 0 ? 0 : least;
}

/* No filling of the stock is worth more than this. */
static wide_t most_held(const struct values *values, const struct choice *choice)
{
    const struct prepared *prepared = values->prepared;
    wide_t most = 0;
    for (size_t i = 0; i < prepared->item_count; i++) {
        length_t size = prepared->item[i].size;
        if (size > choice->room || size < values->least || (i > 0 && prepared->item[i - 1].size == size))
            continue;
        wide_t value = value_of(values, size);
        wide_t held =
            values->least == 0 ? (value * choice->room + size - 1) / size : value * (choice->room / values->least);
        if (held > most)
            most = held;
    }
    return most;
}

static money_t bound_of(const struct values *values)
{
    const struct prepared *prepared = values->prepared;
    wide_t sum = 0, value = 0;
    for (size_t i = 0; i < prepared->item_count; i++) {
        if (i == 0 || prepared->item[i].size != prepared->item[i - 1].size)
            value = value_of(values, prepared->item[i].size);
        sum += value;
    }
    for (size_t i = 0; values->endless_only && i < prepared->choice_count; i++) {
        const struct choice *choice = &prepared->choice[i];
        wide_t surplus = choice->supply > 0 ? most_held(values, choice) - choice->stock->cost * SCALE : 0;
        sum -= surplus > 0 ? surplus * choice->supply : 0;
    }
    return sum > 0 ? (money_t)((sum + SCALE - 1) / SCALE) : 0;
}

static money_t common_divisor(const struct prepared *prepared)
{
    money_t divisor = 0;
    for (size_t i = 0; i < prepared->choice_count; i++) {
        money_t a = prepared->choice[i].stock->cost, b = divisor;
        while (b != 0) {
            money_t rest = a % b;
            a = b;
            b = rest;
        }
        divisor = a;
    }
    return divisor;
}

money_t bound_cost(const struct prepared *prepared)
{
    money_t best = 0;
    for (size_t i = 0; i <= prepared->item_count; i++) {
        if (i > 0 && i < prepared->item_count && prepared->item[i].size == prepared->item[i - 1].size)
            continue;
        for (int endless = 0; endless < 2; endless++) {
            struct values values = {prepared, endless != 0, i < prepared->item_count ? prepared->item[i].size : 0};
            money_t bound = bound_of(&values);
            best = bound > best ? bound : best;
        }
    }
    /* Every plan's cost is a multiple of what all prices are multiples of. */
    money_t divisor = common_divisor(prepared);
    return divisor > 0 ? (best + divisor - 1) / divisor * divisor : best;
}
