/* Code tables and small rules of the sizing stage. */
#include "support.h"

#include "sawbill/design.h"
#include "sawbill/wood.h"
#include "size/wood_rows.h"

/* NDS 2018 Table 2.3.2. */
static void load_duration(void **state)
{
    (void)state;
    assert_near(wood_cd(DURATION_PERMANENT), 0.9, 0);
    assert_near(wood_cd(DURATION_TEN_YEARS), 1.0, 0);
    assert_near(wood_cd(DURATION_TWO_MONTHS), 1.15, 0);
    assert_near(wood_cd(DURATION_SEVEN_DAYS), 1.25, 0);
    assert_near(wood_cd_of_days(7), 1.25, 0);
    assert_near(wood_cd_of_days(8), 1.15, 0);
    assert_near(wood_cd_of_days(60), 1.15, 0);
    assert_near(wood_cd_of_days(61), 1.0, 0);
    assert_near(wood_cd_of_days(0), 1.0, 0); /* not said */
}

/* NDS 2018 Supplement Table 4A, size factors: nominal depth, Fb 2 in thick, Fb 4 in thick, Ft, Fc. */
static void size_factors(void **state)
{
    (void)state;
    static const struct {
        double depth, fb, fb_4, ft, fc;
    } row[] = {{3.5, 1.5, 1.5, 1.5, 1.15}, {5.5, 1.3, 1.3, 1.3, 1.1},   {7.25, 1.2, 1.3, 1.2, 1.05},
               {9.25, 1.1, 1.2, 1.1, 1.0}, {11.25, 1.0, 1.1, 1.0, 1.0}, {13.25, 0.9, 1.0, 0.9, 0.9}};
    for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
        struct wood_size_factor two = wood_cf(&dfl_2, 1.5, row[i].depth), four = wood_cf(&dfl_2, 3.5, row[i].depth);
        assert_near(two.fb, row[i].fb, 0);
        assert_near(four.fb, row[i].fb_4, 0);
        assert_near(two.ft, row[i].ft, 0);
        assert_near(two.fc, row[i].fc, 0);
    }
    assert_near(wood_cf(&spf_stud, 1.5, 3.5).fb, 1.1, 0);
    assert_near(wood_cf(&spf_stud, 1.5, 3.5).fc, 1.05, 0);
    assert_near(wood_cf(&spf_stud, 1.5, 5.5).fb, 1.0, 0);
    assert_near(wood_cf(&spf_stud, 1.5, 7.25).fb, 0, 0); /* not a stud any more */
}

/* NDS 2018 Supplement Table 4B: the size effect stands in the values; only 4 in thick and deeper than 12 in differ
 * (from memory). */
static void southern_pine(void **state)
{
    (void)state;
    struct design_row row = {.table = "4B", .species = "Southern Pine", .grade = "No.2", .fb = 800};
    assert_near(wood_cf(&row, 1.5, 9.25).fb, 1.0, 0);
    assert_near(wood_cf(&row, 3.5, 9.25).fb, 1.1, 1e-12);
    assert_near(wood_cf(&row, 1.5, 13.25).fb, 0.9, 1e-12);
    assert_near(wood_cv(18, 13.5, 6.75, 20), pow(0.97638, 0.5), 2e-5); /* x = 20 is the root of x = 10 */
}

/* NDS 2018 Table 3.3.3: three ranges of "loading not listed", each with a number at hand: d = 10. */
static void effective_lengths(void **state)
{
    (void)state;
    assert_near(wood_le(LE_NOT_LISTED, 60, 10), 2.06 * 60, 1e-9);
    assert_near(wood_le(LE_NOT_LISTED, 100, 10), 1.63 * 100 + 30, 1e-9);
    assert_near(wood_le(LE_NOT_LISTED, 150, 10), 1.84 * 150, 1e-9);
    assert_near(wood_le(LE_SPAN_UNIFORM, 150, 10), 1.63 * 150 + 30, 1e-9);
    assert_near(wood_le(LE_CANTILEVER_UNIFORM, 60, 10), 1.33 * 60, 1e-9);
}

/* An upset beam by hand: 3-2x10 Douglas Fir-Larch No.2, 12 ft, top edge free, CD 1.15 (NDS 2018 3.3.3).
 * One ply: le = 1.63 x 144 + 3 x 9.25 = 262.5, RB^2 = 262.5 x 9.25/2.25 = 1079, FbE = 1.2 x 580,000/1079 = 645,
 * Fb* = 900 x 1.1 x 1.15 = 1138.5, a = 0.5665, CL = 0.82448 - sqrt(0.67977 - 0.59632) = 0.536.
 * As if solid 4-1/2 in: RB^2 = 119.9, a = 5.099, CL = 3.2099 - sqrt(10.3037 - 5.3671) = 0.988. */
static void upset_beam_by_hand(void **state)
{
    (void)state;
    struct wood_piece piece = {.row = &dfl_2, .wood = WOOD_SAWN, .ply_in = 1.5, .depth_in = 9.25, .plies = 3};
    assert_near(wood_bending(&piece, 1.15, 1.0, 144, LE_SPAN_UNIFORM, 144).cl, 0.536, 0.001);
    piece.ply_in = 4.5;
    piece.plies = 1;
    double le = wood_le(LE_SPAN_UNIFORM, 144, 9.25);
    assert_near(wood_cl(wood_rb(le, 9.25, 4.5), 580000, 1138.5), 0.988, 0.001);
}

/* The same without the 1.15: Fb* = 900 x 1.1 = 990, a = 645.0/990 = 0.6515, CL = 0.8692 - sqrt(0.7556 - 0.6858)
 * = 0.605. */
static void upset_beam_under_floor_load(void **state)
{
    (void)state;
    struct wood_piece piece = {.row = &dfl_2, .wood = WOOD_SAWN, .ply_in = 1.5, .depth_in = 9.25, .plies = 3};
    assert_near(wood_bending(&piece, 1.0, 1.0, 144, LE_SPAN_UNIFORM, 144).cl, 0.605, 0.001);
}

/* NDS 2018 4.3.9: three members or more; 1.15 at most; 8.3.7: 1.04 for composite lumber. */
static void repetitive_factor(void **state)
{
    (void)state;
    struct wood_piece piece = {.row = &dfl_2, .wood = WOOD_SAWN, .ply_in = 1.5, .depth_in = 9.25, .plies = 2};
    assert_near(wood_cr(&piece, 1.15), 1.0, 0);
    piece.plies = 3;
    assert_near(wood_cr(&piece, 1.15), 1.15, 0);
    piece.wood = WOOD_LVL;
    assert_near(wood_cr(&piece, 1.15), 1.04, 0);
}

/* NDS 2018 3.3.3.7: RB beyond 50 is not allowed: 1.5 x 11.25 at 30 ft, RB = sqrt(le d)/b = 56. */
static void too_slender_beam(void **state)
{
    (void)state;
    struct wood_piece piece = {.row = &dfl_2, .wood = WOOD_SAWN, .ply_in = 1.5, .depth_in = 11.25, .plies = 1};
    assert_near(wood_bending(&piece, 1.0, 1.0, 360, LE_SPAN_UNIFORM, 360).fb, 0, 0);
}

static void ratios_round_up(void **state)
{
    assert_string_equal(ratio_text(*state, 1.004), "1.01");
    assert_string_equal(ratio_text(*state, 1.0), "1.00");
    assert_string_equal(ratio_text(*state, 0.1 + 0.2 + 0.7), "1.00"); /* 1 with the dust of binary fractions */
    assert_string_equal(ratio_text(*state, 1 + 1e-7), "1.01");
    assert_string_equal(ratio_text(*state, 0.991), "1.00");
    assert_string_equal(ratio_text(*state, 0.07), "0.07");
    assert_string_equal(ratio_text(*state, 0), "0.00");
    assert_string_equal(ratio_text(*state, INFINITY), "no capacity");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(load_duration),
        cmocka_unit_test(size_factors),
        cmocka_unit_test(southern_pine),
        cmocka_unit_test(effective_lengths),
        cmocka_unit_test(upset_beam_by_hand),
        cmocka_unit_test(upset_beam_under_floor_load),
        cmocka_unit_test(repetitive_factor),
        cmocka_unit_test(too_slender_beam),
        cmocka_unit_test_setup_teardown(ratios_round_up, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
