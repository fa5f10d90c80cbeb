/* Labor: hours by task, never less than the task's least, at the trade's wage with its burden. */
#include "price_internal.h"
#include "sawbill/wide.h"

/* hours = max(ROUND(count x ROUND(hours each x factor, 4), 2), least). */
static decimal_t hours_of(const struct labor_line *line)
{
    decimal_t each = decimal_times(line->hours_each, line->factor, 4);
    decimal_t hours = money_times(each, line->count); /* the same steps, the same two places */
    return hours < line->least ? line->least : hours;
}

/* By all of its crew at once, to hundredths. */
static decimal_t days_of(const struct labor_line *line, decimal_t hours_a_day)
{
    const decimal_t hundredth = DECIMAL_ONE / 100;
    wide_t a_day = (wide_t)(line->crew > 0 ? line->crew : 1) * hours_a_day;
    return (decimal_t)divide_round((wide_t)line->hours * 100, a_day) * hundredth;
}

static void price_labor(struct labor_line *line, decimal_t hours_a_day)
{
    line->hours = hours_of(line);
    line->days = days_of(line, hours_a_day);
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
                              .factor = from->factor > 0 ? from->factor : DECIMAL_ONE,
                              .in_work = from->in_work,
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

/* Before the first line that is done later: equal ones keep the takeoff's order. */
static void insert_labor(struct estimate *estimate, struct labor_line line)
{
    size_t at = estimate->labor_count++;
    while (at > 0 && estimate->labor[at - 1].in_work > line.in_work) {
        estimate->labor[at] = estimate->labor[at - 1];
        at--;
    }
    estimate->labor[at] = line;
}

decimal_t hours_a_day(const struct job *job)
{
    decimal_t hours = job->facts.hours_a_day.decimal;
    return hours > 0 ? hours : 8 * DECIMAL_ONE;
}

/* One task after the other, up to whole days; the crew comes at least so often. */
static int64_t working_days(const struct job *job, const struct estimate *estimate)
{
    decimal_t sum = 0;
    for (size_t i = 0; i < estimate->labor_count; i++)
        sum = price_sum(sum, estimate->labor[i].days);
    int64_t days = (sum + DECIMAL_ONE - 1) / DECIMAL_ONE;
    return days > job->facts.trips.count ? days : job->facts.trips.count;
}

void estimate_labor(struct arena *arena, const struct job *job, const struct takeoff *takeoff,
                    const struct catalog *catalog, enum pace pace, struct estimate *estimate, struct diags *diags)
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
        price_labor(&line, hours_a_day(job));
        estimate->hours = price_sum(estimate->hours, line.hours);
        insert_labor(estimate, line);
    }
    estimate->working_days = working_days(job, estimate);
}
