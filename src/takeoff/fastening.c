/* Ply fasteners: the job's pattern, laid out so that it clears what hangs on the beam. */
#include "counting.h"

#include "ply_zones.h"
#include "sawbill/joint.h"
#include "sawbill/text.h"

/* At which joints the fasteners of each face count: those that stand deep enough in the ply beyond. */
static const char *at_joints(struct counting *counting, const struct layout_pattern *pattern,
                             const struct beam_design *design)
{
    const struct fastener *fastener = catalog_fastener(counting->catalog, design->beam->ply_fasteners.text);
    struct joint_plies plies = {.plies = design->plies, .ply_in = length_inches(design->member->ply_width)};
    struct buffer text = {.arena = counting->arena};
    for (int joint = 1; fastener && joint < design->plies; joint++) {
        bool reaches[2] = {false, false};
        for (int face = 0; face < pattern->faces; face++)
            reaches[face] = joint_reach(&plies, joint_kind_of(fastener), length_inches(fastener->diameter),
                                        length_inches(fastener->length), joint, face == 1) > 0;
        const char *those = reaches[0] && reaches[1] ? "those of both faces"
                            : reaches[0]             ? "those of face A"
                            : reaches[1]             ? "those of face B"
                                                     : "none reaches";
        buffer_printf(&text, "; ply joint %d: %s", joint, those);
    }
    return buffer_text(&text);
}

/* Least distance along the grain that keeps wood from splitting, in diameters: NDS 2018 commentary Table C12.1.6 for
 * nails and screws without lead holes (from memory); above 1/4 in as bolts, generous. */
static length_t least_apart(const struct fastener *fastener)
{
    if (!fastener)
        return LAYOUT_STEP;
    length_t diameters = fastener->diameter < LENGTH_INCH / 4 ? 15 : 5;
    return (diameters * fastener->diameter + LAYOUT_STEP - 1) / LAYOUT_STEP * LAYOUT_STEP;
}

static length_t greater(length_t a, length_t b)
{
    return a > b ? a : b;
}

/* Zones count from end 1 of the beam, a pattern from its own piece's. */
static void shift(struct layout_zones *zones, length_t by)
{
    for (size_t i = 0; i < zones->count; i++) {
        zones->item[i].from -= by;
        zones->item[i].to -= by;
    }
}

static length_t piece_start(const struct beam_design *design, size_t piece)
{
    length_t start = 0;
    for (size_t i = 0; i < piece; i++)
        start += beam_piece(design, i);
    return start;
}

static struct layout_pattern pattern_of(struct counting *counting, const struct beam_design *design, size_t piece)
{
    const struct beam *beam = design->beam;
    const struct fastener *fastener = catalog_fastener(counting->catalog, beam->ply_fasteners.text);
    struct layout_pattern out = {.length = beam_piece(design, piece),
                                 .reserve = {beam->end.length, beam->end.length},
                                 .most = beam->spacing.length,
                                 .least = least_apart(fastener),
                                 .stagger = beam->stagger.length,
                                 .rows = beam->rows.count < LAYOUT_ROWS ? beam->rows.count : LAYOUT_ROWS,
                                 .faces = beam->each_face.choice == YES ? 2 : 1};
    out.meet = fastener && 2 * fastener->length > design->width;
    if (piece == 0 && beam->overhang[0].length == 0) /* past a bearing the plies are fastened to the end of the wood */
        out.reserve[0] = greater(beam->end.length, design->bearing[0]);
    if (piece + 1 == beam_pieces(design) && beam->overhang[1].length == 0)
        out.reserve[1] = greater(beam->end.length, design->bearing[1]);
    ply_zones(counting, design, fastener, out.zone);
    for (int face = 0; face < 2; face++)
        shift(&out.zone[face], piece_start(design, piece));
    return out;
}

/* "row 1 from 4-7/16\": 21, row 2 from 9-1/4\": 21" */
static const char *rows_text(struct arena *arena, const struct ply_layout *kept, int face)
{
    struct buffer text = {.arena = arena};
    for (int row = 0; row < kept->layout.rows; row++) {
        const struct layout_marks *marks = &kept->layout.row[face][row];
        buffer_printf(&text, "%srow %d", row ? ", " : "", row + 1);
        if (marks->count > 0)
            buffer_printf(&text, " from %s", length_tape(arena, kept->start + marks->at[0]));
        buffer_printf(&text, ": %zu", marks->count);
    }
    return buffer_text(&text);
}

static const char *how_laid_out(struct arena *arena, const struct layout_pattern *pattern, const struct layout *layout)
{
    const char *most = length_tape(arena, pattern->most);
    switch (layout->kept) {
    case LAYOUT_EVEN:
        if (layout->spacing == pattern->most)
            return arena_printf(arena, "every %s, clear of what hangs there", most);
        return arena_printf(arena, "every %s, the largest even spacing up to %s that clears what hangs there",
                            length_tape(arena, layout->spacing), most);
    case LAYOUT_FEWEST:
        return arena_printf(arena, "no even spacing clears what hangs there: the fewest at most %s apart", most);
    case LAYOUT_BROKEN:
        break;
    }
    return arena_printf(arena, "THE PATTERN CANNOT BE KEPT: the fewest, more than %s apart somewhere", most);
}

static void ask_broken(struct counting *counting, const struct beam_design *design, const struct ply_layout *kept)
{
    struct arena *arena = counting->arena;
    const struct layout_zone *gap = &kept->layout.gap;
    const char *where =
        gap->to > 0 ? arena_printf(arena, "on face %s from %s to %s there is no place for one",
                                   side_name(kept->layout.gap_face), length_tape(arena, kept->start + gap->from),
                                   length_tape(arena, kept->start + gap->to))
                    : "those of both faces would stand too near to each other";
    diag_add(counting->diags, DIAG_T006, &design->beam->ply_fasteners.at->at,
             "the ply fasteners of '%s' cannot stand %s apart and clear the hangers: %s; ask the engineer for another "
             "pattern ('spacing', 'rows', 'each face'), or write a smaller 'clear of hangers'",
             head_name(arena, KIND_BEAM, &design->beam->head), length_tape(arena, design->beam->spacing.length), where);
}

static struct ply_layout *keep_layout(struct counting *counting, const struct beam_design *design, size_t piece)
{
    struct takeoff *takeoff = counting->takeoff;
    takeoff->ply_layout = arena_more(counting->arena, takeoff->ply_layout, takeoff->ply_layout_count,
                                     &takeoff->ply_layout_capacity, sizeof *takeoff->ply_layout);
    struct ply_layout *kept = &takeoff->ply_layout[takeoff->ply_layout_count++];
    *kept = (struct ply_layout){
        .design = design, .start = piece_start(design, piece), .pattern = pattern_of(counting, design, piece)};
    kept->layout = layout_find(counting->arena, &kept->pattern);
    return kept;
}

static bool is_specified(struct counting *counting, const struct beam *beam)
{
    const char *name = head_name(counting->arena, KIND_BEAM, &beam->head);
    const struct entry *at = beam->ply_fasteners.at;
    if (!at || !beam->ply_fasteners.text) {
        diag_add(counting->diags, DIAG_T002, &beam->head.at,
                 "'%s' has no ply fasteners: none is counted; ask the engineer for the pattern and write 'ply "
                 "fasteners', 'rows' and 'spacing'",
                 name);
        return false;
    }
    if (beam->rows.count < 1 || beam->spacing.length <= 0) {
        diag_add(
            counting->diags, DIAG_T002, &at->at,
            "ply fasteners of '%s' have no 'rows' or no 'spacing': none is counted; ask the engineer for the pattern",
            name);
        return false;
    }
    return true;
}

static int64_t hung_ends(const struct job *job, const struct beam *carrier)
{
    int64_t count = 0;
    for (size_t i = 0; i < job->beam_count; i++)
        for (int end = 0; end < 2; end++) {
            const struct beam_end *at = &job->beams[i].end_[end];
            count += at->kind == END_BEAM && &job->beams[at->ref.index] == carrier;
        }
    return count;
}

/* Beside the pattern, where another beam hangs. */
static void count_hung(struct counting *counting, const struct beam *beam, int faces)
{
    int64_t trimmers = hung_trimmers(counting, beam), ends = hung_ends(counting->job, beam) + trimmers;
    const char *how = arena_printf(
        counting->arena, "%s x %s x %d beside the pattern, within 12 in of the hanger",
        number_of(counting->arena, ends, "hung beam end", trimmers ? "hung beam ends and trimmers" : "hung beam ends"),
        number_of(counting->arena, faces, "face", "faces"), beam->more_at_hung.count);
    line_add_fasteners(
        counting, beam->ply_fasteners.text, ends * faces * beam->more_at_hung.count,
        (struct takeoff_line){.id = arena_printf(counting->arena, "ply fasteners/%s/hung", beam->head.id),
                              .where = head_name(counting->arena, KIND_BEAM, &beam->head),
                              .counted = how,
                              .at = beam->ply_fasteners.at->at});
}

/* The piece as the lines name it: "" where it is the whole beam. */
static const char *piece_name(struct counting *counting, const struct beam_design *design, size_t piece)
{
    return beam_pieces(design) == 1 ? "" : arena_printf(counting->arena, "/piece %zu", piece + 1);
}

/* Each piece of a spliced beam has its own pattern, from its own ends. */
static int count_piece(struct counting *counting, const struct beam_design *design, size_t piece)
{
    const struct beam *beam = design->beam;
    struct arena *arena = counting->arena;
    const struct ply_layout *kept = keep_layout(counting, design, piece);
    const char *how = how_laid_out(arena, &kept->pattern, &kept->layout);
    if (kept->layout.kept == LAYOUT_BROKEN)
        ask_broken(counting, design, kept);
    for (int face = 0; face < kept->layout.faces; face++)
        line_add_fasteners(
            counting, beam->ply_fasteners.text, (int64_t)layout_count(&kept->layout, face),
            (struct takeoff_line){
                .id = arena_printf(arena, "ply fasteners/%s%s/%s", beam->head.id, piece_name(counting, design, piece),
                                   side_name(face)),
                .where = arena_printf(arena, "%s, face %s", head_name(arena, KIND_BEAM, &beam->head), side_name(face)),
                .counted = arena_printf(arena, "driven from face %s, %s: %s%s", side_name(face), how,
                                        rows_text(arena, kept, face), at_joints(counting, &kept->pattern, design)),
                .at = beam->ply_fasteners.at->at});
    return kept->layout.faces;
}

static void count_beam(struct counting *counting, const struct beam_design *design)
{
    int faces = 0;
    if (!is_specified(counting, design->beam))
        return;
    for (size_t i = 0; i < beam_pieces(design); i++)
        faces = count_piece(counting, design, i);
    count_hung(counting, design->beam, faces);
}

void count_fastening(struct counting *counting)
{
    for (size_t i = 0; i < counting->design->beam_count; i++) {
        const struct beam_design *design = &counting->design->beams[i];
        if (is_new_beam(design->beam) && design->member && design->plies > 1)
            count_beam(counting, design);
    }
}
