/* Rows of fasteners clear of hangers: cases worked by hand, and random ones against exhaustive search. */
#include "support.h"

#include <stdlib.h>
#include <string.h>

#include "sawbill/layout.h"

#define INCHES(n) ((length_t)((n)*1016000.0))
/* Fewer under the sanitizers, which slow each one many times. */
#ifdef __SANITIZE_ADDRESS__
enum { RANDOM_BEAMS = 400 };
#else
enum { RANDOM_BEAMS = 3000 };
#endif
#define COUNT_OF(a) (sizeof(a) / sizeof *(a))

static uint32_t next_random(uint32_t *state)
{
    *state = *state * 1664525U + 1013904223U; /* Numerical Recipes' quick generator */
    return *state >> 8;
}

static int between(uint32_t *state, int least, int most)
{
    return least + (int)(next_random(state) % (uint32_t)(most - least + 1));
}

static void assert_marks(const struct layout_marks *marks, const double *inches, size_t count)
{
    assert_int_equal(marks->count, count);
    for (size_t i = 0; i < count; i++)
        assert_int_equal(marks->at[i], INCHES(inches[i]));
}

/* Four joists 16 in apart from 8 in on, 1-1/2 in wide and 1-1/4 in clear of them: zones of 4 in; on the other side
 * `shift` further. */
static struct layout_zones zones_every_16(struct arena *arena, double shift)
{
    struct layout_zones zones = {.item = arena_array(arena, 4, sizeof *zones.item), .count = 4};
    for (int i = 0; i < 4; i++)
        zones.item[i] = (struct layout_zone){INCHES(6 + shift + 16 * i), INCHES(10 + shift + 16 * i), "joist"};
    return zones;
}

static struct layout_zones both(struct arena *arena, const struct layout_zones *a, const struct layout_zones *b)
{
    struct layout_zones zones = {.item = arena_array(arena, a->count + b->count, sizeof *zones.item),
                                 .count = a->count + b->count};
    memcpy(zones.item, a->item, a->count * sizeof *a->item);
    memcpy(zones.item + a->count, b->item, b->count * sizeof *b->item);
    return zones;
}

static struct layout_pattern pattern_64(void)
{
    return (struct layout_pattern){.length = INCHES(64),
                                   .reserve = {INCHES(3), INCHES(3)},
                                   .most = INCHES(12),
                                   .least = INCHES(2.4375),
                                   .rows = 1,
                                   .faces = 1};
}

/* Bolts, so the zones of both faces count.  Joists opposite each other: marks at 12 in stand on four places of the 16
 * in from joist to joist, 4 in apart, and a zone is 4 in: they must stand on its edges, 6 and 10.  From 6: 6, 18, 30,
 * 42, 54. */
static void opposite_joists_by_hand(void **state)
{
    struct layout_pattern pattern = pattern_64();
    struct layout_zones a = zones_every_16(*state, 0);
    pattern.zone[0] = both(*state, &a, &a);
    struct layout layout = layout_find(*state, &pattern);
    assert_int_equal(layout.kept, LAYOUT_EVEN);
    assert_int_equal(layout.spacing, INCHES(12));
    assert_marks(&layout.row[0][0], (double[]){6, 18, 30, 42, 54}, 5);
    assert_int_equal(layout_count(&layout, 0), 5);
}

/* Lapped joists, side B 1-1/2 in further: both zones together (6, 11.5), (22, 27.5), (38, 43.5), (54, 59.5); free are
 * 3 to 6, 11.5 to 22, 27.5 to 38, 43.5 to 54, 59.5 to 61.  12 in: 5-1/2 in of zone lie over one of the places 4 in
 * apart.  11 in: from 3..6 the third mark needs 5.5 at least, the fourth 5 at most; from 11.5..12 (12 in from the end
 * at most) the second is in a zone.  10 in: 23..26, or 41.5..42, in a zone.  9 in: 39..40 (the third mark wants 4 at
 * most), or 38.5..39.  8 in: the second mark wants 3.5 at least, and from there all are free: 3.5, 11.5, ... 59.5. */
static void lapped_joists_by_hand(void **state)
{
    struct layout_pattern pattern = pattern_64();
    struct layout_zones a = zones_every_16(*state, 0), b = zones_every_16(*state, 1.5);
    pattern.zone[0] = both(*state, &a, &b);
    struct layout layout = layout_find(*state, &pattern);
    assert_int_equal(layout.kept, LAYOUT_EVEN);
    assert_int_equal(layout.spacing, INCHES(8));
    assert_marks(&layout.row[0][0], (double[]){3.5, 11.5, 19.5, 27.5, 35.5, 43.5, 51.5, 59.5}, 8);
}

/* The same lapped joists and nails from each face, which come out at neither: each face has its own zones, A as above:
 * 6, 18, ...  B: the places 3.5, 7.5, 11.5 (of 12 in) stand on the edges; from 3.5 the last is 51.5, more than 12 in
 * from the end of 64; wished for is 6 + 6 = 12: 11.5. */
static void nails_clear_the_hangers_of_their_own_face(void **state)
{
    struct layout_pattern pattern = pattern_64();
    pattern.faces = 2;
    pattern.meet = true;
    pattern.zone[0] = zones_every_16(*state, 0);
    pattern.zone[1] = zones_every_16(*state, 1.5);
    struct layout layout = layout_find(*state, &pattern);
    assert_int_equal(layout.spacing, INCHES(12));
    assert_marks(&layout.row[0][0], (double[]){6, 18, 30, 42, 54}, 5);
    assert_marks(&layout.row[1][0], (double[]){11.5, 23.5, 35.5, 47.5, 59.5}, 5);
}

/* No zone, 60 in: 3, 15, ... 51, and the staggered row from 9: 9, 21, ... 57 (57 is the end distance of the far end).
 */
static void staggered_rows_by_hand(void **state)
{
    struct layout_pattern pattern = pattern_64();
    pattern.length = INCHES(60);
    pattern.rows = 3;
    pattern.stagger = INCHES(6);
    struct layout layout = layout_find(*state, &pattern);
    assert_int_equal(layout.spacing, INCHES(12));
    assert_marks(&layout.row[0][0], (double[]){3, 15, 27, 39, 51}, 5);
    assert_marks(&layout.row[0][1], (double[]){9, 21, 33, 45, 57}, 5);
    assert_marks(&layout.row[0][2], (double[]){3, 15, 27, 39, 51}, 5);
    assert_int_equal(layout_count(&layout, 0), 15);
}

static struct layout_zones two_zones(struct arena *arena)
{
    struct layout_zones zones = {.item = arena_array(arena, 2, sizeof *zones.item), .count = 2};
    zones.item[0] = (struct layout_zone){INCHES(9), INCHES(14), "joist"};
    zones.item[1] = (struct layout_zone){INCHES(20), INCHES(29.5), "beam"};
    return zones;
}

/* 40 in, ends 2 in, 10 in at most; free are 2 to 9, 14 to 20, 29.5 to 38.  Only 10 in spans the wide zone,
 * from 19.5..20; 10 in before lies 9.5..10: in a zone; nothing even.  The mark before the wide zone is at 19.5..20, the
 * first at 9 at most: 10-1/2 in between want a third; the last must be 30 at least, and that from 20: four marks, 20
 * and 30 and of the others the even 9 and 14.5. */
static void fewest_marks_by_hand(void **state)
{
    struct layout_pattern pattern = {.length = INCHES(40),
                                     .reserve = {INCHES(2), INCHES(2)},
                                     .most = INCHES(10),
                                     .least = INCHES(2),
                                     .rows = 1,
                                     .faces = 1};
    pattern.zone[0] = two_zones(*state);
    struct layout layout = layout_find(*state, &pattern);
    assert_int_equal(layout.kept, LAYOUT_FEWEST);
    assert_marks(&layout.row[0][0], (double[]){9, 14.5, 20, 30}, 4);
    /* 8 in at most: nothing spans 9-1/2 in.  From 8 the next is 16, then 20; over to 29.5, 37.5. */
    pattern.most = INCHES(8);
    layout = layout_find(*state, &pattern);
    assert_int_equal(layout.kept, LAYOUT_BROKEN);
    assert_int_equal(layout.gap.from, INCHES(20));
    assert_int_equal(layout.gap.to, INCHES(29.5));
    assert_marks(&layout.row[0][0], (double[]){8, 16, 20, 29.5, 37.5}, 5);
}

/* A whole beam within a zone has no mark; a stretch at the far end that no mark reaches is named. */
static void nothing_to_mark(void **state)
{
    struct layout_pattern pattern = pattern_64();
    struct layout_zone all = {0, INCHES(64), "all"};
    pattern.zone[0] = (struct layout_zones){&all, 1, 1};
    struct layout layout = layout_find(*state, &pattern);
    assert_int_equal(layout.kept, LAYOUT_BROKEN);
    assert_int_equal(layout_count(&layout, 0), 0);
    all.from = INCHES(40);
    layout = layout_find(*state, &pattern);
    assert_int_equal(layout.kept, LAYOUT_BROKEN);
    assert_int_equal(layout.gap.to, INCHES(64));
    assert_true(layout.gap.from > INCHES(28) && layout.gap.from <= INCHES(40));
}

/* Exhaustive search, written apart: every set of places of a short row, one place a sixteenth. */
struct coarse {
    int places, reserve[2], most, least; /* sixteenths; places 0..places */
    bool blocked[16];
};

static int fewest_of_all(const struct coarse *coarse)
{
    int best = -1;
    for (unsigned set = 1; set < 1U << (unsigned)(coarse->places + 1); set++) {
        int count = 0, before = -1, first = -1;
        bool good = true;
        for (int i = 0; i <= coarse->places && good; i++) {
            if (!(set & 1U << (unsigned)i))
                continue;
            good = !coarse->blocked[i] && i >= coarse->reserve[0] && i <= coarse->places - coarse->reserve[1] &&
                   (before < 0 || (i - before <= coarse->most && i - before >= coarse->least));
            first = first < 0 ? i : first;
            before = i;
            count++;
        }
        int reach[2];
        for (int end = 0; end < 2; end++)
            reach[end] = coarse->reserve[end] > coarse->most ? coarse->reserve[end] : coarse->most;
        good = good && first <= reach[0] && coarse->places - before <= reach[1];
        if (good && (best < 0 || count < best))
            best = count;
    }
    return best;
}

static void random_coarse(uint32_t *seed, struct coarse *coarse, struct layout_zones *zones)
{
    *coarse = (struct coarse){.places = between(seed, 4, 13), .most = between(seed, 1, 6)};
    coarse->reserve[0] = between(seed, 0, 3);
    coarse->reserve[1] = between(seed, 0, 3);
    coarse->least = between(seed, 1, 3);
    zones->count = (size_t)between(seed, 0, 3);
    for (size_t i = 0; i < zones->count; i++) {
        int from = between(seed, -1, coarse->places), to = from + between(seed, 1, 6);
        zones->item[i] = (struct layout_zone){from * LAYOUT_STEP, to * LAYOUT_STEP, "zone"};
        for (int k = from + 1; k < to; k++)
            if (k >= 0 && k <= coarse->places)
                coarse->blocked[k] = true;
    }
}

static void fewest_is_the_fewest_of_all(void **state)
{
    uint32_t seed = 20260419;
    int found = 0, none = 0;
    for (int n = 0; n < 4000; n++) {
        struct layout_zone zone[3];
        struct layout_zones zones = {.item = zone};
        struct coarse coarse;
        random_coarse(&seed, &coarse, &zones);
        struct layout_row row = {.length = coarse.places * LAYOUT_STEP,
                                 .reserve = {coarse.reserve[0] * LAYOUT_STEP, coarse.reserve[1] * LAYOUT_STEP},
                                 .most = coarse.most * LAYOUT_STEP,
                                 .least = coarse.least * LAYOUT_STEP,
                                 .zones = &zones};
        struct layout_marks marks = {0};
        bool good = layout_fewest(*state, &row, NULL, 0, &marks);
        int best = fewest_of_all(&coarse);
        assert_int_equal(good ? (int)marks.count : -1, best);
        if (!good) {
            none++;
            continue;
        }
        found++;
        assert_true(layout_good(&row, &marks));
        for (size_t i = 0; i < marks.count; i++) {
            assert_false(coarse.blocked[marks.at[i] / LAYOUT_STEP]);
            assert_true(i == 0 || marks.at[i] - marks.at[i - 1] >= row.least);
        }
    }
    assert_true(found > 1000 && none > 500); /* both happen often enough to mean something */
}

/* Two faces that meet, again by every set of places: the marks of both are `least` apart, too. */
static bool apart(unsigned a, unsigned b, int least)
{
    for (int by = 0; by < least; by++)
        if (a & b << (unsigned)by || a << (unsigned)by & b)
            return false;
    return true;
}

static bool stands(const struct coarse *coarse, unsigned set)
{
    int before = -1, first = -1;
    for (int i = 0; i <= coarse->places; i++) {
        if (!(set & 1U << (unsigned)i))
            continue;
        if (coarse->blocked[i] || i < coarse->reserve[0] || i > coarse->places - coarse->reserve[1] ||
            (before >= 0 && (i - before > coarse->most || i - before < coarse->least)))
            return false;
        first = first < 0 ? i : first;
        before = i;
    }
    for (int end = 0; end < 2; end++) {
        int reach = coarse->reserve[end] > coarse->most ? coarse->reserve[end] : coarse->most;
        if (first < 0 || (end == 0 ? first : coarse->places - before) > reach)
            return false;
    }
    return true;
}

static int bits(unsigned set)
{
    int count = 0;
    for (; set; set &= set - 1)
        count++;
    return count;
}

static int fewest_of_pairs(const struct coarse coarse[2])
{
    int best = -1;
    unsigned sets = 1U << (unsigned)(coarse[0].places + 1);
    for (unsigned a = 1; a < sets; a++) {
        if (!stands(&coarse[0], a))
            continue;
        for (unsigned b = 1; b < sets; b++)
            if ((best < 0 || bits(a) + bits(b) < best) && apart(a, b, coarse[0].least) && stands(&coarse[1], b))
                best = bits(a) + bits(b);
    }
    return best;
}

static struct layout_row coarse_row(const struct coarse *coarse, const struct layout_zones *zones)
{
    return (struct layout_row){.length = coarse->places * LAYOUT_STEP,
                               .reserve = {coarse->reserve[0] * LAYOUT_STEP, coarse->reserve[1] * LAYOUT_STEP},
                               .most = coarse->most * LAYOUT_STEP,
                               .least = coarse->least * LAYOUT_STEP,
                               .zones = zones};
}

static void assert_pair(const struct layout_pair *pair, const struct layout_marks out[2])
{
    for (int face = 0; face < 2; face++)
        assert_true(layout_good(&pair->row[face], &out[face]));
    for (size_t a = 0; a < out[0].count; a++)
        for (size_t b = 0; b < out[1].count; b++)
            assert_true(llabs((long long)(out[0].at[a] - out[1].at[b])) >= pair->row[0].least);
}

static void a_pair_is_the_fewest_of_all(void **state)
{
    uint32_t seed = 20260808;
    int found = 0, none = 0, dearer = 0;
    for (int n = 0; n < 1500; n++) {
        struct layout_zone zone[2][3];
        struct layout_zones zones[2] = {{.item = zone[0]}, {.item = zone[1]}};
        struct coarse coarse[2];
        random_coarse(&seed, &coarse[0], &zones[0]);
        do
            random_coarse(&seed, &coarse[1], &zones[1]);
        while (coarse[1].places < coarse[0].places);
        coarse[0].places = coarse[0].places < 10 ? coarse[0].places : 10;
        coarse[0].least = 1 + coarse[0].least % 2;
        coarse[0].most += 1;
        coarse[1].places = coarse[0].places, coarse[1].most = coarse[0].most, coarse[1].least = coarse[0].least;
        for (int end = 0; end < 2; end++)
            coarse[1].reserve[end] = coarse[0].reserve[end];
        struct layout_pair pair = {.row = {coarse_row(&coarse[0], &zones[0]), coarse_row(&coarse[1], &zones[1])}};
        struct layout_marks out[2], alone;
        bool good = layout_fewest_pair(*state, &pair, out);
        assert_int_equal(good ? (int)(out[0].count + out[1].count) : -1, fewest_of_pairs(coarse));
        none += !good;
        if (!good)
            continue;
        found++;
        assert_pair(&pair, out);
        assert_true(layout_fewest(*state, &pair.row[0], NULL, 0, &alone));
        dearer += out[0].count > alone.count;
    }
    assert_true(found > 300 && none > 300 && dearer > 0);
}

/* A random beam in whole quarters of an inch, and the marks of one row from a start, looked at one by one. */
struct made {
    struct layout_pattern pattern;
    struct layout_zone zone[2][8];
};

static void random_beam(uint32_t *seed, struct made *made)
{
    struct layout_pattern *pattern = &made->pattern;
    *pattern = (struct layout_pattern){.length = between(seed, 60, 400) * LENGTH_INCH / 4,
                                       .most = between(seed, 16, 64) * LENGTH_INCH / 4,
                                       .least = between(seed, 16, 40) * LAYOUT_STEP,
                                       .rows = between(seed, 1, 3),
                                       .faces = between(seed, 1, 2),
                                       .meet = between(seed, 0, 1)};
    pattern->stagger = between(seed, 0, 1) * pattern->most / 2;
    for (int end = 0; end < 2; end++)
        pattern->reserve[end] = between(seed, 4, 24) * LENGTH_INCH / 4;
    int every = between(seed, 40, 96), shift = between(seed, 0, 1) * 6, width = between(seed, 8, 24);
    for (int face = 0; face < 2; face++) {
        int count = between(seed, 0, 8), first = between(seed, 8, 40) + face * shift;
        for (int i = 0; i < count; i++)
            made->zone[face][i] = (struct layout_zone){(first + i * every) * LENGTH_INCH / 4,
                                                       (first + i * every + width) * LENGTH_INCH / 4, "zone"};
        pattern->zone[face] = (struct layout_zones){made->zone[face], (size_t)count, 8};
    }
}

static bool row_stands(const struct layout_pattern *pattern, int face, length_t start, length_t spacing)
{
    length_t last = start, reach[2];
    for (int end = 0; end < 2; end++)
        reach[end] = pattern->reserve[end] > pattern->most ? pattern->reserve[end] : pattern->most;
    if (start < pattern->reserve[0] || start > reach[0])
        return false;
    for (length_t at = start; at <= pattern->length - pattern->reserve[1]; at += spacing) {
        for (size_t z = 0; z < pattern->zone[face].count; z++)
            if (pattern->zone[face].item[z].from < at && at < pattern->zone[face].item[z].to)
                return false;
        last = at;
    }
    return last <= pattern->length - pattern->reserve[1] && pattern->length - last <= reach[1];
}

/* Any start of face A, with any of face B that keeps apart from it. */
static bool spacing_stands(const struct layout_pattern *pattern, length_t spacing)
{
    for (length_t a = 0; a < pattern->reserve[0] + spacing; a += LAYOUT_STEP) {
        if (!row_stands(pattern, 0, a, spacing))
            continue;
        if (pattern->faces == 1)
            return true;
        for (length_t b = 0; b < pattern->reserve[0] + spacing; b += LAYOUT_STEP) {
            length_t apart = (a > b ? a - b : b - a) % spacing;
            apart = apart < spacing - apart ? apart : spacing - apart;
            if ((!pattern->meet || apart >= pattern->least) && row_stands(pattern, 1, b, spacing))
                return true;
        }
    }
    return false;
}

static length_t largest_spacing(const struct layout_pattern *pattern)
{
    for (length_t spacing = pattern->most / LENGTH_INCH * LENGTH_INCH; spacing > 0; spacing -= LENGTH_INCH)
        if (spacing >= pattern->least && spacing_stands(pattern, spacing))
            return spacing;
    return 0;
}

static void assert_every_row(const struct layout_pattern *pattern, const struct layout *layout)
{
    for (int face = 0; face < layout->faces; face++)
        for (int row = 0; row < layout->rows; row++) {
            const struct layout_marks *marks = &layout->row[face][row];
            struct layout_row of = {.length = pattern->length,
                                    .reserve = {pattern->reserve[0], pattern->reserve[1]},
                                    .most = pattern->most,
                                    .zones = &pattern->zone[face]};
            assert_true(layout_good(&of, marks));
            for (size_t i = 0; i < marks->count; i++) {
                assert_int_equal(marks->at[i] % LAYOUT_STEP, 0);
                for (size_t z = 0; z < pattern->zone[face].count; z++)
                    assert_false(pattern->zone[face].item[z].from < marks->at[i] &&
                                 marks->at[i] < pattern->zone[face].item[z].to);
                for (size_t k = 0; face == 1 && pattern->meet && k < layout->row[0][row].count; k++) {
                    length_t apart = marks->at[i] - layout->row[0][row].at[k];
                    assert_true(apart >= pattern->least || -apart >= pattern->least);
                }
            }
        }
}

static void random_beams_keep_every_rule(void **state)
{
    (void)state;
    uint32_t seed = 74109;
    int kept[3] = {0};
    for (int n = 0; n < RANDOM_BEAMS; n++) {
        struct arena *arena = arena_new(0, support_out_of_memory, NULL);
        struct made made;
        random_beam(&seed, &made);
        struct layout layout = layout_find(arena, &made.pattern);
        length_t spacing = largest_spacing(&made.pattern);
        assert_int_equal(layout.kept == LAYOUT_EVEN ? layout.spacing : 0, spacing);
        if (layout.kept != LAYOUT_BROKEN)
            assert_every_row(&made.pattern, &layout);
        kept[layout.kept]++;
        arena_free(arena);
    }
    for (int i = 0; i < 3; i++)
        assert_true(kept[i] > RANDOM_BEAMS / 30);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(opposite_joists_by_hand, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(lapped_joists_by_hand, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(nails_clear_the_hangers_of_their_own_face, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(staggered_rows_by_hand, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(fewest_marks_by_hand, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(nothing_to_mark, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_pair_is_the_fewest_of_all, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(fewest_is_the_fewest_of_all, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(random_beams_keep_every_rule, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
