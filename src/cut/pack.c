/* First drafts: decreasing orders over every stock, and greedy filling by the price of a used length. */
#include "bench.h"
#include "sawbill/wide.h"

enum fit { FIT_FIRST, FIT_BEST, FIT_COUNT };
/* Greedy filling walks all items once a stock and stick: beyond this many items it is left out. */
enum { MOST_GREEDY_ITEMS = 3000 };

/* An open stick with room for the item: the first, or the one it fills most. bin_count when there is none. */
static size_t find_bin(const struct bench *bench, const struct draft *draft, length_t size, enum fit fit)
{
    size_t found = draft->bin_count;
    length_t least = 0;
    for (size_t i = 0; i < draft->bin_count; i++) {
        length_t rest = bench->choice[draft->bin[i].choice].room - draft->bin[i].used - size;
        if (rest < 0 || (found < draft->bin_count && rest >= least))
            continue;
        found = i;
        least = rest;
        if (fit == FIT_FIRST)
            break;
    }
    return found;
}

static bool has_supply(const struct bench *bench, const struct draft *draft, size_t choice)
{
    int supply = bench->choice[choice].supply;
    return supply == 0 || draft->taken[choice] < supply;
}

/* The shop's own sticks that hold the item before anything is bought: the shortest. */
static long shop_choice(const struct bench *bench, const struct draft *draft, length_t size)
{
    for (size_t i = 0; i < bench->choice_count; i++)
        if (bench->choice[i].supply > 0 && bench->choice[i].room >= size && has_supply(bench, draft, i))
            return (long)i;
    return NO_CHOICE;
}

/* Items longest first; a new stick is of stock `wanted` (NO_CHOICE: the cheapest that holds the item) where it can be.
 */
static void pack_decreasing(const struct bench *bench, struct draft *draft, long wanted, enum fit fit, bool shop_first)
{
    draft_clear(bench, draft);
    for (size_t i = 0; i < bench->item_count; i++) {
        length_t size = bench->item[i].size;
        size_t bin = find_bin(bench, draft, size, fit);
        if (bin == draft->bin_count) {
            long choice = shop_first ? shop_choice(bench, draft, size) : NO_CHOICE;
            if (choice == NO_CHOICE && wanted != NO_CHOICE && bench->choice[wanted].room >= size &&
                has_supply(bench, draft, (size_t)wanted))
                choice = wanted;
            if (choice == NO_CHOICE)
                choice = bench_cheapest(bench, draft, size);
            if (choice == NO_CHOICE)
                return;
            bin = draft_open(bench, draft, (size_t)choice);
        }
        draft_put(bench, draft, i, bin);
    }
    draft->whole = true;
}

/* What a stick of this stock would hold: the first open item, then every next one that still fits. */
static length_t try_fill(const struct bench *bench, const bool *placed, size_t first, size_t choice)
{
    length_t used = 0;
    for (size_t i = first; i < bench->item_count; i++)
        if (!placed[i] && used + bench->item[i].size <= bench->choice[choice].room)
            used += bench->item[i].size;
    return used;
}

static void fill(const struct bench *bench, struct draft *draft, bool *placed, size_t first, size_t choice)
{
    size_t bin = draft_open(bench, draft, choice);
    for (size_t i = first; i < bench->item_count; i++) {
        if (placed[i] || draft->bin[bin].used + bench->item[i].size > bench->choice[choice].room)
            continue;
        draft_put(bench, draft, i, bin);
        placed[i] = true;
    }
}

static long best_fill(const struct bench *bench, const struct draft *draft, const bool *placed, size_t first)
{
    long best = NO_CHOICE;
    length_t best_used = 1;
    for (size_t i = 0; i < bench->choice_count; i++) {
        if (bench->choice[i].room < bench->item[first].size || !has_supply(bench, draft, i))
            continue;
        length_t used = try_fill(bench, placed, first, i);
        if (best != NO_CHOICE &&
            (wide_t)bench->choice[i].stock->cost * best_used >= (wide_t)bench->choice[best].stock->cost * used)
            continue;
        best = (long)i;
        best_used = used;
    }
    return best;
}

/* Each new stick is the one whose used length costs least. */
static void pack_greedy(const struct bench *bench, struct draft *draft, bool *placed)
{
    draft_clear(bench, draft);
    for (size_t i = 0; i < bench->item_count; i++)
        placed[i] = false;
    for (size_t first = 0; first < bench->item_count; first++) {
        if (placed[first])
            continue;
        long choice = best_fill(bench, draft, placed, first);
        if (choice == NO_CHOICE)
            return;
        fill(bench, draft, placed, first, (size_t)choice);
    }
    draft->whole = true;
}

static void keep(const struct bench *bench, struct draft *best, struct draft *trial)
{
    if (!trial->whole)
        return;
    improve_shrink(bench, trial);
    if (draft_better(bench, trial, best))
        draft_copy(bench, best, trial);
}

void pack_all(const struct bench *bench, struct draft *best)
{
    struct draft *trial = draft_new(bench);
    draft_clear(bench, best);
    for (long wanted = NO_CHOICE; wanted < (long)bench->choice_count; wanted++)
        for (int fit = 0; fit < FIT_COUNT; fit++)
            for (int shop = 0; shop < 2; shop++) {
                pack_decreasing(bench, trial, wanted, (enum fit)fit, shop != 0);
                keep(bench, best, trial);
            }
    if (bench->item_count > MOST_GREEDY_ITEMS)
        return;
    bool *placed = arena_array(bench->arena, bench->item_count, sizeof *placed);
    pack_greedy(bench, trial, placed);
    keep(bench, best, trial);
}
