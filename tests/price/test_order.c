/* What is bought: packs, loss, price rows, pounds, sticks, suppliers. */
#include "made.h"

static const struct order_line *line_of(const struct order *order, const char *id)
{
    for (size_t i = 0; i < order->count; i++)
        if (!strcmp(order->line[i].id, id))
            return &order->line[i];
    print_error("no order line '%s'\n", id);
    fail();
    return NULL;
}

/* One item in packs of `pack`; the packs bought. */
static double packs(struct arena *arena, double count, double loss, double pack)
{
    struct made *made = made_new(arena);
    made->job.bid.fastener_loss.percent = percent(loss);
    made_supplier(made, "yard", 0, 0);
    made_price(made, "thing", "each", pack, 1, "yard");
    made_item(made, "thing/all", "thing", count)->loss = true;
    return decimal_value(made_order(made)->line[0].packs);
}

/* Common practice, by hand: whole packs, up; at whole numbers not one more, where a binary product lies a hair above
 * (100 x 1.1 / 11 = 10.000000000000002 in doubles). */
static void whole_packs(void **state)
{
    assert_true(packs(*state, 22, 0, 1) == 22);
    assert_true(packs(*state, 22, 5, 1) == 24); /* 23.1 */
    assert_true(packs(*state, 20, 5, 1) == 21);
    assert_true(packs(*state, 100, 10, 11) == 10);
    assert_true(packs(*state, 100, 5, 35) == 3);
    assert_true(packs(*state, 20, 10, 22) == 1);
    assert_true(packs(*state, 101, 5, 35) == 4);
    assert_true(packs(*state, 1, 0, 50) == 1);
    assert_true(packs(*state, 50, 0, 50) == 1);
    assert_true(packs(*state, 51, 0, 50) == 2);
    assert_true(packs(*state, 2.2, 0, 0.5) == 5); /* half-pound boxes */
    assert_true(packs(*state, 0.0001, 0, 50) == 1);
    assert_true(packs(*state, 7, 33.3333, 1) == 10);    /* 9.333331 */
    assert_true(packs(*state, 3, 33.3333, 1) == 4);     /* 3.999999 */
    assert_true(packs(*state, 300, 33.3334, 1) == 401); /* 400.0002 */
}

/* Two lines of one item are one row; loss only where the takeoff says so. */
static void lines_of_one_item_are_summed(void **state)
{
    struct made *made = made_new(*state);
    made->job.bid.fastener_loss.percent = percent(5);
    made_supplier(made, "yard", 35, -1);
    made_price(made, "S-210", "each", 1, 3.17, "yard")->what = "deck screw";
    made_price(made, "tape", "roll", 1, 9, "yard");
    made_price(made, "PAPER-ROLL", "sq ft", 300, 58, "yard")->what = "paper roll"; /* its code in words */
    made_price(made, "SHIMS", "each", 12, 5, "yard");
    made_item(made, "screws/parlor/A", "S-210", 11)->loss = true;
    made_item(made, "tape", "tape", 2);
    made_item(made, "screws/parlor/B", "s 210", 11)->loss = true; /* names fold */
    made_item(made, "paper", "PAPER-ROLL", 400);
    made_item(made, "shims", "SHIMS", 7);
    struct order *order = made_order(made);
    assert_int_equal(order->count, 4);
    assert_string_equal(line_of(order, "order/PAPER-ROLL")->what, "paper roll");
    assert_string_equal(order_unit(*state, line_of(order, "order/PAPER-ROLL")), "pack of 300 sq ft");
    assert_string_equal(order_unit(*state, line_of(order, "order/SHIMS")), "pack of 12");
    const struct order_line *line = line_of(order, "order/S-210");
    assert_int_equal(line->net, number(22));
    assert_int_equal(line->packs, number(24));
    assert_money(line->total, 76.08); /* 24 x 3.17 */
    assert_string_equal(order_unit(*state, line), "each");
    assert_string_equal(line->from, "screws/parlor/A, screws/parlor/B");
    assert_string_equal(line->counted, "11 + 11");
    assert_string_equal(line->what, "deck screw"); /* the catalog's word; else the takeoff's; else the code */
    assert_string_equal(line_of(order, "order/tape")->what, "tape");
    assert_int_equal(line_of(order, "order/tape")->loss, 0);
    assert_money(order->supplier[0].goods, 215.08); /* 76.08 + 2 x 9 + 2 x 58 + 5 */
    assert_money(order->supplier[0].delivery, 35);
}

/* The row whose packs cost least for what is needed, not the one cheapest by the piece; ties by file order. */
static void the_cheapest_row(void **state)
{
    struct made *made = made_new(*state);
    made_supplier(made, "yard", 0, -1);
    made_price(made, "screw", "each", 1000, 60, "yard"); /* 6 cents each */
    made_price(made, "screw", "each", 50, 8, "yard");    /* 16 cents each */
    made_price(made, "screw", "each", 25, 4, "yard");
    struct takeoff_line *need = made_item(made, "screws", "screw", 50);
    assert_ptr_equal(made_order(made)->line[0].price, &made->prices[1]); /* 8.00; the third costs 8.00 too */
    need->count = number(60);
    assert_ptr_equal(made_order(made)->line[0].price, &made->prices[2]); /* 12.00 against 16.00 and 60.00 */
    need->count = number(400);
    assert_ptr_equal(made_order(made)->line[0].price, &made->prices[0]); /* 60.00 against 64.00 twice */
}

/* Nails counted by the piece, sold by the pound: 16d common nails run 49 to the pound (Federal Specification FF-N-105B,
 * from memory): 500 / 49 = 10.20408... -> 10.2041 lb up; three 5 lb boxes with 5 % loss (10.7143). */
static void nails_by_the_pound(void **state)
{
    struct made *made = made_new(*state);
    made->job.bid.fastener_loss.percent = percent(5);
    made_supplier(made, "yard", 0, -1);
    made->fasteners[0] = (struct fastener){.code = "N16", .item = "NAIL-16D", .count_per_lb = 49};
    made->catalog.fastener_count = 1;
    made_price(made, "NAIL-16D", "lb", 5, 12.75, "yard");
    made_item(made, "ply fasteners/B1", "NAIL-16D", 300)->loss = true;
    made_item(made, "hanger nails", "NAIL-16D", 200)->loss = true;
    struct order *order = made_order(made);
    assert_int_equal(order->line[0].net, number(10.2041));
    assert_int_equal(order->line[0].packs, number(3));
    assert_money(order->line[0].total, 38.25);
    assert_string_equal(order->line[0].unit, "lb");
    assert_string_equal(order_unit(*state, &order->line[0]), "pack of 5 lb"); /* of the 3: never "3 lb at $12.75" */
    assert_string_equal(order->line[0].counted, "300 + 200 pieces at 49 per lb = 10.2041 lb");
    made->lines[1].unit = "lb"; /* 200 lb of them straight: 6.1225 + 200 */
    assert_int_equal(made_order(made)->line[0].net, number(206.1225));
}

/* The same net beside what is bought: 500 pieces, 10.2041 lb.  Screws sold by the piece: 284 of them, 75 to the pound,
 * 3.7867 lb; with 5 % 298.2, one box of 375.  Where no count per lb is known there are no pounds; a hanger has neither,
 * and no loss. */
static void pieces_and_pounds_of_fasteners(void **state)
{
    struct made *made = made_new(*state);
    made->job.bid.fastener_loss.percent = percent(5);
    made_supplier(made, "yard", 0, -1);
    made->fasteners[0] = (struct fastener){.code = "N16", .item = "NAIL-16D", .count_per_lb = 49};
    made->fasteners[1] = (struct fastener){.code = "D3", .item = "DECK-3", .count_per_lb = 75};
    made->fasteners[2] = (struct fastener){.code = "LAG", .item = "LAG"};
    made->catalog.fastener_count = 3;
    made_price(made, "NAIL-16D", "lb", 5, 12.75, "yard");
    made_price(made, "DECK-3", "each", 375, 33.5, "yard");
    made_price(made, "LAG", "each", 1, 2.67, "yard");
    made_price(made, "HANGER", "each", 1, 2.05, "yard");
    made_item(made, "nails", "NAIL-16D", 500)->loss = true;
    made_item(made, "screws", "DECK-3", 284)->loss = true;
    made_item(made, "lags", "LAG", 20)->loss = true;
    made_item(made, "hangers", "HANGER", 20);
    struct order *order = made_order(made);
    const struct order_line *line = line_of(order, "order/NAIL-16D");
    assert_int_equal(line->pieces, number(500));
    assert_int_equal(line->pounds, number(10.2041));
    line = line_of(order, "order/DECK-3");
    assert_int_equal(line->pieces, number(284));
    assert_int_equal(line->pounds, number(3.7867));
    assert_int_equal(line->packs, number(1));
    line = line_of(order, "order/LAG");
    assert_int_equal(line->pieces, number(20));
    assert_int_equal(line->pounds, 0);
    assert_int_equal(line->packs, number(21));
    line = line_of(order, "order/HANGER");
    assert_null(line->fastener);
    assert_int_equal(line->pieces, 0);
    assert_int_equal(line->packs, number(20));
    made->lines[0].unit = "lb"; /* 500 lb at 49 */
    line = line_of(made_order(made), "order/NAIL-16D");
    assert_int_equal(line->pieces, number(24500));
    assert_int_equal(line->pounds, number(500));
}

static void pounds_without_a_count(void **state)
{
    struct made *made = made_new(*state);
    made_supplier(made, "yard", 0, -1);
    made_price(made, "NAIL-16D", "lb", 5, 12.75, "yard")->at = (struct place){"prices.csv", 7, 1, NULL};
    made_item(made, "ply fasteners/B1", "NAIL-16D", 300);
    assert_int_equal(made_order(made)->count, 0);
    assert_int_equal(count_of(made, DIAG_P001), 1);
    assert_int_equal(made->diags.item[0].at.line, 7);
    assert_non_null(strstr(made->diags.item[0].text, "count per lb"));
}

static void no_price_names_item_and_need(void **state)
{
    struct made *made = made_new(*state);
    made_price(made, "S-210", "each", 1, 3, "yard")->length = LENGTH_FOOT; /* a stick is no counted thing */
    made_item(made, "screws/parlor/A", "S-210", 11)->at = (struct place){"parlor.ini", 20, 1, NULL};
    assert_int_equal(made_order(made)->count, 0);
    assert_int_equal(count_of(made, DIAG_P001), 1);
    assert_int_equal(made->diags.item[0].at.line, 20);
    assert_string_equal(made->diags.item[0].text,
                        "no price for 'S-210', which 'screws/parlor/A' needs: add a row to prices.csv");
}

/* An item for rent and the same item bought, or with its own markup, do not mix. */
static void classes_and_own_markup_apart(void **state)
{
    struct made *made = made_new(*state);
    made_supplier(made, "yard", 0, -1);
    made_price(made, "post jack", "each", 1, 18, "yard");
    made_item(made, "a", "post jack", 2);
    made_item(made, "b", "post jack", 3)->class = CLASS_RENTALS;
    struct takeoff_line *own = made_line(made, LINE_BUY, "c", 1);
    own->item = "post jack";
    own->has_own_markup = true;
    struct order *order = made_order(made);
    assert_int_equal(order->count, 3);
    assert_money(line_of(order, "order/post jack")->total, 36);
    assert_int_equal(line_of(order, "order/post jack/rentals")->class, CLASS_RENTALS);
    assert_true(line_of(order, "order/post jack/own markup 0 %")->has_own_markup);
}

/* Delivery once for each supplier with goods, tax on each invoice as a whole, at the supplier's rate or the bid's:
 * 1.05 + 2.05 = 3.10 x 10 % = 0.31, where line by line 0.11 + 0.21 would be 0.32; fees are not goods that are taxed. */
static void two_suppliers(void **state)
{
    struct made *made = made_new(*state);
    made->job.bid.tax = written_percent(made, 10);
    made_supplier(made, "unused", 99, 9);
    made_supplier(made, "yard", 35, -1);
    made_supplier(made, "store", 0, 8.25);
    made_price(made, "a", "each", 1, 1.05, "Yard");
    made_price(made, "b", "each", 1, 2.05, "yard");
    made_price(made, "c", "each", 1, 200, "store");
    made_price(made, "permit", "each", 1, 50, "store");
    made_item(made, "1", "a", 1);
    made_item(made, "2", "b", 1);
    made_item(made, "3", "c", 1);
    made_item(made, "4", "permit", 1)->class = CLASS_FEES;
    struct order *order = made_order(made);
    assert_int_equal(order->supplier_count, 2);
    assert_string_equal(order->supplier[0].supplier->name, "yard");
    assert_money(order->supplier[0].goods, 3.10);
    assert_money(order->supplier[0].delivery, 35);
    assert_money(order->supplier[0].tax, 0.31);
    assert_money(order->supplier[1].goods, 250);
    assert_money(order->supplier[1].delivery, 0);
    assert_money(order->supplier[1].tax, 16.50);
    struct estimate *estimate = price_job(made->arena, &made->job, &made->takeoff, order, &made->catalog, &made->diags);
    assert_money(estimate->direct, 3.10 + 35 + 0.31 + 250 + 16.50);
}

/* What costs nothing is not brought for money. */
static void no_goods_no_delivery(void **state)
{
    struct made *made = made_new(*state);
    made_supplier(made, "yard", 35, -1);
    made_price(made, "sample", "each", 1, 0, "yard");
    made_item(made, "1", "sample", 2);
    assert_money(made_order(made)->supplier[0].delivery, 0);
    assert_money(made_estimate(made)->direct, 0);
}

static void least_order_is_noted(void **state)
{
    struct made *made = made_new(*state);
    made_supplier(made, "yard", 0, -1);
    made->suppliers[0].least_order = dollars(100);
    made_price(made, "a", "each", 1, 50, "yard");
    struct takeoff_line *line = made_item(made, "1", "a", 1);
    made_order(made);
    assert_int_equal(count_of(made, DIAG_P004), 1);
    made->diags.count = 0;
    line->count = number(2);
    made_order(made);
    assert_int_equal(made->diags.count, 0);
}

/* A plan of `count` sticks of the stocks given by index. */
static struct cut_plan *plan_of(struct arena *arena, struct cut_problem *problem, const size_t *stocks, size_t count)
{
    struct cut_plan *plan = arena_alloc(arena, sizeof *plan);
    plan->problem = problem;
    plan->stick = arena_array(arena, count, sizeof *plan->stick);
    for (size_t i = 0; i < count; i++)
        plan->stick[i].stock = &problem->stock[stocks[i]];
    plan->stick_count = count;
    return plan;
}

static struct order *order_of(struct made *made, struct cut_plan *plan)
{
    return order_job(made->arena, &made->job, &made->catalog, &made->takeoff, &plan, 1, &made->diags);
}

/* Two 16 ft and one 12 ft at 24.36 and 17.88, one from the shop at 5.00: 48.72 + 17.88 + 5.00. */
static void a_price_of_zero_is_noted(void **state)
{
    struct made *made = made_new(*state);
    made_supplier(made, "yard", 0, -1);
    made_price(made, "GIFT", "each", 1, 0, "yard");
    made_price(made, "POST", "each", 1, 9, "yard");
    made_price(made, "NOT-NEEDED", "each", 1, 0, "yard");
    made_item(made, "gifts", "GIFT", 2);
    made_item(made, "posts", "POST", 2);
    made_order(made);
    assert_int_equal(count_of(made, DIAG_P005), 1);
}

static void sticks_by_price_row(void **state)
{
    struct made *made = made_new(*state);
    made_supplier(made, "yard", 0, 10);
    made_price(made, "SPF2-2X10", "each", 1, 24.36, "yard")->length = 16 * LENGTH_FOOT;
    made_price(made, "SPF2-2X10", "each", 1, 17.88, "yard")->length = 12 * LENGTH_FOOT;
    struct member member = {.code = "SPF2-2X10", .wood = WOOD_SAWN, .size = "2x10", .material = "Spruce-Pine-Fir"};
    made->catalog.members = &member;
    made->catalog.member_count = 1;
    struct shop_piece shop = {.length = 8 * LENGTH_FOOT, .count = 2, .book_value = dollars(5)};
    struct cut_stock stock[] = {{.length = 16 * LENGTH_FOOT, .price = &made->prices[0]},
                                {.length = 12 * LENGTH_FOOT, .price = &made->prices[1]},
                                {.length = 8 * LENGTH_FOOT, .shop = &shop, .supply = 2}};
    struct cut_problem problem = {.member = "SPF2-2X10", .stock = stock, .stock_count = 3};
    static const size_t STICKS[] = {0, 2, 1, 0};
    struct order *order = order_of(made, plan_of(*state, &problem, STICKS, 4));
    assert_int_equal(order->count, 3);
    assert_int_equal(line_of(order, "order/SPF2-2X10/16 ft")->packs, number(2));
    assert_money(line_of(order, "order/SPF2-2X10/16 ft")->total, 48.72);
    assert_money(line_of(order, "order/SPF2-2X10/12 ft")->total, 17.88);
    const struct order_line *own = line_of(order, "order/SPF2-2X10/8 ft/shop");
    assert_null(own->price);
    assert_money(own->total, 5);
    /* 2 x 10 / 12 board feet a foot: of 32, 12 and 8 ft; own arithmetic */
    assert_int_equal(line_of(order, "order/SPF2-2X10/16 ft")->board_feet, 533333);
    assert_int_equal(line_of(order, "order/SPF2-2X10/12 ft")->board_feet, number(20));
    assert_int_equal(own->board_feet, 133333);
    assert_money(order->supplier[0].goods, 66.60); /* what is in the shop is not bought, nor taxed again */
    assert_money(order->supplier[0].tax, 6.66);
}

/* Three pieces of 14 ft and one of 9 ft 6 in at 8.15 a foot, each cut for 3.50: 51.5 ft = 419.725 -> 419.73; 14.00. */
static void by_the_foot(void **state)
{
    struct made *made = made_new(*state);
    made_supplier(made, "yard", 0, 0);
    struct price *price = made_price(made, "LVL-14", "ft", 1, 8.15, "yard");
    price->increment = LENGTH_FOOT / 2;
    price->most = 60 * LENGTH_FOOT;
    price->cut_charge = dollars(3.50);
    struct cut_stock stock[] = {{.length = 14 * LENGTH_FOOT, .price = price},
                                {.length = 19 * LENGTH_FOOT / 2, .price = price}};
    struct cut_problem problem = {.member = "LVL-14", .stock = stock, .stock_count = 2};
    static const size_t STICKS[] = {0, 0, 1, 0};
    struct order *order = order_of(made, plan_of(*state, &problem, STICKS, 4));
    assert_int_equal(order->count, 2);
    const struct order_line *feet = line_of(order, "order/LVL-14/by the foot");
    assert_int_equal(feet->packs, number(51.5));
    assert_money(feet->total, 419.73);
    assert_string_equal(feet->counted, "3 at 14 ft, 1 at 9' 6\"");
    const struct order_line *cuts = line_of(order, "order/LVL-14/cut charge");
    assert_true(cuts->cut_charge);
    assert_int_equal(feet->board_feet + cuts->board_feet, 0); /* engineered wood has no nominal size */
    assert_money(cuts->total, 14);
    price->cut_charge = 0;
    assert_int_equal(order_of(made, plan_of(*state, &problem, STICKS, 4))->count, 1);
}

/* Prices change, packs and rows stay: what a workbook's formulas do. */
static void totals_again(void **state)
{
    struct made *made = made_new(*state);
    made_supplier(made, "yard", 20, 10);
    made_price(made, "a", "each", 10, 5, "yard");
    made_price(made, "a", "each", 10, 6, "yard");
    made_item(made, "1", "a", 25);
    struct order *order = made_order(made);
    assert_money(order->line[0].total, 15);
    made->prices[0].price = dollars(7);
    order_total(order, &made->job);
    assert_ptr_equal(order->line[0].price, &made->prices[0]);
    assert_money(order->line[0].total, 21);
    assert_money(order->supplier[0].goods, 21);
    assert_money(order->supplier[0].tax, 2.10);
}

/* 100,000 packs of 90 billion dollars: a stop, and no wrapped sum. */
static void sums_too_large(void **state)
{
    struct made *made = made_new(*state);
    made_supplier(made, "yard", 0, 10);
    made_price(made, "a", "each", 1, 9e10, "yard");
    made_item(made, "1", "a", 100000);
    struct estimate *estimate = made_estimate(made);
    assert_int_equal(count_of(made, DIAG_P002), 1);
    assert_non_null(strstr(made->diags.item[0].text, "order/a"));
    assert_true(estimate->price > 0 && estimate->price <= MONEY_MOST);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(whole_packs, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(lines_of_one_item_are_summed, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(the_cheapest_row, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(nails_by_the_pound, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(pieces_and_pounds_of_fasteners, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(pounds_without_a_count, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(no_price_names_item_and_need, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(classes_and_own_markup_apart, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(two_suppliers, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(no_goods_no_delivery, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(least_order_is_noted, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_price_of_zero_is_noted, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(sticks_by_price_row, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(by_the_foot, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(totals_again, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(sums_too_large, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
