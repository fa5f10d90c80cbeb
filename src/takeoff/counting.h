/* Inside the takeoff: what every counting file shares. */
#ifndef SAWBILL_TAKEOFF_COUNTING_H
#define SAWBILL_TAKEOFF_COUNTING_H

#include "sawbill/takeoff.h"

struct counting {
    struct arena *arena;
    const struct job *job;
    const struct catalog *catalog;
    const struct design *design;
    struct diags *diags;
    struct takeoff *takeoff;
    const struct work_order *order;
};

/* Adds a line unless its count is zero.  Ids are unique: "/also" is put behind one that is taken. */
void line_add(struct counting *counting, struct takeoff_line line, const char *also);
/* Pieces of a member: fills what all such lines share. */
void line_add_pieces(struct counting *counting, const struct member *member, int64_t count, length_t length,
                     struct takeoff_line line);
/* A fastener by its code of fasteners.csv: by the piece, with its pounds, and the bid's loss applies. */
void line_add_fasteners(struct counting *counting, const char *code, int64_t count, struct takeoff_line line);

/* What so many of one weigh, to hundredths; 0: its count per lb is not known. */
decimal_t fastener_pounds(const struct fastener *fastener, decimal_t count);

decimal_t decimal_of(int64_t count);
/* "1 ply", "3 plies": the word must be given both ways. */
char *number_of(struct arena *arena, int64_t count, const char *one, const char *many);
const char *side_name(int side); /* "A", "B" */
bool is_new_beam(const struct beam *beam);
/* Joists are cut and hung on this beam (those of a dropped beam lie on it). */
bool hangs_joists(const struct beam *beam);
/* Cribs under a shore; whether a second shore stands below it. */
int64_t shore_cribs(const struct shore_design *design);
bool shore_stands_twice(const struct shore_design *design);
/* Length of its studs or posts, or of those of the second shore below; pieces of a run along it; diagonals. */
length_t shore_upright(const struct shore_design *design, bool below);
int64_t shore_run_pieces(const struct shore_design *design);
int64_t shore_diagonals(const struct shore_design *design);

/* A hanger or strap, `count` of them: what all such lines share; and the line with its nails under the id that it gets.
 * ones: "hangers". */
struct takeoff_line connector_line(struct counting *counting, const struct hanger *hanger, const char *name,
                                   int64_t count);
void add_connector(struct counting *counting, const struct hanger *hanger, int64_t count, const char *ones,
                   struct takeoff_line line, const char *also);
/* Trimmers that hang on a beam, or on any (NULL): cut and hung like joists. */
int64_t hung_trimmers(const struct counting *counting, const struct beam *beam);
/* Hangers of all openings. */
int64_t opening_hangers(const struct counting *counting);

/* Of all new beams: kickers; ends that blocks, king studs or (not `wood`) straps hold. */
int64_t kickers(const struct counting *counting);
/* Where the job holds a beam against rolling over: its ends, then its inner supports. */
enum { HELD_PLACES = 2 + BEAM_INNER_MOST };
struct held_place {
    const char *place; /* "end 1", "inner support 1" */
    enum end_held how;
    const struct member *wood;
    const struct hanger *strap;
    const struct post *post; /* NULL: no post there */
};
size_t places_held(struct arena *arena, const struct job *job, const struct beam_design *design,
                   struct held_place out[HELD_PLACES]);
int64_t ends_held(const struct counting *counting, bool wood);
/* sequence.c: the order of work, the job's or else the catalog's.  A name that is no task, one named twice, and work of
 * this job that it leaves out are stops. */
const struct work_order *work_order_of(struct counting *counting);
int place_of_task(const struct work_order *order, const char *task); /* -1: no such task */
void order_work(struct counting *counting);                          /* places of all labor lines, once counted */

/* conditions.c: the factors that the job's conditions put on labor lines, each in its `counted` */
void apply_conditions(struct counting *counting);

/* One file each. */
void count_plies(struct counting *counting);
void count_raising(struct counting *counting);
/* posts.c: to be put in, and something comes down on it. */
bool is_new_post(const struct job *job, size_t index);
bool is_new_footing(const struct job *job, size_t index);
void count_posts(struct counting *counting);
void count_cut_lines(struct counting *counting);
void count_hangers(struct counting *counting);
void count_openings(struct counting *counting);
void count_bracing(struct counting *counting);
void count_fit_up(struct counting *counting);
void count_blocking(struct counting *counting);
void count_new_joists(struct counting *counting);
void say_clashes(struct counting *counting); /* hangers that overlap on a face of a beam */
void count_fastening(struct counting *counting);
void count_shoring(struct counting *counting);
void count_joints(struct counting *counting); /* after what they join */
void count_temporary(struct counting *counting);
void count_debris(struct counting *counting);
void count_assemblies(struct counting *counting);
void count_job_lines(struct counting *counting);
void count_forgotten(struct counting *counting); /* after all that may price it */

/* Counts what a `per` word stands for.  finish: what stands for FINISH in "square foot of FINISH", folded; else NULL.
 */
typedef decimal_t per_fn(const struct counting *counting, const char *finish);
/* NULL when nothing is counted by that word. */
per_fn *per_find(struct arena *arena, const char *per, struct per_info *info, const char **finish);

#endif
