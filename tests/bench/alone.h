/* The other side of the measurement. */
#ifndef SAWBILL_BENCH_ALONE_H
#define SAWBILL_BENCH_ALONE_H

#include "report/cells.h"

/* Writes the book's cells, looks, column widths, merged texts and names straight through libxlsxwriter, once, without
 * any check, temporary name or flush.  NULL, or what went wrong. */
const char *write_alone(const struct book *book, const char *file);

#endif
