/* The joists that are cut at a flush or upset beam, as what they are afterwards: simple spans. */
#include "size.h"

#include <math.h>
#include <string.h>

#include "sawbill/joist.h"
#include "sawbill/text.h"

/* Live: IRC 2021 Table R301.7 (floors L/360; ceilings with flexible finish, all other members L/240).  Dead and live:
 * IBC 2021 Table 1604.3 (floors l/240; over a ceiling that is not plaster l/180). */
static const struct limits {
    int live, total;
} limits_of[] = {
    [LIVE_UNANSWERED] = {360, 240},       [LIVE_FLOOR] = {360, 240},
    [LIVE_SLEEPING] = {360, 240},         [LIVE_ATTIC_STORAGE] = {240, 180},
    [LIVE_ATTIC_NO_STORAGE] = {240, 180}, [LIVE_ROOF] = {240, 180},
};

int joist_limit(const struct area *area, bool total)
{
    const struct limits *limits = &limits_of[area ? area->live_is.choice : LIVE_UNANSWERED];
    return total ? limits->total : limits->live;
}

struct cut {
    struct sizing *s;
    const struct joist_design *jd;
    const struct area *area;
    struct joist_section section;
    struct loads psf, per_inch; /* of one joist */
    double span_in;
    struct check bending, shear, live, total;
    bool unverified;
    const char *service; /* CM, Ct and Ci of the row at work, or NULL */
};

static bool given(const struct text_value *text)
{
    return text->text && *text->text;
}

/* Is this the row that the catalog has for its species and grade in this depth, and may it be that deep? */
static bool serves(const struct sizing *s, const struct design_row *row, double width_in, double depth_in)
{
    bool dimension = !strcmp(row->table, "4A") || !strcmp(row->table, "4B");
    return dimension && catalog_design(s->catalog, row->species, row->grade, wood_nominal(depth_in)) == row &&
           wood_cf(row, width_in, depth_in).fb > 0;
}

/* What the job says of species and grade; what it leaves out, any of the catalog may be, and the worst counts. */
static bool may_be(const struct cut *cut, const struct design_row *row)
{
    const struct joists *joists = cut->jd->joists;
    if (!serves(cut->s, row, cut->section.width_in, cut->section.depth_in))
        return false;
    if (given(&joists->species) && !name_same(row->species, joists->species.text))
        return false;
    return !given(&joists->grade) || catalog_design(cut->s->catalog, row->species, joists->grade.text,
                                                    wood_nominal(cut->section.depth_in)) == row;
}

static void keep(const struct cut *cut, struct check *worst, struct check next, const struct combination *combo,
                 const char *note)
{
    next.values = values_text(cut->s->arena, cut->section.row);
    next.combination = combo->name;
    next.note = note;
    check_worse(worst, next);
}

static void rate(struct cut *cut, const struct combination *combo)
{
    struct arena *arena = cut->s->arena;
    const struct design_row *row = cut->section.row;
    const struct limits *limit = &limits_of[cut->area->live_is.choice];
    struct joist_rating rating = joist_rate(&cut->section, cut->span_in, &cut->per_inch, combo);
    keep(cut, &cut->bending, check_of("bending", "NDS 2018 3.3.1, 4.3.9", rating.bending_psi, rating.fb_psi, "psi"),
         combo,
         arena_printf(arena, "%s %s; CD %s, CF %s, Cr %s, CL 1.0 (sheathed)%s%s", row->species, row->grade,
                      number_text(arena, combo->cd, 2), number_text(arena, rating.cf, 3),
                      number_text(arena, rating.cr, 2), cut->service ? "; " : "", cut->service ? cut->service : ""));
    bool seat = cut->section.seat_in > 0;
    keep(cut, &cut->shear,
         check_of("shear", seat ? "NDS 2018 3.4.3.2(a)" : "NDS 2018 3.4.2", rating.shear_psi, rating.fv_psi, "psi"),
         combo, seat ? "on the depth left over the planed seat, Fv' x (dn/d)^2" : "V reduction: none");
    if (rating.live_in > 0)
        keep(cut, &cut->live,
             check_of("live deflection", "IRC 2021 R301.7", rating.live_in, cut->span_in / limit->live, "in"), combo,
             arena_printf(arena, "without dead load; limit L/%d", limit->live));
    keep(cut, &cut->total,
         check_of("total deflection", "NDS 2018 3.5.2", rating.total_in, cut->span_in / limit->total, "in"), combo,
         arena_printf(arena, "Kcr %s on dead load; limit L/%d", number_text(arena, rating.creep, 1), limit->total));
}

static size_t rate_all(struct cut *cut)
{
    size_t rows = 0;
    for (size_t i = 0; i < cut->s->catalog->design_count; i++) {
        const struct design_row *row = &cut->s->catalog->design[i];
        if (!may_be(cut, row))
            continue;
        rows++;
        cut->section.row = row_in_service(cut->s, row, WOOD_SAWN, cut->section.width_in, cut->section.depth_in,
                                          &cut->jd->joists->service, &cut->service);
        cut->unverified |= !row->seen;
        for (size_t k = 0; k < cut->s->combo_count; k++)
            if (combo_applies(&cut->s->combo[k], &cut->psf))
                rate(cut, &cut->s->combo[k]);
    }
    return rows;
}

/* The greatest of its spans. */
static const struct check *beam_sag(const struct cut *cut, const char *beam)
{
    static const char name[] = "live deflection";
    const struct design *design = cut->s->design;
    const struct check *worst = NULL;
    for (size_t i = 0; i < design->member_count; i++)
        for (size_t k = 0; !strcmp(design->members[i]->id, beam) && k < design->members[i]->count; k++) {
            const struct check *check = &design->members[i]->check[k];
            if (!strncmp(check->name, name, sizeof name - 1) && (!worst || check->demand > worst->demand))
                worst = check;
        }
    return worst;
}

/* The middle of a room sinks by the joist's own sag and half of the beam's, for the far end stands still.  No code
 * limits it; the job may. */
static void add_beam_sag(struct cut *cut, struct member_checks *checks)
{
    struct sizing *s = cut->s;
    const char *beam = head_name(s->arena, KIND_BEAM, &cut->jd->beam->head);
    const struct check *sag = beam_sag(cut, beam);
    const struct length_value *most = &cut->jd->joists->most_sag;
    double both = cut->live.demand + (sag ? sag->demand / 2 : 0);
    if (sag)
        cut->live.note = arena_printf(s->arena, "%s; with half the sag of %s, %s in in the middle of the room",
                                      cut->live.note, beam, number_text(s->arena, both, 2));
    if (!most->at)
        return;
    struct check cap =
        check_of("most sag in the middle of the room", "limit of the job", both, length_inches(most->length), "in");
    cap.combination = cut->live.combination;
    cap.note =
        sag ? arena_printf(s->arena, "live load: the joist %s in, half of %s %s in",
                           number_text(s->arena, cut->live.demand, 3), beam, number_text(s->arena, sag->demand / 2, 3))
            : "live load: the joist alone, its beam is not sized";
    checks_add(s, checks, cap);
}

static const char *name_of(const struct cut *cut)
{
    return head_name(cut->s->arena, KIND_JOISTS, &cut->jd->joists->head);
}

static double pounds_per_inch(const struct sizing *s, const struct joist_design *jd)
{
    struct loads psf = area_psf(s, area_of(s->job, &jd->joists->area));
    return loads_sum(psf) * joist_spacing_ft(jd) / 12;
}

/* Far bearing of a joist that ran on over the wall: w L/2 less M/L before the cut, w L/2 after it. */
static void say_far_bearing(const struct cut *cut)
{
    struct sizing *s = cut->s;
    const struct joist_design *jd = cut->jd;
    const struct joist_design *other = s->design->beams[jd->beam - s->job->beams].side[!jd->side];
    if (jd->joists->over_the_wall.choice != OVER_CONTINUOUS) {
        basis_add(s,
                  arena_printf(s->arena,
                               "%s: simple spans before the cut, too: what their far bearing carries does not change",
                               name_of(cut)));
        return;
    }
    if (!other) {
        basis_add(s, arena_printf(s->arena,
                                  "%s: they ran on over the wall into joists that the job does not name: the far "
                                  "bearing carries up to a third more than before (3/8 to 1/2 of the load)",
                                  name_of(cut)));
        return;
    }
    double run[2] = {cut->span_in, 12 * length_feet(other->joists->run.length)};
    double w[2] = {pounds_per_inch(s, jd), pounds_per_inch(s, other)};
    double after = w[0] * run[0] / 2, before = after - joist_middle_moment(run[0], w[0], run[1], w[1]) / run[0];
    basis_add(s,
              arena_printf(s->arena,
                           "%s: they ran on over the wall; cut, each brings %s lb to its far bearing, not %s lb (all "
                           "loads, three moments): see the wall, header and footing there",
                           name_of(cut), number_text(s->arena, after, 0), number_text(s->arena, before, 0)));
}

static void say_basis(const struct cut *cut)
{
    struct sizing *s = cut->s;
    basis_add(s, "joists that are there: values of today's grading; grades stamped before 1991 went by other tests and "
                 "tables (from memory), a stamp of that time is not today's");
    const struct joists *joists = cut->jd->joists;
    const struct limits *limit = &limits_of[cut->area->live_is.choice];
    const char *wood =
        given(&joists->species)
            ? given(&joists->grade)
                  ? arena_printf(s->arena, "%s %s", joists->species.text, joists->grade.text)
                  : arena_printf(s->arena, "%s, grade not known: the lowest of the catalog", joists->species.text)
            : "species not known: for each check the weakest wood of the catalog";
    const char *repetitive =
        cut->section.cr > 1 ? "three or more, at most 24 in apart, sheathed" : "fewer, or wider apart";
    basis_add(s, arena_printf(s->arena,
                              "%s, cut: simple span of the whole run, %s, under the even load of its area alone; %s; "
                              "Cr %s (%s); live L/%d (IRC 2021 R301.7), dead with its creep and live L/%d (IBC Table "
                              "1604.3)",
                              name_of(cut), length_tape(s->arena, joists->run.length), wood,
                              number_text(s->arena, cut->section.cr, 2), repetitive, limit->live, limit->total));
}

/* NULL: they can be checked. */
static const char *why_not(const struct cut *cut)
{
    const struct joists *joists = cut->jd->joists;
    if (!needs_hangers(cut->jd->beam))
        return "they lie on a dropped beam and are not cut";
    if (joists->kind.choice == JOIST_RAFTER)
        return "rafters: their slope is not known here";
    if (joists->kind.choice != JOIST_SAWN)
        return "not sawn lumber: the repair drawing governs";
    if (!cut->area || cut->span_in <= 0 || cut->section.width_in <= 0 || cut->section.depth_in <= 0)
        return "their size, run or load is not given";
    return NULL;
}

static struct cut cut_of(struct sizing *s, const struct joist_design *jd)
{
    struct cut cut = {.s = s, .jd = jd, .area = area_of(s->job, &jd->joists->area)};
    cut.span_in = length_inches(jd->joists->run.length);
    double apart_ft = joist_spacing_ft(jd);
    length_t width, depth;
    joists_least_size(jd, &width, &depth);
    cut.section = (struct joist_section){.width_in = length_inches(width),
                                         .depth_in = length_inches(depth),
                                         .seat_in = length_inches(jd->joists->seat_planed.length),
                                         .cr = joist_cr((int)jd->count, 12 * apart_ft)};
    cut.section.green = serves_wet(&jd->joists->service);
    cut.psf = area_psf(s, cut.area);
    cut.per_inch = loads_times(cut.psf, apart_ft / 12);
    return cut;
}

static void say_not_checked(const struct cut *cut, const char *why)
{
    unchecked_add(cut->s, arena_printf(cut->s->arena, "not checked: %s themselves: %s", name_of(cut), why));
}

/* Dressed sizes that are meant to be the same differ by so much (common practice). */
static const length_t depth_slack = LENGTH_INCH / 2;

/* S005: sawn and engineered joists sink, shrink and bounce each in its own way, and those of another depth share the
 * floor by their stiffness, which is not reckoned here (common practice, no source). */
static bool ask_unlike(struct sizing *s, const struct joist_design *jd, const struct member *wood)
{
    const struct joists *joists = jd->joists;
    const char *name = head_name(s->arena, KIND_JOISTS, &joists->head);
    length_t differs = wood->depth - jd->depth;
    bool other_depth = differs > depth_slack || differs < -depth_slack;
    if (wood->wood == WOOD_SAWN && !other_depth)
        return false;
    if (joists->new_engineer.at)
        unchecked_add(s, arena_printf(s->arena, "not checked: the new joists of %s, by the engineer (%s)", name,
                                      joists->new_engineer.text));
    else
        diag_add(s->diags, DIAG_S005, place_of(joists->new_of.at, &joists->head),
                 "new joists of %s are %s, %s deep, among joists %s deep: %s; take sawn ones as deep, or write 'new "
                 "engineer = NAME, SHEET'",
                 name, wood->code, length_tape(s->arena, wood->depth), length_tape(s->arena, jd->depth),
                 wood->wood == WOOD_SAWN ? "those of another depth do not share the floor alike"
                                         : "sawn and engineered joists are not mixed without an engineer");
    return true;
}

/* New joists by their own wood, as if each had the floor of an old one; at the side of one, too. */
static bool new_joists_check(struct sizing *s, const struct joist_design *jd)
{
    const struct joists *joists = jd->joists;
    bool any = joists->new_at.count + joists->new_beside.count > 0;
    const struct member *wood = any && joists->new_of.at ? catalog_member(s->catalog, joists->new_of.text) : NULL;
    if (!wood || !wood->values || ask_unlike(s, jd, wood))
        return true;
    struct cut cut = cut_of(s, jd);
    const char *name = arena_printf(s->arena, "%s, new", name_of(&cut));
    if (!cut.area || cut.span_in <= 0 || joists->kind.choice == JOIST_RAFTER) {
        unchecked_add(s, arena_printf(s->arena, "not checked: %s: their run, load or slope is not given", name));
        return true;
    }
    cut.section.width_in = length_inches(wood->ply_width);
    cut.section.depth_in = length_inches(wood->depth);
    cut.section.row = member_in_service(s, wood, &joists->service, &cut.service);
    for (size_t k = 0; k < s->combo_count; k++)
        if (combo_applies(&s->combo[k], &cut.psf))
            rate(&cut, &s->combo[k]);
    struct member_checks *checks = checks_new(s, name, member_text(s->arena, wood, 1));
    checks_wood(checks, wood->values);
    checks_add(s, checks, cut.bending);
    checks_add(s, checks, cut.shear);
    checks_add(s, checks, cut.live);
    checks_add(s, checks, cut.total);
    return checks_close(s, checks, place_of(joists->new_of.at, &joists->head));
}

static bool old_joists_check(struct sizing *s, struct joist_design *jd)
{
    struct cut cut = cut_of(s, jd);
    unchecked_add(
        s, arena_printf(s->arena, "not checked: the far bearing of %s, its wall, header and footing", name_of(&cut)));
    const char *why = why_not(&cut);
    if (!why && rate_all(&cut) == 0)
        why = "design_values.csv has no row for their species, grade and depth";
    if (why) {
        say_not_checked(&cut, why);
        return true;
    }
    struct member_checks *checks =
        checks_new(s, arena_printf(s->arena, "%s, cut", name_of(&cut)),
                   jd->joists->size.text ? jd->joists->size.text : "joists, size by the tape");
    checks->unverified = cut.unverified;
    checks_add(s, checks, cut.bending);
    checks_add(s, checks, cut.shear);
    if (cut.live.name)
        add_beam_sag(&cut, checks);
    checks_add(s, checks, cut.live);
    checks_add(s, checks, cut.total);
    if (cut.section.seat_in > 0) {
        struct check seat =
            check_of("planed seat", "NDS 2018 4.4.3", cut.section.seat_in, cut.section.depth_in / 4, "in");
        seat.note = "taken off the lower edge at the hanger; at most d/4";
        checks_add(s, checks, seat);
    }
    say_basis(&cut);
    say_far_bearing(&cut);
    return checks_close(s, checks, &jd->joists->head.at);
}

bool joists_cut_check(struct sizing *s, struct joist_design *jd)
{
    bool old = old_joists_check(s, jd);
    return new_joists_check(s, jd) && old;
}
