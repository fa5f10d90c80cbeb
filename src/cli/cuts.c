/* sawbill cuts JOB: the cut plan, stick by stick. */
#include "cli.h"

enum exit_status command_cuts(struct arena *arena, const struct options *options)
{
    struct session session = session_open(arena, options, options->argument[0]);
    return session_show(&session, options, report_cuts);
}
