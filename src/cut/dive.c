/* Diving with column generation. */
#include "dive.h"

#include <math.h>

enum { MOST_DEPTH = 100000, ROUNDS_A_STEP = 15 };
static const double NEARLY_WHOLE = 1e-6;

void dive_start(struct dive *dive, struct colgen *cg, struct greedy *greedy)
{
    *dive = (struct dive){.work = cg->work, .cg = cg, .greedy = greedy};
    answer_start(&dive->now, cg->work->arena);
    answer_start(&dive->trial, cg->work->arena);
}

/* The most copies of the pattern that what is left can take. */
static int64_t most_times(const struct colgen *cg, int index)
{
    const struct column *column = &cg->pool.column[index];
    int64_t most = cg->supply[column->stock] < 0 ? INT64_MAX : cg->supply[column->stock];
    for (int i = 0; i < column->count; i++) {
        const struct use *use = &cg->pool.use[column->first + i];
        int64_t fit = cg->demand[use->type] / use->count;
        most = fit < most ? fit : most;
    }
    return most;
}

static void fix(struct dive *dive, int index, int64_t times)
{
    struct colgen *cg = dive->cg;
    const struct column *column = &cg->pool.column[index];
    for (int i = 0; i < column->count; i++) {
        const struct use *use = &cg->pool.use[column->first + i];
        cg->demand[use->type] -= times * use->count;
    }
    if (cg->supply[column->stock] > 0)
        cg->supply[column->stock] -= times;
    cg->least[column->stock] = cg->least[column->stock] > times ? cg->least[column->stock] - times : 0;
    answer_add(&dive->now, &dive->work->norm, &cg->pool, index, times);
}

/* Every whole part of the programme's solution is fixed. */
static bool fix_whole(struct dive *dive)
{
    struct colgen *cg = dive->cg;
    bool any = false;
    for (size_t j = 0; j < cg->pool.columns; j++) {
        int64_t times = (int64_t)floor(master_use(dive->cg->master, (int)j) + NEARLY_WHOLE);
        if (times <= 0)
            continue;
        int64_t most = most_times(cg, (int)j);
        times = times < most ? times : most;
        if (times > 0) {
            fix(dive, (int)j, times);
            any = true;
        }
    }
    return any;
}

/* The column with the greatest part, after leaving out `skip` of them; -1 when none can be used. */
static int pick(const struct dive *dive, int skip)
{
    const struct colgen *cg = dive->cg;
    double limit = 2;
    int best = -1;
    for (int round = 0; round <= skip; round++) {
        int found = -1;
        double found_use = NEARLY_WHOLE;
        for (size_t j = 0; j < cg->pool.columns; j++) {
            double use = master_use(dive->cg->master, (int)j);
            if (use <= found_use + 1e-9 || use >= limit - 1e-9 || most_times(cg, (int)j) == 0)
                continue;
            found = (int)j;
            found_use = use;
        }
        if (found < 0)
            break;
        best = found;
        limit = found_use;
    }
    return best;
}

static bool all_cut(const struct colgen *cg)
{
    for (int i = 0; i < cg->work->norm.types; i++)
        if (cg->demand[i] > 0)
            return false;
    return true;
}

/* The rest filled the simple way: a whole plan if that is cheaper. */
static bool try_finish(struct dive *dive)
{
    struct work *work = dive->work;
    answer_copy(&dive->trial, &dive->now, &work->norm);
    if (!greedy_finish(work, dive->greedy, dive->cg->demand, dive->cg->supply, work->best->cost, &dive->trial))
        return false;
    return work_offer(work, &dive->trial);
}

static bool is_hopeless(const struct dive *dive)
{
    const struct norm *norm = &dive->work->norm;
    double cost = (double)dive->now.cost + dive->cg->value * dive->cg->unit;
    return cost > (double)(dive->work->best->cost - norm->divisor) + 1e-6 * (double)norm->divisor;
}

static void reset(struct dive *dive)
{
    colgen_reset(dive->cg);
    colgen_set_left(dive->cg);
}

bool dive_run(struct dive *dive, int turn)
{
    struct work *work = dive->work;
    bool better = false;
    answer_clear(&dive->now);
    reset(dive);
    for (int depth = 0; depth < MOST_DEPTH; depth++) {
        enum colgen_end end = colgen_run(dive->cg, ROUNDS_A_STEP, NO_COST, false);
        if (end == COLGEN_FAILED || work_over(work) || is_hopeless(dive))
            break;
        bool fixed = (depth > 0 || turn == 0) && fix_whole(dive);
        if (!fixed) {
            /* The turns differ in where they leave the beaten track: once, at this depth and by so much. */
            int skip = turn > 0 && depth == (turn - 1) / 3 ? (turn - 1) % 3 + 1 : 0;
            int column = pick(dive, skip);
            if (column < 0)
                break;
            fix(dive, column, 1);
        }
        if (all_cut(dive->cg)) {
            better = work_offer(work, &dive->now) || better;
            break;
        }
        better = try_finish(dive) || better;
        if (work_closed(work))
            break;
        colgen_set_left(dive->cg);
    }
    reset(dive);
    return better;
}
