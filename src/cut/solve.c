/* cut_solve(): each way of joining reduced to whole numbers, solved, and the cheapest made a plan. */
#include <string.h>

#include "cut_internal.h"
#include "sawbill/wide.h"

static const char *const PROVED = "proved optimal";
static const char *const BEST = "best found";
static const char *const INFEASIBLE = "infeasible";
/* The second search, for few sticks at the same cost, is a courtesy. */
enum { TIE_STEPS = 300000 };

/* The best way so far. */
struct best {
    bool found, limited; /* limited: somewhere a search ended before its proof */
    money_t cost, bound; /* bound: the least of all ways */
    size_t sticks;
    struct reduced *reduced;
    struct form_result result;
    const unsigned *mask;
};
struct solving {
    struct arena *arena;
    const struct cut_problem *problem;
    struct form_limits limits;
    struct cut_plan *plan;
    struct best best;
    bool *impossible; /* of each way: a piece is longer than any stock */
    bool too_large;
};

static size_t stick_total(const struct form_result *result)
{
    int64_t total = 0;
    for (size_t i = 0; i < result->pattern_count; i++)
        total += result->pattern[i].times;
    return (size_t)total;
}

static struct form form_of(const struct reduced *reduced)
{
    return (struct form){reduced->type, reduced->type_count, reduced->stock, reduced->stock_count};
}

static money_t divisor_of(const struct reduced *reduced)
{
    money_t divisor = 0;
    for (size_t i = 0; i < reduced->stock_count; i++)
        divisor = common_divisor(reduced->stock[i].cost, divisor);
    return divisor > 0 ? divisor : 1;
}

/* Few sticks of the same cost, and of those few that are bought: each stick weighs a little beside its cost, so little
 * that a whole plan's weights are less than one step of cost.  A better plan has no more sticks than this one. */
static void choose_among_equals(struct solving *s, const struct reduced *reduced, struct form_result *result)
{
    const int64_t sticks = (int64_t)stick_total(result), divisor = divisor_of(reduced);
    const int64_t stick_weight = sticks + 1, cost_weight = stick_weight * (sticks + 1) + sticks;
    struct form form = form_of(reduced);
    struct form_stock *stock = arena_array(s->arena, reduced->stock_count, sizeof *stock);
    for (size_t i = 0; i < reduced->stock_count; i++) {
        stock[i] = reduced->stock[i];
        bool bought = !cut_is_shop(&s->problem->stock[reduced->stock_of[i]]);
        if (stock[i].cost / divisor > (INT64_MAX - stick_weight - 1) / cost_weight)
            return;
        stock[i].cost = stock[i].cost / divisor * cost_weight + stick_weight + bought;
    }
    form.stock = stock;
    struct form_limits limits = s->limits;
    limits.steps = TIE_STEPS;
    struct form_result second;
    if (sticks < 2 || !form_solve(s->arena, &form, &limits, &second))
        return;
    if (second.verdict != FORM_PROVED && second.verdict != FORM_BEST)
        return;
    money_t cost = 0;
    for (size_t i = 0; i < second.pattern_count; i++)
        cost += reduced->stock[second.pattern[i].stock].cost * second.pattern[i].times;
    if (cost != result->cost || (int64_t)stick_total(&second) > sticks)
        return;
    result->pattern = second.pattern;
    result->pattern_count = second.pattern_count;
}

static int joint_total(const struct cut_problem *problem, const unsigned *mask)
{
    int total = 0;
    for (size_t i = 0; mask && i < problem->joints_count; i++)
        for (unsigned bits = mask[i]; bits; bits &= bits - 1)
            total++;
    return total;
}

/* Less cost, then fewer joints, then fewer sticks. */
static bool is_better(const struct solving *s, money_t cost, size_t sticks, const unsigned *mask)
{
    const struct best *best = &s->best;
    if (!best->found || cost != best->cost)
        return !best->found || cost < best->cost;
    int joints = joint_total(s->problem, mask), before = joint_total(s->problem, best->mask);
    return joints != before ? joints < before : sticks < best->sticks;
}

static void lower_bound(struct best *best, money_t bound, bool *any)
{
    if (!*any || bound < best->bound)
        best->bound = bound;
    *any = true;
}

static bool is_impossible(const struct reduced *reduced)
{
    for (size_t i = 0; i < reduced->stock_count; i++)
        if (reduced->type_count == 0 || reduced->stock[i].length >= reduced->type[0].length)
            return false;
    return true;
}

static void solve_way(struct solving *s, const unsigned *mask, size_t way, bool *any)
{
    size_t count = 0;
    struct wanted *piece = way_pieces(s->arena, s->problem, mask, &count);
    struct reduced *reduced = reduce(s->arena, s->problem, piece, count);
    struct form form = form_of(reduced);
    struct form_result result;
    if (!form_solve(s->arena, &form, &s->limits, &result)) {
        s->too_large = true;
        return;
    }
    if (s->plan->proof) {
        keep_proof(s->arena, reduced, &result.certificate, &s->plan->proof[way]);
        s->impossible[way] = is_impossible(reduced);
    }
    s->plan->nodes += result.nodes;
    s->plan->rounded = s->plan->rounded || reduced->rounded;
    if (result.verdict == FORM_INFEASIBLE)
        return;
    lower_bound(&s->best, result.bound, any);
    s->best.limited = s->best.limited || result.verdict != FORM_PROVED;
    if (result.verdict == FORM_NOTHING)
        return;
    size_t sticks = stick_total(&result);
    if (!is_better(s, result.cost, sticks, mask))
        return;
    s->best.found = true;
    s->best.cost = result.cost;
    s->best.sticks = sticks;
    s->best.reduced = reduced;
    s->best.result = result;
    s->best.mask = mask;
}

/* Too many ways: nothing joined, and everything joined; the bound is then none. */
static void solve_extremes(struct solving *s)
{
    bool any = false;
    for (int all = 0; all < 2; all++) {
        unsigned *mask = arena_array(s->arena, s->problem->joints_count, sizeof *mask);
        for (size_t i = 0; all && i < s->problem->joints_count; i++)
            mask[i] = (1U << s->problem->joints[i].count) - 1;
        solve_way(s, mask, 0, &any);
    }
    s->best.bound = 0;
    s->plan->note = "not every way of joining was tried";
}

static void solve_ways(struct solving *s)
{
    size_t ways = ways_count(s->problem);
    if (ways == 0) {
        solve_extremes(s);
        return;
    }
    bool any = false;
    s->plan->proof = arena_array(s->arena, ways, sizeof *s->plan->proof);
    s->plan->proof_count = ways;
    s->impossible = arena_array(s->arena, ways, sizeof *s->impossible);
    for (size_t way = 0; way < ways; way++) {
        unsigned *mask = arena_array(s->arena, s->problem->joints_count, sizeof *mask);
        way_masks(s->problem, way, mask);
        solve_way(s, mask, way, &any);
    }
}

/* What the proofs alone say. */
static money_t proved_bound(const struct solving *s)
{
    const struct cut_plan *plan = s->plan;
    money_t least = -1;
    for (size_t i = 0; i < plan->proof_count; i++)
        if (!s->impossible[i] && (least < 0 || plan->proof[i].bound < least))
            least = plan->proof[i].bound;
    return least < 0 ? 0 : least;
}

static void finish(struct solving *s)
{
    struct best *best = &s->best;
    struct cut_plan *plan = s->plan;
    size_t count;
    choose_among_equals(s, best->reduced, &best->result);
    struct raw_stick *stick = raw_sticks(s->arena, best->reduced, &best->result, &count);
    swap_sticks(s->arena, best->reduced, stick, count);
    tidy_sticks(s->arena, best->reduced, stick, count);
    fill_plan(s->arena, best->reduced, stick, count, plan);
    plan->joined = arena_array(s->arena, s->problem->joints_count, sizeof *plan->joined);
    for (size_t i = 0; i < s->problem->joints_count; i++)
        plan->joined[i] = best->mask[i];
    plan->bound = best->bound;
    plan->certified = proved_bound(s);
    plan->searched = plan->bound > plan->certified;
    plan->verdict = plan->bound == plan->cost ? PROVED : BEST;
    if (plan->rounded)
        plan->note = "for lengths rounded to 1/64 in, pieces up and stock down";
    else if (plan->verdict == BEST && !plan->note)
        plan->note = "the search met its limit";
}

static void report_no_plan(const struct solving *s, const struct place *at, struct diags *diags)
{
    const struct cut_problem *problem = s->problem;
    const char *of = *problem->member ? arena_printf(s->arena, "the pieces of '%s'", problem->member) : "the pieces";
    if (!at && problem->piece_at)
        at = &problem->piece_at[0];
    if (s->too_large)
        diag_add(diags, DIAG_P002, at, "the cut plan of %s has sums beyond what is computed here", of);
    else if (s->best.limited)
        diag_add(diags, DIAG_T001, at, "no plan was found for %s before the search met its limit", of);
    else if (problem->piece_at)
        diag_add(diags, DIAG_T001, at, "%s need more stock of their length than the list has", of);
    else
        diag_add(diags, DIAG_T001, at,
                 "%s need more stock of their length than the shop has, and no price row sells it", of);
}

struct cut_plan *cut_solve_within(struct arena *arena, const struct cut_problem *problem,
                                  const struct cut_limits *limits, const struct place *at, struct diags *diags)
{
    struct cut_plan *plan = arena_alloc(arena, sizeof *plan);
    plan->problem = problem;
    plan->verdict = INFEASIBLE;
    if (!at && problem->at.file)
        at = &problem->at;
    if (report_impossible(arena, problem, at, diags))
        return plan;
    struct solving s = {.arena = arena, .problem = problem, .plan = plan};
    if (limits)
        s.limits = (struct form_limits){.steps = limits->steps, .stop = limits->stop, .owner = limits->owner};
    solve_ways(&s);
    if (s.best.found)
        finish(&s);
    else
        report_no_plan(&s, at, diags);
    return plan;
}

struct cut_plan *cut_solve(struct arena *arena, const struct cut_problem *problem, const struct place *at,
                           struct diags *diags)
{
    return cut_solve_within(arena, problem, NULL, at, diags);
}
