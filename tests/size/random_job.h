/* Random whole jobs for the property tests: figures first, then the job as text, so that a test can change a figure and
 * write the job again, and knows what stands on each beam without asking the program.  Invented throughout. */
#ifndef SAWBILL_TESTS_RANDOM_JOB_H
#define SAWBILL_TESTS_RANDOM_JOB_H

#include "size/made_job.h"

/* Knuth's linear congruential generator: the same jobs on every machine. */
static inline double random_to(uint64_t *seed, double most)
{
    *seed = *seed * 6364136223846793005ULL + 1442695040888963407ULL;
    return most * (double)(*seed >> 11) / 9007199254740992.0;
}
static inline int random_of(uint64_t *seed, int count)
{
    return (int)random_to(seed, count);
}
static inline bool random_yes(uint64_t *seed, double chance)
{
    return random_to(seed, 1) < chance;
}

enum { BEAMS = 3, FIELDS = 4, LOADS_MOST = 5, WALLS = 2 };
struct figures {
    double dead, live, snow;
};
enum made_load { LOAD_AT, LOAD_ALONG, LOAD_OF_AREA };
struct random_load {
    enum made_load is;
    int beam, from_in, to_in;
    struct figures of; /* lb or plf; of an area: its square feet in .dead */
};
struct random_field { /* joists: north and south of B1, east of B2, west of B3 */
    bool is;
    int beam, run_in, spacing, first;
    bool doubled, wide, high, low; /* its second joist is two; its third 1-5/8 in wide; the first high, the third low */
};
enum { INNER = 2 };
struct random_beam {
    int clear_in, plies, depth;
    int past_in[2];           /* wood past the bearing of an end */
    int carrier[2], at_in[2]; /* of an end that hangs: on which beam and where, from that one's end 1; -1: none */
    int end[2];               /* what else it ends on: 0 post across, 1 post in line, 2 pocket, 3 wall plate */
    const char *set;
    const char *fastener; /* between the plies */
    int rows, apart_in, stagger_in;
    bool each_face;
    int inner; /* supports between its ends */
    struct {
        int at_in;
        bool plate, spliced;
    } support[INNER];
};
struct random_job {
    struct figures floor, roof; /* psf; roof.live is roof live load */
    double uplift;              /* psf */
    const char *live_is, *snow_is, *snow_level;
    double exposure, thermal, importance;
    int pitch; /* rise on 12; 0: not said */
    struct random_beam beam[BEAMS];
    int beams;
    struct random_field field[FIELDS];
    struct random_load load[LOADS_MOST];
    int loads;
    struct {
        int beam, from_in, to_in;
        double psf;
    } wall[WALLS];
    int walls;
    bool opening, lands, continuous, lapped, on_post, spare_post;
    int stud_spacing, brace_rows, below; /* of the shore; below: 0 a slab, 1 a second shore, 2 a crib */
    int finish[2], services, removed_ft; /* of the wall that comes out; of an old header */
    int family, opening_from, opening_wide, lands_at;
    double lands_sqft;
};

/* One size class each, from shallow to deep. */
static const char *const families[][6] = {
    {"DFL2-2X8", "DFL2-2X10", "DFL2-2X12"},
    {"HF2-2X8", "HF2-2X10", "HF2-2X12"},
    {"SPF2-2X8", "SPF2-2X10", "SPF2-2X12"},
    {"SYP2-2X8", "SYP2-2X10", "SYP2-2X12"},
    {"LVL-7.25", "LVL-9.25", "LVL-9.5", "LVL-11.25", "LVL-11.875", "LVL-14"},
    {"PSL-9.25", "PSL-9.5", "PSL-11.25", "PSL-11.875", "PSL-14"},
    {"GLB-3.5X9", "GLB-3.5X10.5", "GLB-3.5X12"},
};
enum { FAMILIES = sizeof families / sizeof *families };
static inline int family_count(int family)
{
    int count = 0;
    while (count < 6 && families[family][count])
        count++;
    return count;
}

static inline void random_fastening(struct random_beam *beam, uint64_t *seed)
{
    static const char *const fasteners[] = {"NAIL-16D-COMMON", "NAIL-16D-COMMON", "NAIL-10D-COMMON", "SCREW-STRUCT-5",
                                            "BOLT-500-600"};
    static const int aparts[] = {6, 8, 12, 12, 16, 24};
    beam->fastener = fasteners[random_of(seed, 5)];
    beam->rows = 1 + random_of(seed, 3);
    beam->apart_in = aparts[random_of(seed, 6)];
    beam->stagger_in = random_yes(seed, 0.5) ? beam->apart_in / 2 : 0;
    beam->each_face = random_yes(seed, 0.6);
}

/* Not nearer than 40 in to each other and to the ends. */
static inline void random_inner(struct random_beam *beam, uint64_t *seed)
{
    int spans = random_yes(seed, 0.4) ? 2 + random_of(seed, 2) : 1;
    while (spans > 1 && beam->clear_in < 55 * spans)
        spans--;
    beam->inner = spans - 1;
    for (int i = 0; i < beam->inner; i++) {
        int most = beam->clear_in * (i + 1) / spans, room = beam->clear_in / spans - 40;
        beam->support[i].at_in = most - random_of(seed, i ? room / 2 + 1 : room + 1);
        if (i == 0 && spans == 2 && random_yes(seed, 0.5))
            beam->support[i].at_in = beam->clear_in - beam->support[i].at_in;
        beam->support[i].plate = random_yes(seed, 0.3);
        beam->support[i].spliced = random_yes(seed, 0.3);
    }
}

/* Wood that runs on over a post or plate. */
static inline void random_past(struct random_beam *beam, uint64_t *seed)
{
    for (int end = 0; end < 2; end++)
        beam->past_in[end] =
            beam->carrier[end] < 0 && beam->end[end] != 2 && random_yes(seed, 0.15) ? 4 + random_of(seed, 44) : 0;
    for (int i = 0; i < beam->inner; i++) /* places are from the end of the wood */
        beam->support[i].at_in += beam->past_in[0];
}

/* End 2 of the second and third on one before; end 1 of the third sometimes, too. */
static inline void random_hang(struct random_job *job, uint64_t *seed, int i)
{
    struct random_beam *beam = &job->beam[i];
    beam->carrier[0] = i == 2 && random_yes(seed, 0.3) ? 0 : -1;
    beam->carrier[1] = i == 2 && beam->carrier[0] < 0 && random_yes(seed, 0.5) ? 0 : i - 1;
    for (int end = 0; end < 2; end++)
        if (beam->carrier[end] >= 0)
            beam->at_in[end] = 12 + random_of(seed, job->beam[beam->carrier[end]].clear_in - 24);
}

static inline void random_beams(struct random_job *job, uint64_t *seed)
{
    static const char *const sets[] = {"flush", "flush", "dropped", "upset"};
    job->beams = 1 + random_of(seed, BEAMS);
    job->family = random_of(seed, FAMILIES);
    for (int i = 0; i < job->beams; i++) {
        struct random_beam *beam = &job->beam[i];
        *beam = (struct random_beam){.clear_in = 60 + random_of(seed, i ? 60 : 175), .carrier = {-1, -1}};
        beam->set = i == 0 ? sets[random_of(seed, 4)] : "flush";
        beam->plies = job->family < 5 ? 1 + random_of(seed, 4) : 1;
        beam->depth = random_of(seed, family_count(job->family) - 1);
        for (int end = 0; end < 2; end++)
            beam->end[end] = random_of(seed, 4);
        random_fastening(beam, seed);
        random_inner(beam, seed);
        if (i > 0)
            random_hang(job, seed, i);
        random_past(beam, seed);
    }
}

static inline void random_fields(struct random_job *job, uint64_t *seed)
{
    static const int spacings[] = {12, 16, 24};
    for (int i = 0; i < FIELDS; i++) {
        int beam = i < 2 ? 0 : i - 1;
        job->field[i] = (struct random_field){.is = beam < job->beams && (i != 1 || random_yes(seed, 0.6)),
                                              .beam = beam,
                                              .run_in = 84 + random_of(seed, 100),
                                              .spacing = spacings[random_of(seed, 3)],
                                              .first = 2 + random_of(seed, 10)};
        job->field[i].doubled = random_yes(seed, 0.3);
        job->field[i].wide = random_yes(seed, 0.3);
        job->field[i].high = random_yes(seed, 0.3);
        job->field[i].low = random_yes(seed, 0.3);
    }
}

static inline void random_loads(struct random_job *job, uint64_t *seed)
{
    job->loads = random_of(seed, LOADS_MOST + 1);
    for (int i = 0; i < job->loads; i++) {
        struct random_load *load = &job->load[i];
        load->is = (enum made_load)random_of(seed, 3);
        load->beam = random_of(seed, job->beams);
        int clear = job->beam[load->beam].clear_in, most = load->is == LOAD_AT ? 1500 : 150;
        load->from_in = random_of(seed, clear - 13);
        load->to_in = load->from_in + 12 + random_of(seed, clear - load->from_in - 12);
        load->of = (struct figures){random_of(seed, most), random_of(seed, most),
                                    random_yes(seed, 0.5) ? random_of(seed, most) : 0};
        if (load->is == LOAD_OF_AREA)
            load->of.dead = 5 + random_of(seed, 100);
    }
    job->walls = random_of(seed, WALLS + 1);
    for (int i = 0; i < job->walls; i++) {
        job->wall[i].beam = random_of(seed, job->beams);
        int clear = job->beam[job->wall[i].beam].clear_in;
        job->wall[i].from_in = random_of(seed, clear - 13);
        job->wall[i].to_in = job->wall[i].from_in + 12 + random_of(seed, clear - job->wall[i].from_in - 12);
        job->wall[i].psf = 5 + random_of(seed, 15);
    }
}

static inline void random_snow(struct random_job *job, uint64_t *seed)
{
    static const double ce[] = {0.9, 1, 1.2}, ct[] = {1, 1.1, 1.2}, is[] = {0.8, 1, 1.1};
    static const int pitches[] = {0, 2, 6};
    job->snow_is = random_yes(seed, 0.5) ? "on the ground" : "on the roof";
    job->snow_level = random_yes(seed, 0.3) ? "strength" : "allowable";
    job->exposure = ce[random_of(seed, 3)];
    job->thermal = ct[random_of(seed, 3)];
    job->importance = is[random_of(seed, 3)];
    job->pitch = pitches[random_of(seed, 3)];
}

static inline struct random_job random_job(uint64_t *seed)
{
    static const char *const live[] = {"floor", "sleeping", "attic storage", "attic no storage"};
    struct random_job job = {.floor = {5 + random_of(seed, 20), 10 + random_of(seed, 60), 0},
                             .roof = {5 + random_of(seed, 15), random_of(seed, 21), random_of(seed, 60)},
                             .live_is = live[random_of(seed, 4)]};
    random_snow(&job, seed);
    job.uplift = random_yes(seed, 0.4) ? random_of(seed, 20) : 0;
    random_beams(&job, seed);
    random_fields(&job, seed);
    random_loads(&job, seed);
    job.lands = random_yes(seed, 0.3);
    job.lands_at = 6 + random_of(seed, job.beam[0].clear_in - 12);
    job.lands_sqft = 2 + random_of(seed, 30);
    job.opening = job.field[0].run_in > 120 && job.beam[0].clear_in > 110 && random_yes(seed, 0.3);
    job.opening_from = 34 + random_of(seed, 6);
    job.opening_wide = 26 + random_of(seed, 10);
    for (int i = 0; i < FIELDS && job.opening; i++)
        job.field[i].doubled = job.field[i].wide = job.field[i].high = job.field[i].low = false;
    job.continuous = !job.opening && job.field[1].is && !strcmp(job.beam[0].set, "dropped") && random_yes(seed, 0.5);
    job.lapped = !job.continuous && random_yes(seed, 0.4);
    job.on_post = random_yes(seed, 0.4);
    job.stud_spacing = 12 + 4 * random_of(seed, 4);
    job.brace_rows = random_of(seed, 3);
    job.below = random_of(seed, 3);
    for (int face = 0; face < 2; face++)
        job.finish[face] = random_of(seed, 3);
    job.services = random_of(seed, 3);
    job.removed_ft = random_of(seed, 9);
    return job;
}

static inline const char *figure(struct arena *arena, double value)
{
    return number_text(arena, value, 6);
}

static inline void write_field(struct buffer *out, const struct random_job *job, int i)
{
    static const char *const names[] = {"north", "south", "east", "west"};
    const struct random_field *field = &job->field[i];
    if (!field->is)
        return;
    buffer_printf(out,
                  "[joists %s]\nkind = sawn joist\nsize = 2x10\nspecies = Douglas Fir-Larch\ngrade = No.2\n"
                  "spacing = %d in\nfirst joist = %d in\nrun = %d in\nover the wall = %s\nties the roof = no\n"
                  "area = area floor\n",
                  names[i], field->spacing, field->first, field->run_in,
                  i < 2 && job->continuous ? "continuous"
                  : i < 2 && job->lapped   ? "lapped"
                                           : "butted");
}

/* Joists measured one by one, where they stand. */
static inline void write_measured(struct arena *arena, struct buffer *out, const struct random_job *job, int i)
{
    const struct random_field *field = &job->field[i];
    const char *place[3];
    for (int k = 0; k < 3 && field->is; k++)
        place[k] = figure(arena, field->first + k * field->spacing + (i == 1 && job->lapped ? 1.5 : 0));
    if (field->is && field->doubled)
        buffer_printf(out, "doubled at = %s in\n", place[1]);
    if (field->is && field->wide)
        buffer_printf(out, "measured widths = 1-5/8 in at %s in\n", place[2]);
    if (field->is && field->high)
        buffer_printf(out, "high by = 1/4 in at %s in\n", place[0]);
    if (field->is && field->low)
        buffer_printf(out, "low by = 3/8 in at %s in\n", place[2]);
}

static inline void write_end(struct buffer *out, const struct random_job *job, int i, int end)
{
    const struct random_beam *beam = &job->beam[i];
    if (beam->carrier[end] >= 0)
        buffer_printf(out, "end %d = beam B%d at %d in\n", end + 1, beam->carrier[end] + 1, beam->at_in[end]);
    else if (beam->end[end] < 2)
        buffer_printf(out, "end %d = post P%d\nwall at end %d = %s\n", end + 1, 2 * i + end + 1, end + 1,
                      beam->end[end] ? "in line" : "across");
    else
        buffer_printf(out, "end %d = %s\nbearing %d = 3-1/2 in\n", end + 1,
                      beam->end[end] == 2 ? "pocket" : "wall plate", end + 1);
}

static inline void write_past(struct buffer *out, const struct random_beam *beam)
{
    for (int end = 0; end < 2; end++)
        if (beam->past_in[end])
            buffer_printf(out, "overhang %d = %d in\n", end + 1, beam->past_in[end]);
}

static inline void write_inner(struct buffer *out, const struct random_job *job, int i)
{
    const struct random_beam *beam = &job->beam[i];
    int splices = 0;
    for (int k = 0; k < beam->inner; k++)
        if (beam->support[k].plate)
            buffer_printf(out, "inner = wall plate at %d in, bearing 3-1/2 in\n", beam->support[k].at_in);
        else
            buffer_printf(out, "inner = post M%d at %d in, wall across\n", INNER * i + k + 1, beam->support[k].at_in);
    for (int k = 0; k < beam->inner; k++)
        if (beam->support[k].spliced)
            buffer_printf(out, "%s%d in", splices++ ? ", " : "splices = ", beam->support[k].at_in);
    buffer_add(out, splices ? "\n" : "");
}

static inline void write_above(struct buffer *out, const struct random_job *job, int beam)
{
    int count = 0;
    buffer_add(out, "above = ");
    for (int i = 0; i < job->loads; i++)
        if (job->load[i].beam == beam)
            buffer_printf(out, "%sload L%d", count++ ? ", " : "", i + 1);
    for (int i = 0; i < job->walls; i++)
        if (job->wall[i].beam == beam)
            buffer_printf(out, "%swall V%d", count++ ? ", " : "", i + 1);
    buffer_printf(out, "%s\n", count ? "" : "nothing");
}

static inline void write_post(struct buffer *out, const struct random_job *job, int i, const char *id, int number)
{
    buffer_printf(out, "[post %s%d]\nmember = SPF-STUD-2X4\nplies = 3\nheight = 84 in\nbraced = %s\nstands on = %s\n",
                  id, number, i ? "free" : "one", job->on_post ? "block K1" : "footing F1");
}

static inline void write_posts(struct buffer *out, const struct random_job *job, int i)
{
    const struct random_beam *beam = &job->beam[i];
    for (int end = 0; end < 2; end++)
        if (beam->carrier[end] < 0 && beam->end[end] < 2)
            write_post(out, job, i, "P", 2 * i + end + 1);
    for (int k = 0; k < beam->inner; k++)
        if (!beam->support[k].plate)
            write_post(out, job, i, "M", INNER * i + k + 1);
}

static inline void write_beam(struct buffer *out, const struct random_job *job, int i)
{
    const struct random_beam *beam = &job->beam[i];
    buffer_printf(out,
                  "[beam B%d]\nshore engineer = R. Ames, S4\nset = %s\nclear span = %d in\njoists A = joists %s\n%s",
                  i + 1, beam->set, beam->clear_in,
                  i == 0   ? "north"
                  : i == 1 ? "east"
                           : "west",
                  i == 0 && job->field[1].is ? "joists B = joists south\n" : "");
    write_end(out, job, i, 0);
    write_end(out, job, i, 1);
    write_past(out, beam);
    write_inner(out, job, i);
    write_above(out, job, i);
    if (!strcmp(beam->set, "upset"))
        buffer_add(out, "above joists by = 1 in\nkickers every = 4 ft\nkickers of = SPF2-2X4\n");
    buffer_printf(
        out,
        "member = %s\nplies = %d\nply fasteners = %s\nrows = %d\nspacing = %d in\nstagger = %d in\neach face = %s\n",
        families[job->family][beam->depth], beam->plies, beam->fastener, beam->rows, beam->apart_in, beam->stagger_in,
        beam->each_face ? "yes" : "no");
    write_posts(out, job, i);
}

static inline void write_load(struct arena *arena, struct buffer *out, const struct random_load *load,
                              const char *level, int i)
{
    buffer_printf(out, "[load L%d]\non = beam B%d\nheld by = shore S1\n", i + 1, load->beam + 1);
    if (load->is == LOAD_AT)
        buffer_printf(out, "at = %d in\n", load->from_in);
    else
        buffer_printf(out, "from = %d in\nto = %d in\n", load->from_in, load->to_in);
    const char *unit = load->is == LOAD_AT ? "lb" : "plf";
    if (load->is == LOAD_OF_AREA)
        buffer_printf(out, "area = area roof\ncarries = %s sq ft\n", figure(arena, load->of.dead));
    else
        buffer_printf(out, "dead = %s %s\nlive = %s %s\nsnow = %s %s\nsnow level = %s\n", figure(arena, load->of.dead),
                      unit, figure(arena, load->of.live), unit, figure(arena, load->of.snow), unit, level);
}

static const char *const finishes[] = {NULL, "gypsum board", "plaster on lath"};

static inline void write_below(struct buffer *out, const struct random_job *job)
{
    if (job->on_post)
        buffer_add(out, "[post Q1]\nmember = DFL1-4X6\nplies = 1\nheight = 60 in\nbraced = free\n"
                        "stands on = footing F1\n"
                        "[block K1]\ndepth = 9-1/4 in\nstands on = post Q1\n");
    if (job->spare_post)
        buffer_add(out, "[post Z1]\nmember = DFL1-4X6\nplies = 1\nheight = 60 in\nbraced = free\n"
                        "stands on = footing Z1\n[footing Z1]\nstatus = existing\nsize = 24 in\nthickness = 12 in\n"
                        "soil = 1500 psf\n");
    buffer_add(out, "[footing F1]\nstatus = existing\nsize = 36 in\nthickness = 16 in\nsoil = 2000 psf\n"
                    "[wall W1]\nstatus = comes out\nunder = beam B1\nlength = 8 ft\nheight = 8 ft\nbracing = no\n");
    for (int face = 0; face < 2; face++)
        if (job->finish[face])
            buffer_printf(out, "finish %c = %s\n", face ? 'B' : 'A', finishes[job->finish[face]]);
    for (int i = 0; i < job->services; i++)
        buffer_add(out, "services = outlet circuit\n");
    if (job->removed_ft)
        buffer_printf(out, "[remove R1]\nwhat = header\nlength = %d ft\n", job->removed_ft);
    buffer_printf(
        out,
        "[shore S1]\nholds = joists north\nset back = 2 ft\nstuds = SPF-STUD-2X4\nplates = SPF2-2X4\nspacing = %d in\n"
        "height = 94-1/2 in\nbrace rows = %d\nstands on = floor\ndays = 5\nbelow = %s\n",
        job->stud_spacing, job->brace_rows, job->below ? "joists parallel" : "slab");
    if (job->below)
        buffer_printf(out, "held below = %s\nheight below = 88 in\n%s", job->below == 1 ? "shore" : "crib",
                      job->below == 2 ? "crib timber = DFL1-4X6\n" : "");
    buffer_add(out, "[bid]\nmethod = add\ntax = 0 %\noverhead = 10 %\ncontingency = 5 %\nprofit = 10 %\n");
}

static inline bool has_roof_area(const struct random_job *job)
{
    bool has = job->lands;
    for (int i = 0; i < job->loads; i++)
        has |= job->load[i].is == LOAD_OF_AREA;
    return has;
}

static inline void write_roof(struct arena *arena, struct buffer *out, const struct random_job *job)
{
    buffer_add(out, "[roof]\nframe = none above\nbraces = none\nsnow drifts = no\n");
    if (job->pitch)
        buffer_printf(out, "pitch = %d/12\n", job->pitch);
    if (!has_roof_area(job))
        return;
    if (!strcmp(job->snow_is, "on the ground")) {
        buffer_printf(out, "exposure factor = %s\nthermal factor = %s\n", figure(arena, job->exposure),
                      figure(arena, job->thermal));
        if (strcmp(job->snow_level, "strength") != 0)
            buffer_printf(out, "importance factor = %s\n", figure(arena, job->importance));
    }
    buffer_printf(out,
                  "[area roof]\ndead = %s psf\nlive = %s psf\nlive is = roof\nsnow = %s psf\nsnow is = %s\n"
                  "snow level = %s\nnet uplift = %s psf\n",
                  figure(arena, job->roof.dead), figure(arena, job->roof.live), figure(arena, job->roof.snow),
                  job->snow_is, job->snow_level, figure(arena, job->uplift));
}

static inline const char *random_text(struct arena *arena, const struct random_job *job)
{
    struct buffer out = {.arena = arena};
    buffer_printf(
        &out,
        "[job]\nname = test\ndate = 2026-01-05\nstatus = bid\nunusual = none\ncatalogs = catalogs\n[area floor]\n"
        "dead = %s psf\nlive = %s psf\nlive is = %s\n",
        figure(arena, job->floor.dead), figure(arena, job->floor.live), job->live_is);
    write_roof(arena, &out, job);
    for (int i = 0; i < FIELDS; i++) {
        write_field(&out, job, i);
        write_measured(arena, &out, job, i);
    }
    for (int i = 0; i < job->beams; i++)
        write_beam(&out, job, i);
    for (int i = 0; i < job->loads; i++)
        write_load(arena, &out, &job->load[i], job->snow_level, i);
    for (int i = 0; i < job->walls; i++)
        buffer_printf(&out,
                      "[wall V%d]\nstatus = stays\non = beam B%d\nfrom = %d in\nto = %d in\nheight = 8 ft\n"
                      "weight = %s psf\n",
                      i + 1, job->wall[i].beam + 1, job->wall[i].from_in, job->wall[i].to_in,
                      figure(arena, job->wall[i].psf));
    if (job->opening)
        buffer_printf(&out,
                      "[opening O1]\njoists = joists north\nfrom = %d in\nto = %d in\nnear = 2 ft\nfar = 7 ft\n"
                      "header = DFL2-2X10\n",
                      job->opening_from, job->opening_from + job->opening_wide);
    if (job->lands)
        buffer_printf(&out,
                      "[obstruction R1]\nwhat = rafter tail\non = beam B1\nat = %d in\nthen = lands on the beam\n"
                      "area = area roof\ncarries = %s sq ft\nseat = 1-1/2 in\nown prop = yes\n",
                      job->lands_at, figure(arena, job->lands_sqft));
    write_below(&out, job);
    return buffer_text(&out);
}

static inline void random_size(struct made *made, struct arena *arena, const struct random_job *job,
                               struct catalog *catalog)
{
    const char *text = random_text(arena, job);
    *made = (struct made){.arena = arena, .diags = {.arena = arena}, .catalog = catalog};
    entries_read(arena, "random.ini", text, strlen(text), &made->entries, &made->diags);
    made_size(made);
}

#endif
