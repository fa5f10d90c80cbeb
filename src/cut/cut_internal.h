/* Inside the cut stage: from a problem to the integers of the solver and back.  The verifier does not include this. */
#ifndef SAWBILL_CUT_INTERNAL_H
#define SAWBILL_CUT_INTERNAL_H

#include "form.h"
#include "sawbill/cut.h"

/* Kerf vanishes exactly: pieces p1..pn fit a usable length U if p1 + .. + pn + (n - 1) kerf <= U, which is the same as
 * (p1 + kerf) + .. + (pn + kerf) <= U + kerf.  So each piece has size p + kerf and each stock has room U + kerf; room U
 * where the last piece gets its own cut in any case. */
length_t stock_room(const struct cut_problem *problem, const struct cut_stock *stock);
/* What is lost at the ends of a stick. */
length_t stock_trim(const struct cut_problem *problem, const struct cut_stock *stock);

/* The ways of joining, counted up: bit i of mask[r], the pieces of row r are joined at its place i.  0: too many. */
size_t ways_count(const struct cut_problem *problem);
void way_masks(const struct cut_problem *problem, size_t way, unsigned *mask);
/* The pieces of one way, none of count 0: those that are joined stand in their parts. */
struct wanted {
    const char *label;
    length_t length;
    int count;
    size_t piece; /* of the problem */
};
struct wanted *way_pieces(struct arena *arena, const struct cut_problem *problem, const unsigned *mask, size_t *count);

/* One way of joining in the solver's terms. */
struct reduced {
    const struct cut_problem *problem;
    struct wanted *piece; /* longest first */
    size_t piece_count;
    struct form_type *type;  /* longest first, each length once */
    length_t *length, *size; /* of a piece of each type, exactly; with its kerf */
    size_t type_count;
    struct form_stock *stock;
    size_t *stock_of; /* the problem's, of each of the form's */
    length_t *room;   /* of each of the form's, exactly */
    size_t stock_count;
    bool rounded;
};
/* One unit for all lengths: the greatest common divisor of the pieces' sizes, and rooms rounded down to it, which loses
 * nothing.  Where a stick then has more than 40,000 units finer than 1/64 in, sizes are rounded up and rooms down to
 * 1/64 in. */
struct reduced *reduce(struct arena *arena, const struct cut_problem *problem, struct wanted *piece, size_t count);

int64_t common_divisor(int64_t a, int64_t b);
void keep_proof(struct arena *arena, const struct reduced *reduced, const struct form_certificate *certificate,
                struct cut_proof *proof);

/* One stick: the types of its pieces, longest first. */
struct raw_stick {
    size_t stock; /* of the form */
    size_t *type;
    size_t count;
    length_t used; /* exactly, kerf in */
};
struct raw_stick *raw_sticks(struct arena *arena, const struct reduced *reduced, const struct form_result *result,
                             size_t *count);
/* Each stick swapped for another of the same price: of what is bought the longest, as more is left; of the shop's own
 * the shortest that does, as the longer one stays whole. */
void swap_sticks(struct arena *arena, const struct reduced *reduced, struct raw_stick *stick, size_t count);
/* Pieces exchanged between two sticks at a time: fewer different patterns, then the longest cutoff, then the waste in
 * few sticks.  Stock and cost stay. */
void tidy_sticks(struct arena *arena, const struct reduced *reduced, struct raw_stick *stick, size_t count);

/* Labels put on the pieces, sticks in the order of work, lengths and cost added up. */
void fill_plan(struct arena *arena, const struct reduced *reduced, const struct raw_stick *stick, size_t count,
               struct cut_plan *plan);
/* What a stick's wood becomes; sets its cutoff. */
void measure_stick(const struct cut_problem *problem, struct cut_stick *stick, length_t length[CUT_SHARES]);

/* Says why no plan is possible where a piece alone shows it; false: nothing shows. */
bool report_impossible(struct arena *arena, const struct cut_problem *problem, const struct place *at,
                       struct diags *diags);

#endif
