/* A ratio above 1 never reads 1.00, and one that holds never reads as a failure, in anything that is put out. */
#include <cjson/cJSON.h>

#include "packages.h"
#include "samples.h"
#include "size/made_job.h"

/* `text` with every `from` in it made `to`. */
static const char *replaced(struct arena *arena, const char *text, const char *from, const char *to)
{
    struct buffer out = {.arena = arena};
    const char *at = strstr(text, from);
    assert_non_null(at);
    for (; at; text = at + strlen(from), at = strstr(text, from)) {
        buffer_add_n(&out, text, (size_t)(at - text));
        buffer_add(&out, to);
    }
    buffer_add(&out, text);
    return buffer_text(&out);
}

/* The plain job with so much live load on its floor; its shores' plates from lumber that comes long enough. */
static const char *with_live(struct arena *arena, double psf)
{
    const char *studs = "studs = SPF-STUD-2X4\n";
    const char *text = replaced(arena, plain_job, studs, arena_printf(arena, "%splates = SPF2-2X4\n", studs));
    return replaced(arena, text, "live = 40 psf", arena_printf(arena, "live = %s psf", number_text(arena, psf, 6)));
}

static double bending(struct arena *arena, const char *text)
{
    struct diags diags = {.arena = arena};
    struct entries entries = {0};
    entries_read(arena, "test.ini", text, strlen(text), &entries, &diags);
    const struct job *job = job_check(arena, "test.ini", &entries, &diags);
    const struct catalog *catalog = catalog_read(arena, CATALOGS, NULL, &diags);
    const struct design *design = size_job(arena, job, catalog, NULL, &diags);
    assert_string_equal(design->members[2]->id, "beam B1");
    assert_string_equal(design->members[2]->check[0].name, "bending");
    return design->members[2]->check[0].ratio;
}

/* The same at which bending has the ratio 1.0004: it is linear in the load while D+L governs. */
static const char *just_over_text(struct arena *arena)
{
    double at40 = bending(arena, with_live(arena, 40)), at140 = bending(arena, with_live(arena, 140));
    const char *text = with_live(arena, 40 + 100 * (1.0004 - at40) / (at140 - at40));
    assert_near(bending(arena, text), 1.0004, 1e-6);
    return text;
}

/* Tokens that are just this, not part of another number or of "more than 1.00". */
static size_t tokens(const char *text, const char *token)
{
    size_t count = 0, length = strlen(token);
    for (const char *at = strstr(text, token); at; at = strstr(at + 1, token)) {
        bool begins = at == text || strchr(" \n(=", at[-1]), ends = strchr(" \n),:;", at[length]) != NULL;
        bool phrase =
            (at - text >= 5 && !memcmp(at - 5, "than ", 5)) || (at - text >= 5 && !memcmp(at - 5, "over ", 5));
        count += begins && ends && !phrase;
    }
    return count;
}

/* Every check, stage and candidate of the run reads this ratio; what else prints one, or a 1.00, is taken away. */
static size_t set_ratios(struct result *result, double ratio)
{
    size_t count = 0;
    const struct design *design = result->outcome->run->design;
    for (size_t i = 0; i < design->member_count; i++) {
        struct member_checks *member = design->members[i];
        member->passes = ratio_holds(ratio);
        for (size_t k = 0; k < member->count; k++) {
            struct check *check = &member->check[k];
            *check = (struct check){check->name, check->clause, "D+L", NAN, 700, 500, "lb", ratio, k == 0, NULL, ""};
            count++;
        }
    }
    for (size_t i = 0; i < design->stage_count; i++)
        design->stage[i].ratio = ratio;
    for (size_t i = 0; i < result->outcome->candidate_count; i++)
        result->outcome->candidate[i].ratio = ratio;
    result->diags.count = 0;
    return count;
}

static void assert_json(struct arena *arena, const struct report *report, const char *shown, bool holds, size_t count)
{
    cJSON *root = cJSON_Parse(report_json(arena, report));
    assert_non_null(root);
    const cJSON *member, *check, *candidate;
    const cJSON *design = cJSON_GetObjectItemCaseSensitive(root, "design");
    size_t seen = 0;
    cJSON_ArrayForEach(member, cJSON_GetObjectItemCaseSensitive(design, "members"))
    {
        assert_int_equal(cJSON_IsTrue(cJSON_GetObjectItemCaseSensitive(member, "passes")), holds);
        cJSON_ArrayForEach(check, cJSON_GetObjectItemCaseSensitive(member, "checks"))
        {
            const char *text = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(check, "ratio_text"));
            assert_string_equal(text, shown);
            assert_int_equal(cJSON_GetObjectItemCaseSensitive(check, "ratio")->valuedouble <= 1, holds);
            seen++;
        }
    }
    cJSON_ArrayForEach(candidate, cJSON_GetObjectItemCaseSensitive(root, "compare"))
    {
        assert_int_equal(cJSON_GetObjectItemCaseSensitive(candidate, "ratio")->valuedouble <= 1, holds);
    }
    assert_int_equal(seen, count);
    cJSON_Delete(root);
}

static size_t count_of(const char *text, const char *part)
{
    size_t count = 0;
    for (const char *at = strstr(text, part); at; at = strstr(at + 1, part))
        count++;
    return count;
}

static void assert_workbooks(struct arena *arena, const struct report *report, const char *shown, bool holds,
                             size_t count)
{
    const char *folder = new_folder(arena), *written = NULL, *client = NULL, *why = NULL;
    assert_int_equal(report_workbook(arena, report, arena_printf(arena, "%s/bid.xlsx", folder), &written, &why),
                     WRITE_DONE);
    assert_int_equal(report_client(arena, report, arena_printf(arena, "%s/client.xlsx", folder), &client, &why),
                     WRITE_DONE);
    const char *texts = part_of(arena, written, "xl/sharedStrings.xml");
    assert_int_equal(strstr(texts, "FAILS") == NULL, holds);
    assert_int_equal(strstr(texts, "<t>passes</t>") != NULL, holds);
    assert_int_equal(strstr(texts, ": ratio 1.01 (") == NULL, holds);
    assert_null(strstr(texts, ": ratio 1.00 ("));
    /* the ratio column of the Design sheet, the only one with a cell of its own for each check */
    size_t most = 0;
    const char *number = holds && !strcmp(shown, "1.00") ? "1" : shown;
    for (int sheet = 1; sheet <= 10; sheet++) {
        const char *part = part_of(arena, written, arena_printf(arena, "xl/worksheets/sheet%d.xml", sheet));
        size_t found = count_of(part, arena_printf(arena, "<v>%s</v>", number));
        most = found > most ? found : most;
    }
    assert_true(most >= count);
    assert_null(strstr(part_of(arena, client, "xl/sharedStrings.xml"), "atio"));
}

static void assert_outputs(struct arena *arena, struct result *result, double ratio)
{
    size_t count = set_ratios(result, ratio);
    bool holds = ratio_holds(ratio);
    const char *shown = holds ? "1.00" : "1.01", *other = holds ? "1.01" : "1.00";
    struct report report = report_of(result);
    report.signable = holds;
    const char *check = report_check(arena, &report, false, 200), *bid = report_bid(arena, &report, false, 200);
    assert_true(tokens(check, shown) >= count);
    assert_int_equal(tokens(check, other), 0);
    assert_int_equal(strstr(check, "FAILS") == NULL, holds);
    assert_true(tokens(bid, shown) > 0);
    assert_int_equal(tokens(bid, other), 0);
    assert_int_equal(strstr(bid, "DOES NOT HOLD") == NULL, holds);
    assert_json(arena, &report, shown, holds, count);
    assert_workbooks(arena, &report, shown, holds, count);
}

static void every_output_rounds_up(void **state)
{
    struct result *result = run_text(*state, "test.ini", just_over_text(*state));
    assert_non_null(result->outcome);
    assert_int_equal(diag_count(&result->diags, DIAG_STOP), 0);
    static const double ratios[] = {1.004, 1.00999, 1.0000001, 1 + 2e-9, 1 + 5e-10, 1, 0.9901};
    for (size_t i = 0; i < sizeof ratios / sizeof *ratios; i++)
        assert_outputs(*state, result, ratios[i]);
}

/* What sizing itself says, and what the comparison of members says of it. */
static void messages_round_up(void **state)
{
    const struct result *result = run_text(*state, "test.ini", just_over_text(*state));
    size_t said = 0;
    for (size_t i = 0; i < result->diags.count; i++) {
        assert_null(strstr(result->diags.item[i].text, "ratio 1.00"));
        said += strstr(result->diags.item[i].text, "beam B1 fails in bending: ratio 1.01 (D+L)") != NULL;
    }
    assert_int_equal(said, 1);
    struct report report = report_of(result);
    const char *check = report_check(*state, &report, false, 200);
    assert_non_null(strstr(check, "DOES NOT HOLD, greatest ratio 1.01"));
    assert_non_null(strstr(report_bid(*state, &report, false, 200), "ratio 1.01, more than 1.00"));
}

/* The one member that may be chosen is just too weak. */
static void comparison_rounds_up(void **state)
{
    struct arena *arena = *state;
    const char *chosen = "choose = yes\nmaterial = Douglas Fir-Larch\nmost plies = 3\nmost depth = 9-1/4 in\n";
    const char *text = replaced(arena, just_over_text(arena), "member = DFL2-2X10\nplies = 3\n", chosen);
    const struct result *result = run_text(arena, "test.ini", text);
    assert_non_null(result->outcome);
    struct report report = report_of(result);
    const char *compare = report_compare(arena, &report, false, 200);
    assert_true(tokens(compare, "1.01") > 0);
    assert_int_equal(tokens(compare, "1.00"), 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(every_output_rounds_up, support_setup, packages_teardown),
        cmocka_unit_test_setup_teardown(messages_round_up, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(comparison_rounds_up, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
