/* The whole check: the list, then the list with each alternate put in, so that faults name the alternate's line. */
#include <string.h>

#include "job_internal.h"

/* The list without alternates: the base that each of them changes. */
static struct entries without_alternates(struct arena *arena, const struct entries *entries)
{
    struct entries result = {0};
    for (size_t i = 0; i < entries->count; i++)
        if (strcmp(entries->item[i].kind, "alternate") != 0)
            entry_add(arena, &result, entries->item[i]);
    return result;
}

static bool stands_in(const struct diags *diags, const struct diag *wanted)
{
    for (size_t i = 0; i < diags->count; i++)
        if (diags->item[i].code == wanted->code && strcmp(diags->item[i].text, wanted->text) == 0 &&
            diags->item[i].at.line == wanted->at.line)
            return true;
    return false;
}

static bool at_setting(const struct alternate *alternate, const struct diag *diag)
{
    for (size_t i = 0; i < alternate->count; i++)
        if (alternate->set[i].at.line == diag->at.line || alternate->set[i].key_at.line == diag->at.line)
            return true;
    return false;
}

/* What only the alternate brings: at its own line, or at its section when the fault shows elsewhere. */
static void report_new(struct checker *checker, const struct alternate *alternate, const struct diags *found)
{
    for (size_t i = 0; i < found->count; i++) {
        const struct diag *diag = &found->item[i];
        if (stands_in(checker->diags, diag))
            continue;
        const char *text = diag_bare_text(diag);
        if (at_setting(alternate, diag))
            diag_add(checker->diags, diag->code, &diag->at, "%s", text);
        else
            diag_add(checker->diags, diag->code, &alternate->head.at, "with this alternate, line %d: %s", diag->at.line,
                     text);
    }
}

static void alternates_check(struct checker *checker)
{
    struct entries base = without_alternates(checker->arena, checker->entries);
    for (size_t i = 0; i < checker->job->alternate_count; i++) {
        const struct alternate *alternate = &checker->job->alternates[i];
        struct entries list = entries_with(checker->arena, &base, alternate);
        struct diags found = {.arena = checker->arena};
        (void)check_list(checker->arena, checker->file, &list, &found);
        report_new(checker, alternate, &found);
    }
}

struct job *job_check(struct arena *arena, const char *file, const struct entries *entries, struct diags *diags)
{
    struct job *job = check_list(arena, file, entries, diags);
    struct checker checker = {.arena = arena, .file = file, .entries = &job->entries, .job = job, .diags = diags};
    if (!diag_has_stop(diags))
        alternates_check(&checker);
    job_acknowledge(job, diags);
    return job;
}
