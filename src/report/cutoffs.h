/* Cutoffs that are worth keeping, longest first, equal ones counted. */
#ifndef SAWBILL_REPORT_CUTOFFS_H
#define SAWBILL_REPORT_CUTOFFS_H

#include "sawbill/cut.h"

struct cutoff {
    length_t length;
    int count;
};
struct cutoffs {
    struct cutoff *cutoff;
    size_t count;
};
struct cutoffs cutoffs_of(struct arena *arena, const struct cut_plan *plan);
/* "2 x 3' 4-1/2", 1' 9"", or "none". */
const char *cutoffs_text(struct arena *arena, const struct cut_plan *plan);
/* "best found, at most $1.20 above the bound; the search met its limit" */
const char *verdict_text(struct arena *arena, const struct cut_plan *plan);

#endif
