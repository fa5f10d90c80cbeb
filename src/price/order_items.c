/* Counted things: the takeoff summed an item, then bought where the whole packs needed cost least. */
#include <string.h>

#include "price_internal.h"
#include "sawbill/text.h"

/* The takeoff lines of one item that go into one row: same class, same own markup. */
struct need {
    const struct takeoff_line **line;
    size_t count;
    decimal_t pieces, pounds; /* counted by the piece (or foot, square foot), and by the pound */
};
/* A price row and what is needed in its unit. */
struct offer {
    const struct price *price;
    const struct fastener *by; /* whose count per lb was used, or NULL */
    decimal_t net;
    money_t total;
};

static bool is_bought(const struct takeoff_line *line)
{
    return line->item && line->count > 0 && (line->is == LINE_ITEM || line->is == LINE_BUY);
}

static bool is_pound(const char *unit)
{
    return unit && (name_same(unit, "lb") || name_same(unit, "lbs") || name_same(unit, "pound"));
}

static bool one_row(const struct takeoff_line *a, const struct takeoff_line *b)
{
    return name_same(a->item, b->item) && class_or(a->class, CLASS_MATERIALS) == class_or(b->class, CLASS_MATERIALS) &&
           a->has_own_markup == b->has_own_markup && (!a->has_own_markup || a->own_markup == b->own_markup);
}

static struct need gather(struct arena *arena, const struct takeoff *takeoff, const struct takeoff_line *first)
{
    struct need need = {.line = arena_array(arena, takeoff->count, sizeof(struct takeoff_line *))};
    for (size_t i = 0; i < takeoff->count; i++) {
        const struct takeoff_line *line = &takeoff->line[i];
        if (!is_bought(line) || !one_row(line, first))
            continue;
        need.line[need.count++] = line;
        decimal_t *sum = is_pound(line->unit) ? &need.pounds : &need.pieces;
        *sum = price_sum(*sum, line->count);
    }
    return need;
}

/* The catalog gives the count with at most 4 decimals: the nearest step is the number as written. */
static decimal_t per_pound(const struct fastener *fastener)
{
    return (decimal_t)(fastener->count_per_lb * (double)DECIMAL_ONE + 0.5);
}

/* What is needed in the unit of the price; false when pieces and pounds do not meet. */
static bool net_in_unit(const struct need *need, const struct fastener *fastener, struct offer *offer)
{
    bool pound = is_pound(offer->price->unit);
    decimal_t same = pound ? need->pounds : need->pieces, other = pound ? need->pieces : need->pounds;
    offer->net = same;
    if (other == 0)
        return true;
    if (!fastener || fastener->count_per_lb <= 0)
        return false;
    decimal_t per = per_pound(fastener);
    offer->by = fastener;
    offer->net =
        price_sum(same, pound ? price_scale_up(other, DECIMAL_ONE, per) : price_scale_up(other, per, DECIMAL_ONE));
    return true;
}

static percent_t loss_of(const struct need *need, const struct job *job)
{
    for (size_t i = 0; i < need->count; i++)
        if (need->line[i]->loss)
            return job->bid.fastener_loss.percent;
    return 0;
}

/* The row whose whole packs cost least for what is needed; *unmet is a row in a unit that cannot be reached. */
static struct offer best_offer(const struct catalog *catalog, const struct need *need, percent_t loss,
                               const struct price **unmet)
{
    struct offer best = {0};
    const char *item = need->line[0]->item;
    const struct fastener *fastener = catalog_fastener_of(catalog, item);
    for (size_t i = 0; i < catalog->price_count; i++) {
        struct offer offer = {.price = &catalog->prices[i]};
        if (!name_same(offer.price->item, item) || offer.price->length > 0 || offer.price->increment > 0 ||
            !catalog_on_sale(catalog, offer.price))
            continue;
        if (!net_in_unit(need, fastener, &offer)) {
            *unmet = offer.price;
            continue;
        }
        offer.total = money_times(offer.price->price, packs_for(offer.net, loss, offer.price->pack));
        if (!best.price || offer.total < best.total)
            best = offer;
    }
    return best;
}

/* The ids (or whats) of the lines, each once. */
static char *joined(struct arena *arena, const struct need *need, bool ids)
{
    struct buffer text = {.arena = arena};
    for (size_t i = 0; i < need->count; i++) {
        const char *word = ids ? need->line[i]->id : need->line[i]->what;
        bool seen = !word || (!ids && !strcmp(word, need->line[i]->item)); /* a code is no word for it */
        for (size_t j = 0; j < i && !seen; j++) {
            const char *before = ids ? need->line[j]->id : need->line[j]->what;
            seen = before && !strcmp(word, before);
        }
        if (!seen)
            buffer_printf(&text, "%s%s", text.length ? ", " : "", word);
    }
    return arena_strdup(arena, buffer_text(&text));
}

static void say_no_price(struct arena *arena, const struct need *need, const struct price *unmet, struct diags *diags)
{
    const struct takeoff_line *line = need->line[0];
    const char *ids = joined(arena, need, true);
    if (unmet)
        diag_add(
            diags, DIAG_P001, &unmet->at,
            "'%s' is sold by the %s but '%s' counts it by the %s: give its row in fasteners.csv a count per lb, or "
            "add a price in that unit",
            line->item, unmet->unit, ids, line->unit ? line->unit : "piece");
    else
        diag_add(diags, DIAG_P001, line->at.file ? &line->at : NULL,
                 "no price for '%s', which '%s' needs: add a row to prices.csv", line->item, ids);
}

static const char *counted_text(struct arena *arena, const struct need *need, const struct offer *offer)
{
    struct buffer text = {.arena = arena};
    for (size_t i = 0; i < need->count; i++)
        buffer_printf(&text, "%s%s", i ? " + " : "", decimal_text(arena, need->line[i]->count));
    if (offer->by)
        buffer_printf(&text, " pieces at %s per lb = %s %s", decimal_text(arena, per_pound(offer->by)),
                      decimal_text(arena, offer->net), offer->price->unit);
    return arena_strdup(arena, buffer_text(&text));
}

/* "order/ITEM", and what sets it apart from another row of the same item. */
static const char *row_id(struct arena *arena, const struct takeoff_line *line)
{
    const char *class = class_or(line->class, CLASS_MATERIALS) == CLASS_MATERIALS
                            ? ""
                            : arena_printf(arena, "/%s", class_name(line->class));
    const char *own =
        line->has_own_markup ? arena_printf(arena, "/own markup %s", percent_text(arena, line->own_markup)) : "";
    return arena_printf(arena, "order/%s%s%s", line->item, class, own);
}

/* In words: the catalog's, else the takeoff's, else the code. */
static const char *item_text(struct arena *arena, const struct catalog *catalog, const struct need *need)
{
    const char *item = need->line[0]->item, *what = catalog_what(catalog, item);
    if (!strcmp(what, item))
        what = joined(arena, need, false);
    return what[0] ? what : item;
}

/* Of nails and screws: how many, and what they weigh. */
static void add_fastener(const struct catalog *catalog, const struct need *need, struct order_line *line)
{
    const struct fastener *fastener = catalog_fastener_of(catalog, line->item);
    if (!fastener)
        return;
    bool known = fastener->count_per_lb > 0;
    decimal_t per = known ? per_pound(fastener) : DECIMAL_ONE;
    line->fastener = fastener;
    line->pieces = price_sum(need->pieces, known ? price_scale_up(need->pounds, per, DECIMAL_ONE) : 0);
    line->pounds = price_sum(need->pounds, known ? price_scale_up(need->pieces, DECIMAL_ONE, per) : 0);
}

static void add_item(struct arena *arena, const struct catalog *catalog, struct order *order, const struct need *need,
                     const struct offer *offer, percent_t loss)
{
    const struct takeoff_line *first = need->line[0];
    struct order_line *line = order_add(arena, order, row_id(arena, first), offer->price);
    line->item = first->item;
    line->what = item_text(arena, catalog, need);
    line->net = offer->net;
    line->loss = loss;
    line->from = joined(arena, need, true);
    line->counted = counted_text(arena, need, offer);
    line->unit = offer->price->unit;
    add_fastener(catalog, need, line);
    line->class = class_or(first->class, CLASS_MATERIALS);
    line->has_own_markup = first->has_own_markup;
    line->own_markup = first->own_markup;
    line->cost_code = first->cost_code && first->cost_code[0] ? first->cost_code : offer->price->cost_code;
}

static bool seen_before(const struct takeoff *takeoff, size_t index)
{
    for (size_t i = 0; i < index; i++)
        if (is_bought(&takeoff->line[i]) && one_row(&takeoff->line[i], &takeoff->line[index]))
            return true;
    return false;
}

void order_items(struct arena *arena, const struct job *job, const struct catalog *catalog,
                 const struct takeoff *takeoff, struct order *order, struct diags *diags)
{
    for (size_t i = 0; i < takeoff->count; i++) {
        if (!is_bought(&takeoff->line[i]) || seen_before(takeoff, i))
            continue;
        struct need need = gather(arena, takeoff, &takeoff->line[i]);
        percent_t loss = loss_of(&need, job);
        const struct price *unmet = NULL;
        struct offer offer = best_offer(catalog, &need, loss, &unmet);
        if (offer.price)
            add_item(arena, catalog, order, &need, &offer, loss);
        else
            say_no_price(arena, &need, unmet, diags);
    }
}
