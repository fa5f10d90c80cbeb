/* Memory that lives as long as a job or an output document.
 *
 * One arena owns every string, node and array of its job; arena_free() releases all of it at once,
 * on success and on error alike.  Nothing in an arena is freed alone.  A function that allocates
 * takes the arena as an argument; the others promise not to allocate.
 *
 * Out of memory (or past the ceiling): the fail hook given to arena_new() is called and must not
 * return (the program's ends with exit 5, a test's jumps out).  So no caller checks for NULL. */
#ifndef SAWBILL_ARENA_H
#define SAWBILL_ARENA_H

#include <stdarg.h>
#include <stddef.h>

struct arena;
typedef void arena_fail_fn(void *owner);

/* most: the ceiling in bytes, 0 for none.  Returns NULL only if the very first block fails. */
struct arena *arena_new(size_t most, arena_fail_fn *fail, void *owner);
void arena_free(struct arena *arena);

/* Zeroed and aligned for any object; size 0 is allowed. */
void *arena_alloc(struct arena *arena, size_t size);
/* count * size, checked against overflow. */
void *arena_array(struct arena *arena, size_t count, size_t size);
/* Room for one more element: returns the array (moved if it had to grow); *capacity is kept by it.
 * Start with array NULL, count 0, *capacity 0. */
void *arena_more(struct arena *arena, void *array, size_t count, size_t *capacity, size_t size);

char *arena_strdup(struct arena *arena, const char *text);
char *arena_strndup(struct arena *arena, const char *text, size_t length);
char *arena_printf(struct arena *arena, const char *format, ...) __attribute__((format(printf, 2, 3)));
char *arena_vprintf(struct arena *arena, const char *format, va_list args) __attribute__((format(printf, 2, 0)));

#endif
