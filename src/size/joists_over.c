/* Joists that run on over a dropped beam: two spans, live load on either of them or both. */
#include "size.h"

#include <math.h>

#include "sawbill/text.h"

/* A strip of floor a foot wide, from the far bearing of side A to that of side B. */
struct over {
    struct beam_support support[3];
    struct beam_load load[2];
    double run_in[2];
    struct loads present;
};

static bool runs_on(const struct joist_design *jd)
{
    return jd->joists->over_the_wall.choice == OVER_CONTINUOUS;
}

static bool over_beam(const struct sizing *s, size_t beam, struct over *out)
{
    const struct joist_design *const *side = s->design->beams[beam].side;
    *out = (struct over){0};
    if (!side[0] || !side[1] || needs_hangers(&s->job->beams[beam]) || !(runs_on(side[0]) || runs_on(side[1])))
        return false;
    double from = 0;
    for (int k = 0; k < 2; k++) {
        struct loads psf = area_psf(s, area_of(s->job, &side[k]->joists->area));
        double run = out->run_in[k] = length_inches(side[k]->joists->run.length);
        out->load[k] = (struct beam_load){.from_in = from, .to_in = from + run, .amount = loads_times(psf, 1.0 / 12)};
        out->present = loads_plus(out->present, psf);
        out->support[k + 1].at_in = from += run;
    }
    return true;
}

static struct beam_spans spans_over(struct over *over, const double factor[LOAD_SOURCES])
{
    return (struct beam_spans){.length_in = over->support[2].at_in,
                               .support = over->support,
                               .supports = 3,
                               .load = over->load,
                               .count = 2,
                               .factor = factor};
}

/* More than half of each run comes to the beam.  Load on both spans brings it most: wherever a load stands on two
 * spans, the support between them carries some of it. */
static void share_continuous(struct sizing *s, size_t beam)
{
    struct over over;
    if (!over_beam(s, beam, &over))
        return;
    for (int source = 0; source < LOAD_SOURCES; source++) {
        double factor[LOAD_SOURCES] = {0};
        factor[source] = 1;
        struct beam_spans spans = spans_over(&over, factor);
        if (!spans_solve(&spans))
            return;
        for (int k = 0; k < 2; k++)
            s->share[beam][k].of[source] =
                fabs(over.support[1].shear[k]) - over.load[k].amount.of[source] * over.run_in[k] / 2;
    }
}

void joist_shares(struct sizing *s)
{
    for (size_t i = 0; i < s->job->beam_count; i++)
        share_continuous(s, i);
}

/* Least and greatest at a far bearing, lb per foot of floor, over all combinations. */
struct far_end {
    double least, most;
    const char *combination; /* of the least */
};

static struct far_end far_end_of(struct sizing *s, struct over *over, int side)
{
    static const bool patterned[LOAD_SOURCES] = {
        [LOAD_LIVE] = true, [LOAD_ROOF_LIVE] = true, [LOAD_SNOW] = true, [LOAD_ATTIC] = true};
    size_t end = side ? 2 : 0;
    struct far_end out = {.least = INFINITY, .most = -INFINITY};
    for (size_t i = 0; i < s->combo_count; i++) {
        struct beam_spans spans = spans_over(over, s->combo[i].factor);
        struct beam_envelope envelope;
        if (!combo_applies(&s->combo[i], &over->present) || !spans_envelope(s->arena, &spans, patterned, &envelope))
            continue;
        out.most = fmax(out.most, envelope.reaction[end].most);
        if (envelope.reaction[end].least < out.least) {
            out.least = envelope.reaction[end].least;
            out.combination = s->combo[i].name;
        }
    }
    return out;
}

void joists_over_report(struct sizing *s, const struct joist_design *jd)
{
    struct over over;
    size_t beam = (size_t)(jd->beam - s->job->beams);
    if (!over_beam(s, beam, &over))
        return;
    struct far_end at = far_end_of(s, &over, jd->side);
    if (!at.combination)
        return;
    double spacing_ft = joist_spacing_ft(jd);
    const char *name = head_name(s->arena, KIND_JOISTS, &jd->joists->head);
    const char *least = number_text(s->arena, at.least * spacing_ft, 0);
    basis_add(s,
              arena_printf(s->arena,
                           "%s run on over %s: two spans, live load on either of them or both; more than half of each "
                           "run comes to the beam, and %s to %s lb of one joist to the far bearing",
                           name, head_name(s->arena, KIND_BEAM, &jd->beam->head), least,
                           number_text(s->arena, at.most * spacing_ft, 0)));
    if (at.least * spacing_ft < -0.5) /* less prints as 0 */
        engineer(s, &jd->joists->head.at,
                 arena_printf(s->arena,
                              "%s lift off their far bearing under %s with live load where it lifts most: each needs "
                              "holding down by %s lb",
                              name, at.combination, number_text(s->arena, -at.least * spacing_ft, 0)));
}
