/* Two rows whose fasteners meet in the wood, one on each face: the fewest marks of both together.
 *
 * Each face by itself gives a bound.  Nearly always one face may go first and the other keep clear of it without a mark
 * more; where neither order does, dynamic programming over both faces at once finds the fewest. */
#include "sawbill/layout.h"

#include <stdint.h>

static length_t up_to_step(length_t value)
{
    return (value + LAYOUT_STEP - 1) / LAYOUT_STEP * LAYOUT_STEP;
}

/* The zones, and room around the marks of the other face. */
static struct layout_zones apart_from(struct arena *arena, const struct layout_zones *zones,
                                      const struct layout_marks *marks, length_t least)
{
    struct layout_zones out = {.item = arena_array(arena, zones->count + marks->count, sizeof *out.item)};
    for (size_t i = 0; i < zones->count; i++)
        out.item[out.count++] = zones->item[i];
    for (size_t i = 0; i < marks->count; i++)
        out.item[out.count++] = (struct layout_zone){marks->at[i] - least, marks->at[i] + least, "the other face"};
    return out;
}

static bool fewest_apart(struct arena *arena, const struct layout_pair *pair, int face,
                         const struct layout_marks *other, struct layout_marks *out)
{
    struct layout_zones zones = apart_from(arena, pair->row[face].zones, other, pair->row[face].least);
    struct layout_row row = pair->row[face];
    row.zones = &zones;
    return layout_fewest(arena, &row, pair->shy[face], pair->shy_by, out);
}

/* A state: the last mark stands at `at` on `face`; the last of the other face `behind` steps before it, or NONE yet, or
 * so far before it that it was that face's last of all (DONE). */
enum { NONE = 0 };
struct state {
    int64_t key;              /* marks, then marks of face A, then unevenness; 0: not reached */
    int32_t at, face, behind; /* where it came from; at -1: the first mark */
};
struct both {
    struct arena *arena;
    const struct layout_pair *pair;
    int first, count, least, most; /* steps; places first .. first + count - 1 */
    int latest, earliest;          /* places: of a first mark, of a last one */
    bool *clear[2], *met[2];       /* [face][place]: no zone; some state was reached there */
    int *need[2];                  /* [face][place]: fewest marks still to come after one there */
    int whole[2];                  /* fewest marks of a face by itself */
    struct state *state;           /* [face][place][behind] */
    int done;                      /* the code DONE of `behind`: most + 1 */
    int64_t fewest_so_far;         /* only a pair of fewer marks is of use */
};

enum { MARK_BITS = 12, COST_BITS = 36 };

static int64_t key_of(int64_t marks, int64_t marks_of_a, int64_t cost)
{
    return (marks << (COST_BITS + MARK_BITS)) | (marks_of_a << COST_BITS) | cost;
}

static int64_t marks_in(int64_t key)
{
    return key >> (COST_BITS + MARK_BITS);
}

static struct state *state_at(const struct both *both, int face, int at, int behind)
{
    return &both->state[((size_t)face * (size_t)both->count + (size_t)at) * (size_t)(both->done + 1) + (size_t)behind];
}

static void fill_need(const struct both *both, int face)
{
    enum { NEVER = 1 << 20 };
    for (int at = both->count - 1; at >= 0; at--) {
        int best = at >= both->earliest ? 0 : NEVER;
        for (int gap = both->least; best > 0 && gap <= both->most && at + gap < both->count; gap++)
            if (both->clear[face][at + gap] && both->need[face][at + gap] + 1 < best)
                best = both->need[face][at + gap] + 1;
        both->need[face][at] = best;
    }
}

static struct both both_of(struct arena *arena, const struct layout_pair *pair, const struct layout_marks alone[2])
{
    const struct layout_row *row = &pair->row[0];
    struct both both = {.arena = arena,
                        .pair = pair,
                        .first = (int)(up_to_step(row->reserve[0]) / LAYOUT_STEP),
                        .least = (int)(up_to_step(row->least) / LAYOUT_STEP),
                        .most = (int)(row->most / LAYOUT_STEP)};
    both.least = both.least > 0 ? both.least : 1;
    both.count = (int)((row->length - row->reserve[1]) / LAYOUT_STEP) - both.first + 1;
    length_t first = row->reserve[0] > row->most ? row->reserve[0] : row->most;
    length_t last = row->reserve[1] > row->most ? row->reserve[1] : row->most;
    both.latest = (int)(up_to_step(first) / LAYOUT_STEP) - both.first;
    both.earliest = (int)((row->length - last) / LAYOUT_STEP) - both.first;
    both.done = both.most + 1;
    for (int face = 0; face < 2; face++) {
        both.clear[face] = arena_array(arena, (size_t)both.count, sizeof *both.clear[face]);
        both.met[face] = arena_array(arena, (size_t)both.count, sizeof *both.met[face]);
        both.need[face] = arena_array(arena, (size_t)both.count, sizeof *both.need[face]);
        both.whole[face] = (int)alone[face].count;
        for (int at = 0; at < both.count; at++)
            both.clear[face][at] = layout_clear(pair->row[face].zones, (length_t)(both.first + at) * LAYOUT_STEP);
        fill_need(&both, face);
    }
    both.state = arena_array(arena, 2 * (size_t)both.count * (size_t)(both.done + 1), sizeof *both.state);
    return both;
}

/* What the other face still needs, at least. */
static int64_t still_needed(const struct both *both, int face, int at, int behind)
{
    int64_t own = both->need[face][at];
    if (behind == NONE)
        return own + both->whole[1 - face];
    return own + (behind == both->done ? 0 : both->need[1 - face][at - behind]);
}

/* A mark more, on `face` at `at`; `gap` is its distance from the one before it on that face, 0 for the first. */
static void reach(struct both *both, const struct state *from, struct state came, int face, int at, int behind,
                  int64_t gap)
{
    if (behind < 0 || at >= both->count || !both->clear[face][at])
        return;
    int64_t key = (from ? from->key : 0) + key_of(1, face == 0, gap * gap);
    if (marks_in(key) + still_needed(both, face, at, behind) >= both->fewest_so_far)
        return;
    struct state *to = state_at(both, face, at, behind);
    if (to->key == 0 || key < to->key) {
        *to = came;
        to->key = key;
        both->met[face][at] = true;
    }
}

/* The code of a last mark at `last` seen from `at`; -1: a row may not end there. */
static int behind_of(const struct both *both, int last, int at)
{
    if (at - last <= both->most)
        return at - last;
    return last >= both->earliest ? both->done : -1;
}

static void go_on(struct both *both, int face, int at, int behind)
{
    const struct state *from = state_at(both, face, at, behind);
    if (from->key == 0)
        return;
    struct state came = {.at = at, .face = face, .behind = behind};
    int other_last = at - behind;
    for (int gap = both->least; gap <= both->most; gap++) {
        int next = at + gap, seen = behind;
        if (behind != NONE && behind != both->done)
            seen = behind_of(both, other_last, next);
        reach(both, from, came, face, next, seen, gap);
        if (behind == NONE || behind == both->done || next - other_last > both->most)
            continue;
        reach(both, from, came, 1 - face, next, behind_of(both, at, next), next - other_last);
    }
    for (int next = at + both->least; behind == NONE && next <= both->latest; next++)
        reach(both, from, came, 1 - face, next, behind_of(both, at, next), 0);
}

static bool may_end(const struct both *both, int at, int behind)
{
    return at >= both->earliest && behind != NONE && (behind == both->done || at - behind >= both->earliest);
}

static void walk_back(const struct both *both, struct state last, struct layout_marks out[2])
{
    int64_t marks = marks_in(last.key), of_a = (last.key >> COST_BITS) & ((1 << MARK_BITS) - 1);
    size_t left[2] = {(size_t)of_a, (size_t)(marks - of_a)};
    for (int face = 0; face < 2; face++) {
        out[face].count = left[face];
        out[face].at = arena_array(both->arena, left[face], sizeof *out[face].at);
    }
    for (struct state at = last; at.at >= 0; at = *state_at(both, at.face, at.at, at.behind))
        out[at.face].at[--left[at.face]] = (length_t)(both->first + at.at) * LAYOUT_STEP;
}

/* The pair with fewer marks than `fewest_so_far`, if there is one. */
static bool search_both(struct both *both, struct layout_marks out[2])
{
    struct state best = {0}, start = {.at = -1};
    for (int at = 0; at < both->count; at++)
        for (int face = 0; face < 2; face++) {
            if (at <= both->latest)
                reach(both, NULL, start, face, at, NONE, 0);
            for (int behind = 0; both->met[face][at] && behind <= both->done; behind++) {
                go_on(both, face, at, behind);
                int64_t key = state_at(both, face, at, behind)->key;
                if (key > 0 && may_end(both, at, behind) && (best.key == 0 || key < best.key))
                    best = (struct state){.key = key, .at = at, .face = face, .behind = behind};
            }
        }
    if (best.key > 0)
        walk_back(both, best, out);
    return best.key > 0;
}

/* One face after the other: `first` takes its own fewest, the other keeps clear of it. */
struct in_turn {
    struct layout_marks of[2];
    size_t marks; /* SIZE_MAX: the other finds no row */
    int first;
};

static void take_turns(struct arena *arena, const struct layout_pair *pair, const struct layout_marks *own, int first,
                       struct in_turn *best)
{
    struct in_turn now = {.first = first};
    now.of[first] = *own;
    if (!fewest_apart(arena, pair, 1 - first, own, &now.of[1 - first]))
        return;
    now.marks = now.of[0].count + now.of[1].count;
    if (now.marks < best->marks)
        *best = now;
}

/* Each face first, with the row that it has by itself; then with one as short that keeps off the row of the other. */
static struct in_turn best_in_turn(struct arena *arena, const struct layout_pair *pair,
                                   const struct layout_marks alone[2])
{
    struct in_turn best = {.marks = SIZE_MAX};
    const size_t bound = alone[0].count + alone[1].count;
    for (int first = 0; first < 2 && best.marks > bound; first++)
        take_turns(arena, pair, &alone[first], first, &best);
    for (int first = 0; first < 2 && best.marks > bound; first++) {
        struct layout_marks shy;
        if (layout_fewest(arena, &pair->row[first], &alone[1 - first], pair->row[0].least, &shy))
            take_turns(arena, pair, &shy, first, &best);
    }
    return best;
}

bool layout_fewest_pair(struct arena *arena, const struct layout_pair *pair, struct layout_marks out[2])
{
    struct layout_marks alone[2];
    for (int face = 0; face < 2; face++)
        if (!layout_fewest(arena, &pair->row[face], pair->shy[face], pair->shy_by, &alone[face]))
            return false;
    struct in_turn best = best_in_turn(arena, pair, alone);
    const struct layout_marks *known = pair->known;
    size_t marks = known ? known[0].count + known[1].count : SIZE_MAX;
    if (marks < best.marks || (known && marks == best.marks && known[0].count < best.of[0].count)) {
        out[0] = known[0];
        out[1] = known[1];
        return true;
    }
    if (!known && best.marks > alone[0].count + alone[1].count) {
        struct both both = both_of(arena, pair, alone);
        both.fewest_so_far = best.marks < SIZE_MAX ? (int64_t)best.marks + best.first : 2 * (int64_t)both.count + 1;
        if (search_both(&both, out))
            return true;
    }
    if (best.marks == SIZE_MAX)
        return false;
    out[0] = best.of[0];
    out[1] = best.of[1];
    return true;
}
