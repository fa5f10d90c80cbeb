/* Where the joists of each side are cut, and what each of them needs at the beam. */
#include "counting.h"

/* Room between a cut joist and the beam when the job does not say: what a saw and an old joist leave (common practice,
 * no source); never more than the hanger's gap. */
static const length_t CLEARANCE = LENGTH_INCH / 16;

/* The narrowest gap that the hangers of a side are listed with; -1: it has none. */
static length_t least_gap(const struct joist_design *side, const struct hanger **of)
{
    length_t least = -1;
    for (size_t i = 0; i < side->count; i++) {
        const struct hanger *hanger = side->end[i].hanger;
        if (hanger && (least < 0 || hanger->gap < least)) {
            least = hanger->gap;
            *of = hanger;
        }
    }
    return least;
}

static length_t clearance_of(struct counting *counting, const struct joist_design *side)
{
    const struct beam *beam = side->beam;
    const struct hanger *hanger = NULL;
    length_t gap = least_gap(side, &hanger);
    if (!beam->clearance.at)
        return gap >= 0 && gap < CLEARANCE ? gap : CLEARANCE;
    if (hanger && beam->clearance.length > gap)
        diag_add(
            counting->diags, DIAG_T007, &beam->clearance.at->at,
            "'clearance' of '%s' leaves %s between joist and beam, more than the %s that hanger %s is listed with; "
            "cut closer, or use a hanger listed for it",
            head_name(counting->arena, KIND_BEAM, &beam->head), length_tape(counting->arena, beam->clearance.length),
            length_tape(counting->arena, gap), hanger->code);
    return beam->clearance.length;
}

/* `run` is from the inside face of the far bearing to the beam's middle. */
static void add_side(struct counting *counting, const struct beam_design *design, const struct joist_design *side)
{
    struct takeoff *takeoff = counting->takeoff;
    takeoff->cut_side = arena_more(counting->arena, takeoff->cut_side, takeoff->cut_side_count,
                                   &takeoff->cut_side_capacity, sizeof *takeoff->cut_side);
    struct cut_side *out = &takeoff->cut_side[takeoff->cut_side_count++];
    *out = (struct cut_side){.design = side, .clearance = clearance_of(counting, side)};
    out->cut_line = design->width / 2 + out->clearance;
    out->joist_length = side->joists->run.length - out->cut_line;
    if (counting->job->facts.saw_offset.at)
        out->guide_line = out->cut_line + counting->job->facts.saw_offset.length;
    out->rests_lb = side->end_lb.of[LOAD_DEAD];
    for (int source = 0; source < LOAD_UPLIFT; source++)
        out->most_lb += side->end_lb.of[source];
}

void count_cut_lines(struct counting *counting)
{
    for (size_t i = 0; i < counting->design->beam_count; i++) {
        const struct beam_design *design = &counting->design->beams[i];
        for (int face = 0; face < 2 && hangs_joists(design->beam); face++)
            if (design->side[face])
                add_side(counting, design, design->side[face]);
    }
}
