/* What the fuzz targets share: the entry that libFuzzer calls, an arena with a ceiling, and properties that abort. */
#ifndef SAWBILL_TESTS_FUZZ_H
#define SAWBILL_TESTS_FUZZ_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>

#include "sawbill/arena.h"

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

/* A reader that needs more than this for an input of a few kilobytes is at fault. */
enum { FUZZ_MEMORY = 256 * 1024 * 1024 };

static inline void fuzz_out_of_memory(void *owner)
{
    (void)owner;
    fprintf(stderr, "the ceiling of memory was reached\n");
    abort();
}

static inline struct arena *fuzz_arena(void)
{
    struct arena *arena = arena_new(FUZZ_MEMORY, fuzz_out_of_memory, NULL);
    if (!arena)
        abort();
    return arena;
}

static inline void fuzz_expect(bool holds, const char *what, const char *text)
{
    if (holds)
        return;
    fprintf(stderr, "%s: '%s'\n", what, text);
    abort();
}

#endif
