/* Plies that hang together: what must cross each joint between them, and which fasteners are there to carry it. */
#include "sawbill/joint.h"

#include <math.h>

double joint_reach(const struct joint_plies *plies, enum joint_kind kind, double nominal, double length, int joint,
                   bool from_face_b)
{
    int before = from_face_b ? plies->plies - joint : joint; /* plies passed on the way to the joint */
    if (joint < 1 || joint >= plies->plies)
        return 0;
    if (kind == JOINT_BOLT) /* all the way, or it has no nut */
        return length >= plies->plies * plies->ply_in - 1e-9 ? plies->ply_in : 0;
    double bearing = joint_bearing_length(kind, nominal, length - before * plies->ply_in);
    return fmin(bearing, plies->ply_in);
}

/* What enters at face A crosses joint k but for the share of the k plies before it; what enters at face B is met by the
 * share that those k plies take of it. */
struct joint_crossing joint_crossing(int plies, int joint, double fixed_a, double fixed_b, double moving_a,
                                     double moving_b)
{
    struct joint_crossing worst = {0};
    double n = plies, from_a = (n - joint) / n, from_b = joint / n;
    for (int on = 0; on < 4; on++) {
        double a = fixed_a + (on & 1 ? moving_a : 0), b = fixed_b + (on & 2 ? moving_b : 0);
        double plf = fabs(a * from_a - b * from_b);
        if (plf > worst.plf + 1e-9)
            worst = (struct joint_crossing){.plf = plf, .on = on};
    }
    return worst;
}

double joint_hung_share(int plies, int joint)
{
    return fmax(plies - joint, joint) / (double)plies;
}

struct joint_distances joint_distances(double d, bool staggered)
{
    if (d < 0.25 - 1e-9) /* end and spacing as for the worst direction of load */
        return (struct joint_distances){.edge = 2.5 * d,
                                        .end = 15 * d,
                                        .along = 15 * d,
                                        .between = (staggered ? 2.5 : 5) * d,
                                        .full_end = 15 * d,
                                        .full_between = 0};
    /* Tables 12.5.1A to D, load across the grain: the loaded edge 4 D, the end 2 D (4 D for all), in a row along the
     * load 3 D (4 D for all), between such rows 5 D at most (from memory) */
    return (struct joint_distances){
        .edge = 4 * d, .end = 2 * d, .along = 5 * d, .between = 3 * d, .full_end = 4 * d, .full_between = 4 * d};
}
