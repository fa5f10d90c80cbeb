#include "forgotten_shown.h"

#include "sawbill/text.h"

const char *forgotten_text(struct arena *arena, const struct takeoff_forgotten *forgotten)
{
    const char *line = forgotten->row->line;
    return *forgotten->why ? arena_printf(arena, "%s: %s", line, forgotten->why) : line;
}

const char *forgotten_list(struct arena *arena, const struct takeoff *takeoff, enum forgotten_state state)
{
    struct buffer text = {.arena = arena};
    for (size_t i = 0; i < takeoff->forgotten_count; i++)
        if (takeoff->forgotten[i].state == state)
            buffer_printf(&text, "%s%s", text.length ? "; " : "", forgotten_text(arena, &takeoff->forgotten[i]));
    return text.length ? buffer_text(&text) : NULL;
}
