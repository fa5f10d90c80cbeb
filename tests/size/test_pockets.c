/* A pocket cuts the top plate of its wall.  IRC 2018 and 2021 R602.6.1, as adopted by states: a tie of 0.054 in x 1-1/2
 * in with eight 10d (0.148 in x 1-1/2 in) nails each side where more than half of the plate's width is cut. */
#include "size/made_job.h"

static const char id[] = "beam B1, end 2", name[] = "strap over the cut plate";

static void with_pocket(struct made *made, struct arena *arena)
{
    made_start(made, arena);
    made_set(made, "beam", "B1", "end 2", "pocket");
    made_set(made, "beam", "B1", "bearing 2", "3-1/2 in");
}

/* The shipped assemblies count a strap with eight nails each side for every pocket. */
static void strap_counted(void **state)
{
    struct made made;
    with_pocket(&made, *state);
    made_size(&made);
    const struct check *strap = made_check(&made, id, name);
    assert_near(strap->demand, 8, 0);
    assert_near(strap->capacity, 8, 0);
    assert_string_equal(strap->clause, "IRC 2021 R602.6.1");
    assert_null(made_find(&made, "beam B1, end 1", name)); /* on a post */
    assert_true(made.design->passes);
}

static void strap_missing(void **state)
{
    struct made made;
    with_pocket(&made, *state);
    made.catalog = catalog_read(made.arena, SOURCE_DIR "/catalogs", NULL, &made.diags);
    made.catalog->assembly_count = 0;
    made_size(&made);
    assert_true(isinf(made_check(&made, id, name)->ratio));
    assert_false(made.design->passes);
    assert_true(made_says(&made, DIAG_S002));
}

/* Six nails do not serve; eight thin ones do not, either. */
static void strap_too_weak(void **state)
{
    for (int thin = 0; thin < 2; thin++) {
        struct made made;
        with_pocket(&made, *state);
        made.catalog = catalog_read(made.arena, SOURCE_DIR "/catalogs", NULL, &made.diags);
        for (size_t i = 0; i < made.catalog->hanger_count; i++) {
            struct hanger *strap = &made.catalog->hangers[i];
            if (strcmp(strap->code, "STRAP-PLATE") != 0)
                continue;
            if (thin)
                strap->member_nail = "NAIL-8D-COMMON"; /* 0.131 in */
            else
                strap->carrier_count = 6;
        }
        made_size(&made);
        assert_true(made_check(&made, id, name)->ratio > 1.3);
        assert_false(made.design->passes);
    }
}

/* Only an engineer's note takes it away. */
static void engineer_answers(void **state)
{
    struct made made;
    with_pocket(&made, *state);
    made_set(&made, "beam", "B1", "plate engineer", "sheet S2, R. Ames, PE (invented)");
    made_size(&made);
    assert_null(made_find(&made, id, name));
    assert_true(made_lists(made.design->unchecked, made.design->unchecked_count, "by the engineer (sheet S2"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(strap_counted, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(strap_missing, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(strap_too_weak, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(engineer_answers, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
