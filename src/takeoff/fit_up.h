/* Where a new beam meets the wall that came out: furring, fillers, the gap in its plates, blocks beside it. */
#ifndef SAWBILL_TAKEOFF_FIT_UP_H
#define SAWBILL_TAKEOFF_FIT_UP_H

#include "counting.h"

/* The first wall that comes out under a beam, or NULL; its depth by members.csv, 0: not known. */
const struct wall *wall_of_beam(const struct counting *counting, const struct beam *beam);
length_t wall_depth(const struct counting *counting, const struct wall *wall);
/* Does a member have this size or code? */
bool is_of_size(const struct member *member, const char *size);
/* Strips on both faces of the wall at this end, where post or dropped beam stand out of it; 0: none. */
length_t furring_at(const struct counting *counting, const struct beam_design *design, int end);
/* One face of a dropped beam that is narrower than its wall: length x depth; 0: none. */
bool filler_of(const struct counting *counting, const struct beam_design *design, length_t *length, length_t *depth);
/* What the plates came out longer than the beam is; 0: less than can be filled. */
length_t plate_gap(const struct counting *counting, const struct beam_design *design);
/* Blocks beside a beam on one face, or (face 2) between the joists on a dropped one. */
int64_t blocks_beside(const struct beam_design *design, int face);
/* New joists of a side. */
int64_t joists_added(const struct joist_design *design);

#endif
