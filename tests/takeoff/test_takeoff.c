/* Counts of the invented house, each worked out by hand where it is checked. */
#include "house.h"

static void assert_pieces(const struct takeoff *takeoff, const char *id, int count, double inches, const char *member)
{
    const struct takeoff_line *line = line_of(takeoff, id);
    assert_int_equal(line->is, LINE_PIECES);
    assert_int_equal(line->count, count * DECIMAL_ONE);
    assert_int_equal(line->length, INCHES(inches));
    assert_string_equal(line->item, member);
    assert_string_equal(line->member->code, member);
    assert_int_equal(line->class, CLASS_MATERIALS);
}

/* B1: 3-1/2 + 14 ft + 3-1/2 = 175 in.  B2: 3 + 8 ft less a gap of 1/8 = 98-7/8 in. */
static void plies_are_single_pieces(void **state)
{
    const struct takeoff *takeoff = house_count(house_new(*state));
    assert_pieces(takeoff, "plies/B1", 3, 175, "DFL2-2X10");
    assert_pieces(takeoff, "plies/B2", 2, 98.875, "DFL2-2X10");
    const struct takeoff_line *line = line_of(takeoff, "plies/B1");
    assert_string_equal(line->where, "beam B1");
    assert_string_equal(line->counted, "3 plies x 14' 7\": bearing 3-1/2\" + clear 14' 0\" + bearing 3-1/2\"");
    assert_string_equal(line->cost_code, "lumber");
    /* 3 x 2 x 10 / 12 x 175 / 12 = 72.9167; own arithmetic */
    assert_int_equal(takeoff_board_feet(line), 729167);
    assert_string_equal(line_of(takeoff, "plies/B2")->counted,
                        "2 plies x 8' 2-7/8\": bearing 3\" + clear 8' 0\" - gap 1/8\"");
}

/* B1 cut over a support at 80 in: 80 + 95 in.  The longer piece is what is carried and lifted.
 *
 * Fasteners keep 2 in from a splice, 3.5 in (the bearings) from the beam's ends, and in a row 2.4375 in (15 D) from
 * those of the other face.  The joists stand at 7 + 16 i of either piece (80 is 5 x 16), zones 4.75 to 9.25: as for the
 * whole beam nothing from 12 down to 9 in clears them, 8 in does, from 1.25 to 4.75 modulo 8.
 *
 * Piece 1, no doubled joist on it: row 1 of face A from 3.6875, the first that leaves face B one (1.25: 9.25): A
 * floor((78 - 3.6875) / 8) + 1 = 10, B floor((78 - 9.25) / 8) + 1 = 9.  Row 2: near 7.6875 is 9.25: 9; face B,
 * near 13.25 and from 3.6875 to 4.75 modulo 8: 4.75: floor((78 - 4.75) / 8) + 1 = 10. Piece 2, doubled ones on face B,
 * from 2 to 4 modulo 8 there: row 1 of face A from 4.4375 (B: 2): floor((91.5 - 4.4375) / 8) + 1 = 11, B floor((91.5 -
 * 2) / 8) + 1 = 12.  Row 2: near 8.4375 is 9.25: 11; B at 4: floor((91.5 - 4) / 8) + 1 = 11. */
static void spliced_plies(void **state)
{
    struct house *house = house_new(*state);
    length_t piece[] = {INCHES(80), INCHES(95)};
    house->fastener[NAIL_16D].diameter = INCHES(0.162);
    house->fastener[NAIL_16D].length = INCHES(3.5);
    house->beam_design[0].piece = piece;
    house->beam_design[0].piece_count = 2;
    const struct takeoff *takeoff = house_count(house);
    assert_null(line_find(takeoff, "plies/B1"));
    assert_pieces(takeoff, "plies/B1/piece 1", 3, 80, "DFL2-2X10");
    assert_pieces(takeoff, "plies/B1/piece 2", 3, 95, "DFL2-2X10");
    assert_string_equal(
        line_of(takeoff, "plies/B1/piece 2")->counted,
        "3 plies x 7' 11\", piece 2 of 2: from 6' 8\" to end 2, cut over the middle of a support; in all "
        "14' 7\"");
    assert_count(takeoff, "ply fasteners/B1/piece 1/A", 19);
    assert_count(takeoff, "ply fasteners/B1/piece 1/B", 19);
    assert_count(takeoff, "ply fasteners/B1/piece 2/A", 22);
    assert_count(takeoff, "ply fasteners/B1/piece 2/B", 23);
    assert_int_equal(takeoff->ply_layout[1].start, INCHES(80));
    assert_within(takeoff->raising[0].ply_lb, house->member[DFL_2X10].weight_plf * 95 / 12, 1e-12);
    assert_within(takeoff->raising[0].beam_lb, house->member[DFL_2X10].weight_plf * 3 * 175 / 12, 1e-12);
}

/* What holds a beam down over a support between its ends is counted like that of an end: one there. */
static void held_down_between(void **state)
{
    struct house *house = house_new(*state);
    struct inner_design inner = {.hold_down = &house->hanger[STRAP]};
    house->beam_design[0].inner = &inner;
    house->beam_design[0].inner_count = 1;
    const struct takeoff *takeoff = house_count(house);
    assert_count(takeoff, "hold-down/B1/inner support 1", 1);
    assert_string_equal(line_of(takeoff, "hold-down/B1/inner support 1")->where, "beam B1, inner support 1");
    assert_null(line_find(takeoff, "hold-down/B1/end 1"));
}

/* P2 stands already: nothing of it is counted.  K1 has one piece under each of the three plies of P1. */
static void posts_and_blocks(void **state)
{
    const struct takeoff *takeoff = house_count(house_new(*state));
    assert_pieces(takeoff, "posts/P1", 3, 86, "SPF2-2X4");
    assert_null(line_find(takeoff, "posts/P2"));
    assert_pieces(takeoff, "blocks/K1/P1", 3, 9.25, "SPF2-2X4");
    assert_count(takeoff, "posts/P1/nails", 22);
    assert_string_equal(line_of(takeoff, "posts/P1/nails")->item, "BOX-16D");
}

/* No nail goes through all: the three plies of P1, 86 in high, are stitched with the shortest common nail of 3 in or
 * more; in each of 2 joints at 0, 12, ... 84 in, 8 nails: 16. */
static void plies_that_no_nail_crosses_are_stitched(void **state)
{
    struct house *house = house_new(*state);
    house->post_design[0].nail = NULL;
    house->fastener[NAIL_16D].length = INCHES(3.5);
    house->fastener[NAIL_10D].length = INCHES(3);
    house->fastener[NAIL_SHORT].length = INCHES(3);
    const struct takeoff *takeoff = house_count(house);
    assert_count(takeoff, "posts/P1/nails", 16);
    assert_string_equal(line_of(takeoff, "posts/P1/nails")->item, "BOX-10D");
}

/* North, side A: 11 hangers; south, side B: 10 joists, 2 of them double; B2 hangs with end 2 on B1. */
static void hangers_and_their_nails(void **state)
{
    const struct takeoff *takeoff = house_count(house_new(*state));
    assert_count(takeoff, "hangers/north/A", 11);
    assert_string_equal(line_of(takeoff, "hangers/north/A")->counted, "11 joists, side A: 11 hangers");
    assert_string_equal(line_of(takeoff, "hangers/north/A")->where, "beam B1, side A");
    assert_count(takeoff, "hangers/south/B", 8);
    assert_count(takeoff, "hangers/south/B/doubled", 2);
    assert_string_equal(line_of(takeoff, "hangers/south/B/doubled")->item, "HNG-2");
    assert_count(takeoff, "hangers/B2/end 2", 1);
    assert_null(line_find(takeoff, "hangers/B2/end 1"));
    /* 11 x 10 and 11 x 6; 8 x 10 and 8 x 6; 2 x 16 and 2 x 6; 14 and 8 */
    assert_count(takeoff, "hangers/north/A/nails in the carrier", 110);
    assert_count(takeoff, "hangers/north/A/nails in the member", 66);
    assert_count(takeoff, "hangers/south/B/nails in the carrier", 80);
    assert_count(takeoff, "hangers/south/B/nails in the member", 48);
    assert_count(takeoff, "hangers/south/B/doubled/nails in the carrier", 32);
    assert_count(takeoff, "hangers/south/B/doubled/nails in the member", 12);
    assert_count(takeoff, "hangers/B2/end 2/nails in the carrier", 14);
    assert_count(takeoff, "hangers/B2/end 2/nails in the member", 8);
    assert_string_equal(line_of(takeoff, "hangers/north/A/nails in the carrier")->item, "BOX-10D");
    assert_true(line_of(takeoff, "hangers/north/A/nails in the carrier")->loss);
}

/* 11 tied pairs: 11 straps, 7 nails at either side of the beam. */
static void straps_and_their_nails(void **state)
{
    const struct takeoff *takeoff = house_count(house_new(*state));
    assert_count(takeoff, "straps/north", 11);
    assert_null(line_find(takeoff, "straps/south"));
    assert_count(takeoff, "straps/north/nails at one end", 77);
    assert_count(takeoff, "straps/north/nails at the other end", 77);
}

/* Hangers = joist ends + hung beam ends: 11 + 10 + 1.  Nails of hangers = the sum of all holes. */
static void hangers_match_ends_and_nails_match_holes(void **state)
{
    const struct takeoff *takeoff = house_count(house_new(*state));
    decimal_t hangers = 0, nails = 0;
    for (size_t i = 0; i < takeoff->count; i++) {
        const struct takeoff_line *line = &takeoff->line[i];
        if (strncmp(line->id, "hangers/", 8) != 0)
            continue;
        if (strstr(line->id, "/nails"))
            nails += line->count;
        else
            hangers += line->count;
    }
    assert_int_equal(hangers, (11 + 10 + 1) * DECIMAL_ONE);
    assert_int_equal(nails, ((11 + 8) * (10 + 6) + 2 * (16 + 6) + (14 + 8)) * DECIMAL_ONE);
}

/* 3-1/2 x 0.162 in through two plies of 1-1/2 in stand 1/2 in in the third, less than 6 D = 0.972 in: each face's nails
 * count at the joint next to it.  Two nails are longer than the beam is wide, so in a row those of the two faces keep
 * 15 D = 2.43, up to 2-7/16 in.
 *
 * Zones of face A: 7 + 16 i -/+ (3/4 + 1-1/2), 4.75 to 9.25 and on every 16 in; of face B also 132 to 138 and 148 to
 * 154, its doubled joists; B2 hangs beyond the rest.  At 12, 11, 10 and 9 in the places modulo the greatest common
 * divisor with 16 (4, 1, 2, 1) all meet a zone of 4-1/2 in.  At 8 in face A is clear from 1.25 to 4.75 (modulo 8), face
 * B from 2 to 4.  Row 1: the first start from 3.5 on that leaves one on face B at least 2.4375 away is 4.4375 (2 on
 * face B: 10); the bearings, 3.5, end the row: A floor((171.5 - 4.4375) / 8) + 1 = 21, B floor((171.5 - 10) / 8) + 1
 * = 21. Row 2: near 4.4375 + 6 x 8 / 12 = 8.4375 is 9.25 (of 1.25 to 1.5625 and 4.4375 to 4.75): 21; face B at 4: 21.
 */
static void ply_fasteners_clear_the_hangers(void **state)
{
    struct house *house = house_new(*state);
    struct fastener *nail = &house->fastener[NAIL_16D];
    nail->diameter = INCHES(0.162);
    nail->length = INCHES(3.5);
    house->beam[1].end_[1] = house->beam[1].end_[0]; /* nothing hangs on B1 but joists */
    const struct takeoff *takeoff = house_count(house);
    assert_count(takeoff, "ply fasteners/B1/A", 42);
    assert_count(takeoff, "ply fasteners/B1/B", 42);
    assert_string_equal(line_of(takeoff, "ply fasteners/B1/A")->counted,
                        "driven from face A, every 8\", the largest even spacing up to 1' 0\" that clears what hangs "
                        "there: row 1 from 4-7/16\": 21, row 2 from 9-1/4\": 21; ply joint 1: those of face A; ply "
                        "joint 2: those of face B");
    /* One face: nothing to keep away from; from 3.5: floor(168 / 8) + 1 = 22; near 3.5 + 4 = 7.5 is 9.25: 21; row 3 as
     * row 1. */
    house->beam[0].each_face.choice = NO;
    house->beam[0].rows.count = 3;
    takeoff = house_count(house);
    assert_count(takeoff, "ply fasteners/B1/A", 22 + 21 + 22);
    assert_null(line_find(takeoff, "ply fasteners/B1/B"));
    /* No stagger: 3 x 22; nothing on the faces: 12 in from 3.5, floor(168 / 12) + 1 = 15, 3 x 15. */
    house->beam[0].stagger.length = 0;
    assert_count(house_count(house), "ply fasteners/B1/A", 66);
    house->beam_design[0].side[0] = NULL;
    assert_count(house_count(house), "ply fasteners/B1/A", 45);
}

/* One row from face A, nothing on B1 but B2 (3 in wide) at 85.5 in: clear of 82.5 to 88.5.  Every 12 in from 3.5 would
 * meet it at 87.5.  A later start than 3.5 leaves the 15th out, so the 14th must come within 12 in of the end, at 163:
 * the first start is 7, with 79 and 91 beside the hanger: 14. */
static void ply_fasteners_clear_a_hung_beam(void **state)
{
    struct house *house = house_new(*state);
    house->beam_design[0].side[0] = house->beam_design[0].side[1] = NULL;
    house->beam[0].each_face.choice = NO;
    house->beam[0].rows.count = 1;
    house->beam[1].end_[1].at_length = INCHES(85.5);
    const struct takeoff *takeoff = house_count(house);
    assert_count(takeoff, "ply fasteners/B1/A", 14);
    assert_int_equal(takeoff->ply_layout[0].layout.row[0][0].at[0], INCHES(7));
}

/* Nails of 4-1/4 in come out of a beam of 4-1/2 in, within 1/4 in of its other face: those of face A clear the joists
 * of face B, whose places from 2 to 4 modulo 8 are free: from 3.5 every 8 in, floor(168 / 8) + 1 = 22.  A sixteenth
 * shorter they do not: every 12 in, 15. */
static void ply_fasteners_that_come_out(void **state)
{
    struct house *house = house_new(*state);
    house->beam[1].end_[1] = house->beam[1].end_[0];
    house->beam_design[0].side[0] = NULL;
    house->beam[0].each_face.choice = NO;
    house->beam[0].rows.count = 1;
    house->fastener[NAIL_16D].length = INCHES(4.25);
    assert_count(house_count(house), "ply fasteners/B1/A", 22);
    house->fastener[NAIL_16D].length = INCHES(4.1875);
    assert_count(house_count(house), "ply fasteners/B1/A", 15);
}

/* B2 hangs on B1 by one end: 5 more on each face. */
static void more_ply_fasteners_where_a_beam_hangs(void **state)
{
    struct house *house = house_new(*state);
    house->beam[0].more_at_hung.count = 5;
    const struct takeoff *takeoff = house_count(house);
    assert_count(takeoff, "ply fasteners/B1/hung", 10);
    assert_string_equal(line_of(takeoff, "ply fasteners/B1/hung")->counted,
                        "1 hung beam end x 2 faces x 5 beside the pattern, within 12 in of the hanger");
}

static void no_pattern_counts_nothing_and_says_so(void **state)
{
    struct house *house = house_new(*state);
    house->beam[0].rows.count = 0;
    const struct takeoff *takeoff = house_count(house);
    assert_null(line_find(takeoff, "ply fasteners/B1"));
    assert_null(line_find(takeoff, "ply fasteners/B2"));
    int notes = 0;
    for (size_t i = 0; i < house->diags.count; i++)
        if (house->diags.item[i].code == DIAG_T002 && strstr(house->diags.item[i].text, "ask the engineer"))
            notes++;
    assert_int_equal(notes, 2);
    /* a beam of one ply has nothing to fasten */
    house = house_new(*state);
    house->beam_design[1].plies = 1;
    house_count(house);
    for (size_t i = 0; i < house->diags.count; i++)
        assert_null(strstr(house->diags.item[i].text, "ask the engineer"));
}

/* S1, 200 in long, 93 in high: 14 studs of 93 - 2 x 1-1/2 = 90; half of 200 is 100, the stud before it
 * stands at 96: plates and brace row break there, 96 and 104 in; ceil(200 / 96) = 3 diagonals over 66-2/3 and up 93:
 * 66.667^2 + 93^2 = 13,093.4, between 114-3/8 (13,081.6) and 114-7/16 (13,095.9). */
static void shore_lumber(void **state)
{
    const struct takeoff *takeoff = house_count(house_new(*state));
    assert_pieces(takeoff, "shores/S1/studs", 14, 90, "SPF2-2X4");
    assert_pieces(takeoff, "shores/S1/plates", 2, 96, "SPF2-2X4");
    assert_pieces(takeoff, "shores/S1/plates, last", 2, 104, "SPF2-2X4");
    assert_pieces(takeoff, "shores/S1/brace rows", 1, 96, "SPF2-2X4");
    assert_pieces(takeoff, "shores/S1/brace rows, last", 1, 104, "SPF2-2X4");
    assert_pieces(takeoff, "shores/S1/diagonals", 3, 114.4375, "SPF2-2X4");
}

/* Plates of another member, 3 in thick: 93 - 2 x 3 = 87 for the studs, which keep their own wood. */
static void plates_of_other_wood(void **state)
{
    struct house *house = house_new(*state);
    struct member plate = house->member[DFL_2X10];
    plate.ply_width = INCHES(3);
    struct shore_design *shore = &house->shore_design[0];
    shore->plate = shore->top_plate = shore->bottom_plate = &plate;
    const struct takeoff *takeoff = house_count(house);
    assert_pieces(takeoff, "shores/S1/studs", 14, 87, "SPF2-2X4");
    assert_pieces(takeoff, "shores/S1/plates", 2, 96, "DFL2-2X10");
    assert_pieces(takeoff, "shores/S1/brace rows", 1, 96, "DFL2-2X10");
    assert_pieces(takeoff, "shores/S1/diagonals", 3, 114.4375, "DFL2-2X10");
}

/* 12 ft go in one piece; a sixteenth more breaks over the stud before the half of 72-1/32 in, at 64: 80-1/16 is left.
 * At 25 ft and studs at 24 in three pieces of 100: two of 96 and 108; no brace row, no line. */
static void plates_no_longer_than_twelve_feet(void **state)
{
    struct house *house = house_new(*state);
    house->shore_design[0].length = FEET(12);
    house->shore_design[0].brace_rows = 0;
    const struct takeoff *takeoff = house_count(house);
    assert_pieces(takeoff, "shores/S1/plates", 2, 144, "SPF2-2X4");
    assert_null(line_find(takeoff, "shores/S1/brace rows"));
    house->shore_design[0].length = FEET(12) + INCHES(0.0625);
    takeoff = house_count(house);
    assert_pieces(takeoff, "shores/S1/plates", 2, 64, "SPF2-2X4");
    assert_pieces(takeoff, "shores/S1/plates, last", 2, 80.0625, "SPF2-2X4");
    house->shore_design[0].length = FEET(25);
    house->shore_design[0].spacing = INCHES(24);
    takeoff = house_count(house);
    assert_pieces(takeoff, "shores/S1/plates", 4, 96, "SPF2-2X4");
    assert_pieces(takeoff, "shores/S1/plates, last", 2, 108, "SPF2-2X4");
}

static void what_cannot_be_counted_is_noted(void **state)
{
    struct house *house = house_new(*state);
    house->beam_design[1].member = NULL;
    house->beam_design[1].end_hanger[1] = NULL;
    for (size_t i = 0; i < house->joist_design[0].count; i++)
        house->end[0][i].hanger = NULL;
    house->shore_design[0].member = NULL;
    house->block[0].depth.length = 0;
    const struct takeoff *takeoff = house_count(house);
    assert_null(line_find(takeoff, "plies/B2"));
    assert_null(line_find(takeoff, "hangers/north/A"));
    assert_null(line_find(takeoff, "hangers/B2/end 2"));
    assert_null(line_find(takeoff, "shores/S1/studs"));
    assert_null(line_find(takeoff, "blocks/K1/P1"));
    const char *const said[] = {"'beam B2' has no member", "no hanger fits: 11 joists of 'joists north'",
                                "no hanger fits 'beam B2', end 2", "'shore S1' has no stud member",
                                "no post with a member stands on 'block K1'"};
    for (size_t k = 0; k < COUNT_OF(said); k++) {
        bool found = false;
        for (size_t i = 0; i < house->diags.count; i++)
            found = found || strstr(house->diags.item[i].text, said[k]);
        if (!found)
            print_error("not said: %s\n", said[k]);
        assert_true(found);
    }
}

/* An existing beam is not bought; joists on a dropped beam lie on it. */
static void existing_and_dropped_beams(void **state)
{
    struct house *house = house_new(*state);
    house->beam[1].status.choice = NE_EXISTING;
    house->beam[0].set.choice = SET_DROPPED;
    const struct takeoff *takeoff = house_count(house);
    for (size_t i = 0; i < takeoff->count; i++) {
        assert_null(strstr(takeoff->line[i].id, "B2"));
        assert_false(strncmp(takeoff->line[i].id, "hangers/", 8) == 0);
    }
    assert_count(takeoff, "plies/B1", 3);
}

static void the_jobs_own_lines(void **state)
{
    struct house *house = house_new(*state);
    const struct entry *at = &house->written;
    struct work work = {.head = head_of("trim"),
                        .what = {"put the mantel back", at},
                        .trade = {"carpenter", at},
                        .hours = {35000, at},
                        .cost_code = {"02-100", at}};
    struct buy buy[] = {{.head = head_of("permit"),
                         .what = {"building permit", at},
                         .price = {185 * MONEY_DOLLAR, at},
                         .class = {CLASS_FEES, at},
                         .own_markup = {0, at}},
                        {.head = head_of("board"), .item = {"GYPSUM", at}, .count = {64 * DECIMAL_ONE, at}}};
    struct sub sub = {.head = head_of("floor"),
                      .what = {"floor finisher", at},
                      .price = {780 * MONEY_DOLLAR, at},
                      .cost_code = {"09-600", at}};
    house->price[0].cost_code = "09-250";
    house->job.works = &work;
    house->job.buys = buy;
    house->job.subs = &sub;
    house->job.work_count = house->job.sub_count = 1;
    house->job.buy_count = 2;
    const struct takeoff *takeoff = house_count(house);
    const struct takeoff_line *line = line_of(takeoff, "work/trim");
    assert_int_equal(line->is, LINE_LABOR);
    assert_int_equal(line->count, 35000);
    assert_ptr_equal(line->trade, &house->trade[0]);
    assert_string_equal(line->counted, "3.5 hours of carpenter, as the job says");
    assert_string_equal(line->cost_code, "02-100");
    assert_string_equal(takeoff_loss(*state, &house->job, line), "");
    line = line_of(takeoff, "buy/permit");
    assert_int_equal(line->class, CLASS_FEES);
    assert_int_equal(line->price, 185 * MONEY_DOLLAR);
    assert_int_equal(line->count, DECIMAL_ONE);
    assert_true(line->has_own_markup);
    line = line_of(takeoff, "buy/board");
    assert_string_equal(line->unit, "sq ft");
    assert_int_equal(line->class, CLASS_MATERIALS);
    assert_false(line->has_own_markup);
    assert_string_equal(line->cost_code, "09-250"); /* of its price row */
    assert_string_equal(takeoff_loss(*state, &house->job, line), "none");
    line = line_of(takeoff, "sub/floor");
    assert_int_equal(line->is, LINE_SUB);
    assert_int_equal(line->class, CLASS_SUBS);
    assert_string_equal(line->cost_code, "09-600");
    assert_string_equal(line_of(takeoff, "buy/permit")->cost_code, "");
}

/* 110 nails at 64 to the pound: 1.72 lb; a count per lb that is not known gives no pounds.  A hanger has no loss. */
static void pounds_and_loss(void **state)
{
    struct house *house = house_new(*state);
    house->fastener[NAIL_10D].count_per_lb = 64;
    house->job.bid.fastener_loss.percent = 75000;
    const struct takeoff *takeoff = house_count(house);
    const struct takeoff_line *nails = line_of(takeoff, "hangers/north/A/nails in the carrier");
    assert_int_equal(nails->pounds, 17200);
    assert_string_equal(takeoff_loss(*state, &house->job, nails), "7.5 %");
    assert_int_equal(line_of(takeoff, "hangers/north/A/nails in the member")->pounds, 0);
    const struct takeoff_line *hangers = line_of(takeoff, "hangers/north/A");
    assert_false(hangers->loss);
    assert_string_equal(takeoff_loss(*state, &house->job, hangers), "none");
    assert_false(line_of(takeoff, "straps/north")->loss);
    assert_string_equal(takeoff_loss(*state, &house->job, line_of(takeoff, "plies/B1")), "in the cut plan");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(plies_are_single_pieces, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(spliced_plies, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(held_down_between, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(posts_and_blocks, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(plies_that_no_nail_crosses_are_stitched, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(hangers_and_their_nails, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(pounds_and_loss, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(straps_and_their_nails, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(hangers_match_ends_and_nails_match_holes, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(ply_fasteners_clear_the_hangers, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(more_ply_fasteners_where_a_beam_hangs, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(ply_fasteners_clear_a_hung_beam, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(ply_fasteners_that_come_out, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(no_pattern_counts_nothing_and_says_so, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(shore_lumber, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(plates_of_other_wood, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(plates_no_longer_than_twelve_feet, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(what_cannot_be_counted_is_noted, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(existing_and_dropped_beams, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(the_jobs_own_lines, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
