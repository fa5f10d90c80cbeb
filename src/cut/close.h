/* The last part of the solver: what lies between the bound and the best plan. */
#ifndef SAWBILL_CUT_CLOSE_H
#define SAWBILL_CUT_CLOSE_H

#include "dive.h"

/* Until nothing is left to prove or a limit is met. */
void close_gap(struct work *work, struct colgen *cg, struct dive *dive, struct greedy *greedy);

#endif
