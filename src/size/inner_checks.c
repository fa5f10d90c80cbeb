/* A beam with supports between its ends: bending of both edges, shear and deflection of each span, in every combination
 * and with any set of spans loaded. */
#include "size.h"

#include <math.h>
#include <string.h>

#include "sawbill/text.h"

static const struct {
    const char *name, *clause;
} kinds[] = {{"bending", "NDS 2018 3.3.1, 3.3.3"},
             {"bending over supports", "NDS 2018 3.3.1, 3.3.3"},
             {"shear", "NDS 2018 3.4.2"},
             {"live deflection", "NDS 2018 3.5.1"},
             {"total deflection", "NDS 2018 3.5.2"}};
enum kind_of_check { SAGGING, HOGGING, SHEAR, LIVE, TOTAL, KINDS };

/* The upper edge is compressed where it sags: joists hold it. */
static double lu_above(const struct beam_design *bd, size_t span, const struct joist_design *only)
{
    double offset = beam_zero_in(bd);
    return beam_unbraced(bd, inner_place_in(bd, span) + offset, inner_place_in(bd, span + 1) + offset, only);
}

/* The lower edge is compressed over a support, and nothing holds it between supports: the longest of this span and
 * those beside it. */
static double lu_below(const struct beam_design *bd, size_t span)
{
    double longest = inner_span_in(bd, span);
    if (span == 0)
        longest = fmax(longest, bd->past_in[0]);
    if (span == bd->inner_count)
        longest = fmax(longest, bd->past_in[1]);
    if (span > 0)
        longest = fmax(longest, inner_span_in(bd, span - 1));
    if (span < bd->inner_count)
        longest = fmax(longest, inner_span_in(bd, span + 1));
    return longest;
}

/* Fb of glulam with its tension side up, or with its compression side in tension: Supplement Table 5A.  0: not
 * known. */
static struct wood_bending rate(const struct beam_design *bd, size_t span, double lu, bool lower, double cd)
{
    struct wood_piece wood = beam_wood(bd);
    struct design_row row = *wood.row;
    if (lower && bd->member->wood == WOOD_GLULAM)
        row.fb = row.fb_neg;
    wood.row = &row;
    double cr = decimal_value(bd->beam->repetitive_factor.decimal);
    return wood_bending(&wood, cd, cr, lu, LE_NOT_LISTED, inner_span_in(bd, span));
}

static struct check bending(struct sizing *s, const struct beam_design *bd, const struct beam_case *at, size_t span,
                            const struct beam_extremes *most, bool lower, const struct joist_design *only,
                            const struct combination *combo)
{
    struct wood_piece wood = beam_wood(bd);
    double lu = lower ? lu_below(bd, span) : lu_above(bd, span, only);
    struct wood_bending bending = rate(bd, span, lu, lower, combo->cd);
    struct beam_extreme moment = lower ? most->hogging : most->sagging;
    enum kind_of_check kind = lower ? HOGGING : SAGGING;
    struct check check =
        check_of(kinds[kind].name, kinds[kind].clause, fabs(moment.value) / wood_modulus(&wood), bending.fb, "psi");
    check.at_in = moment.at_in + at->offset_in;
    check.note = bending_note(s, bd, &bending, lu, combo->cd);
    if (lower)
        check.note = bending.fb_star > 0
                         ? arena_printf(s->arena, "lower edge compressed; %s", check.note)
                         : "design_values.csv has no Fb_neg of this glulam: its upper side in tension is not known";
    return check;
}

static struct check shear(const struct beam_design *bd, const struct beam_case *at, const struct beam_extremes *most,
                          const struct combination *combo)
{
    struct wood_piece wood = beam_wood(bd);
    struct check check = check_of(kinds[SHEAR].name, kinds[SHEAR].clause,
                                  1.5 * fabs(most->shear.value) / wood_area(&wood), bd->values->fv * combo->cd, "psi");
    check.at_in = most->shear.at_in + at->offset_in;
    check.note = needs_hangers(bd->beam) ? "V reduction: none, side-loaded" : "V reduction: none";
    return check;
}

static struct check deflection(struct sizing *s, const struct beam_design *bd, const struct beam_case *at, size_t span,
                               const struct beam_extremes *most, bool total)
{
    struct wood_piece wood = beam_wood(bd);
    struct beam_extreme sag = -most->up.value > most->down.value ? most->up : most->down;
    int limit = total ? limit_or(&bd->beam->total_limit, 240) : limit_or(&bd->beam->live_limit, 360);
    enum kind_of_check kind = total ? TOTAL : LIVE;
    struct check check =
        check_of(kinds[kind].name, kinds[kind].clause, fabs(sag.value) / (bd->values->e * wood_inertia(&wood)),
                 inner_span_in(bd, span) / limit, "in");
    check.at_in = sag.at_in + at->offset_in;
    const char *what = "without dead load";
    if (total)
        what = arena_printf(s->arena, "Kcr %s on dead load", number_text(s->arena, beam_creep(bd), 1));
    check.note = arena_printf(s->arena, "%s%s; limit L/%d", what, sag.value < 0 ? ", upward" : "", limit);
    return check;
}

static void deflections(struct sizing *s, const struct beam_design *bd, const struct beam_case *at, bool total,
                        const struct combination *combo, struct check (*worst)[KINDS])
{
    struct beam_extremes *most = arena_array(s->arena, bd->inner_count + 1, sizeof *most);
    double factor[LOAD_SOURCES];
    memcpy(factor, combo->factor, sizeof factor);
    factor[LOAD_DEAD] *= total ? beam_creep(bd) : 0;
    inner_extremes(s, bd, at, factor, most);
    for (size_t span = 0; span <= bd->inner_count; span++)
        keep_in(&worst[span][total ? TOTAL : LIVE], deflection(s, bd, at, span, &most[span], total), combo);
}

static void strengths(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                      const struct combination *combo, struct check (*worst)[KINDS])
{
    struct beam_extremes *most = arena_array(s->arena, bd->inner_count + 1, sizeof *most);
    inner_extremes(s, bd, at, combo->factor, most);
    for (size_t span = 0; span <= bd->inner_count; span++) {
        keep_in(&worst[span][SAGGING], bending(s, bd, at, span, &most[span], false, NULL, combo), combo);
        if (most[span].hogging.value < 0)
            keep_in(&worst[span][HOGGING], bending(s, bd, at, span, &most[span], true, NULL, combo), combo);
        keep_in(&worst[span][SHEAR], shear(bd, at, &most[span], combo), combo);
    }
}

/* IBC 2021 Table 1604.3, note on cantilevers, from memory: L is twice their length. */
static struct check tip_check(struct sizing *s, const struct beam_design *bd, const struct beam_case *at, int end,
                              bool total, const struct combination *combo)
{
    struct wood_piece wood = beam_wood(bd);
    double factor[LOAD_SOURCES];
    memcpy(factor, combo->factor, sizeof factor);
    factor[LOAD_DEAD] *= total ? beam_creep(bd) : 0;
    struct beam_extreme sag = inner_tip(s, bd, at, factor, end);
    int limit = total ? limit_or(&bd->beam->total_limit, 240) : limit_or(&bd->beam->live_limit, 360);
    struct check check =
        check_of(arena_printf(s->arena, "%s, overhang %d", kinds[total ? TOTAL : LIVE].name, end + 1),
                 "NDS 2018 3.5; IBC 2021 Table 1604.3, from memory",
                 fabs(sag.value) / (bd->values->e * wood_inertia(&wood)), 2 * bd->past_in[end] / limit, "in");
    check.at_in = sag.at_in + at->offset_in;
    check.note =
        arena_printf(s->arena, "%s%s; limit L/%d of twice its length",
                     total ? "creep on dead load" : "without dead load", sag.value < 0 ? ", upward" : "", limit);
    return check;
}

static void tip_checks(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                       struct member_checks *checks)
{
    for (int end = 0; end < 2; end++)
        for (int total = 0; total < 2 && bd->past_in[end] > 0; total++) {
            struct check worst = {0};
            for (size_t i = 0; i < s->combo_count; i++)
                if (combo_applies(&s->combo[i], &at->present))
                    keep_in(&worst, tip_check(s, bd, at, end, total == 1, &s->combo[i]), &s->combo[i]);
            checks_add(s, checks, worst);
        }
}

void inner_member_checks(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                         struct member_checks *checks)
{
    struct check(*worst)[KINDS] = arena_array(s->arena, bd->inner_count + 1, sizeof *worst);
    for (size_t i = 0; i < s->combo_count; i++) {
        if (!combo_applies(&s->combo[i], &at->present))
            continue;
        strengths(s, bd, at, &s->combo[i], worst);
        deflections(s, bd, at, false, &s->combo[i], worst);
        deflections(s, bd, at, true, &s->combo[i], worst);
    }
    for (size_t span = 0; span <= bd->inner_count; span++)
        for (int kind = 0; kind < KINDS; kind++)
            if (worst[span][kind].name) {
                worst[span][kind].name = arena_printf(s->arena, "%s, span %zu", worst[span][kind].name, span + 1);
                checks_add(s, checks, worst[span][kind]);
                if (kind != TOTAL || !bd->beam->most_sag.at)
                    continue;
                struct check cap = sag_cap(bd, &worst[span][kind]);
                cap.name = arena_printf(s->arena, "%s, span %zu", cap.name, span + 1);
                checks_add(s, checks, cap);
            }
    tip_checks(s, bd, at, checks);
}

struct check inner_half_hung(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                             const struct joist_design *only, const struct combination *combo)
{
    struct beam_extremes *most = arena_array(s->arena, bd->inner_count + 1, sizeof *most);
    struct check worst = {0};
    inner_extremes(s, bd, at, combo->factor, most);
    for (size_t span = 0; span <= bd->inner_count; span++) {
        keep_in(&worst, bending(s, bd, at, span, &most[span], false, only, combo), combo);
        keep_in(&worst, bending(s, bd, at, span, &most[span], true, only, combo), combo);
    }
    return worst;
}

static const char *spans_text(struct sizing *s, const struct beam_design *bd)
{
    struct buffer text = {.arena = s->arena};
    for (size_t span = 0; span <= bd->inner_count; span++)
        buffer_printf(&text, "%s%s", span ? " + " : "",
                      length_tape(s->arena, length_from_inches(inner_span_in(bd, span))));
    return buffer_text(&text);
}

static void say_splices(struct sizing *s, const struct beam_design *bd, const char *name)
{
    struct buffer text = {.arena = s->arena};
    for (size_t i = 0; i < bd->inner_count; i++)
        if (bd->inner[i].spliced)
            buffer_printf(&text, "%s%s", text.length ? ", " : "",
                          length_tape(s->arena, bd->inner[i].inner->on.at_length));
    if (text.length)
        basis_add(s,
                  arena_printf(s->arena,
                               "%s: all plies are cut over the supports at %s: no moment goes over there, each piece "
                               "bears on its half",
                               name, buffer_text(&text)));
    else
        basis_add(s, arena_printf(s->arena, "%s: every ply is one piece over all supports", name));
}

void inner_say(struct sizing *s, const struct beam_design *bd, const char *name)
{
    basis_add(s,
              arena_printf(s->arena, "%s: design spans %s, center to center of its bearings", name, spans_text(s, bd)));
    if (bd->inner_count > 0)
        say_splices(s, bd, name);
    for (int end = 0; end < 2; end++)
        if (bd->past_in[end] > 0)
            basis_add(s, arena_printf(s->arena,
                                      "%s: runs %s past its bearing at end %d; what stands on it there lifts "
                                      "the next span and the far end",
                                      name, length_tape(s->arena, bd->beam->overhang[end].length), end + 1));
    basis_add(s, "beams over more than two supports, or with wood past one: dead load on all spans; every other load "
                 "on any set of spans, in "
                 "each combination; each support is handed the most that any set brings of each load, so that together "
                 "they carry more than all loads");
    basis_add(s, "over an inner support the lower edge is compressed: lu = the longest span beside it, the safe side; "
                 "the supports hold the beam upright; Fb_neg for glulam");
    if (bd->inner_count > 0)
        unchecked_add(
            s, arena_printf(s->arena,
                            "not checked: %s when one of its supports sinks or shrinks more than the others: the "
                            "others, and the spans beside it, then take more",
                            name));
}
