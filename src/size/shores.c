/* Shore walls: what holds the house while the wall is out.
 *
 * A cut joist runs past its shore by the set-back a and is a cantilever there: by statics of a uniform load w on a run
 * L, with supports at the far bearing and at the shore, the shore takes (w L / 2) L / (L - a) a foot.  What stands on
 * the line of the wall stands at the tips of the same cantilevers: of P the shore takes P L / (L - a). */
#include "size.h"

#include <math.h>

#include "sawbill/text.h"

static const struct beam *beam_over(const struct sizing *s, const struct shore *shore)
{
    for (size_t i = 0; i < shore->holds.count; i++) {
        const struct ref_value *ref = &shore->holds.item[i];
        if (ref->kind == KIND_BEAM)
            return &s->job->beams[ref->index];
        for (size_t b = 0; ref->kind == KIND_JOISTS && b < s->job->beam_count; b++)
            for (int side = 0; side < 2; side++)
                if (s->job->beams[b].joists[side].at && s->job->beams[b].joists[side].index == ref->index)
                    return &s->job->beams[b];
    }
    return s->job->beam_count ? &s->job->beams[0] : NULL;
}

static length_t joist_spacing(const struct sizing *s, const struct shore *shore)
{
    for (size_t i = 0; i < shore->holds.count; i++)
        if (shore->holds.item[i].kind == KIND_JOISTS && s->job->joists[shore->holds.item[i].index].spacing.length > 0)
            return s->job->joists[shore->holds.item[i].index].spacing.length;
    return 16 * LENGTH_INCH;
}

/* Default: clear span of the beam and one joist spacing beyond each end. */
static length_t shore_length(const struct sizing *s, const struct shore *shore)
{
    if (shore->length.at)
        return shore->length.length;
    const struct beam *beam = beam_over(s, shore);
    return beam ? beam->clear_span.length + 2 * joist_spacing(s, shore) : 0;
}

static int stud_count(length_t length, length_t spacing)
{
    return spacing > 0 ? (int)((length + spacing - 1) / spacing) + 1 : 0;
}

struct shore_load {
    struct loads plf, point_lb; /* along the shore; what comes down in one place */
    double tip;                 /* L / (L - a), the greatest of its joists; 1 where it holds none */
    struct shore_tips at_tips;  /* of it what stands at the tips, as it stands there */
    bool too_short;             /* a joist shorter than its set-back */
};

static void add_joists(struct sizing *s, const struct shore *shore, const struct joists *joists, struct shore_load *out)
{
    double run = length_feet(joists->run.length), back = length_feet(shore->set_back.length);
    struct loads psf = area_psf(s, area_of(s->job, &joists->area));
    if (back >= run) {
        out->too_short = true;
        return;
    }
    out->plf = loads_plus(out->plf, loads_times(psf, run / 2 * run / (run - back)));
    out->tip = fmax(out->tip, run / (run - back));
    out->point_lb = loads_plus(out->point_lb, opening_on_shore(s, joists, 12 * back));
}

/* Loads written for the beam's own place: the stack has them already as they will stand on it.  They come to the shore
 * by way of the cut joists, so that the joists are added first. */
static void add_from_stack(struct sizing *s, const char *name, struct shore_load *out)
{
    bool found = false;
    for (size_t b = 0; b < s->job->beam_count; b++)
        for (size_t i = 0; i < s->stack[b].count; i++) {
            const struct placed *placed = &s->stack[b].item[i];
            if (!name_same(placed->from, name))
                continue;
            found = true;
            struct loads amount = placed->load.amount;
            if (placed->load.point) {
                out->at_tips.point_lb = loads_plus(out->at_tips.point_lb, amount);
                out->point_lb = loads_plus(out->point_lb, loads_times(amount, out->tip));
            } else {
                if (placed->load.tapers) /* every stud is made for the heavier end */
                    for (int source = 0; source < LOAD_SOURCES; source++)
                        amount.of[source] = fmax(amount.of[source], placed->load.amount_to.of[source]);
                amount = loads_times(amount, 12);
                out->at_tips.plf = loads_plus(out->at_tips.plf, amount);
                out->plf = loads_plus(out->plf, loads_times(amount, out->tip));
            }
        }
    if (!found)
        unchecked_add(s, arena_printf(s->arena, "not checked: %s, held by a shore: what it weighs is not known", name));
}

/* It stands where the beam goes, on the tips of the cut joists. */
static void add_obstruction(struct sizing *s, const struct obstruction *it, struct shore_load *out)
{
    struct loads lb = obstruction_lb(s, it);
    out->at_tips.point_lb = loads_plus(out->at_tips.point_lb, lb);
    out->point_lb = loads_plus(out->point_lb, loads_times(lb, out->tip));
}

/* Likewise, each of them. */
static void add_roof_braces(struct sizing *s, struct shore_load *out)
{
    const struct roof *roof = &s->job->roof;
    struct loads psf = area_psf(s, area_of(s->job, &roof->area));
    for (size_t i = 0; i < roof->braces.count; i++) {
        struct loads lb = loads_times(psf, roof->braces.item[i].sqft);
        out->at_tips.point_lb = loads_plus(out->at_tips.point_lb, lb);
        out->point_lb = loads_plus(out->point_lb, loads_times(lb, out->tip));
    }
}

/* The shore stands beside a post that is changed, under what it carries: without the post's own weight. */
static struct loads post_held_lb(const struct sizing *s, size_t index)
{
    const struct post_design *pd = &s->design->posts[index];
    struct loads lb = pd->lb;
    if (pd->member)
        lb.of[LOAD_DEAD] -= pd->plies * pd->member->weight_plf * length_feet(pd->post->height.length);
    return lb;
}

static bool held_already(const struct shore *shore, enum kind kind, size_t index)
{
    for (size_t i = 0; i < shore->holds.count; i++)
        if (shore->holds.item[i].kind == kind && shore->holds.item[i].index == index)
            return true;
    return false;
}

static struct shore_load gather(struct sizing *s, const struct shore *shore, size_t index)
{
    struct shore_load out = {.tip = 1};
    const struct job *job = s->job;
    for (size_t i = 0; i < shore->holds.count; i++)
        if (shore->holds.item[i].kind == KIND_JOISTS)
            add_joists(s, shore, &job->joists[shore->holds.item[i].index], &out);
    for (size_t i = 0; i < shore->holds.count; i++) {
        const struct ref_value *ref = &shore->holds.item[i];
        if (ref->kind == KIND_JOISTS)
            continue;
        if (ref->kind == KIND_LOAD)
            add_from_stack(s, head_name(s->arena, KIND_LOAD, &job->loads[ref->index].head), &out);
        else if (ref->kind == KIND_WALL)
            add_from_stack(s, head_name(s->arena, KIND_WALL, &job->walls[ref->index].head), &out);
        else if (ref->kind == KIND_ROOF)
            add_roof_braces(s, &out);
        else if (ref->kind == KIND_POST)
            out.point_lb = loads_plus(out.point_lb, post_held_lb(s, ref->index));
        else
            out.point_lb = loads_plus(out.point_lb, shore_beam_lb(s, shore, ref->index));
    }
    for (size_t i = 0; i < job->load_count; i++)
        if (job->loads[i].held_by.at && job->loads[i].held_by.index == index && !held_already(shore, KIND_LOAD, i))
            add_from_stack(s, head_name(s->arena, KIND_LOAD, &job->loads[i].head), &out);
    for (size_t i = 0; i < job->obstruction_count; i++)
        if (job->obstructions[i].held_by.at && job->obstructions[i].held_by.index == index)
            add_obstruction(s, &job->obstructions[i], &out);
    return out;
}

/* What comes down on it in one place, each a post of its own. */
static int points_on(const struct job *job, const struct shore *shore, size_t index)
{
    int points = 0;
    for (size_t i = 0; i < shore->holds.count; i++) {
        const struct ref_value *ref = &shore->holds.item[i];
        points += ref->kind == KIND_BEAM || ref->kind == KIND_POST ||
                  (ref->kind == KIND_LOAD && job->loads[ref->index].at.at);
        points += ref->kind == KIND_ROOF ? (int)job->roof.braces.count : 0;
    }
    for (size_t i = 0; i < job->load_count; i++)
        points += job->loads[i].held_by.at && job->loads[i].held_by.index == index && job->loads[i].at.at &&
                  !held_already(shore, KIND_LOAD, i);
    for (size_t i = 0; i < job->obstruction_count; i++)
        points += job->obstructions[i].held_by.at && job->obstructions[i].held_by.index == index;
    return points;
}

/* Both axes; rows of braces shorten the weak one.  NDS 2018 3.7.1.4: le/d up to 75 during construction. */
static struct wood_post stud_of(const struct shore_design *sd, int plies)
{
    double height = length_inches(sd->height);
    return (struct wood_post){.piece = piece_of(sd->member, plies),
                              .along_in = height,
                              .across_in = height / (sd->brace_rows + 1),
                              .most_slender = 75};
}

static bool holds_joists(const struct shore *shore)
{
    bool holds = false;
    for (size_t i = 0; i < shore->holds.count; i++)
        holds |= shore->holds.item[i].kind == KIND_JOISTS;
    return holds;
}

static const char *stud_note(struct sizing *s, const struct shore_design *sd, const struct wood_post_rating *rating,
                             double cd)
{
    struct buffer text = {.arena = s->arena};
    if (rating->fc_star <= 0)
        return "the grade is not for this width";
    buffer_printf(&text, "le/d %s, CP %s, CD %s, %d row%s of bracing%s", number_text(s->arena, rating->slenderness, 1),
                  number_text(s->arena, rating->cp, 3), number_text(s->arena, cd, 2), sd->brace_rows,
                  sd->brace_rows == 1 ? "" : "s",
                  holds_joists(sd->shore) ? "; joists past it are cantilevers (statics)" : "");
    if (rating->too_slender)
        buffer_add(&text, "; le/d is beyond 75 (3.7.1.4)");
    return buffer_text(&text);
}

/* Of the two plates the one that crushes first. */
static const struct member *weaker_plate(const struct shore_design *sd)
{
    const struct member *top = sd->top_plate, *bottom = sd->bottom_plate;
    if (!top || !top->values || !bottom || !bottom->values)
        return top && top->values ? top : bottom;
    return bottom->values->fc_perp < top->values->fc_perp ? bottom : top;
}

static void check_stud(struct sizing *s, struct shore_design *sd, const struct loads *lb, struct member_checks *checks)
{
    double cd = wood_cd_of_days(sd->shore->days.count);
    struct wood_post stud = stud_of(sd, 1);
    struct wood_post_rating rating = wood_post_rate(&stud, cd);
    struct check worst = {0}, plate = {0};
    const struct member *plate_of = weaker_plate(sd);
    for (size_t i = 0; i < s->combo_count; i++) {
        const struct combination *combo = &s->combo[i];
        if (!combo_applies(combo, lb))
            continue;
        double demand = combined(combo, lb);
        if (demand > sd->stud_lb) {
            sd->stud_lb = demand;
            sd->dead_lb = lb->of[LOAD_DEAD];
        }
        struct check check = check_of("shore stud", "NDS 2018 3.7.1", demand, rating.capacity_lb, "lb");
        check.combination = combo->name;
        check.note = stud_note(s, sd, &rating, cd);
        check_worse(&worst, check);
        if (!plate_of || !plate_of->values)
            continue;
        check = check_of("shore plate", "NDS 2018 3.10.2", demand / wood_area(&stud.piece), plate_of->values->fc_perp,
                         "psi");
        check.combination = combo->name;
        check.values = values_text(s->arena, plate_of->values);
        check.note = plate_of->code;
        check_worse(&plate, check);
    }
    checks_add(s, checks, worst);
    checks_add(s, checks, plate);
}

/* `post plies`: a post under each thing in one place, and its plate.  All of them are put on one, with a stud's share
 * of the rest. */
static void check_post(struct sizing *s, struct shore_design *sd, const struct loads *lb, struct member_checks *checks)
{
    double cd = wood_cd_of_days(sd->shore->days.count);
    struct wood_post post = stud_of(sd, sd->shore->post_plies.count);
    struct wood_post_rating rating = wood_post_rate(&post, cd);
    struct check worst = {0}, plate = {0};
    const struct member *plate_of = weaker_plate(sd);
    for (size_t i = 0; i < s->combo_count; i++) {
        const struct combination *combo = &s->combo[i];
        if (!combo_applies(combo, lb))
            continue;
        double demand = combined(combo, lb);
        struct check check = check_of("post in the shore", "NDS 2018 3.7.1", demand, rating.capacity_lb, "lb");
        check.combination = combo->name;
        check.note =
            arena_printf(s->arena, "%d plies, each by itself; %s", post.piece.plies, stud_note(s, sd, &rating, cd));
        check_worse(&worst, check);
        if (!plate_of || !plate_of->values)
            continue;
        check = check_of("plate at the post", "NDS 2018 3.10.2", demand / wood_area(&post.piece),
                         plate_of->values->fc_perp, "psi");
        check.combination = combo->name;
        check.values = values_text(s->arena, plate_of->values);
        check.note = plate_of->code;
        check_worse(&plate, check);
    }
    checks_add(s, checks, worst);
    checks_add(s, checks, plate);
}

static void check_uprights(struct sizing *s, struct shore_design *sd, const struct shore_load *load,
                           struct member_checks *checks)
{
    struct loads even = loads_times(load->plf, length_feet(sd->spacing));
    struct loads lb = loads_plus(even, load->point_lb);
    if (sd->strongback) {
        strongback_check(s, sd, &load->plf, &load->point_lb, checks);
    } else if (sd->posts > 0) {
        check_stud(s, sd, &even, checks);
        check_post(s, sd, &lb, checks);
    } else {
        check_stud(s, sd, &lb, checks);
    }
}

static void say_point(struct sizing *s, const struct shore_design *sd, const char *name, const struct shore_load *load)
{
    if (loads_sum(load->point_lb) > 0)
        basis_add(s, arena_printf(s->arena,
                                  "%s: what comes down in one place is all put on one %s, x %s for standing past it on "
                                  "the cut joists (P L/(L - a), statics)",
                                  name,
                                  sd->strongback  ? "place of its strongback"
                                  : sd->posts > 0 ? "post"
                                                  : "stud",
                                  number_text(s->arena, load->tip, 3)));
}

static const char *made_of(struct sizing *s, const struct shore_design *sd)
{
    const char *studs =
        member_text(s->arena, sd->member, sd->strongback && sd->shore->post_plies.at ? sd->shore->post_plies.count : 1);
    return sd->strongback
               ? arena_printf(s->arena, "%s on posts of %s",
                              member_text(s->arena, sd->strongback, sd->shore->strongback_plies.count), studs)
               : studs;
}

static void shore_size(struct sizing *s, struct shore_design *sd, size_t index)
{
    const struct shore *shore = sd->shore;
    const char *name = head_name(s->arena, KIND_SHORE, &shore->head);
    struct shore_load load = gather(s, shore, index);
    struct member_checks *checks = checks_new(s, name, made_of(s, sd));
    checks_wood(checks, sd->member->values);
    checks->unverified |= sd->strongback && !sd->strongback->values->seen;
    check_uprights(s, sd, &load, checks);
    shore_beams_check(s, sd, checks);
    shore_joists_check(s, sd, &load.at_tips, checks);
    if (load.too_short) {
        struct check back = check_of("set back", "statics", 1, 0, "");
        back.note = "the shore stands beyond the far bearing of the joists";
        checks_add(s, checks, back);
    }
    sd->passes = checks_close(s, checks, &shore->head.at);
    say_point(s, sd, name, &load);
    const char *below = shore->stands_on.text && *shore->stands_on.text ? shore->stands_on.text : "not said";
    const char *held = shore->held_below.choice == HELD_BELOW_CRIB    ? ", the crib below it too"
                       : shore->held_below.choice == HELD_BELOW_SHORE ? ", the second shore below it too"
                                                                      : "";
    unchecked_add(
        s, arena_printf(s->arena, "not checked: the floor under %s ('%s') and what carries it%s", name, below, held));
}

static const struct member *plate_named(struct sizing *s, const struct shore *shore, const struct text_value *code,
                                        const struct member *other)
{
    return code->at ? member_named(s, code, &shore->head, KIND_SHORE) : other;
}

static const struct hanger *strap_named(struct sizing *s, const struct shore *shore)
{
    const struct hanger *strap = shore->hung_by.at ? catalog_hanger(s->catalog, shore->hung_by.text) : NULL;
    if (shore->hung_by.at && (!strap || strap->kind != CONNECTOR_STRAP)) {
        diag_add(s->diags, DIAG_C006, &shore->hung_by.at->at, "'%s' of %s is not a strap in hangers.csv",
                 shore->hung_by.text, head_name(s->arena, KIND_SHORE, &shore->head));
        return NULL;
    }
    return strap;
}

/* Studs and posts, or a strongback on posts of the studs' member: as long as its last post asks. */
static void resolve_uprights(struct sizing *s, struct shore_design *sd, size_t index)
{
    const struct shore *shore = sd->shore;
    const struct lengths_value *at = &shore->supports;
    int plies = shore->post_plies.at ? shore->post_plies.count : 1;
    if (!shore->strongback.at) {
        sd->studs = stud_count(sd->length, sd->spacing);
        sd->posts = shore->post_plies.at ? points_on(s->job, shore, index) : 0;
        return;
    }
    sd->strongback = member_named(s, &shore->strongback, &shore->head, KIND_SHORE);
    sd->hung_by = strap_named(s, shore);
    if (at->count > 0 && sd->length < at->item[at->count - 1])
        sd->length = at->item[at->count - 1];
    sd->studs = plies * (int)at->count;
}

void shores_size(struct sizing *s)
{
    for (size_t i = 0; i < s->job->shore_count; i++) {
        struct shore_design *sd = &s->design->shores[i];
        const struct shore *shore = &s->job->shores[i];
        sd->shore = shore;
        sd->member = member_named(s, &shore->studs, &shore->head, KIND_SHORE);
        sd->plate = shore->plates.at ? member_named(s, &shore->plates, &shore->head, KIND_SHORE) : sd->member;
        sd->top_plate = plate_named(s, shore, &shore->top_plate, sd->plate);
        sd->bottom_plate = plate_named(s, shore, &shore->bottom_plate, sd->plate);
        sd->crib_timber = shore->held_below.choice == HELD_BELOW_CRIB && shore->crib_timber.at
                              ? member_named(s, &shore->crib_timber, &shore->head, KIND_SHORE)
                              : NULL;
        sd->length = shore_length(s, shore);
        sd->height = shore->height.length;
        sd->spacing = shore->spacing.length > 0 ? shore->spacing.length : 16 * LENGTH_INCH;
        sd->brace_rows = shore->brace_rows.count;
        resolve_uprights(s, sd, i);
        if (sd->member && (sd->strongback || !shore->strongback.at))
            shore_size(s, sd, i);
    }
}
