/* The member of each beam that is to be chosen, in load-path order, then the run with them. */
#include "price_internal.h"
#include "sawbill/text.h"

/* Every choice of the job at work. */
struct choices {
    struct choice *choice;
    size_t count, capacity;
    struct selection *selection;
};

static bool material_exists(const struct catalog *catalog, const char *material)
{
    for (size_t i = 0; i < catalog->member_count; i++)
        if ((catalog->members[i].use & USE_BEAM) && name_same(catalog->members[i].material, material))
            return true;
    return false;
}

static void say_unknown_materials(struct arena *arena, const struct catalog *catalog, const struct beam *beam,
                                  struct diags *diags)
{
    const char **names = arena_array(arena, catalog->member_count, sizeof *names);
    size_t count = 0;
    for (size_t i = 0; i < catalog->member_count; i++)
        if (catalog->members[i].use & USE_BEAM)
            names[count++] = catalog->members[i].material;
    for (size_t i = 0; i < beam->material.count; i++) {
        const struct text_value *material = &beam->material.item[i];
        if (material_exists(catalog, material->text))
            continue;
        const char *meant = did_you_mean(arena, material->text, names, count);
        diag_add(diags, DIAG_C006, place_of(material->at, &beam->head),
                 "no member for beams in members.csv has the material '%s'%s%s%s", material->text,
                 meant ? "; did you mean '" : "", meant ? meant : "", meant ? "'?" : "");
    }
}

/* A measure of strength that ranks members before any is checked: plies x section modulus x Fb. */
static double strength(const struct candidate *candidate)
{
    const struct member *member = candidate->member;
    double depth = length_inches(member->depth), fb = member->values ? member->values->fb : 1;
    return candidate->plies * length_inches(member->ply_width) * depth * depth / 6 * fb;
}

/* What stands in for a beam until its turn comes, so that what hangs on it has a carrier. */
static struct selection stand_in(const struct choice *choice)
{
    const struct candidate *best = &choice->candidate[0];
    for (size_t i = 1; i < choice->count; i++)
        if (strength(&choice->candidate[i]) > strength(best))
            best = &choice->candidate[i];
    return (struct selection){best->member, best->plies};
}

static void add_choice(struct arena *arena, const struct job *job, const struct catalog *catalog, size_t index,
                       struct choices *choices, struct diags *diags)
{
    const struct beam *beam = &job->beams[index];
    struct choice choice = {.beam = index};
    say_unknown_materials(arena, catalog, beam, diags);
    choice.candidate = beam_candidates(arena, catalog, beam, &choice.count);
    if (choice.count == 0) {
        diag_add(diags, DIAG_C006, place_of(beam->choose.at, &beam->head),
                 "members.csv has no member for beams of the material, depth and plies asked for '%s'",
                 head_name(arena, KIND_BEAM, &beam->head));
        return;
    }
    choices->choice = arena_more(arena, choices->choice, choices->count, &choices->capacity, sizeof choice);
    choices->choice[choices->count++] = choice;
    choices->selection[index] = stand_in(&choice);
}

static struct choices list_choices(struct arena *arena, const struct job *job, const struct catalog *catalog,
                                   struct diags *diags)
{
    struct choices choices = {.selection = arena_array(arena, job->beam_count, sizeof *choices.selection)};
    if (job->beam_count == 0)
        return choices;
    const size_t *order = beam_order(arena, job);
    for (size_t i = 0; i < job->beam_count; i++)
        if (job->beams[order[i]].choose.choice == YES)
            add_choice(arena, job, catalog, order[i], &choices, diags);
    return choices;
}

/* Candidates as they were before a round. */
static void reset(struct arena *arena, const struct job *job, const struct catalog *catalog, struct choice *choice)
{
    choice->candidate = beam_candidates(arena, catalog, &job->beams[choice->beam], &choice->count);
}

static struct run *choose_round(struct arena *arena, const struct job *job, const struct catalog *catalog,
                                const struct choices *choices, struct diags *diags)
{
    for (size_t i = 0; i < choices->count; i++) {
        reset(arena, job, catalog, &choices->choice[i]);
        struct run *failed = choose_beam(arena, job, catalog, choices->selection, &choices->choice[i], diags);
        if (failed)
            return failed;
    }
    return NULL;
}

/* With more than one choice a second round: the first saw stand-ins in place of the beams after it. */
static struct run *choose_all(struct arena *arena, const struct job *job, const struct catalog *catalog,
                              const struct choices *choices, struct diags *diags)
{
    if (choices->count > 1) {
        struct diags scratch = diag_scratch(arena, diags);
        struct run *failed = choose_round(arena, job, catalog, choices, &scratch);
        if (failed)
            return failed;
    }
    return choose_round(arena, job, catalog, choices, diags);
}

static void gather_candidates(struct arena *arena, const struct choices *choices, struct outcome *outcome)
{
    size_t capacity = 0;
    for (size_t i = 0; i < choices->count; i++)
        for (size_t j = 0; j < choices->choice[i].count; j++) {
            outcome->candidate =
                arena_more(arena, outcome->candidate, outcome->candidate_count, &capacity, sizeof *outcome->candidate);
            outcome->candidate[outcome->candidate_count++] = choices->choice[i].candidate[j];
        }
}

struct outcome *plan_members(struct arena *arena, const struct job *job, const struct catalog *catalog,
                             struct diags *diags)
{
    struct outcome *outcome = arena_alloc(arena, sizeof *outcome);
    struct choices choices = list_choices(arena, job, catalog, diags);
    if (diag_has_stop(diags))
        return outcome;
    outcome->run = choose_all(arena, job, catalog, &choices, diags);
    gather_candidates(arena, &choices, outcome);
    if (!outcome->run)
        outcome->run = run_job(arena, job, catalog, choices.selection, diags);
    return outcome;
}
