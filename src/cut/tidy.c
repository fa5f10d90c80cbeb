/* Among plans of the same cost the one that is less work: pieces change places between two sticks at a time. */
#include "cut_internal.h"

/* Two sticks with more pieces than this together are left alone (2^n ways to share them out), and so are plans with
 * very many sticks. */
enum { MOST_PAIR_PIECES = 8, MOST_STICKS = 40, MOST_ROUNDS = 6 };

/* Smaller patterns, then greater longest, then greater squares. */
struct order_of_plan {
    size_t patterns;
    length_t longest;
    double squares;
};
struct tidying {
    const struct reduced *reduced;
    struct raw_stick *stick;
    size_t count;
    uint64_t print[MOST_STICKS]; /* equal patterns have equal prints */
};

static uint64_t mix(uint64_t x)
{
    x += 0x9E3779B97F4A7C15U;
    x = (x ^ (x >> 30)) * 0xBF58476D1CE4E5B9U;
    x = (x ^ (x >> 27)) * 0x94D049BB133111EBU;
    return x ^ (x >> 31);
}

static uint64_t print_of(const struct raw_stick *stick)
{
    uint64_t print = mix(stick->stock + ((uint64_t)1 << 32));
    for (size_t i = 0; i < stick->count; i++)
        print += mix(stick->type[i]);
    return print;
}

static length_t rest_of(const struct tidying *tidying, size_t stick)
{
    return tidying->reduced->room[tidying->stick[stick].stock] - tidying->stick[stick].used;
}

/* What the other sticks bring. */
struct others {
    const struct tidying *tidying;
    size_t a, b;
    struct order_of_plan order;
};

static bool is_among(const struct others *others, uint64_t print, size_t most)
{
    for (size_t i = 0; i < most; i++)
        if (i != others->a && i != others->b && others->tidying->print[i] == print)
            return true;
    return false;
}

static struct others look_at_others(const struct tidying *tidying, size_t a, size_t b)
{
    struct others others = {tidying, a, b, {0}};
    for (size_t i = 0; i < tidying->count; i++) {
        if (i == a || i == b)
            continue;
        length_t rest = rest_of(tidying, i);
        others.order.patterns += !is_among(&others, tidying->print[i], i);
        others.order.longest = rest > others.order.longest ? rest : others.order.longest;
        others.order.squares += (double)rest * (double)rest;
    }
    return others;
}

/* Of the whole plan, when a and b look like this. */
static struct order_of_plan order_with(const struct others *others, uint64_t print_a, uint64_t print_b, length_t rest_a,
                                       length_t rest_b)
{
    struct order_of_plan order = others->order;
    size_t count = others->tidying->count;
    order.patterns += !is_among(others, print_a, count);
    order.patterns += print_b != print_a && !is_among(others, print_b, count);
    order.longest = rest_a > order.longest ? rest_a : order.longest;
    order.longest = rest_b > order.longest ? rest_b : order.longest;
    order.squares += (double)rest_a * (double)rest_a + (double)rest_b * (double)rest_b;
    return order;
}

static bool is_better(const struct order_of_plan *a, const struct order_of_plan *b)
{
    if (a->patterns != b->patterns)
        return a->patterns < b->patterns;
    if (a->longest != b->longest)
        return a->longest > b->longest;
    return a->squares > b->squares;
}

/* The pieces of both, longest first, shared out by the bits of `mask`. */
static void share_out(const struct tidying *tidying, const size_t *type, size_t count, unsigned mask,
                      struct raw_stick *a, struct raw_stick *b)
{
    a->count = b->count = 0;
    a->used = b->used = 0;
    for (size_t i = 0; i < count; i++) {
        struct raw_stick *to = mask >> i & 1U ? b : a;
        to->type[to->count++] = type[i];
        to->used += tidying->reduced->size[type[i]];
    }
}

static size_t gather(const struct raw_stick *a, const struct raw_stick *b, size_t *type)
{
    size_t i = 0, k = 0, count = 0;
    while (i < a->count || k < b->count) {
        bool from_a = k == b->count || (i < a->count && a->type[i] <= b->type[k]);
        type[count++] = from_a ? a->type[i++] : b->type[k++];
    }
    return count;
}

static bool tidy_pair(struct tidying *tidying, size_t a, size_t b)
{
    struct raw_stick *stick = tidying->stick;
    size_t type[MOST_PAIR_PIECES] = {0}, room_a[MOST_PAIR_PIECES] = {0}, room_b[MOST_PAIR_PIECES] = {0};
    size_t count = stick[a].count + stick[b].count;
    if (count > MOST_PAIR_PIECES)
        return false;
    (void)gather(&stick[a], &stick[b], type);
    struct raw_stick try_a = {.stock = stick[a].stock, .type = room_a};
    struct raw_stick try_b = {.stock = stick[b].stock, .type = room_b};
    length_t length_a = tidying->reduced->room[try_a.stock];
    length_t length_b = tidying->reduced->room[try_b.stock];
    struct others others = look_at_others(tidying, a, b);
    struct order_of_plan best =
        order_with(&others, tidying->print[a], tidying->print[b], rest_of(tidying, a), rest_of(tidying, b));
    unsigned best_mask = 0;
    bool better = false;
    for (unsigned mask = 1; mask + 1 < 1U << count; mask++) {
        share_out(tidying, type, count, mask, &try_a, &try_b);
        if (try_a.used > length_a || try_b.used > length_b)
            continue;
        struct order_of_plan order =
            order_with(&others, print_of(&try_a), print_of(&try_b), length_a - try_a.used, length_b - try_b.used);
        if (!is_better(&order, &best))
            continue;
        best = order;
        best_mask = mask;
        better = true;
    }
    if (!better)
        return false;
    share_out(tidying, type, count, best_mask, &stick[a], &stick[b]);
    tidying->print[a] = print_of(&stick[a]);
    tidying->print[b] = print_of(&stick[b]);
    return true;
}

void tidy_sticks(struct arena *arena, const struct reduced *reduced, struct raw_stick *stick, size_t count)
{
    if (count > MOST_STICKS)
        return;
    struct tidying tidying = {.reduced = reduced, .stick = stick, .count = count};
    for (size_t i = 0; i < count; i++) {
        tidying.print[i] = print_of(&stick[i]);
        if (stick[i].count >= MOST_PAIR_PIECES)
            continue;
        /* a stick may come to hold the pieces of two */
        size_t *type = arena_array(arena, MOST_PAIR_PIECES, sizeof *type);
        for (size_t k = 0; k < stick[i].count; k++)
            type[k] = stick[i].type[k];
        stick[i].type = type;
    }
    bool better = true;
    for (int round = 0; better && round < MOST_ROUNDS; round++) {
        better = false;
        for (size_t a = 0; a < count; a++)
            for (size_t b = a + 1; b < count; b++)
                better = tidy_pair(&tidying, a, b) || better;
    }
}
