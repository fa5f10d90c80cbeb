/* Joists that are put in new: places of their own among those of the field, or one more ply beside a joist. */
#include "size.h"

bool joist_gets_another(const struct joists *joists, length_t at)
{
    for (size_t i = 0; i < joists->new_beside.count; i++)
        if (joists->new_beside.item[i] == at)
            return true;
    return false;
}

/* Before the first that is farther from end 1. */
static void put_in(struct sizing *s, struct joist_design *jd, length_t at)
{
    length_t *place = arena_array(s->arena, jd->count + 1, sizeof *place);
    size_t count = 0;
    bool in = false;
    for (size_t i = 0; i < jd->count; i++) {
        if (!in && jd->place[i] > at) {
            place[count++] = at;
            in = true;
        }
        place[count++] = jd->place[i];
    }
    if (!in)
        place[count++] = at;
    jd->place = place;
    jd->count = count;
}

void joists_add_new(struct sizing *s, struct joist_design *jd)
{
    for (size_t i = 0; i < jd->joists->new_at.count; i++)
        put_in(s, jd, jd->joists->new_at.item[i]);
}

void joists_new_fault(struct sizing *s, const struct joist_design *jd)
{
    const struct joists *joists = jd->joists;
    const struct lengths_value *list = &joists->new_at;
    for (size_t i = 0; i < list->count; i++) {
        int there = 0;
        for (size_t k = 0; k < jd->count; k++)
            there += jd->place[k] == list->item[i];
        if (there > 1)
            diag_add(s->diags, DIAG_S001, place_of(list->at, &joists->head),
                     "'new at' %s of %s: another joist stands there; write 'new beside' for one at its side",
                     length_tape(s->arena, list->item[i]), head_name(s->arena, KIND_JOISTS, &joists->head));
    }
}
