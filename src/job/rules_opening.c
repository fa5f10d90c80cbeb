/* Rules across the keys of openings. */
#include "rules.h"

static void opening_stretch(const struct ruling *ruling)
{
    const struct opening *opening = ruling->element;
    struct arena *arena = ruling->checker->arena;
    judge_stretch(ruling, &opening->from, &opening->to);
    if (opening->near.at && opening->far.at && opening->near.length >= opening->far.length)
        rule_broken(ruling, opening->far.at, "'far' of %s, %s, is not beyond 'near', %s", ruling->name,
                    length_tape(arena, opening->far.length), length_tape(arena, opening->near.length));
}

static const struct joists *field_of(const struct ruling *ruling)
{
    const struct opening *opening = ruling->element;
    return ref_found(&opening->joists) ? &ruling->job->joists[opening->joists.index] : NULL;
}

static void opening_within_run(const struct ruling *ruling)
{
    const struct opening *opening = ruling->element;
    const struct joists *joists = field_of(ruling);
    struct arena *arena = ruling->checker->arena;
    if (joists && joists->run.at && opening->far.at && opening->far.length > joists->run.length)
        rule_broken(ruling, opening->far.at,
                    "'far' of %s, %s, is beyond the far bearing of [joists %s], whose run is %s", ruling->name,
                    length_tape(arena, opening->far.length), joists->head.id, length_tape(arena, joists->run.length));
}

/* Headers there are where tails are. */
static void opening_needs_members(const struct ruling *ruling)
{
    const struct opening *opening = ruling->element;
    const struct joists *joists = field_of(ruling);
    bool through = joists && joists->run.at && opening->near.length == 0 && opening->far.length >= joists->run.length;
    if (!opening->header.at && !through)
        rule_broken(ruling, NULL, "%s needs 'header': the catalog code of what carries the joists that stop at it",
                    ruling->name);
    else if (!opening->header.at && !opening->trimmer.at)
        rule_broken(ruling, NULL, "%s needs 'trimmer': the catalog code of the joists at its sides", ruling->name);
}

/* Which beam the places count from. */
static void opening_has_one_beam(const struct ruling *ruling)
{
    const struct joists *joists = field_of(ruling);
    size_t beams = 0;
    for (size_t i = 0; joists && i < ruling->job->beam_count; i++)
        for (int side = 0; side < 2; side++) {
            const struct ref_value *ref = &ruling->job->beams[i].joists[side];
            beams += ref_found(ref) && &ruling->job->joists[ref->index] == joists;
        }
    if (beams > 1)
        rule_broken(ruling, ((const struct opening *)ruling->element)->joists.at,
                    "[joists %s] come to more than one beam, so the places of %s say nothing; give its side a [joists "
                    "ID] of its own",
                    joists->head.id, ruling->name);
}

static const struct rule rules[] = {
    {KIND_OPENING, DIAG_K013, opening_stretch},
    {KIND_OPENING, DIAG_K009, opening_within_run},
    {KIND_OPENING, DIAG_K004, opening_needs_members},
    {KIND_OPENING, DIAG_K013, opening_has_one_beam},
};
const struct rules rules_of_openings = {rules, sizeof rules / sizeof *rules};
