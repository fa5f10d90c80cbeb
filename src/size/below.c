/* From a post down to the ground: squash blocks, what they stand on, and the steps of the load path. */
#include "size.h"

#include <math.h>
#include <string.h>

#include "sawbill/text.h"

/* What a post stands on, past its blocks; `last`: the lowest block, or NULL. */
struct foot {
    const struct ref_value *on;
    const struct text_value *words;
    const struct block *last;
};

static struct foot foot_of(const struct job *job, const struct post *post)
{
    struct foot foot = {.on = &post->stands_on, .words = &post->stands_on_text};
    /* a block may stand on a post, a post on a block: a circle is a stop of the job, here it must only end */
    for (size_t i = 0; i < job->block_count && foot.on->at && foot.on->kind == KIND_BLOCK; i++) {
        foot.last = &job->blocks[foot.on->index];
        foot.words = &foot.last->stands_on_text;
        foot.on = &foot.last->stands_on;
    }
    return foot;
}

bool post_stands_on(const struct job *job, const struct post *post, enum kind kind, size_t index)
{
    struct foot foot = foot_of(job, post);
    return foot.on->at && foot.on->kind == kind && foot.on->index == index;
}

static const char *name_below(struct sizing *s, const struct ref_value *ref, const struct text_value *words)
{
    const struct job *job = s->job;
    if (!ref->at)
        return words->text && *words->text ? words->text : "not said";
    switch (ref->kind) {
    case KIND_BLOCK:
        return head_name(s->arena, KIND_BLOCK, &job->blocks[ref->index].head);
    case KIND_FOOTING:
        return head_name(s->arena, KIND_FOOTING, &job->footings[ref->index].head);
    case KIND_BEAM:
        return head_name(s->arena, KIND_BEAM, &job->beams[ref->index].head);
    case KIND_WALL:
        return head_name(s->arena, KIND_WALL, &job->walls[ref->index].head);
    case KIND_POST:
        return head_name(s->arena, KIND_POST, &job->posts[ref->index].head);
    default:
        return ref->id ? ref->id : "not said";
    }
}

/* A slab is poured to walk on, about 4 in thick; a footing has 6 in at least (IRC 2021 R403.1.1). */
static void say_slab(struct sizing *s, const char *who, const struct text_value *words, const struct head *head)
{
    const char *folded = words->text ? name_fold(s->arena, words->text) : "";
    if (strstr(folded, "slab") && !strstr(folded, "footing"))
        engineer(s, place_of(words->at, head),
                 arena_printf(s->arena,
                              "%s stands on '%s': a slab is no footing; give it a [footing], new or found and measured",
                              who, words->text));
}

static void say_below(struct sizing *s, const struct post_design *pd, const struct foot *foot, const char *under)
{
    const char *name = head_name(s->arena, KIND_POST, &pd->post->head);
    if (!foot->on->at) {
        unchecked_add(s, arena_printf(s->arena, "not checked: '%s' under %s (%s lb in all): its strength, and the soil",
                                      under, name, number_text(s->arena, ceil(loads_sum(pd->lb)), 0)));
        say_slab(s, name, foot->words, foot->last ? &foot->last->head : &pd->post->head);
    } else if (foot->on->kind == KIND_WALL) {
        unchecked_add(
            s, arena_printf(s->arena, "not checked: below the plate of %s under %s, down to the soil", under, name));
    } else if (foot->on->kind == KIND_BEAM) {
        unchecked_add(s, arena_printf(s->arena, "not checked: %s under %s (%s lb in all), and what carries it", under,
                                      name, number_text(s->arena, ceil(loads_sum(pd->lb)), 0)));
    }
}

void post_write_below(struct sizing *s, const struct post_design *pd)
{
    const struct post *post = pd->post;
    const struct ref_value *on = &post->stands_on;
    const char *from = head_name(s->arena, KIND_POST, &post->head);
    const char *under = name_below(s, on, &post->stands_on_text);
    if (pd->member) {
        struct loads own = {{pd->plies * pd->member->weight_plf * length_feet(post->height.length)}};
        path_add(s, arena_printf(s->arena, "own weight of %s", from), from, NAN, own);
    }
    path_add(s, from, under, NAN, pd->lb);
    for (size_t i = 0; i < s->job->block_count && on->at && on->kind == KIND_BLOCK; i++) {
        const struct block *block = &s->job->blocks[on->index];
        on = &block->stands_on;
        from = under;
        under = name_below(s, on, &block->stands_on_text);
        path_add(s, from, under, NAN, pd->lb);
    }
    struct foot foot = foot_of(s->job, post);
    say_below(s, pd, &foot, under);
}

/* Squash blocks are pieces of the post's own wood, one under each ply, grain upright; each stands by itself. */
static struct wood_post block_column(const struct post_design *pd, const struct block *block)
{
    double depth = length_inches(block->depth.length);
    return (struct wood_post){
        .piece = post_wood(pd), .along_in = depth, .across_in = depth, .most_slender = 50, .nailed = false};
}

static void check_block(struct sizing *s, const struct post_design *pd, struct wood_post *column,
                        struct member_checks *checks)
{
    struct check worst = {0}, grain = {0};
    for (size_t i = 0; i < s->combo_count; i++) {
        const struct combination *combo = &s->combo[i];
        if (!combo_applies(combo, &pd->lb))
            continue;
        struct wood_post_rating rating = wood_post_rate(column, combo->cd);
        double demand = combined(combo, &pd->lb);
        struct check check = check_of("block", "NDS 2018 3.7.1", demand, rating.capacity_lb, "lb");
        check.combination = combo->name;
        check.note = arena_printf(s->arena, "grain upright, each ply by itself; CD %s, le/d %s, CP %s",
                                  number_text(s->arena, combo->cd, 2), number_text(s->arena, rating.slenderness, 1),
                                  number_text(s->arena, rating.cp, 3));
        check_worse(&worst, check);
        check = check_of("end grain of the block", "NDS 2018 3.10.1", demand / wood_area(&column->piece),
                         rating.fc_star, "psi");
        check.combination = combo->name;
        check.note = check.ratio > 0.75
                         ? "post and block end on end; above 0.75 Fc*: a steel plate or the like between "
                           "(NDS 2018 3.10.1.3)"
                         : "post and block end on end, as large as the post";
        check_worse(&grain, check);
    }
    checks_add(s, checks, worst);
    checks_add(s, checks, grain);
}

static bool block_size(struct sizing *s, const struct post_design *pd, const struct block *block)
{
    const char *id = arena_printf(s->arena, "%s under %s", head_name(s->arena, KIND_BLOCK, &block->head),
                                  head_name(s->arena, KIND_POST, &pd->post->head));
    struct member_checks *checks = checks_new(s, id, member_text(s->arena, pd->member, pd->plies));
    checks_wood(checks, pd->member->values);
    struct wood_post column = block_column(pd, block);
    check_block(s, pd, &column, checks);
    if (block->stands_on.at && block->stands_on.kind == KIND_WALL)
        post_on_plate(s, pd, &block->stands_on, checks);
    return checks_close(s, checks, &block->head.at);
}

bool post_blocks_size(struct sizing *s, const struct post_design *pd)
{
    const struct ref_value *on = &pd->post->stands_on;
    bool passes = true;
    for (size_t i = 0; i < s->job->block_count && on->at && on->kind == KIND_BLOCK; i++) {
        const struct block *block = &s->job->blocks[on->index];
        passes &= block_size(s, pd, block);
        on = &block->stands_on;
    }
    return passes;
}
