/* The client's file: what it says, and when it may be signed. */
#include "packages.h"
#include "sample_report.h"

static const char *write_client(struct sample *s)
{
    const char *written = NULL, *why = NULL;
    const char *path = arena_printf(s->arena, "%s/client.xlsx", new_folder(s->arena));
    assert_int_equal(report_client(s->arena, &s->report, path, &written, &why), WRITE_DONE);
    return path;
}

static char *texts(struct sample *s, const char *path)
{
    return part_of(s->arena, path, "xl/sharedStrings.xml");
}

static void test_signable(void **state)
{
    struct sample *s = sample_new(*state);
    char *text = texts(s, write_client(s));
    assert_non_null(strstr(text, "Client, name and date"));
    assert_non_null(strstr(text, "Valid for 14 days, to 2026-03-19."));
    assert_non_null(strstr(text, "33.3 % on signing"));
    assert_null(strstr(text, "FOR SIGNATURE"));
    assert_non_null(strstr(text, caution_text()));
}

/* What is usually forgotten and excluded stands there with its reason; what costs nothing does not. */
static void test_excluded(void **state)
{
    static const struct forgotten rows[] = {{.line = "parking", .priced_by = ""},
                                            {.line = "old lead", .priced_by = ""}};
    struct takeoff_forgotten forgotten[] = {{&rows[0], FORGOTTEN_ZERO, "", "the drive is free"},
                                            {&rows[1], FORGOTTEN_EXCLUDED, "", "the owner tests"}};
    struct sample *s = sample_new(*state);
    s->job.facts.exclude = (struct texts_value){0};
    s->takeoff.forgotten = forgotten;
    s->takeoff.forgotten_count = 2;
    char *text = texts(s, write_client(s));
    assert_non_null(strstr(text, "Not in the price"));
    assert_non_null(strstr(text, "old lead: the owner tests"));
    assert_null(strstr(text, "parking"));
    char *bid = report_bid(*state, &s->report, false, 100);
    assert_non_null(strstr(bid, "excluded: old lead: the owner tests"));
    assert_non_null(strstr(bid, "costs nothing: parking: the drive is free"));
}

static void test_not_signable(void **state)
{
    struct sample *s = sample_new(*state);
    s->report.signable = false;
    const char *path = write_client(s);
    char *text = texts(s, path);
    assert_non_null(strstr(text, "NOT FOR SIGNATURE"));
    assert_null(strstr(text, "name and date"));
    assert_non_null(strstr(part_of(*state, path, "xl/worksheets/sheet1.xml"), "Not for signature"));
}

static void test_budget(void **state)
{
    struct sample *s = sample_new(*state);
    s->report.signable = false;
    s->job.facts.status.choice = STATUS_BUDGET;
    s->diags.assume = true;
    s->run.estimate->low_price = 41000000;
    s->run.estimate->high_price = 52500000;
    s->run.estimate->price = 46375000;
    diag_add(&s->diags, DIAG_Q004, NULL, "does [wall W1] brace the house? write 'bracing = no'");
    const char *path = write_client(s);
    char *text = texts(s, path);
    assert_non_null(strstr(text, "BUDGET, for planning only"));
    assert_non_null(strstr(text, diag_code_title(DIAG_Q004)));
    assert_null(strstr(text, "bracing = no")); /* that is for the job file */
    assert_non_null(strstr(text, "Budget price, about $4,100.00 to $5,250.00"));
    assert_null(strstr(part_of(*state, path, "xl/worksheets/sheet1.xml"), "4637.5")); /* a range, never one price */
    assert_null(strstr(text, "on signing"));
    assert_null(strstr(text, "Valid for")); /* nothing binds in a budget */
    assert_non_null(strstr(part_of(*state, path, "xl/worksheets/sheet1.xml"), "BUDGET, not for signature"));
}

/* Values only, one sheet, nothing of how the price comes about. */
static void test_values_only(void **state)
{
    struct sample *s = sample_new(*state);
    const char *path = write_client(s);
    assert_null(part_of(*state, path, "xl/worksheets/sheet2.xml"));
    assert_null(strstr(part_of(*state, path, "xl/worksheets/sheet1.xml"), "<f>"));
    assert_null(strstr(part_of(*state, path, "xl/workbook.xml"), "definedName"));
    static const char *const inside[] = {"Yard One", "NAIL-10D", "carpenter", "hang joists", "electrician", "INTERNAL"};
    for (size_t i = 0; i < sizeof inside / sizeof *inside; i++)
        assert_null(strstr(texts(s, path), inside[i]));
    assert_non_null(strstr(texts(s, path), "tile to match")); /* an allowance is the client's to know */
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(test_signable, support_setup, packages_teardown),
        cmocka_unit_test_setup_teardown(test_excluded, support_setup, packages_teardown),
        cmocka_unit_test_setup_teardown(test_not_signable, support_setup, packages_teardown),
        cmocka_unit_test_setup_teardown(test_budget, support_setup, packages_teardown),
        cmocka_unit_test_setup_teardown(test_values_only, support_setup, packages_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
