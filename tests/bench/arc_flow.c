/* The arc-flow model, built once in memory and written as an MPS file. */
#include "arc_flow.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

struct arc {
    int64_t from, to; /* positions */
    int64_t most;
    int row; /* of the piece's type; -1: what is lost */
};
struct exit {
    int64_t at, cost, most;
};
struct model {
    struct arena *arena;
    struct form_type *type; /* longest first */
    size_t type_count;
    struct exit *exit; /* by position */
    size_t exit_count;
    int64_t longest, pieces;
    unsigned char *reached;
    int64_t *node; /* number of each position, 0 for where sticks begin */
    int64_t nodes;
    struct arc *arc;
    size_t arc_count, arc_room;
};

static int64_t common_divisor(int64_t a, int64_t b)
{
    while (b > 0) {
        int64_t rest = a % b;
        a = b;
        b = rest;
    }
    return a;
}

static int longest_first(const void *a, const void *b)
{
    const struct form_type *x = a, *y = b;
    return x->length < y->length ? 1 : x->length > y->length ? -1 : 0;
}

static int by_position(const void *a, const void *b)
{
    const struct exit *x = a, *y = b;
    if (x->at != y->at)
        return x->at < y->at ? -1 : 1;
    return x->cost < y->cost ? -1 : x->cost > y->cost ? 1 : 0;
}

static void take_types(struct model *model, const struct form *form)
{
    int64_t divisor = 0;
    model->type = arena_array(model->arena, form->type_count, sizeof *model->type);
    for (size_t i = 0; i < form->type_count; i++)
        if (form->type[i].demand > 0) {
            model->type[model->type_count++] = form->type[i];
            model->pieces += form->type[i].demand;
            divisor = common_divisor(form->type[i].length, divisor);
        }
    qsort(model->type, model->type_count, sizeof *model->type, longest_first);
    for (size_t i = 0; i < model->type_count; i++)
        model->type[i].length /= divisor;
    model->exit = arena_array(model->arena, form->stock_count, sizeof *model->exit);
    for (size_t s = 0; s < form->stock_count; s++) {
        const struct form_stock *stock = &form->stock[s];
        int64_t most = stock->supply == FORM_ENDLESS || stock->supply > model->pieces ? model->pieces : stock->supply;
        if (most > 0)
            model->exit[model->exit_count++] = (struct exit){stock->length / divisor, stock->cost, most};
    }
    for (size_t s = 0; s < model->exit_count; s++)
        if (model->exit[s].at > model->longest)
            model->longest = model->exit[s].at;
}

static void add_arc(struct model *model, struct arc arc)
{
    model->arc = arena_more(model->arena, model->arc, model->arc_count, &model->arc_room, sizeof *model->arc);
    model->arc[model->arc_count++] = arc;
}

/* Copies of the type on top of what can be reached; a position that fewer copies reach needs no second look. */
static void lay_type(struct model *model, int row, int64_t *now, int64_t *next, unsigned char *done)
{
    const struct form_type *type = &model->type[row];
    size_t count = 0;
    memset(done, 0, (size_t)model->longest + 1);
    for (int64_t at = 0; at + type->length <= model->longest; at++)
        if (model->reached[at])
            now[count++] = at;
    for (int64_t copy = 0; copy < type->demand && count > 0; copy++) {
        size_t more = 0;
        for (size_t i = 0; i < count; i++) {
            if (done[now[i]])
                continue;
            done[now[i]] = 1;
            int64_t to = now[i] + type->length;
            add_arc(model, (struct arc){now[i], to, type->demand, row});
            model->reached[to] = 1;
            if (to + type->length <= model->longest)
                next[more++] = to;
        }
        memcpy(now, next, more * sizeof *now);
        count = more;
    }
}

static void lay_pieces(struct model *model)
{
    size_t size = (size_t)model->longest + 1;
    int64_t *now = arena_array(model->arena, size, sizeof *now), *next = arena_array(model->arena, size, sizeof *next);
    unsigned char *done = arena_array(model->arena, size, 1);
    model->reached = arena_array(model->arena, size, 1);
    model->reached[0] = 1;
    for (size_t i = 0; i < model->type_count; i++)
        lay_type(model, (int)i, now, next, done);
}

static bool is_of_use(const struct model *model, size_t index)
{
    const struct exit *own = &model->exit[index];
    for (size_t s = 0; s < model->exit_count; s++) {
        const struct exit *other = &model->exit[s];
        bool better = other->at > own->at || other->cost < own->cost || s < index;
        if (s != index && other->most == model->pieces && other->at >= own->at && other->cost <= own->cost && better)
            return false;
    }
    return own->at > 0;
}

static void settle_exits(struct model *model)
{
    size_t kept = 0;
    struct exit *useful = arena_array(model->arena, model->exit_count, sizeof *useful);
    for (size_t s = 0; s < model->exit_count; s++)
        while (!model->reached[model->exit[s].at])
            model->exit[s].at--;
    for (size_t s = 0; s < model->exit_count; s++)
        if (is_of_use(model, s))
            useful[kept++] = model->exit[s];
    model->exit = useful;
    model->exit_count = kept;
    qsort(model->exit, kept, sizeof *model->exit, by_position);
}

/* From each position to the next one where a stick can end. */
static void lay_losses(struct model *model)
{
    size_t next = 0;
    model->node = arena_array(model->arena, (size_t)model->longest + 1, sizeof *model->node);
    for (int64_t at = 1; at <= model->longest; at++) {
        while (next < model->exit_count && model->exit[next].at <= at)
            next++;
        if (!model->reached[at])
            continue;
        model->node[at] = ++model->nodes;
        if (next < model->exit_count)
            add_arc(model, (struct arc){at, model->exit[next].at, model->pieces, -1});
    }
}

static void write_rows(FILE *file, const struct model *model)
{
    (void)fprintf(file, "NAME          CUTS\nROWS\n N  COST\n");
    for (int64_t i = 1; i <= model->nodes; i++)
        (void)fprintf(file, " E  N%lld\n", (long long)i);
    for (size_t i = 0; i < model->type_count; i++)
        (void)fprintf(file, " G  D%zu\n", i);
}

static void write_factor(FILE *file, const char *column, char kind, int64_t row, long long factor)
{
    char name[24];
    (void)snprintf(name, sizeof name, "%c%lld", kind, (long long)row);
    (void)fprintf(file, "    %-8s  %-8s  %12lld\n", column, name, factor);
}

static void write_columns(FILE *file, const struct model *model)
{
    char name[24];
    (void)fprintf(file, "COLUMNS\n    M1        'MARKER'                 'INTORG'\n");
    for (size_t i = 0; i < model->arc_count; i++) {
        const struct arc *arc = &model->arc[i];
        (void)snprintf(name, sizeof name, "A%zu", i);
        if (arc->from > 0)
            write_factor(file, name, 'N', model->node[arc->from], -1);
        write_factor(file, name, 'N', model->node[arc->to], 1);
        if (arc->row >= 0)
            write_factor(file, name, 'D', arc->row, 1);
    }
    for (size_t s = 0; s < model->exit_count; s++) {
        (void)snprintf(name, sizeof name, "S%zu", s);
        (void)fprintf(file, "    %-8s  %-8s  %12lld\n", name, "COST", (long long)model->exit[s].cost);
        write_factor(file, name, 'N', model->node[model->exit[s].at], -1);
    }
    (void)fprintf(file, "    M2        'MARKER'                 'INTEND'\n");
}

static void write_limits(FILE *file, const struct model *model)
{
    (void)fprintf(file, "RHS\n");
    for (size_t i = 0; i < model->type_count; i++)
        write_factor(file, "RHS", 'D', (int64_t)i, (long long)model->type[i].demand);
    (void)fprintf(file, "BOUNDS\n");
    for (size_t i = 0; i < model->arc_count; i++)
        (void)fprintf(file, " UP BND       A%-7zu  %12lld\n", i, (long long)model->arc[i].most);
    for (size_t s = 0; s < model->exit_count; s++)
        (void)fprintf(file, " UP BND       S%-7zu  %12lld\n", s, (long long)model->exit[s].most);
    (void)fprintf(file, "ENDATA\n");
}

bool arc_flow_write(const struct form *form, const char *path, struct arc_flow *size)
{
    struct model model = {.arena = arena_new(0, NULL, NULL)};
    take_types(&model, form);
    lay_pieces(&model);
    settle_exits(&model);
    lay_losses(&model);
    *size = (struct arc_flow){model.nodes, (int64_t)model.arc_count};
    FILE *file = fopen(path, "w");
    bool done = file != NULL;
    if (done) {
        write_rows(file, &model);
        write_columns(file, &model);
        write_limits(file, &model);
        done = !ferror(file);
        done = fclose(file) == 0 && done;
    }
    arena_free(model.arena);
    return done;
}
