/* The columns of every catalog file.  A column added here is read, checked, named in messages and suggested. */
#include "sawbill/job.h"
#include "table.h"

#define AT(type, member) offsetof(struct type, member)

static const struct word WOODS[] = {
    {"sawn", WOOD_SAWN}, {"LVL", WOOD_LVL}, {"PSL", WOOD_PSL}, {"LSL", WOOD_LSL}, {"glulam", WOOD_GLULAM}, {NULL, 0},
};
static const struct word USES[] = {
    {"beam", USE_BEAM},   {"post", USE_POST}, {"plate", USE_PLATE}, {"stud", USE_STUD}, {"joist", USE_JOIST},
    {"block", USE_BLOCK}, {NULL, 0},
};
static const struct word CONNECTORS[] = {
    {"hanger", CONNECTOR_HANGER},
    {"strap", CONNECTOR_STRAP},
    {"cap", CONNECTOR_CAP},
    {NULL, 0},
};
static const struct word PARTS[] = {
    {"material", PART_MATERIAL},
    {"rental", PART_RENTAL},
    {"fee", PART_FEE},
    {NULL, 0},
};
static const struct word SEEN[] = {{"source", 1}, {"memory", 0}, {NULL, 0}};
static const struct word PSI[] = {{"psi", 0}, {NULL, 0}};

/* Bounds are those of possible values, not of usual ones. */
static const struct column DESIGN[] = {
    {"table", CELL_TEXT, false, false, AT(design_row, table), .example = "4A"},
    {"species", CELL_TEXT, true, true, AT(design_row, species), .example = "Douglas Fir-Larch"},
    {"grade", CELL_TEXT, true, true, AT(design_row, grade), .example = "No.2"},
    {"size_class", CELL_TEXT, false, false, AT(design_row, size_class), .example = "2 in & wider"},
    {"width_in", CELL_NUMBER, false, true, AT(design_row, width_in), 0, 48, .unit = "in", .example = "10"},
    {"Fb", CELL_NUMBER, true, false, AT(design_row, fb), 50, 10000, .unit = "psi", .example = "900"},
    {"Ft", CELL_NUMBER, false, false, AT(design_row, ft), 0, 10000, .unit = "psi", .example = "575"},
    {"Fv", CELL_NUMBER, true, false, AT(design_row, fv), 20, 1000, .unit = "psi", .example = "180"},
    {"Fc_perp", CELL_NUMBER, true, false, AT(design_row, fc_perp), 50, 3000, .unit = "psi", .example = "625"},
    {"Fc", CELL_NUMBER, true, false, AT(design_row, fc), 50, 10000, .unit = "psi", .example = "1350"},
    {"E", CELL_NUMBER, true, false, AT(design_row, e), 100000, 5000000, .unit = "psi", .example = "1600000"},
    {"Emin", CELL_NUMBER, true, false, AT(design_row, emin), 50000, 5000000, .unit = "psi", .example = "580000"},
    {"G", CELL_NUMBER, true, false, AT(design_row, gravity), 0.2, 1.2, .example = "0.50"},
    {"Fb_neg", CELL_NUMBER, false, false, AT(design_row, fb_neg), 0, 10000, .unit = "psi", .example = "1850"},
    {"units", CELL_CHECKED, true, false, 0, .words = PSI, .example = "psi"},
    {"edition", CELL_TEXT, true, false, AT(design_row, edition), .example = "NDS 2018 Supplement"},
    {"status", CELL_TEXT, true, false, AT(design_row, status), .example = "reference"},
    {"note", CELL_TEXT, false, false, AT(design_row, note), .example = "invented price"},
    {"source", CELL_TEXT, true, false, AT(design_row, source), .example = "supplier quote of 2026-10-05"},
    {"seen", CELL_FLAG, true, false, AT(design_row, seen), .words = SEEN, .example = "source"},
};
static const struct column MEMBERS[] = {
    {"code", CELL_CODE, true, true, AT(member, code), .example = "DFL2-2X10"},
    {"material", CELL_TEXT, true, false, AT(member, material), .example = "Douglas Fir-Larch"},
    {"wood", CELL_WORD, true, false, AT(member, wood), .words = WOODS, .example = "sawn"},
    {"use", CELL_WORDS, true, false, AT(member, use), .words = USES, .example = "beam; joist"},
    {"size", CELL_TEXT, true, false, AT(member, size), .example = "2x10"},
    {"ply width", CELL_LENGTH, true, false, AT(member, ply_width), 0.5, 16, .example = "1-1/2 in"},
    {"depth", CELL_LENGTH, true, false, AT(member, depth), 1, 48, .example = "9-1/4 in"},
    {"design row", CELL_TEXT, true, false, AT(member, design), .example = "Douglas Fir-Larch No.2"},
    {"most plies", CELL_COUNT, true, false, AT(member, most_plies), 1, 8, .example = "4"},
    {"weight", CELL_NUMBER, true, false, AT(member, weight_plf), 0.1, 500, .unit = "plf", .example = "3.1 plf"},
    {"moisture", CELL_TEXT, true, false, AT(member, moisture), .example = "S-DRY"},
    {"source", CELL_TEXT, true, false, AT(member, source), .example = "supplier quote of 2026-10-05"},
    {"cost code", CELL_TEXT, false, false, AT(member, cost_code), .example = "06-110"},
};
static const struct column PRICES[] = {
    {"item", CELL_CODE, true, true, AT(price, item), .example = "DFL2-2X10"},
    {"what", CELL_TEXT, false, false, AT(price, what), .example = "6 mil plastic sheet"},
    {"unit", CELL_TEXT, true, false, AT(price, unit), .example = "each"},
    {"length", CELL_LENGTH, false, true, AT(price, length), 0.5, 1200, .example = "12 ft"},
    {"actual length", CELL_LENGTH, false, false, AT(price, actual), 0.5, 1212, .example = "12 ft 0.5 in"},
    {"increment", CELL_LENGTH, false, false, AT(price, increment), 0.5, 1200, .example = "2 ft"},
    {"least", CELL_LENGTH, false, false, AT(price, least), 0.5, 1200, .example = "8 ft"},
    {"most", CELL_LENGTH, false, false, AT(price, most), 0.5, 1200, .example = "40 ft"},
    {"cut charge", CELL_MONEY, false, false, AT(price, cut_charge), 0, 10000, .example = "5.00"},
    {"pack", CELL_DECIMAL, false, true, AT(price, pack), 0.0001, 1000000, .example = "50"},
    {"price", CELL_MONEY, true, false, AT(price, price), 0, 1000000, .example = "18.75"},
    {"supplier", CELL_REF, true, true, AT(price, supplier), .example = "Yard North"},
    {"date", CELL_DATE, true, false, AT(price, date), .example = "2026-10-05"},
    {"note", CELL_TEXT, false, false, AT(price, note), .example = "invented price"},
    {"cost code", CELL_TEXT, false, false, AT(price, cost_code), .example = "06-110"},
};
static const struct column HANGERS[] = {
    {"code", CELL_CODE, true, true, AT(hanger, code), .example = "HNG-2X10"},
    {"kind", CELL_WORD, true, false, AT(hanger, kind), .words = CONNECTORS, .example = "hanger"},
    {"width from", CELL_LENGTH, false, false, AT(hanger, width_from), 0.25, 24, .example = "1-1/2 in"},
    {"width to", CELL_LENGTH, false, false, AT(hanger, width_to), 0.25, 24, .example = "1-9/16 in"},
    {"depth from", CELL_LENGTH, false, false, AT(hanger, depth_from), 0.25, 48, .example = "7-1/4 in"},
    {"depth to", CELL_LENGTH, false, false, AT(hanger, depth_to), 0.25, 48, .example = "9-1/4 in"},
    {"seat", CELL_LENGTH, false, false, AT(hanger, seat), 0.25, 24, .example = "2 in"},
    {"gap", CELL_LENGTH, false, false, AT(hanger, gap), 0, 2, .example = "1/8 in"},
    {"carrier least", CELL_LENGTH, false, false, AT(hanger, carrier_least), 0, 24, .example = "3 in"},
    {"carrier nail", CELL_REF, false, false, AT(hanger, carrier_nail), .example = "N10D-COMMON"},
    {"carrier count", CELL_COUNT, false, false, AT(hanger, carrier_count), 0, 200, .example = "14"},
    {"member nail", CELL_REF, false, false, AT(hanger, member_nail), .example = "N10D-SHORT"},
    {"member count", CELL_COUNT, false, false, AT(hanger, member_count), 0, 200, .example = "6"},
    {"load at 1.0", CELL_NUMBER_NAN, false, false, AT(hanger, load[0]), 1, 100000, .unit = "lb", .example = "1110"},
    {"load at 1.15", CELL_NUMBER_NAN, false, false, AT(hanger, load[1]), 1, 100000, .unit = "lb", .example = "1275"},
    {"load at 1.25", CELL_NUMBER_NAN, false, false, AT(hanger, load[2]), 1, 100000, .unit = "lb", .example = "1380"},
    {"load at 1.6", CELL_NUMBER_NAN, false, false, AT(hanger, load[3]), 1, 100000, .unit = "lb", .example = "1500"},
    {"uplift", CELL_NUMBER_NAN, false, false, AT(hanger, uplift), 0, 100000, .unit = "lb", .example = "700"},
    {"gravity basis", CELL_TEXT, false, false, AT(hanger, gravity_basis), .example = "0.50"},
    {"coating", CELL_TEXT, false, false, AT(hanger, coating), .example = "hot-dipped, for treated wood"},
    {"item", CELL_REF, false, false, AT(hanger, item), .example = "HNG-2X10"},
    {"source", CELL_TEXT, true, false, AT(hanger, source), .example = "supplier quote of 2026-10-05"},
    {"cost code", CELL_TEXT, false, false, AT(hanger, cost_code), .example = "06-110"},
};
static const struct column FASTENERS[] = {
    {"code", CELL_CODE, true, true, AT(fastener, code), .example = "N16D-COMMON"},
    {"kind", CELL_TEXT, true, false, AT(fastener, kind), .example = "common nail"},
    {"diameter", CELL_LENGTH, true, false, AT(fastener, diameter), 0.03, 2, .example = "0.162 in"},
    {"length", CELL_LENGTH, true, false, AT(fastener, length), 0.25, 48, .example = "3-1/2 in"},
    {"root", CELL_LENGTH, false, false, AT(fastener, root), 0.03, 2, .example = "0.173 in"},
    {"Fyb", CELL_NUMBER, false, false, AT(fastener, fyb_psi), 10000, 300000, .unit = "psi", .example = "90000"},
    {"count per lb", CELL_NUMBER, false, false, AT(fastener, count_per_lb), 0.01, 5000, .example = "46.8"},
    {"item", CELL_REF, false, false, AT(fastener, item), .example = "N16D-COMMON"},
    {"source", CELL_TEXT, true, false, AT(fastener, source), .example = "supplier quote of 2026-10-05"},
    {"cost code", CELL_TEXT, false, false, AT(fastener, cost_code), .example = "06-110"},
};
static const struct column LABOR[] = {
    {"task", CELL_CODE, true, true, AT(task, task), .example = "hang joist"},
    {"trade", CELL_REF, true, false, AT(task, trade), .example = "carpenter"},
    {"per", CELL_TEXT, true, false, AT(task, per), .example = "joist end"},
    {"hours low", CELL_DECIMAL, true, false, AT(task, low), 0, 1000, .unit = "hours", .example = "0.15"},
    {"hours likely", CELL_DECIMAL, true, false, AT(task, likely), 0, 1000, .unit = "hours", .example = "0.25"},
    {"hours high", CELL_DECIMAL, true, false, AT(task, high), 0, 1000, .unit = "hours", .example = "0.4"},
    {"least hours", CELL_DECIMAL, false, false, AT(task, least), 0, 1000, .unit = "hours", .example = "2"},
    {"crew", CELL_COUNT, true, false, AT(task, crew), 1, 50, .example = "2"},
    {"order", CELL_COUNT, true, false, AT(task, order), 0, 100000, .example = "120"},
    {"source", CELL_TEXT, true, false, AT(task, source), .example = "supplier quote of 2026-10-05"},
    {"cost code", CELL_TEXT, false, false, AT(task, cost_code), .example = "06-110"},
};
static const struct column TRADES[] = {
    {"trade", CELL_CODE, true, true, AT(trade, trade), .example = "carpenter"},
    {"wage", CELL_MONEY, true, false, AT(trade, wage), 0, 1000, .example = "34.00"},
    {"burden", CELL_PERCENT, true, false, AT(trade, burden), 0, 300, .example = "32 %"},
    {"note", CELL_UNUSED, false, false, 0, .example = "invented price"},
};
static const struct column ASSEMBLIES[] = {
    {"assembly", CELL_CODE, true, true, AT(assembly_line, assembly), .example = "hang joists"},
    {"per", CELL_TEXT, true, true, AT(assembly_line, per), .example = "joist end"},
    {"item", CELL_REF, false, true, AT(assembly_line, item), .example = "PLASTIC-ROLL"},
    {"task", CELL_REF, false, true, AT(assembly_line, task), .example = "hang joist"},
    {"count", CELL_DECIMAL, true, false, AT(assembly_line, count), 0, 1000000, .example = "1"},
    {"class", CELL_WORD, false, false, AT(assembly_line, class_of_item), .words = PARTS, .example = "material"},
    {"note", CELL_TEXT, false, false, AT(assembly_line, note), .example = "invented price"},
    {"cost code", CELL_TEXT, false, false, AT(assembly_line, cost_code), .example = "06-110"},
};
static const struct column SUPPLIERS[] = {
    {"name", CELL_CODE, true, true, AT(supplier, name), .example = "Yard North"},
    {"delivery", CELL_MONEY, true, false, AT(supplier, delivery), 0, 100000, .example = "75.00"},
    {"least order", CELL_MONEY, false, false, AT(supplier, least_order), 0, 1000000, .example = "250.00"},
    {"tax", CELL_PERCENT, false, false, AT(supplier, tax), 0, 50, .example = "7.25 %"},
    {"note", CELL_UNUSED, false, false, 0, .example = "invented price"},
};
static const struct column SHOP[] = {
    {"member", CELL_NAMED, true, false, 0, .example = "DFL2-2X10"},
    {"length", CELL_LENGTH, true, false, AT(shop_piece, length), 0.5, 1200, .example = "11 ft 3 in"},
    {"count", CELL_COUNT, true, false, AT(shop_piece, count), 1, 100000, .example = "2"},
    {"book value", CELL_MONEY, true, false, AT(shop_piece, book_value), 0, 1000000, .example = "9.50"},
    {"note", CELL_UNUSED, false, false, 0, .example = "invented price"},
};

static const struct column CONDITIONS[] = {
    {"condition", CELL_CODE, true, true, AT(condition, condition), .example = "occupied house"},
    {"task", CELL_REF, true, true, AT(condition, task), .example = "dust wall"},
    {"factor", CELL_DECIMAL, true, false, AT(condition, factor), 0.1, 10, .example = "1.25"},
    {"from weight", CELL_NUMBER, false, false, AT(condition, from_lb), 0, 5000, .unit = "lb", .example = "100 lb"},
    {"source", CELL_TEXT, true, false, AT(condition, source), .example = "own figure"},
    {"note", CELL_TEXT, false, false, AT(condition, note), .example = "furniture stays in the rooms"},
};

static const struct word CLASSES[] = {
    {"labor", CLASS_LABOR},
    {"materials", CLASS_MATERIALS},
    {"rentals", CLASS_RENTALS},
    {"subs", CLASS_SUBS},
    {"allowances", CLASS_ALLOWANCES},
    {"fees", CLASS_FEES},
    {NULL, 0},
};
static const struct column FORGOTTEN[] = {
    {"line", CELL_CODE, true, true, AT(forgotten, line), .example = "parking"},
    {"priced by", CELL_TEXT, false, false, AT(forgotten, priced_by), .example = "assembly/parking"},
    {"price", CELL_MONEY, false, false, AT(forgotten, price), 0, 1000000, .example = "120.00"},
    {"class", CELL_WORD, false, false, AT(forgotten, class), .words = CLASSES, .example = "fees"},
    {"note", CELL_TEXT, false, false, AT(forgotten, note), .example = "invented price"},
    {"cost code", CELL_TEXT, false, false, AT(forgotten, cost_code), .example = "01-500"},
};

static const struct column DEBRIS[] = {
    {"debris", CELL_CODE, true, true, AT(debris_row, debris), .example = "plaster on lath"},
    {"per", CELL_TEXT, true, true, AT(debris_row, per), .example = "square foot of plaster on lath"},
    {"solid", CELL_DECIMAL, true, false, AT(debris_row, solid), 0, 1000, .unit = "cu ft", .example = "0.08"},
    {"fluff", CELL_DECIMAL, true, false, AT(debris_row, fluff), 1, 20, .example = "2.6"},
    {"weight", CELL_DECIMAL, true, false, AT(debris_row, pounds), 0, 10000, .unit = "lb", .example = "8 lb"},
    {"source", CELL_TEXT, true, false, AT(debris_row, source), .example = "own figure"},
    {"note", CELL_TEXT, false, false, AT(debris_row, note), .example = "laths with it"},
};

#define TABLE_OF(name, columns, row, may_lack)                                                                         \
    {                                                                                                                  \
        name, columns, sizeof(columns) / sizeof *(columns), sizeof(struct row), offsetof(struct row, at), may_lack     \
    }
#define TABLE(name, columns, row) TABLE_OF(name, columns, row, false)
const struct table CATALOG_TABLES[TABLE_COUNT] = {
    [TABLE_DESIGN] = TABLE("design_values.csv", DESIGN, design_row),
    [TABLE_MEMBERS] = TABLE("members.csv", MEMBERS, member),
    [TABLE_PRICES] = TABLE("prices.csv", PRICES, price),
    [TABLE_HANGERS] = TABLE("hangers.csv", HANGERS, hanger),
    [TABLE_FASTENERS] = TABLE("fasteners.csv", FASTENERS, fastener),
    [TABLE_LABOR] = TABLE("labor.csv", LABOR, task),
    [TABLE_TRADES] = TABLE("trades.csv", TRADES, trade),
    [TABLE_ASSEMBLIES] = TABLE("assemblies.csv", ASSEMBLIES, assembly_line),
    [TABLE_SUPPLIERS] = TABLE("suppliers.csv", SUPPLIERS, supplier),
    [TABLE_CONDITIONS] = TABLE_OF("conditions.csv", CONDITIONS, condition, true),
    [TABLE_FORGOTTEN] = TABLE_OF("forgotten.csv", FORGOTTEN, forgotten, true),
    [TABLE_DEBRIS] = TABLE_OF("debris.csv", DEBRIS, debris_row, true),
    [TABLE_SHOP] = TABLE("shop stock", SHOP, shop_piece),
};
