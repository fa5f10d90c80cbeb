/* Rules of the load path: what is described must come to something, and what carries must have something to carry.
 * A load left out by a line forgotten would make everything below it pass. */
#include "rules.h"

static bool names(const struct ref_value *ref, enum kind kind, size_t index)
{
    return ref_found(ref) && ref->kind == kind && ref->index == index;
}

/* A key or a reference was misspelt, perhaps the very one that is missed: that fault comes first. */
static bool misspelt_somewhere(const struct ruling *ruling)
{
    const struct checker *checker = ruling->checker;
    bool found = checker->meant_count > 0;
    for (size_t i = 0; i < checker->diags->count; i++)
        found |= checker->diags->item[i].code == DIAG_K011;
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

/* A post that nothing stands on is most likely named otherwise in its beam.  It takes no load from anything, and it is
 * not counted: an alternate that lets a beam bear elsewhere leaves its section behind. */
static void post_carries_something(const struct ruling *ruling)
{
    size_t self = (size_t)((const struct post *)ruling->element - ruling->job->posts);
    if (!carries_something(ruling->job, KIND_POST, self) && !misspelt_somewhere(ruling))
        rule_broken(ruling, NULL,
                    "%s carries nothing, and is not counted; write 'end 1 = post %s' or 'end 2 = post %s' in its "
                    "[beam], or take it out",
                    ruling->name, ruling->head->id, ruling->head->id);
}

/* A post or block of which nothing is said below it: that is asked, and answers the rest. */
static bool foot_is_asked(const struct job *job)
{
    bool asked = false;
    for (size_t i = 0; i < job->post_count; i++)
        asked |= !job->posts[i].stands_on.at && !job->posts[i].stands_on_text.at;
    for (size_t i = 0; i < job->block_count; i++)
        asked |= !job->blocks[i].stands_on.at && !job->blocks[i].stands_on_text.at;
    return asked;
}

static void block_carries_something(const struct ruling *ruling)
{
    size_t self = (size_t)((const struct block *)ruling->element - ruling->job->blocks);
    if (!carries_something(ruling->job, KIND_BLOCK, self) && !foot_is_asked(ruling->job) && !misspelt_somewhere(ruling))
        rule_broken(
            ruling, NULL,
            "%s carries nothing, and is not counted; write 'stands on = block %s' in its [post], or take it out",
            ruling->name, ruling->head->id);
}

static void footing_carries_something(const struct ruling *ruling)
{
    size_t self = (size_t)((const struct footing *)ruling->element - ruling->job->footings);
    if (!carries_something(ruling->job, KIND_FOOTING, self) && !foot_is_asked(ruling->job) &&
        !misspelt_somewhere(ruling))
        rule_broken(ruling, NULL,
                    "%s carries nothing, and is not counted; write 'stands on = footing %s' in its [post] or [block], "
                    "or take it out",
                    ruling->name, ruling->head->id);
}

/* The roof needs an area, and has none: that fault comes first. */
static bool roof_misses_its_area(const struct job *job)
{
    bool needed = job->roof.braces.count > 0;
    for (size_t i = 0; i < job->joists_count; i++)
        needed |= job->joists[i].tie_strap.at != NULL;
    return job->has_roof && needed && !job->roof.area.at;
}

/* An area of which nothing brings the load is a load left out. */
static void area_comes_to_something(const struct ruling *ruling)
{
    const struct job *job = ruling->job;
    size_t self = (size_t)((const struct area *)ruling->element - job->areas);
    bool used = job->has_roof && names(&job->roof.area, KIND_AREA, self);
    for (size_t i = 0; i < job->joists_count; i++)
        used |= names(&job->joists[i].area, KIND_AREA, self);
    for (size_t i = 0; i < job->load_count; i++)
        used |= names(&job->loads[i].area, KIND_AREA, self);
    for (size_t i = 0; i < job->obstruction_count; i++)
        used |= names(&job->obstructions[i].area, KIND_AREA, self);
    if (!used && !roof_misses_its_area(job) && !misspelt_somewhere(ruling))
        rule_broken(ruling, NULL,
                    "%s comes to nothing: no joists, load, member in the way or roof names it; write 'area = area %s' "
                    "there, or take it out",
                    ruling->name, ruling->head->id);
}

/* The wall's load goes somewhere: with no beam in the job there is nothing to size. */
static void wall_out_needs_a_beam(const struct ruling *ruling)
{
    const struct wall *wall = ruling->element;
    if (wall->status.choice == WALL_COMES_OUT && wall->bearing.choice != NO && ruling->job->beam_count == 0)
        rule_broken(ruling, wall->status.at,
                    "%s comes out, and no beam takes its place; write a [beam ID] section, or 'bearing = no' where "
                    "nothing stands, lies or hangs on it",
                    ruling->name);
}

static void wall_bears_or_not(const struct ruling *ruling)
{
    const struct wall *wall = ruling->element;
    if (wall->bearing.choice == NO && wall->under.at)
        rule_broken(ruling, wall->bearing.at, "%s bears nothing, and a beam takes its place: 'under'; keep one of them",
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
        if (joists->first_joist.at && joists->first_joist.length > farthest_place(beam))
            rule_broken(ruling, joists->first_joist.at,
                        "'first joist' of [joists %s], %s, is beyond %s, which spans %s", joists->head.id,
                        length_tape(arena, joists->first_joist.length), ruling->name,
                        length_tape(arena, beam->clear_span.length));
    }
}

static const struct rule rules[] = {
    {KIND_JOISTS, DIAG_K017, joists_come_to_a_beam},  {KIND_BEAM, DIAG_K017, beam_carries_something},
    {KIND_BEAM, DIAG_K009, beam_meets_its_joists},    {KIND_WALL, DIAG_K017, wall_out_needs_a_beam},
    {KIND_WALL, DIAG_K013, wall_bears_or_not},        {KIND_POST, DIAG_K018, post_carries_something},
    {KIND_BLOCK, DIAG_K018, block_carries_something}, {KIND_FOOTING, DIAG_K018, footing_carries_something},
    {KIND_AREA, DIAG_K017, area_comes_to_something},
};
const struct rules rules_of_path = {rules, sizeof rules / sizeof *rules};
