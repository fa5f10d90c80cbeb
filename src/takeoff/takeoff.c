/* takeoff_job(): every topic in the order of the work; and what the topics share. */
#include "counting.h"

#include <string.h>

#include "sawbill/text.h"
#include "sawbill/wide.h"

static bool id_taken(const struct takeoff *takeoff, const char *id)
{
    for (size_t i = 0; i < takeoff->count; i++)
        if (strcmp(takeoff->line[i].id, id) == 0)
            return true;
    return false;
}

static bool is_empty(const char *text)
{
    return !text || !*text;
}

static const char *code_of(const struct counting *counting, const struct takeoff_line *line)
{
    const struct catalog *catalog = counting->catalog;
    if (!is_empty(line->cost_code))
        return line->cost_code;
    if (line->task && !is_empty(line->task->cost_code))
        return line->task->cost_code;
    for (size_t i = 0; i < catalog->price_count && line->item; i++)
        if (!is_empty(catalog->prices[i].cost_code) && name_same(catalog->prices[i].item, line->item))
            return catalog->prices[i].cost_code;
    return "";
}

void line_add(struct counting *counting, struct takeoff_line line, const char *also)
{
    struct takeoff *takeoff = counting->takeoff;
    if (line.count <= 0)
        return;
    if (id_taken(takeoff, line.id) && also)
        line.id = arena_printf(counting->arena, "%s/%s", line.id, also);
    const char *base = line.id;
    for (int again = 2; id_taken(takeoff, line.id); again++)
        line.id = arena_printf(counting->arena, "%s (%d)", base, again);
    line.cost_code = code_of(counting, &line);
    takeoff->line = arena_more(counting->arena, takeoff->line, takeoff->count, &takeoff->capacity, sizeof line);
    takeoff->line[takeoff->count++] = line;
}

void line_add_pieces(struct counting *counting, const struct member *member, int64_t count, length_t length,
                     struct takeoff_line line)
{
    line.is = LINE_PIECES;
    line.class = CLASS_MATERIALS;
    line.unit = "each";
    line.count = decimal_of(count);
    line.member = member;
    line.item = member->code;
    line.length = length;
    line.cost_code = member->cost_code;
    line_add(counting, line, NULL);
}

void line_add_fasteners(struct counting *counting, const char *code, int64_t count, struct takeoff_line line)
{
    const struct fastener *fastener = code ? catalog_fastener(counting->catalog, code) : NULL;
    if (!code || count <= 0)
        return;
    if (!fastener) {
        diag_add(counting->diags, DIAG_C006, &line.at, "'%s' is not in fasteners.csv", code);
        return;
    }
    line.is = LINE_ITEM;
    line.class = CLASS_MATERIALS;
    line.unit = "each";
    line.count = decimal_of(count);
    line.what = arena_printf(counting->arena, "%s %s", fastener->kind ? fastener->kind : "fastener", fastener->code);
    line.item = fastener->item ? fastener->item : fastener->code;
    line.loss = true;
    line.pounds = fastener_pounds(fastener, line.count);
    line.cost_code = fastener->cost_code;
    line_add(counting, line, NULL);
}

decimal_t fastener_pounds(const struct fastener *fastener, decimal_t count)
{
    if (!fastener || fastener->count_per_lb <= 0)
        return 0;
    wide_t per_lb = (wide_t)(fastener->count_per_lb * (double)DECIMAL_ONE + 0.5);
    return decimal_round((decimal_t)divide_round((wide_t)count * DECIMAL_ONE, per_lb), 2);
}

decimal_t decimal_of(int64_t count)
{
    return count * DECIMAL_ONE;
}

char *number_of(struct arena *arena, int64_t count, const char *one, const char *many)
{
    return arena_printf(arena, "%lld %s", (long long)count, count == 1 ? one : many);
}

const char *side_name(int side)
{
    return side == 0 ? "A" : "B";
}

bool is_new_beam(const struct beam *beam)
{
    return beam->status.choice != NE_EXISTING;
}

bool hangs_joists(const struct beam *beam)
{
    return is_new_beam(beam) && beam->set.choice != SET_DROPPED;
}

decimal_t takeoff_board_feet(const struct takeoff_line *line)
{
    if (line->is != LINE_PIECES)
        return 0;
    return board_feet(line->member, (length_t)((wide_t)line->count * line->length / DECIMAL_ONE));
}

const char *takeoff_loss(struct arena *arena, const struct job *job, const struct takeoff_line *line)
{
    if (line->is == LINE_LABOR || line->is == LINE_SUB)
        return "";
    if (line->is == LINE_PIECES)
        return "in the cut plan";
    return line->loss ? percent_text(arena, job->bid.fastener_loss.percent) : "none";
}

struct takeoff *takeoff_job(struct arena *arena, const struct job *job, const struct catalog *catalog,
                            const struct design *design, struct diags *diags)
{
    struct counting counting = {arena, job, catalog, design, diags, arena_alloc(arena, sizeof *counting.takeoff), NULL};
    counting.order = work_order_of(&counting);
    count_shoring(&counting);
    count_posts(&counting);
    count_plies(&counting);
    count_raising(&counting);
    count_fastening(&counting);
    count_cut_lines(&counting);
    count_hangers(&counting);
    count_openings(&counting);
    count_bracing(&counting);
    count_fit_up(&counting);
    say_clashes(&counting);
    count_joints(&counting);
    count_temporary(&counting);
    count_debris(&counting);
    count_assemblies(&counting);
    count_job_lines(&counting);
    count_forgotten(&counting);
    apply_conditions(&counting);
    order_work(&counting);
    return counting.takeoff;
}
