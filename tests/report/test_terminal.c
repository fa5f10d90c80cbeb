/* What the terminal reports say and how they stand, on a report built by hand. */
#include <ctype.h>

#include "built_report.h"
#include "sawbill/text.h"
#include "../../src/report/terminal.h"

typedef char *show_fn(struct arena *arena, const struct report *report, bool color, int width);
static show_fn *const shows[] = {report_bid, report_check, report_compare, report_cuts, report_order, report_field};
enum { SHOWS = sizeof shows / sizeof shows[0] };

static void assert_says(const char *text, const char *what)
{
    if (strstr(text, what))
        return;
    print_error("missing '%s' in:\n%s\n", what, text);
    fail();
}

static void assert_silent(const char *text, const char *what)
{
    if (!strstr(text, what))
        return;
    print_error("found '%s' in:\n%s\n", what, text);
    fail();
}

/* The line that holds `what`, copied. */
static char *line_with(struct arena *arena, const char *text, const char *what)
{
    const char *at = strstr(text, what);
    assert_non_null(at);
    const char *start = at;
    while (start > text && start[-1] != '\n')
        start--;
    return arena_strndup(arena, start, strcspn(start, "\n"));
}

static size_t longest_line(const char *text)
{
    size_t longest = 0;
    while (*text) {
        size_t length = strcspn(text, "\n");
        size_t columns = utf8_count(text, length);
        longest = columns > longest ? columns : longest;
        text += length + (text[length] == '\n');
    }
    return longest;
}

static void stays_within_the_width(void **state)
{
    struct arena *arena = *state;
    const struct built *b = built_report(arena);
    for (int width = 80; width <= 160; width += 16)
        for (size_t i = 0; i < SHOWS; i++) {
            const char *text = shows[i](arena, &b->report, false, width);
            if (longest_line(text) > (size_t)width)
                print_error("wider than %d:\n%s\n", width, text);
            assert_true(longest_line(text) <= (size_t)width);
            assert_int_equal(utf8_check(text, strlen(text)), strlen(text));
            assert_silent(text, " \n"); /* no blanks at a line's end */
        }
}

/* Takes SGR sequences out; any other escape fails. */
static char *without_color(struct arena *arena, const char *text, size_t *taken)
{
    struct buffer out = {.arena = arena};
    for (const char *c = text; *c;) {
        if (*c != '\033') {
            buffer_add_n(&out, c++, 1);
            continue;
        }
        assert_true(!strncmp(c, "\033[0m", 4) || !strncmp(c, "\033[1m", 4) || !strncmp(c, "\033[2m", 4));
        c += 4;
        ++*taken;
    }
    return out.text;
}

static void color_adds_weight_and_nothing_else(void **state)
{
    struct arena *arena = *state;
    const struct built *b = built_report(arena);
    for (size_t i = 0; i < SHOWS; i++) {
        size_t taken = 0;
        const char *plain = shows[i](arena, &b->report, false, 100);
        const char *colored = shows[i](arena, &b->report, true, 100);
        assert_silent(plain, "\033");
        assert_string_equal(without_color(arena, colored, &taken), plain);
        assert_true(taken > 0);
    }
}

static void every_report_carries_the_caution(void **state)
{
    struct arena *arena = *state;
    const struct built *b = built_report(arena);
    assert_says(caution_text(), "local code, a permit and a licensed professional");
    for (size_t i = 0; i < SHOWS; i++)
        assert_says(shows[i](arena, &b->report, false, 400), caution_text());
}

static void bid_says_price_and_why_it_is_not_to_sign(void **state)
{
    struct arena *arena = *state;
    struct built *b = built_report(arena);
    const char *text = report_bid(arena, &b->report, false, 100);
    assert_says(text, "Larch Lane: a wall ½ way");
    assert_says(text, "NOT FOR SIGNATURE: 1 open question; a check fails");
    assert_says(text, "Q004: 'wall W1' may brace the house");
    assert_says(text, "$1,234,567.89");
    assert_says(text, "good until 2026-11-11"); /* 30 days after 2026-10-12 */
    assert_says(line_with(arena, text, "materials"), "$151.49");
    assert_says(line_with(arena, text, "on signing"), "30 %");
    assert_says(line_with(arena, text, "rounding    "), "$0.70");
    assert_says(line_with(arena, text, "3 - DFL2-2X10"), "1.01"); /* 1.004 rounds up, never toward safe */
    assert_says(line_with(arena, text, "3 - DFL2-2X10"), "DOES NOT HOLD");
    assert_says(line_with(arena, text, "cheaper"), "deduct $123.00");
    assert_says(line_with(arena, text, "weaker"), "add $45.00, a check fails");
    assert_says(line_with(arena, text, "unpriced"), "not priced");
    assert_says(text, "- beam parlor: bending under D+L: ratio 1.01, more than 1.00");
    b->ours.check[1] =
        (struct check){.name = "tie", .combination = "D", .ratio = INFINITY, .note = "no strap is named"};
    assert_says(report_bid(arena, &b->report, false, 100), "- beam parlor: tie under D: no strap is named");
    b->ours.check[1].ratio = 0.4;
    b->report.signable = true;
    b->diags.count = 0;
    b->ours.passes = true;
    b->design.passes = true;
    assert_silent(report_bid(arena, &b->report, false, 100), "NOT FOR SIGNATURE");
}

static void budget_is_marked_and_orders_nothing(void **state)
{
    struct arena *arena = *state;
    struct built *b = built_report(arena);
    b->job.facts.status.choice = STATUS_BUDGET;
    b->diags = (struct diags){.arena = arena, .assume = true};
    diag_add(&b->diags, DIAG_Q004, NULL, "the wall does not brace the house");
    const char *text = report_bid(arena, &b->report, false, 100);
    assert_says(text, "BUDGET");
    assert_says(text, "assumed: the wall does not brace the house");
    text = report_order(arena, &b->report, false, 100);
    assert_says(text, "no order: the job is a budget");
    assert_silent(text, "DFL2-2X10");
}

static void engineers_member_never_passes(void **state)
{
    struct arena *arena = *state;
    struct built *b = built_report(arena);
    for (int over = 0; over < 2; over++) {
        b->theirs.check[0].ratio = over ? 1.07 : 0.92;
        char *text = report_check(arena, &b->report, false, 100);
        assert_says(text,
                    over ? "as specified; our check r = 1.07: ask the engineer" : "as specified; our check r = 0.92");
        const char *from = strstr(text, "beam long: 3 - LVL-9.5"), *to = strstr(text, "Not checked");
        assert_non_null(from);
        assert_non_null(to);
        char *block = arena_strndup(arena, from, (size_t)(to - from));
        for (char *c = block; *c; c++)
            *c = (char)tolower((unsigned char)*c);
        assert_silent(block, "pass");
        assert_silent(block, "hold");
        assert_silent(block, "fail");
        assert_says(line_with(arena, report_bid(arena, &b->report, false, 120), "3 - LVL-9.5"), "as specified");
    }
}

static void check_shows_path_and_worst_combination(void **state)
{
    struct arena *arena = *state;
    const struct built *b = built_report(arena);
    const char *text = report_check(arena, &b->report, false, 130);
    const char *ground = strstr(text, "footing F1"), *post = strstr(text, "post P1"),
               *beam = strstr(text, "└─ beam parlor"), *joists = strstr(text, "└─ joists north");
    assert_true(ground && post && beam && joists && ground < post && post < beam && beam < joists);
    assert_says(line_with(arena, text, "└─ joists north"), "701  1,750");
    assert_says(line_with(arena, text, "└─ joists north"), "2,451"); /* 700.5 + 1750.2 */
    assert_says(text, "post P2");
    assert_says(text, "12,345");
    assert_says(text, "(its loads stand above)");
    char *bending = line_with(arena, text, "bending");
    assert_says(bending, "D+L");
    assert_says(bending, "1.01");
    assert_says(bending, "FAILS, governs");
    assert_says(bending, "[book A]");
    assert_says(bending, "5' 2\""); /* 62 in */
    assert_silent(text, "0.45");    /* the lighter combination of the same check */
    assert_says(text, "- vibration");
    assert_says(text, "a ply weighs 40 lb, the beam 119 lb; raised ply by ply it takes 2 people at 50 lb each");
    assert_says(line_with(arena, text, "way into the house: a ply is 12' 0\" long"), ": it goes");
    assert_silent(line_with(arena, text, "head room to tilt it"), "goes"); /* not measured */
    assert_says(text, "- ASCE 7-16 2.4.1");
}

static void compare_prices_what_holds_and_says_why_the_rest_fails(void **state)
{
    struct arena *arena = *state;
    const struct built *b = built_report(arena);
    const char *text = report_compare(arena, &b->report, false, 100);
    assert_says(line_with(arena, text, "3 - DFL2-2X10"), "chosen");
    assert_says(line_with(arena, text, "3 - DFL2-2X10"), "0.97"); /* 0.9604 rounded up */
    assert_says(line_with(arena, text, "2 - LVL-9.5"), "$5,123.45");
    assert_says(line_with(arena, text, "2 - LVL-9.5"), "+$123.45");
    assert_says(line_with(arena, text, "2 - DFL2-2X10"), "bending 1.44");
    assert_says(text, "the job names its member");
    assert_silent(text, "not tried");
}

/* Beams of a depth or a number of plies that the job does not allow, and no studs. */
static void compare_names_what_it_does_not_try(void **state)
{
    struct arena *arena = *state;
    struct built *b = built_report(arena);
    static struct member members[] = {
        {.code = "DEEP", .material = "LVL", .use = USE_BEAM, .depth = 12 * LENGTH_INCH},
        {.code = "LOW", .material = "LVL", .use = USE_BEAM, .depth = 7 * LENGTH_INCH},
        {.code = "STUD", .material = "LVL", .use = USE_STUD, .depth = 12 * LENGTH_INCH},
    };
    b->catalog.members = members;
    b->catalog.member_count = 3;
    for (size_t i = 0; i < b->job.beam_count; i++) {
        static const struct entry written;
        b->job.beams[i].most_depth = (struct length_value){10 * LENGTH_INCH, &written};
    }
    const char *text = report_compare(arena, &b->report, false, 100);
    assert_says(text, "not tried: DEEP (deeper than 'most depth'), LOW (not in so many plies)");
    assert_silent(text, "STUD");
}

static void cuts_group_like_sticks(void **state)
{
    struct arena *arena = *state;
    const struct built *b = built_report(arena);
    const char *text = report_cuts(arena, &b->report, false, 100);
    const char *pair = line_with(arena, text, "$57.00"); /* two at $28.50 */
    assert_says(pair, "16' 0\"");
    assert_says(pair, "10' 8\" beam parlor, ply");
    assert_says(pair, "5' 3\"");
    assert_true(strspn(pair, " ") + 1 == strcspn(pair, "2") + 1);
    assert_says(text, "9-1/4\" block K1");
    assert_says(text, "cost $85.50; no plan can cost less than $85.50: proved optimal");
    assert_says(text, "kerf 1/8\"; end trim 1/2\"");
}

static void order_goes_by_supplier(void **state)
{
    struct arena *arena = *state;
    const struct built *b = built_report(arena);
    const char *text = report_order(arena, &b->report, false, 100);
    assert_says(text, "\nYard One\n");
    assert_silent(text, "Yard Two"); /* nothing is bought there */
    assert_says(line_with(arena, text, "2x10, 16 ft"), "$28.50");
    assert_says(line_with(arena, text, "tax 7 %"), "$5.99");
    assert_says(line_with(arena, text, "expected invoice"), "$151.49"); /* 85.50 + 60.00 + 5.99 */
}

static void tables_align_by_code_points_and_wrap(void **state)
{
    struct arena *arena = *state;
    static const struct column columns[] = {{"a", false, false}, {"b", true, false}, {"c", false, true}};
    struct table table = table_new(arena, columns, 3);
    const char *const first[] = {"½¼¾", "plain", "x"};
    for (size_t i = 0; i < 3; i++) {
        struct table_row *row = table_row(&table);
        row->cell[0] = first[i];
        row->cell[1] = i ? "7" : "1,234";
        row->cell[2] = i ? "end" : "a text that is longer than the room left for it on the line";
    }
    struct screen screen = screen_new(arena, false, 40);
    screen_table(&screen, &table);
    const char *text = screen_text(&screen);
    assert_says(text, "½¼¾    1,234  a text that is longer");
    assert_says(text, "\nplain      7  end\n");
    assert_says(text, "\nx          7  end\n");
    assert_true(longest_line(text) <= 40);
    assert_says(text, "\n              "); /* the wrapped rest stands under its own column */
}

static void control_characters_never_reach_the_terminal(void **state)
{
    struct arena *arena = *state;
    struct built *b = built_report(arena);
    b->job.facts.name.text = "nice\033[2J\a\xC2\x9B"
                             "2J house";
    const char *text = report_bid(arena, &b->report, false, 100);
    assert_silent(text, "\033");
    assert_silent(text, "\a");
    assert_silent(text, "\xC2\x9B");
    assert_says(text, "nice [2J");
}

static void long_words_break_rather_than_overflow(void **state)
{
    struct arena *arena = *state;
    struct screen screen = screen_new(arena, false, 40);
    char word[101] = {0};
    memset(word, 'w', 100);
    screen_bullet(&screen, word);
    const char *text = screen_text(&screen);
    assert_true(longest_line(text) <= 40);
    size_t letters = 0;
    for (const char *c = text; *c; c++)
        letters += *c == 'w';
    assert_int_equal(letters, 100);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
#define TEST(name) cmocka_unit_test_setup_teardown(name, support_setup, support_teardown)
        TEST(stays_within_the_width),
        TEST(color_adds_weight_and_nothing_else),
        TEST(every_report_carries_the_caution),
        TEST(bid_says_price_and_why_it_is_not_to_sign),
        TEST(budget_is_marked_and_orders_nothing),
        TEST(engineers_member_never_passes),
        TEST(check_shows_path_and_worst_combination),
        TEST(compare_prices_what_holds_and_says_why_the_rest_fails),
        TEST(compare_names_what_it_does_not_try),
        TEST(cuts_group_like_sticks),
        TEST(order_goes_by_supplier),
        TEST(tables_align_by_code_points_and_wrap),
        TEST(control_characters_never_reach_the_terminal),
        TEST(long_words_break_rather_than_overflow),
#undef TEST
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
