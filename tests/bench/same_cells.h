/* Only files with the same cells may be compared. */
#ifndef SAWBILL_BENCH_SAME_CELLS_H
#define SAWBILL_BENCH_SAME_CELLS_H

#include <stddef.h>

#include "sawbill/arena.h"

/* NULL when the cell data (values, formulas, stored results, looks) of each of the `sheets` sheets and the shared
 * strings are the same, byte for byte, in both files; else the part that is not. */
const char *different_cells(struct arena *arena, const char *file, const char *other, size_t sheets);

#endif
