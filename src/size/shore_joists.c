/* The old joists past a shore as cantilevers, and the shore's top plate under them. */
#include "size.h"

#include <math.h>
#include <string.h>

#include "sawbill/shoring.h"
#include "sawbill/text.h"

struct tip {
    struct sizing *s;
    const struct shore_design *sd;
    const struct joists *joists;
    const char *name;
    double width_in, depth_in, spacing_in, cd;
    struct loads per_inch;                   /* of one joist */
    struct loads tip_each, tip_one, present; /* lb at the tip of each, of one of them; all that there is */
    struct check bending, shear, bearing, plate_bending, plate_shear, far;
    bool unverified;
};

static double spacing_of(const struct joists *joists)
{
    double spacing = length_inches(joists->spacing.length);
    for (size_t i = 1; i < joists->at.count; i++)
        spacing = fmax(spacing, fabs(length_inches(joists->at.item[i] - joists->at.item[i - 1])));
    return spacing;
}

static struct tip tip_of(struct sizing *s, const struct shore_design *sd, const struct joists *joists,
                         const struct shore_tips *tips)
{
    length_t width = 0, depth = 0;
    struct tip tip = {.s = s, .sd = sd, .joists = joists, .name = head_name(s->arena, KIND_JOISTS, &joists->head)};
    joist_book_size(joists->size.text, &width, &depth);
    tip.width_in = length_inches(joists->measured_width.at ? joists->measured_width.length : width);
    tip.depth_in = length_inches(joists->measured_depth.at ? joists->measured_depth.length : depth);
    tip.spacing_in = spacing_of(joists);
    tip.cd = wood_cd_of_days(sd->shore->days.count);
    tip.per_inch = loads_times(area_psf(s, area_of(s->job, &joists->area)), tip.spacing_in / 144);
    tip.tip_each = loads_times(tips->plf, tip.spacing_in / 12);
    tip.tip_one = tips->point_lb;
    tip.present = loads_plus(loads_plus(tip.per_inch, tip.tip_each), tip.tip_one);
    return tip;
}

static bool told(const struct text_value *text)
{
    return text->text && *text->text;
}

/* What the job leaves out of species and grade may be any row of the catalog: the worst counts. */
static bool may_be(const struct tip *tip, const struct design_row *row)
{
    const struct catalog *catalog = tip->s->catalog;
    double nominal = wood_nominal(tip->depth_in);
    bool dimension = strcmp(row->table, "4A") == 0 || strcmp(row->table, "4B") == 0;
    if (!dimension || wood_cf(row, tip->width_in, tip->depth_in).fb <= 0)
        return false;
    if (told(&tip->joists->species) && !name_same(row->species, tip->joists->species.text))
        return false;
    const char *grade = told(&tip->joists->grade) ? tip->joists->grade.text : row->grade;
    return catalog_design(catalog, row->species, grade, nominal) == row;
}

static void keep(struct check *worst, struct check next, const char *values, const struct combination *combo,
                 const char *note)
{
    next.values = values;
    next.combination = combo->name;
    next.note = note;
    check_worse(worst, next);
}

/* One joist of the shore; `point`: what stands in one place stands on it. */
static struct shore_tip at_shore(const struct tip *tip, const struct combination *combo, bool point)
{
    double back = length_inches(tip->sd->shore->set_back.length), run = length_inches(tip->joists->run.length);
    double lb = combined(combo, &tip->tip_each) + (point ? combined(combo, &tip->tip_one) : 0);
    return shore_tip(combined(combo, &tip->per_inch), run, back, lb);
}

/* Its other end, with dead load alone between the supports and all load past the shore: what it presses down, less than
 * 0 where it lifts (statics). */
static double far_end(const struct tip *tip, const struct combination *combo)
{
    double back = length_inches(tip->sd->shore->set_back.length), run = length_inches(tip->joists->run.length);
    double dead = tip->per_inch.of[LOAD_DEAD] * combo->factor[LOAD_DEAD], all = combined(combo, &tip->per_inch);
    double tips = combined(combo, &tip->tip_each) + combined(combo, &tip->tip_one), span = run - back;
    return dead * span / 2 - (all * back * back / 2 + tips * back) / span;
}

static void rate_far_end(struct tip *tip, const struct combination *combo)
{
    double down = far_end(tip, combo);
    if (down < 0)
        keep(&tip->far,
             check_of(arena_printf(tip->s->arena, "%s at the far bearing, lifting off", tip->name), "statics", -down, 0,
                      "lb"),
             "", combo,
             "what stands past the shore lifts the other end: stand the shore nearer to the wall, or hold what "
             "stands there by a shore of its own");
}

/* What the joists lie on, and how wide it is; NULL: they hang. */
static const struct member *seat_of(const struct shore_design *sd, double *wide_in)
{
    const struct member *seat = sd->strongback ? (sd->shore->hung_by.at ? NULL : sd->strongback) : sd->top_plate;
    if (seat)
        *wide_in = sd->strongback ? sd->shore->strongback_plies.count * length_inches(seat->ply_width)
                                  : length_inches(seat->depth);
    return seat;
}

static void rate_joist(struct tip *tip, const struct design_row *row, const struct combination *combo)
{
    struct sizing *s = tip->s;
    struct wood_piece one = {
        .row = row, .wood = WOOD_SAWN, .ply_in = tip->width_in, .depth_in = tip->depth_in, .plies = 1};
    double back = length_inches(tip->sd->shore->set_back.length), run = length_inches(tip->joists->run.length);
    struct shore_tip at = at_shore(tip, combo, true);
    const char *values = values_text(s->arena, row);
    struct wood_bending bending = wood_bending(&one, tip->cd, 1, back, LE_CANTILEVER_UNIFORM, run);
    keep(&tip->bending,
         check_of(arena_printf(s->arena, "%s past the shore, bending", tip->name),
                  loads_sum(tip->tip_each) + loads_sum(tip->tip_one) > 0 ? "NDS 2018 3.3.1; M = w a^2/2 + P a"
                                                                         : "NDS 2018 3.3.1; M = w a^2/2",
                  at.moment_inlb / wood_modulus(&one), bending.fb, "psi"),
         values, combo,
         arena_printf(s->arena, "%s %s, CD %s, CF %s, CL %s (lower edge free), its deflection not limited",
                      row->species, row->grade, number_text(s->arena, tip->cd, 2), number_text(s->arena, bending.cf, 2),
                      number_text(s->arena, bending.cl, 3)));
    keep(&tip->shear,
         check_of(arena_printf(s->arena, "%s at the shore, shear", tip->name), "NDS 2018 3.4.2",
                  1.5 * at.shear_lb / wood_area(&one), row->fv * tip->cd, "psi"),
         values, combo, "the greater of both sides of the shore");
    double seat_in = 0;
    const struct member *seat = seat_of(tip->sd, &seat_in);
    if (!seat)
        return;
    keep(&tip->bearing,
         check_of(
             arena_printf(s->arena, "%s on the shore's %s", tip->name, tip->sd->strongback ? "strongback" : "plate"),
             "NDS 2018 3.10.2", at.reaction_lb / (tip->width_in * seat_in), fmin(row->fc_perp, seat->values->fc_perp),
             "psi"),
         values_both(s->arena, row, seat->values), combo,
         tip->sd->strongback ? "the weaker of joist and strongback" : "the weaker of joist and plate");
}

/* A stud under every joist leaves the plate nothing to bend for. */
static bool studs_meet_joists(const struct tip *tip)
{
    return tip->joists->at.count == 0 && fabs(tip->spacing_in - length_inches(tip->sd->spacing)) < 1.0 / 16;
}

static void rate_plate(struct tip *tip, const struct combination *combo)
{
    struct sizing *s = tip->s;
    const struct member *plate = tip->sd->top_plate;
    const struct design_row *row = plate->values;
    const char *values = values_text(s->arena, row);
    double wide = length_inches(plate->depth), thick = length_inches(plate->ply_width);
    double bay = length_inches(tip->sd->spacing), load = at_shore(tip, combo, false).reaction_lb;
    double one = at_shore(tip, combo, true).reaction_lb - load; /* more on one joist, at its worst place, too */
    double cf = wood_cf(row, thick, wide).fb, cfu = plate->wood == WOOD_SAWN ? wood_cfu(wide) : 1;
    keep(&tip->plate_bending,
         check_of("top plate, bending", "NDS 2018 3.3.1, 4.3.7",
                  (shore_plate_moment(load, tip->spacing_in, bay) + one * bay / 4) / (wide * thick * thick / 6),
                  row->fb * tip->cd * cf * cfu, "psi"),
         values, combo,
         arena_printf(s->arena, "%s flat, joists where they do most between two studs; CD %s, CF %s, Cfu %s",
                      plate->code, number_text(s->arena, tip->cd, 2), number_text(s->arena, cf, 2),
                      number_text(s->arena, cfu, 2)));
    keep(&tip->plate_shear,
         check_of("top plate, shear", "NDS 2018 3.4.2, 3.4.3.1",
                  1.5 * (shore_plate_shear(load, tip->spacing_in, bay, thick) + one) / (wide * thick),
                  row->fv * tip->cd, "psi"),
         values, combo, "a joist within the plate's thickness of a stud goes straight down");
}

static void say_lift(const struct tip *tip, struct shore_design *sd)
{
    struct sizing *s = tip->s;
    static const struct combination all_dead = {.name = "D", .factor = {[LOAD_DEAD] = 1}, .cd = 0.9};
    double dead = at_shore(tip, &all_dead, false).reaction_lb, all = 0;
    for (size_t i = 0; i < s->combo_count; i++)
        if (combo_applies(&s->combo[i], &tip->present))
            all = fmax(all, at_shore(tip, &s->combo[i], false).reaction_lb);
    const char *lift = arena_printf(s->arena, "%s lb at each of %s", number_text(s->arena, dead, 0), tip->name);
    sd->lift = sd->lift ? arena_printf(s->arena, "%s, %s", sd->lift, lift) : lift;
    basis_add(s, arena_printf(s->arena,
                              "%s: lift load at each of %s: %s lb of dead load, %s lb with all that may stand on it; "
                              "jack to snug, at most 1/8 in at a go (common practice)",
                              head_name(s->arena, KIND_SHORE, &tip->sd->shore->head), tip->name,
                              number_text(s->arena, dead, 0), number_text(s->arena, all, 0)));
}

static void say_studs(const struct tip *tip)
{
    struct sizing *s = tip->s;
    if (studs_meet_joists(tip) && !tip->sd->strongback)
        basis_add(s, arena_printf(s->arena, "%s: a stud stands under each of %s; where it cannot, double the top plate",
                                  head_name(s->arena, KIND_SHORE, &tip->sd->shore->head), tip->name));
}

static size_t rate_rows(struct tip *tip)
{
    size_t rows = 0;
    const struct sizing *s = tip->s;
    for (size_t r = 0; r < s->catalog->design_count; r++) {
        const struct design_row *row = &s->catalog->design[r];
        if (!may_be(tip, row))
            continue;
        rows++;
        tip->unverified |= !row->seen;
        const char *text;
        row = row_in_service(tip->s, row, WOOD_SAWN, tip->width_in, tip->depth_in, &tip->joists->service, &text);
        for (size_t i = 0; i < s->combo_count; i++)
            if (combo_applies(&s->combo[i], &tip->present))
                rate_joist(tip, row, &s->combo[i]);
    }
    return rows;
}

static void rate_far_ends(struct tip *tip)
{
    for (size_t i = 0; i < tip->s->combo_count; i++)
        if (combo_applies(&tip->s->combo[i], &tip->present))
            rate_far_end(tip, &tip->s->combo[i]);
}

static void size_tip(struct tip *tip, struct shore_design *sd, struct member_checks *checks)
{
    struct sizing *s = tip->s;
    bool known = tip->joists->kind.choice == JOIST_SAWN && tip->width_in > 0 && tip->depth_in > 0;
    if (!known || rate_rows(tip) == 0) {
        unchecked_add(s, arena_printf(s->arena,
                                      "not checked: %s past %s, in bending and shear as cantilevers: their wood and "
                                      "size are not known",
                                      tip->name, head_name(s->arena, KIND_SHORE, &tip->sd->shore->head)));
    }
    if (tip->sd->top_plate && !tip->sd->strongback && !studs_meet_joists(tip))
        for (size_t i = 0; i < s->combo_count; i++)
            if (combo_applies(&s->combo[i], &tip->present))
                rate_plate(tip, &s->combo[i]);
    checks->unverified |= tip->unverified;
    checks_add(s, checks, tip->bending);
    checks_add(s, checks, tip->shear);
    checks_add(s, checks, tip->bearing);
    checks_add(s, checks, tip->plate_bending);
    checks_add(s, checks, tip->plate_shear);
    rate_far_ends(tip);
    checks_add(s, checks, tip->far);
    say_lift(tip, sd);
    say_studs(tip);
}

void shore_joists_check(struct sizing *s, struct shore_design *sd, const struct shore_tips *tips,
                        struct member_checks *checks)
{
    for (size_t i = 0; i < sd->shore->holds.count; i++) {
        const struct ref_value *ref = &sd->shore->holds.item[i];
        if (ref->kind != KIND_JOISTS)
            continue;
        struct tip tip = tip_of(s, sd, &s->job->joists[ref->index], tips);
        if (tip.spacing_in > 0 && tip.joists->run.length > sd->shore->set_back.length)
            size_tip(&tip, sd, checks);
    }
}
