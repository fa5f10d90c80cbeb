/* Openings: the checks of headers, trimmers and their hangers, and their place in the load path. */
#include "size.h"

#include <math.h>
#include <string.h>

#include "sawbill/text.h"

/* A simple span of equal plies under a few loads, its top edge held by the deck nailed on it (NDS 2018 4.4.1). */
struct span {
    const struct member *member;
    const struct design_row *values; /* of the member, as it serves */
    const char *service;             /* its factors in words, or NULL */
    bool wet;
    int plies;
    double span_in;
    struct beam_load load[3];
    size_t count;
    const struct area *area; /* says the limits */
    struct loads present;
};

static void span_add(struct span *span, struct beam_load load)
{
    span->load[span->count++] = load;
    span->present = loads_plus(span->present, beam_load_total(&load));
}

static void keep(struct check *worst, struct check next, const struct combination *combo, double at_in,
                 const char *note)
{
    next.combination = combo->name;
    next.at_in = at_in;
    next.note = note;
    check_worse(worst, next);
}

static struct wood_piece wood_of(const struct span *span)
{
    struct wood_piece wood = piece_of(span->member, span->plies);
    wood.row = span->values;
    return wood;
}

static void rate_strength(struct sizing *s, const struct span *span, const struct combination *combo,
                          struct check *bending, struct check *shear)
{
    struct wood_piece wood = wood_of(span);
    struct beam_result result = beam_solve(span->span_in, span->load, span->count, combo->factor);
    struct wood_bending value = wood_bending(&wood, combo->cd, 1, 0, LE_SPAN_UNIFORM, span->span_in);
    keep(bending,
         check_of("bending", "NDS 2018 3.3.1", fabs(result.moment.value) / wood_modulus(&wood), value.fb, "psi"), combo,
         result.moment.at_in,
         arena_printf(s->arena, "CD %s, CF %s, Cr 1.0, CL 1.0 (deck nailed on it)%s%s",
                      number_text(s->arena, combo->cd, 2), number_text(s->arena, value.cf, 3),
                      span->service ? "; " : "", span->service ? span->service : ""));
    keep(shear,
         check_of("shear", "NDS 2018 3.4.2", 1.5 * fabs(result.shear.value) / wood_area(&wood),
                  span->values->fv * combo->cd, "psi"),
         combo, result.shear.at_in, "V reduction: none");
}

static double sag_in(const struct span *span, const double factor[LOAD_SOURCES], double *at_in)
{
    struct wood_piece wood = wood_of(span);
    struct beam_result result = beam_solve(span->span_in, span->load, span->count, factor);
    *at_in = result.sag.at_in;
    return result.sag.value / (span->values->e * wood_inertia(&wood));
}

static void rate_sag(struct sizing *s, const struct span *span, const struct combination *combo, struct check *live,
                     struct check *total)
{
    double factor[LOAD_SOURCES], at = 0;
    int live_limit = joist_limit(span->area, false), total_limit = joist_limit(span->area, true);
    double creep = wood_kcr(span->wet || (span->member->moisture && name_same(span->member->moisture, "green")));
    memcpy(factor, combo->factor, sizeof factor);
    factor[LOAD_DEAD] = 0;
    double sag = sag_in(span, factor, &at);
    if (sag > 0)
        keep(live, check_of("live deflection", "IRC 2021 R301.7", sag, span->span_in / live_limit, "in"), combo, at,
             arena_printf(s->arena, "without dead load; limit L/%d", live_limit));
    factor[LOAD_DEAD] = combo->factor[LOAD_DEAD] * creep;
    sag = sag_in(span, factor, &at);
    keep(total, check_of("total deflection", "NDS 2018 3.5.2", sag, span->span_in / total_limit, "in"), combo, at,
         arena_printf(s->arena, "Kcr %s on dead load; limit L/%d", number_text(s->arena, creep, 1), total_limit));
}

static void check_span(struct sizing *s, const struct span *span, struct member_checks *checks)
{
    struct check bending = {0}, shear = {0}, live = {0}, total = {0};
    for (size_t i = 0; i < s->combo_count; i++) {
        if (!combo_applies(&s->combo[i], &span->present))
            continue;
        rate_strength(s, span, &s->combo[i], &bending, &shear);
        rate_sag(s, span, &s->combo[i], &live, &total);
    }
    checks_add(s, checks, bending);
    checks_add(s, checks, shear);
    checks_add(s, checks, live);
    checks_add(s, checks, total);
}

/* IRC 2021 R502.10: a single header, as deep as the joists, up to 4 ft; beyond it and its trimmers are doubled.  A
 * single trimmer stands with a single header within 3 ft of the trimmer's bearing. */
static const double single_header_ft = 4, single_trimmer_ft = 3;

static int least_header(const struct opening *opening)
{
    return length_feet(opening->to.length - opening->from.length) > single_header_ft + 1e-9 ? 2 : 1;
}

static int least_trimmer(const struct opening_design *od)
{
    const struct opening *opening = od->opening;
    bool single = least_header(opening) == 1 && opening->header_plies.count == 1;
    for (int k = 0; k < 2; k++) {
        double from_bearing_ft = k ? od->headers[k].tail_ft : length_feet(opening->near.length);
        if (od->headers[k].is && from_bearing_ft > single_trimmer_ft + 1e-9)
            single = false;
    }
    return single ? 1 : 2;
}

static void check_plies(struct sizing *s, struct member_checks *checks, int least, int has)
{
    struct check check = check_of("plies", "IRC 2021 R502.10", least, has, "plies");
    check.note = "double where the header spans more than 4 ft; a single trimmer where a single header hangs within 3 "
                 "ft of its bearing";
    checks_add(s, checks, check);
}

static struct member_checks *start(struct sizing *s, const char *name, const struct opening_design *od,
                                   const struct member *member, int plies)
{
    struct member_checks *checks = checks_new(s, name, member_text(s->arena, member, plies));
    checks_wood(checks, member->values);
    checks->unverified |= od->in.incised.choice == YES;
    if (!od->opening->engineer.at)
        service_ask(s, member, &od->in, name, &od->opening->head.at, "engineer");
    return checks;
}

static void hang_header(struct sizing *s, struct opening_design *od, int which, struct member_checks *checks)
{
    const struct opening *opening = od->opening;
    struct opening_header *header = &od->headers[which];
    double width = opening->header_plies.count * length_inches(od->header->ply_width);
    struct hanger_need need = {.width_in = width,
                               .depth_in = length_inches(od->header->depth),
                               .carrier_in = opening->trimmer_plies.count * length_inches(od->trimmer->ply_width),
                               .gravity = lighter_wood(od->header->values->gravity, od->trimmer->values->gravity),
                               .lb = header->end_lb};
    checks_add(s, checks, choose_hanger(s, &need, "hanger of the header on its trimmer", &header->hanger));
    struct hanger_need tail = {.width_in = length_inches(od->side->width),
                               .depth_in = length_inches(od->side->depth),
                               .carrier_in = width,
                               .gravity =
                                   lighter_wood(joists_gravity(s, od->side->joists), od->header->values->gravity),
                               .lb = header->tail_lb};
    checks_add(s, checks, choose_hanger(s, &tail, "hanger of a tail joist", &header->tail_hanger));
}

static bool check_header(struct sizing *s, struct opening_design *od, int which)
{
    const struct opening *opening = od->opening;
    const struct opening_header *header = &od->headers[which];
    struct span span = {.member = od->header,
                        .values = od->header_values,
                        .service = od->header_service,
                        .wet = serves_wet(&od->in),
                        .plies = opening->header_plies.count,
                        .span_in = length_inches(opening->to.length - opening->from.length),
                        .area = area_of(s->job, &od->side->joists->area)};
    span_add(&span, (struct beam_load){.to_in = span.span_in, .amount = loads_times(header->plf, 1.0 / 12)});
    struct member_checks *checks = start(s, header_name(s, od, which), od, od->header, span.plies);
    check_span(s, &span, checks);
    check_plies(s, checks, least_header(opening), span.plies);
    if (opening->status.choice != NE_EXISTING)
        hang_header(s, od, which, checks);
    return checks_close(s, checks, place_of(opening->header.at, &opening->head));
}

/* On a dropped beam the trimmer lies on top: both are pressed across the grain. */
static struct check lies_on_beam(struct sizing *s, const struct opening_design *od, int which)
{
    const struct beam_design *bd = &s->design->beams[od->side->beam - s->job->beams];
    double area = od->opening->trimmer_plies.count * length_inches(od->trimmer->ply_width) * length_inches(bd->width);
    double capacity = fmin(od->trimmer_values->fc_perp, bd->member ? bd->values->fc_perp : INFINITY);
    struct check worst = {0};
    for (size_t i = 0; bd->member && i < s->combo_count; i++) {
        const struct loads *lb = &od->trimmers[which].beam_lb;
        if (!combo_applies(&s->combo[i], lb))
            continue;
        struct check check =
            check_of("bearing on the beam", "NDS 2018 3.10.2", combined(&s->combo[i], lb) / area, capacity, "psi");
        check.combination = s->combo[i].name;
        check.values = values_both(s->arena, od->trimmer->values, bd->member->values);
        check.note = "its width x the beam's; Cb 1.0";
        check_worse(&worst, check);
    }
    return worst;
}

static void hang_trimmer(struct sizing *s, struct opening_design *od, int which, struct member_checks *checks)
{
    struct opening_trimmer *trimmer = &od->trimmers[which];
    size_t beam = (size_t)(od->side->beam - s->job->beams);
    if (!needs_hangers(od->side->beam)) {
        checks_add(s, checks, lies_on_beam(s, od, which));
        return;
    }
    const struct design_row *carrier = s->design->beams[beam].values;
    struct hanger_need need = {.width_in = od->opening->trimmer_plies.count * length_inches(od->trimmer->ply_width),
                               .depth_in = length_inches(od->trimmer->depth - od->side->joists->seat_planed.length),
                               .carrier_in = s->width_in[beam],
                               .gravity = lighter_wood(od->trimmer->values->gravity, carrier ? carrier->gravity : 0),
                               .lb = trimmer->beam_lb};
    checks_add(s, checks, choose_hanger(s, &need, "hanger of the trimmer on the beam", &trimmer->hanger));
}

static bool check_trimmer(struct sizing *s, struct opening_design *od, int which)
{
    const struct opening *opening = od->opening;
    struct span span = {.member = od->trimmer,
                        .values = od->trimmer_values,
                        .service = od->trimmer_service,
                        .wet = serves_wet(&od->in),
                        .plies = opening->trimmer_plies.count,
                        .span_in = length_inches(od->side->joists->run.length),
                        .area = area_of(s->job, &od->side->joists->area)};
    span_add(&span,
             (struct beam_load){.to_in = span.span_in, .amount = loads_times(od->trimmers[which].plf, 1.0 / 12)});
    for (int k = 0; k < 2; k++)
        if (od->headers[k].is)
            span_add(&span, (struct beam_load){.point = true,
                                               .from_in = od->headers[k].at_in,
                                               .to_in = od->headers[k].at_in,
                                               .amount = od->headers[k].end_lb});
    struct member_checks *checks = start(s, trimmer_name(s, od, which), od, od->trimmer, span.plies);
    check_span(s, &span, checks);
    check_plies(s, checks, least_trimmer(od), span.plies);
    hang_trimmer(s, od, which, checks);
    return checks_close(s, checks, place_of(opening->trimmer.at, &opening->head));
}

/* What stands on headers and trimmers; what the trimmers bring to the beam, the beam's own stack says. */
static void write_path(struct sizing *s, const struct opening_design *od)
{
    const struct opening *opening = od->opening;
    double clear_ft = length_feet(opening->to.length - opening->from.length);
    double run_ft = length_feet(od->side->joists->run.length);
    const char *joists = head_name(s->arena, KIND_JOISTS, &od->side->joists->head);
    for (int which = 0; which < 2; which++) {
        const struct opening_header *header = &od->headers[which];
        if (!header->is)
            continue;
        path_add(s, arena_printf(s->arena, "tails of %s, with its own weight", joists), header_name(s, od, which), NAN,
                 loads_times(header->plf, clear_ft));
        for (int k = 0; k < 2; k++)
            path_add(s, header_name(s, od, which), trimmer_name(s, od, k), header->at_in, header->end_lb);
    }
    for (int k = 0; k < 2; k++) {
        path_add(s, arena_printf(s->arena, "strip of %s, with its own weight", joists), trimmer_name(s, od, k), NAN,
                 loads_times(od->trimmers[k].plf, run_ft));
        path_add(s, trimmer_name(s, od, k), arena_printf(s->arena, "far bearing of %s", joists), NAN,
                 od->trimmers[k].far_lb);
    }
}

static const char *total_lb(struct sizing *s, struct loads lb)
{
    return number_text(s->arena, loads_sum(lb), 0);
}

static void say_basis(struct sizing *s, const struct opening_design *od)
{
    const char *name = head_name(s->arena, KIND_OPENING, &od->opening->head);
    basis_add(s, arena_printf(s->arena,
                              "%s: tails, headers and trimmers are simple spans: a header from face to face of the "
                              "trimmers, a trimmer over the whole run with half a joist spacing of floor outside its "
                              "middle; trimmers bring %s and %s lb to the beam, %s and %s lb to the far bearing (all "
                              "loads)",
                              name, total_lb(s, od->trimmers[0].beam_lb), total_lb(s, od->trimmers[1].beam_lb),
                              total_lb(s, od->trimmers[0].far_lb), total_lb(s, od->trimmers[1].far_lb)));
}

static void say_unchecked(struct sizing *s, const struct opening_design *od)
{
    const char *name = head_name(s->arena, KIND_OPENING, &od->opening->head);
    unchecked_add(s,
                  arena_printf(s->arena,
                               "not checked: a stair, a landing or a chimney that leans on %s: only the loads of its "
                               "joists are counted",
                               name));
    unchecked_add(s,
                  arena_printf(s->arena,
                               "not checked: the fasteners between the plies of headers and trimmers of %s (two rows "
                               "of 16d common at most 16 in apart: common practice), and wood split by what hangs "
                               "near their ends (NDS 2018 3.4.3.3)",
                               name));
    unchecked_add(s, arena_printf(s->arena, "not checked: the trimmers of %s as cantilevers past the shore", name));
    if (od->header_service || od->trimmer_service)
        unchecked_add(s, arena_printf(s->arena,
                                      "not checked: hangers at headers and trimmers of %s in their service: they are "
                                      "listed for dry wood",
                                      name));
    if (od->opening->engineer.at)
        unchecked_add(s, arena_printf(s->arena,
                                      "not checked: headers and trimmers of %s in their service, by the "
                                      "engineer (%s)",
                                      name, od->opening->engineer.text));
    if (od->opening->status.choice == NE_EXISTING)
        unchecked_add(s, arena_printf(s->arena, "not checked: how the old headers and tails of %s hang", name));
}

static bool is_sawn(const struct member *member)
{
    return member->wood == WOOD_SAWN;
}

/* Dressed sizes that are meant to be the same differ by so much (common practice). */
static const length_t depth_slack = LENGTH_INCH / 2;

/* S005: an old joist is one of the plies.  Sawn and engineered wood shrink, creep and share loads each in its own way,
 * and plies of other depth share by their stiffness, which is not reckoned here. */
static void ask_mixed(struct sizing *s, const struct opening_design *od, int which)
{
    const struct opening *opening = od->opening;
    length_t differs = od->trimmer->depth - od->side->depth;
    bool other_depth = differs > depth_slack || differs < -depth_slack;
    const char *name = trimmer_name(s, od, which);
    if (!od->trimmers[which].on_joist || opening->trimmer_plies.count < 2)
        return;
    if (opening->engineer.at)
        unchecked_add(s, arena_printf(s->arena,
                                      "not checked: how the old joist and the new plies of %s share its load, "
                                      "by the engineer (%s)",
                                      name, opening->engineer.text));
    else if (!is_sawn(od->trimmer) || other_depth)
        diag_add(s->diags, DIAG_S005,
                 place_of(opening->trimmer.at ? opening->trimmer.at : opening->header.at, &opening->head),
                 "%s joins a joist %s deep with plies of %s, %s deep: %s; take sawn plies as deep as the joist, or "
                 "write 'engineer = NAME, SHEET'",
                 name, length_tape(s->arena, od->side->depth), od->trimmer->code,
                 length_tape(s->arena, od->trimmer->depth),
                 is_sawn(od->trimmer) ? "plies of other depth do not share a load alike"
                                      : "sawn and engineered plies are not mixed without an engineer");
    else
        unchecked_add(s, arena_printf(s->arena,
                                      "not checked: the old joist in %s: it is rated as the new plies beside it, see "
                                      "its species and grade",
                                      name));
}

/* What an engineer must see. */
static void ask_engineer(struct sizing *s, const struct opening_design *od)
{
    const struct joists *joists = od->side->joists;
    const struct place *at = &od->opening->head.at;
    const char *name = head_name(s->arena, KIND_OPENING, &od->opening->head);
    if (joists->kind.choice != JOIST_SAWN)
        engineer(s, at, arena_printf(s->arena, "%s lies in joists that are not sawn: their drawing governs", name));
    if (!needs_hangers(od->side->beam) && joists->over_the_wall.choice == OVER_CONTINUOUS)
        engineer(s, at,
                 arena_printf(s->arena,
                              "%s lies in joists that run on over a dropped beam: its trimmers bring more "
                              "than simple spans do",
                              name));
    if (joists->ties_the_roof.choice == YES && s->job->roof.frame.choice == FRAME_RIDGE_BOARD)
        engineer(
            s, at,
            arena_printf(s->arena, "%s stops joists that tie the roof: what holds those rafters is not checked", name));
    for (int which = 0; which < 2; which++)
        ask_mixed(s, od, which);
    for (size_t i = 0; i < s->job->shore_count; i++)
        for (size_t k = 0; k < s->job->shores[i].holds.count; k++) {
            const struct shore *shore = &s->job->shores[i];
            const struct ref_value *ref = &shore->holds.item[k];
            if (ref->kind == KIND_JOISTS && &s->job->joists[ref->index] == joists && od->headers[0].is &&
                shore->set_back.length >= od->opening->near.length)
                engineer(s, place_of(shore->set_back.at, &shore->head),
                         arena_printf(s->arena,
                                      "%s stands beyond the near header of %s: nothing holds the tails "
                                      "between that header and the wall",
                                      head_name(s->arena, KIND_SHORE, &shore->head), name));
        }
}

void openings_check(struct sizing *s)
{
    for (size_t i = 0; i < s->design->opening_count; i++) {
        struct opening_design *od = &s->design->openings[i];
        bool headers = od->side && (od->headers[0].is || od->headers[1].is);
        od->passes = false;
        if (!od->side || !od->trimmer || (headers && !od->header))
            continue; /* stopped elsewhere */
        od->passes = true;
        for (int k = 0; k < 2; k++)
            if (od->headers[k].is)
                od->passes &= check_header(s, od, k);
        for (int k = 0; k < 2; k++)
            od->passes &= check_trimmer(s, od, k);
        write_path(s, od);
        say_basis(s, od);
        say_unchecked(s, od);
        ask_engineer(s, od);
    }
}
