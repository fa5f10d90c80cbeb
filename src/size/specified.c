/* An engineer's beam is his for what he drew it for: his loads, reactions and wood against those of the job. */
#include "size.h"

#include <ctype.h>
#include <math.h>
#include <string.h>

#include "sawbill/text.h"

/* As far as figures that were rounded on a drawing may lie apart (common practice, no source). */
#define APART 0.05

struct stated {
    const char *what; /* "dead load" */
    const char *key;
    const struct quantity_value *value;
    enum load_source source[2]; /* the same twice where it is one */
};

static void stated_of(const struct beam_drawn *drawn, struct stated out[4])
{
    out[0] = (struct stated){"dead load", "specified dead", &drawn->dead, {LOAD_DEAD, LOAD_DEAD}};
    out[1] = (struct stated){"live load", "specified live", &drawn->live, {LOAD_LIVE, LOAD_ATTIC}};
    out[2] =
        (struct stated){"roof live load", "specified roof live", &drawn->roof_live, {LOAD_ROOF_LIVE, LOAD_ROOF_LIVE}};
    out[3] = (struct stated){"snow", "specified snow", &drawn->snow, {LOAD_SNOW, LOAD_SNOW}};
}

static bool apart(double his, double ours)
{
    return fabs(ours - his) > APART * his + 1e-6;
}

/* 10 % less than he drew it for is no comfort: perhaps the job leaves something out. */
static void say_apart(struct sizing *s, const struct beam_design *bd, const struct entry *entry, const char *what,
                      double his, double ours, const char *unit)
{
    diag_add(s->diags, DIAG_Q008, place_of(entry, &bd->beam->head),
             "%s was specified for %s of %s %s, but the job brings %s %s%s; ask the engineer, and write his new sheet",
             head_name(s->arena, KIND_BEAM, &bd->beam->head), what, number_text(s->arena, his, 1), unit,
             number_text(s->arena, ours, 1), unit, ours < his ? ": is a load left out?" : "");
}

/* psf of an area as it is written; false where it has none of the kind, which his figure is not about. */
static bool area_has(const struct area *area, enum load_source source, double *psf)
{
    bool roof = area->live_is.choice == LIVE_ROOF;
    const struct quantity_value *value = source == LOAD_DEAD ? &area->dead : &area->live;
    if (source == LOAD_SNOW)
        value = &area->snow;
    else if (source != LOAD_DEAD && roof != (source == LOAD_ROOF_LIVE))
        return false;
    *psf = quantity_value(value->quantity);
    return value->at != NULL;
}

struct areas {
    const struct area *item[2 + 1];
    size_t count;
};

/* Of its joists, and of the roof whose braces stand on it: loads written one by one are reached in plf or as
 * reactions. */
static struct areas areas_of(const struct sizing *s, const struct beam_design *bd)
{
    struct areas areas = {0};
    const struct roof *roof = &s->job->roof;
    for (int side = 0; side < 2; side++) {
        const struct area *area = bd->side[side] ? area_of(s->job, &bd->side[side]->joists->area) : NULL;
        if (area)
            areas.item[areas.count++] = area;
    }
    bool braced = s->job->has_roof && roof->braces_on.at && &s->job->beams[roof->braces_on.index] == bd->beam;
    if (braced && roof->braces.count > 0 && area_of(s->job, &roof->area))
        areas.item[areas.count++] = area_of(s->job, &roof->area);
    return areas;
}

static void compare_psf(struct sizing *s, const struct beam_design *bd, const struct stated *stated)
{
    double his = quantity_value(stated->value->quantity);
    struct areas areas = areas_of(s, bd);
    size_t found = 0;
    for (size_t i = 0; i < areas.count; i++) {
        double ours;
        if (!area_has(areas.item[i], stated->source[0], &ours))
            continue;
        found++;
        if (apart(his, ours))
            diag_add(s->diags, DIAG_Q008, &stated->value->at->at,
                     "%s was specified for %s of %s psf, but %s has %s psf; ask the engineer, and write his new sheet, "
                     "or his figure in plf where its areas differ",
                     head_name(s->arena, KIND_BEAM, &bd->beam->head), stated->what, number_text(s->arena, his, 1),
                     head_name(s->arena, KIND_AREA, &areas.item[i]->head), number_text(s->arena, ours, 1));
    }
    if (found == 0 && his > 0)
        say_apart(s, bd, stated->value->at, stated->what, his, 0, "psf");
}

static double line_at(const struct beam_load *load, const struct stated *stated, double x)
{
    double share = load->tapers ? (x - load->from_in) / (load->to_in - load->from_in) : 0, sum = 0;
    for (int k = 0; k < 2; k++) {
        enum load_source source = stated->source[k];
        double from = load->amount.of[source], to = load->tapers ? load->amount_to.of[source] : from;
        if (k == 0 || source != stated->source[0])
            sum += from + share * (to - from);
    }
    return 12 * sum;
}

/* Just beside a place, on either side: lines begin and end there. */
static double plf_beside(const struct stack *stack, const struct stated *stated, double x)
{
    double sum = 0;
    for (size_t i = 0; i < stack->count; i++) {
        const struct beam_load *load = &stack->item[i].load;
        if (!load->point && load->from_in <= x && x <= load->to_in)
            sum += line_at(load, stated, x);
    }
    return sum;
}

/* A sum of straight pieces is greatest where one of them begins or ends. */
static double greatest_plf(const struct stack *stack, const struct stated *stated)
{
    double most = 0;
    for (size_t i = 0; i < stack->count; i++) {
        const struct beam_load *load = &stack->item[i].load;
        if (load->point)
            continue;
        most = fmax(most, plf_beside(stack, stated, load->from_in + 1e-6));
        most = fmax(most, plf_beside(stack, stated, load->to_in - 1e-6));
    }
    return most;
}

static void compare_plf(struct sizing *s, size_t index, const struct stated *stated)
{
    const struct beam_design *bd = &s->design->beams[index];
    double his = quantity_value(stated->value->quantity), ours = greatest_plf(&s->stack[index], stated);
    bool less_own = stated->source[0] == LOAD_DEAD && !apart(his, ours - bd->weight_plf);
    if (apart(his, ours) && !less_own)
        say_apart(s, bd, stated->value->at, stated->what, his, ours, "plf");
}

static double greatest_reaction(const struct sizing *s, const struct beam_design *bd, int end,
                                const struct loads *present)
{
    double greatest = 0;
    for (size_t i = 0; i < s->combo_count; i++)
        if (combo_applies(&s->combo[i], present))
            greatest = fmax(greatest, combined(&s->combo[i], &bd->end_lb[end]));
    return greatest;
}

static void compare_reactions(struct sizing *s, const struct beam_design *bd, const struct loads *present)
{
    for (int end = 0; end < 2; end++) {
        const struct quantity_value *value = &bd->beam->drawn.reaction[end];
        double his = quantity_value(value->quantity), ours = greatest_reaction(s, bd, end, present);
        if (value->at && apart(his, ours))
            say_apart(s, bd, value->at, arena_printf(s->arena, "a reaction at end %d", end + 1), his, ours, "lb");
    }
}

/* "1-3/4 x 9-1/2" and "1-3/4X9-1/2" are the same; a word beside it is not. */
static bool same_closely(const char *a, const char *b)
{
    for (;; a++, b++) {
        while (isspace((unsigned char)*a))
            a++;
        while (isspace((unsigned char)*b))
            b++;
        if (!*a || tolower((unsigned char)*a) != tolower((unsigned char)*b))
            return *a == *b;
    }
}

static void compare_word(struct sizing *s, const struct beam_design *bd, const struct text_value *his, const char *what,
                         const char *ours, const char *or_ours)
{
    if (!his->at || same_closely(his->text, ours) || (or_ours && same_closely(his->text, or_ours)))
        return;
    diag_add(s->diags, DIAG_Q008, &his->at->at,
             "%s was specified as %s '%s', but its member %s is '%s'; take his member, or ask him and write his new "
             "sheet",
             head_name(s->arena, KIND_BEAM, &bd->beam->head), what, his->text, bd->member->code, ours);
}

static void compare_wood(struct sizing *s, const struct beam_design *bd)
{
    const struct beam_drawn *drawn = &bd->beam->drawn;
    compare_word(s, bd, &drawn->size, "size", bd->member->size, NULL);
    compare_word(s, bd, &drawn->species, "species", bd->member->values->species, bd->member->material);
    compare_word(s, bd, &drawn->grade, "grade", bd->member->values->grade, NULL);
    if (drawn->plies.at && drawn->plies.count != bd->plies)
        diag_add(s->diags, DIAG_Q008, &drawn->plies.at->at,
                 "%s was specified with %d plies, but 'plies' is %d; take his, or ask him and write his new sheet",
                 head_name(s->arena, KIND_BEAM, &bd->beam->head), drawn->plies.count, bd->plies);
}

static bool loads_stated(const struct beam_drawn *drawn)
{
    return drawn->dead.at || drawn->live.at || drawn->roof_live.at || drawn->snow.at || drawn->reaction[0].at ||
           drawn->reaction[1].at;
}

static bool wood_stated(const struct beam_drawn *drawn)
{
    return drawn->size.at || drawn->species.at || drawn->grade.at || drawn->plies.at;
}

void specified_compare(struct sizing *s, size_t index, const struct loads *present)
{
    const struct beam_design *bd = &s->design->beams[index];
    const struct beam_drawn *drawn = &bd->beam->drawn;
    struct stated stated[4];
    if (!bd->beam->specified_by.at)
        return;
    stated_of(drawn, stated);
    for (size_t i = 0; i < sizeof stated / sizeof *stated; i++) {
        if (!stated[i].value->at)
            continue;
        if (unit_dimension(stated[i].value->quantity.unit) == DIM_LINE)
            compare_plf(s, index, &stated[i]);
        else
            compare_psf(s, bd, &stated[i]);
    }
    compare_reactions(s, bd, present);
    compare_wood(s, bd);
}

static void add_figures(struct sizing *s, struct buffer *text, const struct beam_drawn *drawn)
{
    struct stated stated[4];
    stated_of(drawn, stated);
    for (size_t i = 0; i < sizeof stated / sizeof *stated; i++)
        if (stated[i].value->at)
            buffer_printf(text, ", %s %s", stated[i].what, quantity_text(s->arena, stated[i].value->quantity));
    for (int end = 0; end < 2; end++)
        if (drawn->reaction[end].at)
            buffer_printf(text, ", %s at end %d", quantity_text(s->arena, drawn->reaction[end].quantity), end + 1);
}

static void add_wood(struct buffer *text, const struct beam_drawn *drawn)
{
    const struct text_value words[] = {drawn->size, drawn->species, drawn->grade};
    const char *before = "; he wrote ";
    if (drawn->plies.at) {
        buffer_printf(text, "%s%d plies", before, drawn->plies.count);
        before = ", ";
    }
    for (size_t i = 0; i < sizeof words / sizeof *words; i++)
        if (words[i].at) {
            buffer_printf(text, "%s%s", before, words[i].text);
            before = ", ";
        }
}

static void say_not_compared(struct sizing *s, const struct beam_drawn *drawn, const char *name)
{
    if (!loads_stated(drawn))
        unchecked_add(s, arena_printf(s->arena,
                                      "not checked: the loads of %s against the engineer's: the job does not say what "
                                      "he drew it for ('specified dead' and its kin)",
                                      name));
    if (!wood_stated(drawn))
        unchecked_add(s, arena_printf(s->arena,
                                      "not checked: the member of %s against the engineer's: the job does not say what "
                                      "he drew ('specified size' and its kin)",
                                      name));
}

void specified_say(struct sizing *s, const struct beam *beam, const char *name)
{
    const struct beam_drawn *drawn = &beam->drawn;
    if (!beam->specified_by.at)
        return;
    struct buffer text = {.arena = s->arena};
    buffer_printf(&text, "%s: as specified by %s", name, beam->specified_by.text);
    if (beam->sheet.at)
        buffer_printf(&text, ", sheet %s", beam->sheet.text);
    if (drawn->date.at)
        buffer_printf(&text, " of %s", date_text(s->arena, drawn->date.date));
    if (beam->revision.at)
        buffer_printf(&text, ", revision %s", beam->revision.text);
    if (drawn->wall.at && drawn->wall.index < s->job->wall_count)
        buffer_printf(&text, ", in the place of %s",
                      head_name(s->arena, KIND_WALL, &s->job->walls[drawn->wall.index].head));
    if (beam->specified_span.at)
        buffer_printf(&text, ", for a clear span of %s", length_tape(s->arena, beam->specified_span.length));
    add_figures(s, &text, drawn);
    add_wood(&text, drawn);
    buffer_add(&text, "; our ratio stands beside it and decides nothing");
    basis_add(s, buffer_text(&text));
    say_not_compared(s, drawn, name);
}
