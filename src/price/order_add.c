/* A new row of the order. */
#include "price_internal.h"
#include "sawbill/text.h"

static bool id_taken(const struct order *order, const char *id)
{
    for (size_t i = 0; i < order->count; i++)
        if (name_same(order->line[i].id, id))
            return true;
    return false;
}

struct order_line *order_add(struct arena *arena, struct order *order, const char *id, const struct price *price)
{
    const char *unique = id;
    if (id_taken(order, id) && price && price->supplier)
        unique = arena_printf(arena, "%s/%s", id, price->supplier);
    order->line = arena_more(arena, order->line, order->count, &order->capacity, sizeof *order->line);
    struct order_line *line = &order->line[order->count++];
    *line = (struct order_line){.id = unique, .price = price, .class = CLASS_MATERIALS};
    return line;
}
