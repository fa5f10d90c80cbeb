/* Questions that people asked in public about what to buy and how to count it, with the answers that stand up to a
 * check, and worked examples of estimating books.  Facts only, retold; every figure is worked by hand beside it. */
#include "size/made_job.h"

#include "sawbill/layout.h"
#include "sawbill/takeoff.h"

static const struct takeoff *count_of(struct made *made)
{
    made_size(made);
    return takeoff_job(made->arena, made->job, made->catalog, made->design, &made->diags);
}

static const struct takeoff_line *line_find(const struct takeoff *takeoff, const char *id)
{
    for (size_t i = 0; i < takeoff->count; i++)
        if (!strcmp(takeoff->line[i].id, id))
            return &takeoff->line[i];
    return NULL;
}

static const struct takeoff_line *line_of(const struct takeoff *takeoff, const char *id)
{
    const struct takeoff_line *line = line_find(takeoff, id);
    if (!line)
        fail_msg("no line %s", id);
    return line;
}

#define assert_count(takeoff, id, n) assert_int_equal(line_of(takeoff, id)->count, (n)*DECIMAL_ONE)

static double feet_of(const struct takeoff *takeoff, const char *id)
{
    double sum = 0;
    const char *tails[] = {"", ", last"};
    for (size_t i = 0; i < takeoff->count; i++)
        for (size_t k = 0; k < 2; k++)
            if (strstr(takeoff->line[i].id, id) == takeoff->line[i].id &&
                !strcmp(takeoff->line[i].id + strlen(id), tails[k]))
                sum += decimal_value(takeoff->line[i].count) * length_feet(takeoff->line[i].length);
    return sum;
}

/* Journal of Light Construction, "Nailing joist hangers", an engineer of the trade's association: a nail in every hole.
 * A hanger on the list is a hanger, its header nails x holes and its joist nails x holes, by the nail.  The plain job:
 * joists 16 in apart from 8 in on 103 in of wood, 8, 24, ... 88: 6 a side.  Each brings 50 psf x 16/12 x 6 = 400 lb, or
 * 333.  HNG-2X10 and HNG-2X10-S, 2.05 both, have 10 and 6 holes and hold that; ten short nails cost less (10/127 lb at
 * 28.01 for 5, 0.44) than ten long ones (10/65.2 lb at 20.75 for 5, 0.64): the short kind. */
static void a_nail_in_every_hole(void **state)
{
    struct made made;
    made_start(&made, *state);
    const struct takeoff *takeoff = count_of(&made);
    static const char *const sides[] = {"hangers/north/A", "hangers/south/B"};
    for (size_t i = 0; i < 2; i++) {
        assert_count(takeoff, sides[i], 6);
        assert_string_equal(line_of(takeoff, sides[i])->item, "HNG-2X10-S");
        const char *carrier = arena_printf(*state, "%s/nails in the carrier", sides[i]);
        const char *member = arena_printf(*state, "%s/nails in the member", sides[i]);
        assert_count(takeoff, carrier, 60);
        assert_string_equal(line_of(takeoff, carrier)->item, "NAIL-10D-SHORT");
        assert_count(takeoff, member, 36);
        assert_string_equal(line_of(takeoff, member)->item, "NAIL-10D-SHORT");
    }
}

/* The same: single hangers at least 10d common (0.148 in), and no box, roofing or masonry nail, no sinker, no screw for
 * gypsum board or decks in any hanger. */
static void nails_that_hangers_take(void **state)
{
    static const char *const kinds[] = {"common nail", "hanger nail", "structural screw"};
    struct diags diags = {.arena = *state};
    struct catalog *catalog = catalog_read(*state, SOURCE_DIR "/catalogs", NULL, &diags);
    for (size_t i = 0; i < catalog->hanger_count; i++) {
        const struct hanger *hanger = &catalog->hangers[i];
        const char *const nail[] = {hanger->carrier_nail, hanger->member_nail};
        for (size_t k = 0; k < 2 && hanger->kind == CONNECTOR_HANGER; k++) {
            const struct fastener *fastener = catalog_fastener(catalog, nail[k]);
            bool known = false;
            for (size_t w = 0; w < 3; w++)
                known |= name_same(fastener->kind, kinds[w]);
            assert_true(known);
            assert_true(length_inches(fastener->diameter) >= 0.148 - 1e-9);
        }
    }
}

/* A how-to page on temporary bracing: 154 in / 16 + 1 = 10.6, 11 studs; each floor to ceiling less 3 in, here 96 - 3 =
 * 93; two screws a stud end.  Two walls: 22 studs, 4 plates of 154 in = 51.33 ft, 88 screws. */
static void temporary_walls(void **state)
{
    struct made made;
    made_start(&made, *state);
    for (int i = 1; i <= 2; i++) {
        const char *id = i == 1 ? "S1" : "S2";
        made_set(&made, "shore", id, "length", "154 in");
        made_set(&made, "shore", id, "height", "96 in");
    }
    const struct takeoff *takeoff = count_of(&made);
    decimal_t studs = 0, screws = 0;
    double plates = 0;
    for (int i = 1; i <= 2; i++) {
        const struct takeoff_line *line = line_of(takeoff, arena_printf(*state, "shores/S%d/studs", i));
        studs += line->count;
        assert_near(length_inches(line->length), 93, 1e-9);
        plates += feet_of(takeoff, arena_printf(*state, "shores/S%d/plates", i));
        screws += line_of(takeoff, arena_printf(*state, "shores/S%d/studs/screws", i))->count;
    }
    assert_int_equal(studs, 22 * DECIMAL_ONE);
    assert_near(plates, 51.333, 0.0005);
    assert_int_equal(screws, 88 * DECIMAL_ONE);
}

/* Fine Homebuilding, "Build a temporary brace wall": a 2x10 flat as top plate to spare the ceiling, 2x4 below and for
 * the studs.  Both are 1-1/2 in thick: the studs stay 94-1/2 - 3 in.  Sections of 8 ft are shores of 8 ft in the job;
 * ceil(96 / 16) + 1 = 7 studs. */
static void a_wide_top_plate(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "shore", "S1", "length", "8 ft");
    made_set(&made, "shore", "S1", "plates", "SPF2-2X4");
    made_set(&made, "shore", "S1", "top plate", "SPF2-2X10");
    const struct takeoff *takeoff = count_of(&made);
    assert_string_equal(line_of(takeoff, "shores/S1/top plate")->item, "SPF2-2X10");
    assert_string_equal(line_of(takeoff, "shores/S1/bottom plate")->item, "SPF2-2X4");
    assert_near(feet_of(takeoff, "shores/S1/top plate"), 8, 1e-9);
    assert_near(feet_of(takeoff, "shores/S1/bottom plate"), 8, 1e-9);
    assert_null(line_find(takeoff, "shores/S1/plates"));
    assert_count(takeoff, "shores/S1/studs", 7);
    assert_near(length_inches(line_of(takeoff, "shores/S1/studs")->length), 91.5, 1e-9);
}

/* Studs by the formula, length / spacing + 1.  Fine Homebuilding's forum, February 2008: 250 ft at 16 in, 3,000 / 16 =
 * 187.5, 188 + 1 = 189 (one a foot, 250, is the rule of thumb with its loss in it: the list has the net count alone).
 * Peterson & Dagostino, Estimating in Building Construction, example 13-11: 148 ft, 1,776 / 16 = 111 + 1 = 112.  A
 * shore is 80 ft at most: 250 = 3 x 80 + 10, of 61, 61, 61 and 9 studs (8.5 spaces); where two meet the stud is counted
 * twice: 192 - 3 = 189.  148 = 80 + 68: 61 + 52 - 1 = 112. */
static int64_t studs_along(struct arena *arena, const char *length)
{
    struct made made;
    made_start(&made, arena);
    made_set(&made, "shore", "S1", "length", length);
    return line_of(count_of(&made), "shores/S1/studs")->count / DECIMAL_ONE;
}

static void studs_by_the_formula(void **state)
{
    assert_int_equal(3 * studs_along(*state, "80 ft") + studs_along(*state, "10 ft") - 3, 189);
    assert_int_equal(studs_along(*state, "80 ft") + studs_along(*state, "68 ft") - 1, 112);
}

/* Joists: ceil(length / spacing) + 1 (Peterson & Dagostino, section 13-3); at 16 in "3/4 of the feet, and one"
 * (Griffith, Carpentry, 1916, section 77): 16 ft, 13.  With the first at 0 and the last at 192 in. */
static void joists_by_the_formula(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "joists", "north", "first joist", "0 in");
    made_set(&made, "beam", "B1", "clear span", "185 in"); /* and 3-1/2 in on each post: 192 */
    assert_count(count_of(&made), "hangers/north/A", 13);
}

/* A home inspectors' magazine, November 2008, "Engineered lumber": plies of 1-3/4 in, three of them to 12 in deep: two
 * rows of 16d at 12 in from both faces; deeper three rows.  18 ft from the first to the last nail are 18 spaces, 19 in
 * a row: wood of 223 in, for no nail stands over a bearing of 3-1/2 in.
 *
 * Both faces alike would be 2 x 2 x 19 = 76, and 114 of three rows.  Ours of the other face stand in between, so that
 * no two meet in the wood: there 18 do, each within 12 in of an end (3.5 + 6 = 9.5, then 17 spaces to 213.5, 9.5 in
 * off): 2 x (19 + 18) = 74, and 111. */
static void rows_of_nails(void **state)
{
    struct layout_pattern pattern = {.length = length_from_inches(223),
                                     .reserve = {length_from_inches(3.5), length_from_inches(3.5)},
                                     .most = length_from_inches(12),
                                     .least = length_from_inches(2.4375),
                                     .faces = 2,
                                     .meet = true};
    for (pattern.rows = 2; pattern.rows <= 3; pattern.rows++) {
        struct layout layout = layout_find(*state, &pattern);
        for (int row = 0; row < pattern.rows; row++) {
            assert_int_equal(layout.row[0][row].count, 19);
            assert_int_equal(layout.row[1][row].count, 18);
        }
        assert_int_equal(layout_count(&layout, 0) + layout_count(&layout, 1), pattern.rows == 2 ? 74 : 111);
    }
}

/* The same: four plies, bolts of 1/2 in in two rows at 24 in, staggered: 10 + 9 = 19 on the 18 ft (0, 24, ... 216; 12,
 * 36, ... 204), each with a nut and two washers.  A dropped beam: nothing hangs on its faces; wood of 216 + 7 in. */
static void rows_of_bolts(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "set", "dropped");
    made_set(&made, "beam", "B1", "clear span", "216 in");
    made_set(&made, "beam", "B1", "member", "LVL-14");
    made_set(&made, "beam", "B1", "plies", "4");
    made_set(&made, "beam", "B1", "ply fasteners", "BOLT-500-800");
    made_set(&made, "beam", "B1", "each face", "no");
    made_set(&made, "beam", "B1", "rows", "2");
    made_set(&made, "beam", "B1", "spacing", "24 in");
    made_set(&made, "beam", "B1", "stagger", "12 in");
    const struct takeoff *takeoff = count_of(&made);
    assert_count(takeoff, "ply fasteners/B1/A", 19);
    assert_null(line_find(takeoff, "ply fasteners/B1/B"));
    assert_int_equal(takeoff->ply_layout[0].layout.row[0][0].count, 10);
    assert_int_equal(takeoff->ply_layout[0].layout.row[0][1].count, 9);
    assert_non_null(strstr(catalog_fastener(made.catalog, "BOLT-500-800")->source, "with nut and two washers"));
}

/* Two pages on floor systems and an inspectors' magazine, August 2003, "For want of a squash block": under each post
 * blocks in every floor that it crosses, one a ply, 1/16 in longer than the joists are deep.  Two posts of three plies,
 * one floor of 9-1/4 in: 6 of 9-5/16 in, 4.656 ft.  The job says how high the block is. */
static void squash_blocks(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "post", "P1", "stands on", "block K1");
    made_set(&made, "post", "P2", "stands on", "block K2");
    made_add(&made, "[block K1]\ndepth = 9-5/16 in\nstands on = footing F1\n"
                    "[block K2]\ndepth = 9-5/16 in\nstands on = footing F1\n");
    const struct takeoff *takeoff = count_of(&made);
    static const char *const ids[] = {"blocks/K1/P1", "blocks/K2/P2"};
    double feet = 0;
    for (size_t i = 0; i < 2; i++) {
        assert_count(takeoff, ids[i], 3);
        assert_near(length_inches(line_of(takeoff, ids[i])->length), 9.3125, 1e-9);
        feet += feet_of(takeoff, ids[i]);
    }
    assert_near(feet, 4.656, 0.0005);
}

/* An owner-builder's diary: a supplier's list without the brackets, and nineteen trips for what it forgot.  The
 * hardware comes of the same job as the lumber: whatever hangs has its hanger, whatever is nailed its nails, and what
 * must be carried its weight: of 3-2x10 of Douglas Fir 103 in long 3.30 lb a foot, 28.3 lb a ply. */
static void nothing_to_fetch_later(void **state)
{
    static const char *const ids[] = {
        "plies/B1", "ply fasteners/B1/A", "ply fasteners/B1/B", "hangers/north/A",        "hangers/south/B",
        "posts/P1", "posts/P1/nails",     "posts/P2/nails",     "shores/S1/studs/screws", "shores/S2/plates/screws"};
    struct made made;
    made_start(&made, *state);
    const struct takeoff *takeoff = count_of(&made);
    for (size_t i = 0; i < sizeof ids / sizeof *ids; i++)
        assert_true(line_of(takeoff, ids[i])->count > 0);
    assert_near(takeoff->raising[0].ply_lb, 3.30 * 103 / 12, 1e-9);
    assert_near(takeoff->raising[0].beam_lb, 3 * 3.30 * 103 / 12, 1e-9);
}

static int place_of_work(const struct takeoff *takeoff, const char *task)
{
    for (size_t i = 0; i < takeoff->count; i++)
        if (takeoff->line[i].is == LINE_LABOR && takeoff->line[i].task && !strcmp(takeoff->line[i].task->task, task))
            return takeoff->line[i].in_work;
    fail_msg("no work '%s'", task);
    return 0;
}

/* An engineering firm's report: a wall found to be bearing when half of it was out.  The shore stands before anything
 * is cut, and comes down after the last joist hangs. */
static void shore_before_saw(void **state)
{
    static const char *const order[] = {"build shore", "demo wall",  "cut joist end",
                                        "lift ply",    "hang joist", "take down shore"};
    struct made made;
    made_start(&made, *state);
    const struct takeoff *takeoff = count_of(&made);
    for (size_t i = 1; i < sizeof order / sizeof *order; i++)
        assert_true(place_of_work(takeoff, order[i - 1]) < place_of_work(takeoff, order[i]));
}

/* Fine Homebuilding, "Remove one wall and join two rooms": flush, dropped, or above the joists.  Flush: two hangers a
 * bay's pair of joists, shores and cuts; dropped: shores, no hangers, no cut joists; above the joists (upset): hangers
 * as flush. */
static void three_ways_of_one_beam(void **state)
{
    static const struct {
        const char *set;
        int hangers;
    } ways[] = {{"flush", 12}, {"dropped", 0}, {"upset", 12}};
    for (size_t i = 0; i < 3; i++) {
        struct made made;
        made_start(&made, *state);
        made_set(&made, "beam", "B1", "set", ways[i].set);
        if (!strcmp(ways[i].set, "upset"))
            made_set(&made, "beam", "B1", "above joists by", "1 in");
        const struct takeoff *takeoff = count_of(&made);
        int64_t hangers = 0, cuts = 0;
        for (size_t k = 0; k < takeoff->count; k++) {
            bool nails = strstr(takeoff->line[k].id, "/nails") != NULL;
            hangers += strstr(takeoff->line[k].id, "hangers/") == takeoff->line[k].id && !nails
                           ? takeoff->line[k].count / DECIMAL_ONE
                           : 0;
            bool cut = takeoff->line[k].task && !strcmp(takeoff->line[k].task->task, "cut joist end");
            cuts += cut ? takeoff->line[k].count / DECIMAL_ONE : 0;
        }
        assert_int_equal(hangers, ways[i].hangers);
        assert_int_equal(cuts, ways[i].hangers);
        assert_non_null(line_find(takeoff, "shores/S1/studs"));
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(a_nail_in_every_hole, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(nails_that_hangers_take, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(temporary_walls, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_wide_top_plate, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(studs_by_the_formula, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(joists_by_the_formula, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(rows_of_nails, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(rows_of_bolts, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(squash_blocks, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(nothing_to_fetch_later, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(shore_before_saw, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(three_ways_of_one_beam, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
