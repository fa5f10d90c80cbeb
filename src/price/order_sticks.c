/* Sticks of the cut plans, gathered by the price row (or shop row) that they are bought from. */
#include <inttypes.h>

#include "price_internal.h"
#include "sawbill/text.h"

static char *stock_text(struct arena *arena, length_t length)
{
    if (length % LENGTH_FOOT == 0)
        return arena_printf(arena, "%" PRId64 " ft", length / LENGTH_FOOT);
    return length_tape(arena, length);
}

/* Feet, rounded up to 4 decimals where a length is not a whole number of them (4 in = 0.3334 ft). */
static decimal_t feet_of(length_t length)
{
    return (length * DECIMAL_ONE + LENGTH_FOOT - 1) / LENGTH_FOOT;
}

static const char *member_text(struct arena *arena, const struct catalog *catalog, const char *code)
{
    const struct member *member = catalog_member(catalog, code);
    return member ? arena_printf(arena, "%s %s", member->size, member->material) : code;
}

static bool same_source(const struct cut_stock *a, const struct cut_stock *b)
{
    return a->price == b->price && a->shop == b->shop;
}

/* The stick is the first of its source in the plan. */
static bool is_first(const struct cut_plan *plan, size_t stick)
{
    for (size_t i = 0; i < stick; i++)
        if (same_source(plan->stick[i].stock, plan->stick[stick].stock))
            return false;
    return true;
}

/* "2 at 18 ft, 1 at 12 ft": the sticks of one source, in the order of the plan. */
static char *lengths_text(struct arena *arena, const struct cut_plan *plan, const struct cut_stock *source)
{
    struct buffer text = {.arena = arena};
    for (size_t i = 0; i < plan->stick_count; i++) {
        const struct cut_stock *stock = plan->stick[i].stock;
        if (!same_source(stock, source))
            continue;
        int64_t same = 0;
        bool seen = false;
        for (size_t j = 0; j < plan->stick_count; j++) {
            if (!same_source(plan->stick[j].stock, source) ||
                cut_sold_length(plan->stick[j].stock) != cut_sold_length(stock))
                continue;
            seen = seen || j < i;
            same++;
        }
        if (!seen)
            buffer_printf(&text, "%s%" PRId64 " at %s", text.length ? ", " : "", same,
                          stock_text(arena, cut_sold_length(stock)));
    }
    return arena_strdup(arena, buffer_text(&text));
}

static int64_t sticks_of(const struct cut_plan *plan, const struct cut_stock *source, decimal_t *feet, length_t *sold)
{
    int64_t sticks = 0;
    for (size_t i = 0; i < plan->stick_count; i++) {
        if (!same_source(plan->stick[i].stock, source))
            continue;
        sticks++;
        *feet += feet_of(plan->stick[i].stock->length);
        *sold += cut_sold_length(plan->stick[i].stock);
    }
    return sticks;
}

/* What the rows of one source share. */
struct source {
    const struct cut_plan *plan;
    const struct cut_stock *stock;
    const char *what, *lengths;
    int64_t sticks;
    decimal_t feet, board_feet;
};

static struct order_line *add_source(struct arena *arena, struct order *order, const struct source *source,
                                     const char *id_end, const char *what)
{
    const char *member = source->plan->problem->member;
    struct order_line *line =
        order_add(arena, order, arena_printf(arena, "order/%s/%s", member, id_end), source->stock->price);
    line->item = member;
    line->what = what;
    line->counted = source->lengths;
    line->from = arena_printf(arena, "cuts/%s", member);
    line->net = source->sticks * DECIMAL_ONE;
    line->board_feet = source->board_feet;
    line->cost_code = source->stock->price ? source->stock->price->cost_code : NULL;
    return line;
}

static void add_by_the_foot(struct arena *arena, struct order *order, const struct source *source)
{
    struct order_line *line =
        add_source(arena, order, source, "by the foot", arena_printf(arena, "%s, %s", source->what, source->lengths));
    line->net = source->feet;
    line->unit = "ft";
    if (source->stock->price->cut_charge == 0)
        return;
    line = add_source(arena, order, source, "cut charge", arena_printf(arena, "%s, cut to length", source->what));
    line->cut_charge = true;
    line->board_feet = 0;
    line->unit = "cut";
}

static void add_sticks(struct arena *arena, struct order *order, const struct source *source)
{
    char *length = stock_text(arena, cut_sold_length(source->stock));
    const struct shop_piece *shop = source->stock->shop;
    const char *id = shop ? arena_printf(arena, "%s/shop", length) : length;
    struct order_line *line = add_source(
        arena, order, source, id, arena_printf(arena, "%s, %s%s", source->what, length, shop ? ", from the shop" : ""));
    line->shop = shop;
    line->unit = shop || !source->stock->price->unit ? "each" : source->stock->price->unit;
}

void order_sticks(struct arena *arena, const struct catalog *catalog, struct cut_plan *const *plans, size_t plan_count,
                  struct order *order)
{
    for (size_t p = 0; p < plan_count; p++) {
        const struct cut_plan *plan = plans[p];
        const char *what = member_text(arena, catalog, plan->problem->member);
        for (size_t i = 0; i < plan->stick_count; i++) {
            if (!is_first(plan, i))
                continue;
            struct source source = {.plan = plan, .stock = plan->stick[i].stock, .what = what};
            source.lengths = lengths_text(arena, plan, source.stock);
            length_t sold = 0;
            source.sticks = sticks_of(plan, source.stock, &source.feet, &sold);
            source.board_feet = board_feet(catalog_member(catalog, plan->problem->member), sold);
            if (!source.stock->price && !source.stock->shop)
                continue; /* a made-up stock of a caller: nothing to buy */
            if (source.stock->price && source.stock->price->increment > 0)
                add_by_the_foot(arena, order, &source);
            else
                add_sticks(arena, order, &source);
        }
    }
}
