/* Code nails and the screws of what is temporary.
 *
 * Counts and spacings of nails: IRC 2021 Table R602.3(1), as adopted by Arkansas (chapter 6), each row named where it
 * is checked.  Screws: common practice, no source. */
#include "house.h"

#include "size/made_job.h"

/* One nail in the catalog, by its size in inches. */
static const struct takeoff *with_nail(struct house *house, double diameter, double length)
{
    house->fastener[NAIL_16D].diameter = INCHES(diameter);
    house->fastener[NAIL_16D].length = INCHES(length);
    house->fastener[SCREW].length = INCHES(3);
    house->beam_design[0].held_wood[0] = &house->member[SPF_2X4];
    return house_count(house);
}

/* Every way that a row of the table allows, on: P1 of three plies, nailed at head and foot (6 ends); three pieces of
 * block K1 under it; end 1 of B2, two plies in a pocket; end 1 of B1, held by 2 blocks (4 ends), or by 2 king studs (4
 * ends) along 86 in of post.  16 in apart in 86 in: 5 + 1; 24 in: 3 + 1. */
static void nails_of_the_table(void **state)
{
    static const struct {
        enum end_held held;
        int count;
        double diameter, length;
        const char *id;
    } rows[] = {
        /* item 17, top or bottom plate to stud, toe nails */
        {HELD_BLOCKS, 6 * 4, 0.131, 2.5, "posts/P1/plate nails"},
        {HELD_BLOCKS, 6 * 4, 0.128, 3, "posts/P1/plate nails"},
        {HELD_BLOCKS, 6 * 4, 0.131, 3, "posts/P1/plate nails"},
        {HELD_BLOCKS, 6 * 3, 0.135, 3.5, "posts/P1/plate nails"},
        {HELD_BLOCKS, 6 * 4, 0.113, 2.5, "posts/P1/plate nails"},
        {HELD_KING_STUDS, 4 * 4, 0.131, 2.5, "held/B1/end 1/nails to plates"},
        /* item 1, blocking to top plate, toe nails */
        {HELD_BLOCKS, 3 * 3, 0.131, 2.5, "blocks/K1/P1/nails"},
        {HELD_BLOCKS, 3 * 3, 0.128, 3, "blocks/K1/P1/nails"},
        {HELD_BLOCKS, 3 * 3, 0.131, 3, "blocks/K1/P1/nails"},
        {HELD_BLOCKS, 3 * 4, 0.113, 2.5, "blocks/K1/P1/nails"},
        {HELD_BLOCKS, 2 * 3, 0.131, 2.5, "held/B1/end 1/nails to the plate"},
        /* item 30, bridging or blocking to joist, toe nails at each end */
        {HELD_BLOCKS, 4 * 2, 0.131, 2.5, "held/B1/end 1/nails to joists"},
        {HELD_BLOCKS, 4 * 2, 0.128, 3, "held/B1/end 1/nails to joists"},
        {HELD_BLOCKS, 4 * 2, 0.131, 3, "held/B1/end 1/nails to joists"},
        /* item 22, joist to sill, top plate or girder, toe nails */
        {HELD_BLOCKS, 2 * 3, 0.131, 2.5, "bearings/B2/end 1/nails"},
        {HELD_BLOCKS, 2 * 3, 0.128, 3, "bearings/B2/end 1/nails"},
        {HELD_BLOCKS, 2 * 3, 0.131, 3, "bearings/B2/end 1/nails"},
        {HELD_BLOCKS, 2 * 4, 0.113, 2.5, "bearings/B2/end 1/nails"},
        /* item 8, double studs, face nails: 16d common 24 in apart, 10d box and gun 16 in */
        {HELD_KING_STUDS, 2 * 4, 0.162, 3.5, "held/B1/end 1/nails to the post"},
        {HELD_KING_STUDS, 2 * 6, 0.128, 3, "held/B1/end 1/nails to the post"},
        {HELD_KING_STUDS, 2 * 6, 0.131, 3, "held/B1/end 1/nails to the post"},
        /* item 12, king stud to header, end nails */
        {HELD_KING_STUDS, 2 * 3, 0.162, 3.5, "held/B1/end 1/nails to the beam"},
        {HELD_KING_STUDS, 2 * 4, 0.135, 3.5, "held/B1/end 1/nails to the beam"},
        {HELD_KING_STUDS, 2 * 4, 0.128, 3, "held/B1/end 1/nails to the beam"},
        {HELD_KING_STUDS, 2 * 4, 0.131, 3, "held/B1/end 1/nails to the beam"},
    };
    for (size_t i = 0; i < COUNT_OF(rows); i++) {
        struct house *house = house_new(*state);
        house->beam[0].held[0].choice = (int)rows[i].held;
        const struct takeoff *takeoff = with_nail(house, rows[i].diameter, rows[i].length);
        if (line_of(takeoff, rows[i].id)->count != rows[i].count * DECIMAL_ONE)
            print_error("%s with %.3f x %.1f\n", rows[i].id, rows[i].diameter, rows[i].length);
        assert_count(takeoff, rows[i].id, rows[i].count);
        assert_string_equal(line_of(takeoff, rows[i].id)->item, "BOX-16D");
        assert_true(line_of(takeoff, rows[i].id)->loss);
    }
}

/* A nail of the table's length in another gauge is no nail of the table (10d common, 0.148 in; 16d sinker). */
static void a_nail_that_the_table_has_not(void **state)
{
    struct house *house = house_new(*state);
    const struct takeoff *takeoff = with_nail(house, 0.148, 3);
    assert_null(line_find(takeoff, "posts/P1/plate nails"));
    assert_null(line_find(takeoff, "bearings/B2/end 1/nails"));
    bool said = false;
    for (size_t i = 0; i < house->diags.count; i++)
        said = said || (house->diags.item[i].code == DIAG_T002 &&
                        strstr(house->diags.item[i].text, "'posts/P1/plate nails' is not counted"));
    assert_true(said);
    /* a screw of that size is none either */
    house = house_new(*state);
    house->fastener[SCREW].diameter = INCHES(0.131);
    assert_null(line_find(with_nail(house, 0.148, 2.5), "posts/P1/plate nails"));
}

static void how_a_joint_is_counted(void **state)
{
    struct house *house = house_new(*state);
    assert_string_equal(line_of(with_nail(house, 0.131, 2.5), "posts/P1/plate nails")->counted,
                        "3 plies x head and foot x 4 toe nails: stud to plate, IRC 2021 Table R602.3(1) item 17 (16 in "
                        "2015 and 2018)");
    house = house_new(*state);
    house->beam[0].held[0].choice = HELD_KING_STUDS;
    assert_string_equal(
        line_of(with_nail(house, 0.162, 3.5), "held/B1/end 1/nails to the post")->counted,
        "2 studs x 4 face nails, 24\" apart along 7' 2\": stud to stud, IRC 2021 Table R602.3(1) item 8");
}

/* Nothing is nailed to a footing, and where a cap holds the beam its own nails do: 3 plies x 1 end x 4. */
static void ends_of_a_post(void **state)
{
    struct house *house = house_new(*state);
    house->post[0].stands_on.kind = KIND_FOOTING;
    assert_count(with_nail(house, 0.131, 2.5), "posts/P1/plate nails", 12);
    struct hanger cap = house->hanger[HANGER_BEAM];
    cap.kind = CONNECTOR_CAP;
    cap.carrier_nail = cap.member_nail = "NAIL-10D";
    house = house_new(*state);
    house->beam_design[0].hold_down[0] = &cap;
    assert_count(with_nail(house, 0.131, 2.5), "posts/P1/plate nails", 12);
    house->post[0].stands_on.kind = KIND_FOOTING;
    assert_null(line_find(house_count(house), "posts/P1/plate nails"));
    /* a strap beside the post leaves its head as it is */
    house->beam_design[0].hold_down[0] = &house->hanger[STRAP];
    assert_count(house_count(house), "posts/P1/plate nails", 12);
    /* over an inner support the cap counts in the same way */
    house = house_new(*state);
    struct inner_design inner = {.post = &house->post_design[0], .hold_down = &cap};
    house->beam_design[0].inner = &inner;
    house->beam_design[0].inner_count = 1;
    assert_count(with_nail(house, 0.131, 2.5), "posts/P1/plate nails", 12);
}

/* B1, three plies: over a wall's plate between its ends 3 x 3; over a post none of its own. */
static void bearing_between_the_ends(void **state)
{
    struct house *house = house_new(*state);
    struct inner_design inner[2] = {{.post = &house->post_design[0]}, {.post = NULL}};
    house->beam_design[0].inner = inner;
    house->beam_design[0].inner_count = 2;
    const struct takeoff *takeoff = with_nail(house, 0.131, 2.5);
    assert_null(line_find(takeoff, "bearings/B1/inner support 1/nails"));
    assert_count(takeoff, "bearings/B1/inner support 2/nails", 9);
    assert_null(line_find(takeoff, "bearings/B1/end 1/nails"));
}

/* A plate flat on the new post P1: its plies are nailed to it, and B1 like a joist, 3 plies x 3, at end 1; at end 2 the
 * post stood there before. */
static void bearing_on_a_cap_plate(void **state)
{
    struct house *house = house_new(*state);
    house->beam[0].end_[1].ref.index = 1;
    house->post_design[0].cap_plate = house->post_design[1].cap_plate = &house->member[SPF_2X4];
    const struct takeoff *takeoff = with_nail(house, 0.131, 2.5);
    assert_count(takeoff, "bearings/B1/end 1/nails", 9);
    assert_null(line_find(takeoff, "bearings/B1/end 2/nails"));
    assert_count(takeoff, "posts/P1/plate nails", 24);
}

/* The fillers of W1, 2 of 33 in, where the wall came out over 208 in and the beam is 175: item 13, 16d common 16 in
 * apart, 33 / 16 = 2.06, 3; 10d box and gun 12 in: 2.75, 3; at 36 in 4. */
static void fillers_are_nailed_on_each_other(void **state)
{
    static const double ways[][2] = {{0.162, 3.5}, {0.128, 3}, {0.131, 3}};
    for (size_t i = 0; i < COUNT_OF(ways); i++) {
        struct house *house = house_new(*state);
        house->member[SPF_2X4].size = "2x4";
        house->member[DFL_2X10].size = "2x10";
        house->member[SPF_2X4].use = USE_PLATE;
        house->wall[0].under = (struct ref_value){.kind = KIND_BEAM, .id = "b1", .index = 0, .at = &house->written};
        house->wall[0].studs = (struct text_value){"2x4", &house->written};
        house->wall[0].length.length = INCHES(208);
        assert_count(with_nail(house, ways[i][0], ways[i][1]), "fillers/W1/nails", 3);
        house->wall[0].length.length = INCHES(211);
        assert_count(house_count(house), "fillers/W1/nails", i ? 4 : 3);
    }
}

/* Joists of 12 ft beside B1, with the shipped nails: 144 - 2.25 + 3.5 = 145-1/4 in.  Two new ones between, one beside
 * another: item 22, 3 x 3 on the far bearing; item 10, 2 edges x 10 along 145-1/4 in.  Blocks of a dropped beam,
 * between the six joists on it: item 30, 5 x 2 ends x 2. */
static void new_joists_and_blocking(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "joists", "north", "new at", "16 in, 32 in");
    made_set(&made, "joists", "north", "new beside", "40 in");
    made_set(&made, "joists", "north", "new of", "DFL2-2X10");
    made_size(&made);
    const struct takeoff *takeoff = takeoff_job(*state, made.job, made.catalog, made.design, &made.diags);
    assert_count(takeoff, "joists/north/new", 3);
    assert_count(takeoff, "joists/north/new/nails to the far bearing", 9);
    assert_count(takeoff, "joists/north/new/nails to the joists beside", 20);
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "set", "dropped");
    made_set(&made, "beam", "B1", "blocks of", "DFL2-2X10");
    made_size(&made);
    takeoff = takeoff_job(*state, made.job, made.catalog, made.design, &made.diags);
    assert_count(takeoff, "blocking/B1", 5);
    assert_count(takeoff, "blocking/B1/nails", 20);
}

/* Item 22, 3 toe nails: 11 joists of side A and 10 of side B, of which two are double: (11 + 12) x 3.  Where all pass
 * over in one piece they lie there once: 12 x 3.  On a flush beam they hang. */
static void joists_on_a_dropped_beam(void **state)
{
    struct house *house = house_new(*state);
    assert_null(line_find(with_nail(house, 0.131, 2.5), "joists on/B1/nails"));
    house->beam[0].set.choice = SET_DROPPED;
    assert_count(house_count(house), "joists on/B1/nails", 69);
    house->joists[0].over_the_wall.choice = OVER_CONTINUOUS;
    assert_count(house_count(house), "joists on/B1/nails", 69);
    house->joists[1].over_the_wall.choice = OVER_CONTINUOUS;
    assert_count(house_count(house), "joists on/B1/nails", 36);
    house->beam_design[0].side[0] = NULL;
    assert_count(house_count(house), "joists on/B1/nails", 36);
}

/* A stair in joists of 12 ft, with the shipped nails: two headers of two plies, 46-1/2 in; two trimmers of two plies,
 * 145-1/4 in, of which 2 plies are bought.  Item 10, built-up header, 16d common 16 in apart along each edge: 46.5 / 16
 * = 2.9, 3 nails: 2 headers x 1 joint x 2 edges x 3 = 12; 145.25 / 16 = 9.08, 10 nails: 2 x 1 x 2 x 10 = 40.  Item 22:
 * 2 plies x 3 on the far bearing; on a dropped beam 4 plies x 3, and 145.25 + 2.25 = 147.5 in hold 10 nails, too. */
static void openings_are_nailed_together(void **state)
{
    static const char stair[] = "[opening stair]\njoists = joists north\nfrom = 24-3/4 in\nto = 71-1/4 in\n"
                                "near = 2 ft\nfar = 9 ft\nheader = DFL2-2X10\n";
    for (int dropped = 0; dropped < 2; dropped++) {
        struct made made;
        made_start(&made, *state);
        made_add(&made, stair);
        if (dropped)
            made_set(&made, "beam", "B1", "set", "dropped");
        made_size(&made);
        const struct takeoff *takeoff = takeoff_job(*state, made.job, made.catalog, made.design, &made.diags);
        assert_count(takeoff, "openings/stair/headers/nails", 12);
        assert_string_equal(line_of(takeoff, "openings/stair/headers/nails")->item, "NAIL-16D-COMMON");
        assert_count(takeoff, "openings/stair/trimmers/nails", 40);
        assert_count(takeoff, "openings/stair/trimmers/nails to the far bearing", 6);
        assert_string_equal(line_of(takeoff, "openings/stair/trimmers/nails to the far bearing")->item,
                            "NAIL-8D-COMMON");
        if (dropped)
            assert_count(takeoff, "openings/stair/trimmers/nails to the beam", 12);
        else
            assert_null(line_find(takeoff, "openings/stair/trimmers/nails to the beam"));
    }
}

static const struct takeoff *with_screws(struct house *house)
{
    house->fastener[SCREW].length = INCHES(3);
    return house_count(house);
}

/* S1, 200 in with 14 studs every 16 in, plates and the brace row in 2 pieces, 3 diagonals of 66-2/3 in.  Studs 14 x 2 x
 * 2; plates 2 x (12 + 1); brace row (14 + 1) x 2; a diagonal crosses 4 + 1 studs: 3 x 5 x 2. */
static void screws_of_a_shore(void **state)
{
    struct house *house = house_new(*state);
    const struct takeoff *takeoff = with_screws(house);
    assert_count(takeoff, "shores/S1/studs/screws", 56);
    assert_count(takeoff, "shores/S1/plates/screws", 26);
    assert_count(takeoff, "shores/S1/brace rows/screws", 30);
    assert_count(takeoff, "shores/S1/diagonals/screws", 30);
    assert_null(line_find(takeoff, "shores/S1/posts/screws"));
    assert_string_equal(line_of(takeoff, "shores/S1/studs/screws")->item, "BOX-SCREW");
    assert_string_equal(line_of(takeoff, "shores/S1/studs/screws")->counted, "14 studs x 2 ends x 2; common practice");
    /* none into a slab; 2 posts of 3 plies, 90 in: 6 x 2 x 2, and 2 x 2 joints x (7 + 1) */
    house->shore[0].below.choice = BELOW_SLAB;
    house->shore[0].post_plies.count = 3;
    house->shore_design[0].posts = 2;
    takeoff = with_screws(house);
    assert_count(takeoff, "shores/S1/plates/screws", 13);
    assert_count(takeoff, "shores/S1/posts/screws", 24);
    assert_count(takeoff, "shores/S1/posts/ply screws", 32);
}

/* The same shore again on the floor below, whatever that is: as many of each. */
static void screws_of_a_second_shore(void **state)
{
    struct house *house = house_new(*state);
    house->shore[0].below.choice = BELOW_SLAB;
    house->shore[0].held_below = (struct choice_value){HELD_BELOW_SHORE, &house->written};
    house->shore[0].height_below = (struct length_value){INCHES(80), &house->written};
    const struct takeoff *takeoff = with_screws(house);
    assert_count(takeoff, "shores/S1/below/studs/screws", 56);
    assert_count(takeoff, "shores/S1/below/plates/screws", 26);
    assert_count(takeoff, "shores/S1/below/brace rows/screws", 30);
    assert_count(takeoff, "shores/S1/below/diagonals/screws", 30);
}

/* A strongback of 2 plies, 200 in, on 3 posts of 2 plies: 1 x 2 x 13; 6 x 2 x 2; each post 93 - 1.5 - 9.25 = 82.25 in:
 * 3 x 1 x (6 + 1); joists on it and floor under it 2 x 13; brace row (3 + 1) x 2; 3 diagonals x 2 ends x 2.  Where the
 * joists hang from it, nothing goes up into them. */
static void screws_of_a_strongback(void **state)
{
    struct house *house = house_new(*state);
    house->shore[0].strongback.at = &house->written;
    house->shore[0].strongback_plies.count = 2;
    house->shore[0].supports.count = 3;
    house->shore_design[0].strongback = &house->member[DFL_2X10];
    house->shore_design[0].studs = 6;
    const struct takeoff *takeoff = with_screws(house);
    assert_count(takeoff, "shores/S1/strongback/screws", 26);
    assert_count(takeoff, "shores/S1/posts/screws", 24);
    assert_count(takeoff, "shores/S1/posts/ply screws", 21);
    assert_count(takeoff, "shores/S1/plates/screws", 26);
    assert_count(takeoff, "shores/S1/brace rows/screws", 8);
    assert_count(takeoff, "shores/S1/diagonals/screws", 12);
    assert_null(line_find(takeoff, "shores/S1/studs/screws"));
    house->shore[0].hung_by.at = &house->written;
    assert_count(with_screws(house), "shores/S1/plates/screws", 13);
}

/* Screws do not come back: a shore of the same set, whose lumber is had, takes its own. */
static void screws_of_a_set(void **state)
{
    struct house *house = house_new(*state);
    struct shore two[2] = {house->shore[0], house->shore[0]};
    struct shore_design designs[2] = {house->shore_design[0], house->shore_design[0]};
    for (int i = 0; i < 2; i++) {
        two[i].set = (struct text_value){"one", &house->written};
        designs[i].shore = &two[i];
    }
    two[1].head = head_of("S2");
    house->job.shores = two;
    house->design.shores = designs;
    house->job.shore_count = house->design.shore_count = 2;
    const struct takeoff *takeoff = with_screws(house);
    assert_null(line_find(takeoff, "shores/S2/studs"));
    assert_count(takeoff, "shores/S2/studs/screws", 56);
}

/* Two at each end of each ply: 3 plies of B1; of each piece where it is spliced in two; raised whole once. */
static void screws_that_hold_a_beam(void **state)
{
    struct house *house = house_new(*state);
    assert_count(with_screws(house), "holding/B1/screws", 12);
    assert_count(with_screws(house), "holding/B2/screws", 8);
    length_t piece[] = {INCHES(80), INCHES(95)};
    house->beam_design[0].piece = piece;
    house->beam_design[0].piece_count = 2;
    assert_count(with_screws(house), "holding/B1/screws", 24);
    house->beam[0].raised.choice = RAISED_WHOLE;
    assert_count(with_screws(house), "holding/B1/screws", 4);
    house->beam[1].status.choice = NE_EXISTING;
    assert_null(line_find(with_screws(house), "holding/B2/screws"));
    house->beam[0].set.choice = SET_DROPPED; /* nothing hangs on it */
    assert_null(line_find(with_screws(house), "holding/B1/screws"));
}

/* The shortest screw of 3 in or more; of other kinds none, however long. */
static void the_screw_that_is_taken(void **state)
{
    struct house *house = house_new(*state);
    struct fastener more[3] = {{.code = "S4", .kind = "Screw", .item = "S4", .length = INCHES(4)},
                               {.code = "S2.9", .kind = "screw", .item = "S2.9", .length = INCHES(2.9)},
                               {.code = "SS3", .kind = "structural screw", .item = "SS3", .length = INCHES(3)}};
    house->catalog.fasteners = more;
    house->catalog.fastener_count = 3;
    assert_string_equal(line_of(house_count(house), "holding/B1/screws")->item, "S4");
    more[0].length = INCHES(2.5);
    assert_null(line_find(house_count(house), "holding/B1/screws"));
    bool said = false;
    for (size_t i = 0; i < house->diags.count; i++)
        said = said || strstr(house->diags.item[i].text, "no 'screw' of 3 in or more");
    assert_true(said);
}

/* The job's own nail comes first where the table has it: item 17, 3 16d box; item 22 has no 16d box nail, 8d box stays.
 * A code that is not there is a fault, said once. */
static void the_jobs_own_nail_and_screw(void **state)
{
    struct house *house = house_new(*state);
    house->fastener[NAIL_10D].diameter = INCHES(0.135);
    house->fastener[NAIL_10D].length = INCHES(3.5);
    house->job.facts.framing_nail = (struct text_value){"nail 10d", &house->written};
    house->job.facts.shore_screw = (struct text_value){"NAIL-10S", &house->written};
    const struct takeoff *takeoff = with_nail(house, 0.113, 2.5);
    assert_count(takeoff, "posts/P1/plate nails", 18);
    assert_string_equal(line_of(takeoff, "posts/P1/plate nails")->item, "BOX-10D");
    assert_count(takeoff, "bearings/B2/end 1/nails", 8);
    assert_string_equal(line_of(takeoff, "bearings/B2/end 1/nails")->item, "BOX-16D");
    assert_string_equal(line_of(takeoff, "holding/B1/screws")->item, "BOX-10S");
    assert_string_equal(line_of(takeoff, "shores/S1/studs/screws")->item, "BOX-10S");
    house = house_new(*state);
    house->job.facts.framing_nail = (struct text_value){"NONE", &house->written};
    house->job.facts.shore_screw = (struct text_value){"NEITHER", &house->written};
    assert_count(with_nail(house, 0.131, 2.5), "posts/P1/plate nails", 24);
    int faults = 0;
    for (size_t i = 0; i < house->diags.count; i++)
        if (house->diags.item[i].code == DIAG_C006 && strstr(house->diags.item[i].text, "is not in fasteners.csv")) {
            assert_int_equal(house->diags.item[i].at.line, 9);
            faults++;
        }
    assert_int_equal(faults, 2);
}

/* A fastener in an assembly is counted by the piece though it is sold by the pound, and its loss is the bid's. */
static void fasteners_of_assemblies(void **state)
{
    struct house *house = house_new(*state);
    struct price price[2] = {house->price[0], {.item = "BOX-16D", .what = "", .unit = "lb", .pack = DECIMAL_ONE}};
    house->catalog.prices = price;
    house->catalog.price_count = 2;
    house->assembly[0] =
        (struct assembly_line){.assembly = "ends", .per = "post", .item = "BOX-16D", .count = 6 * DECIMAL_ONE};
    house->assembly[1] =
        (struct assembly_line){.assembly = "ends", .per = "post", .item = "GYPSUM", .count = 6 * DECIMAL_ONE};
    house->catalog.assembly_count = 2;
    const struct takeoff *takeoff = house_count(house);
    assert_count(takeoff, "assembly/ends/BOX-16D", 6);
    assert_string_equal(line_of(takeoff, "assembly/ends/BOX-16D")->unit, "each");
    assert_true(line_of(takeoff, "assembly/ends/BOX-16D")->loss);
    assert_string_equal(line_of(takeoff, "assembly/ends/GYPSUM")->unit, "sq ft");
    assert_false(line_of(takeoff, "assembly/ends/GYPSUM")->loss);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(nails_of_the_table, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_nail_that_the_table_has_not, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(how_a_joint_is_counted, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(ends_of_a_post, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(bearing_between_the_ends, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(bearing_on_a_cap_plate, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(fillers_are_nailed_on_each_other, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(new_joists_and_blocking, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(joists_on_a_dropped_beam, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(openings_are_nailed_together, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(screws_of_a_shore, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(screws_of_a_second_shore, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(screws_of_a_strongback, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(screws_of_a_set, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(screws_that_hold_a_beam, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(the_screw_that_is_taken, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(the_jobs_own_nail_and_screw, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(fasteners_of_assemblies, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
