/* What must hold whatever the loads are: equilibrium, and more load never helps.  Fixed seed. */
#include "size/made_job.h"

static double random_to(uint64_t *seed, double most)
{
    *seed = *seed * 6364136223846793005ULL + 1442695040888963407ULL; /* Knuth's constants */
    return most * (double)(*seed >> 11) / 9007199254740992.0;
}

static const char *pounds(struct arena *arena, double lb)
{
    return arena_printf(arena, "%d lb", (int)lb);
}

/* B2 hangs on B1; a point load on each, a wall on B1. */
static void random_job(struct made *made, struct arena *arena, uint64_t *seed, double more)
{
    made_start(made, arena);
    made_set(made, "beam", "B1", "clear span", "12 ft");
    made_set(made, "beam", "B1", "above", "load X, wall W3");
    made_set(made, "post", "P1", "braced", "free");
    made_add(made, "[load X]\non = beam B1\nat = 3 ft\ndead = 0 lb\nlive = 0 lb\nsnow = 0 lb\nheld by = shore S1\n"
                   "[load Y]\non = beam B2\nat = 2 ft\ndead = 0 lb\nlive = 0 lb\nheld by = shore S1\n"
                   "[wall W3]\nstatus = stays\ncomes later = yes\non = beam B1\nfrom = 1 ft\nto = 9 ft\nheight = 8 "
                   "ft\nweight = 8 psf\n"
                   "[beam B2]\nset = flush\nclear span = 7 ft\njoists A = joists south\nend 1 = post P3\n"
                   "end 2 = beam B1 at 5 ft\nwall at end 1 = across\nabove = load Y\nmember = DFL2-2X10\nplies = 2\n"
                   "ply fasteners = NAIL-16D-COMMON\n"
                   "[post P3]\nmember = SPF-STUD-2X4\nplies = 2\nheight = 84 in\nbraced = one\n"
                   "stands on = footing F1\n");
    made_set(made, "beam", "B1", "joists B", NULL);
    made_set(made, "load", "X", "dead", pounds(arena, random_to(seed, 1500) + more));
    made_set(made, "load", "X", "live", pounds(arena, random_to(seed, 1500) + more));
    made_set(made, "load", "X", "snow", pounds(arena, random_to(seed, 1500) + more));
    made_set(made, "load", "Y", "dead", pounds(arena, random_to(seed, 500)));
    made_set(made, "load", "Y", "live", pounds(arena, random_to(seed, 500) + more));
    made_size(made);
}

/* What is put on the beams comes down in the posts, source by source. */
static void equilibrium(void **state)
{
    uint64_t seed = 7;
    for (int round = 0; round < 10; round++) {
        struct made made;
        random_job(&made, *state, &seed, 0);
        struct loads on = {0}, under = {0};
        for (size_t i = 0; i < made.design->path_count; i++) {
            const struct path_step *step = &made.design->path[i];
            bool from_beam = !strncmp(step->from, "beam ", 5), to_beam = !strncmp(step->to, "beam ", 5);
            for (int source = 0; source < LOAD_SOURCES; source++) {
                on.of[source] += to_beam && !from_beam ? step->lb.of[source] : 0;
                under.of[source] += from_beam && !to_beam ? step->lb.of[source] : 0;
            }
        }
        for (int source = 0; source < LOAD_SOURCES; source++)
            assert_near(under.of[source], on.of[source], 1e-6);
        assert_true(on.of[LOAD_DEAD] > 500 && on.of[LOAD_LIVE] > 500);
    }
}

static void more_load_never_helps(void **state)
{
    for (uint64_t round = 1; round <= 10; round++) {
        uint64_t seed = round, again = round;
        struct made less, more;
        random_job(&less, *state, &seed, 0);
        random_job(&more, *state, &again, 250);
        assert_int_equal(less.design->member_count, more.design->member_count);
        size_t grew = 0;
        for (size_t i = 0; i < less.design->member_count; i++) {
            const struct member_checks *a = less.design->members[i], *b = more.design->members[i];
            assert_string_equal(a->id, b->id);
            for (size_t k = 0; k < a->count; k++) {
                const struct check *check = made_find(&more, b->id, a->check[k].name);
                /* the shear at one place: a load between it and an end lessens it */
                if (!check || strstr(check->name, "hung low"))
                    continue;
                assert_true(check->ratio >= a->check[k].ratio - 1e-9);
                grew += check->ratio > a->check[k].ratio;
            }
        }
        assert_true(grew > 5);
    }
}

/* The beam that hangs on another is sized before it. */
static void carriers_come_later(void **state)
{
    uint64_t seed = 3;
    struct made made;
    random_job(&made, *state, &seed, 0);
    size_t *order = beam_order(made.arena, made.job);
    assert_int_equal(order[0], 1);
    assert_int_equal(order[1], 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(equilibrium, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(more_load_never_helps, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(carriers_come_later, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
