/* Bare lists to problems. */
#include "cut_support.h"

static struct cut_problem *read(void **state, const char *pieces, const char *stock, const struct cut_rules *rules,
                                size_t *count, struct diags *diags)
{
    const struct list_source of_pieces = {"p.csv", pieces, strlen(pieces)}, of_stock = {"s.csv", stock, strlen(stock)};
    const struct cut_list *list = cut_list_read(*state, &of_pieces, &of_stock, diags);
    return cut_problems_from_list(*state, list, rules, count, diags);
}

/* Members in the order of the pieces, whatever their case; each has its own stock. */
static void a_problem_for_each_member(void **state)
{
    struct diags diags = {.arena = *state};
    const struct cut_rules rules = {.kerf = INCHES(0.125), .trim = INCHES(2), .both_ends = true};
    size_t count;
    struct cut_problem *problem = read(state,
                                       "label,length,count,member\n"
                                       "z,4 ft,1,ZED\n"
                                       "a,3 ft,2,abc\n"
                                       "b,\"2' 6\"\"\",5,ABC\n",
                                       "length,price,supply,trim,member\n"
                                       "8 ft,4.27,,,Abc\n"
                                       "9 ft,0,2,0,ABC\n"
                                       "9 ft,0,0,0,ABC\n"
                                       "10 ft,5.18,,1 in,zed\n",
                                       &rules, &count, &diags);
    assert_int_equal(diags.count, 0);
    assert_int_equal(count, 2);
    assert_string_equal(problem[0].member, "ZED");
    assert_string_equal(problem[1].member, "abc");
    assert_int_equal(problem[1].piece_count, 2);
    assert_string_equal(problem[1].piece[1].label, "b");
    assert_int_equal(problem[1].piece[1].length, INCHES(30));
    assert_int_equal(problem[1].piece_at[1].line, 4);
    /* a supply of 0 is none: the row is not offered; an empty one has no end */
    assert_int_equal(problem[1].stock_count, 2);
    assert_int_equal(problem[1].stock[0].supply, 0);
    assert_int_equal(problem[1].stock[0].trim, INCHES(2));
    assert_int_equal(problem[1].stock[1].supply, 2);
    assert_int_equal(problem[1].stock[1].trim, 0);
    assert_int_equal(problem[0].stock[0].cost, CENTS(518));
    assert_int_equal(problem[0].stock[0].trim, INCHES(1));
    /* 10 ft - 2 x 1 in */
    assert_int_equal(cut_usable_length(&problem[0], &problem[0].stock[0]), INCHES(118));
    assert_true(problem[0].both_ends);
}

/* Five pieces of 2' 6" and two of 3 ft: 18 ft 6 in.  Two own sticks of 9 ft for nothing hold 18 ft at most: one more.
 */
static void supply_and_trim_are_kept(void **state)
{
    struct diags diags = {.arena = *state};
    const struct cut_rules rules = {.kerf = 0, .trim = 0};
    size_t count;
    struct cut_problem *problem = read(state, "label,length,count\na,3 ft,2\nb,30 in,5\n",
                                       "length,price,supply,trim\n9 ft,0,2,0\n8 ft,4.27,,\n", &rules, &count, &diags);
    struct cut_plan *plan = solve(*state, &problem[0]);
    assert_int_equal(plan->cost, CENTS(427));
    assert_int_equal(plan->stick_count, 3);
}

/* A ply of 24 ft that may be joined at 12 ft: two of 12 ft 1 in at 9.00 beat one of 25 ft at 20.00. */
static void joints_are_chosen_from(void **state)
{
    struct diags diags = {.arena = *state};
    const struct cut_rules rules = {.kerf = INCHES(0.125), .trim = INCHES(0.5)};
    size_t count;
    struct cut_problem *problem =
        read(state, "label,length,count,joints\nply,24 ft,1,8 ft; 12 ft\n",
             "length,price,supply,trim\n25 ft,20,,\n12 ft 1 in,9,,\n", &rules, &count, &diags);
    assert_int_equal(diags.count, 0);
    struct cut_plan *plan = solve(*state, &problem[0]);
    assert_int_equal(plan->cost, CENTS(1800));
    assert_int_equal(plan->joined[0], 2); /* at the second place */
    assert_string_equal(plan->stick[1].part[0].label, "ply, part 2 of 2");
}

static void joints_that_cannot_be(void **state)
{
    struct diags diags = {.arena = *state};
    const struct cut_rules rules = {.kerf = INCHES(0.125)};
    size_t count;
    (void)read(state, "label,length,count,joints\na,24 ft,1,12\nb,24 ft,1,24 ft\nc,24 ft,1,9 ft; 8 ft\n",
               "length,price,supply,trim\n25 ft,20,,\n", &rules, &count, &diags);
    assert_int_equal(diags.count, 3);
    assert_string_equal(diags.item[1].text, "'24 ft' in column 'joints': a joint lies between the ends of the piece; "
                                            "write them like '8 ft; 16 ft'");
    assert_string_equal(diags.item[2].text, "'8 ft' in column 'joints': joints go from end 1 on, each once; write them "
                                            "like '8 ft; 16 ft'");
}

static void a_place_for_each_fault(void **state)
{
    struct diags diags = {.arena = *state};
    const struct cut_rules rules = {.trim = INCHES(2)};
    size_t count;
    struct cut_problem *problem = read(state, "label,length,count\na,3 ft,2\nb,30 ft,5\nc,31 ft,1\n",
                                       "length,price,supply,trim\n9 ft,1,,\n", &rules, &count, &diags);
    cut_solve(*state, &problem[0], NULL, &diags);
    assert_int_equal(diags.count, 2);
    assert_int_equal(diags.item[0].at.line, 3);
    assert_int_equal(diags.item[0].at.column, 3);
    assert_int_equal(diags.item[1].at.line, 4);
    assert_string_equal(diags.item[0].text, "piece 'b' is 30' 0\" long; the longest stock is 9' 0\", of which 8' 10\" "
                                            "can be used: nothing is spliced");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(a_problem_for_each_member, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(supply_and_trim_are_kept, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(joints_are_chosen_from, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(joints_that_cannot_be, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_place_for_each_fault, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
