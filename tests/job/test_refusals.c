/* What the house has that an engineer must see: asked once, and answered by his record alone. */
#include "job_support.h"

#define ASKED                                                                                                          \
    "is there masonry above, a roof that hangs out, two stories of wall whose openings do not stand over one "         \
    "another, seismic design category D or more, unreinforced masonry to bear on, pole or log framing, or a second "   \
    "dwelling beyond this floor or wall? write 'unusual = none', or what there is, as 'sawbill keys job' lists it\n"
#define ANSWER "; write 'unusual engineer = NAME, SHEET'\n"

static void absent_is_the_question(void **state)
{
    static const struct edit edits[] = {
        {"unusual = none\n", "", "job.ini:1:1: ask[Q011]: " ASKED},
        {"unusual = none\n", "unusual = unknown\n", "job.ini:4:11: ask[Q011]: " ASKED},
        {"unusual = none\n", "unusual engineer = R. Ames, PE, S2\n", "job.ini:1:1: ask[Q011]: " ASKED},
    };
    CHECK_EDITS(state, edits);
}

static void each_word_is_refused(void **state)
{
    static const struct edit edits[] = {
        {"unusual = none\n", "unusual = masonry above\n",
         "job.ini:4:11: ask[Q011]: 'masonry above' is left to an engineer: masonry cracks before wood below it has "
         "sagged to its limit" ANSWER},
        {"unusual = none\n", "unusual = cantilevered roof\n",
         "job.ini:4:11: ask[Q011]: 'cantilevered roof' is left to an engineer: a roof that hangs out lifts what "
         "stands behind its support" ANSWER},
        {"unusual = none\n", "unusual = openings not stacked\n",
         "job.ini:4:11: ask[Q011]: 'openings not stacked' is left to an engineer: openings that do not stand over one "
         "another bring loads in points" ANSWER},
        {"unusual = none\n", "unusual = pole or log framing, two dwellings\n",
         "job.ini:4:11: ask[Q011]: 'pole or log framing' is left to an engineer: round or notched members are not "
         "rated here" ANSWER "job.ini:4:11: ask[Q011]: 'two dwellings' is left to an engineer: who opens a rated floor "
         "or wall must say how it is closed again, beam and posts included" ANSWER},
        {"unusual = none\n", "unusual = Seismic_D, unreinforced-masonry below\n",
         "job.ini:4:11: ask[Q011]: 'seismic D' is left to an engineer: the walls, posts and straps of such a house "
         "carry earthquake, too" ANSWER "job.ini:4:11: ask[Q011]: 'unreinforced masonry below' is left to an engineer: "
         "nothing here checks unreinforced masonry under a beam or post" ANSWER},
        {"unusual = none\n", "unusual = masonry above, two dwellings\nunusual engineer = R. Ames, PE, S2\n", ""},
    };
    CHECK_EDITS(state, edits);
}

static void words_that_contradict(void **state)
{
    static const struct edit edits[] = {
        {"unusual = none\n", "unusual = none, masonry above\n",
         "job.ini:4:11: stop[K013]: 'unusual' says 'none' and more; keep one of them\n"
         "job.ini:4:11: ask[Q011]: 'masonry above' is left to an engineer: masonry cracks before wood below it has "
         "sagged to its limit" ANSWER},
        {"unusual = none\n", "unusual = none\nunusual engineer = R. Ames, PE\n",
         "job.ini:5:20: stop[K013]: 'unusual engineer' answers for nothing: 'unusual = none'\n"},
        {"unusual = none\n", "unusual = masonry\n",
         "job.ini:4:11: stop[K010]: 'masonry' is no choice of 'unusual'; it is one of none, unknown, masonry above, "
         "cantilevered roof, openings not stacked, seismic D, unreinforced masonry below, pole or log framing, two "
         "dwellings\n"},
    };
    CHECK_EDITS(state, edits);
}

/* The limits go down alone, and no refusal is acknowledged away. */
static void nothing_is_waved_through(void **state)
{
    static const struct edit edits[] = {
        {"unusual = none\n", "unusual = none\nengineer beyond span = 20 ft\nengineer beyond reaction = 10 kip\n", ""},
        {"unusual = none\n", "unusual = none\nengineer beyond span = 20 ft 1 in\n",
         "job.ini:5:24: stop[K009]: '20 ft 1 in' for 'engineer beyond span' is not possible; it lies within 1 ft to "
         "20 ft\n"},
        {"unusual = none\n", "unusual = none\nengineer beyond reaction = 10.1 kip\n",
         "job.ini:5:28: stop[K009]: '10.1 kip' for 'engineer beyond reaction' is not possible; it lies within 100 lb "
         "to 10000 lb\n"},
        {"unusual = none\n", "unusual = none\nack = Q011 seen\nack = S007 it held so far\n",
         "job.ini:5:7: stop[K016]: Q011 (what this program leaves to an engineer) cannot be acknowledged: it must be "
         "put right; only notes can\n"
         "job.ini:6:7: stop[K016]: S007 (beyond what is sized without an engineer) cannot be acknowledged: it must be "
         "put right; only notes can\n"},
    };
    CHECK_EDITS(state, edits);
}

/* A job that touches no frame is asked nothing. */
static void no_house_depends_on_it(void **state)
{
    static const char text[] = "[job]\nname = x\ndate = 2026-01-01\ncatalogs = c\n[bid]\nmethod = add\n"
                               "overhead = 0 %\ncontingency = 0 %\nprofit = 0 %\ntax = 0\n";
    struct diags diags;
    (void)read_text(*state, "job.ini", text, sizeof text - 1, &diags);
    assert_string_equal(messages(*state, &diags), "");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(absent_is_the_question, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(each_word_is_refused, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(words_that_contradict, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(nothing_is_waved_through, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(no_house_depends_on_it, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
