/* Published values run through the library: rows of CSV files, each recomputed and compared. */
#ifndef SAWBILL_TESTS_PUBLISHED_H
#define SAWBILL_TESTS_PUBLISHED_H

#include <stdbool.h>
#include <stddef.h>

#include "sawbill/arena.h"
#include "sawbill/catalog.h"
#include "sawbill/diag.h"

#include "catalog/sheet.h"

struct cJSON;
struct tally {
    const char *what; /* "span tables" */
    size_t rows, reproduced;
    size_t memory_rows, memory_reproduced; /* rows whose published value is from memory: never the only witness */
    size_t unexplained;
    size_t left_out; /* nothing here recomputes them */
    const char *why_left_out;
};
struct published {
    struct arena *arena;
    struct diags *diags;
    const char *folder, *source; /* source: where catalogs and tests of this library are */
    struct catalog design;       /* only its design values */
    const struct sheet *known;   /* id, reason: misses that are explained */
    struct tally tally[24];
    struct {
        size_t rows, within, left_out;
    } band; /* header rows: a band of 8 %, for their loads are not stated where they are printed */
    size_t count;
};

/* A CSV of the folder, by either name (sub folder or flat); NULL: not there. */
const struct sheet *published_sheet(struct published *p, const char *sub, const char *name);
const struct sheet *published_sheet_at(struct published *p, const char *path);
/* The text of a file of the folder, likewise; NULL: not there, or larger than any such file. */
char *published_text(struct published *p, const char *sub, const char *name);
/* Cell of a row by the name of its column; "" when the file has no such column. */
const char *published_cell(const struct sheet *sheet, size_t row, const char *column);
/* The same as a number; NAN when empty. */
double published_number(const struct sheet *sheet, size_t row, const char *column);
/* A number prints as that text: it is within half of the last place that the text has. */
bool published_prints(const char *text, double here);
bool published_from_memory(const struct sheet *sheet, size_t row);
struct tally *published_tally(struct published *p, const char *what);
/* Counts one row; a miss is printed with its reason, the one found here or that of the list of known ones. */
void published_count(struct published *p, struct tally *tally, bool from_memory, const char *id, bool same,
                     const char *difference);

/* A number of a JSON object; NAN: not there.  What is worked out here agrees with `value` within `tol`. */
double published_member(const struct cJSON *object, const char *key);
/* A value of a worked example, within its own tolerance. */
void published_count_value(struct published *p, struct tally *tally, bool from_memory, const char *id,
                           const struct cJSON *expected, double here);

/* A figure of a worked example that has more than one member; NAN: none here. */
double published_special(const char *id, const char *what);

/* One for each kind of file. */
void published_spans(struct published *p);
void published_joints(struct published *p);
void published_examples(struct published *p);
void published_factors(struct published *p);
void published_misc(struct published *p);
void published_codes(struct published *p);
void published_connections(struct published *p);
void published_formulas(struct published *p);

#endif
