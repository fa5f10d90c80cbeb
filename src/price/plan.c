/* The job planned: its beams chosen, then its alternates priced against it. */
#include "price_internal.h"

struct outcome *plan_job(struct arena *arena, const struct job *job, const struct catalog *catalog, struct diags *diags)
{
    struct outcome *outcome = plan_members(arena, job, catalog, diags);
    if (outcome->run && outcome->run->estimate && !outcome->run->internal_failure && !diag_has_stop(diags))
        plan_alternates(arena, job, catalog, outcome, diags);
    return outcome;
}
