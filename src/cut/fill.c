/* Subset sums.  Sets of sums are kept as bits, one set for each item more, so that any way to a sum can be walked back;
 * the ways are drawn at random, the same ones in every run. */
#include "fill.h"

#include <string.h>

enum { MOST_ITEMS = 400, MOST_TRIES = 4000, WORD = 64, WORDS_A_STEP = 400, PART_OF_STEPS = 20 };
static const size_t MOST_WORDS = (size_t)1 << 20;

/* Sums of the first items: row k has a bit for each sum of some of items 0 .. k - 1. */
struct sums {
    int64_t *length; /* of each item */
    int *index;      /* what it is: a type, a stock */
    int items;
    int64_t most; /* the greatest sum kept */
    size_t words; /* of a row */
    uint64_t *row;
};

struct fill {
    struct work *work;
    struct sums sticks, pieces;
    int64_t *demand;
    int *count, *stick; /* of a stick, by type; the stocks of this try */
    int stick_count;
    struct pool pool;
    struct answer trial;
    uint32_t seed;
};

static uint32_t draw(struct fill *fill)
{
    fill->seed = fill->seed * 1664525U + 1013904223U;
    return fill->seed >> 16;
}

static bool has(const struct sums *sums, int items, int64_t sum)
{
    return sum >= 0 && sum <= sums->most &&
           (sums->row[(size_t)items * sums->words + (size_t)(sum / WORD)] >> (sum % WORD) & 1);
}

/* to = from, and from moved up by so many bits. */
static void add_moved(uint64_t *to, const uint64_t *from, size_t words, int64_t by)
{
    size_t whole = (size_t)(by / WORD), part = (size_t)(by % WORD);
    memcpy(to, from, words * sizeof *to);
    for (size_t i = whole; i < words; i++) {
        to[i] |= from[i - whole] << part;
        if (part > 0 && i > whole)
            to[i] |= from[i - whole - 1] >> (WORD - part);
    }
}

static void sum_up(struct fill *fill, struct sums *sums, int64_t most)
{
    sums->most = most;
    sums->words = (size_t)(most / WORD) + 1;
    memset(sums->row, 0, sums->words * sizeof *sums->row);
    sums->row[0] = 1;
    for (int i = 0; i < sums->items; i++)
        add_moved(sums->row + (size_t)(i + 1) * sums->words, sums->row + (size_t)i * sums->words, sums->words,
                  sums->length[i]);
    (void)work_spend(fill->work, (int64_t)((size_t)sums->items * sums->words / WORDS_A_STEP) + 1);
}

/* One random way to the sum; of two equally good ones the item is taken `odds` times of four. */
static void walk_back(struct fill *fill, const struct sums *sums, int64_t sum, unsigned odds, int *times)
{
    for (int k = sums->items; k > 0; k--) {
        bool may_leave = has(sums, k - 1, sum), may_take = has(sums, k - 1, sum - sums->length[k - 1]);
        if (!may_take || (may_leave && draw(fill) % 4 >= odds))
            continue;
        times[sums->index[k - 1]]++;
        sum -= sums->length[k - 1];
    }
}

static void list_pieces(struct fill *fill)
{
    const struct norm *norm = &fill->work->norm;
    fill->pieces.items = 0;
    for (int t = norm->types - 1; t >= 0; t--)
        for (int64_t n = 0; n < fill->demand[t]; n++) {
            fill->pieces.length[fill->pieces.items] = norm->length[t];
            fill->pieces.index[fill->pieces.items++] = t;
        }
}

static void keep_stick(struct fill *fill, int stock)
{
    const struct norm *norm = &fill->work->norm;
    pool_clear(&fill->pool);
    for (int t = 0; t < norm->types; t++)
        fill->demand[t] -= fill->count[t];
    answer_add(&fill->trial, norm, &fill->pool, pool_add(&fill->pool, norm, stock, fill->count), 1);
}

static bool take(struct fill *fill, int stock, int64_t sum)
{
    memset(fill->count, 0, (size_t)fill->work->norm.types * sizeof *fill->count);
    walk_back(fill, &fill->pieces, sum, 3, fill->count); /* the short ones are kept for the last sticks */
    keep_stick(fill, stock);
    return true;
}

/* The stick takes a sum from `least` to its room. */
static bool fill_stick(struct fill *fill, int stock, int64_t least)
{
    list_pieces(fill);
    int64_t room = fill->work->norm.room[stock];
    sum_up(fill, &fill->pieces, room);
    for (int64_t sum = room; sum >= least && sum >= 0; sum--)
        if (has(&fill->pieces, fill->pieces.items, sum))
            return take(fill, stock, sum);
    return false;
}

static int64_t left_over(const struct fill *fill)
{
    const struct norm *norm = &fill->work->norm;
    int64_t left = 0;
    for (int t = 0; t < norm->types; t++)
        left += norm->length[t] * fill->demand[t];
    return left;
}

/* The sticks of this try, in a random order, each as full as the waste still allowed asks for. */
static bool fill_sticks(struct fill *fill, int64_t waste)
{
    const struct norm *norm = &fill->work->norm;
    for (int i = fill->stick_count - 1; i > 0; i--) {
        int j = (int)(draw(fill) % (unsigned)(i + 1)), stock = fill->stick[i];
        fill->stick[i] = fill->stick[j];
        fill->stick[j] = stock;
    }
    answer_clear(&fill->trial);
    for (int i = 0; i < fill->stick_count; i++) {
        int64_t before = left_over(fill), room = norm->room[fill->stick[i]];
        if (work_over(fill->work) || !fill_stick(fill, fill->stick[i], room - waste))
            return false;
        waste -= room - (before - left_over(fill));
    }
    return left_over(fill) == 0;
}

static bool one_try(struct fill *fill, int64_t least, int64_t most)
{
    const struct norm *norm = &fill->work->norm;
    int64_t sum = most;
    while (sum >= least && !has(&fill->sticks, fill->sticks.items, sum))
        sum--;
    if (sum < least)
        return false;
    int *times = fill->count; /* by stock, for a moment */
    memset(times, 0, (size_t)norm->stocks * sizeof *times);
    walk_back(fill, &fill->sticks, sum, 2, times);
    fill->stick_count = 0;
    for (int s = 0; s < norm->stocks; s++)
        for (int n = 0; n < times[s]; n++)
            fill->stick[fill->stick_count++] = s;
    memcpy(fill->demand, norm->demand, (size_t)norm->types * sizeof *fill->demand);
    return fill_sticks(fill, sum - least) && work_offer(fill->work, &fill->trial);
}

/* Stocks that are sold all cost the same a unit of length. */
static bool is_in_proportion(const struct norm *norm)
{
    for (int s = 0; s < norm->stocks; s++)
        if (s != norm->penalty &&
            (norm->cost[s] == 0 || (wide_t)norm->cost[s] * norm->room[0] != (wide_t)norm->cost[0] * norm->room[s]))
            return false;
    return norm->stocks > 0 && norm->penalty != 0;
}

static void list_sticks(struct fill *fill, int64_t need)
{
    const struct norm *norm = &fill->work->norm;
    struct sums *sums = &fill->sticks;
    for (int s = 0; s < norm->stocks; s++) {
        int64_t most = need / norm->room[s] + 1;
        if (norm->supply[s] >= 0 && norm->supply[s] < most)
            most = norm->supply[s];
        for (int64_t n = 0; n < most && s != norm->penalty && sums->items < MOST_ITEMS; n++) {
            sums->length[sums->items] = norm->room[s];
            sums->index[sums->items++] = s;
        }
    }
}

static bool make_room(struct fill *fill, struct sums *sums, int64_t items, int64_t most)
{
    size_t words = (size_t)(items + 1) * ((size_t)(most / WORD) + 1);
    if (words > MOST_WORDS)
        return false;
    sums->length = arena_array(fill->work->arena, (size_t)items, sizeof *sums->length);
    sums->index = arena_array(fill->work->arena, (size_t)items, sizeof *sums->index);
    sums->row = arena_array(fill->work->arena, words, sizeof *sums->row);
    return true;
}

bool fill_run(struct work *work)
{
    const struct norm *norm = &work->norm;
    if (norm->pieces > MOST_ITEMS || !is_in_proportion(norm))
        return false;
    struct fill fill = {.work = work, .seed = 1};
    int64_t need = 0, longest = 0;
    for (int t = 0; t < norm->types; t++)
        need += norm->length[t] * norm->demand[t];
    for (int s = 0; s < norm->stocks; s++)
        longest = s != norm->penalty && norm->room[s] > longest ? norm->room[s] : longest;
    int64_t most = (int64_t)((wide_t)work->bound * norm->room[0] / norm->cost[0]);
    if (most < need || !make_room(&fill, &fill.sticks, MOST_ITEMS, most) ||
        !make_room(&fill, &fill.pieces, norm->pieces, longest))
        return false;
    size_t kinds = (size_t)(norm->types > norm->stocks ? norm->types : norm->stocks);
    fill.demand = arena_array(work->arena, (size_t)norm->types, sizeof *fill.demand);
    fill.count = arena_array(work->arena, kinds, sizeof *fill.count);
    fill.stick = arena_array(work->arena, MOST_ITEMS, sizeof *fill.stick);
    pool_start(&fill.pool, work->arena);
    answer_start(&fill.trial, work->arena);
    list_sticks(&fill, need);
    sum_up(&fill, &fill.sticks, most);
    const int64_t end = work->steps + work->most_steps / PART_OF_STEPS;
    for (int i = 0; i < MOST_TRIES && work->steps < end && !work_over(work); i++)
        if (one_try(&fill, need, most))
            return true;
    return false;
}
