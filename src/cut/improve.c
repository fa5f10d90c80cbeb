/* Making a draft cheaper: each stick to its cheapest sufficient stock; two sticks at a time cut again. */
#include "bench.h"

/* Two sticks with more pieces than this together are left alone (2^(n - 1) ways to share them out), and so are plans
 * with very many sticks, and after so many rounds. */
enum { MOST_PAIR_ITEMS = 8, MOST_PAIR_BINS = 60, MOST_ROUNDS = 10 };

static void release(const struct bench *bench, struct draft *draft, size_t bin)
{
    draft->taken[draft->bin[bin].choice]--;
    draft->cost -= bench->choice[draft->bin[bin].choice].stock->cost;
}

static void take(const struct bench *bench, struct draft *draft, size_t bin, size_t choice)
{
    draft->bin[bin].choice = choice;
    draft->taken[choice]++;
    draft->cost += bench->choice[choice].stock->cost;
}

void improve_shrink(const struct bench *bench, struct draft *draft)
{
    for (size_t i = 0; i < draft->bin_count; i++) {
        release(bench, draft, i);
        /* Never NO_CHOICE: the stock just released holds it. */
        take(bench, draft, i, (size_t)bench_cheapest(bench, draft, draft->bin[i].used));
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

static bool gather(const struct bench *bench, const struct draft *draft, size_t a, size_t b, struct split *split)
{
    split->count = 0;
    for (size_t i = 0; i < bench->item_count; i++) {
        if (draft->bin_of[i] != a && draft->bin_of[i] != b)
            continue;
        if (split->count == MOST_PAIR_ITEMS)
            return false;
        split->item[split->count++] = i;
    }
    return true;
}

/* The cheapest stock of both sides of one way to share out; false when it is not better than `best`. */
static bool try_mask(const struct bench *bench, struct draft *draft, struct split *best, unsigned mask)
{
    length_t used[2] = {0, 0};
    for (size_t i = 0; i < best->count; i++)
        used[mask >> i & 1U] += bench->item[best->item[i]].size;
    size_t sticks = used[1] > 0 ? 2 : 1;
    long first = bench_cheapest(bench, draft, used[0]);
    if (first == NO_CHOICE)
        return false;
    money_t cost = bench->choice[first].stock->cost;
    long second = first;
    if (sticks == 2) {
        draft->taken[first]++;
        second = bench_cheapest(bench, draft, used[1]);
        draft->taken[first]--;
        if (second == NO_CHOICE)
            return false;
        cost += bench->choice[second].stock->cost;
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

static void drop_bin(const struct bench *bench, struct draft *draft, size_t bin)
{
    size_t last = --draft->bin_count;
    draft->bin[bin] = draft->bin[last];
    for (size_t i = 0; i < bench->item_count; i++)
        if (draft->bin_of[i] == last)
            draft->bin_of[i] = bin;
}

static void apply(const struct bench *bench, struct draft *draft, size_t a, size_t b, const struct split *split)
{
    draft->bin[a].used = draft->bin[b].used = 0;
    for (size_t i = 0; i < split->count; i++)
        draft_put(bench, draft, split->item[i], split->mask >> i & 1U ? b : a);
    take(bench, draft, a, split->choice[0]);
    if (split->sticks == 2)
        take(bench, draft, b, split->choice[1]);
    else
        drop_bin(bench, draft, b);
}

static bool improve_pair(const struct bench *bench, struct draft *draft, size_t a, size_t b)
{
    struct split best;
    if (!gather(bench, draft, a, b, &best))
        return false;
    size_t old[2] = {draft->bin[a].choice, draft->bin[b].choice};
    best.cost = bench->choice[old[0]].stock->cost + bench->choice[old[1]].stock->cost;
    best.sticks = 2;
    release(bench, draft, a);
    release(bench, draft, b);
    bool better = false;
    /* The first item stays in the first stick: the other half of the masks only swaps the two. */
    for (unsigned mask = 0; mask < 1U << best.count; mask += 2)
        better = try_mask(bench, draft, &best, mask) || better;
    if (better) {
        apply(bench, draft, a, b, &best);
        return true;
    }
    take(bench, draft, a, old[0]);
    take(bench, draft, b, old[1]);
    return false;
}

void improve_pairs(const struct bench *bench, struct draft *draft)
{
    if (!draft->whole || draft->bin_count > MOST_PAIR_BINS)
        return;
    bool better = true;
    for (int round = 0; better && round < MOST_ROUNDS; round++) {
        better = false;
        for (size_t a = 0; a < draft->bin_count; a++)
            for (size_t b = a + 1; b < draft->bin_count; b++)
                better = improve_pair(bench, draft, a, b) || better;
    }
}
