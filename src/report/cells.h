/* A workbook in memory: pages of cells with text, numbers and formulas, before any file exists.
 *
 * A formula is made of a fixed template and addresses from book_address() and its kin; nothing that a user wrote can
 * get into one.  Every formula carries the result that a spreadsheet program computes for it.  The first fault (a
 * number that is not finite, a cell used twice) is kept in the book and makes its writing fail. */
#ifndef SAWBILL_REPORT_CELLS_H
#define SAWBILL_REPORT_CELLS_H

#include <stdbool.h>
#include <stddef.h>

#include "sawbill/arena.h"
#include "sawbill/date.h"

/* The looks; LOOKS in workbook_format.c has a row for each. */
enum look {
    LOOK_PLAIN,
    LOOK_PLAIN_WRAP,
    LOOK_TITLE,
    LOOK_UNDER_TITLE,
    LOOK_SECTION,
    LOOK_HEAD,
    LOOK_HEAD_NUMBER,
    LOOK_TEXT,
    LOOK_WRAP,
    LOOK_NOTE, /* small print, wrapped */
    LOOK_WARN, /* bold, red; the words say it too */
    LOOK_CENTER,
    LOOK_NUMBER,  /* a result: count, length */
    LOOK_HOURS,   /* a result, two places */
    LOOK_TENTHS,  /* a result, one place: lb, psi */
    LOOK_INCHES,  /* a result, three places */
    LOOK_RATIO,   /* a result, two places, bold */
    LOOK_MONEY,   /* a formula */
    LOOK_PERCENT, /* a formula */
    LOOK_SHARE,   /* a formula, two places */
    LOOK_IN_MONEY,
    LOOK_IN_PERCENT,
    LOOK_IN_NUMBER,
    LOOK_WAS_MONEY, /* what an input was when the plan was made: small, gray */
    LOOK_WAS_PERCENT,
    LOOK_WAS_NUMBER,
    LOOK_SUM_TEXT, /* subtotals */
    LOOK_SUM_WRAP,
    LOOK_SUM_MONEY,
    LOOK_SUM_HOURS,
    LOOK_PRICE_TEXT, /* the price itself */
    LOOK_PRICE,
    LOOK_FIXED_MONEY, /* the client's file: values only */
    LOOK_FIXED_PRICE,
    LOOK_SIGN, /* a line to sign on */
    /* The crew's sheet: black on white, told apart by weight and lines alone. */
    LOOK_CREW_BEAM,
    LOOK_CREW_PART,
    LOOK_CREW_SAY,
    LOOK_CREW_STOP,
    LOOK_CREW_TITLE, /* of a table */
    LOOK_CREW_HEAD,
    LOOK_CREW_CELL,
    LOOK_COUNT
};

enum slot_kind { SLOT_TEXT, SLOT_NUMBER, SLOT_FORMULA, SLOT_FORMULA_TEXT };
struct slot {
    enum slot_kind kind;
    int row, column; /* from 0 */
    enum look look;
    double number;       /* value, or the formula's result */
    const char *text;    /* value, or the formula's result */
    const char *formula; /* "=ROUND(B4*C4,2)" */
};
struct span {
    int row, first, last;
    const char *text;
    enum look look;
};
struct page {
    struct book *book;
    const char *name;
    struct slot *slot;
    size_t count, capacity;
    struct span *span; /* text over several columns of one row */
    size_t span_count, span_capacity;
    double *width; /* in characters */
    int columns;
    int frozen;                    /* rows that stay on the screen; repeated on every printed page */
    int filter_first, filter_last; /* rows of the autofilter, head included; both 0: none */
    bool upright;                  /* portrait */
    int *breaks;                   /* rows that begin a page */
    size_t break_count, break_capacity;
};
struct name {
    const char *name, *address;
};
enum { PAGES_MOST = 16 };
struct book {
    struct arena *arena;
    struct page *page[PAGES_MOST];
    size_t page_count;
    struct name *name;
    size_t name_count, name_capacity;
    const char *title, *subject;
    const char *header, *footer; /* plain text, shown at the left; escaped by the writer */
    struct date date;
    const char *fault; /* the first one; NULL: none */
};

struct book *book_new(struct arena *arena);
/* name: a fixed word of ours, at most 31 letters. */
struct page *book_page(struct book *book, const char *name);
/* name: letters, digits and '_', starts with a letter, no cell's name. */
void book_name(struct book *book, const char *name, const char *address);
void book_fault(struct book *book, const char *what, const struct page *page, int row, int column);

/* "G7"; "$G$7" */
const char *cell_name(struct arena *arena, int row, int column);
const char *cell_fixed(struct arena *arena, int row, int column);
/* "Prices!$G$7" */
const char *book_address(const struct page *page, int row, int column);
/* "Order!$H$5:$H$9" */
const char *book_range(const struct page *page, int row, int column, int last_row, int last_column);

void page_text(struct page *page, int row, int column, enum look look, const char *text);
void page_number(struct page *page, int row, int column, enum look look, double number);
/* printf-like, from addresses only. */
void page_formula(struct page *page, int row, int column, enum look look, double result, const char *template, ...)
    __attribute__((format(printf, 6, 7)));
void page_formula_text(struct page *page, int row, int column, enum look look, const char *result, const char *template,
                       ...) __attribute__((format(printf, 6, 7)));
/* Wrapped text from column `first` to `last`. */
void page_paragraph(struct page *page, int row, int first, int last, enum look look, const char *text);

/* The heads and widths of a table, and the row they stand in. */
struct column_head {
    const char *text;
    double width;
    bool number;
};
/* A band over the columns of a table: text in the first, the others empty until something is put there. */
void page_band(struct page *page, int row, int columns, enum look look, const char *text);
/* The row begins a printed page. */
void page_break(struct page *page, int row);
void page_widths(struct page *page, const struct column_head *head, int count);
void page_heads(struct page *page, int row, const struct column_head *head, int count);

/* Writes a formatted book as an XLSX file; the digest goes into its properties.  NULL, or what went wrong. */
const char *book_write(const struct book *book, const char *file, const char *folder, const char *digest);

#endif
