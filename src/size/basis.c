/* What the sizing rests on, and what it left out, in words. */
#include "size.h"

#include <string.h>

#include "sawbill/text.h"

static void say_live(struct sizing *s)
{
    bool attic = false;
    for (size_t i = 0; i < s->combo_count; i++)
        attic |= s->combo[i].factor[LOAD_ATTIC] > 0;
    if (!attic) {
        basis_add(s, "all live loads act together, without reduction for area");
        return;
    }
    basis_add(s, "La: live load of an attic without storage; it need not act with other live loads (IRC 2021 Table "
                 "R301.5 note b): the worse of La alone and of the other live loads without it, in every combination; "
                 "with roof live load and snow it is kept, the safe side");
    basis_add(s, "all other live loads act together, without reduction for area; where live load is listed in pounds, "
                 "it is the sum of both, and La of it stands beside it");
}

/* Each with its edition: 3 and 4 are 3a and 4a in ASCE 7-22. */
static void say_combinations(struct sizing *s)
{
    bool letters = !strcmp(s->design->standard, "ASCE 7-22");
    for (size_t i = 0; i < s->combo_count; i++) {
        const struct combination *combo = &s->combo[i];
        int number = combination_number(combo);
        basis_add(s,
                  arena_printf(s->arena, "combination %s: %s 2.4.1 no. %d%s, CD %s", combo->name, s->design->standard,
                               number, letters && number > 2 ? "a" : "", number_text(s->arena, combo->cd, 2)));
    }
    if (letters && !s->strength)
        basis_add(s, "S at allowable level stands for the 0.7 S of ASCE 7-22");
    basis_add(s, "combinations with wind and earthquake are left out");
}

static void say_standards(struct sizing *s)
{
    basis_add(s, "NDS 2018, allowable stress design; dry service inside a heated house, CM = Ct = Ci = 1.0, where "
                 "nothing else is said");
    basis_add(s, arena_printf(s->arena, "loads as given by the job, %s", s->design->standard));
    say_combinations(s);
    basis_add(s, "every check in every combination; the greatest ratio governs, rounded up in print");
    say_live(s);
    basis_add(s, "a side's share of its joists: half of `run`");
}

/* What the published E holds of the deflection by shear (from memory). */
static void say_shear_sag(struct sizing *s, const struct member *member)
{
    if (member->wood == WOOD_SAWN)
        basis_add(s, "deflection by shear: held in the published E of sawn lumber, on usual spans (NDS 3.5.1, from "
                     "memory); none is added");
    else if (member->wood == WOOD_GLULAM)
        basis_add(s, "deflection by shear: held in the published E of glulam, the apparent one (NDS Supplement Table "
                     "5A, from memory); none is added");
    else
        unchecked_add(s, arena_printf(s->arena,
                                      "not checked: whether E of %s holds the deflection by shear: the product's "
                                      "report says; none is added",
                                      member->material));
}

static void say_service(struct sizing *s, const struct beam_design *bd, const char *name)
{
    if (bd->member)
        say_shear_sag(s, bd->member);
    if (!bd->service)
        return;
    basis_add(s, arena_printf(s->arena, "%s: %s", name, bd->service));
    if (needs_hangers(bd->beam))
        unchecked_add(
            s, arena_printf(s->arena, "not checked: hangers at %s in its service: they are listed for dry wood", name));
}

static void say_values(struct sizing *s, const struct member *member)
{
    if (!member || !member->values)
        return;
    const struct design_row *row = member->values;
    basis_add(s, arena_printf(s->arena, "%s: %s %s, table %s, %s; %s%s", member->code, row->species, row->grade,
                              row->table, row->edition, row->source,
                              row->seen ? "" : " (unverified: not read in its source)"));
    if (member->wood == WOOD_LVL || member->wood == WOOD_PSL || member->wood == WOOD_LSL)
        basis_add(s,
                  arena_printf(s->arena,
                               "%s: depth factor typical of its class, no gain below 12 in; the report of the product "
                               "in hand governs",
                               member->code));
}

static void say_beam(struct sizing *s, const struct beam_design *bd)
{
    const char *name = head_name(s->arena, KIND_BEAM, &bd->beam->head);
    say_values(s, bd->member);
    say_service(s, bd, name);
    if (beam_runs_on(bd))
        inner_say(s, bd, name);
    else
        basis_add(s, arena_printf(s->arena, "%s: design span %s, center to center of its bearings", name,
                                  length_tape(s->arena, length_from_inches(bd->design_span_in))));
    if (needs_hangers(bd->beam))
        basis_add(s, arena_printf(s->arena, "%s: V reduction: none, side-loaded (NDS 2018 3.4.3.1 not used)", name));
    decimal_t cr = bd->beam->repetitive_factor.decimal;
    bool more = bd->plies >= 3 && cr <= DECIMAL_ONE && bd->member && bd->member->wood == WOOD_SAWN;
    basis_add(s, arena_printf(s->arena, "%s: repetitive factor Cr %s%s; lateral buckling rated on the width of one ply",
                              name, decimal_text(s->arena, cr > 0 ? cr : DECIMAL_ONE),
                              more ? " (1.15 for three plies and more, NDS 2018 4.3.9, is not used: bending would be "
                                     "1/1.15 of what is shown)"
                                   : ""));
    upset_say(s, bd);
    low_say(s, bd);
    specified_say(s, bd->beam, name);
}

static void list_unchecked(struct sizing *s, const struct beam_design *bd)
{
    const char *name = head_name(s->arena, KIND_BEAM, &bd->beam->head);
    if (bd->plies > 1 && bd->member && !ply_fastening_known(s, bd))
        unchecked_add(s, arena_printf(s->arena,
                                      "not checked: the fasteners between the plies of %s: the job names none that "
                                      "fasteners.csv has",
                                      name));
}

static void list_walls(struct sizing *s)
{
    unchecked_add(s,
                  "not checked: wind and earthquake, out of scope here (uplift only where the job gives it), and the "
                  "bracing of the house");
    for (size_t i = 0; i < s->job->wall_count; i++) {
        const struct wall *wall = &s->job->walls[i];
        if (wall->status.choice == WALL_COMES_OUT && wall->bracing.choice != NO)
            unchecked_add(s, arena_printf(s->arena, "not checked: %s as a bracing wall: an engineer must say",
                                          head_name(s->arena, KIND_WALL, &wall->head)));
        if (wall->status.choice == WALL_COMES_OUT && !wall->under.at)
            unchecked_add(s, arena_printf(s->arena, "not checked: what %s bears, which comes out%s",
                                          head_name(s->arena, KIND_WALL, &wall->head),
                                          wall->bearing.choice == NO ? ": nothing, as the job says" : ""));
    }
}

void basis_write(struct sizing *s)
{
    const struct design *design = s->design;
    say_standards(s);
    snow_write(s);
    uplift_write(s);
    held_say(s);
    for (size_t i = 0; i < design->beam_count; i++) {
        say_beam(s, &design->beams[i]);
        list_unchecked(s, &design->beams[i]);
    }
    for (size_t i = 0; i < design->post_count; i++)
        say_values(s, design->posts[i].member);
    for (size_t i = 0; i < design->shore_count; i++) {
        say_values(s, design->shores[i].member);
        if (design->shores[i].strongback)
            say_values(s, design->shores[i].strongback);
    }
    basis_add(s, "hangers and straps: listed loads of hangers.csv at the duration of each combination; a value that is "
                 "not listed is never scaled up");
    list_walls(s);
    refusals_say(s);
}
