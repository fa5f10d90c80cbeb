/* An old beam that lands on the wall: a shore holds it near that end, and it is a cantilever past the shore. */
#include "size.h"

#include <math.h>

#include "sawbill/text.h"

/* Its end that lands on another beam (the new one); else the end that brings more. */
static int held_end(const struct beam_design *bd)
{
    bool lands[2];
    for (int end = 0; end < 2; end++)
        lands[end] = bd->beam->end_[end].kind == END_BEAM;
    if (lands[0] != lands[1])
        return lands[1];
    return loads_sum(bd->end_lb[1]) > loads_sum(bd->end_lb[0]);
}

/* Moments about its far end: R (L - a) = R_end L, whatever the loads. */
struct loads shore_beam_lb(struct sizing *s, const struct shore *shore, size_t beam)
{
    const struct beam_design *bd = &s->design->beams[beam];
    double span = bd->design_span_in, back = length_inches(shore->set_back.length);
    if (span <= 0 || back >= span)
        return (struct loads){0};
    int end = held_end(bd);
    struct loads lb = loads_times(bd->end_lb[end], span / (span - back));
    basis_add(s, arena_printf(s->arena, "%s: %s is held %s in from its end %d: %s lb there, x %s (L/(L - a), statics)",
                              head_name(s->arena, KIND_SHORE, &shore->head),
                              head_name(s->arena, KIND_BEAM, &bd->beam->head), number_text(s->arena, back, 1), end + 1,
                              number_text(s->arena, loads_sum(bd->end_lb[end]), 0),
                              number_text(s->arena, span / (span - back), 3)));
    return lb;
}

/* What runs on past its design span rests on its bearing. */
static struct beam_spans held_spans(struct sizing *s, size_t beam, double back_in, struct beam_support support[2])
{
    const struct beam_design *bd = &s->design->beams[beam];
    struct beam_case at = beam_case_of(s, beam);
    size_t count = 0;
    for (size_t i = 0; i < at.count; i++) {
        struct beam_load load = at.load[i];
        load.from_in = fmin(fmax(load.from_in, 0), at.span_in);
        load.to_in = fmin(fmax(load.to_in, 0), at.span_in);
        if (load.point || load.to_in > load.from_in)
            at.load[count++] = load;
    }
    int end = held_end(bd);
    support[0] = (struct beam_support){.at_in = end == 0 ? back_in : 0};
    support[1] = (struct beam_support){.at_in = end == 0 ? at.span_in : at.span_in - back_in};
    return (struct beam_spans){
        .length_in = at.span_in, .support = support, .supports = 2, .load = at.load, .count = count};
}

struct past {
    const char *name;
    struct check bending, shear, plate;
};

static void keep(struct check *worst, struct check next, const struct combination *combo, const char *note)
{
    next.combination = combo->name;
    next.note = note;
    check_worse(worst, next);
}

static void rate(struct sizing *s, const struct shore_design *sd, size_t beam, const struct combination *combo,
                 struct past *past)
{
    const struct beam_design *bd = &s->design->beams[beam];
    double back = length_inches(sd->shore->set_back.length), cd = wood_cd_of_days(sd->shore->days.count);
    struct wood_piece piece = piece_of(bd->member, bd->plies);
    struct beam_support support[2];
    struct beam_spans spans = held_spans(s, beam, back, support);
    spans.factor = combo->factor;
    if (!spans_solve(&spans))
        return;
    struct beam_extremes all = spans_extremes(&spans, 0, spans.length_in);
    struct wood_bending fb = wood_bending(&piece, cd, 1, back, LE_NOT_LISTED, bd->design_span_in);
    keep(&past->bending,
         check_of(arena_printf(s->arena, "%s past the shore, bending", past->name), "NDS 2018 3.3.1, 3.3.3",
                  -all.hogging.value / wood_modulus(&piece), fb.fb, "psi"),
         combo,
         arena_printf(s->arena, "CD %s, CL %s (lower edge free)", number_text(s->arena, cd, 2),
                      number_text(s->arena, fb.cl, 3)));
    keep(&past->shear,
         check_of(arena_printf(s->arena, "%s at the shore, shear", past->name), "NDS 2018 3.4.2",
                  1.5 * fabs(all.shear.value) / wood_area(&piece), piece.row->fv * cd, "psi"),
         combo, "the greatest along it");
    const struct member *plate = sd->strongback ? NULL : sd->top_plate;
    if (plate && plate->values)
        keep(&past->plate,
             check_of(arena_printf(s->arena, "%s on the shore's plate", past->name), "NDS 2018 3.10.2",
                      support[held_end(bd) == 0 ? 0 : 1].reaction /
                          (piece.ply_in * piece.plies * length_inches(plate->depth)),
                      fmin(piece.row->fc_perp, plate->values->fc_perp), "psi"),
             combo, "the weaker of beam and plate, a stud under each of its plies");
}

static void check_one(struct sizing *s, const struct shore_design *sd, size_t beam, struct member_checks *checks)
{
    const struct beam_design *bd = &s->design->beams[beam];
    struct past past = {.name = head_name(s->arena, KIND_BEAM, &bd->beam->head)};
    bool known = bd->member && bd->member->values && bd->design_span_in > 0;
    if (!known || beam_runs_on(bd)) {
        unchecked_add(
            s, arena_printf(s->arena, "not checked: %s past %s: %s", past.name,
                            head_name(s->arena, KIND_SHORE, &sd->shore->head),
                            known ? "it runs on over more supports or past one, and its load there is taken as that of "
                                    "one span from end to end"
                                  : "its wood is not known"));
        return;
    }
    if (length_inches(sd->shore->set_back.length) >= bd->design_span_in) {
        struct check back = check_of("set back", "statics", 1, 0, "");
        back.note = arena_printf(s->arena, "the shore stands beyond the far end of %s", past.name);
        checks_add(s, checks, back);
        return;
    }
    checks->unverified |= !bd->member->values->seen;
    struct beam_case at = beam_case_of(s, beam);
    for (size_t i = 0; i < s->combo_count; i++)
        if (combo_applies(&s->combo[i], &at.present))
            rate(s, sd, beam, &s->combo[i], &past);
    const struct member *plate = sd->top_plate;
    past.bending.values = past.shear.values = values_text(s->arena, bd->member->values);
    past.plate.values = values_both(s->arena, bd->member->values, plate ? plate->values : NULL);
    checks_add(s, checks, past.bending);
    checks_add(s, checks, past.shear);
    checks_add(s, checks, past.plate);
}

void shore_beams_check(struct sizing *s, const struct shore_design *sd, struct member_checks *checks)
{
    for (size_t i = 0; i < sd->shore->holds.count; i++)
        if (sd->shore->holds.item[i].kind == KIND_BEAM)
            check_one(s, sd, sd->shore->holds.item[i].index, checks);
}
