/* The looks of the cells, made once for a workbook. */
#ifndef SAWBILL_REPORT_WORKBOOK_FORMAT_H
#define SAWBILL_REPORT_WORKBOOK_FORMAT_H

#include <stdbool.h>
#include <xlsxwriter.h>

#include "cells.h"

/* Fills formats[LOOK_COUNT]; false when the library refuses one. */
bool formats_make(lxw_workbook *workbook, lxw_format *formats[LOOK_COUNT]);

bool look_wraps(enum look look);
double look_points(enum look look); /* the size of its type */

/* Points for every row of the page, 0 where the default does: programs that show the file do not all fit a row to its
 * wrapped text.  Returns the number of rows. */
int row_heights(const struct page *page, double **height);

#endif
