/* What the job says of how things are held while a beam goes in, where no shore of it does: none of that is checked. */
#include "size.h"

#include "sawbill/text.h"

static void say_beam(struct sizing *s, size_t index)
{
    const struct beam *beam = &s->job->beams[index];
    const char *name = head_name(s->arena, KIND_BEAM, &beam->head);
    if (beam->shore_engineer.at)
        unchecked_add(s, arena_printf(s->arena,
                                      "not checked: what holds all that comes to %s while it goes in, beside the "
                                      "shores of this job: by the engineer, %s",
                                      name, beam->shore_engineer.text));
    else if (beam->status.choice != NE_EXISTING && takes_nothing_over(s->job, index))
        unchecked_add(s, arena_printf(s->arena,
                                      "not checked: what carries the load of %s until it does: it goes in below, and "
                                      "nothing that comes out is under it",
                                      name));
}

static void say_later(struct sizing *s, enum kind kind, const struct head *head, const struct choice_value *later)
{
    if (later->choice == YES)
        basis_add(s, arena_printf(s->arena,
                                  "%s comes later, by the job: no shore holds it, and it is put there once the "
                                  "shores are out",
                                  head_name(s->arena, kind, head)));
}

void held_say(struct sizing *s)
{
    for (size_t i = 0; i < s->job->beam_count; i++)
        say_beam(s, i);
    for (size_t i = 0; i < s->job->load_count; i++)
        say_later(s, KIND_LOAD, &s->job->loads[i].head, &s->job->loads[i].comes_later);
    for (size_t i = 0; i < s->job->wall_count; i++)
        say_later(s, KIND_WALL, &s->job->walls[i].head, &s->job->walls[i].comes_later);
    if (s->job->roof.braces.count > 0 && s->job->roof.braces_own_prop.choice == YES)
        unchecked_add(s, "not checked: the props under the roof braces and the floor below them");
}
