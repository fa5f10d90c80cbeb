/* Shore walls: studs between a bottom and a top plate, brace rows, diagonals. */
#include "counting.h"
#include "sawbill/wide.h"

/* Longer sticks do not go up a stair or round a corner (common practice, no source). */
#define LONGEST_PIECE (12 * LENGTH_FOOT)
/* One diagonal for every such length of shore (common practice, no source). */
#define DIAGONAL_EACH (8 * LENGTH_FOOT)

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

static void add_pieces(struct counting *counting, const struct shore_design *design, const char *what, const char *id,
                       int64_t count, length_t each, const char *counted)
{
    struct arena *arena = counting->arena;
    const struct head *head = &design->shore->head;
    line_add_pieces(counting, design->plate, count, each,
                    (struct takeoff_line){.id = arena_printf(arena, "shores/%s/%s", head->id, id),
                                          .what = what,
                                          .where = head_name(arena, KIND_SHORE, head),
                                          .counted = counted,
                                          .at = head->at});
}

static void add_runs(struct counting *counting, const struct shore_design *design, const char *what, const char *id,
                     int runs, const char *counted)
{
    struct arena *arena = counting->arena;
    struct pieces pieces = pieces_of(design->length, design->spacing);
    const char *whole = length_tape(arena, design->length), *last = length_tape(arena, pieces.last);
    if (pieces.firsts == 0) {
        add_pieces(counting, design, what, id, runs, pieces.last, arena_printf(arena, "%s, %s", counted, whole));
        return;
    }
    const char *how = arena_printf(arena, "%s, %s, broken over a stud: %lld x %s and %s each", counted, whole,
                                   (long long)pieces.firsts, length_tape(arena, pieces.first), last);
    add_pieces(counting, design, what, id, pieces.firsts * runs, pieces.first, how);
    add_pieces(counting, design, what, arena_printf(arena, "%s, last", id), runs, pieces.last, how);
}

static void add_studs(struct counting *counting, const struct shore_design *design, length_t stud)
{
    struct arena *arena = counting->arena;
    const struct head *head = &design->shore->head;
    line_add_pieces(
        counting, design->member, design->studs, stud,
        (struct takeoff_line){
            .id = arena_printf(arena, "shores/%s/studs", head->id),
            .what = "shore stud",
            .where = head_name(arena, KIND_SHORE, head),
            .counted = arena_printf(arena, "%s every %s along %s; height %s less two plates of %s",
                                    number_of(arena, design->studs, "stud", "studs"),
                                    length_tape(arena, design->spacing), length_tape(arena, design->length),
                                    length_tape(arena, design->height), length_tape(arena, design->plate->ply_width)),
            .at = head->at});
}

/* Smallest whole number of sixteenths whose square is not below the sum of the two squares. */
static length_t slant(length_t run, length_t rise)
{
    const length_t step = LENGTH_INCH / 16;
    wide_t a = (run + step - 1) / step, b = (rise + step - 1) / step, square = a * a + b * b;
    wide_t low = a > b ? a : b, high = a + b;
    while (low < high) {
        wide_t middle = (low + high) / 2;
        if (middle * middle < square)
            low = middle + 1;
        else
            high = middle;
    }
    return (length_t)low * step;
}

static void add_diagonals(struct counting *counting, const struct shore_design *design)
{
    struct arena *arena = counting->arena;
    const struct head *head = &design->shore->head;
    int64_t count = (design->length + DIAGONAL_EACH - 1) / DIAGONAL_EACH;
    length_t run = design->length / (count > 0 ? count : 1), length = slant(run, design->height);
    line_add_pieces(
        counting, design->plate, count, length,
        (struct takeoff_line){.id = arena_printf(arena, "shores/%s/diagonals", head->id),
                              .what = "shore diagonal",
                              .where = head_name(arena, KIND_SHORE, head),
                              .counted = arena_printf(arena, "one for each 8' of %s: %lld, across %s and up %s",
                                                      length_tape(arena, design->length), (long long)count,
                                                      length_tape(arena, run), length_tape(arena, design->height)),
                              .at = head->at});
}

static void count_shore(struct counting *counting, const struct shore_design *design)
{
    const struct head *head = &design->shore->head;
    const char *name = head_name(counting->arena, KIND_SHORE, head);
    if (!design->member || !design->plate) {
        diag_add(counting->diags, DIAG_T002, &head->at, "'%s' has no stud member: its lumber is not counted", name);
        return;
    }
    length_t stud = design->height - 2 * design->plate->ply_width;
    if (design->length <= 0 || stud <= 0) {
        diag_add(counting->diags, DIAG_T002, &head->at, "'%s' has no length or no height: its lumber is not counted",
                 name);
        return;
    }
    add_studs(counting, design, stud);
    add_runs(counting, design, "shore plate", "plates", 2, "bottom and top plate");
    add_runs(counting, design, "shore brace row", "brace rows", design->brace_rows,
             number_of(counting->arena, design->brace_rows, "brace row", "brace rows"));
    add_diagonals(counting, design);
}

void count_shoring(struct counting *counting)
{
    for (size_t i = 0; i < counting->design->shore_count; i++)
        count_shore(counting, &counting->design->shores[i]);
}
