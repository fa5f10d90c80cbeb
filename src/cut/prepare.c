/* The problem made ready for search: items longest first, stock that is of use. */
#include <stdlib.h>

#include "cut_internal.h"

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

static void add_items(struct prepared *prepared)
{
    const struct cut_problem *problem = prepared->problem;
    size_t count = 0;
    for (size_t i = 0; i < problem->piece_count; i++)
        count += problem->piece[i].count > 0 ? (size_t)problem->piece[i].count : 0;
    prepared->item = arena_array(prepared->arena, count, sizeof *prepared->item);
    for (size_t i = 0; i < problem->piece_count; i++)
        for (int k = 0; k < problem->piece[i].count; k++)
            prepared->item[prepared->item_count++] = (struct item){i, problem->piece[i].length + problem->kerf};
    if (count > 1)
        qsort(prepared->item, count, sizeof *prepared->item, compare_items);
}

/* A stock is of no use when another, as many as wanted, is no shorter and costs no more. */
static bool is_dominated(const struct prepared *prepared, size_t at)
{
    const struct choice *a = &prepared->choice[at];
    for (size_t i = at + 1; i < prepared->choice_count; i++)
        if (prepared->choice[i].supply == 0 && prepared->choice[i].room > a->room &&
            prepared->choice[i].stock->cost <= a->stock->cost)
            return true;
    for (size_t i = at; i-- > 0 && prepared->choice[i].room == a->room;)
        if (prepared->choice[i].supply == 0 && prepared->choice[i].stock->cost <= a->stock->cost)
            return true;
    return false;
}

static void add_choices(struct prepared *prepared)
{
    const struct cut_problem *problem = prepared->problem;
    prepared->choice = arena_array(prepared->arena, problem->stock_count, sizeof *prepared->choice);
    for (size_t i = 0; i < problem->stock_count; i++) {
        const struct cut_stock *stock = &problem->stock[i];
        length_t room = stock_room(problem, stock);
        if (room > 0)
            prepared->choice[prepared->choice_count++] = (struct choice){stock, room, stock->supply};
    }
    if (prepared->choice_count > 1)
        qsort(prepared->choice, prepared->choice_count, sizeof *prepared->choice, compare_choices);
    bool *useless = arena_array(prepared->arena, prepared->choice_count, sizeof *useless);
    for (size_t i = 0; i < prepared->choice_count; i++)
        useless[i] = is_dominated(prepared, i);
    size_t kept = 0;
    for (size_t i = 0; i < prepared->choice_count; i++)
        if (!useless[i])
            prepared->choice[kept++] = prepared->choice[i];
    prepared->choice_count = kept;
}

struct prepared *problem_prepare(struct arena *arena, const struct cut_problem *problem)
{
    struct prepared *prepared = arena_alloc(arena, sizeof *prepared);
    prepared->arena = arena;
    prepared->problem = problem;
    add_items(prepared);
    add_choices(prepared);
    return prepared;
}

long choice_cheapest(const struct prepared *prepared, const struct draft *draft, length_t size)
{
    long best = NO_CHOICE;
    for (size_t i = 0; i < prepared->choice_count; i++) {
        const struct choice *choice = &prepared->choice[i];
        if (choice->room < size || (choice->supply > 0 && draft->taken[i] >= choice->supply))
            continue;
        if (best == NO_CHOICE || choice->stock->cost <= prepared->choice[best].stock->cost)
            best = (long)i;
    }
    return best;
}
