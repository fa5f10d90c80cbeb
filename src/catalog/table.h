/* One row a column: the tables that drive the reading of every catalog file. */
#ifndef SAWBILL_CATALOG_TABLE_H
#define SAWBILL_CATALOG_TABLE_H

#include <stdbool.h>
#include <stddef.h>

#include "sawbill/catalog.h"
#include "sheet.h"

/* What a cell holds and how it is stored at its offset in the row's struct. */
enum cell_type {
    CELL_CODE,       /* const char *: a name of the user's, starts with a letter */
    CELL_TEXT,       /* const char *: free; "" when empty */
    CELL_REF,        /* const char *: a code or name of another file; NULL when empty */
    CELL_LENGTH,     /* length_t */
    CELL_MONEY,      /* money_t */
    CELL_PERCENT,    /* percent_t */
    CELL_DECIMAL,    /* decimal_t */
    CELL_NUMBER,     /* double; 0 when empty */
    CELL_NUMBER_NAN, /* double; NAN when empty */
    CELL_COUNT,      /* int */
    CELL_DATE,       /* struct date */
    CELL_WORD,       /* an enum: one of `words` */
    CELL_WORDS,      /* unsigned: bits of `words`, apart by ';' or blanks */
    CELL_FLAG,       /* bool: one of `words` */
    CELL_CHECKED,    /* not stored: must be one of `words` */
    CELL_NAMED,      /* not stored: a name that the linker looks up */
    CELL_UNUSED      /* not stored: free text for the user's eyes */
};
struct word {
    const char *word;
    int value;
};
struct column {
    const char *name;
    enum cell_type type;
    bool required; /* the column must be there and no cell empty */
    bool key;      /* part of what no two rows may share */
    size_t offset;
    double least, most;       /* numbers, lengths (inches), money (dollars), percent; both 0: no limit */
    const struct word *words; /* ends with word NULL */
    const char *unit;         /* of a number: may be written after it */
    const char *example;      /* the right form, for messages */
};
struct table {
    const char *file; /* "prices.csv" */
    const struct column *column;
    size_t count, row_size, place_offset;
    bool optional; /* the folder may lack the file */
};
enum table_id {
    TABLE_DESIGN,
    TABLE_MEMBERS,
    TABLE_PRICES,
    TABLE_HANGERS,
    TABLE_FASTENERS,
    TABLE_LABOR,
    TABLE_TRADES,
    TABLE_ASSEMBLIES,
    TABLE_SUPPLIERS,
    TABLE_CONDITIONS,
    TABLE_FORGOTTEN,
    TABLE_DEBRIS,
    TABLE_SHOP,
    TABLE_COUNT
};
extern const struct table CATALOG_TABLES[TABLE_COUNT];

/* A file read by its table: rows as structs, and where each cell stood. */
struct loaded {
    const struct table *table;
    const struct row *source; /* the sheet's row of each struct */
    size_t *cell_of;          /* column of the table -> cell of the row; SIZE_MAX: not in this file */
    bool *whole;              /* row has as many cells as the header: worth checking further */
    void *rows;
    size_t count;
    bool complete; /* every row is here by its name, so that a reference can be judged */
};

/* Never fails: what is wrong goes to diags. */
struct loaded table_load(struct arena *arena, const struct table *table, const struct sheet *sheet,
                         struct diags *diags);
/* The place of a cell, or of its row when the file lacks the column. */
const struct place *loaded_place(const struct loaded *loaded, size_t row, const char *column);
/* The text of a cell; "" when empty or not there. */
const char *loaded_text(const struct loaded *loaded, size_t row, const char *column);

/* Reads one cell into its place in the row's struct; false, with the fault in diags, when it cannot be read. */
bool cell_store(struct arena *arena, const struct column *column, const struct cell *cell, void *row,
                struct diags *diags);

/* Rules across cells and references across files. */
struct linker {
    struct arena *arena;
    struct diags *diags;
    struct catalog *catalog;
    const struct loaded *loaded; /* TABLE_COUNT of them */
};
void link_rows(const struct linker *linker);

#endif
