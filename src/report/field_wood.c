/* The wood and the hardware of one beam: plies and their sticks, posts, blocks, plates, hangers, nails. */
#include "field.h"

#include <string.h>

#include "sawbill/text.h"

static const struct field_column PLIES[] = {
    {"Ply", "ply", FIELD_TEXT, 2, false},     {"Length", "length", FIELD_LENGTH, 3, false},
    {"Crown", "crown", FIELD_TEXT, 2, false}, {"Out of", "stick", FIELD_TEXT, 9, true},
    {"Ends", "ends", FIELD_TEXT, 8, true},
};

/* Where the next piece of a label is in the plans. */
struct search {
    const char *label;
    length_t length;
    size_t plan, stick, part;
};

static const struct cut_stick *next_stick(const struct run *run, struct search *at)
{
    for (; at->plan < run->plan_count; at->plan++, at->stick = 0) {
        const struct cut_plan *plan = run->plans[at->plan];
        for (; at->stick < plan->stick_count; at->stick++, at->part = 0) {
            const struct cut_stick *stick = &plan->stick[at->stick];
            while (at->part < stick->part_count) {
                const struct cut_part *part = &stick->part[at->part++];
                if (part->length == at->length && strcmp(part->label, at->label) == 0)
                    return stick;
            }
        }
    }
    return NULL;
}

/* "a stick of 16' 0\", with 2' 1\" (squash block, block K1 under post P1)" */
static const char *stick_text(const struct field_beam *of, const struct cut_stick *stick, const struct search *at)
{
    struct buffer text = {.arena = of->arena};
    if (!stick)
        return "not in the cut plan";
    buffer_printf(&text, "a stick of %s%s", length_tape(of->arena, cut_sold_length(stick->stock)),
                  stick->stock->shop ? " from the shop" : "");
    for (size_t i = 0, others = 0; i < stick->part_count; i++)
        if (i + 1 != at->part)
            buffer_printf(&text, "%s%s (%s)", others++ ? ", " : ", with ",
                          length_tape(of->arena, stick->part[i].length), stick->part[i].label);
    buffer_printf(&text, "; %s left", length_tape(of->arena, stick->left));
    return buffer_text(&text);
}

static bool is_at(const struct choice_value *which, int end)
{
    return which->choice == ENDS_UNANSWERED || which->choice == ENDS_BOTH || which->choice == (end ? END_TWO : END_ONE);
}

/* Taper under the roof and notches, of the ends that the piece has. */
static const char *ends_text(const struct field_beam *of, size_t piece, size_t pieces)
{
    const struct beam *beam = of->beam->beam;
    struct buffer text = {.arena = of->arena};
    for (int end = 0; end < 2; end++) {
        if (piece != (end ? pieces - 1 : 0))
            continue;
        if (beam->roof_cut_pitch.at && is_at(&beam->roof_cut_at, end))
            buffer_printf(&text, "%sEND %d: top cut %s/%s, %s left at its end", text.length ? "; " : "", end + 1,
                          number_text(of->arena, beam->roof_cut_pitch.rise, 2),
                          number_text(of->arena, beam->roof_cut_pitch.run, 2),
                          length_tape(of->arena, beam->roof_cut_heel.length));
        if (beam->notch[end].at)
            buffer_printf(&text, "%sEND %d: %s notched, %s deep, %s long", text.length ? "; " : "", end + 1,
                          beam->notch_face.choice == FACE_TOP ? "top" : "bottom",
                          length_tape(of->arena, beam->notch[end].length),
                          length_tape(of->arena, beam->notch_length[end].at ? beam->notch_length[end].length
                                                                            : of->beam->bearing[end]));
    }
    return text.length ? buffer_text(&text) : "square";
}

static void add_piece(struct field_beam *of, struct field_table *table, size_t piece)
{
    struct arena *arena = of->arena;
    size_t pieces = beam_pieces(of->beam);
    struct search at = {.label = arena_printf(arena, "ply, %s", of->name), .length = beam_piece(of->beam, piece)};
    for (size_t before = 0; before < piece; before++) /* pieces alike share the sticks of their label */
        for (int ply = 0; beam_piece(of->beam, before) == at.length && ply < of->beam->plies; ply++)
            next_stick(of->run, &at);
    for (int ply = 1; ply <= of->beam->plies; ply++) {
        const struct cut_stick *stick = next_stick(of->run, &at);
        struct field_cell *row = field_row(arena, table);
        row[0] = field_text(pieces == 1 ? arena_printf(arena, "%d", ply)
                                        : arena_printf(arena, "%d, piece %zu", ply, piece + 1));
        row[1] = field_length(arena, at.length);
        row[2] = field_text("up");
        row[3] = field_text(stick_text(of, stick, &at));
        row[4] = field_text(ends_text(of, piece, pieces));
    }
}

void field_plies(struct field_beam *of)
{
    struct field_part *part = field_part_add(of->arena, of->sheet, "plies", "Plies");
    if (!of->beam->member || of->beam->plies < 1) {
        field_add(of->arena, part, FIELD_STOP, "no member is chosen for this beam");
        return;
    }
    field_add(of->arena, part, FIELD_SAY,
              "Member %s: read the grade stamp on every stick. Ply 1 is at face A. Write ply, END 1 and the crown on "
              "each before it is cut; trim off the worse end. %s",
              of->beam->member->code,
              beam_pieces(of->beam) > 1 ? "Plies meet over the middle of a support and nowhere else."
                                        : "A ply is one piece from end to end: nothing is spliced.");
    struct field_table *table =
        field_table_add(of->arena, part, "plies", "Cut list of the plies", PLIES, sizeof PLIES / sizeof *PLIES);
    for (size_t piece = 0; piece < beam_pieces(of->beam); piece++)
        add_piece(of, table, piece);
}

static bool begins(const char *text, const char *with)
{
    size_t length = strlen(with);
    return strncmp(text, with, length) == 0 && (text[length] == '\0' || text[length] == ',');
}

/* "block K1 under post P1" */
static bool is_under(const char *where, const char *post)
{
    const char *at = strstr(where, " under ");
    return at && strcmp(at + strlen(" under "), post) == 0;
}

/* Its joists, their openings, the wall that it replaces. */
static bool is_at_frame(const struct field_beam *of, const char *where)
{
    for (int side = 0; side < 2; side++)
        if (of->beam->side[side] &&
            begins(where, head_name(of->arena, KIND_JOISTS, &of->beam->side[side]->joists->head)))
            return true;
    for (size_t i = 0; i < of->design->opening_count; i++) {
        const struct opening_design *opening = &of->design->openings[i];
        if (opening->side && opening->side->beam == of->beam->beam &&
            begins(where, head_name(of->arena, KIND_OPENING, &opening->opening->head)))
            return true;
    }
    for (size_t i = 0; i < of->job->wall_count; i++) {
        const struct wall *wall = &of->job->walls[i];
        bool here = !wall->under.at || &of->job->beams[wall->under.index] == of->beam->beam;
        if (here && begins(where, head_name(of->arena, KIND_WALL, &wall->head)))
            return true;
    }
    return false;
}

static bool is_at_shore(const struct field_beam *of, const char *where)
{
    for (size_t i = 0; i < of->design->shore_count; i++) {
        const struct shore_design *shore = &of->design->shores[i];
        if (field_has_shore(of, shore) && begins(where, head_name(of->arena, KIND_SHORE, &shore->shore->head)))
            return true;
    }
    return false;
}

static bool is_at_post(const struct field_beam *of, const char *where)
{
    for (size_t i = 0; i < of->job->post_count; i++) {
        const char *post = head_name(of->arena, KIND_POST, &of->job->posts[i].head);
        if (field_has_post(of, i) && (begins(where, post) || is_under(where, post)))
            return true;
    }
    return false;
}

/* By where it is counted: "beam B1, side A", "across beam B1", "block K1 under post P1", "shore A". */
static bool is_here(const struct field_beam *of, const struct takeoff_line *line)
{
    static const char across[] = "across ";
    if (strncmp(line->where, across, sizeof across - 1) == 0)
        return strcmp(line->where + sizeof across - 1, of->name) == 0;
    return begins(line->where, of->name) || is_at_frame(of, line->where) || is_at_shore(of, line->where) ||
           is_at_post(of, line->where);
}

static const struct field_column PIECES[] = {
    {"What", "what", FIELD_TEXT, 5, true},      {"Where", "where", FIELD_TEXT, 6, true},
    {"Member", "member", FIELD_TEXT, 4, false}, {"Count", "count", FIELD_NUMBER, 2, false},
    {"Cut to", "cut", FIELD_LENGTH, 3, false},  {"How", "how", FIELD_TEXT, 4, true},
};

static void add_pieces(struct field_beam *of, struct field_table *table)
{
    for (size_t i = 0; i < of->takeoff->count; i++) {
        const struct takeoff_line *line = &of->takeoff->line[i];
        bool elsewhere = strcmp(line->what, "ply") == 0 || strncmp(line->id, "shores/", strlen("shores/")) == 0;
        if (line->is != LINE_PIECES || elsewhere || !is_here(of, line))
            continue;
        struct field_cell *row = field_row(of->arena, table);
        row[0] = field_text(line->what);
        row[1] = field_text(line->where);
        row[2] = field_text(line->member ? line->member->code : line->item);
        row[3] = field_number(of->arena, decimal_value(line->count), 0);
        row[4] = field_length(of->arena, line->length);
        row[5] = field_text(line->counted);
    }
}

static const char *footing_text(const struct field_beam *of, const struct footing *footing)
{
    return arena_printf(of->arena, "%s, %s, %s square x %s", head_name(of->arena, KIND_FOOTING, &footing->head),
                        footing->status.choice == NE_EXISTING ? "existing: look at it" : "new",
                        length_tape(of->arena, footing->size.length),
                        length_tape(of->arena, footing->thickness.length));
}

enum { DOWN_MOST = 8 }; /* posts and blocks over each other: a house has fewer */

/* "block K1, 9-1/4\" deep; footing F1, new, 2' 0\" square x 1' 0\"" */
static const char *down_text(const struct field_beam *of, const struct post *post)
{
    struct buffer text = {.arena = of->arena};
    const struct ref_value *on = &post->stands_on;
    const char *note = post->stands_on_text.text;
    for (int i = 0; on && on->at && i < DOWN_MOST; i++) {
        const char *before = text.length ? "; " : "";
        if (on->kind == KIND_BLOCK) {
            const struct block *block = &of->job->blocks[on->index];
            buffer_printf(&text, "%s%s, %s deep", before, head_name(of->arena, KIND_BLOCK, &block->head),
                          length_tape(of->arena, block->depth.length));
            note = block->stands_on_text.text;
            on = &block->stands_on;
        } else if (on->kind == KIND_POST) {
            const struct post *next = &of->job->posts[on->index];
            buffer_printf(&text, "%s%s", before, head_name(of->arena, KIND_POST, &next->head));
            note = next->stands_on_text.text;
            on = &next->stands_on;
        } else {
            buffer_printf(&text, "%s%s", before,
                          on->kind == KIND_FOOTING ? footing_text(of, &of->job->footings[on->index])
                                                   : arena_printf(of->arena, "%s %s", kind_name(on->kind), on->id));
            on = NULL;
        }
    }
    if (note)
        buffer_printf(&text, "%s%s", text.length ? "; " : "", note);
    return text.length ? buffer_text(&text) : "not said: find out before it is loaded";
}

static void say_posts(struct field_beam *of, struct field_part *part)
{
    for (size_t i = 0; i < of->job->post_count; i++) {
        const struct post *post = &of->job->posts[i];
        const struct post_design *design = field_post(of, post);
        if (!field_has_post(of, i) || !design)
            continue;
        field_add(of->arena, part, FIELD_SAY, "%s, %s: %s; stands on %s.", head_name(of->arena, KIND_POST, &post->head),
                  post->status.choice == NE_EXISTING ? "existing" : "new",
                  field_member(of->arena, design->member, design->plies), down_text(of, post));
    }
}

/* The strap of R602.6.1 over a plate that a pocket cuts stands in the checks of the beam. */
static void say_pockets(struct field_beam *of, struct field_part *part)
{
    for (int end = 0; end < 2; end++) {
        if (of->beam->beam->end_[end].kind != END_POCKET)
            continue;
        const char *how = "tie the cut plate as the engineer says";
        for (size_t i = 0; i < of->design->member_count; i++)
            for (size_t k = 0; strcmp(of->design->members[i]->id, of->name) == 0 && k < of->design->members[i]->count;
                 k++)
                if (strcmp(of->design->members[i]->check[k].name, "strap over the cut plate") == 0 &&
                    of->design->members[i]->check[k].note)
                    how = of->design->members[i]->check[k].note;
        field_add(of->arena, part, FIELD_SAY, "END %d is in a pocket that cuts the wall's plate: %s.", end + 1, how);
    }
}

void field_posts(struct field_beam *of)
{
    struct field_part *part = field_part_add(of->arena, of->sheet, "posts", "Posts, blocks, plates, straps");
    say_posts(of, part);
    say_pockets(of, part);
    struct field_table *table =
        field_table_add(of->arena, part, "pieces", "Cut list", PIECES, sizeof PIECES / sizeof *PIECES);
    add_pieces(of, table);
    if (part->count == 1 && table->rows == 0)
        field_add(of->arena, part, FIELD_SAY, "None that is new.");
}

static const struct field_column HARDWARE[] = {
    {"What", "what", FIELD_TEXT, 7, true},
    {"Where", "where", FIELD_TEXT, 5, true},
    {"Count", "count", FIELD_NUMBER, 2, false},
    {"How", "how", FIELD_TEXT, 10, true},
};

void field_hardware(struct field_beam *of)
{
    struct field_part *part = field_part_add(of->arena, of->sheet, "hardware", "Hangers and nails");
    field_add(of->arena, part, FIELD_SAY,
              "Every hole is filled with the nail that is listed here. Counted to the piece, nothing for loss.");
    struct field_table *table =
        field_table_add(of->arena, part, "hardware", "", HARDWARE, sizeof HARDWARE / sizeof *HARDWARE);
    for (size_t i = 0; i < of->takeoff->count; i++) {
        const struct takeoff_line *line = &of->takeoff->line[i];
        if (line->is != LINE_ITEM || !is_here(of, line))
            continue;
        struct field_cell *row = field_row(of->arena, table);
        row[0] = field_text(line->what);
        row[1] = field_text(line->where);
        row[2] = field_number(of->arena, decimal_value(line->count), 0);
        row[3] = field_text(line->counted);
    }
    if (table->rows == 0)
        field_add(of->arena, part, FIELD_SAY, "None is counted for this beam.");
}
