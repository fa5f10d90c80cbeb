/* Between the old state and the new one: a beam that has the joists of one side and not yet those of the other. */
#include "size.h"

#include <math.h>
#include <string.h>

#include "sawbill/text.h"

/* Its own weight and what hangs on it from that side: the other side is still on its shore. */
static size_t loads_of_side(struct sizing *s, size_t beam, int side, struct beam_load *out)
{
    const struct beam_design *bd = &s->design->beams[beam];
    const struct stack *stack = &s->stack[beam];
    const char *own = arena_printf(s->arena, "own weight of %s", head_name(s->arena, KIND_BEAM, &bd->beam->head));
    double offset = beam_zero_in(bd);
    size_t count = 0;
    for (size_t i = 0; i < stack->count; i++) {
        if (stack->item[i].hung != bd->side[side] && strcmp(stack->item[i].from, own) != 0)
            continue;
        out[count] = stack->item[i].load;
        out[count].from_in -= offset;
        out[count++].to_in -= offset;
    }
    return count;
}

/* The joists of that side alone hold the top edge. */
static double widest_gap(const struct beam_design *bd, const struct joist_design *jd)
{
    if (bd->beam->set.choice == SET_UPSET)
        return bd->design_span_in; /* joists do not reach its top, and its kickers come last */
    double last = 0, widest = 0;
    for (size_t i = 0; i < jd->brace_count; i++) {
        widest = fmax(widest, length_inches(jd->brace[i]) - last);
        last = fmax(last, length_inches(jd->brace[i]));
    }
    return fmin(fmax(widest, length_inches(bd->cut_length) - last), bd->design_span_in);
}

/* Between two supports. */
static struct check side_bending(const struct beam_design *bd, int side, const struct beam_case *at,
                                 const struct combination *combo)
{
    struct wood_piece wood = beam_wood(bd);
    double lu = widest_gap(bd, bd->side[side]), cr = decimal_value(bd->beam->repetitive_factor.decimal);
    struct beam_result result = beam_solve(at->span_in, at->load, at->count, combo->factor);
    struct wood_bending bending = wood_bending(&wood, combo->cd, cr, lu, LE_NOT_LISTED, at->span_in);
    struct check check =
        check_of("", "NDS 2018 3.3.1, 3.3.3", fabs(result.moment.value) / wood_modulus(&wood), bending.fb, "psi");
    check.at_in = result.moment.at_in + at->offset_in;
    return check;
}

static struct check side_check(struct sizing *s, size_t beam, int side)
{
    const struct beam_design *bd = &s->design->beams[beam];
    struct beam_load *load = arena_array(s->arena, s->stack[beam].count, sizeof *load);
    const struct beam_case at = {.load = load,
                                 .count = loads_of_side(s, beam, side, load),
                                 .span_in = bd->design_span_in,
                                 .offset_in = beam_zero_in(bd)};
    struct check worst = {0};
    for (size_t i = 0; i < s->combo_count; i++) {
        const struct combination *combo = &s->combo[i];
        if (!combo_applies(combo, &bd->side[side]->line_plf))
            continue;
        struct check check =
            beam_runs_on(bd) ? inner_half_hung(s, bd, &at, bd->side[side], combo) : side_bending(bd, side, &at, combo);
        check.name = side ? "bending, side B hung" : "bending, side A hung";
        check.combination = combo->name;
        check.note = "the other side still on its shore; the beam held upright";
        check_worse(&worst, check);
    }
    return worst;
}

static void say_rule(struct sizing *s, const char *name)
{
    basis_add(s, arena_printf(s->arena,
                              "%s, half hung: hang from both sides by turns, at most 4 hangers ahead, the beam held at "
                              "its ends and in the middle until both sides are on (common practice); it rolls "
                              "otherwise",
                              name));
    unchecked_add(s, arena_printf(s->arena, "not checked: the roll of %s while it is half hung", name));
}

void stages_check(struct sizing *s)
{
    for (size_t i = 0; i < s->job->beam_count; i++) {
        struct beam_design *bd = &s->design->beams[i];
        if (!bd->member || bd->design_span_in <= 0 || !bd->side[0] || !bd->side[1] || !needs_hangers(bd->beam))
            continue;
        const char *name = head_name(s->arena, KIND_BEAM, &bd->beam->head);
        struct member_checks *checks =
            checks_new(s, arena_printf(s->arena, "%s, half hung", name), member_text(s->arena, bd->member, bd->plies));
        checks->specified = bd->beam->specified_by.at != NULL;
        checks_wood(checks, bd->member->values);
        for (int side = 0; side < 2; side++)
            checks_add(s, checks, side_check(s, i, side));
        bool holds = checks_close(s, checks, place_of(bd->beam->member.at, &bd->beam->head));
        bd->passes = bd->passes && (holds || checks->specified);
        say_rule(s, name);
    }
}
