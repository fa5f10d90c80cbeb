/* What is written: the cost workbook, the client file, terminal tables, JSON.  The only layer that writes files. */
#ifndef SAWBILL_REPORT_H
#define SAWBILL_REPORT_H

#include "sawbill/price.h"

struct report {
    const struct job *job;
    const struct catalog *catalog;
    const struct outcome *outcome; /* NULL when a stop left nothing to show */
    const struct diags *diags;
    const char *job_file;
    bool signable; /* no ask open, no failing check, not a budget */
};

enum write_status { WRITE_DONE, WRITE_FILE_FAULT, WRITE_INTERNAL };

/* Writes PATH by way of a temporary file beside it, checked and renamed.  A file there that was changed by hand since
 * we wrote it is kept: the new one is called NAME-r2.xlsx and so on.  *written is the name used; *why, what went
 * wrong. */
enum write_status report_workbook(struct arena *arena, const struct report *report, const char *path,
                                  const char **written, const char **why);
enum write_status report_client(struct arena *arena, const struct report *report, const char *path,
                                const char **written, const char **why);

/* Writes text safely to PATH: a temporary file beside it, flushed and renamed. */
enum write_status report_text(struct arena *arena, const char *path, const char *text, const char **why);

/* Text for the terminal; color adds SGR sequences, width is of the terminal. */
char *report_bid(struct arena *arena, const struct report *report, bool color, int width);
char *report_check(struct arena *arena, const struct report *report, bool color, int width);
char *report_compare(struct arena *arena, const struct report *report, bool color, int width);
char *report_cuts(struct arena *arena, const struct report *report, bool color, int width);
char *report_takeoff(struct arena *arena, const struct report *report, bool color, int width);
char *report_order(struct arena *arena, const struct report *report, bool color, int width);
/* What the crew works from, a sheet a new beam; no money in it. */
char *report_field(struct arena *arena, const struct report *report, bool color, int width);
/* One JSON object (two-blank indent, ending in a newline); NULL when memory ran out inside cJSON.  Keys stand always in
 * this order; a part that a stop kept from being reached is absent (messages and cautions never are).
 * Money, percent and counts are strings of exact decimals ("1234.50", "8.25", "12"); KEY_in is a number of inches with
 * KEY_text, the tape reading, beside it; loads are dead_, live_, roof_live_ and snow_ with their unit; what does not
 * apply is null.
 *
 *   format      "sawbill 1"
 *   job         name, number, client, site, date, status, scope [text], exclude [text]
 *   messages    [{class, code, file, line, column, pointer, acknowledged, text}]
 *   design      passes; standard ("ASCE 7-16"); combinations [{name, number (in 2.4.1), cd}];
 *               snow [{area, on_ground, given_psf, ce, ct, is, flat_psf, least_psf (0: none), roof_psf, asd_factor,
 *                 asd_psf}];
 *               members [{id, member, specified, passes (null: an engineer's), unverified,
 *                 checks [{name, clause, combination, at_in, at_text, demand, capacity, unit, ratio, ratio_text,
 *                   governs, note}]}];
 *               load_path [{from, to, at_in, at_text, dead_lb, live_lb, attic_live_lb, roof_live_lb, snow_lb}];
 *                 attic_live: that part of live which need not act with the rest;
 *               beams [{id, member, plies, width_, cut_length_, design_span_in, weight_plf,
 *                 ends [{end, bearing_, _lb, _lb_least, _lb_all_spans, hanger, uplift_lb, hold_down}], dead_sag_in and
 *                 dead_sag_at_in (of all dead load but its own weight, without creep), ply_pieces_in,
 *                 inner_supports [{post ("post P2"; null: a wall plate), at_in, at_text, bearing_, spliced, _lb,
 *                   _lb_least, _lb_all_spans, uplift_lb, hold_down}]}];
 *                 _lb: the most of each load on any set of spans, _lb_least the least;
 *               joists [{id, beam, side, count, places_in, _plf, _lb_each, uplift_lb_each,
 *                 ends [{at_, width_, depth_, off_line_ (+ above the line), doubled, hanger}], strap, tied_pairs}];
 *               posts [{id, member, plies, carries, _lb}];
 *               openings [{id, header, trimmer, joists_interrupted,
 *                 headers [{end, _lb_each_end, hanger, tail_hanger}],
 *                 trimmers [{at_in, at_text, _lb_on_beam, _lb_on_far_bearing, hanger}]}];
 *               shores [{id, member, length_, height_, spacing_, studs, brace_rows, stud_lb}];
 *               unchecked [text]; basis [text]
 *   takeoff     [{id, what, where, count, unit, counted, class, item, length_ (pieces only), loss (text),
 *                 loss_percent (nails and screws), lb (of them, where known), code}]
 *   raising     [{id, ply_lb, beam_lb, whole, people, hands, shrinkage_in (null: not known),
 *                 way_in [{what, needs_in, has_in (null: not measured), goes (where it was), how}]}]
 *   cut_lines   [{joists, beam, side, clearance_, cut_line_ and guide_line_ (from the beam's middle line; null: no saw
 *                 offset), joist_length_, rests_lb, most_lb}]
 *   ply_layouts [{beam, start_, length_, kept ("even", "fewest", "broken"), spacing_ (null: uneven), most_, least_,
 *                 rows [{face, row, marks_in, marks_text (from end 1 of the beam)}]}]
 *   cuts        cost, bound (all members together; null without a plan), verdict (the worst);
 *               sticks [{member, stock_, from, cost, pieces [{label, length_}], cutoff_, keep}];
 *               members [{member, cost, bound, verdict, note, certified, searched, kerf_, end_trim_, both_ends,
 *                 square_both_ends, bought_, net_, net, kerf_lost_, kerf_lost, trim_, trim, kept_, kept, waste_, waste
 *                 (lengths, and the same in money), joined [{label, at_in [places]}],
 *                 first_fit {cost, stock_} (null: it finds no plan), one_length [{stock_, cost (null: impossible),
 *                 proved}], cutoffs [{length_, count}] (worth keeping)}]
 *   order       (none in a budget) lines [{id, item, what, supplier, net, net_unit, counted, loss_percent,
 *                 pieces (nails and screws), lb (of them, net, where known), packs,
 *                 unit, cut_charge, price, total, class, code, from}];
 *               suppliers [{name, goods, delivery, tax_percent, tax}], bought_from
 *   estimate    lines [{id, what, class, unit, count, price, total, own_markup_percent (where it has one), code}];
 *               labor [{id, what, trade, count, per, hours_each, least_hours, hours, rate, total, crew, counted}];
 *               classes [{class, own_markup_line, overhead_percent, contingency_percent, profit_percent, direct,
 *                 overhead, contingency, profit, price}];
 *               totals {method, tax_mode, direct, overhead, contingency, profit, before_tax, tax, rounding, price,
 *                 hours, gross_margin_percent, markup_percent}
 *   bid         price, low_price and high_price (a budget's range), signable, valid_until,
 *               draws [{percent, when, amount}], alternates [{id, what, passes, difference}]
 *   compare     [{beam, member, plies, passes, chosen, ratio, why, price (null: it fails)}]
 *   cautions    [text]
 */
char *report_json(struct arena *arena, const struct report *report);
/* What the crew works from, without any money:
 *
 *   format   "sawbill field 1"
 *   job, messages, cautions   as above
 *   sheets   [{sheet ("beam parlor"; last "job", the whole), title, parts [{part, title, items [...]}]}]; absent after
 *            a stop.  parts of a beam, in this order: stop, plan, shores, joists, plies, posts, marks, hardware, raise,
 *            lower, finish; of the job: work.
 *   items    {is: "say", "tick" (a box to tick) or "stop" (what keeps the work from going on), text} or {is: "table",
 *            table, title, rows [{...}]}; a row's keys, in the order of its columns:
 *              plan        end_1, between, end_2
 *              shore_cuts  shore, what, member, count, cut_, how
 *              joists      number ("A1"), side, place_ (its middle), size, cut_ (null: new, or an opening cuts it off),
 *                          off_line_ (+ above the line), lift_lb, hanger, nails (into the beam + into the joist), seat_
 *              in_the_way  place_, what, width_, meanwhile, then
 *              plies       ply, length_, crown, stick, ends
 *              pieces      what, where, member, count, cut_, how
 *              marks       face, row ("row 1", "hangers"), from_, every_ (null: uneven), count, marks_ (lists: every
 *                          mark from end 1; of hangers the two edges of each thing)
 *              hardware    what, where, count, how
 *              hang        round, face_a, face_b, done
 *              turns       turn, shore, what, read
 *              work        place, task, of, trade, crew
 */
char *report_field_json(struct arena *arena, const struct report *report);

/* A bare list of pieces cut out of a bare list of stock. */
struct cuts_report {
    const struct cut_rules *rules;
    struct cut_plan *const *plan;
    size_t plan_count;
    const struct diags *diags;
};
char *report_list(struct arena *arena, const struct cuts_report *report, bool color, int width);
/* format, messages and cuts as above. */
char *report_list_json(struct arena *arena, const struct cuts_report *report);

/* What another program needs to check the plans and their bounds: one JSON object, in whole numbers.
 *
 *   format   "sawbill cuts 1"
 *   length_unit_in, money_unit_dollars      "1/1016000", "1/10000": what one of each is
 *   problems [{member, cost, bound, certified, verdict, searched, rounded, kerf, square_both_ends,
 *     pieces [{label, length, count, joints [places from its end 1]}],
 *     stock [{length, usable (ends trimmed), cost, supply (null: no end)}],
 *     joined [{piece, at [places]}],
 *     sticks [{stock, times, pieces [{label, length}], cutoff}],
 *     proofs [{joined [for each piece with joints: the places], scale, values [{length, value}], extra [of each stock],
 *       bound}]}]
 *
 * `stock` and `piece` are indexes from 0.  Pieces p1 .. pn fit a stick when p1 + .. + pn + (n - 1) x kerf <= usable; n
 * x kerf when both ends are squared.  What a proof says stands at struct cut_proof.  `certified`: what the proofs show,
 * the least of their bounds.  `searched`: the bound is above that, as this program's search found nothing cheaper; the
 * search leaves nothing behind to check it by, so that the certificate shows no more than that the plan is within cost
 * - certified of the cheapest.  `rounded`: piece + kerf is rounded up, and usable + kerf
 * (usable, when both ends are squared) down, to 1/64 in, before anything is compared. */
char *report_certificate(struct arena *arena, struct cut_plan *const *plan, size_t count);
/* The shop's stock after the plans are cut: what is left of it, and the cutoffs worth keeping at a value of 0, as CSV.
 * Of a list (no catalog): rows of stock for the next list. */
char *report_shop_stock(struct arena *arena, const struct catalog *catalog, struct cut_plan *const *plan, size_t count);

/* The caution that every sizing output carries. */
const char *caution_text(void);

#endif
