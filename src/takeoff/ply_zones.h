#ifndef SAWBILL_TAKEOFF_PLY_ZONES_H
#define SAWBILL_TAKEOFF_PLY_ZONES_H

#include "counting.h"
#include "sawbill/layout.h"

/* Zones for fasteners driven from face A and from face B; added to what `zones` holds. */
void ply_zones(struct counting *counting, const struct beam_design *design, const struct fastener *fastener,
               struct layout_zones zones[2]);

#endif
