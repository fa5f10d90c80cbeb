/* Where a new beam meets the wall that came out: what stands out of it or is missing in it. */
#include "fit_up.h"

#include "sawbill/text.h"

/* Less than this is no gap that wood fills (common practice, no source). */
static const length_t least_gap = LENGTH_INCH / 2;
enum { PLATE_LAYERS = 2, FACES = 2 };

const struct wall *wall_of_beam(const struct counting *counting, const struct beam *beam)
{
    for (size_t i = 0; i < counting->job->wall_count; i++) {
        const struct wall *wall = &counting->job->walls[i];
        if (wall->status.choice == WALL_COMES_OUT && wall->under.at && wall->under.kind == KIND_BEAM &&
            &counting->job->beams[wall->under.index] == beam)
            return wall;
    }
    return NULL;
}

bool is_of_size(const struct member *member, const char *size)
{
    return (member->size && name_same(member->size, size)) || name_same(member->code, size);
}

length_t wall_depth(const struct counting *counting, const struct wall *wall)
{
    for (size_t i = 0; wall && wall->studs.at && i < counting->catalog->member_count; i++)
        if (is_of_size(&counting->catalog->members[i], wall->studs.text))
            return counting->catalog->members[i].depth;
    return 0;
}

static const struct post_design *post_in_line(const struct counting *counting, const struct beam *beam, int end)
{
    if (beam->end_[end].kind != END_POST || beam->wall_at_end[end].choice != WAY_IN_LINE)
        return NULL;
    return &counting->design->posts[beam->end_[end].ref.index];
}

length_t furring_at(const struct counting *counting, const struct beam_design *design, int end)
{
    const struct post_design *post = post_in_line(counting, design->beam, end);
    length_t wall = wall_depth(counting, wall_of_beam(counting, design->beam));
    if (!post || !post->member || !is_new_beam(design->beam) || wall == 0)
        return 0;
    bool stands_out = post->member->depth > wall || (design->beam->set.choice == SET_DROPPED && design->width > wall);
    return stands_out ? FACES * post->post->height.length : 0;
}

bool filler_of(const struct counting *counting, const struct beam_design *design, length_t *length, length_t *depth)
{
    length_t wall = wall_depth(counting, wall_of_beam(counting, design->beam));
    if (!is_new_beam(design->beam) || design->beam->set.choice != SET_DROPPED || !design->member ||
        design->width >= wall)
        return false;
    *length = design->beam->clear_span.length;
    *depth = design->member->depth;
    return true;
}

length_t plate_gap(const struct counting *counting, const struct beam_design *design)
{
    const struct wall *wall = wall_of_beam(counting, design->beam);
    if (!is_new_beam(design->beam) || wall_depth(counting, wall) == 0 || !wall->length.at)
        return 0;
    length_t gap = wall->length.length - design->cut_length;
    return gap >= least_gap ? gap : 0;
}

/* Of the plates of a shore, so that its cutoffs serve; else the first plate of that size that the catalog has. */
static const struct member *plate_wood(const struct counting *counting, const char *size)
{
    for (size_t i = 0; i < counting->design->shore_count; i++)
        if (counting->design->shores[i].plate && is_of_size(counting->design->shores[i].plate, size))
            return counting->design->shores[i].plate;
    for (size_t i = 0; i < counting->catalog->member_count; i++)
        if ((counting->catalog->members[i].use & USE_PLATE) && is_of_size(&counting->catalog->members[i], size))
            return &counting->catalog->members[i];
    return NULL;
}

static void count_plate_filler(struct counting *counting, const struct beam_design *design)
{
    struct arena *arena = counting->arena;
    const struct wall *wall = wall_of_beam(counting, design->beam);
    length_t gap = plate_gap(counting, design);
    if (gap == 0)
        return;
    const struct member *wood = plate_wood(counting, wall->studs.text);
    const char *name = head_name(arena, KIND_WALL, &wall->head);
    if (!wood) {
        diag_add(counting->diags, DIAG_T002, &wall->head.at,
                 "no plate of members.csv is as wide as the studs of '%s': the gap of %s in its plates is not filled",
                 name, length_tape(arena, gap));
        return;
    }
    line_add_pieces(
        counting, wood, PLATE_LAYERS, gap,
        (struct takeoff_line){
            .id = arena_printf(arena, "fillers/%s", wall->head.id),
            .what = "plate filler",
            .where = name,
            .counted = arena_printf(arena, "both layers of the top plate: %s came out, the beam fills %s",
                                    length_tape(arena, wall->length.length), length_tape(arena, design->cut_length)),
            .at = wall->head.at});
}

/* What runs on in the wall at its end is narrower than the beam. */
static void say_wider(struct counting *counting, const struct beam_design *design)
{
    struct arena *arena = counting->arena;
    const struct wall *wall = wall_of_beam(counting, design->beam);
    length_t depth = wall_depth(counting, wall);
    for (int end = 0; end < 2; end++)
        if (depth > 0 && post_in_line(counting, design->beam, end) && design->width > depth)
            diag_add(
                counting->diags, DIAG_T011, place_of(design->beam->wall_at_end[end].at, &design->beam->head),
                "'%s' is %s wide, the studs of '%s' in line with it at end %d are %s deep: furr the wall there, or "
                "set two wider posts",
                head_name(arena, KIND_BEAM, &design->beam->head), length_tape(arena, design->width),
                head_name(arena, KIND_WALL, &wall->head), end + 1, length_tape(arena, depth));
}

void count_fit_up(struct counting *counting)
{
    for (size_t i = 0; i < counting->design->beam_count; i++) {
        const struct beam_design *design = &counting->design->beams[i];
        if (!is_new_beam(design->beam) || !design->member)
            continue;
        count_plate_filler(counting, design);
        say_wider(counting, design);
    }
    count_blocking(counting);
    count_new_joists(counting);
}
