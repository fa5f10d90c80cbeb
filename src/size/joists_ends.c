/* Joists of a side one by one: their own size, how far off the line they stand, and the hanger of each. */
#include "size.h"

#include <math.h>

/* What the list says of the joist at this place; NULL: it is in none of its items. */
static const struct placed_length *placed_at(const struct placed_lengths_value *list, length_t at)
{
    for (size_t i = 0; i < list->count; i++)
        if (at >= list->item[i].from && at <= list->item[i].to)
            return &list->item[i];
    return NULL;
}

static bool is_doubled(const struct joist_design *jd, length_t at)
{
    for (size_t i = 0; i < jd->joists->doubled_at.count; i++)
        if (jd->joists->doubled_at.item[i] == at)
            return true;
    return joist_gets_another(jd->joists, at);
}

static struct joist_end end_at(const struct joist_design *jd, length_t at)
{
    const struct joists *joists = jd->joists;
    const struct placed_length *width = placed_at(&joists->measured_widths, at),
                               *depth = placed_at(&joists->measured_depths, at),
                               *high = placed_at(&joists->high_by, at), *low = placed_at(&joists->low_by, at);
    struct joist_end end = {.at = at,
                            .width = width ? width->length : jd->width,
                            .depth = depth ? depth->length : jd->depth,
                            .off_line = (high ? high->length : 0) - (low ? low->length : 0),
                            .doubled = is_doubled(jd, at)};
    end.own_size = end.width != jd->width || end.depth != jd->depth;
    return end;
}

void joists_ends_place(struct sizing *s, struct joist_design *jd)
{
    jd->end = arena_array(s->arena, jd->count, sizeof *jd->end);
    for (size_t i = 0; i < jd->count; i++)
        jd->end[i] = end_at(jd, jd->place[i]);
}

void joists_least_size(const struct joist_design *jd, length_t *width, length_t *depth)
{
    *width = jd->width;
    *depth = jd->depth;
    for (size_t i = 0; i < jd->count; i++) {
        if (jd->end[i].width < *width)
            *width = jd->end[i].width;
        if (jd->end[i].depth < *depth)
            *depth = jd->end[i].depth;
    }
}

static bool same_hanger(const struct joist_end *a, const struct joist_end *b)
{
    return a->width == b->width && a->depth == b->depth && a->doubled == b->doubled;
}

static const char *check_name(struct sizing *s, const struct joist_end *end)
{
    const char *kind = end->doubled ? "hanger of a doubled joist" : "joist hanger";
    if (!end->own_size)
        return kind;
    return arena_printf(s->arena, "%s, %s x %s", kind, length_tape(s->arena, end->width),
                        length_tape(s->arena, end->depth));
}

void joists_ends_hang(struct sizing *s, struct joist_design *jd, struct member_checks *checks)
{
    size_t beam = (size_t)(jd->beam - s->job->beams);
    const struct design_row *carrier = s->design->beams[beam].values;
    double gravity = lighter_wood(joists_gravity(s, jd->joists), carrier ? carrier->gravity : 0);
    if (!jd->joists->species.at)
        unchecked_add(s,
                      arena_printf(s->arena,
                                   "not checked: hangers of %s in wood lighter than they are listed for: the species "
                                   "of the joists is not said",
                                   head_name(s->arena, KIND_JOISTS, &jd->joists->head)));
    for (size_t i = 0; i < jd->count; i++) {
        struct joist_end *end = &jd->end[i];
        size_t like = 0;
        while (like < i && !same_hanger(&jd->end[like], end))
            like++;
        if (like < i) {
            end->hanger = jd->end[like].hanger;
            continue;
        }
        struct hanger_need need = {.width_in = length_inches(end->width) * (end->doubled ? 2 : 1),
                                   .depth_in = length_inches(end->depth - jd->joists->seat_planed.length),
                                   .carrier_in = s->width_in[beam],
                                   .gravity = gravity,
                                   .lb = jd->end_lb};
        checks_add(s, checks, choose_hanger(s, &need, check_name(s, end), &end->hanger));
    }
}
