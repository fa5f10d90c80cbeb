/* All patterns that a cheaper plan can use, listed by reduced cost. */
#ifndef SAWBILL_CUT_LIST_H
#define SAWBILL_CUT_LIST_H

#include "work.h"

struct list {
    struct pool pool;
    int64_t beyond; /* every plan that costs less than this uses listed patterns only, or may be made to */
    int64_t below;  /* plans that cost less than this are looked for */
};
/* Looks for at most `most` patterns.  `below`: plans that cost this much are of no interest.  When that is too many,
 * the list is for plans under a lower `beyond`; when even those of the bound itself are too many, it holds the most
 * promising, `beyond` is the bound, and nothing is proved by it. */
void list_make(struct work *work, struct list *list, const struct dual *dual, const struct span *span, int64_t below,
               size_t most);
/* Patterns of the pool that a plan that costs less than list->below may use. */
void list_add_pool(struct work *work, struct list *list, const struct pool *pool, const struct dual *dual);

#endif
