/* Sticks that are cut alike, which every table of a plan shows as one row. */
#include <string.h>

#include "sawbill/cut.h"

bool cut_parts_alike(const struct cut_part *a, const struct cut_part *b)
{
    return a->length == b->length && strcmp(a->label, b->label) == 0;
}

static bool sticks_alike(const struct cut_stick *a, const struct cut_stick *b)
{
    if (a->stock != b->stock || a->part_count != b->part_count)
        return false;
    for (size_t i = 0; i < a->part_count; i++)
        if (!cut_parts_alike(&a->part[i], &b->part[i]))
            return false;
    return true;
}

int cut_count_alike(const struct cut_plan *plan, size_t index)
{
    int count = 0;
    for (size_t i = 0; i < plan->stick_count; i++) {
        if (!sticks_alike(&plan->stick[i], &plan->stick[index]))
            continue;
        if (i < index)
            return 0;
        count++;
    }
    return count;
}
