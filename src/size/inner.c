/* A beam with supports between its ends, or wood past them: where they are and what they carry.  Dead load stands on
 * every span, each other source on any set of them.  Plies that are cut over a support carry no moment over it: each
 * piece from splice to splice is a beam of its own. */
#include "size.h"

#include <math.h>

#include "sawbill/text.h"
#include "spans.h"

/* A part of the beam that is one piece, from one support to another: 0 is end 1, inner_count + 1 end 2. */
struct part {
    size_t first, last;
};

static const bool patterned[LOAD_SOURCES] = {
    [LOAD_LIVE] = true, [LOAD_ROOF_LIVE] = true, [LOAD_SNOW] = true, [LOAD_ATTIC] = true};

bool beam_runs_on(const struct beam_design *bd)
{
    return bd->inner_count > 0 || bd->past_in[0] > 0 || bd->past_in[1] > 0;
}

double beam_zero_in(const struct beam_design *bd)
{
    return length_inches(bd->beam->overhang[0].length) + length_inches(bd->bearing[0]) / 2;
}

double inner_place_in(const struct beam_design *bd, size_t support)
{
    if (support == 0)
        return 0;
    if (support > bd->inner_count)
        return bd->design_span_in;
    return length_inches(bd->inner[support - 1].inner->on.at_length) - beam_zero_in(bd);
}

double inner_span_in(const struct beam_design *bd, size_t span)
{
    return inner_place_in(bd, span + 1) - inner_place_in(bd, span);
}

const char *inner_name(struct sizing *s, const struct beam_design *bd, size_t which)
{
    return arena_printf(s->arena, "%s, inner support %zu", head_name(s->arena, KIND_BEAM, &bd->beam->head), which + 1);
}

static bool is_spliced(const struct beam *beam, const struct beam_inner *inner)
{
    for (size_t i = 0; i < beam->splices.count; i++)
        if (beam->splices.item[i] == inner->on.at_length)
            return true;
    return false;
}

size_t beam_pieces(const struct beam_design *design)
{
    return design->piece_count > 0 ? design->piece_count : 1;
}

length_t beam_piece(const struct beam_design *design, size_t index)
{
    return design->piece_count > 0 ? design->piece[index] : design->cut_length;
}

static void write_pieces(struct sizing *s, struct beam_design *bd)
{
    length_t from = 0;
    bd->piece = arena_array(s->arena, bd->inner_count + 1, sizeof *bd->piece);
    bd->piece_count = 0;
    for (size_t i = 0; i < bd->inner_count; i++) {
        length_t at = bd->inner[i].inner->on.at_length;
        if (!bd->inner[i].spliced)
            continue;
        bd->piece[bd->piece_count++] = at - from;
        from = at;
    }
    if (bd->piece_count > 0)
        bd->piece[bd->piece_count++] = bd->cut_length - from;
}

void inner_lay_out(struct sizing *s, struct beam_design *bd)
{
    const struct beam_inners *inners = &bd->beam->inner;
    bd->inner_count = inners->count < BEAM_INNER_MOST ? inners->count : BEAM_INNER_MOST; /* more: a stop of the job */
    bd->inner = arena_array(s->arena, bd->inner_count, sizeof *bd->inner);
    for (size_t i = 0; i < bd->inner_count; i++) {
        bd->inner[i] =
            (struct inner_design){.inner = &inners->item[i], .spliced = is_spliced(bd->beam, &inners->item[i])};
        const struct support support = support_between(s, &inners->item[i]);
        bd->inner[i].bearing = support.along;
        bd->inner[i].post = support.post;
    }
    write_pieces(s, bd);
}

/* The clear inches of a span: the bearings at its ends off. */
static double clear_in(const struct beam_design *bd, size_t span)
{
    length_t left = span == 0 ? bd->bearing[0] : bd->inner[span - 1].bearing;
    length_t right = span == bd->inner_count ? bd->bearing[1] : bd->inner[span].bearing;
    return inner_span_in(bd, span) - (length_inches(left) + length_inches(right)) / 2;
}

double inner_widest_clear_ft(const struct beam_design *bd)
{
    double widest = 0;
    for (size_t span = 0; span <= bd->inner_count; span++)
        widest = fmax(widest, clear_in(bd, span) / 12);
    return widest;
}

bool inner_places_good(struct sizing *s, const struct beam_design *bd)
{
    bool good = true;
    for (size_t span = 0; bd->inner_count > 0 && span <= bd->inner_count; span++) {
        const struct beam_inner *inner = bd->inner[span < bd->inner_count ? span : span - 1].inner;
        if (clear_in(bd, span) > 0)
            continue;
        good = false;
        diag_add(s->diags, DIAG_S009, place_of(inner->on.at, &bd->beam->head),
                 "'inner' at %s of %s, which is %s long, leaves no clear span %s",
                 length_tape(s->arena, inner->on.at_length), head_name(s->arena, KIND_BEAM, &bd->beam->head),
                 length_tape(s->arena, bd->cut_length), span < bd->inner_count ? "before it" : "beyond it");
    }
    return good;
}

static struct part part_from(const struct beam_design *bd, size_t first)
{
    struct part part = {first, first + 1};
    while (part.last <= bd->inner_count && !bd->inner[part.last - 1].spliced)
        part.last++;
    return part;
}

/* Wood of a part past its first (0) or last support: only where the beam ends there. */
static double past_of(const struct beam_design *bd, struct part part, int end)
{
    if (end == 0)
        return part.first == 0 ? bd->past_in[0] : 0;
    return part.last > bd->inner_count ? bd->past_in[1] : 0;
}

/* In the design span, where a part begins; and how long it is. */
static double part_zero(const struct beam_design *bd, struct part part)
{
    return inner_place_in(bd, part.first) - past_of(bd, part, 0);
}

static double part_length(const struct beam_design *bd, struct part part)
{
    return inner_place_in(bd, part.last) + past_of(bd, part, 1) - part_zero(bd, part);
}

/* The loads of a part, measured from where it begins.  What stands just over a splice goes to its left; it brings no
 * moment to either. */
static size_t part_loads(const struct beam_design *bd, struct part part, const struct beam_case *at,
                         struct beam_load *out)
{
    double zero = part_zero(bd, part), low = part.first == 0 ? -INFINITY : inner_place_in(bd, part.first);
    double high = part.last > bd->inner_count ? INFINITY : inner_place_in(bd, part.last),
           length = part_length(bd, part);
    size_t count = 0;
    for (size_t i = 0; i < at->count; i++) {
        struct beam_load load = at->load[i];
        double from = fmax(load.from_in, low), to = fmin(load.to_in, high);
        bool here = load.point ? load.from_in > low && load.from_in <= high : to > from;
        if (!here)
            continue;
        if (!load.point)
            load = spans_cut(&load, from, to);
        load.from_in -= zero;
        load.to_in -= zero;
        if (past_of(bd, part, 0) > 0) /* the last of a fraction past the end of the wood */
            load.from_in = fmax(load.from_in, 0);
        if (past_of(bd, part, 1) > 0)
            load.to_in = fmin(load.to_in, length);
        if (load.point)
            load.from_in = load.to_in = past_of(bd, part, 1) > 0 ? fmin(load.from_in, length) : load.from_in;
        out[count++] = load;
    }
    return count;
}

/* A part without what it solves: supports and loads. */
static struct beam_spans part_spans(struct sizing *s, const struct beam_design *bd, struct part part,
                                    const struct beam_case *at, const double factor[LOAD_SOURCES])
{
    struct beam_load *load = arena_array(s->arena, at->count, sizeof *load);
    struct beam_spans out = {.supports = part.last - part.first + 1, .load = load, .factor = factor};
    out.count = part_loads(bd, part, at, load);
    out.support = arena_array(s->arena, out.supports, sizeof *out.support);
    for (size_t i = 0; i < out.supports; i++)
        out.support[i].at_in = inner_place_in(bd, part.first + i) - part_zero(bd, part);
    out.length_in = past_of(bd, part, 1) > 0 ? part_length(bd, part) : out.support[out.supports - 1].at_in;
    return out;
}

/* Of what is no beam, which the places rule out before: nothing holds it. */
static const struct beam_extremes unsolved = {
    .shear.value = INFINITY, .sagging.value = INFINITY, .hogging.value = -INFINITY, .down.value = INFINITY};

/* Shear and moment of the wood past a support, beside those of the span there. */
static void put_past(struct beam_extremes *span, const struct beam_extremes *past)
{
    if (fabs(past->shear.value) > fabs(span->shear.value))
        span->shear = past->shear;
    if (past->sagging.value > span->sagging.value)
        span->sagging = past->sagging;
    if (past->hogging.value < span->hogging.value)
        span->hogging = past->hogging;
}

void inner_extremes(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                    const double factor[LOAD_SOURCES], struct beam_extremes *out)
{
    for (struct part part = part_from(bd, 0);; part = part_from(bd, part.last)) {
        struct beam_spans spans = part_spans(s, bd, part, at, factor);
        struct beam_envelope envelope;
        double zero = part_zero(bd, part);
        bool solved = spans_envelope(s->arena, &spans, patterned, &envelope);
        if (solved && past_of(bd, part, 0) > 0)
            put_past(&envelope.section[1], &envelope.section[0]);
        if (solved && past_of(bd, part, 1) > 0)
            put_past(&envelope.section[spans.supports - 1], &envelope.section[spans.supports]);
        for (size_t span = part.first; span < part.last; span++) {
            out[span] = solved ? envelope.section[span - part.first + 1] : unsolved;
            out[span].shear.at_in += zero;
            out[span].sagging.at_in += zero;
            out[span].hogging.at_in += zero;
            out[span].down.at_in += zero;
            out[span].up.at_in += zero;
        }
        if (part.last > bd->inner_count)
            return;
    }
}

void inner_at(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
              const double factor[LOAD_SOURCES], const double *place, size_t places, struct beam_at *worst)
{
    double *from_first = arena_array(s->arena, places, sizeof *from_first);
    for (size_t i = 0; i < places; i++)
        worst[i] = (struct beam_at){INFINITY, INFINITY, INFINITY};
    struct beam_at *here = arena_array(s->arena, places, sizeof *here);
    for (struct part part = part_from(bd, 0);; part = part_from(bd, part.last)) {
        struct beam_spans spans = part_spans(s, bd, part, at, factor);
        double zero = part_zero(bd, part);
        for (size_t i = 0; i < places; i++)
            from_first[i] = place[i] - zero;
        bool solved = spans_envelope_at(s->arena, &spans, patterned, from_first, places, here);
        for (size_t i = 0; solved && i < places; i++)
            if (place[i] >= zero && place[i] <= zero + spans.length_in)
                worst[i] = here[i];
        if (part.last > bd->inner_count)
            return;
    }
}

struct beam_extreme inner_tip(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                              const double factor[LOAD_SOURCES], int end)
{
    struct part part = part_from(bd, 0);
    while (end == 1 && part.last <= bd->inner_count)
        part = part_from(bd, part.last);
    struct beam_spans spans = part_spans(s, bd, part, at, factor);
    struct beam_envelope envelope;
    if (!spans_envelope(s->arena, &spans, patterned, &envelope))
        return unsolved.down;
    const struct beam_extremes *past = &envelope.section[end ? spans.supports : 0];
    struct beam_extreme most = -past->up.value > past->down.value ? past->up : past->down;
    most.at_in += part_zero(bd, part);
    return most;
}

/* One source's reaction of a support; supports count from 0 at end 1. */
struct reaction {
    double most, least, full;
};

static void put_reaction(struct beam_design *bd, size_t support, int source, const struct reaction *reaction, int side)
{
    bool inner = support > 0 && support <= bd->inner_count;
    int end = support == 0 ? 0 : 1;
    struct loads *most = inner ? &bd->inner[support - 1].lb : &bd->end_lb[end];
    struct loads *least = inner ? &bd->inner[support - 1].least_lb : &bd->end_least_lb[end];
    struct loads *full = inner ? &bd->inner[support - 1].full_lb : &bd->end_full_lb[end];
    most->of[source] += reaction->most;
    least->of[source] += reaction->least;
    full->of[source] += reaction->full;
    if (inner && bd->inner[support - 1].spliced)
        bd->inner[support - 1].piece_lb[side].of[source] = reaction->most;
}

static void react_part(struct sizing *s, struct beam_design *bd, struct part part, const struct beam_case *at,
                       int source)
{
    double factor[LOAD_SOURCES] = {0};
    factor[source] = 1;
    struct beam_spans spans = part_spans(s, bd, part, at, factor);
    struct beam_envelope envelope;
    if (!spans_envelope(s->arena, &spans, patterned, &envelope) || !spans_solve(&spans))
        return;
    for (size_t i = 0; i < spans.supports; i++) {
        struct reaction reaction = {envelope.reaction[i].most, envelope.reaction[i].least, spans.support[i].reaction};
        /* the piece that ends at a support lies left of it */
        put_reaction(bd, part.first + i, source, &reaction, i == 0 ? 1 : 0);
    }
}

static void clear_reactions(struct beam_design *bd)
{
    for (int end = 0; end < 2; end++)
        bd->end_lb[end] = bd->end_least_lb[end] = bd->end_full_lb[end] = (struct loads){0};
    for (size_t i = 0; i < bd->inner_count; i++) {
        struct inner_design *inner = &bd->inner[i];
        inner->lb = inner->least_lb = inner->full_lb = inner->piece_lb[0] = inner->piece_lb[1] = (struct loads){0};
    }
}

/* What stands just over a splice may come down on the right piece as well. */
static void put_over_splices(struct beam_design *bd, const struct beam_case *at)
{
    for (size_t i = 0; i < bd->inner_count; i++)
        for (size_t k = 0; bd->inner[i].spliced && k < at->count; k++)
            if (at->load[k].point && at->load[k].from_in == inner_place_in(bd, i + 1))
                bd->inner[i].piece_lb[1] = loads_plus(bd->inner[i].piece_lb[1], at->load[k].amount);
}

void inner_react(struct sizing *s, struct beam_design *bd, const struct beam_case *at)
{
    clear_reactions(bd);
    for (int source = 0; source < LOAD_SOURCES; source++) {
        size_t first = 0;
        while (first <= bd->inner_count) {
            struct part part = part_from(bd, first);
            react_part(s, bd, part, at, source);
            first = part.last;
        }
    }
    put_over_splices(bd, at);
}
