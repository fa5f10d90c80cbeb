/* Prices: every number that a person decides, once.  All inputs are in one column, beside what they were when the plan
 * was made. */

#include "workbook.h"

enum { P_KIND, P_WHAT, P_FROM, P_LENGTH, P_UNIT, P_PACK, P_VALUE, P_WAS, P_DATE, P_CODE, P_NOTE, P_COLUMNS };
_Static_assert((int)P_PACK == (int)PRICES_PACK && (int)P_VALUE == (int)PRICES_VALUE && (int)P_WAS == (int)PRICES_WAS,
               "columns that others use");

static const struct column_head HEADS[P_COLUMNS] = {
    {"Kind", 15, false},           {"What", 34, false},       {"Who sells", 18, false},
    {"Length", 9, false},          {"Unit", 10, false},       {"Pack", 7, true},
    {"Value", 12, true},           {"At this run", 12, true}, {"Price date", 11, false},
    {"Your cost code", 11, false}, {"Note", 34, false},
};

/* One row before it is written. */
struct row {
    const char *kind, *what, *from, *length, *unit, *date, *code, *note;
    decimal_t pack; /* 0: none */
    double value;
    enum look look, was;
};

static const struct input *find_input(const struct workbook *w, enum input_kind kind, const void *of, size_t index)
{
    for (size_t i = 0; i < w->input_count; i++) {
        const struct input *input = &w->input[i];
        if (input->kind == kind && input->of == of && input->index == index)
            return input;
    }
    return NULL;
}

bool input_exists(const struct workbook *w, enum input_kind kind, const void *of, size_t index)
{
    return find_input(w, kind, of, index) != NULL;
}

const char *input_column(const struct workbook *w, enum input_kind kind, const void *of, size_t index, int column)
{
    const struct input *input = find_input(w, kind, of, index);
    if (!input) {
        book_fault(w->book, "a price that is not on the sheet", w->prices, 0, (int)kind);
        return book_address(w->prices, 0, column);
    }
    return book_address(w->prices, input->row, column);
}

const char *input_cell(const struct workbook *w, enum input_kind kind, const void *of, size_t index)
{
    return input_column(w, kind, of, index, PRICES_VALUE);
}

/* Adds the row; formula NULL: an input, else what it comes from. */
static void add_row(struct workbook *w, enum input_kind kind, const void *of, size_t index, const struct row *row,
                    const char *formula)
{
    if (find_input(w, kind, of, index))
        return;
    struct page *page = w->prices;
    int at = w->input_count ? w->inputs_last + 1 : FIRST_ROW;
    w->input = arena_more(w->arena, w->input, w->input_count, &w->input_capacity, sizeof *w->input);
    w->input[w->input_count++] = (struct input){.kind = kind, .of = of, .index = index, .row = at};
    w->inputs_first = FIRST_ROW;
    w->inputs_last = at;
    const char *text[] = {row->kind, row->what, row->from, row->length, row->unit};
    for (int i = 0; i < 5; i++)
        page_text(page, at, i, i == P_WHAT ? LOOK_WRAP : LOOK_TEXT, text[i]);
    if (row->pack)
        page_number(page, at, P_PACK, LOOK_NUMBER, decimal_value(row->pack));
    else
        page_text(page, at, P_PACK, LOOK_TEXT, "");
    if (formula)
        page_formula(page, at, P_VALUE, row->look, row->value, "%s", formula);
    else
        page_number(page, at, P_VALUE, row->look, row->value);
    page_number(page, at, P_WAS, row->was, row->value);
    page_text(page, at, P_DATE, LOOK_TEXT, row->date);
    page_text(page, at, P_CODE, LOOK_TEXT, row->code);
    page_text(page, at, P_NOTE, LOOK_WRAP, row->note);
}

static struct row percent_row(const char *kind, const char *what, percent_t value)
{
    return (struct row){.kind = kind,
                        .what = what,
                        .unit = "percent",
                        .value = percent_fraction(value),
                        .look = LOOK_IN_PERCENT,
                        .was = LOOK_WAS_PERCENT};
}

static struct row money_row(const char *kind, const char *what, money_t value, const char *unit)
{
    return (struct row){.kind = kind,
                        .what = what,
                        .unit = unit,
                        .value = money_dollars(value),
                        .look = LOOK_IN_MONEY,
                        .was = LOOK_WAS_MONEY};
}

/* Overhead, contingency and profit are alike: a general rate, and rates of classes. */
struct markup {
    enum input_kind kind;
    const char *word;
    const struct percent_value *general, *on;
};

static void add_general(struct workbook *w, const struct markup *markup)
{
    bool used = false;
    for (size_t i = 0; i < w->estimate->class_count; i++) {
        const struct class_total *total = &w->estimate->class_[i];
        used = used || (!total->own && !markup->on[total->class].at);
    }
    if (!used)
        return;
    struct row row = percent_row("markup", markup->word, markup->general->percent);
    add_row(w, markup->kind, NULL, 0, &row, NULL);
    book_name(w->book, markup->word, input_cell(w, markup->kind, NULL, 0));
}

static void add_class_rates(struct workbook *w, const struct markup *markup)
{
    for (size_t i = 0; i < w->estimate->class_count; i++) {
        enum cost_class class = w->estimate->class_[i].class;
        if (w->estimate->class_[i].own || !markup->on[class].at)
            continue;
        const char *what = arena_printf(w->arena, "%s on %s", markup->word, class_name(class));
        struct row row = percent_row("markup", what, markup->on[class].percent);
        add_row(w, markup->kind, NULL, (size_t) class, &row, NULL);
        const char *name = arena_printf(w->arena, "%s_on_%s", markup->word, class_name(class));
        book_name(w->book, name, input_cell(w, markup->kind, NULL, (size_t) class));
    }
}

static void add_markups(struct workbook *w)
{
    const struct bid *bid = &w->job->bid;
    const struct markup markups[] = {
        {INPUT_OVERHEAD, "overhead", &bid->overhead, bid->overhead_on},
        {INPUT_CONTINGENCY, "contingency", &bid->contingency, bid->contingency_on},
        {INPUT_PROFIT, "profit", &bid->profit, bid->profit_on},
    };
    for (size_t i = 0; i < sizeof markups / sizeof *markups; i++) {
        add_general(w, &markups[i]);
        add_class_rates(w, &markups[i]);
    }
    for (size_t i = 0; i < w->estimate->line_count; i++) {
        const struct estimate_line *line = &w->estimate->line[i];
        if (!line->has_own_markup)
            continue;
        struct row row =
            percent_row("markup", arena_printf(w->arena, "own markup on %s", line->what), line->own_markup);
        add_row(w, INPUT_OWN_MARKUP, NULL, i, &row, NULL);
    }
}

/* Does the bid's general tax rate move anything? */
static bool general_tax_used(const struct workbook *w)
{
    if (w->estimate->tax_mode == TAX_ON_PRICE)
        return true;
    for (size_t i = 0; i < w->order->supplier_count; i++)
        if (!w->order->supplier[i].supplier->has_tax && w->order->supplier[i].tax > 0)
            return true;
    return false;
}

static bool loss_used(const struct workbook *w)
{
    for (size_t i = 0; i < w->order->count; i++)
        if (w->order->line[i].loss > 0)
            return true;
    return false;
}

static void add_bid_rules(struct workbook *w)
{
    const struct bid *bid = &w->job->bid;
    if (general_tax_used(w)) {
        struct row row = percent_row("tax", "sales tax", bid->tax.percent);
        add_row(w, INPUT_TAX, NULL, 0, &row, NULL);
        book_name(w->book, "sales_tax", input_cell(w, INPUT_TAX, NULL, 0));
    }
    if (loss_used(w)) {
        struct row row = percent_row("fastener loss", "loss of nails and screws, bought beyond the count",
                                     bid->fastener_loss.percent);
        add_row(w, INPUT_LOSS, NULL, 0, &row, NULL);
        book_name(w->book, "fastener_loss", input_cell(w, INPUT_LOSS, NULL, 0));
    }
    struct row row = money_row("rounding", "price rounded to the nearest", bid->round_price_to.money, "dollars");
    row.note = bid->round_price_to.money ? "" : "0: not rounded";
    add_row(w, INPUT_ROUND_TO, NULL, 0, &row, NULL);
    book_name(w->book, "round_price_to", input_cell(w, INPUT_ROUND_TO, NULL, 0));
}

static void add_trade(struct workbook *w, const struct trade *trade, money_t rate)
{
    if (input_exists(w, INPUT_WAGE, trade, 0))
        return;
    struct row row = money_row("wage", trade->trade, trade->wage, "hour");
    add_row(w, INPUT_WAGE, trade, 0, &row, NULL);
    row = percent_row("burden", trade->trade, trade->burden);
    row.note = "taxes, insurance and benefits, on the wage";
    add_row(w, INPUT_BURDEN, trade, 0, &row, NULL);
    row = money_row("labor rate", trade->trade, rate, "hour");
    row.look = LOOK_MONEY;
    row.note = "wage with burden";
    const char *formula = arena_printf(w->arena, "=ROUND(%s*(1+%s),2)", input_cell(w, INPUT_WAGE, trade, 0),
                                       input_cell(w, INPUT_BURDEN, trade, 0));
    add_row(w, INPUT_RATE, trade, 0, &row, formula);
}

static void add_suppliers(struct workbook *w)
{
    for (size_t i = 0; i < w->order->supplier_count; i++) {
        const struct supplier_total *total = &w->order->supplier[i];
        const struct supplier *supplier = total->supplier;
        if (total->delivery > 0) {
            struct row row = money_row("delivery", "delivery", supplier->delivery, "trip");
            row.from = supplier->name;
            add_row(w, INPUT_DELIVERY, supplier, 0, &row, NULL);
        }
        if (total->tax > 0 && supplier->has_tax) {
            struct row row = percent_row("tax", "sales tax", supplier->tax);
            row.from = supplier->name;
            add_row(w, INPUT_SUPPLIER_TAX, supplier, 0, &row, NULL);
        }
    }
}

static void add_own_prices(struct workbook *w)
{
    for (size_t i = 0; i < w->estimate->line_count; i++) {
        const struct estimate_line *line = &w->estimate->line[i];
        if (line->from != FROM_JOB)
            continue;
        struct row row = money_row(class_name(line->class), line->what, line->price, or_dash(line->unit));
        row.code = line->cost_code;
        row.note = "price of the job file";
        add_row(w, INPUT_OWN_PRICE, NULL, i, &row, NULL);
    }
}

/* What the item is, in words, and the note of its row. */
static const char *noted(struct arena *arena, const struct price *price)
{
    const char *what = price->what ? price->what : "", *note = price->note ? price->note : "";
    return arena_printf(arena, "%s%s%s", what, *what && *note ? "; " : "", note);
}

static void add_price(struct workbook *w, const struct order_line *line)
{
    const struct price *price = line->price;
    const char *unit = price->increment ? "foot" : or_dash(price->unit);
    struct row row =
        money_row("material", arena_printf(w->arena, "%s: %s", price->item, line->what), price->price, unit);
    row.what = price->item;
    row.from = price->supplier;
    row.length = stock_length(w->arena, price->length);
    row.pack = price->increment ? 0 : price->pack;
    row.date = date_text(w->arena, price->date);
    row.code = price->cost_code;
    row.note = noted(w->arena, price);
    add_row(w, INPUT_PRICE, price, 0, &row, NULL);
    if (!line->cut_charge)
        return;
    row = money_row("cut charge", price->item, price->cut_charge, "cut");
    row.from = price->supplier;
    row.date = date_text(w->arena, price->date);
    add_row(w, INPUT_CUT_CHARGE, price, 0, &row, NULL);
}

static void add_order_prices(struct workbook *w)
{
    for (size_t i = 0; i < w->order->count; i++) {
        const struct order_line *line = &w->order->line[i];
        if (!line->shop) {
            add_price(w, line);
            continue;
        }
        struct row row = money_row("shop stock", line->item, line->shop->book_value, "each");
        row.from = "own shop";
        row.length = stock_length(w->arena, line->shop->length);
        row.note = "book value";
        add_row(w, INPUT_SHOP, line->shop, 0, &row, NULL);
    }
}

void build_prices(struct workbook *w)
{
    struct page *page = w->prices;
    page_widths(page, HEADS, P_COLUMNS);
    page_title(w, page, "Prices and rates");
    page_text(page, 2, 0, LOOK_UNDER_TITLE,
              "Change the warm cells of column Value: every total of the workbook follows.");
    page_heads(page, HEAD_ROW, HEADS, P_COLUMNS);
    add_markups(w);
    add_bid_rules(w);
    for (size_t i = 0; i < w->estimate->labor_count; i++)
        add_trade(w, w->estimate->labor[i].trade, w->estimate->labor[i].rate);
    add_suppliers(w);
    add_own_prices(w);
    add_order_prices(w);
    page->frozen = FIRST_ROW;
    page->filter_first = HEAD_ROW;
    page->filter_last = w->inputs_last;
}
