/* What assemblies are counted by, about what is opened, torn out and made good. */
#include "per_words.h"
#include "sawbill/text.h"

/* A dropped beam opens the ceiling only where the job says so. */
static bool opens_ceiling(const struct beam *beam)
{
    return is_new_beam(beam) && (beam->set.choice != SET_DROPPED || beam->ceiling_each_side.at);
}

static wide_t ceiling_of(const struct beam_design *design)
{
    return opens_ceiling(design->beam)
               ? (wide_t)design->cut_length * (design->width + 2 * design->beam->ceiling_each_side.length)
               : 0;
}

decimal_t count_ceiling(const struct counting *counting, const char *finish)
{
    wide_t sum = 0;
    for (size_t i = 0; i < counting->design->beam_count; i++) {
        const struct beam_design *design = &counting->design->beams[i];
        const char *is = design->beam->ceiling_finish.text;
        if (!finish || name_same(is ? is : "gypsum board", finish))
            sum += ceiling_of(design);
    }
    return square_feet(sum);
}

decimal_t count_insulation(const struct counting *counting, const char *finish)
{
    (void)finish;
    wide_t sum = 0;
    for (size_t i = 0; i < counting->design->beam_count; i++)
        if (counting->design->beams[i].beam->insulation_back.choice == YES)
            sum += ceiling_of(&counting->design->beams[i]);
    return square_feet(sum);
}

/* To the next corner: half as much again as is opened (common practice, no source), unless the job has measured it. */
decimal_t count_painted(const struct counting *counting, const char *finish)
{
    (void)finish;
    const struct quantity_value *said = &counting->job->facts.area_to_paint;
    const decimal_t half_again = DECIMAL_ONE + DECIMAL_ONE / 2;
    if (!said->at)
        return decimal_times(count_ceiling(counting, NULL), half_again, 2);
    const double hundred = 100; /* to hundredths of a square foot */
    return (decimal_t)(quantity_value(said->quantity) * hundred + 0.5) * (DECIMAL_ONE / 100);
}

decimal_t count_floor_patch(const struct counting *counting, const char *finish)
{
    length_t sum = 0;
    for (size_t i = 0; i < counting->job->wall_count; i++) {
        const struct wall *wall = &counting->job->walls[i];
        if (wall->status.choice == WALL_COMES_OUT && wall->floor_finish.text && finish &&
            name_same(wall->floor_finish.text, finish))
            sum += wall_out_length(counting, wall);
    }
    return feet(sum);
}

decimal_t count_wall_ends(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->beam_count; i++)
        for (int end = 0; end < 2 && is_new_beam(counting->design->beams[i].beam); end++) {
            enum end_kind kind = counting->design->beams[i].beam->end_[end].kind;
            sum += kind == END_POST || kind == END_PLATE || kind == END_POCKET;
        }
    return decimal_of(sum);
}

decimal_t count_posts_boxed(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->beam_count; i++) {
        const struct beam *beam = counting->design->beams[i].beam;
        for (size_t k = 0; is_new_beam(beam) && k < beam->inner.count; k++)
            sum += beam->inner.item[k].on.kind == END_POST;
    }
    return decimal_of(sum);
}
