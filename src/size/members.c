/* Names of the job turned into rows of the catalog, and sizes into inches. */
#include "size.h"

#include <stdlib.h>

const struct member *member_named(struct sizing *s, const struct text_value *text, const struct head *head,
                                  enum kind kind)
{
    const char *who = head_name(s->arena, kind, head);
    const struct place *at = place_of(text->at, head);
    if (!text->text || !*text->text) {
        diag_add(s->diags, DIAG_C006, at, "%s names no member: give its code in members.csv", who);
        return NULL;
    }
    const struct member *member = catalog_member(s->catalog, text->text);
    if (!member)
        diag_add(s->diags, DIAG_C006, at, "'%s' of %s is not a code in members.csv", text->text, who);
    else if (!member->values)
        member = NULL; /* the catalog has said so */
    return member;
}

char *member_text(struct arena *arena, const struct member *member, int plies)
{
    if (!member)
        return arena_strdup(arena, "no member chosen");
    if (!member->values)
        return arena_printf(arena, "%d - %s", plies, member->code);
    return arena_printf(arena, "%d - %s %s %s", plies, member->size, member->values->species, member->values->grade);
}

/* PS 20, dry: dressed size in sixteenths of an inch of a nominal inch, 0 where there is none. */
static length_t dressed(long nominal)
{
    static const struct {
        long nominal, sixteenths;
    } sizes[] = {{1, 12}, {2, 24}, {3, 40}, {4, 56}, {5, 72}, {6, 88}, {8, 116}, {10, 148}, {12, 180}, {14, 212}};
    for (size_t i = 0; i < sizeof sizes / sizeof *sizes; i++)
        if (sizes[i].nominal == nominal)
            return sizes[i].sixteenths * (LENGTH_INCH / 16);
    return 0;
}

/* "2x10": the dressed sizes; false for anything else. */
bool joist_book_size(const char *size, length_t *width, length_t *depth)
{
    char *end;
    if (!size)
        return false;
    long b = strtol(size, &end, 10);
    while (*end == ' ')
        end++;
    if (*end != 'x' && *end != 'X')
        return false;
    long d = strtol(end + 1, &end, 10);
    if (*end)
        return false;
    *width = dressed(b);
    *depth = dressed(d);
    return *width > 0 && *depth > 0;
}

struct wood_piece piece_of(const struct member *member, int plies)
{
    return (struct wood_piece){.row = member->values,
                               .wood = member->wood,
                               .ply_in = length_inches(member->ply_width),
                               .depth_in = length_inches(member->depth),
                               .plies = plies};
}

struct wood_piece beam_wood(const struct beam_design *bd)
{
    struct wood_piece piece = piece_of(bd->member, bd->plies);
    piece.row = bd->values;
    return piece;
}

struct wood_piece post_wood(const struct post_design *pd)
{
    struct wood_piece piece = piece_of(pd->member, pd->plies);
    piece.row = pd->values;
    return piece;
}

/* Flush and upset beams are as deep as or beside the joists; a dropped beam has them on top. */
bool needs_hangers(const struct beam *beam)
{
    return beam->set.choice != SET_DROPPED;
}
