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

size_t places_held(struct arena *arena, const struct job *job, const struct beam_design *design,
                   struct held_place out[HELD_PLACES])
{
    const struct beam *beam = design->beam;
    size_t count = 0;
    for (int end = 0; end < 2; end++) {
        const struct beam_end *on = &beam->end_[end];
        if (beam->held[end].choice != HELD_UNANSWERED)
            out[count++] = (struct held_place){.place = end ? "end 2" : "end 1",
                                               .how = (enum end_held)beam->held[end].choice,
                                               .wood = design->held_wood[end],
                                               .strap = design->held_strap[end],
                                               .post = on->kind == END_POST ? &job->posts[on->ref.index] : NULL};
    }
    for (size_t i = 0; i < design->inner_count && i < beam->inner.count; i++) {
        const struct inner_design *inner = &design->inner[i];
        if (beam->inner.item[i].held != HELD_UNANSWERED)
            out[count++] = (struct held_place){.place = arena_printf(arena, "inner support %zu", i + 1),
                                               .how = beam->inner.item[i].held,
                                               .wood = inner->held_wood,
                                               .strap = inner->held_strap,
                                               .post = inner->post ? inner->post->post : NULL};
    }
    return count;
}

int64_t ends_held(const struct counting *counting, bool wood)
{
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->beam_count; i++) {
        struct held_place held[HELD_PLACES];
        if (!is_new_beam(counting->design->beams[i].beam))
            continue;
        size_t count = places_held(counting->arena, counting->job, &counting->design->beams[i], held);
        for (size_t k = 0; k < count; k++)
            sum += !(wood && held[k].how == HELD_STRAPS);
    }
    return sum;
}

static void count_held_wood(struct counting *counting, const struct beam_design *design, const struct held_place *held,
                            struct takeoff_line line)
{
    struct arena *arena = counting->arena;
    bool stud = held->how == HELD_KING_STUDS && held->post;
    length_t length = block_length;
    line.what = stud ? "king stud" : "block beside the beam";
    line.counted = arena_printf(arena, "one on each face: 2 x %s", length_tape(arena, length));
    if (stud) {
        length_t post = held->post->height.length, depth = design->member->depth;
        length = post + depth;
        line.counted = arena_printf(arena, "one on each face: 2 x (post %s + beam %s)", length_tape(arena, post),
                                    length_tape(arena, depth));
    }
    line_add_pieces(counting, held->wood, FACES, length, line);
}

static void count_held(struct counting *counting, const struct beam_design *design, const struct held_place *held)
{
    struct arena *arena = counting->arena;
    const struct head *head = &design->beam->head;
    struct takeoff_line line = {.id = arena_printf(arena, "held/%s/%s", head->id, held->place),
                                .where = arena_printf(arena, "%s, %s", head_name(arena, KIND_BEAM, head), held->place),
                                .at = head->at};
    if (held->wood && design->member)
        count_held_wood(counting, design, held, line);
    if (!held->strap)
        return;
    struct takeoff_line strap = connector_line(counting, held->strap, "strap", FACES);
    strap.id = line.id;
    strap.where = line.where;
    strap.counted = "one on each face: 2 straps";
    strap.at = line.at;
    add_connector(counting, held->strap, FACES, "straps", strap, NULL);
}

void count_bracing(struct counting *counting)
{
    for (size_t i = 0; i < counting->design->beam_count; i++) {
        const struct beam_design *design = &counting->design->beams[i];
        struct held_place held[HELD_PLACES];
        if (!is_new_beam(design->beam))
            continue;
        count_kickers(counting, design);
        size_t count = places_held(counting->arena, counting->job, design, held);
        for (size_t k = 0; k < count; k++)
            count_held(counting, design, &held[k]);
    }
}
