#include "sawbill/text.h"

#include <string.h>

#include "letters.h"

/* Longest word for which a suggestion is looked for; no key of ours comes near. */
enum { WORD_MOST = 64 };

static bool is_gap(char c)
{
    return is_blank(c) || c == '_' || c == '-';
}

/* The next folded character, '\0' at the end; *at moves behind it.  `inside` is false at the start of the name. */
static char next_folded(const char **at, bool inside)
{
    const char *p = *at;
    bool gap = false;
    while (is_gap(*p)) {
        gap = true;
        p++;
    }
    if (*p == '\0') {
        *at = p;
        return '\0';
    }
    if (gap && inside) {
        *at = p;
        return ' ';
    }
    *at = p + 1;
    return lower(*p);
}

char *name_fold(struct arena *arena, const char *text)
{
    char *name = arena_alloc(arena, strlen(text) + 1);
    size_t length = 0;
    for (char c = next_folded(&text, false); c; c = next_folded(&text, true))
        name[length++] = c;
    return name;
}

static int compare_folded(const char *a, const char *b)
{
    char x = next_folded(&a, false), y = next_folded(&b, false);
    while (x && x == y) {
        x = next_folded(&a, true);
        y = next_folded(&b, true);
    }
    return (unsigned char)x - (unsigned char)y;
}

bool name_same(const char *a, const char *b)
{
    return compare_folded(a, b) == 0;
}

static size_t least(size_t a, size_t b)
{
    return a < b ? a : b;
}

/* Restricted Damerau-Levenshtein distance (optimal string alignment): insertions, deletions, changes, and swaps of
 * neighbours.  Three rows of the table are enough.  Both words have at most WORD_MOST letters. */
static size_t distance(const char *a, size_t a_length, const char *b, size_t b_length)
{
    size_t rows[3][WORD_MOST + 1];
    size_t *before = rows[0], *last = rows[1], *row = rows[2];
    for (size_t j = 0; j <= b_length; j++) {
        before[j] = 0;
        last[j] = j;
        row[j] = 0;
    }
    for (size_t i = 1; i <= a_length; i++) {
        row[0] = i;
        for (size_t j = 1; j <= b_length; j++) {
            size_t cost = last[j - 1] + (a[i - 1] != b[j - 1]);
            cost = least(cost, least(last[j], row[j - 1]) + 1);
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                cost = least(cost, before[j - 2] + 1);
            row[j] = cost;
        }
        size_t *free_row = before;
        before = last;
        last = row;
        row = free_row;
    }
    return last[b_length];
}

const char *did_you_mean(struct arena *arena, const char *word, const char *const *names, size_t count)
{
    const char *folded = name_fold(arena, word);
    size_t length = strlen(folded);
    if (length == 0 || length > WORD_MOST)
        return NULL;
    size_t limit = length <= 4 ? 1 : length <= 8 ? 2 : 3;
    const char *best = NULL;
    size_t best_distance = least(limit, length - 1) + 1; /* as many changes as letters is no likeness */
    for (size_t i = 0; i < count; i++) {
        const char *name = name_fold(arena, names[i]);
        size_t name_length = strlen(name);
        if (name_length > WORD_MOST)
            continue;
        size_t d = distance(folded, length, name, name_length);
        if (d < best_distance) {
            best = names[i];
            best_distance = d;
        }
    }
    return best;
}

char *text_trim(struct arena *arena, const char *text)
{
    while (is_blank(*text))
        text++;
    size_t length = strlen(text);
    while (length && is_blank(text[length - 1]))
        length--;
    return arena_strndup(arena, text, length);
}

size_t text_split(struct arena *arena, const char *text, char ***parts)
{
    char **list = NULL;
    size_t count = 0, capacity = 0;
    for (;;) {
        size_t length = strcspn(text, ",");
        list = arena_more(arena, list, count, &capacity, sizeof *list);
        list[count++] = text_trim(arena, arena_strndup(arena, text, length));
        if (text[length] == '\0')
            break;
        text += length + 1;
    }
    *parts = list;
    return count;
}
