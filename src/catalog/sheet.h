/* One CSV file as rows of cells, each cell with the place where it stood.  Knows nothing of columns. */
#ifndef SAWBILL_CATALOG_SHEET_H
#define SAWBILL_CATALOG_SHEET_H

#include <stdbool.h>
#include <stddef.h>

#include "sawbill/arena.h"
#include "sawbill/diag.h"

/* Far beyond any catalog of the trade; a file above it is not one. */
#define SHEET_MOST_BYTES ((size_t)8 * 1024 * 1024)
#define CELL_MOST_BYTES  ((size_t)4096)

struct cell {
    const char *text; /* trimmed, UTF-8, never NULL */
    struct place at;
};
struct row {
    struct cell *cell;
    size_t count;
};
struct sheet {
    const char *file;
    struct row *row; /* row 0 is the header; rows without any text are left out */
    size_t count, capacity;
    bool lost; /* a row was left out for a fault: what refers to it cannot be judged */
};

/* Reads the file from disk.  Returns false, with the fault in diags, when it cannot be read. */
bool sheet_read(struct arena *arena, const char *file, struct sheet *out, struct diags *diags);
/* The same from memory: RFC 4180, UTF-8 with or without a byte-order mark.  A row that breaks the CSV rules is reported
 * and left out; the rows after it are read. */
bool sheet_parse(struct arena *arena, const char *file, const char *text, size_t length, struct sheet *out,
                 struct diags *diags);

#endif
