/* The joists that are cut for a beam, one by one, and what else stands in its way. */
#include "field.h"

#include "sawbill/text.h"
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

static bool is_among(const struct lengths_value *list, length_t at)
{
    for (size_t i = 0; i < list->count; i++)
        if (list->item[i] == at)
            return true;
    return false;
}

static const char *size_text(const struct field_beam *of, const struct joist_design *side, const struct joist_end *end)
{
    const char *of_which = is_among(&side->joists->new_at, end->at)       ? "new, "
                           : is_among(&side->joists->new_beside, end->at) ? "old + new, "
                           : end->doubled                                 ? "2 of "
                                                                          : "";
    return arena_printf(of->arena, "%s%s x %s", of_which, length_tape(of->arena, end->width),
                        length_tape(of->arena, end->depth));
}

/* An old one as it is cut off; a new one, which also lies on its far bearing, and a tail of an opening are cut to other
 * lengths. */
static struct field_cell cut_cell(const struct field_beam *of, const struct cut_side *cut, const struct joist_end *end)
{
    const struct opening_design *opening = opening_at(of, cut->design, end);
    if (opening)
        return field_text(arena_printf(of->arena, "to opening %s", opening->opening->head.id));
    if (is_among(&cut->design->joists->new_at, end->at))
        return field_text("cut list");
    return field_length(of->arena, cut->joist_length);
}

static void add_joist(struct field_beam *of, struct field_table *table, const struct cut_side *cut, size_t index)
{
    struct arena *arena = of->arena;
    const struct joist_design *side = cut->design;
    const struct joist_end *end = &side->end[index];
    const struct length_value *seat = &side->joists->seat_planed;
    struct field_cell *row = field_row(arena, table);
    row[J_NUMBER] = field_text(arena_printf(arena, "%s%zu", field_side(side->side), index + 1));
    row[J_SIDE] = field_text(field_side(side->side));
    row[J_PLACE] = field_length(arena, end->at);
    row[J_SIZE] = field_text(size_text(of, side, end));
    row[J_LENGTH] = cut_cell(of, cut, end);
    row[J_LINE] = line_cell(of, end->off_line);
    row[J_LIFT] = is_among(&side->joists->new_at, end->at) ? field_text("-") : field_number(arena, cut->rests_lb, 0);
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
