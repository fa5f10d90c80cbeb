/* A small job made by hand for the tests of the written files: a sawn beam cut from two lengths and one by the foot,
 * hardware by the pack, labor, a sub with its own markup, an allowance.  The order and the estimate are worked out by
 * the price stage itself.  Every figure is invented. */
#ifndef SAWBILL_TESTS_SAMPLE_REPORT_H
#define SAWBILL_TESTS_SAMPLE_REPORT_H

#include <string.h>

#include "support.h"
#include "sawbill/report.h"

enum { SAMPLE_LINES = 8, SAMPLE_PRICES = 5 };

struct sample {
    struct arena *arena;
    struct report report;
    struct job job;
    struct entry written;
    struct catalog catalog;
    struct outcome outcome;
    struct run run;
    struct diags diags;
    struct design design;
    struct takeoff takeoff;
    struct takeoff_line line[SAMPLE_LINES];
    struct price price[SAMPLE_PRICES];
    struct supplier supplier[2];
    struct trade trade[2];
    struct task task[2];
    struct member member;
    struct cut_plan *plans[2];
};

static inline struct percent_value sample_percent(struct sample *s, percent_t percent)
{
    return (struct percent_value){percent, &s->written};
}

static inline void sample_prices(struct sample *s)
{
    struct date day = {2026, 3, 2};
    s->price[0] =
        (struct price){.item = "DFL2-2X10", .unit = "each", .supplier = "Yard One", .length = 16 * LENGTH_FOOT};
    s->price[0].price = 285000;
    s->price[1] = (struct price){.item = "LVL-9.5", .unit = "ft", .supplier = "Yard Two", .increment = 2 * LENGTH_FOOT};
    s->price[1].least = 4 * LENGTH_FOOT;
    s->price[1].most = 20 * LENGTH_FOOT;
    s->price[1].price = 58450;
    s->price[1].cut_charge = 25000;
    s->price[2] = (struct price){.item = "NAIL-10D", .unit = "lb", .supplier = "Yard One", .pack = 5 * DECIMAL_ONE};
    s->price[2].price = 194900;
    s->price[3] =
        (struct price){.item = "HANGER-210", .unit = "each", .supplier = "Yard Two", .pack = 10 * DECIMAL_ONE};
    s->price[3].price = 312500;
    s->price[4] = (struct price){.item = "NEVER-USED", .unit = "each", .supplier = "Yard Two", .pack = DECIMAL_ONE};
    s->price[4].price = 987654300;
    for (size_t i = 0; i < SAMPLE_PRICES; i++) {
        s->price[i].date = day;
        s->price[i].index = i;
        s->price[i].what = s->price[i].note = s->price[i].cost_code = "";
        s->price[i].pack = s->price[i].pack ? s->price[i].pack : DECIMAL_ONE;
    }
    s->supplier[0] = (struct supplier){.name = "Yard One", .delivery = 650000};
    s->supplier[1] = (struct supplier){.name = "Yard Two", .has_tax = true, .tax = 62500, .index = 1};
    s->trade[0] = (struct trade){.trade = "carpenter", .wage = 312500, .burden = 385000};
    s->trade[1] = (struct trade){.trade = "helper", .wage = 197500, .burden = 331250};
    s->task[0] = (struct task){.task = "hang joists", .trade = "carpenter", .per = "joist end", .likely = 3333};
    s->task[0].crew = 1;
    s->task[1] = (struct task){.task = "protect the floor", .trade = "helper", .per = "job", .likely = 15000};
    s->task[1].least = 2 * DECIMAL_ONE;
    s->task[1].crew = 1;
    s->catalog = (struct catalog){.prices = s->price,
                                  .price_count = SAMPLE_PRICES,
                                  .suppliers = s->supplier,
                                  .supplier_count = 2,
                                  .trades = s->trade,
                                  .trade_count = 2,
                                  .tasks = s->task,
                                  .task_count = 2};
}

static inline struct takeoff_line *sample_line(struct sample *s, const char *id, const char *what, enum line_is is,
                                               decimal_t count)
{
    struct takeoff_line *line = &s->line[s->takeoff.count++];
    *line = (struct takeoff_line){.id = id, .what = what, .where = "beam B1", .unit = "each", .is = is, .count = count};
    line->counted = "as drawn";
    return line;
}

static inline void sample_takeoff(struct sample *s)
{
    s->takeoff.line = s->line;
    struct takeoff_line *line = sample_line(s, "ties/B1", "tie nails", LINE_ITEM, 127500);
    line->item = "NAIL-10D";
    line->unit = "lb";
    line->loss = true;
    line = sample_line(s, "hangers/B1/A", "joist hanger", LINE_ITEM, 11 * DECIMAL_ONE);
    line->item = "HANGER-210";
    line = sample_line(s, "joists/B1", "hang joists", LINE_LABOR, 11 * DECIMAL_ONE);
    line->task = &s->task[0];
    line = sample_line(s, "protect", "protect the floor", LINE_LABOR, DECIMAL_ONE);
    line->task = &s->task[1];
    line = sample_line(s, "work/walk", "walk with the inspector", LINE_LABOR, 12500);
    line->trade = &s->trade[0];
    line = sample_line(s, "sub/wires", "electrician moves wires", LINE_SUB, DECIMAL_ONE);
    line->class = CLASS_SUBS;
    line->price = 4750000;
    line->has_own_markup = true;
    line->own_markup = 100000;
    line = sample_line(s, "buy/tile", "tile to match", LINE_BUY, 12 * DECIMAL_ONE);
    line->class = CLASS_ALLOWANCES;
    line->price = 65000;
}

static inline struct cut_plan *sample_plan(struct sample *s, const char *member, const struct price *price, length_t at)
{
    struct cut_piece *piece = arena_alloc(s->arena, sizeof *piece);
    *piece = (struct cut_piece){"ply, beam B1", 146 * LENGTH_INCH, 2};
    struct cut_stock *stock = arena_alloc(s->arena, sizeof *stock);
    money_t feet = at / LENGTH_FOOT;
    *stock = (struct cut_stock){.length = at, .price = price};
    stock->cost = price->increment ? price->price * feet + price->cut_charge : price->price;
    struct cut_problem *problem = arena_alloc(s->arena, sizeof *problem);
    *problem =
        (struct cut_problem){.member = member, .piece = piece, .piece_count = 1, .stock = stock, .stock_count = 1};
    return cut_solve(s->arena, problem, NULL, &s->diags);
}

static inline void sample_bid(struct sample *s)
{
    struct bid *bid = &s->job.bid;
    bid->method = (struct choice_value){METHOD_COMPOUND, &s->written};
    bid->tax_mode = (struct choice_value){TAX_IN_COST, NULL};
    bid->tax = sample_percent(s, 82500);
    bid->overhead = sample_percent(s, 120000);
    bid->contingency = sample_percent(s, 50000);
    bid->profit = sample_percent(s, 95000);
    bid->overhead_on[CLASS_LABOR] = sample_percent(s, 180000);
    bid->fastener_loss = sample_percent(s, 50000);
    bid->round_price_to = (struct money_value){5 * MONEY_DOLLAR, &s->written};
    bid->draws.item = arena_array(s->arena, 2, sizeof *bid->draws.item);
    bid->draws.item[0] = (struct text_value){"33.3 % on signing", &s->written};
    bid->draws.item[1] = (struct text_value){"66.7 % when patched", &s->written};
    bid->draws.count = 2;
    bid->valid_for = (struct count_value){14, &s->written};
}

static inline void sample_design(struct sample *s)
{
    static struct check checks[] = {
        {"bending", "NDS 2018 3.3.1", "D+L", 62.0, 993.96, 990.0, "psi", 0.931, true, "CF 1.1", "book A"},
        {"bearing", "NDS 2018 3.10.2", "D+L", 0.0, 400.0, 625.0, "psi", 0.64, false, NULL, "report B, unverified"},
    };
    struct member_checks *member = arena_alloc(s->arena, sizeof *member);
    *member = (struct member_checks){.id = "beam B1", .member = "2 - DFL2-2X10", .check = checks, .count = 2};
    member->passes = true;
    s->design.members = arena_alloc(s->arena, sizeof *s->design.members);
    s->design.members[0] = member;
    s->design.member_count = 1;
    s->design.passes = true;
}

/* Works out the order and the estimate again, after a test has changed the sample. */
static inline void sample_price(struct sample *s)
{
    s->diags.count = 0;
    s->run.order = order_job(s->arena, &s->job, &s->catalog, &s->takeoff, s->plans, 2, &s->diags);
    s->run.estimate = price_job(s->arena, &s->job, &s->takeoff, s->run.order, &s->catalog, &s->diags);
}

static inline struct sample *sample_new(struct arena *arena)
{
    struct sample *s = arena_alloc(arena, sizeof *s);
    s->arena = arena;
    s->diags.arena = arena;
    s->written.at = (struct place){"sample.ini", 1, 1, NULL};
    s->job.facts.name = (struct text_value){"Parlor wall", &s->written};
    s->job.facts.number = (struct text_value){"26-003", &s->written};
    s->job.facts.date = (struct date_value){{2026, 3, 5}, &s->written};
    s->job.facts.status = (struct choice_value){STATUS_BID, NULL};
    sample_bid(s);
    sample_prices(s);
    sample_takeoff(s);
    sample_design(s);
    s->member = (struct member){.code = "DFL2-2X10", .material = "Douglas Fir-Larch No.2", .size = "2x10"};
    s->plans[0] = sample_plan(s, "DFL2-2X10", &s->price[0], 16 * LENGTH_FOOT);
    s->plans[1] = sample_plan(s, "LVL-9.5", &s->price[1], 14 * LENGTH_FOOT);
    s->run = (struct run){.job = &s->job,
                          .catalog = &s->catalog,
                          .design = &s->design,
                          .takeoff = &s->takeoff,
                          .plans = s->plans,
                          .plan_count = 2};
    sample_price(s);
    s->outcome = (struct outcome){.run = &s->run};
    s->report = (struct report){.job = &s->job,
                                .catalog = &s->catalog,
                                .outcome = &s->outcome,
                                .diags = &s->diags,
                                .job_file = "sample.ini",
                                .signable = true};
    return s;
}

#endif
