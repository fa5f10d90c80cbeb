/* The program: reads options, runs the library's stages, prints.  The only layer that touches the terminal, the
 * environment and the exit status. */
#ifndef SAWBILL_CLI_H
#define SAWBILL_CLI_H

#include <stdbool.h>
#include <stddef.h>

#include "sawbill/report.h"

/* As everywhere in the manual: 0 done, 1 done but a check fails or an ask is open, 2 wrong use, 3 a stop, 4 a file
 * could not be read or written, 5 internal failure. */
enum exit_status { EXIT_DONE, EXIT_OPEN, EXIT_USE, EXIT_STOPPED, EXIT_FILE, EXIT_FAILED };

/* Of 'sawbill cuts' alone. */
struct cuts_options {
    const char *certificate, *shop_stock; /* files to write */
    const char *stock;                    /* a list of stock: the argument is then a list of pieces, not a job */
    const char *kerf, *trim, *least_cutoff, *seconds;
    bool both_ends, square_both_ends;
    const char *first; /* the first of these that was given, for messages; NULL: none */
};
struct options {
    const char *output; /* -o */
    const char *client; /* --client */
    bool json, quiet, color;
    int width; /* of the terminal, in columns */
    const char *const *argument;
    size_t argument_count;
    struct cuts_options cuts;
};

/* A job taken through all its stages, or as far as its faults allow. */
struct session {
    struct arena *arena;
    struct diags diags;
    const char *job_file;
    const struct job *job;
    const struct catalog *catalog;
    const struct outcome *outcome;
    enum exit_status status;
};

/* Reads `file` ("-": standard input) and runs every stage; shows the messages on standard error.  status says how it
 * went. */
struct session session_open(struct arena *arena, const struct options *options, const char *file);
struct report session_report(const struct session *session);
/* What most commands do: prints JSON or the text that `show` makes, on standard output or into -o FILE. */
typedef char *show_fn(struct arena *arena, const struct report *report, bool color, int width);
enum exit_status session_show(struct session *session, const struct options *options, show_fn *show);

/* The worse of two. */
enum exit_status exit_worse(enum exit_status a, enum exit_status b);
/* One line on standard error, after "sawbill: ". */
void say(const char *format, ...) __attribute__((format(printf, 1, 2)));
/* Text on standard output, or safely into options->output. */
enum exit_status put_text(struct arena *arena, const struct options *options, const char *text);
/* The same into a file of its own. */
enum exit_status write_text(struct arena *arena, const char *file, const char *text);
/* Messages on standard error; notes not when quiet. */
void show_diags(struct arena *arena, const struct diags *diags, bool quiet);
/* The whole of a file, or standard input for "-"; NULL after saying why. */
char *read_file(struct arena *arena, const char *file, size_t *length);

typedef enum exit_status command_fn(struct arena *arena, const struct options *options);
command_fn command_bid, command_check, command_compare, command_cuts, command_order, command_takeoff, command_field,
    command_keys, command_new;

#endif
