/* Measured quantities with their unit kept: an exact decimal in millionths of the unit written, and
 * conversion to a double only where engineering needs it.
 *
 * 1 lbf = 4.4482216152605 N, 1 ft = 0.3048 m (exact by definition): 1 kPa = 20.885434 psf. */
#ifndef SAWBILL_QUANTITY_H
#define SAWBILL_QUANTITY_H

#include <stdbool.h>
#include <stdint.h>

#include "sawbill/arena.h"

enum unit {
    UNIT_NONE,
    UNIT_PSF,
    UNIT_KPA, /* pressure over an area */
    UNIT_PLF,
    UNIT_KN_M, /* line load */
    UNIT_LB,
    UNIT_KIP,
    UNIT_KN, /* force */
    UNIT_SQFT,
    UNIT_SQM, /* area */
    UNIT_CUFT,
    UNIT_CUYD, /* volume */
    UNIT_PCF,  /* density */
    UNIT_HOUR,
    UNIT_DAY, /* time */
    UNIT_COUNT_
};

enum dimension { DIM_NONE, DIM_PRESSURE, DIM_LINE, DIM_FORCE, DIM_AREA, DIM_VOLUME, DIM_DENSITY, DIM_HOURS, DIM_DAYS };

struct quantity {
    int64_t millionths; /* of `unit` */
    enum unit unit;
};

enum dimension unit_dimension(enum unit unit);
const char *unit_name(enum unit unit);
const char *dimension_name(enum dimension dimension); /* "a pressure (psf, kPa)" */

/* A number and its unit: "40 psf", "2.4 kPa", "1,250 lb", "12 sq ft", "3 days"; a bare "0" has unit NONE.
 * At most 6 decimals. A missing or unknown unit is refused, with *why (static text). */
bool quantity_parse(const char *text, struct quantity *out, const char **why);
char *quantity_text(struct arena *arena, struct quantity value);
/* In the trade's own unit of its dimension: psf, plf, lb, sq ft, cu ft, pcf, hours, days. */
double quantity_value(struct quantity value);

#endif
