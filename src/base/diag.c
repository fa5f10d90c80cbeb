#include "sawbill/diag.h"

#include <assert.h>
#include <string.h>

struct row {
    const char *name;
    enum diag_class class;
    bool can_ack;
    const char *title;
};

static const struct row ROWS[DIAG_CODE_COUNT] = {
#define DIAG_ROW(code, class, ack, title) {#code, DIAG_##class, ack, title},
#include "sawbill/diag_codes.h"
#undef DIAG_ROW
};

static const struct row *row_of(enum diag_code code)
{
    assert((unsigned)code < DIAG_CODE_COUNT);
    return &ROWS[code];
}

const char *diag_code_name(enum diag_code code)
{
    return row_of(code)->name;
}

enum diag_class diag_code_class(enum diag_code code)
{
    return row_of(code)->class;
}

bool diag_code_can_ack(enum diag_code code)
{
    return row_of(code)->can_ack;
}

const char *diag_code_title(enum diag_code code)
{
    return row_of(code)->title;
}

const char *diag_class_name(enum diag_class class)
{
    static const char *const NAMES[] = {[DIAG_NOTE] = "note", [DIAG_ASK] = "ask", [DIAG_STOP] = "stop"};
    return NAMES[class];
}

static int compare_text(const char *a, const char *b)
{
    return strcmp(a ? a : "", b ? b : "");
}

static int compare_place(const struct place *a, const struct place *b)
{
    int order = compare_text(a->file, b->file);
    if (order == 0)
        order = (a->line > b->line) - (a->line < b->line);
    if (order == 0)
        order = (a->column > b->column) - (a->column < b->column);
    return order;
}

/* The numbers first: a file with a fault in every line must not cost a comparison of names for every pair. */
static bool is_same(const struct diag *a, const struct diag *b)
{
    return a->at.line == b->at.line && a->code == b->code && a->at.column == b->at.column &&
           compare_text(a->at.file, b->at.file) == 0 && compare_text(a->at.pointer, b->at.pointer) == 0 &&
           strcmp(a->text, b->text) == 0;
}

static bool is_known(const struct diags *diags, const struct diag *wanted)
{
    for (size_t i = 0; i < diags->count; i++)
        if (is_same(&diags->item[i], wanted))
            return true;
    return false;
}

static const char ASSUMED[] = "assumed: ";

void diag_add(struct diags *diags, enum diag_code code, const struct place *at, const char *format, ...)
{
    struct diag diag = {.class = diag_code_class(code), .code = code};
    va_list args;
    va_start(args, format);
    diag.text = arena_vprintf(diags->arena, format, args);
    va_end(args);
    if (at)
        diag.at = *at;
    if (diags->assume && diag.class == DIAG_ASK) {
        diag.class = DIAG_NOTE;
        diag.text = arena_printf(diags->arena, "%s%s", ASSUMED, diag.text);
    }
    if (is_known(diags, &diag))
        return;
    diags->item = arena_more(diags->arena, diags->item, diags->count, &diags->capacity, sizeof *diags->item);
    diags->item[diags->count++] = diag;
}

size_t diag_count(const struct diags *diags, enum diag_class class)
{
    size_t count = 0;
    for (size_t i = 0; i < diags->count; i++)
        if (diags->item[i].class == class && !diags->item[i].acknowledged)
            count++;
    return count;
}

bool diag_has_stop(const struct diags *diags)
{
    return diag_count(diags, DIAG_STOP) > 0;
}

struct diags diag_scratch(struct arena *arena, const struct diags *real)
{
    return (struct diags){.arena = arena, .assume = real->assume};
}

const char *diag_bare_text(const struct diag *diag)
{
    const size_t length = sizeof ASSUMED - 1;
    bool assumed = diag->class != diag_code_class(diag->code) && strncmp(diag->text, ASSUMED, length) == 0;
    return diag->text + (assumed ? length : 0);
}

/* Two sorted runs become one; of equals the left one goes first. */
static void merge(const struct diag *from, struct diag *to, size_t left, size_t middle, size_t right)
{
    size_t a = left, b = middle;
    for (size_t i = left; i < right; i++) {
        bool take_left = a < middle && (b >= right || compare_place(&from[a].at, &from[b].at) <= 0);
        to[i] = from[take_left ? a++ : b++];
    }
}

void diag_sort(struct diags *diags)
{
    size_t count = diags->count;
    struct diag *from = diags->item;
    struct diag *to = arena_array(diags->arena, count, sizeof *to);
    for (size_t width = 1; width < count; width *= 2) {
        for (size_t left = 0; left < count; left += 2 * width) {
            size_t middle = left + width < count ? left + width : count;
            size_t right = left + 2 * width < count ? left + 2 * width : count;
            merge(from, to, left, middle, right);
        }
        struct diag *sorted = to;
        to = from;
        from = sorted;
    }
    if (from != diags->item) {
        diags->item = from;
        diags->capacity = count;
    }
}

char *diag_line(struct arena *arena, const struct diag *diag)
{
    const char *class = diag_class_name(diag->class), *code = diag_code_name(diag->code);
    const struct place *at = &diag->at;
    if (!at->file)
        return arena_printf(arena, "%s[%s]: %s", class, code, diag->text);
    if (at->line == 0)
        return arena_printf(arena, "%s: %s[%s]: %s", at->file, class, code, diag->text);
    return arena_printf(arena, "%s:%d:%d: %s[%s]: %s", at->file, at->line, at->column, class, code, diag->text);
}
