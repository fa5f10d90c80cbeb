/* Joist hangers of each side, hangers of beam ends, tie straps: each with the nails of all its holes. */
#include "counting.h"

/* Names of the two legs: a hanger is nailed to what carries it and to what it carries, a strap at its two ends. */
static const struct {
    const char *id, *into;
} legs_of[][2] = {
    [CONNECTOR_HANGER] = {{"nails in the carrier", "into the carrier"},
                          {"nails in the member", "into the carried member"}},
    [CONNECTOR_STRAP] = {{"nails at one end", "at one end"}, {"nails at the other end", "at the other end"}},
    [CONNECTOR_CAP] = {{"nails in the carrier", "into the carrier"},
                       {"nails in the member", "into the carried member"}},
};

/* Nails of both legs of `count` connectors, whose own line is `of`; ones: "hangers". */
static void count_nails(struct counting *counting, const struct hanger *hanger, int64_t count, const char *ones,
                        const struct takeoff_line *of)
{
    const char *const nail[] = {hanger->carrier_nail, hanger->member_nail};
    const int holes[] = {hanger->carrier_count, hanger->member_count};
    for (size_t i = 0; i < 2; i++) {
        struct takeoff_line line = {
            .id = arena_printf(counting->arena, "%s/%s", of->id, legs_of[hanger->kind][i].id),
            .where = of->where,
            .counted = arena_printf(counting->arena, "%lld %s x %d nails %s", (long long)count, ones, holes[i],
                                    legs_of[hanger->kind][i].into),
            .at = of->at,
        };
        line_add_fasteners(counting, nail[i], count * holes[i], line);
    }
}

struct takeoff_line connector_line(struct counting *counting, const struct hanger *hanger, const char *name,
                                   int64_t count)
{
    return (struct takeoff_line){
        .what = arena_printf(counting->arena, "%s %s", name, hanger->code),
        .count = decimal_of(count),
        .unit = "each",
        .is = LINE_ITEM,
        .class = CLASS_MATERIALS,
        .item = hanger->item ? hanger->item : hanger->code,
        .cost_code = hanger->cost_code,
    };
}

void add_connector(struct counting *counting, const struct hanger *hanger, int64_t count, const char *ones,
                   struct takeoff_line line, const char *also)
{
    line_add(counting, line, also);
    const struct takeoff *takeoff = counting->takeoff;
    if (count > 0) {
        struct takeoff_line added = takeoff->line[takeoff->count - 1];
        count_nails(counting, hanger, count, ones, &added);
    }
}

/* Joists of one side that take the same hanger for the same reason. */
struct sort {
    const char *tail, *one, *many; /* behind the line's id; what they are called */
    const struct hanger *hanger;
    int64_t count;
};

static void count_sort(struct counting *counting, const struct joist_design *design, const struct sort *sort)
{
    struct arena *arena = counting->arena;
    const struct head *head = &design->joists->head;
    const char *side = side_name(design->side), *beam = head_name(arena, KIND_BEAM, &design->beam->head);
    const char *joists = number_of(arena, sort->count, sort->one, sort->many);
    if (!sort->hanger) {
        diag_add(counting->diags, DIAG_T002, &head->at, "no hanger fits: %s of '%s' on %s, side %s, have none counted",
                 joists, head_name(arena, KIND_JOISTS, head), beam, side);
        return;
    }
    struct takeoff_line line = connector_line(counting, sort->hanger, "joist hanger", sort->count);
    line.id = arena_printf(arena, "hangers/%s/%s%s", head->id, side, sort->tail);
    line.where = arena_printf(arena, "%s, side %s", beam, side);
    line.counted =
        arena_printf(arena, "%s, side %s: %s", joists, side, number_of(arena, sort->count, "hanger", "hangers"));
    line.at = head->at;
    add_connector(counting, sort->hanger, sort->count, sort->count == 1 ? "hanger" : "hangers", line,
                  design->beam->head.id);
}

static bool of_sort(const struct joist_end *end, bool own_size, bool doubled)
{
    return end->own_size == own_size && (own_size || end->doubled == doubled);
}

/* Joists of the section's own size: all take one hanger. */
static void count_size(struct counting *counting, const struct joist_design *design, bool doubled)
{
    struct sort sort = {.tail = doubled ? "/doubled" : "",
                        .one = doubled ? "doubled joist" : "joist",
                        .many = doubled ? "doubled joists" : "joists"};
    for (size_t i = 0; i < design->count; i++)
        if (of_sort(&design->end[i], false, doubled)) {
            sort.count++;
            sort.hanger = design->end[i].hanger;
        }
    if (sort.count)
        count_sort(counting, design, &sort);
}

/* Joists measured one by one: by the hanger that fits. */
static void count_own_sizes(struct counting *counting, const struct joist_design *design)
{
    for (size_t i = 0; i < design->count; i++) {
        const struct hanger *hanger = design->end[i].hanger;
        struct sort sort = {.one = "joist of its own size", .many = "joists of their own size", .hanger = hanger};
        bool earlier = false;
        for (size_t k = 0; k < design->count; k++)
            if (design->end[k].own_size && design->end[k].hanger == hanger) {
                earlier |= k < i;
                sort.count++;
            }
        if (!design->end[i].own_size || earlier)
            continue;
        sort.tail = hanger ? arena_printf(counting->arena, "/%s", hanger->code) : "";
        count_sort(counting, design, &sort);
    }
}

static void count_side(struct counting *counting, const struct joist_design *design)
{
    count_size(counting, design, false);
    count_size(counting, design, true);
    count_own_sizes(counting, design);
}

static void count_strap(struct counting *counting, const struct joist_design *design)
{
    struct arena *arena = counting->arena;
    const struct head *head = &design->joists->head;
    int64_t count = (int64_t)design->tied_pairs;
    if (!design->strap || count == 0)
        return;
    struct takeoff_line line = connector_line(counting, design->strap, "tie strap", count);
    line.id = arena_printf(arena, "straps/%s", head->id);
    line.where = arena_printf(arena, "across %s", head_name(arena, KIND_BEAM, &design->beam->head));
    line.counted = arena_printf(arena, "%s that the roof needs: one strap across the beam for each",
                                number_of(arena, count, "tied pair of joists", "tied pairs of joists"));
    line.at = head->at;
    add_connector(counting, design->strap, count, count == 1 ? "strap" : "straps", line, design->beam->head.id);
}

static void count_beam_end(struct counting *counting, const struct beam_design *design, int end)
{
    struct arena *arena = counting->arena;
    const struct head *head = &design->beam->head;
    enum end_kind kind = design->beam->end_[end].kind;
    const char *beam = head_name(arena, KIND_BEAM, head);
    if (kind != END_BEAM && kind != END_HANGER)
        return;
    if (!design->end_hanger[end]) {
        diag_add(counting->diags, DIAG_T002, &head->at, "no hanger fits '%s', end %d: it is not counted", beam,
                 end + 1);
        return;
    }
    struct takeoff_line line = connector_line(counting, design->end_hanger[end], "beam hanger", 1);
    line.id = arena_printf(arena, "hangers/%s/end %d", head->id, end + 1);
    line.where = arena_printf(arena, "%s, end %d", beam, end + 1);
    line.counted =
        arena_printf(arena, "end %d hangs%s%s: 1 hanger", end + 1, kind == END_BEAM ? " on beam " : "",
                     kind == END_BEAM && design->beam->end_[end].ref.id ? design->beam->end_[end].ref.id : "");
    line.at = head->at;
    add_connector(counting, design->end_hanger[end], 1, "hanger", line, NULL);
}

/* place: "end 1" */
static void count_hold_down(struct counting *counting, const struct beam_design *design, const struct hanger *hanger,
                            const char *place)
{
    struct arena *arena = counting->arena;
    const struct head *head = &design->beam->head;
    if (!hanger)
        return;
    const char *word = hanger->kind == CONNECTOR_STRAP ? "hold-down strap" : "cap";
    struct takeoff_line line = connector_line(counting, hanger, word, 1);
    line.id = arena_printf(arena, "hold-down/%s/%s", head->id, place);
    line.where = arena_printf(arena, "%s, %s", head_name(arena, KIND_BEAM, head), place);
    line.counted = arena_printf(arena, "wind lifts %s: 1 %s", place, word);
    line.at = head->at;
    add_connector(counting, hanger, 1, word, line, NULL);
}

static void count_inner_hold_downs(struct counting *counting, const struct beam_design *design)
{
    for (size_t i = 0; i < design->inner_count; i++)
        count_hold_down(counting, design, design->inner[i].hold_down,
                        arena_printf(counting->arena, "inner support %zu", i + 1));
}

void count_hangers(struct counting *counting)
{
    const struct design *design = counting->design;
    for (size_t i = 0; i < design->joists_count; i++)
        if (hangs_joists(design->joists[i].beam)) {
            count_side(counting, &design->joists[i]);
            count_strap(counting, &design->joists[i]);
        }
    for (size_t i = 0; i < design->beam_count; i++) {
        const struct beam_design *beam = &design->beams[i];
        for (int end = 0; end < 2 && is_new_beam(beam->beam); end++) {
            count_beam_end(counting, beam, end);
            count_hold_down(counting, beam, beam->hold_down[end], end ? "end 2" : "end 1");
        }
        if (is_new_beam(beam->beam))
            count_inner_hold_downs(counting, beam);
    }
}
