/* Wood design by formula: the factors of the NDS (allowable stress design) and what they make of reference values.
 *
 * National Design Specification for Wood Construction, 2018 edition; section numbers are its.  Nothing here allocates.
 * Inches, pounds, psi.  Dry service in a heated building: CM, Ct and Ci are in the reference values (service.h). */
#ifndef SAWBILL_WOOD_H
#define SAWBILL_WOOD_H

#include <stdbool.h>

#include "sawbill/catalog.h"

/* Load duration, Table 2.3.2. */
enum wood_duration { DURATION_PERMANENT, DURATION_TEN_YEARS, DURATION_TWO_MONTHS, DURATION_SEVEN_DAYS };
double wood_cd(enum wood_duration duration);
/* By how long the load stands, in days; 0 or less: unknown, taken as ten years. */
double wood_cd_of_days(int days);

/* Size factor, 4.3.6, for a dressed (actual) thickness of ONE ply and a dressed depth.  All 0 where the grade is not
 * for that width (Stud beyond 6 in, Construction, Standard and Utility beyond 4 in). */
struct wood_size_factor {
    double fb, ft, fc;
};
struct wood_size_factor wood_cf(const struct design_row *row, double thickness_in, double depth_in);
/* Depth factor of timbers deeper than 12 in, 4.3.6.2. */
double wood_cf_timber(double depth_in);
/* Nominal width of a dressed one, by PS 20: 9.25 -> 10; between two sizes the greater. */
double wood_nominal(double dressed_in);

/* Volume factor of glulam, 5.3.6: x = 10, Southern Pine 20; at most 1. */
double wood_cv(double span_ft, double depth_in, double width_in, double x);
/* Depth factor of composite lumber, 8.3.6, at most 1: typical of the class; the product's report governs. */
double wood_scl_depth(enum family_of_wood wood, double depth_in);

/* Effective length of bending members, Table 3.3.3; lu: distance between points of lateral support. */
enum wood_loading {
    LE_SPAN_UNIFORM,
    LE_SPAN_POINT_MID,
    LE_SPAN_POINT_MID_BRACED,
    LE_CANTILEVER_UNIFORM,
    LE_CANTILEVER_POINT_END,
    LE_EQUAL_MOMENTS,
    LE_NOT_LISTED
};
double wood_le(enum wood_loading loading, double lu_in, double depth_in);
double wood_rb(double le_in, double depth_in, double width_in); /* 3.3.3.6; must not exceed 50 */
double wood_cl(double rb, double emin_psi, double fb_star_psi); /* 3.3.3.8 */

/* Column stability, 3.7.1.5: slenderness is le/d. */
double wood_c(enum family_of_wood wood);
double wood_cp(double slenderness, double emin_psi, double fc_star_psi, double c);
/* Bearing area, 3.10.4: only for bearings shorter than 6 in that are 3 in or more from the end; else 1. */
double wood_cb(double bearing_in, double from_end_in);
double wood_kf_nailed(void);      /* 15.3.2: buckling across the plies of a nailed built-up column */
double wood_kcr(bool green_wood); /* 3.5.2: 1.5 dry, 2.0 unseasoned */

/* Adjusted values, Table 4.3.1. */
struct wood_factors {
    double cd, cr, cl, cp, cb;
    struct wood_size_factor cf;
};
struct wood_values {
    double fb, ft, fv, fc_perp, fc, e, emin;
};
struct wood_values wood_adjust(const struct design_row *row, const struct wood_factors *factors);

/* A member of equal plies side by side. */
struct wood_piece {
    const struct design_row *row;
    enum family_of_wood wood;
    double ply_in, depth_in;
    int plies;
};
double wood_area(const struct wood_piece *piece);
double wood_modulus(const struct wood_piece *piece);
double wood_inertia(const struct wood_piece *piece);
/* Cr that may be used: 4.3.9 (1.15 at most, three or more members), 8.3.7 (1.04), none for glulam. */
double wood_cr(const struct wood_piece *piece, double wanted);

/* Fb' of a beam.  Lateral buckling is rated on the width of one ply: plies are only nailed together. */
struct wood_bending {
    double cf, cr, cv, cl, le_in, rb, fb_star, fb; /* rb 0: CL needed no length; fb 0: RB beyond 50 */
};
struct wood_bending wood_bending(const struct wood_piece *piece, double cd, double cr, double lu_in,
                                 enum wood_loading loading, double span_in);

/* A post of equal plies.  Unbraced lengths: along = buckling in the direction of the ply depth, across = through the
 * plies; 0: braced all along.  nailed: the plies are nailed by 15.3.3. */
struct wood_post {
    struct wood_piece piece;
    double along_in, across_in;
    double most_slender; /* 50; 75 during construction (3.7.1.4) */
    bool nailed;
};
struct wood_post_rating {
    double fc_star, cp_along, cp_across, cp_ply; /* cp_across holds Kf; cp_ply: each ply as a column of its own */
    double cp, capacity_lb, slenderness;
    bool too_slender, as_single_plies;
};
struct wood_post_rating wood_post_rate(const struct wood_post *post, double cd);

/* Nails of a built-up column, 15.3.3. */
struct wood_nailing {
    double needed_length, end_least, end_most, spacing_least, spacing_most, row_least, row_most, edge_least, edge_most;
    int rows;
};
struct wood_nailing wood_nailing(int plies, double ply_in, double depth_in, double diameter_in);

#endif
