/* Statics of cut joists past a shore and of its top plate. */
#include "sawbill/shoring.h"

#include <math.h>
#include <stddef.h>

#include "sawbill/wood.h"

struct shore_tip shore_tip(double w, double run, double back, double tip)
{
    struct shore_tip out = {.reaction_lb = INFINITY, .shear_lb = INFINITY};
    out.moment_inlb = w * back * back / 2 + tip * back;
    if (back >= run)
        return out;
    double beyond = w * back + tip;
    out.reaction_lb = (w * run / 2 + tip) * run / (run - back);
    out.shear_lb = fmax(beyond, out.reaction_lb - beyond);
    return out;
}

/* n loads on the bay, the middle of the bay halfway between one of them and their resultant: there the moment under
 * that load is greatest.  0 where they do not all stand on the bay so. */
static double moment_of(double load, double apart, double bay, int n)
{
    int under = (n - 1) / 2;
    double past = ((n - 1) / 2.0 - under) * apart; /* from that load to the resultant */
    double x = bay / 2 - past / 2;                 /* of that load */
    if (x - under * apart < 0 || x + (n - 1 - under) * apart > bay)
        return 0;
    double reaction = n * load * (bay - (x + past)) / bay, moment = reaction * x;
    for (int i = 1; i <= under; i++)
        moment -= load * i * apart;
    return moment;
}

double shore_plate_moment(double load, double apart, double bay)
{
    double most = load * bay / 4;
    for (int n = 2; apart > 0 && (n - 1) * apart <= bay; n++)
        most = fmax(most, moment_of(load, apart, bay, n));
    return most;
}

double shore_plate_shear(double load, double apart, double bay, double near)
{
    double shear = fmax(0, load * (bay - near) / bay);
    for (int k = 1; apart > 0 && near + k * apart < bay; k++)
        shear += load * (bay - near - k * apart) / bay;
    return shear;
}

double wood_cfu(double width_in)
{
    static const struct {
        double nominal, cfu;
    } flat[] = {{3, 1.0}, {4, 1.1}, {5, 1.1}, {6, 1.15}, {8, 1.15}};
    double nominal = wood_nominal(width_in);
    for (size_t i = 0; i < sizeof flat / sizeof *flat; i++)
        if (nominal <= flat[i].nominal)
            return flat[i].cfu;
    return 1.2;
}
