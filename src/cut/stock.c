/* What a stick of stock has room for. */
#include "cut_internal.h"

bool cut_is_shop(const struct cut_stock *stock)
{
    return !stock->price && (stock->shop || stock->supply > 0);
}

length_t cut_sold_length(const struct cut_stock *stock)
{
    return stock->sold > 0 ? stock->sold : stock->length;
}

/* The ends of shop stock were cut when it was left over. */
length_t stock_trim(const struct cut_problem *problem, const struct cut_stock *stock)
{
    length_t each = stock->price ? problem->end_trim : 0;
    if (stock->has_trim)
        each = stock->trim;
    return problem->both_ends ? 2 * each : each;
}

length_t cut_usable_length(const struct cut_problem *problem, const struct cut_stock *stock)
{
    length_t usable = stock->length - stock_trim(problem, stock);
    return usable > 0 ? usable : 0;
}

length_t stock_room(const struct cut_problem *problem, const struct cut_stock *stock)
{
    length_t usable = cut_usable_length(problem, stock);
    if (usable == 0)
        return 0;
    return problem->square_both_ends ? usable : usable + problem->kerf;
}
