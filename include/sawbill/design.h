/* Sizing: loads and load path, the checks of every member and joint by the NDS (ASD), and what the design decided.
 *
 * Pure: no file, clock or global.  Units are in the names; loads positive downward; positions from end 1 of the beam.
 */
#ifndef SAWBILL_DESIGN_H
#define SAWBILL_DESIGN_H

#include <stdbool.h>
#include <stddef.h>

#include "sawbill/arena.h"
#include "sawbill/catalog.h"
#include "sawbill/diag.h"
#include "sawbill/job.h"

/* LOAD_ATTIC: live load of an attic without storage, which need not act with other live loads (IRC 2021 Table R301.5
 * note b).  LOAD_UPLIFT: net uplift, 0.6D + 0.6W as the job gives it, upward positive: in no combination and in no sum,
 * with checks of its own.  They stand last, so that the other places never change. */
enum load_source { LOAD_DEAD, LOAD_LIVE, LOAD_ROOF_LIVE, LOAD_SNOW, LOAD_ATTIC, LOAD_UPLIFT, LOAD_SOURCES };
struct loads {
    double of[LOAD_SOURCES];
}; /* lb, plf or psf as the name of the holder says */

/* ASD combinations of ASCE 7-16 2.4.1 (7-22: snow at 0.7, it is a strength-level load there). */
struct combination {
    const char *name;
    double factor[LOAD_SOURCES];
    double cd;
};                                                       /* cd: NDS 2018 2.3.2, Table 2.3.2 */
int combination_number(const struct combination *combo); /* in ASCE 7 2.4.1: 1 to 4 */

struct check {
    const char *name;        /* "bending" */
    const char *clause;      /* "NDS 2018 3.3.1" */
    const char *combination; /* "D+L"; "" where none applies */
    double at_in;            /* place along the member; NAN where none */
    double demand, capacity;
    const char *unit; /* "psi", "lb", "in" */
    double ratio;     /* demand / capacity, unrounded; infinite when the capacity is 0 */
    bool governs;     /* the greatest ratio of its member */
    const char *note; /* factors used, or NULL */
    /* Editions or reports of the design values that it rests on, 'unverified' where one is from memory; "": none */
    const char *values;
};
struct member_checks {
    const char *id;     /* "beam B1", "post P1", "joists north, hanger" */
    const char *member; /* "3 - 2x10 Douglas Fir-Larch No.2" */
    struct check *check;
    size_t count, capacity;
    bool passes;                   /* every ratio <= 1 */
    bool specified;                /* an engineer's member: never called a pass, only a ratio */
    bool unverified;               /* a design value from memory stands behind it */
    const struct design_row *wood; /* the member's own design values, or NULL */
};
struct path_step {
    const char *from, *to;
    double at_in;
    struct loads lb;
};

/* One joist where it meets the beam. */
struct joist_end {
    length_t at;                 /* its middle, from end 1 */
    length_t width, depth;       /* of one of its plies; a doubled one is two */
    length_t off_line;           /* its bottom above the line (+) or below it (-) */
    bool doubled, own_size;      /* own_size: not that of its section */
    const struct hanger *hanger; /* NULL: none fits, or none wanted */
};
struct joist_design {
    const struct joists *joists;
    const struct beam *beam; /* the beam that carries the cut ends */
    int side;                /* 0 A, 1 B */
    length_t depth, width;   /* measured, else book size */
    length_t *place;         /* each joist, from end 1 of the beam */
    size_t count;
    double reaction_span_ft;    /* half of run */
    struct loads end_lb;        /* one joist's end on the beam */
    struct loads line_plf;      /* on the beam */
    struct joist_end *end;      /* `count`, in the order of `place` */
    const struct hanger *strap; /* tie strap across the beam, or NULL */
    size_t tied_pairs;          /* one strap each; a pair tied by both sides is counted on side A */
    length_t *brace;            /* where its joists and trimmers hold the beam's top edge, ascending */
    size_t brace_count;
    bool passes_cut; /* the joists themselves hold as simple spans, or cannot be checked (see unchecked) */
};
/* An opening in a field of joists.  [2]: the near and the far header; the trimmers at `from` and at `to`. */
struct opening_header {
    bool is;                  /* joists stop there */
    double at_in, tail_ft;    /* its middle, from the beam's center line; run of the tails that it carries half of */
    struct loads plf, end_lb; /* on it; on each trimmer */
    struct loads tail_lb;     /* one tail's end */
    const struct hanger *hanger, *tail_hanger; /* NULL: none fits, or an existing header */
};
struct opening_trimmer {
    length_t at;                       /* its middle, from end 1 of the beam */
    bool on_joist;                     /* a joist of the field is one of its plies */
    struct loads plf, beam_lb, far_lb; /* its own strip of floor and weight; on the beam; on the far bearing */
    const struct hanger *hanger;       /* on the beam; NULL: none fits, or a dropped beam */
};
struct opening_design {
    const struct opening *opening;
    const struct joist_design *side;                         /* its field; NULL: it comes to no beam */
    const struct member *header, *trimmer;                   /* NULL: none, or not in the catalog */
    const struct design_row *header_values, *trimmer_values; /* with CM, Ct and Ci in them */
    struct in_service in;                                    /* how they serve */
    const char *header_service, *trimmer_service;            /* those factors in words, or NULL: all are 1 */
    struct opening_header headers[2];
    struct opening_trimmer trimmers[2];
    length_t zone[2];   /* stretch of the beam on which its trimmers stand in for the joists */
    size_t interrupted; /* joists that stop at it */
    bool passes;
};
/* A support between the ends of a beam.  Live loads stand on any set of spans: lb is the most of each source, least_lb
 * the least (negative: it lifts), full_lb with all spans loaded.  Together the most are more than all loads. */
struct post_design;
struct inner_design {
    const struct beam_inner *inner;
    const struct post_design *post; /* NULL: a wall plate */
    length_t bearing;               /* along the beam, its middle at inner->on.at_length */
    bool spliced;                   /* all plies are cut over its middle */
    struct loads lb, least_lb, full_lb;
    struct loads piece_lb[2];       /* what bears left and right of a splice, each on its half */
    const struct hanger *hold_down; /* as of an end */
    const char *held;               /* what keeps the beam from rolling over there; NULL: not known */
    const struct member *held_wood;
    const struct hanger *held_strap;
};
struct beam_design {
    const struct beam *beam;
    const struct member *member;     /* NULL: none chosen */
    const struct design_row *values; /* its reference values with CM, Ct and Ci in them */
    const char *service;             /* those factors in words, or NULL: all are 1 */
    int plies;
    length_t width, cut_length; /* of the ply: bearing + clear span + bearing, less what a hanger takes */
    length_t bearing[2];
    double design_span_in, weight_plf;
    double past_in[2]; /* of an end with an overhang: from the middle of its bearing to the end of the wood; else 0 */
    struct loads end_lb[2]; /* reactions at end 1 and end 2: with inner supports the most of any set of loaded spans */
    const struct hanger *end_hanger[2];
    const struct joist_design *side[2];
    bool passes;
    int kickers; /* places along an upset beam where braces or straps hold its top edge; 0: none, or not upset */
    double kicker_spacing_in;
    const struct member *kicker; /* their wood; NULL: no kickers */
    const char *held[2];         /* what keeps each end from rolling over; NULL: not known */
    const struct member *held_wood[2];
    const struct hanger *held_strap[2];
    struct inner_design *inner; /* from end 1 on; BEAM_INNER_MOST at most */
    size_t inner_count;
    struct loads end_least_lb[2], end_full_lb[2]; /* as of inner supports */
    length_t *piece; /* what each ply is cut into, from splice to splice; none: one piece of cut_length */
    size_t piece_count;
    const struct hanger *hold_down[2]; /* cap or strap that holds an end down; NULL: none, or none needed */
    /* What it sinks, without creep, under all dead load but its own weight, which has bent it before, and where; of
     * several spans the most.  NAN: not known. */
    double dead_sag_in, dead_sag_at_in;
};
struct post_design {
    const struct post *post;
    const struct member *member;
    const struct design_row *values; /* as of a beam */
    int plies;
    struct loads lb;
    const char *carries; /* "beam B1, end 1" */
    const struct fastener
        *nail; /* that holds the plies together, NDS 2018 15.3.3; NULL: none reaches, rated as single plies */
    int nails;
    int things; /* ends and supports of beams, and posts, that come down on it */
    bool passes;
    const struct member *cap_plate; /* flat on its top; NULL: none */
};
struct shore_design {
    const struct shore *shore;
    const struct member *member; /* stud */
    length_t length, height, spacing;
    int studs, brace_rows;
    double stud_lb; /* greatest load of one stud, D + L with the cantilever's factor */
    bool passes;
    const struct member *plate; /* of brace rows and diagonals, and of the plates unless they are said */
    const struct member *top_plate, *bottom_plate, *crib_timber; /* crib_timber: NULL without a crib */
    const struct member *strongback;                             /* NULL: a stud wall */
    const struct hanger *hung_by;                                /* NULL: the joists lie on the strongback */
    double *post_lb;  /* greatest load of each post under the strongback, as many as shore->supports */
    int posts;        /* in a stud wall, of `post plies`, under what comes down in one place */
    double dead_lb;   /* of stud_lb what is dead load */
    const char *lift; /* what a jack lifts at each joist, in words; NULL: it holds no joists */
};
/* A stage of the work, and what stands in it: one row a shore or beam. */
struct stage {
    int number;       /* 1 wall up, shores snug; 2 wall out; 3 beam in, joists half hung; 4 all hung, shores out */
    const char *name; /* of the stage */
    const char *what; /* "shore A" */
    double lb;        /* of one stud or post of a shore, of a beam's heavier end; NAN: not known */
    const char *governs;
    double ratio; /* NAN: nothing checked */
    bool specified;
    const char *rule; /* what to do or not to do, or NULL */
};
struct footing_design {
    const struct footing *footing;
    struct loads lb; /* of all posts on it, without its own weight */
    int posts;
    double pressure_psf;                  /* greatest, its own weight with it; 0: not known */
    double least_side_in, least_thick_in; /* the least pad that keeps every rule; 0: none does */
    bool passes;
};
/* Snow of an area, from the figure of the job to what allowable stress design takes. */
struct snow_design {
    const struct area *area;
    bool on_ground;    /* else the factors are 1 and given, flat and roof the same */
    bool slope_known;  /* the job says how steep the roof is */
    double given_psf;  /* as written: pg where it is on the ground */
    double ce, ct, is; /* ASCE 7 7.3; is stays 1 at strength level, whose map holds it */
    double flat_psf;   /* 0.7 Ce Ct Is pg */
    double least_psf;  /* 7.3.4, low slopes; 0: none */
    double roof_psf;   /* the greater; Cs 1 */
    double asd_factor, asd_psf;
};
struct design {
    struct beam_design *beams;
    size_t beam_count;
    struct joist_design *joists;
    size_t joists_count;
    struct post_design *posts;
    size_t post_count;
    struct shore_design *shores;
    size_t shore_count;
    struct member_checks **members;
    size_t member_count;
    struct path_step *path;
    size_t path_count, path_capacity;
    const char **basis;
    size_t basis_count, basis_capacity; /* editions, combinations, choices: a line each */
    const char **unchecked;
    size_t unchecked_count, unchecked_capacity; /* what was not checked */
    bool passes;
    struct footing_design *footings;
    size_t footing_count;
    struct opening_design *openings;
    size_t opening_count;
    struct snow_design *snow; /* one for each area that says its snow */
    size_t snow_count;
    const char *standard; /* of the combinations: "ASCE 7-16" */
    const struct combination *combinations;
    size_t combination_count;
    struct stage *stage;
    size_t stage_count, stage_capacity;
};

/* The member of each beam, in the order of job->beams; member NULL leaves it to the job's own `member` and `plies`. */
struct selection {
    const struct member *member;
    int plies;
};

struct design *size_job(struct arena *arena, const struct job *job, const struct catalog *catalog,
                        const struct selection *selection, struct diags *diags);

/* The lengths that each ply of a beam is made of, from end 1 on: one, or those from splice to splice. */
size_t beam_pieces(const struct beam_design *design);
length_t beam_piece(const struct beam_design *design, size_t index);

/* Beams in load-path order: one that hangs on another comes before it. Returns indices into job->beams. */
size_t *beam_order(struct arena *arena, const struct job *job);
/* At most 1.  1 with the dust of floating point on it still holds. */
bool ratio_holds(double ratio);
/* 1.004 -> "1.01": two places, never rounded toward safe; "1.00" only where it holds. */
char *ratio_text(struct arena *arena, double ratio);

#endif
