#include "sawbill/arena.h"

#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { BLOCK_SIZE = 64 * 1024, LEAST_ELEMENTS = 8 };

struct block {
    struct block *before;
    size_t used, size;
    max_align_t data[]; /* the strictest alignment, so that any object may stand here */
};

struct arena {
    struct block *last;
    size_t most, total;
    arena_fail_fn *fail;
    void *owner;
};

static _Noreturn void arena_fail(struct arena *arena)
{
    if (arena->fail)
        arena->fail(arena->owner);
    abort(); /* the hook broke its promise not to return */
}

struct arena *arena_new(size_t most, arena_fail_fn *fail, void *owner)
{
    struct arena *arena = malloc(sizeof *arena);
    if (!arena)
        return NULL;
    *arena = (struct arena){.most = most, .fail = fail, .owner = owner};
    return arena;
}

void arena_free(struct arena *arena)
{
    if (!arena)
        return;
    for (struct block *block = arena->last; block;) {
        struct block *before = block->before;
        free(block);
        block = before;
    }
    free(arena);
}

/* A block of at least `size` bytes of data.  One made for a single large object is full at once: it goes behind the
 * current block, whose rest stays in use. */
static struct block *add_block(struct arena *arena, size_t size)
{
    size_t room = size > BLOCK_SIZE ? size : BLOCK_SIZE;
    if (room > SIZE_MAX - sizeof(struct block) || room > SIZE_MAX - arena->total)
        arena_fail(arena);
    if (arena->most && arena->total + room > arena->most)
        room = size; /* near the ceiling: only what is needed */
    if (arena->most && arena->total + room > arena->most)
        arena_fail(arena);
    struct block *block = calloc(1, sizeof *block + room);
    if (!block)
        arena_fail(arena);
    block->size = room;
    arena->total += room;
    if (size > BLOCK_SIZE && arena->last) {
        block->before = arena->last->before;
        arena->last->before = block;
    } else {
        block->before = arena->last;
        arena->last = block;
    }
    return block;
}

void *arena_alloc(struct arena *arena, size_t size)
{
    const size_t step = _Alignof(max_align_t);
    if (size > SIZE_MAX - step)
        arena_fail(arena);
    size = (size ? size + step - 1 : step) / step * step;
    struct block *block = arena->last;
    if (!block || block->size - block->used < size)
        block = add_block(arena, size);
    void *object = (char *)block->data + block->used;
    block->used += size;
    return object;
}

void *arena_array(struct arena *arena, size_t count, size_t size)
{
    if (size && count > SIZE_MAX / size)
        arena_fail(arena);
    return arena_alloc(arena, count * size);
}

void *arena_more(struct arena *arena, void *array, size_t count, size_t *capacity, size_t size)
{
    if (count < *capacity)
        return array;
    if (*capacity > SIZE_MAX / 2)
        arena_fail(arena);
    size_t wanted = *capacity ? *capacity * 2 : LEAST_ELEMENTS;
    void *moved = arena_array(arena, wanted, size);
    if (count)
        memcpy(moved, array, count * size);
    *capacity = wanted;
    return moved;
}

char *arena_strndup(struct arena *arena, const char *text, size_t length)
{
    if (length == SIZE_MAX)
        arena_fail(arena);
    char *copy = arena_alloc(arena, length + 1);
    if (length)
        memcpy(copy, text, length);
    return copy;
}

char *arena_strdup(struct arena *arena, const char *text)
{
    return arena_strndup(arena, text, strlen(text));
}

char *arena_vprintf(struct arena *arena, const char *format, va_list args)
{
    va_list again;
    va_copy(again, args);
    int length = vsnprintf(NULL, 0, format, args);
    if (length < 0)
        arena_fail(arena); /* only what does not fit into an int comes here */
    size_t size = (size_t)length + 1;
    char *text = arena_alloc(arena, size);
    (void)vsnprintf(text, size, format, again); /* measured just now: it fits */
    va_end(again);
    return text;
}

char *arena_printf(struct arena *arena, const char *format, ...)
{
    va_list args;
    va_start(args, format);
    char *text = arena_vprintf(arena, format, args);
    va_end(args);
    return text;
}
