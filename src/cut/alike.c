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

/* Alike ones stand together in a plan. */
int cut_count_alike(const struct cut_plan *plan, size_t index)
{
    if (index > 0 && sticks_alike(&plan->stick[index - 1], &plan->stick[index]))
        return 0;
    int count = 1;
    while (index + (size_t)count < plan->stick_count &&
           sticks_alike(&plan->stick[index], &plan->stick[index + (size_t)count]))
        count++;
    return count;
}
