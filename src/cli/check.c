/* sawbill check JOB: the load path and every check. */
#include "cli.h"

enum exit_status command_check(struct arena *arena, const struct options *options)
{
    struct session session = session_open(arena, options, options->argument[0]);
    return session_show(&session, options, report_check);
}
