/* The price stage run again on the same order after changes: what a workbook must show when the same cells are changed.
 *
 * usage: report_reprice JOB        reads changes from standard input, a line each, tabs between the fields:
 *     KIND WHAT WHO LENGTH UNIT PACK VALUE       as the row on sheet Prices has them
 * and two kinds of other sheets: "hours each" and "work hours" (WHAT: the line's what), "order loss" (WHAT: item).
 * An empty line prints the totals with the changes so far, a line "amount<TAB>name" each, then undoes them.  Changes
 * are found in the job and the catalogs by their own names: nothing here knows how the workbook is made. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "sawbill/report.h"
#include "sawbill/text.h"

enum { FIELDS = 7, UNDO_MOST = 4096, LINE_MOST = 4096 };
enum field { KIND, WHAT, WHO, LENGTH, UNIT, PACK, VALUE };

struct undo {
    int64_t *at, old;
};
struct reprice {
    struct arena *arena;
    struct diags diags;
    struct job *job;
    struct catalog *catalog;
    struct run *run;
    struct undo undo[UNDO_MOST];
    size_t undo_count;
};

static void out_of_memory(void *owner)
{
    (void)owner;
    fprintf(stderr, "reprice: out of memory\n");
    exit(5);
}

static void die(const char *what, const char *which)
{
    fprintf(stderr, "reprice: %s: %s\n", what, which);
    exit(5);
}

static char *read_all(struct arena *arena, const char *file, size_t *length)
{
    FILE *in = fopen(file, "rb");
    if (!in)
        die("cannot read", file);
    struct buffer text = {.arena = arena};
    char part[4096];
    size_t n;
    while ((n = fread(part, 1, sizeof part, in)) > 0)
        buffer_add_n(&text, part, n);
    fclose(in);
    *length = text.length;
    return text.text;
}

static void load(struct reprice *r, const char *file)
{
    size_t length;
    char *text = read_all(r->arena, file, &length);
    struct entries entries = {0};
    entries_read(r->arena, file, text, length, &entries, &r->diags);
    r->job = job_check(r->arena, file, &entries, &r->diags);
    const char *slash = strrchr(file, '/'), *stock = r->job->facts.shop_stock.text;
    const char *beside = slash ? arena_strndup(r->arena, file, (size_t)(slash - file + 1)) : "";
    r->catalog = catalog_read(r->arena, arena_printf(r->arena, "%s%s", beside, r->job->facts.catalogs.text),
                              stock ? arena_printf(r->arena, "%s%s", beside, stock) : NULL, &r->diags);
    struct outcome *outcome = plan_job(r->arena, r->job, r->catalog, &r->diags);
    if (diag_count(&r->diags, DIAG_STOP) || !outcome->run)
        die("the job stops", file);
    r->run = outcome->run;
}

static void set(struct reprice *r, int64_t *at, int64_t value)
{
    if (r->undo_count == UNDO_MOST)
        die("too many changes", "");
    r->undo[r->undo_count++] = (struct undo){at, *at};
    *at = value;
}

static int64_t money(const char *text)
{
    money_t value;
    const char *why;
    if (!money_parse(text, &value, &why))
        die(why, text);
    return value;
}

static int64_t percent(const char *text)
{
    percent_t value;
    const char *why;
    if (!percent_parse(text, &value, &why))
        die(why, text);
    return value;
}

static int64_t decimal(const char *text)
{
    decimal_t value;
    const char *why;
    if (!decimal_parse(text, &value, &why))
        die(why, text);
    return value;
}

/* Rows of the sheet that change one number of one struct; how many were found is what each returns. */
static int change_markup(struct reprice *r, char **f)
{
    struct bid *bid = &r->job->bid;
    struct {
        const char *word;
        struct percent_value *general, *on;
    } markups[] = {{"overhead", &bid->overhead, bid->overhead_on},
                   {"contingency", &bid->contingency, bid->contingency_on},
                   {"profit", &bid->profit, bid->profit_on}};
    int found = 0;
    for (size_t i = 0; i < 3; i++) {
        if (!strcmp(f[WHAT], markups[i].word)) {
            set(r, &markups[i].general->percent, percent(f[VALUE]));
            found++;
        }
        for (int class = CLASS_LABOR; class < CLASS_COUNT; class ++)
            if (!strcmp(f[WHAT],
                        arena_printf(r->arena, "%s on %s", markups[i].word, class_name((enum cost_class) class)))) {
                set(r, &markups[i].on[class].percent, percent(f[VALUE]));
                found++;
            }
    }
    for (size_t i = 0; i < r->run->takeoff->count; i++) {
        struct takeoff_line *line = &r->run->takeoff->line[i];
        if (line->has_own_markup && !strcmp(f[WHAT], arena_printf(r->arena, "own markup on %s", line->what))) {
            set(r, &line->own_markup, percent(f[VALUE]));
            found++;
        }
    }
    return found;
}

static int change_trade(struct reprice *r, char **f)
{
    int found = 0;
    for (size_t i = 0; i < r->catalog->trade_count; i++) {
        struct trade *trade = &r->catalog->trades[i];
        if (strcmp(trade->trade, f[WHAT]) != 0)
            continue;
        if (!strcmp(f[KIND], "wage"))
            set(r, &trade->wage, money(f[VALUE]));
        else
            set(r, &trade->burden, percent(f[VALUE]));
        found++;
    }
    return found;
}

static int change_supplier(struct reprice *r, char **f)
{
    int found = 0;
    for (size_t i = 0; i < r->catalog->supplier_count; i++) {
        struct supplier *supplier = &r->catalog->suppliers[i];
        if (strcmp(supplier->name, f[WHO]) != 0)
            continue;
        if (!strcmp(f[KIND], "delivery"))
            set(r, &supplier->delivery, money(f[VALUE]));
        else
            set(r, &supplier->tax, percent(f[VALUE]));
        found++;
    }
    return found;
}

static bool has_length(const struct reprice *r, length_t length, const char *text)
{
    length_t wanted = 0;
    const char *why;
    (void)r;
    if (*text && !length_parse(text, &wanted, &why))
        die(why, text);
    return length == wanted;
}

static int change_price(struct reprice *r, char **f)
{
    int found = 0;
    for (size_t i = 0; i < r->catalog->price_count; i++) {
        struct price *price = &r->catalog->prices[i];
        if (strcmp(price->item, f[WHAT]) != 0 || strcmp(price->supplier, f[WHO]) != 0)
            continue;
        if (!strcmp(f[KIND], "cut charge")) {
            set(r, &price->cut_charge, money(f[VALUE]));
            found++;
        } else if (has_length(r, price->length, f[LENGTH]) && (!*f[PACK] || price->pack == decimal(f[PACK]))) {
            set(r, &price->price, money(f[VALUE]));
            found++;
        }
    }
    return found;
}

static int change_own_price(struct reprice *r, char **f)
{
    int found = 0;
    for (size_t i = 0; i < r->run->takeoff->count; i++) {
        struct takeoff_line *line = &r->run->takeoff->line[i];
        if (line->is != LINE_SUB && (line->is != LINE_BUY || line->item))
            continue;
        if (!strcmp(line->what, f[WHAT])) {
            set(r, &line->price, money(f[VALUE]));
            found++;
        }
    }
    return found;
}

/* Loss of the bid: the order keeps it line by line. */
static int change_loss(struct reprice *r, char **f)
{
    bool one = !strcmp(f[KIND], "order loss");
    int found = 0;
    for (size_t i = 0; i < r->run->order->count; i++) {
        struct order_line *line = &r->run->order->line[i];
        if (one ? strcmp(line->item, f[WHAT]) == 0 : line->loss > 0) {
            set(r, &line->loss, percent(f[VALUE]));
            found++;
        }
    }
    return one ? found : found > 0;
}

static int change_hours(struct reprice *r, char **f)
{
    int found = 0;
    for (size_t i = 0; i < r->run->takeoff->count; i++) {
        struct takeoff_line *line = &r->run->takeoff->line[i];
        if (line->is == LINE_LABOR && !line->task && !strcmp(f[KIND], "work hours") && !strcmp(line->what, f[WHAT])) {
            set(r, &line->count, decimal(f[VALUE]));
            found++;
        }
    }
    for (size_t i = 0; i < r->catalog->task_count; i++) {
        struct task *task = &r->catalog->tasks[i];
        if (!strcmp(f[KIND], "hours each") && !strcmp(task->task, f[WHAT])) {
            set(r, &task->likely, decimal(f[VALUE]));
            found++;
        }
    }
    return found;
}

static int change_shop(struct reprice *r, char **f)
{
    int found = 0;
    for (size_t i = 0; i < r->catalog->shop_count; i++) {
        struct shop_piece *shop = &r->catalog->shop[i];
        if (!strcmp(shop->member->code, f[WHAT]) && has_length(r, shop->length, f[LENGTH])) {
            set(r, &shop->book_value, money(f[VALUE]));
            found++;
        }
    }
    return found;
}

static int change_bid(struct reprice *r, char **f)
{
    if (!strcmp(f[KIND], "rounding"))
        set(r, &r->job->bid.round_price_to.money, money(f[VALUE]));
    else if (!*f[WHO])
        set(r, &r->job->bid.tax.percent, percent(f[VALUE]));
    else
        return change_supplier(r, f);
    return 1;
}

static void change(struct reprice *r, char **f)
{
    static const struct {
        const char *kind;
        int (*change)(struct reprice *, char **);
    } kinds[] = {{"markup", change_markup},
                 {"wage", change_trade},
                 {"burden", change_trade},
                 {"delivery", change_supplier},
                 {"tax", change_bid},
                 {"rounding", change_bid},
                 {"fastener loss", change_loss},
                 {"order loss", change_loss},
                 {"material", change_price},
                 {"cut charge", change_price},
                 {"shop stock", change_shop},
                 {"hours each", change_hours},
                 {"work hours", change_hours},
                 {"allowances", change_own_price},
                 {"subs", change_own_price},
                 {"fees", change_own_price},
                 {"materials", change_own_price},
                 {"rentals", change_own_price},
                 {"labor", change_own_price}};
    for (size_t i = 0; i < sizeof kinds / sizeof *kinds; i++) {
        if (strcmp(kinds[i].kind, f[KIND]) != 0)
            continue;
        if (kinds[i].change(r, f) != 1)
            die("a row that does not name one thing", f[WHAT]);
        return;
    }
    die("unknown kind", f[KIND]);
}

static void show(struct reprice *r, money_t amount, const char *name)
{
    printf("%s\t%s\n", money_text(r->arena, amount), name);
}

static void totals(struct reprice *r)
{
    order_total(r->run->order, r->job);
    struct estimate *e = price_job(r->arena, r->job, r->run->takeoff, r->run->order, r->catalog, &r->diags);
    show(r, e->price, "price");
    show(r, e->direct, "direct");
    for (size_t i = 0; i < e->class_count; i++) {
        const struct class_total *total = &e->class_[i];
        const char *name = total->own ? arena_printf(r->arena, "%s (own markup)", e->line[total->line].what)
                                      : class_name(total->class);
        show(r, total->direct, arena_printf(r->arena, "direct of %s", name));
        show(r, total->price, arena_printf(r->arena, "price of %s", name));
    }
    printf("\n");
    while (r->undo_count) {
        struct undo undo = r->undo[--r->undo_count];
        *undo.at = undo.old;
    }
}

static void split(char *line, char **field)
{
    static char none[1] = "";
    line[strcspn(line, "\n")] = '\0';
    for (int i = 0; i < FIELDS; i++) {
        field[i] = line ? line : none;
        char *tab = line ? strchr(line, '\t') : NULL;
        if (tab)
            *tab = '\0';
        line = tab ? tab + 1 : NULL;
    }
}

int main(int argc, char **argv)
{
    if (argc != 2)
        die("usage", "report_reprice JOB");
    struct arena *arena = arena_new(0, out_of_memory, NULL);
    struct reprice *r = arena_alloc(arena, sizeof *r);
    r->arena = arena;
    r->diags.arena = arena;
    load(r, argv[1]);
    char line[LINE_MOST];
    while (fgets(line, sizeof line, stdin)) {
        char *field[FIELDS];
        split(line, field);
        if (*field[KIND])
            change(r, field);
        else
            totals(r);
    }
    arena_free(arena);
    return 0;
}
