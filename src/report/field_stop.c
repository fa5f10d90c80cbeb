/* The box to go through before anything is cut. */
#include "field.h"

#include "before_cutting.h"
#include "workbook.h"

static void add_engineer(struct field_beam *of, struct field_part *part)
{
    const struct beam *beam = of->beam->beam;
    if (!beam->specified_by.at) {
        field_add(of->arena, part, FIELD_TICK,
                  "no engineer drew this beam: its size is a screening; the permit covers it");
        return;
    }
    field_add(of->arena, part, FIELD_TICK,
              "engineer's sheet in hand: %s, sheet %s, revision %s; on another revision, span or load stop and call",
              or_dash(beam->specified_by.text), or_dash(beam->sheet.text), or_dash(beam->revision.text));
}

/* Who answers for something else on this beam. */
static void add_other_engineer(struct field_beam *of, struct field_part *part, const char *what,
                               const struct text_value *who)
{
    if (who->at && who->text)
        field_add(of->arena, part, FIELD_TICK, "%s: answered for by %s; the sheet in hand", what, who->text);
}

static void add_engineers(struct field_beam *of, struct field_part *part)
{
    const struct job *job = of->job;
    const struct beam *beam = of->beam->beam;
    add_engineer(of, part);
    add_other_engineer(of, part, "what is unusual about the house", &job->facts.unusual_engineer);
    add_other_engineer(of, part, "wall plates that its pockets cut", &beam->plate_engineer);
    add_other_engineer(of, part, "supports that wind lifts it off", &beam->hold_down_engineer);
    for (size_t i = 0; i < job->wall_count; i++)
        if (job->walls[i].status.choice == WALL_COMES_OUT)
            add_other_engineer(
                of, part,
                arena_printf(of->arena, "bracing of %s", head_name(of->arena, KIND_WALL, &job->walls[i].head)),
                &job->walls[i].bracing_engineer);
    for (int side = 0; side < 2; side++)
        if (of->beam->side[side]) {
            const struct joists *joists = of->beam->side[side]->joists;
            const char *name = head_name(of->arena, KIND_JOISTS, &joists->head);
            add_other_engineer(of, part, arena_printf(of->arena, "repair drawing of %s", name),
                               &joists->repair_drawing);
            add_other_engineer(of, part, arena_printf(of->arena, "the roof's ties in %s", name), &joists->tie_engineer);
        }
    for (size_t i = 0; i < job->post_count; i++)
        if (field_has_post(of, i))
            add_other_engineer(of, part, head_name(of->arena, KIND_POST, &job->posts[i].head), &job->posts[i].engineer);
}

static void add_services(struct field_beam *of, struct field_part *part)
{
    size_t walls = 0;
    for (size_t i = 0; i < of->job->wall_count; i++) {
        if (of->job->walls[i].status.choice != WALL_COMES_OUT)
            continue;
        walls++;
        field_add(of->arena, part, FIELD_TICK, "utilities off: %s", wall_services(of->arena, &of->job->walls[i]));
    }
    if (walls == 0)
        field_add(of->arena, part, FIELD_TICK,
                  "utilities off: wire, pipe and duct in what is opened are found, switched off and tested dead");
    for (size_t i = 0; old_house(i); i++)
        field_add(of->arena, part, FIELD_TICK, "%s; result and date: ____________", old_house(i));
}

/* What keeps a pair in tension until its strap is on: common practice, no source. */
static void add_ties(struct field_beam *of, struct field_part *part)
{
    bool any = false;
    for (int side = 0; side < 2; side++) {
        const struct joist_design *joists = of->beam->side[side];
        int ties = joists ? joists->joists->ties_the_roof.choice : NO;
        if (ties != YES && ties != UNKNOWN)
            continue;
        any = true;
        const char *name = head_name(of->arena, KIND_JOISTS, &joists->joists->head);
        if (ties == UNKNOWN)
            field_add(of->arena, part, FIELD_STOP,
                      "whether %s hold the rafters together is not known: none is cut before it is", name);
        else if (joists->strap && joists->tied_pairs > 0)
            field_add(of->arena, part, FIELD_TICK,
                      "ties in place: %s hold the rafters together: each of %zu pairs is tied by a board across both "
                      "joists before it is cut, and that board stays until strap %s is nailed over the beam",
                      name, joists->tied_pairs, joists->strap->code);
        else
            field_add(of->arena, part, FIELD_TICK,
                      "ties in place: %s hold the rafters together: tied before they are cut, and until the other "
                      "side's straps are on",
                      name);
    }
    if (!any)
        field_add(of->arena, part, FIELD_TICK,
                  "ties: no joist that is cut here is said to hold the rafters together; looked at in the attic");
}

static void add_shores(struct field_beam *of, struct field_part *part)
{
    size_t count = 0;
    for (size_t i = 0; i < of->design->shore_count; i++) {
        const struct shore_design *shore = &of->design->shores[i];
        if (!field_has_shore(of, shore))
            continue;
        count++;
        field_add(of->arena, part, FIELD_TICK,
                  "%s carries: plumb, braced, snug under every joist, what is below it in place; the wall is free of "
                  "load",
                  head_name(of->arena, KIND_SHORE, &shore->shore->head));
    }
    if (count == 0)
        field_add(of->arena, part, FIELD_STOP, "NO SHORE of this job holds what comes onto this beam");
}

/* What stands open is the job's: each sheet may be the only one in hand. */
static void add_open(struct field_beam *of, struct field_part *part)
{
    struct lines asks = open_questions(of->arena, of->report), fails = failing_checks(of->arena, of->report);
    if (is_budget(of->job))
        field_add(of->arena, part, FIELD_STOP, "BUDGET, on assumptions: nothing is built from this sheet");
    for (size_t i = 0; i < asks.count; i++)
        field_add(of->arena, part, FIELD_STOP, "OPEN: %s", asks.item[i]);
    for (size_t i = 0; i < fails.count; i++)
        field_add(of->arena, part, FIELD_STOP, "DOES NOT HOLD: %s", fails.item[i]);
    if (asks.count == 0 && fails.count == 0 && of->report->signable)
        field_add(of->arena, part, FIELD_SAY, "Open questions and checks that fail: none.");
}

void field_stop(struct field_beam *of)
{
    struct field_part *part =
        field_part_add(of->arena, of->sheet, "stop", "STOP: nothing is cut until every box is ticked");
    add_open(of, part);
    field_add(of->arena, part, FIELD_TICK, "permit on site, number: ____________  inspector, telephone: ____________");
    add_engineers(of, part);
    add_services(of, part);
    add_ties(of, part);
    add_shores(of, part);
}
