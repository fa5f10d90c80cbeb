/* The cut plan: which stock lengths to buy and how to cut them.  Exact lengths, exact money. */
#ifndef SAWBILL_CUT_H
#define SAWBILL_CUT_H

#include "sawbill/catalog.h"
#include "sawbill/takeoff.h"

struct cut_piece {
    const char *label;
    length_t length;
    int count;
};
/* One way to buy a stick.  supply 0: as many as wanted.  price NULL: shop stock at its book value. */
struct cut_stock {
    length_t length;
    money_t cost;
    int supply;
    const struct price *price;
    const struct shop_piece *shop;
};
struct cut_problem {
    const char *member; /* code, for messages */
    struct cut_piece *piece;
    size_t piece_count;
    struct cut_stock *stock;
    size_t stock_count;
    length_t kerf, end_trim; /* end_trim is taken once from each bought stick (price set), its own cut included */
    struct place at;         /* where the longest piece comes from; file NULL when unknown */
};
struct cut_part {
    const char *label;
    length_t length;
};
struct cut_stick {
    const struct cut_stock *stock;
    struct cut_part *part;
    size_t part_count;
    length_t left;
}; /* left: the cutoff */
struct cut_plan {
    const struct cut_problem *problem;
    struct cut_stick *stick;
    size_t stick_count;
    money_t cost, bound; /* no plan can cost less than bound */
    const char *verdict; /* "proved optimal" (cost = bound), "best found", "infeasible" */
    length_t net, bought, kerf_lost, trim_lost, left;
};

/* One problem a member, in the order in which the takeoff first names it: pieces by LINE_PIECES, stock from the price
 * rows of the member (by-the-foot rows as lengths from least to most) and from the shop.  A member without any price
 * or shop row keeps stock_count 0: cut_solve() says so. */
struct cut_problem *cut_problems_from_takeoff(struct arena *arena, const struct takeoff *takeoff,
                                              const struct catalog *catalog, const struct job *job, size_t *count,
                                              struct diags *diags);

/* Best-fit decreasing over every stock length, then each stick swapped for its cheapest sufficient stock; `verdict` is
 * honest. A piece that no stock holds is a stop (T001, at the place given, else at the problem's own). */
struct cut_plan *cut_solve(struct arena *arena, const struct cut_problem *problem, const struct place *at,
                           struct diags *diags);
/* Re-checks a plan from the problem alone, by separate code: every piece once, every stick fits, supply kept, cost
 * added up, bound not above cost.  Returns NULL when it holds, else what is wrong (static text): an internal failure.
 */
const char *cut_verify(const struct cut_problem *problem, const struct cut_plan *plan);

bool cut_parts_alike(const struct cut_part *a, const struct cut_part *b);
/* How many sticks of the plan are cut as this one; 0 when an earlier one stands for it. */
int cut_count_alike(const struct cut_plan *plan, size_t index);

#endif
