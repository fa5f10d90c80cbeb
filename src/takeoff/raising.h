/* What it takes to bring a beam in and up: weight, people, shrinkage, and whether it goes in at all. */
#ifndef SAWBILL_TAKEOFF_RAISING_H
#define SAWBILL_TAKEOFF_RAISING_H

#include "counting.h"

/* People for a lift: ceil(lb / share), at least 2, at least 3 for a piece over 12 ft raised overhead (common practice,
 * no source). */
int raising_people(double lb, double share_lb, length_t length);

/* The longest straight piece, `thick` across, that turns level from a passage `a` wide into one `b` wide at a right
 * angle; 0 when it is thicker than one of them is wide.  The least over every angle of
 * a / sin + b / cos - thick / (sin cos), by statics of nothing but geometry; for thick = 0 it is
 * (a^(2/3) + b^(2/3))^(3/2). */
double way_round_corner(double a, double b, double thick);

/* The head room that a piece `length` long and `depth` deep needs to be tilted until it fits level between faces
 * `clear` apart: at the least tilt t with length cos t + depth sin t <= clear, length sin t + depth cos t.  0: it fits
 * level. */
double way_head_room(double length, double depth, double clear);

/* The longest of the pieces that each ply is made of. */
length_t longest_ply_piece(const struct beam_design *design);

/* Adds what the way must let through to raising->way. */
void way_in_add(struct counting *counting, struct raising *raising);

#endif
