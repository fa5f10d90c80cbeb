/* The crew's sheets in JSON: items in their order, each row of a table an object. */
#include "json_parts.h"

#include "field.h"

static void add_cell(struct json *json, cJSON *row, const struct field_column *column, const struct field_cell *cell)
{
    switch (column->value) {
    case FIELD_TEXT:
        json_text(json, row, column->key, cell->text);
        return;
    case FIELD_NUMBER:
        json_number(json, row, column->key, cell->number, 3);
        return;
    case FIELD_LENGTH:
        json_number(json, row, arena_printf(json->arena, "%s_in", column->key), cell->number, 6);
        json_text(json, row, arena_printf(json->arena, "%s_text", column->key), cell->text);
        return;
    case FIELD_LENGTHS:
        json_lengths(json, row, column->key, cell->length, cell->count);
        return;
    }
}

static void add_table(struct json *json, cJSON *item, const struct field_table *table)
{
    json_text(json, item, "table", table->key);
    json_text(json, item, "title", table->title);
    cJSON *rows = json_array(json, item, "rows");
    for (size_t i = 0; i < table->rows; i++) {
        cJSON *row = json_object(json, rows, NULL);
        for (size_t k = 0; k < table->columns; k++)
            add_cell(json, row, &table->column[k], &table->row[i][k]);
    }
}

static void add_item(struct json *json, cJSON *list, const struct field_item *item)
{
    static const char *const is[] = {"say", "tick", "stop", "table"};
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "is", is[item->is]);
    if (item->is == FIELD_TABLE)
        add_table(json, row, item->table);
    else
        json_text(json, row, "text", item->text);
}

static void add_part(struct json *json, cJSON *list, const struct field_part *part)
{
    cJSON *row = json_object(json, list, NULL);
    json_text(json, row, "part", part->key);
    json_text(json, row, "title", part->title);
    cJSON *items = json_array(json, row, "items");
    for (size_t i = 0; i < part->count; i++)
        add_item(json, items, &part->item[i]);
}

void json_field(struct json *json, cJSON *root, const struct report *report)
{
    struct field field = field_of(json->arena, report);
    cJSON *sheets = json_array(json, root, "sheets");
    for (size_t i = 0; i < field.count; i++) {
        cJSON *sheet = json_object(json, sheets, NULL);
        json_text(json, sheet, "sheet", field.sheet[i].id);
        json_text(json, sheet, "title", field.sheet[i].title);
        cJSON *parts = json_array(json, sheet, "parts");
        for (size_t k = 0; k < field.sheet[i].count; k++)
            add_part(json, parts, &field.sheet[i].part[k]);
    }
}
