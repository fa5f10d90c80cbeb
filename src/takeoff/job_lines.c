/* What the job lists itself: [work], [buy], [sub].  A trade without a wage is the pricing's to report. */
#include "counting.h"

static void count_work(struct counting *counting, const struct work *work)
{
    struct arena *arena = counting->arena;
    const char *trade = work->trade.text ? work->trade.text : "";
    const char *hours = decimal_text(arena, work->hours.decimal);
    line_add(counting,
             (struct takeoff_line){.id = arena_printf(arena, "work/%s", work->head.id),
                                   .what = work->what.text ? work->what.text : work->head.id,
                                   .where = "job",
                                   .count = work->hours.decimal,
                                   .unit = "hours",
                                   .counted = arena_printf(arena, "%s hours of %s, as the job says", hours, trade),
                                   .is = LINE_LABOR,
                                   .class = CLASS_LABOR,
                                   .trade = catalog_trade(counting->catalog, trade),
                                   .cost_code = work->cost_code.text,
                                   .at = work->head.at},
             NULL);
}

static void count_buy(struct counting *counting, const struct buy *buy)
{
    struct arena *arena = counting->arena;
    decimal_t count = buy->count.at ? buy->count.decimal : DECIMAL_ONE;
    const char *unit = buy->unit.text ? buy->unit.text : "each";
    const struct price *price = buy->item.text ? catalog_cheapest(counting->catalog, buy->item.text) : NULL;
    if (!buy->unit.text && price && price->unit)
        unit = price->unit;
    const char *what = buy->what.text ? buy->what.text : buy->item.text;
    line_add(counting,
             (struct takeoff_line){.id = arena_printf(arena, "buy/%s", buy->head.id),
                                   .what = what ? what : buy->head.id,
                                   .where = "job",
                                   .count = count,
                                   .unit = unit,
                                   .counted =
                                       arena_printf(arena, "%s %s, as the job says", decimal_text(arena, count), unit),
                                   .is = LINE_BUY,
                                   .class = buy->class.choice ? (enum cost_class)buy->class.choice : CLASS_MATERIALS,
                                   .item = buy->item.text,
                                   .price = buy->price.money,
                                   .has_own_markup = buy->own_markup.at != NULL,
                                   .own_markup = buy->own_markup.percent,
                                   .cost_code = buy->cost_code.text,
                                   .at = buy->head.at},
             NULL);
}

static void count_sub(struct counting *counting, const struct sub *sub)
{
    line_add(counting,
             (struct takeoff_line){.id = arena_printf(counting->arena, "sub/%s", sub->head.id),
                                   .what = sub->what.text ? sub->what.text : sub->head.id,
                                   .where = "job",
                                   .count = DECIMAL_ONE,
                                   .unit = "each",
                                   .counted = "one price for the whole, as the job says",
                                   .is = LINE_SUB,
                                   .class = sub->class.choice ? (enum cost_class)sub->class.choice : CLASS_SUBS,
                                   .price = sub->price.money,
                                   .has_own_markup = sub->own_markup.at != NULL,
                                   .own_markup = sub->own_markup.percent,
                                   .cost_code = sub->cost_code.text,
                                   .at = sub->head.at},
             NULL);
}

void count_job_lines(struct counting *counting)
{
    const struct job *job = counting->job;
    for (size_t i = 0; i < job->work_count; i++)
        count_work(counting, &job->works[i]);
    for (size_t i = 0; i < job->buy_count; i++)
        count_buy(counting, &job->buys[i]);
    for (size_t i = 0; i < job->sub_count; i++)
        count_sub(counting, &job->subs[i]);
}
