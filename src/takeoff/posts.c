/* Posts, the nails that make their plies one post, and squash blocks under them. */
#include "counting.h"
#include "sawbill/text.h"

bool is_new_post(const struct job *job, size_t index)
{
    return job->posts[index].status.choice != NE_EXISTING && carries_something(job, KIND_POST, index);
}

bool is_new_footing(const struct job *job, size_t index)
{
    return job->footings[index].status.choice == NE_NEW && carries_something(job, KIND_FOOTING, index);
}

/* Where no nail reaches through all plies they are rated one by one, and stitched each to the one before (12 in apart:
 * common practice, no source). */
#define STITCH_SPACING (12 * LENGTH_INCH)

/* The shortest common nail as long as two plies are thick, or NULL. */
static const struct fastener *stitch_nail(const struct catalog *catalog, length_t ply)
{
    const struct fastener *best = NULL;
    for (size_t i = 0; i < catalog->fastener_count; i++) {
        const struct fastener *nail = &catalog->fasteners[i];
        if (name_same(nail->kind, "common nail") && nail->length >= 2 * ply && (!best || nail->length < best->length))
            best = nail;
    }
    return best;
}

static void count_stitches(struct counting *counting, const struct post_design *design, const char *where)
{
    struct arena *arena = counting->arena;
    const struct head *head = &design->post->head;
    const struct fastener *nail = stitch_nail(counting->catalog, design->member->ply_width);
    if (design->plies < 2)
        return;
    if (!nail) {
        diag_add(counting->diags, DIAG_T002, &head->at, "no common nail in the catalog goes through two plies of '%s'",
                 where);
        return;
    }
    int64_t row = design->post->height.length / STITCH_SPACING + 1, joints = design->plies - 1;
    line_add_fasteners(counting, nail->code, row * joints,
                       (struct takeoff_line){.id = arena_printf(arena, "posts/%s/nails", head->id),
                                             .where = where,
                                             .counted = arena_printf(arena,
                                                                     "%lld joints of plies x %lld nails, 12\" apart, "
                                                                     "staggered: no nail reaches through all plies",
                                                                     (long long)joints, (long long)row),
                                             .at = head->at});
}

static void count_cap_plate(struct counting *counting, const struct post_design *design, const char *where)
{
    struct arena *arena = counting->arena;
    if (!design->cap_plate)
        return;
    length_t length = design->plies * design->member->ply_width;
    line_add_pieces(counting, design->cap_plate, 1, length,
                    (struct takeoff_line){.id = arena_printf(arena, "posts/%s/cap plate", design->post->head.id),
                                          .what = "cap plate",
                                          .where = where,
                                          .counted = arena_printf(arena, "1 on top of %s, %s",
                                                                  number_of(arena, design->plies, "ply", "plies"),
                                                                  length_tape(arena, length)),
                                          .at = design->post->head.at});
}

static void count_post(struct counting *counting, const struct post_design *design)
{
    struct arena *arena = counting->arena;
    const struct head *head = &design->post->head;
    const char *where = head_name(arena, KIND_POST, head);
    length_t height = design->post->height.length;
    if (!design->member || design->plies < 1 || height <= 0) {
        diag_add(counting->diags, DIAG_T002, &head->at, "'%s' has no member or no height: it is not counted", where);
        return;
    }
    const char *plies = number_of(arena, design->plies, "ply", "plies");
    line_add_pieces(
        counting, design->member, design->plies, height,
        (struct takeoff_line){.id = arena_printf(arena, "posts/%s", head->id),
                              .what = "post ply",
                              .where = where,
                              .counted = arena_printf(arena, "%s x height %s", plies, length_tape(arena, height)),
                              .at = head->at});
    count_cap_plate(counting, design, where);
    if (!design->nail)
        count_stitches(counting, design, where);
    else if (design->nails > 0)
        line_add_fasteners(
            counting, design->nail->code, design->nails,
            (struct takeoff_line){.id = arena_printf(arena, "posts/%s/nails", head->id),
                                  .where = where,
                                  .counted = arena_printf(arena, "%s nailed to one post (NDS 2018 15.3.3): %d nails",
                                                          plies, design->nails),
                                  .at = head->at});
}

static bool stands_on_block(const struct post *post, size_t block)
{
    return post->stands_on.at && post->stands_on.kind == KIND_BLOCK && post->stands_on.index == block;
}

/* A squash block has a piece of the post's own wood under each ply of it. */
static void count_block(struct counting *counting, size_t index)
{
    struct arena *arena = counting->arena;
    const struct block *block = &counting->job->blocks[index];
    const char *where = head_name(arena, KIND_BLOCK, &block->head);
    bool found = false;
    for (size_t i = 0; i < counting->design->post_count; i++) {
        const struct post_design *design = &counting->design->posts[i];
        if (!stands_on_block(design->post, index) || !carries_something(counting->job, KIND_POST, i) ||
            !design->member || design->plies < 1)
            continue;
        length_t depth = block->depth.length;
        found = depth > 0;
        const char *post = head_name(arena, KIND_POST, &design->post->head);
        line_add_pieces(
            counting, design->member, found ? design->plies : 0, depth,
            (struct takeoff_line){.id = arena_printf(arena, "blocks/%s/%s", block->head.id, design->post->head.id),
                                  .what = "squash block",
                                  .where = arena_printf(arena, "%s under %s", where, post),
                                  .counted = arena_printf(arena, "one under each of %s of %s, depth %s",
                                                          number_of(arena, design->plies, "ply", "plies"), post,
                                                          length_tape(arena, depth)),
                                  .at = block->head.at});
    }
    if (!found)
        diag_add(counting->diags, DIAG_T002, &block->head.at, "no post with a member stands on '%s': it is not counted",
                 where);
}

void count_posts(struct counting *counting)
{
    for (size_t i = 0; i < counting->design->post_count; i++)
        if (is_new_post(counting->job, i))
            count_post(counting, &counting->design->posts[i]);
    for (size_t i = 0; i < counting->job->block_count; i++)
        if (carries_something(counting->job, KIND_BLOCK, i))
            count_block(counting, i);
}
