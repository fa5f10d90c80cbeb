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

/* In words, or NULL. */
static const char *held_by(const struct beam_design *bd, int end)
{
    static const char *const said[] = {[HELD_BLOCKS] = "a full-depth block on each face",
                                       [HELD_STRAPS] = "a strap on each face",
                                       [HELD_KING_STUDS] = "a king stud on each face"};
    const struct beam *beam = bd->beam;
    if (beam->held[end].choice != HELD_UNANSWERED)
        return said[beam->held[end].choice];
    if (bd->end_hanger[end])
        return "its hanger";
    if (is_squat(bd))
        return "its breadth: no deeper than twice its width (4.4.1.2)";
    if (joists_hold(bd, end ? length_inches(bd->cut_length) : 0))
        return "joists hung on both faces within 24 in of it";
    return NULL;
}

static void find_what(struct sizing *s, struct beam_design *bd, int end)
{
    const struct text_value *of = &bd->beam->held_of[end];
    bool strap = bd->beam->held[end].choice == HELD_STRAPS;
    bd->held_wood[end] = of->at && !strap ? catalog_member(s->catalog, of->text) : NULL;
    bd->held_strap[end] = of->at && strap ? catalog_hanger(s->catalog, of->text) : NULL;
    if (bd->held_strap[end] && bd->held_strap[end]->kind != CONNECTOR_STRAP)
        bd->held_strap[end] = NULL;
    if (of->at && !bd->held_wood[end] && !bd->held_strap[end])
        diag_add(s->diags, DIAG_C006, place_of(of->at, &bd->beam->head), "'%s' is not the code of %s", of->text,
                 strap ? "a strap in hangers.csv" : "a member in members.csv");
}

static void check_block(struct sizing *s, const struct beam_design *bd, int end, struct member_checks *checks)
{
    if (bd->beam->held[end].choice != HELD_BLOCKS || !bd->held_wood[end] ||
        length_inches(bd->held_wood[end]->depth) >= length_inches(bd->member->depth) - depth_slack_in)
        return; /* deep enough: no ratio worth a line */
    struct check check =
        check_of(arena_printf(s->arena, "end %d, block as deep as the beam", end + 1), "NDS 2018 4.4.1.2",
                 length_inches(bd->member->depth) - depth_slack_in, length_inches(bd->held_wood[end]->depth), "in");
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

/* Over an inner support its lower edge is compressed, and the support counts as holding it upright. */
static void say_inner(struct sizing *s, const struct beam_design *bd)
{
    for (size_t i = 0; i < bd->inner_count; i++) {
        const char *id = inner_name(s, bd, i);
        if (is_squat(bd) || joists_hold(bd, length_inches(bd->inner[i].inner->on.at_length)))
            basis_add(s, arena_printf(s->arena, "%s: held against rolling over by %s", id,
                                      is_squat(bd) ? "its breadth: no deeper than twice its width (4.4.1.2)"
                                                   : "joists hung on both faces within 24 in of it"));
        else
            unchecked_add(s,
                          arena_printf(s->arena,
                                       "not checked: what keeps %s from rolling over: a full-depth block or strap on "
                                       "each face there, to be seen to",
                                       id));
    }
}

void rolling_check(struct sizing *s, size_t index, struct member_checks *checks)
{
    struct beam_design *bd = &s->design->beams[index];
    for (int end = 0; end < 2; end++) {
        bd->held[end] = held_by(bd, end);
        find_what(s, bd, end);
        check_block(s, bd, end, checks);
        if (bd->held[end])
            basis_add(s, arena_printf(s->arena, "%s, end %d: held against rolling over by %s", checks->id, end + 1,
                                      bd->held[end]));
        else if (bd->beam->specified_by.at || bd->beam->status.choice == NE_EXISTING)
            unchecked_add(s, arena_printf(s->arena, "not checked: what keeps end %d of %s from rolling over", end + 1,
                                          checks->id));
        else if (bd->beam->end_[end].kind != END_UNANSWERED)
            ask(s, bd, end, checks->id);
    }
    say_inner(s, bd);
}
