/* The normalised plan spread over the types and stocks that were merged; surplus pieces are left out. */
#include "emit.h"

/* Members of the form that one of the normalised form stands for, in order; each is used up before the next. */
struct share {
    size_t *member;
    size_t count;
    int64_t *left; /* of each member of the form */
};

struct spread {
    struct arena *arena;
    const struct norm *norm;
    struct share *type, *stock; /* of each type and stock of the normalised form */
    struct form_use *use;       /* of the pattern at hand */
    size_t use_count;
    struct form_result *result;
    size_t room;
};

static struct share *make_shares(struct arena *arena, const int *of, size_t members, int groups, int64_t *left)
{
    struct share *share = arena_array(arena, (size_t)groups, sizeof *share);
    for (size_t i = 0; i < members; i++)
        if (of[i] >= 0)
            share[of[i]].count++;
    for (int g = 0; g < groups; g++) {
        share[g].member = arena_array(arena, share[g].count, sizeof(size_t));
        share[g].count = 0;
        share[g].left = left;
    }
    for (size_t i = 0; i < members; i++)
        if (of[i] >= 0)
            share[of[i]].member[share[of[i]].count++] = i;
    return share;
}

/* The first member that is not used up; NULL when none is left. */
static const size_t *head(const struct share *share)
{
    for (size_t i = 0; i < share->count; i++)
        if (share->left[share->member[i]] != 0)
            return &share->member[i];
    return NULL;
}

/* `count` pieces for each of at most `times` sticks: how many sticks get them, all from the same members. */
static int64_t take_uses(struct spread *spread, const struct share *share, int64_t count, int64_t times)
{
    const size_t *first = head(share);
    if (!first)
        return times; /* surplus */
    int64_t sticks = share->left[*first] / count;
    if (sticks > 0) {
        spread->use[spread->use_count++] = (struct form_use){*first, count};
        return sticks < times ? sticks : times;
    }
    for (size_t i = 0; i < share->count && count > 0; i++) {
        int64_t taken = share->left[share->member[i]];
        taken = taken < count ? taken : count;
        if (taken > 0)
            spread->use[spread->use_count++] = (struct form_use){share->member[i], taken};
        count -= taken;
    }
    return 1;
}

static void add_pattern(struct spread *spread, size_t stock, int64_t times)
{
    struct form_result *result = spread->result;
    result->pattern =
        arena_more(spread->arena, result->pattern, result->pattern_count, &spread->room, sizeof *result->pattern);
    struct form_pattern *pattern = &result->pattern[result->pattern_count++];
    *pattern = (struct form_pattern){.stock = stock, .use_count = spread->use_count, .times = times};
    pattern->use = arena_array(spread->arena, spread->use_count, sizeof *pattern->use);
    for (size_t i = 0; i < spread->use_count; i++)
        pattern->use[i] = spread->use[i];
}

/* As many sticks of the column as can be cut alike. */
static int64_t emit_some(struct spread *spread, const struct pool *pool, const struct column *column, int64_t times)
{
    struct share *stock = &spread->stock[column->stock];
    const size_t *bought = head(stock);
    int64_t alike = times;
    if (!bought)
        return times; /* the penalty stock: no plan */
    if (stock->left[*bought] > 0 && stock->left[*bought] < alike)
        alike = stock->left[*bought];
    spread->use_count = 0;
    for (int i = 0; i < column->count; i++) {
        const struct use *use = &pool->use[column->first + i];
        alike = take_uses(spread, &spread->type[use->type], use->count, alike);
    }
    for (size_t i = 0; i < spread->use_count; i++) {
        const struct form_use *use = &spread->use[i];
        spread->type[spread->norm->type_of[use->type]].left[use->type] -= alike * use->count;
    }
    if (stock->left[*bought] > 0)
        stock->left[*bought] -= alike;
    if (spread->use_count > 0)
        add_pattern(spread, *bought, alike);
    return alike;
}

void emit_plan(struct arena *arena, const struct form *form, const struct work *work, struct form_result *result)
{
    const struct norm *norm = &work->norm;
    int64_t *demand = arena_array(arena, form->type_count, sizeof *demand);
    int64_t *supply = arena_array(arena, form->stock_count, sizeof *supply);
    for (size_t i = 0; i < form->type_count; i++)
        demand[i] = form->type[i].demand;
    for (size_t i = 0; i < form->stock_count; i++)
        supply[i] = form->stock[i].supply;
    struct spread spread = {.arena = arena, .norm = norm, .result = result};
    spread.type = make_shares(arena, norm->type_of, form->type_count, norm->types, demand);
    spread.stock = make_shares(arena, norm->stock_of, form->stock_count, norm->stocks, supply);
    spread.use = arena_array(arena, form->type_count, sizeof *spread.use);
    const struct answer *best = work->best;
    for (size_t j = 0; j < best->pool.columns; j++)
        for (int64_t left = best->times[j]; left > 0;)
            left -= emit_some(&spread, &best->pool, &best->pool.column[j], left);
    for (size_t j = 0; j < result->pattern_count; j++)
        result->cost += result->pattern[j].times * form->stock[result->pattern[j].stock].cost;
}

/* Of the costs of all stocks that can be bought, useful or not: what a reader of the certificate sees. */
static int64_t divisor_of(const struct form *form)
{
    int64_t divisor = 0;
    for (size_t i = 0; i < form->stock_count; i++)
        for (int64_t a = form->stock[i].supply == 0 ? 0 : form->stock[i].cost; a != 0;) {
            int64_t rest = divisor % a;
            divisor = a;
            a = rest;
        }
    return divisor == 0 ? 1 : divisor;
}

void emit_certificate(struct arena *arena, const struct form *form, const struct work *work, struct form_result *result)
{
    const struct norm *norm = &work->norm;
    const struct dual *dual = &work->dual;
    struct form_certificate *certificate = &result->certificate;
    /* Where memory ended before there were any values, nothing is worth anything and the bound is 0. */
    const bool any = dual->value && dual->extra;
    certificate->scale = any ? dual->scale : 1;
    certificate->value = arena_array(arena, form->type_count, sizeof(int64_t));
    certificate->extra = arena_array(arena, form->stock_count, sizeof(int64_t));
    for (size_t i = 0; i < form->type_count; i++)
        certificate->value[i] = any && norm->type_of[i] >= 0 ? dual->value[norm->type_of[i]] : 0;
    for (size_t i = 0; i < form->stock_count; i++) {
        if (form->stock[i].supply == 0)
            certificate->extra[i] = INT64_MAX; /* none can be bought, whatever it would hold */
        else
            certificate->extra[i] = any && norm->stock_of[i] >= 0 ? dual->extra[norm->stock_of[i]] : 0;
    }
    certificate->bound = bound_round(dual->sum, certificate->scale, divisor_of(form));
    if (certificate->bound > result->bound)
        certificate->bound = result->bound; /* only where there is no plan */
}
