/* The estimate: a line for everything that costs, each with its class and its way of markup. */
#include "price_internal.h"

static struct estimate_line *add_line(struct estimate *estimate, const char *id, const char *what,
                                      enum cost_class class, enum estimate_from from, size_t index, money_t total)
{
    struct estimate_line *line = &estimate->line[estimate->line_count++];
    *line =
        (struct estimate_line){.id = id, .what = what, .class = class, .from = from, .index = index, .total = total};
    return line;
}

static void add_labor(struct estimate *estimate)
{
    for (size_t i = 0; i < estimate->labor_count; i++) {
        const struct labor_line *labor = &estimate->labor[i];
        struct estimate_line *line =
            add_line(estimate, labor->id, labor->what, CLASS_LABOR, FROM_LABOR, i, labor->total);
        line->unit = "hours";
        line->count = labor->hours;
        line->price = labor->rate;
        line->cost_code = labor->cost_code;
    }
}

static void add_order(struct arena *arena, struct estimate *estimate, const struct order *order)
{
    for (size_t i = 0; i < order->count; i++) {
        const struct order_line *bought = &order->line[i];
        struct estimate_line *line =
            add_line(estimate, bought->id, bought->what, bought->class, FROM_ORDER, i, bought->total);
        line->unit = order_unit(arena, bought);
        line->count = bought->packs;
        line->price = bought->shop ? bought->shop->book_value
                                   : (bought->cut_charge ? bought->price->cut_charge : bought->price->price);
        line->has_own_markup = bought->has_own_markup;
        line->own_markup = bought->own_markup;
        line->cost_code = bought->cost_code;
    }
}

static void add_supplier(struct arena *arena, struct estimate *estimate, const struct supplier_total *total,
                         size_t index)
{
    const char *name = total->supplier->name;
    if (total->delivery > 0) {
        struct estimate_line *line =
            add_line(estimate, arena_printf(arena, "delivery/%s", name), arena_printf(arena, "delivery from %s", name),
                     CLASS_MATERIALS, FROM_DELIVERY, index, total->delivery);
        line->unit = "trip";
        line->count = DECIMAL_ONE;
        line->price = total->delivery;
    }
    if (estimate->tax_mode == TAX_IN_COST && total->tax > 0)
        add_line(estimate, arena_printf(arena, "tax/%s", name), arena_printf(arena, "sales tax of %s", name),
                 CLASS_MATERIALS, FROM_TAX, index, total->tax);
}

/* The job's own prices: [buy] without a catalog item, [sub]. */
static bool is_own_price(const struct takeoff_line *line)
{
    return line->is == LINE_SUB || (line->is == LINE_BUY && !line->item);
}

static void add_own_prices(struct estimate *estimate, const struct takeoff *takeoff)
{
    for (size_t i = 0; i < takeoff->count; i++) {
        const struct takeoff_line *from = &takeoff->line[i];
        if (!is_own_price(from))
            continue;
        enum cost_class class = class_or(from->class, from->is == LINE_SUB ? CLASS_SUBS : CLASS_MATERIALS);
        struct estimate_line *line =
            add_line(estimate, from->id, from->what, class, FROM_JOB, i, money_times(from->price, from->count));
        line->unit = from->unit;
        line->count = from->count;
        line->price = from->price;
        line->has_own_markup = from->has_own_markup;
        line->own_markup = from->own_markup;
        line->cost_code = from->cost_code;
    }
}

/* A sum that was held at MONEY_MOST is no sum. */
static void stop_when_held(const struct estimate *estimate, struct diags *diags)
{
    bool held = estimate->direct >= MONEY_MOST || estimate->before_tax >= MONEY_MOST || estimate->price >= MONEY_MOST ||
                estimate->hours >= MONEY_MOST;
    const char *line = NULL;
    for (size_t i = 0; i < estimate->line_count; i++)
        if (estimate->line[i].total >= MONEY_MOST || estimate->line[i].total <= -MONEY_MOST)
            line = estimate->line[i].id;
    if (line)
        diag_add(diags, DIAG_P002, NULL, "the cost of '%s' is beyond what can be summed: its count or price is wrong",
                 line);
    else if (held)
        diag_add(diags, DIAG_P002, NULL, "the costs of the job add up to more than can be summed");
}

static struct estimate *price_at(struct arena *arena, const struct job *job, const struct takeoff *takeoff,
                                 const struct order *order, const struct catalog *catalog, enum pace pace,
                                 struct diags *diags)
{
    struct estimate *estimate = arena_alloc(arena, sizeof *estimate);
    estimate->method = (enum method)job->bid.method.choice;
    estimate->tax_mode =
        job->bid.tax_mode.choice == TAX_UNANSWERED ? TAX_IN_COST : (enum tax_mode)job->bid.tax_mode.choice;
    estimate->tax_rate = job->bid.tax.percent;
    estimate_labor(arena, job, takeoff, catalog, pace, estimate, diags);
    size_t most = takeoff->count + order->count + 2 * order->supplier_count;
    estimate->line = arena_array(arena, most, sizeof *estimate->line);
    add_labor(estimate);
    add_order(arena, estimate, order);
    for (size_t i = 0; i < order->supplier_count; i++)
        add_supplier(arena, estimate, &order->supplier[i], i);
    add_own_prices(estimate, takeoff);
    estimate_markup(arena, job, estimate, diags);
    estimate_bid(arena, job, order, estimate, diags);
    stop_when_held(estimate, diags);
    return estimate;
}

struct estimate *price_job(struct arena *arena, const struct job *job, const struct takeoff *takeoff,
                           const struct order *order, const struct catalog *catalog, struct diags *diags)
{
    struct estimate *estimate = price_at(arena, job, takeoff, order, catalog, PACE_LIKELY, diags);
    estimate->low_price = estimate->high_price = estimate->price;
    if (job->facts.status.choice == STATUS_BUDGET) {
        struct diags scratch = diag_scratch(arena, diags); /* the same messages again */
        estimate->low_price = price_at(arena, job, takeoff, order, catalog, PACE_LOW, &scratch)->price;
        estimate->high_price = price_at(arena, job, takeoff, order, catalog, PACE_HIGH, &scratch)->price;
    }
    return estimate;
}
