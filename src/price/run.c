/* Every stage in turn for one selection of members; after a stop the later ones are not run. */
#include "price_internal.h"

static bool has_stop(const struct diags *diags)
{
    return diag_count(diags, DIAG_STOP) > 0;
}

/* false: a stop, or a plan that its verifier rejects. */
static bool run_cuts(struct arena *arena, struct run *run, struct diags *diags)
{
    size_t count = 0;
    struct cut_problem *problem = cut_problems_from_takeoff(arena, run->takeoff, run->catalog, run->job, &count, diags);
    run->plans = arena_array(arena, count, sizeof(struct cut_plan *));
    for (size_t i = 0; i < count; i++) {
        struct cut_plan *plan = cut_solve(arena, &problem[i], NULL, diags);
        if (!plan || has_stop(diags))
            continue;
        const char *wrong = cut_verify(&problem[i], plan);
        if (wrong) {
            run->internal_failure = true;
            run->failure = arena_printf(arena, "cut plan of '%s': %s", problem[i].member, wrong);
            return false;
        }
        run->plans[run->plan_count++] = plan;
    }
    return !has_stop(diags);
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
    if (has_stop(diags) || !run_cuts(arena, run, diags))
        return run;
    run->order = order_job(arena, job, catalog, run->takeoff, run->plans, run->plan_count, diags);
    run->estimate = price_job(arena, job, run->takeoff, run->order, catalog, diags);
    return run;
}

struct diags scratch_diags(struct arena *arena, const struct diags *real)
{
    return (struct diags){.arena = arena, .assume = real->assume};
}
