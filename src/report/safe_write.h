/* Files that appear whole or not at all: written under another name in the same folder, checked, then renamed. */
#ifndef SAWBILL_REPORT_SAFE_WRITE_H
#define SAWBILL_REPORT_SAFE_WRITE_H

#include "cells.h"
#include "sawbill/report.h"

/* Writes the book to path, or to path-r2 and so on while the file there is not as we wrote it.  *written: the name. */
enum write_status safe_write_book(const struct book *book, const char *path, const char **written, const char **why);

#endif
