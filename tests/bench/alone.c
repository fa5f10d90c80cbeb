#include "alone.h"

#include <xlsxwriter.h>

#include "report/workbook_format.h"

static lxw_error write_slot(lxw_worksheet *sheet, const struct slot *slot, lxw_format *format)
{
    lxw_row_t row = (lxw_row_t)slot->row;
    lxw_col_t column = (lxw_col_t)slot->column;
    switch (slot->kind) {
    case SLOT_TEXT:
        return worksheet_write_string(sheet, row, column, slot->text, format);
    case SLOT_NUMBER:
        return worksheet_write_number(sheet, row, column, slot->number, format);
    case SLOT_FORMULA:
        return worksheet_write_formula_num(sheet, row, column, slot->formula, format, slot->number);
    case SLOT_FORMULA_TEXT:
        return worksheet_write_formula_str(sheet, row, column, slot->formula, format, slot->text);
    }
    return LXW_ERROR_PARAMETER_VALIDATION;
}

static lxw_error write_span(lxw_worksheet *sheet, const struct span *span, lxw_format *format)
{
    lxw_row_t row = (lxw_row_t)span->row;
    if (span->first == span->last || !*span->text)
        return worksheet_write_string(sheet, row, (lxw_col_t)span->first, span->text, format);
    return worksheet_merge_range(sheet, row, (lxw_col_t)span->first, row, (lxw_col_t)span->last, span->text, format);
}

static lxw_error write_page(lxw_workbook *workbook, const struct page *page, lxw_format *const formats[LOOK_COUNT])
{
    lxw_worksheet *sheet = workbook_get_worksheet_by_name(workbook, page->name);
    lxw_error error = LXW_NO_ERROR;
    for (int i = 0; i < page->columns && !error; i++)
        error = worksheet_set_column(sheet, (lxw_col_t)i, (lxw_col_t)i, page->width[i], NULL);
    for (size_t i = 0; i < page->count && !error; i++)
        error = write_slot(sheet, &page->slot[i], formats[page->slot[i].look]);
    for (size_t i = 0; i < page->span_count && !error; i++)
        error = write_span(sheet, &page->span[i], formats[page->span[i].look]);
    return error;
}

static lxw_error write_cells(lxw_workbook *workbook, const struct book *book)
{
    lxw_format *formats[LOOK_COUNT];
    if (!formats_make(workbook, formats))
        return LXW_ERROR_MEMORY_MALLOC_FAILED;
    for (size_t i = 0; i < book->page_count; i++) /* all first: defined names may refer to any */
        if (!workbook_add_worksheet(workbook, book->page[i]->name))
            return LXW_ERROR_PARAMETER_VALIDATION;
    lxw_error error = LXW_NO_ERROR;
    for (size_t i = 0; i < book->page_count && !error; i++)
        error = write_page(workbook, book->page[i], formats);
    for (size_t i = 0; i < book->name_count && !error; i++)
        error = workbook_define_name(workbook, book->name[i].name, book->name[i].address);
    return error;
}

const char *write_alone(const struct book *book, const char *file)
{
    lxw_workbook *workbook = workbook_new(file);
    if (!workbook)
        return "out of memory";
    lxw_error error = write_cells(workbook, book);
    lxw_error closing = workbook_close(workbook); /* frees it, whatever it returns */
    if (error || closing)
        return lxw_strerror(error ? error : closing);
    return NULL;
}
