/* Walls out, patches, labor, rentals, fees: whatever assemblies.csv counts by a `per` word. */
#include "counting.h"

#include <string.h>

#include "sawbill/text.h"

static const enum cost_class class_of_part[] = {
    [PART_MATERIAL] = CLASS_MATERIALS, [PART_RENTAL] = CLASS_RENTALS, [PART_FEE] = CLASS_FEES};

/* The word's meaning with the finish put in for FINISH. */
static const char *meaning(struct arena *arena, const struct per_info *info, const char *finish)
{
    static const char FINISH[] = "FINISH";
    const char *open = finish ? strstr(info->help, FINISH) : NULL;
    if (!open)
        return info->help;
    return arena_printf(arena, "%.*s'%s'%s", (int)(open - info->help), info->help, finish, open + sizeof FINISH - 1);
}

static const char *how_counted(struct arena *arena, const struct assembly_line *part, const struct per_info *info,
                               decimal_t counted, const char *finish)
{
    const char *of = meaning(arena, info, finish);
    const char *unit = name_same(info->unit, "each") ? "" : arena_printf(arena, " %s", info->unit);
    return arena_printf(arena, "%s%s (%s) x %s", decimal_text(arena, counted), unit, of,
                        decimal_text(arena, part->count));
}

static const char *name_of(const struct assembly_line *part)
{
    return part->item ? part->item : part->task;
}

/* The id says the same whatever a job counts: the second row of an assembly with one item or task has its `per` word,
 * even where the first row comes to nothing. */
static const char *id_of(const struct counting *counting, const struct assembly_line *part)
{
    const char *name = name_of(part);
    for (const struct assembly_line *row = counting->catalog->assemblies; row < part; row++)
        if (name_same(row->assembly, part->assembly) && name_of(row) && name_same(name_of(row), name))
            return arena_printf(counting->arena, "assembly/%s/%s/%s", part->assembly, name, part->per);
    return arena_printf(counting->arena, "assembly/%s/%s", part->assembly, name);
}

static void count_part(struct counting *counting, const struct assembly_line *part)
{
    struct arena *arena = counting->arena;
    const char *finish = NULL;
    struct per_info info;
    per_fn *count = per_find(arena, part->per, &info, &finish);
    if (!count) {
        diag_add(counting->diags, DIAG_C004, &part->at, "nothing is counted per '%s'", part->per);
        return;
    }
    decimal_t counted = count(counting, finish);
    const struct task *task = part->task ? catalog_task(counting->catalog, part->task) : NULL;
    const struct price *price = part->item ? catalog_cheapest(counting->catalog, part->item) : NULL;
    const char *name = name_of(part);
    /* Nails and screws are counted by the piece, whatever they are sold by. */
    const struct fastener *fastener = part->item ? catalog_fastener_of(counting->catalog, part->item) : NULL;
    if (!name || (part->task && !task)) {
        diag_add(counting->diags, DIAG_C004, &part->at, "assembly '%s' names no item and no task of labor.csv",
                 part->assembly);
        return;
    }
    struct takeoff_line line = {
        .id = id_of(counting, part),
        .what = part->item ? catalog_what(counting->catalog, part->item) : name,
        .where = part->assembly,
        .count = decimal_times(counted, part->count, 2),
        .unit = task                                ? task->per
                : !fastener && price && price->unit ? price->unit
                                                    : "each",
        .counted = how_counted(arena, part, &info, counted, finish),
        .is = task ? LINE_LABOR : LINE_ITEM,
        .class = task ? CLASS_LABOR : class_of_part[part->class_of_item],
        .item = part->item,
        .task = task,
        .loss = fastener != NULL,
        .cost_code = part->cost_code,
        .at = part->at,
    };
    line.pounds = fastener_pounds(fastener, line.count);
    line_add(counting, line, part->per);
}

/* per: the word that counts such finishes. */
static bool has_assembly(const struct counting *counting, const char *per, const char *finish)
{
    for (size_t i = 0; i < counting->catalog->assembly_count; i++) {
        const char *of = NULL;
        struct per_info info;
        if (per_find(counting->arena, counting->catalog->assemblies[i].per, &info, &of) && of &&
            name_same(info.per, per) && name_same(of, finish))
            return true;
    }
    return false;
}

/* A finish that no assembly knows would be torn out or made good for nothing: say so.  before, behind: of the word. */
static void note_finish(struct counting *counting, enum kind kind, const struct head *head,
                        const struct text_value *finish, const char *before, const char *behind)
{
    struct arena *arena = counting->arena;
    const char *word = arena_printf(arena, "%sFINISH%s", before, behind);
    if (!finish->at || !finish->text || name_same(finish->text, "none") || has_assembly(counting, word, finish->text))
        return;
    diag_add(counting->diags, DIAG_T002, &finish->at->at,
             "no assembly counts the finish '%s' of '%s': write a row per '%s%s%s' in assemblies.csv", finish->text,
             head_name(arena, kind, head), before, finish->text, behind);
}

/* With no row at all the job would be priced without its labor. */
static void fault_no_rows(struct counting *counting)
{
    if (counting->catalog->assembly_count == 0)
        diag_add(
            counting->diags, DIAG_C006, &counting->job->facts.head.at,
            "assemblies.csv has no row: nothing says what labor and materials taking out a wall and setting a beam "
            "come to");
}

void count_assemblies(struct counting *counting)
{
    fault_no_rows(counting);
    for (size_t i = 0; i < counting->catalog->assembly_count; i++)
        count_part(counting, &counting->catalog->assemblies[i]);
    for (size_t i = 0; i < counting->job->wall_count; i++) {
        const struct wall *wall = &counting->job->walls[i];
        if (wall->status.choice != WALL_COMES_OUT)
            continue;
        note_finish(counting, KIND_WALL, &wall->head, &wall->finish_a, "square foot of ", "");
        note_finish(counting, KIND_WALL, &wall->head, &wall->finish_b, "square foot of ", "");
        note_finish(counting, KIND_WALL, &wall->head, &wall->floor_finish, "foot of ", " floor");
    }
    for (size_t i = 0; i < counting->job->beam_count; i++)
        if (is_new_beam(&counting->job->beams[i]))
            note_finish(counting, KIND_BEAM, &counting->job->beams[i].head, &counting->job->beams[i].ceiling_finish,
                        "square foot of ", " ceiling");
}
