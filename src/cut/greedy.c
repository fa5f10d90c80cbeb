/* Filling sticks with the longest pieces first. */
#include "greedy.h"

#include <string.h>

enum { MOST_WAYS = 16 };
/* Ways: one stock as far as it holds the longest piece, else the cheapest that does; or, stick by stick, the stock that
 * costs least for the length that is used of it. */
enum { WAY_BY_RATIO = -1 };

void greedy_start(struct greedy *greedy, struct arena *arena, const struct norm *norm)
{
    greedy->demand = arena_array(arena, (size_t)norm->types, sizeof(int64_t));
    greedy->supply = arena_array(arena, (size_t)norm->stocks, sizeof(int64_t));
    greedy->count = arena_array(arena, (size_t)norm->types, sizeof(int));
    pool_start(&greedy->pool, arena);
}

static bool has_supply(const struct greedy *greedy, int stock)
{
    return greedy->supply[stock] != 0; /* endless is below 0 */
}

/* Length used. */
static int64_t fill(const struct norm *norm, struct greedy *greedy, int64_t room, int from)
{
    int64_t used = 0;
    memset(greedy->count, 0, (size_t)norm->types * sizeof(int));
    for (int i = from; i < norm->types; i++) {
        if (greedy->demand[i] <= 0 || norm->length[i] > room - used)
            continue;
        int64_t copies = (room - used) / norm->length[i];
        copies = copies < greedy->demand[i] ? copies : greedy->demand[i];
        greedy->count[i] = (int)copies;
        used += copies * norm->length[i];
    }
    return used;
}

/* The cheapest stock with this room, the longest of equals; -1 when none is left. */
static int cheapest(const struct norm *norm, const struct greedy *greedy, int64_t used)
{
    int best = -1;
    for (int s = 0; s < norm->stocks; s++)
        if (norm->room[s] >= used && has_supply(greedy, s) && (best < 0 || norm->cost[s] < norm->cost[best]))
            best = s;
    return best;
}

static int best_by_ratio(const struct norm *norm, struct greedy *greedy, int first)
{
    int best = -1;
    int64_t best_used = 1;
    for (int s = 0; s < norm->stocks; s++) {
        if (norm->room[s] < norm->length[first] || !has_supply(greedy, s) || s == norm->penalty)
            continue;
        int64_t used = fill(norm, greedy, norm->room[s], first);
        if (best < 0 || (double)norm->cost[s] * (double)best_used < (double)norm->cost[best] * (double)used) {
            best = s;
            best_used = used;
        }
    }
    return best;
}

static int choose(const struct norm *norm, struct greedy *greedy, int way, int first)
{
    int stock = way;
    if (way == WAY_BY_RATIO)
        stock = best_by_ratio(norm, greedy, first);
    if (stock < 0 || norm->room[stock] < norm->length[first] || !has_supply(greedy, stock))
        stock = cheapest(norm, greedy, norm->length[first]);
    return stock;
}

/* How many sticks may be cut so; takes them off what is left. */
static int64_t repeat(const struct norm *norm, struct greedy *greedy, int stock)
{
    int64_t times = greedy->supply[stock] < 0 ? INT64_MAX : greedy->supply[stock];
    for (int i = 0; i < norm->types; i++)
        if (greedy->count[i] > 0 && greedy->demand[i] / greedy->count[i] < times)
            times = greedy->demand[i] / greedy->count[i];
    for (int i = 0; i < norm->types; i++)
        greedy->demand[i] -= times * greedy->count[i];
    if (greedy->supply[stock] > 0)
        greedy->supply[stock] -= times;
    return times;
}

/* The cost of the way; NO_COST when stock runs out or it comes to `below`.  Sticks go to the answer if there is one. */
static int64_t run_way(struct work *work, struct greedy *greedy, int way, int64_t below, struct answer *answer)
{
    const struct norm *norm = &work->norm;
    int64_t cost = 0;
    for (int first = 0; first < norm->types;) {
        if (greedy->demand[first] <= 0) {
            first++;
            continue;
        }
        int stock = choose(norm, greedy, way, first);
        if (stock < 0)
            return NO_COST;
        int64_t used = fill(norm, greedy, norm->room[stock], first);
        stock = cheapest(norm, greedy, used);
        int64_t times = repeat(norm, greedy, stock);
        cost += times * norm->cost[stock];
        if (cost >= below)
            return NO_COST;
        if (answer) {
            pool_clear(&greedy->pool);
            pool_add(&greedy->pool, norm, stock, greedy->count);
            answer_add(answer, norm, &greedy->pool, 0, times);
        }
    }
    return cost;
}

static void set_left(const struct norm *norm, struct greedy *greedy, const int64_t *demand, const int64_t *supply)
{
    memcpy(greedy->demand, demand, (size_t)norm->types * sizeof(int64_t));
    memcpy(greedy->supply, supply, (size_t)norm->stocks * sizeof(int64_t));
}

bool greedy_finish(struct work *work, struct greedy *greedy, const int64_t *demand, const int64_t *supply,
                   int64_t below, struct answer *answer)
{
    const struct norm *norm = &work->norm;
    int best = norm->stocks;
    int64_t least = below - answer->cost;
    int step = norm->stocks / MOST_WAYS + 1;
    for (int way = WAY_BY_RATIO; way < norm->stocks; way += way < 0 ? 1 : step) {
        (void)work_spend(work, (norm->types + norm->stocks) / 4 + 1);
        set_left(norm, greedy, demand, supply);
        int64_t cost = run_way(work, greedy, way, least, NULL);
        if (cost >= least)
            continue;
        least = cost;
        best = way;
    }
    if (best == norm->stocks)
        return false;
    set_left(norm, greedy, demand, supply);
    (void)run_way(work, greedy, best, NO_COST, answer);
    return true;
}
