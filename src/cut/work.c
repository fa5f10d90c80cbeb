/* What a run of the solver carries along: pools of patterns, plans, the account of work done. */
#include "work.h"

#include <string.h>

void pool_start(struct pool *pool, struct arena *arena)
{
    *pool = (struct pool){.arena = arena};
}

void pool_clear(struct pool *pool)
{
    pool->columns = pool->uses = 0;
}

static struct column *add_column(struct pool *pool, int stock)
{
    pool->column = arena_more(pool->arena, pool->column, pool->columns, &pool->column_room, sizeof *pool->column);
    struct column *column = &pool->column[pool->columns++];
    *column = (struct column){.stock = stock, .first = (int)pool->uses};
    return column;
}

static void add_use(struct pool *pool, struct column *column, struct use use)
{
    pool->use = arena_more(pool->arena, pool->use, pool->uses, &pool->use_room, sizeof *pool->use);
    pool->use[pool->uses++] = use;
    column->count++;
}

int pool_add(struct pool *pool, const struct norm *norm, int stock, const int *count)
{
    struct column *column = add_column(pool, stock);
    for (int i = 0; i < norm->types; i++)
        if (count[i] > 0) {
            add_use(pool, column, (struct use){i, count[i]});
            column->used += norm->length[i] * count[i];
        }
    return (int)pool->columns - 1;
}

int pool_copy(struct pool *pool, const struct pool *from, int index)
{
    struct column *column = add_column(pool, from->column[index].stock);
    column->used = from->column[index].used;
    for (int i = 0; i < from->column[index].count; i++)
        add_use(pool, column, from->use[from->column[index].first + i]);
    return (int)pool->columns - 1;
}

bool pool_same(const struct pool *a, int i, const struct pool *b, int j)
{
    const struct column *x = &a->column[i], *y = &b->column[j];
    if (x->stock != y->stock || x->count != y->count || x->used != y->used)
        return false;
    return memcmp(a->use + x->first, b->use + y->first, (size_t)x->count * sizeof(struct use)) == 0;
}

void answer_start(struct answer *answer, struct arena *arena)
{
    *answer = (struct answer){.cost = NO_COST};
    pool_start(&answer->pool, arena);
}

void answer_clear(struct answer *answer)
{
    pool_clear(&answer->pool);
    answer->cost = 0;
}

void answer_add(struct answer *answer, const struct norm *norm, const struct pool *pool, int column, int64_t times)
{
    answer->times =
        arena_more(answer->pool.arena, answer->times, answer->pool.columns, &answer->times_room, sizeof(int64_t));
    answer->times[answer->pool.columns] = times;
    answer->cost += times * norm->cost[pool->column[column].stock];
    pool_copy(&answer->pool, pool, column);
}

void answer_copy(struct answer *to, const struct answer *from, const struct norm *norm)
{
    answer_clear(to);
    for (size_t i = 0; i < from->pool.columns; i++)
        answer_add(to, norm, &from->pool, (int)i, from->times[i]);
    to->cost = from->cost;
}

void dual_start(struct dual *dual, struct arena *arena, const struct norm *norm)
{
    int64_t dearest = norm->most_cost;
    if (norm->penalty >= 0 && norm->cost[norm->penalty] > dearest)
        dearest = norm->cost[norm->penalty];
    dual->scale = norm_scale(norm, dearest);
    dual->value = arena_array(arena, (size_t)norm->types, sizeof(int64_t));
    dual->extra = arena_array(arena, (size_t)norm->stocks, sizeof(int64_t));
    dual->held = arena_array(arena, (size_t)norm->stocks, sizeof(int64_t));
    dual->sum = 0;
}

void dual_copy(struct dual *to, const struct dual *from, const struct norm *norm)
{
    memcpy(to->value, from->value, (size_t)norm->types * sizeof(int64_t));
    memcpy(to->extra, from->extra, (size_t)norm->stocks * sizeof(int64_t));
    memcpy(to->held, from->held, (size_t)norm->stocks * sizeof(int64_t));
    to->sum = from->sum;
    to->scale = from->scale;
}

bool work_over(const struct work *work)
{
    return work->stopped || work->steps > work->most_steps || work->nodes > work->most_nodes ||
           master_lost(work->library);
}

enum { STEPS_A_LOOK = 2000 };

bool work_spend(struct work *work, int64_t steps)
{
    work->steps += steps;
    if (work->limits && work->limits->stop && work->steps >= work->next_look) {
        work->next_look = work->steps + STEPS_A_LOOK;
        if (work->limits->stop(work->limits->owner))
            work->stopped = true;
    }
    return !work_over(work);
}

/* Into the spare one first: when memory ends on the way the best stays whole. */
bool work_offer(struct work *work, const struct answer *answer)
{
    if (answer->cost >= work->best->cost)
        return false;
    answer_copy(work->spare, answer, &work->norm);
    struct answer *old = work->best;
    work->best = work->spare;
    work->spare = old;
    return true;
}

bool work_closed(const struct work *work)
{
    return work->best->cost <= work->bound;
}

int64_t bound_round(wide_t sum, int64_t scale, int64_t divisor)
{
    if (sum <= 0)
        return 0;
    wide_t bound = (sum + scale - 1) / scale;
    return (int64_t)((bound + divisor - 1) / divisor * divisor);
}

int64_t work_round(const struct norm *norm, wide_t sum, int64_t scale)
{
    return bound_round(sum, scale, norm->divisor);
}

void work_raise(struct work *work, int64_t bound)
{
    if (bound > work->bound)
        work->bound = bound;
}

void work_take_dual(struct work *work, const struct dual *dual)
{
    work_raise(work, work_round(&work->norm, dual->sum, dual->scale));
    if (dual->sum > work->dual.sum)
        dual_copy(&work->dual, dual, &work->norm);
}
