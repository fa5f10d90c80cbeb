/* All patterns that a cheaper plan can use, listed by reduced cost. */
#ifndef SAWBILL_CUT_LIST_H
#define SAWBILL_CUT_LIST_H

#include "work.h"

struct list {
    struct pool pool;
    int64_t beyond; /* every plan that costs less than this uses listed patterns only, or may be made to */
};
/* Looks for at most `most` patterns.  `below`: plans that cost this much are of no interest.  When that is too many,
 * the list holds those that plans under a lower `beyond` use; empty when even those of the bound itself are too many.
 */
void list_make(struct work *work, struct list *list, const struct dual *dual, int64_t below, size_t most);

#endif
