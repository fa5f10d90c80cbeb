/* First drafts: decreasing orders over every stock, and greedy filling by the price of a used length. */
#include "cut_internal.h"
#include "sawbill/wide.h"

enum fit { FIT_FIRST, FIT_BEST, FIT_COUNT };
/* Greedy filling walks all items once a stock and stick: beyond this many items it is left out. */
enum { MOST_GREEDY_ITEMS = 3000 };

/* An open stick with room for the item: the first, or the one it fills most. bin_count when there is none. */
static size_t find_bin(const struct prepared *prepared, const struct draft *draft, length_t size, enum fit fit)
{
    size_t found = draft->bin_count;
    length_t least = 0;
    for (size_t i = 0; i < draft->bin_count; i++) {
        length_t rest = prepared->choice[draft->bin[i].choice].room - draft->bin[i].used - size;
        if (rest < 0 || (found < draft->bin_count && rest >= least))
            continue;
        found = i;
        least = rest;
        if (fit == FIT_FIRST)
            break;
    }
    return found;
}

static bool has_supply(const struct prepared *prepared, const struct draft *draft, size_t choice)
{
    int supply = prepared->choice[choice].supply;
    return supply == 0 || draft->taken[choice] < supply;
}

/* The shop's own sticks that hold the item before anything is bought: the shortest. */
static long shop_choice(const struct prepared *prepared, const struct draft *draft, length_t size)
{
    for (size_t i = 0; i < prepared->choice_count; i++)
        if (prepared->choice[i].supply > 0 && prepared->choice[i].room >= size && has_supply(prepared, draft, i))
            return (long)i;
    return NO_CHOICE;
}

/* Items longest first; a new stick is of stock `wanted` (NO_CHOICE: the cheapest that holds the item) where it can be.
 */
static void pack_decreasing(const struct prepared *prepared, struct draft *draft, long wanted, enum fit fit,
                            bool shop_first)
{
    draft_clear(prepared, draft);
    for (size_t i = 0; i < prepared->item_count; i++) {
        length_t size = prepared->item[i].size;
        size_t bin = find_bin(prepared, draft, size, fit);
        if (bin == draft->bin_count) {
            long choice = shop_first ? shop_choice(prepared, draft, size) : NO_CHOICE;
            if (choice == NO_CHOICE && wanted != NO_CHOICE && prepared->choice[wanted].room >= size &&
                has_supply(prepared, draft, (size_t)wanted))
                choice = wanted;
            if (choice == NO_CHOICE)
                choice = choice_cheapest(prepared, draft, size);
            if (choice == NO_CHOICE)
                return;
            bin = draft_open(prepared, draft, (size_t)choice);
        }
        draft_put(prepared, draft, i, bin);
    }
    draft->whole = true;
}

/* What a stick of this stock would hold: the first open item, then every next one that still fits. */
static length_t try_fill(const struct prepared *prepared, const bool *placed, size_t first, size_t choice)
{
    length_t used = 0;
    for (size_t i = first; i < prepared->item_count; i++)
        if (!placed[i] && used + prepared->item[i].size <= prepared->choice[choice].room)
            used += prepared->item[i].size;
    return used;
}

static void fill(const struct prepared *prepared, struct draft *draft, bool *placed, size_t first, size_t choice)
{
    size_t bin = draft_open(prepared, draft, choice);
    for (size_t i = first; i < prepared->item_count; i++) {
        if (placed[i] || draft->bin[bin].used + prepared->item[i].size > prepared->choice[choice].room)
            continue;
        draft_put(prepared, draft, i, bin);
        placed[i] = true;
    }
}

static long best_fill(const struct prepared *prepared, const struct draft *draft, const bool *placed, size_t first)
{
    long best = NO_CHOICE;
    length_t best_used = 1;
    for (size_t i = 0; i < prepared->choice_count; i++) {
        if (prepared->choice[i].room < prepared->item[first].size || !has_supply(prepared, draft, i))
            continue;
        length_t used = try_fill(prepared, placed, first, i);
        if (best != NO_CHOICE &&
            (wide_t)prepared->choice[i].stock->cost * best_used >= (wide_t)prepared->choice[best].stock->cost * used)
            continue;
        best = (long)i;
        best_used = used;
    }
    return best;
}

/* Each new stick is the one whose used length costs least. */
static void pack_greedy(const struct prepared *prepared, struct draft *draft, bool *placed)
{
    draft_clear(prepared, draft);
    for (size_t i = 0; i < prepared->item_count; i++)
        placed[i] = false;
    for (size_t first = 0; first < prepared->item_count; first++) {
        if (placed[first])
            continue;
        long choice = best_fill(prepared, draft, placed, first);
        if (choice == NO_CHOICE)
            return;
        fill(prepared, draft, placed, first, (size_t)choice);
    }
    draft->whole = true;
}

static void keep(const struct prepared *prepared, struct draft *best, struct draft *trial)
{
    if (!trial->whole)
        return;
    improve_shrink(prepared, trial);
    if (draft_better(prepared, trial, best))
        draft_copy(prepared, best, trial);
}

void pack_all(const struct prepared *prepared, struct draft *best)
{
    struct draft *trial = draft_new(prepared);
    draft_clear(prepared, best);
    for (long wanted = NO_CHOICE; wanted < (long)prepared->choice_count; wanted++)
        for (int fit = 0; fit < FIT_COUNT; fit++)
            for (int shop = 0; shop < 2; shop++) {
                pack_decreasing(prepared, trial, wanted, (enum fit)fit, shop != 0);
                keep(prepared, best, trial);
            }
    if (prepared->item_count > MOST_GREEDY_ITEMS)
        return;
    bool *placed = arena_array(prepared->arena, prepared->item_count, sizeof *placed);
    pack_greedy(prepared, trial, placed);
    keep(prepared, best, trial);
}
