/* The load stack of a beam: everything on it, by source, each thing once. */
#include "size.h"

#include <math.h>

const struct area *area_of(const struct job *job, const struct ref_value *ref)
{
    return ref->at && ref->kind == KIND_AREA && ref->index < job->area_count ? &job->areas[ref->index] : NULL;
}

static enum load_source source_of(const struct area *area)
{
    switch ((enum live_kind)area->live_is.choice) {
    case LIVE_ROOF:
        return LOAD_ROOF_LIVE;
    case LIVE_ATTIC_NO_STORAGE:
        return LOAD_ATTIC;
    default:
        return LOAD_LIVE;
    }
}

struct loads area_psf(const struct sizing *s, const struct area *area)
{
    struct loads psf = {0};
    if (!area)
        return psf;
    psf.of[LOAD_DEAD] = quantity_value(area->dead.quantity);
    psf.of[source_of(area)] = quantity_value(area->live.quantity);
    psf.of[LOAD_SNOW] = snow_psf(s, area);
    psf.of[LOAD_UPLIFT] = quantity_value(area->net_uplift.quantity);
    return psf;
}

static struct placed *stack_add(struct sizing *s, struct stack *stack, const char *from)
{
    stack->item = arena_more(s->arena, stack->item, stack->count, &stack->capacity, sizeof *stack->item);
    struct placed *placed = &stack->item[stack->count++];
    *placed = (struct placed){.from = from};
    return placed;
}

static void add_line(struct sizing *s, struct stack *stack, const char *from, double from_in, double to_in,
                     struct loads plf)
{
    if (to_in > from_in && (loads_sum(plf) != 0 || plf.of[LOAD_UPLIFT] != 0))
        stack_add(s, stack, from)->load =
            (struct beam_load){.from_in = from_in, .to_in = to_in, .amount = loads_times(plf, 1.0 / 12)};
}

static void add_point(struct sizing *s, struct stack *stack, const char *from, double at_in, struct loads lb)
{
    stack_add(s, stack, from)->load = (struct beam_load){.point = true, .from_in = at_in, .to_in = at_in, .amount = lb};
}

static double inches_or(const struct length_value *value, double otherwise)
{
    return value->at ? length_inches(value->length) : otherwise;
}

/* Its trimmers, and the joists between the beam and its near header. */
static void add_opening(struct sizing *s, size_t beam, const struct opening_design *od, const char *joists)
{
    const struct opening *opening = od->opening;
    const struct opening_header *near = &od->headers[0];
    if (near->is)
        add_line(s, &s->stack[beam], joists, length_inches(opening->from.length), length_inches(opening->to.length),
                 loads_times(area_psf(s, area_of(s->job, &od->side->joists->area)), near->tail_ft / 2));
    for (int k = 0; k < 2; k++)
        add_point(s, &s->stack[beam], trimmer_name(s, od, k), length_inches(od->trimmers[k].at),
                  od->trimmers[k].beam_lb);
}

static void add_joists(struct sizing *s, size_t beam, const struct joist_design *jd)
{
    length_t end = s->design->beams[beam].cut_length;
    const struct joists *joists = jd->joists;
    length_t from = joists->from.at ? joists->from.length : 0, to = joists->to.at ? joists->to.length : end;
    const char *name = head_name(s->arena, KIND_JOISTS, &joists->head);
    size_t first = s->stack[beam].count;
    to = to < end ? to : end;
    while (from < to) { /* where an opening is, its trimmers stand in for the joists */
        const struct opening_design *od = opening_after(s, jd, from);
        length_t until = od && od->zone[0] < to ? od->zone[0] : to;
        add_line(s, &s->stack[beam], name, length_inches(from), length_inches(until), jd->line_plf);
        if (until < to)
            add_opening(s, beam, od, name);
        from = until < to ? od->zone[1] : to;
    }
    for (size_t i = first; i < s->stack[beam].count; i++)
        s->stack[beam].item[i].hung = jd;
}

/* Pounds, or pounds a foot, of a load as written; or of the area that it carries. */
static struct loads load_amount(const struct sizing *s, const struct load *load)
{
    const struct area *area = area_of(s->job, &load->area);
    if (load->carries.at && area)
        return loads_times(area_psf(s, area), quantity_value(load->carries.quantity));
    struct loads amount = {0};
    bool roof = area && area->live_is.choice == LIVE_ROOF;
    amount.of[LOAD_DEAD] = quantity_value(load->dead.quantity);
    amount.of[roof ? LOAD_ROOF_LIVE : LOAD_LIVE] = quantity_value(load->live.quantity);
    amount.of[LOAD_SNOW] = quantity_value(load->snow.quantity) * own_snow_factor(s, &load->snow_level);
    amount.of[LOAD_UPLIFT] = quantity_value(load->net_uplift.quantity);
    return amount;
}

/* Pounds a foot at `to` of a load that grows or falls along the beam. */
static struct loads load_at_to(const struct sizing *s, const struct load *load)
{
    const struct load other = {.area = load->area,
                               .snow_level = load->snow_level,
                               .net_uplift = load->net_uplift,
                               .dead = {.quantity = load->dead_to.at ? load->dead_to.quantity : load->dead.quantity},
                               .live = {.quantity = load->live_to.at ? load->live_to.quantity : load->live.quantity},
                               .snow = {.quantity = load->snow_to.at ? load->snow_to.quantity : load->snow.quantity}};
    return load_amount(s, &other);
}

static void add_taper(struct sizing *s, size_t beam, const struct load *load, double from_in, double to_in)
{
    struct beam_load line = {.tapers = true, .from_in = from_in, .to_in = to_in};
    line.amount = loads_times(load_amount(s, load), 1.0 / 12);
    line.amount_to = loads_times(load_at_to(s, load), 1.0 / 12);
    if (to_in > from_in && loads_sum(line.amount) + loads_sum(line.amount_to) != 0)
        stack_add(s, &s->stack[beam], head_name(s->arena, KIND_LOAD, &load->head))->load = line;
}

static void add_load(struct sizing *s, size_t beam, const struct load *load)
{
    struct stack *stack = &s->stack[beam];
    const char *name = head_name(s->arena, KIND_LOAD, &load->head);
    struct loads amount = load_amount(s, load);
    if (load->at.at) {
        add_point(s, stack, name, length_inches(load->at.length), amount);
        return;
    }
    double from = inches_or(&load->from, 0);
    double to = inches_or(&load->to, length_inches(s->design->beams[beam].cut_length));
    if (load->dead_to.at || load->live_to.at || load->snow_to.at) {
        add_taper(s, beam, load, from, to);
        return;
    }
    if (load->carries.at && to > from)
        amount = loads_times(amount, 12 / (to - from)); /* lb of the area spread over the length: plf */
    add_line(s, stack, name, from, to, amount);
}

static void add_wall(struct sizing *s, size_t beam, const struct wall *wall)
{
    double end = length_inches(s->design->beams[beam].cut_length), from = inches_or(&wall->from, 0);
    double to = inches_or(&wall->to, wall->length.at ? from + length_inches(wall->length.length) : end);
    struct loads plf = {{quantity_value(wall->weight.quantity) * length_feet(wall->height.length), 0, 0, 0}};
    /* a wall longer than the beam stands on what is beside it, too */
    add_line(s, &s->stack[beam], head_name(s->arena, KIND_WALL, &wall->head), fmax(from, 0), fmin(to, end), plf);
}

struct loads obstruction_lb(const struct sizing *s, const struct obstruction *it)
{
    const struct load load = {.area = it->area,
                              .dead = it->dead,
                              .live = it->live,
                              .snow = it->snow,
                              .carries = it->carries,
                              .snow_level = it->snow_level,
                              .net_uplift = it->net_uplift};
    return load_amount(s, &load);
}

static void add_obstructions(struct sizing *s, size_t beam)
{
    for (size_t i = 0; i < s->job->obstruction_count; i++) {
        const struct obstruction *it = &s->job->obstructions[i];
        if (it->then.choice == THEN_LANDS && it->on.at && it->on.index == beam)
            add_point(s, &s->stack[beam], head_name(s->arena, KIND_OBSTRUCTION, &it->head),
                      length_inches(it->at.length), obstruction_lb(s, it));
    }
}

static void add_braces(struct sizing *s, size_t beam)
{
    const struct roof *roof = &s->job->roof;
    if (!s->job->has_roof || !roof->braces_on.at || roof->braces_on.index != beam)
        return;
    struct loads psf = area_psf(s, area_of(s->job, &roof->area));
    for (size_t i = 0; i < roof->braces.count; i++) {
        double at = length_inches(roof->braces.item[i].at);
        add_point(s, &s->stack[beam], arena_printf(s->arena, "roof brace %zu", i + 1), at,
                  loads_times(psf, roof->braces.item[i].sqft));
    }
}

static bool above_names(const struct beam *beam, enum kind kind, size_t index)
{
    for (size_t i = 0; i < beam->above.count; i++)
        if (beam->above.item[i].kind == kind && beam->above.item[i].index == index)
            return true;
    return false;
}

/* What comes out weighs nothing on the beam that takes its place. */
static bool is_out(const struct wall *wall)
{
    return wall->status.choice == WALL_COMES_OUT;
}

static bool stands_on(const struct ref_value *on, const struct beam *beam, size_t index, enum kind kind, size_t which)
{
    if (on->at)
        return on->kind == KIND_BEAM && on->index == index;
    return above_names(beam, kind, which);
}

/* Beams that hang on this one were sized before it: their reactions are known. */
static void add_hung_beams(struct sizing *s, size_t beam)
{
    for (size_t i = 0; i < s->job->beam_count; i++)
        for (int end = 0; end < 2; end++) {
            const struct beam_end *at = &s->job->beams[i].end_[end];
            if (at->kind != END_BEAM || at->ref.index != beam)
                continue;
            const char *name =
                arena_printf(s->arena, "%s, end %d", head_name(s->arena, KIND_BEAM, &s->job->beams[i].head), end + 1);
            add_point(s, &s->stack[beam], name, length_inches(at->at_length), s->design->beams[i].end_lb[end]);
        }
}

void stack_fill(struct sizing *s, size_t index)
{
    const struct beam_design *bd = &s->design->beams[index];
    s->stack[index].count = 0;
    for (int side = 0; side < 2; side++)
        if (bd->side[side])
            add_joists(s, index, bd->side[side]);
    for (size_t i = 0; i < s->job->load_count; i++)
        if (stands_on(&s->job->loads[i].on, bd->beam, index, KIND_LOAD, i))
            add_load(s, index, &s->job->loads[i]);
    for (size_t i = 0; i < s->job->wall_count; i++)
        if (!is_out(&s->job->walls[i]) && stands_on(&s->job->walls[i].on, bd->beam, index, KIND_WALL, i))
            add_wall(s, index, &s->job->walls[i]);
    add_braces(s, index);
    add_obstructions(s, index);
    add_hung_beams(s, index);
    struct loads own = {{bd->weight_plf, 0, 0, 0}};
    add_line(s, &s->stack[index],
             arena_printf(s->arena, "own weight of %s", head_name(s->arena, KIND_BEAM, &bd->beam->head)), 0,
             length_inches(bd->cut_length), own);
}

static void fault_beyond(struct sizing *s, const struct beam_design *bd, const char *what, length_t at,
                         const struct place *place)
{
    if (at < 0 || at > bd->cut_length)
        diag_add(s->diags, DIAG_S001, place, "%s at %s lies beyond the ends of %s, which is %s long", what,
                 length_tape(s->arena, at), head_name(s->arena, KIND_BEAM, &bd->beam->head),
                 length_tape(s->arena, bd->cut_length));
}

static void fault_written(struct sizing *s, const struct beam_design *bd, const char *what,
                          const struct length_value *value)
{
    if (value->at)
        fault_beyond(s, bd, what, value->length, &value->at->at);
}

static void check_load_places(struct sizing *s, size_t index, const struct beam_design *bd)
{
    for (size_t i = 0; i < s->job->load_count; i++) {
        const struct load *load = &s->job->loads[i];
        if (!stands_on(&load->on, bd->beam, index, KIND_LOAD, i))
            continue;
        const char *name = head_name(s->arena, KIND_LOAD, &load->head);
        fault_written(s, bd, name, &load->at);
        fault_written(s, bd, name, &load->from);
        fault_written(s, bd, name, &load->to);
    }
}

/* A joist that is said to be doubled, or to get a new one at its side, must be one of those that hang here. */
static void fault_doubled(struct sizing *s, const struct joist_design *jd, const struct lengths_value *doubled)
{
    for (size_t i = 0; i < doubled->count; i++) {
        bool found = false;
        for (size_t k = 0; k < jd->count; k++)
            found |= jd->place[k] == doubled->item[i];
        const struct opening_design *od = opening_after(s, jd, doubled->item[i]);
        found |= od && od->zone[0] <= doubled->item[i]; /* a trimmer: it has its own hanger */
        if (!found)
            diag_add(s->diags, DIAG_S001, place_of(doubled->at, &jd->joists->head),
                     "'%s' %s is not the center of a joist of %s on %s", doubled->at->key_as,
                     length_tape(s->arena, doubled->item[i]), head_name(s->arena, KIND_JOISTS, &jd->joists->head),
                     head_name(s->arena, KIND_BEAM, &jd->beam->head));
    }
}

static void check_joist_places(struct sizing *s, const struct beam_design *bd)
{
    for (int side = 0; side < 2; side++) {
        if (!bd->side[side])
            continue;
        const struct joists *joists = bd->side[side]->joists;
        const char *name = head_name(s->arena, KIND_JOISTS, &joists->head);
        fault_written(s, bd, name, &joists->from);
        fault_written(s, bd, name, &joists->to);
        fault_doubled(s, bd->side[side], &joists->doubled_at);
        fault_doubled(s, bd->side[side], &joists->new_beside);
        for (size_t i = 0; i < joists->new_at.count; i++)
            fault_beyond(s, bd, name, joists->new_at.item[i], place_of(joists->new_at.at, &joists->head));
        joists_new_fault(s, bd->side[side]);
        openings_fault(s, bd->side[side]);
        for (size_t i = 0; i < joists->at.count; i++)
            fault_beyond(s, bd, name, joists->at.item[i], place_of(joists->at.at, &joists->head));
    }
}

void stack_check(struct sizing *s, size_t index)
{
    const struct beam_design *bd = &s->design->beams[index];
    check_joist_places(s, bd);
    check_load_places(s, index, bd);
    for (size_t i = 0; i < s->job->obstruction_count; i++)
        if (s->job->obstructions[i].on.at && s->job->obstructions[i].on.index == index)
            fault_written(s, bd, head_name(s->arena, KIND_OBSTRUCTION, &s->job->obstructions[i].head),
                          &s->job->obstructions[i].at);
    const struct roof *roof = &s->job->roof;
    if (s->job->has_roof && roof->braces_on.at && roof->braces_on.index == index)
        for (size_t i = 0; i < roof->braces.count; i++)
            fault_beyond(s, bd, arena_printf(s->arena, "roof brace %zu", i + 1), roof->braces.item[i].at,
                         place_of(roof->braces.at, &roof->head));
    for (size_t i = 0; i < s->job->beam_count; i++)
        for (int end = 0; end < 2; end++) {
            const struct beam_end *at = &s->job->beams[i].end_[end];
            if (at->kind == END_BEAM && at->ref.index == index)
                fault_beyond(s, bd, head_name(s->arena, KIND_BEAM, &s->job->beams[i].head), at->at_length,
                             place_of(at->at, &s->job->beams[i].head));
        }
}
