/* Members that stand where the beam goes: where they land on it, and what becomes of those that do not. */
#include "size.h"

#include <math.h>

/* A load that neighbours take without a question (common practice, no source). */
static const double small_lb = 100;

/* The lumber of the catalog with the least Fc perp: its own wood is not known. */
static const struct design_row *weakest(const struct sizing *s)
{
    const struct design_row *least = NULL;
    for (size_t i = 0; i < s->catalog->design_count; i++) {
        const struct design_row *row = &s->catalog->design[i];
        if (row->table[0] == '4' && row->fc_perp > 0 && (!least || row->fc_perp < least->fc_perp))
            least = row;
    }
    return least;
}

static double seat_area(const struct obstruction *it, const struct beam_design *bd)
{
    length_t seat = it->seat.length < bd->width ? it->seat.length : bd->width;
    return length_inches(seat) * length_inches(it->width.length);
}

/* A rafter lies on its birdsmouth: pressed across the grain, or at an angle to it that makes it stronger (3.10.3).  Of
 * braces and struts the end stands there, and the beam alone is pressed across. */
static struct check seat_check(struct sizing *s, const struct obstruction *it, const struct beam_design *bd)
{
    struct loads lb = obstruction_lb(s, it);
    double area = seat_area(it, bd), capacity = bd->values->fc_perp;
    bool lies = it->what.choice == RAFTER_TAIL || it->what.choice == NAILER;
    const struct design_row *own = lies ? weakest(s) : NULL;
    if (own)
        capacity = fmin(capacity, own->fc_perp);
    struct check worst = {0};
    for (size_t i = 0; i < s->combo_count; i++) {
        if (!combo_applies(&s->combo[i], &lb))
            continue;
        struct check check =
            check_of("seat on the beam", "NDS 2018 3.10.2", combined(&s->combo[i], &lb) / area, capacity, "psi");
        check.combination = s->combo[i].name;
        check.at_in = length_inches(it->at.length);
        check.values = values_both(s->arena, bd->member->values, own);
        check.note = arena_printf(s->arena, "%s wide x its seat, no longer than the beam is wide; Cb 1.0%s",
                                  length_tape(s->arena, it->width.length),
                                  lies ? "; its own wood not known: the weakest of the catalog, across the grain" : "");
        check_worse(&worst, check);
    }
    return worst;
}

static bool check_landing(struct sizing *s, const struct obstruction *it)
{
    const struct beam_design *bd = &s->design->beams[it->on.index];
    const char *name = head_name(s->arena, KIND_OBSTRUCTION, &it->head);
    if (!bd->member)
        return true; /* its beam is not there to land on: said elsewhere */
    struct member_checks *checks = checks_new(s, name, choice_name("obstruction", "what", it->what.choice));
    checks_wood(checks, bd->member->values);
    checks_add(s, checks, seat_check(s, it, bd));
    length_t seat = it->seat.length < bd->width ? it->seat.length : bd->width;
    checks_add(s, checks, check_of("least bearing length", "IRC 2021 R802.6", 1.5, length_inches(seat), "in"));
    unchecked_add(
        s, arena_printf(s->arena, "not checked: the notch that makes the seat of %s, and what ties it down", name));
    return checks_close(s, checks, &it->head.at);
}

static void say_prop(struct sizing *s, const struct obstruction *it)
{
    if (it->then.choice != THEN_TAKEN_OUT && it->own_prop.choice == YES)
        unchecked_add(s, arena_printf(s->arena, "not checked: the prop under %s and the floor below it",
                                      head_name(s->arena, KIND_OBSTRUCTION, &it->head)));
}

/* What it brought goes to its neighbours, which the job does not describe. */
static void judge_headered(struct sizing *s, const struct obstruction *it)
{
    const char *name = head_name(s->arena, KIND_OBSTRUCTION, &it->head);
    double lb = loads_sum(obstruction_lb(s, it));
    if (it->engineer.text && *it->engineer.text)
        unchecked_add(s, arena_printf(s->arena, "not checked: what %s is headered off to, by the engineer (%s)", name,
                                      it->engineer.text));
    else if (lb > small_lb)
        diag_add(s->diags, DIAG_S005, &it->head.at,
                 "%s brings more than 100 lb to its neighbours when it is headered off: an engineer must say that they "
                 "hold; write 'engineer = NAME, SHEET', or land it on the beam",
                 name);
    else
        unchecked_add(
            s, arena_printf(s->arena, "not checked: the neighbours that %s is headered off to (at most 100 lb)", name));
}

bool obstructions_check(struct sizing *s)
{
    bool holds = true;
    for (size_t i = 0; i < s->job->obstruction_count; i++) {
        const struct obstruction *it = &s->job->obstructions[i];
        say_prop(s, it);
        if (it->then.choice == THEN_LANDS && it->on.at)
            holds &= check_landing(s, it);
        else if (it->then.choice == THEN_HEADERED_OFF)
            judge_headered(s, it);
    }
    return holds;
}
