/* Stability of beams and columns: NDS 2018 3.3.3, 3.7.1 and 15.3. */
#include "sawbill/wood.h"

#include <math.h>

/* Table 3.3.3: le = near x lu when lu/d < 7, else far x lu + depth x d. */
static const struct {
    double near, far, depth;
} effective_length[] = {
    [LE_SPAN_UNIFORM] = {2.06, 1.63, 3},
    [LE_SPAN_POINT_MID] = {1.80, 1.37, 3},
    [LE_SPAN_POINT_MID_BRACED] = {1.11, 1.11, 0},
    [LE_CANTILEVER_UNIFORM] = {1.33, 0.90, 3},
    [LE_CANTILEVER_POINT_END] = {1.87, 1.44, 3},
    [LE_EQUAL_MOMENTS] = {1.84, 1.84, 0},
    [LE_NOT_LISTED] = {2.06, 1.63, 3},
};

double wood_le(enum wood_loading loading, double lu_in, double depth_in)
{
    double slender = lu_in / depth_in;
    if (loading == LE_NOT_LISTED && slender > 14.3) /* footnote 1 */
        return 1.84 * lu_in;
    if (slender < 7)
        return effective_length[loading].near * lu_in;
    return effective_length[loading].far * lu_in + effective_length[loading].depth * depth_in;
}

double wood_rb(double le_in, double depth_in, double width_in)
{
    return sqrt(le_in * depth_in / (width_in * width_in));
}

/* The root that CL and CP share: interaction of crushing (1) with buckling (a), c for crookedness. */
static double interaction(double a, double c)
{
    double half = (1 + a) / (2 * c);
    return half - sqrt(fmax(0, half * half - a / c));
}

double wood_cl(double rb, double emin_psi, double fb_star_psi)
{
    if (rb <= 0)
        return 1.0;
    return interaction(1.20 * emin_psi / (rb * rb) / fb_star_psi, 0.95);
}

double wood_c(enum family_of_wood wood)
{
    return wood == WOOD_SAWN ? 0.8 : 0.9;
}

double wood_cp(double slenderness, double emin_psi, double fc_star_psi, double c)
{
    if (slenderness <= 0)
        return 1.0;
    return interaction(0.822 * emin_psi / (slenderness * slenderness) / fc_star_psi, c);
}

static double stability(const struct wood_post *post, double length, double width, double fc_star, double *slenderness)
{
    if (length <= 0)
        return 1.0;
    *slenderness = fmax(*slenderness, length / width);
    return wood_cp(length / width, post->piece.row->emin, fc_star, wood_c(post->piece.wood));
}

/* 15.3.1: 2 to 5 plies of at least 1-1/2 in, nailed by 15.3.3. */
static bool acts_as_one(const struct wood_post *post)
{
    return post->nailed && post->piece.plies <= 5 && post->piece.ply_in >= 1.5 - 1e-9;
}

struct wood_post_rating wood_post_rate(const struct wood_post *post, double cd)
{
    const struct wood_piece *piece = &post->piece;
    struct wood_post_rating out = {0};
    out.fc_star = piece->row->fc * cd * wood_cf(piece->row, piece->ply_in, piece->depth_in).fc;
    if (out.fc_star <= 0)
        return out;
    double whole = 0, single = 0;
    out.cp_along = stability(post, post->along_in, piece->depth_in, out.fc_star, &whole);
    single = whole;
    out.cp_ply = fmin(out.cp_along, stability(post, post->across_in, piece->ply_in, out.fc_star, &single));
    out.cp_across = stability(post, post->across_in, piece->plies * piece->ply_in, out.fc_star, &whole);
    if (piece->plies > 1 && post->across_in > 0)
        out.cp_across *= wood_kf_nailed();
    double as_one = fmin(out.cp_along, out.cp_across);
    bool one = piece->plies == 1 || acts_as_one(post);
    /* 15.3.2.2: a built-up column is never less than its plies, each for itself; those must not be too slender */
    bool plies_hold = single <= post->most_slender;
    out.as_single_plies = piece->plies > 1 && (!one || (plies_hold && out.cp_ply > as_one));
    out.cp = out.as_single_plies ? out.cp_ply : as_one;
    out.slenderness = out.as_single_plies ? single : whole;
    out.too_slender = out.slenderness > post->most_slender;
    out.capacity_lb = out.too_slender ? 0 : out.fc_star * out.cp * wood_area(piece);
    return out;
}

struct wood_nailing wood_nailing(int plies, double ply_in, double depth_in, double diameter_in)
{
    return (struct wood_nailing){
        .needed_length = (plies - 1) * ply_in + 0.75 * ply_in,
        .end_least = 15 * diameter_in,
        .end_most = 18 * diameter_in,
        .spacing_least = 20 * diameter_in,
        .spacing_most = 6 * ply_in,
        .row_least = 10 * diameter_in,
        .row_most = 20 * diameter_in,
        .edge_least = 5 * diameter_in,
        .edge_most = 20 * diameter_in,
        .rows = depth_in > 3 * ply_in ? 2 : 1,
    };
}
