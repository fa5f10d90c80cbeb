/* What assemblies are counted by, about furring, fillers, blocks and new joists. */
#include "fit_up.h"
#include "per_words.h"

decimal_t count_furring_feet(const struct counting *counting, const char *finish)
{
    (void)finish;
    length_t sum = 0;
    for (size_t i = 0; i < counting->design->beam_count; i++)
        for (int end = 0; end < 2; end++)
            sum += furring_at(counting, &counting->design->beams[i], end);
    return feet(sum);
}

decimal_t count_filler_area(const struct counting *counting, const char *finish)
{
    (void)finish;
    wide_t sum = 0;
    for (size_t i = 0; i < counting->design->beam_count; i++) {
        length_t length = 0, depth = 0;
        if (filler_of(counting, &counting->design->beams[i], &length, &depth))
            sum += (wide_t)length * depth;
    }
    return square_feet(sum);
}

decimal_t count_plate_gaps(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->beam_count; i++)
        sum += plate_gap(counting, &counting->design->beams[i]) > 0;
    return decimal_of(sum);
}

decimal_t count_cap_plates(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->post_count; i++)
        sum += counting->design->posts[i].cap_plate && counting->design->posts[i].post->status.choice != NE_EXISTING;
    return decimal_of(sum);
}

decimal_t count_blocks_beside(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->beam_count; i++)
        for (int face = 0; face < 3; face++)
            sum += blocks_beside(&counting->design->beams[i], face);
    return decimal_of(sum);
}

decimal_t count_joists_added(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->joists_count; i++)
        sum += joists_added(&counting->design->joists[i]);
    return decimal_of(sum);
}
