/* Live load on any set of spans: every pattern is solved; see beam.h. */
#include "spans.h"

#include <math.h>
#include <string.h>

/* The loads cut at the supports, each with its section. */
struct cut_loads {
    struct beam_load *load;
    size_t *section, count;
};

static double section_end(const struct beam_spans *spans, size_t section)
{
    return section < spans->supports ? spans->support[section].at_in : INFINITY;
}

static struct loads between(const struct beam_load *load, double x)
{
    struct loads out = load->amount;
    double share = (x - load->from_in) / (load->to_in - load->from_in);
    for (int source = 0; load->tapers && source < LOAD_SOURCES; source++)
        out.of[source] += (load->amount_to.of[source] - load->amount.of[source]) * share;
    return out;
}

static void cut_add(struct cut_loads *cut, struct beam_load load, size_t section)
{
    cut->section[cut->count] = section;
    cut->load[cut->count++] = load;
}

static void cut_load(const struct beam_spans *spans, const struct beam_load *load, struct cut_loads *cut)
{
    double from = load->from_in;
    for (size_t section = 0; section <= spans->supports; section++) {
        double end = section_end(spans, section);
        if (load->point && from <= end) {
            cut_add(cut, *load, section);
            return;
        }
        double to = fmin(load->to_in, end);
        if (load->point || !(to > from))
            continue;
        struct beam_load part = {.from_in = from, .to_in = to, .tapers = load->tapers};
        part.amount = between(load, from);
        part.amount_to = between(load, to);
        cut_add(cut, part, section);
        from = to;
    }
}

static struct cut_loads cut_all(struct arena *arena, const struct beam_spans *spans)
{
    struct cut_loads cut = {0};
    size_t most = spans->count * (spans->supports + 1);
    cut.load = arena_array(arena, most, sizeof *cut.load);
    cut.section = arena_array(arena, most, sizeof *cut.section);
    for (size_t i = 0; i < spans->count; i++)
        cut_load(spans, &spans->load[i], &cut);
    return cut;
}

static void lift(struct loads *amount, const bool patterned[LOAD_SOURCES])
{
    for (int source = 0; source < LOAD_SOURCES; source++)
        if (patterned[source])
            amount->of[source] = 0;
}

/* The loads of one pattern: bit i of it is section i. */
static void put_pattern(const struct cut_loads *cut, unsigned pattern, const bool patterned[LOAD_SOURCES],
                        struct beam_load *out)
{
    for (size_t i = 0; i < cut->count; i++) {
        out[i] = cut->load[i];
        if (pattern >> cut->section[i] & 1U)
            continue;
        lift(&out[i].amount, patterned);
        lift(&out[i].amount_to, patterned);
    }
}

static void widen(struct beam_extremes *worst, const struct beam_extremes *next)
{
    if (fabs(next->shear.value) > fabs(worst->shear.value))
        worst->shear = next->shear;
    if (next->sagging.value > worst->sagging.value)
        worst->sagging = next->sagging;
    if (next->hogging.value < worst->hogging.value)
        worst->hogging = next->hogging;
    if (next->down.value > worst->down.value)
        worst->down = next->down;
    if (next->up.value < worst->up.value)
        worst->up = next->up;
}

static void widen_all(const struct beam_spans *solved, struct beam_envelope *out)
{
    double from = 0;
    for (size_t section = 0; section <= solved->supports; section++) {
        double to = fmin(section_end(solved, section), solved->length_in);
        struct beam_extremes next = spans_extremes(solved, from, to);
        widen(&out->section[section], &next);
        from = to;
    }
    for (size_t i = 0; i < solved->supports; i++) {
        out->reaction[i].least = fmin(out->reaction[i].least, solved->support[i].reaction);
        out->reaction[i].most = fmax(out->reaction[i].most, solved->support[i].reaction);
    }
}

bool spans_envelope(struct arena *arena, const struct beam_spans *spans, const bool patterned[LOAD_SOURCES],
                    struct beam_envelope *out)
{
    struct beam_spans copy = *spans;
    size_t sections = spans->supports + 1;
    copy.support = arena_array(arena, sections, sizeof *copy.support);
    if (spans->supports > 0)
        memcpy(copy.support, spans->support, spans->supports * sizeof *copy.support);
    if (sections > SPANS_PATTERN_MOST || !spans_solve(&copy))
        return false;
    out->section = arena_array(arena, sections, sizeof *out->section);
    out->reaction = arena_array(arena, sections, sizeof *out->reaction);
    for (size_t i = 0; i < spans->supports; i++)
        out->reaction[i].least = out->reaction[i].most = copy.support[i].reaction;
    struct cut_loads cut = cut_all(arena, spans);
    struct beam_load *load = arena_array(arena, cut.count, sizeof *load);
    copy.load = load;
    copy.count = cut.count;
    for (unsigned pattern = 0; pattern < 1U << sections; pattern++) {
        put_pattern(&cut, pattern, patterned, load);
        if (!spans_solve(&copy))
            return false;
        widen_all(&copy, out);
    }
    return true;
}
