/* The load path: what is described carries something or comes to something; what comes out is replaced. */
#include "job_support.h"

/* A wall that comes out and bears has a beam in its place. */
static void what_takes_its_place(void **state)
{
    static const char asked[] =
        "what takes the place of [wall W1], which comes out? write 'under = beam ID', or 'bearing = no' where nothing "
        "stands, lies or hangs on it\n";
    const struct edit edits[] = {
        {"under = beam B1\n", "", arena_printf(*state, "job.ini:81:1: ask[Q014]: %s", asked)},
        {"under = beam B1\n", "bearing = yes\n", arena_printf(*state, "job.ini:83:11: ask[Q014]: %s", asked)},
        {"under = beam B1\n", "bearing = unknown\n", arena_printf(*state, "job.ini:83:11: ask[Q014]: %s", asked)},
        {"under = beam B1\n", "bearing = no\n", ""},
        {"under = beam B1\n", "under = beam B1\nbearing = yes\n", ""},
        {"under = beam B1\n", "under = beam B1\nbearing = no\n",
         "job.ini:84:11: stop[K013]: [wall W1] bears nothing, and a beam takes its place: 'under'; keep one of them\n"},
    };
    CHECK_EDITS(state, edits);
}

static void what_carries_nothing(void **state)
{
    static const struct edit edits[] = {
        {"[block K1]\n",
         "[post P7]\nmember = SPF-STUD-2X4\nplies = 3\nheight = 7 ft\nbraced = both\nstands on = block K1\n"
         "[block K1]\n",
         "job.ini:74:1: note[K018]: [post P7] carries nothing, and is not counted; write 'end 1 = post P7' or 'end 2 = "
         "post P7' in its "
         "[beam], or take it out\n"},
        {"end 1 = post P1\n", "end 1 = post P1\ninner = post P7 at 4 ft, wall across\n",
         "job.ini:46:9: stop[K011]: 'post P7' for 'inner' is not in this job; did you mean 'post P1'?\n"},
        {"stands on = block K1\n", "stands on = footing F1\n",
         "job.ini:74:1: note[K018]: [block K1] carries nothing, and is not counted; write 'stands on = block K1' in "
         "its [post], or take it "
         "out\n"},
        {"stands on = footing F1\n", "stands on = pier, seen\n",
         "job.ini:77:1: note[K018]: [footing F1] carries nothing, and is not counted; write 'stands on = footing F1' "
         "in its [post] or "
         "[block], or take it out\n"},
        {"[roof]\n", "[area porch]\ndead = 8 psf\nlive = 60 psf\nlive is = floor\n[roof]\n",
         "job.ini:17:1: stop[K017]: [area porch] comes to nothing: no joists, load, member in the way or roof names "
         "it; "
         "write 'area = area porch' there, or take it out\n"},
    };
    CHECK_EDITS(state, edits);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(what_takes_its_place, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(what_carries_nothing, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
