/* Alternates: `set KIND ID KEY = value`, read into the entries that they put in. */
#include <stdint.h>
#include <string.h>

#include "job_internal.h"

static void fault(struct checker *checker, enum diag_code code, const struct entry *entry, const char *text)
{
    diag_add(checker->diags, code, &entry->key_at, "%s", text);
}

/* Splits "b1 clear span" into an id of the job and a key: the longest id that fits.  SIZE_MAX when none does. */
static size_t find_id(const struct job *job, enum kind kind, const char *rest)
{
    size_t found = SIZE_MAX;
    size_t longest = 0;
    for (size_t i = 0; i < kind_elements(job, kind); i++) {
        const struct head *head = kind_element(job, kind, i);
        size_t length = strlen(head->folded);
        if (length < longest || strncmp(rest, head->folded, length) != 0 || rest[length] != ' ')
            continue;
        found = i;
        longest = length;
    }
    return found;
}

/* The kind of "beam b1 member", and what follows it; false after a fault. */
static bool read_kind(struct checker *checker, const struct entry *entry, enum kind *kind, const char **rest)
{
    struct arena *arena = checker->arena;
    const char *target = entry->key + 4; /* after "set " */
    size_t word = strcspn(target, " ");
    char *name = arena_strndup(arena, target, word);
    if (!kind_find(name, kind)) {
        const char *near = kind_near(arena, name);
        fault(checker, DIAG_K001, entry,
              arena_printf(arena, "unknown kind '%s' in '%s'; %s%s", name, entry->key_as,
                           near ? "did you mean " : "write 'set KIND ID KEY'",
                           near ? arena_printf(arena, "'%s'?", near) : ""));
        return false;
    }
    if (*kind == KIND_ALTERNATE) {
        fault(checker, DIAG_K013, entry, "an alternate cannot set another alternate");
        return false;
    }
    *rest = target + word + (target[word] ? 1 : 0);
    return true;
}

static void report_id(struct checker *checker, enum kind kind, const struct entry *entry, const char *rest)
{
    struct arena *arena = checker->arena;
    size_t count = kind_elements(checker->job, kind);
    const char **names = arena_array(arena, count + 1, sizeof *names);
    for (size_t i = 0; i < count; i++)
        names[i] = ((const struct head *)kind_element(checker->job, kind, i))->id;
    char *word = arena_strndup(arena, rest, strcspn(rest, " "));
    const char *near = did_you_mean(arena, word, names, count);
    fault(checker, DIAG_K011, entry,
          arena_printf(arena, "'%s' names no %s of this job%s%s%s", entry->key_as, kind_name(kind),
                       near ? "; did you mean '" : "; write 'set KIND ID KEY'", near ? near : "", near ? "'?" : ""));
}

/* One `set` line as the entry that it stands for; false after a fault. */
static bool read_setting(struct checker *checker, const struct entry *entry, struct entry *out)
{
    struct arena *arena = checker->arena;
    enum kind kind = KIND_JOB;
    const char *rest = NULL;
    if (!read_kind(checker, entry, &kind, &rest))
        return false;
    const struct head *head = kind_element(checker->job, kind, 0);
    if (kind_has_id(kind)) {
        size_t index = find_id(checker->job, kind, rest);
        if (index == SIZE_MAX) {
            report_id(checker, kind, entry, rest);
            return false;
        }
        head = kind_element(checker->job, kind, index);
        rest += strlen(head->folded) + 1;
    }
    if (!key_find(kind, rest)) {
        const char *near = key_near(arena, kind, rest);
        fault(checker, DIAG_K002, entry,
              arena_printf(arena, "unknown key '%s' of %s in '%s'%s%s%s", rest, head_name(arena, kind, head),
                           entry->key_as, near ? "; did you mean '" : "", near ? near : "", near ? "'?" : ""));
        return false;
    }
    *out = *entry;
    out->kind = kind_name(kind);
    out->kind_as = out->kind;
    out->id = head->folded;
    out->id_as = head->id;
    out->key = arena_strdup(arena, rest);
    out->key_as = out->key;
    return true;
}

void alternates_read(struct checker *checker)
{
    const struct entries *entries = checker->entries;
    for (size_t a = 0; a < checker->job->alternate_count; a++) {
        struct alternate *alternate = &checker->job->alternates[a];
        size_t capacity = 0;
        for (size_t i = 0; i < entries->count; i++) {
            const struct entry *entry = &entries->item[i];
            struct entry setting;
            if (!entry->key || strcmp(entry->kind, "alternate") != 0 || strncmp(entry->key, "set ", 4) != 0 ||
                strcmp(entry->id, alternate->head.folded) != 0 || !read_setting(checker, entry, &setting))
                continue;
            alternate->set = arena_more(checker->arena, alternate->set, alternate->count, &capacity, sizeof setting);
            alternate->set[alternate->count++] = setting;
        }
    }
}
