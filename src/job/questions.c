/* The questions that keep a house standing.  Zero, no and nothing are answers; absent and unknown are the question. */

#include "job_internal.h"

struct asking {
    const struct job *job;
    struct diags *diags;
};

/* Written, but no choice: its own fault is enough. */
static bool unreadable(const struct choice_value *value)
{
    return value->at && value->choice == 0;
}

/* Q001: trusses and i-joists are cut only as their maker or an engineer says (IRC R502.8.2, R802.7.2). */
static void ask_repair_drawings(const struct asking *asking)
{
    for (size_t i = 0; i < asking->job->joists_count; i++) {
        const struct joists *joists = &asking->job->joists[i];
        int kind = joists->kind.choice;
        if (kind == JOIST_UNKNOWN && !joists->repair_drawing.at)
            diag_add(asking->diags, DIAG_Q001, &joists->kind.at->at,
                     "what are [joists %s]? open the ceiling and look: trusses, metal-web joists and i-joists are not "
                     "cut as sawn ones are; write their 'kind', or 'repair drawing = SHEET, ENGINEER'",
                     joists->head.id);
        if ((kind == JOIST_I || kind == JOIST_FLOOR_TRUSS || kind == JOIST_ROOF_TRUSS) && !joists->repair_drawing.at)
            diag_add(asking->diags, DIAG_Q001, &joists->kind.at->at,
                     "[joists %s] are of kind '%s', which is not cut without the drawing of its maker or an engineer; "
                     "write 'repair drawing = SHEET, ENGINEER'%s",
                     joists->head.id, choice_name("joists", "kind", kind),
                     kind == JOIST_I ? "; it says the stiffeners, backers and fillers, too" : "");
    }
}

/* Q002: what stands on the beam, and roof braces that stand on the wall. */
static void ask_what_is_above(const struct asking *asking)
{
    const struct job *job = asking->job;
    for (size_t i = 0; i < job->beam_count; i++)
        if (!job->beams[i].above.at)
            diag_add(asking->diags, DIAG_Q002, &job->beams[i].head.at,
                     "what stands on [beam %s] beside its joists? write 'above = nothing', or name each load and wall: "
                     "'above = load ridge post, wall W2'",
                     job->beams[i].head.id);
    if (!job->has_roof)
        return;
    int frame = job->roof.frame.choice;
    if (frame == FRAME_UNANSWERED && !unreadable(&job->roof.frame))
        diag_add(asking->diags, DIAG_Q002, &job->roof.head.at,
                 "how is the roof above framed? write 'frame = ridge board', 'structural ridge', 'trusses' or "
                 "'none above'");
    if ((frame == FRAME_RIDGE_BOARD || frame == FRAME_UNANSWERED) && !job->roof.braces.at)
        diag_add(asking->diags, DIAG_Q002, &job->roof.head.at,
                 "do roof braces stand on the wall? write 'braces = none', or each place with the roof it carries: "
                 "'braces = 4 ft carrying 96 sq ft'");
}

/* Q003: joists that tie the rafters are cut only with something in their place (IRC R802.5.2). */
static void ask_about_ties(const struct asking *asking)
{
    const struct job *job = asking->job;
    int frame = job->has_roof ? job->roof.frame.choice : FRAME_UNANSWERED;
    if (frame != FRAME_UNANSWERED && frame != FRAME_RIDGE_BOARD)
        return;
    for (size_t i = 0; i < job->joists_count; i++) {
        const struct joists *joists = &job->joists[i];
        const struct place *at = place_of(joists->ties_the_roof.at, &joists->head);
        int answer = joists->ties_the_roof.choice;
        if (answer == NO || joists->tie_engineer.at || unreadable(&joists->ties_the_roof))
            continue;
        if (answer == YES && !joists->tie_strap.at)
            diag_add(asking->diags, DIAG_Q003, at,
                     "[joists %s] tie the roof, and the beam cuts them; write 'tie strap = CODE' across the beam, or "
                     "'tie engineer = NAME, SHEET'",
                     joists->head.id);
        else if (answer != YES)
            diag_add(asking->diags, DIAG_Q003, at,
                     "do [joists %s] keep the rafters from spreading? write 'ties the roof = yes' or 'no' (no roof "
                     "above: [roof] 'frame = none above'), or 'tie engineer = NAME, SHEET'",
                     joists->head.id);
    }
}

/* Q010: rafters flatter than 3/12 do not lean on a ridge board: the ridge is then a beam (IRC R802.4.4, from memory).
 */
static void ask_about_flat_ridge(const struct asking *asking)
{
    const struct roof *roof = &asking->job->roof;
    if (!asking->job->has_roof || roof->frame.choice != FRAME_RIDGE_BOARD || !roof->pitch.at || roof->pitch.run <= 0 ||
        roof->pitch.rise <= 0) /* a flat one is a fault already */
        return;
    if (12 * roof->pitch.rise / roof->pitch.run < 3 - 1e-9)
        diag_add(asking->diags, DIAG_Q010, &roof->pitch.at->at,
                 "a roof flatter than 3/12 wants a ridge that is a beam (IRC 2021 R802.3, R802.6); look again, and "
                 "write 'frame = structural ridge', or ask an engineer what holds it up");
}

/* Q004: a wall that braces the house (IRC R602.10). */
static void ask_about_bracing(const struct asking *asking)
{
    for (size_t i = 0; i < asking->job->wall_count; i++) {
        const struct wall *wall = &asking->job->walls[i];
        const struct place *at = place_of(wall->bracing.at, &wall->head);
        if (wall->status.choice != WALL_COMES_OUT || wall->bracing.choice == NO || wall->bracing_engineer.at ||
            unreadable(&wall->bracing))
            continue;
        if (wall->bracing.choice == YES)
            diag_add(asking->diags, DIAG_Q004, at,
                     "[wall %s] braces the house, and it comes out; an engineer must say what takes its place: "
                     "'bracing engineer = NAME, SHEET'",
                     wall->head.id);
        else
            diag_add(asking->diags, DIAG_Q004, at,
                     "does [wall %s] brace the house? write 'bracing = no', or 'bracing = yes' with 'bracing engineer "
                     "= NAME, SHEET'",
                     wall->head.id);
    }
}

/* Q014: a wall that comes out and bears must have a beam in its place; which one, the job says. */
static void ask_what_takes_its_place(const struct asking *asking)
{
    for (size_t i = 0; i < asking->job->wall_count; i++) {
        const struct wall *wall = &asking->job->walls[i];
        if (wall->status.choice != WALL_COMES_OUT || wall->under.at || wall->on.at || wall->bearing.choice == NO ||
            unreadable(&wall->bearing) || asking->job->beam_count == 0)
            continue;
        diag_add(asking->diags, DIAG_Q014, place_of(wall->bearing.at, &wall->head),
                 "what takes the place of [wall %s], which comes out? write 'under = beam ID', or 'bearing = no' where "
                 "nothing stands, lies or hangs on it",
                 wall->head.id);
    }
}

/* Q005: a snow load without its basis is up to 1.43 times wrong (ASCE 7-22 against 7-16). */
static void ask_about_snow(const struct asking *asking)
{
    for (size_t i = 0; i < asking->job->area_count; i++) {
        const struct area *area = &asking->job->areas[i];
        if (!area->snow.at || area->snow.quantity.millionths <= 0)
            continue;
        if (!area->snow_is.at)
            diag_add(asking->diags, DIAG_Q005, &area->snow.at->at,
                     "is the snow of [area %s] meant on the ground or on the roof? write 'snow is = on the ground' or "
                     "'on the roof'",
                     area->head.id);
        if (!area->snow_level.at)
            diag_add(asking->diags, DIAG_Q005, &area->snow.at->at,
                     "is the snow of [area %s] an allowable value (ASCE 7-16 and before) or a strength value (ASCE "
                     "7-22)? write 'snow level = allowable' or 'strength'",
                     area->head.id);
    }
}

static bool snows(const struct quantity_value *snow)
{
    return snow->at && snow->quantity.millionths > 0;
}

/* Q005 again: pounds of snow have a level as psf have. */
static void ask_about_own_snow(const struct asking *asking)
{
    static const char form[] = "is the snow of [%s %s] an allowable value (ASCE 7-16 and before) or a strength value "
                               "(ASCE 7-22)? write 'snow level = allowable' or 'strength'";
    const struct job *job = asking->job;
    for (size_t i = 0; i < job->load_count; i++) {
        const struct load *load = &job->loads[i];
        const struct quantity_value *snow = snows(&load->snow) ? &load->snow : &load->snow_to;
        if (snows(snow) && !load->snow_level.at)
            diag_add(asking->diags, DIAG_Q005, &snow->at->at, form, "load", load->head.id);
    }
    for (size_t i = 0; i < job->obstruction_count; i++) {
        const struct obstruction *it = &job->obstructions[i];
        if (snows(&it->snow) && !it->snow_level.at)
            diag_add(asking->diags, DIAG_Q005, &it->snow.at->at, form, "obstruction", it->head.id);
    }
}

/* Where the job first says that snow lies on something that it carries; NULL: nowhere. */
static const struct place *first_snow(const struct job *job)
{
    for (size_t i = 0; i < job->area_count; i++)
        if (snows(&job->areas[i].snow))
            return &job->areas[i].snow.at->at;
    for (size_t i = 0; i < job->load_count; i++)
        if (snows(&job->loads[i].snow) || snows(&job->loads[i].snow_to))
            return place_of(job->loads[i].snow.at, &job->loads[i].head);
    for (size_t i = 0; i < job->obstruction_count; i++)
        if (snows(&job->obstructions[i].snow))
            return &job->obstructions[i].snow.at->at;
    return NULL;
}

/* Q012: drifts and sliding snow come to several times the flat roof's (ASCE 7 7.7 to 7.9): an engineer's figures. */
static void ask_about_drifts(const struct asking *asking)
{
    const struct roof *roof = &asking->job->roof;
    const struct place *snow = first_snow(asking->job);
    if (!snow || roof->snow_drifts.choice == NO || roof->snow_engineer.at || unreadable(&roof->snow_drifts))
        return;
    const struct place *at = roof->snow_drifts.at    ? &roof->snow_drifts.at->at
                             : asking->job->has_roof ? &roof->head.at
                                                     : snow;
    if (roof->snow_drifts.choice == YES)
        diag_add(asking->diags, DIAG_Q012, at,
                 "snow drifts or slides onto this roof; an engineer must say how much: 'snow engineer = NAME, SHEET'");
    else
        diag_add(asking->diags, DIAG_Q012, at,
                 "is there a valley, or a higher roof that snow drifts or slides down from? write in [roof] 'snow "
                 "drifts = no', or 'snow drifts = yes' with 'snow engineer = NAME, SHEET'");
}

static bool beam_carries(const struct job *job, size_t area)
{
    bool carries = job->has_roof && job->roof.braces.count > 0 && ref_found(&job->roof.braces_on) &&
                   ref_found(&job->roof.area) && job->roof.area.index == area;
    for (size_t i = 0; i < job->joists_count; i++)
        carries |= ref_found(&job->joists[i].area) && job->joists[i].area.index == area;
    for (size_t i = 0; i < job->load_count; i++)
        carries |= ref_found(&job->loads[i].area) && job->loads[i].area.index == area;
    for (size_t i = 0; i < job->obstruction_count; i++)
        carries |= job->obstructions[i].then.choice == THEN_LANDS && ref_found(&job->obstructions[i].area) &&
                   job->obstructions[i].area.index == area;
    return carries;
}

/* Q013: wind lifts a light roof, and the beam that carries it with it. */
static void ask_about_uplift(const struct asking *asking)
{
    for (size_t i = 0; i < asking->job->area_count; i++) {
        const struct area *area = &asking->job->areas[i];
        if (area->live_is.choice != LIVE_ROOF || area->net_uplift.at || area->uplift_engineer.at ||
            !beam_carries(asking->job, i))
            continue;
        diag_add(
            asking->diags, DIAG_Q013, &area->head.at,
            "a beam carries [area %s]: how much does wind lift it beyond 0.6 of its dead load? write 'net uplift = "
            "NUMBER psf', 0 is an answer, or 'uplift engineer = NAME, SHEET' who says that there is none",
            area->head.id);
    }
}

/* Q006: how each end bears, and for a post which way its wall runs. */
static void ask_about_ends(const struct asking *asking)
{
    for (size_t i = 0; i < asking->job->beam_count; i++) {
        const struct beam *beam = &asking->job->beams[i];
        for (int end = 0; end < 2; end++) {
            const struct beam_end *on = &beam->end_[end];
            if (on->kind == END_UNANSWERED && (!on->at || name_same(on->at->value, "unknown")))
                diag_add(asking->diags, DIAG_Q006, place_of(on->at, &beam->head),
                         "what does end %d of [beam %s] bear on? write 'end %d = post ID', 'beam ID at LENGTH', 'wall "
                         "plate', 'pocket' or 'hanger'",
                         end + 1, beam->head.id, end + 1);
            if (on->kind == END_POST && !beam->wall_at_end[end].at)
                diag_add(asking->diags, DIAG_Q006, &beam->head.at,
                         "does the wall with the post at end %d of [beam %s] run in line with the beam or across it? "
                         "write 'wall at end %d = in line' or 'across'",
                         end + 1, beam->head.id, end + 1);
        }
    }
}

static void ask_about_inner(const struct asking *asking)
{
    for (size_t i = 0; i < asking->job->beam_count; i++)
        for (size_t k = 0; k < asking->job->beams[i].inner.count; k++) {
            const struct beam_inner *inner = &asking->job->beams[i].inner.item[k];
            if (inner->on.kind == END_POST && inner->way == WAY_UNANSWERED)
                diag_add(asking->diags, DIAG_Q006, &inner->on.at->at,
                         "does the wall with the post at inner support %zu of [beam %s] run in line with the beam or "
                         "across it? write 'inner = %s, wall in line' or ', wall across'",
                         k + 1, asking->job->beams[i].head.id, inner->on.at->value);
        }
}

/* Q009: a floor that never saw the load of a shore.  One joist that runs along under the shore would take it all. */
static void ask_below_shore(const struct asking *asking, const struct shore *shore)
{
    if (!shore->stands_on.at)
        diag_add(asking->diags, DIAG_Q009, &shore->head.at,
                 "what does [shore %s] stand on, and what is below that floor? write 'stands on' in words",
                 shore->head.id);
    if (shore->below.choice == BELOW_JOISTS_PARALLEL && !shore->held_below.at)
        diag_add(
            asking->diags, DIAG_Q009, &shore->below.at->at,
            "[shore %s] runs along between two joists of its floor; what holds these from below? write 'held below "
            "= shore' or 'crib', with 'height below'",
            shore->head.id);
}

/* Q007: a member that carries something is held from its cut until it lands. */
static void ask_who_props(const struct asking *asking)
{
    for (size_t i = 0; i < asking->job->obstruction_count; i++) {
        const struct obstruction *it = &asking->job->obstructions[i];
        if (it->then.choice == THEN_TAKEN_OUT || it->held_by.at || it->own_prop.choice == YES ||
            unreadable(&it->own_prop))
            continue;
        diag_add(
            asking->diags, DIAG_Q007, place_of(it->own_prop.at, &it->head),
            "who holds [obstruction %s] from its cut until it lands? write 'held by = shore ID' or 'own prop = yes'",
            it->head.id);
    }
}

/* Q009: where the load goes below. */
static void ask_what_is_below(const struct asking *asking)
{
    const struct job *job = asking->job;
    static const char form[] = "what does [%s %s] stand on? write 'stands on = block ID', 'footing ID', 'beam ID', "
                               "'wall ID', or in words what you saw";
    for (size_t i = 0; i < job->post_count; i++)
        if (!job->posts[i].stands_on.at && !job->posts[i].stands_on_text.at)
            diag_add(asking->diags, DIAG_Q009, &job->posts[i].head.at, form, "post", job->posts[i].head.id);
    for (size_t i = 0; i < job->block_count; i++)
        if (!job->blocks[i].stands_on.at && !job->blocks[i].stands_on_text.at)
            diag_add(asking->diags, DIAG_Q009, &job->blocks[i].head.at, form, "block", job->blocks[i].head.id);
    for (size_t i = 0; i < job->shore_count; i++)
        ask_below_shore(asking, &job->shores[i]);
}

void questions_ask(struct checker *checker)
{
    const struct asking asking = {.job = checker->job, .diags = checker->diags};
    static void (*const questions[])(const struct asking *) = {
        ask_repair_drawings, ask_what_is_above,  ask_about_ties,    ask_about_flat_ridge,     ask_about_bracing,
        ask_about_snow,      ask_about_own_snow, ask_about_drifts,  ask_about_uplift,         ask_about_ends,
        ask_about_inner,     ask_who_props,      ask_what_is_below, ask_what_takes_its_place,
    };
    for (size_t i = 0; i < sizeof questions / sizeof *questions; i++)
        questions[i](&asking);
    ask_who_holds(checker->job, checker->diags);
    ask_about_unusual(checker->job, checker->diags);
}
