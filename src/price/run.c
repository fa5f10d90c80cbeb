/* Every stage in turn for one selection of members; after a stop the later ones are not run. */
#include "price_internal.h"

static bool has_stop(const struct diags *diags)
{
    return diag_count(diags, DIAG_STOP) > 0;
}

struct run *run_job(struct arena *arena, const struct job *job, const struct catalog *catalog,
                    const struct selection *selection, struct diags *diags)
{
    struct run *run = arena_alloc(arena, sizeof *run);
    *run = (struct run){.job = job, .catalog = catalog, .selection = selection};
    run->design = size_job(arena, job, catalog, selection, diags);
    if (has_stop(diags))
        return run;
    run->takeoff = takeoff_job(arena, job, catalog, run->design, diags);
    if (has_stop(diags) || !buy_job(arena, run, diags))
        return run;
    run->estimate = price_job(arena, job, run->takeoff, run->order, catalog, diags);
    return run;
}

struct diags scratch_diags(struct arena *arena, const struct diags *real)
{
    return (struct diags){.arena = arena, .assume = real->assume};
}
