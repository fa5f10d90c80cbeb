/* Posts: what comes down on them, the column by itself, its nails, a plate that it stands on. */
#include "size.h"

#include <math.h>
#include <string.h>

#include "sawbill/text.h"

/* It lies along the plies and must be as wide as they are deep: the post bears on all of it. */
static const struct member *cap_plate_of(struct sizing *s, const struct post_design *pd)
{
    const struct post *post = pd->post;
    const struct member *plate = post->cap_plate.at ? member_named(s, &post->cap_plate, &post->head, KIND_POST) : NULL;
    if (plate && pd->member && plate->depth < pd->member->depth)
        diag_add(s->diags, DIAG_K013, &post->cap_plate.at->at,
                 "'cap plate' of %s, %s wide, is narrower than the %s of its plies",
                 head_name(s->arena, KIND_POST, &post->head), length_tape(s->arena, plate->depth),
                 length_tape(s->arena, pd->member->depth));
    return plate;
}

void posts_resolve(struct sizing *s)
{
    for (size_t i = 0; i < s->job->post_count; i++) {
        struct post_design *pd = &s->design->posts[i];
        pd->post = &s->job->posts[i];
        pd->plies = pd->post->plies.count > 0 ? pd->post->plies.count : 1;
        pd->member = member_named(s, &pd->post->member, &pd->post->head, KIND_POST);
        pd->cap_plate = cap_plate_of(s, pd);
        const char *text = NULL;
        if (pd->member)
            pd->values = member_in_service(s, pd->member, &pd->post->service, &text);
        if (text)
            basis_add(s, arena_printf(s->arena, "%s: %s", head_name(s->arena, KIND_POST, &pd->post->head), text));
        pd->passes = true;
    }
}

static void bring(struct post_design *pd, const struct loads *lb, const char *what, struct buffer *text)
{
    pd->lb = loads_plus(pd->lb, *lb);
    pd->things++;
    buffer_printf(text, "%s%s", text->length ? "; " : "", what);
}

static void gather_inner(struct sizing *s, size_t beam, size_t post, struct buffer *text)
{
    const struct beam_design *bd = &s->design->beams[beam];
    for (size_t i = 0; i < bd->inner_count; i++) {
        const struct beam_end *on = &bd->inner[i].inner->on;
        if (on->kind == END_POST && on->ref.index == post)
            bring(&s->design->posts[post], &bd->inner[i].lb, inner_name(s, bd, i), text);
    }
}

/* Posts above first: what they bring comes down here. */
static void gather(struct sizing *s, size_t index, bool *done)
{
    struct post_design *pd = &s->design->posts[index];
    struct buffer text = {.arena = s->arena};
    if (done[index])
        return;
    done[index] = true;
    for (size_t b = 0; b < s->job->beam_count; b++) {
        for (int end = 0; end < 2; end++) {
            const struct beam_end *at = &s->job->beams[b].end_[end];
            if (at->kind != END_POST || at->ref.index != index)
                continue;
            const char *name =
                arena_printf(s->arena, "%s, end %d", head_name(s->arena, KIND_BEAM, &s->job->beams[b].head), end + 1);
            bring(pd, &s->design->beams[b].end_lb[end], name, &text);
        }
        gather_inner(s, b, index, &text);
    }
    for (size_t i = 0; i < s->job->post_count; i++) {
        if (i == index || !post_stands_on(s->job, &s->job->posts[i], KIND_POST, index))
            continue;
        gather(s, i, done);
        bring(pd, &s->design->posts[i].lb, head_name(s->arena, KIND_POST, &s->job->posts[i].head), &text);
    }
    pd->carries = buffer_text(&text);
    if (pd->member)
        pd->lb.of[LOAD_DEAD] += pd->plies * pd->member->weight_plf * length_feet(pd->post->height.length);
}

/* Rows and distances of 15.3.3 that this nail can keep in this post. */
static bool nail_keeps(const struct fastener *nail, const struct wood_piece *piece, struct wood_nailing *rule)
{
    double diameter = length_inches(nail->diameter), length = length_inches(nail->length);
    *rule = wood_nailing(piece->plies, piece->ply_in, piece->depth_in, diameter);
    if (!strstr(nail->kind, "nail") || diameter <= 0 || length < rule->needed_length - 1e-9)
        return false;
    if (length > piece->plies * piece->ply_in + 1e-9 || rule->spacing_least > rule->spacing_most)
        return false;
    double across = rule->rows == 2 ? piece->depth_in - rule->row_least : piece->depth_in;
    double reach = rule->rows == 2 ? piece->depth_in - rule->row_most : piece->depth_in;
    return across / 2 >= rule->edge_least && reach / 2 <= rule->edge_most;
}

static void choose_nail(const struct sizing *s, struct post_design *pd)
{
    struct wood_piece piece = post_wood(pd);
    struct wood_nailing rule;
    if (pd->plies < 2)
        return;
    for (size_t i = 0; i < s->catalog->fastener_count; i++) {
        const struct fastener *nail = &s->catalog->fasteners[i];
        if (!nail_keeps(nail, &piece, &rule) || (pd->nail && nail->length >= pd->nail->length))
            continue;
        pd->nail = nail;
        double row = length_inches(pd->post->height.length) - 2 * rule.end_least;
        pd->nails = rule.rows * ((int)ceil(fmax(row, 0) / rule.spacing_most - 1e-9) + 1);
    }
}

static const char *column_note(struct sizing *s, const struct wood_post_rating *rating, const struct wood_post *post,
                               double cd)
{
    struct buffer text = {.arena = s->arena};
    if (rating->fc_star <= 0)
        return "the grade is not for this width";
    buffer_printf(&text, "CD %s, Fc* %s psi, CP %s", number_text(s->arena, cd, 2),
                  number_text(s->arena, rating->fc_star, 0), number_text(s->arena, rating->cp, 3));
    if (post->along_in <= 0 && post->across_in <= 0)
        buffer_add(&text, " (braced both ways)");
    else
        buffer_printf(&text, ", le/d %s", number_text(s->arena, rating->slenderness, 1));
    if (rating->as_single_plies)
        buffer_add(&text, ", as single plies (15.3.2.2)");
    else if (post->piece.plies > 1 && post->across_in > 0)
        buffer_add(&text, ", Kf 0.6 through the plies");
    if (rating->too_slender)
        buffer_printf(&text, "; le/d is beyond %s (3.7.1.4)", number_text(s->arena, post->most_slender, 0));
    return buffer_text(&text);
}

static struct check column_check(struct sizing *s, const struct wood_post *post, const struct loads *lb)
{
    struct check worst = {0};
    for (size_t i = 0; i < s->combo_count; i++) {
        const struct combination *combo = &s->combo[i];
        if (!combo_applies(combo, lb))
            continue;
        struct wood_post_rating rating = wood_post_rate(post, combo->cd);
        struct check check = check_of("column", post->piece.plies > 1 ? "NDS 2018 3.7.1, 15.3" : "NDS 2018 3.7.1",
                                      combined(combo, lb), rating.capacity_lb, "lb");
        check.combination = combo->name;
        check.note = column_note(s, &rating, post, combo->cd);
        check_worse(&worst, check);
    }
    return worst;
}

static struct check plate_check(struct sizing *s, const struct post_design *pd, const struct member *plate)
{
    struct wood_piece piece = post_wood(pd);
    struct check worst = {0};
    for (size_t i = 0; i < s->combo_count; i++) {
        if (!combo_applies(&s->combo[i], &pd->lb))
            continue;
        struct check check =
            check_of("plate under the post", "NDS 2018 3.10.2", combined(&s->combo[i], &pd->lb) / wood_area(&piece),
                     plate->values->fc_perp, "psi");
        check.combination = s->combo[i].name;
        check.values = values_text(s->arena, plate->values);
        check.note = arena_printf(s->arena, "%s, Cb 1.0: the distance to the plate's end is not known", plate->code);
        check_worse(&worst, check);
    }
    return worst;
}

void post_on_plate(struct sizing *s, const struct post_design *pd, const struct ref_value *wall,
                   struct member_checks *checks)
{
    const struct member *plate = plate_member(s, wall);
    if (plate)
        checks_add(s, checks, plate_check(s, pd, plate));
    else
        unchecked_add(s, arena_printf(s->arena, "not checked: the plate under %s: members.csv has none", checks->id));
}

/* A post on a beam of the job is a load whose place is not known. */
static void fault_on_beam(struct sizing *s, const struct post *post)
{
    diag_add(s->diags, DIAG_S001, place_of(post->stands_on.at, &post->head),
             "%s stands on %s, but where along it is not said: give its load there as [load] with 'at', and say what "
             "the post stands on in words",
             head_name(s->arena, KIND_POST, &post->head),
             head_name(s->arena, KIND_BEAM, &s->job->beams[post->stands_on.index].head));
}

static struct wood_post column_of(const struct post_design *pd)
{
    double height = length_inches(pd->post->height.length);
    int braced = pd->post->braced.choice;
    return (struct wood_post){.piece = post_wood(pd),
                              /* in a sheathed wall a post can only bend out of the wall, along its plies' depth; not
                               * answered: free */
                              .along_in = braced == BRACED_BOTH ? 0 : height,
                              .across_in = braced == BRACED_BOTH || braced == BRACED_ONE ? 0 : height,
                              .most_slender = 50,
                              .nailed = pd->nail != NULL};
}

/* With what the job knows of an old post's wood. */
static const char *post_text(struct sizing *s, const struct post_design *pd)
{
    const char *text = member_text(s->arena, pd->member, pd->plies), *note = pd->post->species_note.text;
    return note && *note ? arena_printf(s->arena, "%s (%s)", text, note) : text;
}

static bool post_size(struct sizing *s, struct post_design *pd)
{
    const struct post *post = pd->post;
    choose_nail(s, pd);
    struct wood_post column = column_of(pd);
    struct member_checks *checks = checks_new(s, head_name(s->arena, KIND_POST, &post->head), post_text(s, pd));
    checks_wood(checks, pd->member->values);
    checks->unverified |= post->service.incised.choice == YES;
    if (!post->engineer.at)
        service_ask(s, pd->member, &post->service, checks->id, &post->head.at, "engineer");
    checks_add(s, checks, column_check(s, &column, &pd->lb));
    eccentric_check(s, pd, &column, checks);
    if (post->stands_on.at && post->stands_on.kind == KIND_WALL)
        post_on_plate(s, pd, &post->stands_on, checks);
    return checks_close(s, checks, &post->head.at);
}

void posts_size(struct sizing *s)
{
    bool *done = arena_array(s->arena, s->job->post_count, sizeof *done);
    for (size_t i = 0; i < s->job->post_count; i++)
        gather(s, i, done);
    for (size_t i = 0; i < s->job->post_count; i++) {
        struct post_design *pd = &s->design->posts[i];
        refuse_post(s, pd);
        if (pd->post->stands_on.at && pd->post->stands_on.kind == KIND_BEAM)
            fault_on_beam(s, pd->post);
        if (pd->member) {
            bool blocks = post_blocks_size(s, pd);
            pd->passes = post_size(s, pd) && blocks;
        } else {
            pd->passes = false;
        }
        post_write_below(s, pd);
    }
}
