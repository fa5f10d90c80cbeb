/* Cut plans worked out by hand: the sums stand beside each case. */
#include "cut_support.h"

static struct cut_problem problem_of(struct cut_piece *piece, size_t pieces, struct cut_stock *stock, size_t stocks,
                                     length_t kerf, length_t trim)
{
    return (struct cut_problem){.member = "X-2X10",
                                .piece = piece,
                                .piece_count = pieces,
                                .stock = stock,
                                .stock_count = stocks,
                                .kerf = kerf,
                                .end_trim = trim};
}

/* 48 + 48 = 96: one 8 ft stick, one cut in it, nothing left and none at its end. Kerf 0. */
static void exact_fit_without_kerf(void **state)
{
    struct cut_piece piece[] = {{"a", INCHES(48), 2}};
    struct cut_stock stock[] = {BUY(8, 500), BUY(10, 700)};
    struct cut_problem problem = problem_of(piece, 1, stock, 2, 0, 0);
    struct cut_plan *plan = solve(*state, &problem);
    assert_int_equal(plan->stick_count, 1);
    assert_int_equal(plan->cost, CENTS(500));
    assert_int_equal(plan->left, 0);
    assert_string_equal(plan->verdict, "proved optimal");
}

/* 48 + 1/8 + 48 = 96-1/8 > 96: the saw tips the stock to 10 ft (7.00 against two of 8 ft for 10.00).
 * Cutoff: 120 - 96 - two cuts of 1/8 = 23-3/4. */
static void kerf_tips_the_length(void **state)
{
    struct cut_piece piece[] = {{"a", INCHES(48), 2}};
    struct cut_stock stock[] = {BUY(8, 500), BUY(10, 700)};
    struct cut_problem problem = problem_of(piece, 1, stock, 2, INCHES(0.125), 0);
    struct cut_plan *plan = solve(*state, &problem);
    assert_int_equal(plan->stick_count, 1);
    assert_int_equal(plan->cost, CENTS(700));
    assert_int_equal(plan->stick[0].left, INCHES(23.75));
    assert_int_equal(plan->kerf_lost, INCHES(0.25));
    assert_string_equal(plan->verdict, "proved optimal");
}

/* 47-15/16 + 1/8 + 47-15/16 = 96: the second piece ends where the stick ends, and needs no cut. */
static void no_cut_at_the_end_of_the_stick(void **state)
{
    struct cut_piece piece[] = {{"a", INCHES(47.9375), 2}};
    struct cut_stock stock[] = {BUY(8, 500), BUY(10, 700)};
    struct cut_problem problem = problem_of(piece, 1, stock, 2, INCHES(0.125), 0);
    struct cut_plan *plan = solve(*state, &problem);
    assert_int_equal(plan->cost, CENTS(500));
    assert_int_equal(plan->kerf_lost, INCHES(0.125));
    assert_int_equal(plan->left, 0);
}

/* A rest of 1/16 in is thinner than the blade: all of it is sawdust. */
static void rest_thinner_than_the_blade(void **state)
{
    struct cut_piece piece[] = {{"a", INCHES(95.9375), 1}};
    struct cut_stock stock[] = {BUY(8, 500)};
    struct cut_problem problem = problem_of(piece, 1, stock, 1, INCHES(0.125), 0);
    struct cut_plan *plan = solve(*state, &problem);
    assert_int_equal(plan->kerf_lost, INCHES(0.0625));
    assert_int_equal(plan->left, 0);
    assert_int_equal(plan->stick_count, 1);
}

/* 96 in out of 8 ft: with 1/2 in of end trim only 95-1/2 are left, so 10 ft it is: trim 1/2, cut 1/8, cutoff
 * 120 - 1/2 - 96 - 1/8 = 23-3/8.  The shop's own 8 ft stick has its end trimmed already. */
static void trim_tips_the_length_but_not_of_shop_stock(void **state)
{
    struct cut_piece piece[] = {{"a", INCHES(96), 1}};
    struct cut_stock stock[] = {BUY(8, 500), BUY(10, 700), OWN(8, 1)};
    struct cut_problem problem = problem_of(piece, 1, stock, 2, INCHES(0.125), INCHES(0.5));
    struct cut_plan *plan = solve(*state, &problem);
    assert_int_equal(plan->cost, CENTS(700));
    assert_int_equal(plan->trim_lost, INCHES(0.5));
    assert_int_equal(plan->left, INCHES(23.375));
    problem.stock_count = 3;
    plan = solve(*state, &problem);
    assert_int_equal(plan->cost, 0);
    assert_ptr_equal(plan->stick[0].stock, &stock[2]);
    assert_int_equal(plan->trim_lost, 0);
}

/* 10 ft sticks, pieces of 5, 4, 4, 3, 2, 2 ft, no kerf: 20 ft, so two sticks at least; 5 + 3 + 2 and 4 + 4 + 2 do it.
 * First fit decreasing takes three (5 + 4, 4 + 3 + 2, 2). */
static void better_than_first_fit(void **state)
{
    struct cut_piece piece[] = {{"a", FEET(5), 1}, {"b", FEET(4), 2}, {"c", FEET(3), 1}, {"d", FEET(2), 2}};
    struct cut_stock stock[] = {BUY(10, 700)};
    struct cut_problem problem = problem_of(piece, 4, stock, 1, 0, 0);
    struct cut_plan *plan = solve(*state, &problem);
    assert_int_equal(plan->stick_count, 2);
    assert_int_equal(plan->cost, CENTS(1400));
    assert_int_equal(plan->bound, CENTS(1400));
}

/* Price is not proportional to length: four 4 ft pieces cost 8.00 out of two 8 ft sticks, 9.00 out of one of 16 ft; at
 * 8.00 for 16 ft both cost the same, and fewer sticks are less work. */
static void cheaper_lengths_and_fewer_sticks(void **state)
{
    struct cut_piece piece[] = {{"a", FEET(4), 4}};
    struct cut_stock stock[] = {BUY(8, 400), BUY(16, 900)};
    struct cut_problem problem = problem_of(piece, 1, stock, 2, 0, 0);
    struct cut_plan *plan = solve(*state, &problem);
    assert_int_equal(plan->cost, CENTS(800));
    assert_int_equal(plan->stick_count, 2);
    stock[1].cost = CENTS(800);
    plan = solve(*state, &problem);
    assert_int_equal(plan->cost, CENTS(800));
    assert_int_equal(plan->stick_count, 1);
}

/* 10 ft and 12 ft for the same money: the longer one leaves the longer cutoff. */
static void longer_cutoff_at_the_same_cost(void **state)
{
    struct cut_piece piece[] = {{"a", FEET(9), 1}};
    struct cut_stock stock[] = {BUY(10, 500), BUY(12, 500)};
    struct cut_problem problem = problem_of(piece, 1, stock, 2, 0, 0);
    struct cut_plan *plan = solve(*state, &problem);
    assert_int_equal(plan->left, FEET(3));
}

/* Three pieces of 14' 7" = 175 in, kerf 1/8, trim 1/2: each needs 175-1/2; two need 350-5/8, longer than 24 ft.  By the
 * foot at 3.10 in steps of 2 ft with 2.00 a cut: 16 ft = 51.60, three times 154.80. */
static void one_ply_a_stick(void **state)
{
    struct cut_piece piece[] = {{"ply, beam B1", INCHES(175), 3}};
    struct cut_stock stock[9];
    for (int i = 0; i < 9; i++)
        stock[i] =
            (struct cut_stock){.length = FEET(8 + 2 * i), .cost = CENTS((8 + 2 * i) * 310 + 200), .price = &bought};
    struct cut_problem problem = problem_of(piece, 1, stock, 9, INCHES(0.125), INCHES(0.5));
    struct cut_plan *plan = solve(*state, &problem);
    assert_int_equal(plan->cost, CENTS(15480));
    assert_int_equal(plan->stick_count, 3);
    for (size_t i = 0; i < 3; i++) {
        assert_int_equal(plan->stick[i].stock->length, FEET(16));
        /* 192 - 1/2 - 175 - 1/8 */
        assert_int_equal(plan->stick[i].left, INCHES(16.375));
    }
    assert_string_equal(plan->verdict, "proved optimal");
}

/* Two own sticks of 10 ft for nothing, a third bought for 7.00. */
static void shop_stock_first_but_no_more_than_there_is(void **state)
{
    struct cut_piece piece[] = {{"a", FEET(9), 3}};
    struct cut_stock stock[] = {BUY(10, 700), OWN(10, 2)};
    struct cut_problem problem = problem_of(piece, 1, stock, 2, INCHES(0.125), INCHES(0.5));
    struct cut_plan *plan = solve(*state, &problem);
    assert_int_equal(plan->cost, CENTS(700));
    assert_int_equal(plan->bound, CENTS(700));
    assert_null(plan->stick[0].stock->price);
    assert_null(plan->stick[1].stock->price);
    assert_non_null(plan->stick[2].stock->price);
}

/* Own sticks of 10 ft and 5 ft, pieces of 6, 5 and 4 ft, no kerf, nothing for sale: 6 + 4 and 5 is the only way. */
static void only_shop_stock(void **state)
{
    struct cut_piece piece[] = {{"a", FEET(6), 1}, {"b", FEET(5), 1}, {"c", FEET(4), 1}};
    struct cut_stock stock[] = {OWN(10, 1), OWN(5, 1)};
    struct cut_problem problem = problem_of(piece, 3, stock, 2, 0, 0);
    struct cut_plan *plan = solve(*state, &problem);
    assert_int_equal(plan->stick_count, 2);
    assert_int_equal(plan->left, 0);
    /* 4 ft more does not fit anywhere. */
    piece[2].count = 2;
    struct diags diags = {.arena = *state};
    plan = cut_solve(*state, &problem, NULL, &diags);
    assert_string_equal(plan->verdict, "infeasible");
    assert_int_equal(diags.count, 1);
    assert_int_equal(diags.item[0].code, DIAG_T001);
    assert_null(cut_verify(*state, &problem, plan));
}

static void too_long_a_piece_is_a_stop(void **state)
{
    struct cut_piece piece[] = {{"ply, beam B1", INCHES(240), 2}, {"short", FEET(2), 1}};
    struct cut_stock stock[] = {BUY(16, 900), BUY(20, 1300)};
    struct cut_problem problem = problem_of(piece, 2, stock, 2, INCHES(0.125), INCHES(0.5));
    const struct place at = {"job.ini", 12, 1, NULL};
    struct diags diags = {.arena = *state};
    struct cut_plan *plan = cut_solve(*state, &problem, &at, &diags);
    assert_string_equal(plan->verdict, "infeasible");
    assert_int_equal(plan->stick_count, 0);
    assert_int_equal(diags.count, 1);
    assert_int_equal(diags.item[0].class, DIAG_STOP);
    assert_int_equal(diags.item[0].code, DIAG_T001);
    assert_int_equal(diags.item[0].at.line, 12);
    assert_string_equal(
        diags.item[0].text,
        "piece 'ply, beam B1' of 'X-2X10' is 20' 0\" long; the longest stock is 20' 0\", of which 19' 11-1/2\" "
        "can be used: nothing is spliced");
}

static void nothing_for_sale_is_a_stop(void **state)
{
    struct cut_piece piece[] = {{"a", FEET(2), 1}};
    struct cut_problem problem = problem_of(piece, 1, NULL, 0, 0, 0);
    problem.at = (struct place){"job.ini", 3, 1, NULL};
    struct diags diags = {.arena = *state};
    cut_solve(*state, &problem, NULL, &diags);
    assert_int_equal(diags.count, 1);
    assert_int_equal(diags.item[0].code, DIAG_P001);
    assert_int_equal(diags.item[0].at.line, 3);
}

static void no_pieces_cost_nothing(void **state)
{
    struct cut_stock stock[] = {BUY(8, 500)};
    struct cut_problem problem = problem_of(NULL, 0, stock, 1, INCHES(0.125), INCHES(0.5));
    struct cut_plan *plan = solve(*state, &problem);
    assert_int_equal(plan->cost, 0);
    assert_int_equal(plan->stick_count, 0);
    assert_string_equal(plan->verdict, "proved optimal");
}

/* Longest piece first in a stick; sticks cut alike stand together, labels kept. 3 x 5 ft and 3 x 2 ft out of 8 ft. */
static void like_sticks_stand_together(void **state)
{
    struct cut_piece piece[] = {{"short", FEET(2), 3}, {"long", FEET(5), 3}};
    struct cut_stock stock[] = {BUY(8, 500)};
    struct cut_problem problem = problem_of(piece, 2, stock, 1, INCHES(0.125), INCHES(0.5));
    struct cut_plan *plan = solve(*state, &problem);
    assert_int_equal(plan->stick_count, 3);
    for (size_t i = 0; i < 3; i++) {
        assert_int_equal(plan->stick[i].part_count, 2);
        assert_string_equal(plan->stick[i].part[0].label, "long");
        assert_string_equal(plan->stick[i].part[1].label, "short");
    }
}

/* A made-up list of 15 pieces in 1/8 in, kerf 1/8 in included in each figure.  Its optimum, 57.60, was proved by
 * pattern enumeration with another solver; its linear relaxation is 56.80. */
static void list_of_fifteen(void **state)
{
    const int pieces[][2] = {{1269, 3}, {725, 4}, {651, 2}, {309, 2}, {244, 4}};
    const int stocks[][2] = {{8, 428}, {10, 555}, {12, 672}, {14, 810}, {16, 905}, {18, 1130}, {20, 1275}};
    struct cut_piece piece[5];
    struct cut_stock stock[7];
    for (size_t i = 0; i < 5; i++)
        piece[i] = (struct cut_piece){"p", (pieces[i][0] - 1) * (LENGTH_INCH / 8), pieces[i][1]};
    for (size_t i = 0; i < 7; i++)
        stock[i] = (struct cut_stock)BUY(stocks[i][0], stocks[i][1]);
    struct cut_problem problem = problem_of(piece, 5, stock, 7, INCHES(0.125), 0);
    struct cut_plan *plan = solve(*state, &problem);
    assert_int_equal(plan->cost, CENTS(5760));
    assert_string_equal(plan->verdict, "proved optimal");
    assert_true(plan->searched && plan->proof[0].bound == CENTS(5680) &&
                plan->certified == CENTS(5680)); /* 56.7967, up to a whole cent */
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(exact_fit_without_kerf, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(kerf_tips_the_length, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(no_cut_at_the_end_of_the_stick, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(rest_thinner_than_the_blade, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(trim_tips_the_length_but_not_of_shop_stock, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(better_than_first_fit, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(cheaper_lengths_and_fewer_sticks, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(longer_cutoff_at_the_same_cost, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(one_ply_a_stick, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(shop_stock_first_but_no_more_than_there_is, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(only_shop_stock, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(too_long_a_piece_is_a_stop, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(nothing_for_sale_is_a_stop, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(no_pieces_cost_nothing, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(like_sticks_stand_together, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(list_of_fifteen, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
