/* The pattern of a whole beam: every row of every face at one even spacing, or each with the fewest marks. */
#include "sawbill/layout.h"

static struct layout_row row_of(const struct layout_pattern *pattern, int face)
{
    return (struct layout_row){.length = pattern->length,
                               .reserve = {pattern->reserve[0], pattern->reserve[1]},
                               .most = pattern->most,
                               .least = pattern->least,
                               .zones = &pattern->zone[face]};
}

static bool staggered(const struct layout_pattern *pattern, int row)
{
    return pattern->stagger > 0 && row % 2 == 1;
}

/* Where rows may start at one spacing: steps from the first place of all, the same on both faces. */
struct chances {
    length_t first, spacing;
    int count;
    bool *good[2]; /* [face] */
};

static struct chances chances_at(struct arena *arena, const struct layout_pattern *pattern, length_t spacing)
{
    struct chances chances = {.spacing = spacing,
                              .first = (pattern->reserve[0] + LAYOUT_STEP - 1) / LAYOUT_STEP * LAYOUT_STEP,
                              .count = (int)(spacing / LAYOUT_STEP)};
    for (int face = 0; face < pattern->faces; face++) {
        struct layout_row row = row_of(pattern, face);
        chances.good[face] = arena_array(arena, (size_t)chances.count, sizeof *chances.good[face]);
        for (int i = 0; i < chances.count; i++)
            chances.good[face][i] = layout_even_good(&row, spacing, chances.first + i * LAYOUT_STEP);
    }
    return chances;
}

static length_t round_distance(length_t a, length_t b, length_t spacing)
{
    length_t apart = (a > b ? a - b : b - a) % spacing;
    return apart < spacing - apart ? apart : spacing - apart;
}

/* The good start of a face nearest to `wish` that keeps `least` from `from`; -1: there is none. */
static length_t nearest_start(const struct chances *chances, int face, length_t wish, length_t from, length_t least)
{
    length_t best = -1;
    for (int i = 0; i < chances->count && chances->good[face]; i++) {
        length_t start = chances->first + i * LAYOUT_STEP;
        if (!chances->good[face][i] || round_distance(start, from, chances->spacing) < least)
            continue;
        if (best < 0 || round_distance(start, wish, chances->spacing) < round_distance(best, wish, chances->spacing))
            best = start;
    }
    return best;
}

/* Starts of the plain rows, or of the staggered ones, on each face: that of face A as near as can be to `wish`, or as
 * early as can be (wish -1), among those that leave face B one. */
static bool pair_start(const struct layout_pattern *pattern, const struct chances *chances, length_t wish,
                       length_t start[2])
{
    start[0] = -1;
    for (int i = 0; i < chances->count && chances->good[0]; i++) {
        length_t a = chances->first + i * LAYOUT_STEP, b = 0;
        if (!chances->good[0][i] ||
            (start[0] >= 0 && (wish < 0 || round_distance(a, wish, chances->spacing) >=
                                               round_distance(start[0], wish, chances->spacing))))
            continue;
        if (pattern->faces > 1)
            b = nearest_start(chances, 1, a + chances->spacing / 2, a, pattern->meet ? pattern->least : 0);
        if (b < 0)
            continue;
        start[0] = a;
        start[1] = b;
    }
    return start[0] >= 0;
}

/* Starts of the rows at one spacing: of the plain and of the staggered ones. */
struct starts {
    length_t of[2][2]; /* [0 plain, 1 staggered][face] */
};

static bool starts_at(struct arena *arena, const struct layout_pattern *pattern, length_t spacing, struct starts *out)
{
    struct chances chances = chances_at(arena, pattern, spacing);
    if (!pair_start(pattern, &chances, -1, out->of[0]))
        return false;
    if (pattern->rows < 2 || !staggered(pattern, 1))
        return true;
    return pair_start(pattern, &chances, out->of[0][0] + pattern->stagger * spacing / pattern->most, out->of[1]);
}

static bool find_even(struct arena *arena, const struct layout_pattern *pattern, struct layout *out)
{
    struct starts starts = {{{0}}};
    for (length_t spacing = pattern->most / LENGTH_INCH * LENGTH_INCH; spacing > 0 && spacing >= pattern->least;
         spacing -= LENGTH_INCH) {
        if (!starts_at(arena, pattern, spacing, &starts))
            continue;
        out->kept = LAYOUT_EVEN;
        out->spacing = spacing;
        for (int face = 0; face < pattern->faces; face++)
            for (int row = 0; row < pattern->rows; row++) {
                struct layout_row of = row_of(pattern, face);
                out->row[face][row] = layout_even_marks(arena, &of, spacing, starts.of[staggered(pattern, row)][face]);
            }
        return true;
    }
    return false;
}

static const struct layout_marks *shy_of(const struct layout_pattern *pattern, const struct layout *out, int face,
                                         int row)
{
    return staggered(pattern, row) ? &out->row[face][row - 1] : NULL;
}

/* One row of one face; false when it is only bridged. */
static bool find_row(struct arena *arena, const struct layout_pattern *pattern, struct layout *out, int face, int row)
{
    struct layout_row of = row_of(pattern, face);
    struct layout_zone gap;
    if (layout_fewest(arena, &of, shy_of(pattern, out, face, row), pattern->stagger, &out->row[face][row]))
        return true;
    out->row[face][row] = layout_bridged(arena, &of, &gap);
    if (out->kept != LAYOUT_BROKEN) {
        out->gap = gap;
        out->gap_face = face;
    }
    return false;
}

/* One row of both faces, whose fasteners meet; false: there is none that keeps clear of the other. */
static bool find_pair(struct arena *arena, const struct layout_pattern *pattern, struct layout *out, int row)
{
    struct layout_pair pair = {.row = {row_of(pattern, 0), row_of(pattern, 1)},
                               .shy = {shy_of(pattern, out, 0, row), shy_of(pattern, out, 1, row)},
                               .shy_by = pattern->stagger};
    struct layout_marks found[2], known[2] = {out->row[0][0], out->row[1][0]};
    if (out->kept == LAYOUT_BROKEN) /* the row before had no pair, and every row has the same zones */
        return false;
    if (row > 0) /* the fewest marks are as many in every row; which ones hangs on the row before */
        pair.known = known;
    if (!layout_fewest_pair(arena, &pair, found))
        return false;
    for (int face = 0; face < 2; face++)
        out->row[face][row] = found[face];
    return true;
}

static void find_fewest(struct arena *arena, const struct layout_pattern *pattern, struct layout *out, int row)
{
    bool meet = pattern->meet && pattern->faces > 1;
    if (meet && find_pair(arena, pattern, out, row))
        return;
    bool found = true;
    for (int face = 0; face < pattern->faces; face++)
        found &= find_row(arena, pattern, out, face, row);
    if (meet || !found)
        out->kept = LAYOUT_BROKEN;
}

struct layout layout_find(struct arena *arena, const struct layout_pattern *pattern)
{
    struct layout out = {.kept = LAYOUT_FEWEST, .rows = pattern->rows, .faces = pattern->faces};
    if (find_even(arena, pattern, &out))
        return out;
    for (int row = 0; row < pattern->rows; row++)
        find_fewest(arena, pattern, &out, row);
    return out;
}

size_t layout_count(const struct layout *layout, int face)
{
    size_t count = 0;
    for (int row = 0; row < layout->rows; row++)
        count += layout->row[face][row].count;
    return count;
}
