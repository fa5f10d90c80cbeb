/* Drafts of a plan: which item lies in which stick, and what that costs. */
#include "cut_internal.h"

struct draft *draft_new(const struct prepared *prepared)
{
    struct draft *draft = arena_alloc(prepared->arena, sizeof *draft);
    draft->bin_of = arena_array(prepared->arena, prepared->item_count, sizeof *draft->bin_of);
    draft->bin = arena_array(prepared->arena, prepared->item_count, sizeof *draft->bin);
    draft->taken = arena_array(prepared->arena, prepared->choice_count, sizeof *draft->taken);
    return draft;
}

void draft_clear(const struct prepared *prepared, struct draft *draft)
{
    draft->bin_count = 0;
    draft->cost = 0;
    draft->whole = false;
    for (size_t i = 0; i < prepared->choice_count; i++)
        draft->taken[i] = 0;
}

void draft_copy(const struct prepared *prepared, struct draft *to, const struct draft *from)
{
    to->bin_count = from->bin_count;
    to->cost = from->cost;
    to->whole = from->whole;
    for (size_t i = 0; i < prepared->item_count; i++)
        to->bin_of[i] = from->bin_of[i];
    for (size_t i = 0; i < from->bin_count; i++)
        to->bin[i] = from->bin[i];
    for (size_t i = 0; i < prepared->choice_count; i++)
        to->taken[i] = from->taken[i];
}

size_t draft_open(const struct prepared *prepared, struct draft *draft, size_t choice)
{
    draft->bin[draft->bin_count] = (struct bin){choice, 0};
    draft->taken[choice]++;
    draft->cost += prepared->choice[choice].stock->cost;
    return draft->bin_count++;
}

void draft_put(const struct prepared *prepared, struct draft *draft, size_t item, size_t bin)
{
    draft->bin_of[item] = bin;
    draft->bin[bin].used += prepared->item[item].size;
}

static length_t longest_cutoff(const struct prepared *prepared, const struct draft *draft)
{
    length_t longest = 0;
    for (size_t i = 0; i < draft->bin_count; i++) {
        length_t left = prepared->choice[draft->bin[i].choice].room - draft->bin[i].used;
        if (left > longest)
            longest = left;
    }
    return longest;
}

bool draft_better(const struct prepared *prepared, const struct draft *a, const struct draft *b)
{
    if (!a->whole || !b->whole)
        return a->whole;
    if (a->cost != b->cost)
        return a->cost < b->cost;
    if (a->bin_count != b->bin_count)
        return a->bin_count < b->bin_count;
    return longest_cutoff(prepared, a) > longest_cutoff(prepared, b);
}
