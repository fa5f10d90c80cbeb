/* The bounded knapsack in whole numbers: the most valuable filling of every stock at once. */
#ifndef SAWBILL_CUT_KNAP_H
#define SAWBILL_CUT_KNAP_H

#include "work.h"

struct pass {
    int type, copies; /* copies 0: as many as fit */
    int64_t weight;
};
struct knap {
    const struct norm *norm;
    int64_t *value, *most; /* of the run: of one piece; copies that may be taken */
    int64_t *result;       /* of each stock: the value of the best filling, or an upper bound of it */
    int64_t cells;         /* looked at by the last run */
    /* by dynamic programming, where it is small enough */
    bool dense;
    int64_t capacity;
    int64_t *best;
    unsigned char *took; /* of each pass and length: the pass adds to the best */
    struct pass *pass;
    int passes, pass_room;
    /* else by search: types by value per length */
    int *order;
    int64_t *least; /* shortest type from this place of the order on */
    int *fill;      /* stocks x types */
    int *now;
    int64_t nodes, most_nodes;
    bool cut_short;
};

void knap_start(struct knap *knap, struct arena *arena, const struct norm *norm);
/* floor[s]: fillings of stock s worth no more than this are of no interest (result[s] may be floor[s] then).  Stocks
 * with floor[s] < 0 are left out.  floor NULL: all are wanted. */
void knap_run(struct knap *knap, const int64_t *value, const int64_t *most, const int64_t *floor);
/* The best filling of the stock by the last run; its value may be less than result[s] only after a search that was cut
 * short, or where no filling is above the floor. */
void knap_fill(const struct knap *knap, int stock, int *count);
/* The next of the fillings that the run met on its way to the best one, each better than all without its last type;
 * `place` starts at -1.  False when there is none left. */
bool knap_fill_other(const struct knap *knap, int stock, int *place, int *count);

#endif
