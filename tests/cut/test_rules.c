/* Trim, square ends, actual lengths, rounding, joints and equally cheap plans, worked out by hand. */
#include "cut_support.h"

static struct cut_problem problem_of(struct cut_piece *piece, size_t pieces, struct cut_stock *stock, size_t stocks)
{
    return (struct cut_problem){.member = "X-2X10",
                                .piece = piece,
                                .piece_count = pieces,
                                .stock = stock,
                                .stock_count = stocks,
                                .kerf = INCHES(0.125),
                                .end_trim = INCHES(0.5)};
}

/* 95-1/4 in out of 8 ft (96): with 1/2 in off one end 95-1/2 are left, off both ends 95, too short: 10 ft then. */
static void trim_off_both_ends(void **state)
{
    struct cut_piece piece[] = {{"a", INCHES(95.25), 1}};
    struct cut_stock stock[] = {BUY(8, 500), BUY(10, 700)};
    struct cut_problem problem = problem_of(piece, 1, stock, 2);
    assert_int_equal(solve(*state, &problem)->cost, CENTS(500));
    problem.both_ends = true;
    struct cut_plan *plan = solve(*state, &problem);
    assert_int_equal(plan->cost, CENTS(700));
    assert_int_equal(plan->trim_lost, INCHES(1));
    /* a row that says its own trim: none */
    stock[0].has_trim = true;
    plan = solve(*state, &problem);
    assert_int_equal(plan->cost, CENTS(500));
    assert_int_equal(plan->trim_lost, 0);
}

/* 95-1/2 in out of 96 - 1/2 end with the stick.  Squared, the last cut needs its 1/8, which is not there. */
static void both_ends_squared(void **state)
{
    struct cut_piece piece[] = {{"a", INCHES(95.5), 1}};
    struct cut_stock stock[] = {BUY(8, 500), BUY(10, 700)};
    struct cut_problem problem = problem_of(piece, 1, stock, 2);
    assert_int_equal(solve(*state, &problem)->cost, CENTS(500));
    problem.square_both_ends = true;
    assert_int_equal(solve(*state, &problem)->cost, CENTS(700));
    /* 95-3/8 + 1/8 = 95-1/2: exactly room for the cut, nothing left */
    piece[0].length = INCHES(95.375);
    struct cut_plan *plan = solve(*state, &problem);
    assert_int_equal(plan->cost, CENTS(500));
    assert_int_equal(plan->kerf_lost, INCHES(0.125));
    assert_int_equal(plan->left, 0);
    stock[0].length = INCHES(95.9); /* a tenth short: a stop that says what can be used */
    problem.stock_count = 1;
    struct diags diags = {.arena = *state};
    cut_solve(*state, &problem, NULL, &diags);
    assert_int_equal(diags.count, 1);
    assert_int_equal(diags.item[0].code, DIAG_T001);
}

/* Sold as 8 ft, it comes 96-3/8: two of 47-7/8 and a kerf are 95-7/8, and 1/2 of trim makes 96-3/8. */
static void sticks_come_longer_than_sold(void **state)
{
    struct cut_piece piece[] = {{"a", INCHES(47.875), 2}};
    struct cut_stock stock[] = {BUY(8, 500)};
    struct cut_problem problem = problem_of(piece, 1, stock, 1);
    assert_int_equal(solve(*state, &problem)->stick_count, 2);
    stock[0].sold = stock[0].length;
    stock[0].length = INCHES(96.375);
    struct cut_plan *plan = solve(*state, &problem);
    assert_int_equal(plan->stick_count, 1);
    assert_int_equal(plan->left, 0);
    assert_int_equal(cut_sold_length(plan->stick[0].stock), FEET(8));
}

/* 1,000.001 mm (40,000,040 units) beside 300 mm: the common step is 40 units, of which a stick of 8 ft has 2.4 million.
 * So lengths go up to 1/64 in (15,875 units) with their kerf: 1,000.001 + 3 mm = 40,120,040 units are 2,528 (2,527.25);
 * 303 mm = 12,120,000 are 764 (763.5).  8 ft + 3 mm = 97,536,000 + 120,000: 6,151 (6,151.6).  Two and one: 5,820: one
 * stick.  The same without the micrometer is exact: its step is 1 mm. */
static void too_fine_lengths_are_rounded_and_it_is_said(void **state)
{
    struct cut_piece piece[] = {{"a", 40000040, 2}, {"b", 12000000, 1}};
    struct cut_stock stock[] = {BUY(8, 500)};
    struct cut_problem problem = problem_of(piece, 2, stock, 1);
    problem.kerf = 120000;
    problem.end_trim = 0;
    struct cut_plan *plan = solve(*state, &problem);
    assert_int_equal(plan->stick_count, 1);
    assert_true(plan->rounded);
    assert_non_null(strstr(plan->note, "1/64"));
    assert_string_equal(plan->verdict, "proved optimal");
    plan->rounded = false;
    assert_string_equal(cut_verify(*state, &problem, plan), "lengths were rounded and the plan does not say so");
    piece[0].length = 40000000;
    plan = solve(*state, &problem);
    assert_false(plan->rounded);
    assert_null(plan->note);
}

/* A ply of 24 ft over a post at its middle; 12 ft cost 9.00, 24 ft 20.00.  In two parts of 12 ft each stick must be
 * longer than 12 ft: none is, but 24 ft without trim is two of them less a kerf.  Sold 12 ft 1 in: 2 x 9.00 beat 20.00.
 */
static void ply_joined_over_its_support(void **state)
{
    const length_t middle[] = {FEET(12)};
    const struct cut_joints joints = {0, middle, 1};
    struct cut_piece piece[] = {{"ply, beam B1", FEET(24), 2}};
    struct cut_stock stock[] = {BUY(12, 900), BUY(25, 2000)};
    struct cut_problem problem = problem_of(piece, 1, stock, 2);
    problem.joints = &joints;
    problem.joints_count = 1;
    struct cut_plan *plan = solve(*state, &problem);
    assert_int_equal(plan->cost, CENTS(4000));
    assert_int_equal(plan->joined[0], 0);
    stock[0].length += LENGTH_INCH;
    plan = solve(*state, &problem);
    assert_int_equal(plan->cost, CENTS(3600));
    assert_int_equal(plan->joined[0], 1);
    assert_int_equal(plan->stick_count, 4);
    assert_string_equal(plan->stick[0].part[0].label, "ply, beam B1, part 1 of 2");
    assert_string_equal(plan->verdict, "proved optimal");
    assert_int_equal(plan->proof_count, 2);
    /* at the same price it stays whole */
    stock[0].cost = CENTS(1000);
    plan = solve(*state, &problem);
    assert_int_equal(plan->joined[0], 0);
    /* where no joint is allowed and nothing is long enough it is named */
    problem.joints_count = 0;
    problem.stock_count = 1;
    struct diags diags = {.arena = *state};
    plan = cut_solve(*state, &problem, NULL, &diags);
    assert_string_equal(plan->verdict, "infeasible");
    assert_non_null(strstr(diags.item[0].text, "piece 'ply, beam B1' of 'X-2X10' is 24' 0\" long"));
    assert_non_null(strstr(diags.item[0].text, "nothing is spliced"));
    /* nor with a joint, when a part is too long */
    problem.joints_count = 1;
    stock[0].length = FEET(10);
    cut_solve(*state, &problem, NULL, &diags);
    assert_int_equal(diags.count, 2);
    assert_non_null(strstr(diags.item[1].text, "even joined over every support a part is 12' 0\""));
}

/* More ways of joining than are tried: the plan is only the best found, and says why. */
static void too_many_ways_of_joining(void **state)
{
    const length_t at[] = {FEET(2), FEET(4), FEET(6), FEET(8), FEET(10), FEET(12)};
    const struct cut_joints joints[] = {{0, at, 6}, {1, at, 6}};
    struct cut_piece piece[] = {{"a", FEET(14), 1}, {"b", FEET(14), 1}};
    struct cut_stock stock[] = {BUY(16, 900), BUY(3, 100)};
    struct cut_problem problem = problem_of(piece, 2, stock, 2);
    problem.joints = joints;
    problem.joints_count = 2;
    struct cut_plan *plan = solve(*state, &problem);
    assert_string_equal(plan->verdict, "best found");
    assert_int_equal(plan->bound, 0);
    assert_int_equal(plan->cost, CENTS(1400)); /* all parts of 2 ft, one to a stick of 3 ft */
    assert_non_null(strstr(plan->note, "joining"));
}

/* 3 ft three times and 4 ft three times out of 8 ft at 5.00, no trim, no kerf: 21 ft, so three sticks.  4 + 4, 4 + 3, 3
 * + 3 are three patterns; 4 + 3 three times is one. */
static void few_patterns(void **state)
{
    struct cut_piece piece[] = {{"a", FEET(3), 3}, {"b", FEET(4), 3}};
    struct cut_stock stock[] = {BUY(8, 500)};
    struct cut_problem problem = problem_of(piece, 2, stock, 1);
    problem.kerf = problem.end_trim = 0;
    struct cut_plan *plan = solve(*state, &problem);
    assert_int_equal(plan->stick_count, 3);
    assert_int_equal(cut_count_alike(plan, 0), 3);
}

/* Own sticks of 10 ft and 14 ft for nothing, a piece of 9 ft: the shorter is taken, the longer stays whole.  At a book
 * value of what 10 ft cost new, the own one is taken. */
static void own_stock_first_and_the_shorter(void **state)
{
    struct cut_piece piece[] = {{"a", FEET(9), 1}};
    struct cut_stock stock[] = {OWN(14, 1), OWN(10, 1)};
    struct cut_problem problem = problem_of(piece, 1, stock, 2);
    struct cut_plan *plan = solve(*state, &problem);
    assert_int_equal(plan->stick[0].stock->length, FEET(10));
    struct cut_piece two[] = {{"a", FEET(9), 2}};
    struct cut_stock equal[] = {BUY(10, 700), OWN(10, 1)};
    equal[1].cost = CENTS(700);
    problem = problem_of(two, 1, equal, 2);
    plan = solve(*state, &problem);
    assert_int_equal(plan->cost, CENTS(1400));
    assert_true(cut_is_shop(plan->stick[0].stock));
    assert_false(cut_is_shop(plan->stick[1].stock));
}

/* 8 ft at 8.00, kerf 1/8, trim 1/2; a piece of 5 ft: kerf 1/8, cutoff 96 - 1/2 - 60 - 1/8 = 35-3/8, kept from 16 in on.
 * In money, of 8.00 over 96 in: trim 0.0417, kerf 0.0104, cutoff 2.9479, and the piece has the rest, 5.00. */
static void shares_add_up(void **state)
{
    struct cut_piece piece[] = {{"a", FEET(5), 1}};
    struct cut_stock stock[] = {BUY(8, 800)};
    struct cut_problem problem = problem_of(piece, 1, stock, 1);
    problem.least_cutoff = INCHES(16);
    struct cut_plan *plan = solve(*state, &problem);
    struct cut_shares shares = cut_shares(plan);
    assert_int_equal(shares.length[SHARE_KEPT], INCHES(35.375));
    assert_int_equal(shares.length[SHARE_WASTE], 0);
    assert_int_equal(shares.money[SHARE_TRIM], 417);
    assert_int_equal(shares.money[SHARE_KERF], 104);
    assert_int_equal(shares.money[SHARE_KEPT], 29479);
    assert_int_equal(shares.money[SHARE_NET], 50000);
    problem.least_cutoff = INCHES(36);
    plan = solve(*state, &problem);
    assert_int_equal(cut_shares(plan).length[SHARE_WASTE], INCHES(35.375));
    assert_int_equal(plan->kept, 0);
}

/* No input runs without end: many lengths that do not go together, a fine step, a limit of few steps. */
static void limits_end_the_search(void **state)
{
    enum { KINDS = 60 };
    struct cut_piece piece[KINDS];
    struct cut_stock stock[] = {BUY(20, 1275), BUY(16, 905), BUY(12, 672)};
    for (int i = 0; i < KINDS; i++)
        piece[i] = (struct cut_piece){"p", INCHES(40) + (i * i * 37 % 4001) * (LENGTH_INCH / 64), 1 + i % 3};
    struct cut_problem problem = problem_of(piece, KINDS, stock, 3);
    struct diags diags = {.arena = *state};
    const struct cut_limits limits = {.steps = 1};
    struct cut_plan *plan = cut_solve_within(*state, &problem, &limits, NULL, &diags);
    assert_int_equal(diags.count, 0);
    assert_null(cut_verify(*state, &problem, plan));
    assert_string_equal(plan->verdict, "best found");
    assert_non_null(strstr(plan->note, "limit"));
    assert_true(plan->bound <= plan->cost);
}

int main(void)
{
#define TEST(name) cmocka_unit_test_setup_teardown(name, support_setup, support_teardown)
    const struct CMUnitTest tests[] = {
        TEST(trim_off_both_ends),
        TEST(both_ends_squared),
        TEST(sticks_come_longer_than_sold),
        TEST(too_fine_lengths_are_rounded_and_it_is_said),
        TEST(ply_joined_over_its_support),
        TEST(too_many_ways_of_joining),
        TEST(few_patterns),
        TEST(own_stock_first_and_the_shorter),
        TEST(shares_add_up),
        TEST(limits_end_the_search),
    };
#undef TEST
    return cmocka_run_group_tests(tests, NULL, NULL);
}
