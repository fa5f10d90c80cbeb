/* Where ply fasteners may not go: beside what hangs on the faces of a beam. */
#include "ply_zones.h"

#include "sawbill/joint.h"

/* A fastener this near to the width of the beam comes out at its other face. */
static const length_t COMES_OUT = LENGTH_INCH / 4;

static void add_zone(struct counting *counting, struct layout_zones *zones, length_t at, length_t half, length_t clear,
                     const char *what)
{
    zones->item = arena_more(counting->arena, zones->item, zones->count, &zones->capacity, sizeof *zones->item);
    zones->item[zones->count++] =
        (struct layout_zone){.from = at - half - clear, .to = at + half + clear, .what = what};
}

static void add_joists(struct counting *counting, struct layout_zones *zones, const struct joist_design *side,
                       length_t clear)
{
    for (size_t i = 0; side && i < side->count; i++)
        add_zone(counting, zones, side->end[i].at, side->end[i].doubled ? side->end[i].width : side->end[i].width / 2,
                 clear, arena_printf(counting->arena, "joist %s%zu", side_name(side->side), i + 1));
}

static void add_trimmers(struct counting *counting, struct layout_zones *zones, const struct joist_design *side,
                         length_t clear)
{
    for (size_t i = 0; i < counting->design->opening_count; i++) {
        const struct opening_design *od = &counting->design->openings[i];
        for (int k = 0; k < 2 && od->side == side && od->trimmer; k++)
            add_zone(counting, zones, od->trimmers[k].at, od->opening->trimmer_plies.count * od->trimmer->ply_width / 2,
                     clear,
                     arena_printf(counting->arena, "trimmer %d of %s", k + 1,
                                  head_name(counting->arena, KIND_OPENING, &od->opening->head)));
    }
}

/* A beam that hangs here: its hanger's fasteners may reach through, so both faces keep clear of it. */
static void add_hung_beams(struct counting *counting, struct layout_zones zones[2], const struct beam *carrier,
                           length_t clear)
{
    for (size_t i = 0; i < counting->design->beam_count; i++) {
        const struct beam_design *hung = &counting->design->beams[i];
        for (int end = 0; end < 2; end++) {
            const struct beam_end *at = &hung->beam->end_[end];
            if (at->kind != END_BEAM || &counting->job->beams[at->ref.index] != carrier)
                continue;
            for (int face = 0; face < 2; face++)
                add_zone(counting, &zones[face], at->at_length, hung->width / 2, clear,
                         head_name(counting->arena, KIND_BEAM, &hung->beam->head));
        }
    }
}

static bool comes_out(const struct fastener *fastener, length_t width)
{
    return fastener && (joint_kind_of(fastener) == JOINT_BOLT || fastener->length >= width - COMES_OUT);
}

static void join(struct counting *counting, struct layout_zones zones[2])
{
    size_t own[2] = {zones[0].count, zones[1].count};
    for (int face = 0; face < 2; face++)
        for (size_t i = 0; i < own[!face]; i++) {
            const struct layout_zone *zone = &zones[!face].item[i];
            add_zone(counting, &zones[face], (zone->from + zone->to) / 2, (zone->to - zone->from) / 2, 0, zone->what);
        }
}

void ply_zones(struct counting *counting, const struct beam_design *design, const struct fastener *fastener,
               struct layout_zones zones[2])
{
    length_t clear = design->beam->clear_of_hangers.length;
    for (int face = 0; face < 2 && hangs_joists(design->beam); face++)
        if (design->side[face]) {
            add_joists(counting, &zones[face], design->side[face], clear);
            add_trimmers(counting, &zones[face], design->side[face], clear);
        }
    add_hung_beams(counting, zones, design->beam, clear);
    if (comes_out(fastener, design->width))
        join(counting, zones);
}
