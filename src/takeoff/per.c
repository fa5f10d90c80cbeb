/* What assemblies may be counted by: one table of `per` words, each with the function that counts it. */
#include "counting.h"

#include <string.h>

#include "sawbill/text.h"

static const char FINISH_PREFIX[] = "square foot of ";

/* value / unit, to hundredths, half away from zero. */
static decimal_t hundredths(wide_t value, wide_t unit)
{
    const wide_t hundredth = DECIMAL_ONE / 100;
    return (decimal_t)((value * 200 + unit) / (unit * 2) * hundredth);
}

static decimal_t feet(length_t length)
{
    return hundredths(length, LENGTH_FOOT);
}

static decimal_t square_feet(wide_t area)
{
    return hundredths(area, (wide_t)LENGTH_FOOT * LENGTH_FOOT);
}

static decimal_t count_job(const struct counting *counting, const char *finish)
{
    (void)counting;
    (void)finish;
    return DECIMAL_ONE;
}

static decimal_t count_shoring_days(const struct counting *counting, const char *finish)
{
    (void)finish;
    int most = 0;
    for (size_t i = 0; i < counting->job->shore_count; i++)
        if (counting->job->shores[i].days.count > most)
            most = counting->job->shores[i].days.count;
    return decimal_of(most);
}

static length_t wall_length(const struct counting *counting, const struct wall *wall)
{
    if (wall->length.at)
        return wall->length.length;
    if (wall->from.at && wall->to.at)
        return wall->to.length - wall->from.length;
    if (wall->under.at && wall->under.kind == KIND_BEAM && wall->under.index < counting->job->beam_count)
        return counting->job->beams[wall->under.index].clear_span.length;
    return 0;
}

static decimal_t count_wall_feet(const struct counting *counting, const char *finish)
{
    (void)finish;
    length_t sum = 0;
    for (size_t i = 0; i < counting->job->wall_count; i++)
        if (counting->job->walls[i].status.choice == WALL_COMES_OUT)
            sum += wall_length(counting, &counting->job->walls[i]);
    return feet(sum);
}

/* Faces of walls that come out: one face each when finish is NULL, else every face with that finish. */
static decimal_t count_wall_area(const struct counting *counting, const char *finish)
{
    wide_t sum = 0;
    for (size_t i = 0; i < counting->job->wall_count; i++) {
        const struct wall *wall = &counting->job->walls[i];
        if (wall->status.choice != WALL_COMES_OUT)
            continue;
        const char *of_face[] = {wall->finish_a.text, wall->finish_b.text};
        int faces = finish ? 0 : 1;
        for (size_t k = 0; k < 2 && finish; k++)
            faces += of_face[k] && name_same(of_face[k], finish);
        sum += (wide_t)faces * wall_length(counting, wall) * wall->height.length;
    }
    return square_feet(sum);
}

/* A dropped beam opens the ceiling only where the job says so. */
static bool opens_ceiling(const struct beam *beam)
{
    return beam->set.choice != SET_DROPPED || beam->ceiling_each_side.at;
}

static decimal_t count_ceiling(const struct counting *counting, const char *finish)
{
    (void)finish;
    wide_t sum = 0;
    for (size_t i = 0; i < counting->design->beam_count; i++) {
        const struct beam_design *design = &counting->design->beams[i];
        if (is_new_beam(design->beam) && opens_ceiling(design->beam))
            sum += (wide_t)design->cut_length * (design->width + 2 * design->beam->ceiling_each_side.length);
    }
    return square_feet(sum);
}

static decimal_t count_beams(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->beam_count; i++)
        sum += is_new_beam(counting->design->beams[i].beam);
    return decimal_of(sum);
}

static decimal_t count_beam_feet(const struct counting *counting, const char *finish)
{
    (void)finish;
    length_t sum = 0;
    for (size_t i = 0; i < counting->design->beam_count; i++)
        if (is_new_beam(counting->design->beams[i].beam))
            sum += counting->design->beams[i].cut_length;
    return feet(sum);
}

static decimal_t count_all_plies(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->beam_count; i++)
        if (is_new_beam(counting->design->beams[i].beam) && counting->design->beams[i].member)
            sum += counting->design->beams[i].plies;
    return decimal_of(sum);
}

static decimal_t count_joist_ends(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->joists_count; i++)
        if (hangs_joists(counting->design->joists[i].beam))
            sum += (int64_t)counting->design->joists[i].count;
    return decimal_of(sum);
}

static bool is_hung(const struct beam_design *design, int end)
{
    enum end_kind kind = design->beam->end_[end].kind;
    return is_new_beam(design->beam) && (kind == END_BEAM || kind == END_HANGER);
}

static decimal_t count_hung_beam_ends(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->beam_count; i++)
        sum += is_hung(&counting->design->beams[i], 0) + is_hung(&counting->design->beams[i], 1);
    return decimal_of(sum);
}

static decimal_t count_pockets(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->beam_count; i++)
        for (size_t end = 0; end < 2 && is_new_beam(counting->design->beams[i].beam); end++)
            sum += counting->design->beams[i].beam->end_[end].kind == END_POCKET;
    return decimal_of(sum);
}

static decimal_t count_all_hangers(const struct counting *counting, const char *finish)
{
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->joists_count; i++)
        if (hangs_joists(counting->design->joists[i].beam) && counting->design->joists[i].hanger)
            sum += (int64_t)counting->design->joists[i].count;
    for (size_t i = 0; i < counting->design->beam_count; i++)
        for (int end = 0; end < 2; end++)
            sum += is_hung(&counting->design->beams[i], end) && counting->design->beams[i].end_hanger[end];
    (void)finish;
    return decimal_of(sum);
}

static decimal_t count_all_straps(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->joists_count; i++)
        if (hangs_joists(counting->design->joists[i].beam) && counting->design->joists[i].strap)
            sum += (int64_t)counting->design->joists[i].tied_pairs;
    return decimal_of(sum);
}

static decimal_t count_all_posts(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->job->post_count; i++)
        sum += counting->job->posts[i].status.choice != NE_EXISTING;
    return decimal_of(sum);
}

static decimal_t count_post_feet(const struct counting *counting, const char *finish)
{
    (void)finish;
    length_t sum = 0;
    for (size_t i = 0; i < counting->job->post_count; i++)
        if (counting->job->posts[i].status.choice != NE_EXISTING)
            sum += counting->job->posts[i].height.length;
    return feet(sum);
}

static decimal_t count_shores(const struct counting *counting, const char *finish)
{
    (void)finish;
    return decimal_of((int64_t)counting->design->shore_count);
}

static decimal_t count_shore_feet(const struct counting *counting, const char *finish)
{
    (void)finish;
    length_t sum = 0;
    for (size_t i = 0; i < counting->design->shore_count; i++)
        sum += counting->design->shores[i].length;
    return feet(sum);
}

static decimal_t count_shore_studs(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->shore_count; i++)
        sum += counting->design->shores[i].studs;
    return decimal_of(sum);
}

static decimal_t count_blocks(const struct counting *counting, const char *finish)
{
    (void)finish;
    return decimal_of((int64_t)counting->job->block_count);
}

static decimal_t count_footings(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->job->footing_count; i++)
        sum += counting->job->footings[i].status.choice == NE_NEW;
    return decimal_of(sum);
}

/* Square footings: size x size x thickness. */
static decimal_t count_footing_volume(const struct counting *counting, const char *finish)
{
    (void)finish;
    wide_t sum = 0;
    /* In 1/1000 ft a side, so that the product fits whatever the size. */
    const length_t mil = LENGTH_FOOT / 1000;
    const wide_t cubic_foot = 1000000000;
    for (size_t i = 0; i < counting->job->footing_count; i++) {
        const struct footing *footing = &counting->job->footings[i];
        if (footing->status.choice == NE_NEW)
            sum +=
                (wide_t)(footing->size.length / mil) * (footing->size.length / mil) * (footing->thickness.length / mil);
    }
    return hundredths(sum, cubic_foot);
}

static decimal_t count_services(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->job->wall_count; i++)
        if (counting->job->walls[i].status.choice == WALL_COMES_OUT)
            sum += (int64_t)counting->job->walls[i].services.count;
    return decimal_of(sum);
}

static decimal_t removed(const struct counting *counting, enum remove_what what)
{
    int64_t sum = 0;
    for (size_t i = 0; i < counting->job->removal_count; i++)
        sum += counting->job->removals[i].what.choice == (int)what;
    return decimal_of(sum);
}

static decimal_t count_beams_removed(const struct counting *counting, const char *finish)
{
    (void)finish;
    return removed(counting, REMOVE_BEAM);
}

static decimal_t count_posts_removed(const struct counting *counting, const char *finish)
{
    (void)finish;
    return removed(counting, REMOVE_POST);
}

static decimal_t count_headers_removed(const struct counting *counting, const char *finish)
{
    (void)finish;
    return removed(counting, REMOVE_HEADER);
}

static decimal_t count_feet_removed(const struct counting *counting, const char *finish)
{
    (void)finish;
    length_t sum = 0;
    for (size_t i = 0; i < counting->job->removal_count; i++)
        sum += counting->job->removals[i].length.length;
    return feet(sum);
}

/* The row of FINISH comes last: its words begin as those of other rows do. */
static const struct per_row rows[] = {
    {{"job", "job", "once for the whole job"}, count_job},
    {{"day of shoring", "day", "days that the longest-standing shore stands"}, count_shoring_days},
    {{"foot of wall out", "ft", "length of the walls that come out"}, count_wall_feet},
    {{"square foot of wall out", "sq ft", "length x height of the walls that come out, one face"}, count_wall_area},
    {{"square foot of ceiling opened", "sq ft",
      "cut length of each new beam x (its width + 2 x 'ceiling opened each side')"},
     count_ceiling},
    {{"beam", "each", "new beams"}, count_beams},
    {{"foot of beam", "ft", "cut length of the new beams"}, count_beam_feet},
    {{"ply", "each", "plies of the new beams"}, count_all_plies},
    {{"joist end", "each", "joist ends that new beams carry at their sides"}, count_joist_ends},
    {{"hanger", "each", "joist hangers and hangers of beam ends"}, count_all_hangers},
    {{"strap", "each", "tie straps across the beams"}, count_all_straps},
    {{"post", "each", "new posts"}, count_all_posts},
    {{"foot of post", "ft", "height of the new posts"}, count_post_feet},
    {{"beam end in a pocket", "each", "ends of new beams in a pocket"}, count_pockets},
    {{"beam end on a hanger", "each", "ends of new beams on a hanger"}, count_hung_beam_ends},
    {{"shore", "each", "shore walls"}, count_shores},
    {{"foot of shore", "ft", "length of the shore walls"}, count_shore_feet},
    {{"shore stud", "each", "studs of the shore walls"}, count_shore_studs},
    {{"block", "each", "squash blocks of the job, one for each [block]"}, count_blocks},
    {{"footing", "each", "new footings"}, count_footings},
    {{"cubic foot of footing", "cu ft", "size x size x thickness of the new footings"}, count_footing_volume},
    {{"service", "each", "services listed on the walls that come out"}, count_services},
    {{"beam removed", "each", "beams that [remove] takes out"}, count_beams_removed},
    {{"post removed", "each", "posts that [remove] takes out"}, count_posts_removed},
    {{"header removed", "each", "headers that [remove] takes out"}, count_headers_removed},
    {{"foot removed", "ft", "length of all that [remove] takes out"}, count_feet_removed},
    {{"square foot of FINISH", "sq ft",
      "faces of walls that come out whose 'finish A' or 'finish B' is FINISH: 'square foot of gypsum board'"},
     count_wall_area},
};

size_t per_count(void)
{
    return sizeof rows / sizeof *rows;
}

struct per_info per_info(size_t index)
{
    return rows[index].info;
}

const struct per_row *per_row(size_t index)
{
    return &rows[index];
}

const struct per_row *per_find(struct arena *arena, const char *per, const char **finish)
{
    const size_t last = per_count() - 1;
    *finish = NULL;
    for (size_t i = 0; i < last; i++)
        if (name_same(rows[i].info.per, per))
            return &rows[i];
    const char *folded = name_fold(arena, per);
    const size_t length = sizeof FINISH_PREFIX - 1;
    if (strncmp(folded, FINISH_PREFIX, length) != 0 || folded[length] == '\0')
        return NULL;
    *finish = folded + length;
    return &rows[last];
}
