/* What a job file may hold at all, and which of the two spellings it is. */
#include <string.h>

#include "job_internal.h"

enum { FILE_MOST = 1000000 }; /* bytes; a job file has some thousand */

static struct place place_at(const struct reading *reading, size_t offset)
{
    int line = 1;
    size_t start = 0;
    for (size_t i = 0; i < offset; i++) {
        if (reading->text[i] != '\n')
            continue;
        line++;
        start = i + 1;
    }
    int column = (int)utf8_count(reading->text + start, offset - start) + 1;
    return (struct place){.file = reading->file, .line = line, .column = column};
}

/* UTF-16 by its mark, or by every second byte of the first few being NUL. */
static bool looks_like_utf16(const char *text, size_t length)
{
    if (length < 2)
        return false;
    const unsigned char first = (unsigned char)text[0];
    const unsigned char second = (unsigned char)text[1];
    return (first == 0xFF && second == 0xFE) || (first == 0xFE && second == 0xFF) || (first == 0 && second != 0) ||
           (first != 0 && second == 0 && length > 3 && text[2] != 0 && text[3] == 0);
}

static bool encoding_is_good(const struct reading *reading)
{
    const struct place whole = {.file = reading->file};
    if (reading->length > FILE_MOST) {
        diag_add(reading->diags, DIAG_F004, &whole, "file of %zu bytes; a job file has at most %d", reading->length,
                 FILE_MOST);
        return false;
    }
    if (looks_like_utf16(reading->text, reading->length)) {
        diag_add(reading->diags, DIAG_F002, &whole, "file is UTF-16; save it as UTF-8 (in the editor's 'save as')");
        return false;
    }
    size_t bad = utf8_check(reading->text, reading->length);
    if (bad == reading->length)
        return true;
    struct place at = place_at(reading, bad);
    diag_add(reading->diags, DIAG_F002, &at,
             "byte 0x%02X is not UTF-8, so the file is in another encoding, such as Windows-1252; save it as UTF-8 "
             "(in the editor's 'save as')",
             (unsigned)(unsigned char)reading->text[bad]);
    return false;
}

/* Tabs and line ends only; a CR must have its LF. */
static bool controls_are_good(const struct reading *reading)
{
    if (memchr(reading->text, '\r', reading->length) && !memchr(reading->text, '\n', reading->length)) {
        const struct place whole = {.file = reading->file};
        diag_add(reading->diags, DIAG_F005, &whole,
                 "lines end in CR alone; save the file with line ends LF or CR LF (Unix or Windows)");
        return false;
    }
    for (size_t i = 0; i < reading->length; i++) {
        unsigned char byte = (unsigned char)reading->text[i];
        bool line_end = byte == '\r' && i + 1 < reading->length && reading->text[i + 1] == '\n';
        if ((byte >= 0x20 && byte != 0x7F) || byte == '\t' || byte == '\n' || line_end)
            continue;
        struct place at = place_at(reading, i);
        diag_add(reading->diags, DIAG_F003, &at, "%s may not stand in a job file; delete the character",
                 byte == 0      ? "a NUL byte"
                 : byte == '\r' ? "a CR in the middle of a line"
                                : arena_printf(reading->arena, "the control character 0x%02X", (unsigned)byte));
        return false;
    }
    return true;
}

void entries_read(struct arena *arena, const char *file, const char *text, size_t length, struct entries *out,
                  struct diags *diags)
{
    *out = (struct entries){0};
    struct reading reading = {.arena = arena, .file = file, .text = text, .length = length, .out = out, .diags = diags};
    if (!encoding_is_good(&reading) || !controls_are_good(&reading))
        return;
    if (length >= 3 && memcmp(text, "\xEF\xBB\xBF", 3) == 0) {
        reading.text += 3;
        reading.length -= 3;
    }
    size_t first = 0;
    while (first < reading.length && strchr(" \t\r\n", reading.text[first]))
        first++;
    if (first == reading.length) {
        const struct place whole = {.file = file};
        diag_add(diags, DIAG_F005, &whole, "file is empty; 'sawbill new' writes one to start from");
        return;
    }
    if (reading.text[first] == '{')
        read_json(&reading);
    else
        read_ini(&reading);
}
