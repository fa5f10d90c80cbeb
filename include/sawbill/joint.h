/* Dowel-type fasteners in wood: nails, spikes, screws, lag screws, bolts.  Allowable stress design.
 *
 * National Design Specification for Wood Construction, 2018 edition, chapters 11 and 12; section numbers are its.
 * Nothing here allocates.  Inches, pounds, psi.  Dry service unless a factor says otherwise. */
#ifndef SAWBILL_JOINT_H
#define SAWBILL_JOINT_H

#include <stdbool.h>

#include "sawbill/catalog.h"

enum joint_kind { JOINT_NONE, JOINT_NAIL, JOINT_HARDENED_NAIL, JOINT_WOOD_SCREW, JOINT_LAG_SCREW, JOINT_BOLT };
/* By the kind column of fasteners.csv; JOINT_NONE: nothing that holds framing (drywall screws), or not known. */
enum joint_kind joint_kind_of(const struct fastener *fastener);

/* Bending yield strength, Appendix I, Table I1, by nominal diameter; 0 beyond the table. */
double joint_fyb(enum joint_kind kind, double diameter_in);
/* Dowel bearing strength of wood, 12.3.3: any direction below 1/4 in; else by the angle of load to grain (Hankinson).
 * To the nearest 50 psi at 0 and 90 degrees, as Table 12.3.3 prints it. */
double joint_fe_wood(double gravity, double diameter_in, double angle_deg);
double joint_fe_formula(double gravity, double diameter_in, double angle_deg); /* the same, not rounded */
double joint_fe_steel(bool hot_rolled); /* A36 at 1/4 in; else ASTM A653 grade 33 */
/* Reduction term KD, Table 12.3.1B, below 1/4 in. */
double joint_rd_small(double diameter_in);

/* Dowel bearing length in the holding member of a penetration that counts the tip; 0: less than the least (6 D nails
 * and wood screws, 4 D lag screws, tip left out).  Between 6 D and 10 D half of the 2 D tip is left out (12.3.5.3). */
double joint_bearing_length(enum joint_kind kind, double nominal_in, double penetration_in);
double joint_lag_tip(double nominal_in); /* length E of the tapered tip, Appendix L, Table L2 */

enum joint_mode { MODE_IM, MODE_IS, MODE_II, MODE_IIIM, MODE_IIIS, MODE_IV, JOINT_MODES };
/* One joint.  root_in: where threads or a reduced body lie in the shear plane (12.3.7), else 0.  angle_deg: the
 * greatest between load and grain in any member.  double_shear: two equal side members (of unequal: the weaker). */
struct joint_plane {
    double nominal_in, root_in, fyb_psi;
    double side_in, main_in, fe_side, fe_main;
    double angle_deg;
    bool double_shear;
};
struct joint_lateral {
    double lb; /* Z of one fastener; 0 when anything of the joint is 0 */
    enum joint_mode mode;
    double of[JOINT_MODES]; /* by mode; infinite where it cannot happen (II and IIIm in double shear) */
};
struct joint_lateral joint_lateral(const struct joint_plane *plane); /* 12.3.1 */
const char *joint_mode_name(enum joint_mode mode);                   /* "IIIs" */

/* Withdrawal for each inch of penetration, 12.2: of a smooth-shank nail; of the thread of a screw, of a lag screw. */
double joint_withdrawal(enum joint_kind kind, double gravity, double diameter_in);

/* Table 11.3.1; 1 where it changes nothing: joint_factors_plain().  CD is at most 1.6 (11.3.2). */
struct joint_factors {
    double cd, cm, ct, cg, cdelta, ceg, cdi, ctn;
};
struct joint_factors joint_factors_plain(double cd);
/* Tables 11.3.3 and 11.3.4, from memory: lateral, wet in service; heat: 0 up to 100 F, 1 up to 125 F, 2 up to 150 F. */
double joint_cm(bool wet);
double joint_ct(int heat, bool wet);
double joint_adjust(double z_lb, const struct joint_factors *factors);
/* 12.5: end grain (Ceg) and toe-nails (Ctn), lateral. */
double joint_ceg_lateral(void);
double joint_ctn_lateral(void);
double joint_ctn_withdrawal(void);
/* Group action, 11.3.6, of `count` fasteners in a row along the load; 1 below 1/4 in.  ea: E A of each member. */
double joint_cg(int count, double spacing_in, double diameter_in, bool metal_side, double ea_main, double ea_side);

/* Heel joints and joist splices under rafter thrust: nails needed, IRC 2021 Table R802.5.2(1): never fewer than 3. */
int heel_joint_nails(double thrust_lb, double z_lb, double cd);

/* Plies of one size and one wood, side by side, each carrying an equal share.  Joint k, from 1, lies between ply k and
 * ply k + 1, counted from face A.  Unequal or mixed plies do not share equally and are not for this. */
struct joint_plies {
    int plies;
    double ply_in, gravity, e_psi;
};
/* Where a fastener driven from a face is counted at joint k: its bearing length in the ply beyond, 0 when it does not
 * reach with enough; a bolt passes through all or counts nowhere. */
double joint_reach(const struct joint_plies *plies, enum joint_kind kind, double nominal_in, double length_in,
                   int joint, bool from_face_b);
/* Pounds a foot that must cross joint k: loads hung on face A and face B; `fixed` always there, `moving` on either side
 * or none, signs kept; the greatest size.  `on`: 0 nothing moving, 1 side A only, 2 side B only, 3 both. */
struct joint_crossing {
    double plf;
    int on;
};
struct joint_crossing joint_crossing(int plies, int joint, double fixed_a, double fixed_b, double moving_a,
                                     double moving_b);
/* Share of a point load, hung on a face that is not known, that must cross joint k. */
double joint_hung_share(int plies, int joint);

/* Least distances of fasteners in the wood, loaded across the grain.  Nails and screws below 1/4 in: the Commentary to
 * 12.1.6.6 (not prebored; from memory: the standard itself asks only that nothing splits).  Others: 12.5.1. */
struct joint_distances {
    double edge, end, along, between; /* along: in a row, along the grain; between: rows, across it */
    double full_end, full_between;    /* from here on C-delta is 1 */
};
struct joint_distances joint_distances(double nominal_in, bool staggered);

#endif
