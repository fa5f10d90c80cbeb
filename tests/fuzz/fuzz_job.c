/* A job file from any bytes: the first decides between INI and JSON.  Whatever comes in, the readers and the checks end
 * with messages whose places lie in the file. */
#include "fuzz.h"

#include "sawbill/job.h"
#include "sawbill/text.h"

static int count_lines(const char *text, size_t length)
{
    int lines = 1;
    for (size_t i = 0; i < length; i++)
        lines += text[i] == '\n' || text[i] == '\r';
    return lines;
}

static void check_messages(struct arena *arena, const struct diags *diags, int lines)
{
    for (size_t i = 0; i < diags->count; i++) {
        const struct diag *diag = &diags->item[i];
        const char *line = diag_line(arena, diag);
        fuzz_expect(diag->at.line >= 0 && diag->at.line <= lines + 1 && diag->at.column >= 0, "place", line);
        fuzz_expect(utf8_check(line, strlen(line)) == strlen(line), "message is not UTF-8", line);
        fuzz_expect(diag->text[0] != '\0', "empty message", line);
    }
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    if (size == 0)
        return 0;
    struct arena *arena = fuzz_arena();
    struct diags diags = {.arena = arena};
    struct entries entries = {0};
    const char *file = data[0] % 2 ? "job.ini" : "job.json";
    const char *text = (const char *)data + 1;
    entries_read(arena, file, text, size - 1, &entries, &diags);
    if (diag_count(&diags, DIAG_STOP) == 0)
        (void)job_check(arena, file, &entries, &diags);
    diag_sort(&diags);
    check_messages(arena, &diags, count_lines(text, size - 1));
    arena_free(arena);
    return 0;
}
