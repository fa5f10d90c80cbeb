/* What may be chosen for a beam: catalog members of the materials asked for, in each number of plies. */
#include <math.h>

#include "price_internal.h"
#include "sawbill/text.h"

static bool is_asked(const struct beam *beam, const struct member *member)
{
    for (size_t i = 0; i < beam->material.count; i++)
        if (name_same(beam->material.item[i].text, member->material))
            return true;
    return beam->material.count == 0;
}

static bool may_be_beam(const struct beam *beam, const struct member *member)
{
    if (!(member->use & USE_BEAM) || !is_asked(beam, member))
        return false;
    return !beam->most_depth.at || member->depth <= beam->most_depth.length;
}

static int most_plies_of(const struct beam *beam, const struct member *member)
{
    if (!beam->most_plies.at || beam->most_plies.count > member->most_plies)
        return member->most_plies;
    return beam->most_plies.count;
}

/* `plies` beside `choose` fixes their number. */
static bool plies_fit(const struct beam *beam, int plies)
{
    return !beam->plies.at || beam->plies.count == plies;
}

struct candidate *beam_candidates(struct arena *arena, const struct catalog *catalog, const struct beam *beam,
                                  size_t *count)
{
    struct candidate *list = NULL;
    size_t capacity = 0;
    *count = 0;
    for (size_t i = 0; i < catalog->member_count; i++) {
        const struct member *member = &catalog->members[i];
        if (!may_be_beam(beam, member))
            continue;
        for (int plies = 1; plies <= most_plies_of(beam, member); plies++) {
            if (!plies_fit(beam, plies))
                continue;
            list = arena_more(arena, list, *count, &capacity, sizeof *list);
            list[(*count)++] = (struct candidate){.beam = beam, .member = member, .plies = plies, .ratio = NAN};
        }
    }
    return list;
}
