/* What it takes to raise a beam, in words for every report. */
#include "raising_shown.h"

#include "sawbill/text.h"

static const char *shrinks(struct arena *arena, const struct raising *raising)
{
    if (!raising->shrinkage_known)
        return "how much it shrinks is not known: members.csv does not say its moisture";
    if (raising->shrinkage_in <= 0)
        return "it hardly shrinks beside the old joists";
    return arena_printf(arena,
                        "it loses about %s in of depth beside the old joists, which are dry (from memory, "
                        "unverified)",
                        number_text(arena, raising->shrinkage_in, 2));
}

char *raising_text(struct arena *arena, const struct raising *raising)
{
    return arena_printf(arena,
                        "%s: %s weighs %s lb, the beam %s lb; raised %s it takes %d people at %s lb each (common "
                        "practice), and the crew has %d%s; %s",
                        head_name(arena, KIND_BEAM, &raising->design->beam->head),
                        beam_pieces(raising->design) > 1 ? "the longest piece of a ply" : "a ply",
                        number_text(arena, raising->ply_lb, 0), number_text(arena, raising->beam_lb, 0),
                        raising->whole ? "whole" : "ply by ply", raising->people,
                        number_text(arena, raising->share_lb, 0), raising->crew,
                        raising->needs_lift ? ": use a lift" : "", shrinks(arena, raising));
}

char *way_in_text(struct arena *arena, const struct raising *raising, size_t index)
{
    const struct way_in *way = &raising->way[index];
    return arena_printf(arena, "%s, %s: %s%s", head_name(arena, KIND_BEAM, &raising->design->beam->head), way->what,
                        way->how,
                        !way->known ? ""
                        : way->goes ? ": it goes"
                                    : ": IT DOES NOT GO");
}
