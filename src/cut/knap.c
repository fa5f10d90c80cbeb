/* The bounded knapsack: dynamic programming over every length, or depth-first search where the lengths are too many. */
#include "knap.h"

#include <stdlib.h>
#include <string.h>

/* Beyond this many cells (passes x lengths) the search takes over: 64 MB of marks. */
enum { MOST_CELLS = 64000000, MOST_NODES = 2000000 };

static int64_t least_of(int64_t a, int64_t b)
{
    return a < b ? a : b;
}

/* Copies of a type that can lie in the longest stock. */
static int64_t copies_of(const struct norm *norm, int64_t capacity, int type, int64_t most)
{
    return least_of(most, capacity / norm->length[type]);
}

static int count_passes(int64_t copies)
{
    int passes = 0;
    for (; copies > 0; copies /= 2)
        passes++;
    return passes;
}

void knap_start(struct knap *knap, struct arena *arena, const struct norm *norm)
{
    *knap = (struct knap){.norm = norm, .most_nodes = MOST_NODES};
    for (int s = 0; s < norm->stocks; s++)
        if (norm->room[s] > knap->capacity)
            knap->capacity = norm->room[s];
    for (int i = 0; i < norm->types; i++)
        knap->pass_room += count_passes(copies_of(norm, knap->capacity, i, norm->demand[i]));
    size_t types = (size_t)norm->types, stocks = (size_t)norm->stocks;
    knap->value = arena_array(arena, types, sizeof(int64_t));
    knap->most = arena_array(arena, types, sizeof(int64_t));
    knap->result = arena_array(arena, stocks, sizeof(int64_t));
    knap->dense = knap->capacity < MOST_CELLS && (knap->capacity + 1) * knap->pass_room <= MOST_CELLS;
    if (knap->dense) {
        knap->best = arena_array(arena, (size_t)knap->capacity + 1, sizeof(int64_t));
        knap->took = arena_array(arena, (size_t)knap->pass_room, (size_t)knap->capacity + 1);
        knap->pass = arena_array(arena, (size_t)knap->pass_room, sizeof *knap->pass);
        return;
    }
    knap->order = arena_array(arena, types, sizeof(int));
    knap->least = arena_array(arena, types + 1, sizeof(int64_t));
    knap->fill = arena_array(arena, stocks * types, sizeof(int));
    knap->now = arena_array(arena, types, sizeof(int));
}

/* One more copy on top of what this pass has given already. */
static void pass_repeat(int64_t *best, unsigned char *took, int64_t capacity, int64_t weight, int64_t value)
{
    memset(took, 0, (size_t)weight);
    for (int64_t c = weight; c <= capacity; c++) {
        int64_t with = best[c - weight] + value;
        bool better = with > best[c];
        took[c] = better;
        best[c] = better ? with : best[c];
    }
}

static void pass_once(int64_t *best, unsigned char *took, int64_t capacity, int64_t weight, int64_t value)
{
    memset(took, 0, (size_t)weight);
    for (int64_t c = capacity; c >= weight; c--) {
        int64_t with = best[c - weight] + value;
        bool better = with > best[c];
        took[c] = better;
        best[c] = better ? with : best[c];
    }
}

static void add_pass(struct knap *knap, int type, int64_t copies, bool repeat)
{
    size_t width = (size_t)knap->capacity + 1;
    unsigned char *took = knap->took + (size_t)knap->passes * width;
    int64_t weight = knap->norm->length[type] * copies, value = knap->value[type] * copies;
    knap->pass[knap->passes++] = (struct pass){type, repeat ? 0 : (int)copies, weight};
    if (repeat)
        pass_repeat(knap->best, took, knap->capacity, weight, value);
    else
        pass_once(knap->best, took, knap->capacity, weight, value);
    knap->cells += knap->capacity;
}

static void run_dense(struct knap *knap)
{
    const struct norm *norm = knap->norm;
    memset(knap->best, 0, ((size_t)knap->capacity + 1) * sizeof(int64_t));
    knap->passes = 0;
    for (int i = 0; i < norm->types; i++) {
        if (knap->value[i] <= 0 || knap->most[i] <= 0)
            continue;
        int64_t fit = knap->capacity / norm->length[i];
        if (knap->most[i] >= fit && fit > 1) {
            add_pass(knap, i, 1, true);
            continue;
        }
        int64_t left = least_of(knap->most[i], fit);
        for (int64_t chunk = 1; left > 0; chunk *= 2) {
            int64_t take = least_of(chunk, left);
            add_pass(knap, i, take, false);
            left -= take;
        }
    }
    for (int s = 0; s < norm->stocks; s++)
        knap->result[s] = knap->best[norm->room[s]];
}

static void fill_dense(const struct knap *knap, int stock, int passes, int *count)
{
    size_t width = (size_t)knap->capacity + 1;
    int64_t at = knap->norm->room[stock];
    for (int p = passes; p-- > 0;) {
        const struct pass *pass = &knap->pass[p];
        const unsigned char *took = knap->took + (size_t)p * width;
        while (took[at]) {
            count[pass->type] += pass->copies ? pass->copies : 1;
            at -= pass->weight;
            if (pass->copies)
                break;
        }
    }
}

/* Types by value per length, the dearest first. */
static void order_types(struct knap *knap)
{
    const struct norm *norm = knap->norm;
    int count = 0;
    for (int i = 0; i < norm->types; i++) {
        if (knap->value[i] <= 0 || knap->most[i] <= 0)
            continue;
        int at = count++;
        for (; at > 0; at--) {
            int before = knap->order[at - 1];
            if ((wide_t)knap->value[before] * norm->length[i] >= (wide_t)knap->value[i] * norm->length[before])
                break;
            knap->order[at] = before;
        }
        knap->order[at] = i;
    }
    knap->passes = count;
    knap->least[count] = INT64_MAX;
    for (int k = count; k-- > 0;)
        knap->least[k] = least_of(knap->least[k + 1], norm->length[knap->order[k]]);
}

/* No filling of `room` with types from place k on is worth more: whole copies in order, the last one in part. */
static int64_t most_in(const struct knap *knap, int k, int64_t room)
{
    int64_t value = 0;
    for (; k < knap->passes && room > 0; k++) {
        int type = knap->order[k];
        int64_t length = knap->norm->length[type], copies = least_of(knap->most[type], room / length);
        value += copies * knap->value[type];
        room -= copies * length;
        if (copies < knap->most[type])
            return value + (int64_t)((double)knap->value[type] * (double)room / (double)length * (1 + 1e-12)) + 1;
    }
    return value;
}

static void search(struct knap *knap, int stock, int k, int64_t room, int64_t value)
{
    if (value > knap->result[stock]) {
        knap->result[stock] = value;
        memcpy(knap->fill + (size_t)stock * (size_t)knap->norm->types, knap->now,
               (size_t)knap->norm->types * sizeof(int));
    }
    for (; k < knap->passes && room >= knap->least[k]; k++) {
        int type = knap->order[k];
        if (++knap->nodes > knap->most_nodes) {
            knap->cut_short = true;
            return;
        }
        if (value + most_in(knap, k, room) <= knap->result[stock])
            return;
        int64_t copies = least_of(knap->most[type], room / knap->norm->length[type]);
        for (; copies > 0 && !knap->cut_short; copies--) {
            knap->now[type] = (int)copies;
            search(knap, stock, k + 1, room - copies * knap->norm->length[type], value + copies * knap->value[type]);
        }
        knap->now[type] = 0;
        if (knap->cut_short)
            return;
    }
}

static void run_search(struct knap *knap, const int64_t *floor)
{
    const struct norm *norm = knap->norm;
    order_types(knap);
    memset(knap->fill, 0, (size_t)norm->stocks * (size_t)norm->types * sizeof(int));
    for (int s = 0; s < norm->stocks; s++) {
        knap->result[s] = floor ? floor[s] : 0;
        if (knap->result[s] < 0)
            continue;
        knap->nodes = 0;
        knap->cut_short = false;
        memset(knap->now, 0, (size_t)norm->types * sizeof(int));
        search(knap, s, 0, norm->room[s], 0);
        knap->cells += knap->nodes * 10;
        if (knap->cut_short)
            knap->result[s] = most_in(knap, 0, norm->room[s]);
    }
}

void knap_run(struct knap *knap, const int64_t *value, const int64_t *most, const int64_t *floor)
{
    size_t size = (size_t)knap->norm->types * sizeof(int64_t);
    memcpy(knap->value, value, size);
    memcpy(knap->most, most, size);
    knap->cells = 0;
    if (knap->dense)
        run_dense(knap);
    else
        run_search(knap, floor);
}

void knap_fill(const struct knap *knap, int stock, int *count)
{
    memset(count, 0, (size_t)knap->norm->types * sizeof(int));
    if (knap->dense)
        fill_dense(knap, stock, knap->passes, count);
    else
        memcpy(count, knap->fill + (size_t)stock * (size_t)knap->norm->types, (size_t)knap->norm->types * sizeof(int));
}

/* The last pass before `end` that betters the stock; -1: none. */
static int last_pass(const struct knap *knap, int stock, int end)
{
    size_t width = (size_t)knap->capacity + 1, at = (size_t)knap->norm->room[stock];
    while (end-- > 0 && !knap->took[(size_t)end * width + at]) {
    }
    return end;
}

bool knap_fill_other(const struct knap *knap, int stock, int *place, int *count)
{
    if (!knap->dense)
        return false;
    if (*place < 0)
        *place = last_pass(knap, stock, knap->passes); /* its filling is the best one */
    *place = last_pass(knap, stock, *place);
    if (*place < 0)
        return false;
    memset(count, 0, (size_t)knap->norm->types * sizeof(int));
    fill_dense(knap, stock, *place + 1, count);
    return true;
}
