/* The takeoff: everything bought, cut and done, each line saying how it was counted.  Pure. */
#ifndef SAWBILL_TAKEOFF_H
#define SAWBILL_TAKEOFF_H

#include "sawbill/catalog.h"
#include "sawbill/design.h"
#include "sawbill/job.h"

enum line_is { LINE_PIECES, LINE_ITEM, LINE_LABOR, LINE_BUY, LINE_SUB };

struct takeoff_line {
    const char *id;           /* "hangers/parlor/A": says what it is, never a running number */
    const char *what, *where; /* "joist hanger", "beam B1, side A" */
    decimal_t count;
    const char *unit;    /* "each", "hours", "sq ft" */
    const char *counted; /* "11 joists, side A: 11 hangers" */
    enum line_is is;
    enum cost_class class;
    const char *item;            /* LINE_ITEM: prices.csv item; LINE_PIECES: member code */
    const struct member *member; /* LINE_PIECES */
    length_t length;             /* LINE_PIECES: of each piece, finished */
    const struct task *task;     /* LINE_LABOR from labor.csv; count is in the task's `per` */
    const struct trade *trade;   /* LINE_LABOR of [work]; count is hours */
    money_t price;               /* LINE_BUY without item, LINE_SUB: the job's own price of one */
    percent_t own_markup;
    bool has_own_markup;
    bool spare; /* small hardware: the bid's spare applies */
    const char *cost_code;
    struct place at; /* of the section or catalog row that it comes from */
};
struct takeoff {
    struct takeoff_line *line;
    size_t count, capacity;
};

struct takeoff *takeoff_job(struct arena *arena, const struct job *job, const struct catalog *catalog,
                            const struct design *design, struct diags *diags);

/* What assemblies.csv may count by: a name and what it means, for checks, manual and messages. */
struct per_info {
    const char *per, *unit, *help;
};
size_t per_count(void);
struct per_info per_info(size_t index);

#endif
