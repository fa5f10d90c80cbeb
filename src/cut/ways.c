/* Where pieces may be joined over their supports, every way of doing so is a problem of its own. */
#include <stdlib.h>

#include "cut_internal.h"

size_t ways_count(const struct cut_problem *problem)
{
    size_t ways = 1;
    for (size_t i = 0; i < problem->joints_count; i++) {
        if (problem->joints[i].count > CUT_JOINTS_MOST)
            return 0;
        ways <<= problem->joints[i].count;
        if (ways > CUT_WAYS_MOST)
            return 0;
    }
    return ways;
}

void way_masks(const struct cut_problem *problem, size_t way, unsigned *mask)
{
    for (size_t i = 0; i < problem->joints_count; i++) {
        size_t ways = (size_t)1 << problem->joints[i].count;
        mask[i] = (unsigned)(way & (ways - 1));
        way >>= problem->joints[i].count;
    }
}

static const struct cut_joints *joints_of(const struct cut_problem *problem, size_t piece, unsigned *mask,
                                          const unsigned *masks)
{
    for (size_t i = 0; i < problem->joints_count; i++)
        if (problem->joints[i].piece == piece) {
            *mask = masks[i];
            return &problem->joints[i];
        }
    *mask = 0;
    return NULL;
}

struct filling {
    struct arena *arena;
    struct wanted *wanted;
    size_t count, capacity;
};

static void want(struct filling *filling, const struct wanted *wanted)
{
    filling->wanted = arena_more(filling->arena, filling->wanted, filling->count, &filling->capacity, sizeof *wanted);
    filling->wanted[filling->count++] = *wanted;
}

static int count_bits(unsigned mask)
{
    int count = 0;
    for (; mask; mask &= mask - 1)
        count++;
    return count;
}

static void want_parts(struct filling *filling, const struct wanted *whole, const struct cut_joints *joints,
                       unsigned mask)
{
    int parts = count_bits(mask) + 1, part = 0;
    length_t from = 0;
    for (size_t i = 0; i <= joints->count; i++) {
        if (i < joints->count && !(mask >> i & 1U))
            continue;
        length_t to = i < joints->count ? joints->at[i] : whole->length;
        struct wanted wanted = *whole;
        wanted.length = to - from;
        wanted.label = arena_printf(filling->arena, "%s, part %d of %d", whole->label, ++part, parts);
        want(filling, &wanted);
        from = to;
    }
}

struct wanted *way_pieces(struct arena *arena, const struct cut_problem *problem, const unsigned *mask, size_t *count)
{
    struct filling filling = {.arena = arena};
    for (size_t i = 0; i < problem->piece_count; i++) {
        const struct cut_piece *piece = &problem->piece[i];
        if (piece->count <= 0)
            continue;
        struct wanted whole = {piece->label, piece->length, piece->count, i};
        unsigned joined;
        const struct cut_joints *joints = joints_of(problem, i, &joined, mask);
        if (joints && joined)
            want_parts(&filling, &whole, joints, joined);
        else
            want(&filling, &whole);
    }
    *count = filling.count;
    return filling.wanted;
}
