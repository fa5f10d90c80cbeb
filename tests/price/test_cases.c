/* Questions that people asked in public about what to buy, and worked examples of books on estimating, each figure
 * worked by hand beside it. */
#include "made.h"

/* One fastener counted by the piece and sold by the pound. */
static const struct order_line *nails(struct arena *arena, double count, double per_lb, double pack, double loss)
{
    struct made *made = made_new(arena);
    made->fasteners[0] =
        (struct fastener){.code = "NAIL", .kind = "common nail", .item = "NAIL", .count_per_lb = per_lb};
    made->catalog.fastener_count = 1;
    made->job.bid.fastener_loss.percent = percent(loss);
    made_supplier(made, "yard", 0, -1);
    made_price(made, "NAIL", "lb", pack, 10, "yard");
    made_item(made, "nails", "NAIL", count)->loss = true;
    struct order *order = made_order(made);
    assert_int_equal(order->count, 1);
    return &order->line[0];
}

/* Four pages give 16d common nails 50, 50, 44 and "65 to 75" to the pound: 330 nails are 6.6, 7.5, 5.0769... (5.0770
 * up) and 4.4 lb, in boxes of 5 lb 2, 2, 2 and 1.  The catalog says the count and the pack. */
static void nails_a_pound(void **state)
{
    static const struct {
        double per_lb, lb, boxes;
    } rows[] = {{50, 6.6, 2}, {44, 7.5, 2}, {65, 5.077, 2}, {75, 4.4, 1}};
    for (size_t i = 0; i < 4; i++) {
        const struct order_line *line = nails(*state, 330, rows[i].per_lb, 5, 0);
        assert_int_equal(line->net, number(rows[i].lb));
        assert_int_equal(line->packs, number(rows[i].boxes));
    }
}

/* US Army Engineer School, subcourse EN0069 Frame Structures, paragraph 4-9: 100 tables x 30 joints x 2 nails and 20 %
 * over, 10d at 74 to the pound: 7,200 / 74 = 97.3 lb.  Net 6,000 / 74 = 81.0811; x 1.2 = 97.2973. */
static void nails_of_a_hundred_tables(void **state)
{
    const struct order_line *line = nails(*state, 100 * 30 * 2, 74, 0.1, 20);
    assert_int_equal(line->net, number(81.0811));
    assert_int_equal(line->packs, number(973)); /* tenths of a pound */
}

/* Peterson & Dagostino, Estimating in Building Construction, example 16-3: walls of 1,184 and 2,384 sq ft in sheets of
 * 32 (37 and 75 of them), a ceiling of 1,200 (38), with 5 %: 118 and 40 sheets ordered.  Here the 5 % stands in the
 * count of the assembly, 1.05 for each square foot, and whole sheets are taken once, of the sum: 3,568 x 1.05 / 32 =
 * 117.08, 118; 1,200 x 1.05 / 32 = 39.4, 40.  Joint tape, 2,660 ft with 10 % in rolls of 50: 58.5, 59.  The same book,
 * chapter 16: 315 studs with 5 %: 330.75, 331 ordered. */
static void whole_sheets_rolls_and_studs(void **state)
{
    static const struct {
        double need, pack, packs;
    } rows[] = {{3568 * 1.05, 32, 118}, {1200 * 1.05, 32, 40}, {2660 * 1.1, 50, 59}, {315 * 1.05, 1, 331}};
    for (size_t i = 0; i < 4; i++) {
        struct made *made = made_new(*state);
        made_supplier(made, "yard", 0, -1);
        made_price(made, "THING", "sq ft", rows[i].pack, 10, "yard");
        made_item(made, "thing", "THING", rows[i].need);
        assert_int_equal(made_order(made)->line[0].packs, number(rows[i].packs));
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(nails_a_pound, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(nails_of_a_hundred_tables, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(whole_sheets_rolls_and_studs, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
