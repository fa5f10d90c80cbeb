/* One beam's member by trial: every candidate is sized, those that pass are priced as the whole job, the cheapest that
 * passes is taken. */
#include <math.h>
#include <string.h>

#include "price_internal.h"

/* A candidate at work. */
struct trial {
    struct candidate *candidate;
    const struct design *design; /* NULL: sizing stopped */
    size_t questions;            /* asks, and notes that say 'engineer' */
    const char *question;        /* the last of them */
    money_t exact;               /* whole-job price before rounding */
    const char *no_way;          /* why it does not go into the house, or NULL */
    bool priced;
};
struct trials {
    struct arena *arena;
    const struct job *job;
    const struct catalog *catalog;
    size_t beam;
    const char *name; /* "beam B1" */
    struct selection *selection;
    struct trial *trial;
    size_t count;
    const struct diags *real;
};

/* "beam B1" and "beam B1, end 1", not "beam B10". */
static bool is_own(const struct trials *trials, const char *id)
{
    size_t length = strlen(trials->name);
    return !strncmp(id, trials->name, length) && (id[length] == '\0' || id[length] == ',');
}

static const char *first_stop(const struct diags *diags)
{
    for (size_t i = 0; i < diags->count; i++)
        if (diags->item[i].class == DIAG_STOP)
            return diags->item[i].text;
    return NULL;
}

static void try_on(const struct trials *trials, const struct candidate *candidate)
{
    trials->selection[trials->beam] = (struct selection){candidate->member, candidate->plies};
}

static void size_trial(const struct trials *trials, struct trial *trial)
{
    struct diags scratch = diag_scratch(trials->arena, trials->real);
    try_on(trials, trial->candidate);
    const struct design *design = size_job(trials->arena, trials->job, trials->catalog, trials->selection, &scratch);
    for (size_t i = 0; i < scratch.count; i++)
        if (scratch.item[i].class == DIAG_ASK || scratch.item[i].code == DIAG_S004) {
            trial->questions++;
            trial->question = scratch.item[i].text;
        }
    trial->candidate->why = first_stop(&scratch);
    trial->design = trial->candidate->why ? NULL : design;
}

static const struct member_checks *checks_of(const struct design *design, const char *id)
{
    for (size_t i = 0; i < design->member_count; i++)
        if (!strcmp(design->members[i]->id, id))
            return design->members[i];
    return NULL;
}

/* Another candidate would let this member pass. */
static bool can_pass(const struct trials *trials, const char *id)
{
    for (size_t i = 0; i < trials->count; i++) {
        const struct member_checks *checks = trials->trial[i].design ? checks_of(trials->trial[i].design, id) : NULL;
        if (checks && checks->passes)
            return true;
    }
    return false;
}

static const struct check *worst_check(const struct member_checks *checks)
{
    const struct check *worst = NULL;
    for (size_t i = 0; i < checks->count; i++)
        if (!worst || checks->check[i].ratio > worst->ratio)
            worst = &checks->check[i];
    return worst;
}

/* "bending 1.21"; of another member "post P1: bearing 1.10"; without capacity "end hanger: none fits". */
static const char *check_text(const struct trials *trials, const char *id, const struct check *check)
{
    const char *whose = is_own(trials, id) ? "" : arena_printf(trials->arena, "%s: ", id);
    if (isfinite(check->ratio))
        return arena_printf(trials->arena, "%s%s %s", whose, check->name, ratio_text(trials->arena, check->ratio));
    return arena_printf(trials->arena, "%s%s: %s", whose, check->name, check->note ? check->note : "no capacity");
}

/* The candidate's own checks must pass, and it may not fail another member that some candidate would not fail. */
static void judge(const struct trials *trials, struct trial *trial)
{
    struct candidate *candidate = trial->candidate;
    bool fails = false, has_own = false;
    double worst = -1;
    for (size_t i = 0; i < trial->design->member_count; i++) {
        const struct member_checks *checks = trial->design->members[i];
        const struct check *check = worst_check(checks);
        bool own = is_own(trials, checks->id);
        bool blamed = !checks->passes && (own || can_pass(trials, checks->id));
        has_own = has_own || own;
        if (!check || !(own || blamed) || (fails && !blamed))
            continue;
        if (blamed == fails && check->ratio <= worst)
            continue;
        fails = blamed;
        worst = candidate->ratio = check->ratio;
        candidate->why = check_text(trials, checks->id, check);
    }
    candidate->passes = has_own && !fails;
    if (!has_own)
        candidate->why = "it cannot be sized";
}

/* What only an engineer can answer, when another candidate does not ask it. */
static void judge_questions(const struct trials *trials)
{
    size_t least = SIZE_MAX;
    for (size_t i = 0; i < trials->count; i++)
        if (trials->trial[i].design && trials->trial[i].questions < least)
            least = trials->trial[i].questions;
    for (size_t i = 0; i < trials->count; i++) {
        struct trial *trial = &trials->trial[i];
        if (!trial->candidate->passes || trial->questions <= least)
            continue;
        trial->candidate->passes = false;
        trial->candidate->why = trial->question;
    }
}

/* How it goes up, from the takeoff of the whole job with it. */
static void note_raising(const struct trials *trials, struct trial *trial, const struct run *run)
{
    struct candidate *candidate = trial->candidate;
    for (size_t i = 0; run->takeoff && i < run->takeoff->raising_count; i++) {
        const struct raising *raising = &run->takeoff->raising[i];
        if (raising->design->beam != candidate->beam)
            continue;
        for (size_t k = 0; k < raising->way_count; k++)
            if (raising->way[k].known && !raising->way[k].goes)
                trial->no_way = arena_printf(trials->arena, "does not go in: %s", raising->way[k].how);
        if (candidate->passes && raising->needs_lift)
            candidate->why =
                arena_printf(trials->arena, "%s; too heavy for the crew, a lift is in the price", candidate->why);
    }
}

/* The whole job with it.  Returns a run whose cut plan was rejected, else NULL. */
static struct run *price_trial(const struct trials *trials, struct trial *trial)
{
    struct diags scratch = diag_scratch(trials->arena, trials->real);
    struct candidate *candidate = trial->candidate;
    try_on(trials, candidate);
    struct run *run = run_job(trials->arena, trials->job, trials->catalog, trials->selection, &scratch);
    if (run->internal_failure)
        return run;
    const char *stop = first_stop(&scratch);
    if (stop || !run->estimate) {
        candidate->why = stop ? stop : "it could not be priced";
        return NULL;
    }
    note_raising(trials, trial, run);
    trial->priced = true;
    trial->exact = run->estimate->before_tax + run->estimate->tax;
    if (candidate->passes) {
        candidate->price = run->estimate->price;
        candidate->direct = run->estimate->direct;
    }
    return NULL;
}

/* One that does not go into the house, when another does. */
static void judge_ways(const struct trials *trials)
{
    bool one_goes = false;
    for (size_t i = 0; i < trials->count; i++)
        one_goes = one_goes || (trials->trial[i].candidate->passes && !trials->trial[i].no_way);
    for (size_t i = 0; i < trials->count; i++) {
        struct trial *trial = &trials->trial[i];
        if (!one_goes || !trial->candidate->passes || !trial->no_way)
            continue;
        trial->candidate->passes = false;
        trial->candidate->why = trial->no_way;
        trial->candidate->price = trial->candidate->direct = 0;
    }
}

static struct run *price_passing(const struct trials *trials)
{
    for (size_t i = 0; i < trials->count; i++) {
        struct trial *trial = &trials->trial[i];
        if (!trial->candidate->passes)
            continue;
        struct run *failed = price_trial(trials, trial);
        if (failed)
            return failed;
        trial->candidate->passes = trial->priced;
    }
    judge_ways(trials);
    return NULL;
}

static const struct trial *cheapest(const struct trials *trials)
{
    const struct trial *best = NULL;
    for (size_t i = 0; i < trials->count; i++) {
        const struct trial *trial = &trials->trial[i];
        if (!trial->candidate->passes)
            continue;
        if (!best || trial->exact < best->exact ||
            (trial->exact == best->exact && trial->candidate->plies < best->candidate->plies))
            best = trial;
    }
    return best;
}

/* The least failing ratio among those not yet tried. */
static struct trial *strongest(const struct trials *trials, const bool *tried)
{
    struct trial *best = NULL;
    for (size_t i = 0; i < trials->count; i++) {
        struct trial *trial = &trials->trial[i];
        if (tried[i] || !trial->design || isnan(trial->candidate->ratio))
            continue;
        if (!best || trial->candidate->ratio < best->candidate->ratio)
            best = trial;
    }
    return best;
}

/* None passes: the strongest that can be bought and cut; when none can, the strongest. */
static const struct trial *strongest_to_be_had(const struct trials *trials, struct run **failed)
{
    bool *tried = arena_array(trials->arena, trials->count, sizeof *tried);
    const struct trial *first = strongest(trials, tried);
    struct trial *trial;
    while ((trial = strongest(trials, tried)) != NULL) {
        const char *why = trial->candidate->why;
        tried[trial - trials->trial] = true;
        *failed = price_trial(trials, trial);
        if (*failed || trial->priced)
            return trial;
        trial->candidate->why = why; /* the check it fails, not the stop: none passes anyway */
    }
    return first ? first : &trials->trial[0];
}

static void note_none(const struct trials *trials, const struct trial *kept, struct diags *diags)
{
    const struct beam *beam = kept->candidate->beam;
    diag_add(diags, DIAG_S003, place_of(beam->choose.at, &beam->head),
             "no member that may be chosen for '%s' passes; the strongest is kept, '%s' in %d %s: %s", trials->name,
             kept->candidate->member->code, kept->candidate->plies, kept->candidate->plies == 1 ? "ply" : "plies",
             kept->candidate->why);
}

static void size_trials(const struct trials *trials)
{
    for (size_t i = 0; i < trials->count; i++)
        size_trial(trials, &trials->trial[i]);
    for (size_t i = 0; i < trials->count; i++)
        if (trials->trial[i].design)
            judge(trials, &trials->trial[i]);
    judge_questions(trials);
}

static struct run *take_best(const struct trials *trials, struct diags *diags)
{
    bool sized = false;
    for (size_t i = 0; i < trials->count; i++)
        sized = sized || trials->trial[i].candidate->passes;
    struct run *failed = price_passing(trials);
    if (failed)
        return failed;
    const struct trial *taken = cheapest(trials);
    if (!taken) {
        taken = strongest_to_be_had(trials, &failed);
        /* Those that pass can only be missing for want of a price or a length: the run itself then says so. */
        if (!failed && !sized && taken->design)
            note_none(trials, taken, diags);
    }
    taken->candidate->chosen = true;
    try_on(trials, taken->candidate);
    return failed;
}

struct run *choose_beam(struct arena *arena, const struct job *job, const struct catalog *catalog,
                        struct selection *selection, struct choice *choice, struct diags *diags)
{
    struct trials trials = {.arena = arena,
                            .job = job,
                            .catalog = catalog,
                            .beam = choice->beam,
                            .name = head_name(arena, KIND_BEAM, &job->beams[choice->beam].head),
                            .selection = selection,
                            .count = choice->count,
                            .real = diags};
    trials.trial = arena_array(arena, choice->count, sizeof *trials.trial);
    for (size_t i = 0; i < choice->count; i++)
        trials.trial[i].candidate = &choice->candidate[i];
    size_trials(&trials);
    return take_best(&trials, diags);
}
