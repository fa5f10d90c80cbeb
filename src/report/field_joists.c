/* The joists that are cut for a beam, and the order in which they are hung. */
#include "field.h"

#include "sawbill/text.h"
#include "raising_shown.h"
#include "terminal.h"

enum { J_NUMBER, J_SIDE, J_PLACE, J_SIZE, J_LENGTH, J_LINE, J_LIFT, J_HANGER, J_NAILS, J_SEAT, J_COLUMNS };
/* The seat stands in the table where one is planed; the face only in JSON, for a number begins with it. */
static const struct field_column JOISTS[2][J_COLUMNS] = {
    {
        {"Joist", "number", FIELD_TEXT, 2, false},
        {"", "side", FIELD_TEXT, 0, false},
        {"Middle at", "place", FIELD_LENGTH, 3, false},
        {"Measured", "size", FIELD_TEXT, 4, true},
        {"Cut to", "cut", FIELD_LENGTH, 4, false},
        {"Line", "off_line", FIELD_LENGTH, 3, false},
        {"Lift load, lb", "lift_lb", FIELD_NUMBER, 2, true},
        {"Hanger", "hanger", FIELD_TEXT, 4, true},
        {"Nails", "nails", FIELD_TEXT, 2, false},
        {"Seat planed", "seat", FIELD_LENGTH, 0, true},
    },
    {
        {"Joist", "number", FIELD_TEXT, 2, false},
        {"", "side", FIELD_TEXT, 0, false},
        {"Middle at", "place", FIELD_LENGTH, 3, false},
        {"Measured", "size", FIELD_TEXT, 4, true},
        {"Cut to", "cut", FIELD_LENGTH, 3, false},
        {"Line", "off_line", FIELD_LENGTH, 3, false},
        {"Lift load, lb", "lift_lb", FIELD_NUMBER, 2, true},
        {"Hanger", "hanger", FIELD_TEXT, 3, true},
        {"Nails", "nails", FIELD_TEXT, 2, false},
        {"Seat planed", "seat", FIELD_LENGTH, 2, true},
    },
};
_Static_assert((int)J_COLUMNS <= (int)FIELD_COLUMNS_MOST, "columns of the joist table");

static const char *nails_text(const struct field_beam *of, const struct hanger *hanger)
{
    return hanger ? arena_printf(of->arena, "%d + %d", hanger->carrier_count, hanger->member_count) : "-";
}

static struct field_cell line_cell(const struct field_beam *of, length_t off_line)
{
    if (off_line == 0)
        return field_text("on it");
    struct field_cell cell = field_length(of->arena, off_line);
    cell.text = arena_printf(of->arena, "%s %s", length_tape(of->arena, off_line < 0 ? -off_line : off_line),
                             off_line < 0 ? "low" : "high");
    return cell;
}

/* The opening that cuts a joist off, or NULL. */
static const struct opening_design *opening_at(const struct field_beam *of, const struct joist_design *side,
                                               const struct joist_end *end)
{
    length_t half = end->doubled ? end->width : end->width / 2;
    for (size_t i = 0; i < of->design->opening_count; i++) {
        const struct opening_design *opening = &of->design->openings[i];
        if (opening->side == side && end->at + half > opening->opening->from.length &&
            end->at - half < opening->opening->to.length)
            return opening;
    }
    return NULL;
}

static void add_joist(struct field_beam *of, struct field_table *table, const struct cut_side *cut, size_t index)
{
    struct arena *arena = of->arena;
    const struct joist_design *side = cut->design;
    const struct joist_end *end = &side->end[index];
    const struct opening_design *opening = opening_at(of, side, end);
    const struct length_value *seat = &side->joists->seat_planed;
    struct field_cell *row = field_row(arena, table);
    row[J_NUMBER] = field_text(arena_printf(arena, "%s%zu", field_side(side->side), index + 1));
    row[J_SIDE] = field_text(field_side(side->side));
    row[J_PLACE] = field_length(arena, end->at);
    row[J_SIZE] = field_text(arena_printf(arena, "%s%s x %s", end->doubled ? "2 of " : "",
                                          length_tape(arena, end->width), length_tape(arena, end->depth)));
    row[J_LENGTH] = opening ? field_text(arena_printf(arena, "to opening %s", opening->opening->head.id))
                            : field_length(arena, cut->joist_length);
    row[J_LINE] = line_cell(of, end->off_line);
    row[J_LIFT] = field_number(arena, cut->rests_lb, 0);
    row[J_HANGER] = field_text(end->hanger ? end->hanger->code : "NONE FITS");
    row[J_NAILS] = field_text(nails_text(of, end->hanger));
    row[J_SEAT] = seat->at ? field_length(arena, seat->length) : field_text("no");
}

/* Trimmers of an opening hang on the beam like joists. */
static void add_trimmers(struct field_beam *of, struct field_table *table, const struct joist_design *side)
{
    struct arena *arena = of->arena;
    for (size_t i = 0; i < of->design->opening_count; i++) {
        const struct opening_design *opening = &of->design->openings[i];
        for (int k = 0; opening->side == side && opening->trimmer && k < 2; k++) {
            const struct opening_trimmer *trimmer = &opening->trimmers[k];
            struct field_cell *row = field_row(arena, table);
            row[J_NUMBER] = field_text(arena_printf(arena, "%s T%d", opening->opening->head.id, k + 1));
            row[J_SIDE] = field_text(field_side(side->side));
            row[J_PLACE] = field_length(arena, trimmer->at);
            row[J_SIZE] =
                field_text(arena_printf(arena, "trimmer of opening %s, %s", opening->opening->head.id,
                                        field_member(arena, opening->trimmer, opening->opening->trimmer_plies.count)));
            row[J_LENGTH] = field_text("as its joists");
            row[J_LINE] = field_text("on it");
            row[J_LIFT] = field_number(arena, trimmer->beam_lb.of[LOAD_DEAD], 0);
            row[J_HANGER] = field_text(trimmer->hanger ? trimmer->hanger->code : "-");
            row[J_NAILS] = field_text(nails_text(of, trimmer->hanger));
            row[J_SEAT] = field_text("no");
        }
    }
}

static void say_cut(struct field_beam *of, struct field_part *part, const struct cut_side *cut)
{
    struct arena *arena = of->arena;
    const char *guide =
        cut->guide_line > 0
            ? arena_printf(arena, "guide for the saw's shoe: %s from the middle line",
                           length_tape(arena, cut->guide_line))
            : "the job gives no saw offset: measure yours, from the edge of the shoe to the blade, and set the guide "
              "that much further out";
    field_add(arena, part, FIELD_SAY,
              "Face %s: CUT LINE %s from the beam's middle line (%s clear of the beam); %s. What stays of a joist is "
              "%s long, from the inside face of its far bearing.",
              field_side(cut->design->side), length_tape(arena, cut->cut_line), length_tape(arena, cut->clearance),
              guide, length_tape(arena, cut->joist_length));
    field_add(arena, part, FIELD_SAY,
              "Face %s: one joist's end rests with %s lb of dead load: that is what lifting it takes. With all that "
              "may stand on it %s lb: lift with nobody above.",
              field_side(cut->design->side), pounds_text(arena, cut->rests_lb), pounds_text(arena, cut->most_lb));
}

enum { HANGERS_MOST = 16 }; /* sorts of them on one beam: a house has fewer */

/* Each hanger of the table once. */
static void say_hangers(struct field_beam *of, struct field_part *part)
{
    const struct hanger *seen[HANGERS_MOST] = {NULL};
    size_t count = 0;
    for (int side = 0; side < 2; side++) {
        const struct cut_side *cut = field_cut_side(of, side);
        for (size_t i = 0; cut && i < cut->design->count; i++) {
            const struct hanger *hanger = cut->design->end[i].hanger;
            size_t k = 0;
            while (k < count && seen[k] != hanger)
                k++;
            if (!hanger || k < count || count == HANGERS_MOST)
                continue;
            seen[count++] = hanger;
            field_add(of->arena, part, FIELD_SAY, "Hanger %s: %d %s into the beam, %d %s into the joist.", hanger->code,
                      hanger->carrier_count, hanger->carrier_nail, hanger->member_count, hanger->member_nail);
        }
    }
}

static const struct field_column WAY[] = {
    {"Middle at", "place", FIELD_LENGTH, 3, false}, {"What", "what", FIELD_TEXT, 5, true},
    {"Thick", "width", FIELD_LENGTH, 3, false},     {"Meanwhile", "meanwhile", FIELD_TEXT, 6, true},
    {"Then", "then", FIELD_TEXT, 7, true},
};

static void add_obstruction(struct field_beam *of, struct field_table *table, const struct obstruction *it)
{
    struct arena *arena = of->arena;
    struct field_cell *row = field_row(arena, table);
    row[0] = field_length(arena, it->at.length);
    row[1] = field_text(it->what.choice ? choice_name("obstruction", "what", it->what.choice) : "not said");
    row[2] = field_length(arena, it->width.length);
    row[3] = field_text(it->held_by.at               ? arena_printf(arena, "held by shore %s", it->held_by.id)
                        : it->own_prop.choice == YES ? "a prop of its own"
                                                     : "not held");
    row[4] = field_text(it->then.choice ? choice_name("obstruction", "then", it->then.choice) : "not said");
    if (it->then.choice == THEN_LANDS && it->seat.at)
        row[4] = field_text(arena_printf(arena, "%s, seat %s", row[4].text, length_tape(arena, it->seat.length)));
}

/* What stands where the beam goes: propped before it is cut. */
static void add_way(struct field_beam *of, struct field_part *part)
{
    struct arena *arena = of->arena;
    const struct job *job = of->job;
    struct field_table *table = field_table_add(arena, part, "in_the_way", "In the way of the beam: prop, then cut",
                                                WAY, sizeof WAY / sizeof *WAY);
    for (size_t i = 0; i < job->obstruction_count; i++)
        if (job->obstructions[i].on.at && &job->beams[job->obstructions[i].on.index] == of->beam->beam)
            add_obstruction(of, table, &job->obstructions[i]);
    const struct roof *roof = &job->roof;
    bool here = roof->braces_on.at && &job->beams[roof->braces_on.index] == of->beam->beam;
    for (size_t i = 0; here && i < roof->braces.count; i++) {
        struct field_cell *row = field_row(arena, table);
        row[0] = field_length(arena, roof->braces.item[i].at);
        row[1] = field_text("roof brace");
        row[2] = field_text("measure it");
        row[3] = field_text("a prop of its own");
        row[4] = field_text("lands on the beam");
    }
}

static bool any_seat(const struct field_beam *of)
{
    for (int side = 0; side < 2; side++)
        if (of->beam->side[side] && of->beam->side[side]->joists->seat_planed.at)
            return true;
    return false;
}

static void say_none_fits(struct field_beam *of, struct field_part *part)
{
    size_t none = 0;
    for (int side = 0; side < 2; side++) {
        const struct cut_side *cut = field_cut_side(of, side);
        for (size_t i = 0; cut && i < cut->design->count; i++)
            none += !cut->design->end[i].hanger;
    }
    if (none > 0)
        field_add(of->arena, part, FIELD_STOP, "no hanger of the catalog fits %zu of the joists: none of them is cut",
                  none);
}

static void add_joists(struct field_beam *of, struct field_part *part)
{
    for (int side = 0; side < 2; side++) {
        const struct cut_side *cut = field_cut_side(of, side);
        if (cut)
            say_cut(of, part, cut);
    }
    struct field_table *table =
        field_table_add(of->arena, part, "joists", "Joist by joist; nails: into the beam + into the joist",
                        JOISTS[any_seat(of)], J_COLUMNS);
    for (int side = 0; side < 2; side++) {
        const struct cut_side *cut = field_cut_side(of, side);
        for (size_t i = 0; cut && i < cut->design->count; i++)
            add_joist(of, table, cut, i);
        if (cut)
            add_trimmers(of, table, cut->design);
    }
    if (table->rows == 0)
        field_add(of->arena, part, FIELD_SAY, "No joist is cut for this beam.");
    say_hangers(of, part);
    say_none_fits(of, part);
}

void field_joists(struct field_beam *of)
{
    struct field_part *part = field_part_add(of->arena, of->sheet, "joists", "Joists: where and how they are cut");
    if (field_hangs_joists(of->beam->beam))
        add_joists(of, part);
    else
        field_add(of->arena, part, FIELD_SAY, "The beam is dropped: joists stay whole and lie on it. None is cut.");
    add_way(of, part);
}

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

void field_raise(struct field_beam *of)
{
    struct field_part *part = field_part_add(of->arena, of->sheet, "raise", "Raise and hang");
    say_order(of, part);
    say_raising(of, part);
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
