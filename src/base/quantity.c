#include "sawbill/quantity.h"

#include <assert.h>
#include <string.h>

#include "letters.h"
#include "numeral.h"

enum { PLACES = 6, WORD_SIZE = 32 };
/* A million million of any unit: beyond the trade, and its millionths fit in 64 bits. */
static const int64_t QUANTITY_MOST = INT64_C(1000000000000000000);

/* Exact by definition: pound-force in newtons (lb = 0.45359237 kg, g = 9.80665 m/s2), foot in meters. */
static const double N_PER_LB = 4.4482216152605;
static const double M_PER_FT = 0.3048;

static const char WHY_EMPTY[] = "nothing is written";
static const char WHY_FINE[] = "more than 6 decimals";
static const char WHY_LARGE[] = "too large";
static const char WHY_NO_UNIT[] = "no unit: a bare number does not say of what";
static const char WHY_UNIT[] =
    "unknown unit: known are psf, kPa, plf, kN/m, lb, kip, kN, sq ft, sq m, cu ft, cu yd, pcf, hours, days";

struct unit_row {
    const char *name;
    enum dimension dimension;
};
static const struct unit_row UNITS[UNIT_COUNT_] = {
    [UNIT_NONE] = {"", DIM_NONE},      [UNIT_PSF] = {"psf", DIM_PRESSURE},  [UNIT_KPA] = {"kPa", DIM_PRESSURE},
    [UNIT_PLF] = {"plf", DIM_LINE},    [UNIT_KN_M] = {"kN/m", DIM_LINE},    [UNIT_LB] = {"lb", DIM_FORCE},
    [UNIT_KIP] = {"kip", DIM_FORCE},   [UNIT_KN] = {"kN", DIM_FORCE},       [UNIT_SQFT] = {"sq ft", DIM_AREA},
    [UNIT_SQM] = {"sq m", DIM_AREA},   [UNIT_CUFT] = {"cu ft", DIM_VOLUME}, [UNIT_CUYD] = {"cu yd", DIM_VOLUME},
    [UNIT_PCF] = {"pcf", DIM_DENSITY}, [UNIT_HOUR] = {"hours", DIM_HOURS},  [UNIT_DAY] = {"days", DIM_DAYS},
};

static const char *const DIMENSIONS[] = {
    [DIM_NONE] = "a plain number",
    [DIM_PRESSURE] = "a load on an area (psf, kPa)",
    [DIM_LINE] = "a load along a line (plf, kN/m)",
    [DIM_FORCE] = "a force (lb, kip, kN)",
    [DIM_AREA] = "an area (sq ft, sq m)",
    [DIM_VOLUME] = "a volume (cu ft, cu yd)",
    [DIM_DENSITY] = "a density (pcf)",
    [DIM_HOURS] = "hours",
    [DIM_DAYS] = "days",
};

/* Spellings, in lower case, without blanks and points; a raised 2 or 3 is the digit. */
struct spelling {
    const char *word;
    enum unit unit;
};
static const struct spelling SPELLINGS[] = {
    {"psf", UNIT_PSF},
    {"lb/sqft", UNIT_PSF},
    {"lbs/sqft", UNIT_PSF},
    {"lb/ft2", UNIT_PSF},
    {"lbs/ft2", UNIT_PSF},
    {"kpa", UNIT_KPA},
    {"kn/m2", UNIT_KPA},
    {"kn/sqm", UNIT_KPA},
    {"plf", UNIT_PLF},
    {"lb/ft", UNIT_PLF},
    {"lbs/ft", UNIT_PLF},
    {"kn/m", UNIT_KN_M},
    {"lb", UNIT_LB},
    {"lbs", UNIT_LB},
    {"lbf", UNIT_LB},
    {"pound", UNIT_LB},
    {"pounds", UNIT_LB},
    {"kip", UNIT_KIP},
    {"kips", UNIT_KIP},
    {"kn", UNIT_KN},
    {"sqft", UNIT_SQFT},
    {"sf", UNIT_SQFT},
    {"ft2", UNIT_SQFT},
    {"squarefeet", UNIT_SQFT},
    {"squarefoot", UNIT_SQFT},
    {"sqm", UNIT_SQM},
    {"m2", UNIT_SQM},
    {"squaremeter", UNIT_SQM},
    {"squaremeters", UNIT_SQM},
    {"cuft", UNIT_CUFT},
    {"cf", UNIT_CUFT},
    {"ft3", UNIT_CUFT},
    {"cubicfeet", UNIT_CUFT},
    {"cubicfoot", UNIT_CUFT},
    {"cuyd", UNIT_CUYD},
    {"cy", UNIT_CUYD},
    {"yd3", UNIT_CUYD},
    {"cubicyard", UNIT_CUYD},
    {"cubicyards", UNIT_CUYD},
    {"pcf", UNIT_PCF},
    {"lb/cuft", UNIT_PCF},
    {"lb/ft3", UNIT_PCF},
    {"h", UNIT_HOUR},
    {"hr", UNIT_HOUR},
    {"hrs", UNIT_HOUR},
    {"hour", UNIT_HOUR},
    {"hours", UNIT_HOUR},
    {"day", UNIT_DAY},
    {"days", UNIT_DAY},
};

enum dimension unit_dimension(enum unit unit)
{
    assert((unsigned)unit < UNIT_COUNT_);
    return UNITS[unit].dimension;
}

const char *unit_name(enum unit unit)
{
    assert((unsigned)unit < UNIT_COUNT_);
    return UNITS[unit].name;
}

const char *dimension_name(enum dimension dimension)
{
    assert((unsigned)dimension < sizeof DIMENSIONS / sizeof *DIMENSIONS);
    return DIMENSIONS[dimension];
}

/* UNIT_NONE when it is none of ours. */
static enum unit read_unit(const char *at)
{
    char word[WORD_SIZE];
    size_t length = 0;
    while (*at != '\0') {
        char c = lower(*at);
        size_t size = 1;
        if (strncmp(at, "\u00b2", 2) == 0 || strncmp(at, "\u00b3", 2) == 0) {
            c = at[1] == "\u00b2"[1] ? '2' : '3';
            size = 2;
        }
        at += size;
        if (is_blank(c) || c == '.')
            continue;
        if (length == WORD_SIZE - 1)
            return UNIT_NONE;
        word[length++] = c;
    }
    word[length] = '\0';
    for (size_t i = 0; i < sizeof SPELLINGS / sizeof *SPELLINGS; i++)
        if (strcmp(word, SPELLINGS[i].word) == 0)
            return SPELLINGS[i].unit;
    return UNIT_NONE;
}

static const char *read_number(const char **at, int64_t *out)
{
    *at = skip_blanks(*at);
    if (**at == '\0')
        return WHY_EMPTY;
    bool minus = **at == '-';
    if (minus)
        *at = skip_blanks(*at + 1);
    struct numeral numeral;
    const char *why = numeral_read(at, true, &numeral);
    if (why)
        return why;
    if (numeral.places > PLACES)
        return WHY_FINE;
    if (!numeral_scale(numeral, PLACES, QUANTITY_MOST, out))
        return WHY_LARGE;
    if (minus)
        *out = -*out;
    return NULL;
}

bool quantity_parse(const char *text, struct quantity *out, const char **why)
{
    struct quantity value = {.unit = UNIT_NONE};
    *why = read_number(&text, &value.millionths);
    if (*why)
        return false;
    text = skip_blanks(text);
    if (*text == '\0') {
        if (value.millionths != 0)
            *why = WHY_NO_UNIT;
    } else {
        value.unit = read_unit(text);
        if (value.unit == UNIT_NONE)
            *why = WHY_UNIT;
    }
    if (*why)
        return false;
    *out = value;
    return true;
}

char *quantity_text(struct arena *arena, struct quantity value)
{
    const char *number = fixed_text(arena, value.millionths, PLACES, 0, false);
    return arena_printf(arena, value.unit == UNIT_NONE ? "%s%s" : "%s %s", number, unit_name(value.unit));
}

/* How many of the trade's own unit one `unit` is. */
static double unit_factor(enum unit unit)
{
    switch (unit) {
    case UNIT_KPA:
        return 1000.0 * M_PER_FT * M_PER_FT / N_PER_LB;
    case UNIT_KN_M:
        return 1000.0 * M_PER_FT / N_PER_LB;
    case UNIT_KN:
        return 1000.0 / N_PER_LB;
    case UNIT_KIP:
        return 1000.0;
    case UNIT_SQM:
        return 1.0 / (M_PER_FT * M_PER_FT);
    case UNIT_CUYD:
        return 27.0;
    default:
        return 1.0;
    }
}

double quantity_value(struct quantity value)
{
    return (double)value.millionths / 1e6 * unit_factor(value.unit);
}
