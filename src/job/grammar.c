/* Small grammars of single values: 6/12, L/360, bare numbers, "30 % on signing". */
#include <string.h>

#include "job_internal.h"

bool number_alone(const char *text)
{
    size_t sign = *text == '-' || *text == '+' ? 1 : 0;
    return text[sign] && strspn(text + sign, "0123456789.,/ ") == strlen(text + sign);
}

bool number_leads(const char *text)
{
    size_t number = strspn(text, "-0123456789.,");
    return number > 0 && text[number];
}

bool parse_pitch(const char *text, double *rise, double *run)
{
    const char *slash = strchr(text, '/');
    char part[32];
    if (!slash || (size_t)(slash - text) >= sizeof part)
        return false;
    memcpy(part, text, (size_t)(slash - text));
    part[slash - text] = '\0';
    return number_parse(part, rise) && number_parse(slash + 1, run) && *run > 0;
}

bool parse_limit(const char *text, int *n)
{
    int value = 0;
    if ((text[0] != 'L' && text[0] != 'l') || text[1] != '/' || !text[2] || strlen(text) > 8)
        return false;
    for (const char *digit = text + 2; *digit; digit++) {
        if (*digit < '0' || *digit > '9')
            return false;
        value = value * 10 + (*digit - '0');
    }
    *n = value;
    return value > 0;
}

bool draw_parse(struct arena *arena, const char *text, percent_t *share, const char **when)
{
    const char *why = NULL;
    const char *sign = strchr(text, '%');
    if (!sign || !percent_parse(arena_strndup(arena, text, (size_t)(sign - text) + 1), share, &why))
        return false;
    *when = text_trim(arena, sign + 1);
    return **when && *share > 0;
}

const char *with_units(struct arena *arena, const char *number, const char *units)
{
    char **unit = NULL;
    size_t count = text_split(arena, units, &unit);
    if (count == 1)
        return arena_printf(arena, "%s %s", number, unit[0]);
    return arena_printf(arena, "%s %s or %s %s", number, unit[0], number, unit[1]);
}
