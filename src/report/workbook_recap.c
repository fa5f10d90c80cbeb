/* Recap: the price first, then how it comes about, class by class, in the order of the bid's method. */
#include "workbook.h"

#include "sawbill/text.h"

enum { R_CLASS, R_DIRECT, R_OVER_RATE, R_OVER, R_CONT_RATE, R_CONT, R_PROFIT_RATE, R_PROFIT, R_PRICE, R_COLUMNS };

static const struct column_head HEADS[R_COLUMNS] = {
    {"Class", 34, false},   {"Direct cost", 15, true},   {"Overhead %", 13, true},
    {"Overhead", 14, true}, {"Contingency %", 12, true}, {"Contingency", 14, true},
    {"Profit %", 10, true}, {"Profit", 14, true},        {"Price", 15, true},
};

/* Where the totals stand, for the lines below them. */
struct recap {
    struct workbook *w;
    struct page *page;
    int row, first, total, before_tax, tax, rounding, price, tax_rows;
};

static const char *at(const struct recap *r, int row, int column)
{
    return cell_name(r->w->arena, row, column);
}

static const char *rate_cell(const struct workbook *w, enum input_kind kind, enum cost_class class)
{
    bool own = input_exists(w, kind, NULL, (size_t) class);
    return input_cell(w, kind, NULL, own ? (size_t) class : 0);
}

static void add_rates(struct recap *r, int row, const struct class_total *total)
{
    const struct workbook *w = r->w;
    page_formula(r->page, row, R_OVER_RATE, LOOK_PERCENT, percent_fraction(total->overhead_rate), "=%s",
                 rate_cell(w, INPUT_OVERHEAD, total->class));
    page_formula(r->page, row, R_CONT_RATE, LOOK_PERCENT, percent_fraction(total->contingency_rate), "=%s",
                 rate_cell(w, INPUT_CONTINGENCY, total->class));
    page_formula(r->page, row, R_PROFIT_RATE, LOOK_PERCENT, percent_fraction(total->profit_rate), "=%s",
                 rate_cell(w, INPUT_PROFIT, total->class));
}

static void by_adding(struct recap *r, int row, const struct class_total *total, bool compound)
{
    const char *direct = at(r, row, R_DIRECT), *over = at(r, row, R_OVER), *cont = at(r, row, R_CONT);
    const char *profit = at(r, row, R_PROFIT);
    page_formula(r->page, row, R_OVER, LOOK_MONEY, money_dollars(total->overhead), "=ROUND(%s*%s,2)", direct,
                 at(r, row, R_OVER_RATE));
    if (compound) {
        page_formula(r->page, row, R_CONT, LOOK_MONEY, money_dollars(total->contingency), "=ROUND((%s+%s)*%s,2)",
                     direct, over, at(r, row, R_CONT_RATE));
        page_formula(r->page, row, R_PROFIT, LOOK_MONEY, money_dollars(total->profit), "=ROUND((%s+%s+%s)*%s,2)",
                     direct, over, cont, at(r, row, R_PROFIT_RATE));
    } else {
        page_formula(r->page, row, R_CONT, LOOK_MONEY, money_dollars(total->contingency), "=ROUND(%s*%s,2)", direct,
                     at(r, row, R_CONT_RATE));
        page_formula(r->page, row, R_PROFIT, LOOK_MONEY, money_dollars(total->profit), "=ROUND(%s*%s,2)", direct,
                     at(r, row, R_PROFIT_RATE));
    }
    page_formula(r->page, row, R_PRICE, LOOK_MONEY, money_dollars(total->price), "=ROUND(%s+%s+%s+%s,2)", direct, over,
                 cont, profit);
}

static void by_margin(struct recap *r, int row, const struct class_total *total)
{
    const char *direct = at(r, row, R_DIRECT), *over = at(r, row, R_OVER), *cont = at(r, row, R_CONT);
    const char *price = at(r, row, R_PRICE);
    page_formula(r->page, row, R_PRICE, LOOK_MONEY, money_dollars(total->price), "=ROUND(%s/(1-(%s+%s+%s)),2)", direct,
                 at(r, row, R_OVER_RATE), at(r, row, R_CONT_RATE), at(r, row, R_PROFIT_RATE));
    page_formula(r->page, row, R_OVER, LOOK_MONEY, money_dollars(total->overhead), "=ROUND(%s*%s,2)", price,
                 at(r, row, R_OVER_RATE));
    page_formula(r->page, row, R_CONT, LOOK_MONEY, money_dollars(total->contingency), "=ROUND(%s*%s,2)", price,
                 at(r, row, R_CONT_RATE));
    page_formula(r->page, row, R_PROFIT, LOOK_MONEY, money_dollars(total->profit), "=ROUND(%s-%s-%s-%s,2)", price,
                 direct, over, cont);
}

static void add_class(struct recap *r, int row, const struct class_total *total)
{
    const struct workbook *w = r->w;
    const char *sums = book_range(w->bill, w->bill_first, BILL_TOTAL, w->bill_last, BILL_TOTAL);
    const char *classes = book_range(w->bill, w->bill_first, BILL_CLASS, w->bill_last, BILL_CLASS);
    const char *marked = book_range(w->bill, w->bill_first, BILL_MARKED, w->bill_last, BILL_MARKED);
    page_text(r->page, row, R_CLASS, LOOK_TEXT, class_name(total->class));
    page_formula(r->page, row, R_DIRECT, LOOK_MONEY, money_dollars(total->direct),
                 "=ROUND(SUMIFS(%s,%s,\"%s\",%s,\"by class\"),2)", sums, classes, class_name(total->class), marked);
    add_rates(r, row, total);
    if (w->estimate->method == METHOD_MARGIN)
        by_margin(r, row, total);
    else
        by_adding(r, row, total, w->estimate->method != METHOD_ADD);
}

/* A line with a markup of its own: it stands in the overhead column. */
static void add_own(struct recap *r, int row, const struct class_total *total)
{
    const struct workbook *w = r->w;
    const struct estimate_line *line = &w->estimate->line[total->line];
    page_band(r->page, row, R_COLUMNS, LOOK_TEXT, "");
    page_text(r->page, row, R_CLASS, LOOK_WRAP, arena_printf(w->arena, "%s (own markup)", line->what));
    page_formula(r->page, row, R_DIRECT, LOOK_MONEY, money_dollars(total->direct), "=%s",
                 book_address(w->bill, w->bill_row[total->line], BILL_TOTAL));
    page_formula(r->page, row, R_OVER_RATE, LOOK_PERCENT, percent_fraction(total->overhead_rate), "=%s",
                 input_cell(w, INPUT_OWN_MARKUP, NULL, total->line));
    page_formula(r->page, row, R_OVER, LOOK_MONEY, money_dollars(total->overhead), "=ROUND(%s*%s,2)",
                 at(r, row, R_DIRECT), at(r, row, R_OVER_RATE));
    page_formula(r->page, row, R_PRICE, LOOK_MONEY, money_dollars(total->price), "=ROUND(%s+%s,2)",
                 at(r, row, R_DIRECT), at(r, row, R_OVER));
}

static void add_sum(struct recap *r, int column, money_t sum)
{
    page_formula(r->page, r->total, column, LOOK_SUM_MONEY, money_dollars(sum), "=ROUND(SUM(%s:%s),2)",
                 at(r, r->first, column), at(r, r->total - 1, column));
}

static const char *method_text(enum method method)
{
    switch (method) {
    case METHOD_ADD:
        return "Method 'add': overhead, contingency and profit are each a share of direct cost.";
    case METHOD_MARGIN:
        return "Method 'margin': overhead, contingency and profit are shares of the price.";
    default:
        return "Method 'compound': overhead on direct cost, contingency on both, profit on all three.";
    }
}

static void add_classes(struct recap *r)
{
    const struct estimate *estimate = r->w->estimate;
    page_band(r->page, r->row++, R_COLUMNS, LOOK_SECTION, "From cost to price");
    page_heads(r->page, r->row++, HEADS, R_COLUMNS);
    r->first = r->row;
    for (size_t i = 0; i < estimate->class_count; i++) {
        const struct class_total *total = &estimate->class_[i];
        if (total->own)
            add_own(r, r->row++, total);
        else
            add_class(r, r->row++, total);
    }
    r->total = r->row++;
    page_band(r->page, r->total, R_COLUMNS, LOOK_SUM_TEXT, "All classes");
    add_sum(r, R_DIRECT, estimate->direct);
    add_sum(r, R_OVER, estimate->overhead);
    add_sum(r, R_CONT, estimate->contingency);
    add_sum(r, R_PROFIT, estimate->profit);
    add_sum(r, R_PRICE, estimate->before_tax);
    page_text(r->page, r->row++, 0, LOOK_UNDER_TITLE, method_text(estimate->method));
    r->row++;
}

static length_t wall_out(const struct job *job)
{
    length_t sum = 0;
    for (size_t i = 0; i < job->wall_count; i++)
        if (job->walls[i].status.choice == WALL_COMES_OUT)
            sum += wall_length(&job->walls[i]);
    return sum;
}

/* A label and a formula in the second column. */
static int label(struct recap *r, enum look look, const char *text)
{
    page_text(r->page, r->row, 0, look, text);
    return r->row++;
}

static void add_tax(struct recap *r)
{
    const struct workbook *w = r->w;
    const struct estimate *estimate = w->estimate;
    double tax = money_dollars(estimate->tax);
    if (estimate->tax_mode == TAX_ON_PRICE) {
        r->tax = label(r, LOOK_TEXT, "Sales tax on the price");
        page_formula(r->page, r->tax, 1, LOOK_MONEY, tax, "=ROUND(%s*%s,2)", at(r, r->before_tax, 1),
                     input_cell(w, INPUT_TAX, NULL, 0));
        return;
    }
    r->tax = label(r, LOOK_TEXT, "Sales tax, shown");
    if (estimate->tax_mode == TAX_IN_COST || !estimate->tax) {
        page_text(r->page, r->tax, 1, LOOK_TEXT, estimate->tax_mode == TAX_IN_COST ? "in the direct cost" : "none");
        return;
    }
    struct buffer sum = {.arena = w->arena};
    for (size_t i = 0; i < w->order->supplier_count; i++)
        if (w->tax_row[i])
            buffer_printf(&sum, "%s%s", sum.length ? "+" : "", book_address(w->buying, w->tax_row[i], ORDER_TOTAL));
    page_formula(r->page, r->tax, 1, LOOK_MONEY, tax, "=ROUND(%s,2)", buffer_text(&sum));
}

static void add_price(struct recap *r)
{
    const struct workbook *w = r->w;
    const struct estimate *estimate = w->estimate;
    page_band(r->page, r->row++, R_COLUMNS, LOOK_SECTION, "The price");
    r->before_tax = label(r, LOOK_TEXT, "Classes together");
    page_formula(r->page, r->before_tax, 1, LOOK_MONEY, money_dollars(estimate->before_tax), "=%s",
                 at(r, r->total, R_PRICE));
    add_tax(r);
    /* SUM takes the tax where it is a number and passes over it where it is a word. */
    const char *exact = arena_printf(w->arena, "SUM(%s:%s)", at(r, r->before_tax, 1), at(r, r->tax, 1));
    const char *step = input_cell(w, INPUT_ROUND_TO, NULL, 0);
    r->rounding = label(r, LOOK_TEXT, "Rounding");
    page_formula(r->page, r->rounding, 1, LOOK_MONEY, money_dollars(estimate->rounding),
                 "=IF(%s>0,ROUND(ROUND(%s/%s,0)*%s-%s,2),0)", step, exact, step, step, exact);
    r->price = label(r, LOOK_SUM_TEXT, "Price");
    page_formula(r->page, r->price, 1, LOOK_SUM_MONEY, money_dollars(estimate->price), "=ROUND(SUM(%s:%s),2)",
                 at(r, r->before_tax, 1), at(r, r->rounding, 1));
    r->row++;
}

static void add_margins(struct recap *r)
{
    const struct estimate *estimate = r->w->estimate;
    const char *price = at(r, r->price, 1), *tax = at(r, r->tax, 1), *direct = at(r, r->total, R_DIRECT);
    const char *sold = arena_printf(r->w->arena, "(%s-SUM(%s))", price, tax);
    page_band(r->page, r->row++, R_COLUMNS, LOOK_SECTION, "What it leaves");
    int row = label(r, LOOK_TEXT, "Markup on direct cost");
    page_formula(r->page, row, 1, LOOK_SHARE, percent_fraction(estimate->markup), "=IF(%s=0,0,ROUND((%s-%s)/%s,6))",
                 direct, sold, direct, direct);
    row = label(r, LOOK_TEXT, "Gross margin of the price");
    page_formula(r->page, row, 1, LOOK_SHARE, percent_fraction(estimate->gross_margin),
                 "=IF(%s=0,0,ROUND((%s-%s)/%s,6))", sold, sold, direct, sold);
    if (r->w->hours_cell) {
        row = label(r, LOOK_TEXT, "Hours of labor");
        page_formula(r->page, row, 1, LOOK_HOURS, decimal_value(estimate->hours), "=%s", r->w->hours_cell);
    }
    length_t out = wall_out(r->w->job);
    if (out > 0) {
        int feet = label(r, LOOK_TEXT, "Feet of wall that come out");
        page_number(r->page, feet, 1, LOOK_NUMBER, length_feet(out));
        row = label(r, LOOK_TEXT, "Price per foot of it");
        /* Half away from zero, as the sheet's ROUND judges it. */
        double each = money_dollars(money_nearest(
            (money_t)((double)estimate->price / length_feet(out) + (estimate->price < 0 ? -0.5 : 0.5)), MONEY_CENT));
        page_formula(r->page, row, 1, LOOK_MONEY, each, "=ROUND(%s/%s,2)", price, at(r, feet, 1));
    }
    r->row++;
}

static void add_draws(struct recap *r)
{
    const struct estimate *estimate = r->w->estimate;
    if (!estimate->draw_count)
        return;
    page_band(r->page, r->row++, R_COLUMNS, LOOK_SECTION, "Draws");
    const struct column_head heads[] = {{"When", 0, false}, {"Share", 0, true}, {"Amount", 0, true}};
    page_heads(r->page, r->row++, heads, 3);
    int first = r->row;
    const char *price = at(r, r->price, 1);
    for (size_t i = 0; i < estimate->draw_count; i++) {
        const struct draw *draw = &estimate->draw[i];
        double amount = money_dollars(draw->amount);
        int row = r->row++;
        bool last = i + 1 == estimate->draw_count;
        page_text(r->page, row, 0, LOOK_WRAP,
                  last ? arena_printf(r->w->arena, "%s: the rest", draw->when) : draw->when);
        page_number(r->page, row, 1, LOOK_IN_PERCENT, percent_fraction(draw->percent));
        if (!last)
            page_formula(r->page, row, 2, LOOK_MONEY, amount, "=ROUND(%s*%s,2)", price, at(r, row, 1));
        else if (i == 0)
            page_formula(r->page, row, 2, LOOK_MONEY, amount, "=%s", price);
        else
            page_formula(r->page, row, 2, LOOK_MONEY, amount, "=ROUND(%s-SUM(%s:%s),2)", price, at(r, first, 2),
                         at(r, row - 1, 2));
    }
    r->row++;
}

static void add_alternates(struct recap *r)
{
    const struct outcome *outcome = r->w->report->outcome;
    struct arena *a = r->w->arena;
    if (!outcome->alternate_count)
        return;
    page_band(r->page, r->row++, R_COLUMNS, LOOK_SECTION,
              "Alternates, as this run priced them (they do not follow the sheet)");
    for (size_t i = 0; i < outcome->alternate_count; i++) {
        const struct alternate_price *price = &outcome->alternate[i];
        const char *what = or_dash(price->alternate->what.text);
        const char *sign = price->difference < 0 ? "deduct" : "add";
        money_t amount = price->difference < 0 ? -price->difference : price->difference;
        const char *text = price->ok ? arena_printf(a, "%s: %s %s", what, sign, money_show(a, amount))
                                     : arena_printf(a,
                                                    "%s: cannot be offered, a check of it fails or it cannot be "
                                                    "priced",
                                                    what);
        page_paragraph(r->page, r->row++, 0, R_COLUMNS - 1, LOOK_PLAIN, text);
    }
    r->row++;
}

static void add_lines(struct recap *r, const char *title, struct lines lines)
{
    if (!lines.count)
        return;
    page_band(r->page, r->row++, R_COLUMNS, LOOK_SECTION, title);
    for (size_t i = 0; i < lines.count; i++)
        page_paragraph(r->page, r->row++, 0, R_COLUMNS - 1, LOOK_WARN, lines.item[i]);
    r->row++;
}

static struct lines old_prices(struct arena *arena, const struct report *report)
{
    struct lines lines = {0};
    for (size_t i = 0; report->diags && i < report->diags->count; i++)
        if (report->diags->item[i].code == DIAG_C007 && !report->diags->item[i].acknowledged)
            lines_add(arena, &lines, report->diags->item[i].text);
    return lines;
}

/* The first thing on the screen. */
static void add_top(struct recap *r)
{
    const struct workbook *w = r->w;
    const char *why = why_not_signable(w->arena, w->report);
    page_title(w, r->page, or_dash(w->job->facts.name.text));
    page_text(r->page, 3, 0, LOOK_PRICE_TEXT, w->budget ? "Budget price" : "Price");
    page_formula(r->page, 3, 1, LOOK_PRICE, money_dollars(w->estimate->price), "=%s", at(r, r->price, 1));
    if (w->budget)
        page_text(r->page, 3, 2, LOOK_UNDER_TITLE,
                  arena_printf(w->arena, "%s to %s as this run priced it, with every task at its low and high hours",
                               money_show(w->arena, w->estimate->low_price),
                               money_show(w->arena, w->estimate->high_price)));
    if (why)
        page_text(r->page, 4, 0, LOOK_WARN, w->budget ? "BUDGET, not for signature" : "Not for signature");
    if (why)
        page_text(r->page, 4, 1, LOOK_UNDER_TITLE, why);
    const char *was = book_range(w->prices, w->inputs_first, PRICES_WAS, w->inputs_last, PRICES_WAS);
    const char *now = book_range(w->prices, w->inputs_first, PRICES_VALUE, w->inputs_last, PRICES_VALUE);
    page_text(r->page, 5, 0, LOOK_UNDER_TITLE, "Prices and rates");
    page_formula_text(r->page, 5, 1, LOOK_PLAIN, "as at this run",
                      "=IF(SUMPRODUCT((%s<>%s)*1)>0,\"changed since the run: run again to see whether another member "
                      "or cut plan costs less\",\"as at this run\")",
                      now, was);
}

void build_recap(struct workbook *w)
{
    struct recap r = {.w = w, .page = w->recap, .row = 7};
    page_widths(r.page, HEADS, R_COLUMNS);
    add_classes(&r);
    add_price(&r);
    add_margins(&r);
    add_draws(&r);
    add_alternates(&r);
    add_lines(&r, "Open questions", open_questions(w->arena, w->report));
    add_lines(&r, "Prices that are old", old_prices(w->arena, w->report));
    add_lines(&r, "Checks that fail", failing_checks(w->arena, w->report));
    page_paragraph(r.page, r.row, 0, R_COLUMNS - 1, LOOK_NOTE, caution_text());
    add_top(&r);
    book_name(w->book, "bid_price", book_address(r.page, r.price, 1));
    book_name(w->book, "direct_cost", book_address(r.page, r.total, R_DIRECT));
    r.page->frozen = 2;
}
