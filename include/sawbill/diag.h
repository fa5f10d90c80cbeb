/* Messages to the user.  All faults of a run are collected, then shown in order of place.
 *
 * A user's mistake is a message and the work goes on to find more; an internal failure is a status that goes straight
 * up. */
#ifndef SAWBILL_DIAG_H
#define SAWBILL_DIAG_H

#include <stdbool.h>
#include <stddef.h>

#include "sawbill/arena.h"

/* Where a value stood.  line and column start at 1; 0 means the file as a whole.  pointer is the
 * RFC 6901 JSON pointer, or NULL for other files. */
struct place {
    const char *file;
    int line, column;
    const char *pointer;
};

enum diag_class { DIAG_NOTE, DIAG_ASK, DIAG_STOP };

/* One row a code; never reused. */
enum diag_code {
#define DIAG_ROW(code, class, ack, title) DIAG_##code,
#include "sawbill/diag_codes.h"
#undef DIAG_ROW
    DIAG_CODE_COUNT
};

struct diag {
    enum diag_class class;
    enum diag_code code;
    struct place at;
    const char *text;
    bool acknowledged; /* a note that the job acknowledges: kept, not shown */
};

struct diags {
    struct arena *arena;
    struct diag *item;
    size_t count, capacity;
    bool assume; /* status = budget: an ask becomes a printed assumption */
};

const char *diag_code_name(enum diag_code code); /* "K001" */
enum diag_class diag_code_class(enum diag_code code);
bool diag_code_can_ack(enum diag_code code);
const char *diag_code_title(enum diag_code code);
const char *diag_class_name(enum diag_class class); /* "stop", "ask", "note" */

/* `at` may be NULL (the job as a whole).  The text is lower case, subject in single quotes, says what is wrong and what
 * was meant, without a full stop.  The same code at the same place with the same text is kept once. */
void diag_add(struct diags *diags, enum diag_code code, const struct place *at, const char *format, ...)
    __attribute__((format(printf, 4, 5)));
size_t diag_count(const struct diags *diags, enum diag_class class); /* without acknowledged ones */
bool diag_has_stop(const struct diags *diags);
/* An empty list for the messages of a trial, to be kept from the user's. */
struct diags diag_scratch(struct arena *arena, const struct diags *real);
/* The text without the word that stands before an assumption: to be added to another list, which puts it there. */
const char *diag_bare_text(const struct diag *diag);
/* Stable order: file, line, column, then as added. */
void diag_sort(struct diags *diags);
/* "porch.ini:14:1: stop[K001]: unknown key ..." */
char *diag_line(struct arena *arena, const struct diag *diag);

#endif
