/* Ply fasteners, exactly in the pattern that the job gives: nothing is added to it, nothing left out. */
#include "counting.h"

#include "sawbill/joint.h"
#include "sawbill/text.h"

struct pattern {
    length_t length, end, spacing, stagger;
    int rows, faces;
};
struct row_counts {
    int64_t full, staggered; /* fasteners in one row of each sort, on one face */
    int full_rows, staggered_rows;
};

/* Fasteners of a row from `first` to the far end distance: floor((length - first - end) / spacing) + 1. */
static int64_t in_row(const struct pattern *pattern, length_t first)
{
    length_t stretch = pattern->length - first - pattern->end;
    return stretch < 0 ? 0 : stretch / pattern->spacing + 1;
}

/* Rows 2, 4, ... are the staggered ones: they start `stagger` further in. */
static struct row_counts count_rows(const struct pattern *pattern)
{
    int staggered = pattern->stagger > 0 ? pattern->rows / 2 : 0;
    return (struct row_counts){.full = in_row(pattern, pattern->end),
                               .staggered = in_row(pattern, pattern->end + pattern->stagger),
                               .full_rows = pattern->rows - staggered,
                               .staggered_rows = staggered};
}

/* At which joints the fasteners of each face count: those that stand deep enough in the ply beyond. */
static const char *at_joints(struct counting *counting, const struct pattern *pattern, const struct beam_design *design)
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

static const char *how_counted(struct arena *arena, const struct pattern *pattern, const struct row_counts *rows,
                               const char *joints)
{
    const char *length = length_tape(arena, pattern->length), *end = length_tape(arena, pattern->end);
    const char *spacing = length_tape(arena, pattern->spacing);
    const char *staggered = "";
    if (rows->staggered_rows > 0)
        staggered = arena_printf(arena, " + %s of floor((%s - 2 x %s - %s) / %s) + 1 = %lld",
                                 number_of(arena, rows->staggered_rows, "staggered row", "staggered rows"), length, end,
                                 length_tape(arena, pattern->stagger), spacing, (long long)rows->staggered);
    return arena_printf(arena, "%s x (%s of floor((%s - 2 x %s) / %s) + 1 = %lld%s), driven from %s%s",
                        number_of(arena, pattern->faces, "face", "faces"),
                        number_of(arena, rows->full_rows, "row", "rows"), length, end, spacing, (long long)rows->full,
                        staggered, pattern->faces == 2 ? "each face" : "face A alone", joints);
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

/* Each piece of a spliced beam has its own pattern, from its own ends. */
static int count_piece(struct counting *counting, const struct beam_design *design, size_t piece)
{
    const struct beam *beam = design->beam;
    const struct pattern pattern = {.length = beam_piece(design, piece),
                                    .end = beam->end.length,
                                    .spacing = beam->spacing.length,
                                    .stagger = beam->stagger.length,
                                    .rows = beam->rows.count,
                                    .faces = beam->each_face.choice == YES ? 2 : 1};
    struct row_counts rows = count_rows(&pattern);
    int64_t count = pattern.faces * (rows.full_rows * rows.full + rows.staggered_rows * rows.staggered);
    line_add_fasteners(
        counting, beam->ply_fasteners.text, count,
        (struct takeoff_line){
            .id = beam_pieces(design) == 1
                      ? arena_printf(counting->arena, "ply fasteners/%s", beam->head.id)
                      : arena_printf(counting->arena, "ply fasteners/%s/piece %zu", beam->head.id, piece + 1),
            .where = head_name(counting->arena, KIND_BEAM, &beam->head),
            .counted = how_counted(counting->arena, &pattern, &rows, at_joints(counting, &pattern, design)),
            .at = beam->ply_fasteners.at->at});
    return pattern.faces;
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
