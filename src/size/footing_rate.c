/* The least square footing under a post, and the pressure under one that is given. */
#include "sawbill/footing.h"

#include <math.h>

/* IRC 2021 R403.1.1 */
static const double least_side_in = 12, least_thickness_in = 6, least_projection_in = 2;
/* steps of the form, common practice */
static const double side_step_in = 2, thickness_step_in = 1;

double footing_concrete_pcf(void)
{
    return 150;
}

double footing_least_thickness_in(void)
{
    return least_thickness_in;
}

double footing_least_projection_in(void)
{
    return least_projection_in;
}

static double square_feet(double side_in)
{
    return side_in * side_in / 144;
}

double footing_pressure_psf(double load_lb, const struct footing_pad *pad, double concrete_pcf)
{
    double area = square_feet(pad->side_in);
    return area > 0 ? load_lb / area + concrete_pcf * pad->thickness_in / 12 : INFINITY;
}

double footing_projection_in(const struct footing_pad *pad, double post_in)
{
    return (pad->side_in - post_in) / 2;
}

double footing_side_in(const struct footing_case *at, double thickness_in)
{
    double left_psf = at->soil_psf - at->concrete_pcf * thickness_in / 12;
    return left_psf > 0 ? 12 * sqrt(fmax(at->load_lb, 0) / left_psf) : INFINITY;
}

/* The dust of floating point does not make the next step. */
static double up_to(double value, double step)
{
    return ceil(value / step - 1e-9) * step;
}

bool footing_least(const struct footing_case *at, struct footing_pad *out)
{
    out->thickness_in = least_thickness_in;
    for (;;) {
        double side = fmax(footing_side_in(at, out->thickness_in), least_side_in);
        side = fmax(side, at->post_long_in + 2 * least_projection_in);
        if (!isfinite(side))
            return false;
        out->side_in = up_to(side, side_step_in);
        double thick = up_to(footing_projection_in(out, at->post_short_in), thickness_step_in);
        if (thick <= out->thickness_in)
            return true;
        out->thickness_in = thick; /* thicker is heavier: the side is looked at again */
    }
}
