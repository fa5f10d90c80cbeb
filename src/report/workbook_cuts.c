/* Cuts: which sticks to buy and how to cut them; and whether prices changed since that was decided. */
#include "workbook.h"

#include "cutoffs.h"

#include "sawbill/text.h"

enum { C_MEMBER, C_STICKS, C_STOCK, C_FEET, C_FROM, C_CUT, C_LEFT, C_COST, C_NOW, C_COLUMNS };

static const struct column_head HEADS[C_COLUMNS] = {
    {"Member", 20, false},
    {"Sticks", 8, true},
    {"Stock length", 12, false},
    {"Feet", 8, true},
    {"From", 18, false},
    {"Each cut into", 74, false},
    {"Cutoff of each", 12, false},
    {"Cost", 12, true},
    {"At today's prices", 16, false},
};

/* "2 x 7' 2\" (post ply, post P1); 9-1/4\" (block K1)": pieces that follow each other and are alike, together. */
static const char *pieces_text(struct arena *arena, const struct cut_stick *stick)
{
    struct buffer text = {.arena = arena};
    size_t next;
    for (size_t i = 0; i < stick->part_count; i = next) {
        for (next = i + 1; next < stick->part_count && cut_parts_alike(&stick->part[i], &stick->part[next]);)
            next++;
        buffer_printf(&text, "%s", i ? "; " : "");
        if (next > i + 1)
            buffer_printf(&text, "%zu x ", next - i);
        buffer_printf(&text, "%s (%s)", length_tape(arena, stick->part[i].length), stick->part[i].label);
    }
    return buffer_text(&text);
}

/* What the plan counts for a stick: its part of a pack, or feet and a cut; here for all the sticks alike. */
static void add_cost(struct workbook *w, int row, const struct cut_stock *stock, int count)
{
    struct page *page = w->sticks;
    struct arena *a = w->arena;
    double cost = money_dollars(stock->cost * count);
    const char *sticks = cell_name(a, row, C_STICKS);
    if (stock->shop) {
        page_formula(page, row, C_COST, LOOK_MONEY, cost, "=%s*%s", sticks, input_cell(w, INPUT_SHOP, stock->shop, 0));
        return;
    }
    const char *price = input_cell(w, INPUT_PRICE, stock->price, 0);
    if (!stock->price->increment) {
        page_formula(page, row, C_COST, LOOK_MONEY, cost, "=%s*ROUND(%s/%s,4)", sticks, price,
                     input_column(w, INPUT_PRICE, stock->price, 0, PRICES_PACK));
        return;
    }
    const char *feet = cell_name(a, row, C_FEET);
    if (stock->price->cut_charge)
        page_formula(page, row, C_COST, LOOK_MONEY, cost, "=%s*(ROUND(%s*%s,4)+%s)", sticks, price, feet,
                     input_cell(w, INPUT_CUT_CHARGE, stock->price, 0));
    else
        page_formula(page, row, C_COST, LOOK_MONEY, cost, "=%s*ROUND(%s*%s,4)", sticks, price, feet);
}

static void add_stick(struct workbook *w, int row, const struct cut_plan *plan, size_t index, int count)
{
    struct page *page = w->sticks;
    const struct cut_stick *stick = &plan->stick[index];
    const struct cut_stock *stock = stick->stock;
    page_text(page, row, C_MEMBER, LOOK_TEXT, plan->problem->member);
    page_number(page, row, C_STICKS, LOOK_NUMBER, count);
    page_text(page, row, C_STOCK, LOOK_TEXT, stock_length(w->arena, cut_sold_length(stock)));
    page_number(page, row, C_FEET, LOOK_NUMBER, length_feet(cut_sold_length(stock)));
    page_text(page, row, C_FROM, LOOK_TEXT, stock->shop ? "own shop" : or_dash(stock->price->supplier));
    page_text(page, row, C_CUT, LOOK_WRAP, pieces_text(w->arena, stick));
    page_text(page, row, C_LEFT, LOOK_TEXT, stick->left ? length_tape(w->arena, stick->left) : "none");
    add_cost(w, row, stock, count);
    page_text(page, row, C_NOW, LOOK_TEXT, "");
}

static bool seen_before(const struct cut_plan *plan, size_t index)
{
    const struct cut_stock *stock = plan->stick[index].stock;
    for (size_t i = 0; i < index; i++)
        if (plan->stick[i].stock->price == stock->price && plan->stick[i].stock->shop == stock->shop)
            return true;
    return false;
}

static void add_comparison(struct workbook *w, struct buffer *sum, enum input_kind kind, const void *of)
{
    buffer_printf(sum, "%s(%s<>%s)*1", sum->length ? "+" : "", input_cell(w, kind, of, 0),
                  input_column(w, kind, of, 0, PRICES_WAS));
}

/* The prices of the plan's own sticks against those that it was made with. */
static const char *own_changed(struct workbook *w, const struct cut_plan *plan)
{
    struct buffer sum = {.arena = w->arena};
    for (size_t i = 0; i < plan->stick_count; i++) {
        const struct cut_stock *stock = plan->stick[i].stock;
        if (seen_before(plan, i))
            continue;
        if (stock->shop) {
            add_comparison(w, &sum, INPUT_SHOP, stock->shop);
            continue;
        }
        add_comparison(w, &sum, INPUT_PRICE, stock->price);
        if (stock->price->increment && stock->price->cut_charge)
            add_comparison(w, &sum, INPUT_CUT_CHARGE, stock->price);
    }
    return buffer_text(&sum);
}

/* Inputs that decide from whom to buy: with them the cheapest set of suppliers may change, and their lumber with it. */
static bool is_of_buying(enum input_kind kind)
{
    return kind == INPUT_PRICE || kind == INPUT_CUT_CHARGE || kind == INPUT_SHOP || kind == INPUT_DELIVERY ||
           kind == INPUT_SUPPLIER_TAX || kind == INPUT_TAX;
}

/* How many of them changed, as a formula's part: a SUMPRODUCT for each run of rows. */
static const char *buying_changed(struct workbook *w)
{
    struct buffer sum = {.arena = w->arena};
    for (size_t i = 0, last; i < w->input_count; i = last + 1) {
        last = i;
        if (!is_of_buying(w->input[i].kind))
            continue;
        while (last + 1 < w->input_count && is_of_buying(w->input[last + 1].kind))
            last++;
        int from = w->input[i].row, to = w->input[last].row;
        buffer_printf(&sum, "%sSUMPRODUCT((%s<>%s)*1)", sum.length ? "+" : "",
                      book_range(w->prices, from, PRICES_VALUE, to, PRICES_VALUE),
                      book_range(w->prices, from, PRICES_WAS, to, PRICES_WAS));
    }
    return buffer_text(&sum);
}

/* "net 116 ft $53.95, kerf .. ": at the prices of the run. */
static const char *shares_text(struct arena *a, const struct cut_plan *plan)
{
    static const char *const name[CUT_SHARES] = {"net", "kerf", "end trim", "cutoffs to keep", "waste"};
    const struct cut_shares shares = cut_shares(plan);
    struct buffer text = {.arena = a};
    buffer_printf(&text, "bought %s", length_tape(a, plan->bought));
    for (int i = 0; i < CUT_SHARES; i++)
        buffer_printf(&text, "%s %s %s (%s)", i ? "," : ":", name[i], length_tape(a, shares.length[i]),
                      money_show(a, money_round(shares.money[i])));
    return buffer_text(&text);
}

static const char *others_text(struct arena *a, const struct cut_others *others)
{
    struct buffer text = {.arena = a};
    if (others->has_first_fit)
        buffer_printf(&text, "first fit, longest piece first, would have cost %s at the best, out of %s",
                      money_show(a, others->first_fit), length_tape(a, cut_sold_length(others->first_fit_stock)));
    for (size_t i = 0, shown = 0; i < others->single_count; i++) {
        const struct cut_single *single = &others->single[i];
        if (!single->possible)
            continue;
        const char *before = shown++ ? ", " : text.length ? "; one length alone: " : "one length alone: ";
        buffer_printf(&text, "%s%s %s%s", before, length_tape(a, cut_sold_length(single->stock)),
                      money_show(a, single->cost), single->proved ? "" : " or less");
    }
    return buffer_text(&text);
}

static const char *summary(struct arena *a, const struct cut_plan *plan)
{
    struct buffer text = {.arena = a};
    buffer_printf(&text, "%s. At the prices of this run no plan can cost less than %s; %s. Cutoffs to keep: %s",
                  verdict_text(a, plan), money_show(a, plan->bound), shares_text(a, plan), cutoffs_text(a, plan));
    const char *others = plan->others ? others_text(a, plan->others) : "";
    if (*others)
        buffer_printf(&text, ". Else: %s", others);
    return buffer_text(&text);
}

static int add_plan(struct workbook *w, int row, const struct cut_plan *plan)
{
    struct page *page = w->sticks;
    struct arena *a = w->arena;
    int first = row;
    for (size_t i = 0; i < plan->stick_count; i++) {
        int count = cut_count_alike(plan, i);
        if (count)
            add_stick(w, row++, plan, i, count);
    }
    page_band(page, row, C_COLUMNS, LOOK_SUM_TEXT, plan->problem->member);
    page_text(page, row, C_CUT, LOOK_SUM_WRAP, summary(a, plan));
    if (!plan->stick_count)
        return row + 1;
    page_formula(page, row, C_COST, LOOK_SUM_MONEY, money_dollars(plan->cost), "=SUM(%s:%s)",
                 cell_name(a, first, C_COST), cell_name(a, row - 1, C_COST));
    bool choice = w->report->catalog && w->report->catalog->supplier_count > 1;
    const char *changed = choice ? buying_changed(w) : own_changed(w, plan);
    page_formula_text(page, row, C_NOW, LOOK_SUM_TEXT, "as planned", "=IF(%s>0,\"run again\",\"as planned\")", changed);
    return row + 1;
}

void build_cuts(struct workbook *w)
{
    struct page *page = w->sticks;
    page_widths(page, HEADS, C_COLUMNS);
    page_title(w, page, w->budget ? "Cuts (BUDGET: do not cut by it)" : "Cuts");
    page_text(
        page, 2, 0, LOOK_UNDER_TITLE,
        "A ply is one piece between supports. Longest piece first, trim off the worse end. Where a change could alter "
        "the plan, the sheet says 'run again'.");
    page_heads(page, HEAD_ROW, HEADS, C_COLUMNS);
    int row = FIRST_ROW;
    for (size_t i = 0; i < w->run->plan_count; i++)
        row = add_plan(w, row, w->run->plans[i]);
    page->frozen = FIRST_ROW;
    page->filter_first = HEAD_ROW;
    page->filter_last = row - 1;
}
