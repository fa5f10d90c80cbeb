/* Overhead, contingency, profit; margin; tax inside and outside the markup. */
#include "made.h"

static struct estimate *of_10000(struct arena *arena, enum method method, double o, double c, double p)
{
    struct made *made = made_new(arena);
    made_rates(made, method, o, c, p);
    made_cost(made, "all", CLASS_MATERIALS, 10000);
    struct estimate *estimate = made_estimate(made);
    assert_int_equal(made->diags.count, 0);
    return estimate;
}

/* The order direct cost, overhead, contingency, profit is that of a published estimating course (S.F. Johnson
 * Consulting, electrical estimating, module 6); D = 10,000 at 10, 5, 8 %: 10,000 x 1.10 x 1.05 x 1.08 = 12,474.00. */
static void compound_of_10000(void **state)
{
    struct estimate *estimate = of_10000(*state, METHOD_COMPOUND, 10, 5, 8);
    assert_money(estimate->overhead, 1000);
    assert_money(estimate->contingency, 550);
    assert_money(estimate->profit, 924);
    assert_money(estimate->price, 12474);
}

/* 10,000 x (1 + 0.10 + 0.05 + 0.08) = 12,300.00. */
static void add_of_10000(void **state)
{
    struct estimate *estimate = of_10000(*state, METHOD_ADD, 10, 5, 8);
    assert_money(estimate->overhead, 1000);
    assert_money(estimate->contingency, 500);
    assert_money(estimate->profit, 800);
    assert_money(estimate->price, 12300);
}

/* 10,000 / (1 - 0.23) = 12,987.01; overhead 1,298.70 and contingency 649.35 of the price, profit the rest. */
static void margin_of_10000(void **state)
{
    struct estimate *estimate = of_10000(*state, METHOD_MARGIN, 10, 5, 8);
    assert_money(estimate->price, 12987.01);
    assert_money(estimate->overhead, 1298.70);
    assert_money(estimate->contingency, 649.35);
    assert_money(estimate->profit, 1038.96);
    assert_int_equal(estimate->gross_margin, 230000); /* 2,987.01 / 12,987.01 = 23.0000 % */
}

/* "Gross margins in the remodeling industry" (azcentral): cost 20,000, price 25,000: 25 % markup, 20 % margin. */
static void markup_and_margin(void **state)
{
    struct made *made = made_new(*state);
    made_rates(made, METHOD_COMPOUND, 0, 0, 25);
    made_cost(made, "all", CLASS_SUBS, 20000);
    struct estimate *estimate = made_estimate(made);
    assert_money(estimate->price, 25000);
    assert_int_equal(estimate->markup, percent(25));
    assert_int_equal(estimate->gross_margin, percent(20));
}

/* Same article: price 65,000, overhead 25 % = 16,250, net 10 % = 6,500: gross margin 35 %, job cost 65 % = 42,250. */
static void margin_of_65000(void **state)
{
    struct made *made = made_new(*state);
    made_rates(made, METHOD_MARGIN, 25, 0, 10);
    made_cost(made, "all", CLASS_LABOR, 42250);
    struct estimate *estimate = made_estimate(made);
    assert_money(estimate->price, 65000);
    assert_money(estimate->overhead, 16250);
    assert_money(estimate->profit, 6500);
    assert_int_equal(estimate->gross_margin, percent(35));
}

/* "Squeezed for profits, reassessing markup" (Remodeling): a 1,000 plumber's bill at a 33 % margin; the article rounds
 * its factor to 1.49 and says 1,490, the exact 1,000 / 0.67 is 1,492.54. */
static void margin_of_a_plumber(void **state)
{
    struct made *made = made_new(*state);
    made_rates(made, METHOD_MARGIN, 27, 0, 6);
    made_line(made, LINE_SUB, "sub/plumber", 1)->price = dollars(1000);
    assert_money(made_estimate(made)->price, 1492.54);
}

static struct made *tax_job(struct arena *arena, enum tax_mode mode)
{
    struct made *made = made_new(arena);
    made_rates(made, METHOD_COMPOUND, 50, 0, 0);
    made->job.bid.tax = written_percent(made, 7);
    made->job.bid.tax_mode.choice = (int)mode;
    made_supplier(made, "yard", 0, -1);
    made_price(made, "wood", "each", 1, 4000, "yard");
    made_item(made, "wood/all", "wood", 1);
    return made;
}

/* Material 4,000, tax 7 % = 280, 50 % markup: 6,420 with the tax inside (the contractor is the consumer), 6,280 with it
 * outside (own arithmetic on the rule of salestaxinstitute.com, "Contractors' purchases"). */
static void tax_in_and_outside_the_markup(void **state)
{
    struct estimate *in = made_estimate(tax_job(*state, TAX_IN_COST));
    assert_money(in->direct, 4280);
    assert_money(in->tax, 0);
    assert_money(in->price, 6420);
    struct estimate *shown = made_estimate(tax_job(*state, TAX_ON_MATERIALS_SHOWN));
    assert_money(shown->direct, 4000);
    assert_money(shown->before_tax, 6000);
    assert_money(shown->tax, 280);
    assert_money(shown->price, 6280);
    assert_int_equal(shown->markup, percent(50)); /* the tax earns nothing */
}

/* 6,000 x 7 % = 420 on the whole price; nothing on what is bought for resale. */
static void tax_on_price(void **state)
{
    struct made *made = tax_job(*state, TAX_ON_PRICE);
    made->suppliers[0].has_tax = true;
    made->suppliers[0].tax = percent(9);
    assert_money(made_order(made)->supplier[0].tax, 0);
    struct estimate *estimate = made_estimate(made);
    assert_money(estimate->direct, 4000);
    assert_money(estimate->tax, 420);
    assert_money(estimate->price, 6420);
}

/* ROUND of a spreadsheet: half away from zero. 0.50 x 5 % = 0.025 -> 0.03; 2.50 x 1 % = 0.025 -> 0.03;
 * 1.50 x 1 % = 0.015 -> 0.02, where binary fractions give 0.01. */
static void half_cents(void **state)
{
    struct made *made = made_new(*state);
    made_rates(made, METHOD_ADD, 1, 5, 0);
    made_cost(made, "a", CLASS_MATERIALS, 0.50);
    made_cost(made, "b", CLASS_RENTALS, 2.50);
    made_cost(made, "c", CLASS_FEES, 1.50);
    struct estimate *estimate = made_estimate(made);
    assert_int_equal(estimate->class_count, 3);
    assert_money(estimate->class_[0].contingency, 0.03);
    assert_money(estimate->class_[1].overhead, 0.03);
    assert_money(estimate->class_[2].overhead, 0.02);
}

/* Labor at 20 % overhead of its own, the rest at 10 %: 1,000 x 1.2 + 1,000 x 1.1 = 2,300, by class in the enum's order.
 */
static void rates_by_class(void **state)
{
    struct made *made = made_new(*state);
    made_rates(made, METHOD_COMPOUND, 10, 0, 0);
    made->job.bid.overhead_on[CLASS_LABOR] = written_percent(made, 20);
    made_cost(made, "wood", CLASS_MATERIALS, 1000);
    made_cost(made, "work", CLASS_LABOR, 1000);
    struct estimate *estimate = made_estimate(made);
    assert_int_equal(estimate->class_[0].class, CLASS_LABOR);
    assert_money(estimate->class_[0].price, 1200);
    assert_money(estimate->class_[1].price, 1100);
    assert_money(estimate->price, 2300);
}

/* A rate of 0 for a class is an answer, not an absence. */
static void a_written_zero_holds(void **state)
{
    struct made *made = made_new(*state);
    made_rates(made, METHOD_ADD, 10, 10, 10);
    made->job.bid.overhead_on[CLASS_SUBS] = written_percent(made, 0);
    made_cost(made, "sub", CLASS_SUBS, 100);
    assert_money(made_estimate(made)->price, 120);
}

/* A permit passed through at 0 % stands in its own row at cost, whatever the method. */
static void own_markup(void **state)
{
    static const enum method METHODS[] = {METHOD_COMPOUND, METHOD_ADD, METHOD_MARGIN};
    for (size_t i = 0; i < 3; i++) {
        struct made *made = made_new(*state);
        made_rates(made, METHODS[i], 10, 5, 8);
        struct takeoff_line *permit = made_cost(made, "buy/permit", CLASS_FEES, 240);
        permit->has_own_markup = true;
        struct takeoff_line *engineer = made_line(made, LINE_SUB, "sub/engineer", 1);
        engineer->price = dollars(650);
        engineer->has_own_markup = true;
        engineer->own_markup = percent(10);
        struct estimate *estimate = made_estimate(made);
        assert_int_equal(estimate->class_count, 2);
        assert_true(estimate->class_[0].own);
        assert_int_equal(estimate->class_[0].line, 0);
        assert_money(estimate->class_[0].price, 240);
        assert_money(estimate->class_[1].overhead, 65);
        assert_money(estimate->class_[1].price, 715);
        assert_money(estimate->price, 955);
        assert_money(estimate->profit, 0);
    }
}

/* 60 + 30 + 10 % of the price leaves nothing for the cost: refused; 99.99 % is not. */
static void margin_of_everything(void **state)
{
    struct made *made = made_new(*state);
    made_rates(made, METHOD_MARGIN, 60, 30, 10);
    made_cost(made, "all", CLASS_MATERIALS, 100);
    made_estimate(made);
    assert_int_equal(count_of(made, DIAG_P003), 1);
    made->diags.count = 0;
    made_rates(made, METHOD_MARGIN, 60, 30, 9.99);
    assert_money(made_estimate(made)->price, 1000000);
    assert_int_equal(made->diags.count, 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(compound_of_10000, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(add_of_10000, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(margin_of_10000, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(markup_and_margin, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(margin_of_65000, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(margin_of_a_plumber, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(tax_in_and_outside_the_markup, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(tax_on_price, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(half_cents, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(rates_by_class, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_written_zero_holds, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(own_markup, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(margin_of_everything, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
