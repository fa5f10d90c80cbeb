/* Which listed hanger fits a member and holds its load. */
#include "size.h"

#include <math.h>

#include "sawbill/text.h"

bool hanger_fits(const struct hanger *hanger, const struct hanger_need *need)
{
    static const double tape = 1.0 / 64; /* what a rule cannot show does not decide */
    if (hanger->kind != CONNECTOR_HANGER)
        return false;
    if (need->width_in < length_inches(hanger->width_from) - tape ||
        need->width_in > length_inches(hanger->width_to) + tape)
        return false;
    if (need->depth_in < length_inches(hanger->depth_from) - tape ||
        need->depth_in > length_inches(hanger->depth_to) + tape)
        return false;
    return need->carrier_in <= 0 || need->carrier_in >= length_inches(hanger->carrier_least) - tape;
}

/* Columns of the listing: 1.0, 1.15, 1.25, 1.6.  CD 0.9 lessens the value at 1.0; a longer one is never scaled up. */
double listed_load(const struct hanger *hanger, double cd)
{
    static const double duration[] = {1.0, 1.15, 1.25, 1.6};
    if (cd < 1.0)
        return cd * hanger->load[0];
    for (size_t i = 0; i < sizeof duration / sizeof *duration; i++)
        if (fabs(cd - duration[i]) < 1e-9)
            return hanger->load[i];
    return NAN;
}

double lighter_wood(double a, double b)
{
    return a > 0 && b > 0 ? fmin(a, b) : fmax(a, b);
}

double joists_gravity(const struct sizing *s, const struct joists *joists)
{
    const char *species = joists->species.text;
    for (size_t i = 0; species && i < s->catalog->design_count; i++)
        if (name_same(s->catalog->design[i].species, species))
            return s->catalog->design[i].gravity;
    return 0;
}

/* A listing holds for wood of its specific gravity.  In lighter wood a nail holds less, at the least in the ratio of
 * the dowel bearing strengths, Fe = 16,600 G^1.84 (NDS 2018 12.3.3): no yield mode falls faster.  Its maker's value for
 * such wood, which is seldom so low, belongs into the catalog. */
static double part_in_wood(const struct hanger *hanger, double gravity)
{
    double basis = 0;
    if (!hanger->gravity_basis || !number_parse(hanger->gravity_basis, &basis) || gravity <= 0 || gravity >= basis)
        return 1;
    return pow(gravity / basis, 1.84);
}

static const char *listed_note(struct sizing *s, const struct hanger *hanger, double gravity)
{
    double part = part_in_wood(hanger, gravity);
    if (part >= 1)
        return hanger->code;
    return arena_printf(s->arena, "%s, listed for wood of G %s: x %s in G %s (Fe of NDS 2018 12.3.3, the safe side)",
                        hanger->code, hanger->gravity_basis, number_text(s->arena, part, 3),
                        number_text(s->arena, gravity, 2));
}

struct check hanger_check(struct sizing *s, const struct hanger *hanger, const struct loads *lb, double gravity,
                          const char *name)
{
    struct check worst = {0};
    double part = part_in_wood(hanger, gravity);
    for (size_t i = 0; i < s->combo_count; i++) {
        const struct combination *combo = &s->combo[i];
        if (!combo_applies(combo, lb))
            continue;
        double listed = listed_load(hanger, combo->cd);
        struct check check =
            check_of(name, "listed load (hangers.csv)", combined(combo, lb), isnan(listed) ? 0 : listed * part, "lb");
        check.combination = combo->name;
        check.values = hanger->source;
        if (isnan(listed))
            check.note = arena_printf(s->arena, "%s: no listed load at this duration", hanger->code);
        else
            check.note = listed_note(s, hanger, gravity);
        check_worse(&worst, check);
    }
    if (lb->of[LOAD_UPLIFT] > 0 && hanger->kind == CONNECTOR_HANGER) {
        check_worse(&worst, uplift_check(s, hanger, lb->of[LOAD_UPLIFT], name));
        if (part < 1)
            unchecked_add(s, arena_printf(s->arena, "not checked: uplift of %s in wood lighter than it is listed for",
                                          hanger->code));
    }
    return worst;
}

static double price_of_one(const struct catalog *catalog, const char *item)
{
    const struct price *price = item ? catalog_cheapest(catalog, item) : NULL;
    return price && price->pack > 0 ? money_dollars(price->price) / decimal_value(price->pack) : INFINITY;
}

static double price_of_nails(const struct catalog *catalog, const char *code, int count)
{
    const struct fastener *nail = code ? catalog_fastener(catalog, code) : NULL;
    if (!nail || count == 0)
        return 0;
    double per_lb = price_of_one(catalog, nail->item);
    return nail->count_per_lb > 0 ? count * per_lb / nail->count_per_lb : count * per_lb;
}

static double price_of_hanger(const struct catalog *catalog, const struct hanger *hanger)
{
    return price_of_one(catalog, hanger->item) + price_of_nails(catalog, hanger->carrier_nail, hanger->carrier_count) +
           price_of_nails(catalog, hanger->member_nail, hanger->member_count);
}

size_t hangers_sorted(struct sizing *s, const struct hanger_need *need, const struct hanger ***out)
{
    const struct catalog *catalog = s->catalog;
    const struct hanger **list = arena_array(s->arena, catalog->hanger_count,
                                             sizeof *list); // NOLINT(bugprone-sizeof-expression): holds pointers
    double *price = arena_array(s->arena, catalog->hanger_count, sizeof *price);
    size_t count = 0;
    for (size_t i = 0; i < catalog->hanger_count; i++) {
        const struct hanger *hanger = &catalog->hangers[i];
        if (!hanger_fits(hanger, need))
            continue;
        double cost = price_of_hanger(catalog, hanger);
        size_t at = count++;
        for (; at > 0 && price[at - 1] > cost; at--) { /* equal prices keep the order of the file */
            price[at] = price[at - 1];
            list[at] = list[at - 1];
        }
        price[at] = cost;
        list[at] = hanger;
    }
    *out = list;
    return count;
}
