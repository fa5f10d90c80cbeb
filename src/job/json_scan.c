/* A strict scan of a JSON text, beside cJSON: where each key and value stands, and what cJSON lets pass.
 *
 * Refused here: numbers such as 01 or 1., control characters and \u0000 in strings, lone surrogates,
 * nesting deeper than 64, text after the document (RFC 8259 leaves these open or forbids them; cJSON accepts most).
 * Keys that stand twice are refused by the check, as in INI. */
#include <string.h>

#include "job_internal.h"

enum { DEPTH_MOST = 64, VALUES_MOST = 10000 };

struct scan {
    struct reading *reading;
    struct json_index *index;
    const char *text;
    size_t length, next;
    int line;
    size_t line_start;
};

static int column_of(const struct scan *scan, size_t offset)
{
    return (int)utf8_count(scan->text + scan->line_start, offset - scan->line_start) + 1;
}

static bool fault(const struct scan *scan, size_t offset, const char *text)
{
    struct place at = {.file = scan->reading->file, .line = scan->line, .column = column_of(scan, offset)};
    diag_add(scan->reading->diags, DIAG_F005, &at, "%s", text);
    return false;
}

static char peek(const struct scan *scan)
{
    if (scan->next == scan->length)
        return '\0';
    return scan->text[scan->next];
}

static void skip_blanks(struct scan *scan)
{
    while (scan->next < scan->length && strchr(" \t\r\n", scan->text[scan->next])) {
        if (scan->text[scan->next++] != '\n')
            continue;
        scan->line++;
        scan->line_start = scan->next;
    }
}

static int hex_digit(char c)
{
    static const char low[] = "0123456789abcdef";
    static const char high[] = "0123456789ABCDEF";
    for (int value = 0; value < 16; value++)
        if (c == low[value] || c == high[value])
            return value;
    return -1;
}

/* The four digits after \u at `offset`; -1 when they are not there. */
static int hex_four(const struct scan *scan, size_t offset)
{
    int value = 0;
    if (offset + 4 > scan->length)
        return -1;
    for (size_t i = offset; i < offset + 4; i++) {
        int digit = hex_digit(scan->text[i]);
        if (digit < 0)
            return -1;
        value = value * 16 + digit;
    }
    return value;
}

/* After the backslash; leaves next behind the escape. */
static bool scan_escape(struct scan *scan)
{
    size_t at = scan->next - 1;
    char c = peek(scan);
    scan->next++;
    if (c && strchr("\"\\/", c))
        return true;
    if (c && strchr("bfnrt", c))
        return fault(scan, at, "control character in a text; delete the escape");
    int unit = c == 'u' ? hex_four(scan, scan->next) : -1;
    if (unit < 0)
        return fault(scan, at, "unknown escape in a text; write \\\" for \" and \\\\ for \\");
    if (unit < 0x20 || unit == 0x7F)
        return fault(scan, at, "control character in a text; delete the escape");
    scan->next += 4;
    if (unit < 0xD800 || unit > 0xDFFF)
        return true;
    int low = unit < 0xDC00 && scan->next + 2 <= scan->length && memcmp(scan->text + scan->next, "\\u", 2) == 0
                  ? hex_four(scan, scan->next + 2)
                  : -1;
    if (low < 0xDC00 || low > 0xDFFF)
        return fault(scan, at, "half of a surrogate pair in a text; write the character itself");
    scan->next += 6;
    return true;
}

/* At the opening quote; leaves next behind the closing one. */
static bool scan_string(struct scan *scan)
{
    size_t start = scan->next++;
    while (scan->next < scan->length) {
        char c = scan->text[scan->next];
        if (c == '\n' || c == '\r')
            break;
        if (c == '\t')
            return fault(scan, scan->next, "tab in a text; write a blank");
        scan->next++;
        if (c == '"')
            return true;
        if (c == '\\' && !scan_escape(scan))
            return false;
    }
    return fault(scan, start, "text without its closing '\"' on the same line; an inch mark in it is written \\\"");
}

static size_t digit_count(const struct scan *scan, size_t from)
{
    size_t count = 0;
    while (from + count < scan->length && scan->text[from + count] >= '0' && scan->text[from + count] <= '9')
        count++;
    return count;
}

static bool scan_number(struct scan *scan)
{
    size_t start = scan->next;
    size_t at = start + (scan->text[start] == '-' ? 1 : 0);
    size_t whole = digit_count(scan, at);
    bool good = whole > 0 && !(whole > 1 && scan->text[at] == '0');
    at += whole;
    if (good && at < scan->length && scan->text[at] == '.') {
        size_t part = digit_count(scan, at + 1);
        good = part > 0;
        at += 1 + part;
    }
    good = good && (at == scan->length || strchr(" \t\r\n,]}", scan->text[at]));
    if (!good)
        return fault(scan, start, "not a number as JSON writes it; a value with a unit is a text: \"12 ft 6 in\"");
    scan->next = at;
    return true;
}

static bool scan_word(struct scan *scan)
{
    static const char *const words[] = {"true", "false", "null"};
    for (size_t i = 0; i < 3; i++) {
        size_t length = strlen(words[i]);
        if (scan->length - scan->next < length || memcmp(scan->text + scan->next, words[i], length) != 0)
            continue;
        scan->next += length;
        return true;
    }
    return fault(scan, scan->next, "no value here; texts stand in double quotes: \"post P1\"");
}

static bool scan_value(struct scan *scan, struct json_node node, int depth);

static bool scan_member(struct scan *scan, int depth)
{
    if (peek(scan) != '"')
        return fault(scan, scan->next, "a key in double quotes must stand here; no comma after the last one");
    struct json_node node = {.key_line = scan->line, .key_column = column_of(scan, scan->next)};
    if (!scan_string(scan))
        return false;
    skip_blanks(scan);
    if (peek(scan) != ':')
        return fault(scan, scan->next, "no ':' between key and value");
    scan->next++;
    skip_blanks(scan);
    return scan_value(scan, node, depth);
}

/* A quote right behind a text is most often an inch mark in it. */
static bool no_comma(const struct scan *scan, char close)
{
    if (peek(scan) == '"' && scan->text[scan->next - 1] == '"')
        return fault(scan, scan->next, "text goes on after its closing '\"'; an inch mark in it is written \\\"");
    return fault(scan, scan->next, close == '}' ? "no ',' or '}' after this value" : "no ',' or ']' after this value");
}

static bool scan_children(struct scan *scan, char close, int depth)
{
    scan->next++;
    skip_blanks(scan);
    if (peek(scan) == close) {
        scan->next++;
        return true;
    }
    for (;;) {
        if (close == '}' ? !scan_member(scan, depth) : !scan_value(scan, (struct json_node){0}, depth))
            return false;
        skip_blanks(scan);
        char c = peek(scan);
        if (c != ',' && c != close)
            return no_comma(scan, close);
        scan->next++;
        if (c == close)
            return true;
        skip_blanks(scan);
    }
}

static bool scan_value(struct scan *scan, struct json_node node, int depth)
{
    if (depth > DEPTH_MOST)
        return fault(scan, scan->next, "nested deeper than 64; a job is {kind: {id: {key: value}}}");
    char c = peek(scan);
    node.line = scan->line;
    node.column = column_of(scan, scan->next);
    node.from = scan->next;
    node.is = c == '{' ? JSON_OBJECT : c == '[' ? JSON_ARRAY : c == '"' ? JSON_STRING : JSON_WORD;
    if (c == '-' || (c >= '0' && c <= '9'))
        node.is = JSON_NUMBER;
    struct json_index *index = scan->index;
    size_t number = index->count;
    if (number == VALUES_MOST)
        return fault(scan, scan->next, "more than 10,000 values; a job has some hundred");
    index->node = arena_more(scan->reading->arena, index->node, index->count, &index->capacity, sizeof *index->node);
    index->node[index->count++] = node;
    bool good = node.is == JSON_OBJECT   ? scan_children(scan, '}', depth + 1)
                : node.is == JSON_ARRAY  ? scan_children(scan, ']', depth + 1)
                : node.is == JSON_STRING ? scan_string(scan)
                : node.is == JSON_NUMBER ? scan_number(scan)
                                         : scan_word(scan);
    index->node[number].length = scan->next - node.from;
    return good;
}

bool json_scan(struct reading *reading, struct json_index *index)
{
    struct scan scan = {
        .reading = reading, .index = index, .text = reading->text, .length = reading->length, .line = 1};
    skip_blanks(&scan);
    if (!scan_value(&scan, (struct json_node){0}, 1))
        return false;
    skip_blanks(&scan);
    return scan.next == scan.length || fault(&scan, scan.next, "text after the end of the job; delete it");
}
