/* Inside the cut stage: a problem made ready for search, and drafts of a plan.  The verifier does not include this. */
#ifndef SAWBILL_CUT_INTERNAL_H
#define SAWBILL_CUT_INTERNAL_H

#include "sawbill/cut.h"

/* Kerf vanishes exactly: pieces p1..pn fit a usable length U if p1 + .. + pn + (n - 1) kerf <= U, which is the same as
 * (p1 + kerf) + .. + (pn + kerf) <= U + kerf.  So each item has size p + kerf and each choice has room U + kerf. */
struct item {
    size_t piece;
    length_t size;
};
struct choice {
    const struct cut_stock *stock;
    length_t room;
    int supply; /* 0: as many as wanted */
};
/* The problem made ready for search. */
struct prepared {
    struct arena *arena;
    const struct cut_problem *problem;
    struct item *item; /* longest first */
    size_t item_count;
    struct choice *choice; /* by room, then cost */
    size_t choice_count;
};
/* A stick of a draft. */
struct bin {
    size_t choice;
    length_t used;
};
struct draft {
    size_t *bin_of; /* each item's bin */
    struct bin *bin;
    size_t bin_count;
    int *taken; /* of each choice */
    money_t cost;
    bool whole; /* every item has its place */
};

enum { NO_CHOICE = -1 };

/* Usable room of a stock, kerf added; shop stock has had its end trimmed before. */
length_t stock_room(const struct cut_problem *problem, const struct cut_stock *stock);
struct prepared *problem_prepare(struct arena *arena, const struct cut_problem *problem);
/* Cheapest choice that holds `size` and is not used up, the longest among equals; NO_CHOICE when none. */
long choice_cheapest(const struct prepared *prepared, const struct draft *draft, length_t size);

struct draft *draft_new(const struct prepared *prepared);
void draft_clear(const struct prepared *prepared, struct draft *draft);
void draft_copy(const struct prepared *prepared, struct draft *to, const struct draft *from);
size_t draft_open(const struct prepared *prepared, struct draft *draft, size_t choice);
void draft_put(const struct prepared *prepared, struct draft *draft, size_t item, size_t bin);
/* Less cost, then fewer sticks, then the longer longest cutoff. */
bool draft_better(const struct prepared *prepared, const struct draft *a, const struct draft *b);

/* The first drafts: decreasing orders over every stock, and greedy filling by price per length. */
void pack_all(const struct prepared *prepared, struct draft *best);
/* Each stick to its cheapest sufficient stock. */
void improve_shrink(const struct prepared *prepared, struct draft *draft);
/* Two sticks at a time cut again in the best way, until nothing improves. */
void improve_pairs(const struct prepared *prepared, struct draft *draft);
/* Depth-first search under a limit of steps; true when `best` is the optimum: its cost is the bound, or the search
 * ended by itself. */
bool search_all(const struct prepared *prepared, struct draft *best, money_t bound);
/* No plan of the problem costs less. */
money_t bound_cost(const struct prepared *prepared);

#endif
