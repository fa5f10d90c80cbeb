/* The takeoff: everything bought, cut and done, each line saying how it was counted.  Pure. */
#ifndef SAWBILL_TAKEOFF_H
#define SAWBILL_TAKEOFF_H

#include "sawbill/catalog.h"
#include "sawbill/design.h"
#include "sawbill/job.h"
#include "sawbill/layout.h"

enum line_is { LINE_PIECES, LINE_ITEM, LINE_LABOR, LINE_BUY, LINE_SUB };

struct takeoff_line {
    const char *id;           /* "hangers/parlor/A": says what it is, never a running number */
    const char *what, *where; /* "joist hanger", "beam B1, side A" */
    decimal_t count;
    const char *unit;    /* "each", "hours", "sq ft" */
    const char *counted; /* "11 joists, side A: 11 hangers" */
    enum line_is is;
    enum cost_class class;
    const char *item;            /* LINE_ITEM: prices.csv item; LINE_PIECES: member code */
    const struct member *member; /* LINE_PIECES */
    length_t length;             /* LINE_PIECES: of each piece, finished */
    const struct task *task;     /* LINE_LABOR from labor.csv; count is in the task's `per` */
    const struct trade *trade;   /* LINE_LABOR of [work]; count is hours */
    money_t price;               /* LINE_BUY without item, LINE_SUB: the job's own price of one */
    percent_t own_markup;
    bool has_own_markup;
    bool loss;        /* nails and screws: the bid's fastener loss is bought beyond the count */
    decimal_t pounds; /* of nails and screws, net; 0: their count per lb is not known */
    const char
        *cost_code;   /* of what counts it, else of the task, else of the item's first price row that has one; "" */
    struct place at;  /* of the section or catalog row that it comes from */
    decimal_t factor; /* LINE_LABOR: of its conditions, on the hours of each; 0: none, the same as 1 */
    int in_work;      /* LINE_LABOR: its place in the order of work; equal ones stay as they are counted */
};
/* What comes back when the shores are down: own lumber for the next job, jack posts to the rental. */
struct takeoff_return {
    const char *what;
    const struct member *member; /* NULL: rented */
    length_t length;
    int64_t count;
    const char *from; /* "shore A, shore B" */
};
/* What a shore is built of, whether its lumber is bought or comes from an earlier one. */
struct shore_part {
    const struct shore *shore;
    const char *what, *counted; /* "shore stud"; "11 studs every .." */
    const struct member *member;
    int64_t count;
    length_t length;
};
/* What comes out of one sort: cubic feet of it loose, pounds. */
struct takeoff_debris {
    const struct debris_row *row;
    decimal_t count, cuft, pounds;
};
/* What one load takes, loose cubic feet and pounds: of a run, or of a dumpster where the job says so. */
decimal_t load_holds(const struct job *job);
decimal_t load_carries(const struct job *job);
/* A line of forgotten.csv and how this job answers it. */
enum forgotten_state { FORGOTTEN_BLANK, FORGOTTEN_PRICED, FORGOTTEN_ZERO, FORGOTTEN_EXCLUDED };
struct takeoff_forgotten {
    const struct forgotten *row;
    enum forgotten_state state;
    const char *by, *why; /* the takeoff line that prices it; the job's reason; "" for none */
};
/* Whether a beam or its plies go in: one measure that the way offers against what the wood needs. */
struct way_in {
    const char *what; /* "turn the corner" */
    double needs_in, has_in;
    bool known, goes; /* known: `has` was measured */
    const char *how;
};
/* Raising one new beam. */
struct raising {
    const struct beam_design *design;
    double ply_lb, beam_lb;     /* ply: its longest piece where it is spliced */
    bool whole;                 /* raised in one piece; else ply by ply */
    double lifted_lb, share_lb; /* the heaviest lift, and what one person takes of it */
    int people, crew;           /* needed, and of the job's `hands` */
    bool needs_lift;            /* more people than the crew has: a material lift is counted */
    bool shrinkage_known;
    double shrinkage_in; /* of its depth, from the moisture it is sold at to that of a heated house */
    struct way_in *way;
    size_t way_count, way_capacity;
};
/* Fasteners along the plies of one new beam, or of one piece of a spliced one. */
struct ply_layout {
    const struct beam_design *design;
    length_t start;                /* of the piece, from end 1 of the beam; marks and zones run from there */
    struct layout_pattern pattern; /* as the job gives it, with its zones */
    struct layout layout;          /* as it is driven */
};
/* Joists of one side where they are cut for a beam. */
struct cut_side {
    const struct joist_design *design; /* its `end` says the rest of each joist */
    length_t clearance;                /* cut end to the face of the beam */
    length_t cut_line, guide_line;     /* from the beam's middle line; guide_line 0: no 'saw offset' */
    length_t joist_length;             /* what stays: inside face of the far bearing to the cut */
    double rests_lb, most_lb; /* at one joist's end: dead load, which lifting it takes; with all that may act */
};
struct takeoff {
    struct takeoff_line *line;
    size_t count, capacity;
    struct takeoff_forgotten *forgotten;
    size_t forgotten_count;
    struct takeoff_debris *debris;
    size_t debris_count, debris_capacity;
    decimal_t debris_cuft, debris_lb;
    int64_t debris_loads; /* the greater of what volume and weight ask */
    struct takeoff_return *back;
    size_t back_count, back_capacity;
    struct ply_layout *ply_layout;
    size_t ply_layout_count, ply_layout_capacity;
    struct cut_side *cut_side;
    size_t cut_side_count, cut_side_capacity;
    struct raising *raising;
    size_t raising_count, raising_capacity;
    struct shore_part *shore_part;
    size_t shore_part_count, shore_part_capacity;
};

/* What is lost of it, and where that stands: "5 %" beyond the count; "in the cut plan"; "none"; "" of labor and subs.
 */
const char *takeoff_loss(struct arena *arena, const struct job *job, const struct takeoff_line *line);

/* Of the pieces as finished, all of the line; 0: no sawn wood. */
decimal_t takeoff_board_feet(const struct takeoff_line *line);

struct takeoff *takeoff_job(struct arena *arena, const struct job *job, const struct catalog *catalog,
                            const struct design *design, struct diags *diags);

const char *forgotten_word(enum forgotten_state state); /* "priced", "left blank" */
/* Shrinkage of a member's depth (inches) beside wood that is dry already; false when its moisture is not known. */
bool member_shrinkage(struct arena *arena, const struct member *member, double *inches);

/* What assemblies.csv may count by: a name and what it means, for checks, manual and messages. */
struct per_info {
    const char *per, *unit, *help;
};
size_t per_count(void);
struct per_info per_info(size_t index);

#endif
