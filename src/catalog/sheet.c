/* CSV by libcsv in its strict mode.  libcsv knows no lines, so it is fed byte by byte and the place of each cell is
 * counted beside it. */
#include "sheet.h"

#include <csv.h>
#include <errno.h>
#include <stdio.h>
#include <string.h>

#include "sawbill/text.h"

struct reader {
    struct arena *arena;
    struct diags *diags;
    struct sheet *sheet;
    struct row row; /* being filled */
    size_t row_capacity;
    int line, column;       /* of the byte being fed, from 1; columns are code points */
    struct place cell_at;   /* first byte of the cell that is not a blank */
    bool cell_begun, ended; /* ended: the byte just fed ended a cell */
};

static struct place place_here(const struct reader *reader)
{
    return (struct place){.file = reader->sheet->file, .line = reader->line, .column = reader->column};
}

/* libcsv's callback at the end of each cell. */
static void end_cell(void *bytes, size_t length, void *data)
{
    struct reader *reader = data;
    if (length > CELL_MOST_BYTES) {
        diag_add(reader->diags, DIAG_F004, &reader->cell_at, "cell of %zu bytes; at most %zu are read", length,
                 CELL_MOST_BYTES);
        length = 0;
    }
    struct row *row = &reader->row;
    row->cell = arena_more(reader->arena, row->cell, row->count, &reader->row_capacity, sizeof *row->cell);
    const char *text = length ? arena_strndup(reader->arena, bytes, length) : "";
    row->cell[row->count++] = (struct cell){text_trim(reader->arena, text), reader->cell_at};
    reader->ended = true;
}

static bool row_is_empty(const struct row *row)
{
    for (size_t i = 0; i < row->count; i++)
        if (row->cell[i].text[0])
            return false;
    return true;
}

static void forget_row(struct reader *reader)
{
    reader->row = (struct row){0};
    reader->row_capacity = 0;
    reader->cell_begun = false;
}

/* libcsv's callback at the end of each row; empty lines come too (CSV_REPALL_NL). */
static void end_row(int terminator, void *data)
{
    (void)terminator;
    struct reader *reader = data;
    struct sheet *sheet = reader->sheet;
    if (!row_is_empty(&reader->row)) {
        sheet->row = arena_more(reader->arena, sheet->row, sheet->count, &sheet->capacity, sizeof *sheet->row);
        sheet->row[sheet->count++] = reader->row;
    }
    forget_row(reader);
}

/* Moves the place past `byte`; `next` tells CR LF from a lone CR. */
static void step_place(struct reader *reader, unsigned char byte, unsigned char next)
{
    bool is_line_end = byte == '\n' || (byte == '\r' && next != '\n');
    if (is_line_end) {
        reader->line++;
        reader->column = 1;
    } else if ((byte & 0xC0) != 0x80) {
        reader->column++;
    }
}

static void report_syntax(struct reader *reader)
{
    reader->sheet->lost = true;
    struct place here = place_here(reader);
    bool spans = reader->cell_at.line != here.line;
    const char *begun = spans ? arena_printf(reader->arena, " (the cell began at line %d)", reader->cell_at.line) : "";
    diag_add(reader->diags, DIAG_F005, &here,
             "'\"' where the cell does not end%s; a cell with an inch mark or a quote is put in quotes and the mark is "
             "doubled: \"1/4\"\" x 6\"\" screw\"",
             begun);
}

/* Feeds one byte; false when libcsv refuses it. */
static bool feed_byte(struct reader *reader, struct csv_parser *parser, unsigned char byte)
{
    if (!reader->cell_begun && byte != ' ' && byte != '\t') {
        reader->cell_at = place_here(reader);
        reader->cell_begun = true;
    }
    reader->ended = false;
    if (csv_parse(parser, &byte, 1, end_cell, end_row, reader) != 1)
        return false;
    if (reader->ended)
        reader->cell_begun = false;
    /* between rows a line end is no cell */
    if ((byte == '\n' || byte == '\r') && reader->row.count == 0 && !parser->quoted)
        reader->cell_begun = false;
    return true;
}

/* After a fault: past the end of this line, with a fresh parser. */
static size_t skip_line(struct reader *reader, const unsigned char *text, size_t length, size_t at)
{
    while (at < length && text[at] != '\n' && text[at] != '\r') {
        step_place(reader, text[at], 0);
        at++;
    }
    forget_row(reader);
    return at;
}

enum { CSV_OPTIONS = CSV_STRICT | CSV_STRICT_FINI | CSV_REPALL_NL };

/* Reads rows until the end or a fault; returns how far it came. */
static size_t read_rows(struct reader *reader, const unsigned char *text, size_t length, size_t at, bool *memory)
{
    struct csv_parser parser;
    if (csv_init(&parser, CSV_OPTIONS) != 0) {
        *memory = false;
        return length;
    }
    bool ok = true;
    while (ok && at < length) {
        ok = feed_byte(reader, &parser, text[at]);
        if (ok) {
            step_place(reader, text[at], at + 1 < length ? text[at + 1] : 0);
            at++;
        }
    }
    if (!ok && csv_error(&parser) == CSV_EPARSE) {
        report_syntax(reader);
        at = skip_line(reader, text, length, at);
    } else if (!ok) {
        *memory = false;
        at = length;
    } else {
        struct place open = reader->cell_at;
        if (!reader->cell_begun)
            reader->cell_at = place_here(reader);
        if (csv_fini(&parser, end_cell, end_row, reader) != 0) {
            diag_add(reader->diags, DIAG_F005, &open, "the quote that opens this cell is never closed");
            /* libcsv has handed over the half cell: drop its row */
            reader->sheet->lost = true;
            forget_row(reader);
        }
    }
    csv_free(&parser);
    return at;
}

static const char *BAD_ENCODING = "save the file as CSV UTF-8 (a choice of the 'save as' dialog)";

static struct place place_at(const char *file, const char *text, size_t offset)
{
    struct place at = {.file = file, .line = 1, .column = 1};
    size_t line_start = 0;
    for (size_t i = 0; i < offset; i++)
        if (text[i] == '\n' || (text[i] == '\r' && text[i + 1] != '\n')) {
            at.line++;
            line_start = i + 1;
        }
    at.column = (int)utf8_count(text + line_start, offset - line_start) + 1;
    return at;
}

static bool check_bytes(const char *file, const char *text, size_t length, struct diags *diags)
{
    struct place whole = {.file = file, .line = 1, .column = 1};
    if (length >= 2 && ((text[0] == '\xFF' && text[1] == '\xFE') || (text[0] == '\xFE' && text[1] == '\xFF'))) {
        diag_add(diags, DIAG_F002, &whole, "the file is UTF-16; %s", BAD_ENCODING);
        return false;
    }
    size_t bad = utf8_check(text, length);
    if (bad < length) {
        struct place at = place_at(file, text, bad);
        diag_add(diags, DIAG_F002, &at, "byte 0x%02X is not UTF-8; %s", (unsigned)(unsigned char)text[bad],
                 BAD_ENCODING);
        return false;
    }
    for (size_t i = 0; i < length; i++) {
        unsigned char byte = (unsigned char)text[i];
        if (byte == 0x7F || (byte < 0x20 && byte != '\n' && byte != '\r' && byte != '\t')) {
            struct place at = place_at(file, text, i);
            diag_add(diags, DIAG_F003, &at, "control character 0x%02X; a catalog is plain text", (unsigned)byte);
            return false;
        }
    }
    return true;
}

bool sheet_parse(struct arena *arena, const char *file, const char *text, size_t length, struct sheet *out,
                 struct diags *diags)
{
    *out = (struct sheet){.file = arena_strdup(arena, file)};
    struct place whole = {.file = out->file};
    if (length > SHEET_MOST_BYTES) {
        diag_add(diags, DIAG_F004, &whole, "file of more than %zu bytes; a catalog is smaller", SHEET_MOST_BYTES);
        return false;
    }
    if (!check_bytes(out->file, text, length, diags))
        return false;
    size_t at = length >= 3 && memcmp(text, "\xEF\xBB\xBF", 3) == 0 ? 3 : 0;
    struct reader reader = {.arena = arena, .diags = diags, .sheet = out, .line = 1, .column = 1};
    bool memory = true;
    do {
        at = read_rows(&reader, (const unsigned char *)text, length, at, &memory);
    } while (at < length);
    if (!memory)
        diag_add(diags, DIAG_F001, &whole, "not enough memory to read the file");
    return memory;
}

/* Own words: strerror() speaks the caller's language. */
static const char *why_unreadable(int error)
{
    switch (error) {
    case ENOENT:
        return "no such file";
    case EACCES:
        return "no permission to read it";
    case EISDIR:
        return "it is a folder";
    default:
        return "it cannot be read";
    }
}

static bool report_unreadable(const char *file, int error, struct diags *diags)
{
    struct place at = {.file = file};
    diag_add(diags, DIAG_F001, &at, "catalog file: %s", why_unreadable(error));
    return false;
}

bool sheet_read(struct arena *arena, const char *file, struct sheet *out, struct diags *diags)
{
    *out = (struct sheet){.file = arena_strdup(arena, file)};
    FILE *stream = fopen(file, "rb");
    if (!stream)
        return report_unreadable(out->file, errno, diags);
    struct buffer buffer = {.arena = arena};
    char block[16384];
    size_t got;
    while (buffer.length <= SHEET_MOST_BYTES && (got = fread(block, 1, sizeof block, stream)) > 0)
        buffer_add_n(&buffer, block, got);
    int error = ferror(stream) ? errno : 0;
    if (fclose(stream) != 0 && error == 0)
        error = EIO;
    if (error)
        return report_unreadable(out->file, error, diags);
    return sheet_parse(arena, out->file, buffer_text(&buffer), buffer.length, out, diags);
}
