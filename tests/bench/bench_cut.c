/* bench_cut FOLDER SECONDS [SET [INSTANCE]]: solves the sets of cutting problems of a folder and prints, set by set,
 * how many are proved optimal within 0.1 s, 1 s, 10 s and 60 s of processor time, and the worst time. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include "../cut/form_check.h"
#include "../cut/cut_sets.h"

static const char *const SETS[] = {
    "lumber",      "vs-belov1",      "vs-belov2",      "vs-belov3",    "vs-belov4",     "vs-crainic1", "vs-crainic2",
    "vs-crainic3", "vs-hemmelmayr1", "vs-hemmelmayr2", "vs-random_x1", "orlib-binpack", "schwerin",    "scholl1",
    "random",      "scholl2",        "waescher",       "hard28",       "scholl3",       "gi",          "ai",
    "ani"};
enum { SET_COUNT = sizeof SETS / sizeof *SETS, PATH_ROOM = 4096, LIMITS = 4 };
static const double LIMIT[LIMITS] = {0.1, 1, 10, 60};

struct tally {
    int count, proved[LIMITS], wrong;
    double worst; /* of those that are proved */
};
struct bench {
    double seconds; /* a problem */
    const char *only;
    double start;
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
    return now() - bench->start > bench->seconds;
}

/* What is wrong; NULL when nothing is. */
static const char *judge(const struct cut_instance *instance, const struct form_result *result)
{
    const char *wrong = form_check(&instance->form, result);
    if (wrong || instance->optimum < 0)
        return wrong;
    if (result->bound > instance->optimum)
        return "the bound is above the published optimum";
    return result->verdict == FORM_PROVED && result->cost != instance->optimum ? "not the published optimum" : NULL;
}

static void run_instance(struct bench *bench, const struct cut_instance *instance, struct tally *tally)
{
    static const char *const VERDICT[] = {"proved", "best", "infeasible", "nothing"};
    struct arena *arena = arena_new(0, NULL, NULL);
    struct form_limits limits = {.steps = INT64_MAX / 2, .nodes = INT64_MAX / 2, .stop = is_late, .owner = bench};
    struct form_result result;
    bench->start = now();
    bool done = form_solve(arena, &instance->form, &limits, &result);
    double seconds = now() - bench->start;
    const char *wrong = done ? judge(instance, &result) : "refused";
    tally->count++;
    tally->wrong += wrong != NULL;
    if (done && result.verdict == FORM_PROVED) {
        for (int i = 0; i < LIMITS; i++)
            tally->proved[i] += seconds <= LIMIT[i];
        tally->worst = seconds > tally->worst ? seconds : tally->worst;
    }
    printf("  %-28s %-10s cost %lld bound %lld certificate %lld optimum %lld  %.3f s  %lld nodes %lld steps %s\n",
           instance->name, VERDICT[result.verdict], (long long)result.cost, (long long)result.bound,
           (long long)result.certificate.bound, (long long)instance->optimum, seconds, (long long)result.nodes,
           (long long)result.steps, wrong ? wrong : "");
    (void)fflush(stdout);
    arena_free(arena);
}

static bool run_set(struct bench *bench, const char *folder, const char *name, struct tally *tally)
{
    char path[PATH_ROOM], file[64];
    struct arena *arena = arena_new(0, NULL, NULL);
    struct cut_set set;
    (void)snprintf(file, sizeof file, "%s.txt", name);
    (void)snprintf(path, sizeof path, "%s/%s", folder, file);
    bool read = cut_set_read(arena, path, &set);
    (void)snprintf(path, sizeof path, "%s/optima.csv", folder);
    if (read)
        (void)cut_set_optima(path, file, &set);
    for (size_t i = 0; read && i < set.count; i++)
        if (!bench->only || strcmp(bench->only, set.instance[i].name) == 0)
            run_instance(bench, &set.instance[i], tally);
    arena_free(arena);
    return read;
}

static void print_table(const struct tally *tally)
{
    printf("%-16s %9s %6s %6s %6s %6s %9s %6s\n", "set", "instances", "0.1 s", "1 s", "10 s", "60 s", "worst s",
           "wrong");
    for (int i = 0; i < SET_COUNT; i++)
        if (tally[i].count > 0)
            printf("%-16s %9d %6d %6d %6d %6d %9.3f %6d\n", SETS[i], tally[i].count, tally[i].proved[0],
                   tally[i].proved[1], tally[i].proved[2], tally[i].proved[3], tally[i].worst, tally[i].wrong);
}

int main(int argc, char **argv)
{
    struct tally tally[SET_COUNT] = {0};
    if (argc < 3) {
        (void)fprintf(stderr, "usage: bench_cut FOLDER SECONDS [SET [INSTANCE]]\n");
        return 2;
    }
    struct bench bench = {.seconds = strtod(argv[2], NULL), .only = argc > 4 ? argv[4] : NULL};
    int wrong = 0;
    for (int i = 0; i < SET_COUNT; i++) {
        if (argc > 3 && strncmp(argv[3], SETS[i], strlen(argv[3])) != 0)
            continue;
        if (!run_set(&bench, argv[1], SETS[i], &tally[i]))
            (void)fprintf(stderr, "%s.txt: cannot be read\n", SETS[i]);
        wrong += tally[i].wrong;
    }
    print_table(tally);
    return wrong > 0;
}
