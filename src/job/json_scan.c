/* A strict scan of a JSON text, beside cJSON: where each key and value stands, and what cJSON lets pass.
 *
 * Refused here: duplicate keys, numbers such as 01 or 1., control characters and \u0000 in strings, lone surrogates,
 * nesting deeper than 64, text after the document (RFC 8259 leaves these open or forbids them; cJSON accepts most). */
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
    return scan->next < scan->length ? scan->text[scan->next] : '\0';
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
    static const char digits[] = "0123456789abcdef";
    const char *at = c ? strchr(digits, c >= 'A' && c <= 'F' ? c - 'A' + 'a' : c) : NULL;
    return at ? (int)(at - digits) : -1;
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

static size_t digits(const struct scan *scan, size_t from)
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
    size_t whole = digits(scan, at);
    bool good = whole > 0 && !(whole > 1 && scan->text[at] == '0');
    at += whole;
    if (good && at < scan->length && scan->text[at] == '.') {
        size_t part = digits(scan, at + 1);
        good = part > 0;
        at += 1 + part;
    }
    char next = at < scan->length ? scan->text[at] : '\0';
    if (!good || (next && !strchr(" \t\r\n,]}", next)))
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

const char *json_pointer(struct arena *arena, const char *parent, const char *key, size_t length)
{
    struct buffer out = {.arena = arena};
    buffer_add(&out, parent);
    buffer_add(&out, "/");
    for (size_t i = 0; i < length; i++) {
        if (key[i] == '~')
            buffer_add(&out, "~0");
        else if (key[i] == '/')
            buffer_add(&out, "~1");
        else
            buffer_add_n(&out, key + i, 1);
    }
    return buffer_text(&out);
}

static bool scan_value(struct scan *scan, struct json_node node, int depth);

/* A key of this object that stood before: its first node, else NULL. */
static const struct json_node *key_before(const struct scan *scan, size_t object, const char *pointer)
{
    for (size_t i = object + 1; i < scan->index->count; i++)
        if (strcmp(scan->index->node[i].pointer, pointer) == 0)
            return &scan->index->node[i];
    return NULL;
}

static bool scan_member(struct scan *scan, size_t object, const char *parent, int depth)
{
    if (peek(scan) != '"')
        return fault(scan, scan->next, "a key in double quotes must stand here; no comma after the last one");
    struct json_node node = {.key_line = scan->line, .key_column = column_of(scan, scan->next)};
    size_t start = scan->next;
    if (!scan_string(scan))
        return false;
    node.key_from = start + 1;
    node.key_length = scan->next - start - 2;
    node.pointer = json_pointer(scan->reading->arena, parent, scan->text + node.key_from, node.key_length);
    const struct json_node *before = key_before(scan, object, node.pointer);
    if (before) {
        struct place at = {
            .file = scan->reading->file, .line = node.key_line, .column = node.key_column, .pointer = node.pointer};
        diag_add(scan->reading->diags, DIAG_K003, &at, "'%.*s' stands twice in this object; the first is on line %d",
                 (int)node.key_length, scan->text + node.key_from, before->key_line);
        return false;
    }
    skip_blanks(scan);
    if (peek(scan) != ':')
        return fault(scan, scan->next, "no ':' between key and value");
    scan->next++;
    skip_blanks(scan);
    return scan_value(scan, node, depth);
}

static bool scan_children(struct scan *scan, size_t parent, char close, int depth)
{
    const char *pointer = scan->index->node[parent].pointer;
    scan->next++;
    skip_blanks(scan);
    if (peek(scan) == close) {
        scan->next++;
        return true;
    }
    for (size_t number = 0;; number++) {
        struct json_node item = {.pointer = arena_printf(scan->reading->arena, "%s/%zu", pointer, number)};
        if (close == '}' ? !scan_member(scan, parent, pointer, depth) : !scan_value(scan, item, depth))
            return false;
        skip_blanks(scan);
        char c = peek(scan);
        if (c != ',' && c != close)
            return fault(scan, scan->next,
                         close == '}' ? "no ',' or '}' after this value" : "no ',' or ']' after this value");
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
    bool good = node.is == JSON_OBJECT   ? scan_children(scan, number, '}', depth + 1)
                : node.is == JSON_ARRAY  ? scan_children(scan, number, ']', depth + 1)
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
    if (!scan_value(&scan, (struct json_node){.pointer = ""}, 1))
        return false;
    skip_blanks(&scan);
    return scan.next == scan.length || fault(&scan, scan.next, "text after the end of the job; delete it");
}
