/* INI through inih, driven line by line by a reader of ours.
 *
 * inih would bend in silence: lines that start with a blank (they join the line before), lines too long for its buffer,
 * ` ;` in a value (the rest is lost), text after a section's `]`, empty sections (never reported).  So each line is
 * looked at before inih gets it; a refused one reaches it as an empty line, and our position layer is the line itself.
 */
#include <string.h>

#include <ini.h>

#include "job_internal.h"

enum { LINE_MOST = 190, SECTION_MOST = 49 }; /* bytes that every build of inih takes whole */
enum { LINES_MOST = 10000 };

struct ini_source {
    struct reading *reading;
    size_t next; /* offset of the line after this one */
    int line;
    const char *text; /* this line, without its end */
    size_t length;
    const char *kind, *id, *kind_as, *id_as; /* the section that is open; kind NULL before the first */
};

static struct place here(const struct ini_source *source, size_t offset)
{
    return (struct place){
        .file = source->reading->file, .line = source->line, .column = (int)utf8_count(source->text, offset) + 1};
}

static bool is_blank(char c)
{
    return c == ' ' || c == '\t';
}

static bool next_line(struct ini_source *source)
{
    const struct reading *reading = source->reading;
    if (source->next >= reading->length)
        return false;
    source->text = reading->text + source->next;
    size_t rest = reading->length - source->next;
    const char *end = memchr(source->text, '\n', rest);
    source->length = end ? (size_t)(end - source->text) : rest;
    source->next += source->length + (end ? 1 : 0);
    if (source->length && source->text[source->length - 1] == '\r')
        source->length--;
    source->line++;
    if (source->line <= LINES_MOST)
        return true;
    struct place at = here(source, 0);
    diag_add(reading->diags, DIAG_F004, &at, "more than %d lines; a job has some hundred", LINES_MOST);
    return false;
}

static bool line_is_empty(const struct ini_source *source)
{
    for (size_t i = 0; i < source->length; i++)
        if (!is_blank(source->text[i]))
            return false;
    return true;
}

/* A fault of the line's form; false always, so that callers can return it. */
static bool refuse(const struct ini_source *source, enum diag_code code, size_t offset, const char *text)
{
    struct place at = here(source, offset);
    diag_add(source->reading->diags, code, &at, "%s", text);
    return false;
}

/* "[kind id]": opens the section and reports it, empty or not. */
static bool open_section(struct ini_source *source)
{
    struct arena *arena = source->reading->arena;
    const char *close = memchr(source->text, ']', source->length);
    /* Keys below a section that cannot be read belong to nothing: they are skipped. */
    source->kind = "";
    if (!close)
        return refuse(source, DIAG_F005, 0, "no ']' at the end of the section; write [kind id]");
    size_t inside = (size_t)(close - source->text) - 1;
    for (const char *after = close + 1; after < source->text + source->length; after++)
        if (!is_blank(*after))
            return refuse(source, DIAG_F005, (size_t)(after - source->text),
                          "text after ']'; a section stands on a line of its own, and so does a comment");
    if (inside > SECTION_MOST)
        return refuse(source, DIAG_F004, 0, "section longer than 49 letters; shorten the id");
    char *kind = NULL;
    char *id = NULL;
    section_split(arena, arena_strndup(arena, source->text + 1, inside), &kind, &id);
    if (!*kind)
        return refuse(source, DIAG_F005, 0, "section without a kind; write [kind id], such as [beam B1]");
    source->kind_as = kind;
    source->id_as = id;
    source->kind = name_fold(arena, kind);
    source->id = name_fold(arena, id);
    struct place at = here(source, 0);
    entry_add(
        arena, source->reading->out,
        (struct entry){.kind = source->kind, .id = source->id, .kind_as = kind, .id_as = id, .at = at, .key_at = at});
    return true;
}

static bool key_line_is_good(const struct ini_source *source)
{
    const char *equals = memchr(source->text, '=', source->length);
    const char *colon = memchr(source->text, ':', source->length);
    if (!source->kind)
        return refuse(source, DIAG_F005, 0, "a key before the first section; start with [job]");
    for (size_t i = 1; i < source->length; i++)
        if (source->text[i] == ';' && is_blank(source->text[i - 1]))
            return refuse(source, DIAG_F005, i,
                          "' ;' in a line: a comment stands on a line of its own; in a value write ','");
    if (colon && (!equals || colon < equals))
        return refuse(source, DIAG_F005, (size_t)(colon - source->text),
                      "':' after a key; write '=' between key and value");
    if (!equals)
        return refuse(source, DIAG_F005, 0, "no '=' in this line; write 'key = value', and start a comment with ';'");
    if (equals == source->text)
        return refuse(source, DIAG_F005, 0, "no key before '='; write 'key = value'");
    return true;
}

/* What inih gets of this line: all of it, or nothing. */
static bool line_is_good(struct ini_source *source, size_t room)
{
    if (line_is_empty(source) || source->text[0] == ';' || source->text[0] == '#')
        return false;
    if (source->length > LINE_MOST || source->length + 2 > room) {
        struct place at = here(source, 0);
        diag_add(source->reading->diags, DIAG_F004, &at,
                 "line of %zu bytes, at most %d; shorten it, or split it over a key that may repeat", source->length,
                 LINE_MOST);
        return false;
    }
    if (is_blank(source->text[0]))
        return refuse(source, DIAG_F005, 0,
                      "line starts with a blank, so it would join the line before; start it in column 1");
    if (source->text[0] == '[')
        return open_section(source);
    return key_line_is_good(source);
}

/* ini_reader, as fgets: one line, or NULL at the end. */
static char *read_line(char *out, int room, void *stream)
{
    struct ini_source *source = stream;
    if (!next_line(source))
        return NULL;
    size_t length = 0;
    if (line_is_good(source, (size_t)room)) {
        length = source->length;
        memcpy(out, source->text, length);
    }
    out[length] = '\n';
    out[length + 1] = '\0';
    return out;
}

/* ini_handler: inih has read the line that the source still holds. */
static int take_value(void *user, const char *section, const char *name, const char *value)
{
    struct ini_source *source = user;
    struct arena *arena = source->reading->arena;
    (void)section; /* cut at 49 bytes by inih; ours is whole */
    if (!*source->kind)
        return 1;
    const char *equals = memchr(source->text, '=', source->length);
    size_t from = equals ? (size_t)(equals - source->text) + 1 : 0;
    while (from < source->length && is_blank(source->text[from]))
        from++;
    entry_add(arena, source->reading->out,
              (struct entry){.kind = source->kind,
                             .id = source->id,
                             .key = name_fold(arena, name),
                             .value = arena_strdup(arena, value),
                             .kind_as = source->kind_as,
                             .id_as = source->id_as,
                             .key_as = arena_strdup(arena, name),
                             .at = here(source, from),
                             .key_at = here(source, 0)});
    return 1;
}

void read_ini(struct reading *reading)
{
    struct ini_source source = {.reading = reading};
    int line = ini_parse_stream(read_line, &source, take_value, &source);
    if (line == 0)
        return;
    const struct place at = {.file = reading->file, .line = line > 0 ? line : 0, .column = line > 0 ? 1 : 0};
    diag_add(reading->diags, DIAG_F005, &at, "line cannot be read; write 'key = value' or [kind id]");
}
