/* The lumber of shores: bought, or had from an earlier shore of the same set. */
#ifndef SAWBILL_TAKEOFF_SHORE_STOCK_H
#define SAWBILL_TAKEOFF_SHORE_STOCK_H

#include "counting.h"

struct shore_piece {
    const struct shore *shore;
    const char *part, *what, *counted; /* part: "studs", "below/plates" */
    const struct member *member;
    int64_t count;
    length_t length;
};
/* What the shores so far were made of. */
struct shore_stock {
    struct shore_piece *piece;
    size_t count, capacity;
};
/* Adds a line for what the shores of the set so far do not leave: the most that stands at once, not the sum.  A shore
 * without 'from task' and 'to task' stands by itself, one after the other. */
void shore_buy(struct counting *counting, struct shore_stock *stock, const struct shore_piece *piece);
void shore_jacks_return(struct counting *counting);
bool shores_share(const struct shore *a, const struct shore *b); /* of one set, or the same */
bool shores_stand_at_once(const struct work_order *order, const struct shore *a, const struct shore *b);

#endif
