/* Ends of a beam that are cut: a slope under the roof, a notch in its bottom or top. */
#include "size.h"

#include <math.h>

#include "sawbill/notch.h"
#include "sawbill/text.h"

struct end_cut {
    enum notch_shape shape;
    int end;
    double depth, tip, left; /* whole; what stands at the end of the wood, and at the inner edge of the support */
    double slope, reach;     /* rise over run, 0 of a notch; from the end of the wood to the full depth */
    double past, half;       /* of that, beyond the inner edge; half of the bearing */
};

static bool has_slope(const struct beam *beam, int end)
{
    return beam->roof_cut_pitch.at && beam->roof_cut_at.choice != (end ? END_ONE : END_TWO);
}

/* False: the end is whole. */
static bool cut_of(const struct beam_design *bd, int end, struct end_cut *cut)
{
    const struct beam *beam = bd->beam;
    double bearing = length_inches(bd->bearing[end]);
    *cut = (struct end_cut){.end = end, .depth = length_inches(bd->member->depth)};
    if (has_slope(beam, end)) {
        cut->shape = NOTCH_SLOPE;
        cut->tip = length_inches(beam->roof_cut_heel.length);
        cut->slope = beam->roof_cut_pitch.rise / beam->roof_cut_pitch.run;
        cut->reach = (cut->depth - cut->tip) / cut->slope;
        cut->left = fmin(cut->depth, cut->tip + cut->slope * bearing);
    } else {
        cut->shape = beam->notch_face.choice == FACE_TOP ? NOTCH_ABOVE : NOTCH_BELOW;
        cut->tip = cut->left = cut->depth - length_inches(beam->notch[end].length);
        cut->reach = beam->notch_length[end].at ? length_inches(beam->notch_length[end].length) : bearing;
    }
    cut->past = fmax(cut->reach - bearing, 0);
    cut->half = bearing / 2;
    return cut->tip < cut->depth - 1e-9;
}

/* Depth of the wood so far from that end. */
static double depth_at(const struct end_cut *cut, double from_end)
{
    if (from_end >= cut->reach)
        return cut->depth;
    return cut->shape == NOTCH_SLOPE ? cut->tip + cut->slope * from_end : cut->tip;
}

static double shear_of(const struct end_cut *cut, double fv, double width)
{
    if (cut->shape == NOTCH_BELOW)
        return notch_shear_below(fv, width, cut->depth, cut->left);
    return notch_shear_above(fv, width, cut->depth, cut->left, cut->past);
}

static const char *shear_note(struct sizing *s, const struct end_cut *cut)
{
    const char *left = length_tape(s->arena, length_from_inches(cut->left));
    if (cut->shape == NOTCH_BELOW)
        return arena_printf(s->arena, "square notch in the bottom, dn %s: (2/3 Fv' b dn) (dn/d)^2; V reduction: none",
                            left);
    return arena_printf(s->arena, "dn %s at the inner edge of the support, e %s%s; V reduction: none", left,
                        length_tape(s->arena, length_from_inches(cut->past)),
                        cut->past > cut->left ? ", beyond dn: dn alone is the depth" : "");
}

/* Greatest moment and shear at some places of the design span. */
static void along(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                  const struct combination *combo, const double *x, size_t count, struct beam_at *out)
{
    if (beam_runs_on(bd)) {
        inner_at(s, bd, at, combo->factor, x, count, out);
        return;
    }
    for (size_t i = 0; i < count; i++)
        out[i] = beam_at(at->span_in, at->load, at->count, combo->factor, x[i]);
}

/* The next support's place from that end. */
static double end_span(const struct beam_design *bd, int end)
{
    return bd->inner_count > 0 ? inner_span_in(bd, end ? bd->inner_count : 0) : bd->design_span_in;
}

static double stress_at(const struct end_cut *cut, double moment, double width, double from_end)
{
    double depth = depth_at(cut, from_end * (1 - 1e-9)); /* just outside the corner of a notch */
    return depth > 0 ? fabs(moment) / (width * depth * depth / 6) : INFINITY;
}

enum { SECTIONS = 100 };

/* Distances from that end of the wood at which the bending of the cut is looked at: a hundred even steps, within
 * 1/1,000 of the worst, for the stress is flat there, and every point load, where it is not. */
static size_t sections_of(const struct end_cut *cut, const struct beam_case *at, double *from_end)
{
    size_t count = 0;
    for (size_t i = 1; cut->reach > cut->half && i <= SECTIONS + at->count; i++) {
        double here = cut->half + (cut->reach - cut->half) * (double)i / SECTIONS;
        if (i > SECTIONS) {
            double x = at->load[i - SECTIONS - 1].from_in;
            here = cut->half + (cut->end ? at->span_in - x : x);
        }
        if (here > cut->half && here <= cut->reach && here < cut->half + at->span_in)
            from_end[count++] = here;
    }
    return count;
}

/* The worst section of the cut between the middle of the bearing and the full depth. */
static double worst_bending(struct sizing *s, const struct beam_design *bd, const struct end_cut *cut,
                            const struct beam_case *at, const struct combination *combo, double *place)
{
    double worst = 0, *from_end = arena_array(s->arena, SECTIONS + at->count, sizeof *from_end);
    size_t count = sections_of(cut, at, from_end);
    double *x = arena_array(s->arena, count, sizeof *x);
    struct beam_at *here = arena_array(s->arena, count, sizeof *here);
    for (size_t i = 0; i < count; i++)
        x[i] = cut->end ? at->span_in + cut->half - from_end[i] : from_end[i] - cut->half;
    along(s, bd, at, combo, x, count, here);
    for (size_t i = 0; i < count; i++) {
        double stress = stress_at(cut, here[i].moment, length_inches(bd->width), from_end[i]);
        if (stress > worst) {
            worst = stress;
            *place = at->offset_in + x[i];
        }
    }
    return worst;
}

static const char *check_name(struct sizing *s, const struct end_cut *cut, const char *what)
{
    return arena_printf(s->arena, "end %d cut, %s", cut->end + 1, what);
}

/* In the design span, just beside the middle of the bearing. */
static double shear_at_end(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                           const struct combination *combo, int end)
{
    double x = end ? at->span_in * (1 - 1e-12) : 0;
    struct beam_at here;
    along(s, bd, at, combo, &x, 1, &here);
    return fabs(here.shear);
}

static void strength_checks(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                            const struct end_cut *cut, struct member_checks *checks)
{
    double width = length_inches(bd->width), place = NAN;
    struct check shear = {0}, bending = {0};
    for (size_t i = 0; i < s->combo_count; i++) {
        const struct combination *combo = &s->combo[i];
        if (!combo_applies(combo, &at->present))
            continue;
        const char *clause = cut->shape == NOTCH_BELOW ? "NDS 2018 3.4.3.2(a)" : "NDS 2018 3.4.3.2(e), from memory";
        struct check check = check_of(check_name(s, cut, "shear"), clause, shear_at_end(s, bd, at, combo, cut->end),
                                      shear_of(cut, bd->values->fv * combo->cd, width), "lb");
        check.combination = combo->name;
        check.note = shear_note(s, cut);
        check_worse(&shear, check);
        double stress = worst_bending(s, bd, cut, at, combo, &place);
        check = check_of(check_name(s, cut, "bending"), "NDS 2018 3.3.1, 3.2.3", stress, beam_fb(bd, at, combo), "psi");
        check.combination = combo->name;
        check.at_in = place;
        check.note = "at the worst section of the cut, Fb' of the whole beam";
        check_worse(&bending, check);
    }
    checks_add(s, checks, shear);
    if (bending.demand > 0)
        checks_add(s, checks, bending);
}

static void limit_checks(struct sizing *s, const struct beam_design *bd, const struct end_cut *cut,
                         struct member_checks *checks)
{
    struct notch_limit limit = notch_limit(bd->member->wood, cut->shape);
    if (!limit.clause)
        return;
    double most = limit.part * cut->depth, off = cut->depth - (limit.of_whole ? cut->tip : cut->left);
    if (limit.most_in > 0)
        most = fmin(most, limit.most_in);
    struct check check = check_of(check_name(s, cut, "depth"), limit.clause, off, most, "in");
    check.note = arena_printf(s->arena, "cut off, of %s", length_tape(s->arena, bd->member->depth));
    checks_add(s, checks, check);
    if (limit.length_depths > 0)
        checks_add(
            s, checks,
            check_of(check_name(s, cut, "length"), limit.clause, cut->reach, limit.length_depths * cut->depth, "in"));
}

/* What the program leaves to an engineer (common practice, no source): less than half the depth at the inner edge of
 * the support, or a cut that runs into the middle third. */
static void ask_engineer(struct sizing *s, const struct beam_design *bd, const struct end_cut *cut,
                         struct member_checks *checks)
{
    double third = cut->half + end_span(bd, cut->end) / 3;
    const char *why = NULL;
    if (cut->left < cut->depth / 2 - 1e-9)
        why = arena_printf(s->arena, "leaves %s of %s at the inner edge of the support, less than half",
                           length_tape(s->arena, length_from_inches(fmax(cut->left, 0))),
                           length_tape(s->arena, bd->member->depth));
    else if (cut->reach > third + 1e-9)
        why = arena_printf(s->arena, "runs %s from the end, into the middle third of the span",
                           length_tape(s->arena, length_from_inches(cut->reach)));
    struct check left = check_of(check_name(s, cut, "half left"), "common practice, no source", cut->depth / 2,
                                 fmax(cut->left, 0), "in");
    left.note = "half the depth at the inner edge of the support";
    checks_add(s, checks, left);
    if (!why || bd->beam->specified_by.at)
        return;
    const struct beam *beam = bd->beam;
    const struct entry *entry = cut->shape == NOTCH_SLOPE ? beam->roof_cut_pitch.at : beam->notch[cut->end].at;
    diag_add(s->diags, DIAG_S005, place_of(entry, &beam->head),
             "the cut at end %d of %s %s: an engineer must size it; write 'specified by', or cut less", cut->end + 1,
             checks->id, why);
}

/* 3.2.3: a cut up to d/6 deep and d/3 long leaves the stiffness as it is. */
static void say_rest(struct sizing *s, const struct end_cut *cut, const char *id)
{
    bool small = cut->depth - cut->tip <= cut->depth / 6 + 1e-9 && cut->reach <= cut->depth / 3 + 1e-9;
    if (!small)
        unchecked_add(s, arena_printf(s->arena,
                                      "not checked: what the cut at end %d takes from the stiffness of %s: its "
                                      "deflection is that of the whole beam",
                                      cut->end + 1, id));
    if (cut->shape == NOTCH_SLOPE)
        unchecked_add(s, arena_printf(s->arena, "not checked: stress across the grain along the slope at end %d of %s",
                                      cut->end + 1, id));
}

void cut_ends_check(struct sizing *s, size_t index, const struct beam_case *at, struct member_checks *checks)
{
    const struct beam_design *bd = &s->design->beams[index];
    for (int end = 0; end < 2; end++) {
        struct end_cut cut;
        if (!cut_of(bd, end, &cut))
            continue;
        strength_checks(s, bd, at, &cut, checks);
        limit_checks(s, bd, &cut, checks);
        ask_engineer(s, bd, &cut, checks);
        say_rest(s, &cut, checks->id);
    }
}
