/* The shores of one beam: what they are cut of, where their braces go, what stands below; letting them down. */
#include "field.h"

#include <math.h>

#include "sawbill/text.h"
#include "terminal.h"

static const struct field_column CUTS[] = {
    {"Shore", "shore", FIELD_TEXT, 3, false},   {"What", "what", FIELD_TEXT, 5, true},
    {"Member", "member", FIELD_TEXT, 4, false}, {"Count", "count", FIELD_NUMBER, 2, false},
    {"Cut to", "cut", FIELD_LENGTH, 3, false},  {"How", "how", FIELD_TEXT, 7, true},
};

static const char *held_text(const struct field_beam *of, const struct shore *shore)
{
    struct buffer text = {.arena = of->arena};
    for (size_t i = 0; i < shore->holds.count; i++)
        buffer_printf(&text, "%s%s %s", i ? ", " : "", kind_name(shore->holds.item[i].kind), shore->holds.item[i].id);
    return text.length ? buffer_text(&text) : "what is above it";
}

static const struct member *plate_of(const struct member *own, const struct shore_design *design)
{
    return own ? own : design->plate;
}

/* Middles of the brace rows above the floor: they cut the stud into equal lengths. */
static const char *rows_text(const struct field_beam *of, const struct shore_design *design)
{
    const struct member *top = plate_of(design->top_plate, design), *bottom = plate_of(design->bottom_plate, design);
    if (design->brace_rows < 1 || !top || !bottom || design->strongback)
        return "";
    length_t stud = design->height - top->ply_width - bottom->ply_width;
    struct buffer text = {.arena = of->arena};
    for (int i = 1; i <= design->brace_rows; i++)
        buffer_printf(&text, "%s%s", i > 1 ? ", " : " at ",
                      length_tape(of->arena, bottom->ply_width + stud * i / (design->brace_rows + 1)));
    buffer_printf(&text, " above the floor, fastened to every stud");
    return buffer_text(&text);
}

/* "11 studs every 1' 4\""; "strongback 2 - DFL2-2X10 on posts, their middles 3\", 6' 0\" from its end" */
static const char *uprights_text(const struct field_beam *of, const struct shore_design *design)
{
    struct arena *arena = of->arena;
    const struct shore *shore = design->shore;
    if (!design->strongback)
        return arena_printf(arena, "%d studs every %s", design->studs, length_tape(arena, design->spacing));
    struct buffer text = {.arena = arena};
    buffer_printf(&text, "strongback %s on posts, their middles",
                  field_member(arena, design->strongback, shore->strongback_plies.count));
    for (size_t i = 0; i < shore->supports.count; i++)
        buffer_printf(&text, "%s %s", i ? "," : "", length_tape(arena, shore->supports.item[i]));
    buffer_printf(&text, " from its end; %s",
                  shore->hung_by.at ? arena_printf(arena, "the joists hang from it in straps %s", shore->hung_by.text)
                                    : "the joists lie on it");
    return buffer_text(&text);
}

static void say_stand(struct field_beam *of, struct field_part *part, const struct shore_design *design)
{
    struct arena *arena = of->arena;
    const struct shore *shore = design->shore;
    const char *name = head_name(arena, KIND_SHORE, &shore->head);
    field_add(arena, part, FIELD_SAY, "%s holds %s. Set back %s from the wall; %s long, %s high; %s.", name,
              held_text(of, shore), length_tape(arena, shore->set_back.length), length_tape(arena, design->length),
              length_tape(arena, design->height), uprights_text(of, design));
    const char *rows = rows_text(of, design);
    field_add(arena, part, FIELD_SAY,
              "%s: %d brace %s%s; a diagonal for each 8 ft, fastened at both ends and where it "
              "crosses a stud.",
              name, design->brace_rows, design->brace_rows == 1 ? "row" : "rows", rows);
}

static void say_below(struct field_beam *of, struct field_part *part, const struct shore_design *design)
{
    struct arena *arena = of->arena;
    const struct shore *shore = design->shore;
    struct buffer text = {.arena = arena};
    if (shore->stands_on.text)
        buffer_printf(&text, "%s", shore->stands_on.text);
    if (shore->below.choice)
        buffer_printf(&text, "%s%s", text.length ? "; " : "", choice_name("shore", "below", shore->below.choice));
    if (shore->held_below.choice)
        buffer_printf(&text, "%sheld from below by: %s", text.length ? "; " : "",
                      choice_name("shore", "held below", shore->held_below.choice));
    field_add(arena, part, FIELD_SAY, "%s, below it: %s.", head_name(arena, KIND_SHORE, &shore->head),
              text.length ? buffer_text(&text) : "not said: look before it is loaded");
}

static void say_load(struct field_beam *of, struct field_part *part, const struct shore_design *design)
{
    struct arena *arena = of->arena;
    const struct shore *shore = design->shore;
    const char *name = head_name(arena, KIND_SHORE, &shore->head);
    if (isfinite(design->stud_lb) && design->stud_lb > 0)
        field_add(arena, part, FIELD_SAY,
                  "%s: one %s carries up to %s lb, of it %s lb dead load. Jack no further than snug, at most 1/8 in at "
                  "a go (common practice)%s%s.",
                  name, design->strongback ? "post" : "stud", pounds_text(arena, design->stud_lb),
                  pounds_text(arena, design->dead_lb),
                  design->lift ? ": more lifts the joists off the wall, dead load " : "",
                  design->lift ? design->lift : "");
    field_add(arena, part, FIELD_SAY, "%s stands %s%s.", name,
              shore->days.count > 0 ? arena_printf(arena, "%d days at most", shore->days.count) : "as long as is said",
              shore->jack_posts.count > 0 ? arena_printf(arena, "; %d jack posts", shore->jack_posts.count) : "");
}

static void add_cuts(struct field_beam *of, struct field_table *table, const struct shore_design *design)
{
    for (size_t i = 0; i < of->takeoff->shore_part_count; i++) {
        const struct shore_part *part = &of->takeoff->shore_part[i];
        if (part->shore != design->shore)
            continue;
        struct field_cell *row = field_row(of->arena, table);
        row[0] = field_text(part->shore->head.id);
        row[1] = field_text(part->what);
        row[2] = field_text(part->member ? part->member->code : "-");
        row[3] = field_number(of->arena, (double)part->count, 0);
        row[4] = field_length(of->arena, part->length);
        row[5] = field_text(part->counted);
    }
}

void field_shores(struct field_beam *of)
{
    struct field_part *part = field_part_add(of->arena, of->sheet, "shores", "Shores");
    size_t count = 0;
    for (size_t i = 0; i < of->design->shore_count; i++) {
        const struct shore_design *design = &of->design->shores[i];
        if (!field_has_shore(of, design))
            continue;
        count++;
        say_stand(of, part, design);
        say_below(of, part, design);
        say_load(of, part, design);
    }
    if (count == 0)
        field_add(of->arena, part, FIELD_SAY, "No shore of this job holds what comes onto this beam.");
    struct field_table *table =
        field_table_add(of->arena, part, "shore_cuts", "Cut list of the shores", CUTS, sizeof CUTS / sizeof *CUTS);
    for (size_t i = 0; i < of->design->shore_count; i++)
        if (field_has_shore(of, &of->design->shores[i]))
            add_cuts(of, table, &of->design->shores[i]);
}

static const struct field_column TURNS[] = {
    {"", "turn", FIELD_NUMBER, 2, false},
    {"Shore", "shore", FIELD_TEXT, 4, false},
    {"What", "what", FIELD_TEXT, 11, true},
    {"Sag read", "read", FIELD_TEXT, 7, false},
};

/* Half of it on each side, then the rest: both faces take up their load by turns. */
static void add_turns(struct field_beam *of, struct field_table *table)
{
    static const char *const what[] = {
        "ease it all along, at most 1/8 in at a go, until half of its load is off; listen, wait 10 minutes, read",
        "ease it until it is free all along; listen, wait 10 minutes, read",
    };
    for (int half = 0; half < 2; half++)
        for (size_t i = 0; i < of->design->shore_count; i++) {
            const struct shore_design *design = &of->design->shores[i];
            if (!field_has_shore(of, design))
                continue;
            struct field_cell *row = field_row(of->arena, table);
            row[0] = field_number(of->arena, (double)table->rows, 0);
            row[1] = field_text(head_name(of->arena, KIND_SHORE, &design->shore->head));
            row[2] = field_text(what[half]);
            row[3] = field_text("________ in");
        }
}

/* Times the sag expected, and what a steel rule shows at all: common practice, no source. */
static const double STOP_AT = 1.5, LEAST_READ = 1.0 / 32;

static void say_sag(struct field_beam *of, struct field_part *part)
{
    struct arena *arena = of->arena;
    double sag = of->beam->dead_sag_in;
    if (!isfinite(sag) || of->beam->beam->specified_by.at)
        field_add(arena, part, FIELD_SAY, "Ask the engineer what sag to expect, and at how much to stop: %s",
                  isfinite(sag) ? "the beam is his." : "it is not known here.");
    if (!isfinite(sag))
        return;
    field_add(arena, part, FIELD_SAY,
              "Expected, %s from END 1, once all dead load is on the beam: %s in (dead load alone, no creep, its own "
              "weight not counted again).",
              place_text(arena, of->beam->dead_sag_at_in), number_text(arena, sag, 3));
    const char *more = "or at any crack that grows or any sound: snug the shore up again, leave the room, call";
    if (STOP_AT * sag < LEAST_READ)
        field_add(arena, part, FIELD_STOP, "at 1/32 in, the least that a rule shows (1.5 times would be %s in), %s",
                  number_text(arena, STOP_AT * sag, 3), more);
    else /* rounded down, never toward more sag */
        field_add(arena, part, FIELD_STOP, "at %s in (1.5 times, common practice), %s",
                  number_text(arena, floor(STOP_AT * sag * 1000) / 1000, 3), more);
}

void field_lower(struct field_beam *of)
{
    struct field_part *part = field_part_add(of->arena, of->sheet, "lower", "Let the load down");
    bool hung = field_hangs_joists(of->beam->beam);
    field_add(of->arena, part, FIELD_TICK, "%s, straps and posts are nailed off, the ply fasteners are in",
              hung ? "every hanger has all its nails" : "every joist bears tight on the beam");
    if (of->beam->kickers > 0)
        field_add(of->arena, part, FIELD_TICK, "all %d kickers hold its top edge", of->beam->kickers);
    for (int end = 0; end < 2; end++)
        if (of->beam->held[end])
            field_add(of->arena, part, FIELD_TICK, "END %d is kept from rolling over by %s", end + 1,
                      of->beam->held[end]);
    field_add(
        of->arena, part, FIELD_SAY,
        "Stretch a string below the beam from END 1 to END 2 and read the gap at the place named here before "
        "the first shore is eased: sag is what it grows by. Read it to 1/64 in on a steel rule, or with a dial gauge.");
    say_sag(of, part);
    struct field_table *table =
        field_table_add(of->arena, part, "turns", "Shore by shore", TURNS, sizeof TURNS / sizeof *TURNS);
    add_turns(of, table);
}

void field_finish(struct field_beam *of)
{
    struct field_part *part = field_part_add(of->arena, of->sheet, "finish", "Take down, hold, clean");
    field_add(of->arena, part, FIELD_TICK,
              "take down the shoring: braces and diagonals last of each shore; its lumber goes back for the next job");
    field_add(
        of->arena, part, FIELD_TICK,
        "HOLD: nothing is covered until the framing inspection is signed; the order of work says whether before or "
        "after the shores go. Signed by, date: ____________");
    if (of->beam->beam->specified_by.at)
        field_add(of->arena, part, FIELD_TICK,
                  "HOLD: the engineer's visit, where his sheet asks for one: ____________");
    field_add(of->arena, part, FIELD_TICK,
              "clean: nails, cutoffs and dust out, shop cutoffs labelled with their length");
}
