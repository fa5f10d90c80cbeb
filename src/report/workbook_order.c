/* Order: what to buy, supplier by supplier, with the invoice that is to be expected from each. */
#include "workbook.h"

#include "sawbill/text.h"

enum { O_SUPPLIER, O_ITEM, O_WHAT, O_COUNTED, O_PIECES, O_POUNDS, O_UNIT, O_NET, O_LOSS, O_PACK, O_PACKS, O_PRICE };
enum { O_TOTAL = O_PRICE + 1, O_CLASS, O_CODE, O_COLUMNS };
_Static_assert((int)O_PACKS == (int)ORDER_PACKS && (int)O_PRICE == (int)ORDER_PRICE && (int)O_TOTAL == (int)ORDER_TOTAL,
               "columns that others use");

static const struct column_head HEADS[O_COLUMNS] = {
    {"Supplier", 18, false},    {"Item", 20, false},  {"What", 38, false},
    {"How counted", 30, false}, {"Pieces", 8, true},  {"Pounds", 8, true},
    {"Unit", 8, false},         {"Net", 9, true},     {"Loss", 8, true},
    {"Pack", 7, true},          {"To buy", 9, true},  {"Price", 11, true},
    {"Total", 12, true},        {"Class", 11, false}, {"Your cost code", 11, false},
};

static bool in_packs(const struct order_line *line)
{
    return line->price && !line->cut_charge && line->price->increment == 0;
}

static const char *price_cell(const struct workbook *w, const struct order_line *line)
{
    if (line->shop)
        return input_cell(w, INPUT_SHOP, line->shop, 0);
    return input_cell(w, line->cut_charge ? INPUT_CUT_CHARGE : INPUT_PRICE, line->price, 0);
}

static money_t price_of(const struct order_line *line)
{
    if (line->shop)
        return line->shop->book_value;
    return line->cut_charge ? line->price->cut_charge : line->price->price;
}

/* Loss: the bid's own where it applies, zero to type over elsewhere; none where nothing is bought in packs. */
static void add_packs(struct workbook *w, int row, const struct order_line *line)
{
    struct page *page = w->buying;
    struct arena *a = w->arena;
    page_number(page, row, O_NET, LOOK_NUMBER, decimal_value(line->net));
    if (!in_packs(line)) {
        page_text(page, row, O_LOSS, LOOK_TEXT, "");
        page_text(page, row, O_PACK, LOOK_TEXT, "");
        page_formula(page, row, O_PACKS, LOOK_NUMBER, decimal_value(line->packs), "=%s", cell_name(a, row, O_NET));
        return;
    }
    if (line->loss > 0)
        page_formula(page, row, O_LOSS, LOOK_IN_PERCENT, percent_fraction(line->loss), "=%s",
                     input_cell(w, INPUT_LOSS, NULL, 0));
    else
        page_number(page, row, O_LOSS, LOOK_IN_PERCENT, 0);
    page_formula(page, row, O_PACK, LOOK_NUMBER, decimal_value(line->price->pack), "=%s",
                 input_column(w, INPUT_PRICE, line->price, 0, PRICES_PACK));
    page_formula(page, row, O_PACKS, LOOK_NUMBER, decimal_value(line->packs), "=ROUNDUP(ROUND(%s*(1+%s)/%s,8),0)",
                 cell_name(a, row, O_NET), cell_name(a, row, O_LOSS), cell_name(a, row, O_PACK));
}

/* Nails and screws, net. */
static void add_fastener(struct page *page, int row, const struct order_line *line)
{
    if (line->pieces > 0)
        page_number(page, row, O_PIECES, LOOK_NUMBER, decimal_value(line->pieces));
    if (line->pounds > 0)
        page_number(page, row, O_POUNDS, LOOK_NUMBER, decimal_value(line->pounds));
}

static const char *counted_text(struct arena *arena, const struct order_line *line)
{
    if (line->board_feet == 0)
        return line->counted;
    return arena_printf(arena, "%s: %s", line->counted, board_feet_text(arena, line->board_feet));
}

static void add_line(struct workbook *w, int row, size_t index)
{
    const struct order_line *line = &w->order->line[index];
    struct page *page = w->buying;
    w->order_row[index] = row;
    page_text(page, row, O_SUPPLIER, LOOK_TEXT, line->shop ? "own shop" : line->price->supplier);
    page_text(page, row, O_ITEM, LOOK_TEXT, line->item);
    page_text(page, row, O_WHAT, LOOK_WRAP, line->what);
    page_text(page, row, O_COUNTED, LOOK_WRAP, counted_text(w->arena, line));
    page_text(page, row, O_UNIT, LOOK_TEXT, line->unit);
    add_fastener(page, row, line);
    add_packs(w, row, line);
    page_formula(page, row, O_PRICE, LOOK_MONEY, money_dollars(price_of(line)), "=%s", price_cell(w, line));
    page_formula(page, row, O_TOTAL, LOOK_MONEY, money_dollars(line->total), "=ROUND(%s*%s,2)",
                 cell_name(w->arena, row, O_PACKS), cell_name(w->arena, row, O_PRICE));
    page_text(page, row, O_CLASS, LOOK_TEXT, class_name(line->class));
    page_text(page, row, O_CODE, LOOK_TEXT, line->cost_code);
}

static bool taxable(const struct order_line *line)
{
    return line->class == CLASS_MATERIALS || line->class == CLASS_RENTALS || line->class == CLASS_ALLOWANCES;
}

static int add_lines(struct workbook *w, int row, const struct supplier *supplier, bool taxed)
{
    for (size_t i = 0; i < w->order->count; i++) {
        const struct order_line *line = &w->order->line[i];
        bool here = supplier ? line->price && !line->shop && name_same(line->price->supplier, supplier->name)
                             : line->shop != NULL;
        if (here && (!supplier || taxable(line) == taxed))
            add_line(w, row++, i);
    }
    return row;
}

/* A total row of a supplier; the formula is a SUM or comes from Prices. */
static void band(struct workbook *w, int row, const char *supplier, const char *what)
{
    page_band(w->buying, row, O_COLUMNS, LOOK_SUM_TEXT, supplier);
    page_text(w->buying, row, O_WHAT, LOOK_SUM_TEXT, what);
}

static const char *column_range(struct arena *a, int first, int last, int column)
{
    return arena_printf(a, "%s:%s", cell_name(a, first, column), cell_name(a, last, column));
}

static const char *tax_rate_cell(const struct workbook *w, const struct supplier *supplier)
{
    return supplier->has_tax ? input_cell(w, INPUT_SUPPLIER_TAX, supplier, 0) : input_cell(w, INPUT_TAX, NULL, 0);
}

static int add_supplier(struct workbook *w, int row, size_t index)
{
    struct arena *a = w->arena;
    const struct supplier_total *total = &w->order->supplier[index];
    const char *name = total->supplier->name;
    int first = row, untaxed = add_lines(w, row, total->supplier, true);
    row = add_lines(w, untaxed, total->supplier, false);
    int goods = row++;
    band(w, goods, name, "goods");
    page_formula(w->buying, goods, O_TOTAL, LOOK_SUM_MONEY, money_dollars(total->goods), "=ROUND(SUM(%s),2)",
                 column_range(a, first, goods - 1, O_TOTAL));
    if (total->delivery > 0) {
        w->delivery_row[index] = row;
        band(w, row, name, "delivery");
        page_formula(w->buying, row, O_TOTAL, LOOK_SUM_MONEY, money_dollars(total->delivery), "=IF(%s>0,%s,0)",
                     cell_name(a, goods, O_TOTAL), input_cell(w, INPUT_DELIVERY, total->supplier, 0));
        row++;
    }
    if (total->tax > 0) {
        w->tax_row[index] = row;
        band(w, row, name, "sales tax on goods");
        page_formula(w->buying, row, O_TOTAL, LOOK_SUM_MONEY, money_dollars(total->tax), "=ROUND(SUM(%s)*%s,2)",
                     column_range(a, first, untaxed - 1, O_TOTAL), tax_rate_cell(w, total->supplier));
        row++;
    }
    band(w, row, name, "invoice to expect");
    page_formula(w->buying, row, O_TOTAL, LOOK_SUM_MONEY, money_dollars(total->goods + total->delivery + total->tax),
                 "=ROUND(SUM(%s),2)", column_range(a, goods, row - 1, O_TOTAL));
    return row + 1;
}

void build_order(struct workbook *w)
{
    struct page *page = w->buying;
    const struct order *order = w->order;
    page_widths(page, HEADS, O_COLUMNS);
    page_title(w, page, w->budget ? "Materials (BUDGET: do not order from it)" : "Order");
    page_text(page, 2, 0, LOOK_UNDER_TITLE,
              "To buy = net with the loss beside it, in whole packs; pieces and pounds of nails and screws are net."
              "  Prices come from sheet Prices; sticks from sheet Cuts.");
    page_heads(page, HEAD_ROW, HEADS, O_COLUMNS);
    w->order_row = arena_array(w->arena, order->count, sizeof *w->order_row);
    w->delivery_row = arena_array(w->arena, order->supplier_count, sizeof *w->delivery_row);
    w->tax_row = arena_array(w->arena, order->supplier_count, sizeof *w->tax_row);
    int row = FIRST_ROW;
    for (size_t i = 0; i < order->supplier_count; i++)
        row = add_supplier(w, row, i);
    row = add_lines(w, row, NULL, false);
    page->frozen = FIRST_ROW;
    page->filter_first = HEAD_ROW;
    page->filter_last = row - 1;
}
