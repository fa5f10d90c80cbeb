/* Plans piece by piece; certificates by the plainest knapsack there is: one copy of a piece after the other. */
#include "form_check.h"

#include <stdlib.h>
#include <string.h>

__extension__ typedef __int128 wide_t;

enum { MOST_ROOM = 4000000 };

static const char *check_pattern(const struct form *form, const struct form_pattern *pattern, int64_t *cut,
                                 int64_t *bought)
{
    wide_t used = 0;
    if (pattern->times <= 0)
        return "a pattern is cut no time";
    for (size_t i = 0; i < pattern->use_count; i++) {
        const struct form_use *use = &pattern->use[i];
        if (use->count <= 0)
            return "a use without a piece";
        used += (wide_t)form->type[use->type].length * use->count;
        cut[use->type] += use->count * pattern->times;
    }
    bought[pattern->stock] += pattern->times;
    return used <= form->stock[pattern->stock].length ? NULL : "a stick is too short for its pieces";
}

static const char *check_sums(const struct form *form, const struct form_result *result, const int64_t *cut,
                              const int64_t *bought)
{
    int64_t cost = 0;
    for (size_t i = 0; i < form->type_count; i++)
        if (cut[i] != form->type[i].demand)
            return "a type is not cut as often as wanted";
    for (size_t s = 0; s < form->stock_count; s++) {
        if (form->stock[s].supply != FORM_ENDLESS && bought[s] > form->stock[s].supply)
            return "more sticks than there are";
        cost += bought[s] * form->stock[s].cost;
    }
    if (cost != result->cost)
        return "the cost does not add up";
    return result->bound <= result->cost ? NULL : "the bound is above the cost";
}

static const char *check_plan(const struct form *form, const struct form_result *result)
{
    int64_t *cut = calloc(form->type_count + 1, sizeof *cut), *bought = calloc(form->stock_count + 1, sizeof *bought);
    const char *wrong = NULL;
    for (size_t i = 0; i < result->pattern_count && !wrong; i++)
        wrong = check_pattern(form, &result->pattern[i], cut, bought);
    if (!wrong)
        wrong = check_sums(form, result, cut, bought);
    free(cut);
    free(bought);
    return wrong;
}

/* best[c]: the most valuable filling of the length c. */
static void fill(const struct form *form, const int64_t *value, wide_t *best, int64_t longest)
{
    for (size_t i = 0; i < form->type_count; i++) {
        int64_t length = form->type[i].length;
        for (int64_t copy = 0; copy < form->type[i].demand && copy < longest / length; copy++)
            for (int64_t c = longest; c >= length; c--)
                if (best[c - length] + value[i] > best[c])
                    best[c] = best[c - length] + value[i];
    }
}

static const char *check_stocks(const struct form *form, const struct form_certificate *certificate, const wide_t *best)
{
    wide_t sum = 0, divisor = 0;
    for (size_t i = 0; i < form->type_count; i++)
        sum += (wide_t)certificate->value[i] * form->type[i].demand;
    for (size_t s = 0; s < form->stock_count; s++) {
        const struct form_stock *stock = &form->stock[s];
        if (stock->supply == 0)
            continue;
        if (stock->length > 0 && best[stock->length] > (wide_t)certificate->scale * stock->cost + certificate->extra[s])
            return "a stick holds more than the certificate allows";
        if (stock->supply != FORM_ENDLESS)
            sum -= (wide_t)certificate->extra[s] * stock->supply;
        else if (certificate->extra[s] != 0)
            return "an endless stock has an extra";
        for (wide_t a = stock->cost; a != 0;) {
            wide_t rest = divisor % a;
            divisor = a;
            a = rest;
        }
    }
    if (divisor == 0)
        divisor = 1;
    wide_t step = divisor * certificate->scale;
    wide_t bound = sum <= 0 ? 0 : (sum + step - 1) / step * divisor;
    return certificate->bound <= bound ? NULL : "the certificate's bound does not follow";
}

static const char *check_certificate(const struct form *form, const struct form_certificate *certificate)
{
    int64_t longest = 0;
    for (size_t s = 0; s < form->stock_count; s++)
        if (form->stock[s].supply != 0 && form->stock[s].length > longest)
            longest = form->stock[s].length;
    for (size_t i = 0; i < form->type_count; i++)
        if (certificate->value[i] < 0)
            return "a value is below 0";
    for (size_t s = 0; s < form->stock_count; s++)
        if (certificate->extra[s] < 0)
            return "an extra is below 0";
    if (longest > MOST_ROOM)
        return NULL;
    wide_t *best = calloc((size_t)longest + 1, sizeof *best);
    fill(form, certificate->value, best, longest);
    const char *wrong = check_stocks(form, certificate, best);
    free(best);
    return wrong;
}

const char *form_check(const struct form *form, const struct form_result *result)
{
    const char *wrong = NULL;
    if (result->certificate.bound > result->bound)
        return "the certificate proves more than the result says";
    if (result->verdict == FORM_PROVED || result->verdict == FORM_BEST)
        wrong = check_plan(form, result);
    if (!wrong && result->verdict == FORM_PROVED && result->bound != result->cost)
        return "proved, yet the bound is not the cost";
    return wrong ? wrong : check_certificate(form, &result->certificate);
}
