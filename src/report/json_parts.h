/* Small builders over cJSON that remember a failure, so that no half-built object is ever printed. */
#ifndef SAWBILL_REPORT_JSON_PARTS_H
#define SAWBILL_REPORT_JSON_PARTS_H

#include <cjson/cJSON.h>

#include "sawbill/report.h"

struct json {
    struct arena *arena; /* for texts on their way */
    bool failed;         /* cJSON ran out of memory */
};

/* A child of `parent`: owned by it.  NULL, with failed set, when memory ran out; all calls below take NULL. */
cJSON *json_object(struct json *json, cJSON *parent, const char *key); /* key NULL: an element of an array */
cJSON *json_array(struct json *json, cJSON *parent, const char *key);
/* NULL text is null. */
void json_text(struct json *json, cJSON *parent, const char *key, const char *text);
void json_bool(struct json *json, cJSON *parent, const char *key, bool value);
void json_integer(struct json *json, cJSON *parent, const char *key, long long value);
/* Locale-proof; what is not finite is null. */
void json_number(struct json *json, cJSON *parent, const char *key, double value, int decimals);
/* Rounded up at the sixth place: never toward the safe side. */
void json_ratio(struct json *json, cJSON *parent, const char *key, double ratio);
/* Exact decimals: money, percent and counts as strings of digits, "1234.50", "8.25", "12". */
void json_money(struct json *json, cJSON *parent, const char *key, money_t value);
void json_percent(struct json *json, cJSON *parent, const char *key, percent_t value);
void json_decimal(struct json *json, cJSON *parent, const char *key, decimal_t value);
/* KEY_in: a number; KEY_text: the tape beside it. */
void json_length(struct json *json, cJSON *parent, const char *key, length_t value);
/* at_in, at_text; null where there is no place. */
void json_place(struct json *json, cJSON *parent, double at_in);
void json_texts(struct json *json, cJSON *parent, const char *key, const char *const *text, size_t count);
/* dead_UNIT, live_UNIT, roof_live_UNIT, snow_UNIT */
void json_loads(struct json *json, cJSON *parent, const char *unit, const struct loads *loads);

/* json_design.c */
void json_design(struct json *json, cJSON *root, const struct design *design);
/* json_money.c */
void json_takeoff(struct json *json, cJSON *root, const struct job *job, const struct takeoff *takeoff);
void json_order(struct json *json, cJSON *root, const struct run *run);
void json_estimate(struct json *json, cJSON *root, const struct estimate *estimate);
void json_bid(struct json *json, cJSON *root, const struct report *report, const struct estimate *estimate);
void json_compare(struct json *json, cJSON *root, const struct outcome *outcome);
/* json_layout.c: where joists are cut and ply fasteners driven */
void json_layout(struct json *json, cJSON *root, const struct takeoff *takeoff);
/* json_field.c */
void json_field(struct json *json, cJSON *root, const struct report *report);
/* Lists KEY_in and KEY_text. */
void json_lengths(struct json *json, cJSON *parent, const char *key, const length_t *length, size_t count);
/* json_cuts.c */
void json_cuts(struct json *json, cJSON *root, struct cut_plan *const *plan, size_t count);
/* The object as text with an indent of two blanks, and a newline; NULL when memory ran out. */
char *json_print(struct json *json, cJSON *root);

#endif
