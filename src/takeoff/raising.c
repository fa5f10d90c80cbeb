/* Raising a beam: what a ply and the beam weigh, how many people lift it, how much it will shrink beside dry joists. */
#include "raising.h"

#include <math.h>
#include <string.h>

#include "sawbill/text.h"

/* Common practice, no source. */
static const int LEAST_PEOPLE = 2, LEAST_PEOPLE_LONG = 3;
#define LONG_PIECE (12 * LENGTH_FOOT)

int raising_people(double lb, double share_lb, length_t length)
{
    int least = length > LONG_PIECE ? LEAST_PEOPLE_LONG : LEAST_PEOPLE;
    int people = share_lb > 0 ? (int)ceil(lb / share_lb - 1e-9) : least;
    return people > least ? people : least;
}

/* Moisture that the wood has when it comes, by the word of members.csv.  Dry lumber: at most 19 % (grade stamp S-DRY or
 * KD).  Wet lumber shrinks from where the cell walls are full, about 28 % (Wood Handbook, from memory).  Engineered
 * wood leaves the mill drier than a house keeps it. */
static const struct {
    const char *word;
    double percent;
} moistures[] = {{"engineered", 0}, {"wet", 28}, {"green", 28}, {"dry", 19}, {"kd", 19}};
/* In a heated house (from memory: Wood Handbook). */
static const double IN_THE_HOUSE = 8;
/* Of its depth, for each percent of moisture lost (Wood Handbook, from memory: 0.002 to 0.0025). */
static const double EACH_PERCENT = 0.0025;

bool member_shrinkage(struct arena *arena, const struct member *member, double *inches)
{
    const char *moisture = name_fold(arena, member->moisture ? member->moisture : "");
    for (size_t i = 0; i < sizeof moistures / sizeof *moistures; i++)
        if (strstr(moisture, moistures[i].word)) {
            *inches = length_inches(member->depth) * EACH_PERCENT * fmax(moistures[i].percent - IN_THE_HOUSE, 0);
            return true;
        }
    *inches = 0;
    return false;
}

length_t longest_ply_piece(const struct beam_design *design)
{
    length_t longest = 0;
    for (size_t i = 0; i < beam_pieces(design); i++)
        longest = beam_piece(design, i) > longest ? beam_piece(design, i) : longest;
    return longest;
}

static struct raising raising_of(struct counting *counting, const struct beam_design *design)
{
    const struct job_facts *facts = &counting->job->facts;
    const length_t longest = longest_ply_piece(design);
    struct raising raising = {.design = design,
                              .ply_lb = design->member->weight_plf * length_feet(longest),
                              .whole = design->beam->raised.choice == RAISED_WHOLE,
                              .share_lb = quantity_value(facts->lift_share.quantity),
                              .crew = facts->hands.count};
    raising.beam_lb = design->member->weight_plf * length_feet(design->cut_length) * design->plies;
    raising.lifted_lb = raising.whole ? raising.ply_lb * design->plies : raising.ply_lb;
    raising.people = raising_people(raising.lifted_lb, raising.share_lb, longest);
    raising.needs_lift = raising.crew > 0 && raising.people > raising.crew;
    raising.shrinkage_known = member_shrinkage(counting->arena, design->member, &raising.shrinkage_in);
    return raising;
}

static void say_lift(struct counting *counting, const struct raising *raising)
{
    const struct head *head = &raising->design->beam->head;
    if (raising->needs_lift)
        diag_add(counting->diags, DIAG_T003, &head->at,
                 "%s of '%s' weighs %.0f lb: at %.0f lb each that takes %d people and the crew has %d ('hands'); count "
                 "on a lift",
                 raising->whole ? "the whole" : "a ply", head_name(counting->arena, KIND_BEAM, head),
                 raising->lifted_lb, raising->share_lb, raising->people, raising->crew);
}

static void say_way(struct counting *counting, const struct raising *raising)
{
    const struct head *head = &raising->design->beam->head;
    for (size_t i = 0; i < raising->way_count; i++)
        if (raising->way[i].known && !raising->way[i].goes)
            diag_add(counting->diags, DIAG_T004, &head->at, "'%s' does not go in: %s",
                     head_name(counting->arena, KIND_BEAM, head), raising->way[i].how);
}

void count_raising(struct counting *counting)
{
    struct takeoff *takeoff = counting->takeoff;
    for (size_t i = 0; i < counting->design->beam_count; i++) {
        const struct beam_design *design = &counting->design->beams[i];
        if (!is_new_beam(design->beam) || !design->member || design->plies < 1)
            continue;
        struct raising raising = raising_of(counting, design);
        way_in_add(counting, &raising);
        say_lift(counting, &raising);
        say_way(counting, &raising);
        takeoff->raising = arena_more(counting->arena, takeoff->raising, takeoff->raising_count,
                                      &takeoff->raising_capacity, sizeof raising);
        takeoff->raising[takeoff->raising_count++] = raising;
    }
}
