/* The list that both spellings become, and settings put into it. */
#include <stdint.h>
#include <string.h>

#include "job_internal.h"

void entry_add(struct arena *arena, struct entries *entries, struct entry entry)
{
    entries->item = arena_more(arena, entries->item, entries->count, &entries->capacity, sizeof *entries->item);
    entries->item[entries->count++] = entry;
}

void section_split(struct arena *arena, const char *text, char **kind, char **id)
{
    char *whole = text_trim(arena, text);
    size_t first = strcspn(whole, " \t_-");
    *kind = arena_strndup(arena, whole, first);
    *id = text_trim(arena, whole + first + strspn(whole + first, " \t_-"));
}

/* Index of the last entry of a section, or SIZE_MAX. */
static size_t section_end(const struct entries *entries, const struct entry *like)
{
    size_t last = SIZE_MAX;
    for (size_t i = 0; i < entries->count; i++)
        if (strcmp(entries->item[i].kind, like->kind) == 0 && strcmp(entries->item[i].id, like->id) == 0)
            last = i;
    return last;
}

static bool same_key(const struct entry *a, const struct entry *b)
{
    return a->key && b->key && strcmp(a->key, b->key) == 0 && strcmp(a->kind, b->kind) == 0 &&
           strcmp(a->id, b->id) == 0;
}

/* Puts one setting in: in place of the first of its key (the others go), else at the end of its section. */
static void put_in(struct arena *arena, struct entries *entries, const struct entry *set)
{
    struct entries result = {0};
    size_t end = section_end(entries, set);
    bool done = false;
    for (size_t i = 0; i < entries->count; i++) {
        bool same = same_key(&entries->item[i], set);
        if (!same)
            entry_add(arena, &result, entries->item[i]);
        if (!done && same) {
            entry_add(arena, &result, *set);
            done = true;
        }
        if (!done && i == end) {
            entry_add(arena, &result, *set);
            done = true;
        }
    }
    *entries = result;
}

struct entries entries_with(struct arena *arena, const struct entries *entries, const struct alternate *alternate)
{
    struct entries result = *entries;
    for (size_t i = 0; i < alternate->count; i++)
        put_in(arena, &result, &alternate->set[i]);
    return result;
}
