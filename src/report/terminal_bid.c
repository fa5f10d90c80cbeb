/* sawbill bid on the terminal: the price, how it comes about, the beams, what is open. */
#include "terminal.h"

#include "forgotten_shown.h"

#include <string.h>

static const struct column class_columns[] = {
    {"Class", false, true},       {"Direct", true, false}, {"Overhead", true, false},
    {"Contingency", true, false}, {"Profit", true, false}, {"Price", true, false},
};

static const char *class_label(struct arena *arena, const struct estimate *estimate, const struct class_total *total)
{
    if (!total->own)
        return class_name(total->class);
    const char *what = total->line < estimate->line_count ? estimate->line[total->line].what : "";
    return arena_printf(arena, "%s, own markup: %s", class_name(total->class), what);
}

static void add_class(struct table *table, const struct estimate *estimate, const struct class_total *total)
{
    struct arena *arena = table->arena;
    struct table_row *row = table_row(table);
    row->cell[0] = class_label(arena, estimate, total);
    row->cell[1] = money_show(arena, total->direct);
    row->cell[2] = money_show(arena, total->overhead);
    row->cell[3] = money_show(arena, total->contingency);
    row->cell[4] = money_show(arena, total->profit);
    row->cell[5] = money_show(arena, total->price);
}

static void add_sum(struct table *table, const char *label, money_t price)
{
    struct table_row *row = table_row(table);
    row->cell[0] = label;
    row->cell[5] = money_show(table->arena, price);
}

static void show_price(struct screen *screen, const struct report *report, const struct estimate *estimate)
{
    struct arena *arena = screen->out.arena;
    struct table table = table_new(arena, class_columns, sizeof class_columns / sizeof class_columns[0]);
    for (size_t i = 0; i < estimate->class_count; i++)
        add_class(&table, estimate, &estimate->class_[i]);
    struct table_row *row = table_row(&table);
    *row = (struct table_row){.rule = true};
    row->cell[0] = "before tax and rounding";
    row->cell[1] = money_show(arena, estimate->direct);
    row->cell[2] = money_show(arena, estimate->overhead);
    row->cell[3] = money_show(arena, estimate->contingency);
    row->cell[4] = money_show(arena, estimate->profit);
    row->cell[5] = money_show(arena, estimate->before_tax);
    if (estimate->tax != 0)
        add_sum(&table, "sales tax, shown", estimate->tax);
    if (estimate->rounding != 0)
        add_sum(&table, "rounding", estimate->rounding);
    add_sum(&table, report->signable ? "PRICE" : "PRICE, not for signature", estimate->price);
    table.row[table.count - 1].weight = WEIGHT_BOLD;
    screen_heading(screen, "Price");
    screen_table(screen, &table);
    if (report->job->facts.status.choice == STATUS_BUDGET)
        screen_printf(screen, WEIGHT_BOLD, "BUDGET: %s to %s, with every task at its low and at its high hours",
                      money_show(arena, estimate->low_price), money_show(arena, estimate->high_price));
}

static void show_terms(struct screen *screen, const struct report *report, const struct estimate *estimate)
{
    struct arena *arena = screen->out.arena;
    const struct job *job = report->job;
    screen_printf(screen, WEIGHT_PLAIN, "method %s; gross margin %s of the price, markup %s on direct cost; %s hours",
                  choice_name("bid", "method", (int)estimate->method),
                  percent_text(arena, decimal_round(estimate->gross_margin, 2)),
                  percent_text(arena, decimal_round(estimate->markup, 2)), decimal_text(arena, estimate->hours));
    if (job->bid.valid_for.count > 0 && job->facts.date.at)
        screen_printf(screen, WEIGHT_PLAIN, "good until %s (%d days)",
                      date_text(arena, date_plus(job->facts.date.date, job->bid.valid_for.count)),
                      job->bid.valid_for.count);
}

static void show_draws(struct screen *screen, const struct estimate *estimate)
{
    static const struct column columns[] = {{"Draw", true, false}, {"When", false, true}, {"Amount", true, false}};
    struct table table = table_new(screen->out.arena, columns, 3);
    for (size_t i = 0; i < estimate->draw_count; i++) {
        const struct draw *draw = &estimate->draw[i];
        struct table_row *row = table_row(&table);
        row->cell[0] = percent_text(table.arena, draw->percent);
        row->cell[1] = draw->when;
        row->cell[2] = money_show(table.arena, draw->amount);
    }
    if (table.count == 0)
        return;
    screen_heading(screen, "Draws");
    screen_table(screen, &table);
}

/* Nothing that is usually forgotten is left unsaid. */
static void show_forgotten(struct screen *screen, const struct takeoff *takeoff)
{
    static const enum forgotten_state states[] = {FORGOTTEN_PRICED, FORGOTTEN_ZERO, FORGOTTEN_EXCLUDED,
                                                  FORGOTTEN_BLANK};
    struct arena *arena = screen->out.arena;
    if (takeoff->forgotten_count == 0)
        return;
    screen_heading(screen, "Usually forgotten");
    for (size_t i = 0; i < sizeof states / sizeof *states; i++) {
        const char *list = forgotten_list(arena, takeoff, states[i]);
        if (list)
            screen_bullet(screen, arena_printf(arena, "%s: %s", forgotten_word(states[i]), list));
    }
}

/* In the order of the work, each task's days by its whole crew. */
static void show_work(struct screen *screen, const struct job *job, const struct estimate *estimate)
{
    static const struct column columns[] = {
        {"Task", false, true}, {"Crew", true, false}, {"Hours", true, false}, {"Days", true, false}};
    struct arena *arena = screen->out.arena;
    struct table table = table_new(arena, columns, sizeof columns / sizeof columns[0]);
    for (size_t i = 0; i < estimate->labor_count; i++) {
        const struct labor_line *line = &estimate->labor[i];
        struct table_row *row = table_row(&table);
        row->cell[0] = line->what;
        row->cell[1] = arena_printf(arena, "%d", line->crew);
        row->cell[2] = decimal_text(arena, line->hours);
        row->cell[3] = decimal_text(arena, line->days);
    }
    if (table.count == 0)
        return;
    screen_heading(screen, "Work in its order: %lld working days of %s hours, %d trips",
                   (long long)estimate->working_days, decimal_text(arena, hours_a_day(job)), job->facts.trips.count);
    screen_table(screen, &table);
}

/* The worst check of a beam, its ends and joints among them. */
struct beam_worst {
    const struct check *check;
    const char *id; /* of what it was found on */
    bool passes, specified, unverified;
};

static struct beam_worst worst_of(const struct design *design, const char *name)
{
    struct beam_worst worst = {.passes = true};
    for (size_t i = 0; i < design->member_count; i++) {
        const struct member_checks *checks = design->members[i];
        const struct check *most = node_same(checks->id, name) ? checks_governing(checks) : NULL;
        if (!most)
            continue;
        worst.passes = worst.passes && checks->passes;
        worst.specified = worst.specified || checks->specified;
        worst.unverified = worst.unverified || checks->unverified;
        if (!worst.check || most->ratio > worst.check->ratio) {
            worst.check = most;
            worst.id = checks->id;
        }
    }
    return worst;
}

static const char *beam_verdict(struct arena *arena, const struct beam_worst *worst)
{
    if (worst->specified)
        return arena_printf(arena, "as specified; our check r = %s", ratio_text(arena, worst->check->ratio));
    return arena_printf(arena, "%s%s", worst->passes ? "holds" : "DOES NOT HOLD",
                        worst->unverified ? ", design value unverified" : "");
}

static void add_beam(struct table *table, const struct design *design, const struct beam_design *beam)
{
    struct arena *arena = table->arena;
    const char *name = head_name(arena, KIND_BEAM, &beam->beam->head);
    const struct beam_worst worst = worst_of(design, name);
    struct table_row *row = table_row(table);
    row->cell[0] = beam->beam->head.id;
    row->cell[1] = plies_text(arena, beam->member, beam->plies);
    row->cell[2] = length_tape(arena, beam->cut_length);
    if (!worst.check)
        return;
    const char *part = strchr(worst.id, ',');
    row->cell[3] = part ? arena_printf(arena, "%s%s", worst.check->name, part) : worst.check->name;
    row->cell[4] = ratio_text(arena, worst.check->ratio);
    row->cell[5] = beam_verdict(arena, &worst);
}

static void show_beams(struct screen *screen, const struct design *design)
{
    static const struct column columns[] = {
        {"Beam", false, true},        {"Member", false, true}, {"Cut length", true, false},
        {"Governed by", false, true}, {"Ratio", true, false},  {"", false, true},
    };
    struct table table = table_new(screen->out.arena, columns, sizeof columns / sizeof columns[0]);
    for (size_t i = 0; i < design->beam_count; i++)
        add_beam(&table, design, &design->beams[i]);
    if (table.count == 0)
        return;
    screen_heading(screen, "Beams");
    screen_table(screen, &table);
}

/* "add $60.00"; a price of 0: it could not be priced. */
static const char *alternate_text(struct arena *arena, const struct alternate_price *alternate)
{
    if (alternate->price == 0)
        return "not priced: see messages";
    money_t difference = alternate->difference;
    return arena_printf(arena, "%s %s%s", difference < 0 ? "deduct" : "add",
                        money_show(arena, difference < 0 ? -difference : difference),
                        alternate->ok ? "" : ", a check fails");
}

static void show_alternates(struct screen *screen, const struct outcome *outcome)
{
    static const struct column columns[] = {{"Alternate", false, true}, {"", false, true}, {"Price", true, false}};
    struct table table = table_new(screen->out.arena, columns, 3);
    for (size_t i = 0; i < outcome->alternate_count; i++) {
        const struct alternate_price *alternate = &outcome->alternate[i];
        struct table_row *row = table_row(&table);
        row->cell[0] = alternate->alternate->head.id;
        row->cell[1] = alternate->alternate->what.text;
        row->cell[2] = alternate_text(table.arena, alternate);
    }
    if (table.count == 0)
        return;
    screen_heading(screen, "Alternates");
    screen_table(screen, &table);
}

char *report_bid(struct arena *arena, const struct report *report, bool color, int width)
{
    struct screen screen = screen_new(arena, color, width);
    screen_head(&screen, report);
    const struct run *run = report_run(report);
    if (run && run->estimate) {
        show_price(&screen, report, run->estimate);
        show_terms(&screen, report, run->estimate);
        show_draws(&screen, run->estimate);
        if (run->takeoff)
            show_forgotten(&screen, run->takeoff);
        show_work(&screen, report->job, run->estimate);
        show_alternates(&screen, report->outcome);
    }
    if (run && run->design)
        show_beams(&screen, run->design);
    screen_open(&screen, report);
    screen_caution(&screen);
    return screen_text(&screen);
}
