/* Joists of one side of a beam: where they are, what each end brings, its hanger, its checks. */
#include "size.h"

#include <math.h>

static void joist_size(struct joist_design *jd)
{
    length_t width = 0, depth = 0;
    joist_book_size(jd->joists->size.text, &width, &depth);
    jd->width = jd->joists->measured_width.at ? jd->joists->measured_width.length : width;
    jd->depth = jd->joists->measured_depth.at ? jd->joists->measured_depth.length : depth;
}

/* Places from end 1 of the beam. */
static void fill_places(struct sizing *s, struct joist_design *jd, length_t cut_length)
{
    const struct joists *joists = jd->joists;
    jd->count = 0;
    if (joists->at.count > 0) {
        jd->place = arena_array(s->arena, joists->at.count, sizeof *jd->place);
        for (size_t i = 0; i < joists->at.count; i++)
            jd->place[jd->count++] = joists->at.item[i];
        return;
    }
    length_t spacing = joists->spacing.length;
    if (spacing <= 0)
        return;
    length_t from = joists->from.at ? joists->from.length : 0, to = joists->to.at ? joists->to.length : cut_length;
    length_t shift = jd->side == 1 && joists->over_the_wall.choice == OVER_LAPPED ? jd->width : 0;
    length_t at = (joists->first_joist.at ? joists->first_joist.length : from + spacing) + shift;
    if (to > cut_length)
        to = cut_length;
    size_t capacity = 0;
    for (; at <= to; at += spacing) {
        if (at < from)
            continue;
        jd->place = arena_more(s->arena, jd->place, jd->count, &capacity, sizeof *jd->place);
        jd->place[jd->count++] = at;
    }
}

double joist_spacing_ft(const struct joist_design *jd)
{
    double spacing = length_feet(jd->joists->spacing.length);
    if (jd->joists->at.count == 0)
        return spacing;
    for (size_t i = 1; i < jd->joists->at.count; i++) /* as they were before any opening */
        spacing = fmax(spacing, fabs(length_feet(jd->joists->at.item[i] - jd->joists->at.item[i - 1])));
    return spacing;
}

void joists_place(struct sizing *s, struct joist_design *jd)
{
    size_t beam = (size_t)(jd->beam - s->job->beams);
    struct loads psf = area_psf(s, area_of(s->job, &jd->joists->area));
    joist_size(jd);
    jd->place = NULL;
    fill_places(s, jd, s->design->beams[beam].cut_length);
    joists_add_new(s, jd);
    jd->reaction_span_ft = length_feet(jd->joists->run.length) / 2;
    jd->line_plf = loads_plus(loads_times(psf, jd->reaction_span_ft), s->share[beam][jd->side]);
    jd->end_lb = loads_times(jd->line_plf, joist_spacing_ft(jd));
    openings_place(s, jd);
    joists_ends_place(s, jd);
}

struct check choose_hanger(struct sizing *s, const struct hanger_need *need, const char *name,
                           const struct hanger **out)
{
    const struct hanger **list;
    size_t count = hangers_sorted(s, need, &list);
    struct check best = {0};
    *out = NULL;
    for (size_t i = 0; i < count; i++) {
        struct check check = hanger_check(s, list[i], &need->lb, need->gravity, name);
        if (ratio_holds(check.ratio)) {
            *out = list[i];
            return check;
        }
        if (!best.name || check.ratio < best.ratio)
            best = check;
    }
    if (best.name)
        return best;
    best = check_of(name, "listed load (hangers.csv)", fmax(loads_sum(need->lb), 1), 0, "lb");
    best.note = arena_printf(s->arena, "no hanger in hangers.csv fits a member %s wide and %s deep",
                             length_tape(s->arena, length_from_inches(need->width_in)),
                             length_tape(s->arena, length_from_inches(need->depth_in)));
    return best;
}

bool joists_check(struct sizing *s, struct joist_design *jd)
{
    const char *name = head_name(s->arena, KIND_JOISTS, &jd->joists->head);
    const char *id = arena_printf(s->arena, "%s on %s, side %c", name, head_name(s->arena, KIND_BEAM, &jd->beam->head),
                                  jd->side ? 'B' : 'A');
    joists_over_report(s, jd);
    if (!needs_hangers(jd->beam) && !joists_tie_roof(s, jd))
        return true;
    struct member_checks *checks =
        checks_new(s, id, jd->joists->size.text ? jd->joists->size.text : "joists, size by the tape");
    if (needs_hangers(jd->beam))
        joists_ends_hang(s, jd, checks);
    ties_check(s, jd, checks);
    return checks_close(s, checks, &jd->joists->head.at);
}
