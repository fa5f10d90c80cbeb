/* From a takeoff to cutting problems: pieces grouped by member, stock from price rows and from the shop. */
#include "cut_support.h"

static struct takeoff_line pieces(const char *what, const char *where, const char *member, int count, length_t length,
                                  int line)
{
    return (struct takeoff_line){.id = what,
                                 .what = what,
                                 .where = where,
                                 .count = count * DECIMAL_ONE,
                                 .is = LINE_PIECES,
                                 .item = member,
                                 .length = length,
                                 .at = {"job.ini", line, 1, NULL}};
}

/* Two members; a hanger between them is no piece. Rows of prices: fixed lengths, by the foot, an item without length.
 */
static void members_become_problems(void **state)
{
    struct takeoff_line line[] = {
        pieces("ply", "beam B1", "DFL2-2X10", 3, INCHES(175), 5),
        {.id = "h", .what = "hanger", .where = "beam B1", .count = DECIMAL_ONE, .is = LINE_ITEM, .item = "HNG"},
        pieces("post ply", "post P1", "SPF2-2X4", 3, INCHES(86), 8),
        pieces("ply", "beam B2", "dfl2 2x10", 2, INCHES(190), 11),
    };
    const struct takeoff takeoff = {.line = line, .count = COUNT_OF(line)};
    const struct member members[] = {{.code = "DFL2-2X10"}, {.code = "SPF2-2X4"}};
    const struct price prices[] = {
        {.item = "DFL2-2X10", .length = FEET(16), .pack = DECIMAL_ONE, .price = CENTS(2537)},
        {.item = "HNG", .pack = DECIMAL_ONE, .price = CENTS(500)},
        {.item = "SPF2-2X4", .length = FEET(8), .pack = 2 * DECIMAL_ONE, .price = CENTS(901)},
        {.item = "DFL2-2X10", .length = FEET(20), .pack = DECIMAL_ONE, .price = CENTS(3762)},
    };
    const struct shop_piece shop[] = {
        {.member = &members[0], .length = INCHES(150), .count = 2, .book_value = CENTS(100)},
        {.member = &members[1], .length = INCHES(90), .count = 0},
    };
    const struct catalog catalog = {
        .prices = (struct price *)prices, .price_count = 4, .shop = (struct shop_piece *)shop, .shop_count = 2};
    const struct job job = {.facts = {.kerf = {INCHES(0.125), NULL}, .end_trim = {INCHES(0.5), NULL}}};
    struct diags diags = {.arena = *state};
    size_t count = 0;
    struct cut_problem *problem = cut_problems_from_takeoff(*state, &takeoff, &catalog, &job, &count, &diags);
    assert_int_equal(count, 2);
    assert_int_equal(diags.count, 0);
    assert_string_equal(problem[0].member, "DFL2-2X10");
    assert_int_equal(problem[0].piece_count, 2);
    assert_string_equal(problem[0].piece[1].label, "ply, beam B2");
    assert_int_equal(problem[0].piece[1].count, 2);
    assert_int_equal(problem[0].at.line, 11); /* of the longest piece */
    assert_int_equal(problem[0].kerf, INCHES(0.125));
    assert_int_equal(problem[0].end_trim, INCHES(0.5));
    assert_int_equal(problem[0].stock_count, 3);
    assert_ptr_equal(problem[0].stock[1].price, &prices[3]);
    assert_int_equal(problem[0].stock[2].cost, CENTS(100));
    assert_int_equal(problem[0].stock[2].supply, 2);
    assert_null(problem[0].stock[2].price);
    assert_int_equal(problem[1].stock_count, 1);
    assert_int_equal(problem[1].stock[0].cost, CENTS(901) / 2); /* half of a pack of two */
    struct cut_plan *plan = solve(*state, &problem[0]);
    /* 175 and 190 in each need a stick of 16 ft (191-1/2 usable); nothing fits beside them, nor into 150 in. */
    assert_int_equal(plan->cost, 5 * CENTS(2537));
}

/* 8 ft to 20 ft by 2 ft: 7 lengths, each its feet x 3.10 + 2.00 for the cut.  A step of 1/2 ft: 8-1/2 ft = 28.35. */
static void by_the_foot(void **state)
{
    struct takeoff_line line[] = {pieces("ply", "beam B1", "LVL", 3, INCHES(175), 5)};
    const struct takeoff takeoff = {.line = line, .count = 1};
    struct price price = {.item = "LVL",
                          .increment = FEET(2),
                          .least = FEET(8),
                          .most = FEET(20),
                          .pack = DECIMAL_ONE,
                          .price = CENTS(310),
                          .cut_charge = CENTS(200)};
    const struct catalog catalog = {.prices = &price, .price_count = 1};
    const struct job job = {.facts = {.kerf = {INCHES(0.125), NULL}, .end_trim = {INCHES(0.5), NULL}}};
    struct diags diags = {.arena = *state};
    size_t count = 0;
    struct cut_problem *problem = cut_problems_from_takeoff(*state, &takeoff, &catalog, &job, &count, &diags);
    assert_int_equal(problem->stock_count, 7);
    assert_int_equal(problem->stock[0].length, FEET(8));
    assert_int_equal(problem->stock[0].cost, CENTS(2680));
    assert_int_equal(problem->stock[6].length, FEET(20));
    assert_int_equal(problem->stock[6].cost, CENTS(6400));
    assert_int_equal(solve(*state, problem)->cost, 3 * CENTS(16 * 310 + 200));
    price.increment = FEET(1) / 2;
    problem = cut_problems_from_takeoff(*state, &takeoff, &catalog, &job, &count, &diags);
    assert_int_equal(problem->stock_count, 25);
    assert_int_equal(problem->stock[1].cost, CENTS(2835));
    /* 175-1/2 in = 14.625 ft: 15 ft */
    assert_int_equal(solve(*state, problem)->cost, 3 * CENTS(15 * 310 + 200));
    /* a step of 1/64 in would be 9,217 lengths: it is coarsened, and stays within least and most */
    price.increment = LENGTH_INCH / 64;
    problem = cut_problems_from_takeoff(*state, &takeoff, &catalog, &job, &count, &diags);
    assert_true(problem->stock_count <= 513);
    assert_true(problem->stock[problem->stock_count - 1].length <= FEET(20));
}

/* A stick sold as 8 ft is 96-3/8 in; the job's rules of trim, square ends and cutoffs come along. */
static void actual_lengths_and_rules_of_the_job(void **state)
{
    struct takeoff_line line[] = {pieces("stud", "shore A", "STUD", 2, INCHES(47.75), 5)};
    const struct takeoff takeoff = {.line = line, .count = 1};
    struct price price = {
        .item = "STUD", .length = FEET(8), .actual = INCHES(96.375), .pack = DECIMAL_ONE, .price = CENTS(310)};
    const struct catalog catalog = {.prices = &price, .price_count = 1};
    struct job job = {.facts = {.kerf = {INCHES(0.125), NULL},
                                .end_trim = {INCHES(0.25), NULL},
                                .trim_both_ends = {.choice = YES},
                                .least_cutoff = {FEET(2), NULL}}};
    struct diags diags = {.arena = *state};
    size_t count = 0;
    struct cut_problem *problem = cut_problems_from_takeoff(*state, &takeoff, &catalog, &job, &count, &diags);
    assert_int_equal(problem->least_cutoff, FEET(2));
    assert_int_equal(cut_sold_length(&problem->stock[0]), FEET(8));
    /* 96-3/8 - 2 x 1/4 = 95-7/8 = 47-3/4 + 1/8 + 47-3/4 + 1/8 + 1/8 */
    assert_int_equal(cut_usable_length(problem, &problem->stock[0]), INCHES(95.875));
    struct cut_plan *plan = solve(*state, problem);
    assert_int_equal(plan->stick_count, 1);
    assert_int_equal(plan->left, INCHES(0.125));
    /* squared, two pieces and two cuts are 95-3/4: they fit; of 47-7/8 they are 96 */
    job.facts.square_both_ends.choice = YES;
    problem = cut_problems_from_takeoff(*state, &takeoff, &catalog, &job, &count, &diags);
    assert_int_equal(solve(*state, problem)->stick_count, 1);
    line[0].length += LENGTH_INCH / 8;
    problem = cut_problems_from_takeoff(*state, &takeoff, &catalog, &job, &count, &diags);
    assert_int_equal(solve(*state, problem)->stick_count, 2);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(members_become_problems, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(by_the_foot, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(actual_lengths_and_rules_of_the_job, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
