/* The cost workbook: its pages, and where on them the cells stand that other pages refer to. */
#ifndef SAWBILL_REPORT_WORKBOOK_H
#define SAWBILL_REPORT_WORKBOOK_H

#include "cells.h"
#include "sawbill/report.h"

/* What a row of Prices is: together with `of` it names one input. */
enum input_kind {
    INPUT_OVERHEAD, /* of: NULL the general one, else the cost class as index */
    INPUT_CONTINGENCY,
    INPUT_PROFIT,
    INPUT_TAX,
    INPUT_LOSS,
    INPUT_ROUND_TO,
    INPUT_WAGE, /* of: struct trade */
    INPUT_BURDEN,
    INPUT_RATE,
    INPUT_DELIVERY, /* of: struct supplier */
    INPUT_SUPPLIER_TAX,
    INPUT_OWN_PRICE,  /* index: estimate line */
    INPUT_OWN_MARKUP, /* index: estimate line */
    INPUT_PRICE,      /* of: struct price */
    INPUT_CUT_CHARGE,
    INPUT_SHOP /* of: struct shop_piece */
};
struct input {
    enum input_kind kind;
    const void *of;
    size_t index;
    int row;
};

struct workbook {
    struct arena *arena;
    const struct report *report;
    const struct job *job;
    const struct run *run;
    const struct order *order;
    const struct estimate *estimate;
    struct book *book;
    struct page *recap, *bill, *labor, *takeoff, *sticks, *buying, *design, *field, *prices, *basis;
    bool budget;
    struct input *input;
    size_t input_count, input_capacity;
    int inputs_first, inputs_last; /* rows of Prices */
    int *order_row;                /* of each order line, on Order */
    int *delivery_row, *tax_row;   /* of each supplier, on Order; 0: none */
    int *labor_row;                /* of each labor line, on Labor */
    int *bill_row;                 /* of each estimate line, on Estimate */
    int bill_first, bill_last;
    const char *hours_cell; /* the sum on Labor */
};

/* Columns that other pages refer to. */
enum { PRICES_PACK = 5, PRICES_VALUE = 6, PRICES_WAS = 7 };
enum { LABOR_HOURS = 8, LABOR_RATE = 9, LABOR_TOTAL = 10 };
enum { ORDER_PACKS = 10, ORDER_PRICE = 11, ORDER_TOTAL = 12 };
enum { BILL_CLASS = 0, BILL_TOTAL = 6, BILL_MARKED = 7 };
/* Rows above every table: title, what it is, a blank row; then the heads. */
enum { HEAD_ROW = 3, FIRST_ROW = 4 };

/* The address of an input's value (or another column of its row); a fault in the book when Prices lacks it. */
const char *input_cell(const struct workbook *w, enum input_kind kind, const void *of, size_t index);
const char *input_column(const struct workbook *w, enum input_kind kind, const void *of, size_t index, int column);
bool input_exists(const struct workbook *w, enum input_kind kind, const void *of, size_t index);

void page_title(const struct workbook *w, struct page *page, const char *title);
/* "-" for NULL and "", else the text: nothing is left blank by accident. */
const char *or_dash(const char *text);
/* The stock length of a price row, "16 ft"; "" when it has none. */
const char *stock_length(struct arena *arena, length_t length);

/* The cost workbook in memory, as report_workbook() writes it; the report has an estimate. */
struct book *workbook_book(struct arena *arena, const struct report *report);

/* The text without a leading "not checked: ", where the heading says it. */
const char *without_heading(const char *text);

/* In this order: each refers to those before it. */
void build_prices(struct workbook *w);
void build_labor(struct workbook *w);
void build_order(struct workbook *w);
void build_estimate(struct workbook *w);
void build_recap(struct workbook *w);
void build_takeoff(struct workbook *w);
void build_cuts(struct workbook *w);
void build_design(struct workbook *w);
void build_field(struct workbook *w);
void build_basis(struct workbook *w);

/* The open questions, failing checks and the like, as the client and the recap tell them: a line each. */
struct lines {
    const char **item;
    size_t count, capacity;
};
void lines_add(struct arena *arena, struct lines *lines, const char *text);
struct lines open_questions(struct arena *arena, const struct report *report);
struct lines failing_checks(struct arena *arena, const struct report *report);
/* "2 questions are open, 1 check fails", or NULL when the bid can be signed. */
const char *why_not_signable(struct arena *arena, const struct report *report);
/* "24-017 Parlor wall": number and name. */
const char *job_title(struct arena *arena, const struct job *job);
bool is_budget(const struct job *job);
/* Feet of wall that come out. */
length_t wall_length(const struct wall *wall);

#endif
