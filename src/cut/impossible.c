/* Why there is no plan, where a piece or the stock alone shows it. */
#include "cut_internal.h"

static const struct cut_stock *longest_stock(const struct cut_problem *problem)
{
    const struct cut_stock *longest = NULL;
    for (size_t i = 0; i < problem->stock_count; i++)
        if (!longest || stock_room(problem, &problem->stock[i]) > stock_room(problem, longest))
            longest = &problem->stock[i];
    return longest;
}

static size_t first_wanted(const struct cut_problem *problem)
{
    size_t i = 0;
    while (i < problem->piece_count && problem->piece[i].count <= 0)
        i++;
    return i;
}

static const struct place *piece_place(const struct cut_problem *problem, size_t piece, const struct place *at)
{
    return problem->piece_at ? &problem->piece_at[piece] : at;
}

/* The longest part of a piece that is joined wherever it may be. */
static length_t longest_part(const struct cut_problem *problem, size_t piece, bool *joined)
{
    length_t longest = problem->piece[piece].length;
    *joined = false;
    for (size_t i = 0; i < problem->joints_count; i++) {
        const struct cut_joints *joints = &problem->joints[i];
        if (joints->piece != piece || joints->count == 0)
            continue;
        length_t from = 0, most = 0;
        for (size_t k = 0; k <= joints->count; k++) {
            length_t to = k < joints->count ? joints->at[k] : problem->piece[piece].length;
            most = to - from > most ? to - from : most;
            from = to;
        }
        longest = most;
        *joined = true;
    }
    return longest;
}

static void report_piece(struct arena *arena, const struct cut_problem *problem, size_t index,
                         const struct cut_stock *longest, length_t usable, const struct place *at, struct diags *diags)
{
    const struct cut_piece *piece = &problem->piece[index];
    bool joined;
    length_t part = longest_part(problem, index, &joined);
    const char *of = *problem->member ? arena_printf(arena, " of '%s'", problem->member) : "";
    const char *how = joined
                          ? arena_printf(arena, "even joined over every support a part is %s", length_tape(arena, part))
                          : "nothing is spliced";
    diag_add(diags, DIAG_T001, piece_place(problem, index, at),
             "piece '%s'%s is %s long; the longest stock is %s, of which %s can be used: %s", piece->label, of,
             length_tape(arena, piece->length), length_tape(arena, longest->length), length_tape(arena, usable), how);
}

bool report_impossible(struct arena *arena, const struct cut_problem *problem, const struct place *at,
                       struct diags *diags)
{
    const struct cut_stock *longest = longest_stock(problem);
    size_t first = first_wanted(problem);
    if (first == problem->piece_count)
        return false;
    if (!longest) {
        const char *text = !problem->piece_at ? "no price row with a length sells '%s', and the shop has none"
                           : *problem->member ? "the list of stock has no row of '%s'"
                                              : "the list of stock has no row for the pieces without a member%s";
        diag_add(diags, DIAG_P001, piece_place(problem, first, at), text, problem->member);
        return true;
    }
    bool found = false, joined;
    length_t room = stock_room(problem, longest);
    length_t usable = room > problem->kerf ? room - (problem->square_both_ends ? 0 : problem->kerf) : 0;
    length_t longest_piece = problem->square_both_ends ? usable - problem->kerf : usable;
    for (size_t i = 0; i < problem->piece_count; i++) {
        if (problem->piece[i].count <= 0 || longest_part(problem, i, &joined) <= longest_piece)
            continue;
        found = true;
        report_piece(arena, problem, i, longest, usable, at, diags);
    }
    return found;
}
