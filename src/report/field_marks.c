/* The tape strip: every mark of the ply fasteners, and the edges of what hangs there, from END 1. */
#include "field.h"

#include "sawbill/text.h"

enum { M_FACE, M_ROW, M_FROM, M_EVERY, M_COUNT, M_MARKS, M_COLUMNS };
static const struct field_column MARKS[M_COLUMNS] = {
    {"Face", "face", FIELD_TEXT, 1, false},     {"Row", "row", FIELD_TEXT, 3, false},
    {"From", "from", FIELD_LENGTH, 3, false},   {"Every", "every", FIELD_LENGTH, 2, false},
    {"Marks", "count", FIELD_NUMBER, 2, false}, {"At, from END 1", "marks", FIELD_LENGTHS, 13, true},
};

/* Rows stand from `edge` below the top to `edge` above the bottom, evenly; one alone in the middle. */
static length_t row_below_top(const struct beam_design *beam, int rows, int row)
{
    length_t depth = beam->member->depth, edge = beam->beam->edge.length;
    return rows < 2 ? depth / 2 : edge + (depth - 2 * edge) * row / (rows - 1);
}

static void say_rows(struct field_beam *of, struct field_part *part, const struct ply_layout *kept)
{
    struct arena *arena = of->arena;
    struct buffer text = {.arena = arena};
    for (int row = 0; row < kept->layout.rows; row++)
        buffer_printf(&text, "%srow %d %s", row ? ", " : "", row + 1,
                      length_tape(arena, row_below_top(of->beam, kept->layout.rows, row)));
    field_add(arena, part, FIELD_SAY, "%s, driven from %s. Below the top edge: %s.", of->beam->beam->ply_fasteners.text,
              kept->layout.faces > 1 ? "face A and face B" : "face A alone", buffer_text(&text));
}

static void say_kept(struct field_beam *of, struct field_part *part, const struct ply_layout *kept)
{
    struct arena *arena = of->arena;
    const char *most = length_tape(arena, kept->pattern.most);
    const char *from = kept->start > 0 ? arena_printf(arena, "piece from %s: ", length_tape(arena, kept->start)) : "";
    switch (kept->layout.kept) {
    case LAYOUT_EVEN:
        field_add(arena, part, FIELD_SAY,
                  "%severy %s, the pattern asks for %s at most; all marks clear what hangs "
                  "there.",
                  from, length_tape(arena, kept->layout.spacing), most);
        return;
    case LAYOUT_FEWEST:
        field_add(arena, part, FIELD_SAY,
                  "%sno even spacing clears what hangs there: uneven marks, %s apart at most. Read each from the list.",
                  from, most);
        return;
    case LAYOUT_BROKEN:
        field_add(arena, part, FIELD_STOP,
                  "%sTHE PATTERN CANNOT BE KEPT beside the hangers: ask the engineer before a fastener is driven",
                  from);
        return;
    }
}

static void add_row(struct field_beam *of, struct field_table *table, const struct ply_layout *kept, int face, int row)
{
    struct arena *arena = of->arena;
    const struct layout_marks *marks = &kept->layout.row[face][row];
    length_t *at = arena_array(arena, marks->count, sizeof *at);
    for (size_t i = 0; i < marks->count; i++)
        at[i] = kept->start + marks->at[i];
    struct field_cell *cell = field_row(arena, table);
    cell[M_FACE] = field_text(field_side(face));
    cell[M_ROW] = field_text(arena_printf(arena, "row %d", row + 1));
    if (marks->count > 0)
        cell[M_FROM] = field_length(arena, at[0]);
    cell[M_EVERY] = kept->layout.kept == LAYOUT_EVEN ? field_length(arena, kept->layout.spacing) : field_text("uneven");
    cell[M_COUNT] = field_number(arena, (double)marks->count, 0);
    cell[M_MARKS] = field_lengths(arena, at, marks->count);
}

/* What hangs at one place: its name and its two edges. */
struct hung {
    const char *name;
    length_t from, to;
};
struct hung_list {
    struct hung *item;
    size_t count, capacity;
};

static void hung_add(struct arena *arena, struct hung_list *list, const char *name, length_t at, length_t width)
{
    list->item = arena_more(arena, list->item, list->count, &list->capacity, sizeof *list->item);
    list->item[list->count++] = (struct hung){name, at - width / 2, at - width / 2 + width};
}

static void hung_joists(struct field_beam *of, struct hung_list *list, const struct joist_design *side)
{
    for (size_t i = 0; i < side->count; i++) {
        const struct joist_end *end = &side->end[i];
        hung_add(of->arena, list, arena_printf(of->arena, "%s%zu", field_side(side->side), i + 1), end->at,
                 end->doubled ? 2 * end->width : end->width);
    }
    for (size_t i = 0; i < of->design->opening_count; i++) {
        const struct opening_design *opening = &of->design->openings[i];
        for (int k = 0; opening->side == side && opening->trimmer && k < 2; k++)
            hung_add(of->arena, list, arena_printf(of->arena, "%s T%d", opening->opening->head.id, k + 1),
                     opening->trimmers[k].at, opening->trimmer->ply_width * opening->opening->trimmer_plies.count);
    }
}

/* A beam that hangs on this one: the job does not say on which face, so both sheets of marks show it. */
static void hung_beams(struct field_beam *of, struct hung_list *list)
{
    for (size_t i = 0; i < of->design->beam_count; i++) {
        const struct beam_design *other = &of->design->beams[i];
        for (int end = 0; other->beam && end < 2; end++) {
            const struct beam_end *at = &other->beam->end_[end];
            if (at->kind == END_BEAM && &of->job->beams[at->ref.index] == of->beam->beam)
                hung_add(
                    of->arena, list,
                    arena_printf(of->arena, "%s END %d", head_name(of->arena, KIND_BEAM, &other->beam->head), end + 1),
                    at->at_length, other->width);
        }
    }
}

/* In the order in which the tape meets them. */
static void sort_hung(struct hung_list *list)
{
    for (size_t i = 1; i < list->count; i++)
        for (size_t k = i; k > 0 && list->item[k].from < list->item[k - 1].from; k--) {
            struct hung swap = list->item[k];
            list->item[k] = list->item[k - 1];
            list->item[k - 1] = swap;
        }
}

static void add_hung(struct field_beam *of, struct field_table *table, int face)
{
    struct arena *arena = of->arena;
    struct hung_list list = {0};
    if (field_cut_side(of, face))
        hung_joists(of, &list, field_cut_side(of, face)->design);
    hung_beams(of, &list);
    sort_hung(&list);
    if (list.count == 0)
        return;
    length_t *edge = arena_array(arena, 2 * list.count, sizeof *edge);
    struct buffer text = {.arena = arena};
    for (size_t i = 0; i < list.count; i++) {
        edge[2 * i] = list.item[i].from;
        edge[2 * i + 1] = list.item[i].to;
        buffer_printf(&text, "%s%s", i ? ", " : "",
                      field_unbroken(arena, arena_printf(arena, "%s %s to %s", list.item[i].name,
                                                         length_tape(arena, list.item[i].from),
                                                         length_tape(arena, list.item[i].to))));
    }
    struct field_cell *cell = field_row(arena, table);
    cell[M_FACE] = field_text(field_side(face));
    cell[M_ROW] = field_text("hangers");
    cell[M_FROM] = field_length(arena, list.item[0].from);
    cell[M_EVERY] = field_text("edges");
    cell[M_COUNT] = field_number(arena, (double)list.count, 0);
    cell[M_MARKS] = (struct field_cell){
        .text = buffer_text(&text), .number = cell[M_MARKS].number, .length = edge, .count = 2 * list.count};
}

static bool is_of(const struct field_beam *of, const struct ply_layout *kept)
{
    return kept->design->beam == of->beam->beam;
}

static size_t say_layouts(struct field_beam *of, struct field_part *part)
{
    size_t count = 0;
    for (size_t i = 0; i < of->takeoff->ply_layout_count; i++) {
        const struct ply_layout *kept = &of->takeoff->ply_layout[i];
        if (!is_of(of, kept))
            continue;
        if (count++ == 0)
            say_rows(of, part, kept);
        say_kept(of, part, kept);
    }
    return count;
}

void field_marks(struct field_beam *of)
{
    struct field_part *part = field_part_add(of->arena, of->sheet, "marks", "Tape strip");
    if (say_layouts(of, part) == 0)
        field_add(of->arena, part, of->beam->plies > 1 ? FIELD_STOP : FIELD_SAY, "%s",
                  of->beam->plies > 1 ? "no pattern for the ply fasteners: ask the engineer"
                                      : "One ply: nothing to fasten.");
    else if (of->beam->beam->more_at_hung.count > 0 && field_carries_hung(of))
        field_add(of->arena, part, FIELD_SAY,
                  "Beside each hanger of a hung beam or trimmer %d more on each face, within 12 in of it.",
                  of->beam->beam->more_at_hung.count);
    field_add(of->arena, part, FIELD_SAY,
              "Tape hooked on END 1 for both faces. Hangers: a line at each edge of what hangs, an X between.");
    struct field_table *table = field_table_add(of->arena, part, "marks", "", MARKS, M_COLUMNS);
    for (int face = 0; face < 2; face++) {
        for (size_t i = 0; i < of->takeoff->ply_layout_count; i++) {
            const struct ply_layout *kept = &of->takeoff->ply_layout[i];
            for (int row = 0; is_of(of, kept) && face < kept->layout.faces && row < kept->layout.rows; row++)
                add_row(of, table, kept, face, row);
        }
        add_hung(of, table, face);
    }
}
