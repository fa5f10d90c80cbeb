/* The crew's sheets: the model, its order, and what belongs to which beam. */
#include "field.h"

#include <math.h>

#include "sawbill/text.h"

struct field_part *field_part_add(struct arena *arena, struct field_sheet *sheet, const char *key, const char *title)
{
    sheet->part = arena_more(arena, sheet->part, sheet->count, &sheet->capacity, sizeof *sheet->part);
    struct field_part *part = &sheet->part[sheet->count++];
    *part = (struct field_part){.key = key, .title = title};
    return part;
}

static struct field_item *add_item(struct arena *arena, struct field_part *part)
{
    part->item = arena_more(arena, part->item, part->count, &part->capacity, sizeof *part->item);
    return &part->item[part->count++];
}

void field_add(struct arena *arena, struct field_part *part, enum field_is is, const char *format, ...)
{
    va_list args;
    va_start(args, format);
    const char *text = arena_vprintf(arena, format, args);
    va_end(args);
    *add_item(arena, part) = (struct field_item){.is = is, .text = text};
}

struct field_table *field_table_add(struct arena *arena, struct field_part *part, const char *key, const char *title,
                                    const struct field_column *column, size_t columns)
{
    struct field_table *table = arena_alloc(arena, sizeof *table);
    *table = (struct field_table){.key = key, .title = title, .column = column, .columns = columns};
    *add_item(arena, part) = (struct field_item){.is = FIELD_TABLE, .table = table};
    return table;
}

struct field_cell *field_row(struct arena *arena, struct field_table *table)
{
    table->row = arena_more(arena, table->row, table->rows, &table->capacity, sizeof *table->row);
    struct field_cell *row = table->row[table->rows++];
    for (size_t i = 0; i < FIELD_COLUMNS_MOST; i++)
        row[i] = (struct field_cell){.number = NAN};
    return row;
}

struct field_cell field_text(const char *text)
{
    return (struct field_cell){.text = text, .number = NAN};
}

struct field_cell field_length(struct arena *arena, length_t length)
{
    return (struct field_cell){.text = length_tape(arena, length), .number = length_inches(length)};
}

struct field_cell field_number(struct arena *arena, double number, int decimals)
{
    if (!isfinite(number))
        return field_text("-");
    return (struct field_cell){.text = number_text(arena, number, decimals), .number = number};
}

struct field_cell field_lengths(struct arena *arena, const length_t *length, size_t count)
{
    struct buffer text = {.arena = arena};
    for (size_t i = 0; i < count; i++)
        buffer_printf(&text, "%s%s", i ? ", " : "", length_tape(arena, length[i]));
    return (struct field_cell){.text = buffer_text(&text), .number = NAN, .length = length, .count = count};
}

static const char NO_BREAK[] = "\xC2\xA0"; /* U+00A0 */

const char *field_unbroken(struct arena *arena, const char *text)
{
    struct buffer out = {.arena = arena};
    for (const char *c = text; *c; c++)
        buffer_add_n(&out, *c == ' ' ? NO_BREAK : c, *c == ' ' ? sizeof NO_BREAK - 1 : 1);
    return buffer_text(&out);
}

const char *field_shown(struct arena *arena, const char *text)
{
    struct buffer out = {.arena = arena};
    for (const char *c = text ? text : ""; *c; c++) {
        bool within = *c == ' ' && c > text && c[-1] == '\'' && c[1] >= '0' && c[1] <= '9';
        buffer_add_n(&out, within ? NO_BREAK : c, within ? sizeof NO_BREAK - 1 : 1);
    }
    return buffer_text(&out);
}

bool field_hangs_joists(const struct beam *beam)
{
    return beam->set.choice != SET_DROPPED;
}

const char *field_side(int side)
{
    return side ? "B" : "A";
}

const char *field_member(struct arena *arena, const struct member *member, int plies)
{
    return member ? arena_printf(arena, "%d - %s", plies, member->code) : "no member";
}

static size_t beam_index(const struct field_beam *of)
{
    return (size_t)(of->beam->beam - of->job->beams);
}

static bool is_this(const struct field_beam *of, const struct ref_value *ref)
{
    return ref->at && ref->kind == KIND_BEAM && ref->index == beam_index(of);
}

/* Does what a shore holds come onto this beam? */
static bool comes_here(const struct field_beam *of, const struct ref_value *ref)
{
    switch (ref->kind) {
    case KIND_BEAM:
        return ref->index == beam_index(of);
    case KIND_JOISTS:
        for (int side = 0; side < 2; side++) {
            const struct ref_value *joists = &of->beam->beam->joists[side];
            if (joists->at && joists->index == ref->index)
                return true;
        }
        return false;
    case KIND_LOAD:
        return is_this(of, &of->job->loads[ref->index].on);
    case KIND_WALL:
        return is_this(of, &of->job->walls[ref->index].under) || is_this(of, &of->job->walls[ref->index].on);
    case KIND_POST:
        return is_this(of, &of->job->posts[ref->index].stands_on);
    case KIND_ROOF:
        return is_this(of, &of->job->roof.braces_on);
    default:
        return false;
    }
}

static bool is_by(const struct field_beam *of, const struct ref_value *held_by, const struct shore *shore)
{
    return held_by->at && &of->job->shores[held_by->index] == shore;
}

/* Loads and obstructions may name their shore themselves. */
static bool is_named_here(const struct field_beam *of, const struct shore *shore)
{
    for (size_t i = 0; i < of->job->load_count; i++)
        if (is_this(of, &of->job->loads[i].on) && is_by(of, &of->job->loads[i].held_by, shore))
            return true;
    for (size_t i = 0; i < of->job->obstruction_count; i++)
        if (is_this(of, &of->job->obstructions[i].on) && is_by(of, &of->job->obstructions[i].held_by, shore))
            return true;
    return false;
}

static bool holds_a_frame(const struct shore *shore)
{
    for (size_t i = 0; i < shore->holds.count; i++)
        if (shore->holds.item[i].kind == KIND_JOISTS || shore->holds.item[i].kind == KIND_BEAM)
            return true;
    return false;
}

bool field_has_shore(const struct field_beam *of, const struct shore_design *shore)
{
    const struct refs_value *holds = &shore->shore->holds;
    for (size_t i = 0; i < holds->count; i++)
        if (comes_here(of, &holds->item[i]))
            return true;
    return is_named_here(of, shore->shore) || !holds_a_frame(shore->shore);
}

int field_shore_side(const struct field_beam *of, const struct shore *shore)
{
    int found = -1;
    for (size_t i = 0; i < shore->holds.count; i++)
        for (int side = 0; side < 2; side++) {
            const struct ref_value *joists = &of->beam->beam->joists[side], *held = &shore->holds.item[i];
            if (!joists->at || held->kind != KIND_JOISTS || held->index != joists->index)
                continue;
            if (found >= 0 && found != side)
                return -1;
            found = side;
        }
    return found;
}

const struct cut_side *field_cut_side(const struct field_beam *of, int side)
{
    for (size_t i = 0; i < of->takeoff->cut_side_count; i++) {
        const struct cut_side *cut = &of->takeoff->cut_side[i];
        if (cut->design->beam == of->beam->beam && cut->design->side == side)
            return cut;
    }
    return NULL;
}

const struct post_design *field_post(const struct field_beam *of, const struct post *post)
{
    for (size_t i = 0; i < of->design->post_count; i++)
        if (of->design->posts[i].post == post)
            return &of->design->posts[i];
    return NULL;
}

static bool hangs_here(const struct field_beam *of, const struct beam_end *end)
{
    return end->kind == END_BEAM && end->ref.at && end->ref.index == beam_index(of);
}

bool field_carries_hung(const struct field_beam *of)
{
    for (size_t i = 0; i < of->job->beam_count; i++)
        if (hangs_here(of, &of->job->beams[i].end_[0]) || hangs_here(of, &of->job->beams[i].end_[1]))
            return true;
    for (size_t i = 0; i < of->design->opening_count; i++) {
        const struct opening_design *opening = &of->design->openings[i];
        if (opening->side && opening->side->beam == of->beam->beam && opening->trimmers[0].hanger)
            return true;
    }
    return false;
}

static bool is_post(const struct beam_end *end, size_t post)
{
    return end->kind == END_POST && end->ref.at && end->ref.index == post;
}

bool field_has_post(const struct field_beam *of, size_t post)
{
    const struct beam *beam = of->beam->beam;
    for (size_t i = 0; i < beam->inner.count; i++)
        if (is_post(&beam->inner.item[i].on, post))
            return true;
    return is_post(&beam->end_[0], post) || is_post(&beam->end_[1], post) ||
           is_this(of, &of->job->posts[post].stands_on);
}

static void (*const PARTS[])(struct field_beam *) = {
    field_stop,  field_plan,     field_shores, field_joists, field_plies,  field_posts,
    field_marks, field_hardware, field_raise,  field_lower,  field_finish,
};

static struct field_sheet *sheet_add(struct arena *arena, struct field *field, const char *id, const char *title)
{
    field->sheet = arena_more(arena, field->sheet, field->count, &field->capacity, sizeof *field->sheet);
    struct field_sheet *sheet = &field->sheet[field->count++];
    *sheet = (struct field_sheet){.id = id, .title = title};
    return sheet;
}

static void add_beam(struct arena *arena, struct field *field, const struct report *report, size_t index)
{
    const struct run *run = report->outcome->run;
    struct field_beam of = {.arena = arena,
                            .report = report,
                            .job = report->job,
                            .run = run,
                            .design = run->design,
                            .takeoff = run->takeoff,
                            .beam = &run->design->beams[index]};
    of.name = head_name(arena, KIND_BEAM, &of.beam->beam->head);
    of.sheet =
        sheet_add(arena, field, of.name,
                  arena_printf(arena, "%s: %s, %s long", of.name, field_member(arena, of.beam->member, of.beam->plies),
                               length_tape(arena, of.beam->cut_length)));
    for (size_t i = 0; i < sizeof PARTS / sizeof *PARTS; i++)
        PARTS[i](&of);
}

static const struct field_column WORK[] = {
    {"", "place", FIELD_NUMBER, 2, false},    {"Task", "task", FIELD_TEXT, 9, true},
    {"Of", "of", FIELD_TEXT, 6, true},        {"Trade", "trade", FIELD_TEXT, 4, true},
    {"Crew", "crew", FIELD_NUMBER, 3, false},
};

/* In the order of work, equal places as they were counted. */
static void add_work(struct arena *arena, struct field *field, const struct estimate *estimate)
{
    struct field_sheet *sheet = sheet_add(arena, field, "job", "the whole job");
    struct field_part *part = field_part_add(arena, sheet, "work", "Order of work");
    struct field_table *table = field_table_add(arena, part, "work", "", WORK, sizeof WORK / sizeof *WORK);
    for (size_t i = 0; i < estimate->labor_count; i++) {
        const struct labor_line *line = &estimate->labor[i];
        struct field_cell *row = field_row(arena, table);
        row[0] = field_number(arena, (double)i + 1, 0);
        row[1] = field_text(line->what);
        row[2] = field_text(arena_printf(arena, "%s %s", decimal_text(arena, line->count), line->per));
        row[3] = field_text(line->trade ? line->trade->trade : "");
        row[4] = field_number(arena, line->crew, 0);
    }
}

struct field field_of(struct arena *arena, const struct report *report)
{
    struct field field = {0};
    const struct run *run = report->outcome ? report->outcome->run : NULL;
    if (!run || !run->design || !run->takeoff)
        return field;
    for (size_t i = 0; i < run->design->beam_count; i++) {
        const struct beam *beam = run->design->beams[i].beam;
        if (beam && beam->status.choice != NE_EXISTING)
            add_beam(arena, &field, report, i);
    }
    if (field.count > 0 && run->estimate && run->estimate->labor_count > 0)
        add_work(arena, &field, run->estimate);
    return field;
}
