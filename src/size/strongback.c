/* A strongback: a beam on posts that stands in place of a shore's stud wall and carries the joists from post to post.
 *
 * The joists come to it one by one.  Against an even load of the same weight each adds at most P s / 8 to the moment at
 * its own place (P its end, s their spacing) and half of P to the shear and to a reaction (statics; it is added to
 * all).  What comes down in one place is carried where it does most, and its worst is added to the worst of the rest.
 * Live and snow loads stand on each span or not, whatever does more. */
#include "size.h"

#include <math.h>

#include "sawbill/text.h"

/* Places tried in each section between two posts; the middle is one of them. */
enum { PLACES = 24 };

/* A load of 1 lb, where it does most. */
struct moving {
    double moment, shear;
    double *down;         /* E I times the sag, of each section */
    double *most, *least; /* reaction of each post */
};
struct back {
    struct sizing *s;
    struct shore_design *sd;
    struct member_checks *checks;
    struct wood_piece piece;
    struct beam_spans spans;
    size_t sections;
    double cd, spacing_in, widest_in;
    struct loads per_inch, point_lb, present;
    struct moving moving;
    struct check bending, shear, sag, bearing, post, plate, lifts;
};

static double section_start(const struct back *back, size_t section)
{
    return section == 0 ? 0 : back->spans.support[section - 1].at_in;
}

static double section_end(const struct back *back, size_t section)
{
    return section < back->spans.supports ? back->spans.support[section].at_in : back->spans.length_in;
}

static bool overhangs(const struct back *back, size_t section)
{
    return section == 0 || section == back->spans.supports;
}

static void move_to(struct back *back, double at_in)
{
    const struct beam_load one = {.point = true, .from_in = at_in, .amount = {{[LOAD_DEAD] = 1}}};
    static const double factor[LOAD_SOURCES] = {[LOAD_DEAD] = 1};
    struct beam_spans spans = back->spans;
    struct moving *out = &back->moving;
    spans.load = &one;
    spans.count = 1;
    spans.factor = factor;
    if (!spans_solve(&spans))
        return;
    for (size_t section = 0; section < back->sections; section++) {
        double from = section_start(back, section), to = section_end(back, section);
        if (!(to > from))
            continue;
        struct beam_extremes at = spans_extremes(&spans, from, to);
        out->moment = fmax(out->moment, fmax(at.sagging.value, -at.hogging.value));
        out->shear = fmax(out->shear, fabs(at.shear.value));
        out->down[section] = fmax(out->down[section], at.down.value);
    }
    for (size_t i = 0; i < spans.supports; i++) {
        out->most[i] = fmax(out->most[i], spans.support[i].reaction);
        out->least[i] = fmin(out->least[i], spans.support[i].reaction);
    }
}

static void move_over(struct back *back)
{
    for (size_t section = 0; section < back->sections; section++) {
        double from = section_start(back, section), to = section_end(back, section);
        if (!(to > from))
            continue;
        const double beside = (to - from) * 1e-6; /* on a post it would be in no shear */
        move_to(back, from + beside);
        for (int i = 1; i < PLACES; i++)
            move_to(back, from + (to - from) * i / PLACES);
        move_to(back, to - beside);
    }
}

/* Its joists' ends one by one: more than the even load. */
static double joist_end(const struct back *back, const struct combination *combo)
{
    return combined(combo, &back->per_inch) * back->spacing_in;
}

static void keep(struct check *worst, struct check next, const struct combination *combo, const char *note)
{
    next.combination = combo->name;
    next.note = note;
    check_worse(worst, next);
}

static void rate_bending(struct back *back, const struct combination *combo, const struct beam_envelope *worst)
{
    struct arena *arena = back->s->arena;
    double moment = 0, shear = 0, one = joist_end(back, combo), point = combined(combo, &back->point_lb);
    for (size_t section = 0; section < back->sections; section++) {
        const struct beam_extremes *at = &worst->section[section];
        moment = fmax(moment, fmax(at->sagging.value, -at->hogging.value));
        shear = fmax(shear, fabs(at->shear.value));
    }
    moment += one * back->spacing_in / 8 + point * back->moving.moment;
    shear += one / 2 + point * back->moving.shear;
    struct wood_bending fb = wood_bending(&back->piece, back->cd, 1, back->widest_in, LE_NOT_LISTED, back->widest_in);
    keep(&back->bending,
         check_of("strongback, bending", "NDS 2018 3.3.1, 3.3.3", moment / wood_modulus(&back->piece), fb.fb, "psi"),
         combo,
         arena_printf(arena, "CD %s, CF %s, CL %s (held at its posts only); live load on any spans",
                      number_text(arena, back->cd, 2), number_text(arena, fb.cf, 2), number_text(arena, fb.cl, 3)));
    keep(&back->shear,
         check_of("strongback, shear", "NDS 2018 3.4.2", 1.5 * shear / wood_area(&back->piece),
                  back->piece.row->fv * back->cd, "psi"),
         combo, "no reduction near the posts");
}

/* An overhang may sag as far as a span of twice its length (IBC Table 1604.3, note on cantilevers, from memory). */
static void rate_sag(struct back *back, const struct combination *combo, const struct beam_envelope *worst)
{
    double stiff = back->piece.row->e * wood_inertia(&back->piece), point = combined(combo, &back->point_lb);
    int n = back->sd->shore->sag_limit.count;
    for (size_t section = 0; section < back->sections; section++) {
        double length = section_end(back, section) - section_start(back, section);
        if (length <= 0)
            continue;
        double down = (worst->section[section].down.value + point * back->moving.down[section]) / stiff;
        keep(&back->sag,
             check_of("strongback, sag", "statics", down, (overhangs(back, section) ? 2 : 1) * length / n, "in"), combo,
             arena_printf(back->s->arena, "all load, L/%d of %s %s", n, number_text(back->s->arena, length, 1),
                          overhangs(back, section) ? "in of overhang, doubled" : "in between posts"));
    }
}

/* Of all that stands on it; its own weight with it. */
static double share_of_dead(const struct back *back, const struct combination *combo)
{
    struct loads all = loads_plus(loads_times(back->per_inch, back->spans.length_in), back->point_lb);
    all.of[LOAD_DEAD] += back->sd->strongback->weight_plf * back->piece.plies / 12 * back->spans.length_in;
    return all.of[LOAD_DEAD] / fmax(combined(combo, &all), all.of[LOAD_DEAD]);
}

/* Plies beside each other along the strongback: those under its width. */
static void rate_post(struct back *back, const struct combination *combo, size_t index, double lb)
{
    struct arena *arena = back->s->arena;
    struct shore_design *sd = back->sd;
    int plies = sd->shore->post_plies.at ? sd->shore->post_plies.count : 1;
    double height = length_inches(sd->height);
    struct wood_post post = {.piece = piece_of(sd->member, plies),
                             .along_in = height,
                             .across_in = height / (sd->brace_rows + 1),
                             .most_slender = 75};
    struct wood_post_rating rating = wood_post_rate(&post, back->cd);
    double along = plies * post.piece.ply_in,
           across = fmin(post.piece.depth_in, back->piece.ply_in * back->piece.plies);
    const char *where =
        arena_printf(arena, "post %zu, at %s", index + 1, length_tape(arena, sd->shore->supports.item[index]));
    sd->post_lb[index] = fmax(sd->post_lb[index], lb);
    if (lb > sd->stud_lb) {
        sd->stud_lb = lb;
        sd->dead_lb = lb * share_of_dead(back, combo);
    }
    keep(&back->post, check_of("post under the strongback", "NDS 2018 3.7.1", lb, rating.capacity_lb, "lb"), combo,
         arena_printf(arena, "%s: %d %s, le/d %s, CP %s%s", where, plies, plies == 1 ? "ply" : "plies, each by itself",
                      number_text(arena, rating.slenderness, 1), number_text(arena, rating.cp, 3),
                      rating.too_slender ? "; le/d is beyond 75 (3.7.1.4)" : ""));
    keep(&back->bearing,
         check_of("strongback on its post", "NDS 2018 3.10.2", lb / (along * across), back->piece.row->fc_perp, "psi"),
         combo, where);
    const struct member *plate = sd->bottom_plate;
    if (plate && plate->values)
        keep(&back->plate,
             check_of("plate under the post", "NDS 2018 3.10.2",
                      lb / (along * fmin(post.piece.depth_in, length_inches(plate->depth))), plate->values->fc_perp,
                      "psi"),
             combo, plate->code);
}

static void rate_reactions(struct back *back, const struct combination *combo, const struct beam_envelope *worst)
{
    double one = joist_end(back, combo), point = combined(combo, &back->point_lb);
    for (size_t i = 0; i < back->spans.supports; i++) {
        rate_post(back, combo, i, worst->reaction[i].most + one / 2 + point * back->moving.most[i]);
        double least = worst->reaction[i].least + point * back->moving.least[i];
        if (least < -1) /* less is the dust of the arithmetic */
            keep(&back->lifts, check_of("post that lifts off", "statics", -least, 0, "lb"), combo,
                 arena_printf(back->s->arena,
                              "post %zu: load on the other spans lifts the strongback off it; stand the "
                              "posts nearer its ends",
                              i + 1));
    }
}

static void rate(struct back *back)
{
    static const bool patterned[LOAD_SOURCES] = {
        [LOAD_LIVE] = true, [LOAD_ROOF_LIVE] = true, [LOAD_SNOW] = true, [LOAD_ATTIC] = true};
    struct sizing *s = back->s;
    struct beam_load even = {.to_in = back->spans.length_in, .amount = back->per_inch};
    even.amount.of[LOAD_DEAD] += back->sd->strongback->weight_plf * back->piece.plies / 12;
    struct beam_spans spans = back->spans;
    spans.load = &even;
    spans.count = 1;
    for (size_t i = 0; i < s->combo_count; i++) {
        const struct combination *combo = &s->combo[i];
        struct beam_envelope worst;
        spans.factor = combo->factor;
        if (!combo_applies(combo, &back->present) || !spans_envelope(s->arena, &spans, patterned, &worst))
            continue;
        rate_bending(back, combo, &worst);
        rate_sag(back, combo, &worst);
        rate_reactions(back, combo, &worst);
    }
}

/* The load of one joist's end, what stands in one place on top of it. */
static void rate_strap(struct back *back)
{
    if (!back->sd->hung_by)
        return;
    struct loads lb = loads_plus(loads_times(back->per_inch, back->spacing_in), back->point_lb);
    checks_add(back->s, back->checks,
               hanger_check(back->s, back->sd->hung_by, &lb, 0, "joist's strap to the strongback"));
}

static void say_posts(const struct back *back)
{
    struct sizing *s = back->s;
    struct buffer text = {.arena = s->arena};
    const struct lengths_value *at = &back->sd->shore->supports;
    for (size_t i = 0; i < at->count; i++)
        buffer_printf(&text, "%s%s lb at %s", i ? ", " : "", number_text(s->arena, back->sd->post_lb[i], 0),
                      length_tape(s->arena, at->item[i]));
    basis_add(s, arena_printf(s->arena,
                              "%s: its strongback brings at most %s to its posts (from its own end; live load on any "
                              "spans, joists where they do most)",
                              head_name(s->arena, KIND_SHORE, &back->sd->shore->head), buffer_text(&text)));
}

static void set_out(struct back *back)
{
    const struct lengths_value *at = &back->sd->shore->supports;
    struct arena *arena = back->s->arena;
    struct beam_support *support = arena_array(arena, at->count, sizeof *support);
    for (size_t i = 0; i < at->count; i++)
        support[i].at_in = length_inches(at->item[i]);
    back->sections = at->count + 1;
    back->spans =
        (struct beam_spans){.length_in = length_inches(back->sd->length), .support = support, .supports = at->count};
    back->moving.down = arena_array(arena, back->sections, sizeof(double));
    back->moving.most = arena_array(arena, back->sections, sizeof(double));
    back->moving.least = arena_array(arena, back->sections, sizeof(double));
    back->sd->post_lb = arena_array(arena, at->count, sizeof(double));
    for (size_t section = 0; section < back->sections; section++)
        back->widest_in = fmax(back->widest_in, section_end(back, section) - section_start(back, section));
}

static double spacing_of(const struct sizing *s, const struct shore *shore)
{
    double widest = 0;
    for (size_t i = 0; i < shore->holds.count; i++)
        if (shore->holds.item[i].kind == KIND_JOISTS)
            widest = fmax(widest, length_inches(s->job->joists[shore->holds.item[i].index].spacing.length));
    return widest;
}

void strongback_check(struct sizing *s, struct shore_design *sd, const struct loads *plf, const struct loads *point_lb,
                      struct member_checks *checks)
{
    struct back back = {.s = s,
                        .sd = sd,
                        .checks = checks,
                        .piece = piece_of(sd->strongback, sd->shore->strongback_plies.count),
                        .cd = wood_cd_of_days(sd->shore->days.count),
                        .spacing_in = spacing_of(s, sd->shore),
                        .per_inch = loads_times(*plf, 1.0 / 12),
                        .point_lb = *point_lb,
                        .present = loads_plus(*plf, *point_lb)};
    set_out(&back);
    if (back.sections > SPANS_PATTERN_MOST) {
        unchecked_add(s, arena_printf(s->arena, "not checked: the strongback of %s: it has more posts than are checked",
                                      head_name(s->arena, KIND_SHORE, &sd->shore->head)));
        return;
    }
    if (loads_sum(*point_lb) > 0)
        move_over(&back);
    rate(&back);
    const struct check *all[] = {&back.bending, &back.shear, &back.sag,   &back.bearing,
                                 &back.post,    &back.plate, &back.lifts, NULL};
    const struct member *plate = sd->bottom_plate;
    back.bending.values = back.shear.values = back.sag.values = back.bearing.values =
        values_text(s->arena, back.piece.row);
    back.plate.values = values_both(s->arena, plate ? plate->values : NULL, NULL);
    back.lifts.values = "";
    for (size_t i = 0; all[i]; i++)
        checks_add(s, checks, *all[i]);
    rate_strap(&back);
    say_posts(&back);
}
