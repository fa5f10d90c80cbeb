/* sawbill field JOB: what the crew works from. */
#include "cli.h"

enum exit_status command_field(struct arena *arena, const struct options *options)
{
    struct session session = session_open(arena, options, options->argument[0]);
    if (!options->json || !session.job || session.status == EXIT_FAILED)
        return session_show(&session, options, report_field);
    struct report report = session_report(&session); /* its own object: the crew's copy holds no money */
    const char *text = report_field_json(arena, &report);
    return text ? exit_worse(session.status, put_text(arena, options, text)) : EXIT_FAILED;
}
