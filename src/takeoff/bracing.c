/* What keeps a beam upright: the kickers of an upset one. */
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

void count_bracing(struct counting *counting)
{
    for (size_t i = 0; i < counting->design->beam_count; i++)
        if (is_new_beam(counting->design->beams[i].beam))
            count_kickers(counting, &counting->design->beams[i]);
}
