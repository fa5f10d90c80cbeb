/* An engineer's beam against what he drew it for.  Plain job: joists of 12 ft and 10 ft under 10 + 40 psf bring
 * (6 + 5) ft x 10 = 110 plf dead and 440 plf live; three 2x10 plies weigh 9.9 plf.  Wood 96 + 2 x 3.5 = 103 in long, so
 * each end bears 103/12 x (110 + 440 + 9.9)/2 = 2,402.9 lb.  The 5 % is common practice, no source. */
#include "made_job.h"

static void his(struct made *made, struct arena *arena)
{
    made_start(made, arena);
    made_set(made, "beam", "B1", "specified by", "A. Heron, PE (invented)");
    made_set(made, "beam", "B1", "sheet", "S1");
    made_set(made, "beam", "B1", "specified span", "8 ft");
}

/* The message that a value draws, NULL: none. */
static const char *said(void **state, const char *key, const char *value)
{
    struct made made;
    his(&made, *state);
    made_set(&made, "beam", "B1", key, value);
    made_size(&made);
    for (size_t i = 0; i < made.diags.count; i++)
        if (made.diags.item[i].code == DIAG_Q008) {
            assert_int_equal(made.diags.item[i].class, DIAG_STOP);
            return made.diags.item[i].text;
        }
    return NULL;
}

#define ASK "; ask the engineer, and write his new sheet"

static void loads_on_the_line(void **state)
{
    assert_null(said(state, "specified dead", "110 plf"));        /* without the beam, or */
    assert_null(said(state, "specified dead", "120 plf"));        /* with it: 119.9 */
    assert_null(said(state, "specified dead", "125 plf"));        /* 4.1 % */
    assert_string_equal(said(state, "specified dead", "127 plf"), /* 119.9 is 5.6 % less */
                        "beam B1 was specified for dead load of 127 plf, but the job brings 119.9 plf: is a load "
                        "left out?" ASK);
    assert_null(said(state, "specified live", "420 plf"));
    assert_null(said(state, "specified live", "460 plf"));
    assert_string_equal(said(state, "specified live", "400 plf"),
                        "beam B1 was specified for live load of 400 plf, but the job brings 440 plf" ASK);
    assert_string_equal(said(state, "specified snow", "100 plf"),
                        "beam B1 was specified for snow of 100 plf, but the job brings 0 plf: is a load left "
                        "out?" ASK);
    assert_null(said(state, "specified snow", "0 plf"));
}

static void loads_of_the_areas(void **state)
{
    assert_null(said(state, "specified live", "40 psf"));
    assert_string_equal(said(state, "specified live", "30 psf"),
                        "beam B1 was specified for live load of 30 psf, but area floor has 40 psf" ASK
                        ", or his figure in plf where its areas differ");
    assert_null(said(state, "specified dead", "10 psf"));
    assert_non_null(said(state, "specified dead", "12 psf"));
    assert_string_equal(said(state, "specified roof live", "20 psf"), /* the job has no roof on it */
                        "beam B1 was specified for roof live load of 20 psf, but the job brings 0 psf: is a load "
                        "left out?" ASK);
}

static void reactions(void **state)
{
    assert_null(said(state, "specified reaction 1", "2400 lb"));
    assert_null(said(state, "specified reaction 2", "2300 lb"));
    assert_string_equal(said(state, "specified reaction 2", "2000 lb"),
                        "beam B1 was specified for a reaction at end 2 of 2000 lb, but the job brings 2402.9 lb" ASK);
}

static void wood(void **state)
{
    assert_null(said(state, "specified species", "douglas fir-larch"));
    assert_null(said(state, "specified size", "2 x 10"));
    assert_null(said(state, "specified grade", "No.2"));
    assert_null(said(state, "specified plies", "3"));
    assert_string_equal(said(state, "specified species", "Hem-Fir"),
                        "beam B1 was specified as species 'Hem-Fir', but its member DFL2-2X10 is 'Douglas Fir-Larch'; "
                        "take his member, or ask him and write his new sheet");
    assert_non_null(said(state, "specified grade", "No.1"));
    assert_non_null(said(state, "specified size", "2x12"));
    assert_non_null(said(state, "specified plies", "4"));
}

/* A load that reaches the beam in one point, and one that stands on half of it: 96 in of 8 ft, 103 in of wood. */
static void partial_loads(void **state)
{
    struct made made;
    his(&made, *state);
    made_set(&made, "beam", "B1", "above", "load chimney");
    made_add(&made, "[load chimney]\non = beam B1\nfrom = 0 ft\nto = 4 ft\ndead = 300 plf\nheld by = shore S1\n");
    made_set(&made, "beam", "B1", "specified dead", "410 plf"); /* 110 + 300 */
    made_size(&made);
    assert_false(made_says(&made, DIAG_Q008));
}

static bool basis_has(const struct made *made, const char *part)
{
    return made_lists(made->design->basis, made->design->basis_count, part);
}

static void his_record_in_words(void **state)
{
    struct made made;
    his(&made, *state);
    made_size(&made);
    assert_true(made_lists(made.design->unchecked, made.design->unchecked_count,
                           "not checked: the loads of beam B1 against the engineer's"));
    assert_true(made_lists(made.design->unchecked, made.design->unchecked_count,
                           "not checked: the member of beam B1 against the engineer's"));
    his(&made, *state);
    made_set(&made, "beam", "B1", "sheet date", "2026-03-02");
    made_set(&made, "beam", "B1", "revision", "B");
    made_set(&made, "beam", "B1", "specified wall", "wall W1");
    made_set(&made, "beam", "B1", "specified dead", "10 psf");
    made_set(&made, "beam", "B1", "specified reaction 1", "2400 lb");
    made_set(&made, "beam", "B1", "specified plies", "3");
    made_set(&made, "beam", "B1", "specified size", "2x10");
    made_size(&made);
    assert_true(basis_has(&made, "beam B1: as specified by A. Heron, PE (invented), sheet S1 of 2026-03-02, revision "
                                 "B, in the place of wall W1, for a clear span of 8' 0\", dead load 10 psf, 2400 lb "
                                 "at end 1; he wrote 3 plies, 2x10; our ratio stands beside it and decides nothing"));
    assert_false(made_lists(made.design->unchecked, made.design->unchecked_count, "against the engineer's"));
    assert_true(made_member(&made, "beam B1")->specified);
}

/* Keys of his record without his name, and a wall that the beam does not stand for. */
static void in_the_job(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "specified live", "40 psf");
    made.job = job_check(made.arena, "test.ini", &made.entries, &made.diags);
    assert_true(made_says(&made, DIAG_K017));
    his(&made, *state);
    made_add(&made, "[wall W2]\nstatus = stays\nheight = 8 ft\n");
    made_set(&made, "beam", "B1", "specified wall", "wall W2");
    made.job = job_check(made.arena, "test.ini", &made.entries, &made.diags);
    assert_true(made_says(&made, DIAG_Q008));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(loads_on_the_line, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(loads_of_the_areas, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(reactions, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(wood, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(partial_loads, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(his_record_in_words, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(in_the_job, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
