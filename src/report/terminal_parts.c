/* Parts that several terminal reports show: the head, what is open, the caution, small texts. */
#include "terminal.h"

#include <math.h>
#include <string.h>

const char *caution_text(void)
{
    return "Bearing walls, temporary support and beam sizes are subject to local code, a permit and a licensed "
           "professional. This program prices and screens; it does not replace the design professional.";
}

const struct run *report_run(const struct report *report)
{
    return report->outcome ? report->outcome->run : NULL;
}

char *pounds_text(struct arena *arena, double pounds)
{
    if (!isfinite(pounds) || fabs(pounds) >= 1e15)
        return arena_strdup(arena, "?");
    long long whole = llround(pounds);
    char *digits = arena_printf(arena, "%lld", whole < 0 ? -whole : whole);
    size_t count = strlen(digits);
    struct buffer out = {.arena = arena};
    buffer_add(&out, whole < 0 ? "-" : "");
    for (size_t i = 0; i < count; i++) {
        if (i > 0 && (count - i) % 3 == 0)
            buffer_add(&out, ",");
        buffer_add_n(&out, digits + i, 1);
    }
    return out.text;
}

const char *place_text(struct arena *arena, double at_in)
{
    return isfinite(at_in) ? length_tape(arena, length_from_inches(at_in)) : "";
}

char *plies_text(struct arena *arena, const struct member *member, int plies)
{
    if (!member)
        return arena_strdup(arena, "none");
    return arena_printf(arena, "%d - %s", plies, member->code);
}

const struct check *checks_governing(const struct member_checks *checks)
{
    const struct check *most = NULL;
    for (size_t i = 0; i < checks->count; i++)
        if (!most || checks->check[i].ratio > most->ratio)
            most = &checks->check[i];
    return most;
}

bool node_same(const char *a, const char *b)
{
    size_t length = strcspn(a, ",");
    return length == strcspn(b, ",") && strncmp(a, b, length) == 0;
}

bool is_specified(const struct design *design, const struct member_checks *checks)
{
    for (size_t i = 0; i < design->member_count; i++)
        if (design->members[i]->specified && node_same(design->members[i]->id, checks->id))
            return true;
    return checks->specified;
}

static const char *or_empty(const char *text)
{
    return text ? text : "";
}

/* "2 asks open, 1 check fails, a budget": why the job is not to be signed. */
static const char *why_unsigned(struct arena *arena, const struct report *report)
{
    struct buffer out = {.arena = arena};
    size_t asks = report->diags ? diag_count(report->diags, DIAG_ASK) : 0;
    const struct run *run = report_run(report);
    if (report->job && report->job->facts.status.choice == STATUS_BUDGET)
        buffer_add(&out, "BUDGET, with assumptions");
    if (asks > 0)
        buffer_printf(&out, "%s%zu open question%s", out.length ? "; " : "", asks, asks == 1 ? "" : "s");
    if (run && run->design && !run->design->passes)
        buffer_printf(&out, "%sa check fails", out.length ? "; " : "");
    return buffer_text(&out);
}

void screen_head(struct screen *screen, const struct report *report)
{
    struct arena *arena = screen->out.arena;
    const struct job_facts *facts = &report->job->facts;
    screen_printf(screen, WEIGHT_BOLD, "%s", or_empty(facts->name.text));
    struct buffer line = {.arena = arena};
    if (facts->number.text)
        buffer_printf(&line, "job %s, ", facts->number.text);
    buffer_add(&line, facts->date.at ? date_text(arena, facts->date.date) : "no date");
    buffer_printf(&line, ", status %s", facts->status.choice == STATUS_BUDGET ? "BUDGET" : "bid");
    if (facts->client.text)
        buffer_printf(&line, ", for %s", facts->client.text);
    screen_printf(screen, WEIGHT_PLAIN, "%s", line.text);
    if (report->signable)
        return;
    const char *why = why_unsigned(arena, report);
    screen_printf(screen, WEIGHT_BOLD, "NOT FOR SIGNATURE%s%s", *why ? ": " : "", why);
}

static void add_failing(struct screen *screen, const struct member_checks *checks)
{
    struct arena *arena = screen->out.arena;
    const struct check *most = checks_governing(checks);
    if (!most || checks->passes || checks->specified)
        return;
    const char *in = *or_empty(most->combination) ? arena_printf(arena, " under %s", most->combination) : "";
    const char *how = isfinite(most->ratio)
                          ? arena_printf(arena, "ratio %s, more than 1.00", ratio_text(arena, most->ratio))
                      : most->note ? most->note
                                   : "no capacity";
    screen_bullet(screen, arena_printf(arena, "%s: %s%s: %s", checks->id, most->name, in, how));
}

static size_t failing_count(const struct design *design)
{
    size_t count = 0;
    for (size_t i = 0; i < design->member_count; i++)
        count += !design->members[i]->passes && !design->members[i]->specified;
    return count;
}

/* A budget turns its questions into assumptions: notes that keep the code of the question. */
static bool is_assumption(const struct diag *diag)
{
    return diag->class == DIAG_NOTE && diag_code_class(diag->code) == DIAG_ASK;
}

static bool is_ask(const struct diag *diag)
{
    return diag->class == DIAG_ASK;
}

static void list_messages(struct screen *screen, const struct diags *diags, const char *head,
                          bool (*wanted)(const struct diag *diag))
{
    size_t shown = 0;
    for (size_t i = 0; diags && i < diags->count; i++) {
        const struct diag *diag = &diags->item[i];
        if (!wanted(diag))
            continue;
        if (shown++ == 0)
            screen_heading(screen, "%s", head);
        screen_bullet(screen, arena_printf(screen->out.arena, "%s: %s", diag_code_name(diag->code), diag->text));
    }
}

void screen_open(struct screen *screen, const struct report *report)
{
    const struct run *run = report_run(report);
    list_messages(screen, report->diags, "Open questions", is_ask);
    list_messages(screen, report->diags, "Assumptions of the budget", is_assumption);
    if (!run || !run->design || failing_count(run->design) == 0)
        return;
    screen_heading(screen, "Checks that fail");
    for (size_t i = 0; i < run->design->member_count; i++)
        add_failing(screen, run->design->members[i]);
}

void screen_caution(struct screen *screen)
{
    screen_heading(screen, "Caution");
    screen_printf(screen, WEIGHT_PLAIN, "%s", caution_text());
}
