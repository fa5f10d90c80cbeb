/* Rules of [load] sections that grow or fall along the beam. */
#include "job_support.h"

#define POST "at = 4 ft\ndead = 400 lb\nlive = 0\nsnow = 900 lb\n"
static void tapers(void **state)
{
    static const struct edit edits[] = {
        {POST, "from = 1 ft\nto = 4 ft\ndead = 0 plf\ndead to = 90 plf\nsnow = 60 plf\nsnow to = 0 plf\n", ""},
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

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test_setup_teardown(tapers, support_setup, support_teardown)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
