/* Basis: what the bid rests on: editions, assumptions, messages, scope, exclusions, where the values come from. */
#include "raising_shown.h"
#include "workbook.h"

enum { B_ABOUT, B_TEXT, B_COLUMNS };

static const struct column_head HEADS[B_COLUMNS] = {{"About", 24, false}, {"What the bid rests on", 120, false}};

struct basis {
    struct workbook *w;
    int row;
};

static void add(struct basis *b, const char *about, const char *text)
{
    if (!text || !*text)
        return;
    page_text(b->w->basis, b->row, B_ABOUT, LOOK_TEXT, about);
    page_text(b->w->basis, b->row++, B_TEXT, LOOK_WRAP, text);
}

static void add_texts(struct basis *b, const char *about, const struct texts_value *texts)
{
    for (size_t i = 0; i < texts->count; i++)
        add(b, about, texts->item[i].text);
}

static void add_job(struct basis *b)
{
    const struct job_facts *facts = &b->w->job->facts;
    struct arena *a = b->w->arena;
    add(b, "job", job_title(a, b->w->job));
    add(b, "client", facts->client.text);
    add(b, "site", facts->site.text);
    add(b, "date", date_text(a, facts->date.date));
    add(b, "status", b->w->budget ? "BUDGET: open questions became assumptions, listed below" : "bid");
    add_texts(b, "scope", &facts->scope);
    add_texts(b, "excluded", &facts->exclude);
}

static const char *tax_text(enum tax_mode mode)
{
    switch (mode) {
    case TAX_ON_MATERIALS_SHOWN:
        return "sales tax on materials is shown under the price of the classes";
    case TAX_ON_PRICE:
        return "sales tax is charged on the price and shown";
    default:
        return "sales tax on materials is a cost: it is in the direct cost and marked up with it";
    }
}

static const char *method_text(enum method method)
{
    switch (method) {
    case METHOD_ADD:
        return "add: overhead, contingency and profit are each a share of direct cost";
    case METHOD_MARGIN:
        return "margin: overhead, contingency and profit are shares of the price";
    default:
        return "compound: direct cost, then overhead, then contingency, then profit, each on all before it";
    }
}

static void add_money(struct basis *b)
{
    const struct estimate *estimate = b->w->estimate;
    add(b, "method", method_text(estimate->method));
    add(b, "tax", tax_text(estimate->tax_mode));
    add(b, "rounding",
        "each line is rounded to the cent once, half away from zero; the price has a rounding line of its "
        "own");
    add(b, "suppliers", b->w->report->outcome->run->bought_from);
    add(b, "sheet", "warm cells are inputs; every total follows them. Counts, sizes and cuts are results of the run");
}

static void add_messages(struct basis *b)
{
    const struct diags *diags = b->w->report->diags;
    struct arena *a = b->w->arena;
    for (size_t i = 0; diags && i < diags->count; i++) {
        const struct diag *diag = &diags->item[i];
        const char *seen = diag->acknowledged ? " (acknowledged in the job)" : "";
        /* Without file and line: the job reads the same in both its spellings. */
        add(b, arena_printf(a, "%s %s", diag_class_name(diag->class), diag_code_name(diag->code)),
            arena_printf(a, "%s%s", diag->text, seen));
    }
}

static bool used_before(const struct design *design, size_t index)
{
    for (size_t i = 0; i < index; i++)
        if (design->beams[i].member == design->beams[index].member)
            return true;
    return false;
}

static void add_member(struct basis *b, const struct member *member)
{
    struct arena *a = b->w->arena;
    const struct design_row *values = member->values;
    const char *from = values ? arena_printf(a, "; design values %s %s, %s%s", values->species, values->grade,
                                             or_dash(values->source), values->seen ? "" : " (unverified)")
                              : "";
    add(b, "member",
        arena_printf(a, "%s: %s %s, %s%s", member->code, member->size, member->material, or_dash(member->source),
                     from));
}

static void add_hanger(struct basis *b, const struct hanger *hanger)
{
    if (hanger)
        add(b, "connector", arena_printf(b->w->arena, "%s: %s", hanger->code, or_dash(hanger->source)));
}

/* The hanger of the joist stands at one before it. */
static bool hung_before(const struct design *design, size_t joists, size_t index)
{
    for (size_t i = 0; i <= joists; i++)
        for (size_t k = 0; k < (i < joists ? design->joists[i].count : index); k++)
            if (design->joists[i].end[k].hanger == design->joists[joists].end[index].hanger)
                return true;
    return false;
}

static void add_sources(struct basis *b)
{
    const struct design *design = b->w->run->design;
    if (!design)
        return;
    for (size_t i = 0; i < design->beam_count; i++)
        if (design->beams[i].member && !used_before(design, i))
            add_member(b, design->beams[i].member);
    for (size_t i = 0; i < design->joists_count; i++) {
        for (size_t k = 0; k < design->joists[i].count; k++)
            if (!hung_before(design, i, k))
                add_hanger(b, design->joists[i].end[k].hanger);
        add_hanger(b, design->joists[i].strap);
    }
    for (size_t i = 0; i < design->basis_count; i++)
        add(b, "design", design->basis[i]);
    for (size_t i = 0; i < design->unchecked_count; i++)
        add(b, "not checked", without_heading(design->unchecked[i]));
}

static void add_raising(struct basis *b)
{
    const struct takeoff *takeoff = b->w->run->takeoff;
    for (size_t i = 0; i < takeoff->raising_count; i++) {
        add(b, "raising", raising_text(b->w->arena, &takeoff->raising[i]));
        for (size_t k = 0; k < takeoff->raising[i].way_count; k++)
            add(b, "raising", way_in_text(b->w->arena, &takeoff->raising[i], k));
    }
}

void build_basis(struct workbook *w)
{
    struct page *page = w->basis;
    struct basis b = {.w = w, .row = FIRST_ROW};
    page_widths(page, HEADS, B_COLUMNS);
    page_title(w, page, "Basis");
    page_text(page, 2, 0, LOOK_UNDER_TITLE, "Assumptions, editions, messages, scope, sources.");
    page_heads(page, HEAD_ROW, HEADS, B_COLUMNS);
    page->frozen = FIRST_ROW;
    add_job(&b);
    add_money(&b);
    add_messages(&b);
    add_sources(&b);
    add_raising(&b);
    add(&b, "caution", caution_text());
    page->filter_first = HEAD_ROW;
    page->filter_last = b.row - 1;
}
