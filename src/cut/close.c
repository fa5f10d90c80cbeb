/* The bound is raised by small steps: the patterns that a plan just above the bound can use are few, and the search
 * over them ends soon, with a plan or with a higher bound.  Where even those are too many, the patterns at hand and the
 * most promising of the others are searched for a better plan, and more dives are made, in turns. */
#include "close.h"

#include "branch.h"
#include "fill.h"
#include "tree.h"

enum {
    FIRST_LIST = 3000,

    FIRST_NODES = 300,
    FIRST_DIVES = 12,
    FIRST_PARTS = 100,
    MOST_PARTS = 100000,
    MOST_NODES = 100000000,
    MOST_DIVES = 100,
    STEPS_TO_BEST = 8,
    STEPS_A_TURN = 20
};

struct closer {
    struct work *work;
    struct colgen *cg;
    struct dive *dive;
    struct greedy *greedy;
    int64_t step; /* of the bound, in divisors */
    size_t most;  /* patterns in a list */
    int64_t nodes;
    int turn, dives, parts;
};

/* The work space of the list is full: the search ends there. */
static void end_search(void *owner)
{
    struct work *work = owner;
    longjmp(work->full, 1);
}

static bool is_settled(const struct work *work)
{
    return work_closed(work) || work_over(work);
}

static void run_dives(struct closer *closer)
{
    for (int i = 0; i < closer->dives && !is_settled(closer->work); i++)
        (void)dive_run(closer->dive, closer->turn++);
}

/* One list and its search; false when the list proves nothing. */
static bool run_list(struct closer *closer)
{
    struct work *work = closer->work;
    struct list list;
    int64_t below = work->bound + closer->step * work->norm.divisor;
    below = below < work->best->cost ? below : work->best->cost;
    work->list = arena_new(work->most_memory / 2, end_search, work);
    list_make(work, &list, &work->dual, &work->span, below, closer->most);
    bool covers = list.beyond > work->bound;
    if (!covers)
        list_add_pool(work, &list, &closer->cg->pool, &work->dual);
    bool done = tree_run(work, &list, &work->span, closer->greedy, closer->nodes);
    if (done)
        work_raise(work, work->best->cost < list.beyond ? work->best->cost : list.beyond);
    arena_free(work->list);
    work->list = NULL;
    if (covers && done && list.beyond == below)
        closer->step *= 2;
    else if (closer->nodes < MOST_NODES)
        closer->nodes *= 3;
    if (!done && closer->step > 1)
        closer->step /= 2;
    return covers;
}

void close_gap(struct work *work, struct colgen *cg, struct dive *dive, struct greedy *greedy)
{
    struct closer closer = {work, cg, dive, greedy, 1, FIRST_LIST, FIRST_NODES, 0, FIRST_DIVES, FIRST_PARTS};
    run_dives(&closer);
    if (is_settled(work) || fill_run(work))
        return;
    if (closer.most > work->most_patterns)
        closer.most = work->most_patterns;
    closer.step = (work->best->cost - work->bound) / work->norm.divisor / STEPS_TO_BEST;
    closer.step = closer.step < 1 ? 1 : closer.step;
    while (!is_settled(work)) {
        (void)work_spend(work, STEPS_A_TURN); /* even where nothing else counts, it ends */
        if (run_list(&closer))
            continue;
        if (work->norm.stocks > 2 && !is_settled(work)) /* more than one and the penalty */
            branch_run(work, cg, dive, greedy, closer.parts);
        if (closer.parts < MOST_PARTS)
            closer.parts *= 4;
        closer.most = closer.most * 3 < work->most_patterns ? closer.most * 3 : work->most_patterns;
        closer.dives = 2 * closer.dives < MOST_DIVES ? 2 * closer.dives : MOST_DIVES;
        run_dives(&closer);
    }
}
