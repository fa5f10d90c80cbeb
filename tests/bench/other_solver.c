/* CBC and glpsol as programs. */
#include "other_solver.h"

#include <fcntl.h>
#include <math.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

enum { LINE_ROOM = 1024, NOT_FOUND = 127 };

/* How each is called, and what its report says. */
static const struct {
    const char *name, *argument[8];
    const char *report; /* file */
    const char *optimal, *cost;
} SOLVER[OTHER_SOLVERS] = {
    {"cbc", {"cbc", "model.mps", "-solve", "-quit"}, "log", "Result - Optimal solution found", "Objective value:"},
    {"glpsol", {"glpsol", "--mps", "model.mps", "-o", "report"}, "report", "INTEGER OPTIMAL", "Objective:  COST ="},
};

const char *other_name(enum other_solver solver)
{
    return SOLVER[solver].name;
}

/* The system knows the sum well, and how much of it was its own only by samples: too few in a short run. */
static double seconds_of_children(void)
{
    struct rusage usage;
    getrusage(RUSAGE_CHILDREN, &usage);
    return (double)(usage.ru_utime.tv_sec + usage.ru_stime.tv_sec) +
           1e-6 * (double)(usage.ru_utime.tv_usec + usage.ru_stime.tv_usec);
}

/* In the child: never returns. */
static _Noreturn void become(enum other_solver solver, const char *folder, double limit)
{
    rlim_t seconds = (rlim_t)ceil(limit);
    struct rlimit room = {seconds, seconds + 1};
    int log = -1;
    if (chdir(folder) == 0 && setrlimit(RLIMIT_CPU, &room) == 0)
        log = open("log", O_WRONLY | O_CREAT | O_TRUNC, 0600);
    if (log < 0 || dup2(log, STDOUT_FILENO) < 0 || dup2(log, STDERR_FILENO) < 0)
        _exit(NOT_FOUND);
    char *argument[8];
    memcpy(argument, SOLVER[solver].argument, sizeof argument);
    (void)execvp(argument[0], argument);
    _exit(NOT_FOUND);
}

static void read_report(enum other_solver solver, const char *folder, struct other_run *run)
{
    char line[LINE_ROOM];
    (void)snprintf(line, sizeof line, "%s/%s", folder, SOLVER[solver].report);
    FILE *file = fopen(line, "r");
    while (file && fgets(line, sizeof line, file)) {
        const char *cost = strstr(line, SOLVER[solver].cost);
        run->proved = run->proved || strstr(line, SOLVER[solver].optimal);
        if (cost)
            run->cost = strtod(cost + strlen(SOLVER[solver].cost), NULL);
    }
    if (file)
        (void)fclose(file);
}

bool other_run(enum other_solver solver, const char *folder, double limit, struct other_run *run)
{
    int status = 0;
    double before = seconds_of_children();
    *run = (struct other_run){0};
    pid_t child = fork();
    if (child == 0)
        become(solver, folder, limit);
    if (child < 0 || waitpid(child, &status, 0) != child)
        return false;
    run->seconds = seconds_of_children() - before;
    run->late = WIFSIGNALED(status) && (WTERMSIG(status) == SIGXCPU || WTERMSIG(status) == SIGKILL);
    if (WIFEXITED(status) && WEXITSTATUS(status) == NOT_FOUND)
        return false;
    if (!run->late)
        read_report(solver, folder, run);
    return true;
}
