#include "every.h"

#include "sawbill/diag.h"

static const struct place PLACE = {.file = "porch.ini", .line = 14, .column = 1};

static void test_lines(void **state)
{
    struct diags diags = {.arena = *state};
    diag_add(&diags, DIAG_K002, &PLACE, "unknown key '%s' in [joists north]; did you mean '%s'?", "spacng", "spacing");
    assert_string_equal(diag_line(*state, &diags.item[0]),
                        "porch.ini:14:1: stop[K002]: unknown key 'spacng' in [joists north]; did you mean 'spacing'?");
    struct place whole = {.file = "prices.csv"};
    diag_add(&diags, DIAG_C007, &whole, "price is old");
    assert_string_equal(diag_line(*state, &diags.item[1]), "prices.csv: note[C007]: price is old");
    diag_add(&diags, DIAG_Q003, NULL, "do the joists of 'north' tie the rafters?");
    assert_string_equal(diag_line(*state, &diags.item[2]), "ask[Q003]: do the joists of 'north' tie the rafters?");
}

static void test_once_each(void **state)
{
    struct diags diags = {.arena = *state};
    struct place other = PLACE, json = PLACE;
    other.column = 2;
    json.pointer = "/joists/north";
    diag_add(&diags, DIAG_K002, &PLACE, "unknown key 'a'");
    diag_add(&diags, DIAG_K002, &PLACE, "unknown key '%c'", 'a');
    assert_int_equal(diags.count, 1);
    diag_add(&diags, DIAG_K002, &PLACE, "unknown key 'b'");
    diag_add(&diags, DIAG_K002, &other, "unknown key 'a'");
    diag_add(&diags, DIAG_K002, &json, "unknown key 'a'");
    diag_add(&diags, DIAG_K001, &PLACE, "unknown key 'a'");
    diag_add(&diags, DIAG_K002, NULL, "unknown key 'a'");
    diag_add(&diags, DIAG_K002, NULL, "unknown key 'a'");
    assert_int_equal(diags.count, 6);
}

static void test_counts_by_class(void **state)
{
    struct diags diags = {.arena = *state};
    diag_add(&diags, DIAG_K014, &PLACE, "a note");
    diag_add(&diags, DIAG_C007, &PLACE, "another note");
    diag_add(&diags, DIAG_Q003, &PLACE, "a question");
    diag_add(&diags, DIAG_F001, &PLACE, "a stop");
    assert_int_equal(diag_count(&diags, DIAG_NOTE), 2);
    assert_int_equal(diag_count(&diags, DIAG_ASK), 1);
    assert_int_equal(diag_count(&diags, DIAG_STOP), 1);
    diags.item[0].acknowledged = true;
    assert_int_equal(diag_count(&diags, DIAG_NOTE), 1);
}

static void test_budget_turns_asks_into_assumptions(void **state)
{
    struct diags diags = {.arena = *state, .assume = true};
    diag_add(&diags, DIAG_Q003, &PLACE, "no answer on the roof ties: %d", 1);
    diag_add(&diags, DIAG_K002, &PLACE, "unknown key 'a'");
    diag_add(&diags, DIAG_C007, &PLACE, "price is old");
    assert_int_equal(diags.item[0].class, DIAG_NOTE);
    assert_string_equal(diags.item[0].text, "assumed: no answer on the roof ties: 1");
    assert_int_equal(diags.item[1].class, DIAG_STOP); /* a fault stays a fault */
    assert_string_equal(diags.item[2].text, "price is old");
    assert_int_equal(diag_count(&diags, DIAG_ASK), 0);
    /* Told again in another list, it is assumed once. */
    diag_add(&diags, DIAG_Q003, &PLACE, "with 'B': %s", diag_bare_text(&diags.item[0]));
    assert_string_equal(diags.item[3].text, "assumed: with 'B': no answer on the roof ties: 1");
    assert_string_equal(diag_bare_text(&diags.item[2]), "price is old");
}

static void test_order_by_place(void **state)
{
    struct diags diags = {.arena = *state};
    struct place a3 = {.file = "a.ini", .line = 3, .column = 9}, a20 = {.file = "a.ini", .line = 20, .column = 1};
    struct place a3early = {.file = "a.ini", .line = 3, .column = 2}, whole = {.file = "a.ini"};
    struct place b1 = {.file = "b.csv", .line = 1, .column = 1};
    diag_add(&diags, DIAG_K002, &b1, "7");
    diag_add(&diags, DIAG_K002, &a20, "6");
    diag_add(&diags, DIAG_K007, &a3, "4");
    diag_add(&diags, DIAG_K002, &a3, "5");
    diag_add(&diags, DIAG_K002, &whole, "2");
    diag_add(&diags, DIAG_K002, &a3early, "3");
    diag_add(&diags, DIAG_Q003, NULL, "1");
    diag_sort(&diags);
    for (size_t i = 0; i < diags.count; i++)
        assert_int_equal(diags.item[i].text[0] - '1', i);
    struct diags none = {.arena = *state};
    diag_sort(&none);
    assert_int_equal(none.count, 0);
}

/* Stable at every length, and still growing afterwards. */
static void test_sort_is_stable(void **state)
{
    uint64_t random = 14;
    for (size_t count = 1; count <= 300; count += 13) {
        struct diags diags = {.arena = *state};
        for (size_t i = 0; i < count; i++) {
            struct place at = {.file = "a.ini", .line = (int)random_up_to(&random, 9), .column = 1};
            diag_add(&diags, DIAG_K002, &at, "%zu", i);
        }
        diag_sort(&diags);
        assert_int_equal(diags.count, count);
        for (size_t i = 1; i < count; i++) {
            const struct diag *before = &diags.item[i - 1], *diag = &diags.item[i];
            assert_true(before->at.line <= diag->at.line);
            if (before->at.line == diag->at.line)
                assert_true(strtol(before->text, NULL, 10) < strtol(diag->text, NULL, 10));
        }
        diag_add(&diags, DIAG_K002, NULL, "one more");
        assert_string_equal(diags.item[count].text, "one more");
    }
}

static void test_code_table(void **state)
{
    (void)state;
    for (int i = 0; i < DIAG_CODE_COUNT; i++) {
        enum diag_code code = (enum diag_code)i;
        const char *name = diag_code_name(code);
        assert_int_equal(strlen(name), 4);
        assert_true(*diag_code_title(code) != '\0');
        /* only a note can be acknowledged: a stop is a fault, an ask wants its answer */
        if (diag_code_can_ack(code))
            assert_int_equal(diag_code_class(code), DIAG_NOTE);
        for (int k = 0; k < i; k++)
            assert_string_not_equal(name, diag_code_name((enum diag_code)k));
    }
    assert_string_equal(diag_code_name(DIAG_Q001), "Q001");
    assert_string_equal(diag_class_name(DIAG_NOTE), "note");
    assert_string_equal(diag_class_name(DIAG_ASK), "ask");
    assert_string_equal(diag_class_name(DIAG_STOP), "stop");
}

int main(int argc, char **argv)
{
    int failed = set_locale_from(argc, argv);
    if (failed)
        return failed;
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(test_lines, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_once_each, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_counts_by_class, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_budget_turns_asks_into_assumptions, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_order_by_place, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_sort_is_stable, support_setup, support_teardown),
        cmocka_unit_test(test_code_table),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
