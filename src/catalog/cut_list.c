/* Bare lists of pieces and stock: their columns, and rules across the cells of a row. */
#include "sawbill/cutlist.h"

#include <string.h>

#include "sawbill/text.h"
#include "table.h"

#define AT(row, field) offsetof(struct row, field)
/* inches: 1/64 in to 1,000 ft */
#define SHORTEST 0.015625
#define LONGEST  12000

static const struct column PIECES[] = {
    {"label", CELL_TEXT, true, false, AT(list_piece, label), .example = "jack stud"},
    {"length", CELL_LENGTH, true, false, AT(list_piece, length), SHORTEST, LONGEST, .example = "7 ft 8-1/4 in"},
    {"count", CELL_COUNT, true, false, AT(list_piece, count), 1, LIST_PIECES_MOST, .example = "4"},
    {"member", CELL_TEXT, false, false, AT(list_piece, member), .example = "DFL2-2X4"},
    {"joints", CELL_TEXT, false, false, AT(list_piece, joints), .example = "8 ft; 16 ft"},
};
static const struct column STOCK[] = {
    {"length", CELL_LENGTH, true, false, AT(list_stock, length), SHORTEST, LONGEST, .example = "16 ft"},
    {"price", CELL_MONEY, true, false, AT(list_stock, price), 0, 1000000, .example = "12.80"},
    {"supply", CELL_COUNT, false, false, AT(list_stock, supply), 0, LIST_PIECES_MOST, .example = "3"},
    {"trim", CELL_LENGTH, false, false, AT(list_stock, trim), 0, LONGEST, .example = "1/2 in"},
    {"member", CELL_TEXT, false, false, AT(list_stock, member), .example = "DFL2-2X4"},
};
static const struct table PIECE_TABLE = {
    "pieces", PIECES, sizeof PIECES / sizeof *PIECES, sizeof(struct list_piece), AT(list_piece, at), false};
static const struct table STOCK_TABLE = {
    "stock", STOCK, sizeof STOCK / sizeof *STOCK, sizeof(struct list_stock), AT(list_stock, at), false};

static struct loaded load(struct arena *arena, const struct table *table, const struct list_source *source,
                          struct diags *diags)
{
    struct sheet sheet;
    bool read = source->text ? sheet_parse(arena, source->file, source->text, source->length, &sheet, diags)
                             : sheet_read(arena, source->file, &sheet, diags);
    return read ? table_load(arena, table, &sheet, diags) : (struct loaded){.table = table};
}

/* Why the place cannot be: NULL when it can. */
static const char *joint_fault(const struct list_piece *piece, length_t place)
{
    if (piece->joint_count == LIST_JOINTS_MOST)
        return "at most six joints are chosen from";
    if (place <= 0 || place >= piece->length)
        return "a joint lies between the ends of the piece";
    if (piece->joint_count > 0 && place <= piece->joint[piece->joint_count - 1])
        return "joints go from end 1 on, each once";
    return NULL;
}

/* "8 ft; 16 ft" */
static void read_joints(struct arena *arena, struct list_piece *piece, const struct place *at, struct diags *diags)
{
    piece->joint = arena_array(arena, LIST_JOINTS_MOST, sizeof *piece->joint);
    const char *text = piece->joints;
    while (*text) {
        size_t length = strcspn(text, ";");
        const char *part = text_trim(arena, arena_strndup(arena, text, length)), *why = NULL;
        length_t place = 0;
        if (!length_parse(part, &place, &why) || (why = joint_fault(piece, place))) {
            diag_add(diags, DIAG_C002, at, "'%s' in column 'joints': %s; write them like '8 ft; 16 ft'", part, why);
            return;
        }
        piece->joint[piece->joint_count++] = place;
        text += length + (text[length] == ';');
    }
}

static void link_pieces(struct arena *arena, struct cut_list *list, const struct loaded *loaded, struct diags *diags)
{
    long long total = 0;
    for (size_t i = 0; i < loaded->count; i++) {
        struct list_piece *piece = &list->piece[i];
        piece->length_at = *loaded_place(loaded, i, "length");
        if (!piece->member)
            piece->member = "";
        if (piece->joints && piece->joints[0])
            read_joints(arena, piece, loaded_place(loaded, i, "joints"), diags);
        total += piece->count;
        if (total > LIST_PIECES_MOST && total - piece->count <= LIST_PIECES_MOST)
            diag_add(diags, DIAG_P002, loaded_place(loaded, i, "count"), "more than %d pieces in one list",
                     (int)LIST_PIECES_MOST);
    }
}

static void link_stock(struct cut_list *list, const struct loaded *loaded)
{
    for (size_t i = 0; i < loaded->count; i++) {
        struct list_stock *stock = &list->stock[i];
        stock->endless = !loaded_text(loaded, i, "supply")[0];
        stock->has_trim = loaded_text(loaded, i, "trim")[0] != '\0';
        if (!stock->member)
            stock->member = "";
    }
}

struct cut_list *cut_list_read(struct arena *arena, const struct list_source *pieces, const struct list_source *stock,
                               struct diags *diags)
{
    struct cut_list *list = arena_alloc(arena, sizeof *list);
    struct loaded loaded = load(arena, &PIECE_TABLE, pieces, diags);
    list->piece = loaded.rows;
    list->piece_count = loaded.count;
    link_pieces(arena, list, &loaded, diags);
    loaded = load(arena, &STOCK_TABLE, stock, diags);
    list->stock = loaded.rows;
    list->stock_count = loaded.count;
    link_stock(list, &loaded);
    return list;
}
