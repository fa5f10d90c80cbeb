/* Cutting problems out of bare lists: one a member, in the order of the pieces. */
#include <stdlib.h>
#include <string.h>

#include "cut_internal.h"
#include "sawbill/text.h"

_Static_assert((int)LIST_JOINTS_MOST == (int)CUT_JOINTS_MOST, "one limit");

/* Rows of one member stand together, each member's in the order of the file. */
struct keyed {
    const char *member; /* folded */
    size_t row;
};
struct group {
    size_t first; /* row of its first piece */
    struct cut_problem problem;
};

static int compare_keyed(const void *left, const void *right)
{
    const struct keyed *a = left, *b = right;
    int order = strcmp(a->member, b->member);
    return order ? order : (a->row > b->row) - (a->row < b->row);
}

static int compare_groups(const void *left, const void *right)
{
    const struct group *a = left, *b = right;
    return (a->first > b->first) - (a->first < b->first);
}

static struct keyed *key_pieces(struct arena *arena, const struct cut_list *list)
{
    struct keyed *keyed = arena_array(arena, list->piece_count, sizeof *keyed);
    for (size_t i = 0; i < list->piece_count; i++)
        keyed[i] = (struct keyed){name_fold(arena, list->piece[i].member), i};
    if (list->piece_count > 1)
        qsort(keyed, list->piece_count, sizeof *keyed, compare_keyed);
    return keyed;
}

/* Rows with supply 0 are left out: there is none. */
static struct keyed *key_stock(struct arena *arena, const struct cut_list *list, size_t *count)
{
    struct keyed *keyed = arena_array(arena, list->stock_count, sizeof *keyed);
    *count = 0;
    for (size_t i = 0; i < list->stock_count; i++)
        if (list->stock[i].endless || list->stock[i].supply > 0)
            keyed[(*count)++] = (struct keyed){name_fold(arena, list->stock[i].member), i};
    if (*count > 1)
        qsort(keyed, *count, sizeof *keyed, compare_keyed);
    return keyed;
}

static void add_joints(struct arena *arena, const struct cut_list *list, const struct keyed *keyed, size_t count,
                       struct cut_problem *problem)
{
    struct cut_joints *joints = NULL;
    size_t capacity = 0;
    for (size_t i = 0; i < count; i++) {
        const struct list_piece *piece = &list->piece[keyed[i].row];
        if (piece->joint_count == 0)
            continue;
        joints = arena_more(arena, joints, problem->joints_count, &capacity, sizeof *joints);
        joints[problem->joints_count++] = (struct cut_joints){i, piece->joint, piece->joint_count};
    }
    problem->joints = joints;
}

static void add_pieces(struct arena *arena, const struct cut_list *list, const struct keyed *keyed, size_t count,
                       struct cut_problem *problem)
{
    problem->piece = arena_array(arena, count, sizeof *problem->piece);
    problem->piece_count = count;
    struct place *at = arena_array(arena, count, sizeof *at);
    for (size_t i = 0; i < count; i++) {
        const struct list_piece *piece = &list->piece[keyed[i].row];
        at[i] = piece->length_at;
        problem->piece[i] = (struct cut_piece){piece->label, piece->length, piece->count};
    }
    problem->piece_at = at;
    add_joints(arena, list, keyed, count, problem);
    problem->at = at[0];
}

/* The first of the member's rows, or where it would stand. */
static size_t find_stock(const struct keyed *stock, size_t count, const char *member)
{
    size_t low = 0, high = count;
    while (low < high) {
        size_t middle = low + (high - low) / 2;
        if (strcmp(stock[middle].member, member) < 0)
            low = middle + 1;
        else
            high = middle;
    }
    return low;
}

static void add_stock(struct arena *arena, const struct cut_list *list, const struct cut_rules *rules,
                      const struct keyed *keyed, size_t count, const char *member, struct cut_problem *problem)
{
    size_t first = find_stock(keyed, count, member), last = first;
    while (last < count && strcmp(keyed[last].member, member) == 0)
        last++;
    problem->stock = arena_array(arena, last - first, sizeof *problem->stock);
    problem->stock_count = last - first;
    for (size_t i = first; i < last; i++) {
        const struct list_stock *stock = &list->stock[keyed[i].row];
        problem->stock[i - first] = (struct cut_stock){
            .length = stock->length,
            .cost = stock->price,
            .supply = stock->endless ? 0 : stock->supply,
            .has_trim = true,
            .trim = stock->has_trim ? stock->trim : rules->trim,
        };
    }
}

/* A trim that leaves nothing of a stick is a slip of the pen. */
static void check_trims(struct arena *arena, const struct cut_list *list, const struct cut_rules *rules,
                        struct diags *diags)
{
    for (size_t i = 0; i < list->stock_count; i++) {
        const struct list_stock *stock = &list->stock[i];
        length_t trim = stock->has_trim ? stock->trim : rules->trim;
        if (stock->length > 0 && (rules->both_ends ? 2 : 1) * trim >= stock->length)
            diag_add(diags, DIAG_C002, &stock->at, "a trim of %s%s leaves nothing of a stick of %s",
                     length_tape(arena, trim), rules->both_ends ? " off both ends" : "",
                     length_tape(arena, stock->length));
    }
}

struct cut_problem *cut_problems_from_list(struct arena *arena, const struct cut_list *list,
                                           const struct cut_rules *rules, size_t *count, struct diags *diags)
{
    struct group *group = NULL;
    size_t capacity = 0, stocks, next;
    *count = 0;
    check_trims(arena, list, rules, diags);
    const struct keyed *piece = key_pieces(arena, list), *stock = key_stock(arena, list, &stocks);
    for (size_t i = 0; i < list->piece_count; i = next) {
        for (next = i + 1; next < list->piece_count && strcmp(piece[next].member, piece[i].member) == 0;)
            next++;
        group = arena_more(arena, group, *count, &capacity, sizeof *group);
        struct cut_problem *problem = &group[*count].problem;
        group[(*count)++].first = piece[i].row;
        *problem = (struct cut_problem){.member = list->piece[piece[i].row].member,
                                        .kerf = rules->kerf,
                                        .both_ends = rules->both_ends,
                                        .square_both_ends = rules->square_both_ends,
                                        .least_cutoff = rules->least_cutoff};
        add_pieces(arena, list, piece + i, next - i, problem);
        add_stock(arena, list, rules, stock, stocks, piece[i].member, problem);
    }
    if (*count > 1)
        qsort(group, *count, sizeof *group, compare_groups);
    struct cut_problem *problems = arena_array(arena, *count, sizeof *problems);
    for (size_t i = 0; i < *count; i++)
        problems[i] = group[i].problem;
    return problems;
}
