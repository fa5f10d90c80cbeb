/* Jobs, catalogs and takeoffs made by hand, small enough to work out on paper. */
#ifndef SAWBILL_TESTS_PRICE_MADE_H
#define SAWBILL_TESTS_PRICE_MADE_H

#include <string.h>

#include "sawbill/price.h"
#include "support.h"

enum { MADE_MOST = 64 };

struct made {
    struct arena *arena;
    struct diags diags;
    struct job job;
    struct entry written; /* what every written value points to */
    struct catalog catalog;
    struct price prices[MADE_MOST];
    struct supplier suppliers[4];
    struct fastener fasteners[4];
    struct trade trades[4];
    struct task tasks[4];
    struct takeoff takeoff;
    struct takeoff_line lines[MADE_MOST];
};

/* Amounts as one writes them; the numbers used have at most 4 decimals. */
static inline int64_t steps(double value, double one)
{
    return (int64_t)llround(value * one);
}
static inline money_t dollars(double value)
{
    return steps(value, 10000);
}
static inline decimal_t number(double value)
{
    return steps(value, 10000);
}
static inline percent_t percent(double value)
{
    return steps(value, 10000);
}

static inline struct percent_value written_percent(struct made *made, double value)
{
    return (struct percent_value){percent(value), &made->written};
}

static inline struct made *made_new(struct arena *arena)
{
    struct made *made = arena_alloc(arena, sizeof *made);
    made->arena = arena;
    made->diags.arena = arena;
    made->written.at = (struct place){"made.ini", 1, 1, NULL};
    made->job.bid.method = (struct choice_value){METHOD_COMPOUND, &made->written};
    made->job.bid.tax_mode = (struct choice_value){TAX_IN_COST, NULL};
    made->catalog = (struct catalog){.prices = made->prices,
                                     .suppliers = made->suppliers,
                                     .fasteners = made->fasteners,
                                     .trades = made->trades,
                                     .tasks = made->tasks};
    made->takeoff.line = made->lines;
    return made;
}

static inline void made_rates(struct made *made, enum method method, double overhead, double contingency, double profit)
{
    made->job.bid.method.choice = (int)method;
    made->job.bid.overhead = written_percent(made, overhead);
    made->job.bid.contingency = written_percent(made, contingency);
    made->job.bid.profit = written_percent(made, profit);
}

/* tax below 0: the supplier has none of its own. */
static inline void made_supplier(struct made *made, const char *name, double delivery, double tax)
{
    made->suppliers[made->catalog.supplier_count] = (struct supplier){.name = name,
                                                                      .delivery = dollars(delivery),
                                                                      .has_tax = tax >= 0,
                                                                      .tax = tax >= 0 ? percent(tax) : 0,
                                                                      .index = made->catalog.supplier_count};
    made->catalog.supplier_count++;
}

static inline struct price *made_price(struct made *made, const char *item, const char *unit, double pack, double price,
                                       const char *supplier)
{
    struct price *row = &made->prices[made->catalog.price_count];
    *row = (struct price){.item = item,
                          .what = "",
                          .unit = unit,
                          .pack = number(pack),
                          .price = dollars(price),
                          .supplier = supplier,
                          .index = made->catalog.price_count++};
    return row;
}

static inline struct takeoff_line *made_line(struct made *made, enum line_is is, const char *id, double count)
{
    struct takeoff_line *line = &made->lines[made->takeoff.count++];
    *line = (struct takeoff_line){.id = id, .what = id, .unit = "each", .is = is, .count = number(count)};
    return line;
}

static inline struct takeoff_line *made_item(struct made *made, const char *id, const char *item, double count)
{
    struct takeoff_line *line = made_line(made, LINE_ITEM, id, count);
    line->item = item;
    return line;
}

/* One line that costs `cost` in one class: a job's own price. */
static inline struct takeoff_line *made_cost(struct made *made, const char *id, enum cost_class class, double cost)
{
    struct takeoff_line *line = made_line(made, LINE_BUY, id, 1);
    line->price = dollars(cost);
    line->class = class;
    return line;
}

static inline struct order *made_order(struct made *made)
{
    return order_job(made->arena, &made->job, &made->catalog, &made->takeoff, NULL, 0, &made->diags);
}

static inline struct estimate *made_estimate(struct made *made)
{
    return price_job(made->arena, &made->job, &made->takeoff, made_order(made), &made->catalog, &made->diags);
}

static inline void assert_money(money_t got, double want)
{
    assert_int_equal(got, dollars(want));
}

static inline size_t count_of(const struct made *made, enum diag_code code)
{
    size_t count = 0;
    for (size_t i = 0; i < made->diags.count; i++)
        count += made->diags.item[i].code == code;
    return count;
}

#endif
