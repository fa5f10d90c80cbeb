/* sawbill check on the terminal: the load path from the ground up, and every check. */
#include "terminal.h"

#include <math.h>
#include <string.h>

#include "before_cutting.h"
#include "load_shown.h"
#include "raising_shown.h"

enum { PATH_DEPTH_MOST = 24 }; /* beams on beams on posts: a house has far fewer; references cannot go round */

static const struct column path_columns[] = {
    {"From the ground up", false, true}, {"At", true, false},        {"Dead", true, false}, {"Live", true, false},
    {"Of it attic", true, false},        {"Roof live", true, false}, {"Snow", true, false}, {"All", true, false},
};

struct path_walk {
    struct table table;
    const struct design *design;
    bool *shown; /* a step whose own loads stand above already */
};

static bool is_carried(const struct design *design, const char *node)
{
    for (size_t i = 0; i < design->path_count; i++)
        if (node_same(design->path[i].from, node))
            return true;
    return false;
}

static void add_path_row(struct path_walk *walk, const char *label, const struct path_step *step)
{
    struct arena *arena = walk->table.arena;
    struct table_row *row = table_row(&walk->table);
    row->cell[0] = label;
    if (!step)
        return;
    double sum = 0;
    row->cell[1] = place_text(arena, step->at_in);
    for (int i = 0; i < SHOWN_LOADS; i++)
        row->cell[2 + i] = pounds_text(arena, load_shown(&step->lb, i));
    for (int i = 0; i < LOAD_SOURCES; i++)
        sum += i == LOAD_UPLIFT ? 0 : step->lb.of[i];
    row->cell[2 + SHOWN_LOADS] = pounds_text(arena, sum);
}

static void mark_shown(struct path_walk *walk, const char *node)
{
    for (size_t i = 0; i < walk->design->path_count; i++)
        if (node_same(walk->design->path[i].to, node))
            walk->shown[i] = true;
}

static size_t last_onto(const struct design *design, const char *node)
{
    size_t last = design->path_count;
    for (size_t i = 0; i < design->path_count; i++)
        if (node_same(design->path[i].to, node))
            last = i;
    return last;
}

/* Everything that stands on `node`, each with what stands on it in turn. */
static void walk_onto(struct path_walk *walk, const char *node, const char *lead, int depth)
{
    struct arena *arena = walk->table.arena;
    const struct design *design = walk->design;
    size_t last = last_onto(design, node);
    if (last == design->path_count || depth > PATH_DEPTH_MOST)
        return;
    if (walk->shown[last]) {
        add_path_row(walk, arena_printf(arena, "%s└─ (its loads stand above)", lead), NULL);
        return;
    }
    mark_shown(walk, node);
    for (size_t i = 0; i <= last; i++) {
        const struct path_step *step = &design->path[i];
        if (!node_same(step->to, node))
            continue;
        add_path_row(walk, arena_printf(arena, "%s%s %s", lead, i == last ? "└─" : "├─", step->from), step);
        walk_onto(walk, step->from, arena_printf(arena, "%s%s", lead, i == last ? "   " : "│  "), depth + 1);
    }
}

static void show_path(struct screen *screen, const struct design *design)
{
    struct arena *arena = screen->out.arena;
    struct path_walk walk = {
        .table = table_new(arena, path_columns, sizeof path_columns / sizeof path_columns[0]),
        .design = design,
        .shown = arena_array(arena, design->path_count, sizeof(bool)),
    };
    for (size_t i = 0; i < design->path_count; i++) {
        const char *node = design->path[i].to;
        if (is_carried(design, node) || walk.shown[i])
            continue;
        add_path_row(&walk, node, NULL);
        walk_onto(&walk, node, "", 0);
    }
    if (walk.table.count == 0)
        return;
    screen_heading(screen, "Load path, lb at each joint");
    screen_table(screen, &walk.table);
}

static const char *amount_text(struct arena *arena, double value, const char *unit)
{
    if (!isfinite(value))
        return value > 0 ? "no limit" : "-";
    bool small = fabs(value) < 10;
    return small ? number_text(arena, value, !strcmp(unit, "in") ? 3 : 2) : pounds_text(arena, value);
}

/* The worst row of each check: the greatest ratio among its combinations. */
static bool is_worst(const struct member_checks *checks, size_t index)
{
    const struct check *this = &checks->check[index];
    for (size_t i = 0; i < checks->count; i++) {
        const struct check *other = &checks->check[i];
        bool twin = !strcmp(other->name, this->name);
        if (twin && (other->ratio > this->ratio || (i < index && !(other->ratio < this->ratio))))
            return false;
    }
    return true;
}

static const char *check_mark(const struct member_checks *checks, const struct check *check,
                              const struct check *governing)
{
    bool over = !ratio_holds(check->ratio) && !checks->specified;
    if (check == governing)
        return over ? "FAILS, governs" : "governs";
    return over ? "FAILS" : "";
}

static void add_check(struct table *table, const struct member_checks *checks, const struct check *check,
                      const struct check *governing)
{
    struct arena *arena = table->arena;
    const char *unit = check->unit ? check->unit : "";
    struct table_row *row = table_row(table);
    row->cell[0] = check->name;
    row->cell[1] = check->combination;
    row->cell[2] = place_text(arena, check->at_in);
    row->cell[3] = amount_text(arena, check->demand, unit);
    row->cell[4] = amount_text(arena, check->capacity, unit);
    row->cell[5] = unit;
    row->cell[6] = ratio_text(arena, check->ratio);
    row->cell[7] = check_mark(checks, check, governing);
    const char *values = check->values && *check->values ? arena_printf(arena, " [%s]", check->values) : "";
    row->cell[8] =
        arena_printf(arena, "%s%s%s%s", check->clause, check->note ? "; " : "", check->note ? check->note : "", values);
    row->weight = check == governing ? WEIGHT_BOLD : WEIGHT_PLAIN;
}

static const char *member_verdict(struct arena *arena, const struct design *design, const struct member_checks *checks,
                                  const struct check *governing)
{
    const char *ratio = ratio_text(arena, governing->ratio);
    if (checks->passes || checks->specified)
        if (is_specified(design, checks))
            return arena_printf(arena, "as specified; our check r = %s%s", ratio,
                                !ratio_holds(governing->ratio) ? ": ask the engineer" : "");
    return arena_printf(arena, "%s, greatest ratio %s%s", checks->passes ? "holds" : "DOES NOT HOLD", ratio,
                        checks->unverified ? "; a design value is from memory: unverified" : "");
}

static void show_member(struct screen *screen, const struct design *design, const struct member_checks *checks)
{
    static const struct column columns[] = {
        {"Check", false, true},  {"Under", false, true},    {"At", true, false},
        {"Demand", true, false}, {"Capacity", true, false}, {"", false, false},
        {"Ratio", true, false},  {"", false, true},         {"Clause", false, true},
    };
    const struct check *governing = checks_governing(checks);
    screen_heading(screen, "%s: %s", checks->id, checks->member ? checks->member : "");
    if (!governing) {
        screen_printf(screen, WEIGHT_PLAIN, "nothing checked");
        return;
    }
    screen_printf(screen, WEIGHT_PLAIN, "%s", member_verdict(screen->out.arena, design, checks, governing));
    struct table table = table_new(screen->out.arena, columns, sizeof columns / sizeof columns[0]);
    for (size_t i = 0; i < checks->count; i++)
        if (is_worst(checks, i))
            add_check(&table, checks, &checks->check[i], governing);
    screen_table(screen, &table);
}

/* Under their heading the lines need not say again that they were not checked. */
static const char *without_lead(const char *line, const char *lead)
{
    size_t length = strlen(lead);
    return strncmp(line, lead, length) == 0 ? line + length : line;
}

static void show_list(struct screen *screen, const char *head, const char *const *line, size_t count)
{
    if (count == 0)
        return;
    screen_heading(screen, "%s", head);
    for (size_t i = 0; i < count; i++)
        screen_bullet(screen, without_lead(line[i], "not checked: "));
}

static void add_stage(struct table *table, const struct stage *stage)
{
    struct arena *arena = table->arena;
    struct table_row *row = table_row(table);
    row->cell[0] = arena_printf(arena, "(%d) %s", stage->number, stage->name);
    row->cell[1] = stage->what;
    row->cell[2] = isfinite(stage->lb) ? pounds_text(arena, stage->lb) : "-";
    row->cell[3] = stage->governs ? stage->governs : "-";
    row->cell[4] = isnan(stage->ratio) ? "-" : ratio_text(arena, stage->ratio);
    row->cell[5] = stage->specified ? "as specified" : isnan(stage->ratio) || ratio_holds(stage->ratio) ? "" : "FAILS";
    row->cell[6] = stage->rule ? stage->rule : "";
}

static void show_stages(struct screen *screen, const struct design *design)
{
    static const struct column columns[] = {
        {"Stage", false, true}, {"What stands", false, true}, {"lb", true, false},   {"Governs", false, true},
        {"Ratio", true, false}, {"", false, false},           {"Rule", false, true},
    };
    if (design->stage_count == 0)
        return;
    struct table table = table_new(screen->out.arena, columns, sizeof columns / sizeof columns[0]);
    for (size_t i = 0; i < design->stage_count; i++)
        add_stage(&table, &design->stage[i]);
    screen_heading(screen, "Stages of the work; lb on one stud or post of a shore, at a beam's heavier end");
    screen_table(screen, &table);
}

static void show_before_cutting(struct screen *screen, const struct job *job)
{
    size_t count = 0;
    const char **line = before_cutting(screen->out.arena, job, &count);
    show_list(screen, "Before anything is cut", line, count);
}

static void show_raising(struct screen *screen, const struct takeoff *takeoff)
{
    if (takeoff->raising_count == 0)
        return;
    screen_heading(screen, "Raising");
    for (size_t i = 0; i < takeoff->raising_count; i++) {
        const struct raising *raising = &takeoff->raising[i];
        screen_bullet(screen, raising_text(screen->out.arena, raising));
        for (size_t k = 0; k < raising->way_count; k++)
            screen_bullet(screen, way_in_text(screen->out.arena, raising, k));
    }
}

char *report_check(struct arena *arena, const struct report *report, bool color, int width)
{
    struct screen screen = screen_new(arena, color, width);
    screen_head(&screen, report);
    const struct run *run = report_run(report);
    if (run && run->design) {
        const struct design *design = run->design;
        show_path(&screen, design);
        screen_heading(&screen, "Checks, each in its worst combination; ratios rounded up");
        for (size_t i = 0; i < design->member_count; i++)
            show_member(&screen, design, design->members[i]);
        show_stages(&screen, design);
        show_before_cutting(&screen, report->job);
        if (run->takeoff)
            show_raising(&screen, run->takeoff);
        show_list(&screen, "Not checked", design->unchecked, design->unchecked_count);
        show_list(&screen, "Basis", design->basis, design->basis_count);
    }
    screen_open(&screen, report);
    screen_caution(&screen);
    return screen_text(&screen);
}
