/* Nails of IRC Table R602.3(1), one row a joint.
 *
 * Counts and spacings: IRC 2021 Table R602.3(1) as adopted by Arkansas, and the 2015 and 2018 editions as adopted by
 * Alabama and Colorado; each row read there, the same in all three editions but where it says so.  Diameters and
 * lengths stand in the table itself. */
#include "code_nails.h"

#include <string.h>

/* One nail that the table allows, in thousandths of an inch: so many in a joint, or in a row so many inches apart. */
struct nail_way {
    int diameter, length;
    int count, spacing_in;
};
enum { WAYS_MOST = 5 };
struct joint_row {
    const char *name, *item, *how;
    struct nail_way way[WAYS_MOST]; /* the first that the catalog has is taken */
};

/* 8d common 0.131 x 2-1/2, 10d box 0.128 x 3, gun 0.131 x 3, 16d common 0.162 x 3-1/2, 16d box 0.135 x 3-1/2, 8d box
 * 0.113 x 2-1/2. */
static const struct joint_row rows[JOINT_COUNT] = {
    [JOINT_STUD_PLATE] =
        {"stud to plate",
         "item 17 (16 in 2015 and 2018)",
         "toe nails",
         {{131, 2500, 4, 0}, {128, 3000, 4, 0}, {131, 3000, 4, 0}, {135, 3500, 3, 0}, {113, 2500, 4, 0}}},
    [JOINT_BLOCK_PLATE] = {"block to plate",
                           "item 1",
                           "toe nails",
                           {{131, 2500, 3, 0}, {128, 3000, 3, 0}, {131, 3000, 3, 0}, {113, 2500, 4, 0}}},
    /* 2015 lists the 10d box nail alone */
    [JOINT_BLOCK_JOIST] = {"block to joist",
                           "item 30 (29 in 2018)",
                           "toe nails",
                           {{131, 2500, 2, 0}, {128, 3000, 2, 0}, {131, 3000, 2, 0}}},
    [JOINT_JOIST_PLATE] = {"joist to plate or girder",
                           "item 22 (21 in 2015 and 2018)",
                           "toe nails",
                           {{131, 2500, 3, 0}, {128, 3000, 3, 0}, {131, 3000, 3, 0}, {113, 2500, 4, 0}}},
    [JOINT_STUD_STUD] = {"stud to stud",
                         "item 8",
                         "face nails",
                         {{162, 3500, 0, 24}, {128, 3000, 0, 16}, {131, 3000, 0, 16}}},
    [JOINT_PLATE_PLATE] = {"plate to plate",
                           "item 13 (12 in 2015 and 2018)",
                           "face nails",
                           {{162, 3500, 0, 16}, {128, 3000, 0, 12}, {131, 3000, 0, 12}}},
    /* 2015 and 2018 have the 16d box nail alone, in R602.7.5 */
    [JOINT_KING_HEADER] = {"king stud to header",
                           "item 12",
                           "end nails",
                           {{162, 3500, 3, 0}, {135, 3500, 4, 0}, {128, 3000, 4, 0}, {131, 3000, 4, 0}}},
    [JOINT_HEADER] = {"built-up header", "item 10", "face nails", {{162, 3500, 0, 16}, {135, 3500, 0, 12}}},
};

#define MIL (LENGTH_INCH / 1000)

const struct fastener *joint_fastener(struct counting *counting, const struct text_value *named)
{
    return named->at ? catalog_fastener(counting->catalog, named->text) : NULL;
}

static bool is_way(const struct fastener *nail, const struct nail_way *way)
{
    return way->diameter && nail->diameter == way->diameter * MIL && nail->length == way->length * MIL &&
           strstr(nail->kind, "nail");
}

static const struct fastener *nail_of(const struct catalog *catalog, const struct nail_way *way)
{
    for (size_t i = 0; i < catalog->fastener_count; i++)
        if (is_way(&catalog->fasteners[i], way))
            return &catalog->fasteners[i];
    return NULL;
}

/* The job's own nail where the table has it for this joint, else the first way that the catalog has. */
static const struct nail_way *way_of(struct counting *counting, const struct joint_row *row,
                                     const struct fastener **nail)
{
    *nail = joint_fastener(counting, &counting->job->facts.framing_nail);
    for (size_t i = 0; i < WAYS_MOST && *nail; i++)
        if (is_way(*nail, &row->way[i]))
            return &row->way[i];
    for (size_t i = 0; i < WAYS_MOST && row->way[i].diameter; i++)
        if ((*nail = nail_of(counting->catalog, &row->way[i])) != NULL)
            return &row->way[i];
    return NULL;
}

void count_joint(struct counting *counting, enum joint joint, int64_t places, length_t run, const char *of,
                 struct takeoff_line line)
{
    struct arena *arena = counting->arena;
    const struct joint_row *row = &rows[joint];
    if (places <= 0)
        return;
    const struct fastener *nail = NULL;
    const struct nail_way *way = way_of(counting, row, &nail);
    if (!way) {
        diag_add(counting->diags, DIAG_T002, &line.at,
                 "none of the nails that IRC Table R602.3(1) allows for '%s' is in fasteners.csv: '%s' is not counted",
                 row->name, line.id);
        return;
    }
    int64_t each = way->count ? way->count : run / (way->spacing_in * LENGTH_INCH) + 1;
    const char *apart =
        way->count ? "" : arena_printf(arena, ", %d\" apart along %s", way->spacing_in, length_tape(arena, run));
    line.counted = arena_printf(arena, "%s x %lld %s%s: %s, IRC 2021 Table R602.3(1) %s", of, (long long)each, row->how,
                                apart, row->name, row->item);
    line_add_fasteners(counting, nail->code, places * each, line);
}
