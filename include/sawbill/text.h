/* Text: UTF-8 checks, the folding of names, growing buffers, did-you-mean.
 * The C locale only: nothing here looks at setlocale() state. */
#ifndef SAWBILL_TEXT_H
#define SAWBILL_TEXT_H

#include <stdbool.h>
#include <stddef.h>

#include "sawbill/arena.h"

/* A growing string in an arena.  Zero-initialise with its arena set. */
struct buffer {
    struct arena *arena;
    char *text; /* always NUL-terminated once anything was added, else NULL */
    size_t length, capacity;
};
void buffer_add(struct buffer *buffer, const char *text);
void buffer_add_n(struct buffer *buffer, const char *text, size_t length);
void buffer_printf(struct buffer *buffer, const char *format, ...) __attribute__((format(printf, 2, 3)));
/* The text so far; "" when empty. */
const char *buffer_text(const struct buffer *buffer);

/* Offset of the first byte that is not valid UTF-8 (overlong, surrogate and truncated forms are
 * refused), or length when all is well. */
size_t utf8_check(const char *text, size_t length);
/* Code points in the first `length` bytes of valid UTF-8: what an editor calls the column. */
size_t utf8_count(const char *text, size_t length);

/* Kinds, keys and ids fold: ASCII case is one, and runs of blank, '_' and '-' become one blank;
 * blanks at the ends go.  "Clear_Span" and "clear span" are one name. */
char *name_fold(struct arena *arena, const char *text);
bool name_same(const char *a, const char *b);
/* The whole text is an unsigned decimal ("12", "0.35", ".5"; no comma, no exponent, at most 18 digits), with blanks
 * around it at most.  The nearest double up to 15 digits; without locale. */
bool number_parse(const char *text, double *out);

/* The name closest to `word` by edit distance with swaps (restricted Damerau-Levenshtein, over
 * folded names), or NULL when none is close: distance at most 1 for up to 4 letters, 2 up to 8, 3 above. */
const char *did_you_mean(struct arena *arena, const char *word, const char *const *names, size_t count);

/* Text trimmed of ASCII blanks at both ends, copied. */
char *text_trim(struct arena *arena, const char *text);
/* Splits at commas, each part trimmed; empty parts are kept as "", so that "" is one part. Returns the count. */
size_t text_split(struct arena *arena, const char *text, char ***parts);

/* Doubles for people and for JSON: at most `decimals` places, trailing zeros cut, "-0" never
 * printed, '.' as the point whatever the locale is.  Halves go away from zero, judged on 15 significant
 * digits as a spreadsheet program does: 1.005 to two places is 1.01.  What is not finite is "nan", "inf" or
 * "-inf", which is not JSON. */
char *number_text(struct arena *arena, double value, int decimals);

#endif
