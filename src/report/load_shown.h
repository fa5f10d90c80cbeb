/* Loads as every report shows them. */
#ifndef SAWBILL_REPORT_LOAD_SHOWN_H
#define SAWBILL_REPORT_LOAD_SHOWN_H

#include "sawbill/design.h"

/* Dead, live, of it attic, roof live, snow.  `live` is the sum of all that is not roof live, so that who reads it and
 * knows nothing of attics has the safe figure; the attic's part of it need not act with the rest. */
enum { SHOWN_LOADS = LOAD_ATTIC + 1 };
double load_shown(const struct loads *loads, int column);

#endif
