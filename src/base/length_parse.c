#include "sawbill/length.h"

#include <string.h>

#include "letters.h"
#include "numeral.h"
#include "sawbill/wide.h"

enum { PLAIN_SIZE = 160 };

static const char WHY_EMPTY[] = "nothing is written";
static const char WHY_NO_UNIT[] = "no unit: feet or inches? write it out, as 14 ft, 78 1/2 in or 4430 mm";
static const char WHY_TOGETHER[] = "feet and inches run together: write their marks, as 12' 6\"";
static const char WHY_UNIT[] = "unknown unit of length: known are ft, in, mm, cm, m and the marks ' and \"";
static const char WHY_COMMA[] = "a comma in a length: the decimal sign is a point, and thousands are not parted";
static const char WHY_LETTER[] = "a character that has no place in a length";
static const char WHY_LONG[] = "too long for a length";
static const char WHY_ZERO_PART[] = "a fraction with zero below the line";
static const char WHY_PART[] = "a fraction of one or more after a whole number";
static const char WHY_MIXED[] = "feet with a fraction and inches as well";
static const char WHY_INCH_MARK[] = "inches without their mark: write 14' 6\"";
static const char WHY_INCHES[] = "feet can only be followed by inches";
static const char WHY_TWELVE[] = "12 inches or more after feet";
static const char WHY_FINE[] = "finer than can be kept exactly: use 1/64 in, 0.001 in, 0.01 ft or 0.001 mm";
static const char WHY_FAR[] = "longer than 1,000,000 ft";
static const char WHY_AFTER[] = "something follows the length";
static const char WHY_METRIC_PART[] = "a fraction of a metric unit: write a decimal";

/* What people and word processors write, and the plain form that is read.  A fraction in one character follows a whole
 * number with a blank, and nothing may run on behind it. */
struct mark {
    const char *written, *plain;
};
static const struct mark MARKS[] = {
    {"\u2032", "'"},     {"\u2019", "'"},     {"\u2018", "'"},     {"\u02b9", "'"},     {"\u2033", "\""},
    {"\u201d", "\""},    {"\u201c", "\""},    {"\u02ba", "\""},    {"\u2044", "/"},     {"\u2215", "/"},
    {"\u2212", "-"},     {"\u2010", "-"},     {"\u2011", "-"},     {"\u2013", "-"},     {"\u00a0", " "},
    {"\u2009", " "},     {"\u202f", " "},     {"\u00bd", " 1/2 "}, {"\u00bc", " 1/4 "}, {"\u00be", " 3/4 "},
    {"\u215b", " 1/8 "}, {"\u215c", " 3/8 "}, {"\u215d", " 5/8 "}, {"\u215e", " 7/8 "}, {"\u2153", " 1/3 "},
    {"\u2154", " 2/3 "}, {"\u2155", " 1/5 "}, {"\u2156", " 2/5 "}, {"\u2157", " 3/5 "}, {"\u2158", " 4/5 "},
    {"\u2159", " 1/6 "}, {"\u215a", " 5/6 "}, {"\u2150", " 1/7 "}, {"\u2151", " 1/9 "}, {"\u2152", " 1/10 "},
};

enum kind { KIND_NONE, KIND_FEET, KIND_INCHES, KIND_METRIC };
struct unit_word {
    const char *word;
    enum kind kind;
    length_t size;
};
static const length_t MILLIMETER = 40000;
static const struct unit_word WORDS[] = {
    {"'", KIND_FEET, LENGTH_FOOT},
    {"''", KIND_INCHES, LENGTH_INCH},
    {"\"", KIND_INCHES, LENGTH_INCH},
    {"ft", KIND_FEET, LENGTH_FOOT},
    {"foot", KIND_FEET, LENGTH_FOOT},
    {"feet", KIND_FEET, LENGTH_FOOT},
    {"in", KIND_INCHES, LENGTH_INCH},
    {"inch", KIND_INCHES, LENGTH_INCH},
    {"inches", KIND_INCHES, LENGTH_INCH},
    {"mm", KIND_METRIC, MILLIMETER},
    {"millimeter", KIND_METRIC, MILLIMETER},
    {"millimeters", KIND_METRIC, MILLIMETER},
    {"cm", KIND_METRIC, 10 * MILLIMETER},
    {"centimeter", KIND_METRIC, 10 * MILLIMETER},
    {"centimeters", KIND_METRIC, 10 * MILLIMETER},
    {"m", KIND_METRIC, 1000 * MILLIMETER},
    {"meter", KIND_METRIC, 1000 * MILLIMETER},
    {"meters", KIND_METRIC, 1000 * MILLIMETER},
};

/* A number as written: numerator / denominator. */
struct measure {
    wide_t numerator;
    int64_t denominator;
    bool whole, fraction; /* no decimals and no fraction; written with a slash */
};

static const struct mark *find_mark(const char *at)
{
    for (size_t i = 0; i < sizeof MARKS / sizeof *MARKS; i++)
        if (strncmp(at, MARKS[i].written, strlen(MARKS[i].written)) == 0)
            return &MARKS[i];
    return NULL;
}

/* Lower case, plain marks and blanks only.  Returns why not, or NULL. */
static const char *make_plain(const char *text, char plain[PLAIN_SIZE])
{
    size_t length = 0;
    while (*text != '\0') {
        char one[2] = {lower(*text), '\0'};
        if (is_blank(*text))
            one[0] = ' ';
        const char *add = one;
        size_t used = 1;
        if ((unsigned char)*text >= 0x80) {
            const struct mark *mark = find_mark(text);
            if (!mark)
                return WHY_LETTER;
            add = mark->plain;
            used = strlen(mark->written);
            if (add[0] == ' ' && add[1] != '\0' && length && plain[length - 1] == '-')
                add++; /* 6-1/2 in one character */
        }
        size_t size = strlen(add);
        if (length + size >= PLAIN_SIZE)
            return WHY_LONG;
        memcpy(plain + length, add, size);
        length += size;
        text += used;
    }
    plain[length] = '\0';
    return NULL;
}

/* "/den" at *at, after a whole numerator. */
static const char *read_denominator(const char **at, struct numeral top, struct measure *out)
{
    struct numeral below;
    (*at)++;
    const char *why = numeral_read(at, false, &below);
    if (why)
        return why;
    if (top.places || below.places)
        return "a fraction of decimals";
    if (below.mantissa == 0)
        return WHY_ZERO_PART;
    *out = (struct measure){.numerator = top.mantissa, .denominator = below.mantissa, .fraction = true};
    return NULL;
}

/* A fraction behind a whole number: parted by blanks or one hyphen.  No fraction there: *at stays. */
static const char *read_part(const char **at, struct measure *out)
{
    const char *p = **at == '-' ? *at + 1 : skip_blanks(*at);
    struct numeral top;
    struct measure part;
    if (p == *at || numeral_read(&p, false, &top) || *p != '/')
        return NULL;
    const char *why = read_denominator(&p, top, &part);
    if (why)
        return why;
    if (part.numerator >= part.denominator)
        return WHY_PART;
    out->numerator = out->numerator * part.denominator + part.numerator;
    out->denominator = part.denominator;
    out->whole = false;
    out->fraction = true;
    *at = p;
    return NULL;
}

static const char *read_measure(const char **at, struct measure *out)
{
    struct numeral number;
    const char *why = numeral_read(at, false, &number);
    if (why)
        return why;
    if (**at == '/')
        return read_denominator(at, number, out);
    *out = (struct measure){
        .numerator = number.mantissa,
        .denominator = power_of_ten(number.places),
        .whole = number.places == 0,
    };
    return out->whole ? read_part(at, out) : NULL;
}

/* The unit at *at, NULL (and *at unmoved) when there is none of ours. */
static const struct unit_word *read_unit(const char **at)
{
    const char *p = skip_blanks(*at);
    size_t length = 0;
    if (*p == '\'')
        length = p[1] == '\'' ? 2 : 1;
    else if (*p == '"')
        length = 1;
    else
        while (p[length] >= 'a' && p[length] <= 'z')
            length++;
    for (size_t i = 0; i < sizeof WORDS / sizeof *WORDS; i++) {
        if (strlen(WORDS[i].word) != length || strncmp(p, WORDS[i].word, length) != 0)
            continue;
        p += length;
        *at = *p == '.' && WORDS[i].word[0] >= 'a' ? p + 1 : p; /* "ft." */
        return &WORDS[i];
    }
    return NULL;
}

static const char *why_no_unit(const char *at)
{
    at = skip_blanks(at);
    if (*at == '\0')
        return WHY_NO_UNIT;
    if (*at == '-' || is_digit(*at))
        return WHY_TOGETHER;
    return *at == ',' ? WHY_COMMA : WHY_UNIT;
}

static const char *scale(const struct measure *measure, const struct unit_word *unit, length_t *out)
{
    if (unit->kind == KIND_METRIC && measure->fraction)
        return WHY_METRIC_PART;
    /* Numerators reach 10^36 at most when a fraction of 18 digits follows 18 digits: what is far too long is refused
     * before the product could leave 128 bits. */
    if (measure->numerator / measure->denominator > LENGTH_MOST / unit->size)
        return WHY_FAR;
    wide_t whole = measure->numerator / measure->denominator * unit->size;
    wide_t rest = measure->numerator % measure->denominator * unit->size;
    if (rest % measure->denominator != 0)
        return WHY_FINE;
    wide_t value = whole + rest / measure->denominator;
    if (value > (wide_t)LENGTH_MOST)
        return WHY_FAR;
    *out = (length_t)value;
    return NULL;
}

/* What parts feet from inches: blanks, one hyphen, a comma or "and".  True when a sign stood there. */
static bool skip_between(const char **at)
{
    const char *p = skip_blanks(*at);
    bool sign = *p == '-' || *p == ',';
    if (sign)
        p++;
    else if (strncmp(p, "and ", 4) == 0) {
        sign = true;
        p += 4;
    }
    *at = skip_blanks(p);
    return sign;
}

/* Inches behind feet, added to *value; nothing there is well too. */
static const char *read_inches(const char **at, bool whole_feet, length_t *value)
{
    bool sign = skip_between(at);
    if (**at == '\0')
        return sign ? WHY_AFTER : NULL;
    struct measure measure;
    const char *why = read_measure(at, &measure);
    if (why)
        return WHY_AFTER;
    const struct unit_word *unit = read_unit(at);
    if (!unit)
        return *skip_blanks(*at) == '\0' ? WHY_INCH_MARK : why_no_unit(*at);
    if (unit->kind != KIND_INCHES)
        return WHY_INCHES;
    if (!whole_feet)
        return WHY_MIXED;
    length_t inches = 0;
    why = scale(&measure, unit, &inches);
    if (why)
        return why;
    if (inches >= LENGTH_FOOT)
        return WHY_TWELVE;
    *value += inches;
    return *value > LENGTH_MOST ? WHY_FAR : NULL;
}

static const char *read_length(const char *at, length_t *out)
{
    at = skip_blanks(at);
    if (*at == '\0')
        return WHY_EMPTY;
    bool minus = *at == '-';
    if (minus)
        at = skip_blanks(at + 1);
    struct measure measure;
    const char *why = read_measure(&at, &measure);
    if (why)
        return why;
    *out = 0;
    if (measure.numerator == 0 && !measure.fraction && *skip_blanks(at) == '\0')
        return NULL;
    const struct unit_word *unit = read_unit(&at);
    if (!unit)
        return why_no_unit(at);
    why = scale(&measure, unit, out);
    if (!why && unit->kind == KIND_FEET)
        why = read_inches(&at, measure.whole, out);
    if (!why && *skip_blanks(at) != '\0')
        why = WHY_AFTER;
    if (minus)
        *out = -*out;
    return why;
}

bool length_parse(const char *text, length_t *out, const char **why)
{
    char plain[PLAIN_SIZE];
    length_t value = 0;
    *why = make_plain(text, plain);
    if (!*why)
        *why = read_length(plain, &value);
    if (*why)
        return false;
    *out = value;
    return true;
}
