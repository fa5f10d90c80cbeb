/* Heel joints of rafters and the tables of single fasteners. */
#include "published.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "sawbill/joint.h"
#include "sawbill/joist.h"

/* One nail, side and main member of one wood, 10 D in the main member. */
static double nail_lb(double diameter_in, double side_in, double gravity)
{
    double fe = joint_fe_wood(gravity, diameter_in, 0);
    struct joint_plane plane = {.nominal_in = diameter_in,
                                .fyb_psi = joint_fyb(JOINT_NAIL, diameter_in),
                                .side_in = side_in,
                                .main_in = 10 * diameter_in,
                                .fe_side = fe,
                                .fe_main = fe};
    return joint_lateral(&plane).lb;
}

/* NDS Appendix L, Table L2: root diameters of 1/4, 5/16 and 3/8 in lag screws. */
static double lag_root(double nominal_in)
{
    return nominal_in < 0.3 ? 0.173 : nominal_in < 0.35 ? 0.227 : 0.265;
}

/* Table 12K: side plates of ASTM A653 grade 33 steel, 8 D in the wood, printed to 10 lb. */
static double lag_lb(double nominal_in, double plate_in, double gravity, double angle_deg)
{
    struct joint_plane plane = {.nominal_in = nominal_in,
                                .root_in = lag_root(nominal_in),
                                .fyb_psi = joint_fyb(JOINT_LAG_SCREW, nominal_in),
                                .side_in = plate_in,
                                .main_in = 8 * nominal_in,
                                .fe_side = joint_fe_steel(false),
                                .fe_main = joint_fe_wood(gravity, nominal_in, angle_deg),
                                .angle_deg = angle_deg};
    return 10 * floor(joint_lateral(&plane).lb / 10 + 0.5);
}

/* Bearing strength at a diameter of the group that the row names; NAN: across the grain, where the row names none. */
static double bearing_psi(const char *group, double diameter_in, double gravity)
{
    if (!strncmp(group, "D under", 7))
        return joint_fe_wood(gravity, 0.162, 0);
    if (strstr(group, "parallel"))
        return joint_fe_wood(gravity, 0.5, 0);
    return isnan(diameter_in) ? NAN : joint_fe_wood(gravity, diameter_in, 90);
}

/* "16d common to 16d box" in one wood: box nails for one common nail, by their lateral values in whole pounds, as the
 * tables print them (120/88 = 1.364). */
static double box_for_common(const char *exchange, double gravity)
{
    static const struct {
        int penny;
        double common, box;
    } nails[] = {{8, 0.131, 0.113}, {10, 0.148, 0.128}, {12, 0.148, 0.128}, {16, 0.162, 0.135}, {20, 0.192, 0.148}};
    int penny = (int)strtol(exchange, NULL, 10);
    for (size_t i = 0; i < sizeof nails / sizeof *nails; i++)
        if (nails[i].penny == penny)
            return floor(100 * round(nail_lb(nails[i].common, 1.5, gravity)) /
                             round(nail_lb(nails[i].box, 1.5, gravity)) +
                         0.5) /
                   100;
    return NAN;
}

/* "nail diameter over 0.142 to 0.177 in", "to 0.142 in", "0.192 (over 0.177) in": a diameter of the step; ksi. */
static double nail_yield(const char *fastener)
{
    const char *to = strstr(fastener, "to 0.");
    double diameter = strtod(to ? to + 3 : fastener + strcspn(fastener, "0123456789"), NULL);
    return joint_fyb(JOINT_NAIL, diameter) / 1000;
}

/* Multiples of D, "4D", of a fastener of 1/2 in; placement of nails, of one of 0.162 in. */
static double distance_in_d(const char *topic, const char *load)
{
    bool large = !strcmp(topic, "spacing, D 1/4 in and over");
    double d = large ? 0.5 : 0.162;
    struct joint_distances in_line = joint_distances(d, false), staggered = joint_distances(d, true);
    static const struct {
        const char *load;
        int which;
    } of[] = {{"end distance, perpendicular load", 0},
              {"edge distance, perpendicular, loaded edge", 1},
              {"edge distance", 1},
              {"end distance, tension", 2},
              {"spacing in a row, parallel", 3},
              {"between rows, in line", 4},
              {"between rows, staggered", 5}};
    for (size_t i = 0; i < sizeof of / sizeof *of; i++) {
        bool nails_only = i >= 2;
        if (strcmp(load, of[i].load) != 0 || nails_only == large)
            continue;
        const double inches[] = {in_line.full_end, in_line.edge,    in_line.end,
                                 in_line.along,    in_line.between, staggered.between};
        return inches[of[i].which] / d;
    }
    return NAN;
}

/* NAN: nothing here computes such a row. */
static double cell_value(const struct sheet *sheet, size_t row)
{
    const char *topic = published_cell(sheet, row, "topic"), *load = published_cell(sheet, row, "load");
    double diameter = published_number(sheet, row, "D_in"), side = published_number(sheet, row, "side_in");
    double gravity = published_number(sheet, row, "G");
    if (!strcmp(topic, "lag screw, steel side plate"))
        return lag_lb(diameter, side, gravity, strcmp(load, "parallel") ? 90 : 0);
    if (!strcmp(topic, "nail, wood side member"))
        return floor(nail_lb(diameter, side, gravity) + 0.5);
    if (!strcmp(topic, "withdrawal"))
        return floor(joint_withdrawal(JOINT_NAIL, gravity, diameter) + 0.5);
    if (!strcmp(topic, "dowel bearing strength"))
        return bearing_psi(load, diameter, gravity);
    if (!strcmp(topic, "box for common exchange"))
        return box_for_common(published_cell(sheet, row, "fastener"), gravity);
    if (!strcmp(topic, "nail Fyb"))
        return nail_yield(published_cell(sheet, row, "fastener"));
    if (!strcmp(topic, "spacing, D 1/4 in and over") || !strcmp(topic, "nail placement"))
        return distance_in_d(topic, load);
    if (!strcmp(topic, "lag screw data"))
        return isnan(diameter) ? joint_fe_steel(false)
                               : joint_fyb(JOINT_LAG_SCREW, diameter < 0.2    ? 0.25
                                                            : diameter < 0.24 ? 0.3125
                                                                              : 0.375) /
                                     1000;
    if (strstr(published_cell(sheet, row, "value"), "6900 G^2.5 D"))
        return 5 * joint_withdrawal(JOINT_NAIL, 1, 1);
    return NAN;
}

static void run_connections(struct published *p)
{
    const struct sheet *sheet = published_sheet(p, "code", "nds_connections.csv");
    if (!sheet)
        return;
    struct tally *tally = published_tally(p, "lag screws, nails, bearing strengths, withdrawal");
    tally->why_left_out = "rules and distances in words, or worked out by formula instead of read";
    for (size_t row = 1; row < sheet->count; row++) {
        const char *value = published_cell(sheet, row, "value");
        double printed = value[0] >= '0' && value[0] <= '9' ? strtod(value, NULL) : NAN; /* "7D" is 7 */
        double here = cell_value(sheet, row);
        if (isnan(printed) || isnan(here) || !strcmp(published_cell(sheet, row, "seen"), "computed")) {
            tally->left_out++;
            continue;
        }
        const char *id = arena_printf(p->arena, "%s %s %s in, G %s, side %s, %s", published_cell(sheet, row, "table"),
                                      published_cell(sheet, row, "topic"), published_cell(sheet, row, "D_in"),
                                      published_cell(sheet, row, "G"), published_cell(sheet, row, "side_in"),
                                      *published_cell(sheet, row, "load") ? published_cell(sheet, row, "load")
                                                                          : published_cell(sheet, row, "fastener"));
        published_count(p, tally, published_from_memory(sheet, row), id + strspn(id, " "), fabs(here - printed) < 1e-9,
                        arena_printf(p->arena, "printed %g, %g here", printed, here));
    }
}

/* IRC 2021 Table R802.5.2(1): dead load 10 psf with 20 psf of roof live load (CD 1.25) or 0.77 of the ground snow (CD
 * 1.15); 16d common nails in the lightest wood of the table's note, G 0.42, at the whole pounds of NDS Table 12N. */
static int heel_nails(const struct sheet *sheet, size_t row)
{
    double psf = published_number(sheet, row, "snow_or_live_psf");
    bool live = psf <= 20;
    double rise = strtod(published_cell(sheet, row, "rafter_slope"), NULL);
    double thrust = rafter_thrust_lb(10 + (live ? psf : 0.77 * psf), published_number(sheet, row, "spacing_in") / 12,
                                     published_number(sheet, row, "roof_span_ft"), rise / 12);
    return heel_joint_nails(thrust, floor(nail_lb(0.162, 1.5, 0.42) + 0.5), live ? 1.25 : 1.15);
}

static void run_ties(struct published *p)
{
    const struct sheet *sheet = published_sheet(p, "code", "ties.csv");
    if (!sheet)
        return;
    struct tally *tally = published_tally(p, "heel joints of the 2021 table");
    tally->why_left_out = "the tables of older editions, which no one formula gives, and rules in words";
    for (size_t row = 1; row < sheet->count; row++) {
        double nails = published_number(sheet, row, "nails_16d_common");
        if (strcmp(published_cell(sheet, row, "edition_group"), "2021") != 0 || isnan(nails)) {
            tally->left_out++;
            continue;
        }
        int here = heel_nails(sheet, row);
        const char *id =
            arena_printf(p->arena, "heel joint %s, %s in, %s psf, %s ft", published_cell(sheet, row, "rafter_slope"),
                         published_cell(sheet, row, "spacing_in"), published_cell(sheet, row, "snow_or_live_psf"),
                         published_cell(sheet, row, "roof_span_ft"));
        published_count(p, tally, published_from_memory(sheet, row), id, here == (int)nails,
                        arena_printf(p->arena, "printed %.0f nails, %d here", nails, here));
    }
}

void published_joints(struct published *p)
{
    run_ties(p);
    run_connections(p);
}
