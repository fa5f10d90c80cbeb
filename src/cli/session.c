/* A job through its stages, and its messages on standard error. */
#include <errno.h>
#include <stdarg.h>
#include <stdio.h>
#include <string.h>

#include "cli.h"
#include "sawbill/text.h"

enum { FILE_MOST = 16 * 1024 * 1024 }; /* bytes of a job file: a thousand times the largest that makes sense */

enum exit_status exit_worse(enum exit_status a, enum exit_status b)
{
    return a > b ? a : b;
}

void say(const char *format, ...)
{
    fputs("sawbill: ", stderr);
    va_list args;
    va_start(args, format);
    vfprintf(stderr, format, args);
    va_end(args);
    fputc('\n', stderr);
}

char *read_file(struct arena *arena, const char *file, size_t *length)
{
    bool standard = !strcmp(file, "-");
    FILE *in = standard ? stdin : fopen(file, "rb");
    if (!in) {
        say("cannot read '%s': %s", file, strerror(errno));
        return NULL;
    }
    struct buffer text = {.arena = arena};
    char part[65536];
    size_t got;
    while (text.length <= FILE_MOST && (got = fread(part, 1, sizeof part, in)) > 0)
        buffer_add_n(&text, part, got);
    bool failed = ferror(in) != 0;
    int why = errno;
    if (!standard)
        (void)fclose(in); /* it was only read */
    if (failed || text.length > FILE_MOST) {
        say("cannot read '%s': %s", file, failed ? strerror(why) : "it is larger than 16 MiB");
        return NULL;
    }
    *length = text.length;
    return text.length ? text.text : arena_strdup(arena, "");
}

/* A path of the job file, which is relative to the job file's folder. */
static const char *beside(struct arena *arena, const char *job_file, const char *path)
{
    const char *slash = strrchr(job_file, '/');
    if (path[0] == '/' || !slash)
        return path;
    return arena_printf(arena, "%.*s%s", (int)(slash - job_file + 1), job_file, path);
}

/* After a stop nothing was designed: notes on a design tried on the way would mislead. */
static bool is_of_no_design(const struct session *session, const struct diag *diag)
{
    return !session->outcome && (diag->code == DIAG_S002 || diag->code == DIAG_S003 || diag->code == DIAG_S004 ||
                                 diag->code == DIAG_S007 || diag->code == DIAG_S012);
}

static void show_diag(struct arena *arena, const struct diag *diag, bool quiet)
{
    if (diag->acknowledged || (quiet && diag->class == DIAG_NOTE))
        return;
    fputs(diag_line(arena, diag), stderr);
    fputc('\n', stderr);
}

void show_diags(struct arena *arena, const struct diags *diags, bool quiet)
{
    for (size_t i = 0; i < diags->count; i++)
        show_diag(arena, &diags->item[i], quiet);
}

static void show_messages(struct session *session, const struct options *options)
{
    diag_sort(&session->diags);
    for (size_t i = 0; i < session->diags.count; i++)
        if (!is_of_no_design(session, &session->diags.item[i]))
            show_diag(session->arena, &session->diags.item[i], options->quiet);
}

static bool stopped(const struct session *session)
{
    return diag_has_stop(&session->diags);
}

/* A folder that is not there is a slip of the job file: the message stands at its line. */
static void place_at_key(struct session *session, const char *folder)
{
    for (size_t i = 0; i < session->diags.count; i++) {
        struct diag *diag = &session->diags.item[i];
        if (diag->code != DIAG_F001 || diag->at.line != 0 || strcmp(diag->at.file, folder) != 0)
            continue;
        diag->at = session->job->facts.catalogs.at->at;
        diag->text = arena_printf(session->arena, "%s: '%s'", diag->text, folder);
    }
}

static void run_stages(struct session *session, const char *text, size_t length)
{
    struct arena *arena = session->arena;
    struct entries entries = {0};
    entries_read(arena, session->job_file, text, length, &entries, &session->diags);
    const struct job *job = job_check(arena, session->job_file, &entries, &session->diags);
    session->job = job;
    if (stopped(session))
        return;
    const char *folder = beside(arena, session->job_file, job->facts.catalogs.text);
    const char *stock = job->facts.shop_stock.text;
    session->catalog =
        catalog_read(arena, folder, stock ? beside(arena, session->job_file, stock) : NULL, &session->diags);
    place_at_key(session, folder);
    if (stopped(session))
        return;
    const struct outcome *outcome = plan_job(arena, job, session->catalog, &session->diags);
    job_acknowledge(job, &session->diags);
    if (!stopped(session))
        session->outcome = outcome;
}

static bool has_code(const struct session *session, enum diag_code code)
{
    for (size_t i = 0; i < session->diags.count; i++)
        if (session->diags.item[i].code == code)
            return true;
    return false;
}

static enum exit_status status_of(const struct session *session)
{
    if (has_code(session, DIAG_F001))
        return EXIT_FILE;
    if (stopped(session))
        return EXIT_STOPPED;
    if (!session->outcome || session->outcome->run->internal_failure)
        return EXIT_FAILED;
    if (diag_count(&session->diags, DIAG_ASK) > 0 || !session->outcome->run->design->passes)
        return EXIT_OPEN;
    return EXIT_DONE;
}

struct session session_open(struct arena *arena, const struct options *options, const char *file)
{
    struct session session = {.arena = arena, .diags = {.arena = arena}, .job_file = file};
    size_t length;
    char *text = read_file(arena, file, &length);
    if (!text) {
        session.status = EXIT_FILE;
        return session;
    }
    if (!strcmp(file, "-"))
        session.job_file = "(standard input)";
    run_stages(&session, text, length);
    session.status = status_of(&session);
    if (session.status == EXIT_FAILED)
        say("internal failure: %s", session.outcome && session.outcome->run->failure ? session.outcome->run->failure
                                                                                     : "a stage gave no result");
    show_messages(&session, options);
    return session;
}

struct report session_report(const struct session *session)
{
    bool budget = session->job && session->job->facts.status.choice == STATUS_BUDGET;
    return (struct report){
        .job = session->job,
        .catalog = session->catalog,
        .outcome = session->outcome,
        .diags = &session->diags,
        .job_file = session->job_file,
        .signable = session->status == EXIT_DONE && !budget,
    };
}

enum exit_status write_text(struct arena *arena, const char *file, const char *text)
{
    const char *why = NULL;
    if (report_text(arena, file, text, &why) == WRITE_DONE)
        return EXIT_DONE;
    say("cannot write '%s': %s", file, why);
    return EXIT_FILE;
}

enum exit_status put_text(struct arena *arena, const struct options *options, const char *text)
{
    if (!options->output || !strcmp(options->output, "-")) {
        fputs(text, stdout);
        return EXIT_DONE;
    }
    return write_text(arena, options->output, text);
}

enum exit_status session_show(struct session *session, const struct options *options, show_fn *show)
{
    if (!session->job || session->status == EXIT_FAILED)
        return session->status;
    struct report report = session_report(session);
    const char *text = NULL;
    if (options->json)
        text = report_json(session->arena, &report);
    else if (session->outcome && !options->quiet)
        text = show(session->arena, &report, options->color && !options->output, options->width);
    if (!text)
        return session->status;
    return exit_worse(session->status, put_text(session->arena, options, text));
}
