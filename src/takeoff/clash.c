/* Hangers that overlap on one face of a beam: their flanges cannot both lie on the wood. */
#include "counting.h"

/* Flange of a face-mount hanger beside the member that it carries (common practice, no source); never more than the
 * job's 'clear of hangers'. */
static const length_t FLANGE = 5 * LENGTH_INCH / 4;

struct hung {
    length_t at, half;
    const char *what;
};
struct hung_list {
    struct arena *arena;
    struct hung *item;
    size_t count, capacity;
};

static void add_hung(struct hung_list *list, length_t at, length_t width, const char *what)
{
    list->item = arena_more(list->arena, list->item, list->count, &list->capacity, sizeof *list->item);
    list->item[list->count++] = (struct hung){at, width / 2, what};
}

static void add_side(struct counting *counting, struct hung_list *list, const struct joist_design *side)
{
    for (size_t i = 0; i < side->count; i++)
        add_hung(list, side->end[i].at, side->end[i].doubled ? 2 * side->end[i].width : side->end[i].width,
                 arena_printf(list->arena, "joist %s%zu", side_name(side->side), i + 1));
    for (size_t i = 0; i < counting->design->opening_count; i++) {
        const struct opening_design *od = &counting->design->openings[i];
        for (int k = 0; k < 2 && od->side == side && od->trimmer; k++)
            add_hung(list, od->trimmers[k].at, od->opening->trimmer_plies.count * od->trimmer->ply_width,
                     arena_printf(list->arena, "trimmer %d of %s", k + 1,
                                  head_name(list->arena, KIND_OPENING, &od->opening->head)));
    }
}

static length_t between(const struct hung *a, const struct hung *b)
{
    return a->at > b->at ? a->at - b->at : b->at - a->at;
}

static length_t room_for(const struct beam *beam, const struct hung *a, const struct hung *b)
{
    length_t clear = beam->clear_of_hangers.length;
    return a->half + b->half + 2 * (clear < FLANGE ? clear : FLANGE);
}

static void say_clash(struct counting *counting, const struct beam *beam, int face, const struct hung *a,
                      const struct hung *b)
{
    struct arena *arena = counting->arena;
    diag_add(counting->diags, DIAG_T010, &beam->head.at,
             "on face %s of '%s' the hangers of %s at %s and %s at %s overlap: %s between their middles, %s wanted; "
             "move one, hang both as one ('new beside', 'doubled at'), or take hangers with narrower flanges and say "
             "so in 'clear of hangers'",
             side_name(face), head_name(arena, KIND_BEAM, &beam->head), a->what, length_tape(arena, a->at), b->what,
             length_tape(arena, b->at), length_tape(arena, between(a, b)), length_tape(arena, room_for(beam, a, b)));
}

static void say_of_face(struct counting *counting, const struct beam *beam, int face, const struct hung_list *list)
{
    for (size_t i = 0; i < list->count; i++)
        for (size_t k = i + 1; k < list->count; k++)
            if (between(&list->item[i], &list->item[k]) < room_for(beam, &list->item[i], &list->item[k]))
                say_clash(counting, beam, face, &list->item[i], &list->item[k]);
}

static const struct hung *clash_with(const struct beam *beam, const struct hung_list *list, const struct hung *hung)
{
    for (size_t i = 0; i < list->count; i++)
        if (between(&list->item[i], hung) < room_for(beam, &list->item[i], hung))
            return &list->item[i];
    return NULL;
}

/* The job does not say on which face a beam hangs: it clashes where neither face has room. */
static void say_of_hung_beam(struct counting *counting, const struct beam *beam, const struct hung_list faces[2],
                             const struct beam_design *hung_beam, int end)
{
    struct hung hung = {.at = hung_beam->beam->end_[end].at_length,
                        .half = hung_beam->width / 2,
                        .what = head_name(counting->arena, KIND_BEAM, &hung_beam->beam->head)};
    const struct hung *other = clash_with(beam, &faces[0], &hung);
    if (other && clash_with(beam, &faces[1], &hung))
        say_clash(counting, beam, 0, other, &hung);
}

static void say_of_beam(struct counting *counting, const struct beam_design *design)
{
    struct hung_list faces[2] = {{.arena = counting->arena}, {.arena = counting->arena}};
    for (int face = 0; face < 2; face++)
        if (hangs_joists(design->beam) && design->side[face]) {
            add_side(counting, &faces[face], design->side[face]);
            say_of_face(counting, design->beam, face, &faces[face]);
        }
    for (size_t i = 0; i < counting->design->beam_count; i++) {
        const struct beam_design *hung = &counting->design->beams[i];
        for (int end = 0; end < 2; end++)
            if (hung->beam->end_[end].kind == END_BEAM &&
                &counting->job->beams[hung->beam->end_[end].ref.index] == design->beam)
                say_of_hung_beam(counting, design->beam, faces, hung, end);
    }
}

void say_clashes(struct counting *counting)
{
    for (size_t i = 0; i < counting->design->beam_count; i++)
        if (is_new_beam(counting->design->beams[i].beam))
            say_of_beam(counting, &counting->design->beams[i]);
}
