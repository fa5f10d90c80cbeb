#include "same_cells.h"

#include <string.h>
#include <minizip/unzip.h>

#include "sawbill/text.h"

/* One part of the package; NULL when it is not there. */
static const char *read_part(struct arena *arena, const char *file, const char *part)
{
    struct buffer text = {.arena = arena};
    unzFile zip = unzOpen(file);
    if (!zip)
        return NULL;
    bool good = unzLocateFile(zip, part, 1) == UNZ_OK && unzOpenCurrentFile(zip) == UNZ_OK;
    if (good) {
        char bytes[16384];
        int got = 0;
        while ((got = unzReadCurrentFile(zip, bytes, sizeof bytes)) > 0)
            buffer_add_n(&text, bytes, (size_t)got);
        good = got == 0 && unzCloseCurrentFile(zip) == UNZ_OK;
    }
    (void)unzClose(zip); /* it was only read */
    return good ? buffer_text(&text) : NULL;
}

/* From `start` to `stop`: the elements that hold the cells, without views, widths and print set-up; and without the
 * heads of rows, which hold heights. */
static const char *cut_out(struct arena *arena, const char *text, const char *start, const char *stop)
{
    const char *from = text ? strstr(text, start) : NULL;
    const char *to = from ? strstr(from, stop) : NULL;
    if (!to)
        return NULL;
    struct buffer cells = {.arena = arena};
    while (from < to) {
        const char *head = strstr(from, "<row ");
        const char *end = head && head < to ? head : to;
        buffer_add_n(&cells, from, (size_t)(end - from));
        from = end < to ? strchr(end, '>') : NULL;
        if (!from)
            break;
    }
    return buffer_text(&cells);
}

static bool is_same(struct arena *arena, const char *file, const char *other, const char *part, const char *start,
                    const char *stop)
{
    const char *a = cut_out(arena, read_part(arena, file, part), start, stop);
    const char *b = cut_out(arena, read_part(arena, other, part), start, stop);
    return a && b && strcmp(a, b) == 0;
}

const char *different_cells(struct arena *arena, const char *file, const char *other, size_t sheets)
{
    if (!is_same(arena, file, other, "xl/sharedStrings.xml", "<sst", "</sst>"))
        return "xl/sharedStrings.xml";
    for (size_t i = 1; i <= sheets; i++) {
        const char *part = arena_printf(arena, "xl/worksheets/sheet%zu.xml", i);
        if (!is_same(arena, file, other, part, "<sheetData>", "</sheetData>"))
            return part;
    }
    return NULL;
}
