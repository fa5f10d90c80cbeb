/* An invented house, built by hand: two beams, three walls, one shore, with every count worked out in the tests. */
#ifndef SAWBILL_TESTS_HOUSE_H
#define SAWBILL_TESTS_HOUSE_H

#include "support.h"

#include <string.h>

#include "sawbill/takeoff.h"

#define INCHES(n)   ((length_t)((n)*1016000.0))
#define FEET(n)     ((length_t)(n)*LENGTH_FOOT)
#define COUNT_OF(a) (sizeof(a) / sizeof *(a))

struct house {
    struct arena *arena;
    struct entry written; /* what `at` points to where a value counts as written */
    struct member member[2];
    struct fastener fastener[4];
    struct hanger hanger[4];
    struct task task[1];
    struct trade trade[1];
    struct price price[1];
    struct assembly_line assembly[80];
    struct catalog catalog;
    struct beam beam[2];
    struct joists joists[2];
    struct post post[2];
    struct block block[1];
    struct footing footing[2];
    struct wall wall[3];
    struct removal removal[2];
    struct opening opening[2];
    struct obstruction obstruction[3];
    struct roof_brace brace[2];
    struct shore shore[1];
    struct job job;
    struct beam_design beam_design[2];
    struct joist_design joist_design[2];
    struct joist_end end[2][11];
    struct post_design post_design[2];
    struct shore_design shore_design[1];
    struct design design;
    struct diags diags;
};

enum { DFL_2X10, SPF_2X4 };
enum { NAIL_16D, NAIL_10D, NAIL_SHORT, SCREW };
enum { HANGER_JOIST, HANGER_DOUBLE, HANGER_BEAM, STRAP };

static inline struct head head_of(const char *id)
{
    return (struct head){.id = id, .folded = id, .at = {"house.ini", 7, 1, NULL}};
}

static inline void house_catalog(struct house *house)
{
    house->member[DFL_2X10] = (struct member){
        .code = "DFL2-2X10", .size = "2x10", .ply_width = INCHES(1.5), .depth = INCHES(9.25), .cost_code = "lumber"};
    house->member[SPF_2X4] = (struct member){.code = "SPF2-2X4", .ply_width = INCHES(1.5), .depth = INCHES(3.5)};
    house->fastener[NAIL_16D] = (struct fastener){.code = "NAIL-16D", .kind = "common nail", .item = "BOX-16D"};
    house->fastener[NAIL_10D] = (struct fastener){.code = "NAIL-10D", .kind = "common nail", .item = "BOX-10D"};
    house->fastener[NAIL_SHORT] = (struct fastener){.code = "NAIL-10S", .kind = "hanger nail", .item = "BOX-10S"};
    house->fastener[SCREW] = (struct fastener){.code = "SCREW-3", .kind = "screw", .item = "BOX-SCREW"};
    house->hanger[HANGER_JOIST] = (struct hanger){.code = "HNG-1",
                                                  .item = "HNG-1",
                                                  .carrier_nail = "NAIL-10D",
                                                  .member_nail = "NAIL-10S",
                                                  .carrier_count = 10,
                                                  .member_count = 6};
    house->hanger[HANGER_DOUBLE] = house->hanger[HANGER_JOIST];
    house->hanger[HANGER_DOUBLE].code = house->hanger[HANGER_DOUBLE].item = "HNG-2";
    house->hanger[HANGER_DOUBLE].carrier_count = 16;
    house->hanger[HANGER_BEAM] = (struct hanger){.code = "HNG-B",
                                                 .item = "HNG-B",
                                                 .carrier_nail = "NAIL-16D",
                                                 .member_nail = "NAIL-16D",
                                                 .carrier_count = 14,
                                                 .member_count = 8};
    house->hanger[STRAP] = (struct hanger){.code = "STRAP-1",
                                           .item = "STRAP-1",
                                           .kind = CONNECTOR_STRAP,
                                           .carrier_nail = "NAIL-10D",
                                           .member_nail = "NAIL-10D",
                                           .carrier_count = 7,
                                           .member_count = 7};
    house->task[0] = (struct task){.task = "hang joist", .trade = "carpenter", .per = "joist end", .likely = 4500};
    house->trade[0] = (struct trade){.trade = "carpenter", .wage = 30 * MONEY_DOLLAR};
    house->price[0] = (struct price){
        .item = "GYPSUM", .what = "gypsum board, 1/2 in", .unit = "sq ft", .pack = 32 * DECIMAL_ONE, .price = 150000};
    house->catalog = (struct catalog){.members = house->member,
                                      .member_count = COUNT_OF(house->member),
                                      .fasteners = house->fastener,
                                      .fastener_count = COUNT_OF(house->fastener),
                                      .hangers = house->hanger,
                                      .hanger_count = COUNT_OF(house->hanger),
                                      .tasks = house->task,
                                      .task_count = 1,
                                      .trades = house->trade,
                                      .trade_count = 1,
                                      .prices = house->price,
                                      .price_count = 1,
                                      .assemblies = house->assembly};
}

static inline struct beam_end end_on(const struct entry *at, enum end_kind kind, enum kind of, const char *id)
{
    return (struct beam_end){.kind = kind, .ref = {.kind = of, .id = id, .at = at}, .at = at};
}

/* Every 16 in; the last two of side B are doubled.  One of side A stands high, two hang low. */
static inline void house_joist_ends(struct house *house)
{
    for (int side = 0; side < 2; side++)
        for (int i = 0; i < 11; i++) {
            bool doubled = side == 1 && (i == 8 || i == 9);
            house->end[side][i] = (struct joist_end){.at = INCHES(7 + 16 * i),
                                                     .width = INCHES(1.5),
                                                     .depth = INCHES(9.25),
                                                     .doubled = doubled,
                                                     .hanger = &house->hanger[doubled ? HANGER_DOUBLE : HANGER_JOIST]};
        }
    house->end[0][2].off_line = INCHES(0.25);
    house->end[0][3].off_line = house->end[0][4].off_line = -INCHES(0.375);
}

static inline void house_beams(struct house *house)
{
    const struct entry *at = &house->written;
    house->beam[0] = (struct beam){.head = head_of("B1"),
                                   .status = {NE_NEW, at},
                                   .set = {SET_FLUSH, at},
                                   .clear_span = {FEET(14), at},
                                   .ceiling_each_side = {INCHES(16), NULL},
                                   .ply_fasteners = {"NAIL-16D", at},
                                   .rows = {2, at},
                                   .spacing = {INCHES(12), at},
                                   .stagger = {INCHES(6), at},
                                   .end = {INCHES(2), at},
                                   .clear_of_hangers = {INCHES(1.5), NULL},
                                   .edge = {INCHES(2), at},
                                   .each_face = {YES, at}};
    house->beam[0].held[0].choice = HELD_BLOCKS;
    house->beam[0].held[1].choice = HELD_STRAPS;
    house->beam[0].end_[0] = end_on(at, END_POST, KIND_POST, "P1");
    house->beam[0].end_[1] = end_on(at, END_POST, KIND_POST, "P2");
    house->beam[0].end_[1].ref.index = 1;
    house->beam[1] = (struct beam){.head = head_of("B2"),
                                   .status = {NE_NEW, at},
                                   .set = {SET_FLUSH, at},
                                   .clear_span = {FEET(8), at},
                                   .ceiling_each_side = {INCHES(16), NULL}};
    house->beam[1].end_[0] = end_on(at, END_POCKET, KIND_BEAM, NULL);
    house->beam[1].end_[1] = end_on(at, END_BEAM, KIND_BEAM, "B1");
    house->joists[0] = (struct joists){.head = head_of("north")};
    house->joists[1] = (struct joists){.head = head_of("south")};
    house->beam_design[0] = (struct beam_design){.beam = &house->beam[0],
                                                 .member = &house->member[DFL_2X10],
                                                 .plies = 3,
                                                 .width = INCHES(4.5),
                                                 .cut_length = INCHES(175),
                                                 .bearing = {INCHES(3.5), INCHES(3.5)},
                                                 .kickers = 3,
                                                 .kicker = &house->member[SPF_2X4]};
    house->beam_design[1] = (struct beam_design){.beam = &house->beam[1],
                                                 .member = &house->member[DFL_2X10],
                                                 .plies = 2,
                                                 .width = INCHES(3),
                                                 .cut_length = INCHES(98.875),
                                                 .bearing = {INCHES(3), INCHES(2.5)},
                                                 .end_hanger = {NULL, &house->hanger[HANGER_BEAM]}};
    house->joist_design[0] = (struct joist_design){.joists = &house->joists[0],
                                                   .beam = &house->beam[0],
                                                   .side = 0,
                                                   .count = 11,
                                                   .end = house->end[0],
                                                   .strap = &house->hanger[STRAP],
                                                   .tied_pairs = 11};
    house->joist_design[1] = (struct joist_design){
        .joists = &house->joists[1], .beam = &house->beam[0], .side = 1, .count = 10, .end = house->end[1]};
    house_joist_ends(house);
    for (int side = 0; side < 2; side++)
        house->beam_design[0].side[side] = &house->joist_design[side];
}

static inline void house_supports(struct house *house)
{
    const struct entry *at = &house->written;
    for (size_t i = 0; i < 2; i++)
        house->post[i] = (struct post){.head = head_of(i ? "P2" : "P1"),
                                       .height = {INCHES(86), at},
                                       .status = {i ? NE_EXISTING : NE_NEW, at},
                                       .stands_on = {.kind = KIND_BLOCK, .id = "K1", .at = i ? NULL : at}};
    house->post[1].stands_on = (struct ref_value){.kind = KIND_FOOTING, .id = "F2", .index = 1, .at = at};
    house->block[0] = (struct block){
        .head = head_of("K1"), .depth = {INCHES(9.25), at}, .stands_on = {.kind = KIND_FOOTING, .id = "F1", .at = at}};
    for (size_t i = 0; i < 2; i++)
        house->footing[i] = (struct footing){.head = head_of(i ? "F2" : "F1"),
                                             .status = {i ? NE_NEW : NE_EXISTING, at},
                                             .size = {INCHES(24), at},
                                             .thickness = {INCHES(12), at}};
    house->shore[0] = (struct shore){.head = head_of("S1"), .days = {5, at}, .jack_posts = {4, NULL}};
    for (size_t i = 0; i < 2; i++)
        house->post_design[i] = (struct post_design){.post = &house->post[i],
                                                     .member = &house->member[SPF_2X4],
                                                     .plies = 3,
                                                     .nail = &house->fastener[NAIL_16D],
                                                     .nails = 22};
    house->shore_design[0] = (struct shore_design){.shore = &house->shore[0],
                                                   .member = &house->member[SPF_2X4],
                                                   .plate = &house->member[SPF_2X4],
                                                   .top_plate = &house->member[SPF_2X4],
                                                   .bottom_plate = &house->member[SPF_2X4],
                                                   .length = INCHES(200),
                                                   .height = INCHES(93),
                                                   .spacing = INCHES(16),
                                                   .studs = 14,
                                                   .brace_rows = 1};
}

static inline void house_walls(struct house *house)
{
    const struct entry *at = &house->written;
    static struct text_value services[] = {{"outlet circuit", NULL}, {"switch", NULL}, {"heating riser", NULL}};
    house->wall[0] = (struct wall){.head = head_of("W1"),
                                   .status = {WALL_COMES_OUT, at},
                                   .length = {FEET(14), at},
                                   .height = {FEET(8), at},
                                   .finish_a = {"plaster on lath", at},
                                   .finish_b = {"gypsum board", at},
                                   .services = {services, 2}};
    house->wall[1] = (struct wall){.head = head_of("W2"),
                                   .status = {WALL_COMES_OUT, at},
                                   .from = {FEET(1), at},
                                   .to = {FEET(7), at},
                                   .height = {FEET(8), at},
                                   .finish_a = {"Gypsum board", at},
                                   .finish_b = {"gypsum_board", at},
                                   .services = {services + 2, 1}};
    house->wall[2] = (struct wall){.head = head_of("W3"),
                                   .status = {WALL_STAYS, at},
                                   .length = {FEET(30), at},
                                   .height = {FEET(8), at},
                                   .finish_a = {"gypsum board", at},
                                   .services = {services, 3}};
    house->obstruction[0] =
        (struct obstruction){.head = head_of("tail"), .then = {THEN_LANDS, at}, .own_prop = {YES, at}};
    house->obstruction[1] =
        (struct obstruction){.head = head_of("strut"), .then = {THEN_HEADERED_OFF, at}, .held_by = {.at = at}};
    house->obstruction[2] = (struct obstruction){.head = head_of("nailer"), .then = {THEN_TAKEN_OUT, at}};
    house->opening[0] = (struct opening){.head = head_of("stair"), .status = {NE_NEW, at}};
    house->opening[1] = (struct opening){.head = head_of("old hatch"), .status = {NE_EXISTING, at}};
    house->removal[0] =
        (struct removal){head_of("old header"), {REMOVE_HEADER, at}, {HOW_WHOLE, at}, {FEET(5), at}, {0}};
    house->removal[1] = (struct removal){head_of("old beam"), {REMOVE_BEAM, at}, {0}, {INCHES(126), at}, {0}};
}

static inline struct house *house_new(struct arena *arena)
{
    struct house *house = arena_alloc(arena, sizeof *house);
    house->arena = arena;
    house->written.at = (struct place){"house.ini", 9, 3, NULL};
    house_catalog(house);
    house_beams(house);
    house_supports(house);
    house_walls(house);
    house->job = (struct job){.beams = house->beam,
                              .beam_count = 2,
                              .joists = house->joists,
                              .joists_count = 2,
                              .posts = house->post,
                              .post_count = 2,
                              .blocks = house->block,
                              .block_count = 1,
                              .footings = house->footing,
                              .footing_count = 2,
                              .walls = house->wall,
                              .wall_count = 3,
                              .obstructions = house->obstruction,
                              .obstruction_count = 3,
                              .openings = house->opening,
                              .opening_count = 2,
                              .removals = house->removal,
                              .removal_count = 2,
                              .shores = house->shore,
                              .shore_count = 1};
    house->job.has_roof = true;
    house->job.roof.braces.item = house->brace;
    house->job.roof.braces.count = 2;
    house->job.roof.braces_own_prop.choice = YES;
    house->job.roof.braces_on = (struct ref_value){.kind = KIND_BEAM, .id = "b1", .at = &house->written};
    house->job.facts.floor_to_protect = (struct quantity_value){{120500000, UNIT_SQFT}, NULL}; /* 120.5 sq ft */
    house->job.facts.trips = (struct count_value){2, NULL};
    house->design = (struct design){.beams = house->beam_design,
                                    .beam_count = 2,
                                    .joists = house->joist_design,
                                    .joists_count = 2,
                                    .posts = house->post_design,
                                    .post_count = 2,
                                    .shores = house->shore_design,
                                    .shore_count = 1};
    house->diags.arena = arena;
    return house;
}

static inline const struct takeoff *house_count(struct house *house)
{
    return takeoff_job(house->arena, &house->job, &house->catalog, &house->design, &house->diags);
}

static inline const struct takeoff_line *line_find(const struct takeoff *takeoff, const char *id)
{
    for (size_t i = 0; i < takeoff->count; i++)
        if (strcmp(takeoff->line[i].id, id) == 0)
            return &takeoff->line[i];
    return NULL;
}

static inline const struct takeoff_line *line_of(const struct takeoff *takeoff, const char *id)
{
    const struct takeoff_line *line = line_find(takeoff, id);
    if (!line) {
        print_error("no line '%s'; there are:\n", id);
        for (size_t i = 0; i < takeoff->count; i++)
            print_error("  %s\n", takeoff->line[i].id);
    }
    assert_non_null(line);
    return line;
}

#define assert_count(takeoff, id, ones) assert_int_equal(line_of(takeoff, id)->count, (ones)*DECIMAL_ONE)

#endif
