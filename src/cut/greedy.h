/* Plans by simple filling: the first that there is, and the rest of a dive. */
#ifndef SAWBILL_CUT_GREEDY_H
#define SAWBILL_CUT_GREEDY_H

#include "work.h"

struct greedy {
    int64_t *demand, *supply; /* what is left, while it fills */
    int *count;
    struct pool pool; /* one column at a time */
};
void greedy_start(struct greedy *greedy, struct arena *arena, const struct norm *norm);
/* Longest first over every stock, several ways; the cheapest plan of them is added to `answer` if that makes it cheaper
 * than `below`: true then. */
bool greedy_finish(struct work *work, struct greedy *greedy, const int64_t *demand, const int64_t *supply,
                   int64_t below, struct answer *answer);

#endif
