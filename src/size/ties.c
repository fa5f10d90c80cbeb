/* Joists that keep the rafters from spreading: what must tie them across the beam that cuts them. */
#include "size.h"

#include <math.h>

#include "sawbill/joint.h"
#include "sawbill/joist.h"
#include "sawbill/text.h"

/* Of what is known of the joists' wood the least: heel joints in it hold least. */
static double least_gravity(const struct sizing *s, const struct joists *joists)
{
    double least = INFINITY;
    for (size_t i = 0; i < s->catalog->design_count; i++) {
        const struct design_row *row = &s->catalog->design[i];
        if (joists->species.text && *joists->species.text && !name_same(row->species, joists->species.text))
            continue;
        if (row->gravity > 0)
            least = fmin(least, row->gravity);
    }
    return least;
}

/* 16d common, 0.162 x 3-1/2 in, from one 1-1/2 in member into another (NDS 2018 12.3.1); at any angle to the grain: its
 * diameter is below 1/4 in. */
static double nail_z(double gravity)
{
    static const double diameter = 0.162, ply = 1.5;
    double fe = joint_fe_wood(gravity, diameter, 0);
    struct joint_plane plane = {.nominal_in = diameter,
                                .fyb_psi = joint_fyb(JOINT_NAIL, diameter),
                                .side_in = ply,
                                .main_in = ply,
                                .fe_side = fe,
                                .fe_main = fe};
    return joint_lateral(&plane).lb;
}

static const char *nails_note(struct sizing *s, const struct joists *joists, const char *why, double pull, double cd)
{
    double gravity = least_gravity(s, joists);
    int nails = isinf(gravity) ? 0 : heel_joint_nails(pull, nail_z(gravity), cd);
    if (nails == 0)
        return why;
    return arena_printf(
        s->arena,
        "%s; a board across the beam instead wants %d 16d common nails into each joist (T/Z', Z' = %s lb, "
        "G %s, NDS 2018 12.3), and its own engineer",
        why, nails, number_text(s->arena, nail_z(gravity) * cd, 0), number_text(s->arena, gravity, 2));
}

/* From the eave wall on the side whose slope is `pitch` to the ridge. */
static double ridge_ft(const struct roof *roof)
{
    return length_feet(roof->ridge_at.at ? roof->ridge_at.length : roof->span.length / 2);
}

/* w on plan; the greatest of all combinations. */
static struct check thrust_check(struct sizing *s, const struct joist_design *jd)
{
    const struct roof *roof = &s->job->roof;
    struct loads psf = area_psf(s, area_of(s->job, &roof->area));
    double p = roof->pitch.run > 0 ? roof->pitch.rise / roof->pitch.run : 0, spacing = joist_spacing_ft(jd);
    const char *clause =
        roof->ridge_at.at ? "IRC 2021 R802.5.2; T = w s (L - a)/(2 p)" : "IRC 2021 R802.5.2; T = w s L/(4 p)";
    struct check worst = {0};
    for (size_t i = 0; i < s->combo_count; i++) {
        const struct combination *combo = &s->combo[i];
        if (!combo_applies(combo, &psf))
            continue;
        double pull =
            rafter_thrust_off_lb(combined(combo, &psf), spacing, length_feet(roof->span.length), ridge_ft(roof), p);
        double listed = jd->strap ? listed_load(jd->strap, combo->cd) : 0;
        struct check check = check_of("thrust tie", clause, pull, isnan(listed) ? 0 : listed, "lb");
        check.combination = combo->name;
        check.values = jd->strap ? jd->strap->source : "";
        check.note = jd->strap && !isnan(listed) ? jd->strap->code
                     : jd->strap
                         ? nails_note(s, jd->joists, "no listed load at this duration", pull, combo->cd)
                         : nails_note(s, jd->joists, "no strap is named: the cut joists no longer tie the rafters",
                                      pull, combo->cd);
        check_worse(&worst, check);
    }
    return worst;
}

bool joists_tie_roof(const struct sizing *s, const struct joist_design *jd)
{
    return s->job->has_roof && s->job->roof.frame.choice == FRAME_RIDGE_BOARD &&
           jd->joists->ties_the_roof.choice == YES && needs_hangers(jd->beam);
}

static const struct hanger *strap_named(struct sizing *s, const struct joists *joists)
{
    if (!joists->tie_strap.text || !*joists->tie_strap.text)
        return NULL;
    const struct hanger *strap = catalog_hanger(s->catalog, joists->tie_strap.text);
    if (strap && strap->kind == CONNECTOR_STRAP)
        return strap;
    diag_add(s->diags, DIAG_C006, place_of(joists->tie_strap.at, &joists->head),
             "'%s' is not the code of a strap in hangers.csv", joists->tie_strap.text);
    return NULL;
}

static void say_tie(struct sizing *s, const char *name)
{
    const struct roof *roof = &s->job->roof;
    basis_add(s,
              arena_printf(s->arena,
                           "%s tie the rafters: eaves level with each other, three-hinged frame under the full load "
                           "on plan%s; tie before the cut: each pair is strapped, or held by a temporary tie, while "
                           "the shores stand and before its joists are cut",
                           name,
                           roof->ridge_at.at ? arena_printf(s->arena, ", the ridge %s from the eave wall of that slope",
                                                            length_tape(s->arena, roof->ridge_at.length))
                                             : ", the ridge in the middle"));
}

/* One strap a tied pair: a pair that both sides tie is counted on side A. */
void ties_check(struct sizing *s, struct joist_design *jd, struct member_checks *checks)
{
    jd->strap = NULL;
    jd->tied_pairs = 0;
    if (!joists_tie_roof(s, jd))
        return;
    const char *name = head_name(s->arena, KIND_JOISTS, &jd->joists->head);
    say_tie(s, name);
    if (jd->joists->tie_engineer.text && *jd->joists->tie_engineer.text) {
        unchecked_add(s, arena_printf(s->arena, "not checked: the roof tie of %s, by the engineer (%s)", name,
                                      jd->joists->tie_engineer.text));
        return;
    }
    jd->strap = strap_named(s, jd->joists);
    checks_add(s, checks, thrust_check(s, jd));
    const struct joist_design *a = s->design->beams[jd->beam - s->job->beams].side[0];
    if (jd->side == 0 || !a || a->joists->ties_the_roof.choice != YES)
        jd->tied_pairs = jd->count;
}
