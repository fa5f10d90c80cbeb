/* sawbill cuts on the terminal. */
#include "terminal.h"

#include "cutoffs.h"

/* "12' 9" beam B1 ply, 3' 2" block": like parts stand beside one another in a plan and are counted together. */
static const char *parts_text(struct arena *arena, const struct cut_stick *stick)
{
    struct buffer out = {.arena = arena};
    for (size_t i = 0; i < stick->part_count;) {
        const struct cut_part *part = &stick->part[i];
        size_t run = 1;
        while (i + run < stick->part_count && cut_parts_alike(&stick->part[i + run], part))
            run++;
        buffer_add(&out, out.length ? "; " : "");
        if (run > 1)
            buffer_printf(&out, "%zu x ", run);
        buffer_printf(&out, "%s %s", length_tape(arena, part->length), part->label);
        i += run;
    }
    return buffer_text(&out);
}

static const char *stock_text(struct arena *arena, const struct cut_stock *stock)
{
    const char *text = length_tape(arena, cut_sold_length(stock));
    if (cut_sold_length(stock) != stock->length)
        text = arena_printf(arena, "%s, which is %s", text, length_tape(arena, stock->length));
    return stock->shop ? arena_printf(arena, "%s, shop stock", text) : text;
}

static void add_sticks(struct table *table, const struct cut_plan *plan, size_t index, int count)
{
    struct arena *arena = table->arena;
    const struct cut_stick *stick = &plan->stick[index];
    struct table_row *row = table_row(table);
    row->cell[0] = arena_printf(arena, "%d", count);
    row->cell[1] = stock_text(arena, stick->stock);
    row->cell[2] = parts_text(arena, stick);
    row->cell[3] = length_tape(arena, stick->left);
    row->cell[4] = money_show(arena, stick->stock->cost * count);
}

static void show_sticks(struct screen *screen, const struct cut_plan *plan)
{
    static const struct column columns[] = {{"Sticks", true, false},
                                            {"Stock", false, false},
                                            {"Pieces", false, true},
                                            {"Cutoff", true, false},
                                            {"Cost", true, false}};
    struct table table = table_new(screen->out.arena, columns, sizeof columns / sizeof columns[0]);
    for (size_t i = 0; i < plan->stick_count; i++) {
        int count = cut_count_alike(plan, i);
        if (count > 0)
            add_sticks(&table, plan, i, count);
    }
    screen_table(screen, &table);
}

/* Where the wood goes, in length, in money and as a share of the length. */
static void show_shares(struct screen *screen, const struct cut_plan *plan)
{
    static const struct column columns[] = {
        {"Of what is bought", false, false}, {"Length", true, false}, {"Money", true, false}, {"Share", true, false}};
    static const char *const name[CUT_SHARES] = {"net", "kerf", "end trim", "cutoffs to keep", "waste"};
    struct arena *arena = screen->out.arena;
    const struct cut_shares shares = cut_shares(plan);
    struct table table = table_new(arena, columns, sizeof columns / sizeof columns[0]);
    for (int i = 0; i <= CUT_SHARES; i++) {
        bool sum = i == CUT_SHARES;
        length_t length = sum ? plan->bought : shares.length[i];
        struct table_row *row = table_row(&table);
        row->rule = sum;
        row->cell[0] = sum ? "bought" : name[i];
        row->cell[1] = length_tape(arena, length);
        row->cell[2] = money_show(arena, money_round(sum ? plan->cost : shares.money[i]));
        row->cell[3] = arena_printf(arena, "%s %%",
                                    number_text(arena, 100 * length_inches(length) / length_inches(plan->bought), 1));
    }
    buffer_add(&screen->out, "\n");
    screen_table(screen, &table);
}

static void show_others(struct screen *screen, const struct cut_others *others)
{
    struct arena *arena = screen->out.arena;
    if (others->has_first_fit)
        screen_printf(screen, WEIGHT_PLAIN, "first fit, longest piece first, would cost %s at the best, out of %s",
                      money_show(arena, others->first_fit),
                      length_tape(arena, cut_sold_length(others->first_fit_stock)));
    struct buffer text = {.arena = arena};
    for (size_t i = 0; i < others->single_count; i++) {
        const struct cut_single *single = &others->single[i];
        if (single->possible)
            buffer_printf(&text, "%s%s %s%s", text.length ? "; " : "",
                          length_tape(arena, cut_sold_length(single->stock)), money_show(arena, single->cost),
                          single->proved ? "" : " or less");
    }
    if (text.length)
        screen_printf(screen, WEIGHT_PLAIN, "one length alone would cost: %s", text.text);
}

static void show_joined(struct screen *screen, const struct cut_plan *plan)
{
    struct arena *arena = screen->out.arena;
    const struct cut_problem *problem = plan->problem;
    for (size_t i = 0; plan->joined && i < problem->joints_count; i++) {
        struct buffer text = {.arena = arena};
        for (size_t k = 0; k < problem->joints[i].count; k++)
            if (plan->joined[i] >> k & 1U)
                buffer_printf(&text, "%s%s", text.length ? ", " : "", length_tape(arena, problem->joints[i].at[k]));
        if (text.length)
            screen_printf(screen, WEIGHT_PLAIN, "%s: joined over its supports at %s from end 1",
                          problem->piece[problem->joints[i].piece].label, text.text);
    }
}

static void show_plan(struct screen *screen, const struct cut_plan *plan)
{
    struct arena *arena = screen->out.arena;
    screen_heading(screen, "%s", *plan->problem->member ? plan->problem->member : "Cuts");
    if (plan->stick_count == 0) {
        screen_printf(screen, WEIGHT_PLAIN, "%s", plan->verdict);
        return;
    }
    show_sticks(screen, plan);
    show_joined(screen, plan);
    show_shares(screen, plan);
    screen_printf(screen, WEIGHT_PLAIN, "cutoffs to keep, %s and longer: %s",
                  length_tape(arena, plan->problem->least_cutoff), cutoffs_text(arena, plan));
    screen_printf(screen, WEIGHT_PLAIN, "cost %s; no plan can cost less than %s: %s", money_show(arena, plan->cost),
                  money_show(arena, plan->bound), verdict_text(arena, plan));
    if (plan->others)
        show_others(screen, plan->others);
}

static void show_rules(struct screen *screen, const struct cut_rules *rules, const char *which)
{
    struct arena *arena = screen->out.arena;
    screen_printf(screen, WEIGHT_PLAIN, "kerf %s; end trim %s, off %s%s%s", length_tape(arena, rules->kerf),
                  length_tape(arena, rules->trim), rules->both_ends ? "both ends" : "the worse end", which,
                  rules->square_both_ends ? "; the last piece of a stick gets a cut of its own" : "");
}

char *report_cuts(struct arena *arena, const struct report *report, bool color, int width)
{
    struct screen screen = screen_new(arena, color, width);
    screen_head(&screen, report);
    const struct job_facts *facts = &report->job->facts;
    const struct cut_rules rules = {.kerf = facts->kerf.length,
                                    .trim = facts->end_trim.length,
                                    .both_ends = facts->trim_both_ends.choice == YES,
                                    .square_both_ends = facts->square_both_ends.choice == YES};
    show_rules(&screen, &rules, " of each stick bought");
    const struct run *run = report_run(report);
    for (size_t i = 0; run && i < run->plan_count; i++)
        show_plan(&screen, run->plans[i]);
    screen_caution(&screen);
    return screen_text(&screen);
}

char *report_list(struct arena *arena, const struct cuts_report *report, bool color, int width)
{
    struct screen screen = screen_new(arena, color, width);
    show_rules(&screen, report->rules, " where the stock has none of its own");
    for (size_t i = 0; i < report->plan_count; i++)
        show_plan(&screen, report->plan[i]);
static const char *net_text(struct arena *arena, const struct order_line *line)
{
    const char *unit = line->unit && strcmp(line->unit, "each") != 0 ? line->unit : "";
    return arena_printf(arena, "%s%s%s", decimal_text(arena, decimal_round(line->net, 2)), *unit ? " " : "", unit);
}

static void add_order_line(struct table *table, const struct order_line *line)
{
    struct arena *arena = table->arena;
    struct table_row *row = table_row(table);
    row->cell[0] = line->item;
    row->cell[1] = strcmp(line->what, line->item) == 0 ? "" : line->what;
    row->cell[2] = net_text(arena, line);
    row->cell[3] = line->spare ? percent_text(arena, line->spare) : "";
    row->cell[4] = decimal_text(arena, line->packs);
    row->cell[5] = line->price ? order_unit(arena, line) : "own stock";
    row->cell[6] =
        line->price ? money_show(arena, line->cut_charge ? line->price->cut_charge : line->price->price) : "";
    row->cell[7] = money_show(arena, line->total);
}

static struct table order_table(struct arena *arena)
{
    static const struct column columns[] = {
        {"Item", false, true}, {"What", false, true}, {"Net", true, false},   {"Spare", true, false},
        {"Buy", true, false},  {"Unit", false, true}, {"Price", true, false}, {"Total", true, false},
    };
    return table_new(arena, columns, sizeof columns / sizeof columns[0]);
}

static void add_total(struct table *table, const char *what, money_t total)
{
    struct table_row *row = table_row(table);
    row->cell[1] = what;
    row->cell[7] = money_show(table->arena, total);
}

static void show_supplier(struct screen *screen, const struct order *order, const struct supplier_total *total)
{
    struct arena *arena = screen->out.arena;
    struct table table = order_table(arena);
    for (size_t i = 0; i < order->count; i++)
        if (order->line[i].price && name_same(order->line[i].price->supplier, total->supplier->name))
            add_order_line(&table, &order->line[i]);
    if (table.count == 0)
        return;
    add_total(&table, "goods", total->goods);
    table.row[table.count - 1].rule = true;
    add_total(&table, "delivery", total->delivery);
    add_total(&table, arena_printf(arena, "tax %s", percent_text(arena, total->tax_rate)), total->tax);
    add_total(&table, "expected invoice", total->goods + total->delivery + total->tax);
    table.row[table.count - 1].weight = WEIGHT_BOLD;
    screen_heading(screen, "%s", total->supplier->name);
    screen_table(screen, &table);
}

static void show_own_stock(struct screen *screen, const struct order *order)
{
    struct table table = order_table(screen->out.arena);
    for (size_t i = 0; i < order->count; i++)
        if (!order->line[i].price)
            add_order_line(&table, &order->line[i]);
    if (table.count == 0)
        return;
    screen_heading(screen, "From shop stock, at book value");
    screen_table(screen, &table);
}

static void show_debris(struct screen *screen, const struct job *job, const struct takeoff *takeoff)
{
    struct arena *arena = screen->out.arena;
    if (takeoff->debris_count == 0)
        return;
    screen_heading(screen, "Debris");
    screen_bullet(screen, arena_printf(arena, "%s cu ft loose, %s lb: %lld %s of at most %s cu ft and %s lb",
                                       decimal_text(arena, takeoff->debris_cuft),
                                       decimal_text(arena, takeoff->debris_lb), (long long)takeoff->debris_loads,
                                       job->facts.debris_by.choice == DEBRIS_DUMPSTERS ? "dumpsters" : "dump runs",
                                       decimal_text(arena, load_holds(job)), decimal_text(arena, load_carries(job))));
    for (size_t i = 0; i < takeoff->debris_count; i++)
        screen_bullet(screen,
                      arena_printf(arena, "%s: %s cu ft, %s lb (%s)", takeoff->debris[i].row->debris,
                                   decimal_text(arena, takeoff->debris[i].cuft),
                                   decimal_text(arena, takeoff->debris[i].pounds), takeoff->debris[i].row->source));
}

static void show_returns(struct screen *screen, const struct takeoff *takeoff)
{
    static const struct column columns[] = {
        {"What", false, true}, {"Each long", true, false}, {"Count", true, false}, {"From", false, true}};
    struct arena *arena = screen->out.arena;
    struct table table = table_new(arena, columns, sizeof columns / sizeof columns[0]);
    for (size_t i = 0; i < takeoff->back_count; i++) {
        const struct takeoff_return *back = &takeoff->back[i];
        struct table_row *row = table_row(&table);
        row->cell[0] = back->what;
        row->cell[1] = back->length ? length_tape(arena, back->length) : "";
        row->cell[2] = arena_printf(arena, "%lld", (long long)back->count);
        row->cell[3] = back->from;
    }
    if (table.count == 0)
        return;
    screen_heading(screen, "Comes back when the shores are down");
    screen_table(screen, &table);
}

char *report_order(struct arena *arena, const struct report *report, bool color, int width)
{
    struct screen screen = screen_new(arena, color, width);
    screen_head(&screen, report);
    const struct run *run = report_run(report);
    if (report->job->facts.status.choice == STATUS_BUDGET) {
        screen_printf(&screen, WEIGHT_BOLD, "no order: the job is a budget; 'status = bid' gives one");
    } else if (run && run->order) {
        for (size_t i = 0; i < run->order->supplier_count; i++)
            show_supplier(&screen, run->order, &run->order->supplier[i]);
        show_own_stock(&screen, run->order);
        if (run->takeoff) {
            show_debris(&screen, report->job, run->takeoff);
            show_returns(&screen, run->takeoff);
        }
        if (run->bought_from)
            screen_printf(&screen, WEIGHT_PLAIN, "%s", run->bought_from);
    }
    screen_caution(&screen);
    return screen_text(&screen);
}
