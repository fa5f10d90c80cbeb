/* A square spot footing of plain concrete under one post: what the soil feels, and the least pad that keeps the rules.
 *
 * IRC 2021 R403.1.1: the pad from the load and the soil's allowed pressure; it stands out beyond the post at least 2 in
 * and at most its own thickness; 12 in wide and 6 in thick at least.  Soil pressures know no load duration.  Nothing
 * here allocates. */
#ifndef SAWBILL_FOOTING_H
#define SAWBILL_FOOTING_H

#include <stdbool.h>

struct footing_pad {
    double side_in, thickness_in;
};
/* What stands on it: the sides of the post's foot, and the weight of the concrete that is counted. */
struct footing_case {
    double load_lb, soil_psf, concrete_pcf;
    double post_short_in, post_long_in;
};
double footing_concrete_pcf(void); /* 150, plain concrete (common practice) */
double footing_least_thickness_in(void);
double footing_least_projection_in(void);
/* Pressure on the soil, the pad's own weight with it. */
double footing_pressure_psf(double load_lb, const struct footing_pad *pad, double concrete_pcf);
/* Beyond a post of that side, on each side of it. */
double footing_projection_in(const struct footing_pad *pad, double post_in);
/* Side of the square before it is rounded: load over what the soil has left for it.  Infinite: the pad's own weight
 * takes all. */
double footing_side_in(const struct footing_case *at, double thickness_in);
/* Size and thickness solved together: side up to the next 2 in, thickness to the next inch.  false: no pad of plain
 * concrete does it on this soil. */
bool footing_least(const struct footing_case *at, struct footing_pad *out);

#endif
