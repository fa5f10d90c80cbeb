/* A written package read again: parts that break off are found, whole ones pass. */
#include "packages.h"
#include "sample_report.h"

#include "../../src/report/package.h"

static void test_whole_xml(void **state)
{
    (void)state;
    static const struct {
        const char *text;
        bool whole;
    } cases[] = {
        {"<?xml version=\"1.0\"?>\n<a><b/></a>", true},
        {"<?xml version=\"1.0\"?>\n<a x=\"1\"><b/></a>\n\n", true}, /* the theme part ends with a line feed */
        {"<a></a>", true},
        {"<a/>", true},
        {"<a b=\"c\"/>", true},
        {"<x:a><b></b></x:a>", true},
        {"<a><b></b>", false},
        {"<a><b/>", false},
        {"<a><b></a", false},
        {"<ab><c></c></b>", false},
        {"<a>", false},
        {"<?xml version=\"1.0\"?>", false},
        {"<?xml version=\"1.0\"", false},
        {"", false},
        {"text", false},
    };
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        bool whole = xml_is_whole(cases[i].text, strlen(cases[i].text));
        if (whole != cases[i].whole)
            print_error("%s\n", cases[i].text);
        assert_true(whole == cases[i].whole);
    }
}

/* What a full disk for temporary files leaves: a good ZIP file with a sheet that ends in the middle. */
static char *cut_off(struct arena *arena, char *text, size_t *length)
{
    (void)arena;
    *length = *length * 2 / 3;
    return text;
}

static void test_sheet_that_breaks_off(void **state)
{
    struct sample *s = sample_new(*state);
    const char *folder = new_folder(*state), *written = NULL, *why = NULL;
    const char *good = arena_printf(*state, "%s/good.xlsx", folder), *bad = arena_printf(*state, "%s/bad.xlsx", folder);
    char digest[PACKAGE_DIGEST_LENGTH + 1];
    assert_int_equal(report_workbook(*state, &s->report, good, &written, &why), WRITE_DONE);
    assert_null(package_check(*state, good, digest));
    assert_true(package_untouched(*state, good));
    repack(*state, good, bad, "xl/worksheets/sheet3.xml", cut_off);
    assert_non_null(strstr(package_check(*state, bad, digest), "xl/worksheets/sheet3.xml"));
    assert_false(package_untouched(*state, bad));
}

static void test_no_package(void **state)
{
    char digest[PACKAGE_DIGEST_LENGTH + 1];
    assert_non_null(package_check(*state, "/no/such/file.xlsx", digest));
    assert_false(package_untouched(*state, "/no/such/file.xlsx"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(test_whole_xml, support_setup, packages_teardown),
        cmocka_unit_test_setup_teardown(test_sheet_that_breaks_off, support_setup, packages_teardown),
        cmocka_unit_test_setup_teardown(test_no_package, support_setup, packages_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
