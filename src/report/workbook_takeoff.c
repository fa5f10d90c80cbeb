/* Takeoff: what was counted, where, and how. */
#include "workbook.h"

enum { T_ID, T_WHAT, T_WHERE, T_COUNT, T_UNIT, T_LENGTH, T_POUNDS, T_HOW, T_LOSS, T_CLASS, T_ITEM, T_CODE, T_COLUMNS };

static const struct column_head HEADS[T_COLUMNS] = {
    {"Line", 32, false}, {"What", 26, false},      {"Where", 20, false},        {"Count", 10, true},
    {"Unit", 11, false}, {"Each long", 11, false}, {"Pounds", 9, true},         {"How counted", 50, false},
    {"Loss", 14, false}, {"Class", 11, false},     {"Item or task", 20, false}, {"Your cost code", 11, false},
};

static const char *item_of(const struct takeoff_line *line)
{
    if (line->task)
        return line->task->task;
    return line->item ? line->item : "";
}

/* That of nails and screws is the bid's, to be changed on sheet Prices. */
static void add_loss(struct workbook *w, int row, const struct takeoff_line *line)
{
    percent_t loss = w->job->bid.fastener_loss.percent;
    if (line->loss && input_exists(w, INPUT_LOSS, NULL, 0))
        page_formula(w->takeoff, row, T_LOSS, LOOK_PERCENT, percent_fraction(loss), "=%s",
                     input_cell(w, INPUT_LOSS, NULL, 0));
    else
        page_text(w->takeoff, row, T_LOSS, LOOK_TEXT, takeoff_loss(w->arena, w->job, line));
}

static void add_line(struct workbook *w, int row, const struct takeoff_line *line)
{
    struct page *page = w->takeoff;
    struct arena *a = w->arena;
    page_text(page, row, T_ID, LOOK_WRAP, line->id);
    page_text(page, row, T_WHAT, LOOK_WRAP, line->what);
    page_text(page, row, T_WHERE, LOOK_WRAP, line->where);
    page_number(page, row, T_COUNT, LOOK_NUMBER, decimal_value(line->count));
    page_text(page, row, T_UNIT, LOOK_TEXT, line->unit);
    page_text(page, row, T_LENGTH, LOOK_TEXT, line->length ? length_tape(a, line->length) : "");
    page_text(page, row, T_HOW, LOOK_WRAP, line->counted);
    page_text(page, row, T_CLASS, LOOK_TEXT, line->class == CLASS_UNANSWERED ? "" : class_name(line->class));
    page_text(page, row, T_ITEM, LOOK_WRAP, item_of(line));
    page_text(page, row, T_CODE, LOOK_TEXT, line->cost_code);
    if (line->pounds > 0)
        page_number(page, row, T_POUNDS, LOOK_NUMBER, decimal_value(line->pounds));
    add_loss(w, row, line);
}

/* What comes back when the shores are down. */
static void add_returns(struct page *page, int row, const struct takeoff *takeoff)
{
    struct arena *a = page->book->arena;
    if (takeoff->back_count == 0)
        return;
    page_band(page, row, T_COLUMNS, LOOK_SUM_TEXT, "Comes back when the shores are down");
    for (size_t i = 0; i < takeoff->back_count; i++) {
        const struct takeoff_return *back = &takeoff->back[i];
        row++;
        page_text(page, row, T_ID, LOOK_WRAP, back->what);
        page_text(page, row, T_WHERE, LOOK_WRAP, back->from);
        page_number(page, row, T_COUNT, LOOK_NUMBER, (double)back->count);
        page_text(page, row, T_UNIT, LOOK_TEXT, "each");
        page_text(page, row, T_LENGTH, LOOK_TEXT, back->length ? length_tape(a, back->length) : "");
    }
}

/* Loose volume and weight of each sort, with where the figures come from. */
static int add_debris(struct page *page, int row, const struct takeoff *takeoff)
{
    struct arena *a = page->book->arena;
    if (takeoff->debris_count == 0)
        return row;
    page_band(page, row++, T_COLUMNS, LOOK_SUM_TEXT, "Debris");
    for (size_t i = 0; i < takeoff->debris_count; i++, row++) {
        const struct takeoff_debris *debris = &takeoff->debris[i];
        page_text(page, row, T_ID, LOOK_WRAP, debris->row->debris);
        page_number(page, row, T_COUNT, LOOK_NUMBER, decimal_value(debris->cuft));
        page_text(page, row, T_UNIT, LOOK_TEXT, "cu ft loose");
        page_text(page, row, T_HOW, LOOK_WRAP,
                  arena_printf(a, "%s x %s: %s cu ft solid each, x %s loose; %s lb; %s", decimal_text(a, debris->count),
                               debris->row->per, decimal_text(a, debris->row->solid),
                               decimal_text(a, debris->row->fluff), decimal_text(a, debris->pounds),
                               debris->row->source));
    }
    return row + 1;
}

static int add_forgotten(struct page *page, int row, const struct takeoff *takeoff)
{
    struct arena *a = page->book->arena;
    if (takeoff->forgotten_count == 0)
        return row;
    page_band(page, row++, T_COLUMNS, LOOK_SUM_TEXT, "Usually forgotten");
    for (size_t i = 0; i < takeoff->forgotten_count; i++, row++) {
        const struct takeoff_forgotten *forgotten = &takeoff->forgotten[i];
        page_text(page, row, T_ID, LOOK_WRAP, forgotten->row->line);
        page_text(page, row, T_WHAT, LOOK_WRAP, forgotten_word(forgotten->state));
        page_text(page, row, T_HOW, LOOK_WRAP,
                  *forgotten->by ? arena_printf(a, "by %s", forgotten->by) : forgotten->why);
    }
    return row + 1;
}

void build_takeoff(struct workbook *w)
{
    struct page *page = w->takeoff;
    page_widths(page, HEADS, T_COLUMNS);
    page_title(w, page, "Takeoff");
    page_text(page, 2, 0, LOOK_UNDER_TITLE, "Results of the run: to change a count, change the job and run again.");
    page_heads(page, HEAD_ROW, HEADS, T_COLUMNS);
    const struct takeoff *takeoff = w->run->takeoff;
    int row = FIRST_ROW;
    for (size_t i = 0; takeoff && i < takeoff->count; i++)
        add_line(w, row++, &takeoff->line[i]);
    page->frozen = FIRST_ROW;
    page->filter_first = HEAD_ROW;
    page->filter_last = row - 1;
    if (takeoff)
        add_returns(page, add_forgotten(page, add_debris(page, row + 1, takeoff), takeoff), takeoff);
}
