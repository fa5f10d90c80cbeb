/* An upset beam: what keeps its top from going aside.
 *
 * Kickers, as some call them: short braces from its top down to the joists (every 4 ft at most: common practice, no
 * source). */
#include "size.h"

#include <math.h>

#include "sawbill/text.h"

void upset_lay_out(struct beam_design *bd)
{
    double every = length_inches(bd->beam->kickers_every.length);
    bd->kickers = 0;
    bd->kicker_spacing_in = 0;
    if (bd->beam->set.choice != SET_UPSET || every <= 0 || bd->design_span_in <= every + 1e-9)
        return;
    double spaces = ceil(bd->design_span_in / every - 1e-9);
    bd->kickers = (int)spaces - 1;
    bd->kicker_spacing_in = bd->design_span_in / spaces;
}

static void ask_kickers(struct sizing *s, const struct beam_design *bd)
{
    bool one_sided = !bd->side[0] != !bd->side[1];
    if (!one_sided || bd->beam->kickers_every.at || bd->beam->specified_by.at)
        return;
    diag_add(
        s->diags, DIAG_S005, place_of(bd->beam->set.at, &bd->beam->head),
        "%s is upset and carries joists on one side only: what keeps it from rolling? write 'kickers every = 4 ft' "
        "and 'kickers of' for braces from its top down to the joists, or 'specified by'",
        head_name(s->arena, KIND_BEAM, &bd->beam->head));
}

static void find_kicker(struct sizing *s, struct beam_design *bd)
{
    const struct text_value *of = &bd->beam->kickers_of;
    bd->kicker = of->at ? catalog_member(s->catalog, of->text) : NULL;
    if (of->at && !bd->kicker)
        diag_add(s->diags, DIAG_C006, place_of(of->at, &bd->beam->head),
                 "'%s', of kickers, is not a code in members.csv", of->text);
}

void upset_check(struct sizing *s, size_t index)
{
    struct beam_design *bd = &s->design->beams[index];
    if (bd->beam->set.choice != SET_UPSET)
        return;
    find_kicker(s, bd);
    ask_kickers(s, bd);
}

void upset_say(struct sizing *s, const struct beam_design *bd)
{
    const char *name = head_name(s->arena, KIND_BEAM, &bd->beam->head);
    if (bd->beam->set.choice != SET_UPSET)
        return;
    if (bd->kickers > 0) {
        basis_add(s,
                  arena_printf(s->arena, "%s: upset, its top edge held by kickers or straps in %d places, %s apart: lu",
                               name, bd->kickers, length_tape(s->arena, length_from_inches(bd->kicker_spacing_in))));
        unchecked_add(
            s, arena_printf(s->arena, "not checked: the force in the kickers of %s, and what they are fixed to", name));
    } else {
        basis_add(s, arena_printf(s->arena, "%s: upset, its top edge is not held: lu = design span", name));
        unchecked_add(s, arena_printf(s->arena, "not checked: the roll of %s", name));
    }
}
