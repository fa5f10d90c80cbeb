/* Labor: the tasks in the order of the work. */
#include "workbook.h"

enum {
    L_WHAT,
    L_COUNTED,
    L_TRADE,
    L_CREW,
    L_COUNT,
    L_PER,
    L_EACH,
    L_LEAST,
    L_HOURS,
    L_RATE,
    L_TOTAL,
    L_CODE,
    L_DAYS,
    L_FACTOR
};
enum { L_COLUMNS = L_FACTOR + 1 };
_Static_assert((int)L_HOURS == (int)LABOR_HOURS && (int)L_RATE == (int)LABOR_RATE && (int)L_TOTAL == (int)LABOR_TOTAL,
               "columns that others use");

static const struct column_head HEADS[L_COLUMNS] = {
    {"What", 30, false},

    {"How counted", 46, false},
    {"Trade", 13, false},
    {"Crew", 6, true},
    {"Count", 9, true},
    {"Per", 20, false},
    {"Hours each", 9, true},
    {"Least hours", 8, true},
    {"Hours", 9, true},
    {"Rate", 10, true},
    {"Cost", 12, true},
    {"Your cost code", 11, false},
    {"Days", 8, true},
    {"Factor", 8, true},
};

/* Where the hours of a day stand, under the table. */
static const char *hours_cell(const struct workbook *w)
{
    return cell_fixed(w->arena, FIRST_ROW + (int)w->estimate->labor_count + 2, L_COUNT);
}

static void add_line(struct workbook *w, int row, const struct labor_line *line)
{
    struct page *page = w->labor;
    struct arena *a = w->arena;
    page_text(page, row, L_WHAT, LOOK_WRAP, line->what);
    page_text(page, row, L_COUNTED, LOOK_WRAP, line->counted);
    page_text(page, row, L_TRADE, LOOK_TEXT, line->trade->trade);
    page_number(page, row, L_CREW, LOOK_NUMBER, line->crew);
    /* [work] is so many hours of the job file: they are the input, at one hour each. */
    page_number(page, row, L_COUNT, line->task ? LOOK_NUMBER : LOOK_IN_NUMBER, decimal_value(line->count));
    page_text(page, row, L_PER, LOOK_TEXT, line->per);
    page_number(page, row, L_EACH, line->task ? LOOK_IN_NUMBER : LOOK_NUMBER, decimal_value(line->hours_each));
    page_number(page, row, L_LEAST, line->task ? LOOK_IN_NUMBER : LOOK_NUMBER, decimal_value(line->least));
    page_formula(page, row, L_HOURS, LOOK_HOURS, decimal_value(line->hours), "=MAX(ROUND(%s*ROUND(%s*%s,4),2),%s)",
                 cell_name(a, row, L_COUNT), cell_name(a, row, L_EACH), cell_name(a, row, L_FACTOR),
                 cell_name(a, row, L_LEAST));
    page_number(page, row, L_FACTOR, line->task ? LOOK_IN_NUMBER : LOOK_NUMBER, decimal_value(line->factor));
    page_formula(page, row, L_RATE, LOOK_MONEY, money_dollars(line->rate), "=%s",
                 input_cell(w, INPUT_RATE, line->trade, 0));
    page_formula(page, row, L_TOTAL, LOOK_MONEY, money_dollars(line->total), "=ROUND(%s*%s,2)",
                 cell_name(a, row, L_HOURS), cell_name(a, row, L_RATE));
    page_text(page, row, L_CODE, LOOK_TEXT, line->cost_code);
    page_formula(page, row, L_DAYS, LOOK_NUMBER, decimal_value(line->days), "=ROUND(%s/%s/%s,2)",
                 cell_name(a, row, L_HOURS), cell_name(a, row, L_CREW), hours_cell(w));
}

/* Two inputs and what they come to, under the table. */
static void add_days(struct workbook *w, int row)
{
    struct page *page = w->labor;
    struct arena *a = w->arena;
    const char *first = cell_name(a, FIRST_ROW, L_DAYS), *last = cell_name(a, row - 1, L_DAYS);
    page_text(page, row + 2, L_WHAT, LOOK_TEXT, "Hours a day");
    page_number(page, row + 2, L_COUNT, LOOK_IN_NUMBER, decimal_value(hours_a_day(w->job)));
    page_text(page, row + 3, L_WHAT, LOOK_TEXT, "Trips of the crew");
    page_number(page, row + 3, L_COUNT, LOOK_IN_NUMBER, w->job->facts.trips.count);
    page_text(page, row + 4, L_WHAT, LOOK_SUM_TEXT, "Working days");
    page_text(page, row + 4, L_COUNTED, LOOK_WRAP,
              "the days of all lines, one after the other, up to whole days; at least the trips");
    page_formula(page, row + 4, L_COUNT, LOOK_NUMBER, (double)w->estimate->working_days,
                 "=MAX(ROUNDUP(ROUND(SUM(%s:%s),4),0),%s)", first, last, cell_name(a, row + 3, L_COUNT));
}

static money_t sum_of(const struct estimate *estimate)
{
    money_t sum = 0;
    for (size_t i = 0; i < estimate->labor_count; i++)
        sum += estimate->labor[i].total;
    return sum;
}

void build_labor(struct workbook *w)
{
    struct page *page = w->labor;
    struct arena *a = w->arena;
    const struct estimate *estimate = w->estimate;
    page_widths(page, HEADS, L_COLUMNS);
    page_title(w, page, "Labor");
    page_text(page, 2, 0, LOOK_UNDER_TITLE,
              "In the order of the work. Hours = count x hours each x factor of the conditions, never less than the "
              "least of a visit; days = "
              "hours / crew / "
              "hours a day.");
    page_heads(page, HEAD_ROW, HEADS, L_COLUMNS);
    w->labor_row = arena_array(a, estimate->labor_count, sizeof *w->labor_row);
    int row = FIRST_ROW;
    for (size_t i = 0; i < estimate->labor_count; i++, row++) {
        w->labor_row[i] = row;
        add_line(w, row, &estimate->labor[i]);
    }
    page->frozen = FIRST_ROW;
    if (row == FIRST_ROW)
        return;
    page->filter_first = HEAD_ROW;
    page->filter_last = row - 1;
    page_band(page, row, L_COLUMNS, LOOK_SUM_TEXT, "All labor");
    page_formula(page, row, L_HOURS, LOOK_SUM_HOURS, decimal_value(estimate->hours), "=SUM(%s:%s)",
                 cell_name(a, FIRST_ROW, L_HOURS), cell_name(a, row - 1, L_HOURS));
    page_formula(page, row, L_TOTAL, LOOK_SUM_MONEY, money_dollars(sum_of(estimate)), "=ROUND(SUM(%s:%s),2)",
                 cell_name(a, FIRST_ROW, L_TOTAL), cell_name(a, row - 1, L_TOTAL));
    w->hours_cell = book_address(page, row, L_HOURS);
    add_days(w, row);
}
