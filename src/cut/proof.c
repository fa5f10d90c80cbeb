/* The solver's certificate as the plan's proof: values by length, and the bound that follows from them. */
#include "cut_internal.h"
#include "sawbill/wide.h"

/* The verifier's work is types x units of the longest stick: some seconds at this limit. */
static const int64_t MOST_CHECKED = 2000000000;

static bool is_past_checking(const struct reduced *reduced)
{
    int64_t longest = 1;
    for (size_t i = 0; i < reduced->stock_count; i++)
        longest = reduced->stock[i].length > longest ? reduced->stock[i].length : longest;
    return (int64_t)reduced->type_count > MOST_CHECKED / longest;
}

static bool is_endless(const struct form_stock *stock, int64_t pieces)
{
    return stock->supply == FORM_ENDLESS || stock->supply >= pieces;
}

/* It holds a piece, and no endless stock is as long for as little.  Of twins the first is needed. */
static bool is_needed(const struct reduced *reduced, size_t at, int64_t pieces)
{
    const struct form_stock *a = &reduced->stock[at];
    if (a->length < reduced->type[reduced->type_count - 1].length)
        return false;
    for (size_t i = 0; i < reduced->stock_count; i++) {
        const struct form_stock *b = &reduced->stock[i];
        if (i == at || !is_endless(b, pieces) || b->length < a->length || b->cost > a->cost)
            continue;
        bool twins = b->length == a->length && b->cost == a->cost && is_endless(a, pieces);
        if (!twins || i < at)
            return false;
    }
    return true;
}

static money_t bound_of(const struct reduced *reduced, const struct form_certificate *certificate)
{
    wide_t sum = 0;
    int64_t step = 0, pieces = 0;
    for (size_t i = 0; i < reduced->type_count; i++) {
        sum += (wide_t)reduced->type[i].demand * certificate->value[i];
        pieces += reduced->type[i].demand;
    }
    for (size_t i = 0; i < reduced->stock_count; i++) {
        if (!is_needed(reduced, i, pieces))
            continue;
        if (!is_endless(&reduced->stock[i], pieces))
            sum -= (wide_t)certificate->extra[i] * reduced->stock[i].supply;
        step = common_divisor(reduced->stock[i].cost, step);
    }
    step = step > 0 ? step : 1;
    wide_t whole = (wide_t)certificate->scale * step;
    return sum > 0 ? (money_t)((sum + whole - 1) / whole) * step : 0;
}

void keep_proof(struct arena *arena, const struct reduced *reduced, const struct form_certificate *certificate,
                struct cut_proof *proof)
{
    *proof = (struct cut_proof){.scale = 0};
    proof->extra = arena_array(arena, reduced->problem->stock_count, sizeof *proof->extra);
    if (certificate->scale == 0 || !certificate->value || is_past_checking(reduced))
        return;
    proof->scale = certificate->scale;
    proof->bound = bound_of(reduced, certificate);
    proof->value_count = reduced->type_count;
    proof->value = arena_array(arena, reduced->type_count, sizeof *proof->value);
    for (size_t i = 0; i < reduced->type_count; i++)
        proof->value[i] = (struct cut_value){reduced->length[i], certificate->value[i]};
    for (size_t i = 0; i < reduced->stock_count; i++)
        proof->extra[reduced->stock_of[i]] = certificate->extra[i];
}
