/* How long a bid takes and how large its workbook is, beside a program that writes the same cells with libxlsxwriter
 * alone: both in one run, so that their ratio means something on any machine.
 *
 * usage: bench_workbook ROUNDS JOB... */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <time.h>
#include <unistd.h>

#include "alone.h"
#include "same_cells.h"

#include "report/workbook.h"
#include "sawbill/text.h"

enum { ROUNDS_MOST = 999, FILE_MOST = 16 * 1024 * 1024 };

struct round {
    double plan, write, alone; /* seconds: job and catalogs to an estimate; estimate to a file; the cells to a file */
};
struct sizes {
    long long ours, alone;
    size_t cells, formulas;
};

static _Noreturn void fail(const char *what, const char *why)
{
    fprintf(stderr, "bench: %s: %s\n", what, why);
    exit(1);
}

static void out_of_memory(void *owner)
{
    (void)owner;
    fail("memory", "none left");
}

static double now(void)
{
    struct timespec t;
    if (clock_gettime(CLOCK_MONOTONIC, &t) != 0)
        fail("clock", "no monotonic clock");
    return (double)t.tv_sec + (double)t.tv_nsec * 1e-9;
}

static long long size_of(const char *file)
{
    struct stat info;
    if (stat(file, &info) != 0)
        fail(file, "was not written");
    return (long long)info.st_size;
}

static const char *read_file(struct arena *arena, const char *file, size_t *length)
{
    FILE *in = fopen(file, "rb");
    if (!in)
        fail(file, "cannot be read");
    struct buffer text = {.arena = arena};
    char part[65536];
    size_t got = 0;
    while (text.length < FILE_MOST && (got = fread(part, 1, sizeof part, in)) > 0)
        buffer_add_n(&text, part, got);
    (void)fclose(in); /* it was only read */
    *length = text.length;
    return buffer_text(&text);
}

/* What the job file names is relative to its folder. */
static const char *beside(struct arena *arena, const char *job_file, const char *path)
{
    const char *slash = strrchr(job_file, '/');
    if (!path || path[0] == '/' || !slash)
        return path;
    return arena_printf(arena, "%.*s%s", (int)(slash - job_file + 1), job_file, path);
}

/* The stages as `sawbill bid` runs them. */
static struct report plan(struct arena *arena, const char *job_file, struct diags *diags)
{
    size_t length = 0;
    const char *text = read_file(arena, job_file, &length);
    struct entries entries = {0};
    entries_read(arena, job_file, text, length, &entries, diags);
    const struct job *job = job_check(arena, job_file, &entries, diags);
    if (diag_count(diags, DIAG_STOP) > 0)
        fail(job_file, diag_line(arena, &diags->item[0]));
    const char *folder = beside(arena, job_file, job->facts.catalogs.text);
    const struct catalog *catalog =
        catalog_read(arena, folder, beside(arena, job_file, job->facts.shop_stock.text), diags);
    const struct outcome *outcome = plan_job(arena, job, catalog, diags);
    job_acknowledge(job, diags);
    diag_sort(diags);
    if (diag_count(diags, DIAG_STOP) > 0 || !outcome || !outcome->run || !outcome->run->estimate)
        fail(job_file, "the job stops");
    return (struct report){
        .job = job, .catalog = catalog, .outcome = outcome, .diags = diags, .job_file = job_file, .signable = false};
}

static void count_cells(const struct book *book, struct sizes *sizes)
{
    *sizes = (struct sizes){0};
    for (size_t i = 0; i < book->page_count; i++) {
        const struct page *page = book->page[i];
        sizes->cells += page->count + page->span_count;
        for (size_t k = 0; k < page->count; k++)
            sizes->formulas += page->slot[k].formula != NULL;
    }
}

static struct round measure(const char *job_file, const char *folder, struct sizes *sizes)
{
    struct arena *arena = arena_new(0, out_of_memory, NULL);
    if (!arena)
        out_of_memory(NULL);
    struct diags diags = {.arena = arena};
    struct round round;
    double start = now();
    struct report report = plan(arena, job_file, &diags);
    round.plan = now() - start;

    const char *ours = arena_printf(arena, "%s/ours.xlsx", folder), *written = ours, *why = "";
    start = now();
    if (report_workbook(arena, &report, ours, &written, &why) != WRITE_DONE)
        fail(ours, why);
    round.write = now() - start;

    const struct book *book = workbook_book(arena, &report); /* not timed: the cells are given to the other program */
    const char *alone = arena_printf(arena, "%s/alone.xlsx", folder);
    start = now();
    why = write_alone(book, alone);
    round.alone = now() - start;
    if (why)
        fail(alone, why);
    count_cells(book, sizes);
    sizes->ours = size_of(written);
    sizes->alone = size_of(alone);
    why = different_cells(arena, written, alone, book->page_count);
    if (why)
        fail("the two files differ", why);
    (void)unlink(written); /* the next round must not find it */
    (void)unlink(alone);
    arena_free(arena);
    return round;
}

static int compare_doubles(const void *a, const void *b)
{
    double x = *(const double *)a, y = *(const double *)b;
    return (x > y) - (x < y);
}

static double median(double *value, size_t count)
{
    qsort(value, count, sizeof *value, compare_doubles);
    return count % 2 ? value[count / 2] : (value[count / 2 - 1] + value[count / 2]) / 2;
}

static void print_job(const char *job_file, const struct round *round, size_t rounds, const struct sizes *sizes)
{
    double column[5][ROUNDS_MOST];
    for (size_t i = 0; i < rounds; i++) {
        column[0][i] = round[i].plan * 1e3;
        column[1][i] = round[i].write * 1e3;
        column[2][i] = round[i].alone * 1e3;
        column[3][i] = round[i].write / round[i].alone;
        column[4][i] = (round[i].plan + round[i].write) / round[i].alone;
    }
    double m[5];
    for (size_t k = 0; k < 5; k++)
        m[k] = median(column[k], rounds);
    const char *slash = strrchr(job_file, '/');
    printf("%-16s %6zu %8zu %8.1f %8.1f %8.1f %8.2f %8.2f %9lld %9lld %6.3f\n", slash ? slash + 1 : job_file,
           sizes->cells, sizes->formulas, m[0], m[1], m[2], m[3], m[4], sizes->ours, sizes->alone,
           (double)sizes->ours / (double)sizes->alone);
}

int main(int argc, char **argv)
{
    long rounds = argc > 2 ? strtol(argv[1], NULL, 10) : 0;
    if (rounds < 1 || rounds > ROUNDS_MOST) {
        fprintf(stderr, "usage: bench_workbook ROUNDS JOB...   (1 to %d rounds)\n", ROUNDS_MOST);
        return 2;
    }
    char folder[] = "/tmp/bench-workbook-XXXXXX";
    if (!mkdtemp(folder))
        fail(folder, "cannot be made");
    printf("medians of %ld rounds; times in ms, sizes in bytes\n", rounds);
    printf("%-16s %6s %8s %8s %8s %8s %8s %8s %9s %9s %6s\n", "job", "cells", "formulas", "plan", "write", "alone",
           "w/a", "(p+w)/a", "size", "alone", "s/a");
    for (int i = 2; i < argc; i++) {
        struct round round[ROUNDS_MOST];
        struct sizes sizes;
        (void)measure(argv[i], folder, &sizes); /* warms the caches, not counted */
        for (long k = 0; k < rounds; k++)
            round[k] = measure(argv[i], folder, &sizes);
        print_job(argv[i], round, (size_t)rounds, &sizes);
    }
    return rmdir(folder) == 0 ? 0 : 1;
}
