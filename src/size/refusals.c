/* What is left to an engineer: beams beyond the limits of this program, and what the job says of the house. */
#include "size.h"

#include <math.h>

#include "sawbill/text.h"

static const char *whole_lb(struct sizing *s, double lb)
{
    return number_text(s->arena, ceil(lb - 1e-6), 0);
}

static void refuse_span(struct sizing *s, const struct beam_design *bd, const char *name)
{
    const struct beam *beam = bd->beam;
    length_t most = s->job->facts.beyond_span.length, clear = beam->clear_span.length;
    if (bd->inner_count > 0)
        clear = length_from_inches(12 * inner_widest_clear_ft(bd));
    if (clear > most)
        diag_add(s->diags, DIAG_S007, place_of(beam->clear_span.at, &beam->head),
                 "%s spans %s, more than the %s that are sized here without an engineer; write 'specified by', 'sheet' "
                 "and 'specified span'",
                 name, length_tape(s->arena, clear), length_tape(s->arena, most));
}

/* Asks at `at` where `lb` comes to more than the limit; the combinations are those of `present`. */
static void refuse_reaction(struct sizing *s, const struct loads *lb, const struct loads *present, const char *brings,
                            const struct place *at, const char *answer)
{
    double most = quantity_value(s->job->facts.beyond_reaction.quantity), greatest = 0;
    const char *combination = "";
    for (size_t i = 0; i < s->combo_count; i++) {
        double here = combined(&s->combo[i], lb);
        if (!combo_applies(&s->combo[i], present) || here <= greatest)
            continue;
        greatest = here;
        combination = s->combo[i].name;
    }
    if (greatest > most * (1 + 1e-9))
        diag_add(
            s->diags, DIAG_S007, at,
            "%s %s lb (%s), more than the %s lb that are followed to the ground here without an engineer; write %s",
            brings, whole_lb(s, greatest), combination, whole_lb(s, most), answer);
}

void refuse_post(struct sizing *s, const struct post_design *pd)
{
    if (pd->things > 1 && !pd->post->engineer.at)
        refuse_reaction(
            s, &pd->lb, &pd->lb,
            arena_printf(s->arena, "%s gathers, of %s,", head_name(s->arena, KIND_POST, &pd->post->head), pd->carries),
            &pd->post->head.at, "in it 'engineer = NAME, SHEET'");
}

void refuse_footing(struct sizing *s, const struct footing_design *fd)
{
    if (fd->posts > 1 && !fd->footing->engineer.at)
        refuse_reaction(s, &fd->lb, &fd->lb,
                        arena_printf(s->arena, "%s gathers, of %d posts,",
                                     head_name(s->arena, KIND_FOOTING, &fd->footing->head), fd->posts),
                        &fd->footing->head.at, "in it 'engineer = NAME, SHEET'");
}

static const char specify[] = "'specified by', 'sheet' and 'specified span'";

/* The limits are common practice, no source. */
void refuse_beyond(struct sizing *s, const struct beam_design *bd, const struct loads *present)
{
    const char *name = head_name(s->arena, KIND_BEAM, &bd->beam->head);
    if (bd->beam->specified_by.at)
        return;
    refuse_span(s, bd, name);
    for (int end = 0; end < 2; end++)
        refuse_reaction(s, &bd->end_lb[end], present, arena_printf(s->arena, "end %d of %s brings", end + 1, name),
                        place_of(bd->beam->end_[end].at, &bd->beam->head), specify);
    for (size_t i = 0; i < bd->inner_count; i++)
        refuse_reaction(s, &bd->inner[i].lb, present,
                        arena_printf(s->arena, "inner support %zu of %s brings", i + 1, name),
                        place_of(bd->inner[i].inner->on.at, &bd->beam->head), specify);
}

void refusals_say(struct sizing *s)
{
    const struct job_facts *facts = &s->job->facts;
    basis_add(
        s, arena_printf(s->arena,
                        "left to an engineer, common practice: clear spans over %s, ends of beams that bring more "
                        "than %s lb, posts and footings that gather more%s",
                        length_tape(s->arena, facts->beyond_span.length),
                        whole_lb(s, quantity_value(facts->beyond_reaction.quantity)),
                        facts->unusual.set == 1U << UNUSUAL_NONE ? "; the job says that it has nothing else of the kind"
                                                                 : ""));
    for (int what = UNUSUAL_MASONRY_ABOVE; what < UNUSUAL_COUNT; what++) {
        const char *word = choice_name("job", "unusual", what);
        if (facts->unusual.set & (1U << (unsigned)what))
            unchecked_add(s, facts->unusual_engineer.at
                                 ? arena_printf(s->arena, "not checked: %s, by the engineer (%s)", word,
                                                facts->unusual_engineer.text)
                                 : arena_printf(s->arena, "not checked: %s: an engineer must say", word));
    }
    if (facts->unusual.set == 0 || facts->unusual.set & (1U << UNUSUAL_UNKNOWN))
        unchecked_add(s, "not checked: whether the house has what is left to an engineer: the job does not say");
}
