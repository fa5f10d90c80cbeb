/* The four stages of the work, each with what stands in it and what of it governs. */
#include "size.h"

#include <math.h>
#include <string.h>

#include "sawbill/text.h"

static const char *const name_of[] = {"", "wall up, shores snug", "wall out", "beam in, joists half hung",
                                      "all hung, shores out"};

static const struct member_checks *checks_of(const struct sizing *s, const char *id)
{
    for (size_t i = 0; i < s->design->member_count; i++)
        if (strcmp(s->design->members[i]->id, id) == 0)
            return s->design->members[i];
    return NULL;
}

static void add(struct sizing *s, struct stage stage)
{
    struct design *design = s->design;
    stage.name = name_of[stage.number];
    design->stage =
        arena_more(s->arena, design->stage, design->stage_count, &design->stage_capacity, sizeof *design->stage);
    design->stage[design->stage_count++] = stage;
}

static struct stage stage_of(struct sizing *s, int number, const char *what, const char *id, double lb)
{
    struct stage stage = {.number = number, .what = what, .lb = lb, .ratio = NAN};
    const struct member_checks *checks = checks_of(s, id);
    stage.specified = checks && checks->specified;
    for (size_t i = 0; checks && i < checks->count; i++)
        if (checks->check[i].governs) {
            stage.governs = checks->check[i].name;
            stage.ratio = checks->check[i].ratio;
        }
    return stage;
}

/* While the wall stands a shore that is jacked snug has no more than the dead load: with more it lifts the joists off
 * the wall.  A stud has the same capacity under it, so that its ratio goes by the load. */
static void list_shores_snug(struct sizing *s)
{
    for (size_t i = 0; i < s->design->shore_count; i++) {
        const struct shore_design *sd = &s->design->shores[i];
        const char *name = head_name(s->arena, KIND_SHORE, &sd->shore->head);
        const struct member_checks *checks = checks_of(s, name);
        struct stage stage = {.number = 1, .what = name, .lb = sd->dead_lb, .ratio = NAN};
        const char *upright = sd->strongback ? "post under the strongback" : "shore stud";
        for (size_t k = 0; checks && k < checks->count; k++)
            if (strcmp(checks->check[k].name, upright) == 0 && sd->stud_lb > 0) {
                stage.governs = upright;
                stage.ratio = checks->check[k].ratio * sd->dead_lb / sd->stud_lb;
            }
        stage.rule = sd->lift ? arena_printf(s->arena,
                                             "jack no further than snug, at most 1/8 in at a go (common practice): %s "
                                             "of dead load lifts it off the wall",
                                             sd->lift)
                              : "jack no further than snug, at most 1/8 in at a go (common practice)";
        add(s, stage);
    }
}

static void list_wall_out(struct sizing *s)
{
    for (size_t i = 0; i < s->design->shore_count; i++) {
        const struct shore_design *sd = &s->design->shores[i];
        const char *name = head_name(s->arena, KIND_SHORE, &sd->shore->head);
        struct stage stage = stage_of(s, 2, name, name, sd->stud_lb);
        stage.rule = "carries all of the dead and live load until the last hanger is nailed";
        add(s, stage);
    }
}

static bool is_hung_from_both_sides(const struct beam_design *bd)
{
    return bd->member && bd->side[0] && bd->side[1] && needs_hangers(bd->beam);
}

static bool is_new(const struct beam_design *bd)
{
    return bd->beam->status.choice != NE_EXISTING && bd->member;
}

/* A beam with one side, or with joists on top, has nothing between: what it carries is that of the end. */
static void list_half_hung(struct sizing *s)
{
    for (size_t i = 0; i < s->design->beam_count; i++) {
        const struct beam_design *bd = &s->design->beams[i];
        const char *name = head_name(s->arena, KIND_BEAM, &bd->beam->head);
        if (!is_new(bd))
            continue;
        if (!is_hung_from_both_sides(bd)) {
            add(s, (struct stage){.number = 3,
                                  .what = name,
                                  .lb = NAN,
                                  .ratio = NAN,
                                  .rule = "has joists of one side, or has them on top: no more than when all is done"});
            continue;
        }
        struct stage stage = stage_of(s, 3, name, arena_printf(s->arena, "%s, half hung", name), NAN);
        stage.rule = "hang from both sides by turns, at most 4 hangers ahead; hold it at its ends and in the middle";
        add(s, stage);
    }
}

static void list_done(struct sizing *s)
{
    for (size_t i = 0; i < s->design->beam_count; i++) {
        const struct beam_design *bd = &s->design->beams[i];
        const char *name = head_name(s->arena, KIND_BEAM, &bd->beam->head);
        if (is_new(bd))
            add(s, stage_of(s, 4, name, name, fmax(loads_sum(bd->end_lb[0]), loads_sum(bd->end_lb[1]))));
    }
}

void stages_list(struct sizing *s)
{
    list_shores_snug(s);
    list_wall_out(s);
    list_half_hung(s);
    list_done(s);
}
