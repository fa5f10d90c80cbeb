/* The INI spelling: what becomes of each line, where it stood, and what is refused before it is bent in silence. */
#include "job_support.h"

static struct entries read_entries(struct arena *arena, const char *text, size_t length, struct diags *diags)
{
    struct entries entries;
    *diags = (struct diags){.arena = arena};
    entries_read(arena, "job.ini", text, length, &entries, diags);
    return entries;
}

static void lines_become_entries(void **state)
{
    static const char text[] = "; a comment\n"
                               "# another, with = and [brackets]\n"
                               "\n"
                               "[Beam  North_1]\n"
                               "Clear_Span\t=\t14' 6-1/2\"  \n"
                               "member=LVL-9.5;A\n"
                               "sheet = S1 # as built\n"
                               "[roof]\n"
                               "\t\n"
                               "[sub roofer]\n"
                               "what = M\xC3\xBCller: shingles = all";
    struct diags diags;
    struct entries got = read_entries(*state, text, strlen(text), &diags);
    assert_int_equal(diags.count, 0);
    assert_int_equal(got.count, 7);

    const struct entry *section = &got.item[0];
    assert_string_equal(section->kind, "beam");
    assert_string_equal(section->id, "north 1");
    assert_string_equal(section->kind_as, "Beam");
    assert_string_equal(section->id_as, "North_1");
    assert_null(section->key);
    assert_int_equal(section->key_at.line, 4);
    assert_int_equal(section->key_at.column, 1);

    const struct entry *span = &got.item[1];
    assert_string_equal(span->key, "clear span");
    assert_string_equal(span->key_as, "Clear_Span");
    assert_string_equal(span->value, "14' 6-1/2\"");
    assert_int_equal(span->key_at.line, 5);
    assert_int_equal(span->key_at.column, 1);
    assert_int_equal(span->at.column, 14);
    assert_string_equal(span->at.file, "job.ini");
    assert_null(span->at.pointer);

    assert_string_equal(got.item[2].value, "LVL-9.5;A"); /* no blank before ';': it is text */
    assert_int_equal(got.item[2].at.column, 8);
    assert_string_equal(got.item[3].value, "S1 # as built");

    assert_string_equal(got.item[4].kind, "roof"); /* an empty section is there */
    assert_string_equal(got.item[4].id, "");
    assert_null(got.item[4].key);
    assert_int_equal(got.item[4].key_at.line, 8);

    assert_string_equal(got.item[6].value, "M\xC3\xBCller: shingles = all");
    assert_int_equal(got.item[6].at.line, 11);
}

/* The mark and Windows line ends change nothing; columns count code points. */
static void marks_and_line_ends(void **state)
{
    static const char plain[] = "[sub \xC2\xBD]\nwhat = \xE2\x80\x9Cwide\xE2\x80\x9D\n[beam B1]\nplies\xC2\xA0= 3\n";
    static const char marked[] =
        "\xEF\xBB\xBF[sub \xC2\xBD]\r\nwhat = \xE2\x80\x9Cwide\xE2\x80\x9D\r\n[beam B1]\r\nplies\xC2\xA0= 3\r\n";
    struct diags diags;
    struct entries a = read_entries(*state, plain, strlen(plain), &diags);
    struct entries b = read_entries(*state, marked, strlen(marked), &diags);
    assert_int_equal(diags.count, 0);
    assert_int_equal(a.count, 4);
    assert_int_equal(b.count, a.count);
    for (size_t i = 0; i < a.count; i++) {
        assert_string_equal(a.item[i].kind, b.item[i].kind);
        assert_string_equal(a.item[i].id, b.item[i].id);
        assert_int_equal(a.item[i].at.line, b.item[i].at.line);
        assert_int_equal(a.item[i].at.column, b.item[i].at.column);
        if (a.item[i].key)
            assert_string_equal(a.item[i].value, b.item[i].value);
    }
    assert_int_equal(a.item[3].at.column, 9); /* plies, a no-break blank, "= " */
}

struct bad {
    const char *text;
    size_t length; /* 0: to the first NUL */
    const char *want;
};

static void refused(void **state)
{
    static const struct bad bad[] = {
        {"[job]\n name = x\n", 0,
         "job.ini:2:1: stop[F005]: line starts with a blank, so it would join the line before; start it in column 1\n"},
        {"[job]\nname = x\n [beam B1]\nplies = 3\n", 0,
         "job.ini:3:1: stop[F005]: line starts with a blank, so it would join the line before; start it in column 1\n"},
        {"[job]\nname = x ; y\n", 0,
         "job.ini:2:10: stop[F005]: ' ;' in a line: a comment stands on a line of its own; in a value write ','\n"},
        {"[job]\nname = ;\n", 0,
         "job.ini:2:8: stop[F005]: ' ;' in a line: a comment stands on a line of its own; in a value write ','\n"},
        {"[job]\nname\n", 0,
         "job.ini:2:1: stop[F005]: no '=' in this line; write 'key = value', and start a comment with ';'\n"},
        {"[job]\nname: x\n", 0, "job.ini:2:5: stop[F005]: ':' after a key; write '=' between key and value\n"},
        {"[job]\n= x\n", 0, "job.ini:2:1: stop[F005]: no key before '='; write 'key = value'\n"},
        {"name = x\n", 0, "job.ini:1:1: stop[F005]: a key before the first section; start with [job]\n"},
        {"[job\nname = x\n", 0, "job.ini:1:1: stop[F005]: no ']' at the end of the section; write [kind id]\n"},
        {"[]\nname = x\n", 0, "job.ini:1:1: stop[F005]: section without a kind; write [kind id], such as [beam B1]\n"},
        {"[job] name = x\n", 0,
         "job.ini:1:7: stop[F005]: text after ']'; a section stands on a line of its own, and so does a comment\n"},
        {"[alternate 0123456789 0123456789 0123456789 0123456789]\n", 0,
         "job.ini:1:1: stop[F004]: section longer than 49 letters; shorten the id\n"},
        {"[job]\rname = x\r", 0,
         "job.ini: stop[F005]: lines end in CR alone; save the file with line ends LF or CR LF (Unix or Windows)\n"},
        {"[job]\nname = x\ry\n", 0,
         "job.ini:2:9: stop[F003]: a CR in the middle of a line may not stand in a job file; delete the character\n"},
        {"[job]\nname = x\0y\n", 17,
         "job.ini:2:9: stop[F003]: a NUL byte may not stand in a job file; delete the character\n"},
        {"[job]\nname = \x1B[31m\n", 0,
         "job.ini:2:8: stop[F003]: the control character 0x1B may not stand in a job file; delete the character\n"},
        {"[job]\nname = caf\xE9\n", 0,
         "job.ini:2:11: stop[F002]: byte 0xE9 is not UTF-8, so the file is in another encoding, such as Windows-1252; "
         "save it as UTF-8 (in the editor's 'save as')\n"},
        {"\xFF\xFE[\0j\0o\0b\0]\0", 12,
         "job.ini: stop[F002]: file is UTF-16; save it as UTF-8 (in the editor's 'save as')\n"},
        {"[\0j\0o\0b\0]\0", 10, "job.ini: stop[F002]: file is UTF-16; save it as UTF-8 (in the editor's 'save as')\n"},
        {"\n\t\n", 0, "job.ini: stop[F005]: file is empty; 'sawbill new' writes one to start from\n"},
    };
    for (size_t i = 0; i < sizeof bad / sizeof *bad; i++) {
        struct diags diags;
        (void)read_entries(*state, bad[i].text, bad[i].length ? bad[i].length : strlen(bad[i].text), &diags);
        const char *got = messages(*state, &diags);
        if (strcmp(got, bad[i].want) != 0)
            fail_msg("case %zu:\ngot:\n%swant:\n%s", i, got, bad[i].want);
    }
}

static char *line_of(struct arena *arena, size_t length)
{
    struct buffer out = {.arena = arena};
    buffer_add(&out, "[job]\nname = ");
    for (size_t i = 7; i < length; i++)
        buffer_add(&out, "x");
    buffer_add(&out, "\nnumber = 7\n");
    return out.text;
}

/* A long line is refused whole: its tail never becomes a line, and the lines below keep their numbers. */
static void long_lines(void **state)
{
    struct diags diags;
    const char *text = line_of(*state, 190);
    struct entries got = read_entries(*state, text, strlen(text), &diags);
    assert_int_equal(diags.count, 0);
    assert_int_equal(strlen(got.item[1].value), 183);

    text = line_of(*state, 191);
    got = read_entries(*state, text, strlen(text), &diags);
    assert_string_equal(messages(*state, &diags),
                        "job.ini:2:1: stop[F004]: line of 191 bytes, at most 190; shorten it, "
                        "or split it over a key that may repeat\n");
    assert_int_equal(got.count, 2);
    assert_string_equal(got.item[1].key, "number");
    assert_int_equal(got.item[1].at.line, 3);

    /* A comment may be as long as it likes, whatever its tail looks like. */
    text = arena_printf(*state, "[job]\n;%0300d plies = 3\nnumber = 7\n", 0);
    got = read_entries(*state, text, strlen(text), &diags);
    assert_int_equal(diags.count, 0);
    assert_int_equal(got.count, 2);
}

/* A fault of form hides no other fault, and asks nothing that was perhaps only not read. */
static void broken_form_asks_nothing(void **state)
{
    struct diags diags;
    char *text = edited(*state, "above = nothing\n", "above nothing\n");
    (void)read_text(*state, "job.ini", text, strlen(text), &diags);
    assert_string_equal(
        messages(*state, &diags),
        "job.ini:54:1: stop[F005]: no '=' in this line; write 'key = value', and start a comment with ';'\n");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(lines_become_entries, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(marks_and_line_ends, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(refused, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(long_lines, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(broken_form_asks_nothing, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
