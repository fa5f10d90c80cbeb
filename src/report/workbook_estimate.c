/* Estimate: every direct cost, class by class; each line refers to the sheet where it is worked out. */
#include "workbook.h"

enum { E_CLASS, E_WHAT, E_ID, E_COUNT, E_UNIT, E_EACH, E_TOTAL, E_MARKED, E_OWN, E_CODE, E_COLUMNS };
_Static_assert((int)E_CLASS == (int)BILL_CLASS && (int)E_TOTAL == (int)BILL_TOTAL && (int)E_MARKED == (int)BILL_MARKED,
               "columns that others use");

static const struct column_head HEADS[E_COLUMNS] = {
    {"Class", 12, false},    {"What", 40, false},           {"Line", 34, false},       {"Count", 10, true},
    {"Unit", 19, false},     {"Price", 12, true},           {"Direct cost", 13, true}, {"Marked up", 11, false},
    {"Own markup", 9, true}, {"Your cost code", 11, false},
};

static void refer(struct workbook *w, int row, int column, enum look look, double value, const struct page *page,
                  int from_row, int from_column)
{
    page_formula(w->bill, row, column, look, value, "=%s", book_address(page, from_row, from_column));
}

static void add_job_price(struct workbook *w, int row, const struct estimate_line *line, size_t index)
{
    struct arena *a = w->arena;
    page_number(w->bill, row, E_COUNT, LOOK_NUMBER, decimal_value(line->count));
    page_formula(w->bill, row, E_EACH, LOOK_MONEY, money_dollars(line->price), "=%s",
                 input_cell(w, INPUT_OWN_PRICE, NULL, index));
    page_formula(w->bill, row, E_TOTAL, LOOK_MONEY, money_dollars(line->total), "=ROUND(%s*%s,2)",
                 cell_name(a, row, E_COUNT), cell_name(a, row, E_EACH));
}

static void add_source(struct workbook *w, int row, const struct estimate_line *line, size_t index)
{
    double count = decimal_value(line->count), each = money_dollars(line->price), total = money_dollars(line->total);
    int from;
    switch (line->from) {
    case FROM_ORDER:
        from = w->order_row[line->index];
        refer(w, row, E_COUNT, LOOK_NUMBER, count, w->buying, from, ORDER_PACKS);
        refer(w, row, E_EACH, LOOK_MONEY, each, w->buying, from, ORDER_PRICE);
        refer(w, row, E_TOTAL, LOOK_MONEY, total, w->buying, from, ORDER_TOTAL);
        return;
    case FROM_LABOR:
        from = w->labor_row[line->index];
        refer(w, row, E_COUNT, LOOK_NUMBER, count, w->labor, from, LABOR_HOURS);
        refer(w, row, E_EACH, LOOK_MONEY, each, w->labor, from, LABOR_RATE);
        refer(w, row, E_TOTAL, LOOK_MONEY, total, w->labor, from, LABOR_TOTAL);
        return;
    case FROM_DELIVERY:
    case FROM_TAX:
        from = line->from == FROM_TAX ? w->tax_row[line->index] : w->delivery_row[line->index];
        page_text(w->bill, row, E_COUNT, LOOK_TEXT, "");
        page_text(w->bill, row, E_EACH, LOOK_TEXT, "");
        refer(w, row, E_TOTAL, LOOK_MONEY, total, w->buying, from, ORDER_TOTAL);
        return;
    case FROM_JOB:
        add_job_price(w, row, line, index);
        return;
    }
}

static void add_line(struct workbook *w, int row, size_t index)
{
    const struct estimate_line *line = &w->estimate->line[index];
    struct page *page = w->bill;
    w->bill_row[index] = row;
    page_text(page, row, E_CLASS, LOOK_TEXT, class_name(line->class));
    page_text(page, row, E_WHAT, LOOK_WRAP, line->what);
    page_text(page, row, E_ID, LOOK_WRAP, line->id);
    page_text(page, row, E_UNIT, LOOK_TEXT, line->unit);
    add_source(w, row, line, index);
    page_text(page, row, E_MARKED, LOOK_TEXT, line->has_own_markup ? "own" : "by class");
    if (line->has_own_markup)
        page_formula(page, row, E_OWN, LOOK_PERCENT, percent_fraction(line->own_markup), "=%s",
                     input_cell(w, INPUT_OWN_MARKUP, NULL, index));
    else
        page_text(page, row, E_OWN, LOOK_TEXT, "");
    page_text(page, row, E_CODE, LOOK_TEXT, line->cost_code);
}

static int add_class(struct workbook *w, int row, enum cost_class class)
{
    struct arena *a = w->arena;
    int first = row;
    money_t sum = 0;
    for (size_t i = 0; i < w->estimate->line_count; i++) {
        if (w->estimate->line[i].class != class)
            continue;
        add_line(w, row++, i);
        sum += w->estimate->line[i].total;
    }
    if (row == first)
        return row;
    page_band(w->bill, row, E_COLUMNS, LOOK_SUM_TEXT, class_name(class));
    page_text(w->bill, row, E_WHAT, LOOK_SUM_TEXT, arena_printf(a, "all %s", class_name(class)));
    page_text(w->bill, row, E_MARKED, LOOK_SUM_TEXT, "sum");
    page_formula(w->bill, row, E_TOTAL, LOOK_SUM_MONEY, money_dollars(sum), "=ROUND(SUM(%s:%s),2)",
                 cell_name(a, first, E_TOTAL), cell_name(a, row - 1, E_TOTAL));
    return row + 1;
}

void build_estimate(struct workbook *w)
{
    struct page *page = w->bill;
    page_widths(page, HEADS, E_COLUMNS);
    page_title(w, page, "Estimate");
    page_text(page, 2, 0, LOOK_UNDER_TITLE,
              "Direct cost. Counts, sizes and cuts are results of the run; prices and rates are on sheet Prices.");
    page_heads(page, HEAD_ROW, HEADS, E_COLUMNS);
    w->bill_row = arena_array(w->arena, w->estimate->line_count, sizeof *w->bill_row);
    w->bill_first = FIRST_ROW;
    int row = FIRST_ROW;
    for (int class = CLASS_UNANSWERED + 1; class < CLASS_COUNT; class ++)
        row = add_class(w, row, (enum cost_class) class);
    w->bill_last = row > FIRST_ROW ? row - 1 : FIRST_ROW;
    page->frozen = FIRST_ROW;
    page->filter_first = HEAD_ROW;
    page->filter_last = w->bill_last;
}
