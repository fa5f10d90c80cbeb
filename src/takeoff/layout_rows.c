/* One row of fasteners: good at an even spacing, or with the fewest marks. */
#include "sawbill/layout.h"

#include <stdint.h>

static length_t greater(length_t a, length_t b)
{
    return a > b ? a : b;
}

static length_t up_to_step(length_t value)
{
    return (value + LAYOUT_STEP - 1) / LAYOUT_STEP * LAYOUT_STEP;
}

bool layout_clear(const struct layout_zones *zones, length_t at)
{
    for (size_t i = 0; zones && i < zones->count; i++)
        if (at > zones->item[i].from && at < zones->item[i].to)
            return false;
    return true;
}

static length_t latest_first(const struct layout_row *row)
{
    return greater(row->reserve[0], row->most);
}

static length_t earliest_last(const struct layout_row *row)
{
    return row->length - greater(row->reserve[1], row->most);
}

bool layout_good(const struct layout_row *row, const struct layout_marks *marks)
{
    if (marks->count == 0)
        return false;
    length_t first = marks->at[0], last = marks->at[marks->count - 1];
    if (first < row->reserve[0] || first > up_to_step(latest_first(row)) || last > row->length - row->reserve[1] ||
        last < earliest_last(row) / LAYOUT_STEP * LAYOUT_STEP)
        return false;
    for (size_t i = 0; i < marks->count; i++)
        if (!layout_clear(row->zones, marks->at[i]) ||
            (i > 0 && (marks->at[i] <= marks->at[i - 1] || marks->at[i] - marks->at[i - 1] > row->most)))
            return false;
    return true;
}

static size_t even_count(const struct layout_row *row, length_t spacing, length_t start)
{
    length_t stretch = row->length - row->reserve[1] - start;
    return stretch < 0 ? 0 : (size_t)(stretch / spacing) + 1;
}

bool layout_even_good(const struct layout_row *row, length_t spacing, length_t start)
{
    size_t count = even_count(row, spacing, start);
    if (count == 0 || spacing > row->most || start < row->reserve[0] || start > up_to_step(latest_first(row)))
        return false;
    length_t last = start + (length_t)(count - 1) * spacing;
    if (last < earliest_last(row) / LAYOUT_STEP * LAYOUT_STEP)
        return false;
    for (length_t at = start; at <= last; at += spacing)
        if (!layout_clear(row->zones, at))
            return false;
    return true;
}

struct layout_marks layout_even_marks(struct arena *arena, const struct layout_row *row, length_t spacing,
                                      length_t start)
{
    struct layout_marks marks = {.count = even_count(row, spacing, start)};
    marks.at = arena_array(arena, marks.count, sizeof *marks.at);
    for (size_t i = 0; i < marks.count; i++)
        marks.at[i] = start + (length_t)i * spacing;
    return marks;
}

/* The places of a row in whole steps, and the best way to end on each: dynamic programming along the row. */
struct way {
    int64_t marks, cost; /* marks 0: it cannot be reached */
    int from;            /* -1: the first mark */
};
struct places {
    int first, last, count; /* steps; places first..last */
    bool *clear;            /* [place - first] */
    int64_t *shy;           /* what a place costs by its nearness to other marks, or NULL */
    struct way *way;
    int least, most; /* steps between neighbors */
};

static void pay_for_nearness(const struct places *places, const struct layout_marks *shy, length_t shy_by)
{
    for (int i = 0; i < places->count; i++) {
        length_t at = (length_t)(places->first + i) * LAYOUT_STEP, nearest = shy_by;
        for (size_t k = 0; k < shy->count; k++) {
            length_t apart = at > shy->at[k] ? at - shy->at[k] : shy->at[k] - at;
            nearest = apart < nearest ? apart : nearest;
        }
        int64_t steps = (shy_by - nearest) / LAYOUT_STEP;
        places->shy[i] = steps * steps;
    }
}

static struct places places_of(struct arena *arena, const struct layout_row *row)
{
    struct places places = {.first = (int)(up_to_step(row->reserve[0]) / LAYOUT_STEP),
                            .last = (int)((row->length - row->reserve[1]) / LAYOUT_STEP),
                            .least = (int)(up_to_step(row->least) / LAYOUT_STEP),
                            .most = (int)(row->most / LAYOUT_STEP)};
    places.count = places.last >= places.first ? places.last - places.first + 1 : 0;
    places.clear = arena_array(arena, (size_t)places.count, sizeof *places.clear);
    places.way = arena_array(arena, (size_t)places.count, sizeof *places.way);
    for (int i = 0; i < places.count; i++)
        places.clear[i] = layout_clear(row->zones, (length_t)(places.first + i) * LAYOUT_STEP);
    return places;
}

static void try_way(const struct places *places, int at, int from)
{
    struct way way = {.marks = 1, .cost = places->shy ? places->shy[at] : 0, .from = from};
    if (from >= 0) {
        const struct way *before = &places->way[from];
        int64_t gap = at - from;
        way.marks += before->marks;
        way.cost += before->cost + gap * gap;
    }
    struct way *best = &places->way[at];
    if (best->marks == 0 || way.marks < best->marks || (way.marks == best->marks && way.cost < best->cost))
        *best = way;
}

static struct layout_marks walk_back(struct arena *arena, const struct places *places, int last)
{
    struct layout_marks marks = {.count = (size_t)places->way[last].marks};
    marks.at = arena_array(arena, marks.count, sizeof *marks.at);
    size_t i = marks.count;
    for (int at = last; at >= 0; at = places->way[at].from)
        marks.at[--i] = (length_t)(places->first + at) * LAYOUT_STEP;
    return marks;
}

/* The best of the places that may be the last. */
static int best_last(const struct places *places, int earliest)
{
    int best = -1;
    for (int i = earliest > 0 ? earliest : 0; i < places->count; i++) {
        const struct way *way = &places->way[i];
        if (way->marks > 0 && (best < 0 || way->marks < places->way[best].marks ||
                               (way->marks == places->way[best].marks && way->cost < places->way[best].cost)))
            best = i;
    }
    return best;
}

bool layout_fewest(struct arena *arena, const struct layout_row *row, const struct layout_marks *shy, length_t shy_by,
                   struct layout_marks *out)
{
    struct places places = places_of(arena, row);
    if (shy && shy_by > 0) {
        places.shy = arena_array(arena, (size_t)places.count, sizeof *places.shy);
        pay_for_nearness(&places, shy, shy_by);
    }
    for (int at = 0; at < places.count; at++) {
        if (!places.clear[at])
            continue;
        if ((length_t)(places.first + at) * LAYOUT_STEP <= up_to_step(latest_first(row)))
            try_way(&places, at, -1);
        for (int gap = places.least > 0 ? places.least : 1; gap <= places.most && gap <= at; gap++)
            if (places.way[at - gap].marks > 0)
                try_way(&places, at, at - gap);
    }
    int last = best_last(&places, (int)(earliest_last(row) / LAYOUT_STEP) - places.first);
    if (last < 0)
        return false;
    *out = walk_back(arena, &places, last);
    return true;
}

/* Marks as far apart as they may be; a stretch that none may span is stepped over from edge to edge. */
struct layout_marks layout_bridged(struct arena *arena, const struct layout_row *row, struct layout_zone *gap)
{
    struct places places = places_of(arena, row);
    int latest = (int)(up_to_step(latest_first(row)) / LAYOUT_STEP) - places.first, at = -1;
    *gap = (struct layout_zone){0};
    for (int reach = latest;; reach = at + (places.most > 0 ? places.most : 1)) {
        int next = reach < places.count ? reach : places.count - 1;
        while (next > at && !places.clear[next])
            next--;
        if (next <= at) { /* nothing within reach: the first place beyond */
            next = reach + 1;
            while (next < places.count && !places.clear[next])
                next++;
            if (gap->to == 0)
                *gap = (struct layout_zone){.from = at < 0 ? 0 : (length_t)(places.first + at) * LAYOUT_STEP,
                                            .to = next < places.count ? (length_t)(places.first + next) * LAYOUT_STEP
                                                                      : row->length};
        }
        if (next >= places.count)
            break;
        places.way[next] = (struct way){.marks = at < 0 ? 1 : places.way[at].marks + 1, .from = at};
        at = next;
        if ((length_t)(places.first + at) * LAYOUT_STEP >= earliest_last(row) / LAYOUT_STEP * LAYOUT_STEP)
            break;
    }
    if (at >= 0)
        return walk_back(arena, &places, at);
    return (struct layout_marks){.count = 0};
}
