/* Workbooks of the hand-made sample, one for each way of markup, tax and rounding, for LibreOffice to recalculate.
 *
 * usage: report_variants FOLDER        writes FOLDER/METHOD-TAX-ROUNDING.xlsx and prints their names */
#include <string.h>

#include "sample_report.h"

static const char *const METHODS[] = {"", "compound", "add", "margin"};
static const char *const TAXES[] = {"", "in-cost", "shown", "on-price"};

/* A stick from the shop stands for the first bought one. */
static void use_shop(struct sample *s)
{
    struct shop_piece *shop = arena_alloc(s->arena, sizeof *shop);
    *shop = (struct shop_piece){.member = &s->member, .length = 13 * LENGTH_FOOT, .count = 1, .book_value = 91500};
    struct cut_stock *stock = arena_alloc(s->arena, sizeof *stock);
    *stock = (struct cut_stock){.length = shop->length, .cost = shop->book_value, .supply = 1, .shop = shop};
    s->plans[0]->cost += stock->cost - s->plans[0]->stick[0].stock->cost;
    s->plans[0]->stick[0].stock = stock;
}

static bool write_one(struct arena *arena, const char *folder, int method, int tax, money_t step)
{
    struct sample *s = sample_new(arena);
    s->job.bid.method.choice = method;
    s->job.bid.tax_mode.choice = tax;
    s->job.bid.round_price_to.money = step;
    use_shop(s);
    sample_price(s);
    const char *path =
        arena_printf(arena, "%s/%s-%s-%d.xlsx", folder, METHODS[method], TAXES[tax], (int)(step / MONEY_DOLLAR));
    const char *written = NULL, *why = NULL;
    if (report_workbook(arena, &s->report, path, &written, &why) != WRITE_DONE) {
        fprintf(stderr, "%s: %s\n", path, why);
        return false;
    }
    printf("%s\n", written);
    return true;
}

int main(int argc, char **argv)
{
    if (argc != 2)
        return 2;
    struct arena *arena = arena_new(0, support_out_of_memory, NULL);
    bool good = true;
    for (int method = METHOD_COMPOUND; method <= METHOD_MARGIN; method++)
        for (int tax = TAX_IN_COST; tax <= TAX_ON_PRICE; tax++)
            good = write_one(arena, argv[1], method, tax, method == METHOD_ADD ? 0 : 25 * MONEY_DOLLAR) && good;
    arena_free(arena);
    return good ? 0 : 1;
}
