/* What every test program shares: cmocka with its headers, doubles compared as doubles, an arena that fails loudly. */
#ifndef SAWBILL_TESTS_SUPPORT_H
#define SAWBILL_TESTS_SUPPORT_H

#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <math.h>
#include <stdio.h>
#include <stdlib.h>

#include "sawbill/arena.h"

static inline void support_out_of_memory(void *owner)
{
    (void)owner;
    fprintf(stderr, "out of memory in a test\n");
    exit(99);
}

/* cmocka setup and teardown: *state is an arena. */
static inline int support_setup(void **state)
{
    *state = arena_new(0, support_out_of_memory, NULL);
    return *state ? 0 : -1;
}

static inline int support_teardown(void **state)
{
    arena_free(*state);
    return 0;
}

/* cmocka 1.1.5 compares floats and passes on NaN: this fails on what is not finite, and prints both in full. */
static inline void support_near(double got, double want, double tolerance, const char *what, const char *file, int line)
{
    if (isfinite(got) && isfinite(want) && fabs(got - want) <= tolerance)
        return;
    print_error("%s: got %.17g, want %.17g within %.3g\n", what, got, want, tolerance);
    _fail(file, line);
}
#define assert_near(got, want, tolerance) support_near((got), (want), (tolerance), #got, __FILE__, __LINE__)
#define assert_within(got, want, relative)                                                                             \
    support_near((got), (want), fabs(want) * (relative), #got, __FILE__, __LINE__)

#endif
