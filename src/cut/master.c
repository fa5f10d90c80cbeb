/* GLPK behind the few calls that the solver needs.
 *
 * GLPK allocates for itself, writes to the terminal and aborts the program on misuse or for want of memory.  So its
 * terminal is turned off and swallowed, its abort comes back here by longjmp, and all that it holds is released with
 * the thread's environment: no other GLPK problem may live in this thread from master_open() to master_close(). */
#include "master.h"

#include <glpk.h>
#include <setjmp.h>

enum { PIVOTS_A_SOLUTION = 200000 };

struct master_library {
    size_t most_memory;
    bool lost;
    jmp_buf trap;
};
struct master {
    struct master_library *library;
    glp_prob *problem;
    struct arena *arena;
    int *index; /* scratch, from 1 as GLPK counts */
    double *factor;
    int scratch;
    long pivots;
};

static int swallow(void *owner, const char *text)
{
    (void)owner;
    (void)text;
    return 1;
}

static void fail(void *owner)
{
    struct master_library *library = owner;
    longjmp(library->trap, 1);
}

/* The library has failed: by its rules only the whole environment can be released then. */
static void lose(struct master_library *library)
{
    library->lost = true;
    glp_error_hook(NULL, NULL);
    (void)glp_free_env();
}

struct master_library *master_open(struct arena *arena, size_t most_memory)
{
    struct master_library *library = arena_alloc(arena, sizeof *library);
    library->most_memory = most_memory;
    if (setjmp(library->trap)) {
        lose(library);
        return NULL;
    }
    (void)glp_term_out(GLP_OFF);
    glp_term_hook(swallow, NULL);
    glp_error_hook(fail, library);
    return library;
}

bool master_lost(const struct master_library *library)
{
    return library && library->lost;
}

void master_close(struct master_library *library)
{
    if (library && !library->lost)
        lose(library);
}

struct master *master_new(struct arena *arena, struct master_library *library)
{
    struct master *master = arena_alloc(arena, sizeof *master);
    master->arena = arena;
    master->library = library;
    if (library->lost)
        return NULL;
    if (setjmp(library->trap)) {
        lose(library);
        return NULL;
    }
    master->problem = glp_create_prob();
    glp_set_obj_dir(master->problem, GLP_MIN);
    return master;
}

void master_free(struct master *master)
{
    if (!master || master->library->lost)
        return;
    if (setjmp(master->library->trap)) {
        lose(master->library);
        return;
    }
    glp_delete_prob(master->problem);
}

static int bounds_kind(double least, double most)
{
    if (least <= -MASTER_FREE)
        return most >= MASTER_FREE ? GLP_FR : GLP_UP;
    if (most >= MASTER_FREE)
        return GLP_LO;
    return least >= most ? GLP_FX : GLP_DB;
}

void master_set_row(struct master *master, int row, double least, double most)
{
    if (master->library->lost)
        return;
    if (setjmp(master->library->trap)) {
        lose(master->library);
        return;
    }
    glp_set_row_bnds(master->problem, row + 1, bounds_kind(least, most), least, most);
}

void master_add_row(struct master *master, double least, double most)
{
    if (master->library->lost)
        return;
    if (setjmp(master->library->trap)) {
        lose(master->library);
        return;
    }
    int row = glp_add_rows(master->problem, 1);
    glp_set_row_bnds(master->problem, row, bounds_kind(least, most), least, most);
}

static void make_room(struct master *master, int count)
{
    if (master->scratch > count)
        return;
    master->scratch = 2 * count + 64;
    master->index = arena_array(master->arena, (size_t)master->scratch, sizeof *master->index);
    master->factor = arena_array(master->arena, (size_t)master->scratch, sizeof *master->factor);
}

static void shift(struct master *master, int count, const int *index, const double *factor)
{
    make_room(master, count);
    for (int i = 0; i < count; i++) {
        master->index[i + 1] = index[i] + 1;
        master->factor[i + 1] = factor[i];
    }
}

void master_add_column(struct master *master, double cost, double most, int count, const int *row, const double *factor)
{
    if (master->library->lost)
        return;
    shift(master, count, row, factor);
    if (setjmp(master->library->trap)) {
        lose(master->library);
        return;
    }
    int column = glp_add_cols(master->problem, 1);
    glp_set_obj_coef(master->problem, column, cost);
    glp_set_col_bnds(master->problem, column, bounds_kind(0, most), 0, most);
    glp_set_mat_col(master->problem, column, count, master->index, master->factor);
}

void master_set_factors(struct master *master, int row, int count, const int *column, const double *factor)
{
    if (master->library->lost)
        return;
    shift(master, count, column, factor);
    if (setjmp(master->library->trap)) {
        lose(master->library);
        return;
    }
    glp_set_mat_row(master->problem, row + 1, count, master->index, master->factor);
}

void master_set_column(struct master *master, int column, double least, double most)
{
    if (master->library->lost)
        return;
    if (setjmp(master->library->trap)) {
        lose(master->library);
        return;
    }
    glp_set_col_bnds(master->problem, column + 1, bounds_kind(least, most), least, most);
}

void master_set_cost(struct master *master, int column, double cost)
{
    if (master->library->lost)
        return;
    if (setjmp(master->library->trap)) {
        lose(master->library);
        return;
    }
    glp_set_obj_coef(master->problem, column + 1, cost);
}

void master_drop_columns(struct master *master, const bool *gone)
{
    if (master->library->lost)
        return;
    int columns = glp_get_num_cols(master->problem), count = 0;
    make_room(master, columns);
    for (int i = 0; i < columns; i++)
        if (gone[i])
            master->index[++count] = i + 1;
    if (count == 0)
        return;
    if (setjmp(master->library->trap)) {
        lose(master->library);
        return;
    }
    glp_del_cols(master->problem, count, master->index);
}

/* A basis that is left singular by rows or columns that went is made anew, once. */
static int run(struct master *master, enum master_how how)
{
    glp_smcp options;
    glp_init_smcp(&options);
    options.msg_lev = GLP_MSG_OFF;
    options.meth = how == MASTER_DUAL ? GLP_DUALP : GLP_PRIMAL;
    options.tol_dj = 1e-9;
    options.tol_bnd = 1e-9;
    options.it_lim = PIVOTS_A_SOLUTION;
    int before = glp_get_it_cnt(master->problem);
    int failure = glp_simplex(master->problem, &options);
    if (failure == GLP_EBADB || failure == GLP_ESING || failure == GLP_ECOND) {
        glp_adv_basis(master->problem, 0);
        failure = glp_simplex(master->problem, &options);
    }
    if (failure == GLP_EFAIL) {
        glp_std_basis(master->problem);
        options.meth = GLP_PRIMAL;
        failure = glp_simplex(master->problem, &options);
    }
    master->pivots += glp_get_it_cnt(master->problem) - before;
    return failure;
}

/* The library's own limit leaks what it was about to enlarge, so what it holds is looked at between solutions. */
static bool is_full(const struct master_library *library)
{
    size_t held = 0;
    glp_mem_usage(NULL, NULL, &held, NULL);
    return held > library->most_memory;
}

enum master_status master_solve(struct master *master, enum master_how how)
{
    if (master->library->lost)
        return MASTER_FAILED;
    if (setjmp(master->library->trap)) {
        lose(master->library);
        return MASTER_FAILED;
    }
    if (run(master, how) != 0)
        return MASTER_FAILED;
    if (is_full(master->library)) {
        lose(master->library);
        return MASTER_FAILED;
    }
    switch (glp_get_status(master->problem)) {
    case GLP_OPT:
        return MASTER_SOLVED;
    case GLP_NOFEAS:
    case GLP_INFEAS:
        return glp_get_prim_stat(master->problem) == GLP_NOFEAS ? MASTER_INFEASIBLE : MASTER_FAILED;
    default:
        return MASTER_FAILED;
    }
}

double master_value(const struct master *master)
{
    return master->library->lost ? 0 : glp_get_obj_val(master->problem);
}

double master_price(const struct master *master, int row)
{
    return master->library->lost ? 0 : glp_get_row_dual(master->problem, row + 1);
}

double master_use(const struct master *master, int column)
{
    return master->library->lost ? 0 : glp_get_col_prim(master->problem, column + 1);
}

double master_reduced(const struct master *master, int column)
{
    return master->library->lost ? 0 : glp_get_col_dual(master->problem, column + 1);
}

int master_rows(const struct master *master)
{
    return master->library->lost ? 0 : glp_get_num_rows(master->problem);
}

int master_columns(const struct master *master)
{
    return master->library->lost ? 0 : glp_get_num_cols(master->problem);
}

long master_pivots(const struct master *master)
{
    return master->pivots;
}
