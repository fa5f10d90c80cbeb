/* What the job's own references say of the load path. */
#include "job_internal.h"

static bool names(const struct ref_value *ref, enum kind kind, size_t index)
{
    return ref_found(ref) && ref->kind == kind && ref->index == index;
}

static bool bears_on(const struct beam *beam, size_t post)
{
    for (int end = 0; end < 2; end++)
        if (beam->end_[end].kind == END_POST && names(&beam->end_[end].ref, KIND_POST, post))
            return true;
    for (size_t i = 0; i < beam->inner.count; i++)
        if (beam->inner.item[i].on.kind == END_POST && names(&beam->inner.item[i].on.ref, KIND_POST, post))
            return true;
    return false;
}

/* `left`: steps that are left before the references must have gone round in a circle. */
static bool carries(const struct job *job, enum kind kind, size_t index, size_t left)
{
    if (kind == KIND_POST)
        for (size_t i = 0; i < job->beam_count; i++)
            if (bears_on(&job->beams[i], index))
                return true;
    for (size_t i = 0; left > 0 && i < job->post_count; i++)
        if (names(&job->posts[i].stands_on, kind, index) && carries(job, KIND_POST, i, left - 1))
            return true;
    for (size_t i = 0; left > 0 && i < job->block_count; i++)
        if (names(&job->blocks[i].stands_on, kind, index) && carries(job, KIND_BLOCK, i, left - 1))
            return true;
    return false;
}

bool carries_something(const struct job *job, enum kind kind, size_t index)
{
    return carries(job, kind, index, job->post_count + job->block_count);
}

bool shore_holds(const struct job *job, enum kind kind, size_t index)
{
    for (size_t i = 0; i < job->shore_count; i++)
        for (size_t k = 0; k < job->shores[i].holds.count; k++)
            if (names(&job->shores[i].holds.item[k], kind, index))
                return true;
    return kind == KIND_LOAD && job->loads[index].held_by.at != NULL;
}

bool takes_nothing_over(const struct job *job, size_t beam)
{
    if (job->beams[beam].set.choice != SET_DROPPED || job->removal_count > 0)
        return false;
    for (size_t i = 0; i < job->wall_count; i++) {
        const struct wall *wall = &job->walls[i];
        bool elsewhere = wall->bearing.choice == NO || (ref_found(&wall->under) && wall->under.index != beam);
        if (wall->status.choice == WALL_COMES_OUT && !elsewhere)
            return false;
    }
    return true;
}
