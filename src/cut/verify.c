/* A plan re-checked from the problem alone.  Nothing here is shared with the solver: only the public header. */
#include "verify.h"

#include <stdlib.h>
#include <string.h>

length_t verify_usable(const struct cut_problem *problem, const struct cut_stock *stock)
{
    int ends = problem->both_ends ? 2 : 1;
    if (stock->has_trim)
        return stock->length - ends * stock->trim;
    return stock->price ? stock->length - ends * problem->end_trim : stock->length;
}

static const struct cut_joints *find_joints(const struct cut_problem *problem, size_t piece, size_t *row)
{
    for (*row = 0; *row < problem->joints_count; ++*row)
        if (problem->joints[*row].piece == piece)
            return &problem->joints[*row];
    return NULL;
}

struct due *verify_due(struct arena *arena, const struct cut_problem *problem, const unsigned *mask, size_t *count)
{
    size_t room = 0, row;
    for (size_t i = 0; i < problem->piece_count; i++) {
        const struct cut_joints *joints = find_joints(problem, i, &row);
        room += 1 + (joints ? joints->count : 0);
    }
    struct due *due = arena_array(arena, room, sizeof *due);
    *count = 0;
    for (size_t i = 0; i < problem->piece_count; i++) {
        const struct cut_piece *piece = &problem->piece[i];
        const struct cut_joints *joints = find_joints(problem, i, &row);
        size_t first = *count;
        length_t last = 0;
        if (piece->count <= 0)
            continue;
        for (size_t k = 0; joints && mask && k < joints->count; k++) {
            if (!(mask[row] & 1U << k))
                continue;
            due[(*count)++] = (struct due){.piece = i, .length = joints->at[k] - last, .count = piece->count};
            last = joints->at[k];
        }
        due[(*count)++] = (struct due){.piece = i, .length = piece->length - last, .count = piece->count};
        for (size_t k = first; k < *count; k++) {
            due[k].part = (int)(k - first) + 1;
            due[k].parts = (int)(*count - first);
        }
    }
    return due;
}

/* One piece as its label and length say it, wanted or cut. */
struct named {
    const char *label;
    length_t length;
};

static int compare_named(const void *left, const void *right)
{
    const struct named *a = left, *b = right;
    if (a->length != b->length)
        return a->length < b->length ? -1 : 1;
    return strcmp(a->label, b->label);
}

static struct named *name_wanted(struct arena *arena, const struct cut_problem *problem, const struct cut_plan *plan,
                                 size_t *count)
{
    size_t rows, total = 0;
    struct due *due = verify_due(arena, problem, plan->joined, &rows);
    for (size_t i = 0; i < rows; i++)
        total += (size_t)due[i].count;
    struct named *named = arena_array(arena, total, sizeof *named);
    *count = 0;
    for (size_t i = 0; i < rows; i++) {
        const char *label = problem->piece[due[i].piece].label;
        if (due[i].parts > 1)
            label = arena_printf(arena, "%s, part %d of %d", label, due[i].part, due[i].parts);
        for (int k = 0; k < due[i].count; k++)
            named[(*count)++] = (struct named){label, due[i].length};
    }
    if (total > 1)
        qsort(named, total, sizeof *named, compare_named);
    return named;
}

static struct named *name_cut(struct arena *arena, const struct cut_plan *plan, size_t *count)
{
    size_t total = 0;
    for (size_t i = 0; i < plan->stick_count; i++)
        total += plan->stick[i].part_count;
    struct named *named = arena_array(arena, total, sizeof *named);
    *count = 0;
    for (size_t i = 0; i < plan->stick_count; i++)
        for (size_t k = 0; k < plan->stick[i].part_count; k++)
            named[(*count)++] = (struct named){plan->stick[i].part[k].label, plan->stick[i].part[k].length};
    if (total > 1)
        qsort(named, total, sizeof *named, compare_named);
    return named;
}

static bool is_wanted(const struct named *wanted, size_t count, const struct named *piece)
{
    return bsearch(piece, wanted, count, sizeof *wanted, compare_named) != NULL;
}

/* Both in one order: what is short, what is too much, what nobody asked for. */
static const char *check_pieces(struct arena *arena, const struct cut_problem *problem, const struct cut_plan *plan)
{
    size_t wants, cuts, i = 0, k = 0;
    const char *fault = NULL;
    const struct named *want = name_wanted(arena, problem, plan, &wants);
    const struct named *cut = name_cut(arena, plan, &cuts);
    while (i < wants || k < cuts) {
        int order = i == wants ? 1 : k == cuts ? -1 : compare_named(&want[i], &cut[k]);
        if (order < 0)
            return "a piece is not cut";
        if (order > 0 && !fault)
            fault = is_wanted(want, wants, &cut[k]) ? "a piece is cut too often"
                                                    : "a stick holds a piece that nobody asked for";
        i += order <= 0;
        k += order >= 0;
    }
    return fault;
}

struct sums {
    length_t net, bought, kerf, trim, left, kept;
    money_t cost;
};

/* Walks along one stick with the saw. */
static const char *check_stick(const struct cut_problem *problem, const struct cut_stick *stick, struct sums *sums)
{
    const struct cut_stock *stock = stick->stock;
    if (!stock || stock < problem->stock || stock >= problem->stock + problem->stock_count)
        return "a stick is of stock that is not offered";
    if (stick->part_count == 0)
        return "a stick without a piece";
    length_t left = verify_usable(problem, stock);
    sums->trim += stock->length - left;
    for (size_t i = 0; i < stick->part_count; i++) {
        if (stick->part[i].length > left)
            return "a stick is too short for its pieces";
        left -= stick->part[i].length;
        sums->net += stick->part[i].length;
        length_t saw = left < problem->kerf ? left : problem->kerf;
        if (saw < problem->kerf && (i + 1 < stick->part_count || problem->square_both_ends))
            return "a stick is too short for its pieces";
        left -= saw;
        sums->kerf += saw;
    }
    if (left != stick->left)
        return "a cutoff is wrong";
    sums->left += left;
    sums->kept += left >= problem->least_cutoff ? left : 0;
    sums->bought += stock->length;
    sums->cost += stock->cost;
    return NULL;
}

static const char *check_order(const struct cut_stick *stick)
{
    for (size_t i = 1; i < stick->part_count; i++)
        if (stick->part[i].length > stick->part[i - 1].length)
            return "a longer piece is cut after a shorter one";
    return NULL;
}

static const char *check_supply(struct arena *arena, const struct cut_problem *problem, const struct cut_plan *plan)
{
    size_t *used = arena_array(arena, problem->stock_count, sizeof *used);
    for (size_t i = 0; i < plan->stick_count; i++)
        used[plan->stick[i].stock - problem->stock]++;
    for (size_t i = 0; i < problem->stock_count; i++)
        if (problem->stock[i].supply > 0 && used[i] > (size_t)problem->stock[i].supply)
            return "more of a stock is used than there is";
    return NULL;
}

static const char *check_verdict(const struct cut_plan *plan)
{
    if (plan->bound < 0 || plan->bound > plan->cost)
        return "the bound is above the cost";
    bool equal = plan->bound == plan->cost;
    if (strcmp(plan->verdict, equal ? "proved optimal" : "best found") != 0)
        return "the verdict does not follow from cost and bound";
    return NULL;
}

static const char *check_sums(const struct cut_plan *plan, const struct sums *sums)
{
    if (sums->cost != plan->cost)
        return "the cost is not the sum of the sticks";
    if (sums->net != plan->net || sums->bought != plan->bought || sums->kerf != plan->kerf_lost ||
        sums->trim != plan->trim_lost || sums->left != plan->left || sums->kept != plan->kept)
        return "the lengths do not add up";
    if (plan->bought != plan->net + plan->kerf_lost + plan->trim_lost + plan->left)
        return "the lengths do not add up";
    return NULL;
}

static const char *check_all(struct arena *arena, const struct cut_problem *problem, const struct cut_plan *plan)
{
    const char *fault = check_pieces(arena, problem, plan);
    struct sums sums = {0};
    for (size_t i = 0; i < plan->stick_count && !fault; i++)
        fault = check_stick(problem, &plan->stick[i], &sums);
    for (size_t i = 0; i < plan->stick_count && !fault; i++)
        fault = check_order(&plan->stick[i]);
    if (!fault)
        fault = check_supply(arena, problem, plan);
    if (!fault)
        fault = check_sums(plan, &sums);
    if (!fault)
        fault = check_verdict(plan);
    return fault ? fault : verify_bound(arena, problem, plan);
}

/* The work space ran out: given back, and the caller's own hook is called (it does not return). */
struct space {
    struct arena *parent, *own;
};
static void give_up(void *owner)
{
    struct space *space = owner;
    struct arena *parent = space->parent;
    arena_free(space->own);
    (void)arena_array(parent, SIZE_MAX, 2);
}

const char *cut_verify(struct arena *arena, const struct cut_problem *problem, const struct cut_plan *plan)
{
    if (plan->problem != problem)
        return "the plan is of another problem";
    if (strcmp(plan->verdict, "infeasible") == 0)
        return plan->stick_count == 0 && plan->cost == 0 ? NULL : "an infeasible plan that buys something";
    struct space space = {.parent = arena};
    space.own = arena_new(0, give_up, &space);
    if (!space.own)
        give_up(&space);
    const char *fault = check_all(space.own, problem, plan);
    arena_free(space.own);
    return fault;
}
