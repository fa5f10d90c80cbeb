#include "shore_stock.h"

#include <limits.h>
#include <string.h>

#include "sawbill/text.h"

bool shores_share(const struct shore *a, const struct shore *b)
{
    return a == b || (a->set.at && b->set.at && name_same(a->set.text, b->set.text));
}

/* Without either key it stands by itself: the shores of its set one after the other. */
static bool has_times(const struct shore *shore)
{
    return shore->from_task.at || shore->to_task.at;
}

static int starts(const struct work_order *order, const struct shore *shore)
{
    return shore->from_task.at ? place_of_task(order, shore->from_task.text) : 0;
}

static int ends(const struct work_order *order, const struct shore *shore)
{
    return shore->to_task.at ? place_of_task(order, shore->to_task.text) : INT_MAX;
}

bool shores_stand_at_once(const struct work_order *order, const struct shore *a, const struct shore *b)
{
    return a == b ||
           (has_times(a) && has_times(b) && starts(order, a) <= ends(order, b) && starts(order, b) <= ends(order, a));
}

static bool alike(const struct shore_piece *a, const struct shore_piece *b)
{
    return shores_share(a->shore, b->shore) && strcmp(a->part, b->part) == 0 && a->member == b->member &&
           a->length == b->length;
}

/* All of them that stand on the day on which `at` is built. */
static int64_t standing(const struct work_order *order, const struct shore_stock *stock, const struct shore_piece *at)
{
    int64_t sum = 0;
    for (size_t i = 0; i < stock->count; i++) {
        const struct shore_piece *piece = &stock->piece[i];
        bool then = piece->shore == at->shore || (shores_stand_at_once(order, piece->shore, at->shore) &&
                                                  starts(order, piece->shore) <= starts(order, at->shore));
        sum += alike(piece, at) && then ? piece->count : 0;
    }
    return sum;
}

/* The most that stand at once of the piece, and at which shore. */
static int64_t peak(const struct work_order *order, const struct shore_stock *stock, const struct shore_piece *like,
                    const struct shore **at)
{
    int64_t most = 0;
    for (size_t i = 0; i < stock->count; i++) {
        int64_t here = alike(&stock->piece[i], like) ? standing(order, stock, &stock->piece[i]) : 0;
        if (here > most) {
            most = here;
            *at = stock->piece[i].shore;
        }
    }
    return most;
}

static void stock_add(struct counting *counting, struct shore_stock *stock, const struct shore_piece *piece)
{
    stock->piece = arena_more(counting->arena, stock->piece, stock->count, &stock->capacity, sizeof *piece);
    stock->piece[stock->count++] = *piece;
}

static void note_part(struct counting *counting, const struct shore_piece *piece)
{
    struct takeoff *takeoff = counting->takeoff;
    takeoff->shore_part = arena_more(counting->arena, takeoff->shore_part, takeoff->shore_part_count,
                                     &takeoff->shore_part_capacity, sizeof *takeoff->shore_part);
    takeoff->shore_part[takeoff->shore_part_count++] = (struct shore_part){.shore = piece->shore,
                                                                           .what = piece->what,
                                                                           .counted = piece->counted,
                                                                           .member = piece->member,
                                                                           .count = piece->count,
                                                                           .length = piece->length};
}

/* One line a member and length, whatever shores it comes from. */
static void note_return(struct counting *counting, const struct takeoff_return *more)
{
    struct takeoff *takeoff = counting->takeoff;
    for (size_t i = 0; i < takeoff->back_count; i++) {
        struct takeoff_return *back = &takeoff->back[i];
        if (back->member != more->member || back->length != more->length || strcmp(back->what, more->what) != 0)
            continue;
        back->count += more->count;
        if (!strstr(back->from, more->from))
            back->from = arena_printf(counting->arena, "%s, %s", back->from, more->from);
        return;
    }
    takeoff->back =
        arena_more(counting->arena, takeoff->back, takeoff->back_count, &takeoff->back_capacity, sizeof *takeoff->back);
    takeoff->back[takeoff->back_count++] = *more;
}

void shore_buy(struct counting *counting, struct shore_stock *stock, const struct shore_piece *piece)
{
    struct arena *arena = counting->arena;
    const struct head *head = &piece->shore->head;
    const char *name = head_name(arena, KIND_SHORE, head);
    const struct shore *had_at = NULL, *now_at = NULL;
    int64_t had = peak(counting->order, stock, piece, &had_at);
    stock_add(counting, stock, piece);
    if (piece->count > 0)
        note_part(counting, piece);
    int64_t buy = peak(counting->order, stock, piece, &now_at) - had;
    const char *counted = piece->counted;
    if (had > 0 && buy > 0 && buy < piece->count)
        counted = arena_printf(arena, "%s; %lld of them come from %s, of the same set", counted,
                               (long long)(piece->count - buy), head_name(arena, KIND_SHORE, &had_at->head));
    else if (had > 0 && buy == piece->count)
        counted = arena_printf(arena, "%s; stands at the same time as %s, of the same set", counted,
                               head_name(arena, KIND_SHORE, &had_at->head));
    if (buy <= 0)
        return;
    line_add_pieces(counting, piece->member, buy, piece->length,
                    (struct takeoff_line){.id = arena_printf(arena, "shores/%s/%s", head->id, piece->part),
                                          .what = piece->what,
                                          .where = name,
                                          .counted = arena_printf(arena, "%s; comes back for the next job", counted),
                                          .at = head->at});
    note_return(
        counting,
        &(struct takeoff_return){
            .what = piece->member->code, .member = piece->member, .length = piece->length, .count = buy, .from = name});
}

void shore_jacks_return(struct counting *counting)
{
    for (size_t i = 0; i < counting->job->shore_count; i++) {
        const struct shore *shore = &counting->job->shores[i];
        if (shore->jack_posts.count > 0)
            note_return(counting,
                        &(struct takeoff_return){.what = "jack post, to the rental",
                                                 .count = shore->jack_posts.count,
                                                 .from = head_name(counting->arena, KIND_SHORE, &shore->head)});
    }
}
