/* Statics of temporary support: cut joists that run past a shore, and a top plate whose studs miss the joists.
 *
 * Nothing here allocates.  Inches and pounds. */
#ifndef SAWBILL_SHORING_H
#define SAWBILL_SHORING_H

/* A joist of a run L under w lb an inch, cut at the beam's line, the shore at `back` (a) from there; P stands at its
 * tip. */
struct shore_tip {
    double reaction_lb; /* on the shore: w L^2 / (2 (L - a)) + P L / (L - a) */
    double moment_inlb; /* over the shore: w a^2 / 2 + P a */
    double shear_lb;    /* at the shore, the greater side */
};
struct shore_tip shore_tip(double w_lb_per_in, double run_in, double back_in, double tip_lb);

/* Equal loads `apart_in` on a plate between two studs `bay_in` apart, where they do most; the plate as a simple span.
 */
double shore_plate_moment(double load_lb, double apart_in, double bay_in);
/* The nearest of them `near_in` from a stud: what is nearer goes straight down. */
double shore_plate_shear(double load_lb, double apart_in, double bay_in, double near_in);

/* Flat use factor of dimension lumber 2 to 3 in thick, NDS 2018 4.3.7, Supplement Tables 4A and 4B. */
double wood_cfu(double width_in);

#endif
