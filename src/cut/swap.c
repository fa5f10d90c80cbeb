/* Sticks of the same price: which one is taken. */
#include "cut_internal.h"

static const struct cut_stock *stock_at(const struct reduced *reduced, size_t stock)
{
    return &reduced->problem->stock[reduced->stock_of[stock]];
}

/* Does this stock serve better than the one that is taken?  It costs the same, it is the shop's too or not either, it
 * has room, and there is some left. */
static bool serves_better(const struct reduced *reduced, const struct raw_stick *stick, size_t other, int64_t taken)
{
    const struct cut_stock *now = stock_at(reduced, stick->stock), *then = stock_at(reduced, other);
    bool shop = cut_is_shop(now);
    if (then->cost != now->cost || cut_is_shop(then) != shop || reduced->room[other] < stick->used ||
        (then->supply > 0 && taken >= then->supply))
        return false;
    return shop ? then->length < now->length : reduced->room[other] > reduced->room[stick->stock];
}

void swap_sticks(struct arena *arena, const struct reduced *reduced, struct raw_stick *stick, size_t count)
{
    int64_t *taken = arena_array(arena, reduced->stock_count, sizeof *taken);
    for (size_t i = 0; i < count; i++)
        taken[stick[i].stock]++;
    for (size_t i = 0; i < count; i++)
        for (size_t other = 0; other < reduced->stock_count; other++) {
            if (!serves_better(reduced, &stick[i], other, taken[other]))
                continue;
            taken[stick[i].stock]--;
            taken[other]++;
            stick[i].stock = other;
        }
}
