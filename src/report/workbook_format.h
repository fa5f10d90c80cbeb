/* The looks of the cells, made once for a workbook. */
#ifndef SAWBILL_REPORT_WORKBOOK_FORMAT_H
#define SAWBILL_REPORT_WORKBOOK_FORMAT_H

#include <stdbool.h>
#include <xlsxwriter.h>

#include "cells.h"

/* Fills formats[LOOK_COUNT]; false when the library refuses one. */
bool formats_make(lxw_workbook *workbook, lxw_format *formats[LOOK_COUNT]);

#endif
