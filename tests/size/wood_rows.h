/* Reference design values that several tests use, psi.
 *
 * NDS 2018 Supplement, Tables 4A and 4D, as the published examples print them; the Spruce-Pine-Fir Stud row is Table 4A
 * too (also read in the copy of an open-source finite-element package). */
#ifndef SAWBILL_TESTS_WOOD_ROWS_H
#define SAWBILL_TESTS_WOOD_ROWS_H

#include "sawbill/catalog.h"

static const struct design_row dfl_ss = {.table = "4A",
                                         .species = "Douglas Fir-Larch",
                                         .grade = "Select Structural",
                                         .fb = 1500,
                                         .fv = 180,
                                         .fc_perp = 625,
                                         .fc = 1700,
                                         .e = 1900000,
                                         .emin = 690000,
                                         .seen = true};
static const struct design_row dfl_2 = {.table = "4A",
                                        .species = "Douglas Fir-Larch",
                                        .grade = "No.2",
                                        .fb = 900,
                                        .ft = 575,
                                        .fv = 180,
                                        .fc_perp = 625,
                                        .fc = 1350,
                                        .e = 1600000,
                                        .emin = 580000,
                                        .seen = true};
static const struct design_row dfl_1 = {.table = "4A",
                                        .species = "Douglas Fir-Larch",
                                        .grade = "No.1",
                                        .fb = 1000,
                                        .fv = 180,
                                        .fc_perp = 625,
                                        .fc = 1500,
                                        .e = 1700000,
                                        .emin = 620000,
                                        .seen = true};
static const struct design_row hf_2 = {.table = "4A",
                                       .species = "Hem-Fir",
                                       .grade = "No.2",
                                       .fb = 850,
                                       .ft = 525,
                                       .fv = 150,
                                       .fc_perp = 405,
                                       .fc = 1300,
                                       .e = 1300000,
                                       .emin = 470000,
                                       .seen = true};
static const struct design_row spf_2 = {.table = "4A",
                                        .species = "Spruce-Pine-Fir",
                                        .grade = "No.1/No.2",
                                        .fb = 875,
                                        .ft = 450,
                                        .fv = 135,
                                        .fc_perp = 425,
                                        .fc = 1150,
                                        .e = 1400000,
                                        .emin = 510000,
                                        .seen = true};
static const struct design_row spf_stud = {.table = "4A",
                                           .species = "Spruce-Pine-Fir",
                                           .grade = "Stud",
                                           .fb = 675,
                                           .ft = 350,
                                           .fv = 135,
                                           .fc_perp = 425,
                                           .fc = 725,
                                           .e = 1200000,
                                           .emin = 440000,
                                           .seen = true};
static const struct design_row hf_2_beams = {.table = "4D",
                                             .species = "Hem-Fir",
                                             .grade = "No.2",
                                             .fb = 675,
                                             .fv = 140,
                                             .fc_perp = 405,
                                             .e = 1100000,
                                             .seen = true};
static const struct design_row glulam_24f = {.table = "5A",
                                             .species = "DF/DF glulam",
                                             .grade = "24F",
                                             .fb = 2400,
                                             .fv = 265,
                                             .emin = 690000,
                                             .e = 1700000,
                                             .seen = true};

#endif
