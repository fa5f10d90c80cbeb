/* The plan of one beam as it lies: faces, ends, shores. */
#include "field.h"

#include "sawbill/text.h"

static const struct field_column PLAN[] = {
    {"END 1", "end_1", FIELD_TEXT, 6, true},
    {"from END 1 to END 2", "between", FIELD_TEXT, 12, true},
    {"END 2", "end_2", FIELD_TEXT, 6, true},
};
static const char *const SETS[] = {"", "flush", "upset", "dropped"};

static const char *post_text(const struct field_beam *of, const struct post *post)
{
    const struct post_design *design = field_post(of, post);
    const char *name = head_name(of->arena, KIND_POST, &post->head);
    if (!design)
        return name;
    return arena_printf(of->arena, "%s: %s, %s high", name, field_member(of->arena, design->member, design->plies),
                        length_tape(of->arena, post->height.length));
}

static const char *support_text(const struct field_beam *of, const struct beam_end *end)
{
    switch (end->kind) {
    case END_POST:
        return post_text(of, &of->job->posts[end->ref.index]);
    case END_BEAM:
        return arena_printf(of->arena, "hangs on %s, %s from its END 1",
                            head_name(of->arena, KIND_BEAM, &of->job->beams[end->ref.index].head),
                            length_tape(of->arena, end->at_length));
    case END_PLATE:
        return "on the wall's plate";
    case END_POCKET:
        return "in a pocket cut into the wall";
    case END_HANGER:
        return "in a hanger";
    case END_UNANSWERED:
        break;
    }
    return "not said";
}

static const char *end_text(const struct field_beam *of, int end)
{
    const struct hanger *hanger = of->beam->end_hanger[end];
    struct buffer text = {.arena = of->arena};
    buffer_printf(&text, "%s; bearing %s", support_text(of, &of->beam->beam->end_[end]),
                  length_tape(of->arena, of->beam->bearing[end]));
    if (of->beam->past_in[end] > 0)
        buffer_printf(&text, "; runs on %s past it", length_tape(of->arena, of->beam->beam->overhang[end].length));
    if (hanger)
        buffer_printf(&text, "; hanger %s", hanger->code);
    if (of->beam->held[end])
        buffer_printf(&text, "; held upright by %s", of->beam->held[end]);
    return buffer_text(&text);
}

static struct field_cell *row_of(const struct field_beam *of, struct field_table *table, const char *between)
{
    struct field_cell *row = field_row(of->arena, table);
    row[1] = field_text(between);
    return row;
}

static void add_face(struct field_beam *of, struct field_table *table, int side)
{
    const struct joist_design *joists = of->beam->side[side];
    if (!joists) {
        row_of(of, table, arena_printf(of->arena, "FACE %s: no joists", field_side(side)));
        return;
    }
    row_of(of, table,
           arena_printf(of->arena, "FACE %s: %s, %zu of them, run %s from the far bearing to the beam's middle line",
                        field_side(side), head_name(of->arena, KIND_JOISTS, &joists->joists->head), joists->count,
                        length_tape(of->arena, joists->joists->run.length)));
}

/* side -1: shores that stand at neither face alone. */
static void add_shores(struct field_beam *of, struct field_table *table, int side)
{
    for (size_t i = 0; i < of->design->shore_count; i++) {
        const struct shore_design *shore = &of->design->shores[i];
        if (!field_has_shore(of, shore) || field_shore_side(of, shore->shore) != side)
            continue;
        row_of(of, table,
               arena_printf(of->arena, "%s: %s from the wall, %s long, %s high",
                            head_name(of->arena, KIND_SHORE, &shore->shore->head),
                            length_tape(of->arena, shore->shore->set_back.length),
                            length_tape(of->arena, shore->length), length_tape(of->arena, shore->height)));
    }
}

static void add_beam(struct field_beam *of, struct field_table *table)
{
    const struct beam_design *beam = of->beam;
    struct buffer text = {.arena = of->arena};
    buffer_printf(&text, "BEAM %s, %s: %s", beam->beam->head.id, SETS[beam->beam->set.choice],
                  field_member(of->arena, beam->member, beam->plies));
    if (beam->member)
        buffer_printf(&text, ", %s wide x %s deep", length_tape(of->arena, beam->width),
                      length_tape(of->arena, beam->member->depth));
    buffer_printf(&text, ", %s long; %s clear between the supports", length_tape(of->arena, beam->cut_length),
                  length_tape(of->arena, beam->beam->clear_span.length));
    struct field_cell *row = row_of(of, table, buffer_text(&text));
    row[0] = field_text(end_text(of, 0));
    row[2] = field_text(end_text(of, 1));
    for (size_t i = 0; i < beam->beam->inner.count; i++) {
        const struct beam_inner *inner = &beam->beam->inner.item[i];
        row_of(of, table,
               arena_printf(of->arena, "between, its middle %s from END 1: %s",
                            length_tape(of->arena, inner->on.at_length), support_text(of, &inner->on)));
    }
}

void field_plan(struct field_beam *of)
{
    struct field_part *part = field_part_add(of->arena, of->sheet, "plan", "Plan, seen from above");
    field_add(of->arena, part, FIELD_SAY,
              "Paint END 1, END 2, A and B on floor, ceiling and beam before anything else. Hook the tape once, on END "
              "1: every measure on this sheet runs from there on both faces, to the nearest 1/16 in.");
    struct field_table *table = field_table_add(of->arena, part, "plan", "", PLAN, sizeof PLAN / sizeof *PLAN);
    add_face(of, table, 0);
    add_shores(of, table, 0);
    add_beam(of, table);
    add_shores(of, table, 1);
    add_face(of, table, 1);
    add_shores(of, table, -1);
}
