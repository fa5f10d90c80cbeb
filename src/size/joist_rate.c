/* A repetitive joist as a simple span: bending, shear over a planed seat, deflection. */
#include "sawbill/joist.h"

#include <math.h>
#include <string.h>

#include "sawbill/beam.h"
#include "sawbill/wood.h"

/* 4.3.9 */
enum { REPETITIVE_MEMBERS = 3, REPETITIVE_APART_IN = 24 };
static const double repetitive = 1.15;

double joist_cr(int members, double apart_in)
{
    return members >= REPETITIVE_MEMBERS && apart_in <= REPETITIVE_APART_IN + 1e-9 ? repetitive : 1.0;
}

static double sag_of(const struct wood_piece *one, double span_in, const struct beam_load *load,
                     const double factor[LOAD_SOURCES])
{
    return beam_solve(span_in, load, 1, factor).sag.value / (one->row->e * wood_inertia(one));
}

/* 3.4.3.2(a): V' = (2/3 Fv' b dn) (dn/d)^2, as a stress on b dn. */
static void rate_shear(const struct joist_section *joist, double shear_lb, double cd, struct joist_rating *out)
{
    double left = joist->depth_in - joist->seat_in;
    if (left <= 0) {
        out->shear_psi = fabs(shear_lb);
        out->fv_psi = 0;
        return;
    }
    out->shear_psi = 1.5 * fabs(shear_lb) / (joist->width_in * left);
    out->fv_psi = joist->row->fv * cd * pow(left / joist->depth_in, 2);
}

struct joist_rating joist_rate(const struct joist_section *joist, double span_in, const struct loads *per_inch,
                               const struct combination *combo)
{
    struct wood_piece one = {
        .row = joist->row, .wood = WOOD_SAWN, .ply_in = joist->width_in, .depth_in = joist->depth_in, .plies = 1};
    struct beam_load load = {.from_in = 0, .to_in = span_in, .amount = *per_inch};
    struct beam_result result = beam_solve(span_in, &load, 1, combo->factor);
    struct wood_bending bending = wood_bending(&one, combo->cd, 1, 0, LE_SPAN_UNIFORM, span_in);
    struct joist_rating out = {.cf = bending.cf, .cr = joist->cr, .creep = wood_kcr(joist->green)};
    out.bending_psi = fabs(result.moment.value) / wood_modulus(&one);
    out.fb_psi = bending.fb * joist->cr; /* Cr by its neighbours, which wood_bending() does not see */
    rate_shear(joist, result.shear.value, combo->cd, &out);
    double factor[LOAD_SOURCES];
    memcpy(factor, combo->factor, sizeof factor);
    factor[LOAD_DEAD] = 0;
    out.live_in = sag_of(&one, span_in, &load, factor);
    factor[LOAD_DEAD] = combo->factor[LOAD_DEAD] * out.creep;
    out.total_in = sag_of(&one, span_in, &load, factor);
    return out;
}

double joist_middle_moment(double a_in, double wa, double b_in, double wb)
{
    return (wa * pow(a_in, 3) + wb * pow(b_in, 3)) / (8 * (a_in + b_in));
}

double rafter_thrust_off_lb(double psf, double apart_ft, double span_ft, double ridge_ft, double rise_over_run)
{
    return rise_over_run > 0 ? psf * apart_ft * (span_ft - ridge_ft) / (2 * rise_over_run) : INFINITY;
}

double rafter_thrust_lb(double psf, double apart_ft, double span_ft, double rise_over_run)
{
    return rafter_thrust_off_lb(psf, apart_ft, span_ft, span_ft / 2, rise_over_run);
}
