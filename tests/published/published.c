/* Recomputes published values by the library's own functions and prints how many come out.
 *
 * usage: published FOLDER SOURCE
 *   FOLDER  files in the form of tests/data/published (README.md there), flat or in wood/, code/ and examples/
 *   SOURCE  the source folder: tests/published/known.csv, and catalogs/ for design values that FOLDER lacks
 * Exit status 1 when a value is missed without a reason, or nothing was found. */
#include "published.h"

#include <cjson/cJSON.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "sawbill/quantity.h"
#include "sawbill/text.h"

#include "catalog/table.h"

static void out_of_memory(void *owner)
{
    (void)owner;
    fprintf(stderr, "out of memory\n");
    exit(99);
}

static bool readable(const char *path)
{
    FILE *file = fopen(path, "rb");
    if (file)
        fclose(file);
    return file != NULL;
}

const struct sheet *published_sheet_at(struct published *p, const char *path)
{
    struct sheet *sheet = arena_alloc(p->arena, sizeof *sheet);
    if (!readable(path) || !sheet_read(p->arena, path, sheet, p->diags) || sheet->count == 0)
        return NULL;
    return sheet;
}

const struct sheet *published_sheet(struct published *p, const char *sub, const char *name)
{
    const struct sheet *sheet = published_sheet_at(p, arena_printf(p->arena, "%s/%s/%s", p->folder, sub, name));
    return sheet ? sheet : published_sheet_at(p, arena_printf(p->arena, "%s/%s", p->folder, name));
}

const char *published_cell(const struct sheet *sheet, size_t row, const char *column)
{
    for (size_t i = 0; i < sheet->row[0].count && i < sheet->row[row].count; i++)
        if (!strcmp(sheet->row[0].cell[i].text, column))
            return sheet->row[row].cell[i].text;
    return "";
}

double published_number(const struct sheet *sheet, size_t row, const char *column)
{
    const char *text = published_cell(sheet, row, column);
    char *end;
    double value = strtod(text, &end); /* the locale is "C": this program sets none */
    return *text && !*end ? value : NAN;
}

bool published_prints(const char *text, double here)
{
    char *end;
    double printed = strtod(text, &end), place = 1;
    const char *point = strchr(text, '.');
    for (const char *digit = point ? point + 1 : end; digit < end; digit++)
        place /= 10;
    return end > text && isfinite(here) && fabs(here - printed) <= place / 2 + 1e-9;
}

double published_member(const struct cJSON *object, const char *key)
{
    const cJSON *item = cJSON_GetObjectItemCaseSensitive(object, key);
    return cJSON_IsNumber(item) ? item->valuedouble : NAN;
}

static bool close_to(const struct cJSON *expected, double here)
{
    double printed = published_member(expected, "value"), tolerance = published_member(expected, "tol");
    const char *kind = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(expected, "tol_kind"));
    if (kind && !strcmp(kind, "rel"))
        tolerance *= fabs(printed);
    return isfinite(here) && isfinite(tolerance) && fabs(here - printed) <= tolerance + 1e-12;
}

void published_count_value(struct published *p, struct tally *tally, bool from_memory, const char *id,
                           const struct cJSON *expected, double here)
{
    published_count(p, tally, from_memory, arena_printf(p->arena, "%s %s", id, expected->string),
                    close_to(expected, here),
                    arena_printf(p->arena, "printed %g, %g here", published_member(expected, "value"), here));
}

/* The whole file as text; NULL: not there, or larger than any such file. */
char *published_text(struct published *p, const char *sub, const char *name)
{
    enum { MOST = 1 << 20 };
    FILE *file = fopen(arena_printf(p->arena, "%s/%s/%s", p->folder, sub, name), "rb");
    if (!file)
        file = fopen(arena_printf(p->arena, "%s/%s", p->folder, name), "rb");
    if (!file)
        return NULL;
    char *text = arena_array(p->arena, MOST, 1);
    size_t length = fread(text, 1, MOST - 1, file);
    fclose(file);
    text[length] = '\0';
    return text;
}

bool published_from_memory(const struct sheet *sheet, size_t row)
{
    return strcmp(published_cell(sheet, row, "seen"), "source") != 0;
}

struct tally *published_tally(struct published *p, const char *what)
{
    struct tally *tally = &p->tally[p->count++];
    *tally = (struct tally){.what = what};
    return tally;
}

static const char *known_reason(const struct published *p, const char *id)
{
    for (size_t row = 1; p->known && row < p->known->count; row++)
        if (!strcmp(published_cell(p->known, row, "id"), id))
            return published_cell(p->known, row, "reason");
    return NULL;
}

void published_count(struct published *p, struct tally *tally, bool from_memory, const char *id, bool same,
                     const char *difference)
{
    *(from_memory ? &tally->memory_rows : &tally->rows) += 1;
    *(from_memory ? &tally->memory_reproduced : &tally->reproduced) += same;
    if (same)
        return;
    const char *reason = known_reason(p, id);
    if (!reason)
        tally->unexplained++;
    printf("  %s: %s: %s%s\n", id, difference, reason ? reason : "NO REASON KNOWN",
           from_memory ? " (published value from memory)" : "");
}

/* Design values of the folder where it has them, else of the catalogs. */
static bool read_design(struct published *p, const char *source)
{
    const struct sheet *sheet = published_sheet(p, "wood", "design_values.csv");
    if (!sheet)
        sheet = published_sheet_at(p, arena_printf(p->arena, "%s/catalogs/design_values.csv", source));
    if (!sheet)
        return false;
    struct diags faults = {.arena = p->arena};
    struct loaded loaded = table_load(p->arena, &CATALOG_TABLES[TABLE_DESIGN], sheet, &faults);
    for (size_t i = 0; i < faults.count;
         i++) /* timbers of two classes share species and grade: the first row is used */
        if (faults.item[i].code != DIAG_C003)
            diag_add(p->diags, faults.item[i].code, &faults.item[i].at, "%s", faults.item[i].text);
    p->design = (struct catalog){.design = loaded.rows, .design_count = loaded.count};
    return loaded.count > 0;
}

static bool print_tally(const struct tally *tally)
{
    printf("%s: %zu of %zu", tally->what, tally->reproduced, tally->rows);
    if (tally->memory_rows)
        printf("; from memory, apart: %zu of %zu", tally->memory_reproduced, tally->memory_rows);
    if (tally->left_out)
        printf("; %zu rows not run: %s", tally->left_out, tally->why_left_out);
    printf("\n");
    return tally->unexplained == 0;
}

static bool report(const struct published *p)
{
    bool good = true;
    size_t rows = 0, reproduced = 0, memory_rows = 0, memory_reproduced = 0;
    for (size_t i = 0; i < p->count; i++) {
        const struct tally *tally = &p->tally[i];
        good &= print_tally(tally);
        rows += tally->rows;
        reproduced += tally->reproduced;
        memory_rows += tally->memory_rows;
        memory_reproduced += tally->memory_reproduced;
    }
    if (p->band.rows)
        printf("headers, apart, loads fitted: %zu of %zu within 8 %%\n", p->band.within, p->band.rows);
    printf("%zu of %zu published values reproduced", reproduced, rows);
    if (memory_rows)
        printf("; apart, from memory: %zu of %zu", memory_reproduced, memory_rows);
    printf("\n");
    return good && rows > 0;
}

int main(int argc, char **argv)
{
    if (argc != 3) {
        fprintf(stderr, "usage: published FOLDER SOURCE\n");
        return 2;
    }
    struct arena *arena = arena_new(0, out_of_memory, NULL);
    if (!arena)
        return 99;
    struct diags diags = {.arena = arena};
    struct published p = {.arena = arena, .diags = &diags, .folder = argv[1], .source = argv[2]};
    p.known = published_sheet_at(&p, arena_printf(arena, "%s/tests/published/known.csv", argv[2]));
    if (!read_design(&p, argv[2])) {
        fprintf(stderr, "no design values\n");
        return 1;
    }
    published_spans(&p);
    published_joints(&p);
    published_examples(&p);
    published_formulas(&p);
    published_connections(&p);
    published_factors(&p);
    published_misc(&p);
    published_codes(&p);
    for (size_t i = 0; i < diags.count; i++)
        fprintf(stderr, "%s\n", diag_line(arena, &diags.item[i]));
    bool good = report(&p) && diags.count == 0;
    arena_free(arena);
    return good ? 0 : 1;
}
