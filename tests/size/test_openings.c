/* Openings in a field of joists, in whole jobs.  Every figure is worked by hand beside it, by statics (no
 * published example was found).  Double headers beyond 4 ft: IRC 2021 R502.10. */
#include "size/made_job.h"

/* The plain floor of 10 + 40 psf, joists of 12 ft at 8, 24, 40, 56, 72 and 88 in.  The joist at 24 in ends at 24-3/4 in
 * and is a ply of trimmer 1, that at 72 in begins at 71-1/4 in and is one of trimmer 2: 46-1/2 in clear, 3.875 ft.
 *
 * Headers, 2 - 2x10 at 3.30 plf a ply: 6.6 plf.  Near: half of 2 ft of tails, 50 x 1 + 6.6 = 56.6 plf, x 3.875/2 =
 * 109.66 lb to each trimmer.  Far: tails of 12 - 9 = 3 ft, 50 x 1.5 + 6.6 = 81.6 plf, 158.1 lb.
 * Trimmers: 3 in wide, their middles at 23.25 and 72.75 in.  Strip: from the inside face to 8 in (half of 16) beyond
 * the middle, 24.75 - 15.25 = 9.5 in: 50 x 9.5/12 + 6.6 = 46.183 plf.  Headers stand 24 - 1.5 = 22.5 in and 108 + 1.5 =
 * 109.5 in from the beam, of 144: on the beam 46.183 x 6 + 109.66 x 0.84375 + 158.1 x 0.23958 = 277.10 + 92.53 + 37.88
 * = 407.51 lb, on the far bearing 277.10 + 17.13 + 120.22 = 414.46 lb. */
static const char stair[] = "[opening stair]\njoists = joists north\nfrom = 24-3/4 in\nto = 71-1/4 in\nnear = 2 ft\n"
                            "far = 9 ft\nheader = DFL2-2X10\n";

static void with_stair(struct made *made, struct arena *arena)
{
    made_start(made, arena);
    made_set(made, "shore", "S1", "set back", "18 in");
    made_set(made, "beam", "B1", "more at hung beams", "1");
    made_add(made, stair);
}

static double total_of(const struct made *made, const char *from, const char *to)
{
    double sum = 0;
    for (size_t i = 0; i < made->design->path_count; i++)
        if (!strcmp(made->design->path[i].from, from) && !strcmp(made->design->path[i].to, to))
            sum += loads_total(&made->design->path[i].lb);
    return sum;
}

static void stair_by_hand(void **state)
{
    struct made made;
    with_stair(&made, *state);
    made_size(&made);
    const struct opening_design *od = &made.design->openings[0];
    assert_near(loads_total(&od->headers[0].end_lb), 109.6625, 1e-6);
    assert_near(od->headers[0].end_lb.of[LOAD_LIVE], 40 * 3.875 / 2, 1e-6);
    assert_near(loads_total(&od->headers[1].end_lb), 158.1, 1e-6);
    for (int k = 0; k < 2; k++) {
        assert_near(length_inches(od->trimmers[k].at), k ? 72.75 : 23.25, 0);
        assert_near(loads_total(&od->trimmers[k].beam_lb), 407.506, 1e-3);
        assert_near(loads_total(&od->trimmers[k].far_lb), 414.457, 1e-3);
        assert_true(od->trimmers[k].on_joist);
    }
    /* live alone: 40 x 9.5/12 x 6 + 77.5 x 0.84375 + 116.25 x 0.23958 = 190 + 65.39 + 27.85 */
    assert_near(od->trimmers[0].beam_lb.of[LOAD_LIVE], 283.242, 1e-3);
    assert_int_equal(od->interrupted, 2);
    assert_int_equal(made.design->beams[0].side[0]->count, 4); /* at 8, 40, 56 and 88 in: two are tails */
    assert_true(od->passes);
    assert_true(made.design->passes);
    assert_false(made_says(&made, DIAG_S004));
}

/* On the beam: joists 50 x 6 plf on 15.25 in and on 103 - 80.75 = 22.25 in: 937.5 lb; tails 50 plf on 46.5 in: 193.75
 * lb; the trimmers 2 x 407.506. */
static void what_the_beam_gets(void **state)
{
    struct made made;
    with_stair(&made, *state);
    made_size(&made);
    assert_near(total_of(&made, "joists north", "beam B1"), 937.5 + 193.75, 1e-6);
    assert_near(total_of(&made, "trimmer 1 of opening stair", "beam B1"), 407.506, 1e-3);
    assert_near(total_of(&made, "near header of opening stair", "trimmer 2 of opening stair"), 109.6625, 1e-6);
    assert_near(total_of(&made, "far header of opening stair", "trimmer 1 of opening stair"), 158.1, 1e-6);
    /* nothing is lost: the floor without the hole, 50 x (103 x 144 - 46.5 x 84)/144 = 3,793.75 lb, with the weight of
     * headers and trimmers, 2 x 6.6 x 3.875 + 2 x 6.6 x 12 = 209.55 lb; of it the far bearing takes half of the joists,
     * 937.5, the far tails' 75 x 3.875 = 290.63, and 2 x 414.457 lb */
    double beam =
        total_of(&made, "joists north", "beam B1") + 2 * total_of(&made, "trimmer 1 of opening stair", "beam B1");
    assert_near(beam + 937.5 + 290.625 + 2 * 414.457, 3793.75 + 209.55, 0.01);
    const struct beam_design *bd = &made.design->beams[0];
    double south = 250 * 103 / 12.0, own = 9.9 * 103 / 12;
    assert_near(loads_total(&bd->end_lb[0]) + loads_total(&bd->end_lb[1]), beam + south + own, 0.01);
}

/* Far header, 2 - 2x10: M = 81.6/12 x 46.5^2/8 = 1,837.9 in-lb, S = 42.78 in3: 42.96 psi of 900 x CF 1.1 = 990; V =
 * 158.1 lb: 1.5 x 158.1/27.75 = 8.55 psi of 180.
 * Trimmer: w = 3.8486 lb/in; no shear at (407.51 - 109.66)/3.8486 = 77.39 in; M = 407.51 x 77.39 - 3.8486 x 77.39^2/2 -
 * 109.66 x 54.89 = 13,992 in-lb: 327.1 psi.  V at the far end 414.46: 22.40 psi.  Live sag in the middle, E I = 1.6e6 x
 * 197.86: 5 x 2.6389 x 144^4/384 + 77.5 x 22.5 x (3 x 144^2 - 4 x 22.5^2)/48 + 116.25 x 34.5 x (3 x 144^2 - 4 x 34.5^2)
 * /48 = 2.1761e7 lb in3: 0.0687 in of 144/360 = 0.4. */
static void members_by_hand(void **state)
{
    struct made made;
    with_stair(&made, *state);
    made_size(&made);
    const char *header = "far header of opening stair", *trimmer = "trimmer 1 of opening stair";
    assert_near(made_check(&made, header, "bending")->demand, 42.96, 0.01);
    assert_near(made_check(&made, header, "bending")->capacity, 990, 1e-6);
    assert_near(made_check(&made, header, "shear")->demand, 8.546, 0.001);
    assert_near(made_check(&made, header, "shear")->capacity, 180, 1e-9);
    assert_near(made_check(&made, trimmer, "bending")->demand, 327.07, 0.05);
    assert_near(made_check(&made, trimmer, "bending")->at_in, 77.39, 0.01);
    assert_near(made_check(&made, trimmer, "shear")->demand, 22.40, 0.01);
    assert_near(made_check(&made, trimmer, "live deflection")->demand, 0.0687, 0.0003);
    assert_near(made_check(&made, trimmer, "live deflection")->capacity, 0.4, 1e-9);
}

/* The header brings 158.1 lb to its hanger, a far tail 50 x 1.5 x 4/3 = 100 lb, the trimmer 407.5 lb to the beam.  All
 * three fit by size: 3 in wide on 3 in, 1-1/2 in on 3 in, 3 in on 4-1/2 in.
 *
 * Plies of the beam within 12 in of trimmer 1, 11.25 to 35.25 in: two thirds of 407.5 = 271.7 lb cross joint 2 ... and
 * of the joists: side A has 4 in at 300 plf and 10.5 in of tails at 50 plf, in the mean 71.875 plf, a fifth of it dead;
 * side B 250 plf.  Live on B only: 250 x 2/3 - 14.375/3 = 161.875 plf x 2 ft = 323.75 lb: 595.4 lb.  The pattern has 4
 * nails x 140.9 from face B, and one more: 704.5 lb. */
static void hangers_and_plies(void **state)
{
    struct made made;
    with_stair(&made, *state);
    made_size(&made);
    assert_near(made_check(&made, "far header of opening stair", "hanger of the header on its trimmer")->demand, 158.1,
                1e-6);
    assert_near(made_check(&made, "far header of opening stair", "hanger of a tail joist")->demand, 100, 1e-6);
    assert_near(made_check(&made, "trimmer 2 of opening stair", "hanger of the trimmer on the beam")->demand, 407.506,
                1e-3);
    const struct check *plies = made_check(&made, "beam B1", "ply fastening under trimmer 1 of opening stair");
    assert_near(plies->demand, 2 / 3.0 * 407.506 + 323.75, 0.01);
    assert_near(plies->capacity, 704.5, 0.5);
    assert_near(plies->at_in, 23.25, 1e-9);
}

/* It starts at the beam: no near header, nothing hangs between the trimmers; through to the far bearing: none at all.
 */
static void open_at_the_beam(void **state)
{
    struct made made;
    with_stair(&made, *state);
    made_set(&made, "opening", "stair", "near", "0");
    made_size(&made);
    const struct opening_design *od = &made.design->openings[0];
    assert_false(od->headers[0].is);
    assert_int_equal(made.design->beams[0].side[0]->count, 2); /* 8 and 88 in */
    /* 277.10 + 37.88 */
    assert_near(loads_total(&od->trimmers[1].beam_lb), 314.978, 1e-3);
    assert_near(total_of(&made, "joists north", "beam B1"), 937.5, 1e-6);
    made_set(&made, "opening", "stair", "far", "12 ft");
    made_size(&made);
    od = &made.design->openings[0];
    assert_near(loads_total(&od->trimmers[1].beam_lb), 277.1, 1e-6);
    assert_near(loads_total(&od->trimmers[1].far_lb), 277.1, 1e-6);
}

/* Beyond 4 ft: to = 72-3/4 in is 48 in, still single; the joist at 72 in would stop there.  At 87-1/4 in, 62.5 in
 * clear, a single header is not enough: 2 plies wanted, 1 there. */
static void single_header(void **state)
{
    struct made made;
    with_stair(&made, *state);
    made_set(&made, "opening", "stair", "header plies", "1");
    made_set(&made, "opening", "stair", "trimmer", "DFL2-2X10");
    made_size(&made);
    assert_near(made_check(&made, "near header of opening stair", "plies")->ratio, 1, 1e-9);
    /* headers hang 2 ft and 3 ft from the trimmer's bearings: it could be single */
    assert_near(made_check(&made, "trimmer 1 of opening stair", "plies")->ratio, 0.5, 1e-9);
    made_set(&made, "opening", "stair", "to", "87-1/4 in");
    made_size(&made);
    assert_int_equal(made.design->openings[0].interrupted, 3);
    assert_near(made_check(&made, "near header of opening stair", "plies")->ratio, 2, 1e-9);
    assert_false(made.design->openings[0].passes);
    assert_true(made_says(&made, DIAG_S002));
}

/* On a dropped beam the trimmers lie on top: 407.5/(3 x 4.5) = 30.2 psi of 625. */
static void dropped_and_existing(void **state)
{
    struct made made;
    with_stair(&made, *state);
    made_set(&made, "beam", "B1", "set", "dropped");
    made_set(&made, "opening", "stair", "status", "existing");
    made_size(&made);
    const struct check *bearing = made_check(&made, "trimmer 1 of opening stair", "bearing on the beam");
    assert_near(bearing->demand, 407.506 / 13.5, 0.001);
    assert_near(bearing->capacity, 625, 1e-9);
    assert_null(made.design->openings[0].trimmers[0].hanger);
    assert_null(made.design->openings[0].headers[1].hanger);
    assert_true(made_lists(made.design->unchecked, made.design->unchecked_count, "old headers and tails"));
}

/* The shore 18 in from the beam holds the trimmers' tips.  Of the headers, moments about the far bearing: 109.66 x
 * (144 - 22.5)/126 + 158.1 x (144 - 109.5)/126 = 105.75 + 43.29 = 149.0 lb more on one stud than 50 x 6 x 12/10.5 x
 * 16/12 = 457.1 lb. Beyond the near header nothing holds the tails. */
static void shore_under_the_trimmer(void **state)
{
    struct made made;
    with_stair(&made, *state);
    made_size(&made);
    assert_near(made.design->shores[0].stud_lb, 457.14 + 149.03, 0.05);
    made_set(&made, "shore", "S1", "set back", "2 ft");
    made_size(&made);
    assert_true(made_says(&made, DIAG_S004));
}

static bool says(const struct made *made, enum diag_code code, const char *part)
{
    for (size_t i = 0; i < made->diags.count; i++)
        if (made->diags.item[i].code == code && strstr(made->diags.item[i].text, part))
            return true;
    return false;
}

static void faults(void **state)
{
    static const struct {
        const char *key, *value, *part;
    } cases[] = {
        {"to", "39 in", "stops no joist"}, /* between the joists at 24 and 40 in */
        {"from", "1 in", "finds no beam"}, /* its trimmer would lie at -1/2 in */
        {"to", "103 in", "finds no beam"}, {"near", "2 in", "no room"}, {"far", "143 in", "no room"},
    };
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        struct made made;
        with_stair(&made, *state);
        made_set(&made, "opening", "stair", cases[i].key, cases[i].value);
        made_size(&made);
        if (!says(&made, DIAG_S006, cases[i].part)) {
            made_show(&made);
            fail_msg("%s = %s", cases[i].key, cases[i].value);
        }
    }
    struct made made;
    with_stair(&made, *state);
    made_add(&made, "[opening hatch]\njoists = joists north\nfrom = 80 in\nto = 90 in\nnear = 2 ft\nfar = 4 ft\n"
                    "header = DFL2-2X10\n");
    made_size(&made);
    assert_true(says(&made, DIAG_S006, "share a trimmer"));
}

/* Wet: Fv x 0.97 = 174.6 (NDS Supplement Table 4A), E x 0.9, so that 0.0687 in of sag are 0.0763; Fb CF = 990, no more
 * than 1,150: CM 1.0.  Incised, Table 4.3.8 from memory: Fb x 0.8 = 792, Fv 174.6 x 0.8 = 139.7.  Wet joists make wet
 * headers, unless the opening says that it is dry. */
static void wet_and_incised(void **state)
{
    const char *header = "far header of opening stair", *trimmer = "trimmer 1 of opening stair";
    for (int own = 0; own < 2; own++) {
        struct made made;
        with_stair(&made, *state);
        made_set(&made, own ? "opening" : "joists", own ? "stair" : "north", "moisture in service", "wet");
        made_size(&made);
        assert_near(made_check(&made, header, "bending")->capacity, 990, 1e-6);
        assert_near(made_check(&made, header, "shear")->capacity, 174.6, 1e-6);
        assert_near(made_check(&made, trimmer, "live deflection")->demand, 0.0763, 0.0003);
        assert_non_null(strstr(made_check(&made, header, "bending")->note, "CM Ct Ci"));
        assert_true(made_lists(made.design->unchecked, made.design->unchecked_count,
                               "not checked: hangers at headers and trimmers of opening stair in their service"));
        made_set(&made, "opening", "stair", "incised", "yes");
        made_size(&made);
        assert_near(made_check(&made, header, "bending")->capacity, 792, 1e-6);
        assert_near(made_check(&made, header, "shear")->capacity, 139.68, 1e-6);
        assert_true(made_member(&made, header)->unverified);
    }
    struct made made;
    with_stair(&made, *state);
    made_set(&made, "joists", "north", "moisture in service", "wet");
    made_set(&made, "opening", "stair", "moisture in service", "dry");
    made_size(&made);
    assert_near(made_check(&made, header, "shear")->capacity, 180, 1e-6);
}

/* Composite lumber has no wet values (NDS 8.1.4): asked, until an engineer answers. */
static void wet_composite_header(void **state)
{
    for (int named = 0; named < 2; named++) {
        struct made made;
        with_stair(&made, *state);
        made_set(&made, "opening", "stair", "header", "LVL-9.25");
        made_set(&made, "opening", "stair", "trimmer", "DFL2-2X10");
        made_set(&made, "opening", "stair", "moisture in service", "wet");
        if (named)
            made_set(&made, "opening", "stair", "engineer", "R. Ames, PE, sheet S2");
        made_size(&made);
        assert_int_equal(made_says(&made, DIAG_S010), !named);
    }
}

/* The joist at 24 in is a ply of trimmer 1: sawn beside LVL, or 9-1/4 in beside 11-1/4 in, is an engineer's; where no
 * joist stands both plies are new.  The refusal is common practice, no source. */
static void mixed_plies(void **state)
{
    static const struct {
        const char *trimmer, *from, *to;
        bool asks;
    } cases[] = {{"LVL-9.25", "24-3/4 in", "71-1/4 in", true},
                 {"DFL2-2X12", "24-3/4 in", "71-1/4 in", true},
                 {"DFL2-2X10", "24-3/4 in", "71-1/4 in", false},
                 {"LVL-9.25", "29 in", "67 in", false}};
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++)
        for (int named = 0; named < 2; named++) {
            struct made made;
            with_stair(&made, *state);
            made_set(&made, "opening", "stair", "from", cases[i].from);
            made_set(&made, "opening", "stair", "to", cases[i].to);
            made_set(&made, "opening", "stair", "trimmer", cases[i].trimmer);
            if (named)
                made_set(&made, "opening", "stair", "engineer", "R. Ames, PE, sheet S2");
            made_size(&made);
            assert_int_equal(says(&made, DIAG_S005, "trimmer 1 of opening stair joins a joist 9-1/4\" deep"),
                             cases[i].asks && !named);
        }
    struct made made;
    with_stair(&made, *state);
    made_size(&made);
    assert_true(made_lists(made.design->unchecked, made.design->unchecked_count,
                           "not checked: the old joist in trimmer 2 of opening stair"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(stair_by_hand, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(what_the_beam_gets, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(members_by_hand, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(hangers_and_plies, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(open_at_the_beam, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(single_header, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(dropped_and_existing, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(shore_under_the_trimmer, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(wet_and_incised, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(mixed_plies, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(wet_composite_header, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(faults, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
