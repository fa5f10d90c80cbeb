/* The certificate of cut plans: what another program needs to check them.  report.h documents it. */
#include "json_parts.h"

static void add_places(struct json *json, cJSON *parent, const char *key, const struct cut_joints *joints,
                       unsigned mask)
{
    cJSON *list = json_array(json, parent, key);
    for (size_t i = 0; i < joints->count; i++)
        if (mask >> i & 1U)
            json_integer(json, list, NULL, joints->at[i]);
}

static void add_pieces(struct json *json, cJSON *parent, const struct cut_problem *problem)
{
    cJSON *list = json_array(json, parent, "pieces");
    for (size_t i = 0; i < problem->piece_count; i++) {
        cJSON *row = json_object(json, list, NULL);
        json_text(json, row, "label", problem->piece[i].label);
        json_integer(json, row, "length", problem->piece[i].length);
        json_integer(json, row, "count", problem->piece[i].count);
        for (size_t k = 0; k < problem->joints_count; k++)
            if (problem->joints[k].piece == i)
                add_places(json, row, "joints", &problem->joints[k], ~0U);
    }
}

static void add_stock(struct json *json, cJSON *parent, const struct cut_problem *problem)
{
    cJSON *list = json_array(json, parent, "stock");
    for (size_t i = 0; i < problem->stock_count; i++) {
        const struct cut_stock *stock = &problem->stock[i];
        cJSON *row = json_object(json, list, NULL);
        json_integer(json, row, "length", stock->length);
        json_integer(json, row, "usable", cut_usable_length(problem, stock));
        json_integer(json, row, "cost", stock->cost);
        if (stock->supply > 0)
            json_integer(json, row, "supply", stock->supply);
        else
            json_text(json, row, "supply", NULL);
    }
}

static void add_joined(struct json *json, cJSON *parent, const struct cut_plan *plan)
{
    cJSON *list = json_array(json, parent, "joined");
    for (size_t i = 0; plan->joined && i < plan->problem->joints_count; i++) {
        cJSON *row = json_object(json, list, NULL);
        json_integer(json, row, "piece", (long long)plan->problem->joints[i].piece);
        add_places(json, row, "at", &plan->problem->joints[i], plan->joined[i]);
    }
}

static void add_sticks(struct json *json, cJSON *parent, const struct cut_plan *plan)
{
    cJSON *list = json_array(json, parent, "sticks");
    for (size_t i = 0; i < plan->stick_count; i++) {
        const struct cut_stick *stick = &plan->stick[i];
        int times = cut_count_alike(plan, i);
        if (times == 0)
            continue;
        cJSON *row = json_object(json, list, NULL);
        json_integer(json, row, "stock", (long long)(stick->stock - plan->problem->stock));
        json_integer(json, row, "times", times);
        cJSON *pieces = json_array(json, row, "pieces");
        for (size_t k = 0; k < stick->part_count; k++) {
            cJSON *piece = json_object(json, pieces, NULL);
            json_text(json, piece, "label", stick->part[k].label);
            json_integer(json, piece, "length", stick->part[k].length);
        }
        json_integer(json, row, "cutoff", stick->left);
    }
}

/* The masks of one way of joining, counted up. */
static void add_way(struct json *json, cJSON *parent, const struct cut_problem *problem, size_t way)
{
    cJSON *list = json_array(json, parent, "joined");
    for (size_t i = 0; i < problem->joints_count; i++) {
        const struct cut_joints *joints = &problem->joints[i];
        cJSON *row = json_object(json, list, NULL);
        json_integer(json, row, "piece", (long long)joints->piece);
        add_places(json, row, "at", joints, (unsigned)(way & (((size_t)1 << joints->count) - 1)));
        way >>= joints->count;
    }
}

static void add_proof(struct json *json, cJSON *list, const struct cut_plan *plan, size_t way)
{
    const struct cut_proof *proof = &plan->proof[way];
    cJSON *row = json_object(json, list, NULL);
    add_way(json, row, plan->problem, way);
    json_integer(json, row, "scale", proof->scale);
    cJSON *values = json_array(json, row, "values");
    for (size_t i = 0; i < proof->value_count; i++) {
        cJSON *value = json_object(json, values, NULL);
        json_integer(json, value, "length", proof->value[i].length);
        json_integer(json, value, "value", proof->value[i].value);
    }
    cJSON *extra = json_array(json, row, "extra");
    for (size_t i = 0; proof->extra && i < plan->problem->stock_count; i++)
        json_integer(json, extra, NULL, proof->extra[i]);
    json_integer(json, row, "bound", proof->bound);
}

static void add_problem(struct json *json, cJSON *list, const struct cut_plan *plan)
{
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "member", plan->problem->member);
    json_integer(json, row, "cost", plan->cost);
    json_integer(json, row, "bound", plan->bound);
    json_integer(json, row, "certified", plan->certified);
    json_text(json, row, "verdict", plan->verdict);
    json_bool(json, row, "searched", plan->searched);
    json_bool(json, row, "rounded", plan->rounded);
    json_integer(json, row, "kerf", plan->problem->kerf);
    json_bool(json, row, "square_both_ends", plan->problem->square_both_ends);
    add_pieces(json, row, plan->problem);
    add_stock(json, row, plan->problem);
    add_joined(json, row, plan);
    add_sticks(json, row, plan);
    cJSON *proofs = json_array(json, row, "proofs");
    for (size_t way = 0; way < plan->proof_count; way++)
        add_proof(json, proofs, plan, way);
}

char *report_certificate(struct arena *arena, struct cut_plan *const *plan, size_t count)
{
    struct json json = {.arena = arena};
    cJSON *root = cJSON_CreateObject();
    if (!root)
        return NULL;
    json_text(&json, root, "format", "sawbill cuts 1");
    json_text(&json, root, "length_unit_in", "1/1016000");
    json_text(&json, root, "money_unit_dollars", "1/10000");
    cJSON *problems = json_array(&json, root, "problems");
    for (size_t i = 0; i < count; i++)
        add_problem(&json, problems, plan[i]);
    char *text = json_print(&json, root);
    cJSON_Delete(root);
    return text;
}
