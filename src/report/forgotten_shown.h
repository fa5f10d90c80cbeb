/* What is usually forgotten, in words for every report. */
#ifndef SAWBILL_REPORT_FORGOTTEN_SHOWN_H
#define SAWBILL_REPORT_FORGOTTEN_SHOWN_H

#include "sawbill/takeoff.h"

/* "parking", "parking: the drive is free" */
const char *forgotten_text(struct arena *arena, const struct takeoff_forgotten *forgotten);
/* All lines of one state, "parking; paint to the next corner"; NULL for none. */
const char *forgotten_list(struct arena *arena, const struct takeoff *takeoff, enum forgotten_state state);

#endif
