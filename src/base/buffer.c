#include "sawbill/text.h"

#include <stdint.h>
#include <string.h>

enum { FIRST_CAPACITY = 64 };

/* Room for `more` bytes and the NUL. */
static void make_room(struct buffer *buffer, size_t more)
{
    if (more < buffer->capacity - buffer->length)
        return;
    size_t wanted = buffer->capacity ? buffer->capacity : FIRST_CAPACITY;
    while (wanted - buffer->length <= more && wanted <= SIZE_MAX / 2)
        wanted *= 2;
    if (wanted - buffer->length <= more)
        wanted = SIZE_MAX; /* hopeless: the arena's fail hook speaks */
    char *moved = arena_alloc(buffer->arena, wanted);
    if (buffer->length)
        memcpy(moved, buffer->text, buffer->length);
    buffer->text = moved;
    buffer->capacity = wanted;
}

void buffer_add_n(struct buffer *buffer, const char *text, size_t length)
{
    make_room(buffer, length);
    if (length)
        memcpy(buffer->text + buffer->length, text, length);
    buffer->length += length;
    buffer->text[buffer->length] = '\0';
}

void buffer_add(struct buffer *buffer, const char *text)
{
    buffer_add_n(buffer, text, strlen(text));
}

void buffer_printf(struct buffer *buffer, const char *format, ...)
{
    va_list args;
    va_start(args, format);
    buffer_add(buffer, arena_vprintf(buffer->arena, format, args));
    va_end(args);
}

const char *buffer_text(const struct buffer *buffer)
{
    return buffer->text ? buffer->text : "";
}
