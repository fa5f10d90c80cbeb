/* sawbill --json: the whole result as one object.  report.h documents it. */
#include "before_cutting.h"
#include "json_parts.h"

#include "sawbill/text.h"

static void add_texts(struct json *json, cJSON *parent, const char *key, const struct texts_value *texts)
{
    cJSON *list = json_array(json, parent, key);
    for (size_t i = 0; i < texts->count; i++)
        json_text(json, list, NULL, texts->item[i].text);
}

static void add_job(struct json *json, cJSON *root, const struct job *job)
{
    cJSON *object = json_object(json, root, "job");
    if (!job)
        return;
    const struct job_facts *facts = &job->facts;
    json_text(json, object, "name", facts->name.text);
    json_text(json, object, "number", facts->number.text);
    json_text(json, object, "client", facts->client.text);
    json_text(json, object, "site", facts->site.text);
    json_text(json, object, "date", facts->date.at ? date_text(json->arena, facts->date.date) : NULL);
    json_text(json, object, "status", facts->status.choice == STATUS_BUDGET ? "budget" : "bid");
    add_texts(json, object, "scope", &facts->scope);
    add_texts(json, object, "exclude", &facts->exclude);
}

static void add_message(struct json *json, cJSON *list, const struct diag *diag)
{
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "class", diag_class_name(diag->class));
    json_text(json, row, "code", diag_code_name(diag->code));
    json_text(json, row, "file", diag->at.file);
    json_integer(json, row, "line", diag->at.line);
    json_integer(json, row, "column", diag->at.column);
    json_text(json, row, "pointer", diag->at.pointer);
    json_bool(json, row, "acknowledged", diag->acknowledged);
    json_text(json, row, "text", diag->text);
}

static void add_messages(struct json *json, cJSON *root, const struct diags *diags)
{
    cJSON *list = json_array(json, root, "messages");
    for (size_t i = 0; diags && i < diags->count; i++)
        add_message(json, list, &diags->item[i]);
}

static void add_cautions(struct json *json, cJSON *root, const struct report *report)
{
    size_t count = 0;
    const char **before = report->job ? before_cutting(json->arena, report->job, &count) : NULL;
    const char **caution = arena_array(json->arena, count + 1, sizeof *caution);
    caution[0] = caution_text();
    for (size_t i = 0; i < count; i++)
        caution[i + 1] = before[i];
    json_texts(json, root, "cautions", caution, count + 1);
}

static void add_run(struct json *json, cJSON *root, const struct report *report, const struct run *run)
{
    if (run->design)
        json_design(json, root, run->design);
    if (run->takeoff) {
        json_takeoff(json, root, report->job, run->takeoff);
        json_layout(json, root, run->takeoff);
    }
    json_cuts(json, root, run->plans, run->plan_count);
    if (run->order && report->job->facts.status.choice != STATUS_BUDGET)
        json_order(json, root, run);
    if (run->estimate) {
        json_estimate(json, root, run->estimate);
        json_bid(json, root, report, run->estimate);
    }
    json_compare(json, root, report->outcome);
}

/* cJSON indents with tabs and puts one after each colon; a tab inside a string is always written \t, so every tab is
 * layout. */
static char *two_blanks(struct arena *arena, const char *text)
{
    struct buffer out = {.arena = arena};
    bool line_start = true;
    for (const char *c = text; *c; c++) {
        if (*c == '\t')
            buffer_add(&out, line_start ? "  " : " ");
        else
            buffer_add_n(&out, c, 1);
        line_start = *c == '\n' || (line_start && *c == '\t');
    }
    buffer_add(&out, "\n");
    return out.text;
}

char *json_print(struct json *json, cJSON *root)
{
    char *printed = json->failed ? NULL : cJSON_Print(root);
    char *text = printed ? two_blanks(json->arena, printed) : NULL;
    cJSON_free(printed);
    return text;
}

char *report_json(struct arena *arena, const struct report *report)
{
    struct json json = {.arena = arena};
    cJSON *root = cJSON_CreateObject();
    if (!root)
        return NULL;
    json_text(&json, root, "format", "sawbill 1");
    add_job(&json, root, report->job);
    add_messages(&json, root, report->diags);
    if (report->job && report->outcome && report->outcome->run)
        add_run(&json, root, report, report->outcome->run);
    add_cautions(&json, root, report);
    char *text = json_print(&json, root);
    cJSON_Delete(root);
    return text;
}

char *report_field_json(struct arena *arena, const struct report *report)
{
    struct json json = {.arena = arena};
    cJSON *root = cJSON_CreateObject();
    if (!root)
        return NULL;
    json_text(&json, root, "format", "sawbill field 1");
    add_job(&json, root, report->job);
    add_messages(&json, root, report->diags);
    if (report->job && report->outcome && report->outcome->run)
        json_field(&json, root, report);
    add_cautions(&json, root, report);
    char *text = json_print(&json, root);
    cJSON_Delete(root);
    return text;
}

char *report_list_json(struct arena *arena, const struct cuts_report *report)
{
    struct json json = {.arena = arena};
    cJSON *root = cJSON_CreateObject();
    if (!root)
        return NULL;
    json_text(&json, root, "format", "sawbill 1");
    add_messages(&json, root, report->diags);
    if (report->plan_count > 0)
        json_cuts(&json, root, report->plan, report->plan_count);
    char *text = json_print(&json, root);
    cJSON_Delete(root);
    return text;
}
