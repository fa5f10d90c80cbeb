/* Openings in a field of joists: headers, trimmers, and the hangers of both and of the tails. */
#include "counting.h"

/* What a new trimmer wants on the far bearing: the width of a 2x4 plate (common practice, no source). */
static const length_t far_seat = 7 * LENGTH_INCH / 2;

static bool is_new(const struct opening_design *od)
{
    return od->opening->status.choice != NE_EXISTING;
}

static bool hangs_on(const struct opening_design *od, const struct beam *beam)
{
    return od->side && hangs_joists(od->side->beam) && (!beam || od->side->beam == beam);
}

int64_t hung_trimmers(const struct counting *counting, const struct beam *beam)
{
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->opening_count; i++)
        sum += hangs_on(&counting->design->openings[i], beam) ? 2 : 0;
    return sum;
}

int64_t opening_hangers(const struct counting *counting)
{
    int64_t sum = 0;
    for (size_t i = 0; i < counting->design->opening_count; i++) {
        const struct opening_design *od = &counting->design->openings[i];
        for (int k = 0; k < 2; k++) {
            sum += hangs_on(od, NULL) && od->trimmers[k].hanger;
            sum += od->headers[k].hanger ? 2 : 0;
            sum += od->headers[k].tail_hanger ? (int64_t)od->interrupted : 0;
        }
    }
    return sum;
}

static void count_headers(struct counting *counting, const struct opening_design *od)
{
    struct arena *arena = counting->arena;
    const struct opening *opening = od->opening;
    const char *name = head_name(arena, KIND_OPENING, &opening->head);
    int64_t headers = od->headers[0].is + od->headers[1].is, plies = opening->header_plies.count;
    length_t length = opening->to.length - opening->from.length;
    if (!od->header || headers == 0)
        return;
    line_add_pieces(counting, od->header, headers * plies, length,
                    (struct takeoff_line){.id = arena_printf(arena, "openings/%s/headers", opening->head.id),
                                          .what = "header ply",
                                          .where = name,
                                          .counted = arena_printf(arena, "%s x %s, between the trimmers: %s",
                                                                  number_of(arena, headers, "header", "headers"),
                                                                  number_of(arena, plies, "ply", "plies"),
                                                                  length_tape(arena, length)),
                                          .at = opening->head.at});
}

static void count_trimmers(struct counting *counting, const struct opening_design *od)
{
    struct arena *arena = counting->arena;
    const struct opening *opening = od->opening;
    const struct beam_design *bd = &counting->design->beams[od->side->beam - counting->job->beams];
    int64_t on_joist = od->trimmers[0].on_joist + od->trimmers[1].on_joist, plies = opening->trimmer_plies.count;
    length_t cut_off = hangs_joists(od->side->beam) ? bd->width / 2 : 0;
    length_t length = od->side->joists->run.length - cut_off + far_seat;
    if (!od->trimmer)
        return;
    const char *there =
        on_joist ? arena_printf(arena, " less %s of the field", number_of(arena, on_joist, "joist", "joists")) : "";
    line_add_pieces(counting, od->trimmer, 2 * plies - on_joist, length,
                    (struct takeoff_line){
                        .id = arena_printf(arena, "openings/%s/trimmers", opening->head.id),
                        .what = "trimmer ply",
                        .where = head_name(arena, KIND_OPENING, &opening->head),
                        .counted = arena_printf(arena, "2 trimmers x %s%s: run %s%s, and %s on the far bearing",
                                                number_of(arena, plies, "ply", "plies"), there,
                                                length_tape(arena, od->side->joists->run.length),
                                                cut_off ? " less half of the beam" : "", length_tape(arena, far_seat)),
                        .at = opening->head.at});
}

/* Two legs of hangers that may differ from one place to the next are two lines. */
static void count_hanger(struct counting *counting, const struct opening_design *od, const struct hanger *hanger,
                         int64_t count, const char *of, const char *counted)
{
    struct arena *arena = counting->arena;
    const struct head *head = &od->opening->head;
    const char *name = head_name(arena, KIND_OPENING, head);
    if (!hanger) {
        diag_add(counting->diags, DIAG_T002, &head->at, "no hanger fits: %s of '%s' have none counted", of, name);
        return;
    }
    struct takeoff_line line = connector_line(counting, hanger, arena_printf(arena, "hanger of %s", of), count);
    line.id = arena_printf(arena, "hangers/%s/%s", head->id, of);
    line.where = name;
    line.counted = counted;
    line.at = head->at;
    add_connector(counting, hanger, count, count == 1 ? "hanger" : "hangers", line, NULL);
}

static void count_header_hangers(struct counting *counting, const struct opening_design *od, int which)
{
    struct arena *arena = counting->arena;
    const struct opening_header *header = &od->headers[which];
    const char *word = which ? "far" : "near";
    int64_t tails = (int64_t)od->interrupted;
    if (!header->is)
        return;
    count_hanger(counting, od, header->hanger, 2, arena_printf(arena, "%s header", word),
                 "one at each end of the header: 2 hangers");
    count_hanger(counting, od, header->tail_hanger, tails, arena_printf(arena, "%s tails", word),
                 arena_printf(arena, "%s that stop there: %s", number_of(arena, tails, "joist", "joists"),
                              number_of(arena, tails, "hanger", "hangers")));
}

static void count_trimmer_hangers(struct counting *counting, const struct opening_design *od)
{
    const struct hanger *const hanger[] = {od->trimmers[0].hanger, od->trimmers[1].hanger};
    if (!hangs_on(od, NULL))
        return;
    if (hanger[0] == hanger[1]) {
        count_hanger(counting, od, hanger[0], 2, "trimmers", "2 trimmers on the beam: 2 hangers");
        return;
    }
    for (int k = 0; k < 2; k++)
        count_hanger(counting, od, hanger[k], 1, k ? "trimmer 2" : "trimmer 1", "its end on the beam: 1 hanger");
}

void count_openings(struct counting *counting)
{
    for (size_t i = 0; i < counting->design->opening_count; i++) {
        const struct opening_design *od = &counting->design->openings[i];
        if (!od->side)
            continue;
        count_trimmer_hangers(counting, od);
        if (!is_new(od))
            continue;
        count_headers(counting, od);
        count_trimmers(counting, od);
        for (int k = 0; k < 2; k++)
            count_header_hangers(counting, od, k);
    }
}
