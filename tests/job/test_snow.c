/* Snow: what turns ground snow into roof snow, and snow that drifts; rules and questions. */
#include "job_support.h"

static void snow_that_drifts(void **state)
{
    static const struct edit edits[] = {
        {"snow drifts = no\n", "",
         "job.ini:17:1: ask[Q012]: is there a valley, or a higher roof that snow drifts or slides down from? write in "
         "[roof] 'snow drifts = no', or 'snow drifts = yes' with 'snow engineer = NAME, SHEET'\n"},
        {"snow drifts = no\n", "snow drifts = unknown\n",
         "job.ini:23:15: ask[Q012]: is there a valley, or a higher roof that snow drifts or slides down from? write in "
         "[roof] 'snow drifts = no', or 'snow drifts = yes' with 'snow engineer = NAME, SHEET'\n"},
        {"snow drifts = no\n", "snow drifts = yes\n",
         "job.ini:23:15: ask[Q012]: snow drifts or slides onto this roof; an engineer must say how much: 'snow "
         "engineer "
         "= NAME, SHEET'\n"},
        {"snow drifts = no\n", "snow drifts = yes\nsnow engineer = R. Ames, PE, S2\n", ""},
        {"snow drifts = no\n", "snow engineer = R. Ames, PE, S2\n", ""},
        {"snow drifts = no\n", "snow drifts = no\nsnow engineer = R. Ames, PE, S2\n",
         "job.ini:24:17: stop[K013]: [roof] has a 'snow engineer', but 'snow drifts = no'\n"},
    };
    CHECK_EDITS(state, edits);
}

/* No snow anywhere, nothing to drift; a load's own snow of 900 lb is snow, with or without a [roof] section. */
static void snow_that_drifts_where_it_snows(void **state)
{
    struct diags diags;
    char *text = edited(*state, "snow = 30 psf\nsnow is = on the ground\nsnow level = allowable\n", "snow = 0 psf\n");
    char *drifts = strstr(text, "snow drifts = no\n");
    memmove(drifts, drifts + strlen("snow drifts = no\n"), strlen(drifts + strlen("snow drifts = no\n")) + 1);
    (void)read_text(*state, "job.ini", text, strlen(text), &diags);
    assert_int_equal(diags.count, 1);
    assert_int_equal(diags.item[0].code, DIAG_Q012);
    char *lb = strstr(text, "snow = 900 lb");
    memcpy(lb, "snow = 000 lb", strlen("snow = 000 lb"));
    (void)read_text(*state, "job.ini", text, strlen(text), &diags);
    assert_string_equal(messages(*state, &diags), "");
}

static void factors(void **state)
{
    static const struct edit edits[] = {
        {"[roof]\n", "[roof]\nexposure factor = 0.9\nthermal factor = 1.1\nimportance factor = 1.1\n", ""},
        {"snow is = on the ground\nsnow level = allowable\n[roof]\n",
         "snow is = on the roof\nsnow level = allowable\n[roof]\nthermal factor = 1.1\n",
         "job.ini:18:18: stop[K013]: 'thermal factor' turns snow on the ground into snow on the roof, and no area has "
         "'snow is = on the ground'; take it out\n"},
        {"snow level = allowable\n[roof]\n", "snow level = strength\n[roof]\nimportance factor = 1.1\n",
         "job.ini:18:21: stop[K013]: 'importance factor' does not go with 'snow level = strength': the map of ASCE "
         "7-22 holds it already\n"},
        {"snow level = allowable\n[roof]\n", "snow level = strength\n[roof]\nexposure factor = 0.9\n", ""},
        {"[roof]\n", "[roof]\nexposure factor = 1.3\n",
         "job.ini:18:19: note[K014]: '1.3' for 'exposure factor' is out of the usual 0.7 to 1.2; if it is right, "
         "write 'ack = K014 REASON'\n"},
        {"[roof]\n", "[roof]\nthermal factor = 3\n",
         "job.ini:18:18: stop[K009]: '3' for 'thermal factor' is not possible; it lies within 0.5 to 2\n"},
    };
    CHECK_EDITS(state, edits);
}

/* ASCE 7-16 has no strength-level snow; an edition that nobody wrote contradicts nothing. */
static void edition(void **state)
{
    static const char by[] = "catalogs = catalogs\nloads by = ASCE 7-16\n";
    struct diags diags;
    char *text = edited(*state, "catalogs = catalogs\n", by);
    char *level = strstr(text, "snow level = allowable\n");
    text = arena_printf(*state, "%.*ssnow level = strength\n%s", (int)(level - text), text,
                        level + strlen("snow level = allowable\n"));
    (void)read_text(*state, "job.ini", text, strlen(text), &diags);
    assert_string_equal(messages(*state, &diags),
                        "job.ini:17:14: stop[K013]: [area roof] has snow at strength level, which ASCE 7-16 does not "
                        "know; write 'loads by = ASCE 7-22' in [job], or 'snow level = allowable'\n");
    static const struct edit edits[] = {{"snow level = allowable\n[roof]", "snow level = strength\n[roof]", ""},
                                        {"catalogs = catalogs\n", "catalogs = catalogs\nloads by = ASCE 7-22\n", ""}};
    CHECK_EDITS(state, edits);
}

/* Pounds of snow have a level, too; those of an area say it there. */
static void level_of_a_loads_own_snow(void **state)
{
    static const char own[] = "[obstruction tail]\nwhat = rafter tail\non = beam B1\nat = 48 in\nthen = lands on the "
                              "beam\ndead = 90 lb\nsnow = 200 lb\nseat = 3-1/2 in\nown prop = yes\n%s[post P1]\n";
    const struct edit edits[] = {
        {"snow = 900 lb\nsnow level = allowable\n", "snow = 900 lb\n",
         "job.ini:65:8: ask[Q005]: is the snow of [load post] an allowable value (ASCE 7-16 and before) or a strength "
         "value (ASCE 7-22)? write 'snow level = allowable' or 'strength'\n"},
        {"snow = 900 lb\nsnow level = allowable\n", "snow = 0 lb\n", ""},
        {"snow = 900 lb\nsnow level = allowable\n", "snow = 0 lb\nsnow level = allowable\n", ""},
        {"snow = 900 lb\nsnow level = allowable\n", "snow = 900 lb\nsnow level = strength\n", ""},
        {"snow = 900 lb\nsnow level = allowable\n", "snow level = allowable\n",
         "job.ini:65:14: stop[K013]: [load post] has no snow of its own, so that 'snow level' says nothing\n"},
        {"[post P1]\n", arena_printf(*state, own, ""),
         "job.ini:74:8: ask[Q005]: is the snow of [obstruction tail] an allowable value (ASCE 7-16 and before) or a "
         "strength value (ASCE 7-22)? write 'snow level = allowable' or 'strength'\n"},
        {"[post P1]\n", arena_printf(*state, own, "snow level = strength\n"), ""},
    };
    CHECK_EDITS(state, edits);

    struct diags diags;
    char *text = edited(*state, "snow = 900 lb\nsnow level = allowable\n", "snow = 900 lb\nsnow level = strength\n");
    char *bid = strstr(text, "unusual = none\n");
    text = arena_printf(*state, "%.*sloads by = ASCE 7-16\n%s", (int)(bid - text), text, bid);
    (void)read_text(*state, "job.ini", text, strlen(text), &diags);
    assert_string_equal(messages(*state, &diags),
                        "job.ini:67:14: stop[K013]: [load post] has snow at strength level, which ASCE 7-16 does not "
                        "know; write 'loads by = ASCE 7-22' in [job], or 'snow level = allowable'\n");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(level_of_a_loads_own_snow, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(snow_that_drifts, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(snow_that_drifts_where_it_snows, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(factors, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(edition, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
