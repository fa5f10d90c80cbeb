/* From direct cost to price, class by class: each amount rounded to the cent, once. */
#include "price_internal.h"

static void by_compound(struct class_total *total)
{
    total->overhead = money_percent(total->direct, total->overhead_rate);
    money_t so_far = price_sum(total->direct, total->overhead);
    total->contingency = money_percent(so_far, total->contingency_rate);
    so_far = price_sum(so_far, total->contingency);
    total->profit = money_percent(so_far, total->profit_rate);
    total->price = price_sum(so_far, total->profit);
}

static void by_adding(struct class_total *total)
{
    total->overhead = money_percent(total->direct, total->overhead_rate);
    total->contingency = money_percent(total->direct, total->contingency_rate);
    total->profit = money_percent(total->direct, total->profit_rate);
    total->price = price_sum(price_sum(total->direct, total->overhead), price_sum(total->contingency, total->profit));
}

/* Only called with rates that leave something: their sum is below 100 %. */
static void by_margin(struct class_total *total)
{
    percent_t rates = total->overhead_rate + total->contingency_rate + total->profit_rate;
    total->price = money_over_rest(total->direct, rates);
    total->overhead = money_percent(total->price, total->overhead_rate);
    total->contingency = money_percent(total->price, total->contingency_rate);
    total->profit = total->price - total->direct - total->overhead - total->contingency;
}

static void by_own(struct class_total *total, percent_t markup)
{
    total->overhead_rate = markup;
    total->overhead = money_percent(total->direct, markup);
    total->price = price_sum(total->direct, total->overhead);
}

static void price_class(const struct job *job, struct class_total *total, struct diags *diags)
{
    const struct bid *bid = &job->bid;
    total->overhead_rate = class_rate(&bid->overhead, bid->overhead_on, total->class);
    total->contingency_rate = class_rate(&bid->contingency, bid->contingency_on, total->class);
    total->profit_rate = class_rate(&bid->profit, bid->profit_on, total->class);
    percent_t rates = total->overhead_rate + total->contingency_rate + total->profit_rate;
    if (bid->method.choice == METHOD_ADD)
        by_adding(total);
    else if (bid->method.choice != METHOD_MARGIN)
        by_compound(total);
    else if (rates < PERCENT_WHOLE)
        by_margin(total);
    else
        diag_add(
            diags, DIAG_P003, place_of(bid->method.at, &bid->head),
            "overhead, contingency and profit on %s add up to %s of the price: by margin that leaves nothing to pay "
            "its cost; lower them, or use 'method = compound'",
            class_name(total->class), percent_text(diags->arena, rates));
}

static void add_class(const struct job *job, struct estimate *estimate, enum cost_class class, struct diags *diags)
{
    struct class_total total = {.class = class};
    bool used = false;
    for (size_t i = 0; i < estimate->line_count; i++) {
        const struct estimate_line *line = &estimate->line[i];
        if (line->class != class || line->has_own_markup)
            continue;
        total.direct = price_sum(total.direct, line->total);
        used = true;
    }
    if (!used)
        return;
    price_class(job, &total, diags);
    estimate->class_[estimate->class_count++] = total;
}

static void add_own(struct estimate *estimate, size_t index)
{
    const struct estimate_line *line = &estimate->line[index];
    struct class_total total = {.class = line->class, .own = true, .line = index, .direct = line->total};
    by_own(&total, line->own_markup);
    estimate->class_[estimate->class_count++] = total;
}

void estimate_markup(struct arena *arena, const struct job *job, struct estimate *estimate, struct diags *diags)
{
    estimate->class_ = arena_array(arena, CLASS_COUNT + estimate->line_count, sizeof *estimate->class_);
    for (int class = CLASS_UNANSWERED + 1; class < CLASS_COUNT; class ++)
        add_class(job, estimate, (enum cost_class) class, diags);
    for (size_t i = 0; i < estimate->line_count; i++)
        if (estimate->line[i].has_own_markup)
            add_own(estimate, i);
    for (size_t i = 0; i < estimate->class_count; i++) {
        const struct class_total *total = &estimate->class_[i];
        estimate->direct = price_sum(estimate->direct, total->direct);
        estimate->overhead = price_sum(estimate->overhead, total->overhead);
        estimate->contingency = price_sum(estimate->contingency, total->contingency);
        estimate->profit = price_sum(estimate->profit, total->profit);
        estimate->before_tax = price_sum(estimate->before_tax, total->price);
    }
}
