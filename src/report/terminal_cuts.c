/* sawbill cuts on the terminal. */
#include "terminal.h"

#include "cutoffs.h"

/* "12' 9" beam B1 ply, 3' 2" block": like parts stand beside one another in a plan and are counted together. */
static const char *parts_text(struct arena *arena, const struct cut_stick *stick)
{
    struct buffer out = {.arena = arena};
    for (size_t i = 0; i < stick->part_count;) {
        const struct cut_part *part = &stick->part[i];
        size_t run = 1;
        while (i + run < stick->part_count && cut_parts_alike(&stick->part[i + run], part))
            run++;
        buffer_add(&out, out.length ? "; " : "");
        if (run > 1)
            buffer_printf(&out, "%zu x ", run);
        buffer_printf(&out, "%s %s", length_tape(arena, part->length), part->label);
        i += run;
    }
    return buffer_text(&out);
}

static const char *stock_text(struct arena *arena, const struct cut_stock *stock)
{
    const char *text = length_tape(arena, cut_sold_length(stock));
    if (cut_sold_length(stock) != stock->length)
        text = arena_printf(arena, "%s, which is %s", text, length_tape(arena, stock->length));
    return stock->shop ? arena_printf(arena, "%s, shop stock", text) : text;
}

static void add_sticks(struct table *table, const struct cut_plan *plan, size_t index, int count)
{
    struct arena *arena = table->arena;
    const struct cut_stick *stick = &plan->stick[index];
    struct table_row *row = table_row(table);
    row->cell[0] = arena_printf(arena, "%d", count);
    row->cell[1] = stock_text(arena, stick->stock);
    row->cell[2] = parts_text(arena, stick);
    row->cell[3] = length_tape(arena, stick->left);
    row->cell[4] = money_show(arena, stick->stock->cost * count);
}

static void show_sticks(struct screen *screen, const struct cut_plan *plan)
{
    static const struct column columns[] = {{"Sticks", true, false},
                                            {"Stock", false, false},
                                            {"Pieces", false, true},
                                            {"Cutoff", true, false},
                                            {"Cost", true, false}};
    struct table table = table_new(screen->out.arena, columns, sizeof columns / sizeof columns[0]);
    for (size_t i = 0; i < plan->stick_count; i++) {
        int count = cut_count_alike(plan, i);
        if (count > 0)
            add_sticks(&table, plan, i, count);
    }
    screen_table(screen, &table);
}

/* Where the wood goes, in length, in money and as a share of the length. */
static void show_shares(struct screen *screen, const struct cut_plan *plan)
{
    static const struct column columns[] = {
        {"Of what is bought", false, false}, {"Length", true, false}, {"Money", true, false}, {"Share", true, false}};
    static const char *const name[CUT_SHARES] = {"net", "kerf", "end trim", "cutoffs to keep", "waste"};
    struct arena *arena = screen->out.arena;
    const struct cut_shares shares = cut_shares(plan);
    struct table table = table_new(arena, columns, sizeof columns / sizeof columns[0]);
    for (int i = 0; i <= CUT_SHARES; i++) {
        bool sum = i == CUT_SHARES;
        length_t length = sum ? plan->bought : shares.length[i];
        struct table_row *row = table_row(&table);
        row->rule = sum;
        row->cell[0] = sum ? "bought" : name[i];
        row->cell[1] = length_tape(arena, length);
        row->cell[2] = money_show(arena, money_round(sum ? plan->cost : shares.money[i]));
        row->cell[3] = arena_printf(arena, "%s %%",
                                    number_text(arena, 100 * length_inches(length) / length_inches(plan->bought), 1));
    }
    buffer_add(&screen->out, "\n");
    screen_table(screen, &table);
}

static void show_others(struct screen *screen, const struct cut_others *others)
{
    struct arena *arena = screen->out.arena;
    if (others->has_first_fit)
        screen_printf(screen, WEIGHT_PLAIN, "first fit, longest piece first, would cost %s at the best, out of %s",
                      money_show(arena, others->first_fit),
                      length_tape(arena, cut_sold_length(others->first_fit_stock)));
    struct buffer text = {.arena = arena};
    for (size_t i = 0; i < others->single_count; i++) {
        const struct cut_single *single = &others->single[i];
        if (single->possible)
            buffer_printf(&text, "%s%s %s%s", text.length ? "; " : "",
                          length_tape(arena, cut_sold_length(single->stock)), money_show(arena, single->cost),
                          single->proved ? "" : " or less");
    }
    if (text.length)
        screen_printf(screen, WEIGHT_PLAIN, "one length alone would cost: %s", text.text);
}

static void show_joined(struct screen *screen, const struct cut_plan *plan)
{
    struct arena *arena = screen->out.arena;
    const struct cut_problem *problem = plan->problem;
    for (size_t i = 0; plan->joined && i < problem->joints_count; i++) {
        struct buffer text = {.arena = arena};
        for (size_t k = 0; k < problem->joints[i].count; k++)
            if (plan->joined[i] >> k & 1U)
                buffer_printf(&text, "%s%s", text.length ? ", " : "", length_tape(arena, problem->joints[i].at[k]));
        if (text.length)
            screen_printf(screen, WEIGHT_PLAIN, "%s: joined over its supports at %s from end 1",
                          problem->piece[problem->joints[i].piece].label, text.text);
    }
}

static void show_plan(struct screen *screen, const struct cut_plan *plan)
{
    struct arena *arena = screen->out.arena;
    screen_heading(screen, "%s", *plan->problem->member ? plan->problem->member : "Cuts");
    if (plan->stick_count == 0) {
        screen_printf(screen, WEIGHT_PLAIN, "%s", plan->verdict);
        return;
    }
    show_sticks(screen, plan);
    show_joined(screen, plan);
    show_shares(screen, plan);
    screen_printf(screen, WEIGHT_PLAIN, "cutoffs to keep, %s and longer: %s",
                  length_tape(arena, plan->problem->least_cutoff), cutoffs_text(arena, plan));
    screen_printf(screen, WEIGHT_PLAIN, "cost %s; no plan can cost less than %s: %s", money_show(arena, plan->cost),
                  money_show(arena, plan->bound), verdict_text(arena, plan));
    if (plan->searched)
        screen_printf(screen, WEIGHT_PLAIN,
                      "the certificate alone shows that none can cost less than %s; the search showed the rest",
                      money_show(arena, plan->certified));
    if (plan->others)
        show_others(screen, plan->others);
}

static void show_rules(struct screen *screen, const struct cut_rules *rules, const char *which)
{
    struct arena *arena = screen->out.arena;
    screen_printf(screen, WEIGHT_PLAIN, "kerf %s; end trim %s, off %s%s%s", length_tape(arena, rules->kerf),
                  length_tape(arena, rules->trim), rules->both_ends ? "both ends" : "the worse end", which,
                  rules->square_both_ends ? "; the last piece of a stick gets a cut of its own" : "");
}

char *report_cuts(struct arena *arena, const struct report *report, bool color, int width)
{
    struct screen screen = screen_new(arena, color, width);
    screen_head(&screen, report);
    const struct job_facts *facts = &report->job->facts;
    const struct cut_rules rules = {.kerf = facts->kerf.length,
                                    .trim = facts->end_trim.length,
                                    .both_ends = facts->trim_both_ends.choice == YES,
                                    .square_both_ends = facts->square_both_ends.choice == YES};
    show_rules(&screen, &rules, " of each stick bought");
    const struct run *run = report_run(report);
    for (size_t i = 0; run && i < run->plan_count; i++)
        show_plan(&screen, run->plans[i]);
    screen_caution(&screen);
    return screen_text(&screen);
}

char *report_list(struct arena *arena, const struct cuts_report *report, bool color, int width)
{
    struct screen screen = screen_new(arena, color, width);
    show_rules(&screen, report->rules, " where the stock has none of its own");
    for (size_t i = 0; i < report->plan_count; i++)
        show_plan(&screen, report->plan[i]);
    return screen_text(&screen);
}
