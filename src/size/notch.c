/* Ends that are cut, and loads that hang low: shear of what is left.
 *
 * The square of (dn/d) was read in an answer of the standard's publisher; the other terms, and the limits for glulam
 * and composite lumber, are from memory of NDS 2018, and say so where they are used. */
#include "sawbill/notch.h"

#include <stddef.h>

static double block_shear(double fv, double width_in, double depth_in)
{
    return 2.0 / 3 * fv * width_in * depth_in;
}

double notch_shear_below(double fv, double width_in, double depth_in, double left_in)
{
    if (left_in <= 0)
        return 0;
    double part = left_in / depth_in;
    return block_shear(fv, width_in, left_in) * part * part;
}

double notch_shear_above(double fv, double width_in, double depth_in, double left_in, double past_in)
{
    if (left_in <= 0)
        return 0;
    if (past_in <= 0 || left_in >= depth_in)
        return block_shear(fv, width_in, depth_in);
    if (past_in > left_in)
        return block_shear(fv, width_in, left_in);
    return block_shear(fv, width_in, depth_in - (depth_in - left_in) / left_in * past_in);
}

double hung_shear(double fv, double width_in, double depth_in, double reach_in, double from_end_in)
{
    if (from_end_in < HUNG_NEAR_DEPTHS * depth_in)
        return notch_shear_below(fv, width_in, depth_in, reach_in);
    return block_shear(fv, width_in, reach_in > 0 ? reach_in : 0);
}

struct notch_limit notch_limit(enum family_of_wood wood, enum notch_shape shape)
{
    static const struct notch_limit sawn[] = {
        [NOTCH_BELOW] = {.part = 1.0 / 4, .clause = "NDS 2018 4.4.3", .of_whole = true},
        [NOTCH_ABOVE] = {.part = 1.0 / 4, .clause = "NDS 2018 4.4.3", .of_whole = true},
        [NOTCH_SLOPE] = {.clause = NULL},
    };
    static const struct notch_limit glulam[] = {
        [NOTCH_BELOW] = {.part = 1.0 / 10, .most_in = 3, .clause = "NDS 2018 5.4.5, from memory", .of_whole = true},
        [NOTCH_ABOVE] = {.part = 2.0 / 5, .clause = "NDS 2018 5.4.5, from memory", .of_whole = true},
        [NOTCH_SLOPE] = {.part = 2.0 / 3,
                         .length_depths = 3,
                         .clause = "NDS 2018 5.4.5, from memory",
                         .of_whole = true},
    };
    static const struct notch_limit composite[] = {
        [NOTCH_BELOW] = {.part = 1.0 / 10,
                         .clause = "NDS 2018 8.4.1, from memory; the product's report governs",
                         .of_whole = true},
        [NOTCH_ABOVE] = {.part = 2.0 / 5,
                         .clause = "NDS 2018 8.4.1, from memory; the product's report governs",
                         .of_whole = true},
        [NOTCH_SLOPE] = {.part = 2.0 / 5, .clause = "NDS 2018 8.4.1, from memory; the product's report governs"},
    };
    return wood == WOOD_SAWN ? sawn[shape] : wood == WOOD_GLULAM ? glulam[shape] : composite[shape];
}
