/* Wrapped text and aligned tables for the terminal. */
#include "terminal.h"

#include <string.h>

enum { GAP = 2, COLUMN_LEAST = 8 };

static const char *const sgr_on[] = {"", "\033[1m", "\033[2m"};

struct screen screen_new(struct arena *arena, bool color, int width)
{
    size_t columns = width < SCREEN_LEAST ? SCREEN_LEAST : (size_t)width;
    return (struct screen){
        .out = {.arena = arena}, .color = color, .width = columns > SCREEN_MOST ? SCREEN_MOST : columns};
}

char *screen_text(struct screen *screen)
{
    return arena_strdup(screen->out.arena, buffer_text(&screen->out));
}

static void weight_on(struct screen *screen, enum weight weight)
{
    if (screen->color)
        buffer_add(&screen->out, sgr_on[weight]);
}

static void weight_off(struct screen *screen, enum weight weight)
{
    if (screen->color && weight != WEIGHT_PLAIN)
        buffer_add(&screen->out, "\033[0m");
}

static void add_blanks(struct buffer *out, size_t count)
{
    for (size_t i = 0; i < count; i++)
        buffer_add_n(out, " ", 1);
}

/* Control characters (C0, DEL, C1) become blanks: no text of a file moves the cursor. */
static char *clean_text(struct arena *arena, const char *text)
{
    char *copy = arena_strdup(arena, text ? text : "");
    for (unsigned char *c = (unsigned char *)copy; *c; c++) {
        if (*c < 0x20 || *c == 0x7F)
            *c = ' ';
        if (*c == 0xC2 && c[1] >= 0x80 && c[1] < 0xA0)
            *c = c[1] = ' ';
    }
    return copy;
}

static size_t columns_of(const char *text, size_t length)
{
    return utf8_count(text, length);
}

/* Bytes of the first `columns` code points. */
static size_t bytes_of(const char *text, size_t columns)
{
    size_t at = 0;
    while (text[at] && columns > 0) {
        at++;
        while (((unsigned char)text[at] & 0xC0) == 0x80)
            at++;
        columns--;
    }
    return at;
}

/* Bytes of the next line of at most `width` columns: broken at a blank, or inside a word that alone is too long. */
static size_t line_bytes(const char *text, size_t width)
{
    size_t room = bytes_of(text, width);
    if (!text[room] || text[room] == ' ')
        return room;
    for (size_t at = room; at > 0; at--)
        if (text[at - 1] == ' ')
            return at - 1 > 0 ? at - 1 : room;
    return room;
}

struct wrapped {
    const char *text; /* of the next line */
    size_t length;
};

static bool next_line(struct wrapped *line, size_t width)
{
    const char *text = line->text + line->length;
    while (line->length > 0 && *text == ' ') /* the blanks of a break; those that begin a text are its indent */
        text++;
    line->text = text;
    line->length = line_bytes(text, width);
    return line->length > 0;
}

static size_t trimmed(const struct wrapped *line)
{
    size_t length = line->length;
    while (length > 0 && line->text[length - 1] == ' ')
        length--;
    return length;
}

void screen_paragraph(struct screen *screen, enum weight weight, size_t first, size_t indent, const char *text)
{
    struct wrapped line = {.text = clean_text(screen->out.arena, text)};
    size_t lead = first;
    while (next_line(&line, screen->width - (lead < screen->width / 2 ? lead : screen->width / 2))) {
        add_blanks(&screen->out, lead);
        weight_on(screen, weight);
        buffer_add_n(&screen->out, line.text, trimmed(&line));
        weight_off(screen, weight);
        buffer_add(&screen->out, "\n");
        lead = indent;
    }
}

void screen_printf(struct screen *screen, enum weight weight, const char *format, ...)
{
    va_list args;
    va_start(args, format);
    char *text = arena_vprintf(screen->out.arena, format, args);
    va_end(args);
    screen_paragraph(screen, weight, 0, 2, text);
}

void screen_heading(struct screen *screen, const char *format, ...)
{
    va_list args;
    va_start(args, format);
    char *text = arena_vprintf(screen->out.arena, format, args);
    va_end(args);
    if (screen->out.length)
        buffer_add(&screen->out, "\n");
    screen_paragraph(screen, WEIGHT_BOLD, 0, 2, text);
}

void screen_bullet(struct screen *screen, const char *text)
{
    screen_paragraph(screen, WEIGHT_PLAIN, 0, 2, arena_printf(screen->out.arena, "- %s", text));
}

struct table table_new(struct arena *arena, const struct column *column, size_t column_count)
{
    return (struct table){.arena = arena, .column = column, .column_count = column_count};
}

struct table_row *table_row(struct table *table)
{
    table->row = arena_more(table->arena, table->row, table->count, &table->capacity, sizeof *table->row);
    struct table_row *row = &table->row[table->count++];
    *row = (struct table_row){0};
    return row;
}

static const char *cell_text(const struct table_row *row, size_t column)
{
    return row->cell[column] ? row->cell[column] : "";
}

static size_t natural_width(const struct table *table, size_t column)
{
    const char *head = table->column[column].head;
    size_t widest = columns_of(head, strlen(head));
    for (size_t i = 0; i < table->count; i++) {
        const char *cell = cell_text(&table->row[i], column);
        size_t width = columns_of(cell, strlen(cell));
        widest = width > widest ? width : widest;
    }
    return widest;
}

static size_t total_width(const size_t *width, size_t count)
{
    size_t total = count > 0 ? (count - 1) * GAP : 0;
    for (size_t i = 0; i < count; i++)
        total += width[i];
    return total;
}

/* The widest column that may still give way; column_count when none. */
static size_t widest_wrapping(const struct table *table, const size_t *width)
{
    size_t found = table->column_count;
    for (size_t i = 0; i < table->column_count; i++)
        if (table->column[i].wraps && width[i] > COLUMN_LEAST &&
            (found == table->column_count || width[i] > width[found]))
            found = i;
    return found;
}

static void fit_columns(const struct table *table, size_t most, size_t *width)
{
    for (size_t i = 0; i < table->column_count; i++)
        width[i] = natural_width(table, i);
    while (total_width(width, table->column_count) > most) {
        size_t column = widest_wrapping(table, width);
        if (column == table->column_count)
            return;
        width[column]--;
    }
}

/* Pads in front for numbers, behind for text; nothing behind the last column. */
static void add_cell(struct screen *screen, const struct wrapped *line, size_t width, bool right, bool last)
{
    size_t length = trimmed(line), used = columns_of(line->text, length);
    size_t pad = used < width ? width - used : 0;
    if (right)
        add_blanks(&screen->out, pad);
    buffer_add_n(&screen->out, line->text, length);
    if (!right && !last)
        add_blanks(&screen->out, pad);
}

static void trim_line_end(struct buffer *out)
{
    while (out->length > 0 && out->text[out->length - 1] == ' ')
        out->text[--out->length] = '\0';
}

/* Puts one line of every cell; returns whether any cell had one. */
static bool next_of_row(const struct table *table, const size_t *width, struct wrapped *line)
{
    bool any = false;
    for (size_t i = 0; i < table->column_count; i++) {
        size_t room = width[i] > 0 ? width[i] : 1;
        any = next_line(&line[i], room) || any;
    }
    return any;
}

static void add_row(struct screen *screen, const struct table *table, const size_t *width, const char *const *cell,
                    enum weight weight)
{
    struct wrapped line[TABLE_COLUMNS_MOST] = {{0}};
    for (size_t i = 0; i < table->column_count; i++)
        line[i].text = clean_text(table->arena, cell[i]);
    while (next_of_row(table, width, line)) {
        weight_on(screen, weight);
        for (size_t i = 0; i < table->column_count; i++) {
            bool last = i + 1 == table->column_count;
            add_cell(screen, &line[i], width[i], table->column[i].right, last);
            add_blanks(&screen->out, last ? 0 : GAP);
        }
        trim_line_end(&screen->out);
        weight_off(screen, weight);
        buffer_add(&screen->out, "\n");
    }
}

static void add_rule(struct screen *screen, const struct table *table, const size_t *width)
{
    size_t total = total_width(width, table->column_count);
    weight_on(screen, WEIGHT_DIM);
    for (size_t i = 0; i < total; i++)
        buffer_add_n(&screen->out, "-", 1);
    weight_off(screen, WEIGHT_DIM);
    buffer_add(&screen->out, "\n");
}

void screen_table(struct screen *screen, const struct table *table)
{
    if (table->count == 0)
        return;
    size_t width[TABLE_COLUMNS_MOST] = {0};
    const char *head[TABLE_COLUMNS_MOST] = {0};
    fit_columns(table, screen->width, width);
    for (size_t i = 0; i < table->column_count; i++)
        head[i] = table->column[i].head;
    add_row(screen, table, width, head, WEIGHT_DIM);
    add_rule(screen, table, width);
    for (size_t i = 0; i < table->count; i++) {
        if (table->row[i].rule)
            add_rule(screen, table, width);
        add_row(screen, table, width, table->row[i].cell, table->row[i].weight);
    }
}
