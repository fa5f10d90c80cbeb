/* Plans that waste next to nothing, where every stock costs the same a unit of length. */
#ifndef SAWBILL_CUT_FILL_H
#define SAWBILL_CUT_FILL_H

#include "work.h"

/* Looks for a plan that costs no more than the bound: sticks whose lengths add up to what the pieces need, each filled
 * to the last unit.  Nothing is done where costs are not in proportion to length, or the sums are too long to keep.
 * True: such a plan was found and offered. */
bool fill_run(struct work *work);

#endif
