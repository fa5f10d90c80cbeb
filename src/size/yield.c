/* Lateral values of dowel-type fasteners by the yield limit equations, NDS 2018 12.3, and withdrawal, 12.2. */
#include "sawbill/joint.h"

#include <math.h>
#include <string.h>

#include "sawbill/text.h"

static bool ends_with(const char *text, const char *end)
{
    size_t length = strlen(text), tail = strlen(end);
    return length >= tail && name_same(text + length - tail, end);
}

enum joint_kind joint_kind_of(const struct fastener *fastener)
{
    static const struct {
        const char *end;
        enum joint_kind kind;
    } kinds[] = {
        {"hardened nail", JOINT_HARDENED_NAIL},
        {"nail", JOINT_NAIL},
        {"spike", JOINT_NAIL},
        {"drywall screw", JOINT_NONE},
        {"lag screw", JOINT_LAG_SCREW},
        {"screw", JOINT_WOOD_SCREW},
        {"bolt", JOINT_BOLT},
    };
    for (size_t i = 0; fastener && fastener->kind && i < sizeof kinds / sizeof *kinds; i++)
        if (ends_with(fastener->kind, kinds[i].end))
            return kinds[i].kind;
    return JOINT_NONE;
}

/* Appendix I, Table I1: from the diameter over the row before to `most`.  IRC 2021 Table R602.3(1), note a, has the
 * steps of nails to 0.192 in; those beyond, hardened nails, lag screws and bolts are from memory (lag screws of 1/4 to
 * 3/8 in reproduce Table 12K). */
static const struct step {
    double most, fyb;
} nail_steps[] = {{0.142, 100000}, {0.177, 90000}, {0.236, 80000}, {0.273, 70000}, {0.344, 60000}, {0.375, 45000}},
  hardened_steps[] = {{0.142, 130000}, {0.192, 115000}, {0.207, 100000}},
  lag_steps[] = {{0.25, 70000}, {0.3125, 60000}, {1.5, 45000}}, bolt_steps[] = {{1.5, 45000}};

static double step_of(const struct step *steps, size_t count, double diameter)
{
    for (size_t i = 0; i < count; i++)
        if (diameter <= steps[i].most + 1e-9)
            return steps[i].fyb;
    return 0;
}

double joint_fyb(enum joint_kind kind, double diameter)
{
    switch (kind) {
    case JOINT_NAIL:
    case JOINT_WOOD_SCREW:
        return step_of(nail_steps, sizeof nail_steps / sizeof *nail_steps, diameter);
    case JOINT_HARDENED_NAIL:
        return step_of(hardened_steps, sizeof hardened_steps / sizeof *hardened_steps, diameter);
    case JOINT_LAG_SCREW:
        return step_of(lag_steps, sizeof lag_steps / sizeof *lag_steps, diameter);
    case JOINT_BOLT:
        return step_of(bolt_steps, sizeof bolt_steps / sizeof *bolt_steps, diameter);
    case JOINT_NONE:
        break;
    }
    return 0;
}

static const double large = 0.25; /* in: from here on the direction of the grain counts */

static bool is_large(double diameter)
{
    return diameter >= large - 1e-9;
}

static double to_50(double psi)
{
    return 50 * floor(psi / 50 + 0.5);
}

static double as_it_is(double psi)
{
    return psi;
}

/* Note 2 of Table 12.3.3; between the directions 12.3.4. */
static double fe_of(double gravity, double diameter, double angle_deg, double made(double psi))
{
    if (!(gravity > 0) || !(diameter > 0))
        return 0;
    if (!is_large(diameter))
        return made(16600 * pow(gravity, 1.84));
    double along = made(11200 * gravity), across = made(6100 * pow(gravity, 1.45) / sqrt(diameter));
    double angle = angle_deg * acos(-1) / 180, s = sin(angle), c = cos(angle);
    return along * across / (along * s * s + across * c * c);
}

double joint_fe_wood(double gravity, double diameter, double angle_deg)
{
    return fe_of(gravity, diameter, angle_deg, to_50);
}

double joint_fe_formula(double gravity, double diameter, double angle_deg)
{
    return fe_of(gravity, diameter, angle_deg, as_it_is);
}

double joint_fe_steel(bool hot_rolled)
{
    return hot_rolled ? 87000 : 61850; /* notes of Table 12K; 87,000 from memory */
}

/* Table 12.3.1B */
double joint_rd_small(double diameter)
{
    return diameter <= 0.17 ? 2.2 : 10 * diameter + 0.5;
}

/* One Rd a mode.  Note 1 of the table: threaded, nominal 1/4 in or more and root less: KD Ktheta. */
static double rd_of(enum joint_mode mode, double diameter, double nominal, double angle_deg)
{
    double by_angle = 1 + 0.25 * angle_deg / 90;
    if (!is_large(diameter))
        return joint_rd_small(diameter) * (is_large(nominal) ? by_angle : 1);
    if (mode == MODE_IM || mode == MODE_IS)
        return 4 * by_angle;
    return (mode == MODE_II ? 3.6 : 3.2) * by_angle;
}

/* Appendix L, Table L2, length of the tapered tip, from memory but for 1/2 in. */
double joint_lag_tip(double nominal)
{
    static const struct {
        double nominal, tip;
    } tips[] = {{0.25, 0.15625}, {0.3125, 0.1875}, {0.375, 0.21875}, {0.4375, 0.28125},
                {0.5, 0.3125},   {0.625, 0.40625}, {0.75, 0.5}};
    for (size_t i = 0; i < sizeof tips / sizeof *tips; i++)
        if (fabs(nominal - tips[i].nominal) < 1e-6)
            return tips[i].tip;
    return 2 * nominal / 3; /* no less than any of the table */
}

double joint_bearing_length(enum joint_kind kind, double nominal, double penetration)
{
    double dust = 1e-9;
    switch (kind) {
    case JOINT_NAIL:
    case JOINT_HARDENED_NAIL:
    case JOINT_WOOD_SCREW: /* 12.1.5.6, 12.1.6.4 */
        if (penetration < 6 * nominal - dust)
            return 0;
        return penetration < 10 * nominal - dust ? penetration - nominal : penetration;
    case JOINT_LAG_SCREW: { /* 12.1.4.6 */
        double without_tip = penetration - joint_lag_tip(nominal);
        return without_tip < 4 * nominal - dust ? 0 : without_tip;
    }
    case JOINT_BOLT:
        return fmax(penetration, 0);
    case JOINT_NONE:
        break;
    }
    return 0;
}

/* 12.3-1 to 12.3-6 with Rd = 1, by mode. */
static void yield_modes(const struct joint_plane *p, double d, double z[JOINT_MODES])
{
    double re = p->fe_main / p->fe_side, rt = p->main_in / p->side_in, fem = p->fe_main, fes = p->fe_side;
    double lm = p->main_in, ls = p->side_in, fyb = p->fyb_psi;
    double k1 = (sqrt(re + 2 * re * re * (1 + rt + rt * rt) + rt * rt * re * re * re) - re * (1 + rt)) / (1 + re);
    double k2 = -1 + sqrt(2 * (1 + re) + 2 * fyb * (1 + 2 * re) * d * d / (3 * fem * lm * lm));
    double k3 = -1 + sqrt(2 * (1 + re) / re + 2 * fyb * (2 + re) * d * d / (3 * fem * ls * ls));
    z[MODE_IM] = d * lm * fem;
    z[MODE_IS] = d * ls * fes;
    z[MODE_II] = k1 * d * ls * fes;
    z[MODE_IIIM] = k2 * d * lm * fem / (1 + 2 * re);
    z[MODE_IIIS] = k3 * d * ls * fem / (2 + re);
    z[MODE_IV] = d * d * sqrt(2 * fem * fyb / (3 * (1 + re)));
    if (!p->double_shear)
        return;
    /* 12.3-7 to 12.3-10: the main member yields once, the sides twice */
    z[MODE_II] = z[MODE_IIIM] = INFINITY;
    z[MODE_IS] *= 2;
    z[MODE_IIIS] *= 2;
    z[MODE_IV] *= 2;
}

struct joint_lateral joint_lateral(const struct joint_plane *plane)
{
    struct joint_lateral out = {0};
    double d = plane->root_in > 0 ? plane->root_in : plane->nominal_in;
    if (!(d > 0) || !(plane->fyb_psi > 0) || !(plane->side_in > 0) || !(plane->main_in > 0) || !(plane->fe_side > 0) ||
        !(plane->fe_main > 0))
        return out;
    yield_modes(plane, d, out.of);
    for (int mode = 0; mode < JOINT_MODES; mode++) {
        out.of[mode] /= rd_of((enum joint_mode)mode, d, plane->nominal_in, plane->angle_deg);
        if (mode == 0 || out.of[mode] < out.lb) {
            out.lb = out.of[mode];
            out.mode = (enum joint_mode)mode;
        }
    }
    return out;
}

const char *joint_mode_name(enum joint_mode mode)
{
    static const char *const names[] = {"Im", "Is", "II", "IIIm", "IIIs", "IV"};
    return mode < JOINT_MODES ? names[mode] : "";
}

double joint_withdrawal(enum joint_kind kind, double gravity, double diameter)
{
    switch (kind) {
    case JOINT_NAIL:
    case JOINT_HARDENED_NAIL: /* 12.2-3 */
        return 1380 * pow(gravity, 2.5) * diameter;
    case JOINT_WOOD_SCREW: /* 12.2-2 */
        return 2850 * gravity * gravity * diameter;
    case JOINT_LAG_SCREW: /* 12.2-1 */
        return 1800 * pow(gravity, 1.5) * pow(diameter, 0.75);
    case JOINT_BOLT:
    case JOINT_NONE:
        break;
    }
    return 0;
}

double joint_cm(bool wet)
{
    return wet ? 0.7 : 1.0;
}

double joint_ct(int heat, bool wet)
{
    static const double ct[][2] = {{1.0, 1.0}, {0.8, 0.7}, {0.7, 0.5}};
    return heat < 0 || heat > 2 ? 1.0 : ct[heat][wet];
}

struct joint_factors joint_factors_plain(double cd)
{
    return (struct joint_factors){.cd = cd, .cm = 1, .ct = 1, .cg = 1, .cdelta = 1, .ceg = 1, .cdi = 1, .ctn = 1};
}

double joint_adjust(double z_lb, const struct joint_factors *f)
{
    return z_lb * fmin(f->cd, 1.6) * f->cm * f->ct * f->cg * f->cdelta * f->ceg * f->cdi * f->ctn;
}

/* 12.5.2.2; the others of 12.5.4 from memory. */
double joint_ceg_lateral(void)
{
    return 0.67;
}

double joint_ctn_lateral(void)
{
    return 0.83;
}

double joint_ctn_withdrawal(void)
{
    return 0.67;
}

/* 11.3-1, with the load/slip modulus of dowels in wood to wood and wood to metal. */
double joint_cg(int count, double spacing, double diameter, bool metal_side, double ea_main, double ea_side)
{
    if (count < 2 || !is_large(diameter) || !(ea_main > 0) || !(ea_side > 0))
        return 1;
    double slip = (metal_side ? 270000 : 180000) * pow(diameter, 1.5), n = count;
    double u = 1 + slip * spacing / 2 * (1 / ea_main + 1 / ea_side), m = u - sqrt(u * u - 1);
    double r = fmin(ea_main / ea_side, ea_side / ea_main), mn = pow(m, n);
    return m * (1 - mn * mn) / (n * ((1 + r * mn) * (1 + m) - 1 + mn * mn)) * (1 + r) / (1 - m);
}

/* n = max(3, T / (Z CD) rounded up) makes all 288 cells of the table with Z of one 16d common nail in wood of G 0.42.
 */
int heel_joint_nails(double thrust_lb, double z_lb, double cd)
{
    double one = z_lb * cd;
    if (!(one > 0) || !(thrust_lb / one < 1e6))
        return 0;
    int nails = (int)ceil(thrust_lb / one - 1e-9);
    return nails < 3 ? 3 : nails;
}
