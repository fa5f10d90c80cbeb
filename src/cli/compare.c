/* sawbill compare JOB: members side by side on the whole job's price. */
#include "cli.h"

enum exit_status command_compare(struct arena *arena, const struct options *options)
{
    struct session session = session_open(arena, options, options->argument[0]);
    return session_show(&session, options, report_compare);
}
