#include "sawbill/catalog.h"

#include <string.h>
#include <sys/stat.h>

#include "table.h"

/* Reads one file into its rows; no rows when it cannot be read. */
static struct loaded load_file(struct arena *arena, enum table_id id, const char *path, struct diags *diags)
{
    const struct table *table = &CATALOG_TABLES[id];
    struct sheet sheet;
    if (sheet_read(arena, path, &sheet, diags))
        return table_load(arena, table, &sheet, diags);
    return (struct loaded){.table = table};
}

static const char *path_in(struct arena *arena, const char *folder, const char *file)
{
    size_t length = strlen(folder);
    if (length == 0)
        return file;
    return arena_printf(arena, folder[length - 1] == '/' ? "%s%s" : "%s/%s", folder, file);
}

static bool is_there(const char *path)
{
    struct stat facts;
    return stat(path, &facts) == 0;
}

/* One message for a folder that is not there, instead of one for each file. */
static bool is_folder(struct arena *arena, const char *folder, struct diags *diags)
{
    struct stat facts;
    const char *path = folder[0] ? folder : ".";
    if (stat(path, &facts) == 0 && S_ISDIR(facts.st_mode))
        return true;
    struct place at = {.file = arena_strdup(arena, path)};
    diag_add(diags, DIAG_F001, &at, "no such folder of catalogs");
    return false;
}

struct catalog *catalog_read(struct arena *arena, const char *folder, const char *shop_stock, struct diags *diags)
{
    struct catalog *c = arena_alloc(arena, sizeof *c);
    if (!is_folder(arena, folder, diags))
        return c;
    struct loaded loaded[TABLE_COUNT];
    for (int id = 0; id < TABLE_COUNT; id++) {
        const struct table *table = &CATALOG_TABLES[id];
        const char *path = id == TABLE_SHOP ? shop_stock : path_in(arena, folder, table->file);
        if (!path || (table->optional && !is_there(path)))
            loaded[id] = (struct loaded){.table = table};
        else
            loaded[id] = load_file(arena, (enum table_id)id, path, diags);
    }
    c->design = loaded[TABLE_DESIGN].rows, c->design_count = loaded[TABLE_DESIGN].count;
    c->members = loaded[TABLE_MEMBERS].rows, c->member_count = loaded[TABLE_MEMBERS].count;
    c->prices = loaded[TABLE_PRICES].rows, c->price_count = loaded[TABLE_PRICES].count;
    c->hangers = loaded[TABLE_HANGERS].rows, c->hanger_count = loaded[TABLE_HANGERS].count;
    c->fasteners = loaded[TABLE_FASTENERS].rows, c->fastener_count = loaded[TABLE_FASTENERS].count;
    c->tasks = loaded[TABLE_LABOR].rows, c->task_count = loaded[TABLE_LABOR].count;
    c->trades = loaded[TABLE_TRADES].rows, c->trade_count = loaded[TABLE_TRADES].count;
    c->assemblies = loaded[TABLE_ASSEMBLIES].rows, c->assembly_count = loaded[TABLE_ASSEMBLIES].count;
    c->suppliers = loaded[TABLE_SUPPLIERS].rows, c->supplier_count = loaded[TABLE_SUPPLIERS].count;
    c->conditions = loaded[TABLE_CONDITIONS].rows, c->condition_count = loaded[TABLE_CONDITIONS].count;
    c->forgotten = loaded[TABLE_FORGOTTEN].rows, c->forgotten_count = loaded[TABLE_FORGOTTEN].count;
    c->debris = loaded[TABLE_DEBRIS].rows, c->debris_count = loaded[TABLE_DEBRIS].count;
    c->shop = loaded[TABLE_SHOP].rows, c->shop_count = loaded[TABLE_SHOP].count;
    link_rows(&(struct linker){arena, diags, c, loaded});
    return c;
}
