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
        cut_add(cut, spans_cut(load, from, to), section);
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

/* What lies beyond an end that stands on a support only rests there: it comes and goes with the span beside it, which
 * leaves every extreme as it is. */
static void join_ends(const struct beam_spans *spans, struct cut_loads *cut, unsigned *count)
{
    size_t first = spans->support[0].at_in == 0 ? 1 : 0, last = spans->supports;
    if (spans->support[spans->supports - 1].at_in == spans->length_in)
        last--;
    for (size_t i = 0; i < cut->count; i++) {
        size_t section = cut->section[i] < first ? first : cut->section[i];
        cut->section[i] = (section > last ? last : section) - first;
    }
    *count = 1U << (last - first + 1);
}

struct patterns {
    struct beam_spans spans; /* solved with one pattern after the other */
    struct cut_loads cut;
    struct beam_load *load;
    const bool *patterned;
    unsigned count;
};

/* All loads are solved first, in `spans`.  False: they cannot be. */
static bool patterns_start(struct arena *arena, const struct beam_spans *spans, const bool patterned[LOAD_SOURCES],
                           struct patterns *out)
{
    size_t sections = spans->supports + 1;
    *out = (struct patterns){.spans = *spans, .patterned = patterned};
    out->spans.support = arena_array(arena, sections, sizeof *out->spans.support);
    if (spans->supports > 0)
        memcpy(out->spans.support, spans->support, spans->supports * sizeof *out->spans.support);
    if (spans->supports < 2 || sections > SPANS_PATTERN_MOST || !spans_solve(&out->spans))
        return false;
    out->cut = cut_all(arena, spans);
    out->load = arena_array(arena, out->cut.count, sizeof *out->load);
    join_ends(spans, &out->cut, &out->count);
    return true;
}

static bool patterns_solve(struct patterns *patterns, unsigned pattern)
{
    put_pattern(&patterns->cut, pattern, patterns->patterned, patterns->load);
    patterns->spans.load = patterns->load;
    patterns->spans.count = patterns->cut.count;
    return spans_solve(&patterns->spans);
}

bool spans_envelope(struct arena *arena, const struct beam_spans *spans, const bool patterned[LOAD_SOURCES],
                    struct beam_envelope *out)
{
    struct patterns patterns;
    if (!patterns_start(arena, spans, patterned, &patterns))
        return false;
    size_t sections = spans->supports + 1;
    out->section = arena_array(arena, sections, sizeof *out->section);
    out->reaction = arena_array(arena, sections, sizeof *out->reaction);
    for (size_t i = 0; i < spans->supports; i++)
        out->reaction[i].least = out->reaction[i].most = patterns.spans.support[i].reaction;
    for (unsigned pattern = 0; pattern < patterns.count; pattern++) {
        if (!patterns_solve(&patterns, pattern))
            return false;
        widen_all(&patterns.spans, out);
    }
    return true;
}

bool spans_envelope_at(struct arena *arena, const struct beam_spans *spans, const bool patterned[LOAD_SOURCES],
                       const double *place, size_t places, struct beam_at *worst)
{
    struct patterns patterns;
    if (!patterns_start(arena, spans, patterned, &patterns))
        return false;
    for (size_t i = 0; i < places; i++)
        worst[i] = (struct beam_at){0};
    for (unsigned pattern = 0; pattern < patterns.count; pattern++) {
        if (!patterns_solve(&patterns, pattern))
            return false;
        for (size_t i = 0; i < places; i++) {
            struct beam_at at = spans_at(&patterns.spans, place[i]);
            worst[i].shear = fmax(worst[i].shear, fabs(at.shear));
            worst[i].moment = fmax(worst[i].moment, fabs(at.moment));
            worst[i].sag = fmax(worst[i].sag, fabs(at.sag));
        }
    }
    return true;
}
