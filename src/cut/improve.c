/* Making a draft cheaper: each stick to its cheapest sufficient stock; two sticks at a time cut again. */
#include "cut_internal.h"

/* Two sticks with more pieces than this together are left alone (2^(n - 1) ways to share them out), and so are plans
 * with very many sticks, and after so many rounds. */
enum { MOST_PAIR_ITEMS = 8, MOST_PAIR_BINS = 60, MOST_ROUNDS = 10 };

static void release(const struct prepared *prepared, struct draft *draft, size_t bin)
{
    draft->taken[draft->bin[bin].choice]--;
    draft->cost -= prepared->choice[draft->bin[bin].choice].stock->cost;
}

static void take(const struct prepared *prepared, struct draft *draft, size_t bin, size_t choice)
{
    draft->bin[bin].choice = choice;
    draft->taken[choice]++;
    draft->cost += prepared->choice[choice].stock->cost;
}

void improve_shrink(const struct prepared *prepared, struct draft *draft)
{
    for (size_t i = 0; i < draft->bin_count; i++) {
        release(prepared, draft, i);
        /* Never NO_CHOICE: the stock just released holds it. */
        take(prepared, draft, i, (size_t)choice_cheapest(prepared, draft, draft->bin[i].used));
    }
}

struct split {
    size_t item[MOST_PAIR_ITEMS];
    size_t count;
    unsigned mask; /* bit i: item i goes to the second stick */
    size_t choice[2];
    size_t sticks;
    money_t cost;
};

static bool gather(const struct prepared *prepared, const struct draft *draft, size_t a, size_t b, struct split *split)
{
    split->count = 0;
    for (size_t i = 0; i < prepared->item_count; i++) {
        if (draft->bin_of[i] != a && draft->bin_of[i] != b)
            continue;
        if (split->count == MOST_PAIR_ITEMS)
            return false;
        split->item[split->count++] = i;
    }
    return true;
}

/* The cheapest stock of both sides of one way to share out; false when it is not better than `best`. */
static bool try_mask(const struct prepared *prepared, struct draft *draft, struct split *best, unsigned mask)
{
    length_t used[2] = {0, 0};
    for (size_t i = 0; i < best->count; i++)
        used[mask >> i & 1U] += prepared->item[best->item[i]].size;
    size_t sticks = used[1] > 0 ? 2 : 1;
    long first = choice_cheapest(prepared, draft, used[0]);
    if (first == NO_CHOICE)
        return false;
    money_t cost = prepared->choice[first].stock->cost;
    long second = first;
    if (sticks == 2) {
        draft->taken[first]++;
        second = choice_cheapest(prepared, draft, used[1]);
        draft->taken[first]--;
        if (second == NO_CHOICE)
            return false;
        cost += prepared->choice[second].stock->cost;
    }
    if (cost > best->cost || (cost == best->cost && sticks >= best->sticks))
        return false;
    best->mask = mask;
    best->choice[0] = (size_t)first;
    best->choice[1] = (size_t)second;
    best->sticks = sticks;
    best->cost = cost;
    return true;
}

static void drop_bin(const struct prepared *prepared, struct draft *draft, size_t bin)
{
    size_t last = --draft->bin_count;
    draft->bin[bin] = draft->bin[last];
    for (size_t i = 0; i < prepared->item_count; i++)
        if (draft->bin_of[i] == last)
            draft->bin_of[i] = bin;
}

static void apply(const struct prepared *prepared, struct draft *draft, size_t a, size_t b, const struct split *split)
{
    draft->bin[a].used = draft->bin[b].used = 0;
    for (size_t i = 0; i < split->count; i++)
        draft_put(prepared, draft, split->item[i], split->mask >> i & 1U ? b : a);
    take(prepared, draft, a, split->choice[0]);
    if (split->sticks == 2)
        take(prepared, draft, b, split->choice[1]);
    else
        drop_bin(prepared, draft, b);
}

static bool improve_pair(const struct prepared *prepared, struct draft *draft, size_t a, size_t b)
{
    struct split best;
    if (!gather(prepared, draft, a, b, &best))
        return false;
    size_t old[2] = {draft->bin[a].choice, draft->bin[b].choice};
    best.cost = prepared->choice[old[0]].stock->cost + prepared->choice[old[1]].stock->cost;
    best.sticks = 2;
    release(prepared, draft, a);
    release(prepared, draft, b);
    bool better = false;
    /* The first item stays in the first stick: the other half of the masks only swaps the two. */
    for (unsigned mask = 0; mask < 1U << best.count; mask += 2)
        better = try_mask(prepared, draft, &best, mask) || better;
    if (better) {
        apply(prepared, draft, a, b, &best);
        return true;
    }
    take(prepared, draft, a, old[0]);
    take(prepared, draft, b, old[1]);
    return false;
}

void improve_pairs(const struct prepared *prepared, struct draft *draft)
{
    if (!draft->whole || draft->bin_count > MOST_PAIR_BINS)
        return;
    bool better = true;
    for (int round = 0; better && round < MOST_ROUNDS; round++) {
        better = false;
        for (size_t a = 0; a < draft->bin_count; a++)
            for (size_t b = a + 1; b < draft->bin_count; b++)
                better = improve_pair(prepared, draft, a, b) || better;
    }
}
