#include "table.h"

#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include "sawbill/text.h"

static const char *suggest(struct arena *arena, const struct table *table, const char *name)
{
    const char **names = arena_array(arena, table->count, sizeof *names);
    for (size_t i = 0; i < table->count; i++)
        names[i] = table->column[i].name;
    const char *near = did_you_mean(arena, name, names, table->count);
    return near ? arena_printf(arena, "; did you mean '%s'?", near) : "";
}

static size_t find_column(const struct table *table, const char *name)
{
    for (size_t i = 0; i < table->count; i++)
        if (name_same(table->column[i].name, name))
            return i;
    return SIZE_MAX;
}

/* A header in one cell with another separator in it: the whole file is then in one column. */
static bool wrong_separator(const struct row *header, struct diags *diags)
{
    if (header->count != 1)
        return false;
    const char *text = header->cell[0].text;
    bool semicolon = strchr(text, ';') != NULL;
    if (!semicolon && !strchr(text, '\t'))
        return false;
    diag_add(diags, DIAG_C001, &header->cell[0].at, "columns are parted by %s; save the file with commas",
             semicolon ? "';'" : "tabs");
    return true;
}

static void read_header(struct arena *arena, struct loaded *loaded, const struct row *header, struct diags *diags)
{
    const struct table *table = loaded->table;
    for (size_t i = 0; i < header->count; i++) {
        const struct cell *cell = &header->cell[i];
        size_t column = find_column(table, cell->text);
        if (!cell->text[0])
            diag_add(diags, DIAG_C001, &cell->at, "column %zu has no name; delete the empty column", i + 1);
        else if (column == SIZE_MAX)
            diag_add(diags, DIAG_C001, &cell->at, "unknown column '%s'%s", cell->text,
                     suggest(arena, table, cell->text));
        else if (loaded->cell_of[column] != SIZE_MAX)
            diag_add(diags, DIAG_C001, &cell->at, "column '%s' stands twice", table->column[column].name);
        else
            loaded->cell_of[column] = i;
    }
    for (size_t i = 0; i < table->count; i++)
        if (table->column[i].required && loaded->cell_of[i] == SIZE_MAX)
            diag_add(diags, DIAG_C001, &header->cell[0].at, "column '%s' is missing", table->column[i].name);
}

static const struct cell *cell_of(const struct loaded *loaded, size_t row, size_t column)
{
    size_t index = loaded->cell_of[column];
    const struct row *source = &loaded->source[row];
    return index < source->count ? &source->cell[index] : NULL;
}

/* The columns that name a row are there. */
static bool has_keys(const struct loaded *loaded)
{
    for (size_t i = 0; i < loaded->table->count; i++)
        if (loaded->table->column[i].key && loaded->table->column[i].required && loaded->cell_of[i] == SIZE_MAX)
            return false;
    return true;
}

static void read_row(struct arena *arena, struct loaded *loaded, size_t row, size_t want, struct diags *diags)
{
    const struct table *table = loaded->table;
    const struct row *source = &loaded->source[row];
    char *into = (char *)loaded->rows + row * table->row_size;
    memcpy(into + table->place_offset, &source->cell[0].at, sizeof source->cell[0].at);
    bool right_count = source->count == want;
    loaded->whole[row] = right_count;
    if (!right_count)
        diag_add(diags, DIAG_C005, &source->cell[0].at, "%zu cells where the header has %zu columns%s", source->count,
                 want, source->count > want ? "; a comma inside a cell needs quotes around the cell" : "");
    static const struct cell nothing = {.text = ""};
    /* of a row with too many or too few cells only the names are taken, in silence, so that what refers to them is not
     * reported: its cells may stand in the wrong columns */
    struct diags unheard = {.arena = arena};
    struct diags *heard = right_count ? diags : &unheard;
    for (size_t i = 0; i < table->count; i++) {
        const struct column *column = &table->column[i];
        const struct cell *cell = cell_of(loaded, row, i);
        bool named = column->type == CELL_CODE || column->type == CELL_REF || column->type == CELL_TEXT;
        bool good = true;
        if (cell && (right_count || (named && cell->text[0])))
            good = cell_store(arena, column, cell, into, heard);
        else /* an empty cell that may be: cannot fail */
            (void)cell_store(arena, &(struct column){.type = column->type, .offset = column->offset}, &nothing, into,
                             heard);
        loaded->whole[row] = loaded->whole[row] && good;
    }
}

/* What no two rows may share, as one text: names folded, lengths in one form. */
static const char *row_key(struct arena *arena, const struct loaded *loaded, size_t row)
{
    struct buffer key = {.arena = arena};
    const char *base = (const char *)loaded->rows + row * loaded->table->row_size;
    for (size_t i = 0; i < loaded->table->count; i++) {
        const struct column *column = &loaded->table->column[i];
        if (!column->key)
            continue;
        length_t length = 0;
        if (column->type == CELL_LENGTH)
            memcpy(&length, base + column->offset, sizeof length);
        const struct cell *cell = cell_of(loaded, row, i);
        const char *text = cell ? cell->text : "";
        buffer_add(&key, column->type == CELL_LENGTH ? length_exact(arena, length) : name_fold(arena, text));
        buffer_add(&key, "\t");
    }
    return buffer_text(&key);
}

struct keyed {
    const char *key;
    size_t row;
};

static int compare_keyed(const void *a, const void *b)
{
    const struct keyed *left = a;
    const struct keyed *right = b;
    int order = strcmp(left->key, right->key);
    return order ? order : (left->row > right->row) - (left->row < right->row);
}

/* " with the same 'supplier', 'length'": the other columns that make a row what it is. */
static const char *same_as(struct arena *arena, const struct table *table, const struct column *first)
{
    struct buffer text = {.arena = arena};
    for (const struct column *column = first + 1; column < table->column + table->count; column++)
        if (column->key)
            buffer_printf(&text, "%s '%s'", text.length ? "," : " with the same", column->name);
    return buffer_text(&text);
}

static void check_twice(struct arena *arena, const struct loaded *loaded, struct diags *diags)
{
    const struct column *first = NULL;
    for (size_t i = loaded->table->count; i-- > 0;)
        if (loaded->table->column[i].key)
            first = &loaded->table->column[i];
    if (!first || loaded->count < 2)
        return;
    struct keyed *keyed = arena_array(arena, loaded->count, sizeof *keyed);
    for (size_t i = 0; i < loaded->count; i++)
        keyed[i] = (struct keyed){row_key(arena, loaded, i), i};
    qsort(keyed, loaded->count, sizeof *keyed, compare_keyed);
    for (size_t i = 1; i < loaded->count; i++) {
        size_t row = keyed[i].row;
        const char *text = loaded_text(loaded, row, first->name);
        if (strcmp(keyed[i].key, keyed[i - 1].key) == 0 && text[0] && loaded->whole[row])
            diag_add(diags, DIAG_C003, loaded_place(loaded, row, first->name),
                     "'%s' is given twice%s; first at line %d", text, same_as(arena, loaded->table, first),
                     loaded_place(loaded, keyed[i - 1].row, first->name)->line);
    }
}

struct loaded table_load(struct arena *arena, const struct table *table, const struct sheet *sheet, struct diags *diags)
{
    struct loaded loaded = {.table = table};
    loaded.cell_of = arena_array(arena, table->count, sizeof *loaded.cell_of);
    for (size_t i = 0; i < table->count; i++)
        loaded.cell_of[i] = SIZE_MAX;
    if (sheet->count == 0) {
        struct place at = {.file = sheet->file};
        diag_add(diags, DIAG_C001, &at, "the file is empty; its first row names the columns");
        return loaded;
    }
    const struct row *header = &sheet->row[0];
    if (wrong_separator(header, diags))
        return loaded;
    read_header(arena, &loaded, header, diags);
    loaded.count = sheet->count - 1;
    loaded.rows = arena_array(arena, loaded.count, table->row_size);
    loaded.source = header + 1;
    loaded.whole = arena_array(arena, loaded.count, sizeof *loaded.whole);
    for (size_t i = 0; i < loaded.count; i++)
        read_row(arena, &loaded, i, header->count, diags);
    check_twice(arena, &loaded, diags);
    loaded.complete = !sheet->lost && has_keys(&loaded);
    return loaded;
}

const struct place *loaded_place(const struct loaded *loaded, size_t row, const char *column)
{
    size_t index = find_column(loaded->table, column);
    const struct cell *cell = index == SIZE_MAX ? NULL : cell_of(loaded, row, index);
    return cell ? &cell->at : &loaded->source[row].cell[0].at;
}

const char *loaded_text(const struct loaded *loaded, size_t row, const char *column)
{
    size_t index = find_column(loaded->table, column);
    const struct cell *cell = index == SIZE_MAX ? NULL : cell_of(loaded, row, index);
    return cell ? cell->text : "";
}
