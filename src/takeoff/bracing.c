/* What keeps a beam upright: the kickers of an upset one, and what holds its ends. */
#include "counting.h"

#include <math.h>

/* A kicker falls at 45 degrees from the beam's top to the joists and lies along one of them (common practice, no
 * source). */
static const length_t kicker_lap = 12 * LENGTH_INCH;

/* Up to the next 1/16 in. */
static length_t kicker_length(length_t rise)
{
    const length_t sixteenth = LENGTH_INCH / 16;
    double slope = sqrt(2) * (double)rise / (double)sixteenth;
    return (length_t)ceil(slope - 1e-9) * sixteenth + kicker_lap;
}

int64_t kickers(const struct counting *counting)
{
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->beam_count; i++)
        if (is_new_beam(counting->design->beams[i].beam) && counting->design->beams[i].kicker)
            sum += counting->design->beams[i].kickers;
    return sum;
}

static void count_kickers(struct counting *counting, const struct beam_design *design)
{
    struct arena *arena = counting->arena;
    const struct head *head = &design->beam->head;
    if (!design->kicker || design->kickers == 0)
        return;
    length_t rise = design->beam->above_joists_by.length, length = kicker_length(rise);
    line_add_pieces(counting, design->kicker, design->kickers, length,
                    (struct takeoff_line){
                        .id = arena_printf(arena, "kickers/%s", head->id),
                        .what = "kicker",
                        .where = head_name(arena, KIND_BEAM, head),
                        .counted = arena_printf(arena, "%s, one each %s: %s up at 45 degrees and %s along a joist",
                                                number_of(arena, design->kickers, "place", "places"),
                                                length_tape(arena, length_from_inches(design->kicker_spacing_in)),
                                                length_tape(arena, rise), length_tape(arena, kicker_lap)),
                        .at = head->at});
}

/* A block fills a space of 16 in less one joist (common practice, no source). */
static const length_t block_length = 29 * LENGTH_INCH / 2;
enum { FACES = 2 };

int64_t ends_held(const struct counting *counting, bool wood)
{
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->beam_count; i++)
        for (int end = 0; end < 2 && is_new_beam(counting->design->beams[i].beam); end++) {
            int how = counting->design->beams[i].beam->held[end].choice;
            sum += how != HELD_UNANSWERED && !(wood && how == HELD_STRAPS);
        }
    return sum;
}

static void count_end_wood(struct counting *counting, const struct beam_design *design, int end,
                           struct takeoff_line line)
{
    struct arena *arena = counting->arena;
    const struct beam *beam = design->beam;
    bool stud = beam->held[end].choice == HELD_KING_STUDS;
    length_t length = block_length;
    line.what = stud ? "king stud" : "block beside the beam";
    line.counted = arena_printf(arena, "one on each face: 2 x %s", length_tape(arena, length));
    if (stud) {
        length_t post = counting->job->posts[beam->end_[end].ref.index].height.length, depth = design->member->depth;
        length = post + depth;
        line.counted = arena_printf(arena, "one on each face: 2 x (post %s + beam %s)", length_tape(arena, post),
                                    length_tape(arena, depth));
    }
    line_add_pieces(counting, design->held_wood[end], FACES, length, line);
}

static void count_end(struct counting *counting, const struct beam_design *design, int end)
{
    struct arena *arena = counting->arena;
    const struct head *head = &design->beam->head;
    struct takeoff_line line = {.id = arena_printf(arena, "held/%s/end %d", head->id, end + 1),
                                .where = arena_printf(arena, "%s, end %d", head_name(arena, KIND_BEAM, head), end + 1),
                                .at = head->at};
    if (design->held_wood[end] && design->member)
        count_end_wood(counting, design, end, line);
    if (!design->held_strap[end])
        return;
    struct takeoff_line strap = connector_line(counting, design->held_strap[end], "strap", FACES);
    strap.id = line.id;
    strap.where = line.where;
    strap.counted = "one on each face: 2 straps";
    strap.spare = true;
    strap.at = line.at;
    add_connector(counting, design->held_strap[end], FACES, "straps", strap, NULL);
}

void count_bracing(struct counting *counting)
{
    for (size_t i = 0; i < counting->design->beam_count; i++)
        if (is_new_beam(counting->design->beams[i].beam)) {
            count_kickers(counting, &counting->design->beams[i]);
            for (int end = 0; end < 2; end++)
                count_end(counting, &counting->design->beams[i], end);
        }
}
