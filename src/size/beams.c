/* A beam from its member to its reactions: how long the wood is, what hangs on it, what its ends bring below. */
#include "size.h"

#include <math.h>

void beam_resolve(struct sizing *s, size_t index)
{
    struct beam_design *bd = &s->design->beams[index];
    const struct beam *beam = &s->job->beams[index];
    bd->beam = beam;
    bd->plies = beam->plies.count > 0 ? beam->plies.count : 1;
    if (s->selection && s->selection[index].member) {
        bd->member = s->selection[index].member->values ? s->selection[index].member : NULL;
        bd->plies = s->selection[index].plies;
    } else if (beam->member.at || beam->choose.choice != YES) {
        bd->member = member_named(s, &beam->member, &beam->head, KIND_BEAM);
    }
    if (!bd->member)
        return;
    bd->values = member_in_service(s, bd->member, &beam->service, &bd->service);
    bd->width = bd->plies * bd->member->ply_width;
    bd->weight_plf = bd->plies * bd->member->weight_plf;
    s->width_in[index] = length_inches(bd->width);
}

static const double unit_factor[LOAD_SOURCES][LOAD_SOURCES] = {
    [LOAD_DEAD] = {1, 0, 0, 0}, [LOAD_LIVE] = {0, 1, 0, 0},     [LOAD_ROOF_LIVE] = {0, 0, 1, 0},
    [LOAD_SNOW] = {0, 0, 0, 1}, [LOAD_ATTIC] = {0, 0, 0, 0, 1}, [LOAD_UPLIFT] = {[LOAD_UPLIFT] = 1}};

static void react(struct sizing *s, size_t index)
{
    struct beam_design *bd = &s->design->beams[index];
    struct beam_case at = beam_case_of(s, index);
    if (beam_runs_on(bd)) {
        inner_react(s, bd, &at);
        return;
    }
    for (int source = 0; source < LOAD_SOURCES; source++) {
        struct beam_result result = beam_solve(at.span_in, at.load, at.count, unit_factor[source]);
        for (int end = 0; end < 2; end++)
            bd->end_lb[end].of[source] = result.reaction[end];
    }
    for (int end = 0; end < 2; end++)
        bd->end_least_lb[end] = bd->end_full_lb[end] = bd->end_lb[end];
}

/* Length of the wood, loads and reactions, with the hangers that the ends have now. */
static void lay_out(struct sizing *s, size_t index)
{
    struct beam_design *bd = &s->design->beams[index];
    bd->cut_length = bd->beam->clear_span.length;
    for (int end = 0; end < 2; end++) {
        struct support support = support_of(s, bd->beam, end);
        bd->bearing[end] = support.along;
        if (support.hanger)
            bd->cut_length -= support.hanger->gap;
        else
            bd->cut_length += support.along;
    }
    bd->design_span_in =
        length_inches(bd->cut_length) - (length_inches(bd->bearing[0]) + length_inches(bd->bearing[1])) / 2;
    for (int end = 0; end < 2; end++) {
        length_t overhang = bd->beam->overhang[end].length;
        bd->cut_length += overhang;
        bd->past_in[end] = overhang > 0 ? length_inches(overhang) + length_inches(bd->bearing[end]) / 2 : 0;
    }
    inner_lay_out(s, bd);
    upset_lay_out(bd);
    for (int side = 0; side < 2; side++)
        if (bd->side[side])
            joists_place(s, &s->design->joists[bd->side[side] - s->design->joists]);
    stack_fill(s, index);
    react(s, index);
}

double end_gravity(const struct sizing *s, const struct beam_design *bd, int end)
{
    const struct beam_end *at = &bd->beam->end_[end];
    const struct design_row *carrier = at->kind == END_BEAM ? s->design->beams[at->ref.index].values : NULL;
    return lighter_wood(bd->values->gravity, carrier ? carrier->gravity : 0);
}

/* The cheapest hanger that fits the beam and its carrier and holds the reaction it makes itself; none: the cheapest
 * that fits in size, so that its ratio can be shown. */
static void choose_end_hanger(struct sizing *s, size_t index, int end)
{
    struct beam_design *bd = &s->design->beams[index];
    const struct beam_end *at = &bd->beam->end_[end];
    struct hanger_need need = {.width_in = length_inches(bd->width), .depth_in = length_inches(bd->member->depth)};
    if (at->kind == END_BEAM)
        need.carrier_in = s->width_in[at->ref.index];
    double gravity = end_gravity(s, bd, end);
    const struct hanger **list, *best = NULL;
    size_t count = hangers_sorted(s, &need, &list);
    double least = INFINITY;
    for (size_t i = 0; i < count; i++) {
        bd->end_hanger[end] = list[i];
        lay_out(s, index);
        double ratio = hanger_check(s, list[i], &bd->end_lb[end], gravity, "beam hanger").ratio;
        if (ratio_holds(ratio))
            return;
        if (!best || ratio < least) {
            best = list[i];
            least = ratio;
        }
    }
    bd->end_hanger[end] = best;
    lay_out(s, index);
}

static void write_path(struct sizing *s, size_t index)
{
    const struct beam_design *bd = &s->design->beams[index];
    const char *name = head_name(s->arena, KIND_BEAM, &bd->beam->head);
    for (size_t i = 0; i < s->stack[index].count; i++) {
        const struct placed *placed = &s->stack[index].item[i];
        const struct beam_load *load = &placed->load;
        path_add(s, placed->from, name, load->point ? load->from_in : NAN, beam_load_total(load));
    }
}

static const char *below(struct sizing *s, const struct beam_end *end)
{
    if (end->ref.at && (end->kind == END_BEAM || end->kind == END_POST || end->kind == END_PLATE)) {
        const struct head *head = end->kind == END_BEAM   ? &s->job->beams[end->ref.index].head
                                  : end->kind == END_POST ? &s->job->posts[end->ref.index].head
                                                          : &s->job->walls[end->ref.index].head;
        enum kind kind = end->kind == END_BEAM ? KIND_BEAM : end->kind == END_POST ? KIND_POST : KIND_WALL;
        return head_name(s->arena, kind, head);
    }
    static const char *const word[] = {"not said", "post", "beam", "wall plate", "pocket", "hanger"};
    return word[end->kind];
}

static void write_ends(struct sizing *s, size_t index)
{
    const struct beam_design *bd = &s->design->beams[index];
    for (int end = 0; end < 2; end++) {
        const struct beam_end *at = &bd->beam->end_[end];
        if (at->kind == END_BEAM)
            continue; /* the carrier's own stack says it */
        const char *from =
            arena_printf(s->arena, "%s, end %d", head_name(s->arena, KIND_BEAM, &bd->beam->head), end + 1);
        path_add(s, from, below(s, at), NAN, bd->end_lb[end]);
    }
    for (size_t i = 0; i < bd->inner_count; i++) {
        const struct inner_design *inner = &bd->inner[i];
        path_add(s, inner_name(s, bd, i), below(s, &inner->inner->on), length_inches(inner->inner->on.at_length),
                 inner->lb);
    }
}

static void warn_carrier(struct sizing *s, const struct beam_design *bd)
{
    for (int end = 0; end < 2; end++) {
        const struct beam_end *at = &bd->beam->end_[end];
        if (at->kind != END_BEAM || !s->design->beams[at->ref.index].member)
            continue;
        const struct beam_design *carrier = &s->design->beams[at->ref.index];
        if (bd->member->depth > carrier->member->depth)
            engineer(
                s, place_of(at->at, &bd->beam->head),
                arena_printf(s->arena,
                             "%s is %s deep and hangs on %s, only %s deep: a hanger's upper nails may find no wood",
                             head_name(s->arena, KIND_BEAM, &bd->beam->head), length_tape(s->arena, bd->member->depth),
                             head_name(s->arena, KIND_BEAM, &carrier->beam->head),
                             length_tape(s->arena, carrier->member->depth)));
    }
}

static void warn_depth(struct sizing *s, const struct beam_design *bd)
{
    warn_carrier(s, bd);
    for (int side = 0; side < 2; side++) {
        const struct joist_design *jd = bd->side[side];
        if (jd && needs_hangers(bd->beam) && jd->depth > bd->member->depth)
            engineer(s, place_of(bd->beam->member.at, &bd->beam->head),
                     arena_printf(s->arena,
                                  "%s is %s deep and carries joists %s deep: a hanger's upper nails may find no wood",
                                  head_name(s->arena, KIND_BEAM, &bd->beam->head),
                                  length_tape(s->arena, bd->member->depth), length_tape(s->arena, jd->depth)));
    }
}

/* The joists of a beam without a member have hangers, too: only the carrier's width is not known. */
static bool check_sides(struct sizing *s, size_t index)
{
    bool passes = true;
    struct beam_design *bd = &s->design->beams[index];
    for (int side = 0; side < 2; side++)
        if (bd->side[side])
            passes &= joists_check(s, &s->design->joists[bd->side[side] - s->design->joists]);
    return passes;
}

void beam_size(struct sizing *s, size_t index)
{
    struct beam_design *bd = &s->design->beams[index];
    lay_out(s, index);
    if (bd->member)
        for (int end = 0; end < 2; end++)
            if (bd->beam->end_[end].kind == END_BEAM || bd->beam->end_[end].kind == END_HANGER)
                choose_end_hanger(s, index, end);
    stack_check(s, index);
    write_path(s, index);
    write_ends(s, index);
    bool passes = check_sides(s, index);
    bool stands = inner_places_good(s, bd) && bd->design_span_in > 0;
    if (bd->member && stands) {
        bool holds = beam_member_check(s, index);
        passes &= holds || bd->beam->specified_by.at; /* an engineer's member is his; our ratio stands beside it */
        for (int end = 0; end < 2; end++)
            passes &= bearing_check(s, bd, end);
        for (size_t i = 0; i < bd->inner_count; i++)
            passes &= inner_bearing_check(s, bd, i);
        warn_depth(s, bd);
    } else {
        passes = false;
    }
    bd->passes = passes;
}
