/* The golden cases of tests/data/bad that need no catalogs and no sizing (names that begin so): their messages,
 * exactly, from the library alone. */
#include "job_support.h"

#include <dirent.h>

static char *read_file(struct arena *arena, const char *path, size_t *length)
{
    FILE *in = fopen(path, "rb");
    if (!in)
        return NULL;
    struct buffer out = {.arena = arena};
    char part[4096];
    size_t got = 0;
    while ((got = fread(part, 1, sizeof part, in)) > 0)
        buffer_add_n(&out, part, got);
    assert_int_equal(fclose(in), 0);
    *length = out.length;
    return arena_strndup(arena, buffer_text(&out), out.length);
}

/* The job as its folder names it, against want.JOB.err or else want.err.  Returns 1 when there was one. */
static int check_case(struct arena *arena, const char *folder, const char *name, size_t *failed)
{
    size_t length = 0;
    size_t ignored = 0;
    const char *text = read_file(arena, arena_printf(arena, "%s/%s", folder, name), &length);
    if (!text)
        return 0;
    const char *want = read_file(arena, arena_printf(arena, "%s/want.%s.err", folder, name), &ignored);
    if (!want)
        want = read_file(arena, arena_printf(arena, "%s/want.err", folder), &ignored);
    struct diags diags;
    (void)read_text(arena, name, text, length, &diags);
    const char *got = messages(arena, &diags);
    if (!want || strcmp(got, want) != 0)
        print_error("%s/%s:\ngot:\n%swant:\n%s", folder, name, got, want ? want : "(no file)");
    *failed += !want || strcmp(got, want) != 0;
    return 1;
}

static bool has_catalogs(struct arena *arena, const char *folder)
{
    DIR *inside = opendir(arena_printf(arena, "%s/catalogs", folder));
    return inside && closedir(inside) == 0;
}

static void every_case(void **state)
{
    const char *root = SOURCE_DIR "/tests/data/bad";
    DIR *cases = opendir(root);
    assert_non_null(cases);
    size_t failed = 0;
    int ran = 0;
    for (struct dirent *one = readdir(cases); one; one = readdir(cases)) {
        const char *folder = arena_printf(*state, "%s/%s", root, one->d_name);
        if (one->d_name[0] == '.' || !strncmp(one->d_name, "catalog", 7) || !strncmp(one->d_name, "sized", 5) ||
            has_catalogs(*state, folder))
            continue;
        ran += check_case(*state, folder, "job.ini", &failed);
        ran += check_case(*state, folder, "job.json", &failed);
    }
    assert_int_equal(closedir(cases), 0);
    assert_int_equal(failed, 0);
    assert_true(ran >= 60);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(every_case, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
