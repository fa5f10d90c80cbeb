/* Properties over jobs made by chance from a fixed seed: what is added up is what was added. */
#include "made.h"

enum { JOBS = 200 };

/* The numerical-recipes LCG: the same jobs on every machine. */
static unsigned chance(unsigned *seed, unsigned below)
{
    *seed = *seed * 1664525u + 1013904223u;
    return (*seed >> 8) % below;
}

static void add_chance_items(struct made *made, unsigned *seed)
{
    static const char *const SUPPLIERS[] = {"yard", "store", "shed"};
    size_t count = 1 + chance(seed, 12);
    for (size_t i = 0; i < count; i++) {
        const char *item = arena_printf(made->arena, "item %zu", i);
        made_price(made, item, "each", 1 + chance(seed, 60), 0.01 + chance(seed, 20000) / 100.0,
                   SUPPLIERS[chance(seed, 3)]);
        struct takeoff_line *line = made_item(made, item, item, 0.25 + chance(seed, 800) / 4.0);
        line->loss = chance(seed, 2);
        line->class = chance(seed, 4) ? CLASS_MATERIALS : CLASS_RENTALS;
    }
}

static void add_chance_work(struct made *made, unsigned *seed)
{
    made->trades[0] = (struct trade){.trade = "carpenter",
                                     .wage = dollars(15 + chance(seed, 4000) / 100.0),
                                     .burden = percent(chance(seed, 6000) / 100.0)};
    made->catalog.trade_count = 1;
    size_t count = chance(seed, 5);
    for (size_t i = 0; i < count; i++) {
        struct takeoff_line *line =
            made_line(made, LINE_LABOR, arena_printf(made->arena, "work %zu", i), chance(seed, 5000) / 100.0);
        line->trade = &made->trades[0];
    }
    if (chance(seed, 2)) {
        struct takeoff_line *line = made_line(made, LINE_SUB, "sub", 1);
        line->price = dollars(chance(seed, 200000) / 100.0);
        line->has_own_markup = chance(seed, 2);
        line->own_markup = percent(chance(seed, 30));
    }
}

static struct made *chance_job(struct arena *arena, unsigned *seed)
{
    struct made *made = made_new(arena);
    made_rates(made, (enum method)(1 + chance(seed, 3)), chance(seed, 2500) / 100.0, chance(seed, 1000) / 100.0,
               chance(seed, 2500) / 100.0);
    made->job.bid.tax = written_percent(made, chance(seed, 1200) / 100.0);
    made->job.bid.tax_mode.choice = 1 + (int)chance(seed, 3);
    made->job.bid.fastener_loss.percent = percent(chance(seed, 15));
    made->job.bid.round_price_to.money = chance(seed, 2) ? dollars(10) : dollars(0.01);
    made_supplier(made, "yard", chance(seed, 80), -1);
    made_supplier(made, "store", chance(seed, 80), 8.25);
    made_supplier(made, "shed", 0, 0);
    add_chance_items(made, seed);
    add_chance_work(made, seed);
    return made;
}

static void check_lines(const struct estimate *estimate)
{
    money_t sum = 0;
    for (size_t i = 0; i < estimate->line_count; i++) {
        sum += estimate->line[i].total;
        assert_int_equal(estimate->line[i].total % MONEY_CENT, 0);
    }
    assert_int_equal(sum, estimate->direct);
}

static void check_classes(const struct estimate *estimate)
{
    money_t direct = 0, price = 0;
    for (size_t i = 0; i < estimate->class_count; i++) {
        const struct class_total *total = &estimate->class_[i];
        assert_int_equal(total->price, total->direct + total->overhead + total->contingency + total->profit);
        direct += total->direct;
        price += total->price;
    }
    assert_int_equal(direct, estimate->direct);
    assert_int_equal(price, estimate->before_tax);
    assert_int_equal(price, estimate->direct + estimate->overhead + estimate->contingency + estimate->profit);
    assert_int_equal(estimate->price, price + estimate->tax + estimate->rounding);
}

static void price_is_the_sum_of_its_lines(void **state)
{
    unsigned seed = 20260302;
    for (int i = 0; i < JOBS; i++) {
        struct made *made = chance_job(*state, &seed);
        struct estimate *estimate = made_estimate(made);
        assert_int_equal(diag_count(&made->diags, DIAG_STOP), 0);
        check_lines(estimate);
        check_classes(estimate);
    }
}

/* What is bought is never less than what is needed, nor a whole pack more. */
static void packs_hold_what_is_needed(void **state)
{
    unsigned seed = 4711;
    for (int i = 0; i < JOBS; i++) {
        const struct order *order = made_order(chance_job(*state, &seed));
        for (size_t j = 0; j < order->count; j++) {
            const struct order_line *line = &order->line[j];
            double need = decimal_value(line->net) * (1 + percent_fraction(line->loss));
            double bought = decimal_value(line->packs) * decimal_value(line->price->pack);
            assert_true(bought > need - 1e-6);
            assert_true(bought - decimal_value(line->price->pack) < need);
        }
    }
}

static money_t direct_again(struct made *made, struct order *order)
{
    order_total(order, &made->job);
    return price_job(made->arena, &made->job, &made->takeoff, order, &made->catalog, &made->diags)->direct;
}

/* A used price 1 % higher moves the direct cost by packs x 1 % of it, and by the tax on that; a price of no use, of an
 * item that is not bought or of a dearer row, by nothing. */
static void one_price_one_percent(void **state)
{
    struct made *made = made_new(*state);
    made_rates(made, METHOD_ADD, 10, 5, 8);
    made->job.bid.tax = written_percent(made, 8);
    made_supplier(made, "yard", 40, -1);
    made_price(made, "post", "each", 1, 25.00, "yard");
    made_price(made, "post", "each", 1, 27.00, "yard");
    made_price(made, "door", "each", 1, 90.00, "yard");
    made_price(made, "board", "each", 1, 12.50, "yard");
    made_item(made, "posts", "post", 4);
    made_item(made, "boards", "board", 10);
    struct order *order = made_order(made);
    assert_money(direct_again(made, order), 225 + 40 + 18);
    made->prices[1].price = dollars(27.27);
    made->prices[2].price = dollars(90.90);
    assert_money(direct_again(made, order), 283);
    made->prices[0].price = dollars(25.25); /* 4 x 0.25 = 1.00, tax 0.08 */
    assert_money(direct_again(made, order), 284.08);
    made->prices[3].price = dollars(12.625); /* 10 x 0.125 = 1.25; tax 227.25 x 8 % = 18.18 */
    assert_money(direct_again(made, order), 285.43);
}

static void twice_the_same(void **state)
{
    unsigned seed = 99, again = 99;
    struct estimate *a = made_estimate(chance_job(*state, &seed)), *b = made_estimate(chance_job(*state, &again));
    assert_int_equal(a->line_count, b->line_count);
    for (size_t i = 0; i < a->line_count; i++) {
        assert_string_equal(a->line[i].id, b->line[i].id);
        assert_int_equal(a->line[i].total, b->line[i].total);
    }
    assert_int_equal(a->price, b->price);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(price_is_the_sum_of_its_lines, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(packs_hold_what_is_needed, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(one_price_one_percent, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(twice_the_same, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
