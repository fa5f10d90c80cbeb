/* What must hold of the list of any job, on random whole jobs: hangers, nails, lengths, and counts when a span grows,
 * worked out again here from the figures of the job.  Fixed seed; `takeoff_test_property_jobs 10000` runs that many
 * cases. */
#include "takeoff/counted_job.h"

enum { PROPERTIES = 5 };
static int rounds; /* of each property */

/* "hangers/north/A" and its kin, not the nails below it. */
static bool is_hanger_line(const struct takeoff_line *line)
{
    return begins(line->id, "hangers/") && !strstr(line->id, "/nails in");
}

static int64_t hangers_in(const struct takeoff *takeoff)
{
    int64_t sum = 0;
    for (size_t i = 0; i < takeoff->count; i++)
        sum += is_hanger_line(&takeoff->line[i]) ? whole(takeoff->line[i].count) : 0;
    return sum;
}

/* No hanger of the catalog fits and holds: that is said, and nothing counted. */
static bool said_no_hanger(const struct made *made, const char *of)
{
    for (size_t i = 0; i < made->diags.count; i++)
        if (made->diags.item[i].code == DIAG_T002 && strstr(made->diags.item[i].text, "no hanger fits") &&
            strstr(made->diags.item[i].text, of))
            return true;
    return false;
}

/* `want` of them, or none and a message that names `of`; how many there are. */
static int64_t assert_hung(const struct made *made, const struct takeoff *takeoff, const char *id, int64_t want,
                           const char *of)
{
    int64_t got = count_at(takeoff, id);
    if (got != want && (got != 0 || !said_no_hanger(made, of)))
        fail_msg("case %d: %s: %lld, by hand %lld", (int)from, id, (long long)got, (long long)want);
    return got;
}

static int64_t hung_on_opening(const struct made *made, const struct random_job *job, const struct takeoff *takeoff)
{
    struct joists_by_hand joists = joists_of(job, 0, cut_of(made, job, 0));
    bool far = job->field[0].run_in > 84; /* 7 ft */
    int64_t sum = 0, trimmers = hangs_joists(job, 0) ? 2 : 0;
    for (int k = 0; k < 2; k++) {
        const char *word = k ? "far" : "near";
        bool is = k == 0 || far;
        sum += assert_hung(made, takeoff, arena_printf(arena, "hangers/O1/%s header", word), is ? 2 : 0, "header");
        sum += assert_hung(made, takeoff, arena_printf(arena, "hangers/O1/%s tails", word), is ? joists.stopped : 0,
                           "tails");
    }
    same("trimmer plies", count_at(takeoff, "openings/O1/trimmers"), 4 - (joists.plies < 2 ? joists.plies : 2));
    return sum + assert_hung(made, takeoff, "hangers/O1/trimmers", trimmers, "trimmers");
}

/* Hangers = joists on faces + two trimmers + two a header + tails + hung beam ends; each sort by itself, too. */
static void assert_hangers(const struct made *made, const struct random_job *job, const struct takeoff *takeoff)
{
    int64_t sum = job->opening ? hung_on_opening(made, job, takeoff) : 0, ends = 0;
    for (int i = 0; i < FIELDS; i++) {
        if (!job->field[i].is || !hangs_joists(job, job->field[i].beam))
            continue;
        struct joists_by_hand joists = joists_of(job, i, cut_of(made, job, job->field[i].beam));
        const char *id = arena_printf(arena, "hangers/%s/%c", field_name[i], i == 1 ? 'B' : 'A');
        const char *of = arena_printf(arena, "joists %s", field_name[i]);
        sum += assert_hung(made, takeoff, id, (int64_t)joists.hung_count - joists.doubled - joists.wide, of);
        sum += assert_hung(made, takeoff, arena_printf(arena, "%s/doubled", id), joists.doubled, of);
        sum += assert_hung(made, takeoff, arena_printf(arena, "%s/HNG-W158-10", id), joists.wide, of);
    }
    for (int i = 0; i < job->beams; i++)
        for (int end = 0; end < 2; end++) {
            const char *id = arena_printf(arena, "hangers/B%d/end %d", i + 1, end + 1);
            int64_t hung = job->beam[i].carrier[end] >= 0;
            ends += assert_hung(made, takeoff, id, hung, arena_printf(arena, "'beam B%d', end %d", i + 1, end + 1));
        }
    same("hangers", hangers_in(takeoff), sum + ends);
}

/* Each hanger line has the nails of all holes of its hanger below it, and no nails are left over. */
static int64_t assert_nails_of(const struct takeoff *takeoff, const struct takeoff_line *line)
{
    static const char *const legs[] = {"nails in the carrier", "nails in the member"};
    const struct hanger *hanger = catalog_hanger(catalog, line->item);
    int64_t lines = 0;
    if (!hanger)
        fail_msg("case %d: %s has no hanger of the catalog", (int)from, line->id);
    for (int leg = 0; leg < 2; leg++) {
        const char *id = arena_printf(arena, "%s/%s", line->id, legs[leg]);
        int holes = leg ? hanger->member_count : hanger->carrier_count;
        const struct takeoff_line *nails = line_find(takeoff, id);
        same(id, nails ? whole(nails->count) : 0, whole(line->count) * holes);
        if (!nails)
            continue;
        assert_string_equal(nails->item, leg ? hanger->member_nail : hanger->carrier_nail);
        lines++;
    }
    return lines;
}

static void assert_nails(const struct takeoff *takeoff)
{
    int64_t lines = 0, all = 0;
    for (size_t i = 0; i < takeoff->count; i++) {
        const struct takeoff_line *line = &takeoff->line[i];
        if (is_hanger_line(line))
            lines += assert_nails_of(takeoff, line);
        all += begins(line->id, "hangers/") && strstr(line->id, "/nails in") != NULL;
    }
    same("lines of hanger nails", all, lines);
}

static void hangers_and_nails(void **state)
{
    (void)state;
    for (int round = 0; round < rounds; round++, restart()) {
        uint64_t seed = from = (uint64_t)round + 1;
        struct random_job job = random_job(&seed);
        struct made made;
        const struct takeoff *takeoff = count_of(&made, &job);
        assert_hangers(&made, &job, takeoff);
        assert_nails(takeoff);
    }
}

/* ---- the words of assemblies ---- */

/* One row a word, so that each is counted once by itself: assembly/WORD/SHIMS. */
static const struct catalog *with_words(const char *const *words, size_t count)
{
    struct catalog *other = arena_alloc(arena, sizeof *other);
    *other = *catalog;
    other->assemblies = arena_array(arena, count, sizeof *other->assemblies);
    other->assembly_count = count;
    for (size_t i = 0; i < count; i++)
        other->assemblies[i] = (struct assembly_line){
            .assembly = words[i], .per = words[i], .item = "SHIMS", .note = "", .cost_code = "", .count = DECIMAL_ONE};
    return other;
}

/* What hangs: joists and trimmers on beams, the bays between joists, beam ends. */
struct hanging {
    double joists, bays, beam_ends, high, low;
};

static struct hanging hanging_of(const struct made *made, const struct random_job *job)
{
    struct hanging out = {.joists = job->opening && hangs_joists(job, 0) ? 2 : 0};
    for (int i = 0; i < FIELDS; i++) {
        if (!job->field[i].is || !hangs_joists(job, job->field[i].beam))
            continue;
        struct joists_by_hand joists = joists_of(job, i, cut_of(made, job, job->field[i].beam));
        out.joists += (double)joists.hung_count;
        out.bays += (double)joists.hung_count - 1;
        out.high += job->field[i].high;
        out.low += job->field[i].low;
    }
    for (int i = 0; i < job->beams; i++)
        for (int end = 0; end < 2; end++)
            out.beam_ends += job->beam[i].carrier[end] >= 0;
    return out;
}

/* Posts at ends and between them, 7 ft each; one of 5 ft below the block that they stand on.  What carries nothing is
 * not counted. */
static double posts_of(const struct random_job *job, bool feet)
{
    int posts = 0;
    for (int i = 0; i < job->beams; i++) {
        for (int end = 0; end < 2; end++)
            posts += job->beam[i].carrier[end] < 0 && job->beam[i].end[end] < 2;
        for (int k = 0; k < job->beam[i].inner; k++)
            posts += !job->beam[i].support[k].plate;
    }
    int below = job->on_post && posts > 0;
    return feet ? 7 * posts + 5 * below : posts + below;
}

static int pieces_of(const struct random_beam *beam)
{
    int pieces = 1;
    for (int k = 0; k < beam->inner; k++)
        pieces += beam->support[k].spliced;
    return pieces;
}

static double beams_of(const struct made *made, const struct random_job *job, const char *what)
{
    double sum = 0;
    for (int i = 0; i < job->beams; i++) {
        double feet = length_feet(cut_of(made, job, i)), width = length_feet(made->design->beams[i].width);
        sum += !strcmp(what, "plies")                ? job->beam[i].plies * pieces_of(&job->beam[i])
               : !strcmp(what, "feet")               ? feet
               : strcmp(job->beam[i].set, "dropped") ? feet * (width + 2 * 16.0 / 12) /* the ceiling opened */
                                                     : 0;
    }
    return sum;
}

static double pockets_of(const struct random_job *job)
{
    int pockets = 0;
    for (int i = 0; i < job->beams; i++)
        for (int end = 0; end < 2; end++)
            pockets += job->beam[i].carrier[end] < 0 && job->beam[i].end[end] == 2;
    return pockets;
}

/* An upset B1 has kickers 4 ft apart at most: one fewer than the spaces of its design span. */
static double kickers_of(const struct made *made, const struct random_job *job)
{
    double span = length_inches(cut_of(made, job, 0)) - job->beam[0].past_in[0] - job->beam[0].past_in[1] -
                  (length_inches(bearing_of(&job->beam[0], 0)) + length_inches(bearing_of(&job->beam[0], 1))) / 2;
    return strcmp(job->beam[0].set, "upset") != 0 ? 0 : ceil(span / 48 - 1e-9) - 1;
}

static double faces_of(const struct random_job *job, int finish)
{
    return 64.0 * ((job->finish[0] == finish) + (job->finish[1] == finish)); /* 8 x 8 ft each */
}

static void words_count_what_they_say(void **state)
{
    (void)state;
    for (int round = 0; round < rounds; round++, restart()) {
        uint64_t seed = from = (uint64_t)round + 5000001;
        struct random_job job = random_job(&seed);
        struct made made;
        random_size(&made, arena, &job, catalog);
        struct hanging hangs = hanging_of(&made, &job);
        double shore = job.beam[0].clear_in + 2.0 * job.field[0].spacing, twice = job.below == 1 ? 2 : 1;
        const struct {
            const char *word;
            double count;
        } words[] = {
            {"job", 1},
            {"beam", job.beams},
            {"ply", beams_of(&made, &job, "plies")},
            {"foot of beam", beams_of(&made, &job, "feet")},
            {"square foot of ceiling opened", beams_of(&made, &job, "ceiling")},
            {"joist end", hangs.joists},
            {"joist end high", hangs.high},
            {"joist end low", hangs.low},
            {"joist bay", hangs.bays},
            {"post", posts_of(&job, false)},
            {"foot of post", posts_of(&job, true)},
            {"beam end in a pocket", pockets_of(&job)},
            {"beam end on a hanger", hangs.beam_ends},
            {"block", job.on_post && posts_of(&job, false) > 0},
            {"opening framed", job.opening},
            {"kicker", kickers_of(&made, &job)},
            {"member in the way", job.lands},
            {"member propped", job.lands},
            {"member landed", job.lands},
            {"foot of wall out", 8},
            {"square foot of wall out", 64},
            {"square foot of gypsum board", faces_of(&job, 1)},
            {"square foot of plaster on lath", faces_of(&job, 2)},
            {"service", job.services},
            {"header removed", job.removed_ft > 0},
            {"foot removed", job.removed_ft},
            {"foot cut in sections", job.removed_ft},
            {"shore", 1},
            {"foot of shore", twice * shore / 12},
            {"shore stud", twice * (ceil(shore / job.stud_spacing) + 1)},
            {"day of shoring", 5},
            {"jack day", 4 * 5},
            {"crib", job.below == 2 ? ceil(shore / 48) + 1 : 0},
            {"trip", 2},
            {"square foot of floor protected", 300},
        };
        enum { WORDS = sizeof words / sizeof *words };
        const char *word[WORDS];
        for (int i = 0; i < WORDS; i++)
            word[i] = words[i].word;
        const struct catalog *of = with_words(word, WORDS);
        const struct takeoff *takeoff = takeoff_job(arena, made.job, of, made.design, &made.diags);
        for (int i = 0; i < WORDS; i++) {
            const struct takeoff_line *line = line_find(takeoff, arena_printf(arena, "assembly/%s/SHIMS", word[i]));
            double got = line ? decimal_value(line->count) : 0;
            if (!(fabs(got - words[i].count) <= 0.005 * (1 + 1e-6) + 1e-9))
                fail_msg("case %d: per %s: %g, by hand %g", (int)from, word[i], got, words[i].count);
        }
    }
}

/* ---- a span that grows ---- */

struct counts {
    int64_t joists, hangers, studs;
};

static struct counts counts_of(const struct made *made, const struct takeoff *takeoff)
{
    struct counts out = {.hangers = hangers_in(takeoff), .studs = count_at(takeoff, "shores/S1/studs")};
    for (size_t i = 0; i < made->design->joists_count; i++)
        out.joists += (int64_t)made->design->joists[i].count;
    return out;
}

/* Of every beam over the shore: its length is the clear span and two spacings of the joists. */
static void a_longer_span_needs_no_less(void **state)
{
    int grew = 0;
    (void)state;
    for (int round = 0; round < rounds; round++, restart()) {
        uint64_t seed = from = (uint64_t)round + 1000001;
        struct random_job job = random_job(&seed);
        struct made made;
        const struct takeoff *takeoff = count_of(&made, &job);
        struct counts was = counts_of(&made, takeoff);
        job.beam[random_of(&seed, job.beams)].clear_in += 1 + random_of(&seed, 60);
        takeoff = count_of(&made, &job);
        struct counts is = counts_of(&made, takeoff);
        if (is.joists < was.joists || is.hangers < was.hangers || is.studs < was.studs)
            fail_msg("case %d: joists %lld to %lld, hangers %lld to %lld, studs %lld to %lld", (int)from,
                     (long long)was.joists, (long long)is.joists, (long long)was.hangers, (long long)is.hangers,
                     (long long)was.studs, (long long)is.studs);
        grew += is.joists > was.joists;
    }
    assert_true(grew > rounds / 2);
}

/* ---- lengths ---- */

static void assert_plies(const struct made *made, const struct random_job *job, const struct takeoff *takeoff, int i)
{
    const struct random_beam *beam = &job->beam[i];
    length_t cut = cut_of(made, job, i), sum = 0, last = 0;
    int spliced = pieces_of(beam) - 1;
    for (int k = 0; k <= spliced; k++) {
        const char *id =
            spliced ? arena_printf(arena, "plies/B%d/piece %d", i + 1, k + 1) : text_of("plies/B%d", i + 1);
        const struct takeoff_line *line = line_find(takeoff, id);
        if (!line)
            fail_msg("case %d: no line %s", (int)from, id);
        same(id, whole(line->count), beam->plies);
        sum += line->length;
        last = line->length;
    }
    same("plies from end to end", sum, cut);
    length_t at = 0;
    for (int k = 0; k < beam->inner; k++) /* the last piece begins over the middle of the last support that is cut */
        at = beam->support[k].spliced ? inches(beam->support[k].at_in) : at;
    same("the last piece", last, cut - at);
    length_t room = inches(beam->clear_in + beam->past_in[0] + beam->past_in[1]);
    for (int end = 0; end < 2; end++)
        room += beam->carrier[end] < 0 ? bearing_of(beam, end) : 0;
    assert_true(sum <= room && sum > inches(beam->clear_in) - inches(0.5));
}

/* What is left of each joist with half of the beam and the room at its end makes the run again. */
static void assert_cut_joists(const struct made *made, const struct random_job *job, const struct takeoff *takeoff)
{
    for (size_t i = 0; i < takeoff->cut_side_count; i++) {
        const struct cut_side *side = &takeoff->cut_side[i];
        const struct beam_design *bd = &made->design->beams[side->design->beam - made->job->beams];
        length_t run = 0;
        for (int k = 0; k < FIELDS; k++)
            run = !strcmp(field_name[k], side->design->joists->head.id) ? inches(job->field[k].run_in) : run;
        same("joist, beam and room", side->joist_length + bd->width / 2 + side->clearance, run);
        assert_true(side->clearance >= 0 && side->clearance <= inches(0.125));
        assert_true(side->rests_lb >= 0 && side->most_lb >= side->rests_lb);
    }
}

/* Pieces of one length each: how many, and how long by hand. */
static void assert_pieces(const struct takeoff *takeoff, const char *id, int64_t count, length_t length)
{
    const struct takeoff_line *line = line_find(takeoff, id);
    same(id, line ? whole(line->count) : 0, count);
    if (line)
        same(id, line->length, length);
}

static length_t length_of_all(const struct takeoff *takeoff, const char *id)
{
    length_t sum = 0;
    const char *last = arena_printf(arena, "%s, last", id);
    for (size_t i = 0; i < takeoff->count; i++)
        if (!strcmp(takeoff->line[i].id, id) || !strcmp(takeoff->line[i].id, last))
            sum += whole(takeoff->line[i].count) * takeoff->line[i].length;
    return sum;
}

/* A wall of studs between two plates; `under`: "" or "below/". */
static void assert_shore(const struct random_job *job, const struct takeoff *takeoff, const char *under, double height)
{
    length_t length = inches(job->beam[0].clear_in + 2 * job->field[0].spacing);
    length_t spacing = inches(job->stud_spacing), diagonals = (length + 8 * LENGTH_FOOT - 1) / (8 * LENGTH_FOOT);
    const char *id = arena_printf(arena, "shores/S1/%s", under);
    assert_pieces(takeoff, arena_printf(arena, "%sstuds", id), (length + spacing - 1) / spacing + 1,
                  inches(height - 3));
    same("plates", length_of_all(takeoff, arena_printf(arena, "%splates", id)), 2 * length);
    same("brace rows", length_of_all(takeoff, arena_printf(arena, "%sbrace rows", id)), job->brace_rows * length);
    const struct takeoff_line *diagonal = line_find(takeoff, arena_printf(arena, "%sdiagonals", id));
    same("diagonals", diagonal ? whole(diagonal->count) : 0, diagonals);
    double run = length_inches(length) / (double)diagonals;
    assert_near(length_inches(diagonal->length), ceil(16 * sqrt(run * run + height * height) - 1e-6) / 16, 1e-9);
}

/* Cribs of two timbers a layer, 3-1/2 in thick as they lie flat: the depth is that of the DFL1-4X6, 5-1/2 in. */
static void assert_below(const struct random_job *job, const struct takeoff *takeoff)
{
    length_t length = inches(job->beam[0].clear_in + 2 * job->field[0].spacing);
    if (job->below == 1)
        assert_shore(job, takeoff, "below/", 88);
    int64_t cribs = (length + 4 * LENGTH_FOOT - 1) / (4 * LENGTH_FOOT) + 1;
    assert_pieces(takeoff, "shores/S1/crib timbers", job->below == 2 ? cribs * 16 * 2 : 0, 2 * LENGTH_FOOT);
}

static void assert_opening(const struct made *made, const struct random_job *job, const struct takeoff *takeoff)
{
    length_t cut_off = hangs_joists(job, 0) ? made->design->beams[0].width / 2 : 0;
    const struct takeoff_line *trimmers = line_find(takeoff, "openings/O1/trimmers");
    assert_pieces(takeoff, "openings/O1/headers", job->field[0].run_in > 84 ? 4 : 2, inches(job->opening_wide));
    if (trimmers)
        same("trimmer", trimmers->length, inches(job->field[0].run_in + 3.5) - cut_off);
}

static void assert_posts(const struct random_job *job, const struct takeoff *takeoff, int i)
{
    for (int end = 0; end < 2; end++)
        assert_pieces(takeoff, text_of("posts/P%d", 2 * i + end + 1),
                      job->beam[i].carrier[end] < 0 && job->beam[i].end[end] < 2 ? 3 : 0, inches(84));
    for (int k = 0; k < INNER; k++) {
        bool is = k < job->beam[i].inner && !job->beam[i].support[k].plate;
        assert_pieces(takeoff, text_of("posts/M%d", INNER * i + k + 1), is ? 3 : 0, inches(84));
        assert_pieces(takeoff, text_of("blocks/K1/M%d", INNER * i + k + 1), is && job->on_post ? 3 : 0, inches(9.25));
    }
}

static void lengths_fit(void **state)
{
    (void)state;
    for (int round = 0; round < rounds; round++, restart()) {
        uint64_t seed = from = (uint64_t)round + 2000001;
        struct random_job job = random_job(&seed);
        struct made made;
        const struct takeoff *takeoff = count_of(&made, &job);
        for (int i = 0; i < job.beams; i++) {
            assert_plies(&made, &job, takeoff, i);
            assert_posts(&job, takeoff, i);
        }
        assert_cut_joists(&made, &job, takeoff);
        assert_shore(&job, takeoff, "", 94.5);
        assert_below(&job, takeoff);
        if (job.opening)
            assert_opening(&made, &job, takeoff);
    }
}

/* ---- every line ---- */

static void assert_line(const struct takeoff *takeoff, const struct takeoff_line *line)
{
    bool whole_text = line->id && *line->id && line->what && *line->what && line->where && *line->where && line->unit &&
                      *line->unit && line->counted && *line->counted;
    if (!whole_text)
        fail_msg("case %d: %s: a line without words", (int)from, line->id ? line->id : "no id");
    if (line_find(takeoff, line->id) != line)
        fail_msg("case %d: two lines %s", (int)from, line->id);
    if (line->count <= 0 || line->price < 0 || line->factor < 0 || (line->is == LINE_PIECES && line->length <= 0))
        fail_msg("case %d: %s: a count, price or length below 0", (int)from, line->id);
    for (const char *text = line->counted; text; text = text[0] ? strpbrk(text + 1, "ni") : NULL)
        if (begins(text, "nan ") || begins(text, "inf "))
            fail_msg("case %d: %s is counted '%s'", (int)from, line->id, line->counted);
}

/* What it is bought or done by is in the catalogs: nothing comes to the estimate without a price row or a wage. */
static void assert_in_catalogs(const struct takeoff_line *line)
{
    bool found = false;
    if (line->is == LINE_ITEM)
        found = line->item && catalog_cheapest(catalog, line->item);
    for (size_t i = 0; line->is == LINE_PIECES && i < catalog->price_count; i++)
        found |= name_same(catalog->prices[i].item, line->member->code);
    if (line->is == LINE_LABOR)
        found = line->trade || (line->task && catalog_trade(catalog, line->task->trade));
    if (!found && (line->is == LINE_ITEM || line->is == LINE_PIECES || line->is == LINE_LABOR))
        fail_msg("case %d: %s: nothing in the catalogs for it", (int)from, line->id);
}

static void assert_figures(const struct takeoff *takeoff)
{
    for (size_t i = 0; i < takeoff->raising_count; i++) {
        const struct raising *raising = &takeoff->raising[i];
        assert_true(raising->ply_lb > 0 && raising->beam_lb >= raising->ply_lb && raising->people > 0);
        assert_true(raising->lifted_lb > 0 && raising->people * raising->share_lb >= raising->lifted_lb - 1e-6);
        assert_true(!raising->shrinkage_known || raising->shrinkage_in >= 0);
    }
    assert_true(takeoff->debris_cuft >= 0 && takeoff->debris_lb >= 0 && takeoff->debris_loads >= 0);
    for (size_t i = 0; i < takeoff->back_count; i++)
        assert_true(takeoff->back[i].count > 0 && (!takeoff->back[i].member || takeoff->back[i].length > 0));
}

static void every_line(void **state)
{
    (void)state;
    for (int round = 0; round < rounds; round++, restart()) {
        uint64_t seed = from = (uint64_t)round + 3000001;
        struct random_job job = random_job(&seed);
        struct made made;
        const struct takeoff *takeoff = count_of(&made, &job);
        for (size_t i = 0; i < takeoff->count; i++) {
            assert_line(takeoff, &takeoff->line[i]);
            assert_in_catalogs(&takeoff->line[i]);
        }
        assert_figures(takeoff);
    }
}

int main(int argc, char **argv)
{
    struct arena *shelf = counted_start();
    rounds = counted_rounds(argc, argv, PROPERTIES);
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(hangers_and_nails),
        cmocka_unit_test(words_count_what_they_say),
        cmocka_unit_test(a_longer_span_needs_no_less),
        cmocka_unit_test(lengths_fit),
        cmocka_unit_test(every_line),
    };
    int failed = rounds > 0 ? cmocka_run_group_tests(tests, NULL, NULL) : 2;
    arena_free(arena);
    arena_free(shelf);
    return failed;
}
