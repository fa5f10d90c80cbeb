/* What the terminal reports share: wrapped text, aligned tables, weight of type.  Nothing is printed here: text goes
 * into a buffer.  Meaning never hangs on weight or color alone. */
#ifndef SAWBILL_REPORT_TERMINAL_H
#define SAWBILL_REPORT_TERMINAL_H

#include "sawbill/report.h"
#include "sawbill/text.h"

struct screen {
    struct buffer out;
    bool color;
    size_t width; /* columns, at least SCREEN_LEAST */
};
enum { SCREEN_LEAST = 40, SCREEN_MOST = 400 };
enum weight { WEIGHT_PLAIN, WEIGHT_BOLD, WEIGHT_DIM };

struct screen screen_new(struct arena *arena, bool color, int width);
/* The text so far, "" when empty. */
char *screen_text(struct screen *screen);
/* A blank line, then the heading in bold. */
void screen_heading(struct screen *screen, const char *format, ...) __attribute__((format(printf, 2, 3)));
/* A paragraph, wrapped; later lines hang by `indent` columns, the first by `first`. */
void screen_paragraph(struct screen *screen, enum weight weight, size_t first, size_t indent, const char *text);
void screen_printf(struct screen *screen, enum weight weight, const char *format, ...)
    __attribute__((format(printf, 3, 4)));
/* "- text", wrapped. */
void screen_bullet(struct screen *screen, const char *text);

struct column {
    const char *head;
    bool right; /* numbers */
    bool wraps; /* gives way when the table is too wide; others never do */
};
enum { TABLE_COLUMNS_MOST = 10 };
struct table_row {
    const char *cell[TABLE_COLUMNS_MOST];
    enum weight weight;
    bool rule; /* a rule above */
};
struct table {
    struct arena *arena;
    const struct column *column;
    size_t column_count;
    struct table_row *row;
    size_t count, capacity;
};
struct table table_new(struct arena *arena, const struct column *column, size_t column_count);
/* The new row, zeroed: the caller sets its cells (NULL is empty). */
struct table_row *table_row(struct table *table);
/* Heads, a rule, the rows: columns two blanks apart, fitted to the screen.  Nothing when there is no row. */
void screen_table(struct screen *screen, const struct table *table);

/* Thousands apart: 3,032. */
char *pounds_text(struct arena *arena, double pounds);
/* A place along a member on the tape; "" for NAN. */
const char *place_text(struct arena *arena, double at_in);
/* "3 - DFL2-2X10", or "none". */
char *plies_text(struct arena *arena, const struct member *member, int plies);
/* The check of the greatest ratio, or NULL. */
const struct check *checks_governing(const struct member_checks *checks);
/* "beam B1, end 1" names a part of "beam B1": what stands before the comma is the same. */
bool node_same(const char *a, const char *b);
/* Is it an engineer's member, or an end of one?  Such is never said to pass. */
bool is_specified(const struct design *design, const struct member_checks *checks);
/* Job, number, date, status; and 'not for signature' with why. */
void screen_head(struct screen *screen, const struct report *report);
/* Asks that stand open and checks that fail. */
void screen_open(struct screen *screen, const struct report *report);
void screen_caution(struct screen *screen);
/* The run to show, or NULL. */
const struct run *report_run(const struct report *report);

#endif
