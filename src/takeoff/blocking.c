/* Blocks beside a beam or between the joists on top of it, and joists that are put in new. */
#include "fit_up.h"

#include "sawbill/text.h"

/* What a new joist wants on the far bearing: the width of a 2x4 plate (common practice, no source). */
static const length_t far_seat = 7 * LENGTH_INCH / 2;
enum { ON_TOP = 2 };

static const struct joist_design *fuller_side(const struct beam_design *design)
{
    const struct joist_design *a = design->side[0], *b = design->side[1];
    return !a || (b && b->count > a->count) ? b : a;
}

int64_t blocks_beside(const struct beam_design *design, int face)
{
    const struct beam *beam = design->beam;
    bool dropped = beam->set.choice == SET_DROPPED;
    if (!is_new_beam(beam) || !beam->blocks_of.at || dropped != (face == ON_TOP))
        return 0;
    const struct joist_design *side = dropped ? fuller_side(design) : design->side[face];
    if (dropped)
        return side && side->count > 1 ? (int64_t)side->count - 1 : 0;
    length_t every = beam->blocks_every.length;
    return side || every <= 0 ? 0 : (design->cut_length + every - 1) / every + 1;
}

static length_t block_length(const struct beam_design *design, int face)
{
    const struct joist_design *side = face == ON_TOP ? fuller_side(design) : NULL;
    if (side && side->joists->spacing.length > side->width && !side->joists->at.at)
        return side->joists->spacing.length - side->width;
    return design->beam->blocks_long.length;
}

static void count_blocks_of(struct counting *counting, const struct beam_design *design, const struct member *wood,
                            int face)
{
    struct arena *arena = counting->arena;
    const struct head *head = &design->beam->head;
    int64_t count = blocks_beside(design, face);
    const char *name = head_name(arena, KIND_BEAM, head);
    struct takeoff_line line = {.what = "block beside the beam", .where = name, .at = head->at};
    if (face == ON_TOP) {
        line.id = arena_printf(arena, "blocking/%s", head->id);
        line.what = "block between joists";
        line.counted = arena_printf(arena, "%s between the joists on top of it",
                                    number_of(arena, count, "block, one", "blocks, one in each bay"));
    } else {
        line.id = arena_printf(arena, "blocking/%s/%s", head->id, side_name(face));
        line.where = arena_printf(arena, "%s, face %s", name, side_name(face));
        line.counted = arena_printf(arena, "no joists on that face: one every %s of %s and one at its end: %lld",
                                    length_tape(arena, design->beam->blocks_every.length),
                                    length_tape(arena, design->cut_length), (long long)count);
    }
    line_add_pieces(counting, wood, count, block_length(design, face), line);
}

static void count_beam_blocks(struct counting *counting, const struct beam_design *design)
{
    const struct beam *beam = design->beam;
    const struct member *wood = catalog_member(counting->catalog, beam->blocks_of.text);
    int64_t sum = 0;
    for (int face = 0; face <= ON_TOP; face++)
        sum += blocks_beside(design, face);
    if (!wood) {
        diag_add(counting->diags, DIAG_C006, &beam->blocks_of.at->at, "'%s' of '%s' is not a code in members.csv",
                 beam->blocks_of.text, head_name(counting->arena, KIND_BEAM, &beam->head));
        return;
    }
    if (sum == 0)
        diag_add(counting->diags, DIAG_T002, &beam->blocks_of.at->at,
                 "'%s' has no face without joists, and no joists on top: its 'blocks of' counts nothing",
                 head_name(counting->arena, KIND_BEAM, &beam->head));
    for (int face = 0; face <= ON_TOP; face++)
        count_blocks_of(counting, design, wood, face);
}

void count_blocking(struct counting *counting)
{
    for (size_t i = 0; i < counting->design->beam_count; i++)
        if (is_new_beam(counting->design->beams[i].beam) && counting->design->beams[i].beam->blocks_of.at)
            count_beam_blocks(counting, &counting->design->beams[i]);
}

int64_t joists_added(const struct joist_design *design)
{
    return (int64_t)(design->joists->new_at.count + design->joists->new_beside.count);
}

static void count_new_of(struct counting *counting, const struct joist_design *design)
{
    struct arena *arena = counting->arena;
    const struct joists *joists = design->joists;
    const char *name = head_name(arena, KIND_JOISTS, &joists->head);
    const struct member *wood = catalog_member(counting->catalog, joists->new_of.text);
    const struct beam_design *beam = &counting->design->beams[design->beam - counting->job->beams];
    length_t cut_off = design->beam->set.choice != SET_DROPPED ? beam->width / 2 : 0;
    if (!wood) {
        diag_add(counting->diags, DIAG_C006, place_of(joists->new_of.at, &joists->head),
                 "'%s' of '%s' is not a code in members.csv", joists->new_of.text, name);
        return;
    }
    line_add_pieces(counting, wood, joists_added(design), joists->run.length - cut_off + far_seat,
                    (struct takeoff_line){
                        .id = arena_printf(arena, "joists/%s/new", joists->head.id),
                        .what = "new joist",
                        .where = name,
                        .counted = arena_printf(
                            arena, "%zu between the others, %zu beside one: run %s%s, and %s on the far bearing",
                            joists->new_at.count, joists->new_beside.count, length_tape(arena, joists->run.length),
                            cut_off ? " less half of the beam" : "", length_tape(arena, far_seat)),
                        .at = joists->head.at});
}

void count_new_joists(struct counting *counting)
{
    for (size_t i = 0; i < counting->design->joists_count; i++)
        if (joists_added(&counting->design->joists[i]) > 0 && counting->design->joists[i].joists->new_of.text)
            count_new_of(counting, &counting->design->joists[i]);
}
