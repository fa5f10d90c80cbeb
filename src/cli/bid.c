/* sawbill bid JOB: the workbook beside the job file, the client's file, the bid on the terminal. */
#include <stdio.h>
#include <string.h>

#include "cli.h"

/* porch.ini -> porch.xlsx, in the same folder. */
static const char *workbook_name(struct arena *arena, const char *job_file)
{
    const char *slash = strrchr(job_file, '/');
    const char *dot = strrchr(slash ? slash : job_file, '.');
    size_t stem = dot && dot != job_file ? (size_t)(dot - job_file) : strlen(job_file);
    return arena_printf(arena, "%.*s.xlsx", (int)stem, job_file);
}

typedef enum write_status write_fn(struct arena *arena, const struct report *report, const char *path,
                                   const char **written, const char **why);

static enum exit_status write_one(struct arena *arena, const struct report *report, write_fn *write, const char *path,
                                  const char *what, bool quiet, FILE *out)
{
    const char *written = path, *why = "";
    enum write_status status = write(arena, report, path, &written, &why);
    if (status != WRITE_DONE) {
        say("cannot write '%s': %s", path, why);
        return status == WRITE_FILE_FAULT ? EXIT_FILE : EXIT_FAILED;
    }
    if (strcmp(written, path) != 0)
        say("note[W002]: '%s' was changed by hand since it was written: it is kept, the new one is '%s'", path,
            written);
    if (!quiet)
        fprintf(out, "%s: %s\n", what, written);
    return EXIT_DONE;
}

enum exit_status command_bid(struct arena *arena, const struct options *options)
{
    const char *file = options->argument[0];
    if (!strcmp(file, "-") && !options->output) {
        say("a job from standard input needs -o FILE for its workbook");
        return EXIT_USE;
    }
    const char *path = options->output ? options->output : workbook_name(arena, file);
    if (options->client && !strcmp(options->client, path)) {
        say("the client's file and the cost workbook cannot both be '%s'", path);
        return EXIT_USE;
    }
    if (!strcmp(path, "-") || !*path || (options->client && (!strcmp(options->client, "-") || !*options->client))) {
        say("a workbook needs the name of a file; it is not written to standard output");
        return EXIT_USE;
    }
    struct session session = session_open(arena, options, file);
    struct options show = *options;
    show.output = NULL; /* -o names the workbook here */
    enum exit_status status = session_show(&session, &show, report_bid);
    if (!session.outcome || session.status == EXIT_FAILED)
        return status;
    struct report report = session_report(&session);
    FILE *out = options->json ? stderr : stdout;
    bool quiet = options->quiet;
    status = exit_worse(status, write_one(arena, &report, report_workbook, path, "workbook", quiet, out));
    if (options->client)
        status =
            exit_worse(status, write_one(arena, &report, report_client, options->client, "client file", quiet, out));
    return status;
}
