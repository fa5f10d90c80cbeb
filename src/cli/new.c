/* sawbill new [FILE]: a commented job file that passes `check` as it stands. */
#include <stdio.h>
#include <string.h>
#include <sys/stat.h>

#include "cli.h"

enum exit_status command_new(struct arena *arena, const struct options *options)
{
    struct options to = *options;
    if (options->argument_count == 1)
        to.output = options->argument[0];
    struct stat there;
    if (to.output && strcmp(to.output, "-") != 0 && stat(to.output, &there) == 0) {
        say("'%s' is there already: it is not overwritten", to.output);
        return EXIT_FILE;
    }
    return put_text(arena, &to, job_template(arena));
}
