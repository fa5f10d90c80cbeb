/* bench_others FOLDER SECONDS [SET[/PROBLEM]...]: the cut plan's solver beside two general ones, CBC and glpsol, which
 * get the arc-flow model; about forty problems of a folder's sets by name.  Processor time, all in one run. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <time.h>
#include <unistd.h>

#include "../cut/cut_sets.h"
#include "../cut/form_check.h"
#include "arc_flow.h"
#include "other_solver.h"

static const struct {
    const char *set, *name;
} PROBLEM[] = {
    {"lumber", "lumber15"},
    {"lumber", "lumber60"},
    {"lumber", "lumber300"},
    {"lumber", "job24-rack"},
    {"lumber", "job40"},
    {"lumber", "job120-rack"},
    {"lumber", "job400"},
    {"lumber", "job400-rack"},
    {"lumber", "house2000"},
    {"lumber", "house5000"},
    {"lumber", "house5000-rack"},
    {"lumber", "house20000"},
    {"vs-belov1", "Belov1_19"},
    {"vs-belov2", "Belov2_16"},
    {"vs-crainic1", "Crainic1_1_A_2_4"},
    {"vs-crainic1", "Crainic1_1_A_4_8"},
    {"vs-crainic1", "Crainic1_2_B_1_8"},
    {"vs-crainic1", "Crainic1_3_B_3_8"},
    {"vs-crainic2", "Crainic2_100_3_1"},
    {"vs-crainic2", "Crainic2_200_6_5"},
    {"vs-crainic3", "Crainic3_200_1_3_002"},
    {"vs-crainic3", "Crainic3_1000_1_0_008"},
    {"vs-hemmelmayr1", "Hemmelmayr1_100_7_3_1"},
    {"vs-hemmelmayr1", "Hemmelmayr1_500_7_3_1"},
    {"vs-hemmelmayr2", "Hemmelmayr2_100_3_1_5"},
    {"vs-random_x1", "random12_48_13_1_0"},
    {"vs-random_x1", "random30_60_26_2_0"},
    {"orlib-binpack", "u120_00"},
    {"orlib-binpack", "u250_13"},
    {"orlib-binpack", "u500_00"},
    {"orlib-binpack", "u1000_00"},
    {"orlib-binpack", "t60_00"},
    {"orlib-binpack", "t120_00"},
    {"orlib-binpack", "t249_00"},
    {"schwerin", "Schwerin1_BPP1"},
    {"scholl1", "N4C1W1_G"},
    {"scholl2", "N1W3B1R4"},
    {"scholl2", "N3W2B1R6"},
    {"random", "BPP_200_200_0.1_0.7_9"},
    {"random", "BPP_500_500_0.2_0.7_1"},
    {"waescher", "Waescher_TEST0044"},
    {"hard28", "Hard28_BPP13"},
};
enum { PROBLEMS = sizeof PROBLEM / sizeof *PROBLEM, PATH_ROOM = 4096 };
/* What is solved faster is solved again until so much time went by; never counted as less than a microsecond. */
static const double LEAST_SECONDS = 0.1, SHORTEST = 1e-6;

struct ours {
    double seconds, megabytes;
    int64_t cost, bound;
    bool proved;
    char wrong[64]; /* "": nothing */
};
struct bench {
    const char *folder;
    char work[64]; /* folder of models */
    double limit;
    double start;
    int rows, proved, wrong, lumber_rows, lumber_slower, slower, missing;
    double log_sum;
    int late[OTHER_SOLVERS];
};

static double now(void)
{
    struct timespec time;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &time);
    return (double)time.tv_sec + 1e-9 * (double)time.tv_nsec;
}

static bool is_late(void *owner)
{
    const struct bench *bench = owner;
    return now() - bench->start > bench->limit;
}

static void judge(const struct form *form, const struct form_result *result, int64_t optimum, struct ours *ours)
{
    const char *wrong = form_check(form, result);
    if (!wrong && optimum >= 0 && (result->bound > optimum || result->cost < optimum))
        wrong = "not the published optimum";
    (void)snprintf(ours->wrong, sizeof ours->wrong, "%s", wrong ? wrong : "");
}

/* In a process of its own: its greatest memory is then the solver's. */
static void solve(struct bench *bench, const struct cut_instance *instance, struct ours *ours)
{
    struct form_limits limits = {.steps = INT64_MAX / 2, .nodes = INT64_MAX / 2, .stop = is_late, .owner = bench};
    double begin = now();
    int runs = 0;
    *ours = (struct ours){.cost = -1};
    do {
        struct arena *arena = arena_new(0, NULL, NULL);
        struct form_result result;
        bench->start = now();
        if (!form_solve(arena, &instance->form, &limits, &result)) {
            (void)snprintf(ours->wrong, sizeof ours->wrong, "refused");
            return;
        }
        runs++;
        ours->seconds = (now() - begin) / runs;
        ours->cost = result.cost;
        ours->bound = result.bound;
        ours->proved = result.verdict == FORM_PROVED;
        if (now() - begin >= LEAST_SECONDS) {
            struct rusage usage;
            getrusage(RUSAGE_SELF, &usage);
            ours->megabytes = (double)usage.ru_maxrss / 1024;
            judge(&instance->form, &result, instance->optimum, ours);
        }
        arena_free(arena);
    } while (now() - begin < LEAST_SECONDS);
}

static bool run_ours(struct bench *bench, const struct cut_instance *instance, struct ours *ours)
{
    int end[2];
    if (pipe(end) != 0)
        return false;
    pid_t child = fork();
    if (child == 0) {
        solve(bench, instance, ours);
        _exit(write(end[1], ours, sizeof *ours) == (ssize_t)sizeof *ours ? 0 : 1);
    }
    (void)close(end[1]);
    bool done = child > 0 && read(end[0], ours, sizeof *ours) == (ssize_t)sizeof *ours;
    (void)close(end[0]);
    return child > 0 && waitpid(child, NULL, 0) == child && done;
}

static void remove_file(const struct bench *bench, const char *name)
{
    char path[PATH_ROOM];
    (void)snprintf(path, sizeof path, "%s/%s", bench->work, name);
    (void)unlink(path);
}

/* What counts: a solver without a proof took the whole limit. */
static double counted(const struct bench *bench, const struct other_run *run)
{
    return run->proved ? (run->seconds > SHORTEST ? run->seconds : SHORTEST) : bench->limit;
}

/* Both agree with ours where they and we have a proof. */
static const char *compare(const struct ours *ours, const struct other_run *other)
{
    if (ours->wrong[0] != '\0')
        return ours->wrong;
    for (int i = 0; i < OTHER_SOLVERS; i++)
        if (other[i].proved && (other[i].cost < (double)ours->bound - 0.5 || other[i].cost > (double)ours->cost + 0.5))
            return "the solvers do not agree";
    return "";
}

static void print_row(struct bench *bench, const struct cut_instance *instance, bool lumber,
                      const struct arc_flow *size, const struct ours *ours, const struct other_run *other)
{
    const char *wrong = compare(ours, other);
    double better = bench->limit;
    bool all_late = true;
    printf("%-24s %6zu %6zu %7lld %8lld %10lld %9.4f%s %6.1f", instance->name, instance->form.type_count,
           instance->form.stock_count, (long long)size->nodes, (long long)size->arcs, (long long)ours->cost,
           ours->seconds, ours->proved ? " " : "*", ours->megabytes);
    for (int i = 0; i < OTHER_SOLVERS; i++) {
        double seconds = counted(bench, &other[i]);
        printf(" %s%8.3f", other[i].proved ? " " : ">", seconds);
        better = seconds < better ? seconds : better;
        all_late = all_late && !other[i].proved;
        bench->late[i] += !other[i].proved;
    }
    double ratio = better / ours->seconds;
    bool slower = !ours->proved || ratio < 1;
    printf("  %s%9.1f  %-6s %s\n", all_late ? ">" : " ", ratio, slower ? "yes" : "no", wrong);
    (void)fflush(stdout);
    bench->rows++;
    bench->wrong += *wrong != '\0';
    bench->slower += slower;
    bench->lumber_rows += lumber;
    bench->lumber_slower += lumber && slower;
    if (ours->proved) {
        bench->proved++;
        bench->log_sum += log(ratio);
    }
}

static void run_problem(struct bench *bench, const struct cut_instance *instance, bool lumber)
{
    char path[PATH_ROOM];
    struct arc_flow size;
    struct ours ours;
    struct other_run other[OTHER_SOLVERS];
    (void)snprintf(path, sizeof path, "%s/model.mps", bench->work);
    bool done = run_ours(bench, instance, &ours) && arc_flow_write(&instance->form, path, &size);
    for (int i = 0; i < OTHER_SOLVERS && done; i++) {
        done = other_run((enum other_solver)i, bench->work, bench->limit, &other[i]);
        if (!done)
            (void)fprintf(stderr, "%s cannot be run\n", other_name((enum other_solver)i));
    }
    if (done)
        print_row(bench, instance, lumber, &size, &ours, other);
    bench->missing += !done;
    remove_file(bench, "model.mps");
    remove_file(bench, "log");
    remove_file(bench, "report");
}

static void run_named(struct bench *bench, const char *set_name, const char *name)
{
    char path[PATH_ROOM], file[64];
    struct arena *arena = arena_new(0, NULL, NULL);
    struct cut_set set;
    const struct cut_instance *found = NULL;
    (void)snprintf(file, sizeof file, "%s.txt", set_name);
    (void)snprintf(path, sizeof path, "%s/%s", bench->folder, file);
    if (cut_set_read(arena, path, &set)) {
        (void)snprintf(path, sizeof path, "%s/optima.csv", bench->folder);
        (void)cut_set_optima(path, file, &set);
        for (size_t i = 0; i < set.count; i++)
            if (strcmp(set.instance[i].name, name) == 0)
                found = &set.instance[i];
    }
    if (found)
        run_problem(bench, found, strcmp(set_name, "lumber") == 0);
    else
        (void)fprintf(stderr, "%s: no '%s' there\n", file, name);
    bench->missing += !found;
    arena_free(arena);
}

static void print_end(const struct bench *bench)
{
    printf("%d problems, %d proved by ours within %g s\n", bench->rows, bench->proved, bench->limit);
    if (bench->proved > 0)
        printf("the better of the two took %.1f times as long as ours on these (geometric mean, what has no proof "
               "counted at "
               "the limit)\n",
               exp(bench->log_sum / bench->proved));
    for (int i = 0; i < OTHER_SOLVERS; i++)
        printf("%s: %d without a proof\n", other_name((enum other_solver)i), bench->late[i]);
    printf("slower: %d, of %d lumber lists %d; wrong: %d\n", bench->slower, bench->lumber_rows, bench->lumber_slower,
           bench->wrong);
}

/* Named by one of the arguments, or by its beginning; all are when there is no argument. */
static bool is_wanted(const char *set, const char *name, char *const *argument)
{
    char full[128];
    (void)snprintf(full, sizeof full, "%s/%s", set, name);
    for (char *const *at = argument; *at; at++)
        if (strncmp(full, *at, strlen(*at)) == 0)
            return true;
    return !*argument;
}

int main(int argc, char **argv)
{
    struct bench bench = {.work = "/tmp/bench-others-XXXXXX"};
    if (argc < 3 || (bench.limit = strtod(argv[2], NULL)) <= 0) {
        (void)fprintf(stderr, "usage: bench_others FOLDER SECONDS [SET[/PROBLEM]...]\n");
        return 2;
    }
    bench.folder = argv[1];
    if (!mkdtemp(bench.work)) {
        perror(bench.work);
        return 1;
    }
    printf("%-24s %6s %6s %7s %8s %10s %9s  %6s %9s %9s  %10s  %-6s\n", "problem", "types", "stocks", "nodes", "arcs",
           "cost", "ours s", "MB", "cbc s", "glpsol s", "ratio", "slower");
    for (int i = 0; i < PROBLEMS; i++)
        if (is_wanted(PROBLEM[i].set, PROBLEM[i].name, argv + 3))
            run_named(&bench, PROBLEM[i].set, PROBLEM[i].name);
    print_end(&bench);
    (void)rmdir(bench.work);
    return bench.wrong > 0 || bench.missing > 0;
}
