/* Cutting problems out of a takeoff: the pieces of one member, and every way to buy a stick of it. */
#include "cut_internal.h"
#include "sawbill/text.h"
#include "sawbill/wide.h"

/* By-the-foot rows become one stock a step; a row with more steps than this is offered in coarser ones. */
enum { MOST_STEPS_OF_ROW = 512 };

static struct cut_problem *problem_for(struct arena *arena, struct cut_problem **problems, size_t *count,
                                       size_t *capacity, const char *member)
{
    for (size_t i = 0; i < *count; i++)
        if (name_same((*problems)[i].member, member))
            return &(*problems)[i];
    *problems = arena_more(arena, *problems, *count, capacity, sizeof **problems);
    struct cut_problem *problem = &(*problems)[(*count)++];
    *problem = (struct cut_problem){.member = member};
    return problem;
}

static void add_piece(struct arena *arena, struct cut_problem *problem, size_t *capacity,
                      const struct takeoff_line *line)
{
    bool longest = true;
    for (size_t i = 0; i < problem->piece_count; i++)
        longest = longest && line->length > problem->piece[i].length;
    if (longest)
        problem->at = line->at;
    problem->piece = arena_more(arena, problem->piece, problem->piece_count, capacity, sizeof *problem->piece);
    problem->piece[problem->piece_count++] = (struct cut_piece){
        .label = arena_printf(arena, "%s, %s", line->what, line->where),
        .length = line->length,
        .count = (int)(line->count / DECIMAL_ONE),
    };
}

static void add_stock(struct arena *arena, struct cut_problem *problem, size_t *capacity, struct cut_stock stock)
{
    problem->stock = arena_more(arena, problem->stock, problem->stock_count, capacity, sizeof *problem->stock);
    problem->stock[problem->stock_count++] = stock;
}

/* Half away from zero, to the money unit (not to the cent: the order rounds its line once). */
static money_t share(money_t price, int64_t part, int64_t whole)
{
    return (money_t)divide_round((wide_t)price * part, whole);
}

/* A stick sold in packs costs its part of the pack here; the order buys whole packs. */
static money_t stick_cost(const struct price *price)
{
    return price->pack > 0 ? share(price->price, DECIMAL_ONE, price->pack) : price->price;
}

static void add_by_the_foot(struct arena *arena, struct cut_problem *problem, size_t *capacity,
                            const struct price *price)
{
    int64_t steps = (price->most - price->least) / price->increment;
    length_t step = price->increment * (steps / MOST_STEPS_OF_ROW + 1);
    for (length_t length = price->least > 0 ? price->least : step; length <= price->most; length += step)
        add_stock(arena, problem, capacity,
                  (struct cut_stock){.length = length,
                                     .cost = share(price->price, length, LENGTH_FOOT) + price->cut_charge,
                                     .price = price});
}

static void add_stocks(struct arena *arena, struct cut_problem *problem, const struct catalog *catalog)
{
    size_t capacity = 0;
    for (size_t i = 0; i < catalog->price_count; i++) {
        const struct price *price = &catalog->prices[i];
        if (!name_same(price->item, problem->member) || !catalog_on_sale(catalog, price))
            continue;
        if (price->increment > 0)
            add_by_the_foot(arena, problem, &capacity, price);
        else if (price->length > 0)
            add_stock(arena, problem, &capacity,
                      (struct cut_stock){.length = price->actual > 0 ? price->actual : price->length,
                                         .cost = stick_cost(price),
                                         .price = price,
                                         .sold = price->length});
    }
    for (size_t i = 0; i < catalog->shop_count; i++) {
        const struct shop_piece *shop = &catalog->shop[i];
        if (shop->count > 0 && shop->member && name_same(shop->member->code, problem->member))
            add_stock(arena, problem, &capacity,
                      (struct cut_stock){
                          .length = shop->length, .cost = shop->book_value, .supply = shop->count, .shop = shop});
    }
}

struct cut_problem *cut_problems_from_takeoff(struct arena *arena, const struct takeoff *takeoff,
                                              const struct catalog *catalog, const struct job *job, size_t *count,
                                              struct diags *diags)
{
    (void)diags; /* nothing can be wrong here: cut_solve() names what is not for sale */
    struct cut_problem *problems = NULL;
    size_t capacity = 0;
    size_t *piece_capacity = arena_array(arena, takeoff->count, sizeof *piece_capacity);
    *count = 0;
    for (size_t i = 0; i < takeoff->count; i++) {
        const struct takeoff_line *line = &takeoff->line[i];
        if (line->is != LINE_PIECES || line->count < DECIMAL_ONE)
            continue;
        struct cut_problem *problem = problem_for(arena, &problems, count, &capacity, line->item);
        add_piece(arena, problem, &piece_capacity[problem - problems], line);
    }
    for (size_t i = 0; i < *count; i++) {
        problems[i].kerf = job->facts.kerf.length;
        problems[i].end_trim = job->facts.end_trim.length;
        problems[i].both_ends = job->facts.trim_both_ends.choice == YES;
        problems[i].square_both_ends = job->facts.square_both_ends.choice == YES;
        problems[i].least_cutoff = job->facts.least_cutoff.length;
        add_stocks(arena, &problems[i], catalog);
    }
    return problems;
}
