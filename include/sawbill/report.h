/* What is written: the cost workbook, the client file, terminal tables, JSON.  The only layer that writes files. */
#ifndef SAWBILL_REPORT_H
#define SAWBILL_REPORT_H

#include "sawbill/price.h"

struct report {
    const struct job *job;
    const struct catalog *catalog;
    const struct outcome *outcome; /* NULL when a stop left nothing to show */
    const struct diags *diags;
    const char *job_file;
    bool signable; /* no ask open, no failing check, not a budget */
};

/* Writes PATH by way of a temporary file beside it, checked and renamed.  A file there that was changed by hand since
 * we wrote it is kept: the new one is called NAME-r2.xlsx and so on.  *written is the name used. */
enum status report_workbook(struct arena *arena, const struct report *report, const char *path, const char **written,
                            const char **why);
enum status report_client(struct arena *arena, const struct report *report, const char *path, const char **written,
                          const char **why);

/* Writes text safely to PATH: a temporary file beside it, flushed and renamed. */
enum status report_text(struct arena *arena, const char *path, const char *text, const char **why);

/* Text for the terminal; color adds SGR sequences, width is of the terminal. */
char *report_bid(struct arena *arena, const struct report *report, bool color, int width);
char *report_check(struct arena *arena, const struct report *report, bool color, int width);
char *report_compare(struct arena *arena, const struct report *report, bool color, int width);
char *report_cuts(struct arena *arena, const struct report *report, bool color, int width);
char *report_order(struct arena *arena, const struct report *report, bool color, int width);
/* One JSON object (cJSON text, two-blank indent, ending in a newline). */
char *report_json(struct arena *arena, const struct report *report);

/* The caution that every sizing output carries. */
const char *caution_text(void);

#endif
