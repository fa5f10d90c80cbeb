/* A pocket cuts the wall's top plate through: the strap that ties it again. */
#include "size.h"

#include <math.h>

#include "sawbill/text.h"

/* IRC 2021 R602.6.1, top plate of a bearing or exterior wall cut by more than half its width: a galvanized metal tie of
 * 0.054 in x 1-1/2 in, eight 10d nails (0.148 in, 1-1/2 in long) on each side, 6 in past the opening.  Written for
 * pipes and ducts; taken for a pocket likewise (common practice). */
enum { NAILS_EACH_SIDE = 8 };
static const double nail_diameter_in = 0.148, nail_length_in = 1.5;

static const struct hanger *strap_of(const struct catalog *catalog, const char *item)
{
    for (size_t i = 0; i < catalog->hanger_count; i++)
        if (catalog->hangers[i].kind == CONNECTOR_STRAP && name_same(catalog->hangers[i].item, item))
            return &catalog->hangers[i];
    return NULL;
}

/* The strap that the assemblies count for each pocket. */
static const struct hanger *counted_strap(const struct catalog *catalog)
{
    for (size_t i = 0; i < catalog->assembly_count; i++) {
        const struct assembly_line *line = &catalog->assemblies[i];
        if (!line->item || !name_same(line->per, "beam end in a pocket") || line->count < DECIMAL_ONE)
            continue;
        const struct hanger *strap = strap_of(catalog, line->item);
        if (strap)
            return strap;
    }
    return NULL;
}

static bool nail_serves(const struct catalog *catalog, const char *code)
{
    const struct fastener *nail = code ? catalog_fastener(catalog, code) : NULL;
    return nail && length_inches(nail->diameter) >= nail_diameter_in - 1e-6 &&
           length_inches(nail->length) >= nail_length_in - 1e-6;
}

static int nails_each_side(const struct catalog *catalog, const struct hanger *strap)
{
    if (!strap || !nail_serves(catalog, strap->carrier_nail) || !nail_serves(catalog, strap->member_nail))
        return 0;
    return strap->carrier_count < strap->member_count ? strap->carrier_count : strap->member_count;
}

void pocket_check(struct sizing *s, const struct beam *beam, struct member_checks *checks)
{
    const struct text_value *engineer = &beam->plate_engineer;
    if (engineer->text && *engineer->text) {
        unchecked_add(s, arena_printf(s->arena, "not checked: the plate cut by the pocket at %s, by the engineer (%s)",
                                      checks->id, engineer->text));
        return;
    }
    const struct hanger *strap = counted_strap(s->catalog);
    struct check check = check_of("strap over the cut plate", "IRC 2021 R602.6.1", NAILS_EACH_SIDE,
                                  nails_each_side(s->catalog, strap), "nails");
    check.note = strap ? arena_printf(s->arena,
                                      "%s on each pocket: 0.054 in x 1-1/2 in, 6 in past the opening, eight 0.148 in x "
                                      "1-1/2 in nails each side",
                                      strap->code)
                       : "no row of assemblies.csv 'per' beam end in a pocket takes a strap of hangers.csv: add one, "
                         "or 'plate engineer = NAME, SHEET'";
    checks_add(s, checks, check);
}
