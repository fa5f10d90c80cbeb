/* Raising a beam, and the order in which its joists are hung. */
#include "field.h"

#include "raising_shown.h"

/* Hangers that one face may be ahead of the other: common practice, no source (it is what the check of the half-hung
 * beam says, too). */
enum { AHEAD_MOST = 4 };

static const struct field_column ROUNDS[] = {
    {"Round", "round", FIELD_NUMBER, 3, false},
    {"first, face A", "face_a", FIELD_TEXT, 8, true},
    {"then, face B", "face_b", FIELD_TEXT, 8, true},
    {"Done", "done", FIELD_TEXT, 5, false},
};

static size_t hung_at(const struct field_beam *of, int side)
{
    const struct cut_side *cut = field_cut_side(of, side);
    return cut ? cut->design->count : 0;
}

static const char *those(const struct field_beam *of, int side, size_t from, size_t to)
{
    if (from >= to)
        return "-";
    if (from + 1 == to)
        return arena_printf(of->arena, "%s%zu", field_side(side), to);
    return arena_printf(of->arena, "%s%zu to %s%zu", field_side(side), from + 1, field_side(side), to);
}

/* In each round face A goes ahead and face B comes level, in proportion to what each has: at no time is one more than
 * AHEAD_MOST hangers ahead of its part. */
static void add_rounds(struct field_beam *of, struct field_part *part)
{
    size_t count[2] = {hung_at(of, 0), hung_at(of, 1)};
    size_t most = count[0] > count[1] ? count[0] : count[1];
    size_t rounds = (most + AHEAD_MOST - 1) / AHEAD_MOST;
    struct field_table *table =
        field_table_add(of->arena, part, "hang", count[0] && count[1] ? "Hang from both faces by turns" : "Hang",
                        ROUNDS, sizeof ROUNDS / sizeof *ROUNDS);
    for (size_t i = 0; i < rounds; i++) {
        struct field_cell *row = field_row(of->arena, table);
        row[0] = field_number(of->arena, (double)i + 1, 0);
        for (int side = 0; side < 2; side++)
            row[1 + side] = field_text(those(of, side, count[side] * i / rounds, count[side] * (i + 1) / rounds));
        row[3] = field_text("[ ] A   [ ] B");
    }
}

static void say_order(struct field_beam *of, struct field_part *part)
{
    for (int end = 0; end < 2; end++) {
        const struct beam_end *at = &of->beam->beam->end_[end];
        if (at->kind == END_BEAM)
            field_add(of->arena, part, FIELD_SAY, "END %d hangs on %s: that one stands on its posts, fastened, first.",
                      end + 1, head_name(of->arena, KIND_BEAM, &of->job->beams[at->ref.index].head));
    }
}

static void say_raising(struct field_beam *of, struct field_part *part)
{
    for (size_t i = 0; i < of->takeoff->raising_count; i++) {
        const struct raising *raising = &of->takeoff->raising[i];
        if (raising->design->beam != of->beam->beam)
            continue;
        field_add(of->arena, part, FIELD_SAY, "%s.", raising_text(of->arena, raising));
        for (size_t k = 0; k < raising->way_count; k++)
            field_add(of->arena, part, raising->way[k].known && !raising->way[k].goes ? FIELD_STOP : FIELD_SAY, "%s.",
                      way_in_text(of->arena, raising, k));
        field_add(of->arena, part, FIELD_SAY, "%s",
                  raising->whole ? "Fasten the plies on the floor, by the tape strip; raise the beam in one piece."
                                 : "Raise ply by ply, face A first, each crown up and flush with the last; fasten each "
                                   "by the tape strip before the next goes up.");
    }
}

/* On what the posts of this beam come down in the end. */
static bool stands_on_new_concrete(const struct field_beam *of)
{
    enum { DOWN_MOST = 8 };
    for (size_t i = 0; i < of->job->post_count; i++) {
        const struct ref_value *on = &of->job->posts[i].stands_on;
        for (int k = 0; field_has_post(of, i) && on->at && k < DOWN_MOST; k++) {
            if (on->kind == KIND_FOOTING && of->job->footings[on->index].status.choice != NE_EXISTING)
                return true;
            if (on->kind != KIND_BLOCK && on->kind != KIND_POST)
                break;
            on = on->kind == KIND_BLOCK ? &of->job->blocks[on->index].stands_on : &of->job->posts[on->index].stands_on;
        }
    }
    return false;
}

void field_raise(struct field_beam *of)
{
    struct field_part *part = field_part_add(of->arena, of->sheet, "raise", "Raise and hang");
    say_order(of, part);
    say_raising(of, part);
    if (stands_on_new_concrete(of))
        field_add(of->arena, part, FIELD_TICK,
                  "the concrete of new footings has set as long as its mix asks before a post stands on it");
    field_add(of->arena, part, FIELD_TICK,
              "posts plumb, on their blocks, the whole way down; the beam bears on every ply's support, tops on the "
              "line");
    if (!field_hangs_joists(of->beam->beam)) {
        field_add(of->arena, part, FIELD_SAY, "Joists lie on top: shim each tight to the beam, from the middle out.");
        return;
    }
    field_add(of->arena, part, FIELD_TICK,
              "the beam is braced upright at both ends and in the middle; the braces stay until both faces are on");
    bool both = hung_at(of, 0) > 0 && hung_at(of, 1) > 0;
    if (both)
        field_add(of->arena, part, FIELD_SAY,
                  "Neither face gets more than %d hangers ahead of its turn (common practice): the beam rolls "
                  "otherwise. Fill every hole of a hanger before the next.",
                  AHEAD_MOST);
    else
        field_add(of->arena, part, FIELD_SAY,
                  "Joists on one face alone turn the beam: its braces stay until the last hanger is full. Fill every "
                  "hole of a hanger before the next.");
    if (field_carries_hung(of))
        field_add(of->arena, part, FIELD_SAY,
                  "What else hangs on it, trimmers and beams, goes on with the joists beside it.");
    if (hung_at(of, 0) + hung_at(of, 1) > 0)
        add_rounds(of, part);
}
