/* The client's file: price, scope by quantity, allowances, alternates, exclusions, draws, dates, a place to sign.
 * Values only: no formula, name, link or comment, and no cost, hours, ratio or margin of ours. */
#include <string.h>

#include "forgotten_shown.h"
#include "safe_write.h"
#include "workbook.h"

enum { K_TEXT, K_MONEY, K_COLUMNS };
static const struct column_head HEADS[K_COLUMNS] = {{"", 78, false}, {"", 20, true}};

struct client {
    struct arena *arena;
    const struct report *report;
    const struct job *job;
    const struct run *run;
    struct page *page;
    int row;
    bool budget;
};

static void section(struct client *c, const char *title)
{
    c->row++;
    page_band(c->page, c->row++, K_COLUMNS, LOOK_SECTION, title);
}

static void line(struct client *c, const char *text)
{
    if (text && *text)
        page_paragraph(c->page, c->row++, 0, K_COLUMNS - 1, LOOK_PLAIN_WRAP, text);
}

static void line_money(struct client *c, const char *text, money_t amount)
{
    page_text(c->page, c->row, K_TEXT, LOOK_WRAP, text);
    page_number(c->page, c->row++, K_MONEY, LOOK_FIXED_MONEY, money_dollars(amount));
}

/* A budget is a range, never a price to hold us to. */
static void add_price(struct client *c)
{
    const struct estimate *estimate = c->run->estimate;
    if (!c->budget) {
        page_text(c->page, c->row, K_TEXT, LOOK_PRICE_TEXT, "Price");
        page_number(c->page, c->row++, K_MONEY, LOOK_FIXED_PRICE, money_dollars(estimate->price));
        return;
    }
    page_text(c->page, c->row++, K_TEXT, LOOK_PRICE_TEXT,
              arena_printf(c->arena, "Budget price, about %s to %s", money_show(c->arena, estimate->low_price),
                           money_show(c->arena, estimate->high_price)));
}

static void add_head(struct client *c)
{
    const struct job_facts *facts = &c->job->facts;
    struct arena *a = c->arena;
    page_text(c->page, 0, 0, LOOK_TITLE, c->budget ? "Budget price" : "Bid");
    page_text(c->page, 1, 0, LOOK_UNDER_TITLE, job_title(a, c->job));
    c->row = 2;
    if (facts->client.text && *facts->client.text)
        line(c, arena_printf(a, "For: %s", facts->client.text));
    if (facts->site.text && *facts->site.text)
        line(c, arena_printf(a, "Site: %s", facts->site.text));
    line(c, arena_printf(a, "Date: %s", date_text(a, facts->date.date)));
    if (c->budget)
        page_paragraph(c->page, c->row++, 0, K_COLUMNS - 1, LOOK_WARN,
                       "BUDGET, for planning only: it rests on the assumptions listed below and is not for signature");
    else if (!c->report->signable)
        page_paragraph(c->page, c->row++, 0, K_COLUMNS - 1, LOOK_WARN,
                       "NOT FOR SIGNATURE: the structure is not settled yet; the price may change");
    c->row++;
    add_price(c);
}

static void add_walls(struct client *c)
{
    for (size_t i = 0; i < c->job->wall_count; i++) {
        const struct wall *wall = &c->job->walls[i];
        if (wall->status.choice != WALL_COMES_OUT)
            continue;
        line(c, arena_printf(c->arena, "Wall to come out: %s long, %s high", length_tape(c->arena, wall_length(wall)),
                             length_tape(c->arena, wall->height.length)));
    }
}

/* Square feet of ceiling opened along a beam, to the whole foot. */
static int ceiling_sqft(const struct beam_design *beam)
{
    double wide = length_feet(beam->width) + 2.0 * length_feet(beam->beam->ceiling_each_side.length);
    return (int)(length_feet(beam->cut_length) * wide + 0.5);
}

/* "3 plies of 2x10 Douglas Fir-Larch": what is bought, without our codes. */
static const char *built_of(struct arena *arena, int plies, const struct member *member)
{
    return arena_printf(arena, "%d %s of %s %s", plies, plies == 1 ? "ply" : "plies", member->size, member->material);
}

static void add_beams(struct client *c)
{
    struct arena *a = c->arena;
    const struct design *design = c->run->design;
    for (size_t i = 0; design && i < design->beam_count; i++) {
        const struct beam_design *beam = &design->beams[i];
        if (!beam->member || beam->beam->status.choice == NE_EXISTING)
            continue;
        const char *over = beam->inner_count == 0   ? ""
                           : beam->inner_count == 1 ? " over one more support between its ends"
                                                    : " over more supports between its ends";
        line(c, arena_printf(a, "New %s beam: %s, %s long%s; ceiling opened along it: about %d sq ft",
                             choice_name("beam", "set", beam->beam->set.choice), built_of(a, beam->plies, beam->member),
                             length_tape(a, beam->cut_length), over, ceiling_sqft(beam)));
    }
}

static const char *new_post(struct client *c, const struct post_design *post)
{
    const struct job *job = c->run->job;
    if (!post->member || post->post->status.choice == NE_EXISTING ||
        !carries_something(job, KIND_POST, (size_t)(post->post - job->posts)))
        return NULL;
    return arena_printf(c->arena, "%s, %s high", built_of(c->arena, post->plies, post->member),
                        length_tape(c->arena, post->post->height.length));
}

/* Posts that are alike stand on one line. */
static void add_posts(struct client *c)
{
    const struct design *design = c->run->design;
    struct lines seen = {0};
    for (size_t i = 0; design && i < design->post_count; i++) {
        const char *post = new_post(c, &design->posts[i]);
        bool known = !post;
        for (size_t j = 0; !known && j < seen.count; j++)
            known = strcmp(seen.item[j], post) == 0;
        if (known)
            continue;
        lines_add(c->arena, &seen, post);
        int alike = 0;
        for (size_t j = i; j < design->post_count; j++) {
            const char *other = new_post(c, &design->posts[j]);
            alike += other && strcmp(other, post) == 0;
        }
        line(c, alike == 1 ? arena_printf(c->arena, "New post: %s", post)
                           : arena_printf(c->arena, "%d new posts, each %s", alike, post));
    }
}

static void add_scope(struct client *c)
{
    section(c, "Scope");
    for (size_t i = 0; i < c->job->facts.scope.count; i++)
        line(c, c->job->facts.scope.item[i].text);
    add_walls(c);
    add_beams(c);
    add_posts(c);
}

static void add_allowances(struct client *c)
{
    bool any = false;
    for (size_t i = 0; i < c->run->estimate->line_count; i++) {
        const struct estimate_line *from = &c->run->estimate->line[i];
        if (from->class != CLASS_ALLOWANCES || from->from != FROM_JOB)
            continue;
        if (!any)
            section(c, "Allowances, in the price");
        any = true;
        line_money(c, from->what, from->total);
    }
    if (any)
        line(c, "An allowance is settled at what it comes to; the difference is added or credited.");
}

static void add_alternates(struct client *c)
{
    const struct outcome *outcome = c->report->outcome;
    bool any = false;
    for (size_t i = 0; i < outcome->alternate_count; i++) {
        const struct alternate_price *price = &outcome->alternate[i];
        if (!price->ok)
            continue;
        if (!any)
            section(c, "Alternates");
        any = true;
        const char *sign = price->difference < 0 ? "deduct" : "add";
        line_money(c, arena_printf(c->arena, "%s: %s", or_dash(price->alternate->what.text), sign),
                   price->difference < 0 ? -price->difference : price->difference);
    }
}

static void add_exclusions(struct client *c)
{
    const struct texts_value *exclude = &c->job->facts.exclude;
    const struct takeoff *takeoff = c->run ? c->run->takeoff : NULL;
    size_t forgotten = 0;
    for (size_t i = 0; takeoff && i < takeoff->forgotten_count; i++)
        forgotten += takeoff->forgotten[i].state == FORGOTTEN_EXCLUDED;
    if (exclude->count + forgotten == 0)
        return;
    section(c, "Not in the price");
    for (size_t i = 0; i < exclude->count; i++)
        line(c, exclude->item[i].text);
    for (size_t i = 0; takeoff && i < takeoff->forgotten_count; i++)
        if (takeoff->forgotten[i].state == FORGOTTEN_EXCLUDED)
            line(c, forgotten_text(c->arena, &takeoff->forgotten[i]));
}

static bool code_before(const struct diags *diags, size_t index)
{
    for (size_t i = 0; i < index; i++)
        if (diags->item[i].code == diags->item[index].code)
            return true;
    return false;
}

/* A budget's open questions, each kind once; the message itself is for the one who writes the job file. */
static void add_assumptions(struct client *c)
{
    const struct diags *diags = c->report->diags;
    if (!c->budget || !diags)
        return;
    section(c, "Assumed here, to be settled before a bid");
    for (size_t i = 0; i < diags->count; i++)
        if (diag_code_class(diags->item[i].code) == DIAG_ASK && !code_before(diags, i))
            line(c, diag_code_title(diags->item[i].code));
}

static void add_draws(struct client *c)
{
    const struct estimate *estimate = c->run->estimate;
    if (!estimate->draw_count || c->budget)
        return;
    section(c, "Draws");
    for (size_t i = 0; i < estimate->draw_count; i++)
        line_money(
            c,
            arena_printf(c->arena, "%s %s", percent_text(c->arena, estimate->draw[i].percent), estimate->draw[i].when),
            estimate->draw[i].amount);
}

static void add_tax(struct client *c)
{
    const struct estimate *estimate = c->run->estimate;
    if (estimate->tax_mode == TAX_ON_PRICE && estimate->tax && !c->budget)
        line_money(c, "of which sales tax", estimate->tax);
}

static void add_validity(struct client *c)
{
    struct arena *a = c->arena;
    const struct count_value *days = &c->job->bid.valid_for;
    struct date date = c->job->facts.date.date;
    section(c, "Dates");
    line(c, arena_printf(a, "Prices of %s.", date_text(a, date)));
    if (days->count > 0 && !c->budget)
        line(c, arena_printf(a, "Valid for %d days, to %s.", days->count, date_text(a, date_plus(date, days->count))));
}

static void add_signatures(struct client *c)
{
    if (!c->report->signable)
        return;
    section(c, "Agreed");
    static const char *const who[] = {"Client, name and date", "Contractor, name and date"};
    for (size_t i = 0; i < 2; i++) {
        c->row += 2;
        page_band(c->page, c->row++, K_COLUMNS, LOOK_SIGN, "");
        page_text(c->page, c->row++, K_TEXT, LOOK_UNDER_TITLE, who[i]);
    }
}

static struct book *make_book(struct arena *arena, const struct report *report)
{
    struct client c = {.arena = arena,
                       .report = report,
                       .job = report->job,
                       .run = report->outcome->run,
                       .budget = is_budget(report->job)};
    struct book *book = book_new(arena);
    book->title = job_title(arena, c.job);
    book->subject = c.budget ? "budget" : "bid";
    book->header = c.budget ? "BUDGET, not for signature" : (report->signable ? "" : "Not for signature");
    book->footer = arena_printf(arena, "%s, %s", book->title, date_text(arena, c.job->facts.date.date));
    book->date = c.job->facts.date.date;
    c.page = book_page(book, c.budget ? "Budget" : "Bid");
    c.page->upright = true;
    page_widths(c.page, HEADS, K_COLUMNS);
    add_head(&c);
    add_tax(&c);
    add_scope(&c);
    add_allowances(&c);
    add_alternates(&c);
    add_exclusions(&c);
    add_assumptions(&c);
    add_draws(&c);
    add_validity(&c);
    section(&c, "Please note");
    page_paragraph(c.page, c.row++, 0, K_COLUMNS - 1, LOOK_NOTE, caution_text());
    add_signatures(&c);
    return book;
}

enum write_status report_client(struct arena *arena, const struct report *report, const char *path,
                                const char **written, const char **why)
{
    *written = path;
    if (!report->outcome || !report->outcome->run || !report->outcome->run->estimate) {
        *why = "there is no estimate to show";
        return WRITE_INTERNAL;
    }
    return safe_write_book(make_book(arena, report), path, written, why);
}
