#include "sawbill/text.h"

/* Table 3-7 of The Unicode Standard: the second byte's range says the rest of what is well formed. */
struct utf8_row {
    unsigned char first_from, first_to, second_from, second_to;
    size_t size;
};
static const struct utf8_row ROWS[] = {
    {0x00, 0x7f, 0, 0, 1},       {0xc2, 0xdf, 0x80, 0xbf, 2}, {0xe0, 0xe0, 0xa0, 0xbf, 3},
    {0xe1, 0xec, 0x80, 0xbf, 3}, {0xed, 0xed, 0x80, 0x9f, 3}, {0xee, 0xef, 0x80, 0xbf, 3},
    {0xf0, 0xf0, 0x90, 0xbf, 4}, {0xf1, 0xf3, 0x80, 0xbf, 4}, {0xf4, 0xf4, 0x80, 0x8f, 4},
};

/* Bytes of the character that starts here, 0 when it is not well formed. */
static size_t character_size(const unsigned char *at, size_t left)
{
    for (size_t i = 0; i < sizeof ROWS / sizeof *ROWS; i++) {
        const struct utf8_row *row = &ROWS[i];
        if (at[0] < row->first_from || at[0] > row->first_to)
            continue;
        if (row->size > left)
            return 0;
        if (row->size > 1 && (at[1] < row->second_from || at[1] > row->second_to))
            return 0;
        for (size_t k = 2; k < row->size; k++)
            if (at[k] < 0x80 || at[k] > 0xbf)
                return 0;
        return row->size;
    }
    return 0;
}

size_t utf8_check(const char *text, size_t length)
{
    const unsigned char *bytes = (const unsigned char *)text;
    size_t at = 0;
    while (at < length) {
        size_t size = character_size(bytes + at, length - at);
        if (!size)
            return at;
        at += size;
    }
    return length;
}

size_t utf8_count(const char *text, size_t length)
{
    size_t count = 0;
    for (size_t i = 0; i < length; i++)
        if (((unsigned char)text[i] & 0xc0u) != 0x80u)
            count++;
    return count;
}
