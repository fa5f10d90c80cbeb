/* What a beam end rests on: the overlap of wood on wood, and the checks of both. */
#include "size.h"

#include <math.h>

#include "sawbill/text.h"

/* The weaker in bearing; of equals the narrower. */
static bool is_weaker(const struct member *a, const struct member *b)
{
    if (a->values->fc_perp != b->values->fc_perp)
        return a->values->fc_perp < b->values->fc_perp;
    return a->depth < b->depth;
}

static bool is_plate(const struct member *member)
{
    return (member->use & USE_PLATE) && member->values;
}

const struct member *plate_member(const struct sizing *s, const struct ref_value *wall)
{
    const char *size = NULL;
    if (wall && wall->at && wall->kind == KIND_WALL && wall->index < s->job->wall_count)
        size = s->job->walls[wall->index].studs.text;
    const struct member *best = size ? catalog_member(s->catalog, size) : NULL; /* a code says the species, too */
    if (best && best->values)
        return best;
    best = NULL;
    for (int pass = 0; pass < 2 && !best; pass++)
        for (size_t i = 0; i < s->catalog->member_count; i++) {
            const struct member *member = &s->catalog->members[i];
            if (!is_plate(member) || (pass == 0 && (!size || !name_same(member->size, size))))
                continue;
            if (!best || is_weaker(member, best))
                best = member;
        }
    return best;
}

bool reaches_below(const struct beam_end *end)
{
    return end->kind == END_POST || end->kind == END_PLATE || end->kind == END_POCKET;
}

static length_t lesser(length_t a, length_t b)
{
    return a < b ? a : b;
}

/* In a wall in line with the beam the studs of the post stand one behind the other along it; across, side by side. Not
 * said: the smaller of both.  written: the bearing that the job gives, or 0. */
static struct support on_post(const struct post_design *post, enum wall_way way, length_t written)
{
    struct support out = {.post = post, .plate = post->cap_plate};
    if (post->member) {
        length_t plies = post->plies * post->member->ply_width, depth = post->member->depth;
        out.along = way == WAY_IN_LINE ? plies : way == WAY_ACROSS ? depth : lesser(plies, depth);
        out.across = way == WAY_IN_LINE ? depth : way == WAY_ACROSS ? plies : lesser(plies, depth);
    }
    if (written > 0 && (out.along == 0 || written < out.along))
        out.along = written;
    return out;
}

struct support support_between(const struct sizing *s, const struct beam_inner *inner)
{
    if (inner->on.kind == END_POST) {
        struct support out = on_post(&s->design->posts[inner->on.ref.index], inner->way, inner->bearing);
        out.off = inner->off;
        return out;
    }
    return (struct support){.along = inner->bearing, .plate = plate_member(s, &inner->on.ref)};
}

struct support support_of(const struct sizing *s, const struct beam *beam, int end)
{
    const struct beam_end *at = &beam->end_[end];
    const struct beam_design *bd = &s->design->beams[beam - s->job->beams];
    struct support out = {0};
    switch (at->kind) {
    case END_POST:
        out = on_post(&s->design->posts[at->ref.index], (enum wall_way)beam->wall_at_end[end].choice,
                      beam->bearing[end].at ? beam->bearing[end].length : 0);
        out.off = beam->off_center[end].length;
        break;
    case END_PLATE:
        out.plate = plate_member(s, &at->ref);
        out.along = beam->bearing[end].length;
        if (out.plate && beam->wall_at_end[end].choice == WAY_IN_LINE)
            out.across = out.plate->depth;
        break;
    case END_POCKET:
        out.along = beam->bearing[end].length;
        break;
    case END_BEAM:
    case END_HANGER:
        out.hanger = bd->end_hanger[end];
        out.along = out.hanger ? out.hanger->seat : 0;
        break;
    case END_UNANSWERED:
        out.along = beam->bearing[end].length;
        break;
    }
    return out;
}

/* Width of beam that has wood below it, the beam centered on the support or `off` its center; how many plies have any.
 */
static double overlap(const struct beam_design *bd, const struct support *support, int *supported)
{
    double width = length_inches(bd->width), across = support->across > 0 ? length_inches(support->across) : width;
    double ply = width / bd->plies, sum = 0, edge = length_inches(support->off) - width / 2;
    *supported = 0;
    for (int i = 0; i < bd->plies; i++) {
        double left = fmax(i * ply + edge, -across / 2), right = fmin((i + 1) * ply + edge, across / 2);
        if (right - left <= 1.0 / 64)
            continue;
        (*supported)++;
        sum += right - left;
    }
    return sum;
}

/* The greatest of a check that knows no load duration. */
static struct check bearing_of(const struct sizing *s, const struct loads *lb, double area, double capacity,
                               const char *name, const char *note)
{
    struct check worst = {0};
    for (size_t i = 0; i < s->combo_count; i++) {
        if (!combo_applies(&s->combo[i], lb))
            continue;
        double stress = area > 0 ? combined(&s->combo[i], lb) / area : INFINITY;
        struct check check = check_of(name, "NDS 2018 3.10.2", stress, capacity, "psi");
        check.combination = s->combo[i].name;
        check.note = note;
        check_worse(&worst, check);
    }
    return worst;
}

static const char *area_text(struct sizing *s, const struct beam_design *bd, double width, length_t along)
{
    bool wider = width < length_inches(bd->width) - 1.0 / 64;
    return arena_printf(s->arena, "%s wide x %s long%s", length_tape(s->arena, length_from_inches(width)),
                        length_tape(s->arena, along), wider ? ", the beam is wider than its support" : "");
}

/* End grain of the post, 3.10.1: Fc* in every combination. */
static struct check end_grain(struct sizing *s, const struct post_design *post, const struct loads *lb, double area)
{
    struct wood_piece piece = post_wood(post);
    double cf = wood_cf(piece.row, piece.ply_in, piece.depth_in).fc;
    struct check worst = {0};
    for (size_t i = 0; i < s->combo_count; i++) {
        const struct combination *combo = &s->combo[i];
        if (!combo_applies(combo, lb))
            continue;
        double stress = area > 0 ? combined(combo, lb) / area : INFINITY;
        struct check check =
            check_of("end grain of the post", "NDS 2018 3.10.1", stress, piece.row->fc * combo->cd * cf, "psi");
        check.combination = combo->name;
        check.values = values_text(s->arena, piece.row);
        if (check.ratio > 0.75)
            check.note = "above 0.75 Fc*: a steel plate or the like between (NDS 2018 3.10.1.3)";
        check_worse(&worst, check);
    }
    return worst;
}

static struct check plies_on_wood(struct sizing *s, const struct beam_design *bd, const struct support *support,
                                  int supported)
{
    struct check check = check_of("every ply on wood", "NDS 2018 3.10.2", bd->plies, supported, "plies");
    const char *off =
        support->off > 0 ? arena_printf(s->arena, ", %s off its center", length_tape(s->arena, support->off)) : "";
    check.note = arena_printf(s->arena, "beam %s wide on a support %s wide%s: a ply hangs on its fasteners",
                              length_tape(s->arena, bd->width), length_tape(s->arena, support->across), off);
    return check;
}

/* IRC 2021 R502.6: 1-1/2 in on wood or metal, 3 in on masonry; as a ratio: what is wanted over what is there. */
static struct check least_length(length_t along, enum end_kind kind)
{
    struct check check = check_of("least bearing length", "IRC 2021 R502.6", 1.5, length_inches(along), "in");
    if (kind == END_POCKET)
        check.note = "on wood or steel; masonry wants 3 in";
    return check;
}

/* What bears on a support: the load, on which length of it, with which Cb. */
struct rest {
    const struct loads *lb;
    const struct support *support;
    enum end_kind kind;
    length_t along;
    double cb;
    const char *why; /* of Cb */
};

static void check_below(struct sizing *s, const struct beam_design *bd, const struct rest *rest,
                        struct member_checks *checks)
{
    int supported = 0;
    const struct support *support = rest->support;
    double width = overlap(bd, support, &supported), area = width * length_inches(rest->along);
    const char *size = area_text(s, bd, width, rest->along);
    checks_add(s, checks,
               bearing_of(s, rest->lb, area, bd->values->fc_perp * rest->cb, "bearing of the beam",
                          arena_printf(s->arena, "overlap %s; %s", size, rest->why)));
    if (rest->kind == END_POST || rest->kind == END_PLATE || rest->kind == END_POCKET) {
        if (supported < bd->plies)
            checks_add(s, checks, plies_on_wood(s, bd, support, supported));
        checks_add(s, checks, least_length(rest->along, rest->kind));
    }
    if (support->post && support->post->member) {
        struct check grain = end_grain(s, support->post, rest->lb, area);
        checks_add(s, checks, grain);
        if (grain.ratio > 0.75)
            unchecked_add(s, arena_printf(s->arena,
                                          "not checked: the steel plate between %s and its post, wanted above 0.75 Fc* "
                                          "(NDS 2018 3.10.1.3): it is in no count",
                                          checks->id));
        checks->unverified |= !support->post->member->values->seen;
    }
    if (support->plate) {
        struct check plate =
            bearing_of(s, rest->lb, area, support->plate->values->fc_perp, "plate under the beam",
                       arena_printf(s->arena, "%s; %s, Cb 1.0: the distance to the plate's end is not known",
                                    support->plate->code, size));
        plate.values = values_text(s->arena, support->plate->values);
        checks_add(s, checks, plate);
        checks->unverified |= !support->plate->values->seen;
    }
}

/* Dead load keeps its full weight: no combination of this program lessens it. */
static void check_uplift(struct sizing *s, const struct beam_design *bd, const struct loads *most,
                         const struct loads *least, struct member_checks *checks)
{
    const struct text_value *named = &bd->beam->hold_down_engineer;
    struct check worst = {0};
    for (size_t i = 0; i < s->combo_count; i++) {
        double up = -combined(&s->combo[i], least);
        if (!combo_applies(&s->combo[i], most) || up < 1e-6)
            continue;
        struct check check = check_of("held down, spans loaded in turn", "statics", up, 0, "lb");
        check.combination = s->combo[i].name;
        check.note =
            "live load on other spans lifts it, with all dead load on; name who answers in 'hold down engineer'";
        check_worse(&worst, check);
    }
    if (worst.name && named->at)
        unchecked_add(s, arena_printf(s->arena, "not checked: %s lifts by %s lb (%s): held down by the engineer (%s)",
                                      checks->id, number_text(s->arena, ceil(worst.demand), 0), worst.combination,
                                      named->text));
    else
        checks_add(s, checks, worst);
}

static void say_unchecked(struct sizing *s, const struct beam_design *bd, int end, const char *id)
{
    enum end_kind kind = bd->beam->end_[end].kind;
    if (kind == END_POCKET && bd->bearing[end] < 3 * LENGTH_INCH && !bd->beam->specified_by.at)
        engineer(s, place_of(bd->beam->bearing[end].at, &bd->beam->head),
                 arena_printf(s->arena,
                              "%s bears %s in a pocket: enough on wood or steel; masonry and concrete want 3 in (IRC "
                              "2021 R502.6)",
                              id, length_tape(s->arena, bd->bearing[end])));
    if (kind == END_POCKET)
        unchecked_add(s, arena_printf(s->arena, "not checked: what the pocket at %s bears on", id));
    if (kind == END_PLATE)
        unchecked_add(s,
                      arena_printf(s->arena, "not checked: the studs below the plate at %s, down to the ground", id));
    if (kind == END_HANGER)
        unchecked_add(s, arena_printf(s->arena, "not checked: what the hanger at %s is fixed to", id));
    if (kind == END_UNANSWERED)
        unchecked_add(s, arena_printf(s->arena, "not checked: %s, how it bears is not said", id));
}

bool bearing_check(struct sizing *s, const struct beam_design *bd, int end)
{
    const char *id = arena_printf(s->arena, "%s, end %d", head_name(s->arena, KIND_BEAM, &bd->beam->head), end + 1);
    struct support support = support_of(s, bd->beam, end);
    say_unchecked(s, bd, end, id);
    if (bd->beam->end_[end].kind == END_UNANSWERED || (support.post && !support.post->member))
        return true; /* asked, or stopped, elsewhere */
    struct member_checks *checks = checks_new(s, id, member_text(s->arena, bd->member, bd->plies));
    checks_wood(checks, bd->member->values);
    if (support.hanger)
        checks_add(s, checks,
                   hanger_check(s, support.hanger, &bd->end_lb[end], end_gravity(s, bd, end), "beam hanger"));
    if (support.hanger || reaches_below(&bd->beam->end_[end])) {
        const struct rest rest = {.lb = &bd->end_lb[end],
                                  .support = &support,
                                  .kind = bd->beam->end_[end].kind,
                                  .along = support.along,
                                  .cb = 1,
                                  .why = "Cb 1.0 at a beam's end"};
        check_below(s, bd, &rest, checks);
    } else {
        struct check none =
            check_of("beam hanger", "listed load (hangers.csv)", fmax(loads_sum(bd->end_lb[end]), 1), 0, "lb");
        none.note = "no hanger in hangers.csv fits and holds this end";
        checks_add(s, checks, none);
    }
    uplift_end_check(s, bd, end, checks);
    if (bd->beam->end_[end].kind == END_POCKET && bd->beam->status.choice != NE_EXISTING)
        pocket_check(s, bd->beam, checks);
    check_uplift(s, bd, &bd->end_lb[end], &bd->end_least_lb[end], checks);
    return checks_close(s, checks, place_of(bd->beam->end_[end].at, &bd->beam->head));
}

/* NDS 3.10.4: a bearing shorter than 6 in, 3 in or more from the ends of the wood. */
static struct rest rest_between(struct sizing *s, const struct beam_design *bd, size_t which,
                                const struct support *support)
{
    const struct inner_design *inner = &bd->inner[which];
    struct rest rest = {
        .lb = &inner->lb, .support = support, .kind = inner->inner->on.kind, .along = support->along, .cb = 1};
    if (inner->spliced) {
        rest.along /= 2;
        rest.why = "half of the support under the heavier piece; Cb 1.0 at its end";
        return rest;
    }
    double half = length_inches(support->along) / 2, at = length_inches(inner->inner->on.at_length);
    rest.cb = wood_cb(length_inches(support->along), fmin(at, length_inches(bd->cut_length) - at) - half);
    rest.why = arena_printf(s->arena, "Cb %s", number_text(s->arena, rest.cb, 3));
    return rest;
}

/* The more of each load that one of both pieces brings. */
static struct loads heavier_piece(const struct inner_design *inner)
{
    struct loads out = inner->piece_lb[0];
    for (int source = 0; source < LOAD_SOURCES; source++)
        out.of[source] = fmax(out.of[source], inner->piece_lb[1].of[source]);
    return out;
}

bool inner_bearing_check(struct sizing *s, const struct beam_design *bd, size_t which)
{
    const struct inner_design *inner = &bd->inner[which];
    const char *id = inner_name(s, bd, which);
    struct support support = support_between(s, inner->inner);
    if (inner->inner->on.kind == END_PLATE)
        unchecked_add(s,
                      arena_printf(s->arena, "not checked: the studs below the plate at %s, down to the ground", id));
    if (support.post && !support.post->member)
        return true; /* stopped elsewhere */
    struct member_checks *checks = checks_new(s, id, member_text(s->arena, bd->member, bd->plies));
    checks_wood(checks, bd->member->values);
    struct rest rest = rest_between(s, bd, which, &support);
    const struct loads heavier = heavier_piece(inner);
    if (inner->spliced)
        rest.lb = &heavier;
    check_below(s, bd, &rest, checks);
    uplift_inner_check(s, bd, which, checks);
    check_uplift(s, bd, &inner->lb, &inner->least_lb, checks);
    return checks_close(s, checks, place_of(inner->inner->on.at, &bd->beam->head));
}
