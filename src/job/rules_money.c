/* Rules across keys of money: buy, bid. */
#include "rules.h"

static void buy_one_price(const struct ruling *ruling)
{
    const struct buy *buy = ruling->element;
    if (buy->price.at && buy->item.at)
        rule_broken(ruling, buy->price.at, "%s has a 'price' and an 'item' with its own; keep one of them",
                    ruling->name);
}

static void buy_needs_price(const struct ruling *ruling)
{
    const struct buy *buy = ruling->element;
    if (!buy->price.at && !buy->item.at)
        rule_broken(ruling, NULL, "%s needs a 'price', or an 'item' of prices.csv", ruling->name);
}

static void bid_draws_parse(const struct ruling *ruling)
{
    const struct bid *bid = ruling->element;
    for (size_t i = 0; i < bid->draws.count; i++) {
        percent_t share = 0;
        const char *when = NULL;
        if (!draw_parse(ruling->checker->arena, bid->draws.item[i].text, &share, &when))
            rule_broken(ruling, bid->draws.item[i].at, "'%s' is no draw; write its share and when: '30 %% on signing'",
                        bid->draws.item[i].text);
    }
}

static void bid_draws_sum(const struct ruling *ruling)
{
    const struct bid *bid = ruling->element;
    percent_t sum = 0;
    for (size_t i = 0; i < bid->draws.count; i++) {
        percent_t share = 0;
        const char *when = NULL;
        if (!draw_parse(ruling->checker->arena, bid->draws.item[i].text, &share, &when))
            return;
        sum += share;
    }
    if (bid->draws.count && sum != PERCENT_WHOLE)
        rule_broken(ruling, bid->draws.item[bid->draws.count - 1].at, "the draws come to %s, not to 100 %%",
                    percent_text(ruling->checker->arena, sum));
}

static percent_t rate_of(const struct percent_value *general, const struct percent_value *own)
{
    return own->at ? own->percent : general->percent;
}

/* As parts of the price, they must leave something for the cost. */
static void bid_margin_below_whole(const struct ruling *ruling)
{
    const struct bid *bid = ruling->element;
    if (bid->method.choice != METHOD_MARGIN)
        return;
    for (int class = CLASS_LABOR; class < CLASS_COUNT; class ++) {
        percent_t sum = rate_of(&bid->overhead, &bid->overhead_on[class]) +
                        rate_of(&bid->contingency, &bid->contingency_on[class]) +
                        rate_of(&bid->profit, &bid->profit_on[class]);
        if (sum < PERCENT_WHOLE)
            continue;
        rule_broken(ruling, bid->method.at,
                    "overhead, contingency and profit on %s are %s of the price; nothing is left for the cost",
                    class_name((enum cost_class) class), percent_text(ruling->checker->arena, sum));
        return;
    }
}

static const struct rule rules[] = {
    {KIND_BUY, DIAG_K013, buy_one_price},          {KIND_BUY, DIAG_K004, buy_needs_price},
    {KIND_BID, DIAG_K007, bid_draws_parse},        {KIND_BID, DIAG_K013, bid_draws_sum},
    {KIND_BID, DIAG_K013, bid_margin_below_whole},
};
const struct rules rules_of_money = {rules, sizeof rules / sizeof *rules};
