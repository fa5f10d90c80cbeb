/* A book as an XLSX file.  Every call of the library goes through here; the first error is kept. */
#include <locale.h>
#include <math.h>
#include <string.h>
#include <xlsxwriter.h>

#include "cells.h"
#include "package.h"
#include "sawbill/text.h"
#include "workbook_format.h"

enum { PAPER_LETTER = 1, TEXT_MOST = 32767, FOOT_MOST = 250, FORMULA_MOST = 8000 };

struct writer {
    const struct book *book;
    lxw_format *format[LOOK_COUNT];
    const char *why; /* the first error */
};

static void keep(struct writer *w, lxw_error error, const char *page, int row, int column)
{
    if (error == LXW_NO_ERROR || w->why)
        return;
    struct arena *arena = w->book->arena;
    w->why = arena_printf(arena, "%s at %s!%s", lxw_strerror(error), page, cell_name(arena, row, column));
}

static void refuse(struct writer *w, const char *what, const char *page, int row, int column)
{
    if (!w->why)
        w->why = arena_printf(w->book->arena, "%s at %s!%s", what, page, cell_name(w->book->arena, row, column));
}

static bool is_hex(char c)
{
    return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f') || (c >= 'A' && c <= 'F');
}

/* ECMA-376 part 1, 22.9.2.19 (ST_Xstring): "_x0041_" stands for a character; a text that reads so keeps its look when
 * its first underscore is written that way itself. */
static bool looks_escaped(const char *text)
{
    return text[0] == '_' && text[1] == 'x' && is_hex(text[2]) && is_hex(text[3]) && is_hex(text[4]) &&
           is_hex(text[5]) && text[6] == '_';
}

/* What XML 1.0 can hold: control characters other than tab and line feed become blanks. */
static const char *safe_text(struct arena *arena, const char *text)
{
    struct buffer out = {.arena = arena};
    for (const char *p = text; *p; p++) {
        unsigned char c = (unsigned char)*p;
        if (looks_escaped(p))
            buffer_add(&out, "_x005F_");
        else if ((c < 0x20 && c != '\t' && c != '\n') || c == 0x7F)
            buffer_add(&out, " ");
        else
            buffer_add_n(&out, p, 1);
    }
    return buffer_text(&out);
}

static void write_slot(struct writer *w, lxw_worksheet *sheet, const char *page, const struct slot *slot)
{
    lxw_row_t row = (lxw_row_t)slot->row;
    lxw_col_t column = (lxw_col_t)slot->column;
    lxw_format *format = w->format[slot->look];
    const char *text = slot->text ? safe_text(w->book->arena, slot->text) : "";
    lxw_error error = LXW_NO_ERROR;
    if (utf8_count(text, strlen(text)) > TEXT_MOST || (slot->formula && strlen(slot->formula) > FORMULA_MOST)) {
        refuse(w, "a text too long for a cell", page, slot->row, slot->column);
        return;
    }
    if (!isfinite(slot->number)) {
        refuse(w, "a number that is not finite", page, slot->row, slot->column);
        return;
    }
    switch (slot->kind) {
    case SLOT_TEXT:
        error = worksheet_write_string(sheet, row, column, text, format);
        break;
    case SLOT_NUMBER:
        error = worksheet_write_number(sheet, row, column, slot->number, format);
        break;
    case SLOT_FORMULA:
        error = worksheet_write_formula_num(sheet, row, column, slot->formula, format, slot->number);
        break;
    case SLOT_FORMULA_TEXT:
        error = worksheet_write_formula_str(sheet, row, column, slot->formula, format, text);
        break;
    }
    keep(w, error, page, slot->row, slot->column);
}

static void write_span(struct writer *w, lxw_worksheet *sheet, const char *page, const struct span *span)
{
    const char *text = safe_text(w->book->arena, span->text);
    lxw_row_t row = (lxw_row_t)span->row;
    lxw_col_t first = (lxw_col_t)span->first, last = (lxw_col_t)span->last;
    lxw_format *format = w->format[span->look];
    if (utf8_count(text, strlen(text)) > TEXT_MOST)
        refuse(w, "a text too long for a cell", page, span->row, span->first);
    else if (first == last)
        keep(w, worksheet_write_string(sheet, row, first, text, format), page, span->row, span->first);
    else
        keep(w, worksheet_merge_range(sheet, row, first, row, last, text, format), page, span->row, span->first);
}

/* Header and footer hold 255 letters and take '&' for a command. */
static const char *foot_text(struct arena *arena, const char *text, const char *rest)
{
    struct buffer out = {.arena = arena};
    buffer_add(&out, "&L&9");
    buffer_add(&out, " "); /* so that a text starting with a digit is not read as a size */
    size_t room = FOOT_MOST - strlen(rest) - out.length;
    const char *safe = safe_text(arena, text);
    for (const char *p = safe; *p;) {
        size_t n = 1;
        while (((unsigned char)p[n] & 0xC0) == 0x80)
            n++;
        if (out.length + n + 1 > room)
            break;
        if (*p == '&')
            buffer_add(&out, "&&");
        else if (*p == '\n')
            buffer_add(&out, " ");
        else
            buffer_add_n(&out, p, n);
        p += n;
    }
    buffer_add(&out, rest);
    return buffer_text(&out);
}

static void set_breaks(struct writer *w, lxw_worksheet *sheet, const struct page *page)
{
    if (page->break_count == 0)
        return;
    lxw_row_t *breaks = arena_array(w->book->arena, page->break_count + 1, sizeof *breaks); /* ends in 0 */
    for (size_t i = 0; i < page->break_count; i++)
        breaks[i] = (lxw_row_t)page->breaks[i];
    keep(w, worksheet_set_h_pagebreaks(sheet, breaks), page->name, page->breaks[0], 0);
}

static void set_print(struct writer *w, lxw_worksheet *sheet, const struct page *page)
{
    struct arena *arena = w->book->arena;
    worksheet_set_paper(sheet, PAPER_LETTER);
    if (page->upright)
        worksheet_set_portrait(sheet);
    else
        worksheet_set_landscape(sheet);
    worksheet_fit_to_pages(sheet, 1, 0);
    set_breaks(w, sheet, page);
    worksheet_set_margins(sheet, 0.5, 0.5, 0.7, 0.7);
    if (*w->book->header)
        keep(w, worksheet_set_header(sheet, foot_text(arena, w->book->header, "")), page->name, 0, 0);
    keep(w, worksheet_set_footer(sheet, foot_text(arena, w->book->footer, "&R&9&A, page &P of &N")), page->name, 0, 0);
    worksheet_gridlines(sheet, LXW_HIDE_ALL_GRIDLINES);
    if (page->frozen) {
        worksheet_freeze_panes(sheet, (lxw_row_t)page->frozen, 0);
        keep(w, worksheet_repeat_rows(sheet, 0, (lxw_row_t)(page->frozen - 1)), page->name, 0, 0);
    }
}

static void write_heights(struct writer *w, lxw_worksheet *sheet, const struct page *page)
{
    double *height;
    int rows = row_heights(page, &height);
    for (int i = 0; i < rows; i++)
        if (height[i] > 0)
            keep(w, worksheet_set_row(sheet, (lxw_row_t)i, height[i], NULL), page->name, i, 0);
}

static void write_page(struct writer *w, lxw_workbook *workbook, const struct page *page)
{
    lxw_worksheet *sheet = workbook_get_worksheet_by_name(workbook, page->name);
    if (!sheet) {
        refuse(w, "a sheet that was not made", page->name, 0, 0);
        return;
    }
    for (int i = 0; i < page->columns; i++)
        keep(w, worksheet_set_column(sheet, (lxw_col_t)i, (lxw_col_t)i, page->width[i], NULL), page->name, 0, i);
    write_heights(w, sheet, page);
    for (size_t i = 0; i < page->count; i++)
        write_slot(w, sheet, page->name, &page->slot[i]);
    for (size_t i = 0; i < page->span_count; i++)
        write_span(w, sheet, page->name, &page->span[i]);
    if (page->filter_last > page->filter_first)
        keep(w,
             worksheet_autofilter(sheet, (lxw_row_t)page->filter_first, 0, (lxw_row_t)page->filter_last,
                                  (lxw_col_t)(page->columns - 1)),
             page->name, page->filter_first, 0);
    set_print(w, sheet, page);
}

static void write_properties(struct writer *w, lxw_workbook *workbook, const char *digest)
{
    struct arena *arena = w->book->arena;
    enum { TITLE_MOST = 200 };
    const char *title = safe_text(arena, w->book->title);
    lxw_doc_properties properties = {
        .title = strlen(title) <= TITLE_MOST ? arena_strdup(arena, title) : arena_strdup(arena, "bid"),
        .subject = arena_strdup(arena, w->book->subject),
        .author = arena_strdup(arena, "sawbill"),
        .created = (time_t)date_days(w->book->date) * 86400 + 43200, /* noon: the same day in most time zones */
    };
    keep(w, workbook_set_properties(workbook, &properties), "properties", 0, 0);
    keep(w, workbook_set_custom_property_string(workbook, PACKAGE_DIGEST_NAME, digest), "properties", 0, 0);
}

static void write_names(struct writer *w, lxw_workbook *workbook)
{
    for (size_t i = 0; i < w->book->name_count; i++) {
        const struct name *name = &w->book->name[i];
        const char *formula = arena_printf(w->book->arena, "=%s", name->address);
        keep(w, workbook_define_name(workbook, name->name, formula), "defined names", (int)i, 0);
    }
}

static void write_all(struct writer *w, lxw_workbook *workbook, const char *digest)
{
    const struct book *book = w->book;
    if (!formats_make(workbook, w->format)) {
        w->why = "out of memory for formats";
        return;
    }
    for (size_t i = 0; i < book->page_count; i++)
        if (!workbook_add_worksheet(workbook, book->page[i]->name))
            refuse(w, "a sheet name that is not good", book->page[i]->name, 0, 0);
    if (w->why)
        return;
    write_properties(w, workbook, digest);
    for (size_t i = 0; i < book->page_count; i++)
        write_page(w, workbook, book->page[i]);
    write_names(w, workbook);
}

static const char *write_in_c_locale(const struct book *book, const char *file, const char *folder, const char *digest)
{
    struct writer w = {.book = book};
    lxw_workbook_options options = {.tmpdir = arena_strdup(book->arena, folder)};
    lxw_workbook *workbook = workbook_new_opt(file, &options);
    if (!workbook)
        return "out of memory for the workbook";
    write_all(&w, workbook, digest);
    if (w.why) {
        lxw_workbook_free(workbook);
        return w.why;
    }
    lxw_error error = workbook_close(workbook); /* frees it, whatever it returns */
    return error == LXW_NO_ERROR ? NULL : lxw_strerror(error);
}

const char *book_write(const struct book *book, const char *file, const char *folder, const char *digest)
{
    if (book->fault)
        return book->fault;
    /* The library prints numbers in the locale of the thread: a caller's decimal comma would get into the file. */
    locale_t plain = newlocale(LC_ALL_MASK, "C", (locale_t)0);
    if (plain == (locale_t)0)
        return "no C locale";
    locale_t before = uselocale(plain);
    const char *why = write_in_c_locale(book, file, folder, digest);
    (void)uselocale(before); /* it was in use a moment ago */
    freelocale(plain);
    return why;
}
