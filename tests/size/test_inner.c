/* Beams with supports between their ends, through whole jobs.
 *
 * Two equal spans under a uniform load: American Wood Council, Design Aid 6, Beam Formulas with Shear and Moment
 * Diagrams (2007), "continuous beam, two equal spans", from memory.  Load on both: R1 = 3/8 wl, R2 = 10/8 wl, M2 =
 * -wl2/8, V = 5/8 wl.  Load on one: R1 = 7/16 wl, R2 = 5/8 wl, R3 = -1/16 wl, M2 = -wl2/16, sag 0.0092 wl4/EI. */
#include "size/made_job.h"

static const char beam[] = "beam B1", middle[] = "beam B1, inner support 1";
static const char post_in_the_middle[] = "[post P3]\nmember = SPF-STUD-2X4\nplies = 3\nheight = 84 in\nbraced = both\n"
                                         "stands on = footing F1\n";

/* The plain job, 3 - 2x10 on posts of which the wood takes 3-1/2 in, with spans of 8 ft, center to center:
 * 192 in = cut length less 3-1/2 in; clear span = cut length less 7 in = 188-1/2 in; the middle 1-3/4 + 96 = 97-3/4 in.
 * Dead: 10 psf x 11 ft + 3 x 3.30 plf = 119.9 plf; live: 40 psf x 11 ft = 440 plf.  Past the middle of each end post
 * lie 1-3/4 in, which rest on it. */
static const double dead = 119.9, live = 440, l = 8, past = 1.75 / 12;

static void two_spans(struct made *made, struct arena *arena, const char *clear_span, const char *inner)
{
    made_start(made, arena);
    made_set(made, "beam", "B1", "clear span", clear_span);
    made_set(made, "beam", "B1", "inner", inner);
    made_add(made, post_in_the_middle);
}

static void equal_spans(struct made *made, struct arena *arena)
{
    two_spans(made, arena, "188-1/2 in", "post P3 at 97-3/4 in, wall across");
}

/* Live: ends 7/16 x 3,520 + 64.17 = 1,604.17 lb with one span, 3/8 x 3,520 + 64.17 = 1,384.17 with both, -220 with the
 * other; in the middle 4,400 of both.  Dead, always on both: 359.7 + 17.49 = 377.19, and 1,199. */
static void reactions(void **state)
{
    struct made made;
    equal_spans(&made, *state);
    made_size(&made);
    const struct beam_design *bd = &made.design->beams[0];
    for (int end = 0; end < 2; end++) {
        assert_within(bd->end_lb[end].of[LOAD_DEAD], dead * l * 3 / 8 + dead * past, 1e-9);
        assert_within(bd->end_lb[end].of[LOAD_LIVE], live * l * 7 / 16 + live * past, 1e-9);
        assert_within(bd->end_full_lb[end].of[LOAD_LIVE], live * l * 3 / 8 + live * past, 1e-9);
        assert_within(bd->end_least_lb[end].of[LOAD_LIVE], -live * l / 16, 1e-9);
        assert_near(bd->end_lb[end].of[LOAD_LIVE], 1604.17, 0.005);
    }
    assert_int_equal(bd->inner_count, 1);
    assert_within(bd->inner[0].lb.of[LOAD_DEAD], 1199.0, 1e-9);
    assert_within(bd->inner[0].lb.of[LOAD_LIVE], 4400.0, 1e-9);
    assert_within(bd->inner[0].full_lb.of[LOAD_LIVE], 4400.0, 1e-9);
    assert_near(bd->inner[0].least_lb.of[LOAD_LIVE], 0, 1e-9);
    assert_int_equal(beam_pieces(bd), 1);
    assert_int_equal(beam_piece(bd, 0), length_from_inches(195.5));
}

/* The post in the middle has its 4,400 and 1,199 lb and its own 3 x 1.06 plf x 7 ft; they go on to the footing. */
static void handed_down(void **state)
{
    struct made made;
    equal_spans(&made, *state);
    made_size(&made);
    const struct post_design *post = &made.design->posts[2];
    assert_string_equal(post->carries, middle);
    assert_within(post->lb.of[LOAD_LIVE], 4400.0, 1e-9);
    assert_within(post->lb.of[LOAD_DEAD], 1199 + 3 * 1.06 * 7, 1e-9);
    assert_near(made_check(&made, "post P3", "column")->demand, 4400 + 1199 + 22.26, 1e-6);
    assert_within(made.design->footings[0].lb.of[LOAD_LIVE], 4400 + 2 * 1604.1666667, 1e-9);
    bool found = false;
    for (size_t i = 0; i < made.design->path_count; i++)
        found |= !strcmp(made.design->path[i].from, middle) && !strcmp(made.design->path[i].to, "post P3");
    assert_true(found);
}

/* S = 3 x 1.5 x 9.25^2 / 6 = 64.171875 in3, A = 41.625 in2, I = 296.795 in4.
 * Over the post with both spans loaded: 559.9 x 64 / 8 = 4,479.2 ft-lb: 837.60 psi.  In a span with the other empty:
 * R1 = 359.7 + 1,540 = 1,899.7 lb, M = R1^2 / (2 x 559.9) = 3,222.8 ft-lb: 602.65 psi.
 * Shear beside the post: 5/8 x 559.9 x 8 = 2,799.5 lb: 100.88 psi. */
static void demands(void **state)
{
    struct made made;
    equal_spans(&made, *state);
    made_size(&made);
    for (int span = 1; span <= 2; span++) {
        const char *of = arena_printf(*state, ", span %d", span);
        const struct check *over = made_check(&made, beam, arena_printf(*state, "bending over supports%s", of));
        assert_near(over->demand, 837.60, 0.005);
        assert_near(over->at_in, 97.75, 1e-6);
        assert_string_equal(over->combination, "D+L");
        assert_near(made_check(&made, beam, arena_printf(*state, "bending%s", of))->demand, 602.65, 0.01);
        assert_near(made_check(&made, beam, arena_printf(*state, "shear%s", of))->demand, 100.88, 0.005);
        /* live on one span alone: 0.0092 x 36.667 x 96^4 / (1.6e6 x 296.795) = 0.0603 in; two figures of the formula */
        const struct check *sag = made_check(&made, beam, arena_printf(*state, "live deflection%s", of));
        assert_within(sag->demand, 0.0603, 0.006);
        assert_within(sag->capacity, 96.0 / 360, 1e-12);
    }
    assert_null(made_find(&made, beam, "bending")); /* no span of 16 ft any more */
}

/* Lower edge: nothing holds it for 96 in.  le = 1.63 x 96 + 3 x 9.25 = 184.23 in (7 <= lu/d = 10.4 <= 14.3), RB2 =
 * 184.23 x 9.25 / 1.5^2 = 757.39, FbE = 1.2 x 580,000 / 757.39 = 918.95, Fb* = 900 x 1.1 = 990, ratio 0.92823, CL =
 * 0.78496; Fb' = 777.1 psi and the ratio 837.6 / 777.1 = 1.0778: it fails, and with joists on the upper edge alone it
 * would not have been seen. */
static void lower_edge(void **state)
{
    struct made made;
    equal_spans(&made, *state);
    made_size(&made);
    const struct check *over = made_check(&made, beam, "bending over supports, span 1");
    assert_near(over->capacity, 777.1, 0.05);
    assert_near(over->ratio, 1.0778, 0.0005);
    assert_false(made_member(&made, beam)->passes);
    assert_true(made_check(&made, beam, "bending, span 1")->capacity > 940); /* joists 16 in apart */
}

/* Glulam with its weaker side in tension over the post: Fb_neg of its row, 1,850 psi for 24F-V4 (Supplement Table 5A,
 * from memory), not 2,400. */
static void glulam(void **state)
{
    struct made made;
    equal_spans(&made, *state);
    made_set(&made, "beam", "B1", "member", "GLB-3.5X12");
    made_set(&made, "beam", "B1", "plies", "1");
    made_size(&made);
    double over = made_check(&made, beam, "bending over supports, span 1")->capacity;
    double along = made_check(&made, beam, "bending, span 1")->capacity;
    assert_true(over <= 1850 && over > 1850 * 0.9);
    assert_true(along <= 2400 && along > 2300);
}

/* The post is 3 plies = 4-1/2 in across and 3-1/2 in along: 15.75 in2.  Cb = (3.5 + 0.375) / 3.5 (NDS 2018 3.10.4). */
static void bearing(void **state)
{
    struct made made;
    equal_spans(&made, *state);
    made_size(&made);
    const struct check *check = made_check(&made, middle, "bearing of the beam");
    assert_near(check->demand, 5599 / 15.75, 1e-6);
    assert_near(check->capacity, 625 * 3.875 / 3.5, 1e-9);
    assert_near(made_check(&made, middle, "end grain of the post")->demand, 5599 / 15.75, 1e-6);
}

/* Plies cut over the post: two simple spans.  Ends 1/2 wl, middle wl, of it half from each piece on half of the post:
 * 2,239.6 lb on 4-1/2 x 1-3/4 in = 284.4 psi, Cb 1.0.  Moment wl2/8 as before, now at midspan and on the upper edge. */
static void spliced(void **state)
{
    struct made made;
    equal_spans(&made, *state);
    made_set(&made, "beam", "B1", "splices", "97-3/4 in");
    made_size(&made);
    const struct beam_design *bd = &made.design->beams[0];
    assert_within(bd->end_lb[0].of[LOAD_LIVE], live * l / 2 + live * past, 1e-9);
    assert_within(bd->inner[0].lb.of[LOAD_LIVE], live * l, 1e-9);
    assert_within(bd->inner[0].piece_lb[0].of[LOAD_LIVE], live * l / 2, 1e-9);
    assert_within(bd->inner[0].piece_lb[1].of[LOAD_DEAD], dead * l / 2, 1e-9);
    assert_near(made_check(&made, beam, "bending, span 1")->demand, 837.60, 0.005);
    assert_near(made_check(&made, beam, "bending, span 2")->at_in, 97.75 + 48, 1e-6);
    assert_null(made_find(&made, beam, "bending over supports, span 1"));
    assert_near(made_check(&made, middle, "bearing of the beam")->demand, 2239.6 / 7.875, 1e-6);
    assert_near(made_check(&made, middle, "bearing of the beam")->capacity, 625, 0);
    assert_near(made_check(&made, middle, "least bearing length")->capacity, 1.75, 1e-9);
    assert_int_equal(beam_pieces(bd), 2);
    assert_int_equal(beam_piece(bd, 0) + beam_piece(bd, 1), bd->cut_length);
}

/* 48 in and 144 in.  M2 = -w (48^3 + 144^3) / (8 x 192) = -2,016 w for both loaded, -1,944 w for the long one (w in lb
 * per inch): R1 = 24 w - 42 w = -18 w, or -40.5 w.  Dead: -18 x 9.99167 + 17.49 = -162.4 lb; live -40.5 x 36.6667 =
 * -1,485. */
static void uplift(void **state)
{
    struct made made;
    two_spans(&made, *state, "188-1/2 in", "post P3 at 49-3/4 in, wall across");
    made_set(&made, "beam", "B1", "member", "LVL-14");
    made_size(&made);
    double own = 3 * 7.15 / 12, w = 110.0 / 12 + own;
    const struct beam_design *bd = &made.design->beams[0];
    assert_within(bd->end_least_lb[0].of[LOAD_LIVE], -1485.0, 1e-9);
    assert_within(bd->end_lb[0].of[LOAD_DEAD], -18 * w + 1.75 * w, 1e-9);
    const struct check *held = made_check(&made, "beam B1, end 1", "held down, spans loaded in turn");
    assert_near(held->demand, 1485 + 16.25 * w, 1e-6);
    assert_true(isinf(held->ratio));
    assert_string_equal(held->combination, "D+L");
    assert_null(made_find(&made, "beam B1, end 2", "held down, spans loaded in turn"));
    /* over the post the lower edge is as free as the longer span, on the side of the short one, too */
    assert_non_null(strstr(made_check(&made, beam, "bending over supports, span 1")->note, "(lu 12' 0\""));
    assert_false(bd->passes);

    two_spans(&made, *state, "188-1/2 in", "post P3 at 49-3/4 in, wall across");
    made_set(&made, "beam", "B1", "member", "LVL-14");
    made_set(&made, "beam", "B1", "hold down engineer", "sheet S2, R. Ames, PE (invented)");
    made_size(&made);
    assert_null(made_find(&made, "beam B1, end 1", "held down, spans loaded in turn"));
    assert_true(made_lists(made.design->unchecked, made.design->unchecked_count, "end 1 lifts by 16"));
    assert_true(made.design->beams[0].passes);
}

/* The same without live load: the end lifts in every combination, -16.25 w lb, so nothing presses on its post. */
static void lifted_end_bears_nothing(void **state)
{
    struct made made;
    two_spans(&made, *state, "188-1/2 in", "post P3 at 49-3/4 in, wall across");
    made_set(&made, "beam", "B1", "member", "LVL-14");
    made_set(&made, "area", "floor", "live", "0 psf");
    made_size(&made);
    double w = 110.0 / 12 + 3 * 7.15 / 12;
    const struct check *bearing = made_check(&made, "beam B1, end 1", "bearing of the beam");
    assert_near(bearing->demand, 0, 0);
    assert_near(bearing->ratio, 0, 0);
    assert_near(made_check(&made, "beam B1, end 1", "end grain of the post")->demand, 0, 0);
    assert_near(made_check(&made, "beam B1, end 1", "held down, spans loaded in turn")->demand, 16.25 * w, 1e-6);
}

/* The joists of side A alone: dead 60 + 9.9 plf, live 240: over the post 309.9 x 64 / 8 = 2,479.2 ft-lb = 463.6 psi of
 * 777.1; in the span R1 = 209.7 + 840 = 1,049.7 lb, 1,777.8 ft-lb = 332.4 psi, which is less of what holds there. */
static void half_hung(void **state)
{
    struct made made;
    equal_spans(&made, *state);
    made_size(&made);
    const struct check *check = made_check(&made, "beam B1, half hung", "bending, side A hung");
    assert_near(check->demand, 463.6, 0.05);
    assert_near(check->capacity, 777.1, 0.05);
}

/* A notch at end 1 sees the shear of that end with its own span loaded: 359.7 + 1,540 lb; with the end post taken for
 * the middle of a span of 16 ft it would be 4,479. */
static void notched_end(void **state)
{
    struct made made;
    equal_spans(&made, *state);
    made_set(&made, "beam", "B1", "notch 1", "2 in");
    made_size(&made);
    assert_near(made_check(&made, beam, "end 1 cut, shear")->demand, 1899.7, 1e-6);
}

/* A wall plate as inner support, and what leaves no span. */
static void plate_and_places(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "clear span", "188-1/2 in");
    made_set(&made, "beam", "B1", "inner", "wall plate at 97-3/4 in, bearing 5-1/2 in");
    made_size(&made);
    assert_near(made_check(&made, middle, "plate under the beam")->demand, 5599 / (4.5 * 5.5), 1e-6);
    assert_true(made_lists(made.design->unchecked, made.design->unchecked_count, "below the plate at beam B1, inner"));

    two_spans(&made, *state, "188-1/2 in", "post P3 at 4 in, wall across");
    made_size(&made);
    assert_true(made_says(&made, DIAG_S009));
}

/* Asked over the support, whatever is asked of the ends. */
static bool asks_over_it(const struct made *made)
{
    for (size_t i = 0; i < made->diags.count; i++)
        if (made->diags.item[i].code == DIAG_S008 && strstr(made->diags.item[i].text, "inner support 1"))
            return true;
    return false;
}

/* 9-1/4 in deep and 4-1/2 in wide: deeper than twice as wide (NDS 2018 4.4.1.2); joists hang on both faces within 24 in
 * of the post, unless one side stays away from it. */
static void kept_upright(void **state)
{
    struct made made;
    equal_spans(&made, *state);
    made_size(&made);
    assert_true(
        made_lists(made.design->basis, made.design->basis_count, "inner support 1: held against rolling over by j"));
    equal_spans(&made, *state);
    made_set(&made, "joists", "south", "to", "6 ft");
    made_size(&made);
    assert_true(asks_over_it(&made));
    made_set(&made, "beam", "B1", "specified by", "R. Ames, PE");
    made_set(&made, "beam", "B1", "specified span", "188-1/2 in");
    made_set(&made, "beam", "B1", "sheet", "S1");
    made.diags.count = 0;
    made_size(&made);
    assert_false(asks_over_it(&made));
    assert_true(made_lists(made.design->unchecked, made.design->unchecked_count,
                           "what keeps beam B1, inner support 1 from rolling over"));
}

static void held_there(struct made *made, struct arena *arena, const char *inner)
{
    two_spans(made, arena, "188-1/2 in", inner);
    made_set(made, "joists", "south", "to", "6 ft");
    made_size(made);
}

/* Blocks, straps and king studs answer; a 2x8 block is too low; a strap must be one. */
static void held_by_what(void **state)
{
    struct made made;
    held_there(&made, *state, "post P3 at 97-3/4 in, wall across, held by blocks of DFL2-2X10");
    assert_false(asks_over_it(&made));
    assert_string_equal(made.design->beams[0].inner[0].held, "a full-depth block on each face");
    assert_string_equal(made.design->beams[0].inner[0].held_wood->code, "DFL2-2X10");
    held_there(&made, *state, "post P3 at 97-3/4 in, held by straps of STRAP-16GA-18, wall across");
    assert_string_equal(made.design->beams[0].inner[0].held_strap->code, "STRAP-16GA-18");
    held_there(&made, *state, "post P3 at 97-3/4 in, wall across, held by blocks of DFL2-2X8");
    assert_near(made_check(&made, beam, "inner support 1, block as deep as the beam")->ratio, 8.75 / 7.25, 1e-9);
    held_there(&made, *state, "post P3 at 97-3/4 in, wall across, held by straps of DFL2-2X8");
    assert_true(made_says(&made, DIAG_C006));
    held_there(&made, *state, "post P3 at 97-3/4 in, wall across, held by king studs of SPF-STUD-2X4");
    assert_string_equal(made.design->beams[0].inner[0].held, "a king stud on each face");
    two_spans(&made, *state, "188-1/2 in",
              "wall plate at 97-3/4 in, bearing 5-1/2 in, held by king studs of SPF-STUD-2X4");
    made.job = job_check(made.arena, "test.ini", &made.entries, &made.diags);
    assert_true(made_says(&made, DIAG_K017)); /* they stand beside a post */
    two_spans(&made, *state, "188-1/2 in", "post P3 at 97-3/4 in, wall across, held by nails");
    made.job = job_check(made.arena, "test.ini", &made.entries, &made.diags);
    assert_true(made_says(&made, DIAG_K010));
}

/* 1 in beside the post's center: as at an end, 3-1/2 of 4-1/2 in bear, and 1 in is more than 4-1/2/6: its nailed plies
 * do not bend as one.  1/2 in is within a sixth. */
static void beside_the_center(void **state)
{
    struct made made;
    equal_spans(&made, *state);
    made_size(&made);
    double stress = made_check(&made, middle, "bearing of the beam")->demand;
    two_spans(&made, *state, "188-1/2 in", "post P3 at 97-3/4 in, wall across, off center 1 in");
    made_size(&made);
    assert_near(made_check(&made, middle, "bearing of the beam")->demand, stress * 4.5 / 3.5, 1e-6);
    assert_true(made_says(&made, DIAG_S011));
    two_spans(&made, *state, "188-1/2 in", "post P3 at 97-3/4 in, wall across, off center 1/2 in");
    made_size(&made);
    assert_false(made_says(&made, DIAG_S011));
    assert_null(made_find(&made, "post P3", "load off its center"));
    two_spans(&made, *state, "188-1/2 in", "wall plate at 97-3/4 in, bearing 5-1/2 in, off center 1 in");
    made.job = job_check(made.arena, "test.ini", &made.entries, &made.diags);
    assert_true(made_says(&made, DIAG_K017));
}

/* Wind lifts side A by 20 psf x 6 ft = 120 plf on both spans: over the post 120 x 64 / 8 = 960 ft-lb = 11,520 in-lb on
 * 64.171875 in3: 179.5 psi, more than 9/128 wl2 between the supports. */
static void bent_upward(void **state)
{
    struct made made;
    equal_spans(&made, *state);
    made_set(&made, "joists", "north", "area", "area roof");
    made_add(&made, "[area roof]\ndead = 10 psf\nlive = 20 psf\nlive is = roof\nsnow = 0 psf\nnet uplift = 20 psf\n");
    made_size(&made);
    const struct check *check = made_check(&made, beam, "bending upward, span 2");
    assert_near(check->demand, 179.5, 0.05);
    assert_near(check->at_in, 97.75, 1e-6);
    /* 10/8 x 120 x 8 = 1,200 lb there, more than the 900 lb of the cap that fits */
    const struct check *held = made_check(&made, middle, "held down");
    assert_near(held->demand, 1200, 1e-6);
    assert_near(held->capacity, 900, 0);
    assert_string_equal(made.design->beams[0].inner[0].hold_down->code, "CAP-4.5");
    assert_true(made_lists(made.design->basis, made.design->basis_count, "inner support 1 is lifted by 1,200 lb") ||
                made_lists(made.design->basis, made.design->basis_count, "inner support 1 is lifted by 1200 lb"));
}

/* A support that a job does not need changes a check, never the loads: a job without inner supports has none of this.
 */
static void one_span_has_none(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_size(&made);
    const struct beam_design *bd = &made.design->beams[0];
    assert_int_equal(bd->inner_count, 0);
    assert_memory_equal(&bd->end_lb, &bd->end_least_lb, sizeof bd->end_lb);
    assert_memory_equal(&bd->end_lb, &bd->end_full_lb, sizeof bd->end_lb);
    assert_non_null(made_find(&made, beam, "bending"));
}

/* Same source, both spans loaded: sag wl4/185EI at 0.4215 l from an outer end (w x (l3 - 3 l x2 + 2 x3) / 48EI there
 * is 0.005416 wl4/EI).  What comes onto the beam is dead: 110 plf; its own 9.9 plf has bent it before.  E 1,600,000,
 * I 296.795: 0.005416 x 9.16667 x 96^4 / (1.6e6 x 296.795) = 0.008880 in; 1.75 + 0.4215 x 96 = 42.21 from end 1.  A
 * single span of 8 ft: 5/384 for 0.005416: 0.02135 in, in its middle. */
static void sinks_under_dead_load(void **state)
{
    struct made made;
    equal_spans(&made, *state);
    made_size(&made);
    assert_near(made.design->beams[0].dead_sag_in, 0.008880, 0.00001);
    double at = made.design->beams[0].dead_sag_at_in;
    assert_near(at < 97.75 ? at : 195.5 - at, 42.21, 0.1); /* the spans are alike */
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "clear span", "92-1/2 in");
    made_size(&made);
    assert_near(made.design->beams[0].dead_sag_in, 0.02135, 0.00002);
    assert_near(made.design->beams[0].dead_sag_at_in, 49.75, 0.05);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(reactions, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(handed_down, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(demands, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(lower_edge, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(glulam, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(bearing, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(spliced, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(uplift, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(lifted_end_bears_nothing, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(kept_upright, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(held_by_what, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(beside_the_center, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(bent_upward, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(half_hung, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(notched_end, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(plate_and_places, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(one_span_has_none, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(sinks_under_dead_load, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
