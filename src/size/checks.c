/* The list of checks of a member, and the lists of what was assumed and left out. */
#include "size.h"

#include <math.h>
#include <string.h>

bool ratio_holds(double ratio)
{
    return ratio <= 1 + 1e-9;
}

char *ratio_text(struct arena *arena, double ratio)
{
    if (isnan(ratio))
        return arena_strdup(arena, "no ratio");
    if (ratio > 1e9)
        return arena_strdup(arena, "no capacity");
    /* Snapped first, by as much as ratio_holds() lets pass. */
    double hundredths = ceil(ratio * 100 - 1e-7);
    long whole = hundredths > 0 ? (long)hundredths : 0;
    return arena_printf(arena, "%ld.%02ld", whole / 100, whole % 100);
}

struct member_checks *checks_new(struct sizing *s, const char *id, const char *member)
{
    struct design *design = s->design;
    struct member_checks *checks = arena_alloc(s->arena, sizeof *checks);
    *checks = (struct member_checks){.id = id, .member = member, .passes = true};
    design->members = arena_more(s->arena, design->members, design->member_count, &s->member_capacity,
                                 sizeof *design->members); // NOLINT(bugprone-sizeof-expression): holds pointers
    design->members[design->member_count++] = checks;
    return checks;
}

struct check check_of(const char *name, const char *clause, double demand, double capacity, const char *unit)
{
    /* What lifts presses on nothing; that it lifts is a check of its own. */
    struct check check = {.name = name,
                          .clause = clause,
                          .combination = "",
                          .at_in = NAN,
                          .demand = demand < 0 ? 0 : demand,
                          .capacity = capacity,
                          .unit = unit};
    check.ratio = capacity > 0 ? check.demand / capacity : (demand > 0 ? INFINITY : 0);
    return check;
}

void check_worse(struct check *worst, struct check next)
{
    /* where nothing holds every ratio is infinite: the greatest demand says most */
    bool both = isinf(next.ratio) && isinf(worst->ratio);
    if (!worst->name || next.ratio > worst->ratio || (both && next.demand > worst->demand))
        *worst = next;
}

void checks_wood(struct member_checks *checks, const struct design_row *row)
{
    checks->wood = row;
    checks->unverified = row && !row->seen;
}

char *values_text(struct arena *arena, const struct design_row *row)
{
    return arena_printf(arena, "%s (%s)%s", row->edition, row->table, row->seen ? "" : ", unverified");
}

const char *values_both(struct arena *arena, const struct design_row *a, const struct design_row *b)
{
    const char *first = a ? values_text(arena, a) : "", *second = b ? values_text(arena, b) : "";
    if (!*first || !strcmp(first, second))
        return second;
    return *second ? arena_printf(arena, "%s; %s", first, second) : first;
}

/* A stress, a force by the NDS or a deflection rests on design values; a length, a count, a soil pressure or a listed
 * load does not. */
static bool rests_on_wood(const struct check *check)
{
    static const char *const units[] = {"psi", "lb", "plf"};
    if (strstr(check->name, "deflection") || strstr(check->name, "sag"))
        return true;
    for (size_t i = 0; i < sizeof units / sizeof *units; i++)
        if (!strcmp(check->unit, units[i]))
            return strstr(check->clause, "NDS ") != NULL;
    return false;
}

void checks_add(struct sizing *s, struct member_checks *checks, struct check check)
{
    if (!check.name)
        return;
    if (!check.values)
        check.values = checks->wood && rests_on_wood(&check) ? values_text(s->arena, checks->wood) : "";
    checks->check = arena_more(s->arena, checks->check, checks->count, &checks->capacity, sizeof *checks->check);
    checks->check[checks->count++] = check;
}

static void say_fails(struct sizing *s, const struct member_checks *checks, const struct check *check,
                      const struct place *at)
{
    const char *combination = *check->combination ? arena_printf(s->arena, " (%s)", check->combination) : "";
    const char *note = check->note ? arena_printf(s->arena, ": %s", check->note) : "";
    if (checks->specified)
        diag_add(s->diags, DIAG_S004, at, "%s, as specified by the engineer: our check of %s gives %s%s; ask him",
                 checks->id, check->name, ratio_text(s->arena, check->ratio), combination);
    else
        diag_add(s->diags, DIAG_S002, at, "%s fails in %s: ratio %s%s%s", checks->id, check->name,
                 ratio_text(s->arena, check->ratio), combination, note);
}

bool checks_close(struct sizing *s, struct member_checks *checks, const struct place *at)
{
    struct check *worst = NULL;
    checks->passes = true;
    for (size_t i = 0; i < checks->count; i++) {
        struct check *check = &checks->check[i];
        if (!worst || check->ratio > worst->ratio)
            worst = check;
        if (ratio_holds(check->ratio))
            continue;
        checks->passes = false;
        say_fails(s, checks, check, at);
    }
    if (worst)
        worst->governs = true;
    return checks->passes;
}

static void add_once(struct sizing *s, const char ***list, size_t *count, size_t *capacity, const char *text)
{
    for (size_t i = 0; i < *count; i++)
        if (!strcmp((*list)[i], text))
            return;
    *list = arena_more(s->arena, *list, *count, capacity, sizeof **list);
    (*list)[(*count)++] = text;
}

void basis_add(struct sizing *s, const char *text)
{
    struct design *design = s->design;
    add_once(s, &design->basis, &design->basis_count, &design->basis_capacity, text);
}

void unchecked_add(struct sizing *s, const char *text)
{
    struct design *design = s->design;
    add_once(s, &design->unchecked, &design->unchecked_count, &design->unchecked_capacity, text);
}

void path_add(struct sizing *s, const char *from, const char *to, double at_in, struct loads lb)
{
    struct design *design = s->design;
    design->path = arena_more(s->arena, design->path, design->path_count, &design->path_capacity, sizeof *design->path);
    design->path[design->path_count++] = (struct path_step){.from = from, .to = to, .at_in = at_in, .lb = lb};
}

void engineer(struct sizing *s, const struct place *at, const char *text)
{
    diag_add(s->diags, DIAG_S004, at, "%s", text);
}
