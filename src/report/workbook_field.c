/* Field: the crew's sheets, a page or more each, to be printed black on white.  No money stands on it. */
#include "workbook.h"

#include "field.h"
#include "sawbill/text.h"

/* A grid of narrow columns: every table spans them in its own way. */
static const double COLUMN_WIDTH = 5.0;
enum { TICK_COLUMNS = 1, BODY_ROW = 3 };

static bool is_digit(char c)
{
    return c >= '0' && c <= '9';
}

/* "7-1/2": the hyphen of a mixed number. */
static bool is_mixed(const char *hyphen)
{
    const char *c = hyphen + 1;
    while (is_digit(*c))
        c++;
    return c > hyphen + 1 && *c == '/';
}

/* Spreadsheet programs also end lines at a hyphen: within a tape reading it becomes one (U+2011) where none ends. */
static const char *kept_whole(struct arena *arena, const char *text)
{
    static const char hyphen[] = "\xE2\x80\x91";
    struct buffer out = {.arena = arena};
    for (const char *c = text; *c; c++) {
        bool within = *c == '-' && c > text && is_digit(c[-1]) && is_mixed(c);
        buffer_add_n(&out, within ? hyphen : c, within ? sizeof hyphen - 1 : 1);
    }
    return buffer_text(&out);
}

/* A cell over `share` columns. */
static void put(struct page *page, int row, int column, int share, enum look look, const char *text)
{
    page_paragraph(page, row, column, column + share - 1, look,
                   kept_whole(page->book->arena, field_shown(page->book->arena, text)));
}

static int put_row(struct page *page, int row, const struct field_table *table, enum look look,
                   const struct field_cell *cell)
{
    int column = 0;
    for (size_t i = 0; i < table->columns; i++) {
        if (table->column[i].share == 0)
            continue;
        put(page, row, column, table->column[i].share, look, cell ? cell[i].text : table->column[i].head);
        column += table->column[i].share;
    }
    return row + 1;
}

static int put_table(struct page *page, int row, const struct field_table *table)
{
    if (table->rows == 0)
        return row;
    row++;
    if (*table->title)
        put(page, row++, 0, FIELD_SHARES, LOOK_CREW_TITLE, table->title);
    row = put_row(page, row, table, LOOK_CREW_HEAD, NULL);
    for (size_t i = 0; i < table->rows; i++)
        row = put_row(page, row, table, LOOK_CREW_CELL, table->row[i]);
    return row + 1;
}

static int put_item(struct page *page, int row, const struct field_item *item)
{
    switch (item->is) {
    case FIELD_SAY:
        put(page, row, 0, FIELD_SHARES, LOOK_CREW_SAY, item->text);
        return row + 1;
    case FIELD_TICK:
        put(page, row, 0, TICK_COLUMNS, LOOK_CREW_CELL, "");
        put(page, row, TICK_COLUMNS, FIELD_SHARES - TICK_COLUMNS, LOOK_CREW_SAY,
            arena_printf(page->book->arena, " %s", item->text));
        return row + 1;
    case FIELD_STOP:
        put(page, row, 0, FIELD_SHARES, LOOK_CREW_STOP, arena_printf(page->book->arena, "STOP: %s", item->text));
        return row + 1;
    case FIELD_TABLE:
        return put_table(page, row, item->table);
    }
    return row;
}

static int put_sheet(struct page *page, int row, const struct field_sheet *sheet)
{
    put(page, row++, 0, FIELD_SHARES, LOOK_CREW_BEAM, sheet->title);
    for (size_t i = 0; i < sheet->count; i++) {
        const struct field_part *part = &sheet->part[i];
        row++;
        put(page, row++, 0, FIELD_SHARES, LOOK_CREW_PART,
            arena_printf(page->book->arena, "%zu. %s", i + 1, part->title));
        for (size_t k = 0; k < part->count; k++)
            row = put_item(page, row, &part->item[k]);
    }
    return row + 1;
}

static void set_grid(struct page *page)
{
    page->columns = FIELD_SHARES;
    page->width = arena_array(page->book->arena, FIELD_SHARES, sizeof *page->width);
    for (int i = 0; i < FIELD_SHARES; i++)
        page->width[i] = COLUMN_WIDTH;
    page->frozen = BODY_ROW - 1;
}

void build_field(struct workbook *w)
{
    struct page *page = w->field;
    struct field field = field_of(w->arena, w->report);
    set_grid(page);
    put(page, 0, 0, FIELD_SHARES, LOOK_CREW_TITLE,
        arena_printf(w->arena, "%sField: what the crew works from", w->budget ? "BUDGET, not to build from. " : ""));
    put(page, 1, 0, FIELD_SHARES, LOOK_CREW_SAY,
        arena_printf(w->arena, "INTERNAL, for the crew. %s, %s. To change it, change the job and run again.",
                     job_title(w->arena, w->job), date_text(w->arena, w->job->facts.date.date)));
    int row = BODY_ROW;
    for (size_t i = 0; i < field.count; i++) {
        if (i > 0)
            page_break(page, row);
        row = put_sheet(page, row, &field.sheet[i]);
    }
    if (field.count == 0)
        put(page, row++, 0, FIELD_SHARES, LOOK_CREW_SAY, "No new beam: no sheet for the crew.");
    put(page, row, 0, FIELD_SHARES, LOOK_CREW_SAY, caution_text());
}
