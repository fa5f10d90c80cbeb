/* A catalog file from any bytes: the first chooses which of the tables it is. */
#include "fuzz.h"

#include "sawbill/text.h"

#include "catalog/table.h"

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    if (size == 0)
        return 0;
    struct arena *arena = fuzz_arena();
    struct diags diags = {.arena = arena};
    struct sheet sheet = {0};
    const struct table *table = &CATALOG_TABLES[data[0] % TABLE_COUNT];
    if (sheet_parse(arena, table->file, (const char *)data + 1, size - 1, &sheet, &diags)) {
        struct loaded loaded = table_load(arena, table, &sheet, &diags);
        fuzz_expect(loaded.count <= sheet.count, "more rows than the file has", table->file);
    }
    diag_sort(&diags);
    for (size_t i = 0; i < diags.count; i++) {
        const char *line = diag_line(arena, &diags.item[i]);
        fuzz_expect(utf8_check(line, strlen(line)) == strlen(line), "message is not UTF-8", line);
    }
    arena_free(arena);
    return 0;
}
