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
/* Adds a line for what no earlier shore of the set leaves. */
void shore_buy(struct counting *counting, struct shore_stock *stock, const struct shore_piece *piece);

#endif
