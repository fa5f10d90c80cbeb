/* The cut plans as JSON: all sticks in one list, then each member with what its wood becomes and what else it might
 * have cost. */
#include "json_parts.h"

#include <string.h>

#include "cutoffs.h"

static bool is_infeasible(const struct cut_plan *plan)
{
    return strcmp(plan->verdict, "infeasible") == 0;
}

static const char *stick_from(const struct cut_stock *stock)
{
    if (stock->price)
        return stock->price->supplier;
    return stock->shop ? "shop stock" : NULL;
}

static void add_stick(struct json *json, cJSON *list, const struct cut_plan *plan, const struct cut_stick *stick)
{
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "member", plan->problem->member);
    json_length(json, row, "stock", cut_sold_length(stick->stock));
    json_text(json, row, "from", stick_from(stick->stock));
    json_money(json, row, "cost", stick->stock->cost);
    cJSON *pieces = json_array(json, row, "pieces");
    for (size_t i = 0; i < stick->part_count; i++) {
        cJSON *piece = json_object(json, pieces, NULL);
        json_text(json, piece, "label", stick->part[i].label);
        json_length(json, piece, "length", stick->part[i].length);
    }
    json_length(json, row, "cutoff", stick->left);
    json_bool(json, row, "keep", stick->left > 0 && stick->left >= plan->problem->least_cutoff);
}

static void add_shares(struct json *json, cJSON *row, const struct cut_plan *plan)
{
    static const char *const name[CUT_SHARES] = {"net", "kerf_lost", "trim", "kept", "waste"};
    const struct cut_shares shares = cut_shares(plan);
    json_length(json, row, "bought", plan->bought);
    for (int i = 0; i < CUT_SHARES; i++) {
        json_length(json, row, name[i], shares.length[i]);
        json_money(json, row, name[i], shares.money[i]);
    }
}

static void add_joined(struct json *json, cJSON *row, const struct cut_plan *plan)
{
    const struct cut_problem *problem = plan->problem;
    cJSON *list = json_array(json, row, "joined");
    for (size_t i = 0; plan->joined && i < problem->joints_count; i++) {
        if (plan->joined[i] == 0)
            continue;
        cJSON *piece = json_object(json, list, NULL);
        json_text(json, piece, "label", problem->piece[problem->joints[i].piece].label);
        cJSON *places = json_array(json, piece, "at_in");
        for (size_t k = 0; k < problem->joints[i].count; k++)
            if (plan->joined[i] >> k & 1U)
                json_number(json, places, NULL, length_inches(problem->joints[i].at[k]), 6);
    }
}

static void add_others(struct json *json, cJSON *row, const struct cut_others *others)
{
    if (others && others->has_first_fit) {
        cJSON *first_fit = json_object(json, row, "first_fit");
        json_money(json, first_fit, "cost", others->first_fit);
        json_length(json, first_fit, "stock", cut_sold_length(others->first_fit_stock));
    } else {
        json_text(json, row, "first_fit", NULL);
    }
    cJSON *list = json_array(json, row, "one_length");
    for (size_t i = 0; others && i < others->single_count; i++) {
        const struct cut_single *single = &others->single[i];
        cJSON *item = json_object(json, list, NULL);
        json_length(json, item, "stock", cut_sold_length(single->stock));
        if (single->possible)
            json_money(json, item, "cost", single->cost);
        else
            json_text(json, item, "cost", NULL);
        json_bool(json, item, "proved", single->possible && single->proved);
    }
}

static void add_cutoffs(struct json *json, cJSON *row, const struct cut_plan *plan)
{
    const struct cutoffs cutoffs = cutoffs_of(json->arena, plan);
    cJSON *list = json_array(json, row, "cutoffs");
    for (size_t i = 0; i < cutoffs.count; i++) {
        cJSON *item = json_object(json, list, NULL);
        json_length(json, item, "length", cutoffs.cutoff[i].length);
        json_integer(json, item, "count", cutoffs.cutoff[i].count);
    }
}

static void add_cost(struct json *json, cJSON *row, bool infeasible, money_t cost, money_t bound)
{
    if (infeasible) {
        json_text(json, row, "cost", NULL);
        json_text(json, row, "bound", NULL);
        return;
    }
    json_money(json, row, "cost", cost);
    json_money(json, row, "bound", bound);
}

static void add_member(struct json *json, cJSON *list, const struct cut_plan *plan)
{
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "member", plan->problem->member);
    add_cost(json, row, is_infeasible(plan), plan->cost, plan->bound);
    json_text(json, row, "verdict", plan->verdict);
    json_text(json, row, "note", plan->note);
    if (is_infeasible(plan))
        json_text(json, row, "certified", NULL);
    else
        json_money(json, row, "certified", plan->certified);
    json_bool(json, row, "searched", plan->searched);
    json_length(json, row, "kerf", plan->problem->kerf);
    json_length(json, row, "end_trim", plan->problem->end_trim);
    json_bool(json, row, "both_ends", plan->problem->both_ends);
    json_bool(json, row, "square_both_ends", plan->problem->square_both_ends);
    add_shares(json, row, plan);
    add_joined(json, row, plan);
    add_others(json, row, plan->others);
    add_cutoffs(json, row, plan);
}

/* The worst of all members. */
static const char *whole_verdict(struct cut_plan *const *plan, size_t count)
{
    const char *verdict = "proved optimal";
    for (size_t i = 0; i < count; i++) {
        if (is_infeasible(plan[i]))
            return plan[i]->verdict;
        if (plan[i]->bound < plan[i]->cost)
            verdict = plan[i]->verdict;
    }
    return verdict;
}

void json_cuts(struct json *json, cJSON *root, struct cut_plan *const *plan, size_t count)
{
    cJSON *object = json_object(json, root, "cuts");
    const char *verdict = whole_verdict(plan, count);
    money_t cost = 0, bound = 0;
    for (size_t i = 0; i < count; i++) {
        cost += plan[i]->cost;
        bound += plan[i]->bound;
    }
    add_cost(json, object, strcmp(verdict, "infeasible") == 0, cost, bound);
    json_text(json, object, "verdict", verdict);
    cJSON *sticks = json_array(json, object, "sticks");
    for (size_t i = 0; i < count; i++)
        for (size_t k = 0; k < plan[i]->stick_count; k++)
            add_stick(json, sticks, plan[i], &plan[i]->stick[k]);
    cJSON *members = json_array(json, object, "members");
    for (size_t i = 0; i < count; i++)
        add_member(json, members, plan[i]);
}
