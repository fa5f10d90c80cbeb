/* Snow from the map's figure to what the combinations take: each factor, the least load of low slopes, the edition. */
#include "size/made_job.h"

#include "sawbill/joint.h"
#include "sawbill/joist.h"

/* 100 sq ft of a roof come down in the middle of B1; nothing else but the wood weighs anything. */
static void under_snow(struct made *made, struct arena *arena, const char *psf)
{
    made_start(made, arena);
    made_set(made, "beam", "B1", "above", "load X");
    made_set(made, "area", "floor", "dead", "0 psf");
    made_set(made, "area", "floor", "live", "0 psf");
    made_set(made, "roof", "", "snow drifts", "no");
    made_add(made, "[area top]\ndead = 0 psf\nlive = 0 psf\nlive is = roof\nsnow is = on the ground\n"
                   "snow level = allowable\n"
                   "[load X]\non = beam B1\nat = 51.5 in\narea = area top\ncarries = 100 sq ft\nheld by = shore S1\n");
    made_set(made, "area", "top", "snow", psf);
}

static const struct snow_design *sized(struct made *made)
{
    made->diags.count = 0;
    made_size(made);
    assert_int_equal(made->design->snow_count, 1);
    return &made->design->snow[0];
}

static bool basis_has(const struct made *made, const char *part)
{
    return made_lists(made->design->basis, made->design->basis_count, part);
}

/* ASCE 7-16 eq. 7.3-1, pf = 0.7 Ce Ct Is pg.  Ce 0.9: fully exposed in terrain B or C; Ct 1.2: unheated; Is 1.1: risk
 * category III (tables of ASCE 7-10, the same in 7-16).  0.7 x 0.9 x 1.2 x 1.1 x 40 = 33.264 psf; 100 sq ft of it in
 * the middle bring 1,663.2 lb to each end. */
static void every_factor(void **state)
{
    struct made made;
    under_snow(&made, *state, "40 psf");
    made_set(&made, "roof", "", "exposure factor", "0.9");
    made_set(&made, "roof", "", "thermal factor", "1.2");
    made_set(&made, "roof", "", "importance factor", "1.1");
    const struct snow_design *snow = sized(&made);
    assert_near(snow->flat_psf, 33.264, 1e-9);
    assert_near(snow->roof_psf, 33.264, 1e-9);
    assert_near(snow->asd_psf, 33.264, 1e-9);
    assert_near(made.design->beams[0].end_lb[0].of[LOAD_SNOW], 1663.2, 1e-6);
    assert_true(basis_has(&made, "snow of area top: pg 40 psf x 0.7 x Ce 0.9 x Ct 1.2 x Is 1.1 = 33.26 psf on a flat "
                                 "roof (ASCE 7-16 eq. 7.3-1)"));
    assert_true(basis_has(&made, "x Cs 1, no slope reduction taken, = 33.26 psf on the roof; allowable level: x 1 in "
                                 "the combinations = 33.26 psf"));
}

/* ASCE 7-22 eq. 7.3-1 has no Is; 2.4.1 no. 3a takes 0.7 S: 0.7 x 1.2 x 60 = 50.4 psf, x 0.7 = 35.28.  The edition is
 * 7-22 without a word of the job. */
static void strength_level(void **state)
{
    struct made made;
    under_snow(&made, *state, "60 psf");
    made_set(&made, "roof", "", "thermal factor", "1.2");
    made_set(&made, "area", "top", "snow level", "strength");
    const struct snow_design *snow = sized(&made);
    assert_near(snow->roof_psf, 50.4, 1e-9);
    assert_near(snow->asd_psf, 35.28, 1e-9);
    assert_near(made.design->beams[0].end_lb[0].of[LOAD_SNOW], 2520, 1e-6); /* 100 x 50.4 / 2 */
    assert_true(basis_has(&made, "pg 60 psf x 0.7 x Ce 1 x Ct 1.2 = 50.4 psf on a flat roof (ASCE 7-22 eq. 7.3-1, no "
                                 "Is: its map holds the risk)"));
    assert_true(basis_has(&made, "strength level: x 0.7 in the combinations (ASCE 7-22 2.4.1) = 35.28 psf"));
    assert_string_equal(made.design->standard, "ASCE 7-22");
    assert_true(basis_has(&made, "combination D+0.7S: ASCE 7-22 2.4.1 no. 3a, CD 1.15"));
    assert_true(basis_has(&made, "combination D+0.75L+0.75(0.7S): ASCE 7-22 2.4.1 no. 4a, CD 1.15"));
    assert_true(basis_has(&made, "combination D+L: ASCE 7-22 2.4.1 no. 2, CD 1"));
}

/* 7.3.4 of ASCE 7-16, slopes under 15 degrees (3.215/12): Is pg where pg is 20 psf or less, else 20 Is.  7-22: pg up to
 * a limit of 30 psf for risk category II (from memory).  A slope that is not said is taken as low.
 *   pg 15: 10.5 flat, not less than 15; 4/12 is 18.4 degrees, none.  pg 25: 17.5, not less than 20.  pg 30: 21 is more.
 *   Is 0.8, pg 25: 14, not less than 16.  Strength, pg 25: 17.5, not less than 25; pg 60: 42 is more than 30. */
static void least_load_of_low_slopes(void **state)
{
    static const struct {
        const char *pg, *pitch, *importance, *level;
        double least, roof;
    } cases[] = {
        {"15 psf", NULL, NULL, "allowable", 15, 15},      {"15 psf", "3/12", NULL, "allowable", 15, 15},
        {"15 psf", "3.21/12", NULL, "allowable", 15, 15}, {"15 psf", "3.22/12", NULL, "allowable", 0, 10.5},
        {"15 psf", "4/12", NULL, "allowable", 0, 10.5},   {"20 psf", "2/12", NULL, "allowable", 20, 20},
        {"25 psf", "2/12", NULL, "allowable", 20, 20},    {"30 psf", "2/12", NULL, "allowable", 20, 21},
        {"25 psf", "2/12", "0.8", "allowable", 16, 16},   {"25 psf", "2/12", NULL, "strength", 25, 25},
        {"60 psf", "2/12", NULL, "strength", 30, 42},
    };
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        struct made made;
        under_snow(&made, *state, cases[i].pg);
        made_set(&made, "area", "top", "snow level", cases[i].level);
        if (cases[i].pitch)
            made_set(&made, "roof", "", "pitch", cases[i].pitch);
        if (cases[i].importance)
            made_set(&made, "roof", "", "importance factor", cases[i].importance);
        const struct snow_design *snow = sized(&made);
        assert_near(snow->least_psf, cases[i].least, 1e-9);
        assert_near(snow->roof_psf, cases[i].roof, 1e-9);
        assert_true(basis_has(&made, "unverified") == (cases[i].level[0] == 's'));
    }
}

/* The flatter side decides: 6/12 up to a ridge 5 ft from its eave wall rises 2.5 ft, over 19 ft of the other side: 7.5
 * degrees, low; 10 ft from it 5 ft over 14, 19.7 degrees.  A pitch that is another area's says nothing of this one. */
static void slope_of_the_flatter_side(void **state)
{
    struct made made;
    under_snow(&made, *state, "15 psf");
    made_set(&made, "roof", "", "pitch", "6/12");
    assert_near(sized(&made)->roof_psf, 10.5, 1e-9);
    made_set(&made, "roof", "", "span", "24 ft");
    made_set(&made, "roof", "", "ridge at", "5 ft");
    assert_near(sized(&made)->roof_psf, 15, 1e-9);
    made_set(&made, "roof", "", "ridge at", "10 ft");
    assert_near(sized(&made)->roof_psf, 10.5, 1e-9);
    made_set(&made, "roof", "", "area", "area floor");
    assert_near(sized(&made)->roof_psf, 15, 1e-9);
    assert_true(basis_has(&made, "its slope is not said, taken as under 15 degrees"));
}

/* Two levels in one job: the combinations take 0.7 S, and an allowable roof of 21 psf counts as 30 there: 100 sq ft of
 * each in the middle: (21/0.7 + 42) x 100 / 2 = 3,600 lb an end, 0.7 of it 2,520 = (21 + 29.4) x 100 / 2. */
static void two_levels(void **state)
{
    struct made made;
    under_snow(&made, *state, "30 psf");
    made_set(&made, "beam", "B1", "above", "load X, load Y");
    made_add(&made, "[area other]\ndead = 0 psf\nlive = 0 psf\nlive is = roof\nsnow = 60 psf\n"
                    "snow is = on the ground\nsnow level = strength\n"
                    "[load Y]\non = beam B1\nat = 51.5 in\narea = area other\ncarries = 100 sq ft\n"
                    "held by = shore S1\n");
    made_size(&made);
    assert_near(made.design->beams[0].end_lb[0].of[LOAD_SNOW], 3600, 1e-6);
    assert_true(basis_has(&made, "allowable level: x 1 in the combinations, set against their 0.7, = 21 psf"));
}

/* A load of 2,000 lb of snow in the middle, 1,000 lb an end.  At strength level the combinations take 0.7 of it (ASCE
 * 7-22 2.4.1), as allowable all of it: where an area beside it is at strength level, it counts as 2,000/0.7 there,
 * 1,428.6 lb an end, of which 0.7 is 1,000.  Not answered it is taken as allowable, and asked.  The area brings 0.7 x
 * 60 x 100 sq ft = 4,200 lb, 2,100 an end. */
static void own_snow_of_a_load(void **state)
{
    static const struct {
        const char *level, *area;
        double end_lb;
        const char *combination, *says;
    } cases[] = {
        {"allowable", "allowable", 3100, "D+S",
         "snow of load Y: 2000 lb, given by itself: on the roof, taken as it is; allowable level: x 1 in the "
         "combinations = 2000 lb"},
        {"strength", "allowable", 4000, "D+0.7S",
         "snow of load Y: 2000 lb, given by itself: on the roof, taken as it is; strength level: x 0.7 in the "
         "combinations (ASCE 7-22 2.4.1) = 1400 lb"},
        {"strength", "strength", 3100, "D+0.7S", "(ASCE 7-22 2.4.1) = 1400 lb"},
        {"allowable", "strength", 2100 + 1000 / 0.7, "D+0.7S",
         "snow of load Y: 2000 lb, given by itself: on the roof, taken as it is; allowable level: x 1 in the "
         "combinations, set against their 0.7, = 2000 lb"},
        {NULL, "strength", 2100 + 1000 / 0.7, "D+0.7S",
         "its level is not answered: x 1, the heavier reading, = 2000 lb"},
    };
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        struct made made;
        under_snow(&made, *state, "60 psf");
        made_set(&made, "beam", "B1", "above", "load X, load Y");
        made_set(&made, "area", "top", "snow level", cases[i].area);
        made_add(&made, "[load Y]\non = beam B1\nat = 51.5 in\nsnow = 2000 lb\nheld by = shore S1\n");
        if (cases[i].level)
            made_set(&made, "load", "Y", "snow level", cases[i].level);
        made_size(&made);
        assert_near(made.design->beams[0].end_lb[0].of[LOAD_SNOW], cases[i].end_lb, 1e-6);
        assert_true(basis_has(&made, cases[i].says));
        assert_true(made_says(&made, DIAG_Q005) == !cases[i].level);
        assert_string_equal(made_check(&made, "beam B1", "bending")->combination, cases[i].combination);
    }
}

/* A rafter tail that lands, and a load that grows along the beam: 700 lb at strength level; 60 to 120 plf over 48 in,
 * 360 lb, from 27.5 in to 75.5 in.  Both are in the stack as the job writes them, and the chain names both ends. */
static void own_snow_that_lands_or_grows(void **state)
{
    struct made made;
    under_snow(&made, *state, "0 psf");
    made_set(&made, "beam", "B1", "above", "load X, load Y");
    made_add(&made, "[load Y]\non = beam B1\nfrom = 27.5 in\nto = 75.5 in\nsnow = 60 plf\nsnow to = 120 plf\n"
                    "snow level = allowable\nheld by = shore S1\n"
                    "[obstruction tail]\nwhat = rafter tail\non = beam B1\nat = 51.5 in\nthen = lands on the beam\n"
                    "snow = 700 lb\nsnow level = strength\nseat = 3-1/2 in\nown prop = yes\n");
    made_size(&made);
    const struct beam_design *bd = &made.design->beams[0];
    assert_near(bd->end_lb[0].of[LOAD_SNOW] + bd->end_lb[1].of[LOAD_SNOW], 700 + 360 / 0.7, 1e-6);
    assert_true(basis_has(&made, "snow of load Y: 60 to 120 plf, given by itself"));
    assert_true(basis_has(&made, "set against their 0.7, = 60 to 120 plf"));
    assert_true(basis_has(&made, "snow of obstruction tail: 700 lb, given by itself"));
    assert_true(basis_has(&made, "= 490 lb"));
    assert_string_equal(made.design->standard, "ASCE 7-22");
}

/* IRC 2021 Table R802.5.2(1) rests on 10 psf dead and on 0.7 x Ct 1.1 of the ground snow.  5/12, 12 in, 50 psf, 24 ft:
 * w = 10 + 0.77 x 50 = 48.5, T = 48.5 x 1 x 24/(4 x 5/12) = 698.4 lb; with Z = 120 lb and CD 1.15 5.06 nails: the cell
 * says 6.  3/12, 30 psf, 12 ft: 33.1 x 12/(4 x 3/12) = 397.2 lb, 2.88: 3.  The 3/12 roof is under 15 degrees: its
 * least load, 20, is below 23.1. */
static void heel_joint_table(void **state)
{
    static const struct {
        const char *pitch, *pg, *span;
        double thrust;
        int nails;
    } cells[] = {{"5/12", "50 psf", "24 ft", 698.4, 6}, {"3/12", "30 psf", "12 ft", 397.2, 3}};
    for (size_t i = 0; i < 2; i++) {
        struct made made;
        under_snow(&made, *state, cells[i].pg);
        made_set(&made, "area", "top", "dead", "10 psf");
        made_set(&made, "roof", "", "frame", "ridge board");
        made_set(&made, "roof", "", "pitch", cells[i].pitch);
        made_set(&made, "roof", "", "span", cells[i].span);
        made_set(&made, "roof", "", "area", "area top");
        made_set(&made, "roof", "", "thermal factor", "1.1");
        made_set(&made, "joists", "north", "spacing", "12 in");
        made_set(&made, "joists", "north", "ties the roof", "yes");
        made_set(&made, "joists", "north", "tie strap", "STRAP-16GA-48");
        (void)sized(&made);
        const struct check *tie = made_check(&made, "joists north on beam B1, side A", "thrust tie");
        assert_string_equal(tie->combination, "D+S");
        assert_near(tie->demand, cells[i].thrust, 0.01);
        assert_int_equal(heel_joint_nails(tie->demand, 120, 1.15), cells[i].nails);
    }
}

static bool unchecked_has(const struct made *made, const char *part)
{
    return made_lists(made->design->unchecked, made->design->unchecked_count, part);
}

static void drifts(void **state)
{
    struct made made;
    under_snow(&made, *state, "30 psf");
    (void)sized(&made);
    assert_false(made_says(&made, DIAG_Q012));
    assert_true(basis_has(&made, "none, by the job: no valley"));
    assert_true(unchecked_has(&made, "unbalanced snow"));
    made_set(&made, "roof", "", "snow drifts", "yes");
    (void)sized(&made);
    assert_true(made_says(&made, DIAG_Q012));
    assert_true(unchecked_has(&made, "drifts or slides onto the roof: not answered"));
    made_set(&made, "roof", "", "snow engineer", "R. Ames, S2");
    (void)sized(&made);
    assert_false(made_says(&made, DIAG_Q012));
    assert_true(basis_has(&made, "by the engineer (R. Ames, S2)"));
    assert_false(unchecked_has(&made, "not answered"));
    under_snow(&made, *state, "0 psf");
    made_set(&made, "roof", "", "snow drifts", NULL);
    (void)sized(&made);
    assert_false(made_says(&made, DIAG_Q012));
    assert_false(basis_has(&made, "snow"));
}

/* Allowable snow under ASCE 7-22: the same factors, named by that edition. */
static void edition_of_the_job(void **state)
{
    struct made made;
    under_snow(&made, *state, "30 psf");
    (void)sized(&made);
    assert_string_equal(made.design->standard, "ASCE 7-16");
    assert_true(basis_has(&made, "combination D+S: ASCE 7-16 2.4.1 no. 3, CD 1.15"));
    made_set(&made, "job", "", "loads by", "ASCE 7-22");
    (void)sized(&made);
    assert_true(basis_has(&made, "combination D+S: ASCE 7-22 2.4.1 no. 3a, CD 1.15"));
    assert_true(basis_has(&made, "S at allowable level stands for the 0.7 S of ASCE 7-22"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(every_factor, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(strength_level, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(least_load_of_low_slopes, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(slope_of_the_flatter_side, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(two_levels, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(own_snow_of_a_load, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(own_snow_that_lands_or_grows, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(heel_joint_table, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(drifts, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(edition_of_the_job, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
