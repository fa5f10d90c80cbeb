/* What goes back to the shop: as text, and as its stock list for the next job; and a plan's verdict in words. */
#include "cutoffs.h"

#include <stdlib.h>
#include <string.h>

#include "sawbill/report.h"
#include "sawbill/text.h"

static int longest_first(const void *left, const void *right)
{
    const struct cutoff *a = left, *b = right;
    return (a->length < b->length) - (a->length > b->length);
}

struct cutoffs cutoffs_of(struct arena *arena, const struct cut_plan *plan)
{
    struct cutoffs cutoffs = {arena_array(arena, plan->stick_count, sizeof *cutoffs.cutoff), 0};
    size_t found = 0;
    for (size_t i = 0; i < plan->stick_count; i++)
        if (plan->stick[i].left > 0 && plan->stick[i].left >= plan->problem->least_cutoff)
            cutoffs.cutoff[found++] = (struct cutoff){plan->stick[i].left, 1};
    if (found > 1)
        qsort(cutoffs.cutoff, found, sizeof *cutoffs.cutoff, longest_first);
    for (size_t i = 0; i < found; i++) {
        if (cutoffs.count > 0 && cutoffs.cutoff[cutoffs.count - 1].length == cutoffs.cutoff[i].length)
            cutoffs.cutoff[cutoffs.count - 1].count++;
        else
            cutoffs.cutoff[cutoffs.count++] = cutoffs.cutoff[i];
    }
    return cutoffs;
}

const char *cutoffs_text(struct arena *arena, const struct cut_plan *plan)
{
    const struct cutoffs cutoffs = cutoffs_of(arena, plan);
    struct buffer text = {.arena = arena};
    for (size_t i = 0; i < cutoffs.count; i++) {
        buffer_add(&text, i ? ", " : "");
        if (cutoffs.cutoff[i].count > 1)
            buffer_printf(&text, "%d x ", cutoffs.cutoff[i].count);
        buffer_add(&text, length_tape(arena, cutoffs.cutoff[i].length));
    }
    return cutoffs.count ? buffer_text(&text) : "none";
}

const char *verdict_text(struct arena *arena, const struct cut_plan *plan)
{
    const char *text = plan->verdict;
    if (plan->bound < plan->cost)
        text = arena_printf(arena, "%s, at most %s above the bound", text, money_show(arena, plan->cost - plan->bound));
    return plan->note ? arena_printf(arena, "%s; %s", text, plan->note) : text;
}

/* A cell that keeps its commas and marks. */
static void add_cell(struct buffer *out, const char *text)
{
    if (!strpbrk(text, ",\"\n\r")) {
        buffer_add(out, text);
        return;
    }
    buffer_add(out, "\"");
    for (const char *c = text; *c; c++) {
        buffer_add(out, *c == '"' ? "\"" : "");
        buffer_add_n(out, c, 1);
    }
    buffer_add(out, "\"");
}

/* A list's row: length,price,supply,trim,member; the shop's: member,length,count,book value. */
static void add_row(struct buffer *out, bool list, const char *member, length_t length, int count, money_t value)
{
    const char *exact = length_exact(out->arena, length), *money = money_text(out->arena, value);
    if (list) {
        add_cell(out, exact);
        buffer_printf(out, ",%s,%d,0,", money, count);
        add_cell(out, member);
    } else {
        add_cell(out, member);
        buffer_add(out, ",");
        add_cell(out, exact);
        buffer_printf(out, ",%d,%s", count, money);
    }
    buffer_add(out, "\n");
}

static int used_of(struct cut_plan *const *plan, size_t count, const struct shop_piece *shop)
{
    int used = 0;
    for (size_t i = 0; i < count; i++)
        for (size_t k = 0; k < plan[i]->stick_count; k++)
            used += plan[i]->stick[k].stock->shop == shop;
    return used;
}

char *report_shop_stock(struct arena *arena, const struct catalog *catalog, struct cut_plan *const *plan, size_t count)
{
    struct buffer out = {.arena = arena};
    buffer_add(&out, catalog ? "member,length,count,book value\n" : "length,price,supply,trim,member\n");
    for (size_t i = 0; catalog && i < catalog->shop_count; i++) {
        const struct shop_piece *shop = &catalog->shop[i];
        int left = shop->count - used_of(plan, count, shop);
        if (left > 0 && shop->member)
            add_row(&out, false, shop->member->code, shop->length, left, shop->book_value);
    }
    for (size_t i = 0; i < count; i++) {
        const struct cutoffs cutoffs = cutoffs_of(arena, plan[i]);
        for (size_t k = 0; k < cutoffs.count; k++)
            add_row(&out, !catalog, plan[i]->problem->member, cutoffs.cutoff[k].length, cutoffs.cutoff[k].count, 0);
    }
    return out.text;
}
