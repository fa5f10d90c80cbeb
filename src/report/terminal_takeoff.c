/* sawbill takeoff on the terminal: every line, how it was counted, what is lost of it. */
#include <string.h>

#include "terminal.h"

static const char *count_text(struct arena *arena, const struct takeoff_line *line)
{
    const char *length = line->length ? arena_printf(arena, " of %s", length_tape(arena, line->length)) : "";
    return arena_printf(arena, "%s %s%s", decimal_text(arena, line->count), line->unit, length);
}

static const char *what_text(struct arena *arena, const struct takeoff_line *line)
{
    const char *of = line->task ? line->task->task : line->item;
    bool more = of && !strstr(line->what, of);
    return arena_printf(arena, "%s%s%s", line->what, more ? ", " : "", more ? of : "");
}

/* Behind the first words of a line: what is known of it, each with its name. */
static void add_word(struct buffer *text, const char *name, const char *word)
{
    if (word && *word)
        buffer_printf(text, "; %s%s", name, word);
}

static void show_line(struct screen *screen, const struct report *report, const struct takeoff_line *line)
{
    enum { UNDER = 4 };
    struct arena *arena = screen->out.arena;
    struct buffer text = {.arena = arena};
    screen_paragraph(screen, WEIGHT_BOLD, 0, UNDER, arena_printf(arena, "%s: %s", line->id, count_text(arena, line)));
    buffer_printf(&text, "%s", what_text(arena, line));
    add_word(&text, "where: ", line->where);
    add_word(&text, "counted: ", line->counted);
    add_word(&text, "weighs ", line->pounds > 0 ? arena_printf(arena, "%s lb", decimal_text(arena, line->pounds)) : "");
    add_word(&text, "", takeoff_board_feet(line) > 0 ? board_feet_text(arena, takeoff_board_feet(line)) : "");
    add_word(&text, "loss: ", takeoff_loss(arena, report->job, line));
    add_word(&text, "code: ", line->cost_code);
    screen_paragraph(screen, WEIGHT_PLAIN, UNDER, UNDER, buffer_text(&text));
}

char *report_takeoff(struct arena *arena, const struct report *report, bool color, int width)
{
    struct screen screen = screen_new(arena, color, width);
    screen_head(&screen, report);
    const struct run *run = report_run(report);
    screen_heading(&screen, "Takeoff");
    for (size_t i = 0; run && run->takeoff && i < run->takeoff->count; i++)
        show_line(&screen, report, &run->takeoff->line[i]);
    screen_caution(&screen);
    return screen_text(&screen);
}
