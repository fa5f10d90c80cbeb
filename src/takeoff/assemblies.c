/* Walls out, patches, labor, rentals, fees: whatever assemblies.csv counts by a `per` word. */
#include "counting.h"

#include "sawbill/text.h"

static const enum cost_class class_of_part[] = {
    [PART_MATERIAL] = CLASS_MATERIALS, [PART_RENTAL] = CLASS_RENTALS, [PART_FEE] = CLASS_FEES};

static void report_unknown(struct counting *counting, const struct assembly_line *part)
{
    const char **names = arena_array(counting->arena, per_count(), sizeof *names);
    struct buffer all = {.arena = counting->arena};
    for (size_t i = 0; i < per_count(); i++) {
        names[i] = per_info(i).per;
        buffer_printf(&all, "%s%s", i > 0 ? ", " : "", names[i]);
    }
    const char *near = did_you_mean(counting->arena, part->per, names, per_count());
    if (near)
        diag_add(counting->diags, DIAG_C004, &part->at, "nothing is counted per '%s'; did you mean '%s'?", part->per,
                 near);
    else
        diag_add(counting->diags, DIAG_C004, &part->at, "nothing is counted per '%s'; say one of: %s", part->per,
                 buffer_text(&all));
}

static const char *how_counted(struct arena *arena, const struct assembly_line *part, const struct per_row *row,
                               decimal_t counted, const char *finish)
{
    const char *of =
        finish ? arena_printf(arena, "faces of walls that come out with finish '%s'", finish) : row->info.help;
    return arena_printf(arena, "%s %s (%s) x %s", decimal_text(arena, counted), row->info.unit, of,
                        decimal_text(arena, part->count));
}

static void count_part(struct counting *counting, const struct assembly_line *part)
{
    struct arena *arena = counting->arena;
    const char *finish = NULL;
    const struct per_row *row = per_find(arena, part->per, &finish);
    if (!row) {
        report_unknown(counting, part);
        return;
    }
    decimal_t counted = row->count(counting, finish);
    const struct task *task = part->task ? catalog_task(counting->catalog, part->task) : NULL;
    const struct price *price = part->item ? catalog_cheapest(counting->catalog, part->item) : NULL;
    const char *name = part->item ? part->item : part->task;
    if (!name || (part->task && !task)) {
        diag_add(counting->diags, DIAG_C004, &part->at, "assembly '%s' names no item and no task of labor.csv",
                 part->assembly);
        return;
    }
    struct takeoff_line line = {
        .id = arena_printf(arena, "assembly/%s/%s", part->assembly, name),
        .what = name,
        .where = part->assembly,
        .count = decimal_times(counted, part->count, 2),
        .unit = task                   ? task->per
                : price && price->unit ? price->unit
                                       : "each",
        .counted = how_counted(arena, part, row, counted, finish),
        .is = task ? LINE_LABOR : LINE_ITEM,
        .class = task ? CLASS_LABOR : class_of_part[part->class_of_item],
        .item = part->item,
        .task = task,
        .cost_code = part->cost_code,
        .at = part->at,
    };
    line_add(counting, line, part->per);
}

static bool has_assembly(const struct counting *counting, const char *finish)
{
    for (size_t i = 0; i < counting->catalog->assembly_count; i++) {
        const char *of = NULL;
        per_find(counting->arena, counting->catalog->assemblies[i].per, &of);
        if (of && name_same(of, finish))
            return true;
    }
    return false;
}

/* A finish that no assembly knows would be torn out for nothing: say so. */
static void note_finish(struct counting *counting, const struct wall *wall, const struct text_value *finish)
{
    if (!finish->at || !finish->text || name_same(finish->text, "none") || has_assembly(counting, finish->text))
        return;
    diag_add(counting->diags, DIAG_T002, &finish->at->at,
             "no assembly counts the finish '%s' of '%s': write a row per 'square foot of %s' in assemblies.csv",
             finish->text, head_name(counting->arena, KIND_WALL, &wall->head), finish->text);
}

void count_assemblies(struct counting *counting)
{
    for (size_t i = 0; i < counting->catalog->assembly_count; i++)
        count_part(counting, &counting->catalog->assemblies[i]);
    for (size_t i = 0; i < counting->job->wall_count; i++) {
        const struct wall *wall = &counting->job->walls[i];
        if (wall->status.choice != WALL_COMES_OUT)
            continue;
        note_finish(counting, wall, &wall->finish_a);
        note_finish(counting, wall, &wall->finish_b);
    }
}
