/* Rules across the keys of members in the way. */
#include "rules.h"

static bool own_pounds(const struct obstruction *it)
{
    return it->dead.at || it->live.at || it->snow.at;
}

static void says_what_it_carries(const struct ruling *ruling)
{
    const struct obstruction *it = ruling->element;
    if (it->then.choice == THEN_TAKEN_OUT)
        return;
    if (!own_pounds(it) && !(it->area.at && it->carries.at))
        rule_broken(
            ruling, it->area.at ? it->area.at : it->carries.at,
            "%s needs what it carries: 'area' and 'carries', or 'dead', 'live' and 'snow' in lb; 0 is an answer",
            ruling->name);
    if (it->then.choice == THEN_LANDS && !it->seat.at)
        rule_broken(ruling, it->then.at, "%s lands on the beam and needs 'seat': its length across the beam",
                    ruling->name);
}

static bool weighs(const struct quantity_value *value)
{
    return value->at && value->quantity.millionths > 0;
}

static void taken_out_carries_nothing(const struct ruling *ruling)
{
    const struct obstruction *it = ruling->element;
    const struct quantity_value *const all[] = {&it->dead, &it->live, &it->snow, &it->carries};
    for (size_t i = 0; i < 4; i++)
        if (it->then.choice == THEN_TAKEN_OUT && weighs(all[i])) {
            rule_broken(ruling, all[i]->at,
                        "%s carries something: it cannot be taken out; it lands on the beam or is "
                        "headered off",
                        ruling->name);
            return;
        }
    if ((own_pounds(it) || it->net_uplift.at) && it->carries.at)
        rule_broken(ruling, it->carries.at, "%s has 'carries' and loads of its own; keep one of them", ruling->name);
}

static void stands_within(const struct ruling *ruling)
{
    const struct obstruction *it = ruling->element;
    struct arena *arena = ruling->checker->arena;
    if (!ref_found(&it->on) || !it->at.at)
        return;
    const struct beam *beam = &ruling->job->beams[it->on.index];
    if (beam->clear_span.at && it->at.length > farthest_place(beam))
        rule_broken(ruling, it->at.at, "%s at %s is beyond [beam %s], which spans %s", ruling->name,
                    length_tape(arena, it->at.length), beam->head.id, length_tape(arena, beam->clear_span.length));
}

static const struct rule rules[] = {
    {KIND_OBSTRUCTION, DIAG_K004, says_what_it_carries},
    {KIND_OBSTRUCTION, DIAG_K013, taken_out_carries_nothing},
    {KIND_OBSTRUCTION, DIAG_K009, stands_within},
};
const struct rules rules_of_obstructions = {rules, sizeof rules / sizeof *rules};
