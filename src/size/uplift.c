/* Net uplift of the wind on a roof, as the job gives it: what holds the beam and its joists down, and the beam bent
 * upward. */
#include "size.h"

#include <math.h>

#include "sawbill/text.h"

static const char under[] =
    "net uplift";                  /* in the place of a combination: the job gives the sum, no wind is computed */
static const double wind_cd = 1.6; /* NDS 2018 Table 2.3.2 */

static const char *pounds(struct sizing *s, double lb)
{
    return number_text(s->arena, lb, 0);
}

/* A cap or a hanger lists its uplift; a strap its tension at the duration of wind. */
static double holds_down(const struct hanger *hanger)
{
    double listed = hanger->kind == CONNECTOR_STRAP ? hanger->load[3] : hanger->uplift;
    return isnan(listed) ? 0 : listed;
}

struct check uplift_check(struct sizing *s, const struct hanger *hanger, double lb, const char *name)
{
    struct check check = check_of(name, "listed uplift (hangers.csv)", lb, holds_down(hanger), "lb");
    check.combination = under;
    check.values = hanger->source;
    check.note = check.capacity > 0 ? hanger->code
                                    : arena_printf(s->arena, "%s: no listed uplift, and none is taken", hanger->code);
    return check;
}

static bool cap_fits(const struct hanger *cap, const struct beam_design *bd)
{
    static const length_t tape = LENGTH_INCH / 64;
    return cap->kind == CONNECTOR_CAP && bd->width >= cap->width_from - tape && bd->width <= cap->width_to + tape;
}

/* Of the caps that fit the beam the one that the catalog lists first and that holds; none: the strongest. */
static const struct hanger *cap_for(const struct sizing *s, const struct beam_design *bd, double lb)
{
    const struct hanger *best = NULL;
    for (size_t i = 0; i < s->catalog->hanger_count; i++) {
        const struct hanger *cap = &s->catalog->hangers[i];
        if (!cap_fits(cap, bd))
            continue;
        if (holds_down(cap) >= lb)
            return cap;
        if (!best || holds_down(cap) > holds_down(best))
            best = cap;
    }
    return best;
}

static const struct hanger *named(struct sizing *s, const struct beam *beam)
{
    const struct hanger *hanger = catalog_hanger(s->catalog, beam->hold_down.text);
    if (hanger && hanger->kind != CONNECTOR_HANGER)
        return hanger;
    diag_add(s->diags, DIAG_C006, place_of(beam->hold_down.at, &beam->head),
             "'%s' is not the code of a cap or a strap in hangers.csv", beam->hold_down.text);
    return NULL;
}

/* On a post a cap of the catalog, elsewhere what the job names; NULL: an engineer answers, or nothing holds it. */
static const struct hanger *hold_down(struct sizing *s, const struct beam_design *bd, enum end_kind kind, double lb,
                                      struct member_checks *checks)
{
    const struct beam *beam = bd->beam;
    if (!beam->hold_down.at && (beam->hold_down_engineer.at || beam->status.choice == NE_EXISTING)) {
        unchecked_add(s, arena_printf(s->arena, "not checked: what holds %s down against %s lb%s%s", checks->id,
                                      pounds(s, lb), beam->hold_down_engineer.at ? ": by the engineer, " : "",
                                      beam->hold_down_engineer.at ? beam->hold_down_engineer.text : ""));
        return NULL;
    }
    const struct hanger *hanger = NULL;
    if (beam->hold_down.at)
        hanger = named(s, beam);
    else if (kind == END_POST)
        hanger = cap_for(s, bd, lb);
    struct check check = check_of("held down", "listed uplift (hangers.csv)", lb, 0, "lb");
    check.combination = under;
    check.note = kind == END_POST && !beam->hold_down.at
                     ? "no cap in hangers.csv fits the beam; write 'hold down = CODE' or 'hold down engineer'"
                     : "nothing holds it; write 'hold down = CODE', a strap or cap, or 'hold down engineer'";
    checks_add(s, checks, hanger ? uplift_check(s, hanger, lb, "held down") : check);
    return hanger;
}

void uplift_end_check(struct sizing *s, const struct beam_design *bd, int end, struct member_checks *checks)
{
    double lb = bd->end_lb[end].of[LOAD_UPLIFT];
    enum end_kind kind = bd->beam->end_[end].kind;
    if (lb > 0 && kind != END_BEAM && kind != END_HANGER)
        s->design->beams[bd - s->design->beams].hold_down[end] = hold_down(s, bd, kind, lb, checks);
}

void uplift_inner_check(struct sizing *s, const struct beam_design *bd, size_t which, struct member_checks *checks)
{
    struct inner_design *inner = &bd->inner[which];
    if (inner->lb.of[LOAD_UPLIFT] > 0)
        inner->hold_down = hold_down(s, bd, inner->inner->on.kind, inner->lb.of[LOAD_UPLIFT], checks);
}

/* Bent the other way, its upper side in tension: of glulam that is the weaker one. */
static struct check bent_upward(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                                struct beam_extreme moment, double span_in, const char *name)
{
    struct wood_piece wood = piece_of(bd->member, bd->plies);
    struct design_row row = *wood.row;
    if (bd->member->wood == WOOD_GLULAM)
        row.fb = row.fb_neg;
    wood.row = &row;
    struct wood_bending value = wood_bending(&wood, wind_cd, 1, span_in, LE_NOT_LISTED, span_in);
    struct check check =
        check_of(name, "NDS 2018 3.3.1, 3.3.3", fabs(moment.value) / wood_modulus(&wood), value.fb, "psi");
    check.combination = under;
    check.at_in = moment.at_in + at->offset_in;
    check.note = arena_printf(s->arena, "CD 1.6, CF %s, Cr 1, CL %s (lu: the span, width of one ply)",
                              number_text(s->arena, value.cf, 3), number_text(s->arena, value.cl, 3));
    return check;
}

/* Of every span the greater moment, whichever edge it compresses: nothing is taken to hold either. */
static void spans_upward(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                         const double factor[LOAD_SOURCES], struct member_checks *checks)
{
    struct beam_extremes *most = arena_array(s->arena, bd->inner_count + 1, sizeof *most);
    inner_extremes(s, bd, at, factor, most);
    for (size_t span = 0; span <= bd->inner_count; span++) {
        bool sags = most[span].sagging.value > -most[span].hogging.value;
        checks_add(s, checks,
                   bent_upward(s, bd, at, sags ? most[span].sagging : most[span].hogging, inner_span_in(bd, span),
                               arena_printf(s->arena, "bending upward, span %zu", span + 1)));
    }
}

/* Its lower edge is in compression then; nothing is taken to hold that. */
void uplift_bending(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                    struct member_checks *checks)
{
    static const double factor[LOAD_SOURCES] = {[LOAD_UPLIFT] = 1};
    if (!(at->present.of[LOAD_UPLIFT] > 0))
        return;
    if (beam_runs_on(bd)) {
        spans_upward(s, bd, at, factor, checks);
        return;
    }
    struct beam_result result = beam_solve(at->span_in, at->load, at->count, factor);
    checks_add(s, checks, bent_upward(s, bd, at, result.moment, at->span_in, "bending upward"));
}

static void say_area(struct sizing *s, const struct area *area)
{
    const char *name = head_name(s->arena, KIND_AREA, &area->head);
    if (area->uplift_engineer.at)
        basis_add(
            s, arena_printf(s->arena, "net uplift of %s: none by the engineer (%s)", name, area->uplift_engineer.text));
    else if (area->net_uplift.at)
        basis_add(s, arena_printf(s->arena,
                                  "net uplift of %s: %s psf on plan, 0.6D + 0.6W as the job gives it; the dead load of "
                                  "floors and walls is not set against it",
                                  name, number_text(s->arena, quantity_value(area->net_uplift.quantity), 2)));
}

static void say_beam(struct sizing *s, const struct beam_design *bd)
{
    const char *name = head_name(s->arena, KIND_BEAM, &bd->beam->head);
    double lb[2] = {bd->end_lb[0].of[LOAD_UPLIFT], bd->end_lb[1].of[LOAD_UPLIFT]};
    if (lb[0] + lb[1] <= 0)
        return;
    basis_add(s, arena_printf(s->arena, "%s is lifted by %s lb at end 1 and %s lb at end 2", name, pounds(s, lb[0]),
                              pounds(s, lb[1])));
    unchecked_add(s, arena_printf(s->arena,
                                  "not checked: what holds down all that is below the ends of %s against its uplift, "
                                  "posts to the ground",
                                  name));
    for (size_t i = 0; i < bd->inner_count; i++)
        basis_add(s, arena_printf(s->arena, "%s is lifted by %s lb", inner_name(s, bd, i),
                                  pounds(s, bd->inner[i].lb.of[LOAD_UPLIFT])));
    for (int side = 0; side < 2; side++) {
        const struct joist_design *jd = bd->side[side];
        if (!jd || !(jd->end_lb.of[LOAD_UPLIFT] > 0))
            continue;
        const char *joists = head_name(s->arena, KIND_JOISTS, &jd->joists->head);
        const char *each = pounds(s, jd->end_lb.of[LOAD_UPLIFT]);
        if (needs_hangers(bd->beam))
            basis_add(s, arena_printf(s->arena, "%s: each end at %s is lifted by %s lb", joists, name, each));
        else
            unchecked_add(s,
                          arena_printf(s->arena, "not checked: what ties each of %s down to %s against %s lb of uplift",
                                       joists, name, each));
    }
}

/* Roof in pounds, of no area: what wind does to it, its own key says. */
static void say_own(struct sizing *s, const char *name, const struct quantity_value *snow,
                    const struct quantity_value *uplift)
{
    if (uplift->at)
        basis_add(s, arena_printf(s->arena, "net uplift of %s: %s, 0.6D + 0.6W as the job gives it", name,
                                  uplift->at->value));
    else if (snow->at && snow->quantity.millionths > 0)
        unchecked_add(s, arena_printf(s->arena,
                                      "not checked: net uplift of %s, which gives its loads itself and no 'net uplift'",
                                      name));
}

static void say_own_loads(struct sizing *s)
{
    for (size_t i = 0; i < s->job->load_count; i++) {
        const struct load *load = &s->job->loads[i];
        say_own(s, head_name(s->arena, KIND_LOAD, &load->head),
                load->snow.quantity.millionths > 0 ? &load->snow : &load->snow_to, &load->net_uplift);
    }
    for (size_t i = 0; i < s->job->obstruction_count; i++) {
        const struct obstruction *it = &s->job->obstructions[i];
        say_own(s, head_name(s->arena, KIND_OBSTRUCTION, &it->head), &it->snow, &it->net_uplift);
    }
}

void uplift_write(struct sizing *s)
{
    for (size_t i = 0; i < s->job->area_count; i++)
        say_area(s, &s->job->areas[i]);
    for (size_t i = 0; i < s->design->beam_count; i++)
        say_beam(s, &s->design->beams[i]);
    say_own_loads(s);
}
