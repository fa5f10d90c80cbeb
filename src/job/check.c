/* The list of entries against the key table: sections, keys, values; then what goes across keys. */
#include <string.h>

#include "job_internal.h"

enum { ID_MOST = 40 };

bool form_is_broken(const struct diags *diags)
{
    for (size_t i = 0; i < diags->count; i++)
        if (diag_code_name(diags->item[i].code)[0] == 'F')
            return true;
    return false;
}

/* Is there a section of this kind and id before this one? */
static const struct entry *section_before(const struct entries *entries, size_t number)
{
    const struct entry *section = &entries->item[number];
    for (size_t i = 0; i < number; i++) {
        const struct entry *entry = &entries->item[i];
        if (!entry->key && strcmp(entry->kind, section->kind) == 0 && strcmp(entry->id, section->id) == 0)
            return entry;
    }
    return NULL;
}

static void add_meant(struct checker *checker, const struct head *head, const char *name)
{
    checker->meant = arena_more(checker->arena, checker->meant, checker->meant_count, &checker->meant_capacity,
                                sizeof *checker->meant);
    checker->meant[checker->meant_count++] = (struct meant){.head = head, .key = name};
}

static void report_kind(struct checker *checker, const struct entry *section)
{
    const char *near = kind_near(checker->arena, section->kind);
    if (near) {
        add_meant(checker, NULL, near);
        diag_add(checker->diags, DIAG_K001, &section->key_at, "unknown kind '%s'; did you mean '%s'?", section->kind_as,
                 near);
        return;
    }
    struct buffer list = {.arena = checker->arena};
    for (int i = 0; i < KIND_COUNT; i++)
        buffer_printf(&list, "%s%s", i ? ", " : "", kind_name((enum kind)i));
    diag_add(checker->diags, DIAG_K001, &section->key_at, "unknown kind '%s'; kinds are %s", section->kind_as,
             buffer_text(&list));
}

/* What is wrong with an id, or NULL. */
static const char *id_fault(struct arena *arena, enum kind kind, const struct entry *section)
{
    const char *name = kind_name(kind);
    const char *id = section->id_as;
    if (!kind_has_id(kind))
        return *id ? arena_printf(arena, "a job has one %s, without an id; write [%s]", name, name) : NULL;
    if (!*section->id)
        return arena_printf(arena, "[%s] needs an id; write [%s ID], such as [%s 1]", name, name, name);
    if (strlen(id) > ID_MOST)
        return arena_printf(arena, "id '%s' is longer than %d letters; shorten it", id, ID_MOST);
    for (const char *c = id; *c; c++) {
        bool good =
            (*c >= 'a' && *c <= 'z') || (*c >= 'A' && *c <= 'Z') || (*c >= '0' && *c <= '9') || strchr(" -_", *c);
        if (!good)
            return arena_printf(arena, "id '%s' may hold letters a to z, digits, blanks and hyphens only", id);
    }
    return NULL;
}

/* A section that can be used: known kind, good id, not there before.  Faults only when `report`. */
static bool section_is_good(struct checker *checker, size_t number, enum kind *kind, bool report)
{
    const struct entry *section = &checker->entries->item[number];
    struct diags unheard = {.arena = checker->arena};
    struct diags *heard = checker->diags;
    checker->diags = report ? heard : &unheard;
    bool known = kind_find(section->kind, kind);
    const char *why = known ? id_fault(checker->arena, *kind, section) : NULL;
    const struct entry *before = known && !why ? section_before(checker->entries, number) : NULL;
    if (!known)
        report_kind(checker, section);
    else if (why)
        diag_add(checker->diags, DIAG_K005, &section->key_at, "%s", why);
    else if (before)
        diag_add(checker->diags, DIAG_K006, &section->key_at,
                 "%s stands twice; the first is on line %d, put the keys together",
                 section_name(checker->arena, *kind, section->id_as), before->key_at.line);
    checker->diags = heard;
    checker->misread = checker->misread || !known || why || before;
    return known && !why && !before;
}

static void set_array(struct job *job, const struct kind_row *row, void *array, size_t count)
{
    memcpy((char *)job + row->offset, &array, sizeof array);
    memcpy((char *)job + row->number, &count, sizeof count);
}

/* Room for every section, heads filled in. */
static void make_elements(struct checker *checker)
{
    const struct entries *entries = checker->entries;
    size_t count[KIND_COUNT] = {0};
    enum kind kind = KIND_JOB;
    for (size_t i = 0; i < entries->count; i++)
        if (!entries->item[i].key && section_is_good(checker, i, &kind, true))
            count[kind]++;
    for (int i = 0; i < KIND_COUNT; i++) {
        const struct kind_row *row = kind_row((enum kind)i);
        if (row->has_id)
            set_array(checker->job, row, arena_array(checker->arena, count[i], row->size), count[i]);
        else
            *(struct head *)kind_element(checker->job, (enum kind)i, 0) =
                (struct head){.id = "", .folded = "", .at = {.file = checker->file}};
        count[i] = 0;
    }
    for (size_t i = 0; i < entries->count; i++) {
        const struct entry *section = &entries->item[i];
        if (section->key || !section_is_good(checker, i, &kind, false))
            continue;
        struct head *head = kind_element(checker->job, kind, count[kind]++);
        *head = (struct head){.id = section->id_as, .folded = section->id, .at = section->key_at};
    }
    checker->job->has_roof = count[KIND_ROOF] > 0;
}

/* An entry of the same key in the same section, before this one. */
static const struct entry *key_before(const struct entries *entries, size_t section, size_t number)
{
    for (size_t i = section + 1; i < number; i++)
        if (entries->item[i].key && strcmp(entries->item[i].key, entries->item[number].key) == 0)
            return &entries->item[i];
    return NULL;
}

/* Clears a default before what was written is read over it. */
static void forget_default(const struct key_row *row, void *element)
{
    if (row->fallback && row->type == TYPE_CHOICE)
        ((struct choice_value *)(void *)((char *)element + row->offset))->choice = 0;
}

static void report_key(struct checker *checker, enum kind kind, const struct head *head, const struct entry *entry)
{
    const char *near = key_near(checker->arena, kind, entry->key);
    const char *where = section_name(checker->arena, kind, entry->id_as);
    checker->misread = true;
    if (!near) {
        diag_add(checker->diags, DIAG_K002, &entry->key_at, "unknown key '%s' in %s; 'sawbill keys %s' lists them",
                 entry->key_as, where, kind_name(kind));
        return;
    }
    diag_add(checker->diags, DIAG_K002, &entry->key_at, "unknown key '%s' in %s; did you mean '%s'?", entry->key_as,
             where, near);
    add_meant(checker, head, near);
}

static void read_entry(struct checker *checker, enum kind kind, void *element, size_t section, size_t number)
{
    const struct entry *entry = &checker->entries->item[number];
    const struct key_row *row = key_find(kind, entry->key);
    const char *where = section_name(checker->arena, kind, entry->id_as);
    if (!row) {
        report_key(checker, kind, element, entry);
        return;
    }
    const struct entry *before =
        row->type == TYPE_TEXTS || row->type == TYPE_INNER ? NULL : key_before(checker->entries, section, number);
    if (before) {
        diag_add(checker->diags, DIAG_K003, &entry->key_at,
                 "'%s' stands twice in %s; the first is on line %d, keep one", entry->key_as, where,
                 before->key_at.line);
        return;
    }
    forget_default(row, element);
    value_read(checker, row, element, entry);
}

static void read_defaults(struct checker *checker)
{
    for (int i = 0; i < KIND_COUNT; i++) {
        enum kind kind = (enum kind)i;
        const struct key_rows *keys = kind_row(kind)->keys;
        for (size_t e = 0; e < kind_elements(checker->job, kind); e++)
            for (size_t k = 0; k < keys->count; k++)
                value_default(checker, &keys->row[k], kind_element(checker->job, kind, e));
    }
}

static void read_values(struct checker *checker)
{
    const struct entries *entries = checker->entries;
    enum kind kind = KIND_JOB;
    void *element = NULL;
    size_t section = 0;
    for (size_t i = 0; i < entries->count; i++) {
        const struct entry *entry = &entries->item[i];
        if (entry->key && element)
            read_entry(checker, kind, element, section, i);
        if (entry->key)
            continue;
        section = i;
        element = NULL;
        if (section_is_good(checker, i, &kind, false))
            element =
                kind_element(checker->job, kind, kind_has_id(kind) ? element_find(checker->job, kind, entry->id) : 0);
    }
}

static bool has_key(const struct entries *entries, const char *kind, const struct head *head, const struct key_row *row)
{
    for (size_t i = 0; i < entries->count; i++) {
        const struct entry *entry = &entries->item[i];
        if (!entry->key || !name_same(entry->kind, kind) || strcmp(entry->id, head->folded) != 0)
            continue;
        if (row->type == TYPE_SET ? strncmp(entry->key, "set ", 4) == 0 : name_same(entry->key, row->key))
            return true;
    }
    return false;
}

static bool was_meant(const struct checker *checker, const struct head *head, const char *key)
{
    for (size_t i = 0; i < checker->meant_count; i++)
        if (checker->meant[i].head == head && strcmp(checker->meant[i].key, key) == 0)
            return true;
    return false;
}

static void find_missing(struct checker *checker)
{
    for (int i = 0; i < KIND_COUNT; i++) {
        enum kind kind = (enum kind)i;
        const struct kind_row *row = kind_row(kind);
        for (size_t e = 0; e < kind_elements(checker->job, kind); e++) {
            const struct head *head = kind_element(checker->job, kind, e);
            if (!row->has_id && head->at.line == 0) {
                if (kind != KIND_ROOF && !was_meant(checker, NULL, row->name))
                    diag_add(checker->diags, DIAG_K004, &head->at, "no [%s] section; a job needs it: %s", row->name,
                             row->help);
                continue;
            }
            for (size_t k = 0; k < row->keys->count; k++) {
                const struct key_row *key = &row->keys->row[k];
                if (key->required && !has_key(checker->entries, row->name, head, key) &&
                    !was_meant(checker, head, key->key))
                    diag_add(checker->diags, DIAG_K004, &head->at, "%s needs '%s': %s; write '%s = %s'",
                             section_name(checker->arena, kind, head->id), key->key, key->help, key->key, key->example);
            }
        }
    }
}

struct job *check_list(struct arena *arena, const char *file, const struct entries *entries, struct diags *diags)
{
    struct job *job = arena_alloc(arena, sizeof *job);
    job->entries = *entries;
    job->file = file;
    struct checker checker = {.arena = arena, .file = file, .entries = &job->entries, .job = job, .diags = diags};
    make_elements(&checker);
    read_defaults(&checker);
    read_values(&checker);
    diags->assume = job->facts.status.choice == STATUS_BUDGET;
    alternates_read(&checker);
    if (form_is_broken(diags))
        return job;
    find_missing(&checker);
    rules_check(&checker);
    circles_find(&checker);
    if (!checker.misread)
        questions_ask(&checker);
    acknowledgements_check(&checker);
    return job;
}
