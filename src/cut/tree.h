/* Branch and bound over a list of patterns. */
#ifndef SAWBILL_CUT_TREE_H
#define SAWBILL_CUT_TREE_H

#include "greedy.h"
#include "list.h"

/* Looks for plans cheaper than the work's best from listed patterns alone, within the span, over at most so many nodes.
 * True when it ends by itself: then no plan within the span that costs less than list->beyond is cheaper than the
 * work's best. */
bool tree_run(struct work *work, const struct list *list, const struct span *span, struct greedy *greedy,
              int64_t nodes);

#endif
