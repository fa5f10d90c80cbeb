/* Whether a beam or its plies go in: the way through the house, and up between the supports. */
#include "raising.h"

#include <math.h>

/* A right-angled corner, and the thickness of what turns it. */
struct corner {
    double a, b, thick;
};

static double reach_at(const struct corner *corner, double angle)
{
    double s = sin(angle), c = cos(angle);
    return corner->a / s + corner->b / c - corner->thick / (s * c);
}

double way_round_corner(double a, double b, double thick)
{
    const struct corner corner = {a, b, thick};
    if (a <= thick || b <= thick)
        return 0;
    double low = 1e-9, high = acos(0) - 1e-9;
    for (int i = 0; i < 200; i++) {
        double left = low + (high - low) / 3, right = high - (high - low) / 3;
        if (reach_at(&corner, left) < reach_at(&corner, right))
            high = right;
        else
            low = left;
    }
    return reach_at(&corner, (low + high) / 2);
}

double way_head_room(double length, double depth, double clear)
{
    if (length <= clear)
        return 0;
    /* The width over all first grows with the tilt (the depth tips in), then falls to `depth` upright. */
    double low = atan2(depth, length), high = acos(0);
    for (int i = 0; i < 200; i++) {
        double middle = (low + high) / 2;
        if (length * cos(middle) + depth * sin(middle) > clear)
            low = middle;
        else
            high = middle;
    }
    return length * sin(high) + depth * cos(high);
}

static void add(struct counting *counting, struct raising *raising, struct way_in way)
{
    way.goes = !way.known || way.needs_in <= way.has_in + 1e-9;
    raising->way = arena_more(counting->arena, raising->way, raising->way_count, &raising->way_capacity, sizeof way);
    raising->way[raising->way_count++] = way;
}

static const char *tape(struct counting *counting, double inches)
{
    return length_tape(counting->arena, length_from_inches(inches));
}

static void add_passage(struct counting *counting, struct raising *raising, const char *what, double has_in,
                        const char *how)
{
    add(counting, raising,
        (struct way_in){.what = what,
                        .needs_in = length_inches(longest_ply_piece(raising->design)),
                        .has_in = has_in,
                        .known = has_in >= 0,
                        .how = how});
}

/* Plies are carried in one by one, level and on edge, even where the beam is raised whole. */
static void through_the_house(struct counting *counting, struct raising *raising)
{
    const struct job_facts *facts = &counting->job->facts;
    const char *length = length_tape(counting->arena, longest_ply_piece(raising->design));
    if (facts->longest_in.at)
        add_passage(counting, raising, "way into the house", length_inches(facts->longest_in.length),
                    arena_printf(counting->arena, "a ply is %s long, the longest piece that goes in %s", length,
                                 length_tape(counting->arena, facts->longest_in.length)));
    if (facts->corner.count == 2) {
        double thick = length_inches(raising->design->member->ply_width);
        const length_t *width = facts->corner.item;
        double has = way_round_corner(length_inches(width[0]), length_inches(width[1]), thick);
        add_passage(counting, raising, "turn the corner", has,
                    arena_printf(counting->arena,
                                 "a ply is %s long; a piece %s thick turns from %s into %s level up to %s", length,
                                 tape(counting, thick), length_tape(counting->arena, width[0]),
                                 length_tape(counting->arena, width[1]), tape(counting, has)));
    }
    if (!facts->longest_in.at && facts->corner.count != 2)
        add_passage(
            counting, raising, "way into the house", -1,
            arena_printf(counting->arena, "a ply is %s long: try the way in with a pole ('longest piece in')", length));
}

/* An end that lies on a plate or in a pocket has house beyond its face; a post is set under the raised beam, and a
 * hanger holds it between the faces. */
static bool closed_beyond(const struct beam *beam, int end)
{
    return beam->end_[end].kind == END_PLATE || beam->end_[end].kind == END_POCKET;
}

/* What swings up in one piece: its length, the opening between faces, and which of its ends lie beyond them.  A piece
 * that ends at a splice lies on the middle of a post or plate there, and the next one comes after it. */
struct swing {
    double length, clear;
    bool closed[2];
};

/* Of a closed end, what lies past the face of its support. */
static double beyond_face(const struct beam_design *design, const struct swing *swing, int end)
{
    return swing->closed[end] ? length_inches(design->bearing[end] + design->beam->overhang[end].length) : 0;
}

static struct swing swing_of(const struct beam_design *design, size_t piece)
{
    const struct beam *beam = design->beam;
    bool last = piece + 1 == beam_pieces(design);
    struct swing swing = {.length = length_inches(beam_piece(design, piece)),
                          .closed = {piece == 0 && closed_beyond(beam, 0), last && closed_beyond(beam, 1)}};
    if (beam_pieces(design) == 1)
        swing.clear = length_inches(beam->clear_span.length);
    else
        swing.clear = swing.length - beyond_face(design, &swing, 0) - beyond_face(design, &swing, 1);
    return swing;
}

/* One end goes into its place first and the other swings up past its face: there the piece is as long as its diagonal.
 * By as much as that is longer than the opening the first end must go past the face of its support. */
static void slide_in(struct counting *counting, struct raising *raising, const struct swing *swing)
{
    const struct beam *beam = raising->design->beam;
    const struct length_value *room = beam->room_beyond;
    const double longer = hypot(swing->length, length_inches(raising->design->member->depth)) - swing->clear;
    double has = 0;
    bool known = true, open = false;
    for (int end = 0; end < 2; end++) {
        bool whole = beam_pieces(raising->design) == 1;
        open = open || (whole && !swing->closed[end] && beam->end_[end].kind == END_POST);
        if (swing->closed[end]) {
            known = known && room[end].at;
            has = fmax(has, length_inches(room[end].length));
        }
    }
    if (open)
        return;
    known = known || has >= longer - 1e-9;
    const char *then = known ? arena_printf(counting->arena, "there is room for %s", tape(counting, has))
                             : "measure the room there ('room beyond 1', 'room beyond 2')";
    add(counting, raising,
        (struct way_in){.what = "swing into its place",
                        .needs_in = longer,
                        .has_in = has,
                        .known = known,
                        .how = arena_printf(counting->arena,
                                            "its diagonal is %s longer than the opening: one end must go that far past "
                                            "the face of its support before the other clears; %s",
                                            tape(counting, longer), then)});
}

static void tilt_in(struct counting *counting, struct raising *raising, double clear)
{
    const struct beam_design *design = raising->design;
    const struct length_value *head_room = &design->beam->head_room;
    double needs = way_head_room(length_inches(design->cut_length), length_inches(design->member->depth), clear);
    const char *then =
        head_room->at ? arena_printf(counting->arena, "there is %s", length_tape(counting->arena, head_room->length))
                      : "measure from the floor to the top of the opening ('head room')";
    add(counting, raising,
        (struct way_in){.what = "head room to tilt it",
                        .needs_in = needs,
                        .has_in = length_inches(head_room->length),
                        .known = head_room->at != NULL,
                        .how = arena_printf(counting->arena, "tilted in between the faces it stands %s high; %s",
                                            tape(counting, needs), then)});
}

void way_in_add(struct counting *counting, struct raising *raising)
{
    const struct beam_design *design = raising->design;
    const double clear = length_inches(design->beam->clear_span.length);
    through_the_house(counting, raising);
    if (length_inches(design->cut_length) <= clear)
        return;
    for (size_t i = 0; i < beam_pieces(design); i++) {
        const struct swing swing = swing_of(design, i);
        if (swing.closed[0] || swing.closed[1])
            slide_in(counting, raising, &swing);
        if (swing.closed[0] && swing.closed[1])
            tilt_in(counting, raising, clear);
    }
}
