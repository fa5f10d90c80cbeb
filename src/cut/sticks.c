/* The plan as people read and cut it: labels, the order of work, and where the wood goes. */
#include <stdlib.h>
#include <string.h>

#include "cut_internal.h"
#include "sawbill/wide.h"

/* A rest no wider than the blade is all sawdust; no rest needs no cut. */
void measure_stick(const struct cut_problem *problem, struct cut_stick *stick, length_t length[CUT_SHARES])
{
    length_t net = 0, trim = stock_trim(problem, stick->stock);
    for (size_t i = 0; i < stick->part_count; i++)
        net += stick->part[i].length;
    length_t kerf = (length_t)(stick->part_count - 1) * problem->kerf;
    length_t rest = stick->stock->length - trim - net - kerf;
    stick->left = rest > problem->kerf ? rest - problem->kerf : 0;
    bool kept = stick->left > 0 && stick->left >= problem->least_cutoff;
    length[SHARE_NET] = net;
    length[SHARE_KERF] = kerf + rest - stick->left;
    length[SHARE_TRIM] = trim;
    length[SHARE_KEPT] = kept ? stick->left : 0;
    length[SHARE_WASTE] = kept ? 0 : stick->left;
}

struct cut_shares cut_shares(const struct cut_plan *plan)
{
    struct cut_shares shares = {{0}, {0}};
    for (size_t i = 0; i < plan->stick_count; i++) {
        struct cut_stick stick = plan->stick[i];
        length_t length[CUT_SHARES];
        measure_stick(plan->problem, &stick, length);
        money_t rest = stick.stock->cost;
        for (int share = SHARE_NET; share < CUT_SHARES; share++) {
            shares.length[share] += length[share];
            if (share == SHARE_NET)
                continue;
            money_t part = (money_t)divide_round((wide_t)stick.stock->cost * length[share], stick.stock->length);
            shares.money[share] += part;
            rest -= part;
        }
        shares.money[SHARE_NET] += rest;
    }
    return shares;
}

/* Shop stock first, then the longest; sticks cut alike stand together, the longest pieces first. */
struct sorted {
    const struct raw_stick *raw;
    const struct cut_stock *stock;
};

static int compare_stock(const struct cut_stock *a, const struct cut_stock *b)
{
    if (cut_is_shop(a) != cut_is_shop(b))
        return cut_is_shop(a) ? -1 : 1;
    if (a->length != b->length)
        return a->length > b->length ? -1 : 1;
    return (a > b) - (a < b);
}

static int compare_sorted(const void *left, const void *right)
{
    const struct sorted *a = left, *b = right;
    int order = compare_stock(a->stock, b->stock);
    for (size_t i = 0; order == 0 && i < a->raw->count && i < b->raw->count; i++)
        order = (a->raw->type[i] > b->raw->type[i]) - (a->raw->type[i] < b->raw->type[i]);
    return order ? order : (a->raw->count < b->raw->count) - (a->raw->count > b->raw->count);
}

static int compare_sticks(const void *left, const void *right)
{
    const struct cut_stick *a = left, *b = right;
    int order = compare_stock(a->stock, b->stock);
    for (size_t i = 0; order == 0 && i < a->part_count && i < b->part_count; i++) {
        if (a->part[i].length != b->part[i].length)
            return a->part[i].length > b->part[i].length ? -1 : 1;
        order = strcmp(a->part[i].label, b->part[i].label);
    }
    return order ? order : (a->part_count < b->part_count) - (a->part_count > b->part_count);
}

/* Labels of each type are handed out in the order of the problem. */
struct labels {
    size_t *next; /* of each type: the row of pieces that is being handed out */
    int *left;    /* of that row */
};

static struct labels labels_new(struct arena *arena, const struct reduced *reduced)
{
    struct labels labels = {arena_array(arena, reduced->type_count, sizeof(size_t)),
                            arena_array(arena, reduced->type_count, sizeof(int))};
    size_t type = reduced->type_count;
    for (size_t i = reduced->piece_count; i-- > 0;) {
        if (i + 1 == reduced->piece_count || reduced->piece[i].length != reduced->piece[i + 1].length)
            type--;
        labels.next[type] = i;
        labels.left[type] = reduced->piece[i].count;
    }
    return labels;
}

static struct cut_part take_label(const struct reduced *reduced, struct labels *labels, size_t type)
{
    size_t row = labels->next[type];
    const struct wanted *piece = &reduced->piece[row];
    if (--labels->left[type] == 0 && row + 1 < reduced->piece_count) {
        labels->next[type] = row + 1;
        labels->left[type] = reduced->piece[row + 1].count;
    }
    return (struct cut_part){piece->label, piece->length};
}

static void fill_stick(struct arena *arena, const struct reduced *reduced, const struct sorted *sorted,
                       struct labels *labels, struct cut_stick *stick)
{
    stick->stock = sorted->stock;
    stick->part_count = sorted->raw->count;
    stick->part = arena_array(arena, stick->part_count, sizeof *stick->part);
    for (size_t i = 0; i < stick->part_count; i++)
        stick->part[i] = take_label(reduced, labels, sorted->raw->type[i]);
}

static void add_up(struct cut_plan *plan)
{
    for (size_t i = 0; i < plan->stick_count; i++) {
        length_t length[CUT_SHARES];
        measure_stick(plan->problem, &plan->stick[i], length);
        plan->net += length[SHARE_NET];
        plan->kerf_lost += length[SHARE_KERF];
        plan->trim_lost += length[SHARE_TRIM];
        plan->kept += length[SHARE_KEPT];
        plan->left += length[SHARE_KEPT] + length[SHARE_WASTE];
        plan->bought += plan->stick[i].stock->length;
        plan->cost += plan->stick[i].stock->cost;
    }
}

void fill_plan(struct arena *arena, const struct reduced *reduced, const struct raw_stick *stick, size_t count,
               struct cut_plan *plan)
{
    struct sorted *sorted = arena_array(arena, count, sizeof *sorted);
    for (size_t i = 0; i < count; i++)
        sorted[i] = (struct sorted){&stick[i], &plan->problem->stock[reduced->stock_of[stick[i].stock]]};
    if (count > 1)
        qsort(sorted, count, sizeof *sorted, compare_sorted);
    struct labels labels = labels_new(arena, reduced);
    plan->stick = arena_array(arena, count, sizeof *plan->stick);
    plan->stick_count = count;
    for (size_t i = 0; i < count; i++)
        fill_stick(arena, reduced, &sorted[i], &labels, &plan->stick[i]);
    if (count > 1)
        qsort(plan->stick, count, sizeof *plan->stick, compare_sticks);
    add_up(plan);
}
