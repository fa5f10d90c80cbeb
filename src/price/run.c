/* Every stage in turn for one selection of members; after a stop the later ones are not run. */
#include "price_internal.h"

struct run *run_job(struct arena *arena, const struct job *job, const struct catalog *catalog,
                    const struct selection *selection, struct diags *diags)
{
    struct run *run = arena_alloc(arena, sizeof *run);
    *run = (struct run){.job = job, .catalog = catalog, .selection = selection};
    run->design = size_job(arena, job, catalog, selection, diags);
    if (diag_has_stop(diags))
        return run;
    run->takeoff = takeoff_job(arena, job, catalog, run->design, diags);
    if (diag_has_stop(diags) || !buy_job(arena, run, diags))
        return run;
    run->estimate = price_job(arena, job, run->takeoff, run->order, catalog, diags);
    return run;
}
