/* What loads do not decide: vibration of long floors (common practice, no source), and steel in treated wood. */
#include "made_job.h"

static bool says_bounce(const struct made *made, const char *joists)
{
    return made_lists(made->design->unchecked, made->design->unchecked_count,
                      arena_printf(made->arena, "not checked: vibration of joists %s: they run 14' 0-1/2\"", joists));
}

static void a_long_floor(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "joists", "north", "run", "14 ft 0-1/2 in");
    made_set(&made, "joists", "south", "run", "14 ft");
    made_size(&made);
    assert_true(says_bounce(&made, "north"));
    assert_false(made_lists(made.design->unchecked, made.design->unchecked_count, "vibration of joists south"));
    made_start(&made, *state); /* nobody walks there */
    made_set(&made, "joists", "north", "run", "14 ft 0-1/2 in");
    made_set(&made, "area", "floor", "live is", "attic no storage");
    made_size(&made);
    assert_false(says_bounce(&made, "north"));
}

static void read_catalog(struct made *made)
{
    made->catalog = catalog_read(made->arena, SOURCE_DIR "/catalogs", NULL, &made->diags);
}

static struct member *member_of(const struct catalog *catalog, const char *code)
{
    for (size_t i = 0; i < catalog->member_count; i++)
        if (name_same(catalog->members[i].code, code))
            return &catalog->members[i];
    fail_msg("no member %s", code);
    return NULL;
}

static size_t coatings_asked(const struct made *made)
{
    size_t count = 0;
    for (size_t i = 0; i < made->diags.count; i++)
        count += made->diags.item[i].code == DIAG_S012;
    return count;
}

/* A plain beam asks nothing.  Of treated wood: once for the hanger of both sides, and the note can be acknowledged;
 * a catalog that says the coating answers. */
static void a_treated_beam(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_size(&made);
    assert_int_equal(coatings_asked(&made), 0);

    made_start(&made, *state);
    read_catalog(&made);
    member_of(made.catalog, "DFL2-2X10")->moisture = "Treated, wet when sold";
    made_size(&made);
    assert_int_equal(coatings_asked(&made), 1);
    assert_true(made_lists(made.design->unchecked, made.design->unchecked_count,
                           "the coating of nails and straps in the treated wood of beam B1"));
    assert_true(diag_code_can_ack(DIAG_S012));

    made_start(&made, *state);
    read_catalog(&made);
    member_of(made.catalog, "DFL2-2X10")->moisture = "treated";
    for (size_t i = 0; i < made.catalog->hanger_count; i++)
        made.catalog->hangers[i].coating = "hot-dipped, for treated wood";
    made_size(&made);
    assert_int_equal(coatings_asked(&made), 0);
}

/* A beam hung on the treated one: its own hanger touches that wood. */
static void hung_on_treated_wood(void **state)
{
    static const char second[] = "[beam B2]\nset = flush\nclear span = 6 ft\nend 1 = beam B1 at 4 ft\nend 2 = wall "
                                 "plate\nbearing 2 = 3-1/2 in\nabove = load X\nmember = SPF2-2X8\nplies = 2\n"
                                 "ply fasteners = NAIL-16D-COMMON\neach face = yes\n"
                                 "[load X]\non = beam B2\nat = 3 ft\ndead = 200 lb\nlive = 0\nheld by = shore S1\n";
    struct made made;
    made_start(&made, *state);
    made_add(&made, second);
    read_catalog(&made);
    member_of(made.catalog, "DFL2-2X10")->moisture = "treated";
    made_size(&made);
    assert_non_null(made.design->beams[1].end_hanger[0]);
    assert_int_equal(coatings_asked(&made), 2);
}

static void a_treated_post(void **state)
{
    struct made made;
    made_start(&made, *state);
    read_catalog(&made);
    member_of(made.catalog, "SPF-STUD-2X4")->material = "Spruce-Pine-Fir treated";
    made_size(&made);
    assert_int_equal(coatings_asked(&made), 0); /* no hanger is on it */
    assert_true(made_lists(made.design->unchecked, made.design->unchecked_count,
                           "the coating of nails and straps in the treated wood of post P1"));
}

static bool says_engineer(const struct made *made, const char *part)
{
    for (size_t i = 0; i < made->diags.count; i++)
        if (made->diags.item[i].code == DIAG_S004 && strstr(made->diags.item[i].text, part))
            return true;
    return false;
}

/* Rafters slope, and the hangers that are listed do not. */
static void rafters_in_level_hangers(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_size(&made);
    assert_false(says_engineer(&made, "listed for level joists"));
    made_set(&made, "joists", "north", "kind", "rafter");
    made_size(&made);
    assert_true(says_engineer(&made, "joists north hang on beam B1 and slope"));
    made_start(&made, *state);
    made_set(&made, "joists", "north", "kind", "rafter");
    made_set(&made, "beam", "B1", "set", "dropped"); /* they lie on it */
    made_size(&made);
    assert_false(says_engineer(&made, "listed for level joists"));
}

/* A post on a footing is on concrete; on a block it is not. */
static void wood_on_concrete(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "post", "P2", "stands on", "block K1");
    made_add(&made, "[block K1]\ndepth = 9-1/4 in\nstands on = footing F1\n");
    made_size(&made);
    const char *const *list = made.design->unchecked;
    assert_true(made_lists(list, made.design->unchecked_count, "not checked: post P1 stands on concrete"));
    assert_false(made_lists(list, made.design->unchecked_count, "not checked: post P2 stands on concrete"));
}

/* IRC 2021 R502.6: 1-1/2 in on wood or metal, 3 in on masonry and concrete; which of them a pocket is, is not known. */
static void short_pocket(void **state)
{
    static const char *const lengths[] = {"2-15/16 in", "3 in"};
    for (int i = 0; i < 2; i++) {
        struct made made;
        made_start(&made, *state);
        made_set(&made, "beam", "B1", "end 2", "pocket");
        made_set(&made, "beam", "B1", "wall at end 2", NULL);
        made_set(&made, "beam", "B1", "bearing 2", lengths[i]);
        made_size(&made);
        assert_int_equal(says_engineer(&made, "masonry and concrete want 3 in"), i == 0);
    }
}

/* Said, never used unasked. */
static void repetitive_factor(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_size(&made);
    assert_true(made_lists(made.design->basis, made.design->basis_count, "Cr 1 (1.15 for three plies and more"));
    made_set(&made, "beam", "B1", "repetitive factor", "1.15");
    made_size(&made);
    assert_true(made_lists(made.design->basis, made.design->basis_count, "Cr 1.15; lateral"));
}

/* Listed for G 0.50; Spruce-Pine-Fir has 0.42 (NDS 2018 Table 12.3.3A): (0.42/0.50)^1.84 = e^(1.84 x -0.17435) =
 * 0.7256, the ratio of Fe = 16,600 G^1.84 (12.3.3), which no yield mode falls below.  Joists or beam: the lighter
 * counts. */
static void hangers_in_lighter_wood(void **state)
{
    const char *joists = "joists north on beam B1, side A";
    struct made made;
    made_start(&made, *state);
    made_size(&made);
    double listed = made_check(&made, joists, "joist hanger")->capacity;
    const char *code = made.design->beams[0].side[0]->end[0].hanger->code;
    assert_true(made_lists(made.design->unchecked, made.design->unchecked_count,
                           "not checked: hangers of joists north in wood lighter than they are listed for"));
    made_set(&made, "joists", "north", "species", "Spruce-Pine-Fir");
    made_size(&made);
    assert_string_equal(made.design->beams[0].side[0]->end[0].hanger->code, code);
    assert_near(made_check(&made, joists, "joist hanger")->capacity, listed * 0.72556, 0.01);
    assert_non_null(strstr(made_check(&made, joists, "joist hanger")->note, "x 0.726 in G 0.42"));
    made_set(&made, "joists", "north", "species", "Douglas Fir-Larch");
    made_size(&made);
    assert_near(made_check(&made, joists, "joist hanger")->capacity, listed, 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(hangers_in_lighter_wood, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(rafters_in_level_hangers, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(wood_on_concrete, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(short_pocket, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(repetitive_factor, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_long_floor, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_treated_beam, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(hung_on_treated_wood, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_treated_post, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
