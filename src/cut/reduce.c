/* From exact lengths to whole numbers and from the solver's patterns back to sticks. */
#include <stdlib.h>

#include "cut_internal.h"

enum { MOST_UNITS = 40000 };
static const length_t SIXTY_FOURTH = LENGTH_INCH / 64;

int64_t common_divisor(int64_t a, int64_t b)
{
    while (b != 0) {
        int64_t rest = a % b;
        a = b;
        b = rest;
    }
    return a;
}

static int longest_first(const void *left, const void *right)
{
    const struct wanted *a = left, *b = right;
    if (a->length != b->length)
        return a->length > b->length ? -1 : 1;
    return (a->piece > b->piece) - (a->piece < b->piece);
}

static length_t longest_room(const struct cut_problem *problem)
{
    length_t longest = 0;
    for (size_t i = 0; i < problem->stock_count; i++) {
        length_t room = stock_room(problem, &problem->stock[i]);
        longest = room > longest ? room : longest;
    }
    return longest;
}

static length_t choose_unit(struct reduced *reduced)
{
    const struct cut_problem *problem = reduced->problem;
    length_t unit = 0;
    for (size_t i = 0; i < reduced->piece_count; i++)
        unit = common_divisor(unit, reduced->piece[i].length + problem->kerf);
    if (unit == 0)
        return 1;
    reduced->rounded = unit < SIXTY_FOURTH && longest_room(problem) / unit > MOST_UNITS;
    return reduced->rounded ? SIXTY_FOURTH : unit;
}

static void add_types(struct arena *arena, struct reduced *reduced, length_t unit)
{
    reduced->type = arena_array(arena, reduced->piece_count, sizeof *reduced->type);
    reduced->length = arena_array(arena, reduced->piece_count, sizeof *reduced->length);
    reduced->size = arena_array(arena, reduced->piece_count, sizeof *reduced->size);
    for (size_t i = 0; i < reduced->piece_count; i++) {
        const struct wanted *piece = &reduced->piece[i];
        if (i == 0 || piece->length != reduced->piece[i - 1].length) {
            length_t size = piece->length + reduced->problem->kerf;
            reduced->length[reduced->type_count] = piece->length;
            reduced->size[reduced->type_count] = size;
            reduced->type[reduced->type_count++] = (struct form_type){(size + unit - 1) / unit, 0};
        }
        reduced->type[reduced->type_count - 1].demand += piece->count;
    }
}

static void add_stocks(struct arena *arena, struct reduced *reduced, length_t unit)
{
    const struct cut_problem *problem = reduced->problem;
    reduced->stock = arena_array(arena, problem->stock_count, sizeof *reduced->stock);
    reduced->stock_of = arena_array(arena, problem->stock_count, sizeof *reduced->stock_of);
    reduced->room = arena_array(arena, problem->stock_count, sizeof *reduced->room);
    for (size_t i = 0; i < problem->stock_count; i++) {
        const struct cut_stock *stock = &problem->stock[i];
        length_t room = stock_room(problem, stock);
        if (room < unit)
            continue;
        reduced->stock_of[reduced->stock_count] = i;
        reduced->room[reduced->stock_count] = room;
        reduced->stock[reduced->stock_count++] =
            (struct form_stock){room / unit, stock->cost, stock->supply > 0 ? stock->supply : FORM_ENDLESS};
    }
}

struct reduced *reduce(struct arena *arena, const struct cut_problem *problem, struct wanted *piece, size_t count)
{
    struct reduced *reduced = arena_alloc(arena, sizeof *reduced);
    reduced->problem = problem;
    reduced->piece = piece;
    reduced->piece_count = count;
    if (count > 1)
        qsort(piece, count, sizeof *piece, longest_first);
    length_t unit = choose_unit(reduced);
    add_types(arena, reduced, unit);
    add_stocks(arena, reduced, unit);
    return reduced;
}

static int by_number(const void *left, const void *right)
{
    size_t a = *(const size_t *)left, b = *(const size_t *)right;
    return (a > b) - (a < b);
}

static void fill_raw(struct arena *arena, const struct reduced *reduced, const struct form_pattern *pattern,
                     struct raw_stick *stick)
{
    size_t capacity = 0;
    *stick = (struct raw_stick){.stock = pattern->stock};
    for (size_t i = 0; i < pattern->use_count; i++)
        for (int64_t k = 0; k < pattern->use[i].count; k++) {
            size_t type = pattern->use[i].type;
            stick->type = arena_more(arena, stick->type, stick->count, &capacity, sizeof *stick->type);
            stick->type[stick->count++] = type;
            stick->used += reduced->size[type];
        }
    if (stick->count > 1)
        qsort(stick->type, stick->count, sizeof *stick->type, by_number);
}

struct raw_stick *raw_sticks(struct arena *arena, const struct reduced *reduced, const struct form_result *result,
                             size_t *count)
{
    struct raw_stick *stick = NULL;
    size_t capacity = 0;
    *count = 0;
    for (size_t i = 0; i < result->pattern_count; i++)
        for (int64_t k = 0; k < result->pattern[i].times; k++) {
            stick = arena_more(arena, stick, *count, &capacity, sizeof *stick);
            fill_raw(arena, reduced, &result->pattern[i], &stick[(*count)++]);
        }
    return stick;
}
