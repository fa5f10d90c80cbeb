/* Reads sets of cutting problems. */
#include "cut_sets.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { LINE_ROOM = 8192 };

static struct cut_instance *add_instance(struct arena *arena, struct cut_set *set, const char *name)
{
    set->instance = arena_more(arena, set->instance, set->count, &set->room, sizeof *set->instance);
    struct cut_instance *instance = &set->instance[set->count++];
    *instance = (struct cut_instance){.name = arena_strdup(arena, name), .optimum = -1};
    return instance;
}

static void add_stock(struct arena *arena, struct cut_instance *instance, char *text)
{
    struct form *form = &instance->form;
    instance->stock =
        arena_more(arena, instance->stock, form->stock_count, &instance->stock_room, sizeof *instance->stock);
    struct form_stock *stock = &instance->stock[form->stock_count++];
    stock->length = strtoll(text, &text, 10);
    stock->cost = strtoll(text, &text, 10);
    stock->supply = strtoll(text, &text, 10);
    form->stock = instance->stock;
}

static void add_items(struct arena *arena, struct cut_instance *instance, char *text)
{
    struct form *form = &instance->form;
    for (char *word = strtok_r(text, " ", &text); word; word = strtok_r(NULL, " ", &text)) {
        char *end;
        int64_t length = strtoll(word, &end, 10);
        int64_t count = *end == 'x' ? strtoll(end + 1, NULL, 10) : 1;
        instance->type =
            arena_more(arena, instance->type, form->type_count, &instance->type_room, sizeof *instance->type);
        instance->type[form->type_count++] = (struct form_type){length, count};
        form->type = instance->type;
    }
}

/* A line without the blanks at its ends; NULL: there is no more. */
static char *read_line(FILE *file, char *line)
{
    if (!fgets(line, LINE_ROOM, file))
        return NULL;
    line[strcspn(line, "\r\n")] = '\0';
    return line + strspn(line, " ");
}

/* One problem in the OR-Library's form. */
static bool read_packing(struct arena *arena, FILE *file, struct cut_set *set)
{
    char line[LINE_ROOM], *text = read_line(file, line), *end;
    if (!text)
        return false;
    struct cut_instance *instance = add_instance(arena, set, text);
    text = read_line(file, line);
    if (!text)
        return false;
    int64_t length = strtoll(text, &end, 10), pieces = strtoll(end, &end, 10);
    instance->optimum = strtoll(end, NULL, 10);
    (void)snprintf(line, sizeof line, "%lld 1 -1", (long long)length);
    add_stock(arena, instance, line);
    for (int64_t i = 0; i < pieces; i++) {
        text = read_line(file, line);
        if (!text || *text == '\0')
            return false;
        add_items(arena, instance, text);
    }
    return true;
}

static bool read_packings(struct arena *arena, FILE *file, int64_t count, struct cut_set *set)
{
    for (int64_t i = 0; i < count; i++)
        if (!read_packing(arena, file, set))
            return false;
    return true;
}

bool cut_set_read(struct arena *arena, const char *path, struct cut_set *set)
{
    FILE *file = fopen(path, "r");
    struct cut_instance *instance = NULL;
    char line[LINE_ROOM];
    *set = (struct cut_set){0};
    if (!file)
        return false;
    while (fgets(line, sizeof line, file)) {
        int64_t count = strtoll(line, NULL, 10);
        if (!instance && count > 0) {
            bool whole = read_packings(arena, file, count, set);
            return fclose(file) == 0 && whole;
        }
        line[strcspn(line, "\r\n")] = '\0';
        if (strncmp(line, "inst ", 5) == 0)
            instance = add_instance(arena, set, line + 5);
        else if (instance && strncmp(line, "stock ", 6) == 0)
            add_stock(arena, instance, line + 6);
        else if (instance && strncmp(line, "items ", 6) == 0)
            add_items(arena, instance, line + 6);
    }
    return fclose(file) == 0;
}

static void set_optimum(struct cut_set *set, char *line, const char *name)
{
    char *field[8] = {line};
    int count = 1;
    for (char *at = line; *at && count < 8; at++)
        if (*at == ',') {
            *at = '\0';
            field[count++] = at + 1;
        }
    if (count < 6 || strcmp(field[0], name) != 0)
        return;
    for (size_t i = 0; i < set->count; i++)
        if (strcmp(set->instance[i].name, field[1]) == 0)
            set->instance[i].optimum = strtoll(field[5], NULL, 10);
}

bool cut_set_optima(const char *path, const char *name, struct cut_set *set)
{
    FILE *file = fopen(path, "r");
    char line[LINE_ROOM];
    if (!file)
        return false;
    while (fgets(line, sizeof line, file))
        set_optimum(set, line, name);
    return fclose(file) == 0;
}
