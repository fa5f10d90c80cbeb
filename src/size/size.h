/* Inside the sizing stage: what its files share.  Nothing here is public. */
#ifndef SAWBILL_SIZE_H
#define SAWBILL_SIZE_H

#include "sawbill/beam.h"
#include "sawbill/design.h"
#include "sawbill/wood.h"

/* A load on a beam: places from end 1 of the wood, lb or lb per inch. */
struct placed {
    struct beam_load load;
    const char *from;                /* "joists north", "load chimney" */
    const struct joist_design *hung; /* the field that it is part of, or NULL */
};
struct stack {
    struct placed *item;
    size_t count, capacity;
};
struct sizing {
    struct arena *arena;
    const struct job *job;
    const struct catalog *catalog;
    const struct selection *selection;
    struct diags *diags;
    struct design *design;
    size_t member_capacity;
    const struct combination *combo;
    size_t combo_count;
    bool strength;            /* snow of the areas is at strength level: 0.7 S in the combinations */
    struct stack *stack;      /* one a beam, in the order of job->beams */
    double *width_in;         /* of each beam once its member is known, else 0 */
    struct loads (*share)[2]; /* one a beam: extra of a continuous side over a dropped beam, plf */
};

/* combos.c */
const struct combination *combinations(bool strength, bool attic, size_t *count);
double combined(const struct combination *combo, const struct loads *loads);
/* Every transient source of the combination is there: else another combination says the same with its true CD. */
bool combo_applies(const struct combination *combo, const struct loads *present);
struct loads loads_plus(struct loads a, struct loads b);
struct loads loads_times(struct loads a, double times);
double loads_sum(struct loads a); /* downward: without uplift */

/* checks.c */
struct member_checks *checks_new(struct sizing *s, const char *id, const char *member);
/* demand against capacity, without combination or place. */
struct check check_of(const char *name, const char *clause, double demand, double capacity, const char *unit);
void check_worse(struct check *worst, struct check next); /* keeps the greater ratio */
/* The wood that its checks rest on, unless a check says its own `values`. */
void checks_wood(struct member_checks *checks, const struct design_row *row);
char *values_text(struct arena *arena, const struct design_row *row);
/* Of two woods, each said once; any may be NULL. */
const char *values_both(struct arena *arena, const struct design_row *a, const struct design_row *b);
void checks_add(struct sizing *s, struct member_checks *checks, struct check check);
/* Names the governing check, says what fails at `at`; returns whether all hold. */
bool checks_close(struct sizing *s, struct member_checks *checks, const struct place *at);
void basis_add(struct sizing *s, const char *text);
void unchecked_add(struct sizing *s, const char *text);
void path_add(struct sizing *s, const char *from, const char *to, double at_in, struct loads lb);
void engineer(struct sizing *s, const struct place *at, const char *text); /* S004 */

/* loads.c */
struct loads area_psf(const struct sizing *s, const struct area *area);
const struct area *area_of(const struct job *job, const struct ref_value *ref);
/* Fills the stack of a beam from the job; positions need bd->cut_length. */
void stack_fill(struct sizing *s, size_t beam);
/* Faults of places, once the beam is laid out. */
void stack_check(struct sizing *s, size_t beam);

/* snow.c */
struct snow_design snow_of(const struct job *job, const struct area *area);
double snow_psf(const struct sizing *s, const struct area *area); /* as the combinations of this job take it */
double own_snow_factor(const struct sizing *s, const struct choice_value *level); /* the same, of a load's own snow */
void snow_resolve(struct sizing *s);
void snow_write(struct sizing *s);

/* uplift.c */
struct beam_case;
struct check uplift_check(struct sizing *s, const struct hanger *hanger, double lb, const char *name);
void uplift_end_check(struct sizing *s, const struct beam_design *bd, int end, struct member_checks *checks);
void uplift_inner_check(struct sizing *s, const struct beam_design *bd, size_t which, struct member_checks *checks);
void uplift_bending(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                    struct member_checks *checks);
void uplift_write(struct sizing *s);

struct loads obstruction_lb(const struct sizing *s, const struct obstruction *it); /* what it brings */

/* obstructions.c: members in the way, once the beams are sized; whether all that land hold */
bool obstructions_check(struct sizing *s);

/* joists.c */
void joists_place(struct sizing *s, struct joist_design *jd);
bool joists_check(struct sizing *s, struct joist_design *jd); /* hangers and ties */
/* joists_ends.c: each joist by itself */
void joists_ends_place(struct sizing *s, struct joist_design *jd);
/* joists_new.c: `new at` among the places of the field; a new joist where one stands is a fault; `new beside`. */
void joists_add_new(struct sizing *s, struct joist_design *jd);
void joists_new_fault(struct sizing *s, const struct joist_design *jd);
bool joist_gets_another(const struct joists *joists, length_t at);
void joists_ends_hang(struct sizing *s, struct joist_design *jd, struct member_checks *checks);
/* The least width and depth among them and of their section. */
void joists_least_size(const struct joist_design *jd, length_t *width, length_t *depth);
/* Width of floor that one joist holds: the spacing, or the widest gap where they wander. */
double joist_spacing_ft(const struct joist_design *jd);

/* openings.c: what an opening makes of its field */
void openings_resolve(struct sizing *s);
/* Takes the joists that it stops out of the field, and finds what its headers and trimmers bring. */
void openings_place(struct sizing *s, struct joist_design *jd);
void openings_fault(struct sizing *s, const struct joist_design *jd); /* one that does not fit its field */
/* The opening of this field whose stretch of the beam comes first beyond a place, or NULL. */
const struct opening_design *opening_after(const struct sizing *s, const struct joist_design *jd, length_t at);
const char *trimmer_name(struct sizing *s, const struct opening_design *od, int which);
const char *header_name(struct sizing *s, const struct opening_design *od, int which);
/* Of the headers' loads, what the heavier trimmer brings to a shore at a set-back from the beam. */
struct loads opening_on_shore(const struct sizing *s, const struct joists *joists, double set_back_in);
/* openings_check.c */
void openings_check(struct sizing *s);

/* ties.c: the joists tie the rafters, and the beam cuts them; what ties them then */
bool joists_tie_roof(const struct sizing *s, const struct joist_design *jd);
void ties_check(struct sizing *s, struct joist_design *jd, struct member_checks *checks);

/* joists_over.c: joists that run on over a dropped beam; what they bring more, and their far bearing in words */
void joist_shares(struct sizing *s);
void joists_over_report(struct sizing *s, const struct joist_design *jd);

/* joists_cut.c: the joists themselves, once their beam is sized */
int joist_limit(const struct area *area, bool total); /* the n of L/n */
bool joists_cut_check(struct sizing *s, struct joist_design *jd);

/* hangers.c */
struct hanger_need {
    double width_in, depth_in, carrier_in; /* carrier 0: not known */
    double gravity;                        /* of the lighter wood of carrier and member; 0: not known */
    struct loads lb;
};
/* The cheapest hanger that fits and holds; else the check of the best that fits, or of none. */
struct check choose_hanger(struct sizing *s, const struct hanger_need *need, const char *name,
                           const struct hanger **out);
bool hanger_fits(const struct hanger *hanger, const struct hanger_need *need);
struct check hanger_check(struct sizing *s, const struct hanger *hanger, const struct loads *lb, double gravity,
                          const char *name);
/* The lighter of two, 0 where none is known; of the joists of a field, by the species that the job says. */
double lighter_wood(double a, double b);
double joists_gravity(const struct sizing *s, const struct joists *joists);
/* Hangers that fit in size, the cheapest first (its nails with it; without a price: last). */
size_t hangers_sorted(struct sizing *s, const struct hanger_need *need, const struct hanger ***out);
double listed_load(const struct hanger *hanger, double cd); /* NAN: no load listed at this duration */

/* members.c */
const struct member *member_named(struct sizing *s, const struct text_value *text, const struct head *head,
                                  enum kind kind);
char *member_text(struct arena *arena, const struct member *member, int plies);
bool joist_book_size(const char *size, length_t *width, length_t *depth);
struct wood_piece piece_of(const struct member *member, int plies);
struct wood_piece beam_wood(const struct beam_design *bd); /* with its values in service */
struct wood_piece post_wood(const struct post_design *pd);
/* in_service.c: reference values with CM, Ct and Ci in them; `text`: those in words, NULL where all are 1. service_ask:
 * where the wood has none for its service; answer: the key that answers. */
const struct design_row *row_in_service(struct sizing *s, const struct design_row *row, enum family_of_wood wood,
                                        double ply_in, double depth_in, const struct in_service *keys,
                                        const char **text);
const struct design_row *member_in_service(struct sizing *s, const struct member *member, const struct in_service *keys,
                                           const char **text);
void service_ask(struct sizing *s, const struct member *member, const struct in_service *keys, const char *who,
                 const struct place *at, const char *answer);
bool serves_wet(const struct in_service *keys);
bool needs_hangers(const struct beam *beam);

/* bearing.c */
/* Length of the support along the beam, and its width across (0: as wide as the beam). */
struct support {
    length_t along, across, off;    /* off: the beam's center line beside that of a post */
    const struct post_design *post; /* one of these three, or a pocket */
    const struct hanger *hanger;
    const struct member *plate;
};
struct support support_of(const struct sizing *s, const struct beam *beam, int end);
struct support support_between(const struct sizing *s, const struct beam_inner *inner); /* not at its ends */
bool bearing_check(struct sizing *s, const struct beam_design *bd, int end);
bool inner_bearing_check(struct sizing *s, const struct beam_design *bd, size_t which);
/* Plate of a wall, or of any wall: the weakest that the catalog has in its width. */
const struct member *plate_member(const struct sizing *s, const struct ref_value *wall);
bool reaches_below(const struct beam_end *end); /* bears on something, rather than hangs */

/* beams.c, posts.c, shores.c, basis.c */
void beam_resolve(struct sizing *s, size_t beam); /* member, plies, width */
void beam_size(struct sizing *s, size_t beam);
double end_gravity(const struct sizing *s, const struct beam_design *bd, int end); /* at the hanger of an end */
/* beam_checks.c: the loads of a beam measured in its design span, and the checks of the member between its ends */
struct beam_case {
    struct beam_load *load;
    size_t count;
    double span_in, offset_in; /* a place in the span plus offset is a place from end 1 */
    struct loads present;      /* total by source */
};
struct beam_case beam_case_of(struct sizing *s, size_t beam);
bool beam_member_check(struct sizing *s, size_t beam);
/* Distance between points that hold the upper edge from one place of the wood to another, inches from end 1; `only`:
 * the joists of that field alone, or NULL. */
double beam_unbraced(const struct beam_design *bd, double from, double to, const struct joist_design *only);
const char *bending_note(struct sizing *s, const struct beam_design *bd, const struct wood_bending *bending, double lu,
                         double cd);
int limit_or(const struct count_value *limit, int otherwise);                  /* the n of L/n */
struct check sag_cap(const struct beam_design *bd, const struct check *total); /* against the job's own limit */
double beam_creep(const struct beam_design *bd);                               /* Kcr of its wood */
void keep_in(struct check *worst, struct check next, const struct combination *combo);
double beam_fb(const struct beam_design *bd, const struct beam_case *at, const struct combination *combo); /* Fb' */
/* hung_low.c: adds the checks of what hangs low on the face */
void low_check(struct sizing *s, size_t beam, const struct beam_case *at, struct member_checks *checks);
void low_say(struct sizing *s, const struct beam_design *bd);
/* upset.c: the kickers of a beam that is laid out; asks for them; says the rest */
void upset_lay_out(struct beam_design *bd);
void upset_check(struct sizing *s, size_t beam);
void upset_say(struct sizing *s, const struct beam_design *bd);
/* refusals.c: a span or reaction that is left to an engineer, and what the job says of the house */
void refuse_beyond(struct sizing *s, const struct beam_design *bd, const struct loads *present);
void refuse_post(struct sizing *s, const struct post_design *pd); /* what several things bring together */
void refuse_footing(struct sizing *s, const struct footing_design *fd);
void refusals_say(struct sizing *s);
/* specified.c: an engineer's beam held against what he drew it for (Q008), and his record in words */
void specified_compare(struct sizing *s, size_t beam, const struct loads *present);
void specified_say(struct sizing *s, const struct beam *beam, const char *name);
/* rolling.c: what keeps the ends from rolling over */
void rolling_check(struct sizing *s, size_t beam, struct member_checks *checks);
/* inner.c: beams with supports between their ends or wood past them.  Spans count from 0 at end 1; places as in
 * beam_case. */
void inner_lay_out(struct sizing *s, struct beam_design *bd);
void inner_react(struct sizing *s, struct beam_design *bd, const struct beam_case *at);
bool inner_places_good(struct sizing *s, const struct beam_design *bd); /* else it says so: a stop */
bool beam_runs_on(const struct beam_design *bd);   /* over inner supports, or past an end: no simple span */
double beam_zero_in(const struct beam_design *bd); /* from end 1 of the wood to the middle of its bearing */
/* Of wood past an end: E I times its greatest deflection, down or up. */
struct beam_extreme inner_tip(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                              const double factor[LOAD_SOURCES], int end);
double inner_place_in(const struct beam_design *bd, size_t support); /* from end 1 (0) to end 2, middles */
double inner_span_in(const struct beam_design *bd, size_t span);
double inner_widest_clear_ft(const struct beam_design *bd);                           /* between faces */
const char *inner_name(struct sizing *s, const struct beam_design *bd, size_t which); /* "beam B1, inner support 1" */
/* The worst of each span, inner_count + 1 of them: dead load always, each other one on any set of spans. */
void inner_extremes(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                    const double factor[LOAD_SOURCES], struct beam_extremes *out);
/* The greatest shear and moment at some places, of the same sets. */
void inner_at(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
              const double factor[LOAD_SOURCES], const double *place, size_t places, struct beam_at *worst);
/* inner_checks.c */
void inner_member_checks(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                         struct member_checks *checks);
/* With the loads of one field alone, and only its joists on the upper edge. */
struct check inner_half_hung(struct sizing *s, const struct beam_design *bd, const struct beam_case *at,
                             const struct joist_design *only, const struct combination *combo);
void inner_say(struct sizing *s, const struct beam_design *bd, const char *name);
void care_check(struct sizing *s); /* care.c: floors that bounce, steel in treated wood */
/* cut_ends.c: adds the checks of ends that are cut */
void cut_ends_check(struct sizing *s, size_t beam, const struct beam_case *at, struct member_checks *checks);
/* ply_joints.c: adds to the checks of a beam those of the joints between its plies, where something hangs on it */
bool ply_fastening_known(const struct sizing *s, const struct beam_design *bd);
void ply_fastening_check(struct sizing *s, size_t beam, const struct loads *present, struct member_checks *checks);
/* pockets.c: the wall plate that a pocket cuts */
void pocket_check(struct sizing *s, const struct beam *beam, struct member_checks *checks);
void stages_check(struct sizing *s);  /* stages.c: a beam half hung */
void dead_sag_find(struct sizing *s); /* dead_sag.c: what the crew measures against */
void stages_list(struct sizing *s);   /* stages_list.c: the four stages, once everything is sized */
void posts_resolve(struct sizing *s);
void posts_size(struct sizing *s);
/* eccentric.c: beams that bear off the center of their post */
void eccentric_check(struct sizing *s, const struct post_design *pd, const struct wood_post *column,
                     struct member_checks *checks);
void post_on_plate(struct sizing *s, const struct post_design *pd, const struct ref_value *wall,
                   struct member_checks *checks);
/* below.c: from a post down.  post_stands_on: on that thing, or on it with blocks between. */
bool post_stands_on(const struct job *job, const struct post *post, enum kind kind, size_t index);
void post_write_below(struct sizing *s, const struct post_design *pd);
bool post_blocks_size(struct sizing *s, const struct post_design *pd); /* checks of the blocks under it */
/* footings.c */
void footings_size(struct sizing *s);
/* shore_joists.c: the joists that a shore holds, past it, and its top plate */
struct shore_tips {
    struct loads plf, point_lb; /* what stands on the line of the wall: along it, in one place */
};
void shore_joists_check(struct sizing *s, struct shore_design *sd, const struct shore_tips *tips,
                        struct member_checks *checks);
/* strongback.c: a beam on posts in place of the studs; loads along it and in one place */
void strongback_check(struct sizing *s, struct shore_design *sd, const struct loads *plf, const struct loads *point_lb,
                      struct member_checks *checks);
/* shore_beams.c: a beam that a shore holds near its end; its load on the shore, then its checks past it */
struct loads shore_beam_lb(struct sizing *s, const struct shore *shore, size_t beam);
void shore_beams_check(struct sizing *s, const struct shore_design *sd, struct member_checks *checks);
void shores_size(struct sizing *s);
void held_say(struct sizing *s); /* held.c: what no shore of the job holds */
void basis_write(struct sizing *s);

#endif
