/* Candidates that hold and are still not for this job: too wide for load on one face, too deep to go in. */
#include "size/made_job.h"

#include "sawbill/price.h"

static void take_out(struct made *made, const char *id)
{
    for (size_t i = made->entries.count; i-- > 0;)
        if (name_same(made->entries.item[i].id, id))
            made_take_out(made, i);
}

/* LVL of 7-1/4 and 9-1/4 in for joists of 2x8. */
static void start(struct made *made, struct arena *arena, const char *most_plies)
{
    made_start(made, arena);
    made_set(made, "joists", "north", "size", "2x8");
    made_set(made, "shore", "S1", "plates", "SPF2-2X4");
    made_set(made, "shore", "S2", "plates", "SPF2-2X4");
    made_set(made, "beam", "B1", "member", NULL);
    made_set(made, "beam", "B1", "plies", NULL);
    made_set(made, "beam", "B1", "choose", "yes");
    made_set(made, "beam", "B1", "material", "LVL");
    made_set(made, "beam", "B1", "most depth", "9-1/4 in");
    made_set(made, "beam", "B1", "most plies", most_plies);
}

static const struct candidate *plan(struct made *made, const char *code, int plies)
{
    if (!made->job) {
        made->job = job_check(made->arena, "test.ini", &made->entries, &made->diags);
        made->catalog = catalog_read(made->arena, SOURCE_DIR "/catalogs", NULL, &made->diags);
        if (made_stops(made))
            made_show(made);
        assert_int_equal(made_stops(made), 0);
    }
    const struct outcome *outcome = plan_job(made->arena, made->job, made->catalog, &made->diags);
    for (size_t i = 0; i < outcome->candidate_count; i++)
        if (!strcmp(outcome->candidate[i].member->code, code) && outcome->candidate[i].plies == plies)
            return &outcome->candidate[i];
    fail_msg("%d of %s is no candidate", plies, code);
    return NULL;
}

/* 4 x 1-3/4 = 7 in under joists on one face. */
static void too_wide_for_one_face(void **state)
{
    struct made made;
    start(&made, *state, "4");
    made_set(&made, "beam", "B1", "most depth", "7-1/4 in");
    made_set(&made, "beam", "B1", "joists B", NULL);
    take_out(&made, "south");
    take_out(&made, "S2");
    made_set(&made, "beam", "B1", "ply fasteners", "BOLT-500-800");
    made_set(&made, "beam", "B1", "edge", "2 in");
    made_set(&made, "beam", "B1", "end", "4 in");
    made_set(&made, "beam", "B1", "each face", "no");
    made_set(&made, "post", "P1", "plies", "5");
    made_set(&made, "post", "P2", "plies", "5");
    for (int end = 1; end <= 2; end++) {
        made_set(&made, "beam", "B1", arena_printf(*state, "held %d", end), "blocks");
        made_set(&made, "beam", "B1", arena_printf(*state, "held %d of", end), "DFL2-2X8");
    }
    const struct candidate *wide = plan(&made, "LVL-7.25", 4);
    assert_false(wide->passes);
    assert_non_null(strstr(wide->why, "7 in and wider wants load on both faces"));
    const struct candidate *narrow = wide - 1; /* 3 plies, in the same outcome */
    assert_int_equal(narrow->plies, 3);
    assert_true(narrow->passes);
}

/* On plates with 3-1/2 in of bearing the wood is 103 in in an opening of 96 in.  To swing in, one end must go past the
 * face by sqrt(103^2 + d^2) - 96: 7.25 in deep 7.255 in, 9.25 in deep 7.414 in; there are 7-5/16 = 7.3125 in. */
static void too_deep_to_go_in(void **state)
{
    struct made made;
    start(&made, *state, "3");
    made_set(&made, "joists", "south", "size", "2x8");
    for (int end = 1; end <= 2; end++) {
        made_set(&made, "beam", "B1", arena_printf(*state, "end %d", end), "wall plate");
        made_set(&made, "beam", "B1", arena_printf(*state, "bearing %d", end), "3-1/2 in");
        made_set(&made, "beam", "B1", arena_printf(*state, "room beyond %d", end), end == 1 ? "7-5/16 in" : "0 in");
    }
    take_out(&made, "P1");
    take_out(&made, "P2");
    take_out(&made, "F1");
    const struct candidate *deep = plan(&made, "LVL-9.25", 3);
    assert_false(deep->passes);
    assert_non_null(strstr(deep->why, "does not go in: its diagonal"));
    assert_int_equal(deep->price, 0);
    const struct candidate *low = deep;
    while (strcmp(low->member->code, "LVL-7.25") != 0 || low->plies != 3)
        low--;
    assert_true(low->passes);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(too_wide_for_one_face, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(too_deep_to_go_in, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
