/* Rules across the cells of a row, and references from file to file. */
#include "table.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "sawbill/text.h"

static const struct place *where(const struct linker *l, enum table_id table, size_t row, const char *column)
{
    return loaded_place(&l->loaded[table], row, column);
}

static void refuse(const struct linker *l, enum table_id table, size_t row, const char *column, const char *text)
{
    diag_add(l->diags, DIAG_C002, where(l, table, row, column), "%s", text);
}

/* Distinct names of a column of another file, for did-you-mean. */
static const char *near_name(const struct linker *l, enum table_id table, const char *column, const char *word)
{
    const struct loaded *loaded = &l->loaded[table];
    const char **names = arena_array(l->arena, loaded->count, sizeof *names);
    for (size_t i = 0; i < loaded->count; i++)
        names[i] = loaded_text(loaded, i, column);
    const char *near = did_you_mean(l->arena, word, names, loaded->count);
    return near ? arena_printf(l->arena, "; did you mean '%s'?", near) : "";
}

static void unknown(const struct linker *l, enum table_id from, size_t row, const char *column, enum table_id to,
                    const char *to_column)
{
    if (!l->loaded[to].complete)
        return; /* that file has its own fault */
    const char *text = loaded_text(&l->loaded[from], row, column);
    diag_add(l->diags, DIAG_C004, where(l, from, row, column), "'%s' in column '%s' is not in %s%s", text, column,
             CATALOG_TABLES[to].file, near_name(l, to, to_column, text));
}

static void link_design(const struct linker *l, size_t row)
{
    const struct design_row *design = &l->catalog->design[row];
    if (design->emin > design->e)
        refuse(l, TABLE_DESIGN, row, "Emin", "'Emin' is greater than 'E'");
}

static const char *near_design(const struct linker *l, const char *word)
{
    const char **names = arena_array(l->arena, l->catalog->design_count, sizeof *names);
    for (size_t i = 0; i < l->catalog->design_count; i++) {
        const struct design_row *row = &l->catalog->design[i];
        names[i] = arena_printf(l->arena, "%s %s", row->species, row->grade);
    }
    const char *near = did_you_mean(l->arena, word, names, l->catalog->design_count);
    return near ? arena_printf(l->arena, "; did you mean '%s'?", near) : "";
}

static void link_member(const struct linker *l, size_t row)
{
    struct member *member = &l->catalog->members[row];
    double nominal = member->wood == WOOD_SAWN ? catalog_nominal_width(member->size) : 0;
    if (member->wood == WOOD_SAWN && nominal == 0)
        refuse(l, TABLE_MEMBERS, row, "size",
               arena_printf(l->arena,
                            "'%s' in column 'size': the nominal size of sawn wood is meant; write it like '2x10'",
                            member->size));
    if (member->ply_width > member->depth)
        refuse(l, TABLE_MEMBERS, row, "ply width", "'ply width' is greater than 'depth'; a ply stands on edge");
    member->values = catalog_design_named(l->catalog, member->design, nominal);
    if (member->values || !l->loaded[TABLE_DESIGN].complete || (member->wood == WOOD_SAWN && nominal == 0))
        return;
    const char *named = catalog_design_named(l->catalog, member->design, 0) ? " for a width of %s in" : "";
    const char *width =
        named[0] ? arena_printf(l->arena, " for a width of %s in", number_text(l->arena, nominal, 2)) : "";
    diag_add(l->diags, DIAG_C004, where(l, TABLE_MEMBERS, row, "design row"),
             "'%s' in column 'design row' is no species and grade of design_values.csv%s%s", member->design, width,
             width[0] ? "" : near_design(l, member->design));
}

/* The price of a thousand board feet becomes that of the piece, or of a foot: nothing behind this sees any other. */
static void price_by_the_thousand(const struct linker *l, size_t row, struct price *price)
{
    const struct member *member = catalog_member(l->catalog, price->item);
    length_t length = price->increment ? LENGTH_FOOT : price->length;
    decimal_t feet = board_feet(member, length);
    if (!length)
        refuse(l, TABLE_PRICES, row, "unit", "a price by the thousand board feet needs a 'length' or an 'increment'");
    else if (price->pack != DECIMAL_ONE)
        refuse(l, TABLE_PRICES, row, "pack", "'pack' is 1 for what is sold by the thousand board feet");
    else if (feet == 0 && l->loaded[TABLE_MEMBERS].complete)
        diag_add(l->diags, DIAG_C002, where(l, TABLE_PRICES, row, "unit"),
                 "'%s' is no sawn member of members.csv with a nominal size like '2x10', so it has no board feet; "
                 "price it by the piece or by the foot",
                 price->item);
    if (feet == 0)
        return;
    const char *note = price->note ? price->note : "";
    price->note =
        arena_printf(l->arena, "MBF %s: %s%s%s%s", money_text(l->arena, price->price), board_feet_text(l->arena, feet),
                     price->increment ? " a foot" : "", *note ? "; " : "", note);
    price->price = board_feet_price(member->size, length, price->price);
    price->unit = price->increment ? "ft" : "each";
}

static void link_price(const struct linker *l, size_t row)
{
    struct price *price = &l->catalog->prices[row];
    price->index = row;
    if (!loaded_text(&l->loaded[TABLE_PRICES], row, "pack")[0])
        price->pack = DECIMAL_ONE;
    if (price->supplier && !catalog_supplier(l->catalog, price->supplier))
        unknown(l, TABLE_PRICES, row, "supplier", TABLE_SUPPLIERS, "name");
    bool by_foot = price->increment || price->least || price->most;
    if (by_foot && price->length)
        refuse(l, TABLE_PRICES, row, "length",
               "a row is sold by the piece ('length') or by the foot ('increment'), not both");
    if (by_foot && !(price->increment && price->least && price->most))
        refuse(l, TABLE_PRICES, row, "increment", "sold by the foot needs all of 'increment', 'least' and 'most'");
    if (by_foot && price->least > price->most)
        refuse(l, TABLE_PRICES, row, "least", "'least' is greater than 'most'");
    if (price->actual && !price->length)
        refuse(l, TABLE_PRICES, row, "actual length",
               "'actual length' is of what is sold by the piece; give its 'length'");
    if (by_foot && price->pack != DECIMAL_ONE)
        refuse(l, TABLE_PRICES, row, "pack", "'pack' is 1 for what is sold by the foot");
    if (price->cut_charge && !by_foot)
        refuse(l, TABLE_PRICES, row, "cut charge", "a cut charge is for what is sold by the foot; give 'increment'");
    if (name_same(price->unit, "MBF"))
        price_by_the_thousand(l, row, price);
}

struct sold {
    const char *item; /* folded */
    size_t row;
};

static int compare_sold(const void *a, const void *b)
{
    const struct sold *left = a;
    const struct sold *right = b;
    int order = strcmp(left->item, right->item);
    return order ? order : (left->row > right->row) - (left->row < right->row);
}

/* Prices of one item are compared with each other: its rows must count in one unit, that of the first. */
static void check_units(const struct linker *l)
{
    size_t count = l->catalog->price_count;
    struct sold *sold = arena_array(l->arena, count, sizeof *sold);
    for (size_t i = 0; i < count; i++)
        sold[i] = (struct sold){name_fold(l->arena, l->catalog->prices[i].item), i};
    if (count > 1)
        qsort(sold, count, sizeof *sold, compare_sold);
    for (size_t i = 1, first = 0; i < count; i++) {
        if (strcmp(sold[i].item, sold[first].item) != 0)
            first = i;
        const struct price *price = &l->catalog->prices[sold[i].row];
        const struct price *other = &l->catalog->prices[sold[first].row];
        if (!name_same(price->unit, other->unit) && price->unit[0] && other->unit[0])
            diag_add(l->diags, DIAG_C004, where(l, TABLE_PRICES, sold[i].row, "unit"),
                     "'%s' is sold by '%s' here and by '%s' at line %d; one item has one unit", price->item,
                     price->unit, other->unit, other->at.line);
    }
}

static void check_nail(const struct linker *l, size_t row, const char *column, const char *nail, int count)
{
    if (nail && !catalog_fastener(l->catalog, nail))
        unknown(l, TABLE_HANGERS, row, column, TABLE_FASTENERS, "code");
    if (!nail && count > 0)
        refuse(l, TABLE_HANGERS, row, column, arena_printf(l->arena, "nails are counted but '%s' is empty", column));
    if (nail && count == 0)
        refuse(l, TABLE_HANGERS, row, column,
               arena_printf(l->arena, "'%s' is given but its count is empty or 0", column));
}

static void check_hanger_size(const struct linker *l, size_t row, const struct hanger *hanger)
{
    const struct {
        const char *column;
        length_t value;
    } needed[] = {{"width from", hanger->width_from},
                  {"width to", hanger->width_to},
                  {"depth from", hanger->depth_from},
                  {"depth to", hanger->depth_to},
                  {"seat", hanger->seat}};
    for (size_t i = 0; i < sizeof needed / sizeof *needed; i++)
        if (needed[i].value == 0)
            refuse(l, TABLE_HANGERS, row, needed[i].column,
                   arena_printf(l->arena, "a hanger needs '%s'", needed[i].column));
    if (hanger->width_from > hanger->width_to)
        refuse(l, TABLE_HANGERS, row, "width from", "'width from' is greater than 'width to'");
    if (hanger->depth_from > hanger->depth_to)
        refuse(l, TABLE_HANGERS, row, "depth from", "'depth from' is greater than 'depth to'");
}

static void link_hanger(const struct linker *l, size_t row)
{
    struct hanger *hanger = &l->catalog->hangers[row];
    if (!hanger->item)
        hanger->item = hanger->code;
    check_nail(l, row, "carrier nail", hanger->carrier_nail, hanger->carrier_count);
    check_nail(l, row, "member nail", hanger->member_nail, hanger->member_count);
    if (hanger->kind == CONNECTOR_HANGER)
        check_hanger_size(l, row, hanger);
    bool any = hanger->kind == CONNECTOR_CAP; /* bears; may be listed for uplift alone */
    for (size_t i = 0; i < 4; i++)
        any = any || !isnan(hanger->load[i]);
    if (!any)
        refuse(l, TABLE_HANGERS, row, "load at 1.0", "no load is given; without one it holds nothing");
}

static void link_fastener(const struct linker *l, size_t row)
{
    struct fastener *fastener = &l->catalog->fasteners[row];
    if (!fastener->item)
        fastener->item = fastener->code;
    if (fastener->root > fastener->diameter)
        refuse(l, TABLE_FASTENERS, row, "root", "'root' is greater than 'diameter'");
}

static void link_task(const struct linker *l, size_t row)
{
    const struct task *task = &l->catalog->tasks[row];
    if (task->trade && !catalog_trade(l->catalog, task->trade))
        unknown(l, TABLE_LABOR, row, "trade", TABLE_TRADES, "trade");
    if (task->low > task->likely || task->likely > task->high)
        refuse(l, TABLE_LABOR, row, "hours low", "hours go 'low', 'likely', 'high' in rising order");
}

static bool item_has_price(const struct catalog *catalog, const char *item)
{
    for (size_t i = 0; i < catalog->price_count; i++)
        if (name_same(catalog->prices[i].item, item))
            return true;
    return false;
}

static void check_per(const struct linker *l, enum table_id table, size_t row, const char *per)
{
    const char **names = arena_array(l->arena, catalog_per_count(), sizeof *names);
    for (size_t i = 0; i < catalog_per_count(); i++)
        names[i] = catalog_per(i).per;
    const char *near = did_you_mean(l->arena, per, names, catalog_per_count());
    bool is_listed = near && name_same(near, per);
    /* "square foot of wal out" would pass as a finish: what is close to a word of the list is meant as that word */
    if (is_listed || (catalog_per_known(per) && !near))
        return;
    diag_add(l->diags, DIAG_C004, where(l, table, row, "per"),
             "'%s' in column 'per' is nothing that the takeoff counts%s", per,
             near ? arena_printf(l->arena, "; did you mean '%s'?", near) : "; the manual lists the words");
}

static void link_assembly(const struct linker *l, size_t row)
{
    const struct assembly_line *line = &l->catalog->assemblies[row];
    check_per(l, TABLE_ASSEMBLIES, row, line->per);
    if (!line->item == !line->task)
        refuse(l, TABLE_ASSEMBLIES, row, "item",
               line->item ? "a row has an item or a task, not both" : "a row needs an item or a task");
    if (line->item && !item_has_price(l->catalog, line->item))
        unknown(l, TABLE_ASSEMBLIES, row, "item", TABLE_PRICES, "item");
    if (line->task && !catalog_task(l->catalog, line->task))
        unknown(l, TABLE_ASSEMBLIES, row, "task", TABLE_LABOR, "task");
    if (line->task && line->class_of_item != PART_MATERIAL)
        refuse(l, TABLE_ASSEMBLIES, row, "class", "'class' is for an item; a task is labor");
}

static void link_supplier(const struct linker *l, size_t row)
{
    struct supplier *supplier = &l->catalog->suppliers[row];
    supplier->index = row;
    supplier->has_tax = loaded_text(&l->loaded[TABLE_SUPPLIERS], row, "tax")[0] != '\0';
}

static void link_condition(const struct linker *l, size_t row)
{
    const char *task = l->catalog->conditions[row].task; /* NULL: an empty cell, said already */
    if (task && !catalog_task(l->catalog, task))
        unknown(l, TABLE_CONDITIONS, row, "task", TABLE_LABOR, "task");
}

/* A price without a class would be marked up as nothing. */
static void link_forgotten(const struct linker *l, size_t row)
{
    struct forgotten *forgotten = &l->catalog->forgotten[row];
    forgotten->has_price = loaded_text(&l->loaded[TABLE_FORGOTTEN], row, "price")[0] != '\0';
    if (forgotten->has_price && !forgotten->class)
        refuse(l, TABLE_FORGOTTEN, row, "price", "a price needs its 'class'");
}

static void link_debris(const struct linker *l, size_t row)
{
    check_per(l, TABLE_DEBRIS, row, l->catalog->debris[row].per);
}

static void link_shop(const struct linker *l, size_t row)
{
    struct shop_piece *piece = &l->catalog->shop[row];
    const char *code = loaded_text(&l->loaded[TABLE_SHOP], row, "member");
    piece->member = catalog_member(l->catalog, code);
    if (!piece->member)
        unknown(l, TABLE_SHOP, row, "member", TABLE_MEMBERS, "code");
}

/* Suppliers before prices is not needed: every file is read before any row is linked. */
void link_rows(const struct linker *linker)
{
    typedef void link_fn(const struct linker *, size_t);
    static link_fn *const LINKS[TABLE_COUNT] = {
        [TABLE_DESIGN] = link_design,        [TABLE_MEMBERS] = link_member,      [TABLE_PRICES] = link_price,
        [TABLE_HANGERS] = link_hanger,       [TABLE_FASTENERS] = link_fastener,  [TABLE_LABOR] = link_task,
        [TABLE_ASSEMBLIES] = link_assembly,  [TABLE_SUPPLIERS] = link_supplier,  [TABLE_SHOP] = link_shop,
        [TABLE_CONDITIONS] = link_condition, [TABLE_FORGOTTEN] = link_forgotten, [TABLE_DEBRIS] = link_debris,
    };
    for (size_t table = 0; table < TABLE_COUNT; table++)
        for (size_t row = 0; LINKS[table] && row < linker->loaded[table].count; row++)
            if (linker->loaded[table].whole[row])
                LINKS[table](linker, row);
    check_units(linker);
}
