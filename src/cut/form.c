/* form_solve(): from quick plans and bounds to the full search, one step after the other until nothing is left to
 * prove. */
#include "form.h"

#include "close.h"
#include "dual.h"
#include "emit.h"

static const int64_t DEFAULT_STEPS = 20000000, DEFAULT_NODES = 2000000;
static const size_t DEFAULT_MEMORY = (size_t)150 << 20, DEFAULT_PATTERNS = 100000;
enum { MOST_ROOT_ROUNDS = 20000 };
static const int64_t MOST_SUM = (int64_t)1 << 50;

static bool is_sound(const struct form *form)
{
    wide_t pieces = 0, length = 0, dearest = 1;
    for (size_t i = 0; i < form->type_count; i++) {
        if (form->type[i].length <= 0 || form->type[i].demand < 0)
            return false;
        pieces += form->type[i].demand;
        length += (wide_t)form->type[i].demand * form->type[i].length;
    }
    for (size_t i = 0; i < form->stock_count; i++) {
        if (form->stock[i].cost < 0 || form->stock[i].supply < FORM_ENDLESS)
            return false;
        dearest = form->stock[i].cost > dearest ? form->stock[i].cost : dearest;
    }
    return pieces * dearest < MOST_SUM && length < MOST_SUM && form->type_count < INT32_MAX &&
           form->stock_count < INT32_MAX;
}

/* The work space is full: the search ends there. */
static void end_search(void *owner)
{
    struct work *work = owner;
    longjmp(work->full, 1);
}

static void prove_by_length(struct work *work, struct knap *knap)
{
    struct dual dual;
    dual_start(&dual, work->arena, &work->norm);
    dual_by_length(&dual, &work->norm);
    dual_settle(&dual, knap, &work->norm);
    work_take_dual(work, &dual);
}

static void solve(struct work *work)
{
    const struct norm *norm = &work->norm;
    struct knap knap;
    struct greedy greedy;
    struct answer first;
    greedy_start(&greedy, work->arena, norm);
    answer_start(&first, work->arena);
    answer_clear(&first);
    if (greedy_finish(work, &greedy, norm->demand, norm->supply, NO_COST, &first))
        (void)work_offer(work, &first);
    if (work->best->cost < norm->no_plan)
        norm->cost[norm->penalty] = work->best->cost; /* as dear as need be: figures stay small */
    dual_start(&work->dual, work->arena, norm);
    knap_start(&knap, work->arena, norm);
    prove_by_length(work, &knap);
    if (work_closed(work))
        return;
    work->library = master_open(work->arena, work->most_memory / 4);
    struct colgen cg;
    if (!work->library || !colgen_start(&cg, work, &first))
        return;
    bool one_price = norm->stocks == 2; /* and the penalty */
    (void)colgen_run(&cg, MOST_ROOT_ROUNDS, work->best->cost, one_price);
    work_take_dual(work, &cg.dual);
    struct dive dive;
    dive_start(&dive, &cg, &greedy);
    close_gap(work, &cg, &dive, &greedy);
}

static void set_limits(struct work *work, const struct form_limits *limits)
{
    work->limits = limits;
    work->most_memory = limits && limits->memory > 0 ? limits->memory : DEFAULT_MEMORY;
    work->most_patterns = limits && limits->patterns > 0 ? limits->patterns : DEFAULT_PATTERNS;
    work->most_steps = limits && limits->steps > 0 ? limits->steps : DEFAULT_STEPS;
    work->most_nodes = limits && limits->nodes > 0 ? limits->nodes : DEFAULT_NODES;
}

static void start(struct work *work, const struct form *form)
{
    norm_make(&work->norm, work->arena, form);
    if (work->norm.types == 0)
        dual_start(&work->dual, work->arena, &work->norm);
    for (int i = 0; i < 2; i++)
        answer_start(&work->answer[i], work->arena);
    if (work->norm.types == 0)
        answer_clear(&work->answer[0]);
    work->span.least = arena_array(work->arena, (size_t)work->norm.stocks, sizeof(int64_t));
    work->span.most = work->norm.supply;
    work->spare = &work->answer[1];
    work->best = &work->answer[0];
}

static void judge(const struct work *work, struct form_result *result)
{
    const struct norm *norm = &work->norm;
    if (work->bound >= norm->no_plan)
        result->verdict = FORM_INFEASIBLE;
    else if (work->best->cost >= norm->no_plan)
        result->verdict = FORM_NOTHING;
    else
        result->verdict = work_closed(work) ? FORM_PROVED : FORM_BEST;
}

static void report(struct arena *arena, const struct form *form, const struct work *work, struct form_result *result)
{
    judge(work, result);
    result->bound = work->bound;
    result->nodes = work->nodes;
    result->steps = work->steps;
    result->stopped = work->stopped;
    if (result->verdict == FORM_PROVED || result->verdict == FORM_BEST)
        emit_plan(arena, form, work, result);
    emit_certificate(arena, form, work, result);
}

bool form_solve(struct arena *arena, const struct form *form, const struct form_limits *limits,
                struct form_result *result)
{
    *result = (struct form_result){.verdict = FORM_NOTHING};
    if (!is_sound(form))
        return false;
    struct work *work = arena_alloc(arena, sizeof *work);
    set_limits(work, limits);
    work->arena = arena_new(work->most_memory, end_search, work);
    if (!work->arena)
        return false;
    if (setjmp(work->full) == 0) {
        start(work, form);
        if (work->norm.types > 0)
            solve(work);
    }
    master_close(work->library);
    arena_free(work->list);
    bool started = work->best != NULL;
    if (started)
        report(arena, form, work, result);
    arena_free(work->arena);
    return started;
}
