#include "sawbill/length.h"

#include <math.h>

#include "numeral.h"

enum { UNITS_PER_64TH = 15875, UNITS_PER_16TH = 63500, UNITS_PER_MIL = 1016 };

/* Sign, feet and inches of a value that is `parts` parts of 1/denominator inch. */
static char *feet_and_inches(struct arena *arena, bool minus, uint64_t parts, uint64_t denominator)
{
    uint64_t whole = parts / denominator, numerator = parts % denominator;
    uint64_t feet = whole / 12, inches = whole % 12;
    while (numerator && numerator % 2 == 0) {
        numerator /= 2;
        denominator /= 2;
    }
    char *fraction = arena_printf(arena, "%llu/%llu", (unsigned long long)numerator, (unsigned long long)denominator);
    const char *sign = minus && parts ? "-" : "";
    char *tail = arena_printf(arena, "%llu", (unsigned long long)inches);
    if (numerator)
        tail = feet || inches ? arena_printf(arena, "%s-%s", tail, fraction) : fraction;
    if (feet)
        return arena_printf(arena, "%s%llu' %s\"", sign, (unsigned long long)feet, tail);
    return arena_printf(arena, "%s%s\"", sign, tail);
}

static uint64_t magnitude(length_t value)
{
    return value < 0 ? 0 - (uint64_t)value : (uint64_t)value;
}

char *length_tape(struct arena *arena, length_t value)
{
    uint64_t sixteenths = (magnitude(value) + UNITS_PER_16TH / 2) / UNITS_PER_16TH;
    return feet_and_inches(arena, value < 0, sixteenths, 16);
}

char *length_exact(struct arena *arena, length_t value)
{
    if (value % UNITS_PER_64TH == 0)
        return feet_and_inches(arena, value < 0, magnitude(value) / UNITS_PER_64TH, 64);
    if (value % UNITS_PER_MIL == 0)
        return arena_printf(arena, "%s\"", fixed_text(arena, value / UNITS_PER_MIL, 3, 0, false));
    /* 1/1,016,000 in = 0.000025 mm: six decimals of a millimeter hold every value up to LENGTH_MOST. */
    return arena_printf(arena, "%s mm", fixed_text(arena, value * 25, 6, 0, false));
}

double length_inches(length_t value)
{
    return (double)value / (double)LENGTH_INCH;
}

double length_feet(length_t value)
{
    return (double)value / (double)LENGTH_FOOT;
}

length_t length_from_inches(double inches)
{
    double units = inches * (double)LENGTH_INCH;
    if (isnan(units))
        return 0;
    if (units >= (double)LENGTH_MOST)
        return LENGTH_MOST;
    if (units <= -(double)LENGTH_MOST)
        return -LENGTH_MOST;
    return (length_t)llround(units);
}
