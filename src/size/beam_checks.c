/* The member between its ends: bending, shear, deflection, in every combination. */
#include "size.h"

#include <math.h>
#include <string.h>

#include "sawbill/text.h"

struct beam_case beam_case_of(struct sizing *s, size_t beam)
{
    const struct beam_design *bd = &s->design->beams[beam];
    const struct stack *stack = &s->stack[beam];
    struct beam_case out = {.count = stack->count, .span_in = bd->design_span_in};
    out.offset_in = beam_zero_in(bd);
    out.load = arena_array(s->arena, stack->count, sizeof *out.load);
    for (size_t i = 0; i < stack->count; i++) {
        struct beam_load load = stack->item[i].load;
        out.present = loads_plus(out.present, beam_load_total(&load));
        load.from_in -= out.offset_in;
        load.to_in -= out.offset_in;
        out.load[i] = load;
    }
    return out;
}

static double modulus_of(const struct beam_design *bd)
{
    return bd->values->e;
}

static struct wood_piece piece(const struct beam_design *bd)
{
    return beam_wood(bd);
}

/* The next joist after x that holds the top edge, from either side or of one field; else `end`. */
static double next_brace(const struct beam_design *bd, double x, double end, const struct joist_design *only)
{
    double next = end;
    for (int side = 0; side < 2; side++) {
        const struct joist_design *jd = bd->side[side];
        for (size_t i = 0; jd && (!only || jd == only) && i < jd->brace_count; i++) {
            double at = length_inches(jd->brace[i]);
            if (at > x && at < next)
                next = at;
        }
    }
    return next;
}

/* Joists hung flush or lying on top hold it; at an upset beam only its kickers, which come after its joists. */
double beam_unbraced(const struct beam_design *bd, double from, double to, const struct joist_design *only)
{
    if (bd->beam->set.choice == SET_UPSET)
        return bd->kickers > 0 && !only ? fmin(bd->kicker_spacing_in, to - from) : to - from;
    double widest = 0;
    for (double x = from; x < to;) {
        double next = next_brace(bd, x, to, only);
        widest = fmax(widest, next - x);
        x = next;
    }
    return widest;
}

/* Of a beam between two supports. */
static double unbraced_length(const struct beam_design *bd)
{
    return fmin(beam_unbraced(bd, 0, length_inches(bd->cut_length), NULL), bd->design_span_in);
}

static enum wood_loading loading_of(const struct beam_case *at, double lu)
{
    if (lu < at->span_in)
        return LE_NOT_LISTED;
    for (size_t i = 0; i < at->count; i++)
        if (at->load[i].point || at->load[i].tapers || at->load[i].from_in > 0 || at->load[i].to_in < at->span_in)
            return LE_NOT_LISTED;
    return LE_SPAN_UNIFORM;
}

const char *bending_note(struct sizing *s, const struct beam_design *bd, const struct wood_bending *bending, double lu,
                         double cd)
{
    struct buffer text = {.arena = s->arena};
    buffer_printf(&text, "CD %s, CF %s, Cr %s", number_text(s->arena, cd, 2), number_text(s->arena, bending->cf, 3),
                  number_text(s->arena, bending->cr, 2));
    if (bd->member->wood != WOOD_SAWN)
        buffer_printf(&text, ", CV %s", number_text(s->arena, bending->cv, 3));
    buffer_printf(&text, ", CL %s (lu %s, width of one ply)", number_text(s->arena, bending->cl, 3),
                  length_tape(s->arena, length_from_inches(lu)));
    if (bd->plies > 1 && bd->beam->set.choice == SET_UPSET && bending->rb > 0)
        buffer_printf(&text, "; on the width of all plies CL would be %s, not used",
                      number_text(s->arena, wood_cl(bending->rb / bd->plies, bd->values->emin, bending->fb_star), 3));
    if (bending->rb > 50)
        buffer_printf(&text, "; RB %s is beyond 50 (NDS 2018 3.3.3.7)", number_text(s->arena, bending->rb, 1));
    if (bd->service)
        buffer_printf(&text, "; %s", bd->service);
    if (bending->cf <= 0)
        buffer_add(&text, "; the grade is not for this width");
    return buffer_text(&text);
}

static struct wood_bending rate_bending(const struct beam_design *bd, const struct beam_case *at,
                                        const struct combination *combo)
{
    struct wood_piece wood = piece(bd);
    double lu = unbraced_length(bd), cr = decimal_value(bd->beam->repetitive_factor.decimal);
    return wood_bending(&wood, combo->cd, cr, lu, loading_of(at, lu), at->span_in);
}

double beam_fb(const struct beam_design *bd, const struct beam_case *at, const struct combination *combo)
{
    return rate_bending(bd, at, combo).fb;
}

static struct check bending_check(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                                  const struct combination *combo, const struct beam_result *result)
{
    struct wood_piece wood = piece(bd);
    double lu = unbraced_length(bd);
    struct wood_bending bending = rate_bending(bd, at, combo);
    struct check check = check_of("bending", "NDS 2018 3.3.1, 3.3.3", fabs(result->moment.value) / wood_modulus(&wood),
                                  bending.fb, "psi");
    check.at_in = result->moment.at_in + at->offset_in;
    check.note = bending_note(s, bd, &bending, lu, combo->cd);
    return check;
}

static struct check shear_check(const struct beam_design *bd, const struct beam_case *at,
                                const struct combination *combo, const struct beam_result *result)
{
    struct wood_piece wood = piece(bd);
    struct check check = check_of("shear", "NDS 2018 3.4.2", 1.5 * fabs(result->shear.value) / wood_area(&wood),
                                  bd->values->fv * combo->cd, "psi");
    check.at_in = result->shear.at_in + at->offset_in;
    check.note = needs_hangers(bd->beam) ? "V reduction: none, side-loaded" : "V reduction: none";
    return check;
}

static double sag_in(const struct beam_design *bd, const struct beam_result *result)
{
    struct wood_piece wood = piece(bd);
    return result->sag.value / (modulus_of(bd) * wood_inertia(&wood));
}

int limit_or(const struct count_value *limit, int otherwise)
{
    return limit->count > 0 ? limit->count : otherwise;
}

static struct check live_deflection(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                                    const struct combination *combo)
{
    double factor[LOAD_SOURCES];
    memcpy(factor, combo->factor, sizeof factor);
    factor[LOAD_DEAD] = 0;
    struct beam_result result = beam_solve(at->span_in, at->load, at->count, factor);
    int limit = limit_or(&bd->beam->live_limit, 360);
    struct check check = check_of("live deflection", "NDS 2018 3.5.1", sag_in(bd, &result), at->span_in / limit, "in");
    check.at_in = result.sag.at_in + at->offset_in;
    check.note = arena_printf(s->arena, "without dead load; limit L/%d", limit);
    return check;
}

double beam_creep(const struct beam_design *bd)
{
    bool green = bd->member->moisture && name_same(bd->member->moisture, "green");
    return wood_kcr(green || serves_wet(&bd->beam->service));
}

static struct check total_deflection(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                                     const struct combination *combo)
{
    double factor[LOAD_SOURCES], creep = beam_creep(bd);
    memcpy(factor, combo->factor, sizeof factor);
    factor[LOAD_DEAD] *= creep;
    struct beam_result result = beam_solve(at->span_in, at->load, at->count, factor);
    int limit = limit_or(&bd->beam->total_limit, 240);
    struct check check = check_of("total deflection", "NDS 2018 3.5.2", sag_in(bd, &result), at->span_in / limit, "in");
    check.at_in = result.sag.at_in + at->offset_in;
    check.note = arena_printf(s->arena, "Kcr %s on dead load; limit L/%d", number_text(s->arena, creep, 1), limit);
    return check;
}

/* The same sag against a limit of the job's own, whatever the span. */
struct check sag_cap(const struct beam_design *bd, const struct check *total)
{
    struct check cap =
        check_of("most sag", "limit of the job", total->demand, length_inches(bd->beam->most_sag.length), "in");
    cap.combination = total->combination;
    cap.at_in = total->at_in;
    cap.note = total->note;
    return cap;
}

void keep_in(struct check *worst, struct check next, const struct combination *combo)
{
    next.combination = combo->name;
    check_worse(worst, next);
}

static void one_span_checks(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                            struct member_checks *checks)
{
    struct check bending = {0}, shear = {0}, live = {0}, total = {0};
    for (size_t i = 0; i < s->combo_count; i++) {
        const struct combination *combo = &s->combo[i];
        if (!combo_applies(combo, &at->present))
            continue;
        struct beam_result result = beam_solve(at->span_in, at->load, at->count, combo->factor);
        keep_in(&bending, bending_check(s, bd, at, combo, &result), combo);
        keep_in(&shear, shear_check(bd, at, combo, &result), combo);
        keep_in(&live, live_deflection(s, bd, at, combo), combo);
        keep_in(&total, total_deflection(s, bd, at, combo), combo);
    }
    checks_add(s, checks, bending);
    checks_add(s, checks, shear);
    checks_add(s, checks, live);
    checks_add(s, checks, total);
    if (bd->beam->most_sag.at && total.name)
        checks_add(s, checks, sag_cap(bd, &total));
}

bool beam_member_check(struct sizing *s, size_t index)
{
    const struct beam_design *bd = &s->design->beams[index];
    struct member_checks *checks =
        checks_new(s, head_name(s->arena, KIND_BEAM, &bd->beam->head), member_text(s->arena, bd->member, bd->plies));
    checks->specified = bd->beam->specified_by.at != NULL;
    checks_wood(checks, bd->member->values);
    checks->unverified |= bd->beam->service.incised.choice == YES;
    if (!checks->specified)
        service_ask(s, bd->member, &bd->beam->service, checks->id, &bd->beam->head.at, "specified by");
    struct beam_case at = beam_case_of(s, index);
    if (beam_runs_on(bd))
        inner_member_checks(s, bd, &at, checks);
    else
        one_span_checks(s, bd, &at, checks);
    uplift_bending(s, bd, &at, checks);
    cut_ends_check(s, index, &at, checks);
    low_check(s, index, &at, checks);
    upset_check(s, index);
    rolling_check(s, index, checks);
    ply_fastening_check(s, index, &at.present, checks);
    refuse_beyond(s, bd, &at.present);
    specified_compare(s, index, &at.present);
    return checks_close(s, checks, place_of(bd->beam->member.at, &bd->beam->head));
}
