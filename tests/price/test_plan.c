/* The whole road on the sample jobs: what is chosen, what it costs, what moves it. */
#include "made.h"

static char *read_all(struct arena *arena, const char *file, size_t *length)
{
    FILE *in = fopen(file, "rb");
    assert_non_null(in);
    char *text = arena_alloc(arena, 1 << 20);
    *length = fread(text, 1, (1 << 20) - 1, in);
    assert_int_equal(ferror(in), 0);
    assert_int_equal(fclose(in), 0);
    return text;
}

struct sample {
    struct arena *arena;
    struct diags diags;
    const struct job *job;
    struct catalog *catalog;
};

static void say_stops(const struct sample *sample)
{
    for (size_t i = 0; i < sample->diags.count; i++)
        if (sample->diags.item[i].class == DIAG_STOP)
            print_error("%s\n", diag_line(sample->arena, &sample->diags.item[i]));
    assert_int_equal(diag_count(&sample->diags, DIAG_STOP), 0);
}

/* The same length of text in place of another, once. */
static void put_in(char *text, const char *from, const char *to)
{
    char *at = strstr(text, from);
    assert_non_null(at);
    assert_int_equal(strlen(from), strlen(to));
    memcpy(at, to, strlen(to));
}

/* `more`: text put behind the job file; with a [load], the first beam has it above. */
static struct sample *open_sample(struct arena *arena, const char *name, const char *more)
{
    struct sample *sample = arena_alloc(arena, sizeof *sample);
    sample->arena = arena;
    sample->diags.arena = arena;
    const char *file = arena_printf(arena, "%s/jobs/%s.ini", SOURCE_DIR, name);
    size_t length;
    char *text = read_all(arena, file, &length);
    if (!strncmp(more, "[load", 5))
        put_in(text, "above = nothing", "above =  load S");
    text = arena_printf(arena, "%s\n%s", text, more);
    struct entries entries = {0};
    entries_read(arena, file, text, strlen(text), &entries, &sample->diags);
    sample->job = job_check(arena, file, &entries, &sample->diags);
    say_stops(sample);
    sample->catalog = catalog_read(arena, SOURCE_DIR "/catalogs", NULL, &sample->diags);
    say_stops(sample);
    return sample;
}

static struct outcome *plan(struct sample *sample)
{
    struct outcome *outcome = plan_job(sample->arena, sample->job, sample->catalog, &sample->diags);
    say_stops(sample);
    assert_non_null(outcome->run);
    assert_false(outcome->run->internal_failure);
    assert_non_null(outcome->run->estimate);
    return outcome;
}

static const char *const SAMPLES[] = {"parlor", "attic", "two-beams"};
enum { SAMPLE_COUNT = 3 };

static void check_sums(const struct estimate *estimate)
{
    money_t direct = 0, price = 0, draws = 0;
    for (size_t i = 0; i < estimate->line_count; i++)
        direct += estimate->line[i].total;
    for (size_t i = 0; i < estimate->class_count; i++)
        price += estimate->class_[i].price;
    for (size_t i = 0; i < estimate->draw_count; i++)
        draws += estimate->draw[i].amount;
    assert_true(estimate->line_count > 20 && estimate->labor_count > 10);
    assert_int_equal(direct, estimate->direct);
    assert_int_equal(price + estimate->tax + estimate->rounding, estimate->price);
    assert_int_equal(draws, estimate->price);
}

static void samples_add_up(void **state)
{
    for (size_t i = 0; i < SAMPLE_COUNT; i++)
        check_sums(plan(open_sample(*state, SAMPLES[i], ""))->run->estimate);
}

/* Of each beam the chosen one is the cheapest that passes; each other passes at no less, or fails and says in what. */
static void check_choice(struct arena *arena, const struct outcome *outcome, const struct beam *beam)
{
    const char *own = head_name(arena, KIND_BEAM, &beam->head);
    const struct candidate *chosen = NULL;
    for (size_t i = 0; i < outcome->candidate_count; i++)
        if (outcome->candidate[i].chosen && outcome->candidate[i].beam == beam) {
            assert_null(chosen);
            chosen = &outcome->candidate[i];
        }
    assert_non_null(chosen);
    assert_true(chosen->passes);
    assert_int_equal(chosen->price, outcome->run->estimate->price);
    assert_int_equal(chosen->direct, outcome->run->estimate->direct);
    for (size_t i = 0; i < outcome->candidate_count; i++) {
        const struct candidate *candidate = &outcome->candidate[i];
        assert_non_null(candidate->why);
        if (candidate->beam != beam)
            continue;
        assert_true(candidate->member->depth <= beam->most_depth.length);
        assert_true(candidate->plies >= 1 && candidate->plies <= beam->most_plies.count);
        if (candidate->ratio > 1) /* a check of its own goes without its name */
            assert_int_not_equal(strncmp(candidate->why, own, strlen(own)), 0);
        if (candidate->passes)
            assert_true(candidate->price >= chosen->price && candidate->ratio <= 1 + 1e-9);
        else
            assert_true(candidate->price == 0 && !candidate->chosen);
    }
}

static void the_cheapest_that_passes(void **state)
{
    struct sample *sample = open_sample(*state, "parlor", "");
    struct outcome *outcome = plan(sample);
    check_choice(*state, outcome, &sample->job->beams[0]);
    size_t passing = 0, bending = 0, deflection = 0;
    for (size_t i = 0; i < outcome->candidate_count; i++) {
        const struct candidate *candidate = &outcome->candidate[i];
        passing += candidate->passes;
        bending += !candidate->passes && strstr(candidate->why, "bending") != NULL;
        deflection += !candidate->passes && strstr(candidate->why, "deflection") != NULL;
    }
    assert_true(passing > 1 && bending > 0 && deflection > 0);
}

static struct beam *beam_named(const struct sample *sample, const char *id)
{
    for (size_t i = 0; i < sample->job->beam_count; i++)
        if (!strcmp(sample->job->beams[i].head.id, id))
            return &sample->job->beams[i];
    fail();
    return NULL;
}

/* A beam and the one that hangs on it, both to be chosen: neither could be another for less while the other stands, and
 * the whole passes. */
static void two_choices(void **state)
{
    struct sample *sample = open_sample(*state, "two-beams", "");
    struct beam *carrier = beam_named(sample, "long"), *hung = beam_named(sample, "short");
    check_choice(*state, plan(sample), hung); /* its hanger is too small for some */
    carrier->choose = hung->choose;
    carrier->material = hung->material;
    carrier->most_plies = hung->most_plies;
    carrier->most_depth = hung->most_depth;
    carrier->member = (struct text_value){0};
    carrier->plies = (struct count_value){0};
    carrier->specified_by = (struct text_value){0};
    struct outcome *outcome = plan(sample);
    assert_true(outcome->run->design->passes);
    check_choice(*state, outcome, carrier);
    check_choice(*state, outcome, hung);
}

/* A candidate that holds, but on which the joists' hangers do not: two plies of LVL are 3-1/2 in wide, three of either
 * wood 4-1/2 in and more. */
static void others_must_not_fail(void **state)
{
    struct sample *sample = open_sample(*state, "parlor", "");
    for (size_t i = 0; i < sample->catalog->hanger_count; i++)
        if (sample->catalog->hangers[i].kind == CONNECTOR_HANGER)
            sample->catalog->hangers[i].carrier_least = 4 * LENGTH_INCH;
    struct outcome *outcome = plan(sample);
    size_t blamed = 0;
    for (size_t i = 0; i < outcome->candidate_count; i++) {
        const struct candidate *candidate = &outcome->candidate[i];
        assert_true(!candidate->passes || candidate->plies == 3);
        blamed += candidate->plies == 2 && candidate->member->depth > 9 * LENGTH_INCH &&
                  !strncmp(candidate->why, "joists parlor", 13);
    }
    assert_true(blamed >= 2);
    check_choice(*state, outcome, &sample->job->beams[0]);
}

/* A flush beam shallower than its joists asks an engineer where a deeper one does not: it is not taken, though its own
 * checks hold. */
static void questions_count_against_a_candidate(void **state)
{
    struct outcome *outcome = plan(open_sample(*state, "parlor", ""));
    size_t asked = 0;
    for (size_t i = 0; i < outcome->candidate_count; i++) {
        const struct candidate *candidate = &outcome->candidate[i];
        if (candidate->passes || candidate->ratio > 1)
            continue;
        asked++;
        assert_true(candidate->member->depth < 9 * LENGTH_INCH);
    }
    assert_int_equal(asked, 1); /* three plies of LVL-7.25 */
}

/* Every candidate's price is that of the job with it written in. */
static void a_candidate_is_the_whole_job(void **state)
{
    struct sample *sample = open_sample(*state, "two-beams", "");
    struct outcome *outcome = plan(sample);
    size_t passing = 0;
    for (size_t i = 0; i < outcome->candidate_count; i++) {
        const struct candidate *candidate = &outcome->candidate[i];
        if (!candidate->passes)
            continue;
        passing++;
        struct selection selection[2] = {{0}};
        selection[candidate->beam - sample->job->beams] = (struct selection){candidate->member, candidate->plies};
        struct diags diags = {.arena = *state};
        struct run *run = run_job(*state, sample->job, sample->catalog, selection, &diags);
        assert_int_equal(run->estimate->price, candidate->price);
        assert_int_equal(run->estimate->direct, candidate->direct);
    }
    assert_true(passing > 1);
}

/* Messages of candidates that were tried do not leak: those of the plan are those of the run that is bid. */
static void trials_are_silent(void **state)
{
    struct sample *sample = open_sample(*state, "two-beams", "");
    size_t before = sample->diags.count;
    struct outcome *outcome = plan(sample);
    struct diags diags = {.arena = *state};
    run_job(*state, sample->job, sample->catalog, outcome->run->selection, &diags);
    size_t alternates = 0;
    for (size_t i = before; i < sample->diags.count; i++)
        alternates += !strncmp(sample->diags.item[i].text, "with ", 5);
    assert_int_equal(sample->diags.count - before - alternates, diags.count);
}

/* 1 % of what the line buys at this price, with the tax on it: none on fees. */
static double one_percent_of(const struct sample *sample, const struct order_line *line, const struct price *price)
{
    if (line->price != price || line->cut_charge)
        return 0;
    double tax = line->class == CLASS_FEES ? 0 : percent_fraction(sample->job->bid.tax.percent);
    return 0.01 * money_dollars(price->price) * decimal_value(line->packs) * (1 + tax);
}

/* Every used price 1 % up moves the direct cost by what its lines and the tax on them say; an unused one, by nothing.
 */
static void check_prices(struct sample *sample)
{
    const struct outcome *outcome = plan(sample);
    struct order *order = outcome->run->order;
    const money_t base = outcome->run->estimate->direct;
    for (size_t i = 0; i < sample->catalog->price_count; i++) {
        struct price *price = &sample->catalog->prices[i];
        const money_t old = price->price;
        double predicted = 0;
        for (size_t j = 0; j < order->count; j++)
            predicted += one_percent_of(sample, &order->line[j], price);
        price->price += old / 100;
        order_total(order, sample->job);
        struct diags diags = {.arena = sample->arena};
        money_t now =
            price_job(sample->arena, sample->job, outcome->run->takeoff, order, sample->catalog, &diags)->direct;
        price->price = old;
        if (predicted > 0)
            assert_near(money_dollars(now - base), predicted, 0.021); /* two roundings to the cent, and the 1 %'s own */
        else
            assert_int_equal(now, base);
    }
}

static void prices_move_what_they_should(void **state)
{
    check_prices(open_sample(*state, "two-beams", ""));
}

/* An alternate costs what the job costs with its settings written into the file. */
static void an_alternate_is_a_job(void **state)
{
    struct sample *sample = open_sample(*state, "parlor", "");
    for (size_t i = 0; i < sample->catalog->supplier_count; i++) /* a note that both give, once */
        sample->catalog->suppliers[i].least_order = dollars(9000);
    struct outcome *outcome = plan(sample);
    assert_int_equal(outcome->alternate_count, 1);
    assert_true(outcome->alternate[0].ok);
    struct sample *other = open_sample(*state, "parlor", "");
    assert_int_equal(other->job->sub_count, 1);
    other->job->subs[0].price.money = 0;
    struct outcome *without = plan(other);
    assert_int_equal(outcome->alternate[0].price, without->run->estimate->price);
    assert_int_equal(outcome->alternate[0].difference, without->run->estimate->price - outcome->run->estimate->price);
    assert_true(outcome->alternate[0].difference < 0);
    for (size_t i = 0; i < sample->diags.count; i++) /* nothing new comes up with it */
        assert_true(strncmp(sample->diags.item[i].text, "with ", 5) != 0);
}

static void an_alternate_names_its_fault(void **state)
{
    struct sample *sample = open_sample(*state, "parlor",
                                        "[alternate far]\nwhat = a beam longer than any stick\n"
                                        "set beam parlor clear span = 45 ft\n"
                                        "[alternate books]\nwhat = other prices\nset job catalogs = ../other\n");
    struct outcome *outcome = plan_job(*state, sample->job, sample->catalog, &sample->diags);
    assert_true(diag_count(&sample->diags, DIAG_STOP) >= 2);
    assert_int_equal(outcome->alternate_count, 3);
    assert_false(outcome->alternate[1].ok);
    assert_false(outcome->alternate[2].ok);
    size_t named = 0;
    for (size_t i = 0; i < sample->diags.count; i++)
        if (sample->diags.item[i].class == DIAG_STOP)
            named += strstr(sample->diags.item[i].text, "with alternate far: ") ||
                     strstr(sample->diags.item[i].text, "with alternate books: ");
    assert_int_equal(named, diag_count(&sample->diags, DIAG_STOP));
}

/* No member passes: the strongest is kept, and a note says so. */
static void none_passes(void **state)
{
    struct sample *sample = open_sample(*state, "parlor",
                                        "[load S]\nwhat = a stone wall\non = beam parlor\nfrom = 1 ft\nto = 9 ft\n"
                                        "dead = 9000 plf\nlive = 0 plf\nsnow = 0 plf\ncomes later = yes\n");
    for (size_t i = 0; i < sample->job->beam_count; i++)
        sample->job->beams[i].most_depth.length = 15 * LENGTH_INCH / 2;
    struct outcome *outcome = plan_job(*state, sample->job, sample->catalog, &sample->diags);
    say_stops(sample);
    const struct candidate *chosen = NULL;
    size_t notes = 0;
    for (size_t i = 0; i < outcome->candidate_count; i++) {
        assert_false(outcome->candidate[i].passes);
        if (outcome->candidate[i].chosen)
            chosen = &outcome->candidate[i];
    }
    assert_non_null(chosen);
    for (size_t i = 0; i < outcome->candidate_count; i++)
        assert_true(!(outcome->candidate[i].ratio < chosen->ratio));
    for (size_t i = 0; i < sample->diags.count; i++)
        notes += sample->diags.item[i].code == DIAG_S003 && strstr(sample->diags.item[i].text, chosen->why);
    assert_int_equal(notes, 1);
    assert_false(outcome->run->design->passes);
}

static void an_unknown_material(void **state)
{
    struct sample *sample = open_sample(*state, "parlor", "");
    sample->job->beams[0].material.item[0].text = "Duglas Fir-Larch";
    struct outcome *outcome = plan_job(*state, sample->job, sample->catalog, &sample->diags);
    assert_null(outcome->run);
    assert_int_equal(diag_count(&sample->diags, DIAG_STOP), 1);
    const struct diag *last = &sample->diags.item[sample->diags.count - 1];
    assert_int_equal(last->code, DIAG_C006);
    assert_non_null(strstr(last->text, "did you mean 'Douglas Fir-Larch'?"));
}

static void twice_the_same(void **state)
{
    struct outcome *a = plan(open_sample(*state, "two-beams", "")), *b = plan(open_sample(*state, "two-beams", ""));
    assert_int_equal(a->candidate_count, b->candidate_count);
    for (size_t i = 0; i < a->candidate_count; i++) {
        assert_string_equal(a->candidate[i].why, b->candidate[i].why);
        assert_int_equal(a->candidate[i].price, b->candidate[i].price);
    }
    assert_int_equal(a->run->order->count, b->run->order->count);
    for (size_t i = 0; i < a->run->order->count; i++)
        assert_string_equal(a->run->order->line[i].id, b->run->order->line[i].id);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(samples_add_up, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(the_cheapest_that_passes, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(two_choices, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(others_must_not_fail, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(questions_count_against_a_candidate, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_candidate_is_the_whole_job, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(trials_are_silent, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(prices_move_what_they_should, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(an_alternate_is_a_job, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(an_alternate_names_its_fault, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(none_passes, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(an_unknown_material, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(twice_the_same, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
