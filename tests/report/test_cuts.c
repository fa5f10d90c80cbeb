/* What the reports say of a cut plan: where the wood goes, what else it might have cost, the shop's stock afterwards.
 */
#include "support.h"

#include <string.h>

#include "sawbill/report.h"

#define INCHES(n) ((length_t)((n)*1016000.0))

/* 6 pieces of 5 ft: two of the shop's own 5 ft 6 in, of which it has three; two out of 10 ft 6 in, two out of 12 ft at
 * 6.00.  No kerf, no trim: 12 ft is cheapest for four, 2 x 6.00; cutoffs of 6 in, 6 in, 2 ft, 2 ft. */
static struct cut_plan *plan_of(struct arena *arena, const struct member *member, struct shop_piece *shop)
{
    static const struct price bought = {.item = "STUD", .supplier = "yard, the \"north\" one"};
    *shop = (struct shop_piece){.member = member, .length = INCHES(66), .count = 3, .book_value = 0};
    struct cut_piece *piece = arena_array(arena, 1, sizeof *piece);
    piece[0] = (struct cut_piece){"stud, wall W1", INCHES(60), 6};
    struct cut_stock *stock = arena_array(arena, 3, sizeof *stock);
    stock[0] = (struct cut_stock){.length = INCHES(144), .cost = 60000, .price = &bought};
    stock[1] = (struct cut_stock){.length = INCHES(126), .cost = 65000, .price = &bought};
    stock[2] = (struct cut_stock){.length = INCHES(66), .cost = 10000, .supply = 2, .shop = shop};
    struct cut_problem *problem = arena_alloc(arena, sizeof *problem);
    *problem = (struct cut_problem){.member = "STUD",
                                    .piece = piece,
                                    .piece_count = 1,
                                    .stock = stock,
                                    .stock_count = 3,
                                    .least_cutoff = INCHES(12)};
    struct diags diags = {.arena = arena};
    struct cut_plan *plan = cut_solve(arena, problem, NULL, &diags);
    assert_null(cut_verify(arena, problem, plan));
    cut_compare(arena, plan);
    return plan;
}

static void says(const char *text, const char *what)
{
    if (!strstr(text, what))
        print_error("no '%s' in:\n%s\n", what, text);
    assert_non_null(strstr(text, what));
}

/* 14.00: two own sticks at 1.00 and two of 12 ft at 6.00; first fit 3 x 6.00. */
static void lists_say_where_the_wood_goes(void **state)
{
    const struct member member = {.code = "STUD"};
    struct shop_piece shop;
    struct cut_plan *plan = plan_of(*state, &member, &shop);
    const struct cut_rules rules = {.both_ends = true, .square_both_ends = true};
    const struct cuts_report report = {&rules, &plan, 1, NULL};
    const char *text = report_list(*state, &report, false, 100);
    says(text, "off both ends");
    says(text, "a cut of its own");
    says(text, "2  5' 6\", shop stock  5' 0\" stud, wall W1");
    says(text, "2  12' 0\"             2 x 5' 0\" stud, wall W1");
    says(text, "cost $14.00; no plan can cost less than $14.00: proved optimal");
    says(text, "cutoffs to keep, 1' 0\" and longer: 2 x 2' 0\"");
    says(text, "first fit, longest piece first, would cost $18.00 at the best, out of 12' 0\"");
    says(text, "one length alone would cost: 12' 0\" $18.00; 10' 6\" $19.50");
    /* 2 x 5 ft 6 in + 2 x 12 ft = 35 ft: net 30, kept 4, waste 1; in money 2.00 a stick of 12 ft for the cutoffs of 2
     * ft: 6.00 / 144 x 24 = 1.00 each; 1.00 / 66 x 6 = 0.0909 each */
    says(text, "net                30' 0\"  $11.82  85.7 %");
    says(text, "cutoffs to keep     4' 0\"   $2.00  11.4 %");
    says(text, "waste               1' 0\"   $0.18   2.9 %");
    says(text, "bought             35' 0\"  $14.00   100 %");
}

/* One of the three own sticks is left, and two cutoffs of 2 ft come back; those of 6 in are not worth keeping. */
static void the_shop_has_its_cutoffs_back(void **state)
{
    const struct member member = {.code = "STUD"};
    struct shop_piece shop;
    struct cut_plan *plan = plan_of(*state, &member, &shop);
    const struct catalog catalog = {.shop = &shop, .shop_count = 1};
    assert_string_equal(report_shop_stock(*state, &catalog, &plan, 1), "member,length,count,book value\n"
                                                                       "STUD,\"5' 6\"\"\",1,0.00\n"
                                                                       "STUD,\"2' 0\"\"\",2,0.00\n");
    assert_string_equal(report_shop_stock(*state, NULL, &plan, 1), "length,price,supply,trim,member\n"
                                                                   "\"2' 0\"\"\",0.00,2,0,STUD\n");
}

static void certificates_hold_the_whole_problem(void **state)
{
    const struct member member = {.code = "STUD"};
    struct shop_piece shop;
    struct cut_plan *plan = plan_of(*state, &member, &shop);
    const char *text = report_certificate(*state, &plan, 1);
    says(text, "\"format\": \"sawbill cuts 1\"");
    says(text, "\"usable\": 146304000"); /* 144 in */
    says(text, "\"cost\": 140000");
    says(text, "\"supply\": 2");
    says(text, "\"supply\": null");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(lists_say_where_the_wood_goes, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(the_shop_has_its_cutoffs_back, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(certificates_hold_the_whole_problem, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
