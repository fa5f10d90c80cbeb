/* Nothing without a price in silence: each line of the list of a random whole job comes to the order or to labor, and
 * from there to the estimate; where the catalogs have no price for it, a stop names it.  Fixed seed;
 * `price_test_property_jobs 10000` runs that many cases. */
#include "size/random_job.h"

#include "sawbill/price.h"

static int rounds = 60;
static struct catalog *catalog; /* read once: the tests do not change it */
static uint64_t from;           /* seed of the case at work, for the message when it fails */
static struct arena *arena;

static void restart(void)
{
    arena_free(arena);
    arena = arena_new(0, support_out_of_memory, NULL);
}

/* A random job priced with the catalogs given. */
static struct run *run_of(struct made *made, const struct random_job *job, const struct catalog *of)
{
    const char *text = random_text(arena, job);
    *made = (struct made){.arena = arena, .diags = {.arena = arena}};
    entries_read(arena, "random.ini", text, strlen(text), &made->entries, &made->diags);
    made->job = job_check(arena, "random.ini", &made->entries, &made->diags);
    if (made_stops(made)) {
        made_show(made);
        fail_msg("case %d: the job has a stop", (int)from);
    }
    return run_job(arena, made->job, of, NULL, &made->diags);
}

/* A stop, with this in its text. */
static bool stops_for(const struct made *made, const char *part)
{
    for (size_t i = 0; i < made->diags.count; i++)
        if (made->diags.item[i].class == DIAG_STOP && strstr(made->diags.item[i].text, part))
            return true;
    return false;
}

/* ---- with all prices ---- */

static bool bought(const struct run *run, const struct takeoff_line *line)
{
    for (size_t i = 0; i < run->order->count; i++)
        if (name_same(run->order->line[i].item, line->item) && run->order->line[i].packs > 0)
            return true;
    return false;
}

static bool in_estimate(const struct run *run, enum estimate_from kind, size_t index, money_t total)
{
    for (size_t i = 0; i < run->estimate->line_count; i++) {
        const struct estimate_line *line = &run->estimate->line[i];
        if (line->from == kind && line->index == index)
            return line->total == total;
    }
    return false;
}

static bool worked(const struct run *run, const struct takeoff_line *line)
{
    for (size_t i = 0; i < run->estimate->labor_count; i++)
        if (!strcmp(run->estimate->labor[i].id, line->id))
            return run->estimate->labor[i].count == line->count && run->estimate->labor[i].total > 0;
    return false;
}

static void assert_every_line(const struct run *run)
{
    for (size_t i = 0; i < run->takeoff->count; i++) {
        const struct takeoff_line *line = &run->takeoff->line[i];
        bool item = line->is == LINE_ITEM || line->is == LINE_PIECES;
        if (item ? !bought(run, line) : line->is == LINE_LABOR && !worked(run, line))
            fail_msg("case %d: %s comes to no order and to no labor", (int)from, line->id);
        if (line->is == LINE_SUB && !in_estimate(run, FROM_JOB, i, line->price))
            fail_msg("case %d: %s is not in the estimate", (int)from, line->id);
    }
}

/* Feet of the sticks of one member are enough for its pieces. */
static void assert_sticks(const struct run *run)
{
    for (size_t i = 0; i < run->takeoff->count; i++) {
        const struct takeoff_line *line = &run->takeoff->line[i];
        length_t need = 0, have = 0;
        for (size_t k = 0; k < run->takeoff->count; k++)
            if (run->takeoff->line[k].is == LINE_PIECES && run->takeoff->line[k].member == line->member)
                need += run->takeoff->line[k].count / DECIMAL_ONE * run->takeoff->line[k].length;
        for (size_t k = 0; k < run->order->count && line->is == LINE_PIECES; k++) {
            const struct order_line *stick = &run->order->line[k];
            if (stick->price && !stick->cut_charge && name_same(stick->item, line->item))
                have +=
                    stick->packs / DECIMAL_ONE *
                    (stick->price->length > 0 ? (stick->price->actual > 0 ? stick->price->actual : stick->price->length)
                                              : LENGTH_FOOT);
        }
        if (line->is == LINE_PIECES && have <= need)
            fail_msg("case %d: %s: less wood is bought than is cut", (int)from, line->id);
    }
}

static void assert_sums(const struct run *run)
{
    const struct estimate *estimate = run->estimate;
    money_t direct = 0;
    for (size_t i = 0; i < run->order->count; i++)
        if (!in_estimate(run, FROM_ORDER, i, run->order->line[i].total) || run->order->line[i].total < 0)
            fail_msg("case %d: %s is not in the estimate as ordered", (int)from, run->order->line[i].id);
    for (size_t i = 0; i < estimate->labor_count; i++)
        if (!in_estimate(run, FROM_LABOR, i, estimate->labor[i].total))
            fail_msg("case %d: %s is not in the estimate as worked", (int)from, estimate->labor[i].id);
    for (size_t i = 0; i < estimate->line_count; i++) {
        assert_true(estimate->line[i].total >= 0);
        direct += estimate->line[i].total;
    }
    assert_int_equal(direct, estimate->direct);
    assert_true(estimate->overhead >= 0 && estimate->contingency >= 0 && estimate->profit >= 0);
    assert_int_equal(estimate->before_tax,
                     estimate->direct + estimate->overhead + estimate->contingency + estimate->profit);
    assert_int_equal(estimate->price, estimate->before_tax + estimate->tax + estimate->rounding);
    assert_true(estimate->price > estimate->direct);
}

static void every_line_has_its_price(void **state)
{
    int priced = 0;
    (void)state;
    for (int round = 0; round < rounds; round++, restart()) {
        uint64_t seed = from = (uint64_t)round + 1;
        struct random_job job = random_job(&seed);
        struct made made;
        struct run *run = run_of(&made, &job, catalog);
        if (made_stops(&made)) {
            assert_null(run->estimate);
            continue; /* a ply longer than any stick, say: it is said */
        }
        assert_false(run->internal_failure);
        assert_every_line(run);
        assert_sticks(run);
        assert_sums(run);
        priced++;
    }
    assert_true(priced > rounds / 2);
}

/* ---- with one price gone ---- */

static const struct catalog *without(const char *item)
{
    struct catalog *other = arena_alloc(arena, sizeof *other);
    *other = *catalog;
    other->price_count = 0;
    other->prices = arena_array(arena, catalog->price_count, sizeof *other->prices);
    for (size_t i = 0; i < catalog->price_count; i++)
        if (!name_same(catalog->prices[i].item, item))
            other->prices[other->price_count++] = catalog->prices[i];
    return other;
}

static const struct catalog *without_trade(const char *trade)
{
    struct catalog *other = arena_alloc(arena, sizeof *other);
    *other = *catalog;
    other->trade_count = 0;
    other->trades = arena_array(arena, catalog->trade_count, sizeof *other->trades);
    for (size_t i = 0; i < catalog->trade_count; i++)
        if (!name_same(catalog->trades[i].trade, trade))
            other->trades[other->trade_count++] = catalog->trades[i];
    return other;
}

/* An item, or the trade of a task. */
static bool needs(const struct takeoff *takeoff, const char *word)
{
    for (size_t i = 0; i < takeoff->count; i++) {
        const struct takeoff_line *line = &takeoff->line[i];
        if (name_same(line->is == LINE_LABOR ? line->task->trade : line->item, word))
            return true;
    }
    return false;
}

static void what_has_no_price_stops(void **state)
{
    int gone = 0;
    (void)state;
    for (int round = 0; round < rounds; round++, restart()) {
        uint64_t seed = from = (uint64_t)round + 1000001;
        struct random_job job = random_job(&seed);
        struct made made;
        job.beams = 1;
        for (int i = 2; i < FIELDS; i++)
            job.field[i].is = false;
        job.loads = job.walls = 0;
        struct run *run = run_of(&made, &job, catalog);
        const struct takeoff *takeoff = run->takeoff;
        if (made_stops(&made))
            continue;
        const struct takeoff_line *line = &takeoff->line[random_of(&seed, (int)takeoff->count)];
        bool labor = line->is == LINE_LABOR;
        const char *word = labor ? line->task->trade : line->item;
        run = run_of(&made, &job, labor ? without_trade(word) : without(word));
        if (!needs(run->takeoff, word)) /* another hanger takes its place */
            continue;
        if (!stops_for(&made, word))
            fail_msg("case %d: %s: nothing says that '%s' has no price", (int)from, line->id, word);
        assert_null(labor ? NULL : run->estimate);
        gone++;
    }
    assert_true(gone > rounds / 2);
}

int main(int argc, char **argv)
{
    if (argc > 1)
        rounds = (int)strtol(argv[1], NULL, 10) / 2;
    struct arena *shelf = arena_new(0, support_out_of_memory, NULL);
    struct diags diags = {.arena = shelf};
    catalog = catalog_read(shelf, SOURCE_DIR "/catalogs", NULL, &diags);
    arena = arena_new(0, support_out_of_memory, NULL);
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(every_line_has_its_price),
        cmocka_unit_test(what_has_no_price_stops),
    };
    int failed = rounds > 0 ? cmocka_run_group_tests(tests, NULL, NULL) : 2;
    arena_free(arena);
    arena_free(shelf);
    return failed;
}
