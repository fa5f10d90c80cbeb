/* sawbill field on the terminal. */
#include "terminal.h"

#include "field.h"

static void show_table(struct screen *screen, const struct field_table *of)
{
    struct column column[FIELD_COLUMNS_MOST];
    size_t from[FIELD_COLUMNS_MOST] = {0}, columns = 0;
    if (of->rows == 0)
        return;
    for (size_t i = 0; i < of->columns; i++)
        if (of->column[i].share > 0) {
            from[columns] = i;
            column[columns++] =
                (struct column){of->column[i].head, of->column[i].value == FIELD_NUMBER, of->column[i].wraps};
        }
    struct table table = table_new(screen->out.arena, column, columns);
    for (size_t i = 0; i < of->rows; i++) {
        struct table_row *row = table_row(&table);
        for (size_t k = 0; k < columns; k++)
            row->cell[k] = field_shown(screen->out.arena, of->row[i][from[k]].text);
    }
    buffer_add(&screen->out, "\n");
    if (*of->title)
        screen_printf(screen, WEIGHT_BOLD, "%s", of->title);
    screen_table(screen, &table);
}

static void show_item(struct screen *screen, const struct field_item *item)
{
    struct arena *arena = screen->out.arena;
    const char *text = field_shown(arena, item->text);
    switch (item->is) {
    case FIELD_SAY:
        screen_bullet(screen, text);
        return;
    case FIELD_TICK:
        screen_paragraph(screen, WEIGHT_PLAIN, 0, 4, arena_printf(arena, "[ ] %s", text));
        return;
    case FIELD_STOP:
        screen_paragraph(screen, WEIGHT_BOLD, 0, 4, arena_printf(arena, "STOP: %s", text));
        return;
    case FIELD_TABLE:
        show_table(screen, item->table);
        return;
    }
}

static void show_sheet(struct screen *screen, const struct field_sheet *sheet)
{
    for (size_t i = 0; i < screen->width; i++)
        buffer_add_n(&screen->out, "=", 1);
    screen_heading(screen, "%s", sheet->title);
    for (size_t i = 0; i < sheet->count; i++) {
        screen_heading(screen, "%zu. %s", i + 1, sheet->part[i].title);
        for (size_t k = 0; k < sheet->part[i].count; k++)
            show_item(screen, &sheet->part[i].item[k]);
    }
    buffer_add(&screen->out, "\n");
}

char *report_field(struct arena *arena, const struct report *report, bool color, int width)
{
    struct screen screen = screen_new(arena, color, width);
    screen_head(&screen, report);
    buffer_add(&screen.out, "\n");
    struct field field = field_of(arena, report);
    if (field.count == 0)
        screen_printf(&screen, WEIGHT_PLAIN, "No new beam: no sheet for the crew.");
    for (size_t i = 0; i < field.count; i++)
        show_sheet(&screen, &field.sheet[i]);
    screen_caution(&screen);
    return screen_text(&screen);
}
