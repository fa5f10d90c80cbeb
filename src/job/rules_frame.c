/* Rules across keys of what bends and weighs: area, roof, joists, beam, load. */
#include "rules.h"

static void area_roof_needs_snow(const struct ruling *ruling)
{
    const struct area *area = ruling->element;
    if (area->live_is.choice == LIVE_ROOF && !area->snow.at)
        rule_broken(ruling, NULL, "%s is a roof and needs 'snow'; write 'snow = 0 psf' where none falls", ruling->name);
}

static bool ridge_board(const struct job *job)
{
    return job->has_roof && job->roof.frame.choice == FRAME_RIDGE_BOARD;
}

/* A tie's force comes from the roof's pitch, span and loads. */
static void roof_tie_needs_shape(const struct ruling *ruling)
{
    const struct roof *roof = ruling->element;
    const struct joists *tied = NULL;
    for (size_t i = 0; i < ruling->job->joists_count && !tied; i++)
        if (ruling->job->joists[i].ties_the_roof.choice == YES && ruling->job->joists[i].tie_strap.at)
            tied = &ruling->job->joists[i];
    if (!tied || !ridge_board(ruling->job))
        return;
    const struct {
        const char *key;
        const struct entry *at;
    } needs[] = {{"pitch", roof->pitch.at}, {"span", roof->span.at}, {"area", roof->area.at}};
    for (size_t i = 0; i < 3; i++)
        if (!needs[i].at)
            rule_broken(ruling, NULL, "[roof] needs '%s': the tie of [joists %s] is computed from it", needs[i].key,
                        tied->head.id);
}

static void roof_flat_has_no_tie(const struct ruling *ruling)
{
    const struct roof *roof = ruling->element;
    if (ridge_board(ruling->job) && roof->pitch.at && roof->pitch.run > 0 && roof->pitch.rise <= 0)
        rule_broken(ruling, roof->pitch.at, "a roof with a ridge board cannot be flat; the rafters lean on each other");
}

static void roof_ridge_within(const struct ruling *ruling)
{
    const struct roof *roof = ruling->element;
    struct arena *arena = ruling->checker->arena;
    if (roof->ridge_at.at && !roof->span.at)
        rule_broken(ruling, roof->ridge_at.at,
                    "'ridge at' needs 'span': the width of the house between its eave walls");
    else if (roof->ridge_at.at && roof->ridge_at.length >= roof->span.length)
        rule_broken(ruling, roof->ridge_at.at, "'ridge at' of [roof], %s, is not within its 'span', %s",
                    length_tape(arena, roof->ridge_at.length), length_tape(arena, roof->span.length));
}

static void roof_braces_need_beam(const struct ruling *ruling)
{
    const struct roof *roof = ruling->element;
    if (roof->braces.count && !roof->braces_on.at)
        rule_broken(ruling, roof->braces.at, "'braces' needs 'braces on': the beam that takes the wall's place");
    if (roof->braces.count && !roof->area.at)
        rule_broken(ruling, roof->braces.at, "'braces' needs 'area': the loads that the braces bring down");
}

/* Factors that turn ground snow into roof snow. */
static void roof_snow_factors(const struct ruling *ruling)
{
    const struct roof *roof = ruling->element;
    const struct {
        const char *key;
        const struct entry *at;
    } factors[] = {{"exposure factor", roof->exposure.at},
                   {"thermal factor", roof->thermal.at},
                   {"importance factor", roof->importance.at}};
    bool on_ground = false, strength = false;
    for (size_t i = 0; i < ruling->job->area_count; i++) {
        const struct area *area = &ruling->job->areas[i];
        on_ground |= area->snow_is.choice == SNOW_ON_GROUND || (area->snow.at && !area->snow_is.at);
        strength |= area->snow_level.choice == LEVEL_STRENGTH;
    }
    for (size_t i = 0; i < 3; i++)
        if (factors[i].at && !on_ground)
            rule_broken(ruling, factors[i].at,
                        "'%s' turns snow on the ground into snow on the roof, and no area has 'snow is = on the "
                        "ground'; take it out",
                        factors[i].key);
    if (roof->importance.at && on_ground && strength)
        rule_broken(ruling, roof->importance.at,
                    "'importance factor' does not go with 'snow level = strength': the map of ASCE 7-22 holds it "
                    "already");
}

static void roof_drift_words(const struct ruling *ruling)
{
    const struct roof *roof = ruling->element;
    if (roof->snow_drifts.choice == NO && roof->snow_engineer.at)
        rule_broken(ruling, roof->snow_engineer.at, "[roof] has a 'snow engineer', but 'snow drifts = no'");
}

static void area_strength_by_7_16(const struct ruling *ruling)
{
    const struct area *area = ruling->element;
    const struct choice_value *by = &ruling->job->facts.loads_by;
    if (area->snow_level.choice == LEVEL_STRENGTH && by->at && by->choice == LOADS_ASCE_7_16)
        rule_broken(ruling, area->snow_level.at,
                    "%s has snow at strength level, which ASCE 7-16 does not know; write 'loads by = ASCE 7-22' in "
                    "[job], or 'snow level = allowable'",
                    ruling->name);
}

static void joists_places(const struct ruling *ruling)
{
    const struct joists *joists = ruling->element;
    if (joists->at.at && joists->first_joist.at)
        rule_broken(ruling, joists->at.at, "%s has 'at' and 'first joist'; keep the one that was measured",
                    ruling->name);
    else if (!joists->at.at && !joists->first_joist.at)
        rule_broken(ruling, NULL,
                    "%s does not say where its joists are; write 'first joist' with 'spacing', or 'at' with a list",
                    ruling->name);
}

static void joists_need_spacing(const struct ruling *ruling)
{
    const struct joists *joists = ruling->element;
    if (!joists->spacing.at)
        rule_broken(ruling, joists->first_joist.at ? joists->first_joist.at : joists->at.at,
                    "%s needs 'spacing': where the next joist stands, and the width that each carries", ruling->name);
}

static void joists_need_size(const struct ruling *ruling)
{
    const struct joists *joists = ruling->element;
    if (!joists->size.at && !(joists->measured_depth.at && joists->measured_width.at))
        rule_broken(ruling, NULL, "%s needs 'size', or 'measured depth' and 'measured width': hangers must fit",
                    ruling->name);
}

static void joists_stretch(const struct ruling *ruling)
{
    const struct joists *joists = ruling->element;
    judge_stretch(ruling, &joists->from, &joists->to);
}

static void joists_tie_words(const struct ruling *ruling)
{
    const struct joists *joists = ruling->element;
    if (joists->ties_the_roof.choice == NO && joists->tie_strap.at)
        rule_broken(ruling, joists->tie_strap.at, "%s has a 'tie strap', but 'ties the roof = no'", ruling->name);
}

static void beam_member_or_choose(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    bool choose = beam->choose.choice == YES;
    if (choose && (beam->member.at || beam->plies.at))
        rule_broken(ruling, beam->member.at ? beam->member.at : beam->plies.at,
                    "%s has 'choose = yes' and a member; keep one of them", ruling->name);
    else if (choose && beam->status.choice == NE_EXISTING)
        rule_broken(ruling, beam->choose.at, "%s is existing: write its 'member' and 'plies', nothing is chosen",
                    ruling->name);
    else if (choose && beam->specified_by.at)
        rule_broken(ruling, beam->choose.at, "%s is specified by an engineer: write his 'member' and 'plies'",
                    ruling->name);
}

static void beam_needs_member(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    if (beam->choose.choice == YES)
        return;
    if (!beam->member.at)
        rule_broken(ruling, NULL, "%s needs 'member' and 'plies', or 'choose = yes'", ruling->name);
    else if (!beam->plies.at)
        rule_broken(ruling, NULL, "%s needs 'plies' beside 'member'; write 'plies = 1' for one piece", ruling->name);
}

static void beam_needs_fasteners(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    bool built_up = beam->choose.choice == YES || beam->plies.count > 1;
    if (beam->status.choice == NE_NEW && built_up && !beam->ply_fasteners.at)
        rule_broken(ruling, NULL, "%s needs 'ply fasteners': the catalog code of what holds its plies together",
                    ruling->name);
}

/* Ends on a plate or in a pocket have no post or hanger that would give the length. */
static void beam_needs_bearing(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    for (int end = 0; end < 2; end++) {
        enum end_kind kind = beam->end_[end].kind;
        if ((kind == END_PLATE || kind == END_POCKET) && !beam->bearing[end].at)
            rule_broken(ruling, beam->end_[end].at, "'end %d' on a %s needs 'bearing %d': its length on the support",
                        end + 1, kind == END_PLATE ? "wall plate" : "pocket", end + 1);
    }
}

static void beam_upset_height(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    if (beam->set.choice == SET_UPSET && !beam->above_joists_by.at)
        rule_broken(ruling, beam->set.at, "'set = upset' needs 'above joists by': how far its top stands above them");
}

static void beam_not_upset(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    if (beam->set.choice != SET_UPSET && beam->above_joists_by.at)
        rule_broken(ruling, beam->above_joists_by.at, "%s has 'above joists by', but is not 'set = upset'",
                    ruling->name);
}

static void beam_only_upset(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    const struct entry *only[2] = {beam->kickers_every.at, beam->kickers_of.at}, *nail = beam->top_hanger_nail.at;
    if (beam->set.choice == SET_DROPPED && nail)
        rule_broken(ruling, nail, "%s has '%s', but nothing hangs on the face of a dropped beam", ruling->name,
                    nail->key);
    for (size_t i = 0; beam->set.choice != SET_UPSET && i < 2; i++)
        if (only[i])
            rule_broken(ruling, only[i], "%s has '%s', but is not 'set = upset'", ruling->name, only[i]->key);
}

static void joists_new(const struct ruling *ruling)
{
    const struct joists *joists = ruling->element;
    const struct entry *at = joists->new_at.at ? joists->new_at.at : joists->new_beside.at;
    if (at && !joists->new_of.at)
        rule_broken(ruling, at, "'%s' of %s needs 'new of': the catalog code of the new wood", at->key_as,
                    ruling->name);
    if (joists->new_of.at && !at)
        rule_broken(ruling, joists->new_of.at, "'new of' of %s needs 'new at' or 'new beside': where the new joists go",
                    ruling->name);
    if (joists->new_engineer.at && !at)
        rule_broken(ruling, joists->new_engineer.at, "'new engineer' of %s needs 'new at' or 'new beside'",
                    ruling->name);
}

static void beam_blocks(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    const struct entry *only[2] = {beam->blocks_every.at, beam->blocks_long.at};
    for (size_t i = 0; i < 2 && !beam->blocks_of.at; i++)
        if (only[i])
            rule_broken(ruling, only[i], "'%s' of %s needs 'blocks of': the catalog code of the blocks",
                        only[i]->key_as, ruling->name);
}

static void beam_kickers(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    if (beam->kickers_every.at && !beam->kickers_of.at)
        rule_broken(ruling, beam->kickers_every.at,
                    "'kickers every' needs 'kickers of': the catalog code of their wood");
    if (beam->kickers_of.at && !beam->kickers_every.at)
        rule_broken(ruling, beam->kickers_of.at, "'kickers of' needs 'kickers every': how far they are apart");
}

static void beam_held(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    for (int end = 0; end < 2; end++) {
        const struct entry *how = beam->held[end].at, *of = beam->held_of[end].at;
        if (how && !of)
            rule_broken(ruling, how, "'held %d' needs 'held %d of': the catalog code of what holds it", end + 1,
                        end + 1);
        if (of && !how)
            rule_broken(ruling, of, "'held %d of' needs 'held %d': blocks, straps or king studs", end + 1, end + 1);
        if (beam->held[end].choice == HELD_KING_STUDS && beam->end_[end].kind != END_POST)
            rule_broken(ruling, how, "'held %d = king studs' needs 'end %d' on a post: they stand beside it", end + 1,
                        end + 1);
    }
}

static void beam_off_center(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    for (int end = 0; end < 2; end++)
        if (beam->off_center[end].at && beam->end_[end].kind != END_POST)
            rule_broken(ruling, beam->off_center[end].at, "'off center %d' needs 'end %d' on a post", end + 1, end + 1);
}

static void beam_roof_cut(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    if (beam->roof_cut_pitch.at && !beam->roof_cut_heel.at)
        rule_broken(ruling, beam->roof_cut_pitch.at, "'roof cut pitch' needs 'roof cut heel': the height left");
    if (beam->roof_cut_heel.at && !beam->roof_cut_pitch.at)
        rule_broken(ruling, beam->roof_cut_heel.at, "'roof cut heel' needs 'roof cut pitch': the slope of the cut");
}

static void beam_notch(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    for (int end = 0; end < 2; end++) {
        if (beam->notch_length[end].at && !beam->notch[end].at)
            rule_broken(ruling, beam->notch_length[end].at, "'notch %d length' needs 'notch %d': its depth", end + 1,
                        end + 1);
        bool roof = beam->roof_cut_pitch.at && beam->roof_cut_at.choice != (end ? END_ONE : END_TWO);
        if (beam->notch[end].at && roof)
            rule_broken(ruling, beam->notch[end].at, "end %d has a notch and the roof cut: an engineer must size both",
                        end + 1);
    }
}

static void beam_specified(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    if (beam->specified_by.at && !beam->specified_span.at)
        rule_broken(ruling, beam->specified_by.at,
                    "'specified by' needs 'specified span': his beam is his only for the span that he drew");
    if (beam->specified_by.at && !beam->sheet.at)
        rule_broken(ruling, beam->specified_by.at, "'specified by' needs 'sheet': where he drew it");
}

/* More than 1 in of difference is no longer the beam that he drew (common practice). */
static void beam_span_as_specified(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    struct arena *arena = ruling->checker->arena;
    if (!beam->specified_span.at || !beam->clear_span.at)
        return;
    length_t difference = beam->specified_span.length - beam->clear_span.length;
    if (difference >= -LENGTH_INCH && difference <= LENGTH_INCH)
        return;
    rule_broken(
        ruling, beam->specified_span.at,
        "%s was specified for a clear span of %s, but %s is measured; ask the engineer, and write his new sheet",
        ruling->name, length_tape(arena, beam->specified_span.length), length_tape(arena, beam->clear_span.length));
}

/* What he drew is his: without his name it says nothing. */
static void beam_drawn_by(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    const struct beam_drawn *drawn = &beam->drawn;
    enum { KEYS = 12 };
    const struct entry *const keys[KEYS] = {drawn->dead.at,  drawn->live.at,        drawn->roof_live.at,
                                            drawn->snow.at,  drawn->reaction[0].at, drawn->reaction[1].at,
                                            drawn->size.at,  drawn->species.at,     drawn->grade.at,
                                            drawn->plies.at, drawn->wall.at,        drawn->date.at};
    for (size_t i = 0; i < KEYS && !beam->specified_by.at; i++)
        if (keys[i])
            rule_broken(ruling, keys[i], "'%s' needs 'specified by': whose it is", keys[i]->key_as);
}

static void beam_wall_as_specified(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    const struct ref_value *ref = &beam->drawn.wall;
    if (!ref_found(ref) || !beam->specified_by.at)
        return;
    const struct wall *wall = &ruling->job->walls[ref->index];
    if (wall->status.choice != WALL_COMES_OUT || !ref_found(&wall->under) ||
        &ruling->job->beams[wall->under.index] != beam)
        rule_broken(ruling, ref->at,
                    "%s was specified in the place of [wall %s], but that wall does not come out under it; ask the "
                    "engineer, and write his new sheet",
                    ruling->name, wall->head.id);
}

/* A foot beyond the clear span is on no bearing of the trade any more. */
static void beam_hangs_within(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    struct arena *arena = ruling->checker->arena;
    for (int end = 0; end < 2; end++) {
        const struct beam_end *at = &beam->end_[end];
        if (at->kind != END_BEAM || !ref_found(&at->ref))
            continue;
        const struct beam *carrier = &ruling->job->beams[at->ref.index];
        if (carrier->clear_span.at && at->at_length > farthest_place(carrier))
            rule_broken(ruling, at->at, "'end %d' stands at %s, but [beam %s] is only %s long", end + 1,
                        length_tape(arena, at->at_length), carrier->head.id,
                        length_tape(arena, carrier->clear_span.length));
    }
}

static bool listed_above(const struct beam *beam, enum kind kind, size_t index)
{
    for (size_t i = 0; i < beam->above.count; i++)
        if (beam->above.item[i].kind == kind && beam->above.item[i].index == index)
            return true;
    return false;
}

/* `above` is the whole answer: what it names stands on this beam, and what stands on it is named. */
static void beam_above_agrees(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    const struct job *job = ruling->job;
    size_t self = (size_t)(beam - job->beams);
    if (!beam->above.at)
        return;
    for (size_t i = 0; i < job->load_count; i++) {
        bool here = ref_found(&job->loads[i].on) && job->loads[i].on.index == self;
        if (here != listed_above(beam, KIND_LOAD, i))
            rule_broken(ruling, beam->above.at,
                        here ? "[load %s] is on %s, but 'above' does not name it"
                             : "'above' names load %s, but that load is not on %s",
                        job->loads[i].head.id, ruling->name);
    }
    for (size_t i = 0; i < job->wall_count; i++) {
        bool here = ref_found(&job->walls[i].on) && job->walls[i].on.index == self;
        if (here != listed_above(beam, KIND_WALL, i))
            rule_broken(ruling, beam->above.at,
                        here ? "[wall %s] is on %s, but 'above' does not name it"
                             : "'above' names wall %s, but that wall is not on %s",
                        job->walls[i].head.id, ruling->name);
    }
}

static void load_place(const struct ruling *ruling)
{
    const struct load *load = ruling->element;
    bool spread = load->from.at || load->to.at;
    if (load->at.at && spread)
        rule_broken(ruling, load->at.at, "%s has 'at' and 'from' or 'to'; a load stands in one point or is spread",
                    ruling->name);
}

static void load_needs_place(const struct ruling *ruling)
{
    const struct load *load = ruling->element;
    if (!load->at.at && !load->from.at && !load->to.at)
        rule_broken(ruling, NULL, "%s needs 'at', or 'from' and 'to': its place on the beam", ruling->name);
    else if (!load->at.at && !(load->from.at && load->to.at))
        rule_broken(ruling, load->from.at ? load->from.at : load->to.at, "%s needs 'from' and 'to', both",
                    ruling->name);
}

static void load_stretch(const struct ruling *ruling)
{
    const struct load *load = ruling->element;
    judge_stretch(ruling, &load->from, &load->to);
}

static void load_one_source(const struct ruling *ruling)
{
    const struct load *load = ruling->element;
    const struct entry *own = load->dead.at   ? load->dead.at
                              : load->live.at ? load->live.at
                              : load->snow.at ? load->snow.at
                                              : load->net_uplift.at;
    if (own && (load->area.at || load->carries.at))
        rule_broken(ruling, own, "%s has loads of its own and an 'area'; keep one of them", ruling->name);
}

static void load_needs_source(const struct ruling *ruling)
{
    const struct load *load = ruling->element;
    bool own = load->dead.at || load->live.at || load->snow.at;
    if (!own && !load->area.at && !load->carries.at)
        rule_broken(ruling, NULL, "%s weighs nothing; write 'dead', 'live', 'snow', or 'area' with 'carries'",
                    ruling->name);
    else if (!own && !(load->area.at && load->carries.at))
        rule_broken(ruling, load->area.at ? load->area.at : load->carries.at, "%s needs 'area' and 'carries', both",
                    ruling->name);
}

static void judge_dimension(const struct ruling *ruling, const char *key, const struct quantity_value *value)
{
    const struct load *load = ruling->element;
    enum dimension want = load->at.at ? DIM_FORCE : DIM_LINE;
    enum dimension have = unit_dimension(value->quantity.unit);
    if (value->at && have != DIM_NONE && have != want)
        rule_broken(ruling, value->at, "'%s' for '%s' is %s; a load with %s takes %s", value->at->value, key,
                    dimension_name(have), load->at.at ? "'at'" : "'from' and 'to'", load->at.at ? "lb" : "plf");
}

static void load_dimensions(const struct ruling *ruling)
{
    const struct load *load = ruling->element;
    if (!load->at.at && !load->from.at)
        return;
    judge_dimension(ruling, "dead", &load->dead);
    judge_dimension(ruling, "live", &load->live);
    judge_dimension(ruling, "snow", &load->snow);
    judge_dimension(ruling, "net uplift", &load->net_uplift);
}

static const struct rule rules[] = {
    {KIND_AREA, DIAG_K004, area_roof_needs_snow},
    {KIND_AREA, DIAG_K013, area_strength_by_7_16},
    {KIND_ROOF, DIAG_K017, roof_tie_needs_shape},
    {KIND_ROOF, DIAG_K013, roof_flat_has_no_tie},
    {KIND_ROOF, DIAG_K013, roof_ridge_within},
    {KIND_ROOF, DIAG_K017, roof_braces_need_beam},
    {KIND_ROOF, DIAG_K013, roof_snow_factors},
    {KIND_ROOF, DIAG_K013, roof_drift_words},
    {KIND_JOISTS, DIAG_K013, joists_places},
    {KIND_JOISTS, DIAG_K017, joists_need_spacing},
    {KIND_JOISTS, DIAG_K004, joists_need_size},
    {KIND_JOISTS, DIAG_K013, joists_stretch},
    {KIND_JOISTS, DIAG_K013, joists_tie_words},
    {KIND_JOISTS, DIAG_K017, joists_new},
    {KIND_BEAM, DIAG_K013, beam_member_or_choose},
    {KIND_BEAM, DIAG_K004, beam_needs_member},
    {KIND_BEAM, DIAG_K017, beam_needs_fasteners},
    {KIND_BEAM, DIAG_K017, beam_needs_bearing},
    {KIND_BEAM, DIAG_K017, beam_upset_height},
    {KIND_BEAM, DIAG_K013, beam_not_upset},
    {KIND_BEAM, DIAG_K013, beam_only_upset},
    {KIND_BEAM, DIAG_K017, beam_kickers},
    {KIND_BEAM, DIAG_K017, beam_blocks},
    {KIND_BEAM, DIAG_K017, beam_held},
    {KIND_BEAM, DIAG_K017, beam_off_center},
    {KIND_BEAM, DIAG_K017, beam_roof_cut},
    {KIND_BEAM, DIAG_K017, beam_notch},
    {KIND_BEAM, DIAG_K017, beam_specified},
    {KIND_BEAM, DIAG_Q008, beam_span_as_specified},
    {KIND_BEAM, DIAG_K017, beam_drawn_by},
    {KIND_BEAM, DIAG_Q008, beam_wall_as_specified},
    {KIND_BEAM, DIAG_K009, beam_hangs_within},
    {KIND_BEAM, DIAG_K013, beam_above_agrees},
    {KIND_LOAD, DIAG_K013, load_place},
    {KIND_LOAD, DIAG_K004, load_needs_place},
    {KIND_LOAD, DIAG_K013, load_stretch},
    {KIND_LOAD, DIAG_K013, load_one_source},
    {KIND_LOAD, DIAG_K004, load_needs_source},
    {KIND_LOAD, DIAG_K008, load_dimensions},
};
const struct rules rules_of_frame = {rules, sizeof rules / sizeof *rules};
