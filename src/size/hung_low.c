/* What hangs low on the face of a beam: joists, trimmers and beams whose fasteners do not reach its upper edge (NDS
 * 2018 3.4.3.3, which names bolts and lag screws; held against nails, too, the safe side). */
#include "size.h"

#include <math.h>

#include "sawbill/notch.h"
#include "sawbill/text.h"

/* Something that hangs on the face: de of its fasteners, and the stretch that it takes. */
struct low {
    const char *name;
    double reach, first, last; /* its first and last fasteners, from end 1 of the wood */
    double half_space;         /* a joist brings the load of half a space before it, too */
};

/* The highest nail above the beam's lower edge: said, or at the least depth that the hanger is listed for, which is
 * about its own height.  Its foot is even with the beam's where that is upset; else the upper edges are even. */
static double reach_of(const struct beam_design *bd, const struct hanger *hanger, double depth)
{
    if (bd->beam->top_hanger_nail.at)
        return length_inches(bd->beam->top_hanger_nail.length);
    double whole = length_inches(bd->member->depth), foot = bd->beam->set.choice == SET_UPSET ? 0 : whole - depth;
    return fmax(foot, 0) + (hanger ? fmin(depth, length_inches(hanger->depth_from)) : depth);
}

/* V at x of the wood: the greater of both sides of it.  Over inner supports: the greatest of any span, the safe side.
 */
static double shear_at(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                       const struct combination *combo, double wood_x)
{
    double x = fmin(fmax(wood_x - at->offset_in, 0), at->span_in), shear = 0;
    for (int side = 0; side < 2 && !beam_runs_on(bd); side++) {
        double beside = fmin(fmax(x + (side ? 1e-6 : -1e-6), 0), at->span_in * (1 - 1e-12));
        shear = fmax(shear, fabs(beam_at(at->span_in, at->load, at->count, combo->factor, beside).shear));
    }
    if (!beam_runs_on(bd))
        return shear;
    struct beam_extremes *most = arena_array(s->arena, bd->inner_count + 1, sizeof *most);
    inner_extremes(s, bd, at, combo->factor, most);
    for (size_t span = 0; span <= bd->inner_count; span++)
        shear = fmax(shear, fabs(most[span].shear.value));
    return shear;
}

/* Loads down on a simple span: V falls all the way from one end to the other, so the greatest |V| of a stretch is at
 * one of its ends.  Within 5 d of an end the first fasteners carry all that comes before them; farther off those at 5 d
 * or beyond. */
static struct check rate_end(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                             const struct low *low, const struct combination *combo, int end, bool is_near)
{
    double wood = length_inches(bd->cut_length), depth = length_inches(bd->member->depth);
    double border = HUNG_NEAR_DEPTHS * depth, from_end = end ? wood - low->last : low->first;
    double last = end ? wood - low->first : low->last;
    if (is_near ? from_end >= border : last < border)
        return (struct check){0};
    double place = is_near ? from_end : fmax(from_end, border);
    double before = is_near && low->half_space > 0 ? 0 : fmax(place - low->half_space, 0);
    double shear = shear_at(s, bd, at, combo, end ? wood - before : before);
    bool ends = is_near || beam_pieces(bd) > 1; /* a splice is an end, too: wherever it is, as near one */
    double holds =
        hung_shear(bd->values->fv * combo->cd, length_inches(bd->width), depth, low->reach, ends ? 0 : place);
    struct check check = check_of("", "NDS 2018 3.4.3.3, from memory", shear, holds, "lb");
    check.combination = combo->name;
    check.at_in = end ? wood - place : place;
    check.note = arena_printf(s->arena, "de %s of d %s%s", length_tape(s->arena, length_from_inches(low->reach)),
                              length_tape(s->arena, bd->member->depth),
                              ends ? ", within 5 d of the end: (2/3 Fv' b de) (de/d)^2" : ": 2/3 Fv' b de");
    return check;
}

static struct check worst_of(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                             const struct low *low, bool is_near)
{
    struct check worst = {0};
    for (size_t i = 0; i < s->combo_count; i++)
        for (int end = 0; end < 2 && combo_applies(&s->combo[i], &at->present); end++) {
            struct check next = rate_end(s, bd, at, low, &s->combo[i], end, is_near);
            if (next.name)
                check_worse(&worst, next);
        }
    return worst;
}

static void check_low(struct sizing *s, const struct beam_design *bd, const struct beam_case *at, const struct low *low,
                      struct member_checks *checks)
{
    double depth = length_inches(bd->member->depth);
    if (low->reach >= depth - 1.0 / 16)
        return; /* as deep as the beam: nothing to split off */
    for (int far = 0; far < 2; far++) {
        struct check worst = worst_of(s, bd, at, low, !far);
        if (!worst.name)
            continue;
        worst.name = arena_printf(s->arena, "shear over %s, hung low%s", low->name, far ? "" : " near an end");
        checks_add(s, checks, worst);
    }
    if (low->reach < depth / 2 - 1e-9 && !checks->specified)
        engineer(s, &bd->beam->head.at,
                 arena_printf(s->arena,
                              "%s on %s: the highest hanger nail is %s up a beam %s deep, below its middle: it may "
                              "split along the grain there (NDS 2018 3.8.2)",
                              low->name, checks->id, length_tape(s->arena, length_from_inches(low->reach)),
                              length_tape(s->arena, bd->member->depth)));
}

/* Of the joists of a side the one whose hanger reaches up least. */
static double least_reach(const struct beam_design *bd, const struct joist_design *jd)
{
    double least = reach_of(bd, NULL, length_inches(jd->depth));
    for (size_t i = 0; i < jd->count; i++) {
        double reach = reach_of(bd, jd->end[i].hanger, length_inches(jd->end[i].depth));
        least = i ? fmin(least, reach) : reach;
    }
    return least;
}

static void check_joists(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                         struct member_checks *checks)
{
    for (int side = 0; side < 2; side++) {
        const struct joist_design *jd = bd->side[side];
        if (!jd || jd->count == 0)
            continue;
        struct low low = {.name = head_name(s->arena, KIND_JOISTS, &jd->joists->head),
                          .reach = least_reach(bd, jd),
                          .first = length_inches(jd->place[0]),
                          .last = length_inches(jd->place[jd->count - 1]),
                          .half_space = joist_spacing_ft(jd) * 12 / 2};
        check_low(s, bd, at, &low, checks);
    }
}

static void check_hung_beams(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                             struct member_checks *checks)
{
    for (size_t i = 0; i < s->job->beam_count; i++)
        for (int end = 0; end < 2; end++) {
            const struct beam_end *on = &s->job->beams[i].end_[end];
            const struct beam_design *hung = &s->design->beams[i];
            if (on->kind != END_BEAM || &s->job->beams[on->ref.index] != bd->beam || !hung->member)
                continue;
            double place = length_inches(on->at_length);
            struct low low = {.name = head_name(s->arena, KIND_BEAM, &s->job->beams[i].head),
                              .reach = reach_of(bd, hung->end_hanger[end], length_inches(hung->member->depth)),
                              .first = place,
                              .last = place};
            check_low(s, bd, at, &low, checks);
        }
}

/* Trimmers hang in hangers of their own, at least as tall as those of their joists. */
static void check_trimmers(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                           struct member_checks *checks)
{
    for (size_t i = 0; i < s->design->opening_count; i++) {
        const struct opening_design *od = &s->design->openings[i];
        for (int k = 0; k < 2 && od->side && od->side->beam == bd->beam; k++) {
            double place = length_inches(od->trimmers[k].at);
            struct low low = {
                .name = trimmer_name(s, od, k), .reach = least_reach(bd, od->side), .first = place, .last = place};
            check_low(s, bd, at, &low, checks);
        }
    }
}

void low_check(struct sizing *s, size_t index, const struct beam_case *at, struct member_checks *checks)
{
    const struct beam_design *bd = &s->design->beams[index];
    if (!needs_hangers(bd->beam))
        return;
    check_joists(s, bd, at, checks);
    check_trimmers(s, bd, at, checks);
    check_hung_beams(s, bd, at, checks);
}

void low_say(struct sizing *s, const struct beam_design *bd)
{
    const struct beam *beam = bd->beam;
    if (!needs_hangers(beam) || !bd->member)
        return;
    basis_add(s,
              arena_printf(s->arena, "%s: what hangs low on it (NDS 2018 3.4.3.3): highest hanger nail %s",
                           head_name(s->arena, KIND_BEAM, &beam->head),
                           beam->top_hanger_nail.at ? arena_printf(s->arena, "%s above its lower edge, as the job says",
                                                                   length_tape(s->arena, beam->top_hanger_nail.length))
                           : beam->set.choice == SET_UPSET
                               ? "taken at the least depth that the hanger is listed for, from the lower edge up"
                               : "taken at the least depth that the hanger is listed for, the upper edges even"));
}
