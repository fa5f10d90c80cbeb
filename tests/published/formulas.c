/* Beam formulas with their figures: row by row in the order of the rows that the tests hold, which say how each is read
 * off a solved beam. */
#include "published.h"

#include <stdlib.h>

#include "sawbill/beam.h"

#include "size/beam_formula_values.h"

static bool same_value(const struct sheet *sheet, size_t at, const struct formula_row *row, double *here)
{
    struct beam_support support[CASE_SUPPORTS];
    struct beam_spans spans = formula_spans(&formula_cases[row->of], support);
    double printed = published_number(sheet, at, "computed_from_formula");
    double tolerance = published_number(sheet, at, "suggested_rel_tol") * fabs(printed);
    *here = spans_solve(&spans) ? formula_value(row, &spans) : NAN;
    return isfinite(*here) && fabs(*here - printed) <= tolerance;
}

void published_formulas(struct published *p)
{
    const struct sheet *sheet = published_sheet(p, "examples", "beam_formulas.csv");
    if (!sheet)
        return;
    struct tally *tally = published_tally(p, "figures of beam formulas");
    tally->why_left_out = "cases beyond those that the tests hold";
    for (size_t at = 1; at < sheet->count; at++) {
        const char *id = published_cell(sheet, at, "id"), *quantity = published_cell(sheet, at, "quantity");
        if (at > sizeof formula_rows / sizeof *formula_rows ||
            strtoul(*id ? id + 1 : id, NULL, 10) != formula_rows[at - 1].of + 1) {
            tally->left_out++;
            continue;
        }
        double here;
        bool same = same_value(sheet, at, &formula_rows[at - 1], &here);
        published_count(
            p, tally, published_from_memory(sheet, at), arena_printf(p->arena, "%s %s", id, quantity), same,
            arena_printf(p->arena, "printed %s, %g here", published_cell(sheet, at, "computed_from_formula"), here));
    }
}
