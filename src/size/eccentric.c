/* Beams that bear off the center of their post: NDS 2018 3.9.2 and 15.4.1.
 *
 * Within a sixth of the post's side the whole section stays pressed, and nothing is checked (common practice).  Beyond
 * it the post bends.  Nailed plies do not bend through each other as one: that is an engineer's. */
#include "size.h"

#include <math.h>

#include "sawbill/text.h"

/* Sides of a post: along the depth of its plies, and through them. */
enum side { DEPTH, THROUGH, SIDES };

struct lean {
    const struct loads *lb;
    double by[SIDES]; /* inches off the center */
    int toward;       /* on which side of the post's center the beam lies that leans by its bearing */
};

static double side_in(const struct post_design *pd, enum side side)
{
    return side == DEPTH ? length_inches(pd->member->depth) : pd->plies * length_inches(pd->member->ply_width);
}

/* A bearing shorter than the post lies at its near edge; `off center` goes across the beam. */
static struct lean lean_of(const struct post_design *pd, const struct beam_design *bd, int end)
{
    struct lean lean = {.lb = &bd->end_lb[end], .toward = end ? -1 : 1};
    enum wall_way way = (enum wall_way)bd->beam->wall_at_end[end].choice;
    bool in_line = way == WAY_IN_LINE;
    enum side along = in_line ? THROUGH : DEPTH, across = in_line ? DEPTH : THROUGH;
    if (way != WAY_UNANSWERED) /* asked about elsewhere; its bearing is then the smaller side */
        lean.by[along] = fmax(side_in(pd, along) - length_inches(bd->bearing[end]), 0) / 2;
    lean.by[across] = length_inches(bd->beam->off_center[end].length);
    return lean;
}

/* Between its ends a beam has the post under it in the middle; only across it may lie beside the center. */
static struct lean lean_between(const struct inner_design *inner)
{
    struct lean lean = {.lb = &inner->lb, .toward = 1};
    enum side across = inner->inner->way == WAY_IN_LINE ? DEPTH : THROUGH;
    lean.by[across] = length_inches(inner->inner->off);
    return lean;
}

static size_t leans_of(struct sizing *s, const struct post_design *pd, struct lean *out)
{
    size_t count = 0;
    for (size_t i = 0; i < s->job->beam_count; i++)
        for (int end = 0; end < 2; end++) {
            const struct beam_end *at = &s->job->beams[i].end_[end];
            if (at->kind == END_POST && &s->design->posts[at->ref.index] == pd && s->design->beams[i].member)
                out[count++] = lean_of(pd, &s->design->beams[i], end);
        }
    for (size_t i = 0; i < s->job->beam_count; i++)
        for (size_t k = 0; k < s->design->beams[i].inner_count; k++)
            if (s->design->beams[i].inner[k].post == pd && s->design->beams[i].member)
                out[count++] = lean_between(&s->design->beams[i].inner[k]);
    return count;
}

/* The worst pattern of a combination: all loads of the beams on one side, dead load alone of those on the other. */
struct pattern {
    double moment, lb; /* in-lb about the post's center, and what comes down with it */
};

static struct pattern worst_pattern(const struct lean *lean, size_t count, enum side side,
                                    const struct combination *combo)
{
    struct pattern worst = {0};
    for (int toward = -1; toward <= 1; toward += 2) {
        struct pattern p = {0};
        for (size_t i = 0; i < count; i++) {
            const struct loads *lb = lean[i].lb;
            bool with = lean[i].toward == toward;
            double down = with ? combined(combo, lb) : lb->of[LOAD_DEAD] * combo->factor[LOAD_DEAD];
            p.lb += down;
            p.moment += (with ? 1 : -1) * down * lean[i].by[side];
        }
        if (p.moment > worst.moment)
            worst = p;
    }
    return worst;
}

/* 15.4.1 with no other bending: (fc/Fc')^2 + M/S (1 + 0.234 fc/FcE) / (Fb' (1 - fc/FcE)), from memory. */
static struct check rate(struct sizing *s, const struct post_design *pd, const struct wood_post *column, enum side side,
                         const struct pattern *pattern, const struct combination *combo)
{
    const struct wood_piece *piece = &column->piece;
    double d = side_in(pd, side), length = side == DEPTH ? column->along_in : column->across_in;
    double area = wood_area(piece), fc = combined(combo, &pd->lb) / area;
    struct wood_post_rating rating = wood_post_rate(column, combo->cd);
    struct wood_bending bending = wood_bending(piece, combo->cd, 1, column->across_in, LE_NOT_LISTED, column->along_in);
    double slender = length / d, euler = slender > 0 ? 0.822 * piece->row->emin / (slender * slender) : INFINITY;
    double part = fc / euler, press = rating.capacity_lb > 0 ? fc * area / rating.capacity_lb : INFINITY;
    double fb = pattern->moment / (area * d / 6);
    double bend = part < 1 && bending.fb > 0 ? fb * (1 + 0.234 * part) / (bending.fb * (1 - part)) : INFINITY;
    struct check check =
        check_of("load off its center", "NDS 2018 3.9.2, 15.4.1, from memory", press * press + bend, 1, "of 1");
    check.combination = combo->name;
    check.note = arena_printf(s->arena, "e %s in of d %s in: fc %s psi, bending %s psi of Fb' %s psi, fc/FcE %s",
                              number_text(s->arena, pattern->moment / pattern->lb, 2), number_text(s->arena, d, 2),
                              number_text(s->arena, fc, 0), number_text(s->arena, fb, 0),
                              number_text(s->arena, bending.fb, 0), number_text(s->arena, part, 2));
    return check;
}

static void ask(struct sizing *s, const struct post_design *pd, const char *id, double by_in, double d)
{
    if (pd->post->engineer.at) {
        basis_add(s,
                  arena_printf(s->arena, "%s, loaded off its center: %s answers for it", id, pd->post->engineer.text));
        return;
    }
    diag_add(
        s->diags, DIAG_S011, &pd->post->head.at,
        "a beam bears on %s %s in off its center, more than a sixth of its %s in, and its plies do not bend through "
        "each other as one: move the beam, lengthen its bearing, take a post of one piece, or write 'engineer'",
        id, number_text(s->arena, by_in, 2), number_text(s->arena, d, 2));
}

void eccentric_check(struct sizing *s, const struct post_design *pd, const struct wood_post *column,
                     struct member_checks *checks)
{
    struct lean *lean = arena_array(s->arena, (2 + BEAM_INNER_MOST) * s->job->beam_count, sizeof *lean);
    size_t count = leans_of(s, pd, lean);
    struct check worst = {0};
    double off[SIDES] = {0, 0};
    for (size_t i = 0; i < s->combo_count; i++)
        for (int side = 0; side < SIDES && combo_applies(&s->combo[i], &pd->lb); side++) {
            struct pattern pattern = worst_pattern(lean, count, (enum side)side, &s->combo[i]);
            double e = pattern.lb > 0 ? pattern.moment / pattern.lb : 0;
            if (e <= side_in(pd, (enum side)side) / 6 + 1e-9)
                continue;
            off[side] = fmax(off[side], e);
            check_worse(&worst, rate(s, pd, column, (enum side)side, &pattern, &s->combo[i]));
        }
    if (off[THROUGH] > 0 && (pd->plies > 1 || off[DEPTH] > 0))
        ask(s, pd, checks->id, off[THROUGH], side_in(pd, THROUGH));
    else
        checks_add(s, checks, worst);
}
