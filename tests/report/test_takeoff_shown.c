/* Every takeoff line is shown whole wherever it is shown: id, what, where, count, unit, how counted, loss, cost code.
 */
#include "packages.h"
#include "samples.h"

#include <cjson/cJSON.h>

struct shown {
    const struct result *result;
    const struct takeoff *takeoff;
    struct report report;
};

/* The parlor, with a code of its own for what the job buys. */
static struct shown shown_new(struct arena *arena)
{
    const char *text = read_sample(arena, "parlor.ini");
    const char *at = strstr(text, "[buy permit]\n");
    assert_non_null(at);
    at += strlen("[buy permit]\n");
    text = arena_printf(arena, "%.*scost code = 01-500 permits\n%s", (int)(at - text), text, at);
    struct shown shown = {.result = run_text(arena, "parlor.ini", text)};
    assert_non_null(shown.result->outcome);
    shown.takeoff = shown.result->outcome->run->takeoff;
    shown.report = report_of(shown.result);
    assert_true(shown.takeoff->count > 60);
    return shown;
}

/* Line breaks and what indents the next line are one blank. */
static char *one_line(struct arena *arena, const char *text)
{
    struct buffer out = {.arena = arena};
    for (; *text; text++)
        if (*text != ' ' && *text != '\n')
            buffer_add_n(&out, text, 1);
        else if (out.length && out.text[out.length - 1] != ' ')
            buffer_add(&out, " ");
    return arena_strdup(arena, buffer_text(&out));
}

static void on_the_terminal(void **state)
{
    struct arena *arena = *state;
    struct shown shown = shown_new(arena);
    const char *wide = one_line(arena, report_takeoff(arena, &shown.report, false, 400));
    for (size_t i = 0; i < shown.takeoff->count; i++) {
        const struct takeoff_line *line = &shown.takeoff->line[i];
        const char *head = arena_printf(arena, " %s: %s %s", line->id, decimal_text(arena, line->count), line->unit);
        const char *at = strstr(wide, one_line(arena, head));
        if (!at) {
            fail_msg("not shown: %s", head);
            return;
        }
        const char *loss = takeoff_loss(arena, shown.report.job, line);
        decimal_t feet = takeoff_board_feet(line);
        const char *rest =
            arena_printf(arena, "; where: %s; counted: %s%s%s%s%s%s%s%s%s%s", line->where, line->counted,
                         line->pounds ? "; weighs " : "", line->pounds ? decimal_text(arena, line->pounds) : "",
                         line->pounds ? " lb" : "", feet ? "; " : "", feet ? board_feet_text(arena, feet) : "",
                         *loss ? "; loss: " : "", loss, *line->cost_code ? "; code: " : "", line->cost_code);
        const char *found = strstr(at, one_line(arena, rest));
        const char *what = strstr(at, one_line(arena, line->what));
        if (!found)
            print_error("not shown: %s\n", rest);
        assert_non_null(found);
        assert_true(what && what < found);
    }
}

/* An empty text is null there. */
static const char *text_of(const cJSON *row, const char *name)
{
    const cJSON *item = cJSON_GetObjectItemCaseSensitive(row, name);
    if (cJSON_IsNull(item))
        return "";
    assert_true(cJSON_IsString(item));
    return item->valuestring;
}

static void in_json(void **state)
{
    struct arena *arena = *state;
    struct shown shown = shown_new(arena);
    cJSON *root = cJSON_Parse(report_json(arena, &shown.report));
    assert_non_null(root);
    const cJSON *list = cJSON_GetObjectItemCaseSensitive(root, "takeoff");
    assert_int_equal(cJSON_GetArraySize(list), (int)shown.takeoff->count);
    size_t fasteners = 0;
    for (size_t i = 0; i < shown.takeoff->count; i++) {
        const struct takeoff_line *line = &shown.takeoff->line[i];
        const cJSON *row = cJSON_GetArrayItem(list, (int)i);
        assert_string_equal(text_of(row, "id"), line->id);
        assert_string_equal(text_of(row, "what"), line->what);
        assert_string_equal(text_of(row, "where"), line->where);
        assert_string_equal(text_of(row, "unit"), line->unit);
        assert_string_equal(text_of(row, "counted"), line->counted);
        assert_string_equal(text_of(row, "loss"), takeoff_loss(arena, shown.report.job, line));
        assert_string_equal(text_of(row, "code"), line->cost_code);
        assert_string_equal(text_of(row, "count"), decimal_text(arena, line->count));
        if (line->loss)
            assert_string_equal(text_of(row, "loss_percent"), "5"); /* the job's */
        if (line->pounds)
            assert_string_equal(text_of(row, "lb"), decimal_text(arena, line->pounds));
        fasteners += line->loss && line->pounds;
    }
    assert_true(fasteners > 10);
    cJSON_Delete(root);
}

/* Texts of a workbook stand in one part; each must be there, and the heads of their columns. */
static void in_the_workbook(void **state)
{
    struct arena *arena = *state;
    struct shown shown = shown_new(arena);
    const char *folder = new_folder(arena), *written = NULL, *why = NULL;
    const char *path = arena_printf(arena, "%s/parlor.xlsx", folder);
    assert_int_equal(report_workbook(arena, &shown.report, path, &written, &why), WRITE_DONE);
    const char *strings = part_of(arena, written, "xl/sharedStrings.xml");
    const char *const heads[] = {"Line",   "What",        "Where", "Count", "Unit",   "Each long",
                                 "Pounds", "How counted", "Loss",  "Class", "Pieces", "Your cost code"};
    for (size_t i = 0; i < sizeof heads / sizeof *heads; i++)
        assert_non_null(strstr(strings, arena_printf(arena, ">%s</t>", heads[i])));
    for (size_t i = 0; i < shown.takeoff->count; i++) {
        const struct takeoff_line *line = &shown.takeoff->line[i];
        assert_non_null(strstr(strings, arena_printf(arena, ">%s</t>", line->id)));
        assert_non_null(strstr(strings, arena_printf(arena, ">%s</t>", line->unit)));
        if (*line->cost_code)
            assert_non_null(strstr(strings, arena_printf(arena, ">%s</t>", line->cost_code)));
    }
    assert_non_null(strstr(strings, ">01-500 permits</t>"));
    assert_non_null(strstr(strings, ">in the cut plan</t>"));
    unlink(written);
    rmdir(folder);
}

/* Loss lies on nails and screws alone: hangers, straps and caps are counted one by one. */
static void loss_of_fasteners_alone(void **state)
{
    for (size_t i = 0; i < SAMPLES; i++) {
        const struct result *result = run_sample(*state, arena_printf(*state, "%s.ini", samples[i]));
        const struct takeoff *takeoff = result->outcome->run->takeoff;
        for (size_t k = 0; k < takeoff->count; k++) {
            const struct takeoff_line *line = &takeoff->line[k];
            bool fastener = line->item && line->is == LINE_ITEM && catalog_fastener_of(result->catalog, line->item);
            assert_int_equal(line->loss, fastener);
            assert_true(!fastener || !strcmp(line->unit, "each"));
        }
        const struct order *order = result->outcome->run->order;
        for (size_t k = 0; k < order->count; k++) {
            const struct order_line *line = &order->line[k];
            assert_int_equal(line->loss > 0, line->fastener != NULL);
            if (!line->fastener)
                continue;
            decimal_t sum = 0;
            for (size_t n = 0; n < takeoff->count; n++)
                if (takeoff->line[n].loss && name_same(takeoff->line[n].item, line->item))
                    sum += takeoff->line[n].count;
            assert_true(line->pieces == sum);
        }
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(on_the_terminal, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(in_json, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(in_the_workbook, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(loss_of_fasteners_alone, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
