/* The verifier takes a right plan and rejects it after every kind of tampering. */
#include "cut_support.h"

/* 5 ft + 2 ft three times out of 8 ft, one of them the shop's own; kerf 1/8 in, trim 1/2 in. */
static struct cut_piece piece[] = {{"short", FEET(2), 3}, {"long", FEET(5), 3}};
static struct cut_stock stock[] = {BUY(8, 500), BUY(12, 800), OWN(8, 1)};
static const struct cut_problem problem = {
    .member = "X-2X10",
    .piece = piece,
    .piece_count = 2,
    .stock = stock,
    .stock_count = 3,
    .kerf = LENGTH_INCH / 8,
    .end_trim = LENGTH_INCH / 2,
};

static void drop_part(struct cut_plan *plan)
{
    plan->stick[0].part_count = 1;
}
static void drop_stick(struct cut_plan *plan)
{
    plan->stick_count--;
}
static void double_part(struct cut_plan *plan)
{
    plan->stick[0].part[1] = plan->stick[0].part[0];
}
static void foreign_label(struct cut_plan *plan)
{
    plan->stick[1].part[1].label = "other";
}
static void shorten_part(struct cut_plan *plan)
{
    plan->stick[1].part[0].length -= 1;
}
static void extra_part(struct cut_plan *plan)
{
    static struct cut_part parts[3];
    memcpy(parts, plan->stick[0].part, 2 * sizeof *parts);
    parts[2] = (struct cut_part){"extra", LENGTH_INCH};
    plan->stick[0].part = parts;
    plan->stick[0].part_count = 3;
}
static void empty_stick(struct cut_plan *plan)
{
    static struct cut_stick sticks[4];
    memcpy(sticks, plan->stick, 3 * sizeof *sticks);
    sticks[3] = (struct cut_stick){.stock = &stock[0]};
    plan->stick = sticks;
    plan->stick_count = 4;
}
static void foreign_stock(struct cut_plan *plan)
{
    static const struct cut_stock other = BUY(8, 500);
    plan->stick[1].stock = &other;
}
static void no_stock(struct cut_plan *plan)
{
    plan->stick[1].stock = NULL;
}
static void own_twice(struct cut_plan *plan)
{
    plan->stick[1].stock = plan->stick[0].stock;
    plan->stick[1].left = plan->stick[0].left;
}
static void overfull(struct cut_plan *plan)
{
    /* all long ones in one stick, all short ones in another */
    struct cut_part keep = plan->stick[0].part[1];
    plan->stick[0].part[1] = plan->stick[1].part[0];
    plan->stick[1].part[0] = keep;
}
static void longer_cutoff(struct cut_plan *plan)
{
    plan->stick[2].left += 1;
}
static void cheaper(struct cut_plan *plan)
{
    plan->cost -= 1;
    plan->bound = plan->cost;
}
static void high_bound(struct cut_plan *plan)
{
    plan->bound = plan->cost + 1;
}
static void negative_bound(struct cut_plan *plan)
{
    plan->bound = -1;
}
static void false_proof(struct cut_plan *plan)
{
    plan->bound -= 1;
}
static void false_modesty(struct cut_plan *plan)
{
    plan->verdict = "best found";
}
static void more_bought(struct cut_plan *plan)
{
    plan->bought += 1;
}
static void less_net(struct cut_plan *plan)
{
    plan->net -= 1;
    plan->left += 1;
}
static void less_kerf(struct cut_plan *plan)
{
    plan->kerf_lost -= 1;
}
static void less_trim(struct cut_plan *plan)
{
    plan->trim_lost -= 1;
}
static void false_despair(struct cut_plan *plan)
{
    plan->verdict = "infeasible";
}
static void other_problem(struct cut_plan *plan)
{
    static struct cut_problem copy;
    copy = problem;
    plan->problem = &copy;
}

static void shorter_first(struct cut_plan *plan)
{
    struct cut_part keep = plan->stick[0].part[1];
    plan->stick[0].part[1] = plan->stick[0].part[0];
    plan->stick[0].part[0] = keep;
}
static void more_kept(struct cut_plan *plan)
{
    plan->kept += 1;
}
/* 2 x 500 for three pieces of 5 ft, one of them in the own stick: the plan is proved by its values alone. */
static void higher_value(struct cut_plan *plan)
{
    plan->proof[0].value[0].value *= 2;
}
static void negative_value(struct cut_plan *plan)
{
    plan->proof[0].value[0].value = -1;
}
static void lower_value(struct cut_plan *plan)
{
    for (size_t i = 0; i < plan->proof[0].value_count; i++)
        plan->proof[0].value[i].value = 0;
}
static void foreign_value(struct cut_plan *plan)
{
    plan->proof[0].value[0].length += 1;
}
static void extra_of_endless(struct cut_plan *plan)
{
    plan->proof[0].extra[0] = 1;
}
static void negative_extra(struct cut_plan *plan)
{
    plan->proof[0].extra[2] = -1;
}
static void higher_proof(struct cut_plan *plan)
{
    plan->proof[0].bound += 1;
}
static void no_proof(struct cut_plan *plan)
{
    plan->proof_count = 0;
}
static void two_proofs(struct cut_plan *plan)
{
    static struct cut_proof proofs[2];
    proofs[0] = proofs[1] = plan->proof[0];
    plan->proof = proofs;
    plan->proof_count = 2;
}
static void false_search(struct cut_plan *plan)
{
    plan->searched = true;
}
static void false_certified(struct cut_plan *plan)
{
    plan->certified += 1;
}
static void low_bound(struct cut_plan *plan)
{
    plan->bound -= 1;
    plan->verdict = "best found";
}

static const struct {
    void (*tamper)(struct cut_plan *plan);
    const char *want;
} cases[] = {
    {drop_part, "a piece is not cut"},
    {false_certified, "the plan does not say rightly what its proofs show"},
    {drop_stick, "a piece is not cut"},
    {double_part, "a piece is not cut"},
    {foreign_label, "a piece is not cut"},
    {shorten_part, "a piece is not cut"},
    {extra_part, "a stick holds a piece that nobody asked for"},
    {empty_stick, "a stick without a piece"},
    {foreign_stock, "a stick is of stock that is not offered"},
    {no_stock, "a stick is of stock that is not offered"},
    {own_twice, "more of a stock is used than there is"},
    {overfull, "a stick is too short for its pieces"},
    {longer_cutoff, "a cutoff is wrong"},
    {cheaper, "the cost is not the sum of the sticks"},
    {high_bound, "the bound is above the cost"},
    {negative_bound, "the bound is above the cost"},
    {false_proof, "the verdict does not follow from cost and bound"},
    {false_modesty, "the verdict does not follow from cost and bound"},
    {more_bought, "the lengths do not add up"},
    {less_net, "the lengths do not add up"},
    {less_kerf, "the lengths do not add up"},
    {less_trim, "the lengths do not add up"},
    {false_despair, "an infeasible plan that buys something"},
    {other_problem, "the plan is of another problem"},
    {shorter_first, "a longer piece is cut after a shorter one"},
    {more_kept, "the lengths do not add up"},
    {higher_value, "a stick may hold more than the proof says"},
    {negative_value, "the proof has a value below nothing"},
    {lower_value, "the bound does not follow from the proof"},
    {foreign_value, "the proof speaks of a length that nobody wants"},
    {extra_of_endless, "the proof allows extra where it may not"},
    {negative_extra, "the proof allows extra where it may not"},
    {higher_proof, "the bound does not follow from the proof"},
    {no_proof, "the plan does not say rightly whether a search raised its bound"},
    {two_proofs, "the proof has more ways than there are"},
    {false_search, "the plan does not say rightly whether a search raised its bound"},
    {low_bound, "the bound is below what the proof says"},
};

static void every_tampering_is_seen(void **state)
{
    for (size_t i = 0; i < COUNT_OF(cases); i++) {
        struct cut_plan *plan = solve(*state, &problem);
        assert_int_equal(plan->stick_count, 3);
        assert_int_equal(plan->cost, CENTS(1000));
        assert_false(plan->searched);
        cases[i].tamper(plan);
        const char *got = cut_verify(*state, &problem, plan);
        if (!got || strcmp(got, cases[i].want) != 0)
            print_error("case %zu\n", i);
        assert_non_null(got);
        assert_string_equal(got, cases[i].want);
    }
}

/* Two rows with one label and length are one demand of both together. */
static void equal_labels_are_counted_together(void **state)
{
    struct cut_piece twins[] = {{"a", FEET(3), 1}, {"a", FEET(3), 2}};
    struct cut_problem twin = problem;
    twin.piece = twins;
    struct cut_plan *plan = solve(*state, &twin);
    twins[1].count = 1;
    assert_string_equal(cut_verify(*state, &twin, plan), "a piece is cut too often");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(every_tampering_is_seen, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(equal_labels_are_counted_together, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
