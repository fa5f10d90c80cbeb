/* Conditions of the house that make a task take longer: hours = quantity x rate x factor (Peterson & Dagostino,
 * Estimating in Building Construction, productivity factor).  The factors are the user's own data. */
#include "counting.h"

#include "sawbill/text.h"

static bool named(const struct job *job, const char *condition)
{
    for (size_t i = 0; i < job->facts.conditions.count; i++)
        if (name_same(job->facts.conditions.item[i].text, condition))
            return true;
    return false;
}

/* The heaviest ply or beam that is lifted at once. */
static double heaviest_lb(const struct takeoff *takeoff)
{
    double most = 0;
    for (size_t i = 0; i < takeoff->raising_count; i++)
        most = takeoff->raising[i].lifted_lb > most ? takeoff->raising[i].lifted_lb : most;
    return most;
}

static const char *why_of(struct counting *counting, const struct condition *row)
{
    if (named(counting->job, row->condition))
        return row->condition;
    double heaviest = heaviest_lb(counting->takeoff);
    if (row->from_lb <= 0 || heaviest < row->from_lb)
        return NULL;
    return arena_printf(counting->arena, "%s, %s lb at once", row->condition,
                        number_text(counting->arena, heaviest, 0));
}

static void apply(struct counting *counting, struct takeoff_line *line)
{
    const struct catalog *catalog = counting->catalog;
    line->factor = DECIMAL_ONE;
    for (size_t i = 0; i < catalog->condition_count; i++) {
        const struct condition *row = &catalog->conditions[i];
        const char *why = name_same(row->task, line->task->task) ? why_of(counting, row) : NULL;
        if (!why)
            continue;
        line->factor = decimal_times(line->factor, row->factor, 4);
        line->counted = arena_printf(counting->arena, "%s; hours x %s for %s (%s)", line->counted,
                                     decimal_text(counting->arena, row->factor), why, row->source);
    }
}

static bool is_known(const struct catalog *catalog, const char *condition)
{
    for (size_t i = 0; i < catalog->condition_count; i++)
        if (name_same(catalog->conditions[i].condition, condition))
            return true;
    return false;
}

static void check_names(struct counting *counting)
{
    const struct texts_value *conditions = &counting->job->facts.conditions;
    for (size_t i = 0; i < conditions->count; i++)
        if (!is_known(counting->catalog, conditions->item[i].text))
            diag_add(counting->diags, DIAG_C006, &conditions->item[i].at->at,
                     "'%s' is no condition of conditions.csv: no factor is known for it", conditions->item[i].text);
}

void apply_conditions(struct counting *counting)
{
    check_names(counting);
    for (size_t i = 0; i < counting->takeoff->count; i++)
        if (counting->takeoff->line[i].is == LINE_LABOR && counting->takeoff->line[i].task)
            apply(counting, &counting->takeoff->line[i]);
}
