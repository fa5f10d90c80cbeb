#include "before_cutting.h"

#include "sawbill/text.h"

/* Rules for old paint: 40 CFR 745, subpart E, houses built before 1978 (from memory); asbestos: common practice. */
static const char *const of_old_houses[] = {
    "old paint: a house built before 1978 may have lead in it; have it tested, or let a certified renovator do the "
    "work "
    "(40 CFR 745, from memory)",
    "old plaster, ceiling texture, joint compound, floor tile and pipe wrap may hold asbestos: have them tested before "
    "they are cut",
};
enum { OF_OLD_HOUSES = sizeof of_old_houses / sizeof *of_old_houses };

const char *wall_services(struct arena *arena, const struct wall *wall)
{
    struct buffer text = {.arena = arena};
    const char *name = head_name(arena, KIND_WALL, &wall->head);
    if (wall->services.count == 0)
        return arena_printf(arena,
                            "%s: no wire, pipe or duct is named in it: look before you cut, and switch off what "
                            "may be there",
                            name);
    for (size_t i = 0; i < wall->services.count; i++)
        buffer_printf(&text, "%s%s", i ? ", " : "", wall->services.item[i].text);
    return arena_printf(arena, "%s: find, switch off and free %s; there may be more", name, buffer_text(&text));
}

const char *old_house(size_t index)
{
    return index < OF_OLD_HOUSES ? of_old_houses[index] : NULL;
}

const char **before_cutting(struct arena *arena, const struct job *job, size_t *count)
{
    const char **line = arena_array(arena, job->wall_count + OF_OLD_HOUSES, sizeof *line);
    *count = 0;
    for (size_t i = 0; i < job->wall_count; i++)
        if (job->walls[i].status.choice == WALL_COMES_OUT)
            line[(*count)++] = wall_services(arena, &job->walls[i]);
    for (size_t i = 0; i<OF_OLD_HOUSES && * count + job->removal_count> 0; i++)
        line[(*count)++] = of_old_houses[i];
    return line;
}
