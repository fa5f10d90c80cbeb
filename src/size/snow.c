/* Snow: from the figure of the map to what the combinations take, each factor printed. */
#include "size.h"

#include <math.h>

#include "sawbill/text.h"

/* ASCE 7-16 and 7-22 eq. 7.3-1: a roof keeps 0.7 of the snow on the ground. */
static const double roof_of_ground = 0.7;
/* ASCE 7-22 2.4.1: its snow is at strength level, and allowable stress design takes 0.7 of it. */
static const double asd_of_strength = 0.7;
/* 7.3.4: roofs under 15 degrees.  Upper limit of the least load, psf: 7-16; 7-22 for risk category II, that of houses,
 * from memory (it prints 'unverified'). */
static const double low_slope = 0.26794919243112270; /* tan 15 degrees */
static const double least_most_7_16 = 20, least_most_7_22 = 30;

static double or_one(const struct decimal_value *factor)
{
    return factor->decimal > 0 ? decimal_value(factor->decimal) : 1;
}

/* Rise over run of the flatter side; NAN: the job does not say.  Eaves are level: both sides are as high. */
static double flattest_slope(const struct job *job, const struct area *area)
{
    const struct roof *roof = &job->roof;
    if (!job->has_roof || !roof->pitch.at || !(roof->pitch.run > 0) ||
        (roof->area.at && area_of(job, &roof->area) != area))
        return NAN;
    double slope = roof->pitch.rise / roof->pitch.run, span = length_inches(roof->span.length);
    double ridge = length_inches(roof->ridge_at.length);
    if (roof->ridge_at.at && roof->span.at && ridge > 0 && ridge < span)
        slope *= fmin(1, ridge / (span - ridge));
    return slope;
}

static void from_ground(const struct job *job, struct snow_design *snow)
{
    bool strength = snow->area->snow_level.choice == LEVEL_STRENGTH;
    snow->ce = or_one(&job->roof.exposure);
    snow->ct = or_one(&job->roof.thermal);
    snow->is = strength ? 1 : or_one(&job->roof.importance);
    snow->flat_psf = snow->roof_psf = roof_of_ground * snow->ce * snow->ct * snow->is * snow->given_psf;
    double slope = flattest_slope(job, snow->area);
    snow->slope_known = !isnan(slope);
    if (snow->slope_known && slope >= low_slope - 1e-12)
        return;
    snow->least_psf = snow->is * fmin(snow->given_psf, strength ? least_most_7_22 : least_most_7_16);
    snow->roof_psf = fmax(snow->flat_psf, snow->least_psf);
}

/* Unanswered questions are read the heavier way: on the roof (not lessened to it) and allowable (not lessened by 0.7);
 * the job has asked. */
struct snow_design snow_of(const struct job *job, const struct area *area)
{
    struct snow_design snow = {.area = area, .given_psf = quantity_value(area->snow.quantity), .ce = 1, .ct = 1};
    snow.is = snow.asd_factor = 1;
    snow.flat_psf = snow.roof_psf = snow.given_psf;
    snow.on_ground = area->snow_is.choice == SNOW_ON_GROUND;
    if (snow.on_ground)
        from_ground(job, &snow);
    if (area->snow_level.choice == LEVEL_STRENGTH)
        snow.asd_factor = asd_of_strength;
    snow.asd_psf = snow.roof_psf * snow.asd_factor;
    return snow;
}

/* The combinations multiply by 0.7 where any area is at strength level: one that is not then counts for more. */
double snow_psf(const struct sizing *s, const struct area *area)
{
    struct snow_design snow = snow_of(s->job, area);
    return s->strength ? snow.asd_psf / asd_of_strength : snow.roof_psf;
}

/* Unanswered as allowable: the heavier reading. */
double own_snow_factor(const struct sizing *s, const struct choice_value *level)
{
    return s->strength && level->choice != LEVEL_STRENGTH ? 1 / asd_of_strength : 1;
}

static const char *two(struct sizing *s, double value)
{
    return number_text(s->arena, value, 2);
}

static void say_flat(struct sizing *s, struct buffer *text, const struct snow_design *snow)
{
    bool strength = snow->area->snow_level.choice == LEVEL_STRENGTH;
    buffer_printf(text, "pg %s psf x 0.7 x Ce %s x Ct %s", two(s, snow->given_psf), number_text(s->arena, snow->ce, 4),
                  number_text(s->arena, snow->ct, 4));
    if (!strength)
        buffer_printf(text, " x Is %s", number_text(s->arena, snow->is, 4));
    buffer_printf(text, " = %s psf on a flat roof (ASCE %s eq. 7.3-1%s); ", two(s, snow->flat_psf),
                  strength ? "7-22" : "7-16", strength ? ", no Is: its map holds the risk" : "");
    if (snow->least_psf > 0)
        buffer_printf(text, "%s: not less than %s%s psf (7.3.4%s); ",
                      snow->slope_known ? "under 15 degrees" : "its slope is not said, taken as under 15 degrees",
                      strength ? "" : "Is x ", strength ? two(s, snow->least_psf) : two(s, snow->least_psf / snow->is),
                      strength ? ", risk category II, from memory: unverified" : "");
    buffer_printf(text, "x Cs 1, no slope reduction taken, = %s psf on the roof", two(s, snow->roof_psf));
}

/* value: what the combinations take of it. */
static void say_level(struct sizing *s, struct buffer *text, const struct choice_value *level, const char *value)
{
    switch ((enum snow_level)level->choice) {
    case LEVEL_STRENGTH:
        buffer_printf(text, "; strength level: x 0.7 in the combinations (ASCE 7-22 2.4.1) = %s", value);
        break;
    case LEVEL_UNANSWERED:
        buffer_printf(text, "; its level is not answered: x 1, the heavier reading, = %s", value);
        break;
    default:
        buffer_printf(text, "; allowable level: x 1 in the combinations%s = %s",
                      s->strength ? ", set against their 0.7," : "", value);
    }
}

static void say_area(struct sizing *s, const struct snow_design *snow)
{
    struct buffer text = {.arena = s->arena};
    buffer_printf(&text, "snow of %s: ", head_name(s->arena, KIND_AREA, &snow->area->head));
    if (snow->on_ground)
        say_flat(s, &text, snow);
    else
        buffer_printf(&text, "%s psf %s", two(s, snow->given_psf),
                      snow->area->snow_is.choice == SNOW_ON_ROOF
                          ? "on the roof, taken as it is"
                          : "on the roof: where it is meant is not answered, the heavier reading");
    say_level(s, &text, &snow->area->snow_level, arena_printf(s->arena, "%s psf", two(s, snow->asd_psf)));
    basis_add(s, buffer_text(&text));
}

static void say_drifts(struct sizing *s)
{
    const struct roof *roof = &s->job->roof;
    if (roof->snow_engineer.text && *roof->snow_engineer.text)
        basis_add(s, arena_printf(s->arena,
                                  "snow that drifts or slides onto the roof: by the engineer (%s); what he says is to "
                                  "be in the snow of the job",
                                  roof->snow_engineer.text));
    else if (roof->snow_drifts.choice == NO)
        basis_add(s, "snow that drifts or slides onto the roof: none, by the job: no valley, no higher roof beside it");
    else
        unchecked_add(s, "not checked: snow that drifts or slides onto the roof: not answered");
    unchecked_add(s, "not checked: unbalanced snow (ASCE 7 7.6) and rain on snow: every figure is for snow lying even");
}

/* "900 lb", or "60 to 0 plf"; `to` NULL: it is the same along the beam. */
static const char *amounts(struct sizing *s, const struct quantity_value *snow, const struct quantity_value *to,
                           double factor)
{
    const char *unit = unit_dimension(snow->quantity.unit) == DIM_LINE ? "plf" : "lb";
    const char *first = two(s, quantity_value(snow->quantity) * factor);
    return to && to->at
               ? arena_printf(s->arena, "%s to %s %s", first, two(s, quantity_value(to->quantity) * factor), unit)
               : arena_printf(s->arena, "%s %s", first, unit);
}

static bool say_own(struct sizing *s, const char *name, const struct quantity_value *snow,
                    const struct quantity_value *to, const struct choice_value *level)
{
    if (!(quantity_value(snow->quantity) > 0) && !(to && quantity_value(to->quantity) > 0))
        return false;
    struct buffer text = {.arena = s->arena};
    buffer_printf(&text, "snow of %s: %s, given by itself: on the roof, taken as it is", name, amounts(s, snow, to, 1));
    say_level(s, &text, level, amounts(s, snow, to, level->choice == LEVEL_STRENGTH ? asd_of_strength : 1));
    basis_add(s, buffer_text(&text));
    return true;
}

static bool say_all_own(struct sizing *s)
{
    bool any = false;
    for (size_t i = 0; i < s->job->load_count; i++) {
        const struct load *load = &s->job->loads[i];
        any |= say_own(s, head_name(s->arena, KIND_LOAD, &load->head), &load->snow, &load->snow_to, &load->snow_level);
    }
    for (size_t i = 0; i < s->job->obstruction_count; i++) {
        const struct obstruction *it = &s->job->obstructions[i];
        any |= say_own(s, head_name(s->arena, KIND_OBSTRUCTION, &it->head), &it->snow, NULL, &it->snow_level);
    }
    return any;
}

void snow_write(struct sizing *s)
{
    bool any = false;
    for (size_t i = 0; i < s->design->snow_count; i++) {
        any |= s->design->snow[i].given_psf > 0;
        if (s->design->snow[i].given_psf > 0)
            say_area(s, &s->design->snow[i]);
    }
    any |= say_all_own(s);
    if (any)
        say_drifts(s);
}

void snow_resolve(struct sizing *s)
{
    const struct job *job = s->job;
    s->design->snow = arena_array(s->arena, job->area_count, sizeof *s->design->snow);
    for (size_t i = 0; i < job->area_count; i++)
        if (job->areas[i].snow.at)
            s->design->snow[s->design->snow_count++] = snow_of(job, &job->areas[i]);
}
