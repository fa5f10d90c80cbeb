/* sawbill order JOB: what to buy, by supplier. */
#include "cli.h"

enum exit_status command_order(struct arena *arena, const struct options *options)
{
    struct session session = session_open(arena, options, options->argument[0]);
    return session_show(&session, options, report_order);
}
