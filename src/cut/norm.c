/* The form made ready: equal lengths merged, useless stock dropped, lengths divided by their common divisor. */
#include <stdlib.h>

#include "work.h"

struct entry {
    int64_t length, cost, supply; /* cost: of a type, unused */
    int index;
};

static int longest_first(const void *left, const void *right)
{
    const struct entry *a = left, *b = right;
    if (a->length != b->length)
        return a->length > b->length ? -1 : 1;
    return (a->index > b->index) - (a->index < b->index);
}

static int shortest_first(const void *left, const void *right)
{
    const struct entry *a = left, *b = right;
    if (a->length != b->length)
        return a->length < b->length ? -1 : 1;
    if (a->cost != b->cost)
        return a->cost < b->cost ? -1 : 1;
    return (a->index > b->index) - (a->index < b->index);
}

static int64_t common_divisor(int64_t a, int64_t b)
{
    while (b != 0) {
        int64_t rest = a % b;
        a = b;
        b = rest;
    }
    return a;
}

static void add_types(struct norm *norm, struct arena *arena, const struct form *form)
{
    struct entry *entry = arena_array(arena, form->type_count, sizeof *entry);
    size_t count = 0;
    for (size_t i = 0; i < form->type_count; i++) {
        norm->type_of[i] = -1;
        if (form->type[i].demand > 0)
            entry[count++] = (struct entry){.length = form->type[i].length, .index = (int)i};
    }
    if (count > 1)
        qsort(entry, count, sizeof *entry, longest_first);
    norm->length = arena_array(arena, count, sizeof(int64_t));
    norm->demand = arena_array(arena, count, sizeof(int64_t));
    for (size_t i = 0; i < count; i++) {
        if (i == 0 || entry[i].length != entry[i - 1].length)
            norm->length[norm->types++] = entry[i].length;
        norm->type_of[entry[i].index] = norm->types - 1;
        norm->demand[norm->types - 1] += form->type[entry[i].index].demand;
        norm->pieces += form->type[entry[i].index].demand;
    }
}

/* Another stock, endless, is no shorter and costs no more.  Of equal twins the first stays. */
static bool is_useless(const struct entry *entry, size_t count, size_t at)
{
    for (size_t i = 0; i < count; i++) {
        if (i == at || entry[i].supply != FORM_ENDLESS || entry[i].length < entry[at].length ||
            entry[i].cost > entry[at].cost)
            continue;
        bool twin =
            entry[i].length == entry[at].length && entry[i].cost == entry[at].cost && entry[at].supply == FORM_ENDLESS;
        if (!twin || i < at)
            return true;
    }
    return false;
}

/* A supply of a stick for every piece has no end. */
static size_t list_stocks(const struct norm *norm, const struct form *form, struct entry *entry)
{
    size_t count = 0;
    for (size_t i = 0; i < form->stock_count; i++) {
        const struct form_stock *stock = &form->stock[i];
        if (stock->supply != 0 && norm->types > 0 && stock->length >= norm->length[norm->types - 1])
            entry[count++] = (struct entry){stock->length, stock->cost,
                                            stock->supply >= norm->pieces ? FORM_ENDLESS : stock->supply, (int)i};
    }
    if (count > 1)
        qsort(entry, count, sizeof *entry, shortest_first);
    return count;
}

static void add_stock(struct norm *norm, const struct entry *entry)
{
    norm->room[norm->stocks] = entry->length;
    norm->cost[norm->stocks] = entry->cost;
    norm->supply[norm->stocks] = entry->supply;
    norm->divisor = common_divisor(norm->divisor, entry->cost);
    if (entry->cost > norm->most_cost)
        norm->most_cost = entry->cost;
    norm->stocks++;
}

/* Stocks that are equal but for their supply are one. */
static void add_stocks(struct norm *norm, struct arena *arena, const struct form *form)
{
    struct entry *entry = arena_array(arena, form->stock_count, sizeof *entry);
    size_t count = list_stocks(norm, form, entry);
    norm->room = arena_array(arena, count + 1, sizeof(int64_t));
    norm->cost = arena_array(arena, count + 1, sizeof(int64_t));
    norm->supply = arena_array(arena, count + 1, sizeof(int64_t));
    norm->most_cost = 1;
    for (size_t i = 0; i < form->stock_count; i++)
        norm->stock_of[i] = -1;
    for (size_t i = 0; i < count; i++) {
        if (is_useless(entry, count, i))
            continue;
        int last = norm->stocks - 1;
        if (last >= 0 && norm->room[last] == entry[i].length && norm->cost[last] == entry[i].cost) {
            norm->supply[last] += entry[i].supply; /* both have an end: an endless twin makes the other useless */
            norm->stock_of[entry[i].index] = last;
            continue;
        }
        norm->stock_of[entry[i].index] = norm->stocks;
        add_stock(norm, &entry[i]);
    }
}

/* One stock more, as dear as all the others together, so that there is always a plan; one that uses it says that there
 * is none without. */
static void add_penalty(struct norm *norm)
{
    int64_t most = norm->divisor;
    for (int s = 0; s < norm->stocks; s++)
        most += norm->cost[s] * (norm->supply[s] == FORM_ENDLESS ? norm->pieces : norm->supply[s]);
    norm->no_plan = most;
    norm->penalty = norm->stocks;
    norm->room[norm->stocks] = norm->length[0];
    norm->cost[norm->stocks] = most;
    norm->supply[norm->stocks] = FORM_ENDLESS;
    norm->stocks++;
}

static void divide_lengths(struct norm *norm)
{
    int64_t divisor = norm->length[0]; /* there is a type, and its length is not 0 */
    for (int i = 1; i < norm->types; i++)
        divisor = common_divisor(divisor, norm->length[i]);
    for (int i = 0; i < norm->types; i++)
        norm->length[i] /= divisor;
    for (int s = 0; s < norm->stocks; s++)
        norm->room[s] /= divisor; /* rounded down: no sum of pieces lies between */
}

void norm_make(struct norm *norm, struct arena *arena, const struct form *form)
{
    *norm = (struct norm){.penalty = -1, .no_plan = NO_COST, .most_in_stick = 1};
    norm->type_of = arena_array(arena, form->type_count, sizeof(int));
    norm->stock_of = arena_array(arena, form->stock_count, sizeof(int));
    add_types(norm, arena, form);
    add_stocks(norm, arena, form);
    if (norm->divisor == 0)
        norm->divisor = 1;
    if (norm->types == 0)
        return;
    add_penalty(norm);
    divide_lengths(norm);
    for (int s = 0; s < norm->stocks; s++) {
        int64_t fit = norm->room[s] / norm->length[norm->types - 1];
        norm->most_in_stick = fit > norm->most_in_stick ? fit : norm->most_in_stick;
    }
    if (norm->most_in_stick > norm->pieces)
        norm->most_in_stick = norm->pieces;
}

int64_t norm_scale(const struct norm *norm, int64_t price)
{
    int64_t scale = (int64_t)1 << 40;
    wide_t most = (wide_t)price * norm->most_in_stick;
    while (scale > 1 && scale * most > (wide_t)1 << 60)
        scale /= 2;
    return scale;
}
