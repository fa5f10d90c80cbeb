/* The order: rows of sticks from the cut plans, then rows of counted things. */
#include "price_internal.h"
#include "sawbill/text.h"

static money_t unit_money(const struct order_line *line)
{
    if (line->shop)
        return line->shop->book_value;
    return line->cut_charge ? line->price->cut_charge : line->price->price;
}

/* By the foot, in cuts and from the shop a unit is a unit; else whole packs are bought. */
static bool sold_in_packs(const struct order_line *line)
{
    return line->price && !line->cut_charge && line->price->increment == 0;
}

const char *order_unit(struct arena *arena, const struct order_line *line)
{
    decimal_t pack = sold_in_packs(line) ? line->price->pack : 0;
    if (pack <= 0 || pack == DECIMAL_ONE)
        return line->unit;
    const char *unit = name_same(line->unit, "each") ? "" : line->unit;
    return arena_printf(arena, "pack of %s%s%s", decimal_text(arena, pack), *unit ? " " : "", unit);
}

static bool taxable_class(enum cost_class class)
{
    return class == CLASS_MATERIALS || class == CLASS_RENTALS || class == CLASS_ALLOWANCES;
}

static void total_supplier(const struct order *order, struct supplier_total *total, const struct bid *bid)
{
    total->goods = total->taxable = 0;
    for (size_t i = 0; i < order->count; i++) {
        const struct order_line *line = &order->line[i];
        if (!line->price || !name_same(line->price->supplier, total->supplier->name))
            continue;
        total->goods = price_sum(total->goods, line->total);
        if (taxable_class(line->class))
            total->taxable = price_sum(total->taxable, line->total);
    }
    total->delivery = total->goods > 0 ? total->supplier->delivery : 0;
    total->tax_rate = total->supplier->has_tax ? total->supplier->tax : bid->tax.percent;
    if (bid->tax_mode.choice == TAX_ON_PRICE)
        total->tax_rate = 0;
    total->tax = money_percent(total->taxable, total->tax_rate);
}

void order_total(struct order *order, const struct job *job)
{
    for (size_t i = 0; i < order->count; i++) {
        struct order_line *line = &order->line[i];
        line->packs = sold_in_packs(line) ? packs_for(line->net, line->loss, line->price->pack) : line->net;
        line->total = money_times(unit_money(line), line->packs);
    }
    for (size_t i = 0; i < order->supplier_count; i++)
        total_supplier(order, &order->supplier[i], &job->bid);
}

static bool sells_here(const struct order *order, const struct supplier *supplier)
{
    for (size_t i = 0; i < order->count; i++)
        if (order->line[i].price && name_same(order->line[i].price->supplier, supplier->name))
            return true;
    return false;
}

void order_suppliers(struct arena *arena, const struct catalog *catalog, struct order *order)
{
    order->supplier = arena_array(arena, catalog->supplier_count, sizeof *order->supplier);
    for (size_t i = 0; i < catalog->supplier_count; i++)
        if (sells_here(order, &catalog->suppliers[i]))
            order->supplier[order->supplier_count++].supplier = &catalog->suppliers[i];
}

static void note_least_orders(struct arena *arena, const struct order *order, struct diags *diags)
{
    for (size_t i = 0; i < order->supplier_count; i++) {
        const struct supplier_total *total = &order->supplier[i];
        if (total->goods > 0 && total->goods < total->supplier->least_order)
            diag_add(diags, DIAG_P004, &total->supplier->at, "goods from '%s' come to %s, its least order is %s",
                     total->supplier->name, money_show(arena, total->goods),
                     money_show(arena, total->supplier->least_order));
    }
}

/* Zero is an answer, but a price list with holes filled by zeros gives a bid that loses money. */
static void note_free_things(const struct order *order, struct diags *diags)
{
    for (size_t i = 0; i < order->count; i++) {
        const struct order_line *line = &order->line[i];
        if (line->price && !line->cut_charge && line->packs > 0 && line->price->price == 0)
            diag_add(diags, DIAG_P005, &line->price->at, "the price of '%s' from '%s' is zero, and the job needs it",
                     line->item, line->price->supplier);
    }
}

struct order *order_job(struct arena *arena, const struct job *job, const struct catalog *catalog,
                        const struct takeoff *takeoff, struct cut_plan *const *plans, size_t plan_count,
                        struct diags *diags)
{
    struct order *order = arena_alloc(arena, sizeof *order);
    order_sticks(arena, catalog, plans, plan_count, order);
    order_items(arena, job, catalog, takeoff, order, diags);
    order_suppliers(arena, catalog, order);
    order_total(order, job);
    note_least_orders(arena, order, diags);
    note_free_things(order, diags);
    return order;
}
