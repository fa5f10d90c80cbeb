/* A plan re-checked from the problem alone.  Nothing here is shared with the solver: only the public header. */
#include <string.h>

#include "sawbill/cut.h"

static bool same_part(const struct cut_part *part, const char *label, length_t length)
{
    return part->length == length && strcmp(part->label, label) == 0;
}

static size_t parts_like(const struct cut_plan *plan, const char *label, length_t length)
{
    size_t count = 0;
    for (size_t i = 0; i < plan->stick_count; i++)
        for (size_t k = 0; k < plan->stick[i].part_count; k++)
            count += same_part(&plan->stick[i].part[k], label, length);
    return count;
}

/* Pieces with one label and length may stand in several rows of the problem. */
static size_t pieces_like(const struct cut_problem *problem, const char *label, length_t length)
{
    size_t count = 0;
    for (size_t i = 0; i < problem->piece_count; i++) {
        const struct cut_piece *piece = &problem->piece[i];
        if (piece->count > 0 && piece->length == length && strcmp(piece->label, label) == 0)
            count += (size_t)piece->count;
    }
    return count;
}

static const char *check_pieces(const struct cut_problem *problem, const struct cut_plan *plan)
{
    size_t wanted = 0, cut = 0;
    for (size_t i = 0; i < problem->piece_count; i++) {
        const struct cut_piece *piece = &problem->piece[i];
        if (piece->count <= 0)
            continue;
        wanted += (size_t)piece->count;
        size_t got = parts_like(plan, piece->label, piece->length);
        size_t want = pieces_like(problem, piece->label, piece->length);
        if (got < want)
            return "a piece is not cut";
        if (got > want)
            return "a piece is cut too often";
    }
    for (size_t i = 0; i < plan->stick_count; i++)
        cut += plan->stick[i].part_count;
    return cut == wanted ? NULL : "a stick holds a piece that nobody asked for";
}

struct sums {
    length_t net, bought, kerf, trim, left;
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
    length_t left = stock->length;
    if (stock->price) {
        left -= problem->end_trim;
        sums->trim += problem->end_trim;
    }
    for (size_t i = 0; i < stick->part_count; i++) {
        if (stick->part[i].length > left)
            return "a stick is too short for its pieces";
        left -= stick->part[i].length;
        sums->net += stick->part[i].length;
        length_t saw = left < problem->kerf ? left : problem->kerf;
        if (saw < problem->kerf && i + 1 < stick->part_count)
            return "a stick is too short for its pieces";
        left -= saw;
        sums->kerf += saw;
    }
    if (left != stick->left)
        return "a cutoff is wrong";
    sums->left += left;
    sums->bought += stock->length;
    sums->cost += stock->cost;
    return NULL;
}

static const char *check_supply(const struct cut_problem *problem, const struct cut_plan *plan)
{
    for (size_t i = 0; i < problem->stock_count; i++) {
        size_t used = 0;
        for (size_t k = 0; k < plan->stick_count; k++)
            used += plan->stick[k].stock == &problem->stock[i];
        if (problem->stock[i].supply > 0 && used > (size_t)problem->stock[i].supply)
            return "more of a stock is used than there is";
    }
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

const char *cut_verify(const struct cut_problem *problem, const struct cut_plan *plan)
{
    if (plan->problem != problem)
        return "the plan is of another problem";
    if (strcmp(plan->verdict, "infeasible") == 0)
        return plan->stick_count == 0 && plan->cost == 0 ? NULL : "an infeasible plan that buys something";
    const char *fault = check_pieces(problem, plan);
    struct sums sums = {0};
    for (size_t i = 0; i < plan->stick_count && !fault; i++)
        fault = check_stick(problem, &plan->stick[i], &sums);
    if (!fault)
        fault = check_supply(problem, plan);
    if (fault)
        return fault;
    if (sums.cost != plan->cost)
        return "the cost is not the sum of the sticks";
    if (sums.net != plan->net || sums.bought != plan->bought || sums.kerf != plan->kerf_lost ||
        sums.trim != plan->trim_lost || sums.left != plan->left)
        return "the lengths do not add up";
    if (plan->bought != plan->net + plan->kerf_lost + plan->trim_lost + plan->left)
        return "the lengths do not add up";
    return check_verdict(plan);
}
