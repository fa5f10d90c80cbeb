/* Rows of the residential code and of the load standard: combinations, snow, deflection limits, soil, cut plates,
 * bearing, nails.  Most such rows are rules in words or loads that a job states; those are counted as not run. */
#include "house.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "sawbill/footing.h"
#include "sawbill/joint.h"

#include "size/size.h"

static bool starts(const char *text, const char *word)
{
    return !strncmp(text, word, strlen(word));
}

/* "D + 0.75 L + 0.75 (Lr or 0.7 S or R)" for one of Lr and S: its factors.  False: a term that is not gravity. */
static bool read_terms(const char *text, bool snow, double factor[LOAD_SOURCES])
{
    double outer = 1, inner = 1;
    memset(factor, 0, LOAD_SOURCES * sizeof *factor);
    while (*text) {
        char *end;
        double number = strtod(text, &end);
        if (end > text && *text != '+' && *text != '-') {
            *(strchr(end, '(') == end + 1 || *end == '(' ? &outer : &inner) = number;
            text = end;
        } else if (*text == 'D') {
            factor[LOAD_DEAD] += inner;
            text++;
        } else if (starts(text, "Lr")) {
            factor[LOAD_ROOF_LIVE] += snow ? 0 : outer * inner;
            text += 2;
        } else if (*text == 'L') {
            factor[LOAD_LIVE] += inner;
            text++;
        } else if (*text == 'S') {
            factor[LOAD_SNOW] += snow ? outer * inner : 0;
            text++;
        } else if (*text == 'W' || *text == 'E' || *text == ':') {
            return false;
        } else {
            if (*text == '+' || *text == 'o') /* the next term, or the next choice */
                inner = 1;
            text++;
        }
    }
    return factor[LOAD_DEAD] == 1;
}

static bool holds_combination(bool strength, const double factor[LOAD_SOURCES])
{
    size_t count;
    const struct combination *combo = combinations(strength, false, &count);
    for (size_t i = 0; i < count; i++) {
        bool same = true;
        for (int source = 0; source < LOAD_SOURCES; source++)
            same &= fabs(combo[i].factor[source] - factor[source]) < 1e-9;
        if (same)
            return true;
    }
    return false;
}

/* 1 or 0: both of its choices are among ours, or not; NAN: none of ours. */
static double combination_value(const char *text, const char *edition)
{
    double with_roof[LOAD_SOURCES], with_snow[LOAD_SOURCES];
    bool strength = !strcmp(edition, "ASCE 7-22");
    if (!starts(text, "D") || !read_terms(text, false, with_roof) || !read_terms(text, true, with_snow))
        return NAN;
    return holds_combination(strength, with_roof) && holds_combination(strength, with_snow);
}

/* n of L/n that a cut joist is held to, live and total. */
static double limit_of(struct published *p, const char *live_is, const char *check_name)
{
    const struct design *design = house_size(p, &(struct house){"1500 psf", live_is});
    const struct check *check = house_check(design, "joists north, cut", check_name);
    return check ? floor(144 / check->capacity + 0.5) : NAN;
}

static double limit_value(struct published *p, const char *item, const char *printed)
{
    static const struct {
        const char *item, *live_is;
    } rows[] = {{"floors", "floor"},
                {"ceilings, flexible", "attic storage"},
                {"all other structural", "roof"},
                {"floor members", "floor"},
                {"roof, other ceiling", "attic storage"}};
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        if (!starts(item, rows[i].item))
            continue;
        int live = 0, total = 0;
        const char *both = strstr(printed, "D+L");
        sscanf(printed, "%*[Ll]/%d", &live);
        if (both) /* "l/360 live; - snow or wind; l/240 D+L" */
            sscanf(both - 6, "l/%d", &total);
        bool same = limit_of(p, rows[i].live_is, "live deflection") == live;
        return both ? same && limit_of(p, rows[i].live_is, "total deflection") == total : same;
    }
    return NAN;
}

/* Roof snow for 100 psf on the ground, all factors 1: 70. */
static double snow_value(struct published *p, const char *item)
{
    if (!starts(item, "flat roof snow, 7-10 and 7-16"))
        return NAN;
    const struct design *design = house_size(p, &(struct house){"1500 psf", "floor"});
    for (size_t i = 0; design && i < design->path_count; i++)
        if (!strcmp(design->path[i].from, "joists north"))
            return fabs(design->path[i].lb.of[LOAD_SNOW] / design->path[i].lb.of[LOAD_DEAD] * 10 - 70) < 1e-9;
    return 0;
}

static double load_value(struct published *p, const struct sheet *sheet, size_t row)
{
    const char *topic = published_cell(sheet, row, "topic"), *item = published_cell(sheet, row, "item");
    const char *value = published_cell(sheet, row, "value");
    if (!strcmp(topic, "ASD combination"))
        return combination_value(value, published_cell(sheet, row, "edition"));
    if (starts(topic, "deflection limit"))
        return limit_value(p, item, value);
    return !strcmp(topic, "snow") ? snow_value(p, item) : NAN;
}

/* What the library calls the soil of that pressure: its first words. */
static double soil_value(struct published *p, const char *kind, const char *item, const char *psf)
{
    if (!starts(kind, "bearing"))
        return NAN;
    const struct design *design = house_size(p, &(struct house){arena_printf(p->arena, "%s psf", psf), "floor"});
    for (size_t i = 0; design && i < design->basis_count; i++) {
        const char *soil = strstr(design->basis[i], "presumptive for ");
        if (!soil)
            continue;
        size_t first = strcspn(item, " ,");
        return !strncmp(soil + strlen("presumptive for "), item, first);
    }
    return 0;
}

static double footing_rule(const char *item, const char *value)
{
    if (starts(item, "footing projection")) /* "2 to T": a pad standing out more than its thickness is none */
        return starts(value, "2 ") && footing_least_projection_in() == 2;
    if (!starts(item, "minimum footing"))
        return NAN;
    struct footing_pad pad;
    struct footing_case light = {
        .load_lb = 10, .soil_psf = 1500, .concrete_pcf = 150, .post_short_in = 3.5, .post_long_in = 3.5};
    return starts(value, "12 x 6") && footing_least(&light, &pad) && pad.side_in == 12 && pad.thickness_in == 6;
}

static bool note_says(const struct check *check, const char *what)
{
    return check && check->note && strstr(check->note, what);
}

static double plate_value(struct published *p, const char *item)
{
    const struct design *design = house_size(p, &(struct house){"1500 psf", "floor"});
    const struct check *strap = house_check(design, "beam B1, end 2", "strap over the cut plate");
    const struct check *length = house_check(design, "beam B1, end 2", "least bearing length");
    const struct check *seat = house_check(design, "joists north, cut", "planed seat");
    if (starts(item, "nails each side of the opening"))
        return strap ? strap->demand : 0;
    if (starts(item, "strap thickness"))
        return note_says(strap, "0.054 in x") ? 0.054 : 0;
    if (starts(item, "strap width"))
        return note_says(strap, "0.054 in x 1-1/2 in") ? 1.5 : 0;
    if (starts(item, "strap length past"))
        return note_says(strap, "6 in past the opening") ? 6 : 0;
    if (starts(item, "joist, beam, girder end on wood"))
        return length ? length->demand : 0;
    if (starts(item, "joist, beam, girder end on masonry"))
        return note_says(length, "masonry wants 3 in") ? 3 : 0;
    if (starts(item, "notch at member end"))
        return seat && fabs(seat->capacity - 9.25 / 4) < 1e-9; /* "d/4" */
    return NAN;
}

/* 1 where the catalog has that nail in that size; NAN: it has none of that name. */
static double nail_value(struct published *p, const struct sheet *shipped, const struct sheet *sheet, size_t row)
{
    int penny = 0, read = 0;
    char kind[16] = "";
    const char *nail = published_cell(sheet, row, "nail");
    if (sscanf(nail, "%dd %15[a-z]%n", &penny, kind, &read) != 2)
        return NAN;
    const char *name = arena_printf(p->arena, "NAIL-%dD-", penny);
    for (size_t i = 1; shipped && i < shipped->count; i++) {
        const char *code = published_cell(shipped, i, "code");
        if (!starts(code, name) || !starts(published_cell(shipped, i, "kind"), kind))
            continue;
        length_t length, diameter;
        const char *why;
        if (!length_parse(published_cell(shipped, i, "length"), &length, &why) ||
            !length_parse(published_cell(shipped, i, "diameter"), &diameter, &why))
            return 0;
        return fabs(length_inches(length) - published_number(sheet, row, "length_in")) < 1e-9 &&
               fabs(length_inches(diameter) - published_number(sheet, row, "diameter_in")) < 1e-9;
    }
    return NAN;
}

/* One table: `value` gives NAN (not run), or what to compare with `value` of the row; 1 where that is a rule. */
struct code_table {
    const char *file, *what, *left_out;
    double (*value)(struct published *p, const struct sheet *sheet, size_t row);
    const char *id[3];
};

static double soil_of_row(struct published *p, const struct sheet *sheet, size_t row)
{
    const char *item = published_cell(sheet, row, "item"), *value = published_cell(sheet, row, "value");
    double rule = footing_rule(item, value);
    return isnan(rule) ? soil_value(p, published_cell(sheet, row, "kind"), item, value) : rule;
}

static double plates_of_row(struct published *p, const struct sheet *sheet, size_t row)
{
    double here = plate_value(p, published_cell(sheet, row, "item"));
    double printed = published_number(sheet, row, "value");
    return isnan(here) || isnan(printed) ? here : fabs(here - printed) < 1e-9;
}

static double nail_of_row(struct published *p, const struct sheet *sheet, size_t row)
{
    const char *nail = published_cell(sheet, row, "nail");
    for (size_t i = 1; i < row; i++)
        if (!strcmp(published_cell(sheet, i, "nail"), nail))
            return NAN; /* a size counts once */
    const struct sheet *shipped = published_sheet_at(p, arena_printf(p->arena, "%s/catalogs/fasteners.csv", p->source));
    return nail_value(p, shipped, sheet, row);
}

static void run_table(struct published *p, const struct code_table *table)
{
    const struct sheet *sheet = published_sheet(p, "code", table->file);
    if (!sheet)
        return;
    struct tally *tally = published_tally(p, table->what);
    tally->why_left_out = table->left_out;
    for (size_t row = 1; row < sheet->count; row++) {
        double here = table->value(p, sheet, row);
        if (isnan(here)) {
            tally->left_out++;
            continue;
        }
        const char *id =
            arena_printf(p->arena, "%s, %s, %s", published_cell(sheet, row, table->id[0]),
                         published_cell(sheet, row, table->id[1]), published_cell(sheet, row, table->id[2]));
        published_count(p, tally, published_from_memory(sheet, row), id, here == 1, "does not hold here");
    }
}

void published_codes(struct published *p)
{
    static const struct code_table tables[] = {
        {"loads.csv",
         "load combinations, roof snow, limits of deflection",
         "loads that the job states, wind and earthquake, exposure, walls",
         load_value,
         {"item", "value", "edition"}},
        {"soil.csv",
         "presumptive soil values and rules of spot footings",
         "footings under walls, frost, soil tests: not what is sized here",
         soil_of_row,
         {"item", "value", "edition"}},
        {"plates_notches.csv",
         "cut plates, least bearing, end notches",
         "rules for studs, openings, bracing and walls in words",
         plates_of_row,
         {"item", "value", "edition"}},
        {"fastening.csv",
         "nail sizes of the fastening table, each once",
         "the schedule of nails by element, which the crew follows; sizes met before",
         nail_of_row,
         {"nail", "length_in", "diameter_in"}},
    };
    for (size_t i = 0; i < sizeof tables / sizeof *tables; i++)
        run_table(p, &tables[i]);
}
