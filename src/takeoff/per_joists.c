/* What assemblies are counted by, about joists that are cut and hung on a beam. */
#include "per_words.h"

/* Joist ends of all new beams: all of them, or those above (+1) or below (-1) the line. */
static int64_t ends(const struct counting *counting, int off)
{
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->joists_count; i++) {
        const struct joist_design *side = &counting->design->joists[i];
        for (size_t k = 0; hangs_joists(side->beam) && k < side->count; k++)
            sum += off == 0 || (off > 0 && side->end[k].off_line > 0) || (off < 0 && side->end[k].off_line < 0);
    }
    return sum;
}

decimal_t count_joist_ends(const struct counting *counting, const char *finish)
{
    (void)finish;
    return decimal_of(ends(counting, 0) + hung_trimmers(counting, NULL));
}

decimal_t count_high_joists(const struct counting *counting, const char *finish)
{
    (void)finish;
    return decimal_of(ends(counting, 1));
}

decimal_t count_low_joists(const struct counting *counting, const char *finish)
{
    (void)finish;
    return decimal_of(ends(counting, -1));
}

decimal_t count_joist_bays(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->joists_count; i++) {
        const struct joist_design *side = &counting->design->joists[i];
        if (hangs_joists(side->beam) && side->count > 1)
            sum += (int64_t)side->count - 1;
    }
    return decimal_of(sum);
}

int64_t joist_hangers(const struct joist_design *design)
{
    int64_t sum = 0;
    for (size_t i = 0; i < design->count; i++)
        sum += design->end[i].hanger != NULL;
    return sum;
}
