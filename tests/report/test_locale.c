/* The library in a program that has set a locale with a decimal comma: the same bytes, from the job file to the
 * workbook. */
#include <locale.h>
#include <sys/stat.h>
#include <unistd.h>

#include "samples.h"

struct written {
    char *json, *screen, *field, *book, *client;
    size_t book_length, client_length;
};

static char *slurp(struct arena *arena, const char *path, size_t *length)
{
    FILE *in = fopen(path, "rb");
    assert_non_null(in);
    struct buffer bytes = {.arena = arena};
    char part[4096];
    for (size_t got; (got = fread(part, 1, sizeof part, in)) > 0;)
        buffer_add_n(&bytes, part, got);
    fclose(in);
    *length = bytes.length;
    return bytes.text;
}

/* Everything that the library makes of a sample; the files are read back and deleted. */
static struct written write_all(struct arena *arena, const char *folder, const char *name)
{
    struct result *result = run_sample(arena, arena_printf(arena, "%s.ini", name));
    struct report report = report_of(result);
    const char *book = arena_printf(arena, "%s/book.xlsx", folder),
               *client = arena_printf(arena, "%s/client.xlsx", folder);
    const char *at = NULL, *why = NULL;
    struct written out = {.json = report_json(arena, &report),
                          .screen = report_check(arena, &report, false, 100),
                          .field = report_field(arena, &report, false, 100)};
    assert_int_equal(report_workbook(arena, &report, book, &at, &why), WRITE_DONE);
    assert_int_equal(report_client(arena, &report, client, &at, &why), WRITE_DONE);
    out.book = slurp(arena, book, &out.book_length);
    out.client = slurp(arena, client, &out.client_length);
    assert_int_equal(unlink(book), 0);
    assert_int_equal(unlink(client), 0);
    return out;
}

static void a_decimal_comma_changes_no_byte(void **state)
{
    char folder[] = "/tmp/sawbill-locale-XXXXXX";
    assert_non_null(mkdtemp(folder));
    for (size_t i = 0; i < SAMPLES; i++) {
        struct written plain = write_all(*state, folder, samples[i]);
        if (!setlocale(LC_ALL, "de_DE.UTF-8")) {
            (void)rmdir(folder);
            print_message("no locale de_DE.UTF-8 here (LOCPATH): skipped\n");
            skip();
        }
        char comma[16];
        (void)snprintf(comma, sizeof comma, "%.1f", 1.5);
        struct written again = write_all(*state, folder, samples[i]);
        setlocale(LC_ALL, "C");
        assert_string_equal(comma, "1,5"); /* the locale really was on */
        assert_string_equal(again.json, plain.json);
        assert_string_equal(again.screen, plain.screen);
        assert_string_equal(again.field, plain.field);
        assert_int_equal(again.book_length, plain.book_length);
        assert_memory_equal(again.book, plain.book, plain.book_length);
        assert_int_equal(again.client_length, plain.client_length);
        assert_memory_equal(again.client, plain.client, plain.client_length);
    }
    assert_int_equal(rmdir(folder), 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(a_decimal_comma_changes_no_byte, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
