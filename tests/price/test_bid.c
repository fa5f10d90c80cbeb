/* Rounding line, margins of the whole, draws. */
#include "made.h"

static struct made *of_cost(struct arena *arena, double cost)
{
    struct made *made = made_new(arena);
    made_rates(made, METHOD_COMPOUND, 0, 0, 0);
    made_cost(made, "all", CLASS_MATERIALS, cost);
    return made;
}

static void set_draws(struct made *made, const char *const *texts, size_t count)
{
    made->job.bid.draws.item = arena_array(made->arena, count, sizeof *made->job.bid.draws.item);
    made->job.bid.draws.count = count;
    for (size_t i = 0; i < count; i++)
        made->job.bid.draws.item[i] = (struct text_value){texts[i], &made->written};
}

/* To the nearest 50: 12,474.00 -> 12,450 (line of -24); 12,475.00, the half, goes up; at a cent nothing changes. */
static void rounding_is_a_line(void **state)
{
    static const struct {
        double cost, step, price, line;
    } CASES[] = {{12474, 50, 12450, -24},    {12475, 50, 12500, 25},        {12474.49, 1, 12474, -0.49},
                 {12474.50, 1, 12475, 0.50}, {12474.49, 0.01, 12474.49, 0}, {12474.49, 0, 12474.49, 0}};
    for (size_t i = 0; i < sizeof CASES / sizeof *CASES; i++) {
        struct made *made = of_cost(*state, CASES[i].cost);
        made->job.bid.round_price_to.money = dollars(CASES[i].step);
        struct estimate *estimate = made_estimate(made);
        assert_money(estimate->price, CASES[i].price);
        assert_money(estimate->rounding, CASES[i].line);
        assert_money(estimate->before_tax, CASES[i].cost);
    }
}

/* 100.01 in thirds: 33.00 (33.0033), 33.00, and the last takes what is left, 34.01. */
static void the_last_draw_takes_the_rest(void **state)
{
    static const char *const TEXTS[] = {"33 % on signing", "33% when the beam is on its posts", "34 % at the end"};
    struct made *made = of_cost(*state, 100.01);
    set_draws(made, TEXTS, 3);
    struct estimate *estimate = made_estimate(made);
    assert_int_equal(made->diags.count, 0);
    assert_int_equal(estimate->draw_count, 3);
    assert_money(estimate->draw[0].amount, 33.00);
    assert_money(estimate->draw[1].amount, 33.00);
    assert_money(estimate->draw[2].amount, 34.01);
    assert_int_equal(estimate->draw[0].percent, percent(33));
    assert_non_null(strstr(estimate->draw[1].when, "when the beam is on its posts"));
}

static void draws_add_up_to_the_price(void **state)
{
    static const char *const TEXTS[] = {"12.5 % on signing", "29.3 % shores up", "41.7 % hung", "16.5 % patched"};
    for (int cents = 1; cents < 20000; cents += 137) {
        struct made *made = of_cost(*state, cents / 100.0);
        set_draws(made, TEXTS, 4);
        struct estimate *estimate = made_estimate(made);
        money_t sum = 0;
        for (size_t i = 0; i < estimate->draw_count; i++)
            sum += estimate->draw[i].amount;
        assert_int_equal(estimate->draw_count, 4);
        assert_int_equal(sum, estimate->price);
    }
}

static void bad_draws(void **state)
{
    static const char *const SHORT[] = {"30 % on signing", "60 % at the end"}, *const WORDS[] = {"half on signing"};
    struct made *made = of_cost(*state, 100);
    set_draws(made, SHORT, 2);
    made_estimate(made);
    assert_int_equal(count_of(made, DIAG_K013), 1);
    set_draws(made, WORDS, 1);
    made_estimate(made);
    assert_int_equal(count_of(made, DIAG_K007), 1);
}

/* A job without any cost divides nothing. */
static void nothing_costs_nothing(void **state)
{
    struct made *made = made_new(*state);
    made_rates(made, METHOD_MARGIN, 10, 10, 10);
    struct estimate *estimate = made_estimate(made);
    assert_int_equal(estimate->line_count, 0);
    assert_int_equal(estimate->price, 0);
    assert_int_equal(estimate->markup, 0);
    assert_int_equal(estimate->gross_margin, 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(rounding_is_a_line, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(the_last_draw_takes_the_rest, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(draws_add_up_to_the_price, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(bad_draws, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(nothing_costs_nothing, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
