/* Beam plies: one piece each from end to end, or from splice to splice over the supports that the job says. */
#include "counting.h"
#include "sawbill/text.h"

/* Ends that the wood passes over add their bearing to the clear span; a hanger's seat lies inside it. */
static bool bears_beyond_face(const struct beam *beam, int end)
{
    enum end_kind kind = beam->end_[end].kind;
    return kind == END_POST || kind == END_PLATE || kind == END_POCKET;
}

/* "3 plies x 14' 7": bearing 3-1/2" + clear 14' + bearing 3-1/2"" */
static const char *how_counted(struct arena *arena, const struct beam_design *design)
{
    const struct beam *beam = design->beam;
    struct buffer text = {.arena = arena};
    length_t sum = beam->clear_span.length;
    buffer_printf(&text, "%s x %s: ", number_of(arena, design->plies, "ply", "plies"),
                  length_tape(arena, design->cut_length));
    for (int end = 0; end < 2; end++)
        sum += beam->overhang[end].length;
    if (beam->overhang[0].length > 0)
        buffer_printf(&text, "overhang %s + ", length_tape(arena, beam->overhang[0].length));
    if (bears_beyond_face(beam, 0)) {
        buffer_printf(&text, "bearing %s + ", length_tape(arena, design->bearing[0]));
        sum += design->bearing[0];
    }
    buffer_printf(&text, "clear %s", length_tape(arena, beam->clear_span.length));
    if (bears_beyond_face(beam, 1)) {
        buffer_printf(&text, " + bearing %s", length_tape(arena, design->bearing[1]));
        sum += design->bearing[1];
    }
    if (beam->overhang[1].length > 0)
        buffer_printf(&text, " + overhang %s", length_tape(arena, beam->overhang[1].length));
    if (sum > design->cut_length)
        buffer_printf(&text, " - gap %s", length_tape(arena, sum - design->cut_length));
    return buffer_text(&text);
}

/* "3 plies x 9' 7-3/4", piece 1 of 2: from end 1 to 9' 7-3/4"" */
static const char *how_piece(struct arena *arena, const struct beam_design *design, size_t piece, length_t from)
{
    length_t to = from + beam_piece(design, piece);
    const char *left = piece == 0 ? "end 1" : length_tape(arena, from);
    const char *right = piece + 1 == beam_pieces(design) ? "end 2" : length_tape(arena, to);
    return arena_printf(arena, "%s x %s, piece %zu of %zu: from %s to %s, cut over the middle of a support; in all %s",
                        number_of(arena, design->plies, "ply", "plies"), length_tape(arena, beam_piece(design, piece)),
                        piece + 1, beam_pieces(design), left, right, length_tape(arena, design->cut_length));
}

static void count_pieces(struct counting *counting, const struct beam_design *design, const char *where)
{
    struct arena *arena = counting->arena;
    const struct head *head = &design->beam->head;
    length_t from = 0;
    for (size_t i = 0; i < beam_pieces(design); i++) {
        bool whole = beam_pieces(design) == 1;
        line_add_pieces(
            counting, design->member, design->plies, beam_piece(design, i),
            (struct takeoff_line){.id = whole ? arena_printf(arena, "plies/%s", head->id)
                                              : arena_printf(arena, "plies/%s/piece %zu", head->id, i + 1),
                                  .what = "ply",
                                  .where = where,
                                  .counted = whole ? how_counted(arena, design) : how_piece(arena, design, i, from),
                                  .at = head->at});
        from += beam_piece(design, i);
    }
}

void count_plies(struct counting *counting)
{
    struct arena *arena = counting->arena;
    for (size_t i = 0; i < counting->design->beam_count; i++) {
        const struct beam_design *design = &counting->design->beams[i];
        const struct head *head = &design->beam->head;
        if (!is_new_beam(design->beam))
            continue;
        const char *where = head_name(arena, KIND_BEAM, head);
        if (!design->member || design->plies < 1) {
            diag_add(counting->diags, DIAG_T002, &head->at, "'%s' has no member: its plies are not counted", where);
            continue;
        }
        count_pieces(counting, design, where);
    }
}
