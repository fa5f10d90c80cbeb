/* Code nails of the wood that stays: posts, blocks, bearings, joists on a dropped beam, ends held, openings, fillers.
 */
#include <string.h>

#include "code_nails.h"

enum { HELD_FACES = 2, HELD_ENDS = 4, TWO_ENDS = 2, TWO_EDGES = 2, TWO_TRIMMERS = 2 };

static const char *times(struct arena *arena, int64_t count, const char *one, const char *many, const char *more)
{
    return arena_printf(arena, "%s%s%s", number_of(arena, count, one, many), *more ? " x " : "", more);
}

static bool caps(const struct hanger *hold_down)
{
    return hold_down && hold_down->kind == CONNECTOR_CAP;
}

/* A cap holds the beam on the post, with nails of its own. */
static bool has_cap(const struct counting *counting, const struct post *post)
{
    size_t index = (size_t)(post - counting->job->posts);
    for (size_t i = 0; i < counting->design->beam_count; i++) {
        const struct beam_design *design = &counting->design->beams[i];
        for (int end = 0; end < TWO_ENDS; end++)
            if (design->beam->end_[end].kind == END_POST && design->beam->end_[end].ref.index == index &&
                caps(design->hold_down[end]))
                return true;
        for (size_t k = 0; k < design->inner_count; k++)
            if (design->inner[k].post && design->inner[k].post->post == post && caps(design->inner[k].hold_down))
                return true;
    }
    return false;
}

static void count_post_joints(struct counting *counting, const struct post_design *design)
{
    struct arena *arena = counting->arena;
    const struct post *post = design->post;
    bool on_footing = post->stands_on.at && post->stands_on.kind == KIND_FOOTING, cap = has_cap(counting, post);
    int64_t ends = !on_footing + !cap;
    if (post->status.choice == NE_EXISTING || !design->member || design->plies < 1 || post->height.length <= 0)
        return;
    const char *which = ends == TWO_ENDS ? "head and foot" : cap ? "foot" : "head";
    count_joint(counting, JOINT_STUD_PLATE, design->plies * ends, 0, times(arena, design->plies, "ply", "plies", which),
                (struct takeoff_line){.id = arena_printf(arena, "posts/%s/plate nails", post->head.id),
                                      .where = head_name(arena, KIND_POST, &post->head),
                                      .at = post->head.at});
}

/* From here on what stands on the list already says how many pieces there are. */
static bool begins(const char *id, const char *with)
{
    return strncmp(id, with, strlen(with)) == 0;
}

static void count_line_joint(struct counting *counting, const struct takeoff_line *pieces, enum joint joint,
                             int64_t ends, length_t run)
{
    struct arena *arena = counting->arena;
    int64_t count = pieces->count / DECIMAL_ONE;
    count_joint(counting, joint, count * ends, run,
                times(arena, count, "piece", "pieces", ends == TWO_ENDS ? "2 ends" : ""),
                (struct takeoff_line){
                    .id = arena_printf(arena, "%s/nails", pieces->id), .where = pieces->where, .at = pieces->at});
}

/* The upper layer on the lower. */
static void count_fillers(struct counting *counting, const struct takeoff_line *pieces)
{
    count_joint(counting, JOINT_PLATE_PLATE, 1, pieces->length, "1 filler on the other",
                (struct takeoff_line){.id = arena_printf(counting->arena, "%s/nails", pieces->id),
                                      .where = pieces->where,
                                      .at = pieces->at});
}

static void count_listed(struct counting *counting)
{
    size_t listed = counting->takeoff->count;
    for (size_t i = 0; i < listed; i++) {
        const struct takeoff_line pieces = counting->takeoff->line[i];
        if (pieces.is != LINE_PIECES)
            continue;
        if (begins(pieces.id, "blocks/"))
            count_line_joint(counting, &pieces, JOINT_BLOCK_PLATE, 1, 0);
        else if (begins(pieces.id, "blocking/"))
            count_line_joint(counting, &pieces, JOINT_BLOCK_JOIST, TWO_ENDS, 0);
        else if (begins(pieces.id, "fillers/"))
            count_fillers(counting, &pieces);
    }
}

static const struct post_design *post_at(const struct counting *counting, const struct beam_end *end)
{
    for (size_t i = 0; end->kind == END_POST && i < counting->design->post_count; i++)
        if (counting->design->posts[i].post == &counting->job->posts[end->ref.index])
            return &counting->design->posts[i];
    return NULL;
}

/* A plate of the wall, or one that is put flat on a new post; on a bare post the post's own head is nailed. */
static void count_bearing(struct counting *counting, const struct beam_design *design, bool plate,
                          const struct post_design *post, const char *place)
{
    struct arena *arena = counting->arena;
    const struct head *head = &design->beam->head;
    bool capped = post && post->cap_plate && post->post->status.choice != NE_EXISTING;
    if (!plate && !capped)
        return;
    count_joint(counting, JOINT_JOIST_PLATE, design->plies, 0, times(arena, design->plies, "ply", "plies", ""),
                (struct takeoff_line){.id = arena_printf(arena, "bearings/%s/%s/nails", head->id, place),
                                      .where = arena_printf(arena, "%s, %s", head_name(arena, KIND_BEAM, head), place),
                                      .at = head->at});
}

/* Joists that pass over the beam lie on it once, though both sides name them. */
static void count_joists_on(struct counting *counting, const struct beam_design *design)
{
    struct arena *arena = counting->arena;
    const struct head *head = &design->beam->head;
    int64_t on[2] = {0, 0};
    bool pass = true;
    for (int side = 0; side < 2; side++) {
        const struct joist_design *joists = design->side[side];
        for (size_t i = 0; joists && i < joists->count; i++)
            on[side] += joists->end[i].doubled ? 2 : 1;
        pass = pass && joists && joists->joists->over_the_wall.choice == OVER_CONTINUOUS;
    }
    int64_t both = on[0] + on[1], once = on[0] > on[1] ? on[0] : on[1], count = pass ? once : both;
    const char *of = times(arena, count, "joist", "joists", "");
    if (pass)
        of = arena_printf(arena, "%s, over the beam in one piece,", of);
    count_joint(counting, JOINT_JOIST_PLATE, count, 0, of,
                (struct takeoff_line){.id = arena_printf(arena, "joists on/%s/nails", head->id),
                                      .where = head_name(arena, KIND_BEAM, head),
                                      .at = head->at});
}

static void count_held(struct counting *counting, const struct beam *beam, const struct held_place *place)
{
    struct arena *arena = counting->arena;
    struct takeoff_line line = {
        .where = arena_printf(arena, "%s, %s", head_name(arena, KIND_BEAM, &beam->head), place->place),
        .at = beam->head.at};
    const char *held = arena_printf(arena, "held/%s/%s", beam->head.id, place->place);
    if (place->how == HELD_BLOCKS || !place->post) {
        line.id = arena_printf(arena, "%s/nails to the plate", held);
        count_joint(counting, JOINT_BLOCK_PLATE, HELD_FACES, 0, "2 blocks", line);
        line.id = arena_printf(arena, "%s/nails to joists", held);
        count_joint(counting, JOINT_BLOCK_JOIST, HELD_ENDS, 0, "2 blocks x 2 ends", line);
        return;
    }
    line.id = arena_printf(arena, "%s/nails to plates", held);
    count_joint(counting, JOINT_STUD_PLATE, HELD_ENDS, 0, "2 studs x 2 ends", line);
    line.id = arena_printf(arena, "%s/nails to the post", held);
    count_joint(counting, JOINT_STUD_STUD, HELD_FACES, place->post->height.length, "2 studs", line);
    line.id = arena_printf(arena, "%s/nails to the beam", held);
    count_joint(counting, JOINT_KING_HEADER, HELD_FACES, 0, "2 studs", line);
}

static void count_beam_joints(struct counting *counting, const struct beam_design *design)
{
    struct arena *arena = counting->arena;
    if (!is_new_beam(design->beam) || !design->member || design->plies < 1)
        return;
    for (int end = 0; end < TWO_ENDS; end++) {
        const struct beam_end *on = &design->beam->end_[end];
        count_bearing(counting, design, on->kind == END_PLATE || on->kind == END_POCKET, post_at(counting, on),
                      end ? "end 2" : "end 1");
    }
    struct held_place held[HELD_PLACES];
    size_t places = places_held(arena, counting->job, design, held);
    for (size_t i = 0; i < places; i++)
        if (held[i].wood)
            count_held(counting, design->beam, &held[i]);
    for (size_t i = 0; i < design->inner_count; i++)
        count_bearing(counting, design, !design->inner[i].post, design->inner[i].post,
                      arena_printf(arena, "inner support %zu", i + 1));
    if (design->beam->set.choice == SET_DROPPED)
        count_joists_on(counting, design);
}

static const struct takeoff_line *line_named(const struct counting *counting, const char *id)
{
    for (size_t i = 0; i < counting->takeoff->count; i++)
        if (strcmp(counting->takeoff->line[i].id, id) == 0)
            return &counting->takeoff->line[i];
    return NULL;
}

static void count_header_joints(struct counting *counting, const struct opening_design *od)
{
    struct arena *arena = counting->arena;
    const struct head *head = &od->opening->head;
    const char *id = arena_printf(arena, "openings/%s/headers", head->id);
    const struct takeoff_line *plies = line_named(counting, id);
    int64_t headers = od->headers[0].is + od->headers[1].is, joints = od->opening->header_plies.count - 1;
    if (!plies)
        return;
    count_joint(
        counting, JOINT_HEADER, headers * joints * TWO_EDGES, plies->length,
        arena_printf(arena, "%s x %s x 2 edges", number_of(arena, headers, "header", "headers"),
                     number_of(arena, joints, "ply joint", "ply joints")),
        (struct takeoff_line){.id = arena_printf(arena, "%s/nails", id), .where = plies->where, .at = head->at});
}

static void count_trimmer_joints(struct counting *counting, const struct opening_design *od)
{
    struct arena *arena = counting->arena;
    const struct head *head = &od->opening->head;
    const char *id = arena_printf(arena, "openings/%s/trimmers", head->id);
    const struct takeoff_line *line = line_named(counting, id);
    if (!line)
        return;
    const struct takeoff_line plies = *line;
    int64_t each = od->opening->trimmer_plies.count, bought = plies.count / DECIMAL_ONE;
    struct takeoff_line nails = {.id = arena_printf(arena, "%s/nails", id), .where = plies.where, .at = head->at};
    count_joint(counting, JOINT_HEADER, TWO_TRIMMERS * (each - 1) * TWO_EDGES, plies.length,
                arena_printf(arena, "2 trimmers x %s x 2 edges", number_of(arena, each - 1, "ply joint", "ply joints")),
                nails);
    nails.id = arena_printf(arena, "%s/nails to the far bearing", id);
    count_joint(counting, JOINT_JOIST_PLATE, bought, 0, times(arena, bought, "trimmer ply", "trimmer plies", ""),
                nails);
    nails.id = arena_printf(arena, "%s/nails to the beam", id);
    if (is_new_beam(od->side->beam) && od->side->beam->set.choice == SET_DROPPED)
        count_joint(counting, JOINT_JOIST_PLATE, TWO_TRIMMERS * each, 0,
                    times(arena, TWO_TRIMMERS * each, "trimmer ply", "trimmer plies", ""), nails);
}

static void count_new_joist_joints(struct counting *counting, const struct joist_design *design)
{
    struct arena *arena = counting->arena;
    const struct head *head = &design->joists->head;
    const char *id = arena_printf(arena, "joists/%s/new", head->id);
    const struct takeoff_line *line = line_named(counting, id);
    int64_t beside = (int64_t)design->joists->new_beside.count;
    if (!line)
        return;
    const struct takeoff_line pieces = *line;
    int64_t count = pieces.count / DECIMAL_ONE;
    struct takeoff_line nails = {
        .id = arena_printf(arena, "%s/nails to the far bearing", id), .where = pieces.where, .at = head->at};
    count_joint(counting, JOINT_JOIST_PLATE, count, 0, times(arena, count, "new joist", "new joists", ""), nails);
    nails.id = arena_printf(arena, "%s/nails to the joists beside", id);
    count_joint(counting, JOINT_HEADER, beside * TWO_EDGES, pieces.length,
                times(arena, beside, "joist beside another", "joists beside others", "2 edges"), nails);
}

/* Once, not at every joint. */
static void fault_named(struct counting *counting, const struct text_value *named)
{
    if (named->at && !catalog_fastener(counting->catalog, named->text))
        diag_add(counting->diags, DIAG_C006, &named->at->at, "'%s' is not in fasteners.csv", named->text);
}

void count_joints(struct counting *counting)
{
    const struct design *design = counting->design;
    fault_named(counting, &counting->job->facts.framing_nail);
    fault_named(counting, &counting->job->facts.shore_screw);
    count_listed(counting);
    for (size_t i = 0; i < design->post_count; i++)
        count_post_joints(counting, &design->posts[i]);
    for (size_t i = 0; i < design->beam_count; i++)
        count_beam_joints(counting, &design->beams[i]);
    for (size_t i = 0; i < design->joists_count; i++)
        count_new_joist_joints(counting, &design->joists[i]);
    for (size_t i = 0; i < design->opening_count; i++) {
        const struct opening_design *od = &design->openings[i];
        if (!od->side || od->opening->status.choice == NE_EXISTING)
            continue;
        count_header_joints(counting, od);
        count_trimmer_joints(counting, od);
    }
}
