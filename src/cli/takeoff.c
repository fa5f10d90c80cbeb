/* sawbill takeoff JOB: every line that is bought, cut and done, and how it was counted. */
#include "cli.h"

enum exit_status command_takeoff(struct arena *arena, const struct options *options)
{
    struct session session = session_open(arena, options, options->argument[0]);
    return session_show(&session, options, report_takeoff);
}
