/* Branch and bound over how many sticks of each stock are used. */
#ifndef SAWBILL_CUT_BRANCH_H
#define SAWBILL_CUT_BRANCH_H

#include "dive.h"

/* Raises the bound, and may find cheaper plans, over at most so many nodes. */
void branch_run(struct work *work, struct colgen *cg, struct dive *dive, struct greedy *greedy, int nodes);

#endif
