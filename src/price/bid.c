/* The bid: tax that is shown, the rounding line, margins, draws. */
#include "price_internal.h"

static money_t shown_tax(const struct order *order, const struct estimate *estimate)
{
    money_t tax = 0;
    if (estimate->tax_mode == TAX_ON_PRICE)
        return money_percent(estimate->before_tax, estimate->tax_rate);
    if (estimate->tax_mode == TAX_ON_MATERIALS_SHOWN)
        for (size_t i = 0; i < order->supplier_count; i++)
            tax = price_sum(tax, order->supplier[i].tax);
    return tax;
}

static void add_draws(struct arena *arena, const struct job *job, struct estimate *estimate, struct diags *diags)
{
    const struct texts_value *texts = &job->bid.draws;
    money_t left = estimate->price;
    percent_t shares = 0;
    estimate->draw = arena_array(arena, texts->count, sizeof *estimate->draw);
    for (size_t i = 0; i < texts->count; i++) {
        struct draw draw = {0};
        const struct place *at = place_of(texts->item[i].at, &job->bid.head);
        if (!draw_parse(arena, texts->item[i].text, &draw.percent, &draw.when)) {
            diag_add(diags, DIAG_K007, at, "'%s' is not a draw, such as '30 %% on signing'", texts->item[i].text);
            return;
        }
        shares += draw.percent;
        bool last = i + 1 == texts->count;
        draw.amount = last ? left : money_percent(estimate->price, draw.percent);
        left -= draw.amount;
        estimate->draw[estimate->draw_count++] = draw;
        if (last && shares != PERCENT_WHOLE)
            diag_add(diags, DIAG_K013, at, "the draws add up to %s: they must make 100 %%",
                     percent_text(arena, shares));
    }
}

void estimate_bid(struct arena *arena, const struct job *job, const struct order *order, struct estimate *estimate,
                  struct diags *diags)
{
    estimate->tax = shown_tax(order, estimate);
    money_t exact = price_sum(estimate->before_tax, estimate->tax);
    money_t step = job->bid.round_price_to.money;
    estimate->price = step > 0 && exact < MONEY_MOST ? money_nearest(exact, step) : exact;
    estimate->rounding = estimate->price - exact;
    money_t sold = estimate->price - estimate->tax;
    estimate->gross_margin = price_share(sold - estimate->direct, sold);
    estimate->markup = price_share(sold - estimate->direct, estimate->direct);
    add_draws(arena, job, estimate, diags);
}
