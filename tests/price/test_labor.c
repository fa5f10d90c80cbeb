/* Hours, burdened rates, the order of work. */
#include "made.h"

static void set_trade(struct made *made, const char *trade, double wage, double burden)
{
    made->trades[made->catalog.trade_count++] =
        (struct trade){.trade = trade, .wage = dollars(wage), .burden = percent(burden)};
}

static struct task *set_task(struct made *made, const char *task, double likely, double least)
{
    struct task *row = &made->tasks[made->catalog.task_count++];
    *row = (struct task){
        .task = task, .trade = "carpenter", .per = "each", .likely = number(likely), .least = number(least), .crew = 2};
    return row;
}

static void do_task(struct made *made, const char *id, size_t task, double count)
{
    struct takeoff_line *line = made_line(made, LINE_LABOR, id, count);
    line->task = &made->tasks[task];
    line->in_work = made->tasks[task].order;
}

/* Peterson & Dagostino, Estimating in Building Construction, example 7-5: a mason at 29.00 an hour whose year costs
 * 89,435 for 2,160 billable hours, 41.41 an hour: a burden of 42.8 % on the wage. */
static void burdened_rate(void **state)
{
    struct made *made = made_new(*state);
    set_trade(made, "carpenter", 29.00, 42.8);
    set_task(made, "lay", 1, 0);
    do_task(made, "lay", 0, 1);
    assert_money(made_estimate(made)->labor[0].rate, 41.41);
}

/* Same book, formulas 7-2 and 7-3 as shown in lecture slides: 1,700 sq ft at 0.10 hour = 170 hours. */
static void hours_by_the_book(void **state)
{
    struct made *made = made_new(*state);
    set_trade(made, "carpenter", 25, 0);
    set_task(made, "block", 0.10, 0);
    do_task(made, "block", 0, 1700);
    struct estimate *estimate = made_estimate(made);
    assert_int_equal(estimate->labor[0].hours, number(170));
    assert_money(estimate->labor[0].total, 4250);
}

/* construction-resource.com, production rates: 452 ft of wall at 24 hours for 200 ft = 0.12 an hour and foot: 54.24
 * hours at 25 = 1,356.00. */
static void wall_by_the_foot(void **state)
{
    struct made *made = made_new(*state);
    set_trade(made, "carpenter", 25, 0);
    set_task(made, "wall", 0.12, 0);
    do_task(made, "wall", 0, 452);
    assert_money(made_estimate(made)->labor[0].total, 1356);
}

/* By hand: 22 hangers at 0.1 h = 2.2 h; 3 x 0.335 = 1.005 -> 1.01 h; two hours are the least of a visit;
 * 31.50 x 1.38 = 43.47: 95.63 (2.2 x 43.47 = 95.634), 43.90 (43.9047), 86.94. */
static void labor_by_hand(void **state)
{
    struct made *made = made_new(*state);
    set_trade(made, "carpenter", 31.50, 38);
    set_task(made, "hang", 0.1, 0)->order = 20;
    set_task(made, "saw", 0.335, 0)->order = 10;
    set_task(made, "visit", 0.25, 2)->order = 10;
    do_task(made, "hang", 0, 22);
    do_task(made, "saw", 1, 3);
    do_task(made, "visit", 2, 3);
    do_task(made, "nothing", 2, 0);
    struct takeoff_line *work = made_line(made, LINE_LABOR, "work/piano", 1.5);
    work->trade = &made->trades[0];
    work->in_work = INT32_MAX;
    struct estimate *estimate = made_estimate(made);
    assert_int_equal(estimate->labor_count, 4); /* what is counted 0 is absent, its least hours too */
    static const char *const IDS[] = {"saw", "visit", "hang", "work/piano"};
    static const double HOURS[] = {1.01, 2, 2.2, 1.5}, TOTALS[] = {43.90, 86.94, 95.63, 65.21};
    double sum = 0;
    for (size_t i = 0; i < 4; i++) {
        assert_string_equal(estimate->labor[i].id, IDS[i]);
        assert_int_equal(estimate->labor[i].hours, number(HOURS[i]));
        assert_money(estimate->labor[i].rate, 43.47);
        assert_money(estimate->labor[i].total, TOTALS[i]);
        sum += TOTALS[i];
    }
    assert_int_equal(estimate->hours, number(6.71));
    assert_money(estimate->direct, sum);
    assert_int_equal(estimate->class_[0].class, CLASS_LABOR);
}

/* A budget gives a range: 10 doors at 1, 2 or 4 hours, $20.00 an hour with no burden, no markup: 200, 400 and 800.  A
 * bid gives none. */
static void a_budget_has_a_range(void **state)
{
    struct made *made = made_new(*state);
    set_trade(made, "carpenter", 20, 0);
    struct task *task = set_task(made, "door", 2, 0);
    task->low = number(1);
    task->high = number(4);
    do_task(made, "door", 0, 10);
    struct estimate *bid = made_estimate(made);
    assert_money(bid->low_price, 400);
    assert_money(bid->high_price, 400);
    made->job.facts.status.choice = STATUS_BUDGET;
    struct estimate *budget = made_estimate(made);
    assert_money(budget->price, 400);
    assert_money(budget->low_price, 200);
    assert_money(budget->high_price, 800);
}

/* Crew 2, 8 hours a day: 1.01/16 = 0.06, 2/16 = 0.13, 2.2/16 = 0.14 days: 0.33, one day; 40 hours more are 2.5 days of
 * two: 2.83, three; of 10 hours a day 2, 0.05 + 0.1 + 0.11 + 2 = 2.26, three, and with four trips four. */
static void working_days(void **state)
{
    struct made *made = made_new(*state);
    set_trade(made, "carpenter", 31.50, 38);
    set_task(made, "saw", 1.01, 0);
    set_task(made, "visit", 0.25, 2);
    set_task(made, "hang", 0.1, 0);
    do_task(made, "saw", 0, 1);
    do_task(made, "visit", 1, 3);
    do_task(made, "hang", 2, 22);
    struct estimate *estimate = made_estimate(made);
    assert_int_equal(estimate->labor[0].days, number(0.06));
    assert_int_equal(estimate->labor[1].days, number(0.13));
    assert_int_equal(estimate->labor[2].days, number(0.14));
    assert_int_equal(estimate->working_days, 1);
    do_task(made, "more", 2, 400);
    assert_int_equal(made_estimate(made)->working_days, 3);
    made->job.facts.hours_a_day.decimal = number(10);
    assert_int_equal(made_estimate(made)->labor[3].days, number(2));
    assert_int_equal(made_estimate(made)->working_days, 3);
    made->job.facts.trips.count = 4;
    assert_int_equal(made_estimate(made)->working_days, 4);
}

/* Hours = quantity x rate x factor (Peterson & Dagostino, Estimating in Building Construction): 22 x 0.25 x 1.5 = 8.25;
 * 0.335 x 1.25 = 0.41875, to 0.4188; x 3 = 1.2564, 1.26 hours. */
static void factors_of_conditions(void **state)
{
    struct made *made = made_new(*state);
    set_trade(made, "carpenter", 20, 0);
    set_task(made, "hang", 0.25, 0);
    set_task(made, "saw", 0.335, 0);
    do_task(made, "hang", 0, 22);
    do_task(made, "saw", 1, 3);
    made->takeoff.line[0].factor = number(1.5);
    made->takeoff.line[1].factor = number(1.25);
    struct estimate *estimate = made_estimate(made);
    assert_int_equal(estimate->labor[0].hours, number(8.25));
    assert_money(estimate->labor[0].total, 165);
    assert_int_equal(estimate->labor[1].hours, number(1.26));
}

static void no_wage(void **state)
{
    struct made *made = made_new(*state);
    set_task(made, "hang", 0.1, 0);
    do_task(made, "hangers/A", 0, 22);
    assert_int_equal(made_estimate(made)->labor_count, 0);
    assert_int_equal(count_of(made, DIAG_P001), 1);
    assert_non_null(strstr(made->diags.item[0].text, "'carpenter', which 'hangers/A' needs"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(burdened_rate, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(hours_by_the_book, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(wall_by_the_foot, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(labor_by_hand, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_budget_has_a_range, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(factors_of_conditions, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(working_days, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(no_wage, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
