/* What must hold of any job: random whole jobs of up to three beams, flush, dropped or upset, over inner supports, hung
 * on one another, with joists, loads, walls, snow of either level, uplift, an opening, a member that lands, joists that
 * run on, posts on blocks on posts.  Fixed seed; `size_test_property_jobs 100000` runs that many cases.  Spans loaded
 * in turns have their own (test_inner_random.c, test_spans_random.c). */
#include "size/random_job.h"

enum { PROPERTIES = 5 };
static int rounds = 200 / PROPERTIES; /* of each property */
static struct catalog *catalog;       /* read once: the tests do not change it */
static uint64_t from;                 /* seed of the case at work, for the message when it fails */

/* ---- equilibrium, against loads summed here ---- */

/* What stands on one beam: lb of each source, and how much of it comes to end 2. */
struct sum {
    struct loads lb, at_end_2;
    double span_in, zero_in; /* zero_in: middle of the bearing of end 1, from the end of the wood */
    bool past[2];
};

static void put(struct sum *sum, struct loads lb, double part)
{
    for (int source = 0; source < LOAD_SOURCES; source++) {
        sum->lb.of[source] += lb.of[source];
        sum->at_end_2.of[source] += lb.of[source] * part;
    }
}

/* Lever of a place; what lies over a bearing beyond its middle rests on it, unless the wood runs on. */
static void put_point(struct sum *sum, struct loads lb, double at_in)
{
    double part = (at_in - sum->zero_in) / sum->span_in;
    part = sum->past[0] ? part : fmax(part, 0);
    put(sum, lb, sum->past[1] ? part : fmin(part, 1));
}

static void put_line(struct sum *sum, struct loads plf, double from_in, double to_in)
{
    double cuts[] = {from_in, fmin(fmax(sum->zero_in, from_in), to_in),
                     fmin(fmax(sum->zero_in + sum->span_in, from_in), to_in), to_in};
    for (int i = 0; i < 3; i++) {
        struct loads lb = plf;
        for (int source = 0; source < LOAD_SOURCES; source++)
            lb.of[source] *= (cuts[i + 1] - cuts[i]) / 12;
        put_point(sum, lb, (cuts[i] + cuts[i + 1]) / 2);
    }
}

static struct loads times(struct loads lb, double by)
{
    for (int source = 0; source < LOAD_SOURCES; source++)
        lb.of[source] *= by;
    return lb;
}

static struct loads floor_psf(const struct random_job *job)
{
    struct loads psf = {{job->floor.dead}};
    psf.of[!strcmp(job->live_is, "attic no storage") ? LOAD_ATTIC : LOAD_LIVE] = job->floor.live;
    return psf;
}

/* ASCE 7 eq. 7.3-1: 0.7 Ce Ct Is pg lies on a roof; under 15 degrees, or where its slope is not said, not less than Is
 * pg, of at most 20 psf (7-16).  7-22 has no Is, and 30 psf there (from memory). */
static double roof_snow(const struct random_job *job)
{
    bool strength = !strcmp(job->snow_level, "strength");
    double is = strength ? 1 : job->importance, ground = job->roof.snow;
    double flat = 0.7 * job->exposure * job->thermal * is * ground;
    if (strcmp(job->snow_is, "on the ground") != 0)
        return ground;
    return job->pitch > 3 ? flat : fmax(flat, is * fmin(ground, strength ? 30 : 20)); /* tan 15 degrees = 3.2/12 */
}

static struct loads roof_psf(const struct random_job *job)
{
    struct loads psf = {{job->roof.dead}};
    psf.of[LOAD_ROOF_LIVE] = job->roof.live;
    psf.of[LOAD_SNOW] = roof_snow(job);
    psf.of[LOAD_UPLIFT] = job->uplift;
    return psf;
}

static void put_loads(struct sum *sum, const struct random_job *job, int beam)
{
    for (int i = 0; i < job->loads; i++) {
        const struct random_load *load = &job->load[i];
        struct loads of = {{load->of.dead, load->of.live, 0, load->of.snow}};
        if (load->beam != beam)
            continue;
        if (load->is == LOAD_OF_AREA)
            of = times(roof_psf(job), load->of.dead * 12 / (load->to_in - load->from_in));
        if (load->is == LOAD_AT)
            put_point(sum, of, load->from_in);
        else
            put_line(sum, of, load->from_in, load->to_in);
    }
    for (int i = 0; i < job->walls; i++)
        if (job->wall[i].beam == beam)
            put_line(sum, (struct loads){{8 * job->wall[i].psf}}, job->wall[i].from_in, job->wall[i].to_in);
    if (job->lands && beam == 0)
        put_point(sum, times(roof_psf(job), job->lands_sqft), job->lands_at);
}

/* Of two even spans a and b under one load the middle support takes w (a^2 + 3 a b + b^2)... by three moments:
 * M = w (a^3 + b^3)/(8 (a + b)), and of each span w a/2 + M/a. */
static double share_ft(const struct random_job *job, int field)
{
    double a = job->field[field].run_in / 12.0;
    if (!job->continuous || field > 1)
        return a / 2;
    double b = job->field[1 - field].run_in / 12.0;
    return a / 2 + (a * a * a + b * b * b) / (8 * (a + b)) / a;
}

/* The trimmers' own sums are looked at apart: here they are loads. */
static void put_field(struct sum *sum, const struct made *made, const struct random_job *job, int field, double cut_in)
{
    struct loads plf = times(floor_psf(job), share_ft(job, field));
    if (field > 0 || !job->opening) {
        put_line(sum, plf, 0, cut_in);
        return;
    }
    const struct opening_design *od = &made->design->openings[0];
    put_line(sum, plf, 0, length_inches(od->zone[0]));
    put_line(sum, plf, length_inches(od->zone[1]), cut_in);
    put_line(sum, floor_psf(job), job->opening_from, job->opening_from + job->opening_wide); /* half of 2 ft of tails */
    for (int k = 0; k < 2; k++)
        put_point(sum, od->trimmers[k].beam_lb, length_inches(od->trimmers[k].at));
}

static struct sum beam_sum(const struct made *made, const struct random_job *job, int beam)
{
    const struct beam_design *bd = &made->design->beams[beam];
    double cut_in = length_inches(bd->cut_length);
    const int *past_in = job->beam[beam].past_in;
    struct sum sum = {.span_in = bd->design_span_in,
                      .zero_in = length_inches(bd->bearing[0]) / 2 + past_in[0],
                      .past = {past_in[0] > 0, past_in[1] > 0}};
    for (int i = 0; i < FIELDS; i++)
        if (job->field[i].is && job->field[i].beam == beam)
            put_field(&sum, made, job, i, cut_in);
    put_loads(&sum, job, beam);
    for (int i = 0; i < job->beams; i++)
        for (int end = 0; end < 2; end++)
            if (job->beam[i].carrier[end] == beam)
                put_point(&sum, made->design->beams[i].end_lb[end], job->beam[i].at_in[end]);
    put_line(&sum, (struct loads){{bd->plies * bd->member->weight_plf}}, 0, cut_in);
    return sum;
}

static void loads_same(const struct loads *got, const struct loads *want, int line)
{
    static const char *const names[LOAD_SOURCES] = {"dead", "live", "roof live", "snow", "attic", "uplift"};
    char text[40];
    for (int source = 0; source < LOAD_SOURCES; source++) {
        snprintf(text, sizeof text, "case %d: %s", (int)from, names[source]);
        support_near(got->of[source], want->of[source], 1e-6 + 1e-9 * fabs(want->of[source]), text, __FILE__, line);
    }
}

#define assert_same(got, want) loads_same((got), (want), __LINE__)

static struct loads minus(struct loads a, struct loads b)
{
    for (int source = 0; source < LOAD_SOURCES; source++)
        a.of[source] -= b.of[source];
    return a;
}
static struct loads plus(struct loads a, struct loads b)
{
    return minus(a, times(b, -1));
}

/* Pounds, and moments about end 1, with every load on at once. */
static void beams_balance(const struct made *made, const struct random_job *job)
{
    for (int i = 0; i < job->beams; i++) {
        const struct beam_design *bd = &made->design->beams[i];
        struct sum sum = beam_sum(made, job, i);
        struct loads carried = plus(bd->end_full_lb[0], bd->end_full_lb[1]), at_end_2 = bd->end_full_lb[1];
        assert_int_equal(bd->inner_count, job->beam[i].inner);
        for (size_t k = 0; k < bd->inner_count; k++) {
            double x = job->beam[i].support[k].at_in - sum.zero_in;
            carried = plus(carried, bd->inner[k].full_lb);
            at_end_2 = plus(at_end_2, times(bd->inner[k].full_lb, x / sum.span_in));
        }
        assert_same(&carried, &sum.lb);
        assert_same(&at_end_2, &sum.at_end_2);
    }
}

/* Headers: half of the tails and their own weight; trimmers: their strip, their weight, the headers. */
static void openings_balance(const struct made *made, const struct random_job *job)
{
    static const double tails_ft[] = {2, NAN};
    const struct opening_design *od = &made->design->openings[0];
    double run_ft = job->field[0].run_in / 12.0, wide_ft = job->opening_wide / 12.0, header_plf = 2 * 3.30;
    struct loads both[2] = {{{0}}, {{0}}};
    for (int k = 0; k < 2; k++) {
        double tail_ft = k ? run_ft - 7 : tails_ft[k];
        struct loads on = plus(times(floor_psf(job), tail_ft / 2 * wide_ft), (struct loads){{header_plf * wide_ft}});
        struct loads half = times(on, 0.5);
        assert_same(&od->headers[k].end_lb, &half);
        for (int side = 0; side < 2; side++)
            both[side] = plus(both[side], half);
    }
    for (int k = 0; k < 2; k++) {
        double inside = k ? job->opening_from + job->opening_wide : job->opening_from;
        double strip_ft = fabs(inside - length_inches(od->zone[k])) / 12;
        struct loads in = plus(times(floor_psf(job), strip_ft * run_ft), (struct loads){{header_plf * run_ft}});
        in = plus(in, both[k]);
        struct loads out = plus(od->trimmers[k].beam_lb, od->trimmers[k].far_lb);
        assert_same(&out, &in);
    }
}

/* Over more than two supports or past one: live load on any set of its spans. */
static bool runs_on(const struct random_beam *beam)
{
    return beam->inner > 0 || beam->past_in[0] > 0 || beam->past_in[1] > 0;
}

/* What the supports of a beam are handed beyond all loads at once: the most of every set of loaded spans. */
static struct loads beyond(const struct made *made, const struct random_job *job, int i)
{
    const struct beam_design *bd = &made->design->beams[i];
    struct loads sum = {{0}};
    for (int end = 0; end < 2; end++)
        sum = plus(sum, minus(bd->end_lb[end], bd->end_full_lb[end]));
    for (size_t k = 0; k < bd->inner_count; k++)
        sum = plus(sum, minus(bd->inner[k].lb, bd->inner[k].full_lb));
    for (int source = 0; source < LOAD_SOURCES; source++)
        if (!(sum.of[source] > -1e-6) || (!runs_on(&job->beam[i]) && sum.of[source] > 1e-6))
            fail_msg("case %d: supports are handed %.9g lb beyond all loads", (int)from, sum.of[source]);
    assert_near(sum.of[LOAD_DEAD], 0, 1e-6);
    return sum;
}

/* Of the ends and supports of beam i those on plates and in pockets. */
static struct loads on_the_ground(const struct made *made, const struct random_job *job, int i)
{
    const struct beam_design *bd = &made->design->beams[i];
    struct loads ground = {{0}};
    for (int end = 0; end < 2; end++)
        if (job->beam[i].carrier[end] < 0 && job->beam[i].end[end] >= 2)
            ground = plus(ground, bd->end_lb[end]);
    for (int k = 0; k < job->beam[i].inner; k++)
        if (job->beam[i].support[k].plate)
            ground = plus(ground, bd->inner[k].lb);
    return ground;
}

/* All that comes down on the beams, with the posts' own weight, leaves through posts, plates and pockets. */
static void ground_balances(const struct made *made, const struct random_job *job)
{
    const struct design *design = made->design;
    struct loads on = {{0}}, ground = {{0}}, feet = {{0}};
    for (int i = 0; i < job->beams; i++) {
        on = plus(on, plus(beam_sum(made, job, i).lb, beyond(made, job, i)));
        for (int end = 0; end < 2; end++)
            if (job->beam[i].carrier[end] >= 0)
                on = minus(on, design->beams[i].end_lb[end]);
        ground = plus(ground, on_the_ground(made, job, i));
    }
    for (size_t i = 0; i < design->post_count; i++) {
        const struct post_design *pd = &design->posts[i];
        on.of[LOAD_DEAD] += pd->plies * pd->member->weight_plf * length_feet(pd->post->height.length);
        bool last = !job->on_post || pd->post->stands_on.kind == KIND_FOOTING;
        feet = plus(feet, last ? pd->lb : (struct loads){{0}});
    }
    ground = plus(ground, feet);
    assert_same(&ground, &on);
    struct loads footings = {{0}};
    for (size_t i = 0; i < design->footing_count; i++)
        footings = plus(footings, design->footings[i].lb);
    assert_same(&footings, &feet);
}

/* The path tells the same: what it brings to a beam is what its supports bring on, with every load on at once. */
static void path_balances(const struct made *made, const struct random_job *job)
{
    for (int i = 0; i < job->beams; i++) {
        const struct beam_design *bd = &made->design->beams[i];
        struct loads in = {{0}}, out = plus(bd->end_full_lb[0], bd->end_full_lb[1]);
        char name[] = "beam B1";
        name[6] = (char)('1' + i);
        for (size_t k = 0; k < made->design->path_count; k++)
            if (!strcmp(made->design->path[k].to, name))
                in = plus(in, made->design->path[k].lb);
        for (size_t k = 0; k < bd->inner_count; k++)
            out = plus(out, bd->inner[k].full_lb);
        assert_same(&out, &in);
    }
}

static void assert_balance(const struct made *made, const struct random_job *job)
{
    beams_balance(made, job);
    if (job->opening)
        openings_balance(made, job);
    ground_balances(made, job);
    path_balances(made, job);
}

/* ---- more load never helps ---- */

static bool same_hangers(const struct design *a, const struct design *b)
{
    bool same = true;
    for (size_t i = 0; i < a->beam_count; i++)
        for (int end = 0; end < 2; end++)
            same &= a->beams[i].end_hanger[end] == b->beams[i].end_hanger[end];
    return same;
}

/* Where load may help: on one face it balances what hangs on the other, so that less crosses the joints of the plies
 * and less turns a half hung beam over; between a shore and the far bearing it holds down what lifts there; beside one
 * place of a span it lessens the shear just there, where something hangs low on an upset beam.  None is the demand of a
 * whole simple span. */
static bool load_may_help(const char *check)
{
    static const char *const words[] = {"ply",   "plies", "interface", "half hung",
                                        "joint", "lift",  "held down", "hung low"};
    bool may = false;
    for (size_t i = 0; i < sizeof words / sizeof *words; i++)
        may |= strstr(check, words[i]) != NULL;
    return may;
}

/* Ratios of the same member and check; a hanger that was chosen anew holds more. */
static void assert_not_less(const struct made *less, const struct made *more, bool simple_only)
{
    for (size_t i = 0; i < less->design->member_count; i++) {
        const struct member_checks *a = less->design->members[i];
        for (size_t k = 0; k < a->count; k++) {
            const struct check *was = &a->check[k], *is = made_find(more, a->id, was->name);
            if (!is || (simple_only && load_may_help(was->name)) || is->capacity > was->capacity * (1 + 1e-12))
                continue;
            if (!(is->ratio >= was->ratio * (1 - 1e-9) - 1e-12))
                fail_msg("case %d: %s, %s: %.9g under more load, %.9g under less", (int)from, a->id, was->name,
                         is->ratio, was->ratio);
        }
    }
}

/* A member that fails still fails. */
static void assert_still_fails(const struct made *less, const struct made *more, bool simple_only)
{
    for (size_t i = 0; i < less->design->member_count; i++) {
        const struct member_checks *a = less->design->members[i];
        bool fails = false;
        for (size_t k = 0; k < a->count; k++)
            fails |= !ratio_holds(a->check[k].ratio) && !(simple_only && load_may_help(a->check[k].name));
        if (fails && made_member(more, a->id)->passes)
            fail_msg("case %d: %s fails, and passes under more load", (int)from, a->id);
    }
}

static void scale(struct figures *figures, double by)
{
    figures->dead *= by;
    figures->live *= by;
    figures->snow *= by;
}

static void scale_all(struct random_job *job, double by)
{
    scale(&job->floor, by);
    scale(&job->roof, by);
    job->uplift *= by;
    for (int i = 0; i < job->loads; i++)
        if (job->load[i].is != LOAD_OF_AREA) /* its area is heavier already */
            scale(&job->load[i].of, by);
    for (int i = 0; i < job->walls; i++)
        job->wall[i].psf *= by;
}

/* The catalogs with wood of another weight. */
static struct catalog *wood_times(struct arena *arena, double by)
{
    struct catalog *other = arena_alloc(arena, sizeof *other);
    *other = *catalog;
    other->members = arena_array(arena, catalog->member_count, sizeof *other->members);
    for (size_t i = 0; i < catalog->member_count; i++) {
        other->members[i] = catalog->members[i];
        other->members[i].weight_plf *= by;
    }
    return other;
}

static bool over_supports(const struct random_job *job)
{
    bool any = false;
    for (int i = 0; i < job->beams; i++)
        any |= runs_on(&job->beam[i]);
    return any;
}

static void simple_spans(struct random_job *job)
{
    for (int i = 0; i < job->beams; i++)
        job->beam[i].inner = job->beam[i].past_in[0] = job->beam[i].past_in[1] = 0;
}

static void add_one(struct random_job *job, uint64_t *seed)
{
    double more = 1 + random_to(seed, 400);
    struct figures *of = &job->floor;
    if (job->loads > 0 && random_yes(seed, 0.7)) {
        of = &job->load[random_of(seed, job->loads)].of;
        more *= of == &job->floor ? 0.1 : 1;
    } else {
        of = random_yes(seed, 0.5) ? &job->floor : &job->roof;
        more /= 10;
    }
    *(random_yes(seed, 0.5) ? &of->dead : &of->live) += more;
}

/* ---- the tests ---- */

static struct arena *arena;
static void restart(void)
{
    arena_free(arena);
    arena = arena_new(0, support_out_of_memory, NULL);
}

static void equilibrium_to_the_ground(void **state)
{
    (void)state;
    for (int round = 0; round < rounds; round++, restart()) {
        uint64_t seed = from = (uint64_t)round + 1;
        struct random_job job = random_job(&seed);
        struct made made;
        random_size(&made, arena, &job, catalog);
        assert_balance(&made, &job);
    }
}

static void scaled_up_never_helps(void **state)
{
    (void)state;
    int compared = 0;
    for (int round = 0; round < rounds; round++, restart()) {
        uint64_t seed = from = (uint64_t)round + 1000001;
        struct random_job job = random_job(&seed);
        struct made less, more;
        if (over_supports(&job))
            job.pitch = 6; /* the least snow of a flat roof does not grow in proportion */
        random_size(&less, arena, &job, catalog);
        double by = 1 + random_to(&seed, 1);
        scale_all(&job, by);
        random_size(&more, arena, &job, wood_times(arena, by));
        if (!over_supports(&job) || same_hangers(less.design, more.design)) /* another seat is another span */
            assert_still_fails(&less, &more, false);
        if (!same_hangers(less.design, more.design))
            continue;
        assert_not_less(&less, &more, false);
        compared++;
    }
    assert_true(compared > rounds / 2);
}

static void any_load_added_never_helps(void **state)
{
    (void)state;
    int compared = 0;
    for (int round = 0; round < rounds; round++, restart()) {
        uint64_t seed = from = (uint64_t)round + 2000001;
        struct random_job job = random_job(&seed);
        struct made less, more;
        simple_spans(&job);
        random_size(&less, arena, &job, catalog);
        add_one(&job, &seed);
        random_size(&more, arena, &job, catalog);
        assert_still_fails(&less, &more, true);
        if (!same_hangers(less.design, more.design))
            continue;
        assert_not_less(&less, &more, true);
        compared++;
    }
    assert_true(compared > rounds / 2);
}

/* B1 of one size class, the next depth, its top edge held by joists.  Over inner supports or past one the wood weighs
 * nothing: what lifts a span is lessened by the weight of a deeper one, and that is load, not strength. */
static void deeper_is_never_worse(void **state)
{
    static const char *const names[] = {"bending", "live deflection", "total deflection"};
    (void)state;
    for (int round = 0; round < rounds; round++, restart()) {
        uint64_t seed = from = (uint64_t)round + 3000001;
        struct random_job job = random_job(&seed);
        struct made shallow, deep;
        job.beam[0].set = job.continuous ? "dropped" : "flush";
        struct catalog *of = runs_on(&job.beam[0]) ? wood_times(arena, 0) : catalog;
        random_size(&shallow, arena, &job, of);
        job.beam[0].depth++;
        random_size(&deep, arena, &job, of);
        for (int i = 0; i < 3 * (job.beam[0].inner + 1); i++) {
            const char *name = names[i % 3];
            if (runs_on(&job.beam[0]))
                name = arena_printf(arena, "%s, span %d", name, i / 3 + 1);
            double was = made_check(&shallow, "beam B1", name)->ratio, is = made_check(&deep, "beam B1", name)->ratio;
            if (!(is <= was * (1 + 1e-9)))
                fail_msg("case %d: %s: %.9g of the deeper, %.9g of the other", (int)from, name, is, was);
        }
    }
}

/* A post and a footing that carry nothing of the job. */
static void unused_support_changes_nothing(void **state)
{
    (void)state;
    for (int round = 0; round < rounds; round++, restart()) {
        uint64_t seed = from = (uint64_t)round + 4000001;
        struct random_job job = random_job(&seed);
        struct made without, with;
        random_size(&without, arena, &job, catalog);
        job.spare_post = true;
        random_size(&with, arena, &job, catalog);
        for (size_t i = 0; i < without.design->member_count; i++) {
            const struct member_checks *a = without.design->members[i];
            assert_int_equal(made_member(&with, a->id)->count, a->count);
            for (size_t k = 0; k < a->count; k++) {
                if (made_find(&without, a->id, a->check[k].name) != &a->check[k])
                    fail_msg("case %d: %s has two checks '%s'", (int)from, a->id, a->check[k].name);
                double was = a->check[k].ratio, is = made_find(&with, a->id, a->check[k].name)->ratio;
                if (!(is >= was && is <= was))
                    fail_msg("case %d: %s, %s: %.9g, %.9g without", (int)from, a->id, a->check[k].name, is, was);
            }
        }
    }
}

int main(int argc, char **argv)
{
    if (argc > 1)
        rounds = (int)strtol(argv[1], NULL, 10) / PROPERTIES;
    struct arena *shelf = arena_new(0, support_out_of_memory, NULL);
    struct diags diags = {.arena = shelf};
    catalog = catalog_read(shelf, SOURCE_DIR "/catalogs", NULL, &diags);
    arena = arena_new(0, support_out_of_memory, NULL);
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(equilibrium_to_the_ground),      cmocka_unit_test(scaled_up_never_helps),
        cmocka_unit_test(any_load_added_never_helps),     cmocka_unit_test(deeper_is_never_worse),
        cmocka_unit_test(unused_support_changes_nothing),
    };
    int failed = rounds > 0 ? cmocka_run_group_tests(tests, NULL, NULL) : 2;
    arena_free(arena);
    arena_free(shelf);
    return failed;
}
