/* What assemblies are counted by, about members that stand in the way of a beam.  Roof braces that stood on the wall
 * are propped, cut and landed on the beam likewise. */
#include "per_words.h"

static int64_t braces(const struct counting *counting)
{
    const struct roof *roof = &counting->job->roof;
    return counting->job->has_roof && roof->braces_on.at ? (int64_t)roof->braces.count : 0;
}

decimal_t count_in_the_way(const struct counting *counting, const char *finish)
{
    (void)finish;
    return decimal_of((int64_t)counting->job->obstruction_count + braces(counting));
}

decimal_t count_propped(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = counting->job->roof.braces_own_prop.choice == YES ? braces(counting) : 0;
    for (size_t i = 0; i < counting->job->obstruction_count; i++) {
        const struct obstruction *it = &counting->job->obstructions[i];
        sum += it->then.choice != THEN_TAKEN_OUT && it->own_prop.choice == YES;
    }
    return decimal_of(sum);
}

static int64_t that_end(const struct counting *counting, enum obstruction_then then)
{
    int64_t sum = 0;
    for (size_t i = 0; i < counting->job->obstruction_count; i++)
        sum += counting->job->obstructions[i].then.choice == (int)then;
    return sum;
}

decimal_t count_landed(const struct counting *counting, const char *finish)
{
    (void)finish;
    return decimal_of(that_end(counting, THEN_LANDS) + braces(counting));
}

decimal_t count_headered_off(const struct counting *counting, const char *finish)
{
    (void)finish;
    return decimal_of(that_end(counting, THEN_HEADERED_OFF));
}
