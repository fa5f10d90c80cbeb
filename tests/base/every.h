/* What the tests of the base share: a run under a decimal comma, and numbers that come out the same every time. */
#ifndef SAWBILL_TESTS_BASE_EVERY_H
#define SAWBILL_TESTS_BASE_EVERY_H

#include <locale.h>
#include <string.h>

#include "support.h"

enum { TEST_SKIPPED = 77 };

/* `PROGRAM comma` sets a locale with a decimal comma (found by way of LOCPATH where that is set) and makes sure that
 * it is one; TEST_SKIPPED when the machine has none.  Without an argument the C locale stays. */
static inline int set_locale_from(int argc, char **argv)
{
    if (argc < 2 || strcmp(argv[1], "comma") != 0)
        return 0;
    if (!setlocale(LC_ALL, "de_DE.UTF-8") && !setlocale(LC_ALL, "de_DE.utf8")) {
        print_message("no locale de_DE.UTF-8 on this machine: skipped\n");
        return TEST_SKIPPED;
    }
    char text[16];
    (void)snprintf(text, sizeof text, "%.1f", 1.5);
    if (strcmp(text, "1,5") != 0) {
        print_error("de_DE.UTF-8 prints 1.5 as %s\n", text);
        return 1;
    }
    return 0;
}

/* SplitMix64 (Steele, Lea and Flood, 2014). */
static inline uint64_t next_random(uint64_t *state)
{
    uint64_t z = (*state += UINT64_C(0x9e3779b97f4a7c15));
    z = (z ^ (z >> 30)) * UINT64_C(0xbf58476d1ce4e5b9);
    z = (z ^ (z >> 27)) * UINT64_C(0x94d049bb133111eb);
    return z ^ (z >> 31);
}

/* 0 to most, both included. */
static inline int64_t random_up_to(uint64_t *state, int64_t most)
{
    return (int64_t)(next_random(state) % ((uint64_t)most + 1));
}

#endif
