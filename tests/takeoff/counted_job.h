/* Random whole jobs for the tests of the list: its lines, and what hangs where, worked out from the job's figures. */
#ifndef SAWBILL_TESTS_COUNTED_JOB_H
#define SAWBILL_TESTS_COUNTED_JOB_H

#include "size/random_job.h"

#include "sawbill/takeoff.h"

static struct catalog *catalog; /* read once: the tests do not change it */
static uint64_t from;           /* seed of the case at work, for the message when it fails */
static struct arena *arena;

static inline void restart(void)
{
    arena_free(arena);
    arena = arena_new(0, support_out_of_memory, NULL);
}

static inline length_t inches(double n)
{
    return length_from_inches(n);
}

static inline const struct takeoff *count_of(struct made *made, const struct random_job *job)
{
    random_size(made, arena, job, catalog);
    return takeoff_job(arena, made->job, catalog, made->design, &made->diags);
}

/* ---- lines ---- */

static inline const struct takeoff_line *line_find(const struct takeoff *takeoff, const char *id)
{
    for (size_t i = 0; i < takeoff->count; i++)
        if (!strcmp(takeoff->line[i].id, id))
            return &takeoff->line[i];
    return NULL;
}

static inline int64_t whole(decimal_t count)
{
    if (count % DECIMAL_ONE != 0)
        fail_msg("case %d: a count with parts", (int)from);
    return count / DECIMAL_ONE;
}

static inline int64_t count_at(const struct takeoff *takeoff, const char *id)
{
    const struct takeoff_line *line = line_find(takeoff, id);
    return line ? whole(line->count) : 0;
}

static inline bool begins(const char *text, const char *with)
{
    return !strncmp(text, with, strlen(with));
}

static inline void same(const char *what, int64_t got, int64_t want)
{
    if (got != want)
        fail_msg("case %d: %s: %lld, by hand %lld", (int)from, what, (long long)got, (long long)want);
}

static inline const char *text_of(const char *form, int number)
{
    return arena_printf(arena, form, number);
}

/* ---- joists, worked out from the job's figures ---- */

static const char *const field_name[FIELDS] = {"north", "south", "east", "west"};

/* Where an end bears: a post of three 2x4 with the wall across 3-1/2 in, in line 4-1/2; a pocket or plate as written.
 */
static inline length_t bearing_of(const struct random_beam *beam, int end)
{
    return beam->end[end] == 1 ? inches(4.5) : inches(3.5);
}

/* Clear span, the bearings and overhangs beyond it, less the gap of each hanger (1/8 in of all hangers of the catalog).
 */
static inline length_t cut_of(const struct made *made, const struct random_job *job, int i)
{
    const struct random_beam *beam = &job->beam[i];
    length_t sum = inches(beam->clear_in + beam->past_in[0] + beam->past_in[1]);
    for (int end = 0; end < 2; end++) {
        if (beam->carrier[end] < 0)
            sum += bearing_of(beam, end);
        else if (made->design->beams[i].end_hanger[end])
            sum -= inches(0.125);
    }
    return sum;
}

struct joists_by_hand {
    int64_t places, stopped, plies; /* stopped: at the opening; plies: of its trimmers, they have no hanger */
    length_t *hung;                 /* places that come to the beam */
    double *half_in;                /* of each, half of its width, a double one's whole */
    size_t hung_count;
    int64_t doubled, wide; /* of the hung ones */
};

/* The opening is in field 0; trimmers of two plies, 3 in, stand outside of it; joists are 1-1/2 in wide. */
static inline struct joists_by_hand joists_of(const struct random_job *job, int field, length_t cut)
{
    const struct random_field *of = &job->field[field];
    struct joists_by_hand out = {.hung = arena_array(arena, 300, sizeof *out.hung),
                                 .half_in = arena_array(arena, 300, sizeof *out.half_in)};
    double low = job->opening_from, high = low + job->opening_wide;
    double at = of->first + (field == 1 && job->lapped ? 1.5 : 0);
    for (; inches(at) <= cut; at += of->spacing) {
        bool opening = job->opening && field == 0;
        bool stops = opening && at + 0.75 > low && at - 0.75 < high;
        bool beside = opening && !stops &&
                      ((at + 0.75 > low - 3 && at - 0.75 < low) || (at + 0.75 > high && at - 0.75 < high + 3));
        out.places++;
        out.stopped += stops;
        out.plies += beside;
        if (beside)
            continue;
        bool doubled = of->doubled && out.hung_count == 1, wide = of->wide && out.hung_count == 2;
        out.doubled += doubled;
        out.wide += wide;
        out.half_in[out.hung_count] = doubled ? 1.5 : wide ? 0.8125 : 0.75;
        out.hung[out.hung_count++] = inches(at);
    }
    return out;
}

static inline bool hangs_joists(const struct random_job *job, int beam)
{
    return strcmp(job->beam[beam].set, "dropped") != 0;
}

/* Runs `argv[1]` cases, else 200, shared by the tests of one file. */
/* Cases where no number is asked for: fewer under the sanitizers, which slow each one many times. */
#ifdef __SANITIZE_ADDRESS__
enum { COUNTED_CASES = 50 };
#else
enum { COUNTED_CASES = 200 };
#endif

static inline int counted_rounds(int argc, char **argv, int properties)
{
    return (argc > 1 ? (int)strtol(argv[1], NULL, 10) : COUNTED_CASES) / properties;
}

static inline struct arena *counted_start(void)
{
    struct arena *shelf = arena_new(0, support_out_of_memory, NULL);
    struct diags diags = {.arena = shelf};
    catalog = catalog_read(shelf, SOURCE_DIR "/catalogs", NULL, &diags);
    arena = arena_new(0, support_out_of_memory, NULL);
    return shelf;
}

#endif
