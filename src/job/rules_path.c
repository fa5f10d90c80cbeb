/* Rules of the load path: what is described must come to something, and what carries must have something to carry.
 * A load left out by a line forgotten would make everything below it pass. */
#include "rules.h"

static bool names(const struct ref_value *ref, enum kind kind, size_t index)
{
    return ref_found(ref) && ref->kind == kind && ref->index == index;
}

static bool unresolved(const struct ref_value *ref)
{
    return ref->at && !ref_found(ref);
}

/* A key or a reference was misspelt, perhaps the very one that is missed: that fault comes first. */
static bool misspelt_somewhere(const struct ruling *ruling)
{
    const struct job *job = ruling->job;
    bool found = ruling->checker->meant_count > 0;
    for (size_t i = 0; i < job->beam_count; i++)
        found |= unresolved(&job->beams[i].joists[0]) || unresolved(&job->beams[i].joists[1]);
    for (size_t i = 0; i < job->load_count; i++)
        found |= unresolved(&job->loads[i].on);
    return found;
}

static void joists_come_to_a_beam(const struct ruling *ruling)
{
    const struct job *job = ruling->job;
    size_t self = (size_t)((const struct joists *)ruling->element - job->joists);
    for (size_t i = 0; i < job->beam_count; i++)
        for (int side = 0; side < 2; side++)
            if (names(&job->beams[i].joists[side], KIND_JOISTS, self))
                return;
    if (misspelt_somewhere(ruling))
        return;
    rule_broken(ruling, NULL,
                "%s come to no beam, so nobody carries them; write 'joists A = joists %s' or 'joists B = joists %s' in "
                "its [beam], or take them out",
                ruling->name, ruling->head->id, ruling->head->id);
}

static bool has_joists(const struct beam *beam)
{
    return beam->joists[0].at || beam->joists[1].at;
}

/* A beam's end, a post or a block stands on it. */
static bool holds_a_point(const struct job *job, size_t self)
{
    for (size_t i = 0; i < job->beam_count; i++)
        for (int end = 0; end < 2; end++)
            if (job->beams[i].end_[end].kind == END_BEAM && names(&job->beams[i].end_[end].ref, KIND_BEAM, self))
                return true;
    for (size_t i = 0; i < job->post_count; i++)
        if (names(&job->posts[i].stands_on, KIND_BEAM, self))
            return true;
    for (size_t i = 0; i < job->block_count; i++)
        if (names(&job->blocks[i].stands_on, KIND_BEAM, self))
            return true;
    return false;
}

static bool holds_a_load(const struct job *job, size_t self)
{
    for (size_t i = 0; i < job->load_count; i++)
        if (names(&job->loads[i].on, KIND_BEAM, self))
            return true;
    for (size_t i = 0; i < job->wall_count; i++)
        if (names(&job->walls[i].on, KIND_BEAM, self))
            return true;
    for (size_t i = 0; i < job->obstruction_count; i++)
        if (job->obstructions[i].then.choice == THEN_LANDS && names(&job->obstructions[i].on, KIND_BEAM, self))
            return true;
    return job->has_roof && job->roof.braces.count > 0 && names(&job->roof.braces_on, KIND_BEAM, self);
}

static void beam_carries_something(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    const struct job *job = ruling->job;
    size_t self = (size_t)(beam - job->beams);
    if (has_joists(beam) || holds_a_point(job, self) || holds_a_load(job, self) || misspelt_somewhere(ruling))
        return;
    rule_broken(ruling, NULL,
                "%s carries nothing but itself; write 'joists A' or 'joists B', or a [load ID] with 'on = beam %s'",
                ruling->name, ruling->head->id);
}

/* The wall's load goes somewhere: with no beam in the job there is nothing to size. */
static void wall_out_needs_a_beam(const struct ruling *ruling)
{
    const struct wall *wall = ruling->element;
    if (wall->status.choice == WALL_COMES_OUT && ruling->job->beam_count == 0)
        rule_broken(ruling, wall->status.at, "%s comes out, and no beam takes its place; write a [beam ID] section",
                    ruling->name);
}

/* The same allowance as for beams that hang on it: a first joist farther off is a slip, and no hanger would be counted.
 */
static void beam_meets_its_joists(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    struct arena *arena = ruling->checker->arena;
    for (int side = 0; side < 2; side++) {
        if (!ref_found(&beam->joists[side]) || !beam->clear_span.at)
            continue;
        const struct joists *joists = &ruling->job->joists[beam->joists[side].index];
        if (joists->first_joist.at && joists->first_joist.length > beam->clear_span.length + LENGTH_FOOT)
            rule_broken(ruling, joists->first_joist.at,
                        "'first joist' of [joists %s], %s, is beyond %s, which spans %s", joists->head.id,
                        length_tape(arena, joists->first_joist.length), ruling->name,
                        length_tape(arena, beam->clear_span.length));
    }
}

static const struct rule rules[] = {
    {KIND_JOISTS, DIAG_K017, joists_come_to_a_beam},
    {KIND_BEAM, DIAG_K017, beam_carries_something},
    {KIND_BEAM, DIAG_K009, beam_meets_its_joists},
    {KIND_WALL, DIAG_K017, wall_out_needs_a_beam},
};
const struct rules rules_of_path = {rules, sizeof rules / sizeof *rules};
