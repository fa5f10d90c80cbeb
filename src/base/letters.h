/* ASCII letters, digits and blanks without <ctype.h>, which asks the locale. */
#ifndef SAWBILL_BASE_LETTERS_H
#define SAWBILL_BASE_LETTERS_H

#include <stdbool.h>

static inline bool is_digit(char c)
{
    return c >= '0' && c <= '9';
}

static inline bool is_blank(char c)
{
    return c == ' ' || (c >= '\t' && c <= '\r');
}

static inline char lower(char c)
{
    if (c >= 'A' && c <= 'Z')
        return (char)(c - 'A' + 'a');
    return c;
}

static inline const char *skip_blanks(const char *at)
{
    while (is_blank(*at))
        at++;
    return at;
}

#endif
