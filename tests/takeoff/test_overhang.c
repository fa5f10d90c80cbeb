/* Plies that run on past a support, and how their fasteners end there: counted from the job by hand. */
#include "size/made_job.h"

#include "sawbill/takeoff.h"

static const struct takeoff *count(struct made *made)
{
    made_size(made);
    return takeoff_job(made->arena, made->job, made->catalog, made->design, &made->diags);
}

static const struct takeoff_line *find(const struct takeoff *takeoff, const char *id)
{
    for (size_t i = 0; i < takeoff->count; i++)
        if (!strcmp(takeoff->line[i].id, id))
            return &takeoff->line[i];
    fail_msg("no line %s", id);
    return NULL;
}

static length_t last_mark(const struct ply_layout *layout)
{
    length_t last = 0;
    for (int row = 0; row < layout->layout.rows; row++) {
        const struct layout_marks *marks = &layout->layout.row[0][row];
        if (marks->count > 0 && marks->at[marks->count - 1] > last)
            last = marks->at[marks->count - 1];
    }
    return last;
}

/* 96 + 2 x 3-1/2 + 22-1/4 = 125-1/4 in. */
static void cut_to_length(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "overhang 2", "22-1/4 in");
    const struct takeoff_line *plies = find(count(&made), "plies/B1");
    assert_near(length_inches(plies->length), 125.25, 1e-9);
    assert_string_equal(plies->counted, "3 plies x 10' 5-1/4\": bearing 3-1/2\" + clear 8' 0\" + bearing 3-1/2\" + "
                                        "overhang 1' 10-1/4\"");
    made_set(&made, "beam", "B1", "overhang 1", "6 in");
    assert_string_equal(find(count(&made), "plies/B1")->counted,
                        "3 plies x 10' 11-1/4\": overhang 6\" + bearing 3-1/2\" + clear 8' 0\" + bearing 3-1/2\" + "
                        "overhang 1' 10-1/4\"");
}

/* Nothing but the end distance, 3 in, is kept from an end that runs on; without it the bearing of 3-1/2 in is.  Marks
 * are no more than 12 in apart: the last stands within 12 in of that end. */
static void fastened_to_its_end(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "overhang 2", "22-1/4 in");
    const struct takeoff *takeoff = count(&made);
    assert_true(takeoff->ply_layout_count > 0);
    double last = length_inches(last_mark(&takeoff->ply_layout[0]));
    assert_true(last > 125.25 - 12 - 1e-9);
    assert_true(last <= 125.25 - 3 + 1e-9);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(cut_to_length, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(fastened_to_its_end, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
