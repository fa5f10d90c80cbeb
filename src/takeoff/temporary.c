/* Screws of what comes apart again: shores, and a beam that waits for its hangers.  All counts of a joint here are
 * common practice without a source; along plates one for every 16 in, as IRC Table R602.3(1) item 15 nails a bottom
 * plate. */
#include "code_nails.h"
#include "sawbill/text.h"

enum { EACH_JOINT = 2, TWO_ENDS = 2, TWO_EDGES = 2 };
#define LEAST_SCREW (3 * LENGTH_INCH) /* through two plates */
#define PLATE_EACH  (16 * LENGTH_INCH)
#define STITCH_EACH (12 * LENGTH_INCH) /* as the plies of posts */

/* The job's own, else the shortest that does, or NULL. */
static const struct fastener *screw_of(struct counting *counting)
{
    const struct catalog *catalog = counting->catalog;
    const struct fastener *best = joint_fastener(counting, &counting->job->facts.shore_screw);
    if (best)
        return best;
    for (size_t i = 0; i < catalog->fastener_count; i++) {
        const struct fastener *screw = &catalog->fasteners[i];
        if (name_same(screw->kind, "screw") && screw->length >= LEAST_SCREW && (!best || screw->length < best->length))
            best = screw;
    }
    return best;
}

/* One shore, or a second one below it. */
struct put_together {
    struct counting *counting;
    const struct shore_design *design;
    const struct fastener *screw;
    bool below;
};

static void add(const struct put_together *shore, const char *part, int64_t count, const char *how)
{
    struct counting *counting = shore->counting;
    struct arena *arena = counting->arena;
    const struct head *head = &shore->design->shore->head;
    line_add_fasteners(
        counting, shore->screw->code, count,
        (struct takeoff_line){.id = arena_printf(arena, "shores/%s/%s%s", head->id, shore->below ? "below/" : "", part),
                              .where = head_name(arena, KIND_SHORE, head),
                              .counted = arena_printf(arena, "%s; common practice", how),
                              .at = head->at});
}

static int64_t along(length_t length, length_t each)
{
    return length / each + 1;
}

static void add_posts(const struct put_together *shore, int64_t posts, int64_t plies)
{
    struct arena *arena = shore->counting->arena;
    length_t upright = shore_upright(shore->design, shore->below);
    int64_t stitches = along(upright, STITCH_EACH);
    if (posts <= 0 || plies <= 0)
        return;
    add(shore, "posts/screws", posts * plies * TWO_ENDS * EACH_JOINT,
        arena_printf(arena, "%s x 2 ends x 2", number_of(arena, posts * plies, "ply of a post", "plies of posts")));
    add(shore, "posts/ply screws", posts * (plies - 1) * stitches,
        arena_printf(arena, "%s x %s x %lld, 12\" apart along %s", number_of(arena, posts, "post", "posts"),
                     number_of(arena, plies - 1, "ply joint", "ply joints"), (long long)stitches,
                     length_tape(arena, upright)));
}

/* Up into the joists, down into the floor.  Nothing goes into a slab. */
static void add_plates(const struct put_together *shore)
{
    struct arena *arena = shore->counting->arena;
    const struct shore_design *design = shore->design;
    bool top = design->strongback ? !shore->below && !design->shore->hung_by.at : true;
    bool bottom = shore->below || design->shore->below.choice != BELOW_SLAB;
    const char *which = top && bottom ? "top into joists, bottom into the floor"
                        : top         ? "top into joists"
                                      : "bottom into the floor";
    int64_t runs = top + bottom, each = along(design->length, PLATE_EACH);
    add(shore, "plates/screws", runs * each,
        arena_printf(arena, "%s: %lld x %lld, 16\" apart along %s", which, (long long)runs, (long long)each,
                     length_tape(arena, design->length)));
}

static void add_braces(const struct put_together *shore)
{
    struct arena *arena = shore->counting->arena;
    const struct shore_design *design = shore->design;
    int64_t uprights = design->strongback ? (int64_t)design->shore->supports.count : design->studs;
    int64_t breaks = shore_run_pieces(design) - 1, diagonals = shore_diagonals(design);
    add(shore, "brace rows/screws", design->brace_rows * (uprights + breaks) * EACH_JOINT,
        arena_printf(arena, "%s x (%s + %s) x 2", number_of(arena, design->brace_rows, "row", "rows"),
                     number_of(arena, uprights, "upright", "uprights"), number_of(arena, breaks, "break", "breaks")));
    bool crosses = !design->strongback && design->spacing > 0;
    int64_t at = crosses ? along(design->length / diagonals, design->spacing) : TWO_ENDS;
    add(shore, "diagonals/screws", diagonals * at * EACH_JOINT,
        arena_printf(arena, "%s x %s x 2", number_of(arena, diagonals, "diagonal", "diagonals"),
                     crosses ? number_of(arena, at, "stud that it crosses", "studs that it crosses") : "2 ends"));
}

static void add_strongback(const struct put_together *shore)
{
    struct arena *arena = shore->counting->arena;
    const struct shore_design *design = shore->design;
    int64_t joints = design->shore->strongback_plies.count - 1, each = along(design->length, PLATE_EACH);
    if (shore->below || joints < 1)
        return;
    add(shore, "strongback/screws", joints * TWO_EDGES * each,
        arena_printf(arena, "%s x 2 edges x %lld, 16\" apart along %s",
                     number_of(arena, joints, "ply joint", "ply joints"), (long long)each,
                     length_tape(arena, design->length)));
}

static void count_wall(const struct put_together *shore)
{
    struct arena *arena = shore->counting->arena;
    const struct shore_design *design = shore->design;
    int64_t supports = (int64_t)design->shore->supports.count;
    if (design->length <= 0 || shore_upright(design, shore->below) <= 0)
        return; /* its lumber is not counted, and that is said */
    if (design->strongback) {
        add_strongback(shore);
        add_posts(shore, supports, supports > 0 ? design->studs / supports : 0);
    } else {
        add(shore, "studs/screws", (int64_t)design->studs * TWO_ENDS * EACH_JOINT,
            arena_printf(arena, "%s x 2 ends x 2", number_of(arena, design->studs, "stud", "studs")));
        add_posts(shore, design->posts, design->shore->post_plies.count);
    }
    add_plates(shore);
    add_braces(shore);
}

/* A dropped beam waits for no hangers. */
static void count_held_beam(struct counting *counting, const struct beam_design *design, const struct fastener *screw)
{
    struct arena *arena = counting->arena;
    const struct head *head = &design->beam->head;
    bool whole = design->beam->raised.choice == RAISED_WHOLE;
    int64_t pieces = whole ? 1 : design->plies * (int64_t)beam_pieces(design);
    if (!hangs_joists(design->beam) || !design->member || design->plies < 1)
        return;
    line_add_fasteners(
        counting, screw->code, pieces * TWO_ENDS * EACH_JOINT,
        (struct takeoff_line){
            .id = arena_printf(arena, "holding/%s/screws", head->id),
            .where = head_name(arena, KIND_BEAM, head),
            .counted = arena_printf(arena, "%s x 2 ends x 2, until its hangers are on; common practice",
                                    whole ? "raised whole: 1" : number_of(arena, pieces, "ply raised", "plies raised")),
            .at = head->at});
}

void count_temporary(struct counting *counting)
{
    const struct design *design = counting->design;
    const struct fastener *screw = screw_of(counting);
    if (!screw) {
        diag_add(counting->diags, DIAG_T002, &counting->job->facts.head.at,
                 "fasteners.csv has no 'screw' of 3 in or more: those that hold shores and beams for a while are not "
                 "counted");
        return;
    }
    for (size_t i = 0; i < design->shore_count; i++) {
        struct put_together shore = {counting, &design->shores[i], screw, false};
        if (!shore.design->member || !shore.design->plate ||
            (shore.design->shore->strongback.at && !shore.design->strongback))
            continue;
        count_wall(&shore);
        shore.below = true;
        if (shore_stands_twice(shore.design))
            count_wall(&shore);
    }
    for (size_t i = 0; i < design->beam_count; i++)
        count_held_beam(counting, &design->beams[i], screw);
}
