/* Bare lists of pieces and stock, without a job: two CSV files.  The columns stand in src/catalog/cut_list.c. */
#ifndef SAWBILL_CUTLIST_H
#define SAWBILL_CUTLIST_H

#include "sawbill/arena.h"
#include "sawbill/diag.h"
#include "sawbill/length.h"
#include "sawbill/money.h"

/* label,length,count and, where there is more than one kind of wood, member; joints: places from end 1 where the piece
 * may be made of two, over supports, parted by ';' */
enum { LIST_JOINTS_MOST = 6 };
struct list_piece {
    const char *label, *member; /* member: "" when not given */
    const char *joints;         /* as written */
    length_t *joint;            /* ascending */
    size_t joint_count;
    length_t length;
    int count;
    struct place at, length_at;
};
/* length,price,supply,trim and member */
struct list_stock {
    const char *member;
    length_t length, trim;
    money_t price;
    int supply;
    bool endless;  /* supply was left empty: as many as wanted */
    bool has_trim; /* else the general one holds */
    struct place at;
};
struct cut_list {
    struct list_piece *piece;
    size_t piece_count;
    struct list_stock *stock;
    size_t stock_count;
};
/* Far beyond any list that is cut by hand. */
enum { LIST_PIECES_MOST = 1000000 };

/* A file by its name, or its text where the caller has read it. */
struct list_source {
    const char *file;
    const char *text; /* NULL: the file is read */
    size_t length;
};
/* Reads both.  Faults, each with file:line:column, are in diags; rows may then hold zeros. */
struct cut_list *cut_list_read(struct arena *arena, const struct list_source *pieces, const struct list_source *stock,
                               struct diags *diags);

#endif
