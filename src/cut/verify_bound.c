/* The bound worked out again from the proof, by the plainest knapsack there is. */
#include "verify.h"

#include <stdlib.h>
#include <string.h>

#include "sawbill/wide.h"

/* Finer units than 1/64 in are given up for sticks of more units than this: pieces up, stock down. */
enum { UNITS_MOST = 40000 };

/* One length with all the pieces of it. */
struct need {
    length_t length, size; /* size: with its kerf; later in units, rounded up */
    int64_t demand, value;
};
struct offer {
    length_t room;  /* later in units, rounded down */
    int64_t supply; /* 0: no end */
    money_t cost;
    int64_t extra;
};
struct look {
    struct need *kind;
    size_t kinds;
    struct offer *offer;
    size_t offers;
    int64_t pieces;
    bool rounded;
};

static int by_length(const void *left, const void *right)
{
    length_t a = ((const struct need *)left)->length, b = ((const struct need *)right)->length;
    return (a > b) - (a < b);
}

static void list_kinds(struct arena *arena, const struct cut_problem *problem, const unsigned *mask, struct look *look)
{
    size_t count;
    struct due *due = verify_due(arena, problem, mask, &count);
    struct need *kind = arena_array(arena, count, sizeof *kind);
    for (size_t i = 0; i < count; i++)
        kind[i] = (struct need){due[i].length, due[i].length + problem->kerf, due[i].count, 0};
    if (count > 1)
        qsort(kind, count, sizeof *kind, by_length);
    for (size_t i = 0; i < count; i++) {
        look->pieces += kind[i].demand;
        if (look->kinds > 0 && kind[look->kinds - 1].length == kind[i].length)
            kind[look->kinds - 1].demand += kind[i].demand;
        else
            kind[look->kinds++] = kind[i];
    }
    look->kind = kind;
}

static void list_offers(struct arena *arena, const struct cut_problem *problem, const struct cut_proof *proof,
                        struct look *look)
{
    look->offer = arena_array(arena, problem->stock_count, sizeof *look->offer);
    for (size_t i = 0; i < problem->stock_count; i++) {
        const struct cut_stock *stock = &problem->stock[i];
        length_t usable = verify_usable(problem, stock);
        if (usable <= 0)
            continue;
        bool endless = stock->supply <= 0 || stock->supply >= look->pieces;
        look->offer[look->offers++] =
            (struct offer){problem->square_both_ends ? usable : usable + problem->kerf, endless ? 0 : stock->supply,
                           stock->cost, proof->extra ? proof->extra[i] : 0};
    }
}

static length_t divisor(length_t a, length_t b)
{
    return b == 0 ? a : divisor(b, a % b);
}

static length_t longest_room(const struct look *look)
{
    length_t longest = 0;
    for (size_t i = 0; i < look->offers; i++)
        longest = look->offer[i].room > longest ? look->offer[i].room : longest;
    return longest;
}

/* Lengths to units: exact, but where they would be too many. */
static void count_units(struct look *look)
{
    length_t unit = look->kind[0].size;
    for (size_t i = 1; i < look->kinds; i++)
        unit = divisor(look->kind[i].size, unit);
    if (unit < LENGTH_INCH / 64 && longest_room(look) / unit > UNITS_MOST) {
        unit = LENGTH_INCH / 64;
        look->rounded = true;
    }
    for (size_t i = 0; i < look->kinds; i++)
        look->kind[i].size = (look->kind[i].size + unit - 1) / unit;
    for (size_t i = 0; i < look->offers; i++)
        look->offer[i].room /= unit;
}

/* A stock that holds nothing, or that an endless one beats, is never needed. */
static bool is_needed(const struct look *look, size_t at)
{
    const struct offer *a = &look->offer[at];
    if (a->room < look->kind[0].size)
        return false;
    for (size_t i = 0; i < look->offers; i++) {
        const struct offer *b = &look->offer[i];
        if (i == at || b->supply > 0 || b->room < a->room || b->cost > a->cost)
            continue;
        bool twins = b->room == a->room && b->cost == a->cost && a->supply == 0;
        if (!twins || i < at)
            return false;
    }
    return true;
}

/* most[c]: the most valuable pieces that a length of c units holds. */
static wide_t *fill_lengths(struct arena *arena, const struct look *look, length_t longest)
{
    wide_t *most = arena_array(arena, (size_t)longest + 1, sizeof *most);
    for (size_t i = 0; i < look->kinds; i++) {
        const struct need *kind = &look->kind[i];
        int64_t left = kind->demand < longest / kind->size ? kind->demand : longest / kind->size;
        if (kind->value == 0)
            continue;
        for (int64_t copies = 1; left > 0; copies *= 2) {
            int64_t taken = copies < left ? copies : left;
            length_t weight = taken * kind->size;
            wide_t worth = (wide_t)taken * kind->value;
            for (length_t c = longest; c >= weight; c--)
                if (most[c - weight] + worth > most[c])
                    most[c] = most[c - weight] + worth;
            left -= taken;
        }
    }
    return most;
}

static const char *read_values(const struct cut_proof *proof, struct look *look)
{
    for (size_t i = 0; i < proof->value_count; i++) {
        const struct need key = {.length = proof->value[i].length};
        struct need *kind = bsearch(&key, look->kind, look->kinds, sizeof key, by_length);
        if (!kind)
            return "the proof speaks of a length that nobody wants";
        if (proof->value[i].value < 0)
            return "the proof has a value below nothing";
        kind->value = proof->value[i].value;
    }
    return NULL;
}

/* The bound of one way of joining; -1: no plan at all, as a piece is too long. */
static const char *bound_way(struct arena *arena, const struct cut_proof *proof, struct look *look, money_t *bound)
{
    const char *fault = read_values(proof, look);
    length_t longest = longest_room(look);
    *bound = look->kind[look->kinds - 1].size > longest ? -1 : 0;
    if (fault || *bound < 0 || proof->scale <= 0)
        return fault;
    const wide_t *most = fill_lengths(arena, look, longest);
    wide_t sum = 0;
    money_t step = 0;
    for (size_t i = 0; i < look->kinds; i++)
        sum += (wide_t)look->kind[i].demand * look->kind[i].value;
    for (size_t i = 0; i < look->offers; i++) {
        const struct offer *offer = &look->offer[i];
        if (!is_needed(look, i))
            continue;
        if (offer->extra < 0 || (offer->extra > 0 && offer->supply == 0))
            return "the proof allows extra where it may not";
        if (most[offer->room] > (wide_t)proof->scale * offer->cost + offer->extra)
            return "a stick may hold more than the proof says";
        sum -= (wide_t)offer->extra * offer->supply;
        step = divisor(offer->cost, step);
    }
    step = step > 0 ? step : 1;
    if (sum > 0)
        *bound = (money_t)((sum + (wide_t)proof->scale * step - 1) / ((wide_t)proof->scale * step)) * step;
    return NULL;
}

static const char *verify_way(struct arena *arena, const struct cut_problem *problem, const struct cut_plan *plan,
                              const unsigned *mask, const struct cut_proof *proof, money_t *least)
{
    struct look look = {0};
    money_t bound;
    list_kinds(arena, problem, mask, &look);
    list_offers(arena, problem, proof, &look);
    if (look.kinds == 0) {
        *least = 0;
        return NULL;
    }
    count_units(&look);
    if (look.rounded && !plan->rounded)
        return "lengths were rounded and the plan does not say so";
    const char *fault = bound_way(arena, proof, &look, &bound);
    if (fault || bound < 0)
        return fault;
    if (proof->bound != bound)
        return "the bound does not follow from the proof";
    if (*least < 0 || bound < *least)
        *least = bound;
    return NULL;
}

/* A search may raise the bound above what the values of the pieces prove, not lower it. */
const char *verify_bound(struct arena *arena, const struct cut_problem *problem, const struct cut_plan *plan)
{
    money_t least = plan->proof_count ? -1 : 0;
    unsigned *mask = arena_array(arena, problem->joints_count, sizeof *mask);
    for (size_t way = 0; way < plan->proof_count; way++) {
        size_t rest = way;
        for (size_t i = 0; i < problem->joints_count; i++) {
            mask[i] = (unsigned)(rest % ((size_t)1 << problem->joints[i].count));
            rest /= (size_t)1 << problem->joints[i].count;
        }
        if (rest > 0)
            return "the proof has more ways than there are";
        const char *fault = verify_way(arena, problem, plan, mask, &plan->proof[way], &least);
        if (fault)
            return fault;
    }
    size_t ways = 1;
    for (size_t i = 0; i < problem->joints_count && ways <= CUT_WAYS_MOST; i++)
        ways *= (size_t)1 << problem->joints[i].count;
    if (plan->proof_count > 0 && plan->proof_count != ways)
        return "a way of joining has no proof";
    if (least >= 0 && plan->bound < least)
        return "the bound is below what the proof says";
    if (plan->searched != (plan->bound > (least < 0 ? 0 : least)))
        return "the plan does not say rightly whether a search raised its bound";
    if (plan->certified != (least < 0 ? 0 : least))
        return "the plan does not say rightly what its proofs show";
    return NULL;
}
