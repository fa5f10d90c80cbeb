/* sawbill order on the terminal. */
#include "terminal.h"

#include <string.h>

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
    row->cell[3] = line->loss ? percent_text(arena, line->loss) : "";
    row->cell[4] = decimal_text(arena, line->packs);
    row->cell[5] = line->price ? order_unit(arena, line) : "own stock";
    row->cell[6] =
        line->price ? money_show(arena, line->cut_charge ? line->price->cut_charge : line->price->price) : "";
    row->cell[7] = money_show(arena, line->total);
}

static struct table order_table(struct arena *arena)
{
    static const struct column columns[] = {
        {"Item", false, true}, {"What", false, true}, {"Net", true, false},   {"Loss", true, false},
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

/* Net, then what is bought with the loss on it. */
static void show_fasteners(struct screen *screen, const struct order *order)
{
    static const struct column columns[] = {
        {"Item", false, true}, {"What", false, true}, {"Net count", true, false}, {"Net lb", true, false},
        {"Loss", true, false}, {"Buy", true, false},  {"Unit", false, true},
    };
    struct arena *arena = screen->out.arena;
    struct table table = table_new(arena, columns, sizeof columns / sizeof columns[0]);
    for (size_t i = 0; i < order->count; i++) {
        const struct order_line *line = &order->line[i];
        if (!line->fastener)
            continue;
        struct table_row *row = table_row(&table);
        row->cell[0] = line->item;
        row->cell[1] = line->what;
        row->cell[2] = decimal_text(arena, decimal_round(line->pieces, 2));
        row->cell[3] = line->pounds > 0 ? decimal_text(arena, decimal_round(line->pounds, 2)) : "";
        row->cell[4] = percent_text(arena, line->loss);
        row->cell[5] = decimal_text(arena, line->packs);
        row->cell[6] = order_unit(arena, line);
    }
    if (table.count == 0)
        return;
    screen_heading(screen, "Nails and screws");
    screen_table(screen, &table);
}

/* Sawn wood in the measure that a yard quotes by. */
static void show_board_feet(struct screen *screen, const struct order *order)
{
    static const struct column columns[] = {
        {"Item", false, true}, {"What", false, true}, {"How counted", false, true}, {"Board feet", true, false}};
    struct arena *arena = screen->out.arena;
    struct table table = table_new(arena, columns, sizeof columns / sizeof columns[0]);
    decimal_t all = 0;
    for (size_t i = 0; i < order->count; i++) {
        const struct order_line *line = &order->line[i];
        if (line->board_feet == 0)
            continue;
        struct table_row *row = table_row(&table);
        row->cell[0] = line->item;
        row->cell[1] = line->what;
        row->cell[2] = line->counted;
        row->cell[3] = decimal_text(arena, decimal_round(line->board_feet, 2));
        all += line->board_feet;
    }
    if (table.count == 0)
        return;
    struct table_row *row = table_row(&table);
    row->cell[1] = "sawn wood";
    row->cell[3] = decimal_text(arena, decimal_round(all, 2));
    row->rule = true;
    screen_heading(screen, "Board feet");
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
        show_board_feet(&screen, run->order);
        show_fasteners(&screen, run->order);
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
