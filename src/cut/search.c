/* Depth-first search over all plans of a small problem: it finds what the drafts missed, and when it ends within its
 * limit of steps the best plan is the optimum. */
#include "cut_internal.h"
#include "sawbill/wide.h"

enum { MOST_ITEMS = 40, MOST_STEPS = 60000, MOST_TIE_STEPS = 5000 };

struct search {
    const struct prepared *prepared;
    struct draft *now, *best;
    length_t rest[MOST_ITEMS + 1]; /* size of items i and after */
    size_t cheapest;               /* the choice whose room costs least for its length */
    long steps;
    bool ties; /* plans of the same cost and number of sticks are looked at, for their cutoffs */
};

/* Least further cost: what the open sticks have no room for, at the least price for a length of room. */
static money_t least_more(const struct search *search, size_t item)
{
    const struct prepared *prepared = search->prepared;
    length_t excess = search->rest[item];
    for (size_t i = 0; i < search->now->bin_count && excess > 0; i++)
        excess -= prepared->choice[search->now->bin[i].choice].room - search->now->bin[i].used;
    if (excess <= 0)
        return 0;
    const struct choice *cheapest = &prepared->choice[search->cheapest];
    return (money_t)(((wide_t)excess * cheapest->stock->cost + cheapest->room - 1) / cheapest->room);
}

static bool is_hopeless(const struct search *search, size_t item)
{
    const struct draft *now = search->now, *best = search->best;
    if (!best->whole)
        return false;
    money_t least = now->cost + least_more(search, item);
    if (least != best->cost)
        return least > best->cost;
    return search->ties ? now->bin_count > best->bin_count : now->bin_count >= best->bin_count;
}

/* The same stick was tried for this item already. */
static bool is_repeat(const struct draft *now, size_t from, size_t bin)
{
    for (size_t i = from; i < bin; i++)
        if (now->bin[i].choice == now->bin[bin].choice && now->bin[i].used == now->bin[bin].used)
            return true;
    return false;
}

static void place_item(struct search *search, size_t item);

static void place_in_open(struct search *search, size_t item)
{
    const struct prepared *prepared = search->prepared;
    struct draft *now = search->now;
    length_t size = prepared->item[item].size;
    /* Of equal items the later one never goes to an earlier stick. */
    size_t from = item > 0 && prepared->item[item - 1].size == size ? now->bin_of[item - 1] : 0;
    for (size_t bin = from; bin < now->bin_count; bin++) {
        if (now->bin[bin].used + size > prepared->choice[now->bin[bin].choice].room || is_repeat(now, from, bin))
            continue;
        draft_put(prepared, now, item, bin);
        place_item(search, item + 1);
        now->bin[bin].used -= size;
    }
}

static void place_in_new(struct search *search, size_t item)
{
    const struct prepared *prepared = search->prepared;
    struct draft *now = search->now;
    for (size_t i = 0; i < prepared->choice_count; i++) {
        const struct choice *choice = &prepared->choice[i];
        if (choice->room < prepared->item[item].size || (choice->supply > 0 && now->taken[i] >= choice->supply))
            continue;
        size_t bin = draft_open(prepared, now, i);
        draft_put(prepared, now, item, bin);
        place_item(search, item + 1);
        now->bin_count--;
        now->taken[i]--;
        now->cost -= choice->stock->cost;
    }
}

/* Recursion is as deep as there are items: MOST_ITEMS. */
static void place_item(struct search *search, size_t item)
{
    if (search->steps <= 0 || is_hopeless(search, item))
        return;
    search->steps--;
    if (item == search->prepared->item_count) {
        search->now->whole = true;
        if (draft_better(search->prepared, search->now, search->best))
            draft_copy(search->prepared, search->best, search->now);
        search->now->whole = false;
        return;
    }
    place_in_open(search, item);
    place_in_new(search, item);
}

static size_t cheapest_room(const struct prepared *prepared)
{
    size_t best = 0;
    for (size_t i = 1; i < prepared->choice_count; i++)
        if ((wide_t)prepared->choice[i].stock->cost * prepared->choice[best].room <
            (wide_t)prepared->choice[best].stock->cost * prepared->choice[i].room)
            best = i;
    return best;
}

static bool search_once(struct search *search, bool ties)
{
    search->ties = ties;
    search->steps = ties ? MOST_TIE_STEPS : MOST_STEPS;
    draft_clear(search->prepared, search->now);
    place_item(search, 0);
    return search->steps > 0;
}

bool search_all(const struct prepared *prepared, struct draft *best, money_t bound)
{
    if (prepared->item_count > MOST_ITEMS || prepared->choice_count == 0)
        return false;
    struct search search = {
        .prepared = prepared, .now = draft_new(prepared), .best = best, .cheapest = cheapest_room(prepared)};
    for (size_t i = prepared->item_count; i-- > 0;)
        search.rest[i] = search.rest[i + 1] + prepared->item[i].size;
    bool proved = (best->whole && best->cost == bound) || search_once(&search, false);
    if (proved && best->whole)
        search_once(&search, true);
    return proved;
}
