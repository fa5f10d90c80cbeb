/* A beam's supports between its ends: "post P3 at 9 ft 6 in, wall in line", and what must hold of them all. */
#include <string.h>

#include "rules.h"

#define EXAMPLE_POST  "post P3 at 9 ft 6 in, wall in line"
#define EXAMPLE_PLATE "wall plate at 9 ft 6 in, bearing 3-1/2 in"

/* What stands there and where: "post P3 at 9 ft 6 in". */
static bool read_support(struct checker *checker, const struct key_row *row, const struct entry *entry,
                         const char *text, struct beam_inner *out)
{
    struct arena *arena = checker->arena;
    const char *place = NULL;
    char *what = before_place(arena, text, &place), *kind_word = NULL, *id = NULL;
    section_split(arena, what, &kind_word, &id);
    if (name_same(what, "wall plate") || name_same(what, "plate")) {
        out->on.kind = END_PLATE;
    } else if (name_same(kind_word, "post")) {
        out->on.kind = END_POST;
        if (!ref_read(checker, row, what, entry, &out->on.ref))
            return false;
    } else {
        diag_add(checker->diags, DIAG_K010, &entry->at, "'%s' is no answer to '%s'; write '%s' or '%s'", what, row->key,
                 EXAMPLE_POST, EXAMPLE_PLATE);
        return false;
    }
    if (place)
        return place_read(checker, row, entry, place, EXAMPLE_POST, &out->on.at_length);
    diag_add(checker->diags, DIAG_K017, &entry->at,
             "'%s' for '%s' does not say where; write '%s at LENGTH', to its middle from end 1 of the beam", text,
             row->key, what);
    return false;
}

static bool starts(const char *folded, const char *with)
{
    return strncmp(folded, with, strlen(with)) == 0;
}

/* "held by blocks of DFL2-2X10": what, and the catalog code behind the last " of ". */
static bool read_held(struct checker *checker, const struct key_row *row, const struct entry *entry, const char *text,
                      struct beam_inner *out)
{
    static const char *const words[] = {
        [HELD_BLOCKS] = "blocks of ", [HELD_STRAPS] = "straps of ", [HELD_KING_STUDS] = "king studs of "};
    const char *what = text + sizeof "held by " - 1;
    for (int held = HELD_BLOCKS; held <= HELD_KING_STUDS; held++)
        if (starts(name_fold(checker->arena, what), words[held])) {
            out->held = (enum end_held)held;
            out->held_of =
                (struct text_value){.text = text_trim(checker->arena, what + strlen(words[held])), .at = entry};
        }
    if (out->held != HELD_UNANSWERED && out->held_of.text && *out->held_of.text)
        return true;
    diag_add(checker->diags, DIAG_K010, &entry->at,
             "'%s' is no part of '%s'; write 'held by blocks of CODE', 'straps of CODE' or 'king studs of CODE'", text,
             row->key);
    return false;
}

static bool read_off(struct checker *checker, const struct key_row *row, const struct entry *entry, const char *text,
                     struct beam_inner *out)
{
    const char *length = text_trim(checker->arena, text + sizeof "off center " - 1);
    if (!place_read(checker, row, entry, length, EXAMPLE_POST, &out->off))
        return false;
    if (out->off >= 0 && out->off <= LENGTH_FOOT)
        return true;
    diag_add(checker->diags, DIAG_K009, &entry->at, "'%s' for '%s' is not possible; it lies within 0 in to 12 in", text,
             row->key);
    return false;
}

/* "wall in line", "wall across", "bearing 3-1/2 in", "off center 1/2 in", "held by blocks of DFL2-2X10" */
static bool read_more(struct checker *checker, const struct key_row *row, const struct entry *entry, const char *text,
                      struct beam_inner *out)
{
    static const char bearing[] = "bearing ";
    const char *folded = name_fold(checker->arena, text);
    if (!strcmp(folded, "wall in line") || !strcmp(folded, "wall across")) {
        out->way = folded[5] == 'i' ? WAY_IN_LINE : WAY_ACROSS;
        return true;
    }
    if (starts(folded, "held by "))
        return read_held(checker, row, entry, text, out);
    if (starts(folded, "off center "))
        return read_off(checker, row, entry, text, out);
    if (!starts(folded, bearing)) {
        diag_add(checker->diags, DIAG_K010, &entry->at,
                 "'%s' is no part of '%s'; write 'wall in line', 'wall across', 'bearing LENGTH', 'off center LENGTH' "
                 "or 'held by blocks of CODE'",
                 text, row->key);
        return false;
    }
    const char *length = text_trim(checker->arena, text + sizeof bearing - 1);
    if (!place_read(checker, row, entry, length, EXAMPLE_PLATE, &out->bearing))
        return false;
    if (out->bearing >= LENGTH_INCH / 2 && out->bearing <= 24 * LENGTH_INCH)
        return true;
    diag_add(checker->diags, DIAG_K009, &entry->at, "'%s' for '%s' is not possible; it lies within 1/2 in to 24 in",
             text, row->key);
    return false;
}

void inner_read(struct checker *checker, const struct key_row *row, const struct entry *entry, struct beam_inners *out)
{
    char **part = NULL;
    struct beam_inner inner = {.on.at = entry};
    size_t count = text_split(checker->arena, entry->value, &part);
    bool good = count > 0 && read_support(checker, row, entry, part[0], &inner);
    for (size_t i = 1; good && i < count; i++)
        good = read_more(checker, row, entry, part[i], &inner);
    if (!good)
        return;
    struct beam_inner *all = arena_array(checker->arena, out->count + 1, sizeof *all);
    if (out->count > 0)
        memcpy(all, out->item, out->count * sizeof *all);
    all[out->count++] = inner;
    out->item = all;
}

static void inner_in_order(const struct ruling *ruling)
{
    const struct beam_inners *inner = &((const struct beam *)ruling->element)->inner;
    struct arena *arena = ruling->checker->arena;
    for (size_t i = 1; i < inner->count; i++) {
        length_t before = inner->item[i - 1].on.at_length, here = inner->item[i].on.at_length;
        if (here <= before)
            rule_broken(ruling, inner->item[i].on.at,
                        here == before ? "'inner' has two supports at %s; each has a place of its own"
                                       : "'inner' at %s does not come after that at %s; write them in order from end 1",
                        length_tape(arena, here), length_tape(arena, before));
    }
}

length_t farthest_place(const struct beam *beam)
{
    return beam->clear_span.length + beam->overhang[0].length + beam->overhang[1].length + LENGTH_FOOT;
}

/* As for beams that hang: a foot beyond the clear span is on no bearing of the trade any more. */
static void inner_within(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    struct arena *arena = ruling->checker->arena;
    for (size_t i = 0; i < beam->inner.count && beam->clear_span.at; i++) {
        const struct beam_end *on = &beam->inner.item[i].on;
        if (on->at_length <= 0 || on->at_length > farthest_place(beam))
            rule_broken(ruling, on->at, "'inner' at %s is not between the ends of %s, which spans %s",
                        length_tape(arena, on->at_length), ruling->name, length_tape(arena, beam->clear_span.length));
    }
    if (beam->inner.count > BEAM_INNER_MOST)
        rule_broken(ruling, beam->inner.item[BEAM_INNER_MOST].on.at, "%s has more than %d inner supports", ruling->name,
                    (int)BEAM_INNER_MOST);
}

/* A post stands in one place, so a beam stands on it once. */
static void inner_posts_once(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    for (size_t i = 0; i < beam->inner.count; i++) {
        const struct beam_end *on = &beam->inner.item[i].on;
        bool again = false;
        for (int end = 0; end < 2; end++)
            again |= beam->end_[end].kind == END_POST && ref_found(&beam->end_[end].ref) &&
                     beam->end_[end].ref.index == on->ref.index;
        for (size_t k = 0; k < i; k++)
            again |= beam->inner.item[k].on.kind == END_POST && beam->inner.item[k].on.ref.index == on->ref.index;
        if (on->kind == END_POST && again)
            rule_broken(ruling, on->at, "%s stands on post %s twice; each support is a post of its own", ruling->name,
                        ruling->job->posts[on->ref.index].head.id);
    }
}

static void inner_needs_bearing(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    for (size_t i = 0; i < beam->inner.count; i++) {
        const struct beam_inner *inner = &beam->inner.item[i];
        if (inner->on.kind == END_PLATE && inner->bearing == 0)
            rule_broken(ruling, inner->on.at, "'inner' on a wall plate needs its length on it; write '%s'",
                        EXAMPLE_PLATE);
    }
}

static void inner_beside_a_post(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    for (size_t i = 0; i < beam->inner.count; i++) {
        const struct beam_inner *inner = &beam->inner.item[i];
        if (inner->on.kind != END_POST && (inner->held == HELD_KING_STUDS || inner->off > 0))
            rule_broken(ruling, inner->on.at, "'%s' of 'inner' needs a post there",
                        inner->off > 0 ? "off center" : "held by king studs");
    }
}

/* Between supports a cut ply carries nothing on. */
static void splices_over_inner(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    for (size_t i = 0; i < beam->splices.count; i++) {
        bool over = false;
        for (size_t k = 0; k < beam->inner.count; k++)
            over |= beam->inner.item[k].on.at_length == beam->splices.item[i];
        if (!over)
            rule_broken(
                ruling, beam->splices.at,
                "'splices' has %s, where no inner support of %s has its middle; plies are cut over supports only",
                length_tape(ruling->checker->arena, beam->splices.item[i]), ruling->name);
    }
}

static void overhang_fits(const struct ruling *ruling)
{
    const struct beam *beam = ruling->element;
    for (int end = 0; end < 2; end++) {
        const struct length_value *overhang = &beam->overhang[end];
        enum end_kind kind = beam->end_[end].kind;
        bool slope = beam->roof_cut_pitch.at && beam->roof_cut_at.choice != (end ? END_ONE : END_TWO);
        if (!overhang->at || overhang->length == 0)
            continue;
        if (kind != END_POST && kind != END_PLATE && kind != END_UNANSWERED)
            rule_broken(ruling, overhang->at,
                        "'overhang %d' needs 'end %d' on a post or plate: nothing else lets the "
                        "wood run on",
                        end + 1, end + 1);
        else if (slope || beam->notch[end].at)
            rule_broken(ruling, overhang->at, "end %d has an overhang and is cut: an engineer must size both", end + 1);
    }
}

static const struct rule rules[] = {
    {KIND_BEAM, DIAG_K013, overhang_fits},       {KIND_BEAM, DIAG_K013, inner_in_order},
    {KIND_BEAM, DIAG_K009, inner_within},        {KIND_BEAM, DIAG_K013, inner_posts_once},
    {KIND_BEAM, DIAG_K017, inner_needs_bearing}, {KIND_BEAM, DIAG_K013, splices_over_inner},
    {KIND_BEAM, DIAG_K017, inner_beside_a_post},
};
const struct rules rules_of_inner = {rules, sizeof rules / sizeof *rules};
