/* Rules of what loads bring: those that grow along the beam, lift it or come to nothing. */
#include "rules.h"

/* A load that grows or falls along the beam says its figure at both ends. */
static void load_tapers(const struct ruling *ruling)
{
    const struct load *load = ruling->element;
    const struct {
        const char *key;
        const struct quantity_value *at_from, *at_to;
    } pairs[] = {{"dead", &load->dead, &load->dead_to},
                 {"live", &load->live, &load->live_to},
                 {"snow", &load->snow, &load->snow_to}};
    for (size_t i = 0; i < 3; i++) {
        const struct entry *to = pairs[i].at_to->at;
        if (!to)
            continue;
        if (load->at.at)
            rule_broken(ruling, to, "%s has 'at' and '%s to'; a load in one point does not grow along the beam",
                        ruling->name, pairs[i].key);
        else if (!pairs[i].at_from->at)
            rule_broken(ruling, to, "'%s to' needs '%s': what it is at 'from'; 0 is an answer", pairs[i].key,
                        pairs[i].key);
    }
}

static void area_uplift(const struct ruling *ruling)
{
    const struct area *area = ruling->element;
    const struct entry *said = area->net_uplift.at ? area->net_uplift.at : area->uplift_engineer.at;
    if (said && area->live_is.choice != LIVE_ROOF && area->live_is.choice)
        rule_broken(ruling, said, "%s has an uplift, but is no roof", ruling->name);
    else if (area->net_uplift.at && area->uplift_engineer.at)
        rule_broken(ruling, area->uplift_engineer.at,
                    "%s has 'net uplift', and an 'uplift engineer' who says that there is none; keep one of them",
                    ruling->name);
}

static bool above_names(const struct beam *beam, size_t wall)
{
    for (size_t i = 0; i < beam->above.count; i++)
        if (beam->above.item[i].kind == KIND_WALL && beam->above.item[i].index == wall)
            return true;
    return false;
}

/* A weight that comes to nothing would leave everything below it too light. */
static void wall_weight_comes_down(const struct ruling *ruling)
{
    const struct wall *wall = ruling->element;
    const struct job *job = ruling->job;
    bool stands = wall->on.at != NULL;
    for (size_t i = 0; i < job->beam_count; i++)
        stands |= above_names(&job->beams[i], (size_t)(wall - job->walls));
    if (wall->status.choice == WALL_STAYS && wall->weight.quantity.millionths > 0 && !stands)
        rule_broken(ruling, wall->weight.at,
                    "%s stays and weighs, and its weight comes to nothing; write 'on = beam ID', or take 'weight' out",
                    ruling->name);
}

/* Of its own snow; an area that it carries says the level itself. */
static void judge_level(const struct ruling *ruling, const struct choice_value *level, bool snow)
{
    const struct choice_value *by = &ruling->job->facts.loads_by;
    if (level->at && !snow)
        rule_broken(ruling, level->at, "%s has no snow of its own, so that 'snow level' says nothing", ruling->name);
    else if (level->choice == LEVEL_STRENGTH && by->at && by->choice == LOADS_ASCE_7_16)
        rule_broken(ruling, level->at,
                    "%s has snow at strength level, which ASCE 7-16 does not know; write 'loads by = ASCE 7-22' in "
                    "[job], or 'snow level = allowable'",
                    ruling->name);
}

static void load_snow_level(const struct ruling *ruling)
{
    const struct load *load = ruling->element;
    judge_level(ruling, &load->snow_level, load->snow.at || load->snow_to.at);
}

static void obstruction_snow_level(const struct ruling *ruling)
{
    const struct obstruction *it = ruling->element;
    judge_level(ruling, &it->snow_level, it->snow.at != NULL);
}

static const struct rule rules[] = {
    {KIND_LOAD, DIAG_K013, load_snow_level},
    {KIND_OBSTRUCTION, DIAG_K013, obstruction_snow_level},
    {KIND_WALL, DIAG_K017, wall_weight_comes_down},
    {KIND_AREA, DIAG_K013, area_uplift},
    {KIND_LOAD, DIAG_K017, load_tapers},
};
const struct rules rules_of_loads = {rules, sizeof rules / sizeof *rules};
