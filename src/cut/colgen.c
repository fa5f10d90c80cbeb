/* Column generation with smoothed prices. */
#include "colgen.h"

#include <math.h>
#include <string.h>

/* Prices are asked for at this share of the way back to those of the best bound. */
static const double SMOOTH = 0.6;
/* A column must promise this much, as a share of the dearest stock's cost. */
static const double LEAST_GAIN = 1e-9;
enum { MOST_COLUMNS_A_ROUND = 24, COLUMNS_A_STOCK = 16, COLUMNS_A_ROW = 4, COLUMNS_KEPT = 400 };
enum { DEAR_CELLS = 1000000 };

/* The column of the pool becomes one of the programme. */
static void load_column(struct colgen *cg, int index)
{
    const struct norm *norm = &cg->work->norm;
    const struct column *column = &cg->pool.column[index];
    int count = 0;
    for (int i = 0; i < column->count; i++) {
        cg->row[count] = cg->pool.use[column->first + i].type;
        cg->factor[count++] = cg->pool.use[column->first + i].count;
    }
    cg->row[count] = norm->types + column->stock;
    cg->factor[count++] = 1;
    master_add_column(cg->master, (double)norm->cost[column->stock] / cg->unit, MASTER_FREE, count, cg->row,
                      cg->factor);
}

/* For each type, in the endless stock where it costs least apiece: as many as fit, and one alone. */
static void add_singles(struct colgen *cg)
{
    const struct norm *norm = &cg->work->norm;
    for (int i = 0; i < norm->types; i++) {
        int best = -1, alone = -1;
        int64_t best_copies = 1;
        for (int s = 0; s < norm->stocks; s++) {
            int64_t copies = norm->room[s] / norm->length[i];
            copies = copies < norm->demand[i] ? copies : norm->demand[i];
            if (copies == 0 || norm->supply[s] != FORM_ENDLESS)
                continue;
            if (best < 0 || (double)norm->cost[s] * (double)best_copies < (double)norm->cost[best] * (double)copies) {
                best = s;
                best_copies = copies;
            }
            if (alone < 0 || norm->cost[s] < norm->cost[alone])
                alone = s;
        }
        memset(cg->count, 0, (size_t)norm->types * sizeof(int));
        cg->count[i] = (int)best_copies;
        load_column(cg, pool_add(&cg->pool, norm, best, cg->count));
        cg->count[i] = 1;
        if (best_copies > 1)
            load_column(cg, pool_add(&cg->pool, norm, alone, cg->count));
    }
}

static void add_rows(struct colgen *cg)
{
    const struct norm *norm = &cg->work->norm;
    for (int i = 0; i < norm->types; i++)
        master_add_row(cg->master, (double)norm->demand[i], MASTER_FREE);
    for (int s = 0; s < norm->stocks; s++)
        master_add_row(cg->master, -MASTER_FREE, MASTER_FREE);
}

void colgen_reset(struct colgen *cg)
{
    const struct norm *norm = &cg->work->norm;
    memcpy(cg->demand, norm->demand, (size_t)norm->types * sizeof(int64_t));
    memcpy(cg->supply, cg->span.most, (size_t)norm->stocks * sizeof(int64_t));
    memcpy(cg->least, cg->span.least, (size_t)norm->stocks * sizeof(int64_t));
}

bool colgen_start(struct colgen *cg, struct work *work, const struct answer *first)
{
    const struct norm *norm = &work->norm;
    struct arena *arena = work->arena;
    size_t types = (size_t)norm->types, stocks = (size_t)norm->stocks;
    *cg = (struct colgen){.work = work, .unit = (double)norm->most_cost};
    cg->master = master_new(arena, work->library);
    if (!cg->master)
        return false;
    pool_start(&cg->pool, arena);
    knap_start(&cg->knap, arena, norm);
    cg->demand = arena_array(arena, types, sizeof(int64_t));
    cg->supply = arena_array(arena, stocks, sizeof(int64_t));
    cg->least = arena_array(arena, stocks, sizeof(int64_t));
    cg->price = arena_array(arena, types, sizeof(double));
    cg->centre = arena_array(arena, types, sizeof(double));
    cg->floor = arena_array(arena, stocks, sizeof(int64_t));
    cg->count = arena_array(arena, types, sizeof(int));
    cg->row = arena_array(arena, types + 1, sizeof(int));
    cg->factor = arena_array(arena, types + 1, sizeof(double));
    dual_start(&cg->dual, arena, norm);
    dual_start(&cg->trial, arena, norm);
    cg->span = work->span;
    add_rows(cg);
    add_singles(cg);
    for (size_t i = 0; i < first->pool.columns; i++)
        load_column(cg, pool_copy(&cg->pool, &first->pool, (int)i));
    colgen_reset(cg);
    colgen_set_left(cg);
    return true;
}

void colgen_set_left(struct colgen *cg)
{
    const struct norm *norm = &cg->work->norm;
    struct master *master = cg->master;
    for (int i = 0; i < norm->types; i++)
        master_set_row(master, i, (double)cg->demand[i], MASTER_FREE);
    for (int s = 0; s < norm->stocks; s++)
        master_set_row(master, norm->types + s, cg->least[s] > 0 ? (double)cg->least[s] : -MASTER_FREE,
                       cg->supply[s] < 0 ? MASTER_FREE : (double)cg->supply[s]);
    for (size_t j = 0; j < cg->pool.columns; j++) {
        const struct column *column = &cg->pool.column[j];
        bool fits = true;
        for (int i = 0; i < column->count && fits; i++) {
            const struct use *use = &cg->pool.use[column->first + i];
            fits = use->count <= cg->demand[use->type];
        }
        master_set_column(master, (int)j, 0, fits ? MASTER_FREE : 0);
    }
    cg->has_centre = false;
}

static void read_prices(struct colgen *cg)
{
    const struct norm *norm = &cg->work->norm;
    for (int i = 0; i < norm->types; i++) {
        double price = master_price(cg->master, i);
        cg->price[i] = price > 0 ? price : 0;
    }
}

/* The surcharge of a stock of which too little may be used, in the programme; negative where too much must be. */
static double surcharge(const struct colgen *cg, int stock)
{
    return -master_price(cg->master, cg->work->norm.types + stock);
}

/* Values for the knapsack between the programme's prices and the centre. */
static void set_values(struct colgen *cg, double smooth)
{
    const struct norm *norm = &cg->work->norm;
    double scale = (double)cg->trial.scale * cg->unit;
    for (int i = 0; i < norm->types; i++) {
        double price = cg->price[i];
        if (smooth > 0)
            price = smooth * cg->centre[i] + (1 - smooth) * price;
        cg->trial.value[i] = cg->demand[i] > 0 ? (int64_t)(price * scale) : 0;
    }
    for (int s = 0; s < norm->stocks; s++) {
        cg->floor[s] = cg->trial.scale * norm->cost[s] + (int64_t)(surcharge(cg, s) * scale);
        if (cg->floor[s] < 0 && cg->supply[s] != 0)
            cg->floor[s] = 0;
        if (cg->supply[s] == 0)
            cg->floor[s] = -1;
    }
}

/* The bound of the values just run.  Whatever a plan is, its cost times the scale is at least the value of what is cut
 * and what its sticks cost beyond the most that they hold, of the fewest sticks, or of the most where they hold more
 * than they cost.  Where an endless stock holds more than it costs all values are scaled down until it does not, in
 * whole numbers. */
static void add_up(struct colgen *cg)
{
    const struct norm *norm = &cg->work->norm;
    struct dual *dual = &cg->trial;
    int64_t part = 1, whole = 1; /* the scaling */
    for (int s = 0; s < norm->stocks; s++) {
        int64_t cost = dual->scale * norm->cost[s], most = cg->knap.result[s];
        if (cg->supply[s] < 0 && most > cost && (wide_t)cost * whole < (wide_t)part * most) {
            part = cost;
            whole = most;
        }
    }
    dual->sum = 0;
    for (int i = 0; i < norm->types; i++) {
        dual->value[i] = (int64_t)((wide_t)dual->value[i] * part / whole);
        dual->sum += (wide_t)dual->value[i] * cg->demand[i];
    }
    for (int s = 0; s < norm->stocks; s++) {
        dual->held[s] = (int64_t)(((wide_t)cg->knap.result[s] * part + whole - 1) / whole);
        int64_t left = dual->scale * norm->cost[s] - dual->held[s];
        bool short_of = left < 0 && cg->supply[s] > 0;
        dual->extra[s] = short_of || cg->least[s] > 0 ? -left : 0;
        if (short_of)
            dual->sum += (wide_t)left * cg->supply[s];
        else if (cg->supply[s] != 0)
            dual->sum += (wide_t)left * cg->least[s];
    }
}

static void keep_best(struct colgen *cg)
{
    const struct norm *norm = &cg->work->norm;
    add_up(cg);
    if (cg->has_centre && cg->trial.sum <= cg->dual.sum)
        return;
    dual_copy(&cg->dual, &cg->trial, norm);
    double scale = (double)cg->trial.scale * cg->unit;
    for (int i = 0; i < norm->types; i++)
        cg->centre[i] = (double)cg->trial.value[i] / scale;
    cg->has_centre = true;
}

/* Reduced cost by the programme's own prices. */
static double reduced(const struct colgen *cg, int stock, const int *count)
{
    const struct norm *norm = &cg->work->norm;
    double sum = (double)norm->cost[stock] / cg->unit + surcharge(cg, stock);
    for (int i = 0; i < norm->types; i++)
        sum -= count[i] * cg->price[i];
    return sum;
}

/* The best filling of a stock.  Of a single stock, or where asking is dear, also others that the knapsack met on the
 * way: one asking then serves for many rounds.  Else they would only crowd the programme.  Number of columns added. */
static int add_fillings_of(struct colgen *cg, int stock)
{
    const bool many = cg->work->norm.stocks == 2 || cg->knap.cells >= DEAR_CELLS; /* 2: with the penalty */
    const int most = many ? COLUMNS_A_STOCK : 1;
    int added = 0, place = -1;
    knap_fill(&cg->knap, stock, cg->count);
    while (added < most && reduced(cg, stock, cg->count) < -LEAST_GAIN) {
        load_column(cg, pool_add(&cg->pool, &cg->work->norm, stock, cg->count));
        added++;
        if (!knap_fill_other(&cg->knap, stock, &place, cg->count))
            break;
    }
    return added;
}

/* Number of columns added. */
static int add_fillings(struct colgen *cg)
{
    const struct norm *norm = &cg->work->norm;
    int added = 0;
    for (int s = 0; s < norm->stocks && added < MOST_COLUMNS_A_ROUND; s++)
        if (cg->supply[s] != 0 && cg->knap.result[s] > 0)
            added += add_fillings_of(cg, s);
    return added;
}

/* One asking for columns: their number. */
static int ask(struct colgen *cg, double smooth)
{
    set_values(cg, smooth);
    knap_run(&cg->knap, cg->trial.value, cg->demand, cg->floor);
    (void)work_spend(cg->work, cg->knap.cells / 500 + 1);
    int added = add_fillings(cg);
    keep_best(cg);
    return added;
}

/* Drops the columns that are out of the way once there are too many. */
static void purge(struct colgen *cg)
{
    struct master *master = cg->master;
    int most = COLUMNS_A_ROW * master_rows(master) + COLUMNS_KEPT;
    if ((int)cg->pool.columns < 2 * most)
        return;
    bool *gone = arena_array(cg->work->arena, cg->pool.columns, sizeof *gone);
    double limit = 0.02;
    size_t kept = cg->pool.columns, singles = 2 * (size_t)cg->work->norm.types;
    for (; limit > 1e-7 && kept > (size_t)most; limit /= 2) {
        kept = 0;
        for (size_t j = 0; j < cg->pool.columns; j++) {
            gone[j] = j >= singles && master_reduced(master, (int)j) > limit;
            kept += !gone[j];
        }
    }
    master_drop_columns(master, gone);
    size_t to = 0;
    for (size_t j = 0; j < cg->pool.columns; j++)
        if (!gone[j])
            cg->pool.column[to++] = cg->pool.column[j];
    cg->pool.columns = to;
}

/* The bound cannot be raised by what is still to gain, or need not be. */
static bool is_enough(const struct colgen *cg, int64_t enough, bool rounded)
{
    const struct norm *norm = &cg->work->norm;
    int64_t bound = work_round(norm, cg->dual.sum, cg->dual.scale);
    if (bound >= enough)
        return true;
    double top = cg->value * cg->unit, sum = (double)cg->dual.sum / (double)cg->dual.scale;
    if (top - sum < 1e-9 * fabs(top))
        return true;
    double step = (double)norm->divisor;
    return rounded && (double)bound >= ceil((top - 1e-6 * step) / step) * step;
}

enum colgen_end colgen_run(struct colgen *cg, int rounds, int64_t enough, bool rounded)
{
    struct master *master = cg->master;
    cg->dual.sum = 0;
    for (int round = 0; round < rounds; round++) {
        if (work_over(cg->work))
            return COLGEN_LIMIT;
        long pivots = master_pivots(master);
        enum master_status status = master_solve(master, MASTER_PRIMAL);
        if (status != MASTER_SOLVED)
            return COLGEN_FAILED;
        (void)work_spend(cg->work, (master_pivots(master) - pivots) * master_rows(master) / 20 + master_rows(master));
        cg->value = master_value(master);
        if (cg->has_centre && is_enough(cg, enough, rounded))
            return COLGEN_DONE;
        purge(cg);
        read_prices(cg);
        int added = ask(cg, cg->has_centre ? SMOOTH : 0);
        if (added == 0 && !is_enough(cg, enough, rounded))
            added = ask(cg, 0);
        if (added == 0)
            return COLGEN_DONE;
    }
    return COLGEN_LIMIT;
}
