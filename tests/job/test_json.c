/* The JSON spelling: the same entries as INI, places with their pointer, and what is refused. */
#include "job_support.h"

static struct entries read_entries(struct arena *arena, const char *file, const char *text, struct diags *diags)
{
    struct entries entries;
    *diags = (struct diags){.arena = arena};
    entries_read(arena, file, text, strlen(text), &entries, diags);
    return entries;
}

/* Kind, id, key and value of each entry, a line each. */
static char *listed(struct arena *arena, const struct entries *entries)
{
    struct buffer out = {.arena = arena};
    for (size_t i = 0; i < entries->count; i++) {
        const struct entry *entry = &entries->item[i];
        buffer_printf(&out, "%s|%s|%s|%s|%s|%s\n", entry->kind, entry->id, entry->kind_as, entry->id_as,
                      entry->key ? entry->key : "", entry->key ? entry->value : "");
    }
    return arena_strdup(arena, buffer_text(&out));
}

/* Every type of value once. */
static void both_spellings_are_one_job(void **state)
{
    static const char ini[] = "[job]\n"
                              "name = Porch \"wall\", \xC2\xBD out\n"
                              "date = 2026-02-03\n"
                              "scope = Beam\n"
                              "scope = Patch\n"
                              "[area loft]\n"
                              "dead = 12 psf\n"
                              "live is = attic no storage\n"
                              "[roof]\n"
                              "pitch = 6/12\n"
                              "braces = 4 ft carrying 96 sq ft\n"
                              "[joists north-east]\n"
                              "at = 7 in, 23-1/2 in\n"
                              "[beam B1]\n"
                              "clear span = 14' 6-1/2\"\n"
                              "choose = yes\n"
                              "each face = no\n"
                              "end 1 = beam B2 at 6 ft 2 in\n"
                              "above = load post, wall W2\n"
                              "live limit = L/360\n"
                              "repetitive factor = 1.00\n"
                              "most plies = 3\n"
                              "[footing F1]\n"
                              "[buy permit]\n"
                              "price = 12.50\n"
                              "own markup = 0\n"
                              "[bid]\n"
                              "tax = 8.25 %\n"
                              "[alternate sawn]\n"
                              "set beam B1 member = DFL2-2X10\n";
    static const char json[] =
        "{\"job\": {\"name\": \"Porch \\\"wall\\\", \\u00bd out\", \"date\": \"2026-02-03\",\n"
        "  \"scope\": [\"Beam\", \"Patch\"]},\n"
        " \"area\": {\"loft\": {\"dead\": \"12 psf\", \"live_is\": \"attic no storage\"}},\n"
        " \"roof\": {\"pitch\": \"6\\/12\", \"braces\": \" 4 ft carrying 96 sq ft \"},\n"
        " \"joists\": {\"north-east\": {\"at\": \"7 in, 23-1/2 in\"}},\n"
        " \"beam\": {\"B1\": {\"clear span\": \"14' 6-1/2\\\"\", \"choose\": true, \"each face\": false,\n"
        "   \"end 1\": \"beam B2 at 6 ft 2 in\", \"above\": \"load post, wall W2\", \"live limit\": \"L/360\",\n"
        "   \"Repetitive Factor\": 1.00, \"most plies\": 3}},\n"
        " \"footing\": {\"F1\": {}},\n"
        " \"buy\": {\"permit\": {\"price\": 12.50, \"own markup\": 0}},\n"
        " \"bid\": {\"tax\": \"8.25 %\"},\n"
        " \"alternate\": {\"sawn\": {\"set beam B1 member\": \"DFL2-2X10\"}}}\n";
    struct diags diags;
    struct entries a = read_entries(*state, "job.ini", ini, &diags);
    assert_int_equal(diags.count, 0);
    struct entries b = read_entries(*state, "job.json", json, &diags);
    assert_int_equal(diags.count, 0);
    assert_string_equal(listed(*state, &a), listed(*state, &b));
    assert_int_equal(a.count, 30);
}

static void places_and_pointers(void **state)
{
    static const char json[] = "\xEF\xBB\xBF{\n"
                               "  \"beam\": {\r\n"
                               "    \"\xC2\xBD\": {\"a/b~c\": [\"x\", 3]},\n"
                               "    \"B1\": {\"n\\u0061me\": \"y\"}\n"
                               "  }\n"
                               "}\n";
    struct diags diags;
    struct entries got = read_entries(*state, "job.json", json, &diags);
    assert_int_equal(diags.count, 0);
    assert_int_equal(got.count, 5);
    const struct {
        const char *pointer;
        int line, column, key_line, key_column;
    } want[] = {{"/beam/\xC2\xBD", 3, 5, 3, 5},
                {"/beam/\xC2\xBD/a~1b~0c/0", 3, 21, 3, 11},
                {"/beam/\xC2\xBD/a~1b~0c/1", 3, 26, 3, 26},
                {"/beam/B1", 4, 5, 4, 5},
                {"/beam/B1/name", 4, 25, 4, 12}};
    for (size_t i = 0; i < 5; i++) {
        assert_string_equal(got.item[i].at.pointer, want[i].pointer);
        assert_int_equal(got.item[i].at.line, want[i].line);
        assert_int_equal(got.item[i].at.column, want[i].column);
        assert_int_equal(got.item[i].key_at.line, want[i].key_line);
        assert_int_equal(got.item[i].key_at.column, want[i].key_column);
    }
    assert_string_equal(got.item[2].value, "3");
}

struct bad {
    const char *text, *want;
};

static void refused(void **state)
{
    static const struct bad bad[] = {
        {"{\"sub\": {}, \"buy\": {}, \"SUB\": {}}",
         "job.json:1:24: stop[K003]: 'SUB' stands twice; the first is on line 1, put its ids together\n"},
        {"{\"job\": {\"name\": null}}", "job.json:1:18: stop[F005]: 'name' is null, which says nothing (leave the key "
                                        "out); a value is a text, a number, true or false\n"},
        {"{\"job\": {\"name\": {}}}",
         "job.json:1:18: stop[F005]: 'name' is an object; a value is a text, a number, true or false\n"},
        {"{\"job\": {\"name\": [[\"a\"]]}}",
         "job.json:1:19: stop[F005]: 'name' is a list in a list; a value is a text, a number, true or false\n"},
        {"{\"job\": {\"scope\": []}}",
         "job.json:1:19: stop[K015]: 'scope' is an empty list; write a value or take the key out\n"},
        {"{\"job\": \"x\"}", "job.json:1:9: stop[F005]: 'job' must be an object: {\"key\": value}\n"},
        {"{\"beam\": 3}", "job.json:1:10: stop[F005]: 'beam' must be an object: {\"id\": {\"key\": value}}\n"},
        {"{\"beam\": {\"B1\": 3}}", "job.json:1:17: stop[F005]: 'B1' must be an object: {\"key\": value}\n"},
        {"{\"buy\": {\"a\": {\"price\": 01}}}",
         "job.json:1:25: stop[F005]: not a number as JSON writes it; a value with a unit is a text: \"12 ft 6 in\"\n"},
        {"{\"buy\": {\"a\": {\"price\": 1.}}}",
         "job.json:1:25: stop[F005]: not a number as JSON writes it; a value with a unit is a text: \"12 ft 6 in\"\n"},
        {"{\"buy\": {\"a\": {\"price\": 1e400}}}",
         "job.json:1:25: stop[F005]: not a number as JSON writes it; a value with a unit is a text: \"12 ft 6 in\"\n"},
        {"{\"buy\": {\"a\": {\"price\": 12 ft}}}", "job.json:1:28: stop[F005]: no ',' or '}' after this value\n"},
        {"{\"job\": {\"name\": \"a\\u0000b\"}}",
         "job.json:1:20: stop[F005]: control character in a text; delete the escape\n"},
        {"{\"job\": {\"name\": \"a\\nb\"}}",
         "job.json:1:20: stop[F005]: control character in a text; delete the escape\n"},
        {"{\"job\": {\"name\": \"a\tb\"}}", "job.json:1:20: stop[F005]: tab in a text; write a blank\n"},
        {"{\"job\": {\"name\": \"\\ud800\"}}",
         "job.json:1:19: stop[F005]: half of a surrogate pair in a text; write the character itself\n"},
        {"{\"job\": {\"name\": \"\\q\"}}",
         "job.json:1:19: stop[F005]: unknown escape in a text; write \\\" for \" and \\\\ for \\\n"},
        {"{\"job\": {\"name\": \"9\"\"}}",
         "job.json:1:21: stop[F005]: text goes on after its closing '\"'; an inch mark in it is written \\\"\n"},
        {"{\"job\": {\"name\": \"x\n\"}}",
         "job.json:1:18: stop[F005]: text without its closing '\"' on the same line; an inch mark in it is written "
         "\\\"\n"},
        {"{\"job\": {\"name\": 'x'}}",
         "job.json:1:18: stop[F005]: no value here; texts stand in double quotes: \"post P1\"\n"},
        {"{\"job\": {\"name\": \"x\",}}",
         "job.json:1:22: stop[F005]: a key in double quotes must stand here; no comma after the last one\n"},
        {"{\"job\" {}}", "job.json:1:8: stop[F005]: no ':' between key and value\n"},
        {"{\"job\": {}} x", "job.json:1:13: stop[F005]: text after the end of the job; delete it\n"},
        {"{\"job\": {}\n", "job.json:2:1: stop[F005]: no ',' or '}' after this value\n"},
        {"{\"job\": {\"scope\": [\"a\" \"b\"]}}", "job.json:1:24: stop[F005]: no ',' or ']' after this value\n"},
    };
    size_t failed = 0;
    for (size_t i = 0; i < sizeof bad / sizeof *bad; i++) {
        struct diags diags;
        (void)read_entries(*state, "job.json", bad[i].text, &diags);
        const char *got = messages(*state, &diags);
        if (strcmp(got, bad[i].want) != 0)
            print_error("case %zu:\ngot:\n%swant:\n%s", failed++, got, bad[i].want);
    }
    assert_int_equal(failed, 0);
}

/* 64 levels are read, 65 refused before anything recurses on them. */
static void deep_nesting(void **state)
{
    struct buffer out = {.arena = *state};
    buffer_add(&out, "{\"job\": {\"name\": ");
    for (int i = 0; i < 62; i++)
        buffer_add(&out, "[");
    buffer_add(&out, "1");
    struct diags diags;
    (void)read_entries(*state, "job.json", buffer_text(&out), &diags);
    assert_string_equal(messages(*state, &diags), "job.json:1:80: stop[F005]: nested deeper than 64; a job is {kind: "
                                                  "{id: {key: value}}}\n");
}

static void far_too_much(void **state)
{
    struct buffer out = {.arena = *state};
    buffer_add(&out, "{\"job\": {\"scope\": [");
    for (int i = 0; i < 20000; i++)
        buffer_add(&out, "1,");
    buffer_add(&out, "1]}}");
    struct diags diags;
    (void)read_entries(*state, "job.json", buffer_text(&out), &diags);
    assert_int_equal(diags.count, 1);
    assert_int_equal(diags.item[0].class, DIAG_STOP);
}

/* The checks after the list know one job: the same faults, each with its own place. */
static void faults_have_pointers(void **state)
{
    static const char json[] =
        "{\"beem\": {\"B1\": {\"plies\": 3}},\n"
        " \"sub\": {\"roofer\": {\"what\": \"all\", \"price\": \"12 psf\", \"clas\": \"subs\"}}}";
    struct diags diags;
    (void)read_text(*state, "job.json", json, strlen(json), &diags);
    assert_string_equal(
        messages(*state, &diags),
        "job.json: stop[K004]: no [job] section; a job needs it: the job as a whole\n"
        "job.json: stop[K004]: no [bid] section; a job needs it: how cost becomes a price\n"
        "job.json:1:2: stop[K001]: unknown kind 'beem'; did you mean 'beam'?\n"
        "job.json:2:45: stop[K008]: '12 psf' for 'price' is a load on an area (psf, kPa); it takes a sum of money, "
        "such as $680.00\n"
        "job.json:2:55: stop[K002]: unknown key 'clas' in [sub roofer]; did you mean 'class'?\n");
    assert_string_equal(diags.item[2].at.pointer, "/beem");
    assert_string_equal(diags.item[3].at.pointer, "/sub/roofer/price");
    assert_string_equal(diags.item[4].at.pointer, "/sub/roofer/clas");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(both_spellings_are_one_job, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(places_and_pointers, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(refused, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(deep_nesting, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(far_too_much, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(faults_have_pointers, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
