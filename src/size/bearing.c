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
 * said: the smaller of both. */
static void post_support(const struct beam *beam, int end, struct support *out)
{
    const struct post_design *post = out->post;
    if (!post->member)
        return;
    length_t plies = post->plies * post->member->ply_width, depth = post->member->depth;
    enum wall_way way = (enum wall_way)beam->wall_at_end[end].choice;
    out->along = way == WAY_IN_LINE ? plies : way == WAY_ACROSS ? depth : lesser(plies, depth);
    out->across = way == WAY_IN_LINE ? depth : way == WAY_ACROSS ? plies : lesser(plies, depth);
}

struct support support_of(const struct sizing *s, const struct beam *beam, int end)
{
    const struct beam_end *at = &beam->end_[end];
    const struct beam_design *bd = &s->design->beams[beam - s->job->beams];
    struct support out = {0};
    switch (at->kind) {
    case END_POST:
        out.post = &s->design->posts[at->ref.index];
        post_support(beam, end, &out);
        if (beam->bearing[end].at && (out.along == 0 || beam->bearing[end].length < out.along))
            out.along = beam->bearing[end].length;
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

/* Width of beam that has wood below it, the beam centered on the support; how many plies have any. */
static double overlap(const struct beam_design *bd, const struct support *support, int *supported)
{
    double width = length_inches(bd->width), across = support->across > 0 ? length_inches(support->across) : width;
    double ply = width / bd->plies, sum = 0;
    *supported = 0;
    for (int i = 0; i < bd->plies; i++) {
        double left = fmax(i * ply - width / 2, -across / 2), right = fmin((i + 1) * ply - width / 2, across / 2);
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
    struct wood_piece piece = piece_of(post->member, post->plies);
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
    check.note = arena_printf(s->arena, "beam %s wide on a support %s wide: a ply hangs on its fasteners",
                              length_tape(s->arena, bd->width), length_tape(s->arena, support->across));
    return check;
}

/* IRC 2021 R502.6: 1-1/2 in on wood or metal, 3 in on masonry; as a ratio: what is wanted over what is there. */
static struct check least_length(const struct support *support, enum end_kind kind)
{
    struct check check = check_of("least bearing length", "IRC 2021 R502.6", 1.5, length_inches(support->along), "in");
    if (kind == END_POCKET)
        check.note = "on wood or steel; masonry wants 3 in";
    return check;
}

static void check_below(struct sizing *s, const struct beam_design *bd, int end, const struct support *support,
                        struct member_checks *checks)
{
    int supported = 0;
    double width = overlap(bd, support, &supported), area = width * length_inches(support->along);
    const struct loads *lb = &bd->end_lb[end];
    const char *size = area_text(s, bd, width, support->along);
    checks_add(s, checks,
               bearing_of(s, lb, area, bd->member->values->fc_perp, "bearing of the beam",
                          arena_printf(s->arena, "overlap %s; Cb 1.0 at a beam's end", size)));
    if (reaches_below(&bd->beam->end_[end])) {
        if (supported < bd->plies)
            checks_add(s, checks, plies_on_wood(s, bd, support, supported));
        checks_add(s, checks, least_length(support, bd->beam->end_[end].kind));
    }
    if (support->post && support->post->member) {
        checks_add(s, checks, end_grain(s, support->post, lb, area));
        checks->unverified |= !support->post->member->values->seen;
    }
    if (support->plate) {
        checks_add(s, checks,
                   bearing_of(s, lb, area, support->plate->values->fc_perp, "plate under the beam",
                              arena_printf(s->arena, "%s; %s, Cb 1.0: the distance to the plate's end is not known",
                                           support->plate->code, size)));
        checks->unverified |= !support->plate->values->seen;
    }
}

static void say_unchecked(struct sizing *s, const struct beam_design *bd, int end, const char *id)
{
    enum end_kind kind = bd->beam->end_[end].kind;
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
    checks->unverified = !bd->member->values->seen;
    if (support.hanger) {
        checks_add(s, checks, hanger_check(s, support.hanger, &bd->end_lb[end], "beam hanger"));
        if (bd->beam->end_[end].kind == END_BEAM)
            say_gravity(s, support.hanger, s->design->beams[bd->beam->end_[end].ref.index].member);
    }
    if (support.hanger || reaches_below(&bd->beam->end_[end])) {
        check_below(s, bd, end, &support, checks);
    } else {
        struct check none =
            check_of("beam hanger", "listed load (hangers.csv)", fmax(loads_sum(bd->end_lb[end]), 1), 0, "lb");
        none.note = "no hanger in hangers.csv fits and holds this end";
        checks_add(s, checks, none);
    }
    if (bd->beam->end_[end].kind == END_POCKET && bd->beam->status.choice != NE_EXISTING)
        pocket_check(s, bd->beam, checks);
    return checks_close(s, checks, place_of(bd->beam->end_[end].at, &bd->beam->head));
}
