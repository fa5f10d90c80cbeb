/* Beams beyond the limits of the program: an ask that only an engineer's record answers.  The limits, 20 ft and 10,000
 * lb, are common practice, no source. */
#include "made_job.h"

static const char *asked(const struct made *made)
{
    const char *text = NULL;
    for (size_t i = 0; i < made->diags.count; i++)
        if (made->diags.item[i].code == DIAG_S007) {
            assert_int_equal(made->diags.item[i].class, DIAG_ASK);
            text = made->diags.item[i].text;
        }
    return text;
}

static void specify(struct made *made, const char *span)
{
    made_set(made, "beam", "B1", "specified by", "A. Heron, PE (invented)");
    made_set(made, "beam", "B1", "sheet", "S1");
    made_set(made, "beam", "B1", "specified span", span);
}

static void a_long_span(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "footing", "F1", "engineer", "R. Ames, S2"); /* 11,338 lb of both ends */
    made_set(&made, "beam", "B1", "clear span", "20 ft");
    made_size(&made);
    assert_null(asked(&made));
    made_start(&made, *state);
    made_set(&made, "footing", "F1", "engineer", "R. Ames, S2");
    made_set(&made, "beam", "B1", "clear span", "20 ft 1/16 in");
    made_size(&made);
    assert_string_equal(asked(&made), "beam B1 spans 20' 0-1/16\", more than the 20' 0\" that are sized here without "
                                      "an engineer; write 'specified by', 'sheet' and 'specified span'");
    made_start(&made, *state);
    made_set(&made, "footing", "F1", "engineer", "R. Ames, S2");
    made_set(&made, "beam", "B1", "clear span", "20 ft 1/16 in");
    specify(&made, "20 ft");
    made_size(&made);
    assert_null(asked(&made));
}

/* 8 ft clear: 20 ft allows it, the user's own 7 ft 11 in does not. */
static void a_lowered_span(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "job", "", "engineer beyond span", "8 ft");
    made_size(&made);
    assert_null(asked(&made));
    made_start(&made, *state);
    made_set(&made, "job", "", "engineer beyond span", "7 ft 11 in");
    made_size(&made);
    assert_non_null(strstr(asked(&made), "more than the 7' 11\""));
}

/* The wood is 96 in and 3-1/2 in of bearing at each end, 103 in; the floor brings 50 psf x (12 + 10)/2 ft = 550 plf,
 * three 2x10 plies weigh 9.9 plf: an end brings 559.9 x 103/12 / 2 = 2,402.9 lb.  16,000 lb in the middle add 8,000:
 * 10,402.9 lb, all of it D+L. */
static void a_heavy_end(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "footing", "F1", "engineer", "R. Ames, S2");
    made_set(&made, "beam", "B1", "above", "load X");
    made_add(&made, "[load X]\non = beam B1\nat = 51.5 in\ndead = 16000 lb\nlive = 0 lb\nheld by = shore S1\n");
    made_size(&made);
    assert_string_equal(asked(&made),
                        "end 2 of beam B1 brings 10403 lb (D+L), more than the 10000 lb that are followed to the "
                        "ground here without an engineer; write 'specified by', 'sheet' and 'specified span'");
    made_start(&made, *state);
    made_set(&made, "footing", "F1", "engineer", "R. Ames, S2");
    made_set(&made, "job", "", "engineer beyond reaction", "2403 lb");
    made_size(&made);
    assert_null(asked(&made));
    made_start(&made, *state);
    made_set(&made, "footing", "F1", "engineer", "R. Ames, S2");
    made_set(&made, "job", "", "engineer beyond reaction", "2402 lb");
    made_size(&made);
    assert_non_null(strstr(asked(&made), "brings 2403 lb (D+L), more than the 2402 lb"));
    made_start(&made, *state);
    made_set(&made, "footing", "F1", "engineer", "R. Ames, S2");
    made_set(&made, "job", "", "engineer beyond reaction", "2402 lb");
    specify(&made, "8 ft");
    made_size(&made);
    assert_null(asked(&made));
}

/* Both ends on one post: 2 x 2,402.9 lb and three studs of 7 ft, 3 x 1.06 x 7 = 22.3 lb: 4,828.1 lb (D+L), though
 * neither end alone is beyond 4,000 lb.  On two posts and one footing: 4,850.3 lb there.  Each is answered by its own
 * engineer. */
static void what_several_bring_together(void **state)
{
    static const char rest[] = "(D+L), more than the 4000 lb that are followed to the ground here without an engineer; "
                               "write in it 'engineer = NAME, SHEET'";
    struct made made;
    made_start(&made, *state);
    made_set(&made, "job", "", "engineer beyond reaction", "4000 lb");
    made_set(&made, "beam", "B1", "end 2", "post P1");
    made_size(&made);
    assert_string_equal(asked(&made),
                        arena_printf(*state, "post P1 gathers, of beam B1, end 1; beam B1, end 2, 4829 lb %s", rest));
    made_set(&made, "post", "P1", "engineer", "R. Ames, S2");
    made.diags.count = 0;
    made_size(&made);
    assert_null(asked(&made));

    made_start(&made, *state);
    made_set(&made, "job", "", "engineer beyond reaction", "4000 lb");
    made_size(&made);
    assert_string_equal(asked(&made), arena_printf(*state, "footing F1 gathers, of 2 posts, 4851 lb %s", rest));
    made_set(&made, "footing", "F1", "engineer", "R. Ames, S2");
    made.diags.count = 0;
    made_size(&made);
    assert_null(asked(&made));
}

/* What the house has of the kind is never passed over in silence. */
static void the_list_says_it(void **state)
{
    static const struct {
        const char *unusual, *engineer, *line;
    } cases[] = {
        {"masonry above", NULL, "not checked: masonry above: an engineer must say"},
        {"masonry above", "R. Ames, PE, S2", "not checked: masonry above, by the engineer (R. Ames, PE, S2)"},
        {"unknown", NULL, "not checked: whether the house has what is left to an engineer"},
        {NULL, NULL, "not checked: whether the house has what is left to an engineer"},
    };
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        struct made made;
        made_start(&made, *state);
        made_set(&made, "job", "", "unusual", cases[i].unusual);
        if (cases[i].engineer)
            made_set(&made, "job", "", "unusual engineer", cases[i].engineer);
        made_size(&made);
        assert_true(made_lists(made.design->unchecked, made.design->unchecked_count, cases[i].line));
        assert_int_equal(made_says(&made, DIAG_Q011), !cases[i].engineer);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(a_long_span, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_lowered_span, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_heavy_end, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(what_several_bring_together, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(the_list_says_it, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
