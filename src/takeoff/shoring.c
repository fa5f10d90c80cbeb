/* Shore walls: studs between a bottom and a top plate, brace rows, diagonals; what holds the floor below them. */
#include "sawbill/wide.h"
#include "shore_stock.h"

/* Longer sticks do not go up a stair or round a corner (common practice, no source). */
#define LONGEST_PIECE (12 * LENGTH_FOOT)
/* One diagonal for every such length of shore (common practice, no source). */
#define DIAGONAL_EACH (8 * LENGTH_FOOT)

/* A crib stands for every such length of shore and at its end, of timbers so long (common practice, no source). */
#define CRIB_EACH   (4 * LENGTH_FOOT)
#define CRIB_TIMBER (2 * LENGTH_FOOT)

/* A run along the shore in pieces that go up a stair and meet over a stud: `first` each, and one `last`. */
struct pieces {
    int64_t firsts;
    length_t first, last;
};

static struct pieces pieces_of(length_t length, length_t spacing)
{
    for (int64_t count = (length + LONGEST_PIECE - 1) / LONGEST_PIECE;; count++) {
        length_t step = spacing > 0 && length / count >= spacing ? spacing : LENGTH_INCH / 16;
        length_t first = length / count / step * step;
        length_t last = length - (count - 1) * first;
        if (last <= LONGEST_PIECE)
            return (struct pieces){count - 1, first, last};
    }
}

/* One shore wall: the shore itself, or a second one on the floor below. */
struct wall_of {
    const struct shore_design *design;
    struct shore_stock *stock;
    const char *under; /* before the part in ids: "", or "below/" */
    length_t height;
    bool below;
};

static void add_pieces(struct counting *counting, const struct wall_of *wall, const struct member *member,
                       const char *what, const char *part, int64_t count, length_t each, const char *counted)
{
    struct arena *arena = counting->arena;
    const struct shore_piece piece = {.shore = wall->design->shore,
                                      .part = arena_printf(arena, "%s%s", wall->under, part),
                                      .what = wall->below ? arena_printf(arena, "%s, below", what) : what,
                                      .counted = counted,
                                      .member = member,
                                      .count = count,
                                      .length = each};
    shore_buy(counting, wall->stock, &piece);
}

static void add_runs(struct counting *counting, const struct wall_of *wall, const struct member *member,
                     const char *what, const char *part, int runs, const char *counted)
{
    struct arena *arena = counting->arena;
    const struct shore_design *design = wall->design;
    struct pieces pieces = pieces_of(design->length, design->spacing);
    const char *whole = length_tape(arena, design->length), *last = length_tape(arena, pieces.last);
    if (pieces.firsts == 0) {
        add_pieces(counting, wall, member, what, part, runs, pieces.last,
                   arena_printf(arena, "%s, %s", counted, whole));
        return;
    }
    const char *how = arena_printf(arena, "%s, %s, broken over a stud: %lld x %s and %s each", counted, whole,
                                   (long long)pieces.firsts, length_tape(arena, pieces.first), last);
    add_pieces(counting, wall, member, what, part, pieces.firsts * runs, pieces.first, how);
    add_pieces(counting, wall, member, what, arena_printf(arena, "%s, last", part), runs, pieces.last, how);
}

static const struct member *top_of(const struct shore_design *design)
{
    return design->top_plate ? design->top_plate : design->plate;
}

static const struct member *bottom_of(const struct shore_design *design)
{
    return design->bottom_plate ? design->bottom_plate : design->plate;
}

static void add_plates(struct counting *counting, const struct wall_of *wall)
{
    const struct member *top = top_of(wall->design), *bottom = bottom_of(wall->design);
    if (top == bottom) {
        add_runs(counting, wall, top, "shore plate", "plates", 2, "bottom and top plate");
        return;
    }
    add_runs(counting, wall, top, "shore top plate", "top plate", 1, "top plate");
    add_runs(counting, wall, bottom, "shore bottom plate", "bottom plate", 1, "bottom plate");
}

static void add_studs(struct counting *counting, const struct wall_of *wall, length_t stud)
{
    struct arena *arena = counting->arena;
    const struct shore_design *design = wall->design;
    const struct member *top = top_of(design), *bottom = bottom_of(design);
    const char *plates = top->ply_width == bottom->ply_width
                             ? arena_printf(arena, "two plates of %s", length_tape(arena, top->ply_width))
                             : arena_printf(arena, "plates of %s and %s", length_tape(arena, top->ply_width),
                                            length_tape(arena, bottom->ply_width));
    add_pieces(counting, wall, design->member, "shore stud", "studs", design->studs, stud,
               arena_printf(arena, "%s every %s along %s; height %s less %s",
                            number_of(arena, design->studs, "stud", "studs"), length_tape(arena, design->spacing),
                            length_tape(arena, design->length), length_tape(arena, wall->height), plates));
}

/* Smallest whole number of sixteenths whose square is not below the sum of the two squares. */
static length_t slant(length_t run, length_t rise)
{
    const length_t step = LENGTH_INCH / 16;
    wide_t square = (wide_t)run * run + (wide_t)rise * rise;
    wide_t low = (run > rise ? run : rise) / step, high = (run + rise) / step + 1;
    while (low < high) {
        wide_t middle = (low + high) / 2;
        if (middle * step * middle * step < square)
            low = middle + 1;
        else
            high = middle;
    }
    return (length_t)low * step;
}

static void add_diagonals(struct counting *counting, const struct wall_of *wall)
{
    struct arena *arena = counting->arena;
    const struct shore_design *design = wall->design;
    int64_t count = shore_diagonals(design);
    length_t run = design->length / (count > 0 ? count : 1);
    add_pieces(counting, wall, design->plate, "shore diagonal", "diagonals", count, slant(run, wall->height),
               arena_printf(arena, "one for each 8' of %s: %lld, across %s and up %s",
                            length_tape(arena, design->length), (long long)count, length_tape(arena, run),
                            length_tape(arena, wall->height)));
}

static void note_nothing(struct counting *counting, const struct shore_design *design, const char *why)
{
    const struct head *head = &design->shore->head;
    diag_add(counting->diags, DIAG_T002, &head->at, "'%s' %s: its lumber is not counted",
             head_name(counting->arena, KIND_SHORE, head), why);
}

/* Under a strongback `height` is to what it holds: to its top where that lies on it, to its underside where that hangs
 * from it. */
length_t shore_upright(const struct shore_design *design, bool below)
{
    length_t height = below ? design->shore->height_below.length : design->height;
    length_t bottom = bottom_of(design)->ply_width;
    if (!design->strongback)
        return height - top_of(design)->ply_width - bottom;
    return height - bottom - (design->shore->hung_by.at || below ? 0 : design->strongback->depth);
}

int64_t shore_run_pieces(const struct shore_design *design)
{
    return pieces_of(design->length, design->spacing).firsts + 1;
}

int64_t shore_diagonals(const struct shore_design *design)
{
    return (design->length + DIAGONAL_EACH - 1) / DIAGONAL_EACH;
}

/* Posts on a bottom plate, diagonals; the strongback itself stands on the upper floor alone. */
static void count_strongback(struct counting *counting, const struct wall_of *wall)
{
    struct arena *arena = counting->arena;
    const struct shore_design *design = wall->design;
    int64_t posts = (int64_t)design->shore->supports.count, plies = design->shore->strongback_plies.count;
    length_t post = shore_upright(design, wall->below);
    if (design->length <= 0 || post <= 0) {
        note_nothing(counting, design, wall->below ? "has no length or no height below" : "has no length or no height");
        return;
    }
    if (!wall->below)
        add_pieces(counting, wall, design->strongback, "strongback", "strongback", plies, design->length,
                   arena_printf(arena, "%s of %s", number_of(arena, plies, "ply", "plies"),
                                length_tape(arena, design->length)));
    add_pieces(counting, wall, design->member, "strongback post", "posts", design->studs, post,
               arena_printf(arena, "%s x %s; height %s less %s", number_of(arena, posts, "post", "posts"),
                            number_of(arena, design->studs / posts, "ply", "plies"), length_tape(arena, wall->height),
                            length_tape(arena, wall->height - post)));
    add_runs(counting, wall, bottom_of(design), "shore bottom plate", "bottom plate", 1, "bottom plate");
    add_runs(counting, wall, design->plate, "shore brace row", "brace rows", design->brace_rows,
             number_of(arena, design->brace_rows, "brace row", "brace rows"));
    add_diagonals(counting, wall);
}

/* One strap for each joist of the fields that hang from it. */
static void count_hung(struct counting *counting, const struct shore_design *design)
{
    struct arena *arena = counting->arena;
    const struct head *head = &design->shore->head;
    int64_t joists = 0;
    for (size_t i = 0; i < design->shore->holds.count; i++)
        for (size_t k = 0; k < counting->design->joists_count; k++)
            if (design->shore->holds.item[i].kind == KIND_JOISTS &&
                counting->design->joists[k].joists == &counting->job->joists[design->shore->holds.item[i].index])
                joists += (int64_t)counting->design->joists[k].count;
    if (!design->hung_by || joists == 0)
        return;
    struct takeoff_line line = connector_line(counting, design->hung_by, "strap to the strongback", joists);
    line.id = arena_printf(arena, "shores/%s/straps", head->id);
    line.where = head_name(arena, KIND_SHORE, head);
    line.counted =
        arena_printf(arena, "%s that hang from it: one strap each", number_of(arena, joists, "joist", "joists"));
    line.at = head->at;
    add_connector(counting, design->hung_by, joists, joists == 1 ? "strap" : "straps", line, NULL);
}

/* `post plies` in a stud wall: a post under each thing that comes down in one place. */
static void add_posts(struct counting *counting, const struct wall_of *wall, length_t stud)
{
    struct arena *arena = counting->arena;
    const struct shore_design *design = wall->design;
    int64_t plies = design->shore->post_plies.count;
    if (design->posts > 0)
        add_pieces(counting, wall, design->member, "shore post", "posts", design->posts * plies, stud,
                   arena_printf(arena, "%s in one place x %s",
                                number_of(arena, design->posts, "thing that comes down", "things that come down"),
                                number_of(arena, plies, "ply", "plies")));
}

static void count_wall(struct counting *counting, const struct wall_of *wall)
{
    const struct shore_design *design = wall->design;
    if (design->strongback) {
        count_strongback(counting, wall);
        return;
    }
    length_t stud = shore_upright(design, wall->below);
    if (design->length <= 0 || stud <= 0) {
        note_nothing(counting, design, wall->below ? "has no length or no height below" : "has no length or no height");
        return;
    }
    add_studs(counting, wall, stud);
    add_posts(counting, wall, stud);
    add_plates(counting, wall);
    add_runs(counting, wall, design->plate, "shore brace row", "brace rows", design->brace_rows,
             number_of(counting->arena, design->brace_rows, "brace row", "brace rows"));
    add_diagonals(counting, wall);
}

static void count_crib(struct counting *counting, const struct wall_of *wall)
{
    struct arena *arena = counting->arena;
    const struct shore_design *design = wall->design;
    const struct member *timber = design->crib_timber;
    int64_t cribs = shore_cribs(design), layers = timber ? wall->height / timber->depth : 0;
    if (!timber || layers == 0) {
        note_nothing(counting, design, "has no crib timber, or no height for one layer");
        return;
    }
    add_pieces(counting, wall, timber, "crib timber", "crib timbers", cribs * layers * 2, CRIB_TIMBER,
               arena_printf(arena, "%s, one for each 4' of %s and one more; each %s of 2: %s / %s",
                            number_of(arena, cribs, "crib", "cribs"), length_tape(arena, design->length),
                            number_of(arena, layers, "layer", "layers"), length_tape(arena, wall->height),
                            length_tape(arena, timber->depth)));
}

int64_t shore_cribs(const struct shore_design *design)
{
    if (design->shore->held_below.choice != HELD_BELOW_CRIB || design->length <= 0)
        return 0;
    return (design->length + CRIB_EACH - 1) / CRIB_EACH + 1;
}

/* Over joists that run parallel to it, until the job says otherwise: the dearer way. */
bool shore_stands_twice(const struct shore_design *design)
{
    int held = design->shore->held_below.choice;
    return held == HELD_BELOW_SHORE ||
           (held == HELD_BELOW_UNANSWERED && design->shore->below.choice == BELOW_JOISTS_PARALLEL);
}

static void count_shore(struct counting *counting, const struct shore_design *design, struct shore_stock *stock)
{
    if (!design->member || !design->plate || (design->shore->strongback.at && !design->strongback)) {
        note_nothing(counting, design, "has no stud member");
        return;
    }
    struct wall_of wall = {.design = design, .stock = stock, .under = "", .height = design->height};
    count_wall(counting, &wall);
    count_hung(counting, design);
    wall.height = design->shore->height_below.length;
    if (design->shore->held_below.choice == HELD_BELOW_CRIB)
        count_crib(counting, &wall);
    wall.below = true;
    wall.under = "below/";
    if (shore_stands_twice(design))
        count_wall(counting, &wall);
}

void count_shoring(struct counting *counting)
{
    struct shore_stock stock = {0};
    for (size_t i = 0; i < counting->design->shore_count; i++)
        count_shore(counting, &counting->design->shores[i], &stock);
    shore_jacks_return(counting);
}
