/* Beam plies: one piece each between its supports, nothing spliced. */
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
    if (bears_beyond_face(beam, 0)) {
        buffer_printf(&text, "bearing %s + ", length_tape(arena, design->bearing[0]));
        sum += design->bearing[0];
    }
    buffer_printf(&text, "clear %s", length_tape(arena, beam->clear_span.length));
    if (bears_beyond_face(beam, 1)) {
        buffer_printf(&text, " + bearing %s", length_tape(arena, design->bearing[1]));
        sum += design->bearing[1];
    }
    if (sum > design->cut_length)
        buffer_printf(&text, " - gap %s", length_tape(arena, sum - design->cut_length));
    return buffer_text(&text);
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
        line_add_pieces(counting, design->member, design->plies, design->cut_length,
                        (struct takeoff_line){.id = arena_printf(arena, "plies/%s", head->id),
                                              .what = "ply",
                                              .where = where,
                                              .counted = how_counted(arena, design),
                                              .at = head->at});
    }
}
