/* Whole jobs, from text to checks.  Every expected figure is worked by hand beside it; reference values of NDS 2018
 * Supplement Table 4A: Douglas Fir-Larch No.2 Fb 900, Fv 180, Fc perp 625, E 1,600,000; Spruce-Pine-Fir Fc perp 425,
 * Stud Fc 725, Emin 440,000. */
#include "size/made_job.h"

/* Half of 12 ft and half of 10 ft: 11 ft x 10 + 40 psf = 110 + 440 plf.  3-2x10, 3.30 plf each: 9.9 plf.  Posts of
 * three 2x4 across: 3-1/2 in of bearing at each end: wood 96 + 7 = 103 in, design span 103 - 3.5 = 99.5 in. w = 559.9
 * plf = 46.658 lb/in.  V = 46.658 x 99.5/2 = 2,321 lb, fv = 1.5 x 2,321/41.625 = 83.7 psi of 180. M = 46.658 x 99.5^2/8
 * = 57,740 in-lb, S = 64.17 in3, fb = 899.8 psi. Live sag 5 x 36.667 x 99.5^4/(384 x 1.6e6 x 296.8) = 0.0985 in
 * of 99.5/360 = 0.2764. Total: 5 x (36.667 + 1.5 x 9.992) x 99.5^4/(384 x 1.6e6 x 296.8) = 0.1388 in of 0.4146. CL:
 * joists 16 in apart, the last gap 103 - 88 = 15: lu 16; 16/9.25 < 7: le = 2.06 x 16 = 32.96, one ply: RB^2 = 32.96
 * x 9.25/2.25 = 135.5, FbE = 1.2 x 580,000/135.5 = 5,136, Fb* = 990, a = 5.188, CL = 3.2568 - sqrt(10.6068 - 5.4611) =
 * 0.9884: Fb' = 978.5. */
static void plain_beam_by_hand(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_size(&made);
    const struct beam_design *bd = &made.design->beams[0];
    assert_near(length_inches(bd->cut_length), 103, 0);
    assert_near(bd->design_span_in, 99.5, 1e-9);
    const struct check *bending = made_check(&made, "beam B1", "bending");
    assert_near(bending->demand, 899.8, 0.5);
    assert_near(bending->capacity, 978.5, 0.5);
    assert_string_equal(bending->combination, "D+L");
    assert_true(bending->governs);
    assert_near(bending->at_in, 51.5, 1e-6);
    const struct check *shear = made_check(&made, "beam B1", "shear");
    assert_near(shear->demand, 83.7, 0.1);
    assert_near(shear->capacity, 180, 1e-9);
    assert_non_null(strstr(shear->note, "V reduction: none, side-loaded"));
    assert_near(made_check(&made, "beam B1", "live deflection")->demand, 0.0985, 0.0002);
    assert_near(made_check(&made, "beam B1", "live deflection")->capacity, 99.5 / 360, 1e-9);
    assert_near(made_check(&made, "beam B1", "total deflection")->demand, 0.1388, 0.0003);
    assert_true(made.design->passes);
    assert_true(made_lists(made.design->basis, made.design->basis_count, "V reduction: none, side-loaded"));
}

/* Joist ends: 50 psf x 16 in x 6 ft = 400 lb on side A, 333 lb on side B. */
static void joist_ends(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_size(&made);
    const struct joist_design *a = made.design->beams[0].side[0], *b = made.design->beams[0].side[1];
    assert_near(loads_total(&a->end_lb), 400, 1e-6);
    assert_near(loads_total(&b->end_lb), 50 * 16.0 / 12 * 5, 1e-6);
    assert_int_equal(a->count, 6); /* 8, 24, 40, 56, 72, 88 in of 103 */
    assert_near(length_inches(a->place[5]), 88, 0);
    assert_non_null(a->end[0].hanger);
    assert_near(made_check(&made, "joists north on beam B1, side A", "joist hanger")->demand, 400, 1e-6);
    /* lapped: side B one joist thickness over */
    struct made lapped;
    made_start(&lapped, *state);
    made_set(&lapped, "joists", "south", "over the wall", "lapped");
    made_size(&lapped);
    assert_near(length_inches(lapped.design->beams[0].side[1]->place[0]), 9.5, 0);
}

/* A shore stud: joists 14 ft at 50 psf, cut 3 ft past the shore: 50 x 14/2 x 14/11 = 445.5 plf; 16 in: 594 lb.
 * SPF Stud 2x4 x 94-1/2 in at CD 1.25 holds 469 lb free (le/d 63) and 1,730 lb with one row of braces (le/d 31.5):
 * 594/469 = 1.27 and 594/1,730 = 0.343 (capacities worked out in test_post.c). */
static void shore_stud(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "joists", "north", "run", "14 ft");
    made_set(&made, "shore", "S1", "brace rows", "0");
    made_size(&made);
    assert_near(made.design->shores[0].stud_lb, 594, 0.5);
    assert_near(made_check(&made, "shore S1", "shore stud")->ratio, 1.27, 0.005);
    assert_false(made.design->shores[0].passes);
    assert_false(made.design->passes);
    assert_true(made_says(&made, DIAG_S002));
    struct made braced;
    made_start(&braced, *state);
    made_set(&braced, "joists", "north", "run", "14 ft");
    made_size(&braced);
    assert_near(made_check(&braced, "shore S1", "shore stud")->ratio, 0.34, 0.005);
    assert_true(braced.design->shores[0].passes);
    /* 94.5 = 96 in of clear span and 16 in at each end: 128 in, 8 spaces, 9 studs */
    assert_int_equal(braced.design->shores[0].studs, 9);
    /* the plate: 594/(1.5 x 3.5) = 113 psi */
    assert_near(made_check(&braced, "shore S1", "shore plate")->demand, 113.1, 0.2);
}

/* 1,100 lb on the beam's line, 3 ft past a shore under joists of 14 ft: it stands at the tip of the cantilevers.
 * Moments about the far bearing: R x (14 - 3) = 1,100 x 14, R = 1,400 lb.  The joists themselves weigh nothing here. */
static void what_stands_past_the_shore(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "joists", "north", "run", "14 ft");
    made_set(&made, "beam", "B1", "above", "load X");
    made_set(&made, "area", "floor", "dead", "0 psf");
    made_set(&made, "area", "floor", "live", "0 psf");
    made_add(&made, "[load X]\non = beam B1\nat = 51.5 in\ndead = 0 lb\nlive = 1100 lb\nheld by = shore S1\n");
    made_size(&made);
    assert_near(made.design->shores[0].stud_lb, 1400, 0.1);
}

/* Three plies on two studs in a wall across, 5,600 lb on the plate: 5,600/(3.0 x 3.5) = 533 psi; SPF plate 425: fails
 * (1.25), while the beam's own underside, 532 of 625 (DF-L), passes.  5,600 = half of 11,065 + half of the beam's 105
 * lb (3 x 3.30 plf x 10.58 ft) + the post's 15 lb (2 x 1.06 plf x 7 ft). */
static void plate_under_two_studs(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "clear span", "10 ft");
    made_set(&made, "beam", "B1", "above", "load X");
    made_set(&made, "post", "P1", "plies", "2");
    made_set(&made, "post", "P1", "stands on", "wall W2");
    made_set(&made, "area", "floor", "dead", "0 psf");
    made_set(&made, "area", "floor", "live", "0 psf");
    made_add(&made, "[load X]\non = beam B1\nat = 63.5 in\ndead = 0 lb\nlive = 11065 lb\nheld by = shore S1\n"
                    "[wall W2]\nstatus = stays\nheight = 8 ft\nstuds = SPF2-2X4\n");
    made_size(&made);
    const struct check *plate = made_check(&made, "post P1", "plate under the post");
    assert_near(plate->demand, 533.3, 0.5);
    assert_near(plate->capacity, 425, 1e-9);
    assert_near(plate->ratio, 1.255, 0.002);
    assert_false(made.design->posts[0].passes);
    const struct check *under = made_check(&made, "beam B1, end 1", "bearing of the beam");
    assert_near(under->demand, 532, 0.5);
    assert_near(under->capacity, 625, 1e-9);
    assert_true(under->ratio < 1);
}

/* Three plies on one stud across: two plies have no wood below. */
static void ply_without_wood(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "post", "P2", "plies", "1");
    made_size(&made);
    const struct check *plies = made_check(&made, "beam B1, end 2", "every ply on wood");
    assert_near(plies->ratio, 3, 1e-9);
    assert_null(made_find(&made, "beam B1, end 1", "every ply on wood"));
    assert_false(made.design->beams[0].passes);
}

static const char roof_ini[] = "[area top]\ndead = 0 psf\nlive = 0 psf\nlive is = roof\nsnow = 30 psf\n"
                               "snow is = on the roof\nsnow level = strength\n"
                               "[load X]\non = beam B1\nat = 51.5 in\narea = area top\ncarries = 100 sq ft\n"
                               "held by = shore S1\n";

static void with_roof(struct made *made, struct arena *arena)
{
    made_start(made, arena);
    made_set(made, "beam", "B1", "above", "load X");
    made_set(made, "area", "floor", "dead", "0 psf");
    made_set(made, "area", "floor", "live", "0 psf");
    made_add(made, roof_ini);
}

/* 100 sq ft x 30 psf = 3,000 lb in the middle: 1,500 lb at each end, and half of the beam's 9.9 plf x 103/12 ft = 85
 * lb. Bearing 4.5 x 3.5 = 15.75 in2.  ASCE 7-22 strength level: (42.5 + 0.7 x 1,500)/15.75 = 69.4 psi in D+0.7S;
 * allowable level: (42.5 + 1,500)/15.75 = 97.9 psi in D+S; on the ground: (42.5 + 0.7 x 1,500)/15.75 again. */
static void snow_levels(void **state)
{
    struct made made;
    with_roof(&made, *state);
    made_size(&made);
    const struct check *bearing = made_check(&made, "beam B1, end 1", "bearing of the beam");
    assert_string_equal(bearing->combination, "D+0.7S");
    assert_near(bearing->demand, 69.4, 0.1);
    assert_near(made.design->beams[0].end_lb[0].of[LOAD_SNOW], 1500, 1e-6);
    with_roof(&made, *state);
    made_set(&made, "area", "top", "snow level", "allowable");
    made_size(&made);
    bearing = made_check(&made, "beam B1, end 1", "bearing of the beam");
    assert_string_equal(bearing->combination, "D+S");
    assert_near(bearing->demand, 97.9, 0.1);
    made_set(&made, "area", "top", "snow is", "on the ground");
    made_size(&made);
    assert_near(made_check(&made, "beam B1, end 1", "bearing of the beam")->demand, 69.4, 0.1);
    assert_true(
        made_lists(made.design->basis, made.design->basis_count, "pg 30 psf x 0.7 x Ce 1 x Ct 1 x Is 1 = 21 psf"));
}

/* Not answered: asked, and the heavier reading taken. */
static void snow_not_answered(void **state)
{
    struct made made;
    with_roof(&made, *state);
    made_set(&made, "area", "top", "snow level", NULL);
    made_set(&made, "area", "top", "snow is", NULL);
    made_size(&made);
    assert_true(made_says(&made, DIAG_Q005));
    assert_near(made_check(&made, "beam B1, end 1", "bearing of the beam")->demand, 97.9, 0.1);
    assert_true(made_lists(made.design->basis, made.design->basis_count, "the heavier reading"));
}

/* Zero is an answer; absent is the question. */
static void snow_zero_and_absent(void **state)
{
    struct made made;
    with_roof(&made, *state);
    made_set(&made, "area", "top", "snow", "0 psf");
    made_size(&made);
    assert_false(made_says(&made, DIAG_Q005));
    assert_near(made.design->beams[0].end_lb[0].of[LOAD_SNOW], 0, 0);
    with_roof(&made, *state);
    made_set(&made, "area", "top", "snow", NULL);
    made.job = job_check(made.arena, "test.ini", &made.entries, &made.diags);
    assert_true(made_says(&made, DIAG_Q005) || made_stops(&made) > 0);
}

/* Rafters under a ridge board, joists their tie: w s L/(4 p) = 35 psf x 16/12 ft x 26 ft/(4 x 6/12) = 606.7 lb a pair.
 * No strap: no capacity.  Statics of the three-hinged frame; the code wants the tie (IRC 2021 R802.5.2). */
static void with_ties(struct made *made, struct arena *arena)
{
    made_start(made, arena);
    made_set(made, "roof", "", "frame", "ridge board");
    made_set(made, "roof", "", "pitch", "6/12");
    made_set(made, "roof", "", "span", "26 ft");
    made_set(made, "roof", "", "area", "area top");
    made_set(made, "joists", "north", "ties the roof", "yes");
    made_set(made, "joists", "south", "ties the roof", "yes");
    made_add(made, "[area top]\ndead = 15 psf\nlive = 20 psf\nlive is = roof\nsnow = 0 psf\n");
}

static void thrust_tie(void **state)
{
    struct made made;
    with_ties(&made, *state);
    made_size(&made);
    const struct check *tie = made_check(&made, "joists north on beam B1, side A", "thrust tie");
    assert_near(tie->demand, 606.7, 0.1);
    assert_true(isinf(tie->ratio));
    assert_false(made.design->beams[0].passes);
    assert_true(made_says(&made, DIAG_Q003));
    with_ties(&made, *state);
    made_set(&made, "joists", "north", "tie strap", "STRAP-16GA-24");
    made_set(&made, "joists", "south", "tie strap", "STRAP-16GA-24");
    made_size(&made);
    tie = made_check(&made, "joists north on beam B1, side A", "thrust tie");
    assert_near(tie->demand, 606.7, 0.1);
    assert_string_equal(tie->combination, "D+Lr");
    assert_near(tie->capacity, catalog_hanger(made.catalog, "STRAP-16GA-24")->load[2], 0);
    assert_int_equal(made.design->beams[0].side[0]->tied_pairs, 6);
    assert_int_equal(made.design->beams[0].side[1]->tied_pairs, 0); /* one strap a pair */
}

/* The engineer drew 10 ft, the tape says 10 ft 3 in. */
static void specified_span_differs(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "clear span", "10 ft 3 in");
    made_set(&made, "beam", "B1", "specified by", "A. Heron, PE (invented)");
    made_set(&made, "beam", "B1", "sheet", "S1");
    made_set(&made, "beam", "B1", "specified span", "10 ft 0 in");
    made.job = job_check(made.arena, "test.ini", &made.entries, &made.diags);
    assert_true(made_says(&made, DIAG_Q008));
    assert_true(made_stops(&made) > 0);
}

/* An engineer's member is not judged: our ratio stands beside it.  One 2x10 ply takes a third of what it should. */
static void specified_member(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "plies", "1");
    made_set(&made, "beam", "B1", "ply fasteners", NULL);
    made_set(&made, "beam", "B1", "specified by", "A. Heron, PE (invented)");
    made_set(&made, "beam", "B1", "sheet", "S1");
    made_set(&made, "beam", "B1", "revision", "B");
    made_set(&made, "beam", "B1", "specified span", "8 ft");
    made_size(&made);
    bool said = false;
    for (size_t i = 0; i < made.design->basis_count; i++)
        said =
            said || !strcmp(made.design->basis[i],
                            "beam B1: as specified by A. Heron, PE (invented), sheet S1, revision B, for a clear span "
                            "of 8' 0\"; our ratio stands beside it and decides nothing");
    assert_true(said);
    assert_true(made_member(&made, "beam B1")->specified);
    assert_false(made_member(&made, "beam B1")->passes);
    assert_true(made_check(&made, "beam B1", "bending")->ratio > 2);
    assert_true(made_says(&made, DIAG_S004));
}

/* A value that is not listed is never scaled from another: no hanger then. */
static void hanger_without_listing(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "area", "floor", "live is", "roof");
    made_set(&made, "area", "floor", "snow", "0 psf");
    made.catalog = catalog_read(made.arena, SOURCE_DIR "/catalogs", NULL, &made.diags);
    for (size_t i = 0; i < made.catalog->hanger_count; i++)
        made.catalog->hangers[i].load[2] = NAN; /* CD 1.25, roof live load */
    made_size(&made);
    const struct check *check = made_check(&made, "joists north on beam B1, side A", "joist hanger");
    assert_null(made.design->beams[0].side[0]->end[0].hanger);
    assert_true(isinf(check->ratio));
    assert_non_null(strstr(check->note, "no listed load at this duration"));
    assert_false(made.design->beams[0].passes);
}

static void hanger_does_not_fit(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "joists", "south", "measured depth", "20 in");
    made_size(&made);
    assert_null(made.design->beams[0].side[1]->end[0].hanger);
    assert_non_null(strstr(made_check(&made, "joists south on beam B1, side B", "joist hanger")->note, "no hanger"));
}

/* Upset: nothing holds the top edge; lu is the design span, on one ply (CL worked out in test_factors.c's way:
 * lu/d = 99.5/9.25 = 10.8: le = 1.63 x 99.5 + 3 x 9.25 = 189.9; RB^2 = 189.9 x 9.25/2.25 = 780.8;
 * FbE = 696,000/780.8 = 891.4; Fb* 990; a = 0.9004; CL = 1.00021 - sqrt(1.00042 - 0.94779) = 0.7708; Fb' = 763). */
static void upset_beam(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "set", "upset");
    made_set(&made, "beam", "B1", "above joists by", "2 in");
    made_size(&made);
    assert_near(made_check(&made, "beam B1", "bending")->capacity, 763, 1);
}

/* A dropped beam under joists that run on over it, 12 ft and 10 ft: M = w (12^3 + 10^3)/(8 x 22) = 15.5 w;
 * reaction w (6 + 15.5/12) + w (5 + 15.5/10) = 13.842 w = 692.1 plf at 50 psf (three moments). */
static void joists_run_on(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "set", "dropped");
    made_set(&made, "joists", "north", "over the wall", "continuous");
    made_set(&made, "joists", "south", "over the wall", "continuous");
    made_size(&made);
    double w =
        loads_total(&made.design->beams[0].side[0]->line_plf) + loads_total(&made.design->beams[0].side[1]->line_plf);
    assert_near(w, 692.1, 0.2);
    assert_null(made.design->beams[0].side[0]->end[0].hanger);
}

static void member_not_in_catalog(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "member", "DFL2-2X11");
    made.job = job_check(made.arena, "test.ini", &made.entries, &made.diags);
    made.catalog = catalog_read(made.arena, SOURCE_DIR "/catalogs", NULL, &made.diags);
    assert_int_equal(made_stops(&made), 0);
    made.design = size_job(made.arena, made.job, made.catalog, NULL, &made.diags);
    assert_true(made_says(&made, DIAG_C006));
    assert_false(made.design->passes);
}

static void load_beyond_the_beam(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "beam", "B1", "above", "load X");
    made_add(&made, "[load X]\non = beam B1\nat = 104 in\ndead = 100 lb\nlive = 0 lb\nheld by = shore S1\n");
    made_size(&made);
    assert_true(made_says(&made, DIAG_S001));
}

/* A doubled joist wants a hanger of twice its width; a place without a joist is a fault. */
static void doubled_joists(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "joists", "north", "doubled at", "24 in, 56 in");
    made_size(&made);
    const struct joist_design *north = made.design->beams[0].side[0];
    const struct hanger *hanger = NULL;
    int doubled = 0;
    for (size_t i = 0; i < north->count; i++)
        if (north->end[i].doubled) {
            doubled++;
            hanger = north->end[i].hanger;
        }
    assert_int_equal(doubled, 2);
    assert_non_null(hanger);
    assert_true(length_inches(hanger->width_from) <= 3 && length_inches(hanger->width_to) >= 3);
    assert_false(made_says(&made, DIAG_S001));
    made_start(&made, *state);
    made_set(&made, "joists", "north", "doubled at", "25 in");
    made_size(&made);
    assert_true(made_says(&made, DIAG_S001));
}

/* New joists hang among the others, in their order; one beside another hangs doubled. */
static void new_joists(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_size(&made);
    size_t before = made.design->beams[0].side[0]->count;
    made_start(&made, *state);
    made_set(&made, "joists", "north", "new at", "14 in, 30 in");
    made_set(&made, "joists", "north", "new beside", "56 in");
    made_set(&made, "joists", "north", "new of", "DFL2-2X10");
    made_size(&made);
    const struct joist_design *north = made.design->beams[0].side[0];
    assert_false(made_says(&made, DIAG_S001));
    assert_int_equal(north->count, before + 2);
    int found = 0;
    for (size_t i = 0; i < north->count; i++) {
        assert_true(i == 0 || north->place[i] > north->place[i - 1]);
        assert_true(north->end[i].at == north->place[i]);
        found += north->place[i] == 14 * LENGTH_INCH || north->place[i] == 30 * LENGTH_INCH;
        assert_true(north->end[i].doubled == (north->place[i] == 56 * LENGTH_INCH));
        assert_non_null(north->end[i].hanger);
    }
    assert_int_equal(found, 2);
    made_set(&made, "joists", "north", "new at", "24 in"); /* one stands there */
    made_size(&made);
    assert_true(made_says(&made, DIAG_S001));
    made_start(&made, *state);
    made_set(&made, "joists", "north", "new beside", "25 in"); /* none stands there */
    made_set(&made, "joists", "north", "new of", "DFL2-2X10");
    made_size(&made);
    assert_true(made_says(&made, DIAG_S001));
}

/* A cap plate of the post's own width bears like any plate: Fc-perp of Spruce-Pine-Fir, 425 psi (NDS 2018 Supplement
 * Table 4A), on the overlap of beam and post. */
static void a_cap_plate_is_checked(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "post", "P1", "cap plate", "SPF2-2X4");
    made_size(&made);
    const struct member_checks *end = made_member(&made, "beam B1, end 1");
    double plate = 0, beam = 0;
    for (size_t i = 0; i < end->count; i++) {
        plate += strcmp(end->check[i].name, "plate under the beam") == 0 ? end->check[i].demand : 0;
        beam += strcmp(end->check[i].name, "bearing of the beam") == 0 ? end->check[i].demand : 0;
        if (strcmp(end->check[i].name, "plate under the beam") == 0)
            assert_near(end->check[i].capacity, 425, 1e-9);
    }
    assert_true(plate > 0);
    assert_near(plate, beam, 1e-9); /* the same load on the same area */
    assert_false(made_says(&made, DIAG_K013));
    made_set(&made, "post", "P1", "member", "SPF-STUD-2X6");
    made_size(&made);
    assert_true(made_says(&made, DIAG_K013)); /* narrower than the post */
}

/* What the job knows of an old post's wood stands with its checks. */
static void species_note(void **state)
{
    struct made made;
    made_start(&made, *state);
    made_set(&made, "post", "P1", "status", "existing");
    made_set(&made, "post", "P1", "species note", "no stamp found");
    made_size(&made);
    assert_string_equal(made_member(&made, "post P1")->member, "3 - 2x4 Spruce-Pine-Fir Stud (no stamp found)");
    assert_string_equal(made_member(&made, "post P2")->member, "3 - 2x4 Spruce-Pine-Fir Stud");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(species_note, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(plain_beam_by_hand, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(joist_ends, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(shore_stud, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(what_stands_past_the_shore, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(plate_under_two_studs, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(ply_without_wood, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(snow_levels, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(snow_not_answered, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(snow_zero_and_absent, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(thrust_tie, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(specified_span_differs, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(specified_member, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(hanger_without_listing, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(hanger_does_not_fit, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(upset_beam, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(joists_run_on, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(member_not_in_catalog, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(new_joists, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_cap_plate_is_checked, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(doubled_joists, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(load_beyond_the_beam, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
