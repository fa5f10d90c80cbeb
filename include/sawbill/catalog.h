/* The user's catalogs: CSV files in one folder, read and checked.  Everything is owned by the arena given.
 *
 * The columns of each file are the table in src/catalog/columns.c.  Text cells are "" when empty; references to other
 * rows (item, task, nails) are NULL when empty, but the item of a hanger or fastener is then its code.  When diags
 * holds a stop, rows may hold zeros: nothing may be computed from them. */
#ifndef SAWBILL_CATALOG_H
#define SAWBILL_CATALOG_H

#include <stdbool.h>
#include <stddef.h>

#include "sawbill/arena.h"
#include "sawbill/date.h"
#include "sawbill/diag.h"
#include "sawbill/length.h"
#include "sawbill/money.h"

/* design_values.csv: reference design values, psi; columns as published (table, species, grade, ...). */
struct design_row {
    const char *table, *species, *grade, *size_class;
    double width_in;                                          /* nominal width the row is for; 0: any */
    double fb, ft, fv, fc_perp, fc, e, emin, gravity, fb_neg; /* psi; gravity without unit; fb_neg 0 when empty */
    const char *edition, *status, *note, *source;
    bool seen; /* read in its source; else from memory: prints 'unverified' */
    struct place at;
};
enum member_use { USE_BEAM = 1, USE_POST = 2, USE_PLATE = 4, USE_STUD = 8, USE_JOIST = 16, USE_BLOCK = 32 };
enum family_of_wood { WOOD_SAWN, WOOD_LVL, WOOD_PSL, WOOD_LSL, WOOD_GLULAM };
/* members.csv */
struct member {
    const char *code, *material, *size, *design, *moisture, *source, *cost_code;
    enum family_of_wood wood;
    unsigned use;              /* member_use bits */
    length_t ply_width, depth; /* as delivered: 1-1/2 in x 9-1/4 in */
    int most_plies;
    double weight_plf; /* of one ply */
    const struct design_row *values;
    struct place at;
};
/* prices.csv: one row a thing a supplier sells.  A row by the thousand board feet (unit MBF) is read into the price of
 * its piece (unit each), or of a foot (unit ft), with the price as written in the note. */
struct price {
    const char *item, *unit, *supplier, *note, *cost_code;
    length_t length;                 /* stock length; 0 when not sold by piece length */
    length_t increment, least, most; /* by the foot: sold in steps of increment between least and most; else 0 */
    money_t cut_charge;
    decimal_t pack; /* units in one pack: 1, 50, 0.5; price is for a pack (by the foot: for one foot) */
    money_t price;
    struct date date;
    struct place at;
    size_t index;     /* row number in the catalog, from 0: names the row on the Prices sheet */
    const char *what; /* the item in words, "6 mil plastic sheet"; "" when not given */
    length_t actual;  /* of a stick sold by `length`, where it comes longer or shorter; 0: as sold */
};
enum connector_kind { CONNECTOR_HANGER, CONNECTOR_STRAP, CONNECTOR_CAP };
/* hangers.csv: joist and beam hangers, and tie straps (kind column) */
struct hanger {
    const char *code, *item, *gravity_basis, *source, *cost_code;
    enum connector_kind kind;
    length_t width_from, width_to, depth_from, depth_to; /* of the carried member */
    length_t seat, gap, carrier_least;                   /* bearing length; allowed gap; least carrier thickness */
    const char *carrier_nail, *member_nail;              /* fastener codes */
    int carrier_count, member_count;
    double load[4]; /* lb at CD 1.0, 1.15, 1.25, 1.6 (straps: tension); NAN when the cell is empty */
    double uplift;  /* lb; NAN when empty */
    struct place at;
    const char *coating; /* what its maker allows in treated wood; "" when not given */
};
/* fasteners.csv */
struct fastener {
    const char *code, *kind, *item, *source,
        *cost_code; /* kind: common nail, box nail, screw, structural screw, bolt */
    length_t diameter, length, root;
    double fyb_psi, count_per_lb; /* 0 when empty */
    struct place at;
};
/* labor.csv */
struct task {
    const char *task, *trade, *per, *source, *cost_code;
    decimal_t low, likely, high; /* hours for one `per` */
    decimal_t least;             /* least hours a visit; 0 none */
    int crew, order;             /* hands at once; place in the order of work */
    struct place at;
};
/* trades.csv */
struct trade {
    const char *trade;
    money_t wage;
    percent_t burden;
    struct place at;
};
/* conditions.csv, which may be absent: what makes a task take longer, or shorter */
struct condition {
    const char *condition, *task, *source, *note;
    decimal_t factor; /* of the task's hours */
    double from_lb;   /* > 0: holds by itself where a ply or beam that is lifted weighs so much */
    struct place at;
};
/* forgotten.csv, which may be absent: what jobs of this kind usually forget to price */
struct forgotten {
    const char *line, *priced_by, *note, *cost_code; /* priced_by: begins of takeoff ids, apart by ';' */
    money_t price;                                   /* where nothing else prices it */
    bool has_price;
    int class; /* of the price: enum cost_class; 0 without one */
    struct place at;
};
/* debris.csv, which may be absent: what comes out for one of what the takeoff counts */
struct debris_row {
    const char *debris, *per, *source, *note;
    decimal_t solid, fluff, pounds; /* cu ft as it stood; loose for solid; lb */
    struct place at;
};
/* assemblies.csv: for each one `per`, so many of an item or task */
struct assembly_line {
    const char *assembly, *per, *item, *task, *note, *cost_code; /* one of item, task is NULL */
    decimal_t count;
    enum part_class { PART_MATERIAL, PART_RENTAL, PART_FEE } class_of_item;
    struct place at;
};
/* suppliers.csv */
struct supplier {
    const char *name;
    money_t delivery, least_order;
    percent_t tax;
    bool has_tax;
    struct place at;
    size_t index;
};
/* shop stock: member, length, count, book value */
struct shop_piece {
    const struct member *member;
    length_t length;
    int count;
    money_t book_value;
    struct place at;
};

struct catalog {
    struct design_row *design;
    size_t design_count;
    struct member *members;
    size_t member_count;
    struct price *prices;
    size_t price_count;
    struct hanger *hangers;
    size_t hanger_count;
    struct fastener *fasteners;
    size_t fastener_count;
    struct task *tasks;
    size_t task_count;
    struct trade *trades;
    size_t trade_count;
    struct assembly_line *assemblies;
    size_t assembly_count;
    struct supplier *suppliers;
    size_t supplier_count;
    struct forgotten *forgotten;
    size_t forgotten_count;
    struct debris_row *debris;
    size_t debris_count;
    struct condition *conditions;
    size_t condition_count;
    struct shop_piece *shop;
    size_t shop_count;
    unsigned long closed; /* a view of the catalog: bit i set, supplier i sells nothing */
};

/* Reads members.csv, design_values.csv, prices.csv, hangers.csv, fasteners.csv, labor.csv, trades.csv, assemblies.csv
 * and suppliers.csv of `folder`, conditions.csv, forgotten.csv and debris.csv where they are, and `shop_stock` (a file,
 * or NULL). Faults, each with file:line:column, are in diags.
 */
struct catalog *catalog_read(struct arena *arena, const char *folder, const char *shop_stock, struct diags *diags);

const struct member *catalog_member(const struct catalog *catalog, const char *code); /* folded; NULL when absent */
const struct hanger *catalog_hanger(const struct catalog *catalog, const char *code);
const struct fastener *catalog_fastener(const struct catalog *catalog, const char *code);
/* The fastener that an item of prices.csv is, one whose count per lb is known before others; NULL: it is none. */
const struct fastener *catalog_fastener_of(const struct catalog *catalog, const char *item);
const struct task *catalog_task(const struct catalog *catalog, const char *task);
const struct trade *catalog_trade(const struct catalog *catalog, const char *trade);
const struct supplier *catalog_supplier(const struct catalog *catalog, const char *name);
/* Design values of species and grade for a nominal width in inches (Table 4B rows differ by width). */
const struct design_row *catalog_design(const struct catalog *catalog, const char *species, const char *grade,
                                        double nominal_width_in);
/* The same by one text, "Douglas Fir-Larch No.2", as in the column 'design row' of members.csv. */
const struct design_row *catalog_design_named(const struct catalog *catalog, const char *name, double nominal_width_in);
/* "2x10" -> 10; 0 when the text is not a nominal size.  Allocates nothing. */
double catalog_nominal_width(const char *size);
/* Board feet of a piece, or of pieces end to end: nominal thickness x nominal width in inches x feet of length / 12,
 * thinner than an inch as an inch; exact, then half away from zero to 4 decimals.  0: the size is not nominal.  Of a
 * member: 0 too when it is engineered. */
decimal_t board_feet_of_size(const char *size, length_t length);
decimal_t board_feet(const struct member *member, length_t length);
/* What they cost at a price of a thousand, to 1/10,000 dollar, half away from zero. */
money_t board_feet_price(const char *size, length_t length, money_t thousand);
char *board_feet_text(struct arena *arena, decimal_t feet); /* "13.33 board feet" */
/* Is the row of a supplier that sells in this view?  Suppliers past the bits of `closed` always do. */
bool catalog_on_sale(const struct catalog *catalog, const struct price *price);
/* The cheapest price row of an item without a length, or NULL: price per unit, ties by file order.  All rows of an item
 * have one unit (checked when read). */
const struct price *catalog_cheapest(const struct catalog *catalog, const char *item);

/* An item in the words of prices.csv (the first row that has them), else its code. */
const char *catalog_what(const struct catalog *catalog, const char *item);

/* What assemblies.csv may count by ('per'): a word of this list, or "square foot of FINISH" with the finish as the job
 * names it on a wall that comes out. */
struct catalog_per {
    const char *per, *unit, *help;
};
size_t catalog_per_count(void);
struct catalog_per catalog_per(size_t index);
bool catalog_per_known(const char *per); /* folded */

#endif
