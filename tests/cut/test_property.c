/* Small random problems against a brute force of its own: bound <= optimum <= cost, and "proved optimal" means it. */
#include "cut_support.h"

enum { MOST_PIECES = 7, MOST_STOCKS = 4, INSTANCES = 10000, MOST_SUPPLY = 2 };
#define NEVER INT64_MAX

/* xorshift64: one fixed seed, so that a failing instance comes again. */
static uint64_t next(uint64_t *seed)
{
    *seed ^= *seed << 13;
    *seed ^= *seed >> 7;
    *seed ^= *seed << 17;
    return *seed;
}
static int draw(uint64_t *seed, int least, int most)
{
    return least + (int)(next(seed) % (uint64_t)(most - least + 1));
}

struct instance {
    struct cut_piece piece[MOST_PIECES];
    struct cut_stock stock[MOST_STOCKS];
    struct cut_problem problem;
};

/* Lengths in whole and quarter inches, so that exact fits are common; at most two stocks of limited supply. */
static void make(uint64_t *seed, struct instance *instance)
{
    static const char *const labels[MOST_PIECES] = {"a", "b", "c", "d", "e", "f", "g"};
    int pieces = draw(seed, 1, MOST_PIECES), stocks = draw(seed, 1, MOST_STOCKS);
    for (int i = 0; i < pieces; i++)
        instance->piece[i] = (struct cut_piece){labels[i], draw(seed, 4, 60) * (LENGTH_INCH / 4), 1};
    int limited = 0;
    for (int i = 0; i < stocks; i++) {
        bool own = limited < 2 && draw(seed, 0, 3) == 0;
        limited += own;
        instance->stock[i] = (struct cut_stock){.length = draw(seed, 30, 100) * (LENGTH_INCH / 4),
                                                .cost = CENTS(own ? draw(seed, 0, 30) : draw(seed, 10, 100)),
                                                .supply = own ? draw(seed, 1, MOST_SUPPLY) : 0,
                                                .price = own ? NULL : &bought,
                                                .shop = own ? &owned : NULL,
                                                .has_trim = draw(seed, 0, 4) == 0,
                                                .trim = draw(seed, 0, 3) * (LENGTH_INCH / 8)};
    }
    instance->problem = (struct cut_problem){.member = "X",
                                             .piece = instance->piece,
                                             .piece_count = (size_t)pieces,
                                             .stock = instance->stock,
                                             .stock_count = (size_t)stocks,
                                             .kerf = draw(seed, 0, 2) * (LENGTH_INCH / 8),
                                             .end_trim = draw(seed, 0, 2) * (LENGTH_INCH / 4),
                                             .both_ends = draw(seed, 0, 3) == 0,
                                             .square_both_ends = draw(seed, 0, 3) == 0,
                                             .least_cutoff = draw(seed, 0, 8) * LENGTH_INCH};
}

static bool fits(const struct cut_problem *problem, unsigned set, const struct cut_stock *stock)
{
    length_t trim = stock->has_trim ? stock->trim : stock->price ? problem->end_trim : 0;
    length_t need = problem->both_ends ? trim + trim : trim;
    int count = 0;
    for (size_t i = 0; i < problem->piece_count; i++)
        if (set >> i & 1U) {
            need += problem->piece[i].length + (count > 0 ? problem->kerf : 0);
            count++;
        }
    if (problem->square_both_ends)
        need += problem->kerf;
    return need <= stock->length;
}

/* Least cost of every set of pieces with a and b of the two limited stocks used: by sets, no order, no heuristics. */
static money_t brute_force(const struct cut_problem *problem)
{
    static money_t least[1U << MOST_PIECES][MOST_SUPPLY + 1][MOST_SUPPLY + 1];
    const unsigned all = (1U << problem->piece_count) - 1;
    int slot[MOST_STOCKS], slots = 0;
    for (size_t i = 0; i < problem->stock_count; i++)
        slot[i] = problem->stock[i].supply > 0 ? slots++ : -1;
    for (unsigned set = 0; set <= all; set++)
        for (int a = 0; a <= MOST_SUPPLY; a++)
            for (int b = 0; b <= MOST_SUPPLY; b++)
                least[set][a][b] = set == 0 ? 0 : NEVER;
    for (unsigned set = 1; set <= all; set++)
        for (unsigned part = set; part > 0; part = (part - 1) & set) {
            if (!(part & (set & (~set + 1)))) /* the part that holds the set's first piece */
                continue;
            for (size_t i = 0; i < problem->stock_count; i++) {
                if (!fits(problem, part, &problem->stock[i]))
                    continue;
                for (int a = 0; a <= MOST_SUPPLY; a++)
                    for (int b = 0; b <= MOST_SUPPLY; b++) {
                        int before_a = a - (slot[i] == 0), before_b = b - (slot[i] == 1);
                        if (before_a < 0 || before_b < 0 || (slot[i] == 0 && a > problem->stock[i].supply) ||
                            (slot[i] == 1 && b > problem->stock[i].supply))
                            continue;
                        money_t rest = least[set & ~part][before_a][before_b];
                        if (rest != NEVER && rest + problem->stock[i].cost < least[set][a][b])
                            least[set][a][b] = rest + problem->stock[i].cost;
                    }
            }
        }
    money_t best = NEVER;
    for (int a = 0; a <= MOST_SUPPLY; a++)
        for (int b = 0; b <= MOST_SUPPLY; b++)
            if (least[all][a][b] < best)
                best = least[all][a][b];
    return best;
}

static void plans_and_bounds_enclose_the_optimum(void **state)
{
    uint64_t seed = 20260101;
    int infeasible = 0, optimal = 0, proved = 0;
    (void)state;
    for (int i = 0; i < INSTANCES; i++) {
        struct arena *arena = arena_new(0, support_out_of_memory, NULL);
        struct instance instance;
        make(&seed, &instance);
        money_t optimum = brute_force(&instance.problem);
        struct cut_plan *plan = solve(arena, &instance.problem);
        if (optimum == NEVER) {
            assert_string_equal(plan->verdict, "infeasible");
            infeasible++;
        } else {
            assert_true(plan->cost >= optimum);
            assert_true(plan->bound <= optimum);
            if (strcmp(plan->verdict, "proved optimal") == 0)
                assert_int_equal(plan->cost, optimum);
            optimal += plan->cost == optimum;
            proved += plan->bound == plan->cost;
        }
        arena_free(arena);
    }
    print_message("%d instances: %d infeasible, %d optimal, %d proved\n", INSTANCES, infeasible, optimal, proved);
    assert_true(infeasible > 0 && infeasible < INSTANCES / 2);
    assert_true(optimal == INSTANCES - infeasible); /* so few pieces are searched to the end */
    assert_true(proved == optimal);
}

static money_t cost_of(struct arena *arena, const struct cut_problem *problem)
{
    struct cut_plan *plan = solve(arena, problem);
    return strcmp(plan->verdict, "infeasible") == 0 ? NEVER : plan->cost;
}

static void reverse(struct cut_problem *problem)
{
    for (size_t k = 0; k < problem->piece_count / 2; k++) {
        struct cut_piece keep = problem->piece[k];
        problem->piece[k] = problem->piece[problem->piece_count - 1 - k];
        problem->piece[problem->piece_count - 1 - k] = keep;
    }
    for (size_t k = 0; k < problem->stock_count / 2; k++) {
        struct cut_stock keep = problem->stock[k];
        problem->stock[k] = problem->stock[problem->stock_count - 1 - k];
        problem->stock[problem->stock_count - 1 - k] = keep;
    }
}

/* Both lengths and prices in steps half as fine: the same plan in other words. */
static void double_all(struct cut_problem *problem)
{
    for (size_t i = 0; i < problem->piece_count; i++)
        problem->piece[i].length *= 2;
    for (size_t i = 0; i < problem->stock_count; i++) {
        problem->stock[i].length *= 2;
        problem->stock[i].trim *= 2;
    }
    problem->kerf *= 2;
    problem->end_trim *= 2;
    problem->least_cutoff *= 2;
}

static void double_prices(struct cut_problem *problem)
{
    for (size_t i = 0; i < problem->stock_count; i++)
        problem->stock[i].cost *= 2;
}

/* What must not change a cost, and what may change it one way only.  Every plan is verified on the way. */
static void changes_do_what_they_must(void **state)
{
    uint64_t seed = 777;
    (void)state;
    for (int i = 0; i < 2000; i++) {
        struct arena *arena = arena_new(0, support_out_of_memory, NULL);
        struct instance instance;
        make(&seed, &instance);
        struct cut_problem *problem = &instance.problem;
        money_t cost = cost_of(arena, problem);
        reverse(problem);
        assert_int_equal(cost_of(arena, problem), cost);
        double_all(problem);
        assert_int_equal(cost_of(arena, problem), cost);
        double_prices(problem);
        assert_int_equal(cost_of(arena, problem), cost == NEVER ? NEVER : 2 * cost);
        struct cut_stock more[MOST_STOCKS + 1];
        memcpy(more, problem->stock, problem->stock_count * sizeof *more);
        more[problem->stock_count] = (struct cut_stock){
            .length = draw(&seed, 30, 100) * (LENGTH_INCH / 2), .cost = CENTS(draw(&seed, 5, 200)), .price = &bought};
        struct cut_problem richer = *problem;
        richer.stock = more;
        richer.stock_count++;
        assert_true(cost_of(arena, &richer) <= cost_of(arena, problem));
        problem->piece[0].count++;
        assert_true(cost_of(arena, problem) >= (cost == NEVER ? NEVER : 2 * cost));
        arena_free(arena);
    }
}

/* Two pieces that may be joined over supports: as every way by hand, each a problem without joints. */
static void joints_are_chosen_well(void **state)
{
    uint64_t seed = 31415;
    int joined = 0;
    (void)state;
    for (int i = 0; i < 1000; i++) {
        struct arena *arena = arena_new(0, support_out_of_memory, NULL);
        struct instance instance;
        make(&seed, &instance);
        struct cut_problem *problem = &instance.problem;
        problem->piece[0].length = draw(&seed, 40, 120) * (LENGTH_INCH / 4);
        const length_t at[] = {problem->piece[0].length / 3, problem->piece[0].length / 2};
        const struct cut_joints joints = {0, at, 2};
        money_t least = NEVER;
        for (unsigned mask = 0; mask < 4; mask++) {
            struct cut_piece piece[MOST_PIECES + 2];
            struct cut_problem way = *problem;
            way.piece = piece;
            memcpy(piece, problem->piece, problem->piece_count * sizeof *piece);
            length_t from = 0;
            for (unsigned k = 0; k < 2; k++) {
                if (!(mask >> k & 1U))
                    continue;
                piece[way.piece_count++] = (struct cut_piece){"part", at[k] - from, 1};
                from = at[k];
            }
            piece[0].length -= from;
            money_t cost = cost_of(arena, &way);
            least = cost < least ? cost : least;
        }
        problem->joints = &joints;
        problem->joints_count = 1;
        assert_int_equal(cost_of(arena, problem), least);
        joined += least != NEVER && solve(arena, problem)->joined[0] != 0;
        arena_free(arena);
    }
    print_message("joined in %d of 1000\n", joined);
    assert_true(joined > 50);
}

/* Problems too large to search: every plan is verified, the bound holds, twice the same plan. */
static void larger_problems_hold(void **state)
{
    static const char *const labels[] = {"a", "b", "c", "d", "e", "f"};
    uint64_t seed = 4711;
    for (int i = 0; i < 20; i++) {
        struct cut_piece piece[6];
        struct cut_stock stock[] = {BUY(8, 428), BUY(10, 555), BUY(12, 672), BUY(16, 905), BUY(20, 1275), OWN(9, 3)};
        for (int k = 0; k < 6; k++)
            piece[k] = (struct cut_piece){labels[k], draw(&seed, 80, 1500) * (LENGTH_INCH / 8), draw(&seed, 5, 30)};
        struct cut_problem problem = {.member = "X",
                                      .piece = piece,
                                      .piece_count = 6,
                                      .stock = stock,
                                      .stock_count = 6,
                                      .kerf = LENGTH_INCH / 8,
                                      .end_trim = LENGTH_INCH / 2};
        struct cut_plan *first = solve(*state, &problem), *second = solve(*state, &problem);
        assert_true(first->bound > 0 && first->bound <= first->cost);
        assert_int_equal(first->stick_count, second->stick_count);
        for (size_t k = 0; k < first->stick_count; k++) {
            assert_ptr_equal(first->stick[k].stock, second->stick[k].stock);
            assert_int_equal(first->stick[k].left, second->stick[k].left);
        }
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(plans_and_bounds_enclose_the_optimum),
        cmocka_unit_test(changes_do_what_they_must),
        cmocka_unit_test(joints_are_chosen_well),
        cmocka_unit_test_setup_teardown(larger_problems_hold, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
