/* Rules across keys of what carries and what comes out: post, block, footing, wall, shore. */
#include "rules.h"

static void judge_standing_on_wall(const struct ruling *ruling, const struct ref_value *on)
{
    if (!ref_found(on) || on->kind != KIND_WALL)
        return;
    const struct wall *wall = &ruling->job->walls[on->index];
    if (wall->status.choice == WALL_COMES_OUT)
        rule_broken(ruling, on->at, "%s stands on wall %s, which comes out", ruling->name, wall->head.id);
}

static void post_wall_stays(const struct ruling *ruling)
{
    const struct post *post = ruling->element;
    judge_standing_on_wall(ruling, &post->stands_on);
}

static void block_wall_stays(const struct ruling *ruling)
{
    const struct block *block = ruling->element;
    judge_standing_on_wall(ruling, &block->stands_on);
}

static void footing_new_needs_size(const struct ruling *ruling)
{
    const struct footing *footing = ruling->element;
    if (footing->status.choice != NE_NEW)
        return;
    if (!footing->size.at)
        rule_broken(ruling, NULL, "%s is new and needs 'size': the side of its square", ruling->name);
    if (!footing->thickness.at)
        rule_broken(ruling, NULL, "%s is new and needs 'thickness'", ruling->name);
}

static void wall_on_needs_weight(const struct ruling *ruling)
{
    const struct wall *wall = ruling->element;
    if (wall->on.at && !wall->weight.at)
        rule_broken(ruling, wall->on.at, "%s is on a beam and needs 'weight' of its face, such as '8 psf'",
                    ruling->name);
}

static void wall_out_stands_nowhere(const struct ruling *ruling)
{
    const struct wall *wall = ruling->element;
    if (wall->status.choice == WALL_COMES_OUT && wall->on.at)
        rule_broken(ruling, wall->on.at, "%s comes out, so it is 'under' a beam, not 'on' it", ruling->name);
    if (wall->status.choice == WALL_STAYS && wall->under.at)
        rule_broken(ruling, wall->under.at, "%s stays, so no beam takes its place; leave 'under' out", ruling->name);
}

static void wall_out_needs_length(const struct ruling *ruling)
{
    const struct wall *wall = ruling->element;
    if (wall->status.choice == WALL_COMES_OUT && !wall->length.at)
        rule_broken(ruling, NULL, "%s comes out and needs 'length'", ruling->name);
}

static void wall_stretch(const struct ruling *ruling)
{
    const struct wall *wall = ruling->element;
    judge_stretch(ruling, &wall->from, &wall->to);
}

static void shore_holds_something(const struct ruling *ruling)
{
    const struct shore *shore = ruling->element;
    if (shore->holds.nothing)
        rule_broken(ruling, shore->holds.at, "%s holds nothing; name the joists, loads and beams, or take it out",
                    ruling->name);
}

static void shore_holds_braces(const struct ruling *ruling)
{
    const struct shore *shore = ruling->element;
    const struct roof *roof = &ruling->job->roof;
    for (size_t i = 0; i < shore->holds.count; i++)
        if (shore->holds.item[i].kind == KIND_ROOF && roof->braces.count == 0)
            rule_broken(ruling, shore->holds.at, "%s holds roof braces, and [roof] has none: 'braces'", ruling->name);
        else if (shore->holds.item[i].kind == KIND_ROOF && roof->braces_own_prop.choice == YES)
            rule_broken(ruling, shore->holds.at,
                        "%s holds roof braces, and each has a prop of its own: 'braces own prop'; keep one of them",
                        ruling->name);
}

static void shore_over_parallel_joists(const struct ruling *ruling)
{
    const struct shore *shore = ruling->element;
    if (shore->below.choice == BELOW_JOISTS_PARALLEL && shore->held_below.choice == HELD_BELOW_NOTHING)
        rule_broken(ruling, shore->held_below.at,
                    "%s stands on joists that run parallel to it and is held by nothing below; write 'held below = "
                    "shore' or 'crib'",
                    ruling->name);
}

static void shore_held_below_needs_height(const struct ruling *ruling)
{
    const struct shore *shore = ruling->element;
    int held = shore->held_below.choice;
    if ((held == HELD_BELOW_CRIB || held == HELD_BELOW_SHORE) && !shore->height_below.at)
        rule_broken(ruling, shore->held_below.at, "%s is held below and needs 'height below', such as '7 ft'",
                    ruling->name);
    if (held == HELD_BELOW_CRIB && !shore->crib_timber.at)
        rule_broken(ruling, shore->held_below.at, "%s is held by a crib and needs 'crib timber', a code of members.csv",
                    ruling->name);
}

static void shore_tasks_need_a_set(const struct ruling *ruling)
{
    const struct shore *shore = ruling->element;
    const struct entry *at = shore->from_task.at ? shore->from_task.at : shore->to_task.at;
    if (at && !shore->set.at)
        rule_broken(ruling, at, "%s has no 'set', so that '%s' says nothing: it shares lumber within its set alone",
                    ruling->name, at->key_as);
}

/* What only a strongback has. */
static const struct entry *of_strongback(const struct shore *shore)
{
    const struct entry *at[4] = {shore->strongback_plies.at, shore->supports.at, shore->hung_by.at,
                                 shore->sag_limit.at};
    for (size_t i = 0; i < 4; i++)
        if (at[i])
            return at[i];
    return NULL;
}

static void shore_strongback_needs_posts(const struct ruling *ruling)
{
    const struct shore *shore = ruling->element;
    if (!shore->strongback.at && of_strongback(shore))
        rule_broken(ruling, of_strongback(shore), "%s has no 'strongback', so that '%s' says nothing", ruling->name,
                    of_strongback(shore)->key_as);
    if (shore->strongback.at && shore->supports.count < 2)
        rule_broken(ruling, shore->strongback.at,
                    "%s has a strongback and needs 'supports': two or more places of its posts, such as '3 in, 6 ft, "
                    "11 ft 9 in'",
                    ruling->name);
}

static void shore_supports_on_the_wood(const struct ruling *ruling)
{
    const struct shore *shore = ruling->element;
    size_t count = shore->supports.count; /* they ascend */
    if (count > 0 && shore->length.at && shore->supports.item[count - 1] > shore->length.length)
        rule_broken(ruling, shore->supports.at, "%s: the last of 'supports' lies beyond its 'length'", ruling->name);
}

static const struct rule rules[] = {
    {KIND_POST, DIAG_K013, post_wall_stays},
    {KIND_BLOCK, DIAG_K013, block_wall_stays},
    {KIND_FOOTING, DIAG_K017, footing_new_needs_size},
    {KIND_WALL, DIAG_K017, wall_on_needs_weight},
    {KIND_WALL, DIAG_K013, wall_out_stands_nowhere},
    {KIND_WALL, DIAG_K004, wall_out_needs_length},
    {KIND_WALL, DIAG_K013, wall_stretch},
    {KIND_SHORE, DIAG_K013, shore_holds_something},
    {KIND_SHORE, DIAG_K013, shore_holds_braces},
    {KIND_SHORE, DIAG_K013, shore_over_parallel_joists},
    {KIND_SHORE, DIAG_K017, shore_held_below_needs_height},
    {KIND_SHORE, DIAG_K017, shore_tasks_need_a_set},
    {KIND_SHORE, DIAG_K017, shore_strongback_needs_posts},
    {KIND_SHORE, DIAG_K013, shore_supports_on_the_wood},
};
const struct rules rules_of_support = {rules, sizeof rules / sizeof *rules};
