/* One cell: text to value, strictly, with the way out in the message. */
#include "table.h"

#include <limits.h>
#include <math.h>
#include <string.h>

#include "sawbill/text.h"

#define CODE_MOST 40

static bool is_digit(char c)
{
    return c >= '0' && c <= '9';
}

static bool is_letter(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

static size_t count_digits(const char *text)
{
    size_t n = 0;
    while (is_digit(text[n]))
        n++;
    return n;
}

/* Length of a month's short English name at `text`, else 0. */
static size_t month_here(const char *text)
{
    static const char *const MONTHS[] = {"jan", "feb", "mar", "apr", "may", "jun",
                                         "jul", "aug", "sep", "oct", "nov", "dec"};
    char word[4] = "";
    for (size_t i = 0; i < 3 && is_letter(text[i]); i++)
        word[i] = (char)(text[i] | 0x20);
    for (size_t i = 0; i < sizeof MONTHS / sizeof *MONTHS; i++)
        if (strcmp(word, MONTHS[i]) == 0)
            return 3;
    return 0;
}

/* 2-Apr, 2-Apr-26, Apr-02, Apr-1926 */
static bool is_month_date(const char *text)
{
    size_t lead = count_digits(text);
    if (lead > 2 || (lead > 0 && text[lead] != '-'))
        return false;
    const char *rest = lead ? text + lead + 1 : text;
    size_t month = month_here(rest);
    if (!month)
        return false;
    rest += month;
    if (!*rest)
        return lead > 0;
    size_t tail = *rest == '-' ? count_digits(rest + 1) : 0;
    return tail >= 1 && tail <= 4 && rest[1 + tail] == '\0';
}

/* 4/2/2026, 04/02/26; 1900-01-02, which a small number turns into */
static bool is_number_date(const char *text)
{
    size_t a = count_digits(text);
    char mark = text[a];
    if (a == 0 || (mark != '/' && mark != '-'))
        return false;
    size_t b = count_digits(text + a + 1);
    if (b == 0 || text[a + 1 + b] != mark)
        return false;
    const char *last = text + a + 1 + b + 1;
    size_t c = count_digits(last);
    if (last[c] != '\0')
        return false;
    return mark == '/' ? a <= 2 && b <= 2 && (c == 2 || c == 4) : a == 4 && b == 2 && c == 2;
}

/* 1.5E+02 */
static bool is_scientific(const char *text)
{
    size_t n = count_digits(text);
    if (n == 0)
        return false;
    if (text[n] == '.')
        n += 1 + count_digits(text + n + 1);
    if (text[n] != 'E' && text[n] != 'e')
        return false;
    n++;
    if (text[n] == '+' || text[n] == '-')
        n++;
    size_t power = count_digits(text + n);
    return power > 0 && text[n + power] == '\0';
}

/* #NAME?, #REF! and their kin; ##### of a column too narrow */
static bool is_error_mark(const char *text)
{
    static const char *const MARKS[] = {"#NAME?", "#REF!", "#VALUE!", "#DIV/0!", "#N/A", "#NUM!", "#NULL!"};
    for (size_t i = 0; i < sizeof MARKS / sizeof *MARKS; i++)
        if (strcmp(text, MARKS[i]) == 0)
            return true;
    return text[0] == '#' && text[strspn(text, "#")] == '\0';
}

/* What a spreadsheet program did to the cell, or NULL. */
static const char *spreadsheet_damage(const char *text, enum cell_type type)
{
    if (type != CELL_DATE && (is_month_date(text) || is_number_date(text)))
        return "a spreadsheet program has made a date of it";
    if (is_scientific(text))
        return "a spreadsheet program has made a rounded number of it";
    if (is_error_mark(text))
        return "it is an error mark of a spreadsheet program";
    return NULL;
}

/* The right form, unless the reason has named one. */
static const char *column_hint(struct arena *arena, const struct column *column, const char *why)
{
    return column->example && !strstr(why, "write it") ? arena_printf(arena, "; write it like '%s'", column->example)
                                                       : "";
}

struct reading {
    struct arena *arena;
    struct diags *diags;
    const struct column *column;
    const struct cell *cell;
    void *into;
};

static bool fault(const struct reading *r, const char *why)
{
    diag_add(r->diags, DIAG_C002, &r->cell->at, "'%s' in column '%s': %s%s", r->cell->text, r->column->name, why,
             column_hint(r->arena, r->column, why));
    return false;
}

/* In the column's own unit: inches, dollars, percent, plain. */
static bool in_range(const struct reading *r, double value)
{
    const struct column *column = r->column;
    if ((column->least == 0 && column->most == 0) || (value >= column->least && value <= column->most))
        return true;
    static const char *const UNITS[] = {[CELL_LENGTH] = " in", [CELL_MONEY] = " dollars", [CELL_PERCENT] = " %"};
    bool has_unit = column->type == CELL_LENGTH || column->type == CELL_MONEY || column->type == CELL_PERCENT;
    const char *unit = has_unit ? UNITS[column->type] : "";
    return fault(r, arena_printf(r->arena, "out of range, %s to %s%s", number_text(r->arena, column->least, 4),
                                 number_text(r->arena, column->most, 4), unit));
}

static bool store_code(const struct reading *r)
{
    memcpy(r->into, &r->cell->text, sizeof r->cell->text);
    if (!is_letter(r->cell->text[0]))
        return fault(r, "a code starts with a letter, or a spreadsheet program makes a number or a date of it");
    if (strlen(r->cell->text) > CODE_MOST)
        return fault(r, "a code has at most 40 characters");
    return true;
}

static bool store_text(const struct reading *r)
{
    memcpy(r->into, &r->cell->text, sizeof r->cell->text);
    return true;
}

static bool store_nothing(const struct reading *r)
{
    (void)r;
    return true;
}

static bool store_length(const struct reading *r)
{
    length_t value = 0;
    const char *why = "";
    if (!length_parse(r->cell->text, &value, &why))
        return fault(r, why);
    memcpy(r->into, &value, sizeof value);
    return in_range(r, length_inches(value));
}

static bool store_money(const struct reading *r)
{
    money_t value = 0;
    const char *why = "";
    if (!money_parse(r->cell->text, &value, &why))
        return fault(r, why);
    memcpy(r->into, &value, sizeof value);
    return in_range(r, money_dollars(value));
}

static bool store_percent(const struct reading *r)
{
    percent_t value = 0;
    const char *why = "";
    if (!percent_parse(r->cell->text, &value, &why))
        return fault(r, why);
    memcpy(r->into, &value, sizeof value);
    return in_range(r, 100 * percent_fraction(value));
}

/* A plain decimal, after which the column's unit may stand. */
static bool read_decimal(const struct reading *r, decimal_t *value)
{
    const char *text = r->cell->text;
    const char *unit = r->column->unit;
    size_t length = strlen(text);
    size_t tail = unit ? strlen(unit) : 0;
    if (tail && length > tail && strcmp(text + length - tail, unit) == 0)
        text = text_trim(r->arena, arena_strndup(r->arena, text, length - tail));
    const char *why = "";
    if (!decimal_parse(text, value, &why))
        return fault(r, why);
    return in_range(r, decimal_value(*value));
}

static bool store_decimal(const struct reading *r)
{
    decimal_t value = 0;
    bool ok = read_decimal(r, &value);
    memcpy(r->into, &value, sizeof value);
    return ok;
}

static bool store_number(const struct reading *r)
{
    decimal_t value = 0;
    bool ok = read_decimal(r, &value);
    double number = decimal_value(value);
    memcpy(r->into, &number, sizeof number);
    return ok;
}

static bool store_count(const struct reading *r)
{
    decimal_t value = 0;
    if (!read_decimal(r, &value))
        return false;
    if (value % DECIMAL_ONE != 0 || value < 0 || value / DECIMAL_ONE > INT_MAX)
        return fault(r, "a whole number is meant");
    int count = (int)(value / DECIMAL_ONE);
    memcpy(r->into, &count, sizeof count);
    return true;
}

static bool store_date(const struct reading *r)
{
    struct date date = {0};
    const char *why = "";
    if (!date_parse(r->cell->text, &date, &why))
        return fault(r, is_number_date(r->cell->text) || is_month_date(r->cell->text)
                            ? "a spreadsheet program has turned the date round; format the column as YYYY-MM-DD"
                            : why);
    memcpy(r->into, &date, sizeof date);
    return true;
}

static const struct word *find_word(const struct word *words, const char *text)
{
    for (const struct word *word = words; word->word; word++)
        if (name_same(word->word, text))
            return word;
    return NULL;
}

static bool unknown_word(const struct reading *r, const char *text)
{
    struct buffer list = {.arena = r->arena};
    const char *names[16];
    size_t count = 0;
    for (const struct word *word = r->column->words; word->word && count < 16; word++) {
        buffer_add(&list, count ? ", " : "");
        buffer_add(&list, word->word);
        names[count++] = word->word;
    }
    const char *near = did_you_mean(r->arena, text, names, count);
    const char *hint = near ? arena_printf(r->arena, "; did you mean '%s'?", near) : "";
    diag_add(r->diags, DIAG_C002, &r->cell->at, "'%s' in column '%s' is not one of: %s%s", text, r->column->name,
             buffer_text(&list), hint);
    return false;
}

_Static_assert(sizeof(enum family_of_wood) == sizeof(int) && sizeof(enum connector_kind) == sizeof(int),
               "words are stored as int");

static bool store_word(const struct reading *r)
{
    const struct word *word = find_word(r->column->words, r->cell->text);
    if (!word)
        return unknown_word(r, r->cell->text);
    if (r->column->type == CELL_CHECKED)
        return true;
    if (r->column->type == CELL_FLAG) {
        bool flag = word->value != 0;
        memcpy(r->into, &flag, sizeof flag);
    } else {
        memcpy(r->into, &word->value, sizeof word->value);
    }
    return true;
}

static bool store_words(const struct reading *r)
{
    unsigned bits = 0;
    bool ok = true;
    const char *text = r->cell->text;
    while (*text) {
        size_t length = strcspn(text, "; ");
        if (length) {
            const char *part = arena_strndup(r->arena, text, length);
            const struct word *word = find_word(r->column->words, part);
            if (word)
                bits |= (unsigned)word->value;
            else
                ok = unknown_word(r, part);
        }
        text += length;
        text += strspn(text, "; ");
    }
    memcpy(r->into, &bits, sizeof bits);
    return ok;
}

static bool store_empty(const struct reading *r)
{
    const char *text = r->column->type == CELL_REF ? NULL : "";
    double nan = NAN;
    if (r->column->type == CELL_CODE || r->column->type == CELL_TEXT || r->column->type == CELL_REF)
        memcpy(r->into, &text, sizeof text);
    else if (r->column->type == CELL_NUMBER_NAN)
        memcpy(r->into, &nan, sizeof nan);
    if (!r->column->required)
        return true;
    diag_add(r->diags, DIAG_C002, &r->cell->at, "empty cell in column '%s'%s", r->column->name,
             column_hint(r->arena, r->column, ""));
    return false;
}

typedef bool store_fn(const struct reading *);
static store_fn *const STORES[] = {
    [CELL_CODE] = store_code,       [CELL_TEXT] = store_text,      [CELL_REF] = store_text,
    [CELL_LENGTH] = store_length,   [CELL_MONEY] = store_money,    [CELL_PERCENT] = store_percent,
    [CELL_DECIMAL] = store_decimal, [CELL_NUMBER] = store_number,  [CELL_NUMBER_NAN] = store_number,
    [CELL_COUNT] = store_count,     [CELL_DATE] = store_date,      [CELL_WORD] = store_word,
    [CELL_WORDS] = store_words,     [CELL_FLAG] = store_word,      [CELL_CHECKED] = store_word,
    [CELL_NAMED] = store_nothing,   [CELL_UNUSED] = store_nothing,
};

bool cell_store(struct arena *arena, const struct column *column, const struct cell *cell, void *row,
                struct diags *diags)
{
    struct reading r = {arena, diags, column, cell, (char *)row + column->offset};
    if (!cell->text[0])
        return store_empty(&r);
    const char *damage = spreadsheet_damage(cell->text, column->type);
    if (!damage)
        return STORES[column->type](&r);
    if (column->type == CELL_CODE || column->type == CELL_TEXT || column->type == CELL_REF)
        (void)store_text(&r); /* kept, so that what refers to it is not reported too; cannot fail */
    return fault(&r, damage);
}
