/* The problem made ready: items longest first, stock that is of use, drafts. */
#include <stdlib.h>
#include <string.h>

#include "bench.h"

length_t stock_room(const struct cut_problem *problem, const struct cut_stock *stock)
{
    length_t usable = stock->length - (stock->price ? problem->end_trim : 0);
    return usable > 0 ? usable + problem->kerf : 0;
}

static int compare_items(const void *left, const void *right)
{
    const struct item *a = left, *b = right;
    if (a->size != b->size)
        return a->size > b->size ? -1 : 1;
    return (a->piece > b->piece) - (a->piece < b->piece);
}

static int compare_choices(const void *left, const void *right)
{
    const struct choice *a = left, *b = right;
    if (a->room != b->room)
        return a->room < b->room ? -1 : 1;
    if (a->stock->cost != b->stock->cost)
        return a->stock->cost < b->stock->cost ? -1 : 1;
    return (a->stock > b->stock) - (a->stock < b->stock);
}

static void add_items(struct bench *bench)
{
    const struct cut_problem *problem = bench->problem;
    size_t count = 0;
    for (size_t i = 0; i < problem->piece_count; i++)
        count += problem->piece[i].count > 0 ? (size_t)problem->piece[i].count : 0;
    bench->item = arena_array(bench->arena, count, sizeof *bench->item);
    for (size_t i = 0; i < problem->piece_count; i++)
        for (int k = 0; k < problem->piece[i].count; k++)
            bench->item[bench->item_count++] = (struct item){i, problem->piece[i].length + problem->kerf};
    if (count > 1)
        qsort(bench->item, count, sizeof *bench->item, compare_items);
}

/* A stock is of no use when another, as many as wanted, is no shorter and costs no more. */
static bool is_dominated(const struct bench *bench, size_t at)
{
    const struct choice *a = &bench->choice[at];
    for (size_t i = at + 1; i < bench->choice_count; i++)
        if (bench->choice[i].supply == 0 && bench->choice[i].room > a->room &&
            bench->choice[i].stock->cost <= a->stock->cost)
            return true;
    for (size_t i = at; i-- > 0 && bench->choice[i].room == a->room;)
        if (bench->choice[i].supply == 0 && bench->choice[i].stock->cost <= a->stock->cost)
            return true;
    return false;
}

static void add_choices(struct bench *bench)
{
    const struct cut_problem *problem = bench->problem;
    bench->choice = arena_array(bench->arena, problem->stock_count, sizeof *bench->choice);
    for (size_t i = 0; i < problem->stock_count; i++) {
        const struct cut_stock *stock = &problem->stock[i];
        length_t room = stock_room(problem, stock);
        if (room > 0)
            bench->choice[bench->choice_count++] = (struct choice){stock, room, stock->supply};
    }
    if (bench->choice_count > 1)
        qsort(bench->choice, bench->choice_count, sizeof *bench->choice, compare_choices);
    bool *useless = arena_array(bench->arena, bench->choice_count, sizeof *useless);
    for (size_t i = 0; i < bench->choice_count; i++)
        useless[i] = is_dominated(bench, i);
    size_t kept = 0;
    for (size_t i = 0; i < bench->choice_count; i++)
        if (!useless[i])
            bench->choice[kept++] = bench->choice[i];
    bench->choice_count = kept;
}

struct bench *bench_new(struct arena *arena, const struct cut_problem *problem)
{
    struct bench *bench = arena_alloc(arena, sizeof *bench);
    bench->arena = arena;
    bench->problem = problem;
    add_items(bench);
    add_choices(bench);
    return bench;
}

long bench_cheapest(const struct bench *bench, const struct draft *draft, length_t size)
{
    long best = NO_CHOICE;
    for (size_t i = 0; i < bench->choice_count; i++) {
        const struct choice *choice = &bench->choice[i];
        if (choice->room < size || (choice->supply > 0 && draft->taken[i] >= choice->supply))
            continue;
        if (best == NO_CHOICE || choice->stock->cost <= bench->choice[best].stock->cost)
            best = (long)i;
    }
    return best;
}

struct draft *draft_new(const struct bench *bench)
{
    struct draft *draft = arena_alloc(bench->arena, sizeof *draft);
    draft->bin_of = arena_array(bench->arena, bench->item_count, sizeof *draft->bin_of);
    draft->bin = arena_array(bench->arena, bench->item_count, sizeof *draft->bin);
    draft->taken = arena_array(bench->arena, bench->choice_count, sizeof *draft->taken);
    return draft;
}

void draft_clear(const struct bench *bench, struct draft *draft)
{
    draft->bin_count = 0;
    draft->cost = 0;
    draft->whole = false;
    for (size_t i = 0; i < bench->choice_count; i++)
        draft->taken[i] = 0;
}

void draft_copy(const struct bench *bench, struct draft *to, const struct draft *from)
{
    to->bin_count = from->bin_count;
    to->cost = from->cost;
    to->whole = from->whole;
    for (size_t i = 0; i < bench->item_count; i++)
        to->bin_of[i] = from->bin_of[i];
    for (size_t i = 0; i < from->bin_count; i++)
        to->bin[i] = from->bin[i];
    for (size_t i = 0; i < bench->choice_count; i++)
        to->taken[i] = from->taken[i];
}

size_t draft_open(const struct bench *bench, struct draft *draft, size_t choice)
{
    draft->bin[draft->bin_count] = (struct bin){choice, 0};
    draft->taken[choice]++;
    draft->cost += bench->choice[choice].stock->cost;
    return draft->bin_count++;
}

void draft_put(const struct bench *bench, struct draft *draft, size_t item, size_t bin)
{
    draft->bin_of[item] = bin;
    draft->bin[bin].used += bench->item[item].size;
}

static length_t longest_cutoff(const struct bench *bench, const struct draft *draft)
{
    length_t longest = 0;
    for (size_t i = 0; i < draft->bin_count; i++) {
        length_t left = bench->choice[draft->bin[i].choice].room - draft->bin[i].used;
        if (left > longest)
            longest = left;
    }
    return longest;
}

bool draft_better(const struct bench *bench, const struct draft *a, const struct draft *b)
{
    if (!a->whole || !b->whole)
        return a->whole;
    if (a->cost != b->cost)
        return a->cost < b->cost;
    if (a->bin_count != b->bin_count)
        return a->bin_count < b->bin_count;
    return longest_cutoff(bench, a) > longest_cutoff(bench, b);
}
