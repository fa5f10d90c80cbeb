/* Shear of ends that are cut and of loads that hang low, by hand from the formulas of NDS 2018 3.4.3.2 and 3.4.3.3. The
 * square of dn/d is the one part that was read (an answer of the standard's publisher on notches); no worked example of
 * the others was found, so these hold the formulas as remembered, worked apart from the program. */
#include <string.h>

#include "support.h"

#include "sawbill/notch.h"

/* 2x10 (1-1/2 x 9-1/4), Fv' 180, a quarter off the lower edge: whole 2/3 x 180 x 1.5 x 9.25 = 1,665 lb; 6.9375 left:
 * 1,248.75 x 0.75^2 = 702.42 lb, that is 0.75^3 of the whole. */
static void tension_face(void **state)
{
    (void)state;
    assert_near(notch_shear_below(180, 1.5, 9.25, 9.25), 1665, 1e-9);
    assert_near(notch_shear_below(180, 1.5, 9.25, 6.9375), 702.42, 0.005);
    assert_near(notch_shear_below(180, 1.5, 9.25, 6.9375), 1665 * 27.0 / 64, 1e-9);
    assert_near(notch_shear_below(180, 1.5, 9.25, 0), 0, 0);
    assert_near(notch_shear_below(180, 1.5, 9.25, -1), 0, 0);
}

/* 4-1/2 x 9-1/4, Fv' 180, 6 in left at the inner edge: 2/3 x 180 x 4.5 = 540 lb an inch of depth.  e = 2: 9.25 -
 * (3.25/6) x 2 = 8.1667 in: 4,410 lb.  e = dn = 6: 9.25 - 3.25 = 6 in: 3,240 lb, the same as dn by itself, beyond which
 * it stays. Nothing past the edge: the whole 4,995 lb. */
static void compression_face(void **state)
{
    (void)state;
    assert_near(notch_shear_above(180, 4.5, 9.25, 6, 2), 4410, 0.01);
    assert_near(notch_shear_above(180, 4.5, 9.25, 6, 6), 3240, 1e-9);
    assert_near(notch_shear_above(180, 4.5, 9.25, 6, 6.5), 3240, 1e-9);
    assert_near(notch_shear_above(180, 4.5, 9.25, 6, 0), 4995, 1e-9);
    assert_near(notch_shear_above(180, 4.5, 9.25, 9.25, 3), 4995, 1e-9);
    assert_near(notch_shear_above(180, 4.5, 9.25, 0, 3), 0, 0);
}

/* 4-1/2 x 11-1/4, Fv' 180, the highest nail 7 in above the lower edge: 2/3 x 180 x 4.5 x 7 = 3,780 lb; within 5 x 11.25
 * = 56.25 in of the end x (7/11.25)^2 = 0.38716: 1,463.5 lb. */
static void hung_low(void **state)
{
    (void)state;
    assert_near(hung_shear(180, 4.5, 11.25, 7, 56.25), 3780, 1e-9);
    assert_near(hung_shear(180, 4.5, 11.25, 7, 56.24), 1463.5, 0.05);
    assert_near(hung_shear(180, 4.5, 11.25, 0, 100), 0, 0);
}

/* Sawn: a quarter at an end (4.4.3; the same words in IRC R502.8.1), a slope without limit of its own.  Glulam: a tenth
 * and 3 in below, two fifths above, a slope of two thirds and three depths; composite: a tenth and two fifths (from
 * memory). */
static void limits(void **state)
{
    (void)state;
    assert_near(notch_limit(WOOD_SAWN, NOTCH_BELOW).part, 0.25, 0);
    assert_near(notch_limit(WOOD_SAWN, NOTCH_ABOVE).part, 0.25, 0);
    assert_null(notch_limit(WOOD_SAWN, NOTCH_SLOPE).clause);
    assert_near(notch_limit(WOOD_GLULAM, NOTCH_BELOW).part, 0.1, 0);
    assert_near(notch_limit(WOOD_GLULAM, NOTCH_BELOW).most_in, 3, 0);
    assert_near(notch_limit(WOOD_GLULAM, NOTCH_ABOVE).part, 0.4, 0);
    assert_near(notch_limit(WOOD_GLULAM, NOTCH_SLOPE).length_depths, 3, 0);
    assert_near(notch_limit(WOOD_LVL, NOTCH_BELOW).part, 0.1, 0);
    assert_near(notch_limit(WOOD_PSL, NOTCH_SLOPE).part, 0.4, 0);
    assert_non_null(strstr(notch_limit(WOOD_LSL, NOTCH_ABOVE).clause, "report governs"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(tension_face),
        cmocka_unit_test(compression_face),
        cmocka_unit_test(hung_low),
        cmocka_unit_test(limits),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
