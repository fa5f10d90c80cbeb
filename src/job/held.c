/* Q015: what stands, lies or hangs where a new beam goes, and what holds it until that beam does.  A load that had the
 * wall and has no shore comes down: a stop.  A budget, which has no shores yet, takes it as an assumption: Q007. */
#include "job_internal.h"

struct holding {
    const struct job *job;
    struct diags *diags;
    const struct beam *beam;
};

static void fault(const struct holding *holding, const struct place *at, const char *what, const char *answers)
{
    const char *beam = holding->beam->head.id;
    diag_add(holding->diags, holding->diags->assume ? DIAG_Q007 : DIAG_Q015, at,
             "nothing holds %s while [beam %s] goes in; write in a [shore ID] 'holds = %s'%s, or in [beam %s] 'shore "
             "engineer = NAME, SHEET'",
             what, beam, what, answers, beam);
}

static const char *name_of(const struct holding *holding, enum kind kind, const struct head *head)
{
    return head_name(holding->diags->arena, kind, head);
}

static bool on_it(const struct holding *holding, const struct ref_value *on)
{
    return ref_found(on) && on->kind == KIND_BEAM && &holding->job->beams[on->index] == holding->beam;
}

static void judge_joists(const struct holding *holding)
{
    for (int side = 0; side < 2; side++) {
        const struct ref_value *ref = &holding->beam->joists[side];
        if (ref_found(ref) && !shore_holds(holding->job, KIND_JOISTS, ref->index))
            fault(holding, &ref->at->at, name_of(holding, KIND_JOISTS, &holding->job->joists[ref->index].head), "");
    }
}

static void judge_loads(const struct holding *holding)
{
    const struct job *job = holding->job;
    for (size_t i = 0; i < job->load_count; i++)
        if (on_it(holding, &job->loads[i].on) && job->loads[i].comes_later.choice != YES &&
            !shore_holds(job, KIND_LOAD, i))
            fault(holding, &job->loads[i].head.at, name_of(holding, KIND_LOAD, &job->loads[i].head),
                  " or here 'held by = shore ID' or 'comes later = yes'");
    for (size_t i = 0; i < job->wall_count; i++)
        if (on_it(holding, &job->walls[i].on) && job->walls[i].comes_later.choice != YES &&
            !shore_holds(job, KIND_WALL, i))
            fault(holding, &job->walls[i].head.at, name_of(holding, KIND_WALL, &job->walls[i].head),
                  " or here 'comes later = yes'");
}

static void judge_braces(const struct holding *holding)
{
    const struct roof *roof = &holding->job->roof;
    if (holding->job->has_roof && roof->braces.count > 0 && on_it(holding, &roof->braces_on) &&
        roof->braces_own_prop.choice != YES && !shore_holds(holding->job, KIND_ROOF, 0))
        fault(holding, place_of(roof->braces.at, &roof->head), "roof braces", " or in [roof] 'braces own prop = yes'");
}

/* Old beams whose ends land on it. */
static void judge_old_beams(const struct holding *holding)
{
    const struct job *job = holding->job;
    for (size_t i = 0; i < job->beam_count; i++)
        for (int end = 0; end < 2; end++) {
            const struct beam *old = &job->beams[i];
            if (old->status.choice == NE_EXISTING && old->end_[end].kind == END_BEAM &&
                on_it(holding, &old->end_[end].ref) && !shore_holds(job, KIND_BEAM, i))
                fault(holding, place_of(old->end_[end].at, &old->head), name_of(holding, KIND_BEAM, &old->head), "");
        }
}

/* An old beam that gets a new post. */
static void judge_new_post(const struct job *job, struct diags *diags, size_t beam, const struct beam_end *on)
{
    const struct beam *old = &job->beams[beam];
    if (on->kind != END_POST || !ref_found(&on->ref) || job->posts[on->ref.index].status.choice == NE_EXISTING ||
        shore_holds(job, KIND_BEAM, beam) || shore_holds(job, KIND_POST, on->ref.index))
        return;
    const char *post = job->posts[on->ref.index].head.id;
    diag_add(
        diags, diags->assume ? DIAG_Q007 : DIAG_Q015, place_of(on->at, &old->head),
        "nothing holds beam %s, which is existing, while post %s, which is new, goes in under it; write in a [shore "
        "ID] 'holds = post %s', in [post %s] 'status = existing', or in [beam %s] 'shore engineer = NAME, SHEET'",
        old->head.id, post, post, post, old->head.id);
}

static void judge_beam(const struct job *job, struct diags *diags, size_t index)
{
    const struct holding holding = {.job = job, .diags = diags, .beam = &job->beams[index]};
    if (holding.beam->shore_engineer.at)
        return;
    if (holding.beam->status.choice == NE_EXISTING) {
        for (int end = 0; end < 2; end++)
            judge_new_post(job, diags, index, &holding.beam->end_[end]);
        for (size_t i = 0; i < holding.beam->inner.count; i++)
            judge_new_post(job, diags, index, &holding.beam->inner.item[i].on);
        return;
    }
    judge_old_beams(&holding);
    if (takes_nothing_over(job, index))
        return;
    judge_joists(&holding);
    judge_loads(&holding);
    judge_braces(&holding);
}

/* A fault of the job may hide what holds it, or that it is there at all: that one comes first. */
void ask_who_holds(const struct job *job, struct diags *diags)
{
    if (diag_has_stop(diags))
        return;
    for (size_t i = 0; i < job->beam_count; i++)
        judge_beam(job, diags, i);
}
