/* Conditions of service: wet wood, heat, incised wood.  What they make of reference values, NDS 2018 4.3.3 to 4.3.8.
 *
 * Table 4.3.8 (incising) and the dry-use rule of composite lumber (8.1.4) are from memory. */
#include "sawbill/service.h"

#include <string.h>

/* Supplement Table 4A, 4D and 5A, wet service. */
struct wet {
    double fb, ft, fv, fc_perp, fc, e;
};
static const struct wet wet_dimension = {0.85, 1.0, 0.97, 0.67, 0.8, 0.9};
static const struct wet wet_timber = {1.0, 1.0, 1.0, 0.67, 0.91, 1.0};
static const struct wet wet_glulam = {0.8, 0.8, 0.875, 0.53, 0.73, 0.833};
static const struct wet dry = {1, 1, 1, 1, 1, 1};
enum { FB_SMALL = 1150, FC_SMALL = 750 }; /* psi, with CF: no more than these are not reduced */

/* Table 2.3.3: Ft, E and Emin; all else dry; all else wet. */
static const double heat[][3] = {
    [HEAT_NONE] = {1.0, 1.0, 1.0}, [HEAT_125] = {0.9, 0.8, 0.7}, [HEAT_150] = {0.9, 0.7, 0.5}};

/* Table 4.3.8; bearing across the grain is not reduced. */
static const double incised_e = 0.95, incised_strength = 0.80;

static struct wet wet_of(const struct design_row *row, enum family_of_wood wood, const struct wood_size_factor *cf)
{
    if (wood == WOOD_GLULAM)
        return wet_glulam;
    if (!strcmp(row->table, "4D"))
        return wet_timber;
    struct wet wet = wet_dimension;
    if (row->fb * cf->fb <= FB_SMALL)
        wet.fb = 1;
    if (row->fc * cf->fc <= FC_SMALL)
        wet.fc = 1;
    return wet;
}

bool service_allowed(enum family_of_wood wood, const struct service *service)
{
    bool composite = wood != WOOD_SAWN && wood != WOOD_GLULAM;
    return !(composite && service->wet) && !(wood != WOOD_SAWN && service->incised);
}

bool service_plain(const struct service *service)
{
    return !service->wet && !service->incised && service->heat == HEAT_NONE;
}

struct service_factors service_factors(const struct design_row *row, enum family_of_wood wood, double ply_in,
                                       double depth_in, const struct service *service)
{
    struct wood_size_factor cf = wood_cf(row, ply_in, depth_in);
    struct wet wet = service->wet ? wet_of(row, wood, &cf) : dry;
    double strength = service->incised ? incised_strength : 1, e = service->incised ? incised_e : 1;
    double hot = heat[service->heat][service->wet ? 2 : 1], hot_e = heat[service->heat][0];
    return (struct service_factors){.fb = wet.fb * hot * strength,
                                    .ft = wet.ft * hot_e * strength,
                                    .fv = wet.fv * hot * strength,
                                    .fc_perp = wet.fc_perp * hot,
                                    .fc = wet.fc * hot * strength,
                                    .e = wet.e * hot_e * e};
}

struct design_row service_row(const struct design_row *row, const struct service_factors *f)
{
    struct design_row out = *row;
    out.fb *= f->fb;
    out.fb_neg *= f->fb;
    out.ft *= f->ft;
    out.fv *= f->fv;
    out.fc_perp *= f->fc_perp;
    out.fc *= f->fc;
    out.e *= f->e;
    out.emin *= f->e;
    return out;
}
