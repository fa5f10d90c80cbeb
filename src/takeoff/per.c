/* What assemblies are counted by: each `per` word of the catalogs with the function that counts it. */
#include <string.h>

#include "per_words.h"
#include "sawbill/text.h"

decimal_t hundredths(wide_t value, wide_t unit)
{
    const wide_t hundredth = DECIMAL_ONE / 100;
    return (decimal_t)(divide_round(value * 100, unit) * hundredth);
}

decimal_t feet(length_t length)
{
    const length_t foot = LENGTH_FOOT;
    return hundredths(length, foot);
}

decimal_t square_feet(wide_t area)
{
    const wide_t foot = LENGTH_FOOT / LENGTH_INCH, inch = LENGTH_INCH;
    return hundredths(area, foot * inch * foot * inch);
}

static decimal_t count_job(const struct counting *counting, const char *finish)
{
    (void)counting;
    (void)finish;
    return DECIMAL_ONE;
}

length_t wall_out_length(const struct counting *counting, const struct wall *wall)
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
            sum += wall_out_length(counting, &counting->job->walls[i]);
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
        const char *const of_face[] = {wall->finish_a.text, wall->finish_b.text};
        int faces = finish ? 0 : 1;
        for (size_t k = 0; k < 2 && finish; k++)
            faces += of_face[k] && name_same(of_face[k], finish);
        sum += (wide_t)faces * wall_out_length(counting, wall) * wall->height.length;
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

static int64_t plies_of(const struct beam_design *design)
{
    return is_new_beam(design->beam) && design->member ? design->plies * (int64_t)beam_pieces(design) : 0;
}

static decimal_t count_all_plies(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->beam_count; i++)
        sum += plies_of(&counting->design->beams[i]);
    return decimal_of(sum);
}

static bool goes_up_whole(const struct beam_design *design)
{
    return design->beam->raised.choice == RAISED_WHOLE;
}

static decimal_t count_plies_lifted(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->beam_count; i++)
        sum += goes_up_whole(&counting->design->beams[i]) ? 0 : plies_of(&counting->design->beams[i]);
    return decimal_of(sum);
}

static decimal_t count_raised_whole(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->beam_count; i++)
        sum += goes_up_whole(&counting->design->beams[i]) && plies_of(&counting->design->beams[i]) > 0;
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
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->joists_count; i++)
        if (hangs_joists(counting->design->joists[i].beam))
            sum += joist_hangers(&counting->design->joists[i]);
    for (size_t i = 0; i < counting->design->beam_count; i++)
        for (int end = 0; end < 2; end++)
            sum += is_hung(&counting->design->beams[i], end) && counting->design->beams[i].end_hanger[end];
    return decimal_of(sum + opening_hangers(counting));
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

static decimal_t count_all_kickers(const struct counting *counting, const char *finish)
{
    (void)finish;
    return decimal_of(kickers(counting));
}

static decimal_t count_ends_held(const struct counting *counting, const char *finish)
{
    (void)finish;
    return decimal_of(ends_held(counting, false));
}

static decimal_t count_ends_in_wood(const struct counting *counting, const char *finish)
{
    (void)finish;
    return decimal_of(ends_held(counting, true));
}

static decimal_t count_all_posts(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->job->post_count; i++)
        sum += is_new_post(counting->job, i);
    return decimal_of(sum);
}

static decimal_t count_post_feet(const struct counting *counting, const char *finish)
{
    (void)finish;
    length_t sum = 0;
    for (size_t i = 0; i < counting->job->post_count; i++)
        if (is_new_post(counting->job, i))
            sum += counting->job->posts[i].height.length;
    return feet(sum);
}

static decimal_t count_blocks(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->job->block_count; i++)
        sum += carries_something(counting->job, KIND_BLOCK, i);
    return decimal_of(sum);
}

static decimal_t count_footings(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->job->footing_count; i++)
        sum += is_new_footing(counting->job, i);
    return decimal_of(sum);
}

/* Square footings: size x size x thickness. */
static decimal_t count_footing_volume(const struct counting *counting, const char *finish)
{
    (void)finish;
    wide_t sum = 0;
    /* In 1/8,128 in a side: sixty-fourths and millimeters stay whole, and the product fits whatever the size. */
    const length_t step = LENGTH_INCH / 8128;
    const wide_t foot = LENGTH_FOOT / step, cubic_foot = foot * foot * foot;
    for (size_t i = 0; i < counting->job->footing_count; i++) {
        const struct footing *footing = &counting->job->footings[i];
        if (is_new_footing(counting->job, i))
            sum += (wide_t)(footing->size.length / step) * (footing->size.length / step) *
                   (footing->thickness.length / step);
    }
    return hundredths(sum, cubic_foot);
}

static decimal_t count_openings_framed(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->job->opening_count; i++)
        sum += counting->job->openings[i].status.choice != NE_EXISTING;
    return decimal_of(sum);
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

static bool goes_whole(const struct removal *removal)
{
    return removal->how.choice == HOW_WHOLE;
}

static decimal_t count_removed_whole(const struct counting *counting, const char *finish)
{
    (void)finish;
    int64_t sum = 0;
    for (size_t i = 0; i < counting->job->removal_count; i++)
        sum += goes_whole(&counting->job->removals[i]);
    return decimal_of(sum);
}

static decimal_t count_feet_in_sections(const struct counting *counting, const char *finish)
{
    (void)finish;
    length_t sum = 0;
    for (size_t i = 0; i < counting->job->removal_count; i++)
        if (!goes_whole(&counting->job->removals[i]))
            sum += counting->job->removals[i].length.length;
    return feet(sum);
}

static decimal_t count_feet_removed(const struct counting *counting, const char *finish)
{
    (void)finish;
    length_t sum = 0;
    for (size_t i = 0; i < counting->job->removal_count; i++)
        sum += counting->job->removals[i].length.length;
    return feet(sum);
}

/* The words, with their units and meanings, are those that the catalogs may use (catalog_per); each has its
 * function here.  A finish is counted by count_wall_area(). */
static const struct {
    const char *per;
    per_fn *count;
} rows[] = {
    {"job", count_job},
    {"day of shoring", count_shoring_days},
    {"foot of wall out", count_wall_feet},
    {"square foot of wall out", count_wall_area},
    {"square foot of ceiling opened", count_ceiling},
    {"beam", count_beams},
    {"foot of beam", count_beam_feet},
    {"ply", count_all_plies},
    {"ply lifted", count_plies_lifted},
    {"beam raised whole", count_raised_whole},
    {"joist end", count_joist_ends},
    {"joist end high", count_high_joists},
    {"joist end low", count_low_joists},
    {"joist bay", count_joist_bays},
    {"hanger", count_all_hangers},
    {"strap", count_all_straps},
    {"post", count_all_posts},
    {"foot of post", count_post_feet},
    {"beam end in a pocket", count_pockets},
    {"beam end on a hanger", count_hung_beam_ends},
    {"shore", count_shores},
    {"foot of shore", count_shore_feet},
    {"shore stud", count_shore_studs},
    {"block", count_blocks},
    {"footing", count_footings},
    {"cubic foot of footing", count_footing_volume},
    {"opening framed", count_openings_framed},
    {"kicker", count_all_kickers},
    {"beam end held", count_ends_held},
    {"beam end held by wood", count_ends_in_wood},
    {"member in the way", count_in_the_way},
    {"member propped", count_propped},
    {"member landed", count_landed},
    {"member headered off", count_headered_off},
    {"service", count_services},
    {"beam removed", count_beams_removed},
    {"post removed", count_posts_removed},
    {"header removed", count_headers_removed},
    {"foot removed", count_feet_removed},
    {"foot cut in sections", count_feet_in_sections},
    {"removed whole", count_removed_whole},
    {"jack day", count_jack_days},
    {"crib", count_cribs},
    {"square foot of floor protected", count_floor_protected},
    {"trip", count_trips},
    {"cubic foot of debris", count_debris_feet},
    {"dump run", count_dump_runs},
    {"dumpster", count_dumpsters},
    {"square foot of insulation put back", count_insulation},
    {"square foot painted", count_painted},
    {"wall end", count_wall_ends},
    {"post boxed", count_posts_boxed},
    {"foot of furring", count_furring_feet},
    {"square foot of filler", count_filler_area},
    {"plate gap", count_plate_gaps},
    {"cap plate", count_cap_plates},
    {"block beside a beam", count_blocks_beside},
    {"joist added", count_joists_added},
};

/* Words with a finish in them, as the job names it: the narrower ones first. */
static const struct {
    const char *before, *behind;
    per_fn *count;
    struct per_info info;
} finishes[] = {
    {"square foot of ",
     " ceiling",
     count_ceiling,
     {"square foot of FINISH ceiling", "sq ft", "ceiling opened where 'ceiling finish' is FINISH"}},
    {"square foot of ",
     "",
     count_wall_area,
     {"square foot of FINISH", "sq ft", "faces of walls that come out whose 'finish A' or 'finish B' is FINISH"}},
    {"foot of ",
     " floor",
     count_floor_patch,
     {"foot of FINISH floor", "ft", "length of the walls that come out whose 'floor finish' is FINISH"}},
};
enum { FINISH_WORDS = sizeof finishes / sizeof *finishes };

size_t per_count(void)
{
    return catalog_per_count() + FINISH_WORDS;
}

struct per_info per_info(size_t index)
{
    if (index >= catalog_per_count())
        return finishes[index - catalog_per_count()].info;
    struct catalog_per word = catalog_per(index);
    return (struct per_info){word.per, word.unit, word.help};
}

static per_fn *find_row(const char *per)
{
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
        if (name_same(rows[i].per, per))
            return rows[i].count;
    return NULL;
}

/* The finish between the two parts of such a word, or NULL. */
static const char *finish_in(struct arena *arena, const char *folded, const char *before, const char *behind)
{
    size_t length = strlen(folded), first = strlen(before), last = strlen(behind);
    if (length <= first + last || strncmp(folded, before, first) != 0 || strcmp(folded + length - last, behind) != 0)
        return NULL;
    return arena_strndup(arena, folded + first, length - first - last);
}

per_fn *per_find(struct arena *arena, const char *per, struct per_info *info, const char **finish)
{
    *finish = NULL;
    for (size_t i = 0; i < catalog_per_count(); i++)
        if (name_same(catalog_per(i).per, per)) {
            *info = per_info(i);
            return find_row(info->per);
        }
    const char *folded = name_fold(arena, per);
    for (size_t i = 0; i < FINISH_WORDS; i++) {
        *finish = finish_in(arena, folded, finishes[i].before, finishes[i].behind);
        *info = finishes[i].info;
        if (*finish)
            return finishes[i].count;
    }
    return NULL;
}
