/* Labor: hours by task, never less than the task's least, at the trade's wage with its burden. */
#include "price_internal.h"

/* hours = max(ROUND(count x hours each, 2), least). */
static decimal_t hours_of(const struct labor_line *line)
{
    decimal_t hours = money_times(line->hours_each, line->count); /* the same steps, the same two places */
    return hours < line->least ? line->least : hours;
}

static void price_labor(struct labor_line *line)
{
    line->hours = hours_of(line);
    line->rate = money_percent(line->trade->wage, PERCENT_WHOLE + line->trade->burden);
    line->total = money_times(line->rate, line->hours);
}

static decimal_t hours_at(const struct task *task, enum pace pace)
{
    return pace == PACE_LOW ? task->low : pace == PACE_HIGH ? task->high : task->likely;
}

static struct labor_line labor_of(const struct takeoff_line *from, const struct catalog *catalog, enum pace pace)
{
    struct labor_line line = {.id = from->id,
                              .what = from->what,
                              .counted = from->counted,
                              .task = from->task,
                              .trade = from->trade,
                              .count = from->count,
                              .cost_code = from->cost_code};
    if (!from->task) {
        line.per = "hour";
        line.hours_each = DECIMAL_ONE;
        line.crew = 1;
        return line;
    }
    line.per = from->task->per;
    line.hours_each = hours_at(from->task, pace);
    line.least = from->task->least;
    line.crew = from->task->crew;
    if (!line.trade)
        line.trade = catalog_trade(catalog, from->task->trade);
    if (!line.cost_code || !line.cost_code[0])
        line.cost_code = from->task->cost_code;
    return line;
}

/* [work] comes after the tasks. */
static int place_in_work(const struct labor_line *line)
{
    return line->task ? line->task->order : INT32_MAX;
}

/* Before the first line that is done later: equal ones keep the takeoff's order. */
static void insert_labor(struct estimate *estimate, struct labor_line line)
{
    size_t at = estimate->labor_count++;
    while (at > 0 && place_in_work(&estimate->labor[at - 1]) > place_in_work(&line)) {
        estimate->labor[at] = estimate->labor[at - 1];
        at--;
    }
    estimate->labor[at] = line;
}

void estimate_labor(struct arena *arena, const struct takeoff *takeoff, const struct catalog *catalog, enum pace pace,
                    struct estimate *estimate, struct diags *diags)
{
    estimate->labor = arena_array(arena, takeoff->count, sizeof *estimate->labor);
    for (size_t i = 0; i < takeoff->count; i++) {
        const struct takeoff_line *from = &takeoff->line[i];
        if (from->is != LINE_LABOR || from->count <= 0)
            continue;
        struct labor_line line = labor_of(from, catalog, pace);
        if (!line.trade) {
            diag_add(diags, DIAG_P001, from->at.file ? &from->at : NULL,
                     "no wage for '%s', which '%s' needs: add its row to trades.csv",
                     from->task ? from->task->trade : from->what, from->id);
            continue;
        }
        price_labor(&line);
        estimate->hours = price_sum(estimate->hours, line.hours);
        insert_labor(estimate, line);
    }
}
