/* CSV as RFC 4180 has it, every cell with its place; what breaks the rules is named and the rest is read. */
#include "support.h"

#include <string.h>

#include "../../src/catalog/sheet.h"

struct parsed {
    struct sheet sheet;
    struct diags diags;
    bool ok;
};

static struct parsed parse_bytes(void **state, const char *text, size_t length)
{
    struct parsed p = {.diags = {.arena = *state}};
    p.ok = sheet_parse(*state, "x.csv", text, length, &p.sheet, &p.diags);
    return p;
}

static struct parsed parse(void **state, const char *text)
{
    return parse_bytes(state, text, strlen(text));
}

static void assert_cell(const struct parsed *p, size_t row, size_t cell, const char *text, int line, int column)
{
    assert_true(row < p->sheet.count && cell < p->sheet.row[row].count);
    const struct cell *got = &p->sheet.row[row].cell[cell];
    assert_string_equal(got->text, text);
    assert_string_equal(got->at.file, "x.csv");
    assert_int_equal(got->at.line, line);
    assert_int_equal(got->at.column, column);
}

static void assert_said(void **state, const struct parsed *p, size_t index, const char *line)
{
    assert_true(index < p->diags.count);
    assert_string_equal(diag_line(*state, &p->diags.item[index]), line);
}

static void test_places(void **state)
{
    struct parsed p = parse(state, "code,size\nA1,2x4\n  B2 ,\"2x6\"\n");
    assert_int_equal(p.diags.count, 0);
    assert_int_equal(p.sheet.count, 3);
    assert_cell(&p, 0, 1, "size", 1, 6);
    assert_cell(&p, 1, 0, "A1", 2, 1);
    assert_cell(&p, 2, 0, "B2", 3, 3);
    assert_cell(&p, 2, 1, "2x6", 3, 7);
}

/* RFC 4180 section 2, rules 5 to 7: quoted line breaks, commas and doubled quotes. */
static void test_quoted(void **state)
{
    struct parsed p = parse(state, "a,b,c\r\n\"two\r\nlines, here\",\"1/4\"\" x 6\"\" screw\",x\r\nnext,y,z");
    assert_int_equal(p.diags.count, 0);
    assert_int_equal(p.sheet.count, 3);
    assert_cell(&p, 1, 0, "two\r\nlines, here", 2, 1);
    assert_cell(&p, 1, 1, "1/4\" x 6\" screw", 3, 14);
    assert_cell(&p, 1, 2, "x", 3, 34);
    assert_cell(&p, 2, 0, "next", 4, 1);
    assert_cell(&p, 2, 2, "z", 4, 8);
}

/* Rule 2: the last row may end without a line break; every kind of line end counts one line. */
static void test_line_ends(void **state)
{
    static const char *const TEXTS[] = {"a\nb\nc", "a\r\nb\r\nc", "a\rb\rc\r", "a\n\nb"};
    for (size_t i = 0; i < 3; i++) {
        struct parsed p = parse(state, TEXTS[i]);
        assert_int_equal(p.sheet.count, 3);
        assert_cell(&p, 2, 0, "c", 3, 1);
    }
    struct parsed p = parse(state, TEXTS[3]);
    assert_int_equal(p.sheet.count, 2);
    assert_cell(&p, 1, 0, "b", 3, 1);
}

static void test_empty_cells(void **state)
{
    struct parsed p = parse(state, "a,,c\n,,\n , ,\nx,\"\",\n");
    assert_int_equal(p.sheet.count, 2); /* rows without any text carry nothing */
    assert_cell(&p, 0, 1, "", 1, 3);
    assert_cell(&p, 0, 2, "c", 1, 4);
    assert_cell(&p, 1, 1, "", 4, 3);
    assert_cell(&p, 1, 2, "", 4, 6);
}

static void test_columns_are_letters(void **state)
{
    struct parsed p = parse(state, "caf\xC3\xA9,b\n\xC2\xBD in,\xE2\x80\x99x\n");
    assert_cell(&p, 0, 1, "b", 1, 6);
    assert_cell(&p, 1, 1, "\xE2\x80\x99x", 2, 6);
}

static void test_byte_order_mark(void **state)
{
    struct parsed p = parse(state, "\xEF\xBB\xBF"
                                   "code,b\nA,B\n");
    assert_int_equal(p.diags.count, 0);
    assert_cell(&p, 0, 0, "code", 1, 1);
}

static void test_encodings(void **state)
{
    struct parsed p = parse(state, "a,b\nx,1\xBD in\n"); /* Windows-1252 one half */
    assert_false(p.ok);
    assert_said(state, &p, 0,
                "x.csv:2:4: stop[F002]: byte 0xBD is not UTF-8; save the file as CSV UTF-8 (a choice of the 'save as' "
                "dialog)");
    p = parse_bytes(state,
                    "\xFF\xFE"
                    "a\0,\0",
                    6);
    assert_false(p.ok);
    assert_said(
        state, &p, 0,
        "x.csv:1:1: stop[F002]: the file is UTF-16; save the file as CSV UTF-8 (a choice of the 'save as' dialog)");
    p = parse_bytes(state, "a,b\nc\0,d\n", 9);
    assert_false(p.ok);
    assert_said(state, &p, 0, "x.csv:2:2: stop[F003]: control character 0x00; a catalog is plain text");
}

static const char HINT[] =
    "a cell with an inch mark or a quote is put in quotes and the mark is doubled: \"1/4\"\" x 6\"\" "
    "screw\"";

static void test_inch_marks(void **state)
{
    struct parsed p = parse(state, "a,b\n1/4\" x 6\" screw,1\nok,2\n\"1/4\" x 6\" screw\",3\nlast,4\n");
    assert_int_equal(p.diags.count, 2);
    char want[256];
    snprintf(want, sizeof want, "x.csv:2:4: stop[F005]: '\"' where the cell does not end; %s", HINT);
    assert_said(state, &p, 0, want);
    snprintf(want, sizeof want, "x.csv:4:7: stop[F005]: '\"' where the cell does not end; %s", HINT);
    assert_said(state, &p, 1, want);
    assert_int_equal(p.sheet.count, 3); /* the good rows are read, so that all faults come in one run */
    assert_cell(&p, 1, 0, "ok", 3, 1);
    assert_cell(&p, 2, 0, "last", 5, 1);
}

static void test_quote_never_closed(void **state)
{
    struct parsed p = parse(state, "a,b\nx,\"open\ny,z\n");
    assert_int_equal(p.diags.count, 1);
    assert_said(state, &p, 0, "x.csv:2:3: stop[F005]: the quote that opens this cell is never closed");
    assert_int_equal(p.sheet.count, 1);
}

static void test_limits(void **state)
{
    size_t length = SHEET_MOST_BYTES + 1;
    char *text = arena_alloc(*state, length + 1);
    memset(text, 'a', length);
    struct parsed p = parse_bytes(state, text, length);
    assert_false(p.ok);
    assert_said(state, &p, 0, "x.csv: stop[F004]: file of more than 8388608 bytes; a catalog is smaller");
    p = parse_bytes(state, text, CELL_MOST_BYTES + 1);
    assert_said(state, &p, 0, "x.csv:1:1: stop[F004]: cell of 4097 bytes; at most 4096 are read");
    p = parse_bytes(state, text, CELL_MOST_BYTES);
    assert_int_equal(p.diags.count, 0);
}

static void test_unreadable(void **state)
{
    struct diags diags = {.arena = *state};
    struct sheet sheet;
    assert_false(sheet_read(*state, "nowhere/x.csv", &sheet, &diags));
    assert_false(sheet_read(*state, SOURCE_DIR, &sheet, &diags));
    assert_string_equal(diag_line(*state, &diags.item[0]), "nowhere/x.csv: stop[F001]: catalog file: no such file");
    assert_string_equal(diag_line(*state, &diags.item[1]), SOURCE_DIR ": stop[F001]: catalog file: it is a folder");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(test_places, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_quoted, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_line_ends, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_empty_cells, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_columns_are_letters, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_byte_order_mark, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_encodings, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_inch_marks, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_quote_never_closed, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_limits, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_unreadable, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
