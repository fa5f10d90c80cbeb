/* Field: the crew's sheets, a page or more each, to be printed black on white.  No money stands on it. */
#include "workbook.h"

#include "field.h"
#include "sawbill/text.h"
#include "workbook_format.h"

/* A grid of narrow columns: every table spans them in its own way. */
static const double COLUMN_WIDTH = 3.6;
enum { TICK_COLUMNS = 1, BODY_ROW = 3 };
/* Letter, portrait: 11 in less two margins of 0.7 in, less the rows that every page repeats; a long table starts on a
 * page only where some of it goes there, too. */
static const double PAGE_POINTS = 640, TABLE_POINTS = 120, ROW_POINTS = 15;

/* Rows that stay together on a page where they can. */
struct row_block {
    int row;
    bool new_page;
    bool joins; /* its lines stand just before it: kept with them where both go on one page */
};
struct crew_page {
    struct page *page;
    struct row_block *block;
    size_t count, capacity;
};

static void begin_block(struct crew_page *crew, int row, bool new_page, bool joins)
{
    crew->block = arena_more(crew->page->book->arena, crew->block, crew->count, &crew->capacity, sizeof *crew->block);
    crew->block[crew->count++] = (struct row_block){row, new_page, joins};
}

static double block_points(const struct crew_page *crew, size_t index, const double *height, int rows)
{
    int end = index + 1 < crew->count ? crew->block[index + 1].row : rows;
    double points = 0;
    for (int row = crew->block[index].row; row < end && row < rows; row++)
        points += height[row] > 0 ? height[row] : ROW_POINTS;
    return points;
}

/* A block that does not fit on what is left of a page begins the next. */
static void break_pages(const struct crew_page *crew)
{
    double *height = NULL, used = 0;
    int rows = row_heights(crew->page, &height);
    for (size_t i = 0; i < crew->count; i++) {
        double points = block_points(crew, i, height, rows), left = PAGE_POINTS - used;
        double joined = points;
        if (i + 1 < crew->count && crew->block[i + 1].joins)
            joined += block_points(crew, i + 1, height, rows);
        if (joined > PAGE_POINTS)
            joined = points;
        bool next = joined > left && (joined <= PAGE_POINTS || left < TABLE_POINTS);
        if (used > 0 && (next || crew->block[i].new_page)) {
            page_break(crew->page, crew->block[i].row);
            used = 0;
        }
        used += points;
        while (used > PAGE_POINTS)
            used -= PAGE_POINTS;
    }
}

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

static int put_part(struct crew_page *crew, int row, const struct field_part *part, size_t number, bool first)
{
    struct page *page = crew->page;
    bool first_table = true;
    if (!first)
        begin_block(crew, row, false, false);
    row++;
    put(page, row++, 0, FIELD_SHARES, LOOK_CREW_PART, arena_printf(page->book->arena, "%zu. %s", number, part->title));
    for (size_t i = 0; i < part->count; i++) {
        bool table = part->item[i].is == FIELD_TABLE && part->item[i].table->rows > 0;
        if (i > 0 && table)
            begin_block(crew, row, false, first_table);
        first_table = first_table && !table;
        row = put_item(page, row, &part->item[i]);
    }
    return row;
}

static int put_sheet(struct crew_page *crew, int row, const struct field_sheet *sheet)
{
    begin_block(crew, row, true, false);
    put(crew->page, row++, 0, FIELD_SHARES, LOOK_CREW_BEAM, sheet->title);
    for (size_t i = 0; i < sheet->count; i++)
        row = put_part(crew, row, &sheet->part[i], i + 1, i == 0);
    return row + 1;
}

static void set_grid(struct page *page)
{
    page->columns = FIELD_SHARES;
    page->width = arena_array(page->book->arena, FIELD_SHARES, sizeof *page->width);
    for (int i = 0; i < FIELD_SHARES; i++)
        page->width[i] = COLUMN_WIDTH;
    page->frozen = BODY_ROW - 1;
    page->upright = true;
}

void build_field(struct workbook *w)
{
    struct page *page = w->field;
    struct crew_page crew = {.page = page};
    struct field field = field_of(w->arena, w->report);
    set_grid(page);
    put(page, 0, 0, FIELD_SHARES, LOOK_CREW_TITLE,
        arena_printf(w->arena, "%sField, INTERNAL, for the crew. %s, %s",
                     w->budget ? "BUDGET, not to build from. " : "", job_title(w->arena, w->job),
                     date_text(w->arena, w->job->facts.date.date)));
    put(page, 1, 0, FIELD_SHARES, LOOK_CREW_SAY,
        "Tape hooked once, on END 1: every measure runs from there, on both faces. To change a sheet, change the job.");
    int row = BODY_ROW;
    for (size_t i = 0; i < field.count; i++)
        row = put_sheet(&crew, row, &field.sheet[i]);
    if (field.count == 0)
        put(page, row++, 0, FIELD_SHARES, LOOK_CREW_SAY, "No new beam: no sheet for the crew.");
    put(page, row, 0, FIELD_SHARES, LOOK_CREW_SAY, caution_text());
    break_pages(&crew);
}
