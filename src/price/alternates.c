/* Alternates: the job checked and planned again with an alternate's settings; its price less the job's. */
#include <string.h>

#include "price_internal.h"

static bool same_text(const char *a, const char *b)
{
    return a && b ? !strcmp(a, b) : a == b;
}

static bool already_said(const struct diags *diags, const struct diag *diag)
{
    for (size_t i = 0; i < diags->count; i++) {
        const struct diag *said = &diags->item[i];
        if (said->code == diag->code && said->at.line == diag->at.line && said->at.column == diag->at.column &&
            same_text(said->at.file, diag->at.file) && !strcmp(said->text, diag->text))
            return true;
    }
    return false;
}

/* What only the alternate brings up is told under its name.  Returns how many questions are among it. */
static size_t pass_on(const struct diags *scratch, const char *name, struct diags *diags)
{
    const struct diags before = {.item = diags->item, .count = diags->count};
    size_t asks = 0;
    for (size_t i = 0; i < scratch->count; i++) {
        const struct diag *diag = &scratch->item[i];
        if (already_said(&before, diag))
            continue;
        asks += diag->class == DIAG_ASK;
        diag_add(diags, diag->code, &diag->at, "with %s: %s", name, diag_bare_text(diag));
    }
    return asks;
}

/* The catalogs are read before any alternate: another folder cannot be put in. */
static bool keeps_catalogs(const struct job *job, const struct job *other)
{
    return same_text(job->facts.catalogs.text, other->facts.catalogs.text) &&
           same_text(job->facts.shop_stock.text, other->facts.shop_stock.text);
}

/* The run with the alternate's settings, or NULL. */
static struct run *run_one(struct arena *arena, const struct job *job, const struct catalog *catalog,
                           const struct alternate *alternate, struct diags *scratch)
{
    struct entries entries = entries_with(arena, &job->entries, alternate);
    const struct job *other = job_check(arena, job->file, &entries, scratch);
    if (!diag_has_stop(scratch) && !keeps_catalogs(job, other))
        diag_add(scratch, DIAG_K013, &alternate->head.at,
                 "an alternate cannot bring other catalogs or another shop stock: price that as a job of its own");
    return diag_has_stop(scratch) ? NULL : plan_members(arena, other, catalog, scratch)->run;
}

void plan_alternates(struct arena *arena, const struct job *job, const struct catalog *catalog, struct outcome *outcome,
                     struct diags *diags)
{
    const money_t base = outcome->run->estimate->price;
    outcome->alternate = arena_array(arena, job->alternate_count, sizeof *outcome->alternate);
    outcome->alternate_count = job->alternate_count;
    for (size_t i = 0; i < job->alternate_count; i++) {
        struct alternate_price *price = &outcome->alternate[i];
        price->alternate = &job->alternates[i];
        struct diags scratch = diag_scratch(arena, diags);
        struct run *run = run_one(arena, job, catalog, price->alternate, &scratch);
        if (run && run->internal_failure) {
            outcome->run = run;
            return;
        }
        size_t asks = pass_on(&scratch, head_name(arena, KIND_ALTERNATE, &price->alternate->head), diags);
        if (!run || !run->estimate || diag_has_stop(&scratch))
            continue;
        price->price = run->estimate->price;
        price->difference = price->price - base;
        price->ok = run->design->passes && asks == 0;
    }
}
