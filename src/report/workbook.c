/* The cost workbook as a whole. */
#include "workbook.h"

#include <string.h>

#include "safe_write.h"

const char *or_dash(const char *text)
{
    return text && *text ? text : "-";
}

const char *stock_length(struct arena *arena, length_t length)
{
    if (!length)
        return "";
    if (length % LENGTH_FOOT == 0)
        return arena_printf(arena, "%d ft", (int)(length / LENGTH_FOOT));
    return length_tape(arena, length);
}

const char *without_heading(const char *text)
{
    static const char heading[] = "not checked: ";
    return strncmp(text, heading, sizeof heading - 1) == 0 ? text + sizeof heading - 1 : text;
}

bool is_budget(const struct job *job)
{
    return job->facts.status.choice == STATUS_BUDGET;
}

const char *job_title(struct arena *arena, const struct job *job)
{
    const char *number = job->facts.number.text, *name = job->facts.name.text;
    if (number && *number)
        return arena_printf(arena, "%s %s", number, name ? name : "");
    return name ? name : "";
}

length_t wall_length(const struct wall *wall)
{
    return wall->length.at ? wall->length.length : wall->to.length - wall->from.length;
}

void lines_add(struct arena *arena, struct lines *lines, const char *text)
{
    lines->item = arena_more(arena, lines->item, lines->count, &lines->capacity, sizeof *lines->item);
    lines->item[lines->count++] = text;
}

struct lines open_questions(struct arena *arena, const struct report *report)
{
    struct lines lines = {0};
    for (size_t i = 0; report->diags && i < report->diags->count; i++) {
        const struct diag *diag = &report->diags->item[i];
        if (diag->class == DIAG_ASK)
            lines_add(arena, &lines, arena_printf(arena, "%s: %s", diag_code_name(diag->code), diag->text));
    }
    return lines;
}

struct lines failing_checks(struct arena *arena, const struct report *report)
{
    struct lines lines = {0};
    const struct design *design = report->outcome->run->design;
    for (size_t i = 0; design && i < design->member_count; i++) {
        const struct member_checks *member = design->members[i];
        for (size_t k = 0; k < member->count; k++)
            if (!ratio_holds(member->check[k].ratio))
                lines_add(arena, &lines,
                          arena_printf(arena, "%s, %s: ratio %s (%s)", member->id, member->check[k].name,
                                       ratio_text(arena, member->check[k].ratio), member->check[k].combination));
    }
    return lines;
}

static const char *counted(struct arena *arena, size_t count, const char *one, const char *many)
{
    return arena_printf(arena, "%zu %s", count, count == 1 ? one : many);
}

const char *why_not_signable(struct arena *arena, const struct report *report)
{
    if (report->signable)
        return NULL;
    if (is_budget(report->job))
        return "a budget, on assumptions";
    size_t asks = open_questions(arena, report).count, fails = failing_checks(arena, report).count;
    const char *ask = counted(arena, asks, "question is open", "questions are open");
    const char *fail = counted(arena, fails, "check fails", "checks fail");
    if (asks && fails)
        return arena_printf(arena, "%s, %s", ask, fail);
    if (asks)
        return ask;
    return fails ? fail : "something is left for an engineer";
}

void page_title(const struct workbook *w, struct page *page, const char *title)
{
    const char *date = date_text(w->arena, w->job->facts.date.date);
    const char *stamp = w->budget ? "BUDGET. " : "";
    page_text(page, 0, 0, LOOK_TITLE, arena_printf(w->arena, "%s", title));
    page_text(page, 1, 0, LOOK_UNDER_TITLE,
              arena_printf(w->arena, "%sINTERNAL: costs and markup, not for the client. %s, %s", stamp,
                           job_title(w->arena, w->job), date));
}

static void add_pages(struct workbook *w)
{
    struct book *book = w->book;
    w->recap = book_page(book, "Recap");
    w->bill = book_page(book, "Estimate");
    w->labor = book_page(book, "Labor");
    w->takeoff = book_page(book, "Takeoff");
    w->buying = book_page(book, "Order");
    w->sticks = book_page(book, "Cuts");
    w->design = book_page(book, "Design");
    w->field = book_page(book, "Field");
    w->prices = book_page(book, "Prices");
    w->basis = book_page(book, "Basis");
}

struct book *workbook_book(struct arena *arena, const struct report *report)
{
    const struct run *run = report->outcome->run;
    struct workbook w = {.arena = arena,
                         .report = report,
                         .job = report->job,
                         .run = run,
                         .order = run->order,
                         .estimate = run->estimate,
                         .book = book_new(arena),
                         .budget = is_budget(report->job)};
    const char *date = date_text(arena, w.job->facts.date.date), *title = job_title(arena, w.job);
    w.book->title = title;
    w.book->subject = w.budget ? "budget, internal" : "bid, internal";
    w.book->header = w.budget ? "BUDGET - INTERNAL: costs and markup, not for the client"
                              : "INTERNAL: costs and markup, not for the client";
    w.book->footer = arena_printf(arena, "%s, %s", title, date);
    w.book->date = w.job->facts.date.date;
    add_pages(&w);
    build_prices(&w);
    build_labor(&w);
    build_order(&w);
    build_estimate(&w);
    build_recap(&w);
    build_takeoff(&w);
    build_cuts(&w);
    build_design(&w);
    build_field(&w);
    build_basis(&w);
    return w.book;
}

enum write_status report_workbook(struct arena *arena, const struct report *report, const char *path,
                                  const char **written, const char **why)
{
    *written = path;
    if (!report->outcome || !report->outcome->run || !report->outcome->run->estimate) {
        *why = "there is no estimate to show";
        return WRITE_INTERNAL;
    }
    return safe_write_book(workbook_book(arena, report), path, written, why);
}
