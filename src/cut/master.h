/* A linear programme that grows by columns and rows, kept warm between solutions; the only way to the library behind
 * it.  Its answers are floating-point figures: nothing is proved by them.  Rows and columns count from 0. */
#ifndef SAWBILL_CUT_MASTER_H
#define SAWBILL_CUT_MASTER_H

#include <stdbool.h>

#include "sawbill/arena.h"

struct master;
struct master_library;
#define MASTER_FREE 1e300 /* a bound of this size, or of its negative, is none */

/* Where the library holds more memory than that after a solution it is lost.  Whoever opens it closes it: that releases
 * all that it holds, every programme in it, too.  The arena holds only the handles.  NULL when it cannot start; closing
 * NULL is allowed. */
struct master_library *master_open(struct arena *arena, size_t most_memory);
/* It ran out of memory or failed: nothing can be solved any more. */
bool master_lost(const struct master_library *library);
void master_close(struct master_library *library);
/* NULL when the library has failed. */
struct master *master_new(struct arena *arena, struct master_library *library);
void master_free(struct master *master);

/* After a failure of the library every programme in it is lost: master_solve() says MASTER_FAILED for good. */
void master_add_row(struct master *master, double least, double most);
void master_set_row(struct master *master, int row, double least, double most);
void master_add_column(struct master *master, double cost, double most, int count, const int *row,
                       const double *factor);
void master_set_column(struct master *master, int column, double least, double most);
void master_set_cost(struct master *master, int column, double cost);
/* The factors of a row anew. */
void master_set_factors(struct master *master, int row, int count, const int *column, const double *factor);
/* Takes away the columns for which `gone` is true. */
void master_drop_columns(struct master *master, const bool *gone);

enum master_how { MASTER_PRIMAL, MASTER_DUAL };
enum master_status { MASTER_SOLVED, MASTER_INFEASIBLE, MASTER_FAILED };
enum master_status master_solve(struct master *master, enum master_how how);
double master_value(const struct master *master);
double master_price(const struct master *master, int row);
double master_use(const struct master *master, int column);
double master_reduced(const struct master *master, int column);
int master_rows(const struct master *master);
int master_columns(const struct master *master);
/* Pivots so far. */
long master_pivots(const struct master *master);

#endif
