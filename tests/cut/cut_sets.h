/* Sets of cutting problems in standard form, from text:
 *
 *     inst NAME
 *     stock LENGTH COST SUPPLY        one line a stock; supply -1: as many as wanted
 *     items LENGTHxCOUNT ...          any number of lines
 *
 * or as the OR-Library has its bin packing problems: how many there are, then of each its name, a line with the
 * length of a stick, how many pieces there are and the fewest sticks that were known, and a line a piece. */
#ifndef CUT_SETS_H
#define CUT_SETS_H

#include "../../src/cut/form.h"

struct cut_instance {
    char *name;
    struct form form;
    struct form_type *type;
    struct form_stock *stock;
    size_t type_room, stock_room;
    int64_t optimum; /* -1: not known; what the OR-Library's form prints, which is not always the least */
};
struct cut_set {
    struct cut_instance *instance;
    size_t count, room;
};

/* False when the file cannot be read, or is cut short. */
bool cut_set_read(struct arena *arena, const char *path, struct cut_set *set);
/* Rows `file,instance,pieces,types,stocks,optimum,..`: sets the optima of this file's instances. */
bool cut_set_optima(const char *path, const char *file, struct cut_set *set);

#endif
