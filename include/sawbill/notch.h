/* Shear where a bending member is cut at an end, or hung from low on its face: NDS 2018 3.4.3.2 and 3.4.3.3.
 *
 * Nothing here allocates.  Inches, pounds, psi; fv is Fv'.  The limits of depth and length stand beside the formulas.
 */
#ifndef SAWBILL_NOTCH_H
#define SAWBILL_NOTCH_H

#include <stdbool.h>

#include "sawbill/catalog.h"

/* Cut from the tension face, square: (2/3 Fv' b dn) (dn/d)^2, 3.4.3.2(a).  0 where nothing is left. */
double notch_shear_below(double fv, double width_in, double depth_in, double left_in);
/* Cut from the compression face, square or sloped, 3.4.3.2(e): 2/3 Fv' b (d - (d - dn)/dn e); left: dn, of a sloped cut
 * at the inner edge of the support; past: e, from there to the full depth.  e beyond dn: dn as the depth. */
double notch_shear_above(double fv, double width_in, double depth_in, double left_in, double past_in);
/* Fasteners in the side, 3.4.3.3: (2/3 Fv' b de) (de/d)^2 closer than 5 d to the end, else 2/3 Fv' b de.  reach: de,
 * from the loaded edge to the farthest fastener. */
double hung_shear(double fv, double width_in, double depth_in, double reach_in, double from_end_in);
enum { HUNG_NEAR_DEPTHS = 5 };

/* The deepest cut that the code allows at an end, in parts of the depth and in inches (0: no such limit). */
enum notch_shape { NOTCH_BELOW, NOTCH_ABOVE, NOTCH_SLOPE };
struct notch_limit {
    double part, most_in, length_depths; /* length: of a slope, in depths */
    const char *clause;                  /* NULL: the code has no limit */
    bool of_whole;                       /* the cut at its deepest; else what is off at the inner edge of the support */
};
struct notch_limit notch_limit(enum family_of_wood wood, enum notch_shape shape);

#endif
