/* Branch and bound, depth first.  A branch says of a set of patterns that they are used at most, or at least, so many
 * times in all: a set is one stock's patterns, those with two given pieces, or a single pattern.  Each node's linear
 * programme runs over a few columns; the list is priced in whole numbers, and from the same figures comes the bound by
 * which a node is closed and patterns are shut out below it, so that nothing rests on the programme's own figures. */
#include "tree.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

enum { MOST_DEPTH = 400, COLUMNS_A_ROUND = 40, MOST_ROUNDS = 3000 };
static const double NEARLY_WHOLE = 1e-6;

enum set_kind { SET_STOCK, SET_PAIR, SET_ONE };
struct branch {
    enum set_kind kind;
    int a, b; /* stock; types; pattern and its place among the loaded */
    int64_t times;
    bool at_least;
    int64_t price; /* of the last programme, as the dual's values */
    unsigned char *member;
};
struct tree {
    wide_t sum;
    struct work *work;
    const struct norm *norm;
    const struct list *list;
    const struct span *span;
    struct greedy *greedy;
    struct master *master;
    double unit;
    int64_t scale;
    int *loaded; /* patterns in the programme */
    bool *is_loaded;
    int *shut; /* of each pattern the depth from which on it is out, 0: it is not */
    int64_t *reduced;
    int64_t *least, *most; /* of each pattern: how often it may be used below this node */
    int *place;            /* of each loaded pattern, its column */
    int *artificial;       /* of each row, its column */
    int64_t *needed;       /* of each pattern: more are never needed */
    int64_t *value, *extra;
    struct branch *branch;
    int *row; /* scratch: a row or column as the programme takes it */
    double *factor;
    double *pair; /* types x types */
    int64_t *demand, *supply;
    int64_t nodes;
    struct answer trial;
    int loaded_count;
    int rows; /* of branches, in the programme: made as they are needed */
    int depth;
    bool over;
};

static bool is_member(const struct tree *tree, const struct branch *branch, int index)
{
    const struct column *column = &tree->list->pool.column[index];
    if (branch->kind == SET_STOCK)
        return column->stock == branch->a;
    const struct use *use = tree->list->pool.use + column->first;
    bool a = false, b = false;
    for (int i = 0; i < column->count; i++) {
        a = a || (use[i].type == branch->a && (branch->a != branch->b || use[i].count > 1));
        b = b || use[i].type == branch->b;
    }
    return a && b;
}

static int first_branch_row(const struct tree *tree)
{
    return tree->norm->types + tree->norm->stocks;
}

static void load(struct tree *tree, int index)
{
    const struct norm *norm = tree->norm;
    const struct column *column = &tree->list->pool.column[index];
    int *row = tree->row, count = 0;
    double *factor = tree->factor;
    for (int i = 0; i < column->count; i++) {
        row[count] = tree->list->pool.use[column->first + i].type;
        factor[count++] = tree->list->pool.use[column->first + i].count;
    }
    row[count] = norm->types + column->stock;
    factor[count++] = 1;
    for (int d = 0; d < tree->depth; d++)
        if (tree->branch[d].kind != SET_ONE && tree->branch[d].member[index]) {
            row[count] = first_branch_row(tree) + d;
            factor[count++] = 1;
        }
    master_add_column(tree->master, (double)norm->cost[column->stock] / tree->unit, MASTER_FREE, count, row, factor);
    if (tree->least[index] > 0)
        master_set_column(tree->master, master_columns(tree->master) - 1, (double)tree->least[index], MASTER_FREE);
    tree->is_loaded[index] = true;
    tree->place[tree->loaded_count] = master_columns(tree->master) - 1;
    tree->loaded[tree->loaded_count++] = index;
}

/* A column for each row that asks for something keeps the programme feasible; no plan that is wanted pays for one. */
static void add_artificial(struct tree *tree, int row)
{
    const double one = 1;
    master_add_column(tree->master, 2 * (double)tree->list->below / tree->unit, MASTER_FREE, 1, &row, &one);
}

static void open_programme(struct tree *tree)
{
    const struct norm *norm = tree->norm;
    for (int i = 0; i < norm->types; i++)
        master_add_row(tree->master, (double)norm->demand[i], MASTER_FREE);
    for (int s = 0; s < norm->stocks; s++)
        master_add_row(tree->master, tree->span->least[s] > 0 ? (double)tree->span->least[s] : -MASTER_FREE,
                       tree->span->most[s] < 0 ? MASTER_FREE : (double)tree->span->most[s]);
    for (int i = 0; i < norm->types + norm->stocks; i++)
        if (i < norm->types || tree->span->least[i - norm->types] > 0)
            add_artificial(tree, i);
}

static void add_branch_row(struct tree *tree)
{
    master_add_row(tree->master, -MASTER_FREE, MASTER_FREE);
    tree->artificial[tree->rows] = master_columns(tree->master);
    add_artificial(tree, first_branch_row(tree) + tree->rows);
    tree->rows++;
}

/* More sticks of one pattern would hold surplus pieces only. */
static int64_t most_needed(const struct norm *norm, const struct pool *pool, const struct column *column)
{
    int64_t most = 0;
    for (int i = 0; i < column->count; i++) {
        const struct use *use = &pool->use[column->first + i];
        int64_t times = (norm->demand[use->type] + use->count - 1) / use->count;
        most = times > most ? times : most;
    }
    return most;
}

static bool start(struct tree *tree, struct work *work, const struct list *list, const struct span *span,
                  struct greedy *greedy)
{
    struct arena *arena = work->list;
    const struct norm *norm = &work->norm;
    size_t columns = list->pool.columns;
    *tree = (struct tree){.work = work, .norm = norm, .list = list, .span = span, .greedy = greedy};
    tree->unit = (double)norm->most_cost;
    tree->scale = norm_scale(norm, 4 * list->below);
    tree->master = master_new(arena, work->library);
    if (!tree->master)
        return false;
    tree->loaded = arena_array(arena, columns, sizeof(int));
    tree->is_loaded = arena_array(arena, columns, sizeof(bool));
    tree->shut = arena_array(arena, columns, sizeof(int));
    tree->reduced = arena_array(arena, columns, sizeof(int64_t));
    tree->most = arena_array(arena, columns, sizeof(int64_t));
    tree->least = arena_array(arena, columns, sizeof(int64_t));
    tree->needed = arena_array(arena, columns, sizeof(int64_t));
    tree->place = arena_array(arena, columns, sizeof(int));
    tree->artificial = arena_array(arena, MOST_DEPTH, sizeof(int));
    tree->value = arena_array(arena, (size_t)norm->types, sizeof(int64_t));
    tree->extra = arena_array(arena, (size_t)norm->stocks, sizeof(int64_t));
    tree->demand = arena_array(arena, (size_t)norm->types, sizeof(int64_t));
    tree->supply = arena_array(arena, (size_t)norm->stocks, sizeof(int64_t));
    tree->pair = arena_array(arena, (size_t)norm->types * (size_t)norm->types, sizeof(double));
    tree->row = arena_array(arena, columns + (size_t)norm->types + MOST_DEPTH + 1, sizeof(int));
    tree->factor = arena_array(arena, columns + (size_t)norm->types + MOST_DEPTH + 1, sizeof(double));
    tree->branch = arena_array(arena, MOST_DEPTH, sizeof *tree->branch);
    for (size_t j = 0; j < columns; j++)
        tree->needed[j] = tree->most[j] = most_needed(norm, &list->pool, &list->pool.column[j]);
    answer_start(&tree->trial, arena);
    open_programme(tree);
    return true;
}

/* Prices of the programme in whole numbers: of the right sign, which is all that the bound asks for. */
static void read_prices(struct tree *tree)
{
    const struct norm *norm = tree->norm;
    double scale = (double)tree->scale * tree->unit;
    tree->sum = 0;
    for (int i = 0; i < norm->types; i++) {
        double price = master_price(tree->master, i);
        tree->value[i] = price > 0 ? (int64_t)(price * scale) : 0;
        tree->sum += (wide_t)tree->value[i] * norm->demand[i];
    }
    for (int s = 0; s < norm->stocks; s++) {
        double price = master_price(tree->master, norm->types + s);
        bool right = price > 0 ? tree->span->least[s] > 0 : tree->span->most[s] >= 0;
        tree->extra[s] = right ? -(int64_t)(price * scale) : 0;
        tree->sum -= (wide_t)tree->extra[s] * (price > 0 ? tree->span->least[s] : tree->span->most[s]);
    }
    for (int d = 0; d < tree->depth; d++) {
        struct branch *branch = &tree->branch[d];
        if (branch->kind == SET_ONE)
            continue;
        double price = master_price(tree->master, first_branch_row(tree) + d);
        bool right = branch->at_least ? price > 0 : price < 0;
        branch->price = right ? (int64_t)(price * scale) : 0;
        tree->sum += (wide_t)branch->price * branch->times;
    }
}

static int64_t reduced_cost(const struct tree *tree, int index)
{
    const struct pool *pool = &tree->list->pool;
    const struct column *column = &pool->column[index];
    int64_t cost = tree->scale * tree->norm->cost[column->stock] + tree->extra[column->stock];
    const struct use *use = pool->use + column->first;
    for (int i = 0; i < column->count; i++)
        cost -= tree->value[use[i].type] * use[i].count;
    return cost;
}

/* The reduced costs of all patterns that are open, and the bound: sum / scale. */
static void price_list(struct tree *tree)
{
    int columns = (int)tree->list->pool.columns;
    for (int j = 0; j < columns; j++)
        if (!tree->shut[j])
            tree->reduced[j] = reduced_cost(tree, j);
    for (int d = 0; d < tree->depth; d++) {
        const struct branch *branch = &tree->branch[d];
        if (branch->price == 0 || branch->kind == SET_ONE)
            continue;
        for (int j = 0; j < columns; j++)
            if (branch->member[j])
                tree->reduced[j] -= branch->price;
    }
    for (int j = 0; j < columns; j++)
        if (!tree->shut[j])
            tree->sum += (wide_t)tree->reduced[j] * (tree->reduced[j] < 0 ? tree->most[j] : tree->least[j]);
}

/* Loads patterns of negative reduced cost, the lowest first by halves; their number. */
static int load_some(struct tree *tree)
{
    int columns = (int)tree->list->pool.columns, count = 0;
    int64_t lowest = 0, least_gain = (int64_t)(1e-9 * (double)tree->scale * tree->unit) + 1;
    for (int j = 0; j < columns; j++)
        if (!tree->shut[j] && !tree->is_loaded[j] && tree->reduced[j] < lowest)
            lowest = tree->reduced[j];
    if (lowest > -least_gain)
        return 0;
    for (int j = 0; j < columns && count < COLUMNS_A_ROUND; j++)
        if (!tree->shut[j] && !tree->is_loaded[j] && tree->reduced[j] <= lowest / 2) {
            load(tree, j);
            count++;
        }
    return count;
}

/* What a plan of interest may cost at most, less the bound, in the dual's scale. */
static wide_t slack(const struct tree *tree)
{
    int64_t below = tree->work->best->cost < tree->list->below ? tree->work->best->cost : tree->list->below;
    return (wide_t)tree->scale * (below - tree->norm->divisor) - tree->sum;
}

enum node { NODE_OPEN, NODE_CLOSED, NODE_FAILED };

static enum node solve_node(struct tree *tree)
{
    enum master_how how = MASTER_DUAL;
    for (int round = 0; round < MOST_ROUNDS; round++) {
        long pivots = master_pivots(tree->master);
        if (master_solve(tree->master, how) != MASTER_SOLVED)
            return NODE_FAILED;
        how = MASTER_PRIMAL;
        read_prices(tree);
        price_list(tree);
        int64_t steps = (master_pivots(tree->master) - pivots) * (tree->norm->types + tree->depth) / 20;
        if (!work_spend(tree->work, steps + (int64_t)tree->list->pool.columns / 50 + 10))
            return NODE_FAILED;
        if (slack(tree) < 0)
            return NODE_CLOSED;
        if (load_some(tree) == 0)
            return NODE_OPEN;
    }
    return NODE_FAILED;
}

static double use_of(const struct tree *tree, int place)
{
    return master_use(tree->master, tree->place[place]);
}

static void set_column(struct tree *tree, int place, bool open)
{
    int index = tree->loaded[place];
    bool bound = tree->most[index] < tree->needed[index];
    double most = !open ? 0 : bound ? (double)tree->most[index] : MASTER_FREE;
    master_set_column(tree->master, tree->place[place], open ? (double)tree->least[index] : 0, most);
}

/* Patterns that no better plan under this node can use are shut out below it. */
static void shut_out(struct tree *tree)
{
    wide_t most = slack(tree);
    int columns = (int)tree->list->pool.columns;
    for (int j = 0; j < columns; j++)
        if (!tree->shut[j] && tree->least[j] == 0 && tree->reduced[j] > most)
            tree->shut[j] = tree->depth + 1;
    for (int k = 0; k < tree->loaded_count; k++)
        if (tree->shut[tree->loaded[k]] == tree->depth + 1)
            set_column(tree, k, false);
}

static void let_in(struct tree *tree)
{
    int columns = (int)tree->list->pool.columns;
    for (int k = 0; k < tree->loaded_count; k++)
        if (tree->shut[tree->loaded[k]] == tree->depth + 1)
            set_column(tree, k, true);
    for (int j = 0; j < columns; j++)
        if (tree->shut[j] == tree->depth + 1)
            tree->shut[j] = 0;
}

/* The whole parts of the programme's plan, the rest filled the simple way. */
static void try_rounded(struct tree *tree)
{
    const struct norm *norm = tree->norm;
    const struct pool *pool = &tree->list->pool;
    memcpy(tree->demand, norm->demand, (size_t)norm->types * sizeof(int64_t));
    memcpy(tree->supply, tree->span->most, (size_t)norm->stocks * sizeof(int64_t));
    answer_clear(&tree->trial);
    for (int k = 0; k < tree->loaded_count; k++) {
        int64_t times = (int64_t)floor(use_of(tree, k) + NEARLY_WHOLE);
        const struct column *column = &pool->column[tree->loaded[k]];
        if (tree->supply[column->stock] >= 0 && times > tree->supply[column->stock])
            times = tree->supply[column->stock];
        if (times <= 0)
            continue;
        answer_add(&tree->trial, norm, pool, tree->loaded[k], times);
        if (tree->supply[column->stock] >= 0)
            tree->supply[column->stock] -= times;
        for (int i = 0; i < column->count; i++) {
            const struct use *use = &pool->use[column->first + i];
            int64_t left = tree->demand[use->type] - times * use->count;
            tree->demand[use->type] = left > 0 ? left : 0;
        }
    }
    if (greedy_finish(tree->work, tree->greedy, tree->demand, tree->supply, tree->work->best->cost, &tree->trial))
        (void)work_offer(tree->work, &tree->trial);
}

static double part_of(double use)
{
    double part = use - floor(use);
    return part < NEARLY_WHOLE || part > 1 - NEARLY_WHOLE ? 0 : part;
}

/* How good a part is to branch on: nearest the middle, a little rather above it. */
static double merit(double part)
{
    return part <= 0 ? 0 : part < 0.6 ? part / 0.6 : (1 - part) / 0.4;
}

static bool pick_stock(const struct tree *tree, struct branch *branch)
{
    const struct norm *norm = tree->norm;
    double best = 0;
    for (int s = 0; s < norm->stocks && norm->stocks > 1; s++) {
        double sum = 0;
        for (int k = 0; k < tree->loaded_count; k++)
            if (tree->list->pool.column[tree->loaded[k]].stock == s)
                sum += use_of(tree, k);
        if (merit(part_of(sum)) > best + 1e-9) {
            best = merit(part_of(sum));
            *branch = (struct branch){.kind = SET_STOCK, .a = s, .times = (int64_t)floor(sum)};
        }
    }
    return best > 0;
}

static void add_pairs(struct tree *tree)
{
    size_t types = (size_t)tree->norm->types;
    memset(tree->pair, 0, types * types * sizeof(double));
    for (int k = 0; k < tree->loaded_count; k++) {
        double times = use_of(tree, k);
        if (times < NEARLY_WHOLE)
            continue;
        const struct column *column = &tree->list->pool.column[tree->loaded[k]];
        const struct use *use = tree->list->pool.use + column->first;
        for (int i = 0; i < column->count; i++) {
            if (use[i].count > 1)
                tree->pair[(size_t)use[i].type * types + (size_t)use[i].type] += times;
            for (int j = i + 1; j < column->count; j++)
                tree->pair[(size_t)use[i].type * types + (size_t)use[j].type] += times;
        }
    }
}

static bool pick_pair(struct tree *tree, struct branch *branch)
{
    int types = tree->norm->types;
    double best = 0;
    add_pairs(tree);
    for (int i = 0; i < types; i++)
        for (int j = i; j < types; j++) {
            double sum = tree->pair[(size_t)i * (size_t)types + (size_t)j];
            if (sum > 0 && merit(part_of(sum)) > best + 1e-9) {
                best = merit(part_of(sum));
                *branch = (struct branch){.kind = SET_PAIR, .a = i, .b = j, .times = (int64_t)floor(sum)};
            }
        }
    return best > 0;
}

static bool pick_one(const struct tree *tree, struct branch *branch)
{
    double best = 0;
    for (int k = 0; k < tree->loaded_count; k++) {
        double use = use_of(tree, k);
        if (merit(part_of(use)) > best + 1e-9) {
            best = merit(part_of(use));
            *branch = (struct branch){.kind = SET_ONE, .a = tree->loaded[k], .b = k, .times = (int64_t)floor(use)};
        }
    }
    return best > 0;
}

static void run_node(struct tree *tree);

static void set_members(struct tree *tree, struct branch *branch)
{
    int columns = (int)tree->list->pool.columns, count = 0;
    if (!branch->member)
        branch->member = arena_array(tree->work->list, (size_t)columns, 1);
    for (int j = 0; j < columns; j++)
        branch->member[j] = is_member(tree, branch, j);
    int *at = tree->row;
    double *factor = tree->factor;
    at[count] = tree->artificial[tree->depth];
    factor[count++] = 1;
    for (int k = 0; k < tree->loaded_count; k++)
        if (branch->member[tree->loaded[k]]) {
            at[count] = tree->place[k];
            factor[count++] = 1;
        }
    master_set_factors(tree->master, first_branch_row(tree) + tree->depth, count, at, factor);
}

static void run_side(struct tree *tree, bool at_least)
{
    int row = first_branch_row(tree) + tree->depth;
    struct branch *branch = &tree->branch[tree->depth];
    branch->at_least = at_least;
    branch->times += at_least;
    if (at_least)
        master_set_row(tree->master, row, (double)branch->times, MASTER_FREE);
    else
        master_set_row(tree->master, row, -MASTER_FREE, (double)branch->times);
    tree->depth++;
    run_node(tree);
    tree->depth--;
    branch->times -= at_least;
}

static void run_sets(struct tree *tree)
{
    int row = first_branch_row(tree) + tree->depth;
    set_members(tree, &tree->branch[tree->depth]);
    run_side(tree, true);
    if (!tree->over)
        run_side(tree, false);
    master_set_factors(tree->master, row, 0, NULL, NULL);
    master_set_row(tree->master, row, -MASTER_FREE, MASTER_FREE);
}

/* A single pattern is held by its own bounds. */
static void run_one(struct tree *tree)
{
    const struct branch *branch = &tree->branch[tree->depth];
    int place = branch->b, index = branch->a;
    int64_t least = tree->least[index], most = tree->most[index], times = branch->times;
    tree->depth++;
    tree->least[index] = times + 1;
    set_column(tree, place, true);
    run_node(tree);
    tree->least[index] = least;
    tree->most[index] = times;
    set_column(tree, place, true);
    if (!tree->over)
        run_node(tree);
    tree->most[index] = most;
    set_column(tree, place, true);
    tree->depth--;
}

static void run_branch(struct tree *tree, const struct branch *picked)
{
    struct branch *branch = &tree->branch[tree->depth];
    unsigned char *member = branch->member;
    *branch = *picked;
    branch->member = member;
    if (tree->depth == tree->rows)
        add_branch_row(tree);
    if (branch->kind == SET_ONE)
        run_one(tree);
    else
        run_sets(tree);
}

static void run_node(struct tree *tree)
{
    tree->work->nodes++;
    enum node node = tree->nodes-- <= 0 ? NODE_FAILED : solve_node(tree);
    tree->over = tree->over || node == NODE_FAILED;
    if (node != NODE_OPEN)
        return;
    try_rounded(tree);
    if (slack(tree) < 0)
        return;
    struct branch branch;
    bool found = pick_stock(tree, &branch) || pick_pair(tree, &branch) || pick_one(tree, &branch);
    if (!found || tree->depth == MOST_DEPTH) {
        tree->over = true; /* whole but for what the programme's figures hide: cannot be closed here */
        return;
    }
    shut_out(tree);
    run_branch(tree, &branch);
    let_in(tree);
}

bool tree_run(struct work *work, const struct list *list, const struct span *span, struct greedy *greedy, int64_t nodes)
{
    struct tree tree;
    if (!start(&tree, work, list, span, greedy))
        return false;
    tree.nodes = nodes;
    run_node(&tree);
    master_free(tree.master);
    return !tree.over;
}
