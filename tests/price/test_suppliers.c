/* From whom to buy: every figure worked out on paper in the comment above it. */
#include "made.h"

static struct run *buy(struct made *made)
{
    struct run *run = arena_alloc(made->arena, sizeof *run);
    *run = (struct run){.job = &made->job, .catalog = &made->catalog, .takeoff = &made->takeoff};
    assert_true(buy_job(made->arena, run, &made->diags));
    return run;
}

static money_t cost(const struct run *run)
{
    money_t sum = 0;
    for (size_t i = 0; i < run->order->supplier_count; i++)
        sum += run->order->supplier[i].goods + run->order->supplier[i].delivery + run->order->supplier[i].tax;
    return sum;
}

static struct made *two_yards(struct arena *arena, double delivery)
{
    struct made *made = made_new(arena);
    made_supplier(made, "North", delivery, -1);
    made_supplier(made, "South", delivery, -1);
    made_price(made, "POST", "each", 1, 10, "North");
    made_price(made, "NAILS", "each", 1, 10, "North");
    made_price(made, "POST", "each", 1, 8, "South");
    made_price(made, "NAILS", "each", 1, 20, "South");
    made_item(made, "posts", "POST", 1);
    made_item(made, "nails", "NAILS", 1);
    return made;
}

/* North alone 10 + 10 + 5 = 25; each thing where it costs least 8 + 10 + 5 + 5 = 28; South alone 8 + 20 + 5 = 33. */
static void one_delivery(void **state)
{
    struct run *run = buy(two_yards(*state, 5));
    assert_int_equal(run->order->supplier_count, 1);
    assert_string_equal(run->order->supplier[0].supplier->name, "North");
    assert_money(cost(run), 25);
    assert_string_equal(run->bought_from, "bought from North; each thing where it costs least would come to $28.00 in "
                                          "place of $25.00, delivery and tax in");
}

/* Delivery of 1: North alone 21; both 8 + 10 + 1 + 1 = 20. */
static void two_deliveries(void **state)
{
    struct run *run = buy(two_yards(*state, 1));
    assert_int_equal(run->order->supplier_count, 2);
    assert_money(cost(run), 20);
}

/* Delivery of 2: North alone 22, both 22: fewer deliveries. */
static void tie_takes_fewer(void **state)
{
    struct run *run = buy(two_yards(*state, 2));
    assert_int_equal(run->order->supplier_count, 1);
    assert_money(cost(run), 22);
}

/* Tax of 50 % at North only: North alone 20 x 1.5 + 5 = 35, both 8 + 5 + 10 x 1.5 + 5 = 33, South alone 33: fewer. */
static void tax_counts(void **state)
{
    struct made *made = two_yards(*state, 5);
    made->suppliers[0].has_tax = made->suppliers[1].has_tax = true;
    made->suppliers[0].tax = percent(50);
    struct run *run = buy(made);
    assert_int_equal(run->order->supplier_count, 1);
    assert_string_equal(run->order->supplier[0].supplier->name, "South");
    assert_money(cost(run), 33);
}

/* North sells nothing below 30: its 20 do not get delivered.  South alone, 33, keeps the rule. */
static void least_order(void **state)
{
    struct made *made = two_yards(*state, 5);
    made->suppliers[0].least_order = dollars(30);
    struct run *run = buy(made);
    assert_int_equal(run->order->supplier_count, 1);
    assert_string_equal(run->order->supplier[0].supplier->name, "South");
    assert_money(cost(run), 33);
    assert_int_equal(count_of(made, DIAG_P004), 0);
}

/* What only South sells is bought there, whatever it costs. */
static void only_seller(void **state)
{
    struct made *made = two_yards(*state, 100);
    made_price(made, "STRAP", "each", 1, 1, "South");
    made_item(made, "straps", "STRAP", 1);
    struct run *run = buy(made);
    assert_int_equal(run->order->supplier_count, 1);
    assert_string_equal(run->order->supplier[0].supplier->name, "South");
    assert_money(cost(run), 129); /* 8 + 20 + 1 + 100 */
}

/* More free suppliers than can be tried in every set: all sell, and the text says so. */
static void too_many(void **state)
{
    struct made *made = made_new(*state);
    static const char *const names[] = {"A", "B", "C", "D", "E", "F", "G"};
    struct supplier *suppliers = arena_array(*state, 7, sizeof *suppliers);
    for (size_t i = 0; i < 7; i++) {
        suppliers[i] = (struct supplier){.name = names[i], .delivery = dollars(5), .index = i};
        made_price(made, "POST", "each", 1, 10 + (double)i, names[i]);
    }
    made->catalog.suppliers = suppliers;
    made->catalog.supplier_count = 7;
    made_item(made, "posts", "POST", 1);
    struct run *run = buy(made);
    assert_money(cost(run), 15);
    assert_non_null(strstr(run->bought_from, "too many suppliers"));
}

/* Nothing for sale: one stop, said once. */
static void nothing(void **state)
{
    struct made *made = two_yards(*state, 5);
    made_item(made, "gold", "GOLD", 1);
    struct run *run = arena_alloc(made->arena, sizeof *run);
    *run = (struct run){.job = &made->job, .catalog = &made->catalog, .takeoff = &made->takeoff};
    assert_false(buy_job(made->arena, run, &made->diags));
    assert_int_equal(count_of(made, DIAG_P001), 1);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(one_delivery, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(two_deliveries, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(tie_takes_fewer, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(tax_counts, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(least_order, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(only_seller, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(too_many, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(nothing, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
