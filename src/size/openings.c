/* Openings in a field of joists: headers carry the tails, trimmers carry the headers, and the beam the trimmers.
 *
 * The tails between the beam and the near header, and between the far header and the far bearing, bring half of their
 * load to each end.  A header spans between the inside faces of the trimmers and brings half of its load to each.  A
 * trimmer is a simple span as long as the run: its own strip of floor reaches from its inside face to half a joist
 * spacing beyond its middle.  So nothing of the floor is counted twice or left out. */
#include "size.h"

#include <math.h>

static const length_t tape = LENGTH_INCH / 64; /* what a rule cannot show does not decide */

static length_t wood_width(const struct member *member, int plies)
{
    return member ? plies * member->ply_width : 0;
}

static const struct member *opening_member(struct sizing *s, const struct opening *opening,
                                           const struct text_value *text)
{
    return text->at ? member_named(s, text, &opening->head, KIND_OPENING) : NULL;
}

/* The place that is wet or hot for the joists is so for what is framed into them. */
static void find_values(struct sizing *s, struct opening_design *od)
{
    const struct joists *joists = od->opening->joists.at ? &s->job->joists[od->opening->joists.index] : NULL;
    od->in = od->opening->service;
    if (joists && !od->in.moisture.at)
        od->in.moisture = joists->service.moisture;
    if (joists && !od->in.heat.at)
        od->in.heat = joists->service.heat;
    if (od->header)
        od->header_values = member_in_service(s, od->header, &od->in, &od->header_service);
    if (od->trimmer)
        od->trimmer_values = member_in_service(s, od->trimmer, &od->in, &od->trimmer_service);
}

void openings_resolve(struct sizing *s)
{
    struct design *design = s->design;
    for (size_t i = 0; i < design->opening_count; i++) {
        struct opening_design *od = &design->openings[i];
        const struct opening *opening = od->opening = &s->job->openings[i];
        od->header = opening_member(s, opening, &opening->header);
        od->trimmer = opening->trimmer.at ? opening_member(s, opening, &opening->trimmer) : od->header;
        for (size_t k = 0; k < design->joists_count && opening->joists.at; k++)
            if (design->joists[k].joists == &s->job->joists[opening->joists.index])
                od->side = &design->joists[k];
        find_values(s, od);
    }
}

static struct opening_header header_of(const struct sizing *s, const struct opening_design *od, int which)
{
    const struct opening *opening = od->opening;
    length_t half = wood_width(od->header, opening->header_plies.count) / 2, run = od->side->joists->run.length;
    length_t tail = which ? run - opening->far.length : opening->near.length;
    struct opening_header out = {.is = tail > 0, .tail_ft = length_feet(tail)};
    out.at_in = length_inches(which ? opening->far.length + half : opening->near.length - half);
    if (!out.is)
        return out;
    struct loads psf = area_psf(s, area_of(s->job, &od->side->joists->area));
    out.plf = loads_times(psf, out.tail_ft / 2);
    out.tail_lb = loads_times(out.plf, joist_spacing_ft(od->side));
    if (od->header)
        out.plf.of[LOAD_DEAD] += opening->header_plies.count * od->header->weight_plf;
    out.end_lb = loads_times(out.plf, length_feet(opening->to.length - opening->from.length) / 2);
    return out;
}

/* Reactions of a simple span of the run: by moments about its ends. */
static void place_trimmer(const struct sizing *s, struct opening_design *od, int which)
{
    const struct opening *opening = od->opening;
    struct opening_trimmer *trimmer = &od->trimmers[which];
    length_t inside = which ? opening->to.length : opening->from.length;
    double strip_ft = fmax(0, length_feet(which ? od->zone[1] - inside : inside - od->zone[0]));
    double run_ft = length_feet(od->side->joists->run.length);
    trimmer->plf = loads_times(area_psf(s, area_of(s->job, &od->side->joists->area)), strip_ft);
    if (od->trimmer)
        trimmer->plf.of[LOAD_DEAD] += opening->trimmer_plies.count * od->trimmer->weight_plf;
    trimmer->beam_lb = trimmer->far_lb = loads_times(trimmer->plf, run_ft / 2);
    for (int k = 0; k < 2; k++) {
        double share = run_ft > 0 ? od->headers[k].at_in / 12 / run_ft : 0;
        trimmer->beam_lb = loads_plus(trimmer->beam_lb, loads_times(od->headers[k].end_lb, 1 - share));
        trimmer->far_lb = loads_plus(trimmer->far_lb, loads_times(od->headers[k].end_lb, share));
    }
}

static length_t clamp(length_t value, length_t least, length_t most)
{
    return value < least ? least : value > most ? most : value;
}

static void place_zone(const struct sizing *s, struct opening_design *od)
{
    const struct opening *opening = od->opening;
    const struct joists *joists = od->side->joists;
    length_t width = wood_width(od->trimmer, opening->trimmer_plies.count);
    length_t end = s->design->beams[od->side->beam - s->job->beams].cut_length;
    length_t first = joists->from.at ? joists->from.length : 0, last = joists->to.at ? joists->to.length : end;
    length_t half = length_from_inches(6 * joist_spacing_ft(od->side));
    od->trimmers[0].at = opening->from.length - width / 2;
    od->trimmers[1].at = opening->to.length + width / 2;
    od->zone[0] = clamp(od->trimmers[0].at - half, first, last < end ? last : end);
    od->zone[1] = clamp(od->trimmers[1].at + half, first, last < end ? last : end);
}

/* What becomes of one joist of the field; true: it still stands there and comes to the beam. */
static bool keep_joist(struct opening_design *od, length_t at, length_t width)
{
    const struct opening *opening = od->opening;
    length_t trimmer = wood_width(od->trimmer, opening->trimmer_plies.count);
    length_t low = at - width / 2, high = at + width / 2;
    if (high > opening->from.length + tape && low < opening->to.length - tape) {
        od->interrupted++;
        return opening->near.length > 0;
    }
    for (int k = 0; k < 2; k++) {
        length_t inside = k ? opening->to.length : opening->from.length - trimmer;
        if (high <= inside + tape || low >= inside + trimmer - tape)
            continue;
        od->trimmers[k].on_joist = true;
        return false;
    }
    return true;
}

/* Joists and trimmers. */
static void find_braces(struct sizing *s, struct joist_design *jd)
{
    jd->brace_count = 0;
    jd->brace = arena_array(s->arena, jd->count + 2 * s->design->opening_count, sizeof *jd->brace);
    for (size_t i = 0; i < jd->count; i++)
        jd->brace[jd->brace_count++] = jd->place[i];
    for (size_t i = 0; i < s->design->opening_count; i++)
        for (int k = 0; k < 2 && s->design->openings[i].side == jd; k++)
            jd->brace[jd->brace_count++] = s->design->openings[i].trimmers[k].at;
    for (size_t i = 1; i < jd->brace_count; i++)
        for (size_t k = i; k > 0 && jd->brace[k] < jd->brace[k - 1]; k--) {
            length_t held = jd->brace[k];
            jd->brace[k] = jd->brace[k - 1];
            jd->brace[k - 1] = held;
        }
}

void openings_place(struct sizing *s, struct joist_design *jd)
{
    for (size_t i = 0; i < s->design->opening_count; i++) {
        struct opening_design *od = &s->design->openings[i];
        if (od->side != jd)
            continue;
        od->interrupted = 0;
        for (int k = 0; k < 2; k++) {
            od->trimmers[k] = (struct opening_trimmer){0};
            od->headers[k] = header_of(s, od, k);
        }
        place_zone(s, od);
        for (int k = 0; k < 2; k++)
            place_trimmer(s, od, k);
        size_t kept = 0;
        for (size_t k = 0; k < jd->count; k++)
            if (keep_joist(od, jd->place[k], jd->width))
                jd->place[kept++] = jd->place[k];
        jd->count = kept;
    }
    find_braces(s, jd);
}

const struct opening_design *opening_after(const struct sizing *s, const struct joist_design *jd, length_t at)
{
    const struct opening_design *first = NULL;
    for (size_t i = 0; i < s->design->opening_count; i++) {
        const struct opening_design *od = &s->design->openings[i];
        if (od->side == jd && od->zone[1] > at && (!first || od->zone[0] < first->zone[0]))
            first = od;
    }
    return first;
}

const char *trimmer_name(struct sizing *s, const struct opening_design *od, int which)
{
    return arena_printf(s->arena, "trimmer %d of %s", which + 1, head_name(s->arena, KIND_OPENING, &od->opening->head));
}

const char *header_name(struct sizing *s, const struct opening_design *od, int which)
{
    return arena_printf(s->arena, "%s header of %s", which ? "far" : "near",
                        head_name(s->arena, KIND_OPENING, &od->opening->head));
}

static void fault_place(struct sizing *s, const struct opening_design *od)
{
    const struct opening *opening = od->opening;
    const struct beam_design *bd = &s->design->beams[od->side->beam - s->job->beams];
    const char *name = head_name(s->arena, KIND_OPENING, &opening->head);
    const char *beam = head_name(s->arena, KIND_BEAM, &bd->beam->head);
    const struct joists *joists = od->side->joists;
    length_t first = joists->from.at ? joists->from.length : 0;
    length_t last = joists->to.at && joists->to.length < bd->cut_length ? joists->to.length : bd->cut_length;
    for (int k = 0; k < 2; k++)
        if (od->trimmers[k].at < first || od->trimmers[k].at > last)
            diag_add(s->diags, DIAG_S006, place_of(k ? opening->to.at : opening->from.at, &opening->head),
                     "%s of %s at %s finds no %s: its joists are there from %s to %s", k ? "trimmer 2" : "trimmer 1",
                     name, length_tape(s->arena, od->trimmers[k].at), beam, length_tape(s->arena, first),
                     length_tape(s->arena, last));
    if (od->interrupted == 0)
        diag_add(s->diags, DIAG_S006, place_of(opening->from.at, &opening->head),
                 "%s from %s to %s stops no joist of [joists %s]; look at its places, or take it out", name,
                 length_tape(s->arena, opening->from.length), length_tape(s->arena, opening->to.length),
                 joists->head.id);
}

/* A header must find room between the opening and what its tails come from. */
static void fault_headers(struct sizing *s, const struct opening_design *od)
{
    const struct opening *opening = od->opening;
    length_t width = wood_width(od->header, opening->header_plies.count);
    length_t run = od->side->joists->run.length;
    const char *name = head_name(s->arena, KIND_OPENING, &opening->head);
    if (od->headers[0].is && opening->near.length < width)
        diag_add(s->diags, DIAG_S006, place_of(opening->near.at, &opening->head),
                 "'near' of %s leaves no room for a header %s wide; write 'near = 0' where it starts at the beam", name,
                 length_tape(s->arena, width));
    if (od->headers[1].is && run - opening->far.length < width)
        diag_add(s->diags, DIAG_S006, place_of(opening->far.at, &opening->head),
                 "'far' of %s leaves no room for a header %s wide; write the run, %s, where it reaches the far bearing",
                 name, length_tape(s->arena, width), length_tape(s->arena, run));
}

void openings_fault(struct sizing *s, const struct joist_design *jd)
{
    for (size_t i = 0; i < s->design->opening_count; i++) {
        const struct opening_design *od = &s->design->openings[i];
        if (od->side != jd)
            continue;
        fault_place(s, od);
        fault_headers(s, od);
        const struct opening_design *next = NULL;
        for (size_t k = 0; k < s->design->opening_count; k++)
            if (k != i && s->design->openings[k].side == jd && s->design->openings[k].zone[0] >= od->zone[0] &&
                s->design->openings[k].zone[0] < od->zone[1] && (k > i || s->design->openings[k].zone[0] > od->zone[0]))
                next = &s->design->openings[k];
        if (next)
            diag_add(s->diags, DIAG_S006, &next->opening->head.at,
                     "%s and %s share a trimmer or overlap: an engineer must size what stands between them",
                     head_name(s->arena, KIND_OPENING, &od->opening->head),
                     head_name(s->arena, KIND_OPENING, &next->opening->head));
    }
}

/* R of a header's load P at y from the beam, on supports at the shore and the far bearing: P (run - y) / (run - a). */
struct loads opening_on_shore(const struct sizing *s, const struct joists *joists, double set_back_in)
{
    struct loads worst = {0};
    double run = length_inches(joists->run.length);
    for (size_t i = 0; i < s->design->opening_count && set_back_in < run; i++) {
        const struct opening_design *od = &s->design->openings[i];
        struct loads sum = {0};
        if (!od->side || od->side->joists != joists)
            continue;
        for (int k = 0; k < 2; k++)
            if (od->headers[k].is)
                sum = loads_plus(
                    sum, loads_times(od->headers[k].end_lb, (run - od->headers[k].at_in) / (run - set_back_in)));
        if (loads_sum(sum) > loads_sum(worst))
            worst = sum;
    }
    return worst;
}
