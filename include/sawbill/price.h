/* Money: the order, the estimate, the bid.  price_job() is a pure function of the takeoff, the plans and the prices:
 * run again on the same order with other prices it gives what the workbook's formulas give. */
#ifndef SAWBILL_PRICE_H
#define SAWBILL_PRICE_H

#include "sawbill/catalog.h"
#include "sawbill/cut.h"
#include "sawbill/job.h"
#include "sawbill/takeoff.h"

/* What to buy: one row a price row used.  packs = ceiling(net x (1 + spare) / pack); total = ROUND(packs x price, 2).
 * By the foot: packs counts feet bought; the cut charges stand in their own row (cut_charge true, packs = cuts). */
struct order_line {
    const char *id; /* "order/2x10-dfl2/16 ft" */
    const char *item, *what;
    const struct price *price;     /* supplier, pack, unit, money */
    const struct shop_piece *shop; /* own stock used, at book value; price is NULL then */
    bool cut_charge;
    decimal_t net; /* counted, in the price's unit */
    percent_t spare;
    decimal_t packs;
    money_t total;
    const char *from; /* takeoff ids or plan it comes from */
};
struct supplier_total {
    const struct supplier *supplier;
    money_t goods, delivery, tax;
    percent_t tax_rate;
};
struct order {
    struct order_line *line;
    size_t count, capacity;
    struct supplier_total *supplier;
    size_t supplier_count;
};

/* hours = max(ROUND(count x hours_each, 2), least); rate = ROUND(wage x (1 + burden), 2); total = ROUND(hours x rate,
 * 2). */
struct labor_line {
    const char *id, *what, *counted, *per;
    const struct task *task; /* NULL for [work] */
    const struct trade *trade;
    decimal_t count, hours_each, least, hours;
    money_t rate, total;
    int crew;
    const char *cost_code;
};
/* One line of the estimate: what it costs direct, and how it is marked up. */
enum estimate_from { FROM_ORDER, FROM_LABOR, FROM_DELIVERY, FROM_TAX, FROM_JOB };
struct estimate_line {
    const char *id, *what, *unit;
    enum cost_class class;
    enum estimate_from from;
    size_t index;    /* into order->line, labor, order->supplier */
    decimal_t count; /* FROM_JOB: count x price */
    money_t price, total;
    bool has_own_markup;
    percent_t own_markup;
    const char *cost_code;
};
/* Markup of one class (or of one line with its own): direct, overhead, contingency, profit, price. */
struct class_total {
    enum cost_class class;
    bool own;
    size_t line; /* own: the estimate line that carries its own markup; overhead then holds it */
    percent_t overhead_rate, contingency_rate, profit_rate;
    money_t direct, overhead, contingency, profit, price;
};
struct draw {
    percent_t percent;
    const char *when;
    money_t amount;
};
struct estimate {
    enum method method;
    enum tax_mode tax_mode;
    percent_t tax_rate;
    struct labor_line *labor;
    size_t labor_count;
    struct estimate_line *line;
    size_t line_count;
    struct class_total *class_;
    size_t class_count;
    money_t direct, overhead, contingency, profit;
    money_t before_tax, tax, rounding, price; /* price = before_tax + tax + rounding */
    percent_t gross_margin, markup;           /* of price; on direct cost */
    struct draw *draw;
    size_t draw_count;
    decimal_t hours;
};

/* The order from takeoff and plans, with packs for the prices now; prices are looked up cheapest first. */
struct order *order_job(struct arena *arena, const struct job *job, const struct catalog *catalog,
                        const struct takeoff *takeoff, struct cut_plan *const *plans, size_t plan_count,
                        struct diags *diags);
/* Totals of an order again (after a price changed): packs and price rows stay those chosen. */
void order_total(struct order *order, const struct job *job);
struct estimate *price_job(struct arena *arena, const struct job *job, const struct takeoff *takeoff,
                           const struct order *order, const struct catalog *catalog, struct diags *diags);

/* One run of every stage for one selection of members. */
struct run {
    const struct job *job;
    const struct catalog *catalog;
    const struct selection *selection;
    struct design *design;
    struct takeoff *takeoff;
    struct cut_plan **plans;
    size_t plan_count;
    struct order *order;
    struct estimate *estimate;
    bool internal_failure;
    const char *failure; /* a plan that its verifier rejects */
};
/* A candidate for a beam with `choose`: what whole job it makes, or why it fails. */
struct candidate {
    const struct beam *beam;
    const struct member *member;
    int plies;
    bool passes;
    const char *why;
    double ratio;
    money_t price, direct;
    bool chosen;
};
struct alternate_price {
    const struct alternate *alternate;
    money_t difference;
    bool ok;
};
struct outcome {
    struct run *run; /* the job as bid */
    struct candidate *candidate;
    size_t candidate_count;
    struct alternate_price *alternate;
    size_t alternate_count;
};
/* Runs one selection. */
struct run *run_job(struct arena *arena, const struct job *job, const struct catalog *catalog,
                    const struct selection *selection, struct diags *diags);
/* Loops over candidates (beams in load-path order, the least whole-job price that passes) and alternates; the loops
 * stand outside the stages. */
struct outcome *plan_job(struct arena *arena, const struct job *job, const struct catalog *catalog,
                         struct diags *diags);

#endif
