/* sawbill keys [KIND]: the key table, as text or JSON. */
#include <string.h>

#include <cjson/cJSON.h>

#include "cli.h"
#include "sawbill/text.h"

static bool kind_asked(const char *asked, const struct key_info *key)
{
    return !asked || name_same(asked, key->kind_name);
}

static void add_key(struct buffer *out, const struct key_info *key)
{
    buffer_printf(out, "  %s: %s", key->key, key->type);
    if (key->required)
        buffer_add(out, "; required");
    if (key->repeats)
        buffer_add(out, "; may repeat");
    if (key->fallback && *key->fallback)
        buffer_printf(out, "; default %s", key->fallback);
    if (key->range && *key->range)
        buffer_printf(out, "; %s", key->range);
    buffer_printf(out, "\n      %s\n", key->help);
    for (size_t i = 0; i < key->choice_count; i++)
        buffer_printf(out, "%s%s%s", i ? ", " : "      of: ", key->choices[i], i + 1 == key->choice_count ? "\n" : "");
    buffer_printf(out, "      e.g. %s = %s\n", key->key, key->example);
}

static char *keys_text(struct arena *arena, const char *asked)
{
    struct buffer out = {.arena = arena};
    const char *last = "";
    for (size_t i = 0; i < key_count(); i++) {
        struct key_info key = key_info(i);
        if (!kind_asked(asked, &key))
            continue;
        if (strcmp(last, key.kind_name) != 0)
            buffer_printf(&out, "%s[%s]\n", *last ? "\n" : "", key.kind_name);
        last = key.kind_name;
        add_key(&out, &key);
    }
    return out.text;
}

static char *keys_json(struct arena *arena, const char *asked)
{
    cJSON *list = cJSON_CreateArray();
    for (size_t i = 0; i < key_count(); i++) {
        struct key_info key = key_info(i);
        if (!kind_asked(asked, &key))
            continue;
        cJSON *row = cJSON_CreateObject();
        cJSON_AddStringToObject(row, "kind", key.kind_name);
        cJSON_AddStringToObject(row, "key", key.key);
        cJSON_AddStringToObject(row, "type", key.type);
        cJSON_AddStringToObject(row, "unit", key.unit ? key.unit : "");
        cJSON_AddStringToObject(row, "default", key.fallback ? key.fallback : "");
        cJSON_AddStringToObject(row, "range", key.range ? key.range : "");
        cJSON_AddBoolToObject(row, "required", key.required);
        cJSON_AddBoolToObject(row, "repeats", key.repeats);
        cJSON_AddStringToObject(row, "help", key.help);
        cJSON_AddStringToObject(row, "example", key.example);
        cJSON_AddItemToArray(list, row);
    }
    char *text = cJSON_Print(list);
    cJSON_Delete(list);
    char *copy = text ? arena_printf(arena, "%s\n", text) : NULL;
    cJSON_free(text);
    return copy;
}

enum exit_status command_keys(struct arena *arena, const struct options *options)
{
    const char *asked = options->argument_count ? options->argument[0] : NULL;
    const char *names[KIND_COUNT];
    bool known = !asked;
    for (int i = 0; i < KIND_COUNT; i++) {
        names[i] = kind_name((enum kind)i);
        known = known || name_same(asked, names[i]);
    }
    if (!known) {
        const char *near = did_you_mean(arena, asked, names, KIND_COUNT);
        say("no kind '%s'%s%s%s", asked, near ? "; did you mean '" : "", near ? near : "", near ? "'?" : "");
        return EXIT_USE;
    }
    char *text = options->json ? keys_json(arena, asked) : keys_text(arena, asked);
    if (!text)
        return EXIT_FAILED;
    return put_text(arena, options, text);
}
