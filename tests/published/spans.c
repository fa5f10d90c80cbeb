/* Span tables of joists, ceiling joists and rafters, to the inch; header tables only within a band.
 *
 * Joist tables: simple spans under an even load, strength under dead and live load, stiffness under live load alone
 * (American Wood Council, "Understanding Loads and Using Span Tables"); the greatest span at which every ratio of
 * joist_rate() is at most 1, to the nearest inch.  CD 1.0, on snow rafters 1.15. */
#include "published.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "sawbill/joist.h"
#include "sawbill/text.h"
#include "sawbill/wood.h"

struct span_row {
    struct joist_section joist;
    struct loads per_inch;
    const struct combination *combo;
    size_t combos;
    double live_limit; /* 0: neither stiffness nor shear asked */
};

static const struct combination floor_loads = {"D+L", {1, 1, 0, 0}, 1.0};
static const struct combination snow_loads = {"D+S", {1, 0, 0, 1}, 1.15};

static bool holds(const struct span_row *row, double span_in)
{
    for (size_t i = 0; i < row->combos; i++) {
        struct joist_rating rating = joist_rate(&row->joist, span_in, &row->per_inch, &row->combo[i]);
        if (rating.bending_psi > rating.fb_psi)
            return false;
        if (row->live_limit > 0 && (rating.shear_psi > rating.fv_psi || rating.live_in > span_in / row->live_limit))
            return false;
    }
    return true;
}

static double greatest_span(const struct span_row *row)
{
    double low = 1, high = 1200;
    for (int i = 0; i < 44; i++) {
        double middle = (low + high) / 2;
        *(holds(row, middle) ? &low : &high) = middle;
    }
    return low;
}

/* An exact half goes down: the longer span would not hold. */
static double nearest_inch(double span_in)
{
    return ceil(span_in - 0.5 - 1e-6);
}

/* "2x10" or "3-2x10": plies and dressed size (PS 20, dry). */
static bool section_of(const char *size, struct joist_section *joist)
{
    int plies = 1;
    if (size[0] && size[1] == '-') {
        plies = size[0] - '0';
        size += 2;
    }
    static const struct {
        const char *size;
        double depth;
    } two_by[] = {{"2x4", 3.5}, {"2x6", 5.5}, {"2x8", 7.25}, {"2x10", 9.25}, {"2x12", 11.25}};
    for (size_t i = 0; i < sizeof two_by / sizeof *two_by; i++)
        if (!strcmp(size, two_by[i].size)) {
            joist->width_in = 1.5 * plies;
            joist->depth_in = two_by[i].depth;
            return true;
        }
    return false;
}

static const char *row_id(struct published *p, const struct sheet *sheet, size_t row)
{
    const char *id = published_cell(sheet, row, "id");
    return *id ? id : arena_printf(p->arena, "row %zu", row);
}

static void run_joist(struct published *p, struct tally *tally, const struct sheet *sheet, size_t at)
{
    struct span_row row = {0};
    const char *size = published_cell(sheet, at, "size"), *limit = published_cell(sheet, at, "deflection_limit");
    double apart = published_number(sheet, at, "spacing_in");
    bool snow = !isnan(published_number(sheet, at, "ground_snow_psf")), ok = section_of(size, &row.joist);
    row.joist.row = catalog_design(&p->design, published_cell(sheet, at, "species"), published_cell(sheet, at, "grade"),
                                   catalog_nominal_width(size));
    row.joist.cr = joist_cr(3, apart);
    row.per_inch.of[LOAD_DEAD] = published_number(sheet, at, "dead_psf") * apart / 144;
    row.per_inch.of[snow ? LOAD_SNOW : LOAD_LIVE] = published_number(sheet, at, "live_psf") * apart / 144;
    row.combo = snow ? &snow_loads : &floor_loads;
    row.combos = 1;
    row.live_limit = !strncmp(limit, "L/", 2) ? catalog_nominal_width(arena_printf(p->arena, "x%.3s", limit + 2)) : 0;
    const char *id = row_id(p, sheet, at);
    if (!ok || !row.joist.row || row.live_limit <= 0) {
        published_count(p, tally, published_from_memory(sheet, at), id, false, "size, wood or limit not known");
        return;
    }
    double span = greatest_span(&row), printed = published_number(sheet, at, "span_total_in");
    double most = 26 * 12; /* the tables stop there, and say so in a note */
    double inches = nearest_inch(span);
    bool same = isnan(printed) ? inches > most : inches == printed;
    published_count(p, tally, published_from_memory(sheet, at), id, same,
                    arena_printf(p->arena, "printed %.0f in, %.2f here", printed, span));
}

/* The loads of the header tables are not stated where they are printed: these were fitted to them, so a row says no
 * more than that the order is right.  Cr is 1.0 for two plies (NDS 4.3.9 wants three). */
static const double snow_share = 0.76, roof_dead = 19, overhang_ft = 2.5, header_plf = 10;
static const double floor_dead = 10, floor_live = 40, wall_plf = 120, band = 0.08;
static const struct combination header_roof[] = {{"D+S", {1, 0, 0, 1}, 1.15}};
static const struct combination header_floor[] = {{"D+L", {1, 1, 0, 0}, 1.0}};
static const struct combination header_both[] = {
    {"D+S", {1, 0, 0, 1}, 1.15}, {"D+L", {1, 1, 0, 0}, 1.0}, {"D+0.75L+0.75S", {1, 0.75, 0, 0.75}, 1.15}};

static bool header_loads(const char *supports, double width_ft, double snow_psf, struct span_row *row)
{
    double dead = 0, live = 0, snow = 0;
    if (!strcmp(supports, "one floor only") || !strcmp(supports, "two floors")) {
        double floors = supports[0] == 't' ? 2 : 1;
        dead = floors * floor_dead * width_ft / 2 + (floors > 1 ? wall_plf : 0);
        live = floors * floor_live * width_ft / 2;
        row->combo = header_floor;
        row->combos = 1;
    } else if (!strncmp(supports, "roof", 4)) {
        double roof_ft = width_ft / 2 + overhang_ft;
        bool floor_too = strstr(supports, "floor") != NULL;
        double floors = strstr(supports, "two") ? 2 : floor_too ? 1 : 0;
        double floor_ft = floors * width_ft / (strstr(supports, "clear") ? 2 : 4);
        snow = snow_share * snow_psf * roof_ft;
        dead = roof_dead * roof_ft + header_plf + floor_dead * floor_ft + floors * wall_plf;
        live = floor_live * floor_ft;
        row->combo = floor_too ? header_both : header_roof;
        row->combos = floor_too ? 3 : 1;
    } else {
        return false;
    }
    row->per_inch = (struct loads){{dead / 12, live / 12, 0, snow / 12}};
    return true;
}

/* The tables serve No.2 of all four species: the least span of them. */
static double header_span(const struct published *p, struct span_row *row, double nominal)
{
    static const char *const species[] = {"Douglas Fir-Larch", "Hem-Fir", "Spruce-Pine-Fir", "Southern Pine"};
    double least = INFINITY;
    for (size_t i = 0; i < sizeof species / sizeof *species; i++) {
        row->joist.row = catalog_design(&p->design, species[i], "No.2", nominal);
        if (row->joist.row)
            least = fmin(least, greatest_span(row));
    }
    return least;
}

/* Columns of the span tables, or of headers.csv. */
static const char *either(const struct sheet *sheet, size_t at, const char *one, const char *other)
{
    const char *text = published_cell(sheet, at, one);
    return *text ? text : published_cell(sheet, at, other);
}

static double printed_inches(const struct sheet *sheet, size_t at)
{
    double total = published_number(sheet, at, "span_total_in");
    return isnan(total) ? 12 * published_number(sheet, at, "span_ft") + published_number(sheet, at, "span_in") : total;
}

static void run_header(struct published *p, const struct sheet *sheet, size_t at)
{
    const char *size = published_cell(sheet, at, "size");
    struct span_row row = {0};
    if (!section_of(size, &row.joist) ||
        !header_loads(either(sheet, at, "supports", "supporting"),
                      strtod(either(sheet, at, "building_width_ft", "width_ft"), NULL),
                      strtod(either(sheet, at, "ground_snow_psf", "snow_psf"), NULL), &row)) {
        p->band.left_out++;
        return;
    }
    row.joist.cr = joist_cr((int)(row.joist.width_in / 1.5), 1.5);
    double span = header_span(p, &row, catalog_nominal_width(size + 2));
    double printed = printed_inches(sheet, at);
    bool near = isfinite(span) && fabs(span - printed) <= band * printed;
    p->band.rows++; /* never among the values reproduced: counted apart */
    p->band.within += near;
}

void published_spans(struct published *p)
{
    const struct sheet *sheet = published_sheet(p, "wood", "span_tables.csv");
    if (!sheet)
        sheet = published_sheet(p, "wood", "spans.csv");
    if (!sheet)
        return;
    struct tally *joists = published_tally(p, "spans of joists, ceiling joists and rafters, to the inch");
    const struct sheet *headers = published_sheet(p, "code", "headers.csv"); /* complete: then not from here, too */
    size_t other = 0;
    for (size_t row = 1; row < sheet->count; row++) {
        const char *table = published_cell(sheet, row, "table");
        if (!isnan(published_number(sheet, row, "spacing_in")))
            run_joist(p, joists, sheet, row);
        else if (!strcmp(table, "R602.7(1)") || !strcmp(table, "R602.7(2)"))
            headers ? (void)0 : run_header(p, sheet, row);
        else
            other++;
    }
    for (size_t row = 1; headers && row < headers->count; row++)
        if (*published_cell(headers, row, "size"))
            run_header(p, headers, row);
    joists->left_out = other;
    joists->why_left_out = "headers of older editions or proposals, whose rules are not known";
}
