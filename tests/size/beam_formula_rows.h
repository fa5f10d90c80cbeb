/* Beam formulas and their figures: the rows that test_spans.c runs.
 *
 * Source of every case but one: American Wood Council, Design Aid 6, Beam Formulas with Shear and Moment Diagrams
 * (2007), from memory: run and counted apart.  Two unequal spans: the formula page "Two Span Continuous Beam - Unequal
 * Spans, Uniformly Distributed Load" of piping-designer.com, read; its R3 is printed with the other span's w a/2, a
 * misprint by statics.  The figures were worked out from the formulas elsewhere, six digits, and confirmed by a
 * finite-element run.  Beams with fixed ends are not among them: nothing here is built in. */
#ifndef SAWBILL_TESTS_BEAM_FORMULA_ROWS_H
#define SAWBILL_TESTS_BEAM_FORMULA_ROWS_H

#include <math.h>

#include "sawbill/beam.h"

static const double row_ei = 1.58288e8; /* lb in2: 1.6e6 psi x 98.93 in4 */

enum { CASE_SUPPORTS = 4, CASE_LOADS = 2 };
struct formula_case {
    const char *name;
    double length, support[CASE_SUPPORTS];
    size_t supports;
    struct beam_load load[CASE_LOADS];
    size_t loads;
    bool from_memory;
};
#define LINE(from, to, w)                                                                                              \
    {                                                                                                                  \
        .from_in = (from), .to_in = (to), .amount = { {(w), 0, 0, 0} }                                                 \
    }
#define RISING(from, to, w, w_to)                                                                                      \
    {                                                                                                                  \
        .from_in = (from), .to_in = (to), .amount = {{(w), 0, 0, 0}}, .tapers = true, .amount_to = {                   \
            {(w_to), 0, 0, 0}                                                                                          \
        }                                                                                                              \
    }
#define POINT(at, p)                                                                                                   \
    {                                                                                                                  \
        .point = true, .from_in = (at), .to_in = (at), .amount = { {(p), 0, 0, 0} }                                    \
    }
/* L = 144 in, w = 50 lb/in, P = 2000 lb */
static const struct formula_case formula_cases[] = {
    {"simple span, uniform load", 144, {0, 144}, 2, {LINE(0, 144, 50)}, 1, true},
    {"simple span, uniform load on part", 144, {0, 144}, 2, {LINE(24, 84, 50)}, 1, true},
    {"simple span, uniform load over one end", 144, {0, 144}, 2, {LINE(0, 60, 50)}, 1, true},
    {"simple span, load rising to one end", 144, {0, 144}, 2, {RISING(0, 144, 0, 50)}, 1, true},
    {"simple span, load rising to center", 144, {0, 144}, 2, {RISING(0, 72, 0, 50), RISING(72, 144, 50, 0)}, 2, true},
    {"simple span, point load at center", 144, {0, 144}, 2, {POINT(72, 2000)}, 1, true},
    {"simple span, point load anywhere", 144, {0, 144}, 2, {POINT(96, 2000)}, 1, true},
    {"simple span, two equal loads, symmetric", 144, {0, 144}, 2, {POINT(48, 2000), POINT(96, 2000)}, 2, true},
    {"overhang one side, uniform over all", 180, {0, 144}, 2, {LINE(0, 180, 50)}, 1, true},
    {"overhang, uniform on overhang only", 180, {0, 144}, 2, {LINE(144, 180, 50)}, 1, true},
    {"overhang, point load at free end", 180, {0, 144}, 2, {POINT(180, 2000)}, 1, true},
    {"two equal spans, uniform on both", 288, {0, 144, 288}, 3, {LINE(0, 288, 50)}, 1, true},
    {"two equal spans, uniform on one", 288, {0, 144, 288}, 3, {LINE(0, 144, 50)}, 1, true},
    {"two unequal spans, uniform on both", 240, {0, 144, 240}, 3, {LINE(0, 240, 50)}, 1, false},
    {"three equal spans, uniform on all", 432, {0, 144, 288, 432}, 4, {LINE(0, 432, 50)}, 1, true},
    {"three equal spans, uniform on two adjacent", 432, {0, 144, 288, 432}, 4, {LINE(0, 288, 50)}, 1, true},
    {"three equal spans, uniform on end spans",
     432,
     {0, 144, 288, 432},
     4,
     {LINE(0, 144, 50), LINE(288, 432, 50)},
     2,
     true},
    {"equal overhangs both sides, uniform over all", 204, {30, 174}, 2, {LINE(0, 204, 50)}, 1, true},
};

enum {
    REACTION = 1, /* of support `which` */
    SHEAR = 2,    /* greatest, without sign */
    MOMENT = 4,   /* greatest sagging in span `which`, at `place` */
    SAG = 8,      /* greatest in span `which`, at `place` */
    MOMENT_AT = 16,
    SAG_AT = 32, /* at `which` */
    BOTH = 64,   /* and the same in the support that mirrors it */
    IS_SHEAR = 128
};
struct formula_row {
    size_t of; /* index into formula_cases */
    const char *quantity, *formula;
    int what;
    double which, want, tolerance, place; /* lb, in-lb, in; tolerance relative; place NAN: not given */
};
#define SIX_DIGITS 6e-6 /* half a unit of the sixth digit of 1.00000, and a little */
/* Coefficients rounded in print: 0.01304 (5e-4), 185 for 184.6 (3e-3), 0.0069 (5e-3); all others are exact. */
static const struct formula_row formula_rows[] = {
    {0, "R1=R2=V", "w L/2", REACTION | BOTH | IS_SHEAR, 0, 3600, SIX_DIGITS, NAN},
    {0, "Mmax (midspan)", "w L^2/8", MOMENT, 1, 129600, SIX_DIGITS, 72},
    {0, "deflection max", "5 w L^4/(384 E I)", SAG, 1, 1.76852, SIX_DIGITS, 72},
    {1, "R1", "w b (2c+b)/(2L)", REACTION, 0, 1875, SIX_DIGITS, NAN},
    {1, "R2", "w b (2a+b)/(2L)", REACTION, 1, 1125, SIX_DIGITS, NAN},
    {1, "Mmax at x=a+R1/w", "R1 (a + R1/(2w))", MOMENT, 1, 80156.2, SIX_DIGITS, 24 + 37.5},
    {2, "R1=Vmax", "w a (2L-a)/(2L)", REACTION | IS_SHEAR, 0, 2375, SIX_DIGITS, NAN},
    {2, "R2", "w a^2/(2L)", REACTION, 1, 625, SIX_DIGITS, NAN},
    {2, "Mmax at x=R1/w", "R1^2/(2w)", MOMENT, 1, 56406.2, SIX_DIGITS, 47.5},
    {2, "deflection at x<a", "w x (a^2(2L-a)^2 - 2 a x^2 (2L-a) + L x^3)/(24 E I L)", SAG_AT, 48, 0.614343, SIX_DIGITS,
     NAN},
    {3, "R1 (light end)", "W/3", REACTION, 0, 1200, SIX_DIGITS, NAN},
    {3, "R2 (heavy end)", "2W/3", REACTION, 1, 2400, SIX_DIGITS, NAN},
    {3, "Mmax at x=L/sqrt(3)", "2 W L/(9 sqrt 3) = 0.1283 W L", MOMENT, 1, 66510.8, SIX_DIGITS, 83.13844},
    {3, "deflection max at x=0.5193 L", "0.01304 W L^3/(E I)", SAG, 1, 0.885563, 5e-4, NAN},
    {4, "R1=R2=V", "W/2", REACTION | BOTH | IS_SHEAR, 0, 1800, SIX_DIGITS, NAN},
    {4, "Mmax", "W L/6", MOMENT, 1, 86400, SIX_DIGITS, 72},
    {4, "deflection max", "W L^3/(60 E I)", SAG, 1, 1.13185, SIX_DIGITS, 72},
    {5, "Mmax", "P L/4", MOMENT, 1, 72000, SIX_DIGITS, 72},
    {5, "deflection max", "P L^3/(48 E I)", SAG, 1, 0.78601, SIX_DIGITS, 72},
    {6, "R1", "P b/L", REACTION, 0, 666.667, SIX_DIGITS, NAN},
    {6, "R2", "P a/L", REACTION, 1, 1333.33, SIX_DIGITS, NAN},
    {6, "Mmax under load", "P a b/L", MOMENT, 1, 64000, SIX_DIGITS, 96},
    {6, "deflection max (a>b) at x=sqrt(a(a+2b)/3)", "P a b (a+2b) sqrt(3 a (a+2b))/(27 E I L)", SAG, 1, 0.676108,
     SIX_DIGITS, 78.38367},
    {6, "deflection under load", "P a^2 b^2/(3 E I L)", SAG_AT, 96, 0.621045, SIX_DIGITS, NAN},
    {7, "Mmax between loads", "P a", MOMENT, 1, 96000, SIX_DIGITS, NAN},
    {7, "deflection at center", "P a (3L^2-4a^2)/(24 E I)", SAG_AT, 72, 1.33913, SIX_DIGITS, NAN},
    {8, "R1", "w (L^2-a^2)/(2L)", REACTION, 0, 3375, SIX_DIGITS, NAN},
    {8, "R2", "w (L+a)^2/(2L)", REACTION, 1, 5625, SIX_DIGITS, NAN},
    {8, "M1 at x=(L/2)(1-a^2/L^2)", "w (L+a)^2 (L-a)^2/(8L^2)", MOMENT, 1, 113906, SIX_DIGITS, 67.5},
    {8, "M2 at R2", "-w a^2/2", MOMENT_AT, 144, -32400, SIX_DIGITS, NAN},
    {8, "deflection at free end", "w x1 (4 a^2 L - L^3 + 6 a^2 x1 - 4 a x1^2 + x1^3)/(24 E I), x1=a", SAG_AT, 180,
     -0.994794, SIX_DIGITS, NAN},
    {9, "R1 (uplift negative)", "-w a^2/(2L)", REACTION, 0, -225, SIX_DIGITS, NAN},
    {9, "R2", "w a (2L+a)/(2L)", REACTION, 1, 2025, SIX_DIGITS, NAN},
    {9, "deflection at free end", "w a^3 (4L+3a)/(24 E I)", SAG_AT, 180, 0.420024, SIX_DIGITS, NAN},
    {10, "R1 (uplift negative)", "-P a/L", REACTION, 0, -500, SIX_DIGITS, NAN},
    {10, "R2", "P (L+a)/L", REACTION, 1, 2500, SIX_DIGITS, NAN},
    {10, "deflection at free end", "P a^2 (L+a)/(3 E I)", SAG_AT, 180, 0.982513, SIX_DIGITS, NAN},
    {11, "R1=R3", "3 w L/8", REACTION | BOTH, 0, 2700, SIX_DIGITS, NAN},
    {11, "R2", "10 w L/8", REACTION, 1, 9000, SIX_DIGITS, NAN},
    {11, "Vmax (each side of R2)", "5 w L/8", SHEAR, 0, 4500, SIX_DIGITS, NAN},
    {11, "M at center support", "-w L^2/8", MOMENT_AT, 144, -129600, SIX_DIGITS, NAN},
    {11, "M max in span at 3L/8", "9 w L^2/128", MOMENT, 1, 72900, SIX_DIGITS, 54},
    {11, "deflection max at 0.4215 L", "w L^4/(185 E I)", SAG, 1, 0.734176, 3e-3, NAN},
    {12, "R1", "7 w L/16", REACTION, 0, 3150, SIX_DIGITS, NAN},
    {12, "R2", "5 w L/8", REACTION, 1, 4500, SIX_DIGITS, NAN},
    {12, "R3 (uplift)", "-w L/16", REACTION, 2, -450, SIX_DIGITS, NAN},
    {12, "M max in loaded span at 7L/16", "49 w L^2/512", MOMENT, 1, 99225, SIX_DIGITS, 63},
    {12, "M at R2", "-w L^2/16", MOMENT_AT, 144, -64800, SIX_DIGITS, NAN},
    {13, "M at middle support", "-w (a^3+b^3)/(8(a+b))", MOMENT_AT, 144, -100800, SIX_DIGITS, NAN},
    {13, "R1", "w a/2 - M1/a", REACTION, 0, 2900, SIX_DIGITS, NAN},
    {13, "R3", "w b/2 - M1/b", REACTION, 2, 1350, SIX_DIGITS, NAN},
    {13, "R2", "w a + w b - R1 - R3", REACTION, 1, 7750, SIX_DIGITS, NAN},
    {14, "R1=R4", "0.4 w L", REACTION | BOTH, 0, 2880, SIX_DIGITS, NAN},
    {14, "R2=R3", "1.1 w L", REACTION | BOTH, 1, 7920, SIX_DIGITS, NAN},
    {14, "Vmax (outer side of R2)", "0.6 w L", SHEAR, 0, 4320, SIX_DIGITS, NAN},
    {14, "M at inner supports", "-0.1 w L^2", MOMENT_AT, 144, -103680, SIX_DIGITS, NAN},
    {14, "M max end span at 0.4L", "0.08 w L^2", MOMENT, 1, 82944, SIX_DIGITS, 57.6},
    {14, "M mid of center span", "0.025 w L^2", MOMENT_AT, 216, 25920, SIX_DIGITS, NAN},
    {14, "deflection max end span at 0.446 L", "0.0069 w L^4/(E I)", SAG, 1, 0.937176, 5e-3, NAN},
    {15, "R1", "0.383 w L", REACTION, 0, 2760, SIX_DIGITS, NAN},
    {15, "R2", "1.20 w L", REACTION, 1, 8640, SIX_DIGITS, NAN},
    {15, "R3", "0.450 w L", REACTION, 2, 3240, SIX_DIGITS, NAN},
    {15, "R4 (uplift)", "-0.0333 w L", REACTION, 3, -240, SIX_DIGITS, NAN},
    {15, "M at R2", "-0.1167 w L^2", MOMENT_AT, 144, -120960, SIX_DIGITS, NAN},
    {16, "R1=R4", "0.45 w L", REACTION | BOTH, 0, 3240, SIX_DIGITS, NAN},
    {16, "R2=R3", "0.55 w L", REACTION | BOTH, 1, 3960, SIX_DIGITS, NAN},
    {16, "M max end span", "0.1013 w L^2", MOMENT, 1, 104976, SIX_DIGITS, NAN},
    {16, "M at inner supports", "-0.05 w L^2", MOMENT_AT, 144, -51840, SIX_DIGITS, NAN},
    {17, "M at supports", "-w a^2/2", MOMENT_AT, 30, -22500, SIX_DIGITS, NAN},
    {17, "M midspan", "w (L^2-4a^2)/8", MOMENT_AT, 102, 107100, SIX_DIGITS, NAN},
    {17, "deflection midspan", "w L^2 (5L^2-24a^2)/(384 E I)", SAG_AT, 102, 1.40008, SIX_DIGITS, NAN},
};

#endif
