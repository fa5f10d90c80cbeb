/* From whom to buy: the order is made for every set of suppliers that can fill it, and the set that costs least,
 * delivery and sales tax in, is kept.  The cheapest price of each thing is often not it: a second delivery eats what it
 * saves. */

#include "price_internal.h"
#include "sawbill/text.h"

/* Free suppliers tried in every combination: 2^6 orders.  Beyond that all sell, which is said. */
enum { FREE_MOST = 6 };
/* Steps of each cut plan, about a microsecond each: while sets are tried, and for the set that is kept. */
enum { TRIAL_STEPS = 500000, KEPT_STEPS = 5000000 };

struct buying {
    struct arena *arena;
    struct run *run;
    struct diags *diags; /* for an internal failure and the order that is kept */
};
/* An order from one set of suppliers. */
struct purchase {
    unsigned long closed;
    struct cut_plan **plans;
    size_t plan_count;
    struct order *order;
    size_t short_orders, suppliers; /* below their least order; that deliver */
    int64_t steps;
    money_t cost;
};

static bool sold_by(const struct catalog *catalog, const struct supplier *supplier, const char *item)
{
    for (size_t i = 0; i < catalog->price_count; i++)
        if (name_same(catalog->prices[i].item, item) && name_same(catalog->prices[i].supplier, supplier->name))
            return true;
    return false;
}

/* Sells something needed: bit of *useful; is the only one that sells it: bit of *forced. */
static void judge_suppliers(const struct buying *buying, size_t count, unsigned long *useful, unsigned long *forced)
{
    const struct catalog *catalog = buying->run->catalog;
    const struct takeoff *takeoff = buying->run->takeoff;
    for (size_t i = 0; i < takeoff->count; i++) {
        const char *item = takeoff->line[i].item;
        unsigned long sellers = 0;
        bool seen = !item;
        for (size_t j = 0; j < i && !seen; j++)
            seen = takeoff->line[j].item && name_same(takeoff->line[j].item, item);
        for (size_t s = 0; s < count && !seen; s++)
            if (sold_by(catalog, &catalog->suppliers[s], item))
                sellers |= 1UL << s;
        *useful |= sellers;
        if (sellers && (sellers & (sellers - 1)) == 0)
            *forced |= sellers;
    }
}

/* false: a stop, or a plan that its verifier rejects. */
static bool plan_cuts(const struct buying *buying, const struct catalog *view, struct purchase *purchase,
                      struct diags *diags)
{
    struct arena *arena = buying->arena;
    size_t count = 0;
    struct cut_problem *problem =
        cut_problems_from_takeoff(arena, buying->run->takeoff, view, buying->run->job, &count, diags);
    purchase->plans = arena_array(arena, count, sizeof(struct cut_plan *));
    for (size_t i = 0; i < count; i++) {
        const struct cut_limits limits = {.steps = purchase->steps};
        struct cut_plan *plan = cut_solve_within(arena, &problem[i], &limits, NULL, diags);
        if (!plan || diag_has_stop(diags))
            continue;
        const char *wrong = cut_verify(arena, &problem[i], plan);
        if (wrong) {
            buying->run->internal_failure = true;
            buying->run->failure = arena_printf(arena, "cut plan of '%s': %s", problem[i].member, wrong);
            return false;
        }
        purchase->plans[purchase->plan_count++] = plan;
    }
    return !diag_has_stop(diags);
}

static void add_up(struct purchase *purchase)
{
    const struct order *order = purchase->order;
    for (size_t i = 0; i < order->supplier_count; i++) {
        const struct supplier_total *total = &order->supplier[i];
        purchase->cost = price_sum(price_sum(purchase->cost, total->goods), price_sum(total->delivery, total->tax));
        purchase->suppliers += total->goods > 0;
        purchase->short_orders += total->goods > 0 && total->goods < total->supplier->least_order;
    }
    for (size_t i = 0; i < order->count; i++)
        if (order->line[i].shop)
            purchase->cost = price_sum(purchase->cost, order->line[i].total);
}

/* The order when the suppliers of `closed` sell nothing; false when it cannot be filled. */
static bool buy_from(const struct buying *buying, unsigned long closed, int64_t steps, struct purchase *purchase,
                     struct diags *diags)
{
    const struct run *run = buying->run;
    struct catalog *view = arena_alloc(buying->arena, sizeof *view);
    *view = *run->catalog;
    view->closed = closed;
    *purchase = (struct purchase){.closed = closed, .steps = steps};
    if (!plan_cuts(buying, view, purchase, diags))
        return false;
    purchase->order =
        order_job(buying->arena, run->job, view, run->takeoff, purchase->plans, purchase->plan_count, diags);
    if (diag_has_stop(diags))
        return false;
    add_up(purchase);
    return true;
}

/* No order below a supplier's least first, then the money, then fewer deliveries. */
static bool better(const struct purchase *a, const struct purchase *b)
{
    if (a->short_orders != b->short_orders)
        return a->short_orders < b->short_orders;
    if (a->cost != b->cost)
        return a->cost < b->cost;
    return a->suppliers < b->suppliers;
}

static unsigned count_bits(unsigned long bits)
{
    unsigned count = 0;
    for (; bits; bits &= bits - 1)
        count++;
    return count;
}

/* Every subset of the free suppliers may stay closed; *best starts as the order from all of them. */
static void try_sets(const struct buying *buying, unsigned long free_ones, struct purchase *best)
{
    for (unsigned long closed = free_ones; closed && !buying->run->internal_failure;
         closed = (closed - 1) & free_ones) {
        struct diags scratch = diag_scratch(buying->arena, buying->diags);
        struct purchase trial;
        if (buy_from(buying, closed, TRIAL_STEPS, &trial, &scratch) && better(&trial, best))
            *best = trial;
    }
}

static const char *say_suppliers(struct arena *arena, const struct purchase *kept, const struct purchase *all,
                                 bool tried)
{
    struct buffer text = {.arena = arena};
    for (size_t i = 0; i < kept->order->supplier_count; i++)
        buffer_printf(&text, "%s%s", i ? ", " : "bought from ", kept->order->supplier[i].supplier->name);
    if (!tried)
        buffer_add(&text, "; too many suppliers to try every set: each thing where it costs least");
    else if (kept->closed == 0)
        buffer_add(&text, "; no smaller set of suppliers costs less, delivery and tax in");
    else
        buffer_printf(&text, "; each thing where it costs least would come to %s in place of %s, delivery and tax in",
                      money_show(arena, all->cost), money_show(arena, kept->cost));
    return arena_strdup(arena, buffer_text(&text));
}

bool buy_job(struct arena *arena, struct run *run, struct diags *diags)
{
    const struct buying buying = {.arena = arena, .run = run, .diags = diags};
    const size_t bits = sizeof(unsigned long) * 8;
    size_t count = run->catalog->supplier_count < bits ? run->catalog->supplier_count : bits;
    unsigned long useful = 0, forced = 0;
    struct purchase all;
    struct diags scratch = diag_scratch(arena, diags);
    if (!buy_from(&buying, run->catalog->closed, TRIAL_STEPS, &all, &scratch)) {
        struct purchase again; /* for its messages */
        if (!run->internal_failure)
            (void)buy_from(&buying, run->catalog->closed, TRIAL_STEPS, &again, diags);
        return false;
    }
    judge_suppliers(&buying, count, &useful, &forced);
    unsigned long free_ones = useful & ~forced & ~run->catalog->closed;
    bool tried = count_bits(free_ones) <= FREE_MOST;
    struct purchase best = all;
    if (tried)
        try_sets(&buying, free_ones, &best);
    if (run->internal_failure)
        return false;
    if (!buy_from(&buying, best.closed, KEPT_STEPS, &best, diags)) /* once more, with its messages */
        return false;
    for (size_t i = 0; i < best.plan_count; i++)
        cut_compare(arena, best.plans[i]);
    run->plans = best.plans;
    run->plan_count = best.plan_count;
    run->order = best.order;
    run->bought_from = say_suppliers(arena, &best, &all, tried);
    return true;
}
