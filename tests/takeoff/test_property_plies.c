/* Fasteners between the plies of random whole jobs: none in a zone or too near to an end, none too far apart, and where
 * nothing even clears what hangs there, no row has more than it must.  Zones, ends and the fewest marks are worked out
 * again here from the figures of the job.  Fixed seed; `takeoff_test_property_plies 10000` runs that many cases. */
#include "takeoff/counted_job.h"

static int rounds;

/* Places on one face where none may be, the sixteenths of an inch strictly inside; of one beam or a piece of it. */
struct row_by_hand {
    int places, reserve[2], most, least;
    bool *blocked; /* places + 1 */
};

static void block(struct row_by_hand *row, double start_in, double from_in, double to_in)
{
    double low = (from_in - start_in) * 16, high = (to_in - start_in) * 16;
    for (int i = (int)fmax(floor(low) + 1, 0); i < high - 1e-9 && i <= row->places; i++)
        row->blocked[i] = true;
}

/* 1-1/2 in clear of the sides of joists, of trimmers of 3 in, and of hung beams. */
static void block_face(const struct made *made, const struct random_job *job, struct row_by_hand *row, int beam,
                       int face, double start_in)
{
    for (int i = 0; i < FIELDS && hangs_joists(job, beam); i++) {
        if (!job->field[i].is || job->field[i].beam != beam || (i == 1) != face)
            continue;
        struct joists_by_hand joists = joists_of(job, i, cut_of(made, job, beam));
        for (size_t k = 0; k < joists.hung_count; k++) {
            double at = length_inches(joists.hung[k]);
            block(row, start_in, at - joists.half_in[k] - 1.5, at + joists.half_in[k] + 1.5);
        }
        for (int k = 0; k < 2 && i == 0 && job->opening; k++) {
            double at = k ? job->opening_from + job->opening_wide + 1.5 : job->opening_from - 1.5;
            block(row, start_in, at - 3, at + 3);
        }
    }
    for (int i = 0; i < job->beams; i++)
        for (int end = 0; end < 2; end++)
            if (job->beam[i].carrier[end] == beam) {
                double half = length_inches(made->design->beams[i].width) / 2 + 1.5, at = job->beam[i].at_in[end];
                block(row, start_in, at - half, at + half);
            }
}

/* What goes through, or nearly, keeps clear of both faces; bolts always. */
static bool comes_out(const struct made *made, const struct random_job *job, int beam)
{
    const struct fastener *fastener = catalog_fastener(catalog, job->beam[beam].fastener);
    double width = length_inches(made->design->beams[beam].width);
    return begins(job->beam[beam].fastener, "BOLT") || length_inches(fastener->length) >= width - 0.25;
}

/* 15 diameters, from 1/4 in on 5, up to the next sixteenth. */
static int least_of(const struct random_job *job, int beam)
{
    double diameter = length_inches(catalog_fastener(catalog, job->beam[beam].fastener)->diameter);
    return (int)ceil((diameter < 0.25 ? 15 : 5) * diameter * 16 - 1e-9);
}

static struct row_by_hand row_of(const struct made *made, const struct random_job *job, const struct ply_layout *kept,
                                 int face)
{
    int beam = (int)(kept->design - made->design->beams);
    length_t start = kept->start, length = kept->pattern.length;
    length_t cut = cut_of(made, job, beam);
    struct row_by_hand row = {.places = (int)(length / (LENGTH_INCH / 16)), .most = 16 * job->beam[beam].apart_in};
    row.least = least_of(job, beam);
    row.blocked = arena_array(arena, (size_t)row.places + 1, sizeof *row.blocked);
    for (int end = 0; end < 2; end++) {
        bool at_end = end ? start + length == cut : start == 0; /* else a splice: 3 in alone */
        double bearing = length_inches(kept->design->bearing[end]);
        row.reserve[end] = 16 * 3;
        if (at_end && job->beam[beam].carrier[end] < 0)
            bearing = length_inches(bearing_of(&job->beam[beam], end));
        if (at_end && job->beam[beam].past_in[end] == 0 && bearing > 3)
            row.reserve[end] = (int)ceil(bearing * 16 - 1e-9);
    }
    block_face(made, job, &row, beam, face, length_inches(start));
    if (comes_out(made, job, beam))
        block_face(made, job, &row, beam, !face, length_inches(start));
    return row;
}

static int reach_of(const struct row_by_hand *row, int end)
{
    return row->reserve[end] > row->most ? row->reserve[end] : row->most;
}

/* The fewest marks by going through every place: the best that ends on each, from the best before it; 0: none. */
static int fewest_of(const struct row_by_hand *row, double length)
{
    int *best = arena_array(arena, (size_t)row->places + 1, sizeof *best), fewest = 0;
    for (int i = row->reserve[0]; i <= length - row->reserve[1]; i++) {
        if (row->blocked[i])
            continue;
        best[i] = i <= reach_of(row, 0) ? 1 : 0;
        for (int k = i - row->most; k <= i - row->least; k++)
            if (k >= 0 && best[k] > 0 && (best[i] == 0 || best[k] + 1 < best[i]))
                best[i] = best[k] + 1;
        if (best[i] > 0 && length - i < reach_of(row, 1) + 1 && (fewest == 0 || best[i] < fewest))
            fewest = best[i];
    }
    return fewest;
}

/* A mark on the very edge of a sixteenth: lengths are whole sixteenths but for gaps and bearings. */
static void assert_row(const struct ply_layout *kept, const struct row_by_hand *row, const struct layout_marks *marks)
{
    double length = length_inches(kept->pattern.length) * 16;
    int before = -1;
    for (size_t i = 0; i < marks->count; i++) {
        int at = (int)(marks->at[i] / LAYOUT_STEP);
        same("a mark on a sixteenth", marks->at[i] % LAYOUT_STEP, 0);
        if (row->blocked[at])
            fail_msg("case %d: %s: a mark at %g in is in a zone", (int)from, kept->design->beam->head.id, at / 16.0);
        bool broken = kept->layout.kept == LAYOUT_BROKEN;
        int gap = before < 0 ? at : at - before, most = before < 0 ? reach_of(row, 0) : row->most;
        if (at < row->reserve[0] || at > length - row->reserve[1] || (!broken && gap > most))
            fail_msg("case %d: %s: a mark at %g in, the one before at %g", (int)from, kept->design->beam->head.id,
                     at / 16.0, before / 16.0);
        before = at;
    }
    if (kept->layout.kept != LAYOUT_BROKEN && (marks->count == 0 || length - before >= reach_of(row, 1) + 1))
        fail_msg("case %d: %s: no mark near the far end", (int)from, kept->design->beam->head.id);
}

static void keep_apart(struct row_by_hand *row, const struct layout_marks *others)
{
    for (size_t i = 0; i < others->count; i++) {
        double at = length_inches(others->at[i]), apart = row->least / 16.0;
        block(row, 0, at - apart, at + apart);
    }
}

/* Where fasteners of both faces meet each row is the shortest beside that of the other face. */
static void assert_layout(const struct made *made, const struct random_job *job, const struct ply_layout *kept,
                          int *seen)
{
    int beam = (int)(kept->design - made->design->beams);
    double length = length_inches(kept->pattern.length) * 16;
    bool meet = 2 * length_inches(catalog_fastener(catalog, job->beam[beam].fastener)->length) >
                length_inches(kept->design->width);
    bool all = true;
    seen[kept->layout.kept]++;
    same("rows", kept->layout.rows, job->beam[beam].rows);
    same("faces", kept->layout.faces, job->beam[beam].each_face ? 2 : 1);
    for (int face = 0; face < kept->layout.faces; face++)
        for (int r = 0; r < kept->layout.rows; r++) {
            struct row_by_hand row = row_of(made, job, kept, face);
            const struct layout_marks *marks = &kept->layout.row[face][r];
            if (kept->layout.faces == 2 && meet && kept->layout.kept != LAYOUT_BROKEN)
                keep_apart(&row, &kept->layout.row[!face][r]);
            assert_row(kept, &row, marks);
            int fewest = kept->layout.kept == LAYOUT_EVEN ? 0 : fewest_of(&row, length);
            if (kept->layout.kept == LAYOUT_FEWEST)
                same("marks of the fewest", (int64_t)marks->count, fewest);
            all &= fewest > 0;
        }
    if (kept->layout.kept == LAYOUT_BROKEN && all && !meet)
        fail_msg("case %d: beam B%d: every row can be kept, and is not", (int)from, beam + 1);
}

static int64_t driven(const struct ply_layout *kept, int face)
{
    int64_t sum = 0;
    for (int row = 0; row < kept->layout.rows; row++)
        sum += (int64_t)kept->layout.row[face][row].count;
    return sum;
}

/* One layout each piece of each beam of two plies and more; its marks are what the list counts. */
static void assert_layouts(const struct made *made, const struct random_job *job, const struct takeoff *takeoff,
                           int *seen)
{
    size_t at = 0;
    for (int i = 0; i < job->beams; i++) {
        size_t pieces = beam_pieces(&made->design->beams[i]);
        for (size_t k = 0; k < pieces && job->beam[i].plies > 1; k++, at++) {
            assert_true(at < takeoff->ply_layout_count && takeoff->ply_layout[at].design == &made->design->beams[i]);
            const struct ply_layout *kept = &takeoff->ply_layout[at];
            assert_layout(made, job, kept, seen);
            for (int face = 0; face < kept->layout.faces; face++) {
                const char *piece = pieces > 1 ? arena_printf(arena, "/piece %zu", k + 1) : "";
                const char *id = arena_printf(arena, "ply fasteners/B%d%s/%c", i + 1, piece, face ? 'B' : 'A');
                same(id, count_at(takeoff, id), driven(kept, face));
            }
        }
    }
    same("layouts", (int64_t)takeoff->ply_layout_count, (int64_t)at);
}

static void plies_of_any_job(void **state)
{
    int seen[3] = {0};
    (void)state;
    for (int round = 0; round < rounds; round++, restart()) {
        uint64_t seed = from = (uint64_t)round + 4000001;
        struct random_job job = random_job(&seed);
        struct made made;
        const struct takeoff *takeoff = count_of(&made, &job);
        assert_layouts(&made, &job, takeoff, seen);
    }
    for (int i = 0; i < 3; i++)
        assert_true(seen[i] > rounds / 50); /* each often enough to mean something */
}

int main(int argc, char **argv)
{
    struct arena *shelf = counted_start();
    rounds = counted_rounds(argc, argv, 1);
    const struct CMUnitTest tests[] = {cmocka_unit_test(plies_of_any_job)};
    int failed = rounds > 0 ? cmocka_run_group_tests(tests, NULL, NULL) : 2;
    arena_free(arena);
    arena_free(shelf);
    return failed;
}
