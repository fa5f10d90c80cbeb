/* Money: the order, the estimate, the bid.  price_job() is a pure function of the takeoff, the plans and the prices:
 * run again on the same order with other prices it gives what the workbook's formulas give. */
#ifndef SAWBILL_PRICE_H
#define SAWBILL_PRICE_H

#include "sawbill/catalog.h"
#include "sawbill/cut.h"
#include "sawbill/job.h"
#include "sawbill/takeoff.h"

/* Every amount is reproducible by spreadsheet formulas from price, pack, loss, wage, burden, hours and percentages.
 *
 * What to buy: one row a price row used.  packs = ROUNDUP(ROUND(net x (1 + loss) / pack, 8), 0), in exact integers
 * here; the inner ROUND is for the sheet, whose binary product may lie a hair above a whole number (and both agree that
 * less than half of 1e-8 of a pack is no pack).  total = ROUND(packs x price, 2).  Loss, the bid's own, lies on nails
 * and screws alone, on the whole item when one of its takeoff lines says so.  The price row is the one with the least
 * total for the quantity needed, ties by file order. By the foot: packs counts feet bought; the cut charges stand in
 * their own row (cut_charge true, packs = sticks cut, total = ROUND(packs x cut charge, 2)). Shop stock: packs counts
 * sticks, total = ROUND(packs x book value, 2), no supplier and no tax. Asked in pieces, sold by the pound (or the
 * other way round): net = pieces / count per lb, rounded up to 4 decimals; `counted` says so. */
struct order_line {
    const char *id; /* "order/2x10-dfl2/16 ft" */
    const char *item, *what;
    const struct price *price;     /* supplier, pack, unit, money */
    const struct shop_piece *shop; /* own stock used, at book value; price is NULL then */
    bool cut_charge;
    decimal_t net; /* counted, in the price's unit */
    percent_t loss;
    decimal_t packs;
    money_t total;
    const char *from;    /* takeoff ids or plan it comes from */
    const char *counted; /* how net was reached: "11 + 11 each"; "1,240 pieces at 139 per lb" */
    const char *unit;    /* of net: the price's unit, "ft" by the foot, "cut" for cut charges */
    enum cost_class class;
    bool has_own_markup; /* a [buy] of a catalog item with its own markup: a row of its own */
    percent_t own_markup;
    const char *cost_code;
    const struct fastener *fastener; /* NULL: neither nails nor screws; pieces and pounds are 0 then */
    decimal_t pieces, pounds;        /* net, as counted; pounds 0: their count per lb is not known */
    decimal_t board_feet;            /* of the sticks as sold; 0: no sawn wood, or cut charges */
};
/* tax = ROUND(taxable x tax_rate, 2): the supplier's rate, else the bid's; 0 when the tax lies on the price.
 * Goods of the classes labor, subs and fees are not taxable.  delivery is charged once when there are goods. */
struct supplier_total {
    const struct supplier *supplier;
    money_t goods, delivery, tax;
    percent_t tax_rate;
    money_t taxable;
};
struct order {
    struct order_line *line;
    size_t count, capacity;
    struct supplier_total *supplier;
    size_t supplier_count;
};

/* hours = max(ROUND(count x ROUND(hours_each x factor, 4), 2), least); rate = ROUND(wage x (1 + burden), 2); total =
 * ROUND(hours x rate, 2). */
struct labor_line {
    const char *id, *what, *counted, *per;
    const struct task *task; /* NULL for [work] */
    const struct trade *trade;
    decimal_t count, hours_each, factor, least, hours; /* factor: of the job's conditions, else 1 */
    money_t rate, total;
    int crew;
    const char *cost_code;
    int in_work;    /* place in the order of work */
    decimal_t days; /* hours / crew / hours a day, to hundredths */
};
/* One line of the estimate: what it costs direct, and how it is marked up. */
enum estimate_from { FROM_ORDER, FROM_LABOR, FROM_DELIVERY, FROM_TAX, FROM_JOB };
struct estimate_line {
    const char *id, *what, *unit;
    enum cost_class class;
    enum estimate_from from;
    size_t index;    /* into order->line, labor, order->supplier (delivery, tax), takeoff->line (FROM_JOB) */
    decimal_t count; /* FROM_JOB: total = ROUND(count x price, 2); such a price holds its own tax and delivery */
    money_t price, total;
    bool has_own_markup;
    percent_t own_markup;
    const char *cost_code;
};
/* Markup of one class (or of one line with its own): direct, overhead, contingency, profit, price.
 * compound: overhead = ROUND(D x o, 2), contingency = ROUND((D + overhead) x c, 2), profit = ROUND((D + overhead +
 * contingency) x p, 2).  add: each ROUND(D x rate, 2).  margin: price = ROUND(D / (1 - (o + c + p)), 2), overhead =
 * ROUND(price x o, 2), contingency = ROUND(price x c, 2), profit = the rest.  own: overhead = ROUND(D x own markup, 2),
 * by every method. */
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
    percent_t gross_margin, markup;           /* (price - tax - direct) of (price - tax), and on direct cost */
    struct draw *draw;
    size_t draw_count;
    decimal_t hours;
    int64_t working_days;          /* days of all lines, one after the other, up to whole ones; at least the trips */
    money_t low_price, high_price; /* of a budget: every task at its low, at its high hours; else both are price */
};

/* Of the job, 8 where it does not say. */
decimal_t hours_a_day(const struct job *job);
/* What one of the line's `packs` is: "each", "ft", "cut", "pack of 300 sq ft", "pack of 12". */
const char *order_unit(struct arena *arena, const struct order_line *line);
/* The order from takeoff and plans, with packs for the prices now. */
struct order *order_job(struct arena *arena, const struct job *job, const struct catalog *catalog,
                        const struct takeoff *takeoff, struct cut_plan *const *plans, size_t plan_count,
                        struct diags *diags);
/* Totals of an order again (after a price changed): net, loss and price rows stay those chosen. A total beyond
 * MONEY_MOST comes back as at least that; price_job() then gives the stop P002. */
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
    const char *bought_from; /* which suppliers, and what the cheapest price of each thing would have cost */
    bool internal_failure;
    const char *failure; /* a plan that its verifier rejects */
};
/* A candidate for a beam with `choose`: what whole job it makes, or why it fails. */
struct candidate {
    const struct beam *beam;
    const struct member *member;
    int plies;
    bool passes;
    const char
        *why;     /* fails: the failing check with the greatest ratio, "live deflection 1.08"; passes: what governs */
    double ratio; /* of that check; infinite where it has no capacity; NAN where no check was reached */
    money_t price, direct; /* 0 when it fails */
    bool chosen;
};
struct alternate_price {
    const struct alternate *alternate;
    money_t difference; /* its price less the job's */
    bool ok;            /* priced, and every check passes */
    money_t price;      /* 0 when it could not be priced: its messages say why */
};
struct outcome {
    struct run *run; /* the job as bid */
    struct candidate *candidate;
    size_t candidate_count;
    struct alternate_price *alternate;
    size_t alternate_count;
};
/* Plans the cuts and makes the order of run->takeoff from the set of suppliers that costs least, delivery and tax in,
 * sets with an order below a supplier's least one last.  Fills plans, order and bought_from.  false: a stop, or a plan
 * that its verifier rejects (the run says so). */
bool buy_job(struct arena *arena, struct run *run, struct diags *diags);
/* Runs one selection. */
struct run *run_job(struct arena *arena, const struct job *job, const struct catalog *catalog,
                    const struct selection *selection, struct diags *diags);
/* Loops over candidates (beams in load-path order, the least whole-job price that passes; ties to fewer plies, then
 * file order) and alternates; the loops stand outside the stages.  A candidate passes when each check of its beam
 * passes, it fails no other member that another candidate would not fail, asks no more of an engineer than another, can
 * be bought and cut, and goes into the house where another does.  The price compared is the one before rounding to
 * round_price_to.  outcome->run is NULL only after a stop. */
struct outcome *plan_job(struct arena *arena, const struct job *job, const struct catalog *catalog,
                         struct diags *diags);

#endif
