/* A whole job that is right, and edits of it: each test says the edit and every message that it must give. */
#ifndef SAWBILL_TESTS_JOB_SUPPORT_H
#define SAWBILL_TESTS_JOB_SUPPORT_H

#include "support.h"

#include <string.h>

#include "sawbill/job.h"
#include "sawbill/text.h"

static const char good_job[] = "[job]\n"
                               "name = Porch wall\n"
                               "date = 2026-02-03\n"
                               "unusual = none\n"
                               "catalogs = catalogs\n"
                               "[area loft]\n"
                               "dead = 12 psf\n"
                               "live = 30 psf\n"
                               "live is = sleeping\n"
                               "[area roof]\n"
                               "dead = 15 psf\n"
                               "live = 20 psf\n"
                               "live is = roof\n"
                               "snow = 30 psf\n"
                               "snow is = on the ground\n"
                               "snow level = allowable\n"
                               "[roof]\n"
                               "frame = ridge board\n"
                               "pitch = 6/12\n"
                               "span = 26 ft\n"
                               "area = area roof\n"
                               "braces = none\n"
                               "snow drifts = no\n"
                               "[joists east]\n"
                               "kind = sawn joist\n"
                               "size = 2x8\n"
                               "spacing = 16 in\n"
                               "first joist = 8 in\n"
                               "run = 12 ft\n"
                               "ties the roof = no\n"
                               "area = area loft\n"
                               "[joists west]\n"
                               "kind = sawn joist\n"
                               "size = 2x8\n"
                               "spacing = 16 in\n"
                               "at = 7 in, 23 in, 39 in\n"
                               "run = 10 ft\n"
                               "ties the roof = no\n"
                               "area = area loft\n"
                               "[beam B1]\n"
                               "clear span = 10 ft 3 in\n"
                               "joists A = joists east\n"
                               "joists B = joists west\n"
                               "above = load post, wall W2\n"
                               "end 1 = post P1\n"
                               "wall at end 1 = across\n"
                               "end 2 = beam B2 at 6 ft 2 in\n"
                               "member = LVL-9.5\n"
                               "plies = 3\n"
                               "ply fasteners = NAIL-16D-COMMON\n"
                               "[beam B2]\n"
                               "status = existing\n"
                               "clear span = 9 ft\n"
                               "above = nothing\n"
                               "end 1 = wall plate\n"
                               "bearing 1 = 3-1/2 in\n"
                               "end 2 = pocket\n"
                               "bearing 2 = 3 in\n"
                               "member = DFL2-2X10\n"
                               "plies = 2\n"
                               "[load post]\n"
                               "on = beam B1\n"
                               "at = 4 ft\n"
                               "dead = 400 lb\n"
                               "snow = 900 lb\n"
                               "snow level = allowable\n"
                               "held by = shore A\n"
                               "[post P1]\n"
                               "member = SPF-STUD-2X4\n"
                               "plies = 3\n"
                               "height = 7 ft 6 in\n"
                               "braced = both\n"
                               "stands on = block K1\n"
                               "[block K1]\n"
                               "depth = 9-1/4 in\n"
                               "stands on = footing F1\n"
                               "[footing F1]\n"
                               "status = new\n"
                               "size = 30 in\n"
                               "thickness = 12 in\n"
                               "[wall W1]\n"
                               "status = comes out\n"
                               "under = beam B1\n"
                               "length = 11 ft\n"
                               "height = 8 ft\n"
                               "bracing = no\n"
                               "[wall W2]\n"
                               "status = stays\n"
                               "on = beam B1\n"
                               "height = 8 ft\n"
                               "weight = 8 psf\n"
                               "[shore A]\n"
                               "holds = joists east, joists west, wall W2\n"
                               "studs = SPF-STUD-2X4\n"
                               "height = 7 ft 9 in\n"
                               "stands on = slab on ground\n"
                               "days = 5\n"
                               "[bid]\n"
                               "method = compound\n"
                               "overhead = 12 %\n"
                               "contingency = 5 %\n"
                               "profit = 10 %\n"
                               "tax = 0\n";

static inline struct job *read_text(struct arena *arena, const char *file, const char *text, size_t length,
                                    struct diags *diags)
{
    struct entries *entries = arena_alloc(arena, sizeof *entries);
    *diags = (struct diags){.arena = arena};
    entries_read(arena, file, text, length, entries, diags);
    struct job *job = job_check(arena, file, entries, diags);
    diag_sort(diags);
    return job;
}

/* Every message that is shown, a line each. */
static inline char *messages(struct arena *arena, const struct diags *diags)
{
    struct buffer out = {.arena = arena};
    for (size_t i = 0; i < diags->count; i++)
        if (!diags->item[i].acknowledged)
            buffer_printf(&out, "%s\n", diag_line(arena, &diags->item[i]));
    return arena_strdup(arena, buffer_text(&out));
}

/* good_job with `old`, which must be there once, replaced. */
static inline char *edited(struct arena *arena, const char *old, const char *new)
{
    const char *at = strstr(good_job, old);
    if (!at || strstr(at + 1, old))
        fail_msg("'%s' is not in the good job once", old);
    return arena_printf(arena, "%.*s%s%s", (int)(at - good_job), good_job, new, at + strlen(old));
}

struct edit {
    const char *old, *new, *want;
};

static inline void check_edits(struct arena *arena, const struct edit *edits, size_t count)
{
    size_t failed = 0;
    for (size_t i = 0; i < count; i++) {
        struct diags diags;
        char *text = edited(arena, edits[i].old, edits[i].new);
        (void)read_text(arena, "job.ini", text, strlen(text), &diags);
        char *got = messages(arena, &diags);
        if (strcmp(got, edits[i].want) != 0)
            print_error("edit %zu, '%s' -> '%s':\ngot:\n%swant:\n%s", failed++, edits[i].old, edits[i].new, got,
                        edits[i].want);
    }
    assert_int_equal(failed, 0);
}
#define CHECK_EDITS(state, edits) check_edits(*(state), (edits), sizeof(edits) / sizeof *(edits))

#endif
