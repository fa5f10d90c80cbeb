/* cut_solve(): drafts, improvement, search, bound; then the plan as people read it. */
#include <stdlib.h>
#include <string.h>

#include "cut_internal.h"

static const char *const PROVED = "proved optimal";
static const char *const BEST = "best found";
static const char *const INFEASIBLE = "infeasible";

static const struct cut_stock *longest_stock(const struct cut_problem *problem)
{
    const struct cut_stock *longest = NULL;
    for (size_t i = 0; i < problem->stock_count; i++)
        if (!longest || stock_room(problem, &problem->stock[i]) > stock_room(problem, longest))
            longest = &problem->stock[i];
    return longest;
}

static bool has_pieces(const struct cut_problem *problem)
{
    for (size_t i = 0; i < problem->piece_count; i++)
        if (problem->piece[i].count > 0)
            return true;
    return false;
}

static bool report_too_long(struct arena *arena, const struct cut_problem *problem, const struct place *at,
                            struct diags *diags)
{
    const struct cut_stock *longest = longest_stock(problem);
    if (!longest) {
        if (has_pieces(problem))
            diag_add(diags, DIAG_P001, at, "no price row with a length sells '%s', and the shop has none",
                     problem->member);
        return has_pieces(problem);
    }
    bool found = false;
    length_t room = stock_room(problem, longest), usable = room > 0 ? room - problem->kerf : 0;
    for (size_t i = 0; i < problem->piece_count; i++) {
        const struct cut_piece *piece = &problem->piece[i];
        if (piece->count <= 0 || piece->length <= usable)
            continue;
        found = true;
        diag_add(diags, DIAG_T001, at,
                 "piece '%s' of '%s' is %s long; the longest stock is %s, of which %s can be used: nothing is spliced",
                 piece->label, problem->member, length_tape(arena, piece->length), length_tape(arena, longest->length),
                 length_tape(arena, usable));
    }
    return found;
}

/* Shop stock first, then the longest; sticks cut alike stand together; the longest pieces come first. */
static int compare_sticks(const void *left, const void *right)
{
    const struct cut_stick *a = left, *b = right;
    bool shop_a = !a->stock->price, shop_b = !b->stock->price;
    if (shop_a != shop_b)
        return shop_a ? -1 : 1;
    if (a->stock->length != b->stock->length)
        return a->stock->length > b->stock->length ? -1 : 1;
    if (a->stock != b->stock)
        return a->stock < b->stock ? -1 : 1;
    for (size_t i = 0; i < a->part_count && i < b->part_count; i++) {
        if (a->part[i].length != b->part[i].length)
            return a->part[i].length > b->part[i].length ? -1 : 1;
        int order = strcmp(a->part[i].label, b->part[i].label);
        if (order != 0)
            return order;
    }
    return (a->part_count < b->part_count) - (a->part_count > b->part_count);
}

static void fill_sticks(const struct prepared *prepared, const struct draft *draft, struct cut_plan *plan)
{
    plan->stick_count = draft->bin_count;
    plan->stick = arena_array(prepared->arena, draft->bin_count, sizeof *plan->stick);
    for (size_t i = 0; i < draft->bin_count; i++)
        plan->stick[i].stock = prepared->choice[draft->bin[i].choice].stock;
    for (size_t i = 0; i < prepared->item_count; i++)
        plan->stick[draft->bin_of[i]].part_count++;
    for (size_t i = 0; i < draft->bin_count; i++) {
        plan->stick[i].part = arena_array(prepared->arena, plan->stick[i].part_count, sizeof *plan->stick[i].part);
        plan->stick[i].part_count = 0;
    }
    for (size_t i = 0; i < prepared->item_count; i++) {
        struct cut_stick *stick = &plan->stick[draft->bin_of[i]];
        const struct cut_piece *piece = &prepared->problem->piece[prepared->item[i].piece];
        stick->part[stick->part_count++] = (struct cut_part){piece->label, piece->length};
    }
}

/* Wood of one stick: net, trim, kerf, cutoff.  A rest no wider than the blade is all sawdust; no rest needs no cut. */
static void measure_stick(const struct cut_problem *problem, struct cut_stick *stick, struct cut_plan *plan)
{
    length_t net = 0, trim = stick->stock->price ? problem->end_trim : 0;
    for (size_t i = 0; i < stick->part_count; i++)
        net += stick->part[i].length;
    length_t kerf = (length_t)(stick->part_count - 1) * problem->kerf;
    length_t rest = stick->stock->length - trim - net - kerf;
    stick->left = rest > problem->kerf ? rest - problem->kerf : 0;
    plan->net += net;
    plan->trim_lost += trim;
    plan->kerf_lost += kerf + rest - stick->left;
    plan->left += stick->left;
    plan->bought += stick->stock->length;
    plan->cost += stick->stock->cost;
}

static void finish(const struct prepared *prepared, const struct draft *draft, money_t bound, struct cut_plan *plan)
{
    fill_sticks(prepared, draft, plan);
    for (size_t i = 0; i < plan->stick_count; i++)
        measure_stick(prepared->problem, &plan->stick[i], plan);
    if (plan->stick_count > 1)
        qsort(plan->stick, plan->stick_count, sizeof *plan->stick, compare_sticks);
    plan->bound = bound;
    plan->verdict = plan->bound == plan->cost ? PROVED : BEST;
}

struct cut_plan *cut_solve(struct arena *arena, const struct cut_problem *problem, const struct place *at,
                           struct diags *diags)
{
    struct cut_plan *plan = arena_alloc(arena, sizeof *plan);
    plan->problem = problem;
    plan->verdict = INFEASIBLE;
    if (!at && problem->at.file)
        at = &problem->at;
    if (report_too_long(arena, problem, at, diags))
        return plan;
    struct prepared *prepared = problem_prepare(arena, problem);
    struct draft *best = draft_new(prepared);
    pack_all(prepared, best);
    improve_pairs(prepared, best);
    money_t bound = bound_cost(prepared);
    bool proved = search_all(prepared, best, bound);
    if (best->whole) {
        finish(prepared, best, proved ? best->cost : bound, plan);
        return plan;
    }
    diag_add(diags, DIAG_T001, at,
             "the pieces of '%s' need more stock of their length than the shop has, and no price row sells it",
             problem->member);
    return plan;
}
