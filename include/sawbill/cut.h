/* The cut plan: which stock lengths to buy and how to cut them.  Exact lengths, exact money. */
#ifndef SAWBILL_CUT_H
#define SAWBILL_CUT_H

#include "sawbill/catalog.h"
#include "sawbill/cutlist.h"
#include "sawbill/takeoff.h"

struct cut_piece {
    const char *label;
    length_t length;
    int count;
};
/* Where a piece may be made of two, over the middle of a support between its ends.  A piece without such a row is one
 * piece from end to end.  All the pieces of a row are joined at the same places. */
struct cut_joints {
    size_t piece;       /* index in the problem */
    const length_t *at; /* from end 1 of the piece, ascending */
    size_t count;       /* at most CUT_JOINTS_MOST */
};
enum { CUT_JOINTS_MOST = 6 };
/* One way to buy a stick.  supply 0: as many as wanted.  price NULL: shop stock at its book value, or a row of a list.
 */
struct cut_stock {
    length_t length; /* as it is, which may be more than it is sold as */
    money_t cost;
    int supply;
    const struct price *price;
    const struct shop_piece *shop;
    bool has_trim; /* `trim` stands for this stock in place of the rule below */
    length_t trim; /* off each end that is trimmed, its own cut included */
    length_t sold; /* the length it is sold as; 0: `length` */
};
struct cut_problem {
    const char *member; /* code, for messages; "" in a list without members */
    struct cut_piece *piece;
    size_t piece_count;
    struct cut_stock *stock;
    size_t stock_count;
    length_t kerf, end_trim; /* end_trim is taken from each bought stick (price set), its own cut included */
    struct place at;         /* where the longest piece comes from; file NULL when unknown */
    bool both_ends;          /* trims are taken off both ends of a stick, not one */
    bool square_both_ends;   /* the last piece of a stick gets a cut of its own even where it ends with the stick */
    length_t least_cutoff;   /* cutoffs from here on are worth keeping */
    const struct cut_joints *joints;
    size_t joints_count;
    const struct place *piece_at; /* of each piece; NULL: all at `at` */
};
struct cut_part {
    const char *label;
    length_t length;
};
struct cut_stick {
    const struct cut_stock *stock;
    struct cut_part *part; /* longest first */
    size_t part_count;
    length_t left;
}; /* left: the cutoff */
/* Why no plan can cost less than `bound`.  Each piece has a value by its length, such that no stick of a stock can hold
 * pieces worth more than scale x its cost + extra; so a plan costs at least (the sum of all pieces' values - the sum of
 * supply x extra) / scale, rounded up to a multiple of what all costs of useful stock are multiples of.  A stock is of
 * no use when it holds no piece, or when an endless one is no shorter and costs no more. */
struct cut_value {
    length_t length;
    int64_t value;
};
struct cut_proof {
    int64_t scale; /* 0: none; the bound is 0 */
    struct cut_value *value;
    size_t value_count;
    int64_t *extra; /* of each stock of the problem; 0 where the supply has no end */
    money_t bound;
};
struct cut_others;
struct cut_plan {
    const struct cut_problem *problem;
    struct cut_stick *stick;
    size_t stick_count;
    money_t cost, bound; /* no plan can cost less than bound */
    const char *verdict; /* "proved optimal" (cost = bound), "best found", "infeasible" */
    length_t net, bought, kerf_lost, trim_lost, left;
    length_t kept;    /* of `left`: cutoffs worth keeping */
    const char *note; /* NULL, or what the verdict rests on besides: rounded lengths, a limit that was met */
    /* Lengths were rounded to 1/64 in, pieces with their kerf up and stock down: cost and bound are of those. */
    bool rounded;
    unsigned *joined; /* of each row of problem->joints: bit i, the pieces are joined at its place i */
    /* One for each way of joining: the masks of problem->joints count up, the first row fastest.  bound is the least of
     * their bounds, or more: then a search raised it, and `searched` says so. */
    struct cut_proof *proof;
    size_t proof_count;
    bool searched;
    int64_t nodes;                   /* of the search */
    const struct cut_others *others; /* NULL until cut_compare() */
    money_t certified;               /* what the proofs alone show.  From there to bound it is the search's word */
};
/* Every way of joining has its proof up to so many; above, a plan is only the best found. */
enum { CUT_WAYS_MOST = 1024 };

/* What ends a search early.  Without `stop` the plan depends on the problem alone, never on the machine. */
struct cut_limits {
    int64_t steps;             /* about a microsecond each; 0: the default */
    bool (*stop)(void *owner); /* asked now and then: true ends the search */
    void *owner;
};

/* One problem a member, in the order in which the takeoff first names it: pieces by LINE_PIECES, stock from the price
 * rows of the member (by-the-foot rows as lengths from least to most) and from the shop.  A member without any price
 * or shop row keeps stock_count 0: cut_solve() says so. */
struct cut_problem *cut_problems_from_takeoff(struct arena *arena, const struct takeoff *takeoff,
                                              const struct catalog *catalog, const struct job *job, size_t *count,
                                              struct diags *diags);
/* The same from bare lists: one problem a member, in the order of the pieces.  Their trims and kerf are in `rules`. */
struct cut_rules {
    length_t kerf, trim;
    bool both_ends, square_both_ends;
    length_t least_cutoff;
};
struct cut_problem *cut_problems_from_list(struct arena *arena, const struct cut_list *list,
                                           const struct cut_rules *rules, size_t *count, struct diags *diags);

/* The cheapest plan, proved where the limits allow; among equally cheap ones few sticks, few patterns, the longest
 * cutoff.  Impossible ones are stops (T001, P001, P002), at the place of the piece. */
struct cut_plan *cut_solve(struct arena *arena, const struct cut_problem *problem, const struct place *at,
                           struct diags *diags);
struct cut_plan *cut_solve_within(struct arena *arena, const struct cut_problem *problem,
                                  const struct cut_limits *limits, const struct place *at, struct diags *diags);
/* Re-checks a plan from the problem alone, by separate code: every piece once, every stick fits, supply kept, cost
 * added up, the bound worked out again from the proof.  Returns NULL when it holds, else what is wrong (static text):
 * an internal failure.  The arena is for work space, which is given back. */
const char *cut_verify(struct arena *arena, const struct cut_problem *problem, const struct cut_plan *plan);

/* What else one might have bought, set on the plan. */
struct cut_single {
    const struct cut_stock *stock;
    bool possible; /* all pieces fit, and there is enough of it */
    money_t cost;  /* the least found */
    bool proved;   /* nothing costs less with this length alone */
};
struct cut_others {
    bool has_first_fit;
    money_t first_fit;                       /* by first fit, longest piece first, out of one length: the best length */
    const struct cut_stock *first_fit_stock; /* that length */
    struct cut_single *single;
    size_t single_count;
};
void cut_compare(struct arena *arena, struct cut_plan *plan);

/* Where the wood that was bought goes, in length and in money: each stick's cost by length.  The money adds up to the
 * plan's cost, the length to what was bought. */
enum cut_share { SHARE_NET, SHARE_KERF, SHARE_TRIM, SHARE_KEPT, SHARE_WASTE, CUT_SHARES };
struct cut_shares {
    length_t length[CUT_SHARES];
    money_t money[CUT_SHARES];
};
struct cut_shares cut_shares(const struct cut_plan *plan);

/* The length a stock is sold as. */
length_t cut_sold_length(const struct cut_stock *stock);
/* What is left of a stick when its ends are trimmed. */
length_t cut_usable_length(const struct cut_problem *problem, const struct cut_stock *stock);
/* The shop's own: of a catalog, or a row of a list with a supply. */
bool cut_is_shop(const struct cut_stock *stock);
bool cut_parts_alike(const struct cut_part *a, const struct cut_part *b);
/* How many sticks of the plan are cut as this one; 0 when an earlier one stands for it.  Alike ones stand together. */
int cut_count_alike(const struct cut_plan *plan, size_t index);

#endif
