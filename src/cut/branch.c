/* Where sticks are few and dear the bound lies far below the best plan, and the numbers of sticks decide.  A node holds
 * them within a span; its linear programme is solved anew by column generation, then its patterns are listed where they
 * are few enough, which settles it; else it is split.  The lowest bound comes first. */
#include "branch.h"

#include <math.h>
#include <string.h>

#include "tree.h"

enum { MOST_ROUNDS = 3000, LIST = 3000, TREE_NODES = 1500, DIVES_AT_NODES = 40 };
static const double NEARLY_WHOLE = 1e-6;

struct part {
    struct span span;
    int64_t bound;
    bool closed, stuck; /* stuck: it cannot be split, and its list is too long */
};
struct brancher {
    struct work *work;
    struct colgen *cg;
    struct dive *dive;
    struct greedy *greedy;
    struct part *part;
    size_t count, room;
    int solved;
};

static void end_search(void *owner)
{
    struct work *work = owner;
    longjmp(work->full, 1);
}

static void add_part(struct brancher *brancher, const struct span *span, int64_t bound)
{
    struct arena *arena = brancher->work->arena;
    size_t stocks = (size_t)brancher->work->norm.stocks, size = stocks * sizeof(int64_t);
    brancher->part = arena_more(arena, brancher->part, brancher->count, &brancher->room, sizeof *brancher->part);
    struct part *part = &brancher->part[brancher->count++];
    *part = (struct part){.bound = bound};
    part->span.least = arena_array(arena, stocks, sizeof(int64_t));
    part->span.most = arena_array(arena, stocks, sizeof(int64_t));
    memcpy(part->span.least, span->least, size);
    memcpy(part->span.most, span->most, size);
}

/* Of the parts that can still be worked on the one with the lowest bound; NULL when none is left. */
static struct part *next_part(struct brancher *brancher)
{
    struct part *best = NULL;
    for (size_t i = 0; i < brancher->count; i++) {
        struct part *part = &brancher->part[i];
        part->closed = part->closed || part->bound >= brancher->work->best->cost;
        if (!part->closed && !part->stuck && (!best || part->bound < best->bound))
            best = part;
    }
    return best;
}

/* The lowest bound of what is left, and the best plan's cost. */
static int64_t lowest_bound(const struct brancher *brancher)
{
    int64_t lowest = brancher->work->best->cost;
    for (size_t i = 0; i < brancher->count; i++)
        if (!brancher->part[i].closed && brancher->part[i].bound < lowest)
            lowest = brancher->part[i].bound;
    return lowest;
}

/* The stock whose number of sticks is nearest the middle between two whole ones; -1 when all are whole. */
static int pick_stock(const struct brancher *brancher, double *sum)
{
    const struct colgen *cg = brancher->cg;
    const struct norm *norm = &brancher->work->norm;
    int best = -1;
    double best_away = 0.5 - NEARLY_WHOLE;
    for (int s = 0; s < norm->stocks; s++) {
        double used = 0;
        for (size_t j = 0; j < cg->pool.columns; j++)
            if (cg->pool.column[j].stock == s)
                used += master_use(cg->master, (int)j);
        double away = fabs(used - floor(used) - 0.5);
        if (away < best_away) {
            best_away = away;
            best = s;
            *sum = used;
        }
    }
    return best;
}

static void split(struct brancher *brancher, size_t index, int stock, double used)
{
    struct part *part = &brancher->part[index];
    int64_t whole = (int64_t)floor(used), least = part->span.least[stock], most = part->span.most[stock];
    struct span span = part->span;
    int64_t bound = part->bound;
    part->closed = true;
    span.most[stock] = whole;
    add_part(brancher, &span, bound);
    span.most[stock] = most;
    span.least[stock] = whole + 1;
    add_part(brancher, &span, bound);
    span.least[stock] = least;
}

/* True when the part's listed patterns are few enough and the search over them ends. */
static bool settle_by_list(struct brancher *brancher, struct part *part, size_t most)
{
    struct work *work = brancher->work;
    struct list list;
    most = most < work->most_patterns ? most : work->most_patterns;
    work->list = arena_new(work->most_memory / 2, end_search, work);
    list_make(work, &list, &brancher->cg->dual, &part->span, work->best->cost, most);
    bool covers = list.beyond >= work->best->cost;
    bool done = covers && tree_run(work, &list, &part->span, brancher->greedy, TREE_NODES);
    arena_free(work->list);
    work->list = NULL;
    return done;
}

static void solve_part(struct brancher *brancher, struct part *part)
{
    struct work *work = brancher->work;
    struct colgen *cg = brancher->cg;
    cg->span = part->span;
    if (brancher->solved++ < DIVES_AT_NODES)
        (void)dive_run(brancher->dive, 0);
    colgen_reset(cg);
    colgen_set_left(cg);
    enum colgen_end end = colgen_run(cg, MOST_ROUNDS, work->best->cost, false);
    int64_t bound = work_round(&work->norm, cg->dual.sum, cg->dual.scale);
    part->bound = bound > part->bound ? bound : part->bound;
    if (part->bound >= work->best->cost)
        return;
    double used = 0;
    int stock = end == COLGEN_FAILED ? -1 : pick_stock(brancher, &used);
    size_t index = (size_t)(part - brancher->part);
    if (settle_by_list(brancher, part, stock < 0 ? work->most_patterns : LIST))
        brancher->part[index].closed = true;
    else if (stock < 0)
        brancher->part[index].stuck = true;
    else
        split(brancher, index, stock, used);
}

void branch_run(struct work *work, struct colgen *cg, struct dive *dive, struct greedy *greedy, int nodes)
{
    struct brancher brancher = {.work = work, .cg = cg, .dive = dive, .greedy = greedy};
    add_part(&brancher, &work->span, work->bound);
    for (; nodes > 0 && !work_over(work); nodes--) {
        struct part *part = next_part(&brancher);
        if (!part)
            break;
        work->nodes++;
        solve_part(&brancher, part);
        work_raise(work, lowest_bound(&brancher));
    }
    cg->span = work->span;
    colgen_reset(cg);
    colgen_set_left(cg);
}
