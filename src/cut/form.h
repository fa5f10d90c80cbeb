/* The standard form of a cutting problem, in integers: types of pieces with their lengths and demands, stock with
 * lengths, costs and supplies; no kerf, no trim, no labels.  What is bought must hold every piece: the lengths of the
 * pieces in a stick add up to no more than the stick's own, and the cost is least. */
#ifndef SAWBILL_CUT_FORM_H
#define SAWBILL_CUT_FORM_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include "sawbill/arena.h"

struct form_type {
    int64_t length; /* above 0 */
    int64_t demand; /* 0: none wanted */
};
struct form_stock {
    int64_t length, cost; /* cost 0 or more */
    int64_t supply;       /* FORM_ENDLESS: as many as wanted */
};
#define FORM_ENDLESS ((int64_t)-1)

/* In any order; equal lengths may stand more than once. */
struct form {
    const struct form_type *type;
    size_t type_count;
    const struct form_stock *stock;
    size_t stock_count;
};

/* What ends the search early.  Without `stop` the result depends on the form alone, never on the machine.  0 or NULL:
 * the default. */
struct form_limits {
    int64_t steps;             /* of work, about a microsecond each */
    int64_t nodes;             /* of the search tree */
    size_t memory;             /* bytes of work space; a list of patterns has half as many more, the linear
                                  programmes a quarter */
    size_t patterns;           /* listed at once */
    bool (*stop)(void *owner); /* asked now and then: true ends the search */
    void *owner;
};

enum form_verdict {
    FORM_PROVED,     /* cost = bound: nothing can cost less */
    FORM_BEST,       /* a limit ended the search: nothing can cost less than bound */
    FORM_INFEASIBLE, /* no plan exists, as a type is too long or the supply too small */
    FORM_NOTHING     /* a limit ended the search before any plan was found; there may be one */
};

struct form_use {
    size_t type; /* index in the form */
    int64_t count;
};
/* Sticks of one stock that are cut alike. */
struct form_pattern {
    size_t stock; /* index in the form */
    struct form_use *use;
    size_t use_count;
    int64_t times;
};

/* Weak duality: if no stick of stock s can hold pieces worth more than scale * cost(s) + extra[s], then every plan
 * costs at least (sum of demand * value - sum of supply * extra) / scale.  All values are whole and 0 or more, extra is
 * 0 where the supply is endless: whoever re-computes the best filling of each stock can check the bound. */
struct form_certificate {
    int64_t scale;
    int64_t *value; /* of one piece of each type */
    int64_t *extra; /* of each stock */
    int64_t bound;  /* the quotient rounded up, and then up to a multiple of the greatest common divisor of the costs of
                       all stocks whose supply is not 0 */
};

struct form_result {
    enum form_verdict verdict;
    struct form_pattern *pattern; /* exactly the demand: no piece is cut too often */
    size_t pattern_count;
    int64_t cost, bound;
    struct form_certificate certificate; /* certificate.bound <= bound: the search may have proved more */
    int64_t nodes, steps;                /* of the search */
    bool stopped;                        /* `stop` ended it */
};

/* The least cost and its proof, within the limits.  Everything in the result lives in the arena; the work space does
 * not.  False, and nothing is done: a number is out of its range, or the sum of all demands times lengths, or times the
 * dearest cost, is not below 2^50; or the work space does not even hold the form. */
bool form_solve(struct arena *arena, const struct form *form, const struct form_limits *limits,
                struct form_result *result);

#endif
