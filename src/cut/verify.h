/* Inside the verifier: shared by its two files, by nothing else. */
#ifndef SAWBILL_CUT_VERIFY_H
#define SAWBILL_CUT_VERIFY_H

#include "sawbill/cut.h"

/* A piece that is wanted whole, or a part of one that is joined over its supports. */
struct due {
    size_t piece;
    length_t length;
    int part, parts; /* "part 2 of 3"; parts 1: whole */
    int count;
};
/* What is due when the pieces are joined by `mask`, a mask for each row of problem->joints (NULL: none). */
struct due *verify_due(struct arena *arena, const struct cut_problem *problem, const unsigned *mask, size_t *count);
/* What a stick of the stock has left when its ends are trimmed. */
length_t verify_usable(const struct cut_problem *problem, const struct cut_stock *stock);
/* Works the bound out again; NULL when it holds. */
const char *verify_bound(struct arena *arena, const struct cut_problem *problem, const struct cut_plan *plan);

#endif
