/* Whole jobs for the sizing tests: one plain job as text, changed key by key, with the shipped catalogs. */
#ifndef SAWBILL_TESTS_MADE_JOB_H
#define SAWBILL_TESTS_MADE_JOB_H

#include <string.h>

#include "support.h"

#include "sawbill/design.h"
#include "sawbill/text.h"

/* A flush beam under a floor of 10 + 40 psf, joists of 12 ft and 10 ft, on posts; invented. */
static const char plain_job[] = "[job]\nname = test\ndate = 2026-01-05\nstatus = bid\ncatalogs = catalogs\n"
                                "unusual = none\n"
                                "[area floor]\ndead = 10 psf\nlive = 40 psf\nlive is = floor\n"
                                "[roof]\nframe = none above\nbraces = none\n"
                                "[joists north]\nkind = sawn joist\nsize = 2x10\nspacing = 16 in\nfirst joist = 8 in\n"
                                "run = 12 ft\nover the wall = butted\nties the roof = no\narea = area floor\n"
                                "[joists south]\nkind = sawn joist\nsize = 2x10\nspacing = 16 in\nfirst joist = 8 in\n"
                                "run = 10 ft\nover the wall = butted\nties the roof = no\narea = area floor\n"
                                "[beam B1]\nset = flush\nclear span = 8 ft\njoists A = joists north\n"
                                "joists B = joists south\nend 1 = post P1\nend 2 = post P2\nwall at end 1 = across\n"
                                "wall at end 2 = across\nabove = nothing\nmember = DFL2-2X10\nplies = 3\n"
                                "ply fasteners = NAIL-16D-COMMON\neach face = yes\n"
                                "[post P1]\nmember = SPF-STUD-2X4\nplies = 3\nheight = 84 in\nbraced = both\n"
                                "stands on = footing F1\n"
                                "[post P2]\nmember = SPF-STUD-2X4\nplies = 3\nheight = 84 in\nbraced = both\n"
                                "stands on = footing F1\n"
                                "[footing F1]\nstatus = existing\nsoil = 1500 psf\n"
                                "[wall W1]\nstatus = comes out\nunder = beam B1\nlength = 8 ft\nheight = 8 ft\n"
                                "bracing = no\n"
                                "[shore S1]\nholds = joists north\nset back = 3 ft\nstuds = SPF-STUD-2X4\n"
                                "spacing = 16 in\nheight = 94-1/2 in\nbrace rows = 1\nstands on = slab\ndays = 5\n"
                                "[shore S2]\nholds = joists south\nset back = 3 ft\nstuds = SPF-STUD-2X4\n"
                                "spacing = 16 in\nheight = 94-1/2 in\nbrace rows = 1\nstands on = slab\ndays = 5\n"
                                "[bid]\nmethod = add\ntax = 0 %\noverhead = 10 %\ncontingency = 5 %\n"
                                "profit = 10 %\n";

struct made {
    struct arena *arena;
    struct diags diags;
    struct entries entries;
    struct job *job;
    struct catalog *catalog;
    struct design *design;
};

static inline void made_start(struct made *made, struct arena *arena)
{
    *made = (struct made){.arena = arena, .diags = {.arena = arena}};
    entries_read(arena, "test.ini", plain_job, sizeof plain_job - 1, &made->entries, &made->diags);
}

static inline void made_entry(struct made *made, struct entry entry)
{
    made->entries.item = arena_more(made->arena, made->entries.item, made->entries.count, &made->entries.capacity,
                                    sizeof *made->entries.item);
    made->entries.item[made->entries.count++] = entry;
}

/* More sections, as INI. */
static inline void made_add(struct made *made, const char *ini)
{
    struct entries more = {0};
    entries_read(made->arena, "more.ini", ini, strlen(ini), &more, &made->diags);
    for (size_t i = 0; i < more.count; i++)
        made_entry(made, more.item[i]);
}

static inline void made_take_out(struct made *made, size_t at)
{
    for (size_t k = at + 1; k < made->entries.count; k++)
        made->entries.item[k - 1] = made->entries.item[k];
    made->entries.count--;
}

/* Gives a key of a section that is there a value, new or other; NULL takes it out. */
static inline void made_set(struct made *made, const char *kind, const char *id, const char *key, const char *value)
{
    struct entry of_section = {0};
    size_t last = 0;
    for (size_t i = 0; i < made->entries.count; i++) {
        struct entry *entry = &made->entries.item[i];
        if (!name_same(entry->kind, kind) || !name_same(entry->id, id))
            continue;
        of_section = *entry;
        last = i;
        if (!entry->key || !name_same(entry->key, key))
            continue;
        if (value)
            entry->value = value;
        else
            made_take_out(made, i);
        return;
    }
    if (!of_section.kind || !value)
        fail_msg("the job has no '%s' in %s %s", key, kind, id);
    of_section.key = of_section.key_as = key;
    of_section.value = value;
    made_entry(made, of_section); /* room for it; a section's keys stand together */
    for (size_t k = made->entries.count - 1; k > last + 1; k--)
        made->entries.item[k] = made->entries.item[k - 1];
    made->entries.item[last + 1] = of_section;
}

/* One more of a key that may stand in a section more than once. */
static inline void made_again(struct made *made, const char *kind, const char *id, const char *key, const char *value)
{
    size_t last = SIZE_MAX;
    for (size_t i = 0; i < made->entries.count; i++)
        if (name_same(made->entries.item[i].kind, kind) && name_same(made->entries.item[i].id, id))
            last = i;
    if (last == SIZE_MAX)
        fail_msg("the job has no section %s %s", kind, id);
    struct entry entry = made->entries.item[last];
    entry.key = entry.key_as = key;
    entry.value = value;
    made_entry(made, entry); /* room for it; a section's keys stand together */
    for (size_t k = made->entries.count - 1; k > last + 1; k--)
        made->entries.item[k] = made->entries.item[k - 1];
    made->entries.item[last + 1] = entry;
}

static inline size_t made_stops(const struct made *made)
{
    return diag_count(&made->diags, DIAG_STOP);
}

static inline void made_show(struct made *made)
{
    for (size_t i = 0; i < made->diags.count; i++)
        print_message("%s\n", diag_line(made->arena, &made->diags.item[i]));
}

/* Checks and sizes; a stop of the job stage fails the test. */
static inline void made_size(struct made *made)
{
    made->job = job_check(made->arena, "test.ini", &made->entries, &made->diags);
    if (!made->catalog)
        made->catalog = catalog_read(made->arena, SOURCE_DIR "/catalogs", NULL, &made->diags);
    if (made_stops(made)) {
        made_show(made);
        fail_msg("the job has a stop");
    }
    made->design = size_job(made->arena, made->job, made->catalog, NULL, &made->diags);
}

static inline double loads_total(const struct loads *loads)
{
    double sum = 0;
    for (int source = 0; source < LOAD_SOURCES; source++)
        sum += loads->of[source];
    return sum;
}

static inline const struct member_checks *made_member(const struct made *made, const char *id)
{
    for (size_t i = 0; i < made->design->member_count; i++)
        if (!strcmp(made->design->members[i]->id, id))
            return made->design->members[i];
    fail_msg("no checks of %s", id);
    return NULL;
}

static inline const struct check *made_find(const struct made *made, const char *id, const char *name)
{
    const struct member_checks *checks = made_member(made, id);
    for (size_t i = 0; i < checks->count; i++)
        if (!strcmp(checks->check[i].name, name))
            return &checks->check[i];
    return NULL;
}

static inline const struct check *made_check(const struct made *made, const char *id, const char *name)
{
    const struct check *check = made_find(made, id, name);
    if (!check)
        fail_msg("%s has no check '%s'", id, name);
    return check;
}

static inline bool made_says(const struct made *made, enum diag_code code)
{
    for (size_t i = 0; i < made->diags.count; i++)
        if (made->diags.item[i].code == code)
            return true;
    return false;
}

static inline bool made_lists(const char *const *list, size_t count, const char *part)
{
    for (size_t i = 0; i < count; i++)
        if (strstr(list[i], part))
            return true;
    return false;
}

#endif
