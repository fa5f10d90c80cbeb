/* Design: every check of every member in its governing order, the load path, and what was not checked. */
#include "workbook.h"

#include <math.h>
#include <string.h>

#include "sawbill/text.h"
#include "load_shown.h"
#include "terminal.h"

enum { D_ID, D_MEMBER, D_CHECK, D_CLAUSE, D_COMBINATION, D_AT, D_DEMAND, D_CAPACITY, D_UNIT, D_RATIO, D_RESULT };
enum { D_NOTE = D_RESULT + 1, D_VALUES, D_COLUMNS };

static const struct column_head HEADS[D_COLUMNS] = {
    {"For", 22, false},           {"Member", 28, false},      {"Check", 22, false},
    {"Clause", 20, false},        {"Combination", 17, false}, {"At, from end 1", 12, false},
    {"Demand", 11, true},         {"Capacity", 11, true},     {"Unit", 7, false},
    {"Ratio", 8, true},           {"Result", 15, false},      {"How", 40, false},
    {"Design values", 30, false},
};
static const struct column_head PATH_HEADS[] = {
    {"From", 0, false},         {"To", 0, false},      {"At", 0, false},
    {"Dead, lb", 0, true},      {"Live, lb", 0, true}, {"Of it attic, lb", 0, true},
    {"Roof live, lb", 0, true}, {"Snow, lb", 0, true},
};
enum { PATH_COLUMNS = sizeof PATH_HEADS / sizeof *PATH_HEADS };
_Static_assert((int)PATH_COLUMNS == 3 + (int)SHOWN_LOADS, "a column for each load");

/* An engineer's member is his: it gets a ratio, never a verdict of ours.  So do its ends, unless what we put under one
 * does not hold it. */
static const char *result_of(const struct design *design, const struct member_checks *member, const struct check *check)
{
    bool within = ratio_holds(check->ratio);
    if (member->specified)
        return within ? "as specified" : "as specified; over 1.00: ask the engineer";
    if (within && is_specified(design, member))
        return "as specified";
    return within ? "passes" : "FAILS";
}

static void add_ratio(struct page *page, int row, double ratio)
{
    const char *text = ratio_text(page->book->arena, ratio);
    double shown;
    if (isfinite(ratio) && number_parse(text, &shown))
        page_number(page, row, D_RATIO, LOOK_RATIO, shown);
    else
        page_text(page, row, D_RATIO, LOOK_RATIO, text);
}

static void add_amount(struct page *page, int row, int column, double value, const char *unit)
{
    if (isfinite(value))
        page_number(page, row, column, strcmp(unit, "in") == 0 ? LOOK_INCHES : LOOK_TENTHS, value);
    else
        page_text(page, row, column, LOOK_TEXT, "none");
}

static void add_check(struct page *page, int row, const struct design *design, const struct member_checks *member,
                      const struct check *check)
{
    struct arena *a = page->book->arena;
    bool fails = !ratio_holds(check->ratio);
    page_text(page, row, D_ID, LOOK_WRAP, member->id);
    page_text(page, row, D_MEMBER, LOOK_WRAP, member->member);
    page_text(page, row, D_CHECK, LOOK_WRAP,
              check->governs ? arena_printf(a, "%s (governs)", check->name) : check->name);
    page_text(page, row, D_CLAUSE, LOOK_WRAP, check->clause);
    page_text(page, row, D_COMBINATION, LOOK_WRAP, check->combination);
    page_text(page, row, D_AT, LOOK_TEXT,
              isfinite(check->at_in) ? length_tape(a, length_from_inches(check->at_in)) : "");
    add_amount(page, row, D_DEMAND, check->demand, check->unit);
    add_amount(page, row, D_CAPACITY, check->capacity, check->unit);
    page_text(page, row, D_UNIT, LOOK_TEXT, check->unit);
    add_ratio(page, row, check->ratio);
    page_text(page, row, D_RESULT, fails ? LOOK_WARN : LOOK_WRAP, result_of(design, member, check));
    page_text(page, row, D_NOTE, LOOK_WRAP, check->note ? check->note : "");
    page_text(page, row, D_VALUES, LOOK_WRAP, check->values ? check->values : "");
}

static void add_step(struct page *page, int row, const struct path_step *step)
{
    page_text(page, row, 0, LOOK_WRAP, step->from);
    page_text(page, row, 1, LOOK_WRAP, step->to);
    page_text(page, row, 2, LOOK_TEXT,
              isfinite(step->at_in) ? length_tape(page->book->arena, length_from_inches(step->at_in)) : "");
    for (int i = 0; i < SHOWN_LOADS; i++)
        add_amount(page, row, 3 + i, load_shown(&step->lb, i), "lb");
}

static int add_path(struct page *page, int row, const struct design *design)
{
    if (!design->path_count)
        return row;
    page_band(page, row++, PATH_COLUMNS, LOOK_SECTION, "Load path, unfactored");
    page_heads(page, row++, PATH_HEADS, PATH_COLUMNS);
    for (size_t i = 0; i < design->path_count; i++)
        add_step(page, row++, &design->path[i]);
    return row + 1;
}

static int add_texts(struct page *page, int row, const char *title, const char *const *text, size_t count)
{
    if (!count)
        return row;
    page_band(page, row++, D_COLUMNS, LOOK_SECTION, title);
    for (size_t i = 0; i < count; i++)
        page_paragraph(page, row++, 0, D_COLUMNS - 1, LOOK_PLAIN_WRAP,
                       arena_printf(page->book->arena, "- %s", without_heading(text[i])));
    return row + 1;
}

void build_design(struct workbook *w)
{
    struct page *page = w->design;
    const struct design *design = w->run->design;
    page_widths(page, HEADS, D_COLUMNS);
    page_title(w, page, "Design");
    page_text(page, 2, 0, LOOK_UNDER_TITLE,
              "Results of the run, ratios rounded up. Sizes do not follow the sheet: change the job and run again.");
    page_heads(page, HEAD_ROW, HEADS, D_COLUMNS);
    page->frozen = FIRST_ROW;
    int row = FIRST_ROW;
    for (size_t i = 0; design && i < design->member_count; i++)
        for (size_t k = 0; k < design->members[i]->count; k++)
            add_check(page, row++, design, design->members[i], &design->members[i]->check[k]);
    page->filter_first = HEAD_ROW;
    page->filter_last = row - 1;
    row++;
    if (design) {
        row = add_path(page, row, design);
        row = add_texts(page, row, "What was not checked", design->unchecked, design->unchecked_count);
    }
    page_paragraph(page, row, 0, D_COLUMNS - 1, LOOK_WARN, caution_text());
}
