/* The sample jobs, read and run through every stage. */
#ifndef SAWBILL_TESTS_REPORT_SAMPLES_H
#define SAWBILL_TESTS_REPORT_SAMPLES_H

#include <string.h>

#include "support.h"
#include "sawbill/report.h"
#include "sawbill/text.h"

#define JOBS     SOURCE_DIR "/jobs/"
#define CATALOGS SOURCE_DIR "/catalogs"

static const char *const samples[] = {"parlor", "attic", "two-beams"};
enum { SAMPLES = sizeof samples / sizeof samples[0] };

struct result {
    struct entries entries;
    const struct job *job;
    const struct catalog *catalog;
    const struct outcome *outcome;
    struct diags diags;
};

static inline char *read_file(struct arena *arena, const char *path)
{
    FILE *in = fopen(path, "rb");
    assert_non_null(in);
    struct buffer text = {.arena = arena};
    char part[4096];
    for (size_t got; (got = fread(part, 1, sizeof part, in)) > 0;)
        buffer_add_n(&text, part, got);
    assert_int_equal(ferror(in), 0);
    fclose(in);
    assert_non_null(text.text);
    return text.text;
}

static inline char *read_sample(struct arena *arena, const char *name)
{
    return read_file(arena, arena_printf(arena, JOBS "%s", name));
}

static inline struct result *run_text(struct arena *arena, const char *name, const char *text)
{
    struct result *result = arena_alloc(arena, sizeof *result);
    result->diags.arena = arena;
    entries_read(arena, name, text, strlen(text), &result->entries, &result->diags);
    result->job = job_check(arena, name, &result->entries, &result->diags);
    result->catalog = catalog_read(arena, CATALOGS, NULL, &result->diags);
    if (diag_count(&result->diags, DIAG_STOP) == 0) {
        result->outcome = plan_job(arena, result->job, result->catalog, &result->diags);
        job_acknowledge(result->job, &result->diags);
    }
    return result;
}

static inline struct result *run_sample(struct arena *arena, const char *name)
{
    return run_text(arena, name, read_sample(arena, name));
}

static inline struct report report_of(const struct result *result)
{
    return (struct report){.job = result->job,
                           .catalog = result->catalog,
                           .outcome = result->outcome,
                           .diags = &result->diags,
                           .job_file = "sample",
                           .signable = true};
}

#endif
