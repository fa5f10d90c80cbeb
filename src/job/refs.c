/* References, `kind id`, and beam ends: read and found at once, for every section is known by then. */
#include <stdint.h>
#include <string.h>

#include "job_internal.h"

void *kind_element(const struct job *job, enum kind kind, size_t index)
{
    const struct kind_row *row = kind_row(kind);
    char *start = (char *)job + row->offset;
    if (!row->has_id)
        return start;
    char *array = NULL;
    memcpy(&array, start, sizeof array);
    return array + index * row->size;
}

size_t kind_elements(const struct job *job, enum kind kind)
{
    const struct kind_row *row = kind_row(kind);
    size_t count = 1;
    if (row->has_id)
        memcpy(&count, (const char *)job + row->number, sizeof count);
    return count;
}

size_t element_find(const struct job *job, enum kind kind, const char *folded)
{
    if (!kind_row(kind)->has_id)
        return SIZE_MAX;
    for (size_t i = 0; i < kind_elements(job, kind); i++) {
        const struct head *head = kind_element(job, kind, i);
        if (strcmp(head->folded, folded) == 0)
            return i;
    }
    return SIZE_MAX;
}

bool ref_found(const struct ref_value *ref)
{
    return ref->at && ref->id;
}

static bool may_name(struct arena *arena, const struct key_row *row, enum kind kind)
{
    char **part = NULL;
    size_t count = text_split(arena, row->refers, &part);
    for (size_t i = 0; i < count; i++)
        if (strcmp(part[i], kind_name(kind)) == 0)
            return true;
    return false;
}

/* The roof has no id; what stands on the wall of it are its braces. */
static const char roof_braces[] = "roof braces";

/* Everything in the job that the row may name: "beam B1". */
static size_t candidates(struct checker *checker, const struct key_row *row, const char ***names)
{
    size_t count = 0;
    size_t capacity = 0;
    const char **list = NULL;
    for (int kind = 0; kind < KIND_COUNT; kind++) {
        if (!kind_row((enum kind)kind)->has_id || !may_name(checker->arena, row, (enum kind)kind))
            continue;
        for (size_t i = 0; i < kind_elements(checker->job, (enum kind)kind); i++) {
            const struct head *head = kind_element(checker->job, (enum kind)kind, i);
            list = arena_more(checker->arena, list, count, &capacity, sizeof *list);
            list[count++] = head_name(checker->arena, (enum kind)kind, head);
        }
    }
    if (may_name(checker->arena, row, KIND_ROOF)) {
        list = arena_more(checker->arena, list, count, &capacity, sizeof *list);
        list[count++] = roof_braces;
    }
    *names = list;
    return count;
}

/* "beam ID or wall ID" */
static const char *forms(struct arena *arena, const char *refers)
{
    struct buffer out = {.arena = arena};
    char **part = NULL;
    size_t count = text_split(arena, refers, &part);
    for (size_t i = 0; i < count; i++)
        buffer_printf(&out, "%s%s%s",
                      i == 0           ? ""
                      : i + 1 == count ? " or "
                                       : ", ",
                      strcmp(part[i], "roof") == 0 ? roof_braces : part[i], strcmp(part[i], "roof") == 0 ? "" : " ID");
    return buffer_text(&out);
}

const char *ref_near(struct checker *checker, const struct key_row *row, const char *text)
{
    const char **names = NULL;
    size_t count = candidates(checker, row, &names);
    return count ? did_you_mean(checker->arena, text, names, count) : NULL;
}

static void report_missing(struct checker *checker, const struct key_row *row, const char *text,
                           const struct entry *entry)
{
    const char **names = NULL;
    size_t count = candidates(checker, row, &names);
    const char *near = count ? did_you_mean(checker->arena, text, names, count) : NULL;
    for (size_t i = 0; i < count && !near; i++) { /* the id alone: "north" for "joists north" */
        const char *id = strchr(names[i], ' ');
        if (id && name_same(id + 1, text))
            near = names[i];
    }
    if (near)
        diag_add(checker->diags, DIAG_K011, &entry->at, "'%s' for '%s' is not in this job; did you mean '%s'?", text,
                 row->key, near);
    else
        diag_add(checker->diags, DIAG_K011, &entry->at,
                 "'%s' for '%s' is not in this job; it takes %s, with a section of its own", text, row->key,
                 forms(checker->arena, row->refers));
}

bool ref_read(struct checker *checker, const struct key_row *row, const char *text, const struct entry *entry,
              struct ref_value *out)
{
    char *kind_word = NULL;
    char *id = NULL;
    enum kind kind = KIND_JOB;
    *out = (struct ref_value){.index = SIZE_MAX, .at = entry};
    section_split(checker->arena, text, &kind_word, &id);
    bool known = kind_find(kind_word, &kind);
    const char *folded = name_fold(checker->arena, id);
    size_t index = known ? element_find(checker->job, kind, folded) : SIZE_MAX;
    if (known && kind == KIND_ROOF && checker->job->has_roof && name_same(text, roof_braces))
        index = 0;
    if (index == SIZE_MAX) {
        report_missing(checker, row, text, entry);
        return false;
    }
    if (!may_name(checker->arena, row, kind)) {
        diag_add(checker->diags, DIAG_K011, &entry->at, "'%s' cannot stand in '%s'; it takes %s", text, row->key,
                 forms(checker->arena, row->refers));
        return false;
    }
    *out = (struct ref_value){.kind = kind, .id = folded, .index = index, .at = entry};
    return true;
}

char *before_place(struct arena *arena, const char *value, const char **place)
{
    const char *at = NULL;
    for (const char *next = strstr(value, " at "); next; next = strstr(next + 1, " at "))
        at = next;
    *place = at ? text_trim(arena, at + 4) : NULL;
    return arena_strndup(arena, value, at ? (size_t)(at - value) : strlen(value));
}

bool place_read(struct checker *checker, const struct key_row *row, const struct entry *entry, const char *text,
                const char *example, length_t *out)
{
    const char *why = NULL;
    if (number_alone(text) && strcmp(text, "0") != 0)
        diag_add(checker->diags, DIAG_K008, &entry->at, "'%s' for '%s' needs a unit: %s", text, row->key,
                 with_units(checker->arena, text, "ft, in"));
    else if (!length_parse(text, out, &why))
        diag_add(checker->diags, DIAG_K007, &entry->at, "'%s' for '%s' cannot be read: %s; write it like '%s'",
                 entry->value, row->key, why, example);
    else if (*out < 0)
        diag_add(checker->diags, DIAG_K009, &entry->at, "'%s' for '%s' is not possible; places count from end 1", text,
                 row->key);
    else
        return true;
    return false;
}

/* "beam B2 at 6 ft 2 in" */
static void end_on_beam(struct checker *checker, const struct key_row *row, const struct entry *entry,
                        struct beam_end *out)
{
    const char *place = NULL;
    char *beam = before_place(checker->arena, entry->value, &place);
    out->kind = END_BEAM;
    if (!ref_read(checker, row, beam, entry, &out->ref))
        return;
    if (!place)
        diag_add(checker->diags, DIAG_K017, &entry->at,
                 "'%s' for '%s' does not say where; write '%s at LENGTH', from end 1 of that beam", entry->value,
                 row->key, entry->value);
    else
        (void)place_read(checker, row, entry, place, "beam B2 at 6 ft 2 in", &out->at_length); /* it reports */
}

void end_read(struct checker *checker, const struct key_row *row, const struct entry *entry, struct beam_end *out)
{
    static const struct {
        const char *word;
        enum end_kind kind;
    } words[] = {{"wall plate", END_PLATE},
                 {"plate", END_PLATE},
                 {"pocket", END_POCKET},
                 {"hanger", END_HANGER},
                 {"unknown", END_UNANSWERED}};
    static const char *const meant[] = {"post", "beam", "wall plate", "pocket", "hanger"};
    char *kind_word = NULL;
    char *id = NULL;
    out->at = entry;
    for (size_t i = 0; i < sizeof words / sizeof *words; i++) {
        if (!name_same(entry->value, words[i].word))
            continue;
        out->kind = words[i].kind;
        return;
    }
    section_split(checker->arena, entry->value, &kind_word, &id);
    if (name_same(kind_word, "beam")) {
        end_on_beam(checker, row, entry, out);
        return;
    }
    if (name_same(kind_word, "post")) {
        out->kind = END_POST;
        (void)ref_read(checker, row, entry->value, entry, &out->ref); /* it reports */
        return;
    }
    const char *near = did_you_mean(checker->arena, entry->value, meant, 5);
    if (!near)
        near = did_you_mean(checker->arena, kind_word, meant, 2);
    diag_add(checker->diags, DIAG_K010, &entry->at,
             "'%s' is no answer to '%s'; %s%s%swrite post ID, beam ID at LENGTH, wall plate, pocket or hanger",
             entry->value, row->key, near ? "did you mean '" : "", near ? near : "", near ? "'? else " : "");
}
