/* What is looked for before anything is cut. */
#ifndef SAWBILL_REPORT_BEFORE_CUTTING_H
#define SAWBILL_REPORT_BEFORE_CUTTING_H

#include "sawbill/job.h"

/* One line each; none where nothing comes out. */
const char **before_cutting(struct arena *arena, const struct job *job, size_t *count);
/* Services of one wall that comes out. */
const char *wall_services(struct arena *arena, const struct wall *wall);
/* What old houses may hold; NULL past the last. */
const char *old_house(size_t index);

#endif
