/* Small builders over cJSON. */
#include "json_parts.h"

#include <math.h>

#include "sawbill/text.h"
#include "load_shown.h"

static cJSON *put(struct json *json, cJSON *parent, const char *key, cJSON *item)
{
    bool added = false;
    if (parent && item)
        added = key ? cJSON_AddItemToObject(parent, key, item) : cJSON_AddItemToArray(parent, item);
    if (added)
        return item;
    cJSON_Delete(item);
    json->failed = true;
    return NULL;
}

cJSON *json_object(struct json *json, cJSON *parent, const char *key)
{
    return put(json, parent, key, cJSON_CreateObject());
}

cJSON *json_array(struct json *json, cJSON *parent, const char *key)
{
    return put(json, parent, key, cJSON_CreateArray());
}

void json_text(struct json *json, cJSON *parent, const char *key, const char *text)
{
    put(json, parent, key, text ? cJSON_CreateString(text) : cJSON_CreateNull());
}

void json_bool(struct json *json, cJSON *parent, const char *key, bool value)
{
    put(json, parent, key, cJSON_CreateBool(value));
}

void json_integer(struct json *json, cJSON *parent, const char *key, long long value)
{
    put(json, parent, key, cJSON_CreateRaw(arena_printf(json->arena, "%lld", value)));
}

void json_number(struct json *json, cJSON *parent, const char *key, double value, int decimals)
{
    put(json, parent, key,
        isfinite(value) ? cJSON_CreateRaw(number_text(json->arena, value, decimals)) : cJSON_CreateNull());
}

void json_ratio(struct json *json, cJSON *parent, const char *key, double ratio)
{
    /* up, so that what is above 1 reads so; what ratio_holds() lets pass is 1 */
    json_number(json, parent, key, ceil(ratio * 1e6 - 1e-3) / 1e6, 6);
}

void json_money(struct json *json, cJSON *parent, const char *key, money_t value)
{
    json_text(json, parent, key, money_text(json->arena, value));
}

void json_percent(struct json *json, cJSON *parent, const char *key, percent_t value)
{
    json_text(json, parent, key, decimal_text(json->arena, value)); /* the same steps of 1/10,000 */
}

void json_decimal(struct json *json, cJSON *parent, const char *key, decimal_t value)
{
    json_text(json, parent, key, decimal_text(json->arena, value));
}

void json_length(struct json *json, cJSON *parent, const char *key, length_t value)
{
    json_number(json, parent, arena_printf(json->arena, "%s_in", key), length_inches(value), 6);
    json_text(json, parent, arena_printf(json->arena, "%s_text", key), length_tape(json->arena, value));
}

void json_lengths(struct json *json, cJSON *parent, const char *key, const length_t *length, size_t count)
{
    cJSON *inches = json_array(json, parent, arena_printf(json->arena, "%s_in", key));
    cJSON *texts = json_array(json, parent, arena_printf(json->arena, "%s_text", key));
    for (size_t i = 0; i < count; i++) {
        json_number(json, inches, NULL, length_inches(length[i]), 6);
        json_text(json, texts, NULL, length_tape(json->arena, length[i]));
    }
}

void json_place(struct json *json, cJSON *parent, double at_in)
{
    json_number(json, parent, "at_in", at_in, 4);
    json_text(json, parent, "at_text", isfinite(at_in) ? length_tape(json->arena, length_from_inches(at_in)) : NULL);
}

void json_texts(struct json *json, cJSON *parent, const char *key, const char *const *text, size_t count)
{
    cJSON *list = json_array(json, parent, key);
    for (size_t i = 0; i < count; i++)
        json_text(json, list, NULL, text[i]);
}

void json_loads(struct json *json, cJSON *parent, const char *unit, const struct loads *loads)
{
    static const char *const name[SHOWN_LOADS] = {"dead", "live", "attic_live", "roof_live", "snow"};
    for (int i = 0; i < SHOWN_LOADS; i++)
        json_number(json, parent, arena_printf(json->arena, "%s_%s", name[i], unit), load_shown(loads, i), 3);
}
