/* What else might have been bought: the habit of first fit, and each stock length alone. */
#include <string.h>

#include "cut_internal.h"

/* Rows by the foot are left out, and rows beyond these. */
enum { MOST_SINGLES = 24, SINGLE_STEPS = 100000 };
/* First fit walks along all open sticks for each length: beyond so many steps it is left out. */
enum { MOST_FIT_STEPS = 100000000 };

/* First fit decreasing out of one stock: of equal pieces as many go into each open stick as fit.  0: not possible. */
static int64_t first_fit(struct arena *arena, const struct reduced *reduced, size_t stock)
{
    int64_t room = reduced->stock[stock].length, supply = reduced->stock[stock].supply;
    int64_t *rest = NULL;
    size_t count = 0, capacity = 0, steps = 0;
    for (size_t type = 0; type < reduced->type_count; type++) {
        int64_t size = reduced->type[type].length, left = reduced->type[type].demand;
        if (size > room || steps > MOST_FIT_STEPS)
            return 0;
        for (size_t i = 0; left > 0; i++) {
            if (i == count) {
                rest = arena_more(arena, rest, count, &capacity, sizeof *rest);
                rest[count++] = room;
            }
            int64_t take = rest[i] / size < left ? rest[i] / size : left;
            rest[i] -= take * size;
            left -= take;
            steps++;
        }
    }
    return supply != FORM_ENDLESS && (int64_t)count > supply ? 0 : (int64_t)count;
}

static void compare_first_fit(struct arena *arena, const struct reduced *reduced, struct cut_others *others)
{
    for (size_t i = 0; i < reduced->stock_count; i++) {
        const struct cut_stock *stock = &reduced->problem->stock[reduced->stock_of[i]];
        int64_t sticks = stock->shop ? 0 : first_fit(arena, reduced, i);
        if (sticks == 0 || sticks > MONEY_MOST / (stock->cost + 1))
            continue;
        if (others->has_first_fit && sticks * stock->cost >= others->first_fit)
            continue;
        others->has_first_fit = true;
        others->first_fit = sticks * stock->cost;
        others->first_fit_stock = stock;
    }
}

static struct cut_single solve_single(struct arena *arena, const struct reduced *reduced, size_t stock)
{
    struct cut_single single = {.stock = &reduced->problem->stock[reduced->stock_of[stock]]};
    struct form form = {reduced->type, reduced->type_count, &reduced->stock[stock], 1};
    struct form_limits limits = {.steps = SINGLE_STEPS};
    struct form_result result;
    if (reduced->type[0].length > reduced->stock[stock].length || !form_solve(arena, &form, &limits, &result))
        return single;
    single.possible = result.verdict == FORM_PROVED || result.verdict == FORM_BEST;
    single.cost = single.possible ? result.cost : 0;
    single.proved = result.verdict == FORM_PROVED;
    return single;
}

/* The same length from two suppliers is one: the cheaper. */
static void keep_single(struct cut_others *others, const struct cut_single *single)
{
    for (size_t i = 0; i < others->single_count; i++) {
        struct cut_single *before = &others->single[i];
        if (cut_sold_length(before->stock) != cut_sold_length(single->stock))
            continue;
        if (single->possible && (!before->possible || single->cost < before->cost))
            *before = *single;
        return;
    }
    others->single[others->single_count++] = *single;
}

static void compare_singles(struct arena *arena, const struct reduced *reduced, struct cut_others *others)
{
    others->single = arena_array(arena, MOST_SINGLES, sizeof *others->single);
    for (size_t i = 0; i < reduced->stock_count && others->single_count < MOST_SINGLES; i++) {
        const struct cut_stock *stock = &reduced->problem->stock[reduced->stock_of[i]];
        bool by_the_foot = stock->price && stock->price->increment > 0;
        if (stock->shop || by_the_foot)
            continue;
        struct cut_single single = solve_single(arena, reduced, i);
        keep_single(others, &single);
    }
}

/* The ways of joining are those of the plan. */
void cut_compare(struct arena *arena, struct cut_plan *plan)
{
    struct cut_others *others = arena_alloc(arena, sizeof *others);
    plan->others = others;
    size_t count = 0;
    struct wanted *piece = plan->stick_count ? way_pieces(arena, plan->problem, plan->joined, &count) : NULL;
    if (count == 0)
        return;
    const struct reduced *reduced = reduce(arena, plan->problem, piece, count);
    compare_first_fit(arena, reduced, others);
    compare_singles(arena, reduced, others);
}
