/* The linear programme of the pattern model by column generation: over what is left to cut of every type, all stocks at
 * once.  Its bound is added up in whole numbers from the knapsack, whatever the programme says. */
#ifndef SAWBILL_CUT_COLGEN_H
#define SAWBILL_CUT_COLGEN_H

#include "knap.h"

struct colgen {
    struct work *work;
    struct master *master;
    struct pool pool; /* column by column as in the master */
    struct knap knap;
    /* The rows: what is left to cut of every type; then, of every stock, the least and the most that may be used (most:
     * FORM_ENDLESS where there is no end). */
    int64_t *demand, *least, *supply;
    struct span span;       /* what colgen_reset() sets the use of the stocks to */
    double unit;            /* costs are divided by this in the programme */
    double *price, *centre; /* of each type: the programme's, and the one of the best bound */
    bool has_centre;
    struct dual dual, trial;
    int64_t *floor;
    int *count;
    int *row; /* scratch: a column as the programme takes it */
    double *factor;
    double value; /* of the programme */
};

/* Starts with a column for every type and the patterns of `first`. */
bool colgen_start(struct colgen *cg, struct work *work, const struct answer *first);
/* Everything is left, and any use of the stocks that the supply allows. */
void colgen_reset(struct colgen *cg);
/* Rows and columns set to what is left; columns that hold more of a type than that are shut. */
void colgen_set_left(struct colgen *cg);
enum colgen_end { COLGEN_DONE, COLGEN_LIMIT, COLGEN_FAILED };
/* At most so many rounds.  Ends early (as done) once the bound, rounded up, is `enough` or what the programme's value
 * rounds up to, if `rounded`.  cg->dual: the best bound of this run. */
enum colgen_end colgen_run(struct colgen *cg, int rounds, int64_t enough, bool rounded);

#endif
