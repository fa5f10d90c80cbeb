/* One joist of a floor, ceiling or roof, or one ply of a header, rated as a simple span under an even load.
 *
 * NDS 2018.  The compression edge is held by what is nailed on it (4.4.1): CL = 1.  Nothing here allocates.  Inches,
 * pounds, psi; loads in lb per inch of the joist. */
#ifndef SAWBILL_JOIST_H
#define SAWBILL_JOIST_H

#include <stdbool.h>

#include "sawbill/design.h"

struct joist_section {
    const struct design_row *row;
    double width_in, depth_in;
    double cr;      /* wanted: joist_cr(), or 1 */
    double seat_in; /* taken off the lower edge at an end (3.4.3.2(a), 4.4.3); 0: none */
    bool green;     /* wet when built: more creep (3.5.2) */
};
/* Demand and capacity of each check.  live: without dead load; total: dead load with its creep.  Deflections are
 * inches against the span itself: divide by the n of L/n. */
struct joist_rating {
    double bending_psi, fb_psi, cf, cr;
    double shear_psi, fv_psi; /* on the depth left over a planed seat; fv with (dn/d)^2 */
    double live_in, total_in, creep;
};
/* 4.3.9: 1.15 for three or more members, at most 24 in apart, joined by sheathing; else 1. */
double joist_cr(int members, double apart_in);
struct joist_rating joist_rate(const struct joist_section *joist, double span_in, const struct loads *per_inch,
                               const struct combination *combo);
/* Of two even spans a and b under wa and wb (lb per inch) of one joist that runs on over the middle: the moment there,
 * three moments, M = (wa a^3 + wb b^3) / (8 (a + b)). */
double joist_middle_moment(double a_in, double wa, double b_in, double wb);
/* What a joist must hold where it ties a pair of rafters at the plate: T = w s L/(4 p), three-hinged frame; w psf on
 * plan, s between pairs, L span of the roof, p rise over run (0 or less: infinite). */
double rafter_thrust_lb(double psf, double apart_ft, double span_ft, double rise_over_run);
/* The same with the ridge at a from the eave wall of the slope whose rise over run is p, eaves level: the wall there
 * takes w s L/2, and about the ridge, p a above it, T p a = w s L/2 a - w s a^2/2: T = w s (L - a)/(2 p). */
double rafter_thrust_off_lb(double psf, double apart_ft, double span_ft, double ridge_ft, double rise_over_run);

#endif
