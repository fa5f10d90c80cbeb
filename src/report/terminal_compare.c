/* sawbill compare on the terminal: every candidate with the whole job's price, or why it fails. */
#include "terminal.h"

static const struct candidate *chosen_of(const struct outcome *outcome, const struct beam *beam)
{
    for (size_t i = 0; i < outcome->candidate_count; i++)
        if (outcome->candidate[i].beam == beam && outcome->candidate[i].chosen)
            return &outcome->candidate[i];
    return NULL;
}

static const char *difference_text(struct arena *arena, const struct candidate *candidate,
                                   const struct candidate *chosen)
{
    if (candidate->chosen)
        return "chosen";
    if (!chosen)
        return "";
    money_t difference = candidate->price - chosen->price;
    return arena_printf(arena, "%s%s", difference < 0 ? "-" : "+",
                        money_show(arena, difference < 0 ? -difference : difference));
}

static void add_passing(struct table *table, const struct candidate *candidate, const struct candidate *chosen)
{
    struct arena *arena = table->arena;
    struct table_row *row = table_row(table);
    row->cell[0] = plies_text(arena, candidate->member, candidate->plies);
    row->cell[1] = candidate->member->material;
    row->cell[2] = ratio_text(arena, candidate->ratio);
    row->cell[3] = money_show(arena, candidate->price);
    row->cell[4] = difference_text(arena, candidate, chosen);
    row->cell[5] = candidate->why;
    row->weight = candidate->chosen ? WEIGHT_BOLD : WEIGHT_PLAIN;
}

static void show_passing(struct screen *screen, const struct outcome *outcome, const struct beam *beam)
{
    static const struct column columns[] = {
        {"Member", false, false},   {"Material", false, true},           {"Ratio", true, false},
        {"Whole job", true, false}, {"Against the chosen", true, false}, {"Governs", false, true},
    };
    const struct candidate *chosen = chosen_of(outcome, beam);
    struct table table = table_new(screen->out.arena, columns, sizeof columns / sizeof columns[0]);
    for (size_t i = 0; i < outcome->candidate_count; i++)
        if (outcome->candidate[i].beam == beam && outcome->candidate[i].passes)
            add_passing(&table, &outcome->candidate[i], chosen);
    if (table.count > 0)
        screen_table(screen, &table);
    else
        screen_printf(screen, WEIGHT_BOLD, "no candidate holds: ask an engineer, or allow more plies or depth");
}

static void show_failing(struct screen *screen, const struct outcome *outcome, const struct beam *beam)
{
    static const struct column columns[] = {
        {"Does not hold", false, false}, {"Ratio", true, false}, {"Why", false, true}};
    struct table table = table_new(screen->out.arena, columns, 3);
    for (size_t i = 0; i < outcome->candidate_count; i++) {
        const struct candidate *candidate = &outcome->candidate[i];
        if (candidate->beam != beam || candidate->passes)
            continue;
        struct table_row *row = table_row(&table);
        row->cell[0] = plies_text(table.arena, candidate->member, candidate->plies);
        row->cell[1] = candidate->ratio > 0 ? ratio_text(table.arena, candidate->ratio) : "";
        row->cell[2] = candidate->why;
    }
    if (table.count == 0)
        return;
    buffer_add(&screen->out, "\n");
    screen_table(screen, &table);
}

static bool is_tried(const struct outcome *outcome, const struct beam *beam, const struct member *member)
{
    for (size_t i = 0; i < outcome->candidate_count; i++)
        if (outcome->candidate[i].beam == beam && outcome->candidate[i].member == member)
            return true;
    return false;
}

static bool is_of_its_material(const struct beam *beam, const struct member *member)
{
    for (size_t i = 0; i < beam->material.count; i++)
        if (name_same(beam->material.item[i].text, member->material))
            return true;
    return beam->material.count == 0;
}

/* What the job's own limits keep out: nothing is missing without a word. */
static void show_not_tried(struct screen *screen, const struct report *report, const struct beam *beam)
{
    struct buffer text = {.arena = screen->out.arena};
    for (size_t i = 0; i < report->catalog->member_count; i++) {
        const struct member *member = &report->catalog->members[i];
        if (!(member->use & USE_BEAM) || !is_of_its_material(beam, member) || is_tried(report->outcome, beam, member))
            continue;
        bool deep = beam->most_depth.at && member->depth > beam->most_depth.length;
        buffer_printf(&text, "%s%s (%s)", text.length ? ", " : "", member->code,
                      deep ? "deeper than 'most depth'" : "not in so many plies");
    }
    if (text.length)
        screen_printf(screen, WEIGHT_PLAIN, "not tried: %s", buffer_text(&text));
}

static bool has_candidate(const struct outcome *outcome, const struct beam *beam)
{
    for (size_t i = 0; i < outcome->candidate_count; i++)
        if (outcome->candidate[i].beam == beam)
            return true;
    return false;
}

char *report_compare(struct arena *arena, const struct report *report, bool color, int width)
{
    struct screen screen = screen_new(arena, color, width);
    screen_head(&screen, report);
    for (size_t i = 0; report->outcome && i < report->job->beam_count; i++) {
        const struct beam *beam = &report->job->beams[i];
        screen_heading(&screen, "%s", head_name(arena, KIND_BEAM, &beam->head));
        if (!has_candidate(report->outcome, beam)) {
            screen_printf(&screen, WEIGHT_PLAIN, "the job names its member; 'choose = yes' compares");
            continue;
        }
        show_passing(&screen, report->outcome, beam);
        show_failing(&screen, report->outcome, beam);
        show_not_tried(&screen, report, beam);
    }
    screen_caution(&screen);
    return screen_text(&screen);
}
