/* Problems built by hand, for the tests of the cut stage. */
#ifndef SAWBILL_TESTS_CUT_SUPPORT_H
#define SAWBILL_TESTS_CUT_SUPPORT_H

#include "support.h"

#include <string.h>

#include "sawbill/cut.h"

/* What makes a stock a bought one: its price row, of which the solver reads nothing. */
static const struct price bought = {.item = "X-2X10", .supplier = "yard"};
static const struct shop_piece owned = {.count = 1};

#define INCHES(n) ((length_t)((n)*1016000.0))
#define FEET(n)   ((length_t)(n)*LENGTH_FOOT)
#define CENTS(n)  ((money_t)(n)*MONEY_CENT)
#define BUY(ft, c)                                                                                                     \
    {                                                                                                                  \
        .length = FEET(ft), .cost = CENTS(c), .price = &bought                                                         \
    }
#define OWN(ft, n)                                                                                                     \
    {                                                                                                                  \
        .length = FEET(ft), .cost = 0, .supply = (n), .shop = &owned                                                   \
    }
#define COUNT_OF(a) (sizeof(a) / sizeof *(a))

static inline struct cut_plan *solve(struct arena *arena, const struct cut_problem *problem)
{
    struct diags diags = {.arena = arena};
    struct cut_plan *plan = cut_solve(arena, problem, NULL, &diags);
    const char *fault = cut_verify(arena, problem, plan);
    if (fault)
        print_error("verifier: %s\n", fault);
    assert_null(fault);
    assert_true((diags.count > 0) == (strcmp(plan->verdict, "infeasible") == 0));
    return plan;
}

#endif
