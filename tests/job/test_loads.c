/* Rules of loads that grow or fall along the beam, and of those that lift it. */
#include "job_support.h"

#define POST "at = 4 ft\ndead = 400 lb\nsnow = 900 lb\nsnow level = allowable\n"
static void tapers(void **state)
{
    static const struct edit edits[] = {
        {POST,
         "from = 1 ft\nto = 4 ft\ndead = 0 plf\ndead to = 90 plf\nsnow = 60 plf\nsnow to = 0 plf\nsnow level = "
         "allowable\n",
         ""},
        {POST, "from = 1 ft\nto = 4 ft\nlive to = 90 plf\ndead = 10 plf\n",
         "job.ini:65:11: stop[K017]: 'live to' needs 'live': what it is at 'from'; 0 is an answer\n"},
        {POST, "at = 4 ft\ndead = 400 lb\ndead to = 90 plf\n",
         "job.ini:65:11: stop[K017]: [load post] has 'at' and 'dead to'; a load in one point does not grow along the "
         "beam\n"},
        {POST, "from = 1 ft\nto = 4 ft\ndead = 10 plf\ndead to = 90 lb\n",
         "job.ini:66:11: stop[K008]: '90 lb' for 'dead to' is a force (lb, kip, kN); it takes plf, kN/m, such as 0 "
         "plf\n"},
    };
    CHECK_EDITS(state, edits);
}

static void weight_of_a_wall(void **state)
{
    static const struct edit edits[] = {
        {"[shore A]\n", "[wall W3]\nstatus = stays\nheight = 8 ft\nweight = 8 psf\n[shore A]\n",
         "job.ini:95:10: stop[K017]: [wall W3] stays and weighs, and its weight comes to nothing; write 'on = beam "
         "ID', "
         "or take 'weight' out\n"},
        {"[shore A]\n", "[wall W3]\nstatus = stays\nheight = 8 ft\n[shore A]\n", ""},
    };
    CHECK_EDITS(state, edits);
}

#define ASKED                                                                                                          \
    "a beam carries [area roof]: how much does wind lift it beyond 0.6 of its dead load? write 'net uplift = NUMBER "  \
    "psf', 0 is an answer, or 'uplift engineer = NAME, SHEET' who says that there is none\n"
/* A roof that a beam carries; the roof of the good job comes to none. */
static void uplift(void **state)
{
    static const struct edit edits[] = {
        {POST, "at = 4 ft\narea = area roof\ncarries = 90 sq ft\n", "job.ini:10:1: ask[Q013]: " ASKED},
        {"braces = none\n", "braces = 4 ft carrying 96 sq ft\nbraces on = beam B1\nbraces own prop = yes\n",
         "job.ini:10:1: ask[Q013]: " ASKED},
        {POST, POST "net uplift = 300 lb\n", ""},
        {POST, POST "net uplift = 300 plf\n",
         "job.ini:67:14: stop[K008]: '300 plf' for 'net uplift' is a load along a line (plf, kN/m); a load with 'at' "
         "takes lb\n"},
        {"live is = sleeping\n", "live is = sleeping\nnet uplift = 8 psf\n",
         "job.ini:10:14: stop[K013]: [area loft] has an uplift, but is no roof\n"},
        {"live is = roof\n", "live is = roof\nnet uplift = 8 psf\nuplift engineer = R. Ames, S2\n",
         "job.ini:15:19: stop[K013]: [area roof] has 'net uplift', and an 'uplift engineer' who says that there is "
         "none; keep one of them\n"},
    };
    CHECK_EDITS(state, edits);
}

static void uplift_answered(void **state)
{
    static const char *const answers[] = {"net uplift = 0 psf", "net uplift = 12 psf", "uplift engineer = R. Ames, S2"};
    for (size_t i = 0; i < 3; i++) {
        struct diags diags;
        char *text = edited(*state, POST, "at = 4 ft\narea = area roof\ncarries = 90 sq ft\n");
        char *at = strstr(text, "live is = roof\n");
        text = arena_printf(*state, "%.*s%s\n%s", (int)(at - text), text, answers[i], at);
        (void)read_text(*state, "job.ini", text, strlen(text), &diags);
        assert_string_equal(messages(*state, &diags), "");
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(tapers, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(weight_of_a_wall, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(uplift, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(uplift_answered, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
