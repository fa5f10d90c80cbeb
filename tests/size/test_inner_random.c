/* Random beams of two to four spans, some of them spliced, through whole jobs; fixed seed.  What must hold: with all
 * spans loaded the supports carry all loads, source by source; the most and the least that any set of spans brings
 * stand on either side of that; no check sees less than the moment and shear of all spans loaded. */
#include "size/made_job.h"

#include "sawbill/beam.h"

static double random_to(uint64_t *seed, double most)
{
    *seed = *seed * 6364136223846793005ULL + 1442695040888963407ULL; /* Knuth's constants */
    return most * (double)(*seed >> 11) / 9007199254740992.0;
}

/* Spans of 4 to 10 ft on posts 3-1/2 in long; a point load; snow on one stretch. */
static void random_job(struct made *made, struct arena *arena, uint64_t *seed, bool spliced)
{
    int inner = 1 + (int)random_to(seed, 3), at = 2;
    made_start(made, arena);
    for (int i = 0; i < inner; i++) {
        at += 48 + (int)random_to(seed, 72);
        made_again(made, "beam", "B1", "inner", arena_printf(arena, "post M%d at %d in, wall across", i, at));
        made_add(made, arena_printf(arena,
                                    "[post M%d]\nmember = SPF-STUD-2X4\nplies = 3\nheight = 84 in\nbraced = both\n"
                                    "stands on = footing F1\n",
                                    i));
        if (spliced && i == 0)
            made_set(made, "beam", "B1", "splices", arena_printf(arena, "%d in", at));
    }
    int span = at + 48 + (int)random_to(seed, 72);
    made_set(made, "beam", "B1", "clear span", arena_printf(arena, "%d in", span));
    made_set(made, "beam", "B1", "above", "load X, load Y");
    made_add(made, arena_printf(arena,
                                "[load X]\non = beam B1\nat = %d in\ndead = %d lb\nlive = %d lb\nheld by = shore S1\n"
                                "[load Y]\non = beam B1\nfrom = %d in\nto = %d in\ndead = 20 plf\nsnow = %d plf\n"
                                "held by = shore S1\n",
                                1 + (int)random_to(seed, span), (int)random_to(seed, 900), (int)random_to(seed, 900),
                                (int)random_to(seed, 40), span - (int)random_to(seed, 40), (int)random_to(seed, 300)));
    made_size(made);
}

static struct loads plus(struct loads a, const struct loads *b)
{
    for (int source = 0; source < LOAD_SOURCES; source++)
        a.of[source] += b->of[source];
    return a;
}

static void assert_between(const struct loads *least, const struct loads *full, const struct loads *most)
{
    for (int source = 0; source < LOAD_SOURCES; source++) {
        assert_true(least->of[source] <= full->of[source] + 1e-6);
        assert_true(most->of[source] >= full->of[source] - 1e-6);
    }
    assert_near(least->of[LOAD_DEAD], most->of[LOAD_DEAD], 1e-6);
}

static void supports_carry_all(void **state)
{
    uint64_t seed = 11;
    size_t lifted = 0, more = 0;
    for (int round = 0; round < 24; round++) {
        struct made made;
        random_job(&made, *state, &seed, round % 2);
        const struct beam_design *bd = &made.design->beams[0];
        struct loads on = {0}, under = plus(bd->end_full_lb[0], &bd->end_full_lb[1]);
        for (size_t i = 0; i < made.design->path_count; i++)
            if (!strcmp(made.design->path[i].to, "beam B1"))
                on = plus(on, &made.design->path[i].lb);
        for (size_t i = 0; i < bd->inner_count; i++) {
            const struct inner_design *inner = &bd->inner[i];
            under = plus(under, &inner->full_lb);
            assert_between(&inner->least_lb, &inner->full_lb, &inner->lb);
            more += inner->lb.of[LOAD_LIVE] > inner->full_lb.of[LOAD_LIVE] + 1;
        }
        for (int end = 0; end < 2; end++) {
            assert_between(&bd->end_least_lb[end], &bd->end_full_lb[end], &bd->end_lb[end]);
            lifted += bd->end_least_lb[end].of[LOAD_LIVE] < -1;
        }
        for (int source = 0; source < LOAD_SOURCES; source++)
            assert_near(under.of[source], on.of[source], 1e-6);
        assert_true(on.of[LOAD_DEAD] > 500 && on.of[LOAD_LIVE] > 500);
    }
    assert_true(lifted > 20 && more > 5); /* patterns do something */
}

static void add(struct beam_load *list, size_t *count, struct beam_load load)
{
    list[(*count)++] = load;
}

static double inches_of(const struct length_value *value)
{
    return length_inches(value->length);
}

/* The beam again from the job's own numbers, all loads on, in D+L and D+S: live of joists 40 psf x 11 ft, dead 10. */
static struct beam_spans all_loaded(const struct made *made, struct beam_support *support, struct beam_load *list)
{
    static const double d_l[LOAD_SOURCES] = {1, 1};
    const struct beam_design *bd = &made->design->beams[0];
    const struct load *x = &made->job->loads[0], *y = &made->job->loads[1];
    double from = -length_inches(bd->bearing[0]) / 2, to = length_inches(bd->cut_length) + from;
    size_t count = 0;
    add(list, &count, (struct beam_load){.from_in = from, .to_in = to, .amount = {{110.0 / 12, 440.0 / 12}}});
    add(list, &count, (struct beam_load){.from_in = from, .to_in = to, .amount = {{bd->weight_plf / 12}}});
    add(list, &count,
        (struct beam_load){.point = true,
                           .from_in = inches_of(&x->at) + from,
                           .amount = {{quantity_value(x->dead.quantity), quantity_value(x->live.quantity)}}});
    add(list, &count,
        (struct beam_load){
            .from_in = inches_of(&y->from) + from, .to_in = inches_of(&y->to) + from, .amount = {{20.0 / 12}}});
    support[0].at_in = 0;
    for (size_t i = 0; i < bd->inner_count; i++)
        support[i + 1].at_in = length_inches(bd->inner[i].inner->on.at_length) + from;
    support[bd->inner_count + 1].at_in = bd->design_span_in;
    return (struct beam_spans){.length_in = bd->design_span_in,
                               .support = support,
                               .supports = bd->inner_count + 2,
                               .load = list,
                               .count = count,
                               .factor = d_l};
}

/* Every ratio is the worst of all combinations, so not less than that of D+L with all on. */
static void patterns_see_all(void **state)
{
    uint64_t seed = 5;
    for (int round = 0; round < 16; round++) {
        struct made made;
        random_job(&made, *state, &seed, false);
        struct beam_support support[BEAM_INNER_MOST + 2] = {{0}};
        struct beam_load list[8];
        struct beam_spans spans = all_loaded(&made, support, list);
        const struct beam_design *bd = &made.design->beams[0];
        assert_true(spans_solve(&spans));
        for (size_t i = 0; i <= bd->inner_count; i++) {
            struct beam_extremes most = spans_extremes(&spans, support[i].at_in, support[i + 1].at_in);
            const char *of = arena_printf(*state, ", span %zu", i + 1);
            const struct check *along = made_check(&made, "beam B1", arena_printf(*state, "bending%s", of));
            const struct check *over = made_find(&made, "beam B1", arena_printf(*state, "bending over supports%s", of));
            const struct check *shear = made_check(&made, "beam B1", arena_printf(*state, "shear%s", of));
            double s = 3 * 1.5 * 9.25 * 9.25 / 6, a = 3 * 1.5 * 9.25;
            /* 900 x 1.1 x CL: at most 990 psi in D+L; 180 psi in shear */
            assert_true(along->ratio >= most.sagging.value / s / 990 - 1e-9);
            assert_non_null(over);
            assert_true(over->ratio >= -most.hogging.value / s / 990 - 1e-9);
            assert_true(shear->ratio >= 1.5 * fabs(most.shear.value) / a / 180 - 1e-9);
        }
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(supports_carry_all, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(patterns_see_all, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
