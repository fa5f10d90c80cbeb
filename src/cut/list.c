/* Enumeration of patterns by reduced cost.  The reduced costs of a plan's sticks, in whole numbers of the dual's scale,
 * add up to no more than what the plan costs above the dual's sum: so no stick of a plan can have more than that.  As
 * demands may be exceeded, only patterns are listed in which nothing more fits, and none that would fit a stock that is
 * as cheap and endless. */
#include "list.h"

#include <string.h>

enum { MOST_TABLE = 6000000, STEPS_A_PATTERN = 60, MOST_HALVINGS = 40 };

struct lister {
    struct work *work;
    const struct norm *norm;
    const struct dual *dual;
    const struct span *span;
    struct list *list;
    int *order, types; /* types that are worth something by length, or by value per length without a table */
    int *nothing;      /* those that are not */
    int nothings;
    int64_t *table; /* most value of the types from a place on, in every length; NULL: too large */
    int64_t capacity;
    int *count;
    int stock;
    int64_t need; /* least value */
    size_t most;
    int64_t steps;
    bool full;
};

static int64_t *row(const struct lister *lister, int place)
{
    return lister->table + (size_t)place * (size_t)(lister->capacity + 1);
}

static int64_t least(int64_t a, int64_t b)
{
    return a < b ? a : b;
}

/* The best of one type more, for each length; copies of a residue class are a sliding window, here the plain way: one
 * copy after the other up to the demand. */
static void add_type(const struct lister *lister, int place)
{
    int type = lister->order[place];
    int64_t length = lister->norm->length[type], value = lister->dual->value[type], capacity = lister->capacity;
    int64_t copies = least(lister->norm->demand[type], capacity / length);
    int64_t *to = row(lister, place);
    memcpy(to, row(lister, place + 1), (size_t)(capacity + 1) * sizeof *to);
    for (int64_t chunk = 1; copies > 0; chunk *= 2) {
        int64_t take = least(chunk, copies);
        for (int64_t c = capacity; c >= take * length; c--)
            if (to[c - take * length] + take * value > to[c])
                to[c] = to[c - take * length] + take * value;
        copies -= take;
    }
}

static void fill_table(struct lister *lister)
{
    int64_t width = lister->capacity + 1;
    if (width > MOST_TABLE / (lister->types + 1))
        return;
    lister->table = arena_array(lister->work->list, (size_t)(lister->types + 1) * (size_t)width, sizeof(int64_t));
    for (int place = lister->types; place-- > 0;)
        add_type(lister, place);
    (void)work_spend(lister->work, lister->types * width / 500);
}

/* By value per length, the dearest first. */
static void order_by_ratio(struct lister *lister)
{
    const int64_t *value = lister->dual->value, *length = lister->norm->length;
    for (int i = 1; i < lister->types; i++) {
        int type = lister->order[i], at = i;
        for (; at > 0; at--) {
            int before = lister->order[at - 1];
            if ((wide_t)value[before] * length[type] >= (wide_t)value[type] * length[before])
                break;
            lister->order[at] = before;
        }
        lister->order[at] = type;
    }
}

/* No filling of `room` with the types from `place` on is worth more. */
static int64_t most_after(const struct lister *lister, int place, int64_t room)
{
    if (lister->table)
        return row(lister, place)[room];
    wide_t sum = 0;
    for (; place < lister->types && room > 0; place++) {
        int type = lister->order[place];
        int64_t length = lister->norm->length[type], demand = lister->norm->demand[type];
        if (demand * length > room)
            return (int64_t)(sum + (wide_t)lister->dual->value[type] * room / length);
        sum += (wide_t)demand * lister->dual->value[type];
        room -= demand * length;
    }
    return (int64_t)sum;
}

static bool is_covered_cheaper(const struct lister *lister, int64_t used)
{
    const struct norm *norm = lister->norm;
    int own = lister->stock;
    const int64_t cost = norm->cost[own];
    for (int s = 0; s < norm->stocks; s++)
        if (s != own && lister->span->most[s] == FORM_ENDLESS && norm->room[s] >= used &&
            (norm->cost[s] < cost || (norm->cost[s] == cost && s > own)))
            return true;
    return false;
}

static bool is_maximal(const struct lister *lister, int64_t room)
{
    const struct norm *norm = lister->norm;
    for (int i = norm->types; i-- > 0 && norm->length[i] <= room;)
        if (lister->count[i] < norm->demand[i])
            return false;
    return true;
}

static void add_pattern(struct lister *lister, int64_t room)
{
    const struct norm *norm = lister->norm;
    if (!is_maximal(lister, room) || is_covered_cheaper(lister, norm->room[lister->stock] - room))
        return;
    if (lister->list->pool.columns >= lister->most) {
        lister->full = true;
        return;
    }
    pool_add(&lister->list->pool, norm, lister->stock, lister->count);
}

/* Pieces that are worth nothing fill what is left, all ways. */
static void add_nothings(struct lister *lister, int place, int64_t room)
{
    const struct norm *norm = lister->norm;
    if (lister->full || ++lister->steps > (int64_t)lister->most * STEPS_A_PATTERN) {
        lister->full = true;
        return;
    }
    if (place == lister->nothings) {
        add_pattern(lister, room);
        return;
    }
    int type = lister->nothing[place];
    for (int64_t copies = least(norm->demand[type], room / norm->length[type]); copies >= 0; copies--) {
        lister->count[type] = (int)copies;
        add_nothings(lister, place + 1, room - copies * norm->length[type]);
    }
    lister->count[type] = 0;
}

/* Recursion is as deep as there are pieces of different types in a stick. */
static void search(struct lister *lister, int place, int64_t room, int64_t value)
{
    const struct norm *norm = lister->norm;
    if (lister->full || ++lister->steps > (int64_t)lister->most * STEPS_A_PATTERN) {
        lister->full = true;
        return;
    }
    if (value >= lister->need)
        add_nothings(lister, 0, room);
    for (; place < lister->types && !lister->full && value + most_after(lister, place, room) >= lister->need; place++) {
        int type = lister->order[place];
        int64_t length = norm->length[type], each = lister->dual->value[type];
        for (int64_t copies = least(norm->demand[type], room / length); copies > 0; copies--) {
            int64_t rest = room - copies * length, with = value + copies * each;
            if (with + most_after(lister, place + 1, rest) < lister->need)
                continue;
            lister->count[type] = (int)copies;
            search(lister, place + 1, rest, with);
        }
        lister->count[type] = 0;
    }
}

/* All patterns whose reduced cost is at most `slack`; false when there are too many. */
static bool list_within(struct lister *lister, wide_t slack)
{
    const struct norm *norm = lister->norm;
    pool_clear(&lister->list->pool);
    lister->full = false;
    lister->steps = 0;
    for (int s = 0; s < norm->stocks && !lister->full; s++) {
        if (lister->span->most[s] == 0)
            continue;
        wide_t need = (wide_t)lister->dual->scale * norm->cost[s] + lister->dual->extra[s] - slack;
        if (need > lister->dual->held[s])
            continue;
        lister->stock = s;
        lister->need = need > 0 ? (int64_t)need : 0;
        memset(lister->count, 0, (size_t)norm->types * sizeof(int));
        search(lister, 0, norm->room[s], 0);
    }
    (void)work_spend(lister->work, lister->steps / 20);
    return !lister->full;
}

static void start(struct lister *lister)
{
    const struct norm *norm = lister->norm;
    lister->order = arena_array(lister->work->list, (size_t)norm->types, sizeof(int));
    lister->nothing = arena_array(lister->work->list, (size_t)norm->types, sizeof(int));
    lister->count = arena_array(lister->work->list, (size_t)norm->types, sizeof(int));
    for (int i = 0; i < norm->types; i++) {
        if (lister->dual->value[i] > 0)
            lister->order[lister->types++] = i;
        else
            lister->nothing[lister->nothings++] = i;
    }
    for (int s = 0; s < norm->stocks; s++)
        lister->capacity = norm->room[s] > lister->capacity ? norm->room[s] : lister->capacity;
    fill_table(lister);
    if (!lister->table)
        order_by_ratio(lister);
}

void list_make(struct work *work, struct list *list, const struct dual *dual, const struct span *span, int64_t below,
               size_t most)
{
    const struct norm *norm = &work->norm;
    struct lister lister = {.work = work, .norm = norm, .dual = dual, .list = list, .span = span, .most = most};
    start(&lister);
    pool_start(&list->pool, work->list);
    int64_t lowest = work_round(norm, dual->sum, dual->scale);
    for (list->beyond = below; list->beyond > lowest;) {
        list->below = list->beyond;
        if (list_within(&lister, (wide_t)dual->scale * (list->beyond - norm->divisor) - dual->sum))
            return;
        list->beyond = lowest + (list->beyond - lowest) / norm->divisor / 2 * norm->divisor;
    }
    list->below = below;
    wide_t slack = (wide_t)dual->scale * lowest - dual->sum;
    for (int halving = 0; halving < MOST_HALVINGS && !list_within(&lister, slack); halving++)
        slack /= 2;
}

static wide_t reduced_cost(const struct norm *norm, const struct pool *pool, const struct column *column,
                           const struct dual *dual)
{
    wide_t cost = (wide_t)dual->scale * norm->cost[column->stock] + dual->extra[column->stock];
    for (int i = 0; i < column->count; i++) {
        const struct use *use = &pool->use[column->first + i];
        cost -= (wide_t)dual->value[use->type] * use->count;
    }
    return cost;
}

void list_add_pool(struct work *work, struct list *list, const struct pool *pool, const struct dual *dual)
{
    const struct norm *norm = &work->norm;
    wide_t slack = (wide_t)dual->scale * (list->below - norm->divisor) - dual->sum;
    for (size_t j = 0; j < pool->columns; j++)
        if (reduced_cost(norm, pool, &pool->column[j], dual) <= slack)
            pool_copy(&list->pool, pool, (int)j);
}
