/* What keeps the ends of a beam from rolling over: NDS 2018 3.3.3, 4.4.1. */
#include "size.h"

#include <math.h>

/* Joists hung on both faces hold an end when the first is no farther from it (common practice, no source). */
static const double hung_within_in = 24;
/* Dressed sizes that are meant to be the same differ by so much: 9-1/4 in sawn beside 9-1/2 in LVL (common practice).
 */
static const double depth_slack_in = 0.5;

static bool joists_near(const struct beam_design *bd, int side, double place_in)
{
    const struct joist_design *jd = bd->side[side];
    for (size_t i = 0; jd && i < jd->brace_count; i++)
        if (fabs(length_inches(jd->brace[i]) - place_in) <= hung_within_in)
            return true;
    return false;
}

static bool joists_hold(const struct beam_design *bd, double place_in)
{
    bool hung = bd->beam->set.choice != SET_UPSET && bd->beam->set.choice != SET_DROPPED;
    return hung && joists_near(bd, 0, place_in) && joists_near(bd, 1, place_in);
}

/* 4.4.1.2: no deeper than twice as wide needs no support. */
static bool is_squat(const struct beam_design *bd)
{
    return bd->member->depth <= 2 * bd->width;
}

static const char *const said[] = {[HELD_BLOCKS] = "a full-depth block on each face",
                                   [HELD_STRAPS] = "a strap on each face",
                                   [HELD_KING_STUDS] = "a king stud on each face"};

/* In words, or NULL. */
static const char *held_by(const struct beam_design *bd, int end)
{
    const struct beam *beam = bd->beam;
    if (beam->held[end].choice != HELD_UNANSWERED)
        return said[beam->held[end].choice];
    if (bd->end_hanger[end])
        return "its hanger";
    if (is_squat(bd))
        return "its breadth: no deeper than twice its width (4.4.1.2)";
    if (joists_hold(bd, end ? length_inches(bd->cut_length - bd->beam->overhang[1].length)
                            : length_inches(bd->beam->overhang[0].length)))
        return "joists hung on both faces within 24 in of it";
    return NULL;
}

static void find_what(struct sizing *s, const struct beam_design *bd, enum end_held how, const struct text_value *of,
                      const struct member **wood, const struct hanger **strap)
{
    bool straps = how == HELD_STRAPS;
    *wood = of->at && !straps ? catalog_member(s->catalog, of->text) : NULL;
    *strap = of->at && straps ? catalog_hanger(s->catalog, of->text) : NULL;
    if (*strap && (*strap)->kind != CONNECTOR_STRAP)
        *strap = NULL;
    if (of->at && !*wood && !*strap)
        diag_add(s->diags, DIAG_C006, place_of(of->at, &bd->beam->head), "'%s' is not the code of %s", of->text,
                 straps ? "a strap in hangers.csv" : "a member in members.csv");
}

static void check_block(struct sizing *s, const struct beam_design *bd, const char *place, enum end_held how,
                        const struct member *wood, struct member_checks *checks)
{
    if (how != HELD_BLOCKS || !wood || length_inches(wood->depth) >= length_inches(bd->member->depth) - depth_slack_in)
        return; /* deep enough: no ratio worth a line */
    struct check check = check_of(arena_printf(s->arena, "%s, block as deep as the beam", place), "NDS 2018 4.4.1.2",
                                  length_inches(bd->member->depth) - depth_slack_in, length_inches(wood->depth), "in");
    check.note = "full depth, 1/2 in less is taken as full (common practice)";
    checks_add(s, checks, check);
}

static void ask(struct sizing *s, const struct beam_design *bd, int end, const char *id)
{
    bool post = bd->beam->end_[end].kind == END_POST;
    diag_add(s->diags, DIAG_S008, place_of(bd->beam->end_[end].at, &bd->beam->head),
             "end %d of %s: what keeps it from rolling over? write 'held %d = blocks'%s or 'straps', and 'held %d of'",
             end + 1, id, end + 1, post ? ", 'king studs'" : "", end + 1);
}

static bool is_answered_for(const struct beam *beam)
{
    return beam->specified_by.at || beam->status.choice == NE_EXISTING;
}

/* Over an inner support its lower edge is compressed, and the support counts as holding it upright: it must be held
 * there, too. */
static void check_inner(struct sizing *s, const struct beam_design *bd, size_t which, struct member_checks *checks)
{
    struct inner_design *inner = &bd->inner[which];
    const struct beam_inner *said_there = inner->inner;
    const char *id = inner_name(s, bd, which);
    find_what(s, bd, said_there->held, &said_there->held_of, &inner->held_wood, &inner->held_strap);
    check_block(s, bd, arena_printf(s->arena, "inner support %zu", which + 1), said_there->held, inner->held_wood,
                checks);
    inner->held = said_there->held != HELD_UNANSWERED ? said[said_there->held]
                  : is_squat(bd)                      ? "its breadth: no deeper than twice its width (4.4.1.2)"
                  : joists_hold(bd, length_inches(said_there->on.at_length))
                      ? "joists hung on both faces within 24 in of it"
                      : NULL;
    if (inner->held)
        basis_add(s, arena_printf(s->arena, "%s: held against rolling over by %s", id, inner->held));
    else if (is_answered_for(bd->beam))
        unchecked_add(s, arena_printf(s->arena, "not checked: what keeps %s from rolling over", id));
    else
        diag_add(s->diags, DIAG_S008, place_of(said_there->on.at, &bd->beam->head),
                 "%s: what keeps the beam from rolling over there? add ', held by blocks of CODE'%s or ', held by "
                 "straps of CODE' to it",
                 id, inner->post ? ", ', held by king studs of CODE'" : "");
}

void rolling_check(struct sizing *s, size_t index, struct member_checks *checks)
{
    struct beam_design *bd = &s->design->beams[index];
    for (int end = 0; end < 2; end++) {
        enum end_held how = (enum end_held)bd->beam->held[end].choice;
        bd->held[end] = held_by(bd, end);
        find_what(s, bd, how, &bd->beam->held_of[end], &bd->held_wood[end], &bd->held_strap[end]);
        check_block(s, bd, arena_printf(s->arena, "end %d", end + 1), how, bd->held_wood[end], checks);
        if (bd->held[end])
            basis_add(s, arena_printf(s->arena, "%s, end %d: held against rolling over by %s", checks->id, end + 1,
                                      bd->held[end]));
        else if (is_answered_for(bd->beam))
            unchecked_add(s, arena_printf(s->arena, "not checked: what keeps end %d of %s from rolling over", end + 1,
                                          checks->id));
        else if (bd->beam->end_[end].kind != END_UNANSWERED)
            ask(s, bd, end, checks->id);
    }
    for (size_t i = 0; i < bd->inner_count; i++)
        check_inner(s, bd, i, checks);
}
