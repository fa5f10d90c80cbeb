/* Bounds in whole numbers: whatever the values are, the sum is one that no plan can undercut. */
#include "dual.h"

/* The greatest share, in whole / part, by which an endless stock holds more than it costs. */
static void find_excess(const struct dual *dual, const struct norm *norm, const int64_t *most, int64_t *part,
                        int64_t *whole)
{
    *part = *whole = 1;
    for (int s = 0; s < norm->stocks; s++) {
        int64_t cost = dual->scale * norm->cost[s];
        if (norm->supply[s] == FORM_ENDLESS && most[s] > cost && (wide_t)cost * *whole < (wide_t)*part * most[s]) {
            *part = cost;
            *whole = most[s];
        }
    }
}

void dual_settle(struct dual *dual, struct knap *knap, const struct norm *norm)
{
    int64_t part, whole;
    knap_run(knap, dual->value, norm->demand, NULL);
    find_excess(dual, norm, knap->result, &part, &whole);
    dual->sum = 0;
    for (int i = 0; i < norm->types; i++) {
        dual->value[i] = (int64_t)((wide_t)dual->value[i] * part / whole);
        dual->sum += (wide_t)dual->value[i] * norm->demand[i];
    }
    for (int s = 0; s < norm->stocks; s++) {
        /* Each value was rounded down, so that no filling is worth more than its share. */
        dual->held[s] = (int64_t)((wide_t)knap->result[s] * part / whole);
        int64_t over = dual->held[s] - dual->scale * norm->cost[s];
        dual->extra[s] = norm->supply[s] != FORM_ENDLESS && over > 0 ? over : 0;
        if (dual->extra[s] > 0)
            dual->sum -= (wide_t)dual->extra[s] * norm->supply[s];
    }
}

void dual_by_length(struct dual *dual, const struct norm *norm)
{
    int best = 0;
    for (int s = 1; s < norm->stocks; s++)
        if ((wide_t)norm->cost[s] * norm->room[best] < (wide_t)norm->cost[best] * norm->room[s])
            best = s;
    for (int i = 0; i < norm->types; i++)
        dual->value[i] = (int64_t)((wide_t)dual->scale * norm->cost[best] * norm->length[i] / norm->room[best]);
}
