#include "shore_stock.h"

#include <string.h>

#include "sawbill/text.h"

static bool one_set(const struct shore *a, const struct shore *b)
{
    return a->set.at && b->set.at && name_same(a->set.text, b->set.text);
}

/* The most that one earlier shore of the set has of this piece: they stand one after the other. */
static const struct shore_piece *most_had(const struct shore_stock *stock, const struct shore_piece *wanted)
{
    const struct shore_piece *most = NULL;
    for (size_t i = 0; i < stock->count; i++) {
        const struct shore_piece *had = &stock->piece[i];
        if (one_set(had->shore, wanted->shore) && strcmp(had->part, wanted->part) == 0 &&
            had->member == wanted->member && had->length == wanted->length && (!most || had->count > most->count))
            most = had;
    }
    return most;
}

void shore_buy(struct counting *counting, struct shore_stock *stock, const struct shore_piece *piece)
{
    struct arena *arena = counting->arena;
    const struct head *head = &piece->shore->head;
    const struct shore_piece *had = most_had(stock, piece);
    int64_t buy = had ? piece->count - had->count : piece->count;
    const char *counted = had && buy > 0
                              ? arena_printf(arena, "%s; %lld of them come from %s, of the same set", piece->counted,
                                             (long long)had->count, head_name(arena, KIND_SHORE, &had->shore->head))
                              : piece->counted;
    counted = arena_printf(arena, "%s; comes back for the next job", counted);
    line_add_pieces(counting, piece->member, buy, piece->length,
                    (struct takeoff_line){.id = arena_printf(arena, "shores/%s/%s", head->id, piece->part),
                                          .what = piece->what,
                                          .where = head_name(arena, KIND_SHORE, head),
                                          .counted = counted,
                                          .at = head->at});
    stock->piece = arena_more(arena, stock->piece, stock->count, &stock->capacity, sizeof *piece);
    stock->piece[stock->count++] = *piece;
}
