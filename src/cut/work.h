/* Inside the solver: the normalised form, pools of cutting patterns, and what a run of the solver carries along. */
#ifndef SAWBILL_CUT_WORK_H
#define SAWBILL_CUT_WORK_H

#include <setjmp.h>

#include "form.h"
#include "master.h"
#include "sawbill/wide.h"

/* Types longest first, each length once; stocks by length, none that another makes useless. */
struct norm {
    int types, stocks;
    int64_t *length, *demand;
    int64_t *room, *cost,
        *supply;             /* supply FORM_ENDLESS, or less than the number of pieces, but where stocks were merged */
    int64_t pieces, divisor; /* all costs are multiples of divisor */
    int64_t most_cost;       /* of a stock that is sold; 1 at least */
    int64_t most_in_stick;   /* pieces */
    int penalty;     /* the last stock: nobody sells it, and it is so dear that no plan of interest has it; -1 */
    int64_t no_plan; /* what costs this much or more is no plan */
    int *type_of;    /* of each type of the form, its type here; -1 where none is wanted */
    int *stock_of;   /* of each stock of the form, its stock here; -1 where it is of no use */
};
void norm_make(struct norm *norm, struct arena *arena, const struct form *form);
/* A scale for values: what a stick of pieces is worth at this price each stays within 64 bits. */
int64_t norm_scale(const struct norm *norm, int64_t price);

struct use {
    int type, count;
};
/* One stick cut one way. */
struct column {
    int stock;
    int first, count; /* in pool->use, by type */
    int64_t used;     /* length */
};
struct pool {
    struct arena *arena;
    struct column *column;
    struct use *use;
    size_t columns, uses, column_room, use_room;
};
void pool_start(struct pool *pool, struct arena *arena);
/* The counts of all types, 0 where none. */
int pool_add(struct pool *pool, const struct norm *norm, int stock, const int *count);
int pool_copy(struct pool *pool, const struct pool *from, int column);
void pool_clear(struct pool *pool);
bool pool_same(const struct pool *a, int i, const struct pool *b, int j);

/* A whole plan. */
struct answer {
    struct pool pool;
    int64_t *times;
    size_t times_room;
    int64_t cost; /* NO_COST: none */
};
#define NO_COST INT64_MAX
void answer_start(struct answer *answer, struct arena *arena);
void answer_clear(struct answer *answer);
void answer_add(struct answer *answer, const struct norm *norm, const struct pool *pool, int column, int64_t times);
void answer_copy(struct answer *to, const struct answer *from, const struct norm *norm);

/* Values of the types in whole numbers, and the bound that follows (form_certificate). */
struct dual {
    int64_t scale, *value, *extra;
    int64_t *held; /* the most that a stick of each stock holds */
    /* extra is below 0, by what its sticks cost at least beyond their filling, where some must be used */
    wide_t sum; /* the bound is sum / scale */
};

/* How many sticks of each stock a part of the search may use. */
struct span {
    int64_t *least, *most; /* most FORM_ENDLESS: no end */
};

struct master_library;
struct work {
    struct arena *arena; /* of the work space, with a ceiling */
    struct arena *list;  /* of a list of patterns and the search over it; NULL: none */
    jmp_buf full;        /* taken when that ceiling is met */
    const struct form_limits *limits;
    struct master_library *library;
    struct norm norm;
    struct span span;        /* of the whole problem */
    struct answer answer[2]; /* the best, and room for the next */
    struct answer *best, *spare;
    struct dual dual; /* the best so far */
    int64_t bound;    /* proved */
    int64_t steps, most_steps, next_look, nodes, most_nodes;
    size_t most_memory, most_patterns;
    bool stopped;
};
void dual_start(struct dual *dual, struct arena *arena, const struct norm *norm);
void dual_copy(struct dual *to, const struct dual *from, const struct norm *norm);

/* Counts work done; false when a limit ends the search. */
bool work_spend(struct work *work, int64_t steps);
bool work_over(const struct work *work);
/* Takes the answer if it is cheaper. */
bool work_offer(struct work *work, const struct answer *answer);
/* Nothing is left to prove. */
bool work_closed(const struct work *work);
/* ceil(sum / scale), then up to a multiple of the divisor. */
int64_t bound_round(wide_t sum, int64_t scale, int64_t divisor);
int64_t work_round(const struct norm *norm, wide_t sum, int64_t scale);
void work_raise(struct work *work, int64_t bound);
/* Takes the bound of the dual, and the dual if it is the best so far. */
void work_take_dual(struct work *work, const struct dual *dual);

#endif
