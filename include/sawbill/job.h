/* The checked job: what the user described, every value with the place where it stood.
 *
 * Two spellings (INI, JSON) become one list of entries; the key table (src/job/keys.c) turns the list into these
 * structs. Everything is owned by the arena given to job_read().  A value whose `at` is NULL was not written: it holds
 * its default (or zero).  "Zero is an answer; absent is the question." */
#ifndef SAWBILL_JOB_H
#define SAWBILL_JOB_H

#include <stdbool.h>
#include <stddef.h>

#include "sawbill/arena.h"
#include "sawbill/date.h"
#include "sawbill/diag.h"
#include "sawbill/length.h"
#include "sawbill/money.h"
#include "sawbill/quantity.h"

/* One value as written.  kind, id and key are folded (name_fold); value is trimmed text. `at` is the place of the
 * value, key_at that of the key (or of the section line, for an empty section: key NULL). */
struct entry {
    const char *kind, *id, *key, *value;  /* id "" where the kind has none; key NULL marks "this section exists" */
    const char *kind_as, *id_as, *key_as; /* as the user wrote them, for messages and output */
    struct place at, key_at;
};
struct entries {
    struct entry *item;
    size_t count, capacity;
};

enum kind {
    KIND_JOB,
    KIND_AREA,
    KIND_ROOF,
    KIND_JOISTS,
    KIND_OPENING,
    KIND_BEAM,
    KIND_LOAD,
    KIND_OBSTRUCTION,
    KIND_POST,
    KIND_BLOCK,
    KIND_FOOTING,
    KIND_WALL,
    KIND_REMOVE,
    KIND_SHORE,
    KIND_WORK,
    KIND_BUY,
    KIND_SUB,
    KIND_BID,
    KIND_ALTERNATE,
    KIND_COUNT
};

/* Values.  Each knows its entry. */
struct text_value {
    const char *text;
    const struct entry *at;
};
struct texts_value {
    struct text_value *item;
    size_t count;
};
struct length_value {
    length_t length;
    const struct entry *at;
};
struct lengths_value {
    length_t *item;
    size_t count;
    const struct entry *at;
};
/* A measure of single things along a beam: "1-5/8 in at 23 in, 2 in from 39 in to 7 ft". */
struct placed_length {
    length_t length, from, to; /* from = to: at one place */
};
struct placed_lengths_value {
    struct placed_length *item;
    size_t count;
    const struct entry *at;
};
struct quantity_value {
    struct quantity quantity;
    const struct entry *at;
};
struct money_value {
    money_t money;
    const struct entry *at;
};
struct percent_value {
    percent_t percent;
    const struct entry *at;
};
struct decimal_value {
    decimal_t decimal;
    const struct entry *at;
}; /* plain numbers, hours, counts with parts */
struct count_value {
    int count;
    const struct entry *at;
};
struct date_value {
    struct date date;
    const struct entry *at;
};
struct choice_value {
    int choice;
    const struct entry *at;
}; /* an enum below; 0 is always "not answered" */
struct choices_value {
    unsigned set; /* bit 1 << choice of an enum below */
    const struct entry *at;
};
struct pitch_value {
    double rise, run;
    const struct entry *at;
}; /* 6/12 */
/* A reference `kind id`; index into that kind's array of the job once resolved. */
struct ref_value {
    enum kind kind;
    const char *id;
    size_t index;
    const struct entry *at;
};
struct refs_value {
    struct ref_value *item;
    size_t count;
    bool nothing;
    const struct entry *at;
}; /* nothing: the word "nothing" or "none" */

enum yes { YES_UNANSWERED, YES, NO, UNKNOWN };
enum job_status { STATUS_UNANSWERED, STATUS_BID, STATUS_BUDGET };
enum load_standard { LOADS_UNANSWERED, LOADS_ASCE_7_16, LOADS_ASCE_7_22 };
enum live_kind { LIVE_UNANSWERED, LIVE_FLOOR, LIVE_SLEEPING, LIVE_ATTIC_STORAGE, LIVE_ATTIC_NO_STORAGE, LIVE_ROOF };
enum snow_where { SNOW_UNANSWERED, SNOW_ON_GROUND, SNOW_ON_ROOF };
enum snow_level { LEVEL_UNANSWERED, LEVEL_ALLOWABLE, LEVEL_STRENGTH };
enum roof_frame { FRAME_UNANSWERED, FRAME_RIDGE_BOARD, FRAME_STRUCTURAL_RIDGE, FRAME_TRUSSES, FRAME_NONE_ABOVE };
enum joist_kind {
    JOIST_UNANSWERED,
    JOIST_SAWN,
    JOIST_I,
    JOIST_FLOOR_TRUSS,
    JOIST_ROOF_TRUSS,
    JOIST_RAFTER,
    JOIST_UNKNOWN
};
enum over_wall { OVER_UNANSWERED, OVER_LAPPED, OVER_BUTTED, OVER_CONTINUOUS };
enum beam_set { SET_UNANSWERED, SET_FLUSH, SET_UPSET, SET_DROPPED };
enum end_kind { END_UNANSWERED, END_POST, END_BEAM, END_PLATE, END_POCKET, END_HANGER };
enum beam_raised { RAISED_UNANSWERED, RAISED_PLY_BY_PLY, RAISED_WHOLE };
enum wall_way { WAY_UNANSWERED, WAY_IN_LINE, WAY_ACROSS };
enum which_end { ENDS_UNANSWERED, END_ONE, END_TWO, ENDS_BOTH };
enum cut_face { FACE_UNANSWERED, FACE_BOTTOM, FACE_TOP };
enum end_held { HELD_UNANSWERED, HELD_BLOCKS, HELD_STRAPS, HELD_KING_STUDS };
enum moisture_in_service { SERVICE_UNANSWERED, SERVICE_DRY, SERVICE_WET };
enum heat_in_service { HEAT_UNANSWERED, HEAT_TO_100, HEAT_TO_125, HEAT_TO_150 };
enum braced { BRACED_UNANSWERED, BRACED_BOTH, BRACED_ONE, BRACED_FREE };
enum wall_status { WALL_UNANSWERED, WALL_COMES_OUT, WALL_STAYS };
enum new_or_existing { NE_UNANSWERED, NE_NEW, NE_EXISTING };
enum remove_what { REMOVE_UNANSWERED, REMOVE_BEAM, REMOVE_POST, REMOVE_HEADER };
enum remove_how { HOW_UNANSWERED, HOW_WHOLE, HOW_IN_SECTIONS };
enum shore_below { BELOW_UNANSWERED, BELOW_SLAB, BELOW_JOISTS_ACROSS, BELOW_JOISTS_PARALLEL };
enum held_below { HELD_BELOW_UNANSWERED, HELD_BELOW_NOTHING, HELD_BELOW_CRIB, HELD_BELOW_SHORE };
enum obstruction_what { OBSTRUCTION_UNANSWERED, RAFTER_TAIL, BRACE, STRUT, NAILER };
enum obstruction_then { THEN_UNANSWERED, THEN_LANDS, THEN_HEADERED_OFF, THEN_TAKEN_OUT };
enum debris_by { DEBRIS_UNANSWERED, DEBRIS_RUNS, DEBRIS_DUMPSTERS };
enum method { METHOD_UNANSWERED, METHOD_COMPOUND, METHOD_ADD, METHOD_MARGIN };
/* What the program leaves to an engineer; `none` and `unknown` stand alone. */
enum unusual {
    UNUSUAL_UNANSWERED,
    UNUSUAL_NONE,
    UNUSUAL_UNKNOWN,
    UNUSUAL_MASONRY_ABOVE,
    UNUSUAL_CANTILEVERED_ROOF,
    UNUSUAL_OPENINGS_NOT_STACKED,
    UNUSUAL_SEISMIC_D,
    UNUSUAL_MASONRY_BELOW,
    UNUSUAL_POLE_OR_LOG,
    UNUSUAL_TWO_DWELLINGS,
    UNUSUAL_COUNT
};
enum tax_mode { TAX_UNANSWERED, TAX_IN_COST, TAX_ON_MATERIALS_SHOWN, TAX_ON_PRICE };
enum cost_class {
    CLASS_UNANSWERED,
    CLASS_LABOR,
    CLASS_MATERIALS,
    CLASS_RENTALS,
    CLASS_SUBS,
    CLASS_ALLOWANCES,
    CLASS_FEES,
    CLASS_COUNT
};

/* First in every kind: its id as written (for output), folded (for reference), and its section's place. */
struct head {
    const char *id, *folded;
    struct place at;
};

struct job_facts { /* [job] */
    struct head head;
    struct text_value name, number, client, site, catalogs, shop_stock;
    struct date_value date;
    struct choice_value status;         /* enum job_status; default bid */
    struct choice_value loads_by;       /* enum load_standard; default ASCE 7-16 */
    struct length_value kerf, end_trim; /* defaults 1/8 in and 1/2 in */
    struct length_value saw_offset;     /* edge of the saw's shoe to its blade */
    struct texts_value scope, exclude, ack;
    struct count_value hands;               /* people who lift at once; default 3 */
    struct quantity_value lift_share;       /* lb that one of them lifts; default 50 */
    struct length_value longest_in;         /* "longest piece in": what the way into the house lets through */
    struct lengths_value corner;            /* widths of two passages that meet at a right angle on that way */
    struct quantity_value floor_to_protect; /* sq ft; default 300 */
    struct count_value trips;               /* of the crew to the site with all its tools; default 2 */
    struct choices_value unusual;           /* enum unusual */
    struct text_value unusual_engineer;     /* who answers for it, and his sheet */
    struct length_value beyond_span;        /* "engineer beyond span"; default 20 ft, which it never passes */
    struct quantity_value beyond_reaction;  /* "engineer beyond reaction"; default 10,000 lb, likewise */
    struct texts_value sequence;            /* the order of work: names of tasks, and "work ID"; else the catalog's */
    struct decimal_value hours_a_day;       /* default 8 */
    struct choice_value trim_both_ends;     /* of a stick bought, end trim off each; default no */
    struct choice_value square_both_ends;   /* a cut of its own for the last piece of a stick; default no */
    struct length_value least_cutoff;       /* cutoffs from here on go back to the shop; default 16 in */
    struct choice_value debris_by;          /* enum debris_by; default dump runs */
    struct quantity_value load_holds, load_carries; /* cu ft and lb of one run or dumpster */
    struct texts_value conditions;                  /* of conditions.csv, that this job's labor meets */
    struct text_value framing_nail, shore_screw;
    struct quantity_value area_to_paint; /* sq ft; absent: half as much again as the ceiling opened */
};
struct area {
    struct head head;
    struct quantity_value dead, live, snow; /* psf */
    struct choice_value live_is, snow_is, snow_level;
    struct quantity_value net_uplift;  /* psf, of a roof: 0.6D + 0.6W, upward */
    struct text_value uplift_engineer; /* who says that there is none */
};
struct roof_brace {
    length_t at;
    double sqft;
};
struct roof {
    struct head head;
    struct choice_value frame;
    struct pitch_value pitch;
    struct length_value span,
        ridge_at;                     /* ridge_at: from the eave wall of the slope that `pitch` says; else the middle */
    struct ref_value area, braces_on; /* area: its roof loads; braces_on: the beam that takes the wall's place */
    struct {
        struct roof_brace *item;
        size_t count;
        bool none;
        const struct entry *at;
    } braces;
    struct decimal_value exposure, thermal, importance; /* Ce, Ct, Is of ASCE 7 chapter 7; defaults 1.0 */
    struct choice_value snow_drifts;                    /* enum yes */
    struct text_value snow_engineer;                    /* who answers for snow that drifts onto it */
    struct choice_value braces_own_prop;                /* enum yes: each gets a prop of its own meanwhile */
};
/* Of wood in service; absent: dry, at most 100 F, not incised. */
struct in_service {
    struct choice_value moisture, heat, incised; /* enum moisture_in_service, heat_in_service, yes */
};
struct joists {
    struct head head;
    struct in_service service;
    struct choice_value kind, over_the_wall, ties_the_roof;
    struct text_value size, species, grade, repair_drawing, tie_strap, tie_engineer;
    struct length_value measured_depth, measured_width, spacing, first_joist, run, from, to;
    struct lengths_value at, doubled_at;
    struct ref_value area;
    struct length_value most_sag;    /* of joist and beam together in the middle of the room, under live load */
    struct length_value seat_planed; /* depth taken off the lower edge of the cut end */
    /* of single joists, by their place: their own width and depth; how far their bottom stands off the line */
    struct placed_lengths_value measured_widths, measured_depths, high_by, low_by;
    struct lengths_value new_at, new_beside; /* centers of new joists; of joists that get a new one at their side */
    struct text_value new_of;                /* catalog code of their wood */
    struct text_value new_engineer;          /* who answers for new joists unlike those beside them, and his sheet */
};
/* A hole in a field of joists: a stair, a flue, a hatch.  All four are its clear edges. */
struct opening {
    struct head head;
    struct choice_value status; /* enum new_or_existing; default new */
    struct ref_value joists;
    struct length_value from, to, near, far; /* along the beam from end 1; from the beam's center line */
    struct text_value header, trimmer;       /* trimmer absent: the header's member */
    struct count_value header_plies, trimmer_plies;
    struct in_service service;  /* of headers and trimmers; moisture and heat not written: those of the joists */
    struct text_value engineer; /* who answers for wood that has no values in such service */
};
struct beam_end {
    enum end_kind kind;
    struct ref_value ref;
    length_t at_length;
    const struct entry *at;
};
/* A support between the ends, "inner": a post, or a wall's plate. */
enum { BEAM_INNER_MOST = 4 };
struct beam_inner {
    struct beam_end on; /* at_length: its middle, from end 1 of this beam's wood */
    enum wall_way way;  /* of the wall with the post */
    length_t bearing;   /* along the beam; 0: not written */
    length_t off;       /* "off center": across the beam, its center line to that of the post */
    enum end_held held; /* what keeps the beam from rolling over there */
    struct text_value held_of;
};
struct beam_inners {
    struct beam_inner *item;
    size_t count;
};
/* What the engineer drew a beam for, as he states it; any of it may be absent. */
struct beam_drawn {
    struct quantity_value dead, live, roof_live, snow; /* psf of its areas, or plf on the beam */
    struct quantity_value reaction[2];                 /* lb */
    struct text_value size, species, grade;
    struct count_value plies;
    struct ref_value wall; /* that it takes the place of */
    struct date_value date;
};
struct beam {
    struct head head;
    struct in_service service;
    struct choice_value status, set, choose, each_face;
    struct length_value ceiling_each_side; /* ceiling opened beyond each face of the beam; default 16 in */
    struct length_value clearance;         /* cut joist end to the beam's face */
    struct length_value clear_of_hangers;  /* ply fasteners to the side of what hangs there; default 1-1/2 in */
    struct length_value above_joists_by, clear_span, most_depth, spacing, stagger, edge, end, specified_span,
        roof_cut_heel;
    struct length_value off_center[2]; /* "off center 1": across the beam, its center line to that of the post */
    struct length_value bearing[2];    /* "bearing 1", "bearing 2": length of wood on the support, along the beam */
    struct choice_value
        wall_at_end[2];         /* enum wall_way: does the wall with the post run in line with the beam or across */
    struct beam_end end_[2];    /* "end 1", "end 2" */
    struct ref_value joists[2]; /* side A, side B */
    struct refs_value above;    /* loads and walls on it; `nothing` */
    struct text_value member, ply_fasteners, specified_by, sheet, revision;
    struct texts_value material; /* materials to choose among, one each */
    struct count_value plies, most_plies, rows;
    struct pitch_value roof_cut_pitch;
    struct decimal_value repetitive_factor;      /* Cr; default 1.0 */
    struct length_value most_sag;                /* of all loads, creep in, whatever the span */
    struct count_value live_limit, total_limit;  /* the n of L/n; defaults 360 and 240 */
    struct text_value hold_down;                 /* catalog code of the cap or strap that holds its ends down */
    struct text_value plate_engineer;            /* who answers for wall plates that its pockets cut */
    struct count_value more_at_hung;             /* "more at hung beams": ply fasteners beside the pattern, each face */
    struct choice_value roof_cut_at, notch_face; /* enum which_end, default both; enum cut_face, default bottom */
    struct length_value kickers_every, top_hanger_nail; /* of an upset beam; the nail above its lower edge */
    struct text_value kickers_of;                       /* catalog code of their wood */
    struct length_value notch[2], notch_length[2]; /* "notch 1": its depth; "notch 1 length", default the bearing */
    struct choice_value held[2];                   /* "held 1": enum end_held, what keeps the end from rolling over */
    struct text_value held_of[2];                  /* "held 1 of": catalog code of the blocks, studs or straps */
    struct choice_value raised;                    /* enum beam_raised; default ply by ply */
    struct length_value room_beyond[2];   /* past the face of the support, in line, that the beam can slide into */
    struct length_value head_room;        /* floor to the top of what is opened for the beam */
    struct beam_inners inner;             /* supports between its ends, from end 1 on */
    struct lengths_value splices;         /* all plies cut there, each over the middle of an inner support */
    struct text_value hold_down_engineer; /* who answers for supports that it or wind lifts off */
    struct text_value shore_engineer;     /* who answers for what is held while it goes in */
    struct length_value overhang[2];      /* "overhang 1": wood past the outer edge of the bearing there */
    struct beam_drawn drawn;              /* "specified dead" and its kin, beside specified_span */
    struct text_value ceiling_finish;     /* default gypsum board */
    struct choice_value insulation_back;  /* "insulation put back": enum yes; default no */
    struct text_value blocks_of;          /* catalog code of blocks beside it, or between the joists on top of it */
    struct length_value blocks_every, blocks_long; /* defaults 4 ft and 14-1/2 in */
};
struct load {
    struct head head;
    struct ref_value on, area, held_by; /* on: a beam; held_by: the shore that holds it while the wall is out */
    struct text_value what;             /* "roof post", "chimney" */
    struct length_value at, from, to;   /* from end 1 of the beam */
    struct quantity_value dead, live, snow,
        carries; /* lb (with at) or plf (with from, to); or area and carries (sq ft) */
    struct quantity_value dead_to, live_to, snow_to; /* plf at `to`, of a load that grows or falls evenly from `from` */
    struct choice_value snow_level;                  /* enum snow_level, of its own snow */
    struct choice_value comes_later;                 /* enum yes: it is put there once the beam carries */
    struct quantity_value net_uplift;                /* lb or plf, 0.6D + 0.6W, upward */
};
/* A member that stands where the beam goes, and is cut. */
struct obstruction {
    struct head head;
    struct choice_value what, then, own_prop;
    struct ref_value on, area, held_by;  /* on: the beam; held_by: the shore that holds it while it is cut */
    struct length_value at, width, seat; /* its place from end 1; its thickness; its seat across the beam */
    struct quantity_value dead, live, snow, carries;
    struct text_value engineer;       /* who answers for what it is headered off to */
    struct choice_value snow_level;   /* enum snow_level, of its own snow */
    struct quantity_value net_uplift; /* lb, 0.6D + 0.6W, upward */
};
struct post {
    struct head head;
    struct in_service service;
    struct text_value member, species_note, engineer; /* engineer: who answers for a load off its center */
    struct count_value plies;
    struct length_value height;
    struct choice_value braced, status;
    struct ref_value stands_on;       /* block, footing, beam or wall (its plate) */
    struct text_value stands_on_text; /* "existing footing, seen": what the user knows of it */
    struct text_value cap_plate;      /* catalog code of a plate flat on its top */
};
struct block {
    struct head head;
    struct length_value depth;
    struct ref_value stands_on;
    struct text_value stands_on_text;
};
struct footing {
    struct head head;
    struct choice_value status;
    struct quantity_value soil;
    struct length_value thickness, size;
    struct text_value engineer; /* who answers for more than is followed to the ground here */
};
struct wall {
    struct head head;
    struct choice_value status, bracing;
    struct ref_value under, on; /* under: the beam that takes its place; on: the beam that it stands on */
    struct length_value from, to, length, height, spacing;
    struct text_value studs, finish_a, finish_b, bracing_engineer;
    struct quantity_value weight;   /* psf of wall face */
    struct text_value floor_finish; /* what is woven in where its plate stood */
    struct texts_value services;
    struct choice_value bearing;     /* of one that comes out; enum yes */
    struct choice_value comes_later; /* enum yes: it is built once the beam carries */
};
struct removal {
    struct head head;
    struct choice_value what, how;
    struct length_value length;
    struct text_value size;
};
struct shore {
    struct head head;
    struct refs_value holds; /* joists, loads, walls, beams, posts; KIND_ROOF: all roof braces */
    struct length_value set_back, spacing, length, height;
    struct text_value studs, plates, stands_on; /* plates: of plates, brace rows and diagonals; absent: the studs */
    struct count_value brace_rows, days;
    struct text_value top_plate, bottom_plate, crib_timber, set; /* set: shores of one lumber, one after the other */
    struct choice_value below, held_below;                       /* enum shore_below, enum held_below */
    struct length_value height_below;
    struct count_value jack_posts; /* rented with it; default 4 */
    /* A beam on posts in place of the stud wall; `hung by`: a strap from it to each joist below. */
    struct text_value strongback, hung_by;
    struct count_value strongback_plies, sag_limit; /* defaults 1 and L/360 */
    struct lengths_value supports;                  /* middles of its posts, from its own end */
    struct text_value from_task, to_task;           /* of its set: the first and the last task that it stands through */
    struct count_value post_plies; /* of those posts; in a stud wall of one under each thing in one place; default 1 */
};
struct work {
    struct head head;
    struct text_value what, trade;
    struct decimal_value hours;
    struct text_value cost_code;
    struct text_value after_task; /* of the order of work; absent: before the last ones */
};
struct buy {
    struct head head;
    struct text_value what, item;
    struct money_value price;
    struct decimal_value count;
    struct text_value unit;
    struct choice_value class;
    struct percent_value own_markup;
    struct text_value cost_code;
};
struct sub {
    struct head head;
    struct text_value what;
    struct money_value price;
    struct choice_value class;
    struct percent_value own_markup;
    struct text_value cost_code;
};
struct bid {
    struct head head;
    struct choice_value method, tax_mode; /* tax_mode default in cost */
    struct percent_value tax, overhead, contingency, profit;
    /* [class]: "overhead on labor" and its kin; at NULL: the general one holds */
    struct percent_value overhead_on[CLASS_COUNT], contingency_on[CLASS_COUNT], profit_on[CLASS_COUNT];
    struct percent_value fastener_loss; /* of nails and screws, bought beyond the count; default 5 % */
    struct money_value round_price_to;
    struct count_value valid_for; /* days */
    /* Lines of forgotten.csv: "LINE", "LINE by buy ID"; "LINE: reason" */
    struct texts_value forgotten_priced, forgotten_zero, forgotten_excluded;
    struct texts_value draws; /* "30 % on signing": percent, then when */
};
struct alternate {
    struct head head;
    struct text_value what;
    struct entry *set;
    size_t count;
}; /* set: kind, id, key, value to put in */

struct job {
    struct entries entries;
    const char *file;
    struct job_facts facts;
    struct roof roof;
    struct bid bid;
    bool has_roof;
    struct area *areas;
    size_t area_count;
    struct joists *joists;
    size_t joists_count;
    struct opening *openings;
    size_t opening_count;
    struct beam *beams;
    size_t beam_count;
    struct load *loads;
    size_t load_count;
    struct obstruction *obstructions;
    size_t obstruction_count;
    struct post *posts;
    size_t post_count;
    struct block *blocks;
    size_t block_count;
    struct footing *footings;
    size_t footing_count;
    struct wall *walls;
    size_t wall_count;
    struct removal *removals;
    size_t removal_count;
    struct shore *shores;
    size_t shore_count;
    struct work *works;
    size_t work_count;
    struct buy *buys;
    size_t buy_count;
    struct sub *subs;
    size_t sub_count;
    struct alternate *alternates;
    size_t alternate_count;
};

/* Reads the entries of an INI or JSON job (by content: JSON starts with '{').  `file` is the name for messages.  Never
 * fails: what is wrong goes to diags; the list holds what could be read. */
void entries_read(struct arena *arena, const char *file, const char *text, size_t length, struct entries *out,
                  struct diags *diags);
/* The list with an alternate's settings put in (each replaces or adds one entry, and keeps its own place). */
struct entries entries_with(struct arena *arena, const struct entries *entries, const struct alternate *alternate);
/* Checks the list against the key table and the rules across keys; fills the job.  Stops are in diags; with a stop the
 * job is not to be used.  status = budget sets diags->assume. */
struct job *job_check(struct arena *arena, const char *file, const struct entries *entries, struct diags *diags);

const char *kind_name(enum kind kind);                                  /* "joists" */
const char *choice_name(const char *kind, const char *key, int choice); /* the word of the key table */
const char *class_name(enum cost_class class);                          /* "labor" */
bool kind_find(const char *name, enum kind *out);                       /* folded; false when there is no such kind */
bool kind_has_id(enum kind kind);                                       /* false: the job has one, without an id */
const char *kind_help(enum kind kind);
/* Marks the messages of diags that the job acknowledges (`ack = CODE reason`), where their code allows it.
 * job_check() does it for its own; call it again when later stages have added theirs. */
void job_acknowledge(const struct job *job, struct diags *diags);
/* A draw, "30 % on signing": its share, and when it is due (in the arena).  false: it cannot be read. */
bool draw_parse(struct arena *arena, const char *text, percent_t *share, const char **when);
/* Place of a value, or of its section when it was not written. */
const struct place *place_of(const struct entry *at, const struct head *head);
/* Does a beam come down on this post, block or footing, straight or over others of them?  Else it is not counted. */
bool carries_something(const struct job *job, enum kind kind, size_t index);
/* Does any shore hold it?  Loads also by their `held by`; KIND_ROOF: the roof braces. */
bool shore_holds(const struct job *job, enum kind kind, size_t index);
/* A new beam below what goes on as it is: it is dropped, and nothing that comes out may have carried its load. */
bool takes_nothing_over(const struct job *job, size_t beam);
/* "beam B1" in the arena. */
char *head_name(struct arena *arena, enum kind kind, const struct head *head);

/* Key table, for `keys`, the schema and the manual. */
struct key_info {
    enum kind kind;
    const char *kind_name, *key, *type, *unit, *fallback, *range, *help, *example;
    bool required, repeats;
    const char *const *choices; /* the words of a choice, else NULL */
    size_t choice_count;
    const char *usual;  /* the trade's usual range, "" for none; range is what is possible at all */
    const char *refers; /* kinds that a reference may name: "beam, block", else "" */
};
size_t key_count(void);
struct key_info key_info(size_t index); /* static text */
/* A commented INI job, made from the table, that passes job_check() as it stands. */
char *job_template(struct arena *arena);

#endif
