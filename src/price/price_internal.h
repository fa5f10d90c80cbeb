/* Shared inside src/price only. */
#ifndef SAWBILL_PRICE_INTERNAL_H
#define SAWBILL_PRICE_INTERNAL_H

#include "sawbill/price.h"

/* a + b, held at MONEY_MOST. */
money_t price_sum(money_t a, money_t b);
/* part / whole as a percentage, half away from zero; 0 when whole is 0. */
percent_t price_share(money_t part, money_t whole);
/* The percentage that holds for a class: its own key when written, else the general one. */
percent_t class_rate(const struct percent_value *general, const struct percent_value on[CLASS_COUNT],
                     enum cost_class class);

/* The class, or the fallback where the takeoff leaves it open. */
enum cost_class class_or(enum cost_class class, enum cost_class fallback);

/* a x b / c rounded up to a step, held at MONEY_MOST; a, b not negative, c > 0. */
decimal_t price_scale_up(decimal_t a, decimal_t b, decimal_t c);
/* ROUNDUP(ROUND(net x (1 + loss) / pack, 8), 0), as a decimal. */
decimal_t packs_for(decimal_t net, percent_t loss, decimal_t pack);
/* Appends the sticks of the plans, a row a price row or shop row. */
void order_sticks(struct arena *arena, const struct catalog *catalog, struct cut_plan *const *plans, size_t plan_count,
                  struct order *order);
/* Appends the counted items of the takeoff, a row an item (and class, and own markup). */
void order_items(struct arena *arena, const struct job *job, const struct catalog *catalog,
                 const struct takeoff *takeoff, struct order *order, struct diags *diags);
/* A new zeroed row; `id` is made unique by the supplier's name. */
struct order_line *order_add(struct arena *arena, struct order *order, const char *id, const struct price *price);
/* Appends a supplier row for each supplier that sells something of the order. */
void order_suppliers(struct arena *arena, const struct catalog *catalog, struct order *order);

/* Which of a task's three rates. */
enum pace { PACE_LOW, PACE_LIKELY, PACE_HIGH };
/* Fills labor and its count, in the order of work; a task without a wage is a stop. */
void estimate_labor(struct arena *arena, const struct job *job, const struct takeoff *takeoff,
                    const struct catalog *catalog, enum pace pace, struct estimate *estimate, struct diags *diags);
/* Fills the class rows and their sums from the estimate's lines. */
void estimate_markup(struct arena *arena, const struct job *job, struct estimate *estimate, struct diags *diags);
/* Fills tax, rounding, price, margin and draws. */
void estimate_bid(struct arena *arena, const struct job *job, const struct order *order, struct estimate *estimate,
                  struct diags *diags);

/* A beam that is to be chosen (index into job->beams) and every candidate, in file order, plies rising. */
struct choice {
    size_t beam;
    struct candidate *candidate;
    size_t count;
};
struct candidate *beam_candidates(struct arena *arena, const struct catalog *catalog, const struct beam *beam,
                                  size_t *count);
/* Fills the candidates (at least one); selection[beam] becomes the chosen one.  Returns a run whose cut plan its
 * verifier rejected, else NULL. */
struct run *choose_beam(struct arena *arena, const struct job *job, const struct catalog *catalog,
                        struct selection *selection, struct choice *choice, struct diags *diags);
/* The job with its beams chosen; no alternates. */
struct outcome *plan_members(struct arena *arena, const struct job *job, const struct catalog *catalog,
                             struct diags *diags);
void plan_alternates(struct arena *arena, const struct job *job, const struct catalog *catalog, struct outcome *outcome,
                     struct diags *diags);

#endif
