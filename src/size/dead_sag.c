/* How far a new beam sinks while the shores are let down: what the crew measures against. */
#include "size.h"

#include <math.h>
#include <string.h>

/* All dead load that comes onto the beam.  Its own weight has bent it before. */
static struct beam_case without_own(struct sizing *s, size_t beam)
{
    struct beam_case out = beam_case_of(s, beam);
    const struct stack *stack = &s->stack[beam];
    const char *name = head_name(s->arena, KIND_BEAM, &s->job->beams[beam].head);
    const char *own = arena_printf(s->arena, "own weight of %s", name);
    size_t kept = 0;
    for (size_t i = 0; i < stack->count; i++)
        if (strcmp(stack->item[i].from, own) != 0)
            out.load[kept++] = out.load[i];
    out.count = kept;
    return out;
}

static struct beam_extreme most_of(struct sizing *s, const struct beam_design *bd, const struct beam_case *at)
{
    const double factor[LOAD_SOURCES] = {[LOAD_DEAD] = 1};
    if (!beam_runs_on(bd))
        return beam_solve(at->span_in, at->load, at->count, factor).sag;
    struct beam_extremes *span = arena_array(s->arena, bd->inner_count + 1, sizeof *span);
    inner_extremes(s, bd, at, factor, span);
    struct beam_extreme most = span[0].down;
    for (size_t i = 1; i <= bd->inner_count; i++)
        most = span[i].down.value > most.value ? span[i].down : most;
    return most;
}

void dead_sag_find(struct sizing *s)
{
    for (size_t i = 0; i < s->job->beam_count; i++) {
        struct beam_design *bd = &s->design->beams[i];
        bd->dead_sag_in = bd->dead_sag_at_in = NAN;
        if (!bd->member || !bd->values || bd->design_span_in <= 0)
            continue;
        struct beam_case at = without_own(s, i);
        struct wood_piece wood = beam_wood(bd);
        struct beam_extreme most = most_of(s, bd, &at);
        double sag = most.value / (bd->values->e * wood_inertia(&wood));
        if (!isfinite(sag))
            continue;
        bd->dead_sag_in = sag;
        bd->dead_sag_at_in = most.at_in + at.offset_in;
    }
}
