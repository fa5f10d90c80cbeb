/* JSON through cJSON: {"kind": {"id": {"key": value}}}, kinds with one instance without the id.
 *
 * cJSON gives structure and decoded texts; the places and the source text of numbers come from the scan, whose nodes
 * stand in the same order as cJSON's items. */

#include <cjson/cJSON.h>

#include "job_internal.h"

struct walk {
    struct reading *reading;
    const struct json_index *index;
    const char *kind, *id, *kind_as, *id_as; /* of the section that is read */
    int line_of[KIND_COUNT];                 /* where a kind with ids stood first */
};

/* RFC 6901: parent, '/' and the key with ~ and / escaped. */
static const char *json_pointer(struct arena *arena, const char *parent, const char *key)
{
    struct buffer out = {.arena = arena};
    buffer_add(&out, parent);
    buffer_add(&out, "/");
    for (size_t i = 0; key[i]; i++) {
        if (key[i] == '~')
            buffer_add(&out, "~0");
        else if (key[i] == '/')
            buffer_add(&out, "~1");
        else
            buffer_add_n(&out, key + i, 1);
    }
    return buffer_text(&out);
}

static struct place value_place(const struct walk *walk, const struct json_node *node, const char *pointer)
{
    return (struct place){.file = walk->reading->file, .line = node->line, .column = node->column, .pointer = pointer};
}

static struct place key_place(const struct walk *walk, const struct json_node *node, const char *pointer)
{
    if (!node->key_line)
        return value_place(walk, node, pointer);
    return (struct place){
        .file = walk->reading->file, .line = node->key_line, .column = node->key_column, .pointer = pointer};
}

/* The number of the node after this one and all that it holds. */
static size_t after_node(const struct walk *walk, size_t number)
{
    const struct json_node *node = &walk->index->node[number];
    size_t end = node->from + node->length;
    while (++number < walk->index->count)
        if (walk->index->node[number].from >= end)
            break;
    return number;
}

static const char *value_text(const struct walk *walk, const cJSON *item, const struct json_node *node)
{
    struct arena *arena = walk->reading->arena;
    if (node->is == JSON_STRING)
        return text_trim(arena, item->valuestring);
    if (node->is == JSON_NUMBER)
        return arena_strndup(arena, walk->reading->text + node->from, node->length);
    return cJSON_IsTrue(item) ? "yes" : "no";
}

/* One value of a key: a text, a number or true/false becomes an entry. */
static void take_value(const struct walk *walk, const cJSON *item, const char *key, size_t number,
                       const struct place *key_at, const char *pointer)
{
    struct arena *arena = walk->reading->arena;
    const struct json_node *node = &walk->index->node[number];
    struct place at = value_place(walk, node, pointer);
    if (cJSON_IsNull(item) || cJSON_IsObject(item) || cJSON_IsArray(item)) {
        diag_add(walk->reading->diags, DIAG_F005, &at, "'%s' is %s; a value is a text, a number, true or false", key,
                 cJSON_IsNull(item)     ? "null, which says nothing (leave the key out)"
                 : cJSON_IsObject(item) ? "an object"
                                        : "a list in a list");
        return;
    }
    entry_add(arena, walk->reading->out,
              (struct entry){.kind = walk->kind,
                             .id = walk->id,
                             .key = name_fold(arena, key),
                             .value = value_text(walk, item, node),
                             .kind_as = walk->kind_as,
                             .id_as = walk->id_as,
                             .key_as = arena_strdup(arena, key),
                             .at = at,
                             .key_at = *key_at});
}

/* A key may repeat: its list becomes one entry each. */
static void take_key(const struct walk *walk, const cJSON *item, size_t number, const char *parent)
{
    struct arena *arena = walk->reading->arena;
    const struct json_node *node = &walk->index->node[number];
    const char *pointer = json_pointer(arena, parent, item->string);
    struct place key_at = key_place(walk, node, pointer);
    if (!cJSON_IsArray(item)) {
        take_value(walk, item, item->string, number, &key_at, pointer);
        return;
    }
    if (!item->child) {
        struct place at = value_place(walk, node, pointer);
        diag_add(walk->reading->diags, DIAG_K015, &at, "'%s' is an empty list; write a value or take the key out",
                 item->string);
    }
    size_t child = number + 1;
    int place = 0;
    for (const cJSON *one = item->child; one; one = one->next) {
        struct place at = value_place(walk, &walk->index->node[child], pointer);
        take_value(walk, one, item->string, child, place == 0 ? &key_at : &at,
                   arena_printf(arena, "%s/%d", pointer, place));
        child = after_node(walk, child);
        place++;
    }
}

/* An object of keys: the section, and what stands in it. */
static void take_section(struct walk *walk, enum kind kind, const cJSON *item, size_t number, const char *pointer)
{
    const struct json_node *node = &walk->index->node[number];
    struct place at = key_place(walk, node, pointer);
    if (!cJSON_IsObject(item)) {
        at = value_place(walk, node, pointer);
        diag_add(walk->reading->diags, DIAG_F005, &at, "'%s' must be an object: %s", item->string,
                 *walk->id || !kind_has_id(kind) ? "{\"key\": value}" : "{\"id\": {\"key\": value}}");
        return;
    }
    entry_add(walk->reading->arena, walk->reading->out,
              (struct entry){.kind = walk->kind,
                             .id = walk->id,
                             .kind_as = walk->kind_as,
                             .id_as = walk->id_as,
                             .at = at,
                             .key_at = at});
    size_t child = number + 1;
    for (const cJSON *key = item->child; key; key = key->next) {
        take_key(walk, key, child, pointer);
        child = after_node(walk, child);
    }
}

static void report_twice(struct walk *walk, enum kind kind, const struct json_node *node, const char *pointer)
{
    struct place at = key_place(walk, node, pointer);
    if (walk->line_of[kind])
        diag_add(walk->reading->diags, DIAG_K003, &at,
                 "'%s' stands twice; the first is on line %d, put its ids together", walk->kind_as,
                 walk->line_of[kind]);
    else
        walk->line_of[kind] = node->key_line;
}

static void take_kind(struct walk *walk, const cJSON *item, size_t number)
{
    struct arena *arena = walk->reading->arena;
    const char *pointer = json_pointer(arena, "", item->string);
    enum kind kind = KIND_JOB;
    bool known = kind_find(item->string, &kind);
    walk->kind_as = arena_strdup(arena, item->string);
    walk->kind = name_fold(arena, item->string);
    walk->id = "";
    walk->id_as = "";
    if (!known) {
        /* Reported by the check; what an unknown kind holds says nothing. */
        struct place at = key_place(walk, &walk->index->node[number], pointer);
        entry_add(arena, walk->reading->out,
                  (struct entry){
                      .kind = walk->kind, .id = "", .kind_as = walk->kind_as, .id_as = "", .at = at, .key_at = at});
        return;
    }
    if (!kind_has_id(kind) || !cJSON_IsObject(item)) {
        take_section(walk, kind, item, number, pointer);
        return;
    }
    report_twice(walk, kind, &walk->index->node[number], pointer);
    size_t child = number + 1;
    for (const cJSON *section = item->child; section; section = section->next) {
        walk->id_as = text_trim(arena, section->string);
        walk->id = name_fold(arena, section->string);
        take_section(walk, kind, section, child, json_pointer(arena, pointer, section->string));
        child = after_node(walk, child);
    }
}

void read_json(struct reading *reading)
{
    struct json_index index = {0};
    if (!json_scan(reading, &index))
        return;
    const char *end = NULL;
    cJSON *root = cJSON_ParseWithLengthOpts(reading->text, reading->length, &end, 0);
    if (!root) {
        const struct place whole = {.file = reading->file};
        diag_add(reading->diags, DIAG_F005, &whole, "not JSON, near byte %zu",
                 end ? (size_t)(end - reading->text) + 1 : 1);
        return;
    }
    struct walk walk = {.reading = reading, .index = &index};
    size_t number = 1;
    for (const cJSON *kind = root->child; kind; kind = kind->next) {
        take_kind(&walk, kind, number);
        number = after_node(&walk, number);
    }
    cJSON_Delete(root);
}
