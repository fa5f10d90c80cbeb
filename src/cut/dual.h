/* Bounds from values of the types, in whole numbers. */
#ifndef SAWBILL_CUT_DUAL_H
#define SAWBILL_CUT_DUAL_H

#include "knap.h"

/* Makes a sound bound of any values that are 0 or more (form_certificate): values are scaled down where an endless
 * stock could hold more than it costs, `extra`, `held` and `sum` are set. */
void dual_settle(struct dual *dual, struct knap *knap, const struct norm *norm);
/* Values by length alone: no plan costs less than the least price per length says. */
void dual_by_length(struct dual *dual, const struct norm *norm);

#endif
