/* Factors and adjusted values of the NDS 2018; every row with its clause. */
#include "sawbill/wood.h"

#include <math.h>
#include <string.h>

/* Table 2.3.2, frequently used load duration factors. */
static const double duration_factor[] = {
    [DURATION_PERMANENT] = 0.9, [DURATION_TEN_YEARS] = 1.0, [DURATION_TWO_MONTHS] = 1.15, [DURATION_SEVEN_DAYS] = 1.25};

double wood_cd(enum wood_duration duration)
{
    return duration_factor[duration];
}

double wood_cd_of_days(int days)
{
    if (days <= 0)
        return wood_cd(DURATION_TEN_YEARS);
    return wood_cd(days <= 7 ? DURATION_SEVEN_DAYS : days <= 60 ? DURATION_TWO_MONTHS : DURATION_TEN_YEARS);
}

/* PS 20 dry dressed widths of dimension lumber. */
static const struct {
    double nominal, dressed;
} dressed_size[] = {{1, 0.75}, {2, 1.5},  {3, 2.5},   {4, 3.5},    {5, 4.5},
                    {6, 5.5},  {8, 7.25}, {10, 9.25}, {12, 11.25}, {14, 13.25}};

double wood_nominal(double dressed_in)
{
    for (size_t i = 0; i < sizeof dressed_size / sizeof *dressed_size; i++)
        if (dressed_in <= dressed_size[i].dressed + 1.0 / 16) /* a saw's tolerance */
            return dressed_size[i].nominal;
    return 16;
}

/* Supplement Table 4A, size factors: Select Structural, No.1 & Btr, No.1, No.2, No.3.  4 in thick has its own Fb. */
static const struct {
    double nominal, fb, fb_4_thick, ft, fc;
} size_factor[] = {{4, 1.5, 1.5, 1.5, 1.15}, {5, 1.4, 1.4, 1.4, 1.1},  {6, 1.3, 1.3, 1.3, 1.1},
                   {8, 1.2, 1.3, 1.2, 1.05}, {10, 1.1, 1.2, 1.1, 1.0}, {12, 1.0, 1.1, 1.0, 1.0}};
static const double deeper_fb = 0.9, deeper_fb_4_thick = 1.0, deeper_ft = 0.9, deeper_fc = 0.9; /* 14 in and wider */

static bool starts(const char *text, const char *word)
{
    for (; *word; text++, word++)
        if ((*text | 0x20) != (*word | 0x20)) /* ASCII letters: case is one */
            return false;
    return true;
}

static struct wood_size_factor cf_visual(double nominal, bool four_thick)
{
    for (size_t i = 0; i < sizeof size_factor / sizeof *size_factor; i++)
        if (nominal <= size_factor[i].nominal)
            return (struct wood_size_factor){four_thick ? size_factor[i].fb_4_thick : size_factor[i].fb,
                                             size_factor[i].ft, size_factor[i].fc};
    return (struct wood_size_factor){four_thick ? deeper_fb_4_thick : deeper_fb, deeper_ft, deeper_fc};
}

/* Supplement Table 4A, the light framing grades; outside their widths there is no factor. */
static bool cf_light(const char *grade, double nominal, struct wood_size_factor *out)
{
    static const struct wood_size_factor none;
    if (starts(grade, "stud")) {
        *out = nominal <= 4   ? (struct wood_size_factor){1.1, 1.1, 1.05}
               : nominal <= 6 ? (struct wood_size_factor){1.0, 1.0, 1.0}
                              : none;
        return true;
    }
    if (starts(grade, "construction") || starts(grade, "standard")) {
        *out = nominal <= 4 ? (struct wood_size_factor){1.0, 1.0, 1.0} : none;
        return true;
    }
    if (starts(grade, "utility")) {
        *out = nominal == 4  ? (struct wood_size_factor){1.0, 1.0, 1.0}
               : nominal < 4 ? (struct wood_size_factor){0.4, 0.4, 0.6}
                             : none;
        return true;
    }
    return false;
}

double wood_cf_timber(double depth_in)
{
    return depth_in > 12 ? pow(12 / depth_in, 1.0 / 9) : 1.0;
}

struct wood_size_factor wood_cf(const struct design_row *row, double thickness_in, double depth_in)
{
    struct wood_size_factor cf = {1, 1, 1};
    double nominal = wood_nominal(depth_in);
    bool four_thick = thickness_in >= 3.5;
    if (!strcmp(row->table, "4D")) {
        cf.fb = wood_cf_timber(depth_in);
    } else if (!strcmp(row->table, "4A")) {
        if (!cf_light(row->grade, nominal, &cf))
            cf = cf_visual(nominal, four_thick);
    } else if (!strcmp(row->table, "4B")) {
        /* the values are given by width; wider than 12 in: 0.9; 4 in thick and 8 in or wider: 1.1 on Fb */
        if (nominal > 12)
            cf = (struct wood_size_factor){0.9, 0.9, 0.9};
        if (four_thick && nominal >= 8)
            cf.fb *= 1.1;
    }
    return cf;
}

double wood_cv(double span_ft, double depth_in, double width_in, double x)
{
    return fmin(1.0, pow(21 / span_ft * (12 / depth_in) * (5.125 / width_in), 1 / x));
}

/* 8.3.6 leaves it to the product's report.  No gain is taken below 12 in; above it the steepest exponent commonly
 * reported for the class (from memory, no source). */
double wood_scl_depth(enum family_of_wood wood, double depth_in)
{
    static const double exponent[] = {[WOOD_LVL] = 1.0 / 7, [WOOD_PSL] = 1.0 / 9, [WOOD_LSL] = 0.12};
    if (wood != WOOD_LVL && wood != WOOD_PSL && wood != WOOD_LSL)
        return 1.0;
    return depth_in > 12 ? pow(12 / depth_in, exponent[wood]) : 1.0;
}

double wood_cb(double bearing_in, double from_end_in)
{
    if (bearing_in <= 0 || bearing_in >= 6 || from_end_in < 3)
        return 1.0;
    return (bearing_in + 0.375) / bearing_in;
}

double wood_kf_nailed(void)
{
    return 0.6;
}

double wood_kcr(bool green_wood)
{
    return green_wood ? 2.0 : 1.5;
}

struct wood_values wood_adjust(const struct design_row *row, const struct wood_factors *f)
{
    return (struct wood_values){
        .fb = row->fb * f->cd * f->cl * f->cf.fb * f->cr,
        .ft = row->ft * f->cd * f->cf.ft,
        .fv = row->fv * f->cd,
        .fc_perp = row->fc_perp * f->cb, /* no CD */
        .fc = row->fc * f->cd * f->cf.fc * f->cp,
        .e = row->e,
        .emin = row->emin,
    };
}

double wood_area(const struct wood_piece *piece)
{
    return piece->plies * piece->ply_in * piece->depth_in;
}

double wood_modulus(const struct wood_piece *piece)
{
    return piece->plies * piece->ply_in * piece->depth_in * piece->depth_in / 6;
}

double wood_inertia(const struct wood_piece *piece)
{
    return piece->plies * piece->ply_in * pow(piece->depth_in, 3) / 12;
}

double wood_cr(const struct wood_piece *piece, double wanted)
{
    double most = piece->wood == WOOD_GLULAM ? 1.0 : piece->wood == WOOD_SAWN ? 1.15 : 1.04;
    bool timber = !strcmp(piece->row->table, "4D"); /* 4.3.9 is for dimension lumber, 2 to 4 in thick */
    if (piece->plies < 3 || timber || wanted < 1)
        return 1.0;
    return fmin(wanted, most);
}

/* The factor of depth or volume that is never taken together with CL. */
static double volume_factor(const struct wood_piece *piece, double span_in)
{
    if (piece->wood == WOOD_GLULAM)
        return wood_cv(span_in / 12, piece->depth_in, piece->ply_in, starts(piece->row->species, "southern") ? 20 : 10);
    return wood_scl_depth(piece->wood, piece->depth_in);
}

struct wood_bending wood_bending(const struct wood_piece *piece, double cd, double cr, double lu_in,
                                 enum wood_loading loading, double span_in)
{
    struct wood_bending out = {.cr = wood_cr(piece, cr), .cv = volume_factor(piece, span_in), .cl = 1};
    out.cf = wood_cf(piece->row, piece->ply_in, piece->depth_in).fb;
    out.fb_star = piece->row->fb * cd * out.cf * out.cr; /* CV is at most 1: not in Fb* (5.3.6, 8.3.6) */
    if (lu_in > 0 && piece->depth_in > piece->ply_in && out.fb_star > 0) { /* 3.3.3.1: d <= b needs no support */
        out.le_in = wood_le(loading, lu_in, piece->depth_in);
        out.rb = wood_rb(out.le_in, piece->depth_in, piece->ply_in);
        out.cl = wood_cl(out.rb, piece->row->emin, out.fb_star);
    }
    out.fb = out.rb > 50 ? 0 : out.fb_star * fmin(out.cl, out.cv);
    return out;
}
