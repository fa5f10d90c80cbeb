/* What it takes to raise a beam, in words for every report. */
#ifndef SAWBILL_REPORT_RAISING_SHOWN_H
#define SAWBILL_REPORT_RAISING_SHOWN_H

#include "sawbill/takeoff.h"

/* Weight, people, shrinkage: one line. */
char *raising_text(struct arena *arena, const struct raising *raising);
/* One measure of the way in. */
char *way_in_text(struct arena *arena, const struct raising *raising, size_t index);

#endif
