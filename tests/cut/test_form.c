/* The solver of the standard form against exhaustive search and against itself.  Checks that follow from the problem's
 * definition need no other source. */
#include "support.h"

#include <stdlib.h>
#include <string.h>

#include "form_check.h"

enum { MOST_TYPES = 8, MOST_STOCKS = 5, MOST_PIECES = 8, CASES = 300, GAP_CASES = 100, MOST_IN_SETS = 12 };
static const int64_t NO_PLAN = INT64_MAX;

struct problem {
    struct form form;
    struct form_type type[MOST_TYPES + 1];
    struct form_stock stock[MOST_STOCKS + 1];
};

static unsigned draw(uint64_t *seed, unsigned below)
{
    *seed = *seed * 6364136223846793005u + 1442695040888963407u;
    return (unsigned)((*seed >> 33) % below);
}

static void fix_pointers(struct problem *problem)
{
    problem->form.type = problem->type;
    problem->form.stock = problem->stock;
}

/* Few pieces, short stocks, prices that follow the length or do not, some supply. */
static void draw_problem(uint64_t *seed, struct problem *problem)
{
    memset(problem, 0, sizeof *problem);
    fix_pointers(problem);
    unsigned longest = 8 + draw(seed, 60), left = 1 + draw(seed, MOST_PIECES), prices = draw(seed, 3);
    for (problem->form.type_count = 0; left > 0; problem->form.type_count++) {
        struct form_type *type = &problem->type[problem->form.type_count];
        unsigned count = 1 + draw(seed, left);
        *type = (struct form_type){1 + draw(seed, longest), count};
        left -= count;
    }
    problem->form.stock_count = 1 + draw(seed, MOST_STOCKS);
    for (size_t s = 0; s < problem->form.stock_count; s++) {
        struct form_stock *stock = &problem->stock[s];
        stock->length = 1 + longest / 2 + draw(seed, longest);
        stock->cost = prices == 0 ? 1 : prices == 1 ? stock->length * 10 + draw(seed, 30) : (int64_t)draw(seed, 100);
        stock->supply = draw(seed, 3) == 0 ? (int64_t)draw(seed, 4) : FORM_ENDLESS;
    }
}

/* Every plan there is: the first piece that is left goes into every stick, alone and with every set of the others. */
struct brute {
    const struct form *form;
    int64_t length[MOST_IN_SETS];
    int pieces;
    int64_t bought[MOST_STOCKS + 1], best;
};

static int64_t sum_of(const struct brute *brute, unsigned set)
{
    int64_t sum = 0;
    for (int i = 0; i < brute->pieces; i++)
        sum += set >> i & 1 ? brute->length[i] : 0;
    return sum;
}

static void try_all(struct brute *brute, unsigned left, int64_t cost)
{
    if (cost >= brute->best)
        return;
    if (left == 0) {
        brute->best = cost;
        return;
    }
    unsigned first = left & (~left + 1), others = left ^ first;
    for (unsigned set = others;; set = (set - 1) & others) {
        int64_t sum = sum_of(brute, set | first);
        for (size_t s = 0; s < brute->form->stock_count; s++) {
            const struct form_stock *stock = &brute->form->stock[s];
            if (stock->length < sum || (stock->supply >= 0 && brute->bought[s] >= stock->supply))
                continue;
            brute->bought[s]++;
            try_all(brute, others & ~set, cost + stock->cost);
            brute->bought[s]--;
        }
        if (set == 0)
            break;
    }
}

static int64_t brute_cost(const struct form *form)
{
    struct brute brute = {.form = form, .best = NO_PLAN};
    for (size_t i = 0; i < form->type_count; i++)
        for (int64_t copy = 0; copy < form->type[i].demand; copy++)
            brute.length[brute.pieces++] = form->type[i].length;
    try_all(&brute, (1u << brute.pieces) - 1, 0);
    return brute.best;
}

/* Least cost of every set of pieces, where every stock is endless. */
static int64_t cost_by_sets(const struct form *form)
{
    struct brute brute = {.form = form};
    for (size_t i = 0; i < form->type_count; i++)
        for (int64_t copy = 0; copy < form->type[i].demand; copy++)
            brute.length[brute.pieces++] = form->type[i].length;
    unsigned all = 1u << brute.pieces;
    int64_t *cost = malloc(2 * all * sizeof *cost), *one = cost + all; /* of a set; of a set in one stick */
    for (unsigned set = 1; set < all; set++) {
        int64_t sum = sum_of(&brute, set);
        one[set] = NO_PLAN;
        for (size_t s = 0; s < form->stock_count; s++)
            if (form->stock[s].length >= sum && form->stock[s].cost < one[set])
                one[set] = form->stock[s].cost;
    }
    cost[0] = 0;
    for (unsigned set = 1; set < all; set++) {
        unsigned first = set & (~set + 1);
        cost[set] = NO_PLAN;
        for (unsigned part = set; part > 0; part = (part - 1) & set)
            if (part & first && one[part] < NO_PLAN && cost[set ^ part] < NO_PLAN &&
                cost[set ^ part] + one[part] < cost[set])
                cost[set] = cost[set ^ part] + one[part];
    }
    int64_t least = cost[all - 1];
    free(cost);
    return least;
}

/* Prices that favour long sticks, or short ones: the linear programme says little here. */
static void draw_gap_problem(uint64_t *seed, struct problem *problem)
{
    memset(problem, 0, sizeof *problem);
    fix_pointers(problem);
    unsigned left = 6 + draw(seed, MOST_IN_SETS - 5), dear = draw(seed, 40);
    while (left > 0 && problem->form.type_count < MOST_TYPES) {
        bool last = problem->form.type_count == MOST_TYPES - 1;
        unsigned count = last ? left : 1 + draw(seed, left < 4 ? left : 4);
        problem->type[problem->form.type_count++] = (struct form_type){8 + draw(seed, 52), count};
        left -= count;
    }
    problem->form.stock_count = 1 + draw(seed, 4);
    for (size_t s = 0; s < problem->form.stock_count; s++) {
        int64_t length = 60 + draw(seed, 90);
        problem->stock[s] = (struct form_stock){length, 10 * length + dear * draw(seed, 40), FORM_ENDLESS};
    }
}

/* Every part of the search, as the limits drive it into one or the other: bounds and plans hold whatever they are. */
static void test_under_limits(void **state)
{
    (void)state;
    static const struct form_limits LIMITS[] = {{.steps = 0},
                                                {.patterns = 1, .steps = 20000},
                                                {.patterns = 10, .steps = 20000},
                                                {.steps = 3000},
                                                {.nodes = 20, .steps = 20000},
                                                {.memory = 300000},
                                                {.steps = 300},
                                                {.memory = 100000}};
    int proved = 0;
    for (uint64_t i = 0; i < GAP_CASES; i++) {
        struct problem problem;
        uint64_t seed = i;
        draw_gap_problem(&seed, &problem);
        int64_t expected = cost_by_sets(&problem.form);
        for (size_t limit = 0; limit < sizeof LIMITS / sizeof *LIMITS; limit++) {
            struct arena *arena = arena_new(0, NULL, NULL);
            struct form_result result;
            assert_true(form_solve(arena, &problem.form, &LIMITS[limit], &result));
            const char *wrong = form_check(&problem.form, &result);
            if (wrong || result.bound > expected || (result.verdict == FORM_PROVED && result.cost != expected) ||
                (limit == 0 && result.verdict != FORM_PROVED))
                fail_msg("case %d, limits %d: %s, verdict %d, cost %lld, bound %lld, by sets %lld", (int)i, (int)limit,
                         wrong ? wrong : "", (int)result.verdict, (long long)result.cost, (long long)result.bound,
                         (long long)expected);
            proved += result.verdict == FORM_PROVED;
            arena_free(arena);
        }
    }
    assert_true(proved > GAP_CASES * 2);
}

/* 400 lengths, three pieces each: what the linear programmes hold meets its limit before the work space does, or the
 * other way round.  Whatever memory there is, plans and bounds hold. */
static void test_little_memory(void **state)
{
    (void)state;
    enum { TYPES = 400, SHORTEST = 101, ROOM = 1200 };
    struct form_type type[TYPES];
    struct form_stock stock = {ROOM, 1, FORM_ENDLESS};
    struct form form = {type, TYPES, &stock, 1};
    int64_t length = 0;
    int plans = 0, proved = 0;
    for (int i = 0; i < TYPES; i++) {
        type[i] = (struct form_type){SHORTEST + i, 3};
        length += 3 * type[i].length;
    }
    for (size_t memory = 20000; memory < 40000000; memory *= 2) {
        struct arena *arena = arena_new(0, NULL, NULL);
        struct form_limits limits = {.memory = memory, .steps = 400000};
        struct form_result result;
        if (form_solve(arena, &form, &limits, &result)) {
            assert_null(form_check(&form, &result));
            assert_true(result.verdict != FORM_INFEASIBLE);
            assert_true(result.verdict == FORM_NOTHING || result.cost * ROOM >= length);
            plans += result.verdict != FORM_NOTHING;
            proved += result.verdict == FORM_PROVED;
        }
        arena_free(arena);
    }
    assert_true(plans > 0 && proved < plans);
}

/* The proved least cost; NO_PLAN when it is proved that there is none. */
static int64_t least_cost(const struct form *form)
{
    struct arena *arena = arena_new(0, NULL, NULL);
    struct form_result result;
    assert_true(form_solve(arena, form, NULL, &result));
    const char *wrong = form_check(form, &result);
    if (wrong)
        fail_msg("%s", wrong);
    assert_true(result.verdict == FORM_PROVED || result.verdict == FORM_INFEASIBLE);
    int64_t cost = result.verdict == FORM_PROVED ? result.cost : NO_PLAN;
    arena_free(arena);
    return cost;
}

static void test_against_exhaustive_search(void **state)
{
    (void)state;
    for (uint64_t i = 0; i < CASES; i++) {
        struct problem problem;
        uint64_t seed = i;
        draw_problem(&seed, &problem);
        int64_t cost = least_cost(&problem.form), expected = brute_cost(&problem.form);
        if (cost != expected)
            fail_msg("case %d: %lld, by exhaustive search %lld", (int)i, (long long)cost, (long long)expected);
    }
}

static void reverse(struct problem *problem)
{
    for (size_t i = 0, j = problem->form.type_count; i + 1 < j--; i++) {
        struct form_type type = problem->type[i];
        problem->type[i] = problem->type[j];
        problem->type[j] = type;
    }
    for (size_t i = 0, j = problem->form.stock_count; i + 1 < j--; i++) {
        struct form_stock stock = problem->stock[i];
        problem->stock[i] = problem->stock[j];
        problem->stock[j] = stock;
    }
}

static void scale(struct problem *problem, int64_t lengths, int64_t prices)
{
    for (size_t i = 0; i < problem->form.type_count; i++)
        problem->type[i].length *= lengths;
    for (size_t s = 0; s < problem->form.stock_count; s++) {
        problem->stock[s].length *= lengths;
        problem->stock[s].cost *= prices;
    }
}

static struct problem copy_of(const struct problem *problem)
{
    struct problem copy = *problem;
    fix_pointers(&copy);
    return copy;
}

/* The same problem said otherwise costs the same: another order, a finer unit, one type in two lines; doubled prices
 * cost twice as much. */
static void check_same(const struct problem *problem, int64_t cost)
{
    struct problem other = copy_of(problem);
    fix_pointers(&other);
    reverse(&other);
    assert_int_equal(least_cost(&other.form), cost);
    scale(&other, 2, 1);
    assert_int_equal(least_cost(&other.form), cost);
    other = copy_of(problem);
    fix_pointers(&other);
    scale(&other, 1, 2);
    assert_int_equal(least_cost(&other.form), cost == NO_PLAN ? NO_PLAN : 2 * cost);
    other = copy_of(problem);
    fix_pointers(&other);
    if (other.type[0].demand > 1) {
        other.type[0].demand--;
        other.type[other.form.type_count++] = (struct form_type){other.type[0].length, 1};
        assert_int_equal(least_cost(&other.form), cost);
    }
}

/* More to choose from never costs more; more to cut never costs less. */
static void check_order(const struct problem *problem, uint64_t *seed, int64_t cost)
{
    struct problem other = copy_of(problem);
    fix_pointers(&other);
    other.stock[other.form.stock_count++] =
        (struct form_stock){1 + draw(seed, 80), draw(seed, 400), draw(seed, 2) ? FORM_ENDLESS : 1};
    assert_true(least_cost(&other.form) <= cost);
    other = copy_of(problem);
    fix_pointers(&other);
    other.type[other.form.type_count++] = (struct form_type){1 + draw(seed, 60), 1};
    assert_true(least_cost(&other.form) >= cost);
}

static void test_properties(void **state)
{
    (void)state;
    for (uint64_t i = 0; i < CASES / 4; i++) {
        struct problem problem;
        uint64_t seed = i + CASES;
        draw_problem(&seed, &problem);
        int64_t cost = least_cost(&problem.form);
        check_same(&problem, cost);
        check_order(&problem, &seed, cost);
    }
}

struct known {
    struct problem problem;
    int64_t cost;
};

/* By hand. */
static void test_by_hand(void **state)
{
    (void)state;
    static const struct known KNOWN[] = {
        /* Nothing to cut costs nothing, with stock or without. */
        {{{.type_count = 0, .stock_count = 1}, {{0, 0}}, {{10, 5, -1}}}, 0},
        {{{.type_count = 1, .stock_count = 0}, {{7, 0}}, {{0, 0, 0}}}, 0},
        /* Just as long as the stick; one unit longer. */
        {{{.type_count = 1, .stock_count = 1}, {{10, 3}}, {{10, 5, -1}}}, 15},
        {{{.type_count = 1, .stock_count = 1}, {{11, 3}}, {{10, 5, -1}}}, INT64_MAX},
        {{{.type_count = 1, .stock_count = 0}, {{11, 3}}, {{0, 0, 0}}}, INT64_MAX},
        /* Three sticks of supply for four pieces that fill one each. */
        {{{.type_count = 1, .stock_count = 1}, {{6, 4}}, {{10, 5, 3}}}, INT64_MAX},
        {{{.type_count = 1, .stock_count = 2}, {{6, 4}}, {{10, 5, 3}, {10, 9, 1}}}, 24},
        /* 6 + 4 twice fills two sticks of 10 at 7: 14.  Sticks of 12 at 8 hold no more pieces. */
        {{{.type_count = 2, .stock_count = 2}, {{6, 2}, {4, 2}}, {{10, 7, -1}, {12, 8, -1}}}, 14},
        /* Two sticks of 12 hold 5 + 7 each: 16; of 10 it takes three (7, 7, 5 + 5): 21. */
        {{{.type_count = 2, .stock_count = 2}, {{7, 2}, {5, 2}}, {{10, 7, -1}, {12, 8, -1}}}, 16},
        /* What costs nothing is used first: 5 + 5 from it, 7 and 7 bought. */
        {{{.type_count = 2, .stock_count = 2}, {{7, 2}, {5, 2}}, {{10, 7, -1}, {10, 0, 1}}}, 14},
    };
    for (size_t i = 0; i < sizeof KNOWN / sizeof *KNOWN; i++) {
        struct problem problem = copy_of(&KNOWN[i].problem);
        fix_pointers(&problem);
        int64_t cost = least_cost(&problem.form);
        if (cost != KNOWN[i].cost)
            fail_msg("case %d: %lld", (int)i, (long long)cost);
    }
}

static void test_refuses_what_is_out_of_range(void **state)
{
    (void)state;
    struct arena *arena = arena_new(0, NULL, NULL);
    struct form_result result;
    struct problem problem = {.type = {{10, 1}}, .stock = {{10, 5, FORM_ENDLESS}}};
    fix_pointers(&problem);
    problem.form.type_count = problem.form.stock_count = 1;
    problem.type[0].length = 0;
    assert_false(form_solve(arena, &problem.form, NULL, &result));
    problem.type[0] = (struct form_type){10, (int64_t)1 << 60};
    assert_false(form_solve(arena, &problem.form, NULL, &result));
    problem.type[0] = (struct form_type){10, 1};
    problem.stock[0].cost = -1;
    assert_false(form_solve(arena, &problem.form, NULL, &result));
    arena_free(arena);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_by_hand),
        cmocka_unit_test(test_refuses_what_is_out_of_range),
        cmocka_unit_test(test_against_exhaustive_search),
        cmocka_unit_test(test_properties),
        cmocka_unit_test(test_under_limits),
        cmocka_unit_test(test_little_memory),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
