/* The workbook in memory. */
#include "cells.h"

#include <assert.h>
#include <math.h>
#include <stdarg.h>
#include <string.h>

#include "sawbill/text.h"

struct book *book_new(struct arena *arena)
{
    struct book *book = arena_alloc(arena, sizeof *book);
    book->arena = arena;
    book->title = book->subject = book->header = book->footer = "";
    return book;
}

struct page *book_page(struct book *book, const char *name)
{
    assert(book->page_count < PAGES_MOST);
    struct page *page = arena_alloc(book->arena, sizeof *page);
    page->book = book;
    page->name = name;
    book->page[book->page_count++] = page;
    return page;
}

void book_name(struct book *book, const char *name, const char *address)
{
    book->name = arena_more(book->arena, book->name, book->name_count, &book->name_capacity, sizeof *book->name);
    book->name[book->name_count++] = (struct name){.name = name, .address = address};
}

void book_fault(struct book *book, const char *what, const struct page *page, int row, int column)
{
    if (!book->fault)
        book->fault = arena_printf(book->arena, "%s at %s!%s", what, page->name, cell_name(book->arena, row, column));
}

/* 0 -> A, 25 -> Z, 26 -> AA */
static void column_letters(int column, char out[4])
{
    char back[4];
    int n = 0;
    for (int c = column + 1; c > 0 && n < 3; c = (c - 1) / 26)
        back[n++] = (char)('A' + (c - 1) % 26);
    for (int i = 0; i < n; i++)
        out[i] = back[n - 1 - i];
    out[n] = '\0';
}

const char *cell_name(struct arena *arena, int row, int column)
{
    char letters[4];
    column_letters(column, letters);
    return arena_printf(arena, "%s%d", letters, row + 1);
}

const char *cell_fixed(struct arena *arena, int row, int column)
{
    char letters[4];
    column_letters(column, letters);
    return arena_printf(arena, "$%s$%d", letters, row + 1);
}

const char *book_address(const struct page *page, int row, int column)
{
    struct arena *arena = page->book->arena;
    return arena_printf(arena, "%s!%s", page->name, cell_fixed(arena, row, column));
}

const char *book_range(const struct page *page, int row, int column, int last_row, int last_column)
{
    struct arena *arena = page->book->arena;
    return arena_printf(arena, "%s!%s:%s", page->name, cell_fixed(arena, row, column),
                        cell_fixed(arena, last_row, last_column));
}

/* A cell put where one of the same row stands already takes its place. */
static struct slot *add_slot(struct page *page, int row, int column, enum look look)
{
    struct slot *slot = NULL;
    for (size_t i = page->count; i > 0 && page->slot[i - 1].row == row && !slot; i--)
        if (page->slot[i - 1].column == column)
            slot = &page->slot[i - 1];
    if (!slot) {
        page->slot = arena_more(page->book->arena, page->slot, page->count, &page->capacity, sizeof *page->slot);
        slot = &page->slot[page->count++];
    }
    *slot = (struct slot){.row = row, .column = column, .look = look};
    return slot;
}

void page_text(struct page *page, int row, int column, enum look look, const char *text)
{
    struct slot *slot = add_slot(page, row, column, look);
    slot->kind = SLOT_TEXT;
    slot->text = text ? text : "";
    if (utf8_check(slot->text, strlen(slot->text)) != strlen(slot->text))
        book_fault(page->book, "text that is not UTF-8", page, row, column);
}

void page_number(struct page *page, int row, int column, enum look look, double number)
{
    struct slot *slot = add_slot(page, row, column, look);
    slot->kind = SLOT_NUMBER;
    slot->number = number;
    if (!isfinite(number))
        book_fault(page->book, "a number that is not finite", page, row, column);
}

void page_formula(struct page *page, int row, int column, enum look look, double result, const char *template, ...)
{
    va_list args;
    va_start(args, template);
    const char *formula = arena_vprintf(page->book->arena, template, args);
    va_end(args);
    struct slot *slot = add_slot(page, row, column, look);
    slot->kind = SLOT_FORMULA;
    slot->number = result;
    slot->formula = formula;
    if (!isfinite(result))
        book_fault(page->book, "a formula whose result is not finite", page, row, column);
}

void page_formula_text(struct page *page, int row, int column, enum look look, const char *result, const char *template,
                       ...)
{
    va_list args;
    va_start(args, template);
    const char *formula = arena_vprintf(page->book->arena, template, args);
    va_end(args);
    struct slot *slot = add_slot(page, row, column, look);
    slot->kind = SLOT_FORMULA_TEXT;
    slot->text = result;
    slot->formula = formula;
}

void page_paragraph(struct page *page, int row, int first, int last, enum look look, const char *text)
{
    page->span = arena_more(page->book->arena, page->span, page->span_count, &page->span_capacity, sizeof *page->span);
    page->span[page->span_count++] =
        (struct span){.row = row, .first = first, .last = last, .text = text, .look = look};
    if (utf8_check(text, strlen(text)) != strlen(text))
        book_fault(page->book, "text that is not UTF-8", page, row, first);
}

void page_break(struct page *page, int row)
{
    page->breaks =
        arena_more(page->book->arena, page->breaks, page->break_count, &page->break_capacity, sizeof *page->breaks);
    page->breaks[page->break_count++] = row;
}

void page_widths(struct page *page, const struct column_head *head, int count)
{
    page->columns = count;
    page->width = arena_array(page->book->arena, (size_t)count, sizeof *page->width);
    for (int i = 0; i < count; i++)
        page->width[i] = head[i].width;
}

void page_heads(struct page *page, int row, const struct column_head *head, int count)
{
    for (int i = 0; i < count; i++)
        page_text(page, row, i, head[i].number ? LOOK_HEAD_NUMBER : LOOK_HEAD, head[i].text);
}

void page_band(struct page *page, int row, int columns, enum look look, const char *text)
{
    for (int i = 0; i < columns; i++)
        page_text(page, row, i, look, i ? "" : text);
}
