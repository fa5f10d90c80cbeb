/* Where fasteners go along the plies of a beam: rows that keep clear of what sits on its faces.  Pure.
 *
 * Marks are whole sixteenths of an inch from end 1.  A zone is open: a mark may lie on its edge. */
#ifndef SAWBILL_LAYOUT_H
#define SAWBILL_LAYOUT_H

#include <stdbool.h>
#include <stddef.h>

#include "sawbill/arena.h"
#include "sawbill/length.h"

#define LAYOUT_STEP (LENGTH_INCH / 16)
enum { LAYOUT_ROWS = 6 };

struct layout_zone {
    length_t from, to;
    const char *what; /* "joist A3" */
};
struct layout_zones {
    struct layout_zone *item;
    size_t count, capacity;
};
struct layout_marks {
    length_t *at; /* ascending */
    size_t count;
};
/* One row: no mark nearer to an end than `reserve`; neighbors at most `most` apart and, where nothing forces them
 * nearer, at least `least`; first and last no farther from the ends than the greater of reserve and most. */
struct layout_row {
    length_t length, reserve[2], most, least;
    const struct layout_zones *zones;
};

bool layout_clear(const struct layout_zones *zones, length_t at);
/* Every rule above holds (of `least`: nothing is asked). */
bool layout_good(const struct layout_row *row, const struct layout_marks *marks);
/* Marks at start, start + spacing, ... as far as the other end's reserve. */
bool layout_even_good(const struct layout_row *row, length_t spacing, length_t start);
struct layout_marks layout_even_marks(struct arena *arena, const struct layout_row *row, length_t spacing,
                                      length_t start);
/* The good row with the fewest marks at least `least` apart; of several the most even one, and (where `shy` is given)
 * the one that keeps farther from those marks, up to `shy_by`.  false: there is none. */
bool layout_fewest(struct arena *arena, const struct layout_row *row, const struct layout_marks *shy, length_t shy_by,
                   struct layout_marks *out);
/* The same row on both faces, whose fasteners meet in the wood: a mark of one keeps `least` from those of the other.
 * Length, reserve, most and least of the two are the same. */
struct layout_pair {
    struct layout_row row[2];          /* [face] */
    const struct layout_marks *shy[2]; /* as of layout_fewest(); NULL: none */
    length_t shy_by;
    const struct layout_marks
        *known; /* [face] a pair with the fewest marks, found with other rows to be shy of; or NULL */
};
/* The pair of good rows with the fewest marks together; of several, those with fewer on face A.  false: there is none.
 */
bool layout_fewest_pair(struct arena *arena, const struct layout_pair *pair, struct layout_marks out[2]);
/* Where no row is good: the fewest marks with each stretch that no two may span bridged from edge to edge, `least` not
 * kept.  *gap: the first such stretch; from = to = 0 where every stretch can be spanned and only `least` was in the
 * way.
 */
struct layout_marks layout_bridged(struct arena *arena, const struct layout_row *row, struct layout_zone *gap);

/* A beam's pattern: rows 2, 4, ... stand `stagger` off rows 1, 3, ... */
struct layout_pattern {
    length_t length, reserve[2], most, least, stagger;
    int rows, faces;             /* at most LAYOUT_ROWS; 1: face A alone */
    bool meet;                   /* fasteners of the two faces meet in the wood: in a row they keep `least` */
    struct layout_zones zone[2]; /* for fasteners driven from face A, from face B */
};
enum layout_kept { LAYOUT_EVEN, LAYOUT_FEWEST, LAYOUT_BROKEN };
struct layout {
    enum layout_kept kept;
    length_t spacing; /* LAYOUT_EVEN */
    int rows, faces;
    struct layout_marks row[2][LAYOUT_ROWS]; /* [face][row] */
    struct layout_zone gap;                  /* LAYOUT_BROKEN: as of layout_bridged(), on face `gap_face` */
    int gap_face;
};
/* The largest even spacing in whole inches that every row of every face keeps; else the fewest marks, row by row (of
 * both faces together where they meet); else bridged.  At an even spacing every row starts between reserve[0] and one
 * spacing more.  Rows 1, 3 of face A start as early as they can, rows 2, 4 as near as they can to the stagger (in
 * proportion to the spacing), rows of face B as near as they can to midway between the marks of face A; nearness is
 * taken round the spacing, of two the earlier. */
struct layout layout_find(struct arena *arena, const struct layout_pattern *pattern);
size_t layout_count(const struct layout *layout, int face);

#endif
