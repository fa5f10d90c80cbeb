/* An upset beam: what hangs low on its face, and what keeps its top from going aside.
 *
 * Kickers, as some call them: short braces from its top down to the joists (every 4 ft at most: common practice, no
 * source). */
#include "size.h"

#include <math.h>

#include "sawbill/notch.h"
#include "sawbill/text.h"

void upset_lay_out(struct beam_design *bd)
{
    double every = length_inches(bd->beam->kickers_every.length);
    bd->kickers = 0;
    bd->kicker_spacing_in = 0;
    if (bd->beam->set.choice != SET_UPSET || every <= 0 || bd->design_span_in <= every + 1e-9)
        return;
    double spaces = ceil(bd->design_span_in / every - 1e-9);
    bd->kickers = (int)spaces - 1;
    bd->kicker_spacing_in = bd->design_span_in / spaces;
}

/* Something that hangs on the face: de of its fasteners, and the stretch that it takes. */
struct low {
    const char *name;
    double reach, first, last; /* its first and last fasteners, from end 1 of the wood */
    double half_space;         /* a joist brings the load of half a space before it, too */
};

/* The highest nail of a hanger whose foot is even with the beam's: said, or at the least depth that the hanger is
 * listed for, which is about its own height. */
static double reach_of(const struct beam *beam, const struct hanger *hanger, double depth)
{
    if (beam->top_hanger_nail.at)
        return length_inches(beam->top_hanger_nail.length);
    return hanger ? fmin(depth, length_inches(hanger->depth_from)) : depth;
}

/* V at x of the wood: the greater of both sides of it.  Over inner supports: the greatest of any span, the safe side.
 */
static double shear_at(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                       const struct combination *combo, double wood_x)
{
    double x = fmin(fmax(wood_x - at->offset_in, 0), at->span_in), shear = 0;
    for (int side = 0; side < 2 && bd->inner_count == 0; side++) {
        double beside = fmin(fmax(x + (side ? 1e-6 : -1e-6), 0), at->span_in * (1 - 1e-12));
        shear = fmax(shear, fabs(beam_at(at->span_in, at->load, at->count, combo->factor, beside).shear));
    }
    if (bd->inner_count == 0)
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
static double least_reach(const struct joist_design *jd)
{
    double least = reach_of(jd->beam, NULL, length_inches(jd->depth));
    for (size_t i = 0; i < jd->count; i++) {
        double reach = reach_of(jd->beam, jd->end[i].hanger, length_inches(jd->end[i].depth));
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
                          .reach = least_reach(jd),
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
                              .reach = reach_of(bd->beam, hung->end_hanger[end], length_inches(hung->member->depth)),
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
                .name = trimmer_name(s, od, k), .reach = least_reach(od->side), .first = place, .last = place};
            check_low(s, bd, at, &low, checks);
        }
    }
}

static void ask_kickers(struct sizing *s, const struct beam_design *bd)
{
    bool one_sided = !bd->side[0] != !bd->side[1];
    if (!one_sided || bd->beam->kickers_every.at || bd->beam->specified_by.at)
        return;
    diag_add(
        s->diags, DIAG_S005, place_of(bd->beam->set.at, &bd->beam->head),
        "%s is upset and carries joists on one side only: what keeps it from rolling? write 'kickers every = 4 ft' "
        "and 'kickers of' for braces from its top down to the joists, or 'specified by'",
        head_name(s->arena, KIND_BEAM, &bd->beam->head));
}

static void find_kicker(struct sizing *s, struct beam_design *bd)
{
    const struct text_value *of = &bd->beam->kickers_of;
    bd->kicker = of->at ? catalog_member(s->catalog, of->text) : NULL;
    if (of->at && !bd->kicker)
        diag_add(s->diags, DIAG_C006, place_of(of->at, &bd->beam->head),
                 "'%s', of kickers, is not a code in members.csv", of->text);
}

void upset_check(struct sizing *s, size_t index, const struct beam_case *at, struct member_checks *checks)
{
    struct beam_design *bd = &s->design->beams[index];
    if (bd->beam->set.choice != SET_UPSET)
        return;
    find_kicker(s, bd);
    check_joists(s, bd, at, checks);
    check_trimmers(s, bd, at, checks);
    check_hung_beams(s, bd, at, checks);
    ask_kickers(s, bd);
}

void upset_say(struct sizing *s, const struct beam_design *bd)
{
    const char *name = head_name(s->arena, KIND_BEAM, &bd->beam->head);
    if (bd->beam->set.choice != SET_UPSET)
        return;
    if (bd->kickers > 0) {
        basis_add(s,
                  arena_printf(s->arena, "%s: upset, its top edge held by kickers or straps in %d places, %s apart: lu",
                               name, bd->kickers, length_tape(s->arena, length_from_inches(bd->kicker_spacing_in))));
        unchecked_add(
            s, arena_printf(s->arena, "not checked: the force in the kickers of %s, and what they are fixed to", name));
    } else {
        basis_add(s, arena_printf(s->arena, "%s: upset, its top edge is not held: lu = design span", name));
        unchecked_add(s, arena_printf(s->arena, "not checked: the roll of %s", name));
    }
    basis_add(s, arena_printf(s->arena, "%s: what hangs low on it (NDS 2018 3.4.3.3): highest hanger nail %s", name,
                              bd->beam->top_hanger_nail.at
                                  ? arena_printf(s->arena, "%s above its lower edge, as the job says",
                                                 length_tape(s->arena, bd->beam->top_hanger_nail.length))
                                  : "taken at the least depth that the hanger is listed for, from the lower edge up"));
}
