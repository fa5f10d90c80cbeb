/* What loads do not decide: a long floor that bounces, rafters in level hangers, treated wood that eats steel, wood on
 * concrete. */
#include <string.h>

#include "size.h"

#include "sawbill/text.h"

/* Beyond it a floor that keeps every deflection limit is often felt to bounce (common practice, no source). */
enum { BOUNCE_FT = 14 };

static void say_bounce(struct sizing *s, const struct joist_design *jd)
{
    const struct area *area = area_of(s->job, &jd->joists->area);
    bool lived_on = area && (area->live_is.choice == LIVE_FLOOR || area->live_is.choice == LIVE_SLEEPING);
    if (lived_on && jd->joists->run.length > BOUNCE_FT * LENGTH_FOOT)
        unchecked_add(s, arena_printf(s->arena,
                                      "not checked: vibration of %s: they run %s; over 14 ft a floor within its "
                                      "deflection limits is often felt to bounce (common practice, no source)",
                                      head_name(s->arena, KIND_JOISTS, &jd->joists->head),
                                      length_tape(s->arena, jd->joists->run.length)));
}

/* A hanger that is listed for level joists does not seat a sloped one. */
static void say_slope(struct sizing *s, const struct joist_design *jd)
{
    bool hung = false;
    for (size_t i = 0; i < jd->count; i++)
        hung = hung || jd->end[i].hanger;
    if (hung && jd->joists->kind.choice == JOIST_RAFTER)
        engineer(s, &jd->joists->head.at,
                 arena_printf(s->arena,
                              "%s hang on %s and slope: the hangers of hangers.csv are listed for level joists; take "
                              "sloped ones, at the load that their maker lists",
                              head_name(s->arena, KIND_JOISTS, &jd->joists->head),
                              head_name(s->arena, KIND_BEAM, &jd->beam->head)));
}

static bool is_treated(struct sizing *s, const struct member *member)
{
    if (!member)
        return false;
    const char *words = arena_printf(s->arena, "%s %s", member->material ? member->material : "",
                                     member->moisture ? member->moisture : "");
    return strstr(name_fold(s->arena, words), "treated") != NULL;
}

/* S012: the coating is between the maker of the hanger and that of the treatment (IRC R317.3, from memory). */
static void judge_coating(struct sizing *s, const struct beam_design *bd, const struct hanger *hanger)
{
    if (!hanger || (hanger->coating && *hanger->coating))
        return;
    diag_add(s->diags, DIAG_S012, place_of(bd->beam->member.at, &bd->beam->head),
             "%s touches %s, which is of treated wood, and hangers.csv does not say its coating: treated wood eats "
             "plain zinc (IRC R317.3, from memory: unverified); write the coating that its maker allows there into "
             "the column 'coating'",
             hanger->code, head_name(s->arena, KIND_BEAM, &bd->beam->head));
}

static void judge_beam(struct sizing *s, size_t index)
{
    const struct beam_design *bd = &s->design->beams[index];
    if (!is_treated(s, bd->member))
        return;
    for (int side = 0; side < 2; side++) {
        const struct joist_design *jd = bd->side[side];
        judge_coating(s, bd, bd->end_hanger[side]);
        for (size_t i = 0; jd && i < jd->count; i++)
            judge_coating(s, bd, jd->end[i].hanger);
        judge_coating(s, bd, jd ? jd->strap : NULL);
    }
    for (size_t i = 0; i < s->design->beam_count; i++)
        for (int end = 0; end < 2; end++) {
            const struct beam_end *at = &s->job->beams[i].end_[end];
            if (at->kind == END_BEAM && at->ref.index == index)
                judge_coating(s, bd, s->design->beams[i].end_hanger[end]);
        }
}

static void say_nails(struct sizing *s, const char *name, const struct member *member)
{
    if (is_treated(s, member))
        unchecked_add(
            s, arena_printf(s->arena, "not checked: the coating of nails and straps in the treated wood of %s", name));
}

/* IRC 2021 R317.1, from memory: posts on concrete. */
static void say_on_concrete(struct sizing *s, const struct post_design *pd)
{
    const struct ref_value *on = &pd->post->stands_on;
    bool footing = on->at && on->kind == KIND_FOOTING;
    if (footing && pd->post->status.choice != NE_EXISTING && !is_treated(s, pd->member))
        unchecked_add(s, arena_printf(s->arena,
                                      "not checked: %s stands on concrete: treated wood, or a post base that holds it "
                                      "up (IRC 2021 R317.1, from memory)",
                                      head_name(s->arena, KIND_POST, &pd->post->head)));
}

void care_check(struct sizing *s)
{
    const struct design *design = s->design;
    for (size_t i = 0; i < design->joists_count; i++) {
        say_bounce(s, &design->joists[i]);
        say_slope(s, &design->joists[i]);
    }
    for (size_t i = 0; i < design->post_count; i++)
        say_on_concrete(s, &design->posts[i]);
    for (size_t i = 0; i < design->beam_count; i++) {
        judge_beam(s, i);
        say_nails(s, head_name(s->arena, KIND_BEAM, &design->beams[i].beam->head), design->beams[i].member);
    }
    for (size_t i = 0; i < design->post_count; i++)
        say_nails(s, head_name(s->arena, KIND_POST, &design->posts[i].post->head), design->posts[i].member);
}
