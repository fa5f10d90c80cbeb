/* Plans by diving: patterns of the linear programme are fixed one after the other, the rest is priced again. */
#ifndef SAWBILL_CUT_DIVE_H
#define SAWBILL_CUT_DIVE_H

#include "colgen.h"
#include "greedy.h"

struct dive {
    struct work *work;
    struct colgen *cg;
    struct greedy *greedy;
    struct answer now, trial;
};
void dive_start(struct dive *dive, struct colgen *cg, struct greedy *greedy);
/* One dive from the root; `turn` changes the choices.  True when it found a cheaper plan. */
bool dive_run(struct dive *dive, int turn);

#endif
