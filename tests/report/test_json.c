/* The JSON object, parsed back. */
#include <locale.h>

#include <cjson/cJSON.h>

#include "built_report.h"

static cJSON *parse(const char *text)
{
    assert_non_null(text);
    assert_int_equal(text[strlen(text) - 1], '\n');
    const char *end = NULL;
    cJSON *root = cJSON_ParseWithLengthOpts(text, strlen(text) + 1, &end, 1);
    if (!root)
        print_error("not JSON at: %.60s\n", end ? end : "?");
    assert_non_null(root);
    return root;
}

/* A path of keys and indices: "design.members.0.checks.0.ratio". */
static const cJSON *at(const cJSON *item, const char *path)
{
    char key[64];
    const char *rest = path;
    while (item && *rest) {
        size_t length = strcspn(rest, ".");
        assert_true(length < sizeof key);
        memcpy(key, rest, length);
        key[length] = '\0';
        item = cJSON_IsArray(item) ? cJSON_GetArrayItem(item, (int)strtol(key, NULL, 10))
                                   : cJSON_GetObjectItemCaseSensitive(item, key);
        rest += length + (rest[length] == '.');
    }
    if (!item)
        print_error("nothing at %s\n", path);
    assert_non_null(item);
    return item;
}

static const char *text_at(const cJSON *root, const char *path)
{
    const char *text = cJSON_GetStringValue(at(root, path));
    assert_non_null(text);
    return text;
}

static double number_at(const cJSON *root, const char *path)
{
    const cJSON *item = at(root, path);
    assert_true(cJSON_IsNumber(item));
    return item->valuedouble;
}

static void keys_stand_in_the_documented_order(void **state)
{
    static const char *const keys[] = {
        "format",  "job",     "messages",  "design",      "takeoff", "debris", "usually_forgotten",
        "returns", "raising", "cut_lines", "ply_layouts", "cuts",    "order",  "estimate",
        "bid",     "compare", "cautions"};
    const struct built *b = built_report(*state);
    cJSON *root = parse(report_json(*state, &b->report));
    const cJSON *item = root->child;
    for (size_t i = 0; i < sizeof keys / sizeof keys[0]; i++, item = item->next) {
        assert_non_null(item);
        assert_string_equal(item->string, keys[i]);
    }
    assert_null(item);
    assert_string_equal(text_at(root, "format"), "sawbill 1");
    cJSON_Delete(root);
}

static void values_are_exact(void **state)
{
    const struct built *b = built_report(*state);
    cJSON *root = parse(report_json(*state, &b->report));
    assert_string_equal(text_at(root, "job.name"), "Larch Lane: a wall ½ way");
    assert_string_equal(text_at(root, "job.date"), "2026-10-12");
    assert_true(cJSON_IsNull(at(root, "job.client")));
    assert_string_equal(text_at(root, "bid.price"), "1234567.89");
    assert_true(cJSON_IsFalse(at(root, "bid.signable")));
    assert_string_equal(text_at(root, "bid.draws.0.percent"), "30");
    assert_string_equal(text_at(root, "estimate.totals.direct"), "151.49");
    assert_string_equal(text_at(root, "order.suppliers.0.tax_percent"), "7");
    assert_string_equal(text_at(root, "cuts.sticks.2.pieces.1.length_text"), "9-1/4\"");
    assert_near(number_at(root, "cuts.sticks.2.pieces.1.length_in"), 9.25, 0);
    assert_string_equal(text_at(root, "cuts.verdict"), "proved optimal");
    assert_near(number_at(root, "design.load_path.3.snow_lb"), 12345, 0);
    assert_near(number_at(root, "design.load_path.1.live_lb"), 875.1, 1e-9); /* 800 of floors, 75.1 of an attic */
    assert_near(number_at(root, "design.load_path.1.attic_live_lb"), 75.1, 1e-9);
    assert_near(number_at(root, "design.load_path.0.dead_lb"), 700.5, 0);
    assert_true(cJSON_IsNull(at(root, "design.load_path.0.at_in")));
    assert_near(number_at(root, "design.load_path.3.at_in"), 124, 0);
    assert_near(number_at(root, "raising.0.beam_lb"), 118.8, 1e-9);
    assert_near(number_at(root, "raising.0.shrinkage_in"), 0.254, 1e-9);
    assert_true(cJSON_IsTrue(at(root, "raising.0.way_in.0.goes")));
    assert_true(cJSON_IsNull(at(root, "raising.0.way_in.1.has_in"))); /* not measured: no answer */
    assert_null(cJSON_GetObjectItemCaseSensitive(at(root, "raising.0.way_in.1"), "goes"));
    assert_true(cJSON_IsTrue(at(root, "compare.0.chosen")));
    assert_true(cJSON_IsNull(at(root, "compare.2.price")));
    assert_string_equal(text_at(root, "cautions.0"), caution_text());
    cJSON_Delete(root);
}

/* Two joists of a side: one stands above the line, one hangs below it and is doubled. */
static void joists_one_by_one(void **state)
{
    const struct built *b = built_report(*state);
    const struct hanger hanger = {.code = "HNG-X"};
    const struct joists joists = {.head = {.id = "north"}};
    struct joist_end ends[] = {
        {.at = 7 * LENGTH_INCH, .width = 13 * LENGTH_INCH / 8, .off_line = LENGTH_INCH / 4, .hanger = &hanger},
        {.at = 23 * LENGTH_INCH, .off_line = -3 * LENGTH_INCH / 8, .doubled = true}};
    length_t place[] = {ends[0].at, ends[1].at};
    struct joist_design side = {.joists = &joists, .place = place, .end = ends, .count = 2};
    struct design design = *b->report.outcome->run->design;
    design.joists = &side;
    design.joists_count = 1;
    struct run run = *b->report.outcome->run;
    run.design = &design;
    struct outcome outcome = *b->report.outcome;
    outcome.run = &run;
    struct report report = b->report;
    report.outcome = &outcome;
    cJSON *root = parse(report_json(*state, &report));
    assert_near(number_at(root, "design.joists.0.ends.0.width_in"), 1.625, 0);
    assert_near(number_at(root, "design.joists.0.ends.0.off_line_in"), 0.25, 0);
    assert_string_equal(text_at(root, "design.joists.0.ends.0.hanger"), "HNG-X");
    assert_string_equal(text_at(root, "design.joists.0.ends.1.off_line_text"), "-3/8\"");
    assert_true(cJSON_IsTrue(at(root, "design.joists.0.ends.1.doubled")));
    assert_true(cJSON_IsNull(at(root, "design.joists.0.ends.1.hanger")));
    cJSON_Delete(root);
}

static void messages_keep_their_place(void **state)
{
    const struct built *b = built_report(*state);
    cJSON *root = parse(report_json(*state, &b->report));
    assert_string_equal(text_at(root, "messages.0.class"), "ask");
    assert_string_equal(text_at(root, "messages.0.code"), "Q004");
    assert_string_equal(text_at(root, "messages.0.file"), "larch.ini");
    assert_near(number_at(root, "messages.0.line"), 7, 0);
    assert_near(number_at(root, "messages.0.column"), 3, 0);
    assert_true(cJSON_IsNull(at(root, "messages.0.pointer")));
    cJSON_Delete(root);
}

/* Above 1 by less than the printed places must not read as 1. */
static void ratios_round_up(void **state)
{
    struct built *b = built_report(*state);
    b->ours.check[0].ratio = 1.00000001;
    b->ours.check[1].ratio = INFINITY;
    b->theirs.check[0].ratio = 0.92;
    cJSON *root = parse(report_json(*state, &b->report));
    assert_true(number_at(root, "design.members.0.checks.0.ratio") > 1);
    assert_string_equal(text_at(root, "design.members.0.checks.0.ratio_text"), "1.01");
    assert_string_equal(text_at(root, "design.members.0.checks.0.design_values"), "book A");
    assert_string_equal(text_at(root, "design.members.0.checks.2.design_values"), "");
    assert_string_equal(text_at(root, "design.members.1.checks.0.design_values"), "report B, unverified");
    assert_true(cJSON_IsNull(at(root, "design.members.0.checks.1.ratio")));
    assert_true(cJSON_IsFalse(at(root, "design.members.0.passes")));
    assert_true(cJSON_IsNull(at(root, "design.members.1.passes"))); /* an engineer's: never a verdict of ours */
    assert_true(cJSON_IsTrue(at(root, "design.members.1.specified")));
    assert_true(cJSON_IsNull(at(root, "design.members.2.passes"))); /* nor of an end of his */
    assert_true(cJSON_IsTrue(at(root, "design.members.2.specified")));
    cJSON_Delete(root);
}

static void board_feet_of_the_order(void **state)
{
    struct built *b = built_report(*state);
    cJSON *root = parse(report_json(*state, &b->report));
    assert_null(cJSON_GetObjectItemCaseSensitive(at(root, "order.lines.0"), "board_feet"));
    cJSON_Delete(root);
    b->order.line[0].board_feet = 80 * DECIMAL_ONE; /* three 2x10 of 16 ft */
    root = parse(report_json(*state, &b->report));
    assert_string_equal(text_at(root, "order.lines.0.board_feet"), "80");
    cJSON_Delete(root);
    assert_non_null(strstr(report_order(*state, &b->report, false, 0), "Board feet"));
}

static void a_stop_leaves_messages_only(void **state)
{
    struct built *b = built_report(*state);
    b->report.outcome = NULL;
    cJSON *root = parse(report_json(*state, &b->report));
    assert_int_equal(cJSON_GetArraySize(root), 4);
    assert_int_equal(cJSON_GetArraySize(at(root, "messages")), 1);
    assert_string_equal(text_at(root, "cautions.0"), caution_text());
    cJSON_Delete(root);
    struct outcome stopped = {0};
    b->report.outcome = &stopped; /* a stop inside the stages: an outcome without a run */
    root = parse(report_json(*state, &b->report));
    assert_int_equal(cJSON_GetArraySize(root), 4);
    cJSON_Delete(root);
    b->report.job = NULL;
    root = parse(report_json(*state, &b->report));
    assert_int_equal(cJSON_GetArraySize(root), 4);
    cJSON_Delete(root);
}

static void budget_has_no_order(void **state)
{
    struct built *b = built_report(*state);
    b->job.facts.status.choice = STATUS_BUDGET;
    cJSON *root = parse(report_json(*state, &b->report));
    assert_null(cJSON_GetObjectItemCaseSensitive(root, "order"));
    assert_string_equal(text_at(root, "job.status"), "budget");
    cJSON_Delete(root);
}

static void layout_is_two_blanks_without_tabs(void **state)
{
    struct built *b = built_report(*state);
    b->job.facts.number.text = "a\tb";
    const char *text = report_json(*state, &b->report);
    assert_null(strchr(text, '\t'));
    assert_non_null(strstr(text, "{\n  \"format\": \"sawbill 1\",\n  \"job\": {\n    \"name\": "));
    assert_non_null(strstr(text, "\"a\\tb\""));
    assert_string_equal(text, report_json(*state, &b->report));
}

/* A caller may have set a comma for the decimal point. */
static void numbers_ignore_the_locale(void **state)
{
    static const char *const comma[] = {"de_DE.UTF-8", "de_DE.utf8", "fr_FR.UTF-8", "it_IT.UTF-8", "es_ES.UTF-8"};
    const struct built *b = built_report(*state);
    const char *plain = report_json(*state, &b->report);
    bool set = false;
    for (size_t i = 0; i < sizeof comma / sizeof comma[0] && !set; i++)
        set = setlocale(LC_NUMERIC, comma[i]) != NULL;
    if (!set)
        skip();
    const char *under = report_json(*state, &b->report);
    setlocale(LC_NUMERIC, "C");
    assert_string_equal(under, plain);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
#define TEST(name) cmocka_unit_test_setup_teardown(name, support_setup, support_teardown)
        TEST(keys_stand_in_the_documented_order),
        TEST(values_are_exact),
        TEST(messages_keep_their_place),
        TEST(ratios_round_up),
        TEST(board_feet_of_the_order),
        TEST(a_stop_leaves_messages_only),
        TEST(budget_has_no_order),
        TEST(joists_one_by_one),
        TEST(layout_is_two_blanks_without_tabs),
        TEST(numbers_ignore_the_locale),
#undef TEST
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
