/* The sizing stage: beams in the order of the load path, then what is below them, then the shores. */
#include "size.h"

/* A beam comes after all that hang on it.  `state`: 0 not seen, 1 being visited, 2 placed. */
struct walk {
    const struct job *job;
    size_t *order, count;
    char *state;
};

static void visit(struct walk *walk, size_t beam)
{
    if (walk->state[beam])
        return; /* a circle is a fault of the job, found before: here it only must not run on */
    walk->state[beam] = 1;
    for (size_t i = 0; i < walk->job->beam_count; i++)
        for (int end = 0; end < 2; end++) {
            const struct beam_end *at = &walk->job->beams[i].end_[end];
            if (at->kind == END_BEAM && at->ref.index == beam)
                visit(walk, i);
        }
    walk->state[beam] = 2;
    walk->order[walk->count++] = beam;
}

size_t *beam_order(struct arena *arena, const struct job *job)
{
    struct walk walk = {.job = job, .order = arena_array(arena, job->beam_count, sizeof *walk.order)};
    walk.state = arena_array(arena, job->beam_count, 1);
    for (size_t i = 0; i < job->beam_count; i++)
        visit(&walk, i);
    return walk.order;
}

static bool strength_snow(const struct job *job)
{
    for (size_t i = 0; i < job->area_count; i++)
        if (job->areas[i].snow_level.choice == LEVEL_STRENGTH)
            return true;
    for (size_t i = 0; i < job->load_count; i++)
        if (job->loads[i].snow_level.choice == LEVEL_STRENGTH)
            return true;
    for (size_t i = 0; i < job->obstruction_count; i++)
        if (job->obstructions[i].snow_level.choice == LEVEL_STRENGTH)
            return true;
    return false;
}

static bool has_attic(const struct job *job)
{
    for (size_t i = 0; i < job->area_count; i++)
        if (job->areas[i].live_is.choice == LIVE_ATTIC_NO_STORAGE && job->areas[i].live.quantity.millionths > 0)
            return true;
    return false;
}

/* Snow at strength level is of ASCE 7-22, whatever stands in for an edition that the job does not name. */
static const char *standard_of(const struct job *job, bool strength)
{
    bool by_7_22 = job->facts.loads_by.choice == LOADS_ASCE_7_22 || strength;
    return by_7_22 ? "ASCE 7-22" : "ASCE 7-16";
}

static void allocate(struct sizing *s)
{
    const struct job *job = s->job;
    struct design *design = arena_alloc(s->arena, sizeof *design);
    s->design = design;
    design->beam_count = job->beam_count;
    design->beams = arena_array(s->arena, job->beam_count, sizeof *design->beams);
    design->joists = arena_array(s->arena, 2 * job->beam_count, sizeof *design->joists);
    design->post_count = job->post_count;
    design->posts = arena_array(s->arena, job->post_count, sizeof *design->posts);
    design->footing_count = job->footing_count;
    design->footings = arena_array(s->arena, job->footing_count, sizeof *design->footings);
    design->opening_count = job->opening_count;
    design->openings = arena_array(s->arena, job->opening_count, sizeof *design->openings);
    design->shore_count = job->shore_count;
    design->shores = arena_array(s->arena, job->shore_count, sizeof *design->shores);
    s->stack = arena_array(s->arena, job->beam_count, sizeof *s->stack);
    s->width_in = arena_array(s->arena, job->beam_count, sizeof *s->width_in);
    s->share = arena_array(s->arena, job->beam_count, sizeof *s->share);
}

static void link_joists(struct sizing *s)
{
    struct design *design = s->design;
    for (size_t i = 0; i < s->job->beam_count; i++)
        for (int side = 0; side < 2; side++) {
            const struct ref_value *ref = &s->job->beams[i].joists[side];
            if (!ref->at || ref->index >= s->job->joists_count)
                continue;
            struct joist_design *jd = &design->joists[design->joists_count++];
            jd->joists = &s->job->joists[ref->index];
            jd->beam = &s->job->beams[i];
            jd->side = side;
            design->beams[i].side[side] = jd;
        }
}

static bool all_pass(const struct design *design)
{
    bool passes = true;
    for (size_t i = 0; i < design->beam_count; i++)
        passes &= design->beams[i].passes;
    for (size_t i = 0; i < design->joists_count; i++)
        passes &= design->joists[i].passes_cut;
    for (size_t i = 0; i < design->post_count; i++)
        passes &= design->posts[i].passes;
    for (size_t i = 0; i < design->footing_count; i++)
        passes &= design->footings[i].passes;
    for (size_t i = 0; i < design->opening_count; i++)
        passes &= design->openings[i].passes;
    for (size_t i = 0; i < design->shore_count; i++)
        passes &= design->shores[i].passes;
    return passes;
}

struct design *size_job(struct arena *arena, const struct job *job, const struct catalog *catalog,
                        const struct selection *selection, struct diags *diags)
{
    struct sizing s = {.arena = arena, .job = job, .catalog = catalog, .selection = selection, .diags = diags};
    s.strength = strength_snow(job);
    s.combo = combinations(s.strength, has_attic(job), &s.combo_count);
    allocate(&s);
    s.design->combinations = s.combo;
    s.design->combination_count = s.combo_count;
    s.design->standard = standard_of(job, s.strength);
    snow_resolve(&s);
    link_joists(&s);
    openings_resolve(&s);
    joist_shares(&s);
    for (size_t i = 0; i < job->beam_count; i++)
        beam_resolve(&s, i);
    posts_resolve(&s);
    const size_t *order = beam_order(arena, job);
    for (size_t i = 0; i < job->beam_count; i++)
        beam_size(&s, order[i]);
    for (size_t i = 0; i < s.design->joists_count; i++)
        s.design->joists[i].passes_cut = joists_cut_check(&s, &s.design->joists[i]);
    openings_check(&s);
    bool lands = obstructions_check(&s);
    stages_check(&s);
    dead_sag_find(&s);
    posts_size(&s);
    footings_size(&s);
    shores_size(&s);
    stages_list(&s);
    care_check(&s);
    basis_write(&s);
    s.design->passes = all_pass(s.design) && lands;
    return s.design;
}
