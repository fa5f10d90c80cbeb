/* One value: from text to its struct, by the type of its row; faults K007 to K010, K014, K015. */
#include <math.h>
#include <string.h>

#include "job_internal.h"

/* A value on its way: its text comes from an entry, or from the row's default (entry NULL). */
struct take {
    struct checker *checker;
    const struct key_row *row;
    const struct entry *entry;
    const char *text;
};

static void fault(const struct take *take, enum diag_code code, const char *text)
{
    diag_add(take->checker->diags, code, take->entry ? &take->entry->at : NULL, "%s", text);
}

/* What a text with a unit of another sort is; NULL when it is nothing known. */
static const char *what_it_is(const struct take *take)
{
    struct quantity quantity = {0};
    length_t length = 0;
    percent_t percent = 0;
    const char *why = NULL;
    if (quantity_parse(take->text, &quantity, &why) && quantity.unit != UNIT_NONE)
        return dimension_name(unit_dimension(quantity.unit));
    if (take->row->type != TYPE_LENGTH && take->row->type != TYPE_LENGTHS && length_parse(take->text, &length, &why))
        return "a length";
    if (take->row->type != TYPE_PERCENT && percent_parse(take->text, &percent, &why))
        return "a percentage";
    return NULL;
}

/* A value that its parser refused: is it the unit, or the whole? */
static void refuse(const struct take *take, const char *why)
{
    struct arena *arena = take->checker->arena;
    const char *units = take->row->unit;
    const char *key = take->row->key;
    if (units && number_alone(take->text)) {
        fault(take, DIAG_K008,
              arena_printf(arena, "'%s' for '%s' needs a unit: %s", take->text, key,
                           with_units(arena, take->text, units)));
        return;
    }
    const char *other = what_it_is(take);
    if (other) {
        fault(take, DIAG_K008,
              arena_printf(arena, "'%s' for '%s' is %s; it takes %s, such as %s", take->text, key, other,
                           units ? units : arena_printf(arena, "a %s", type_word(take->row->type)),
                           take->row->example));
        return;
    }
    if (units && number_leads(take->text) && strncmp(why, "unknown unit", 12) == 0) {
        fault(take, DIAG_K008,
              arena_printf(arena, "'%s' for '%s' has an unknown unit; it takes %s, such as %s", take->text, key, units,
                           take->row->example));
        return;
    }
    fault(take, DIAG_K007,
          arena_printf(arena, "'%s' for '%s' cannot be read: %s; write it like '%s'", take->text, key, why,
                       take->row->example));
}

/* A number to compare with a range, in one unit for each type; NAN when it cannot be read. */
static double measure(const struct key_row *row, const char *text)
{
    const char *why = NULL;
    length_t length = 0;
    money_t money = 0;
    percent_t percent = 0;
    decimal_t decimal = 0;
    struct quantity quantity = {0};
    int limit = 0;
    switch (row->type) {
    case TYPE_LENGTH:
    case TYPE_LENGTHS:
    case TYPE_PLACED:
        return length_parse(text, &length, &why) ? (double)length : NAN;
    case TYPE_QUANTITY:
        return quantity_parse(text, &quantity, &why) ? quantity_value(quantity) : NAN;
    case TYPE_MONEY:
        return money_parse(text, &money, &why) ? (double)money : NAN;
    case TYPE_PERCENT:
        return percent_parse(text, &percent, &why) ? (double)percent : NAN;
    case TYPE_LIMIT:
        return parse_limit(text, &limit) ? (double)limit : (double)NAN;
    default:
        return decimal_parse(text, &decimal, &why) ? decimal_value(decimal) : NAN;
    }
}

/* Splits "1 ft to 60 ft"; the unit of a count ("1 day") is no part of its number. */
static bool range_ends(struct arena *arena, const struct key_row *row, const char *range, double ends[2])
{
    const char *to = strstr(range, " to ");
    if (!to)
        return false;
    char *low = arena_strndup(arena, range, (size_t)(to - range));
    char *high = arena_strdup(arena, to + 4);
    if (row->type == TYPE_COUNT || row->type == TYPE_DECIMAL) {
        low[strcspn(low, " ")] = '\0';
        high[strcspn(high, " ")] = '\0';
    }
    ends[0] = measure(row, low);
    ends[1] = measure(row, high);
    return true;
}

static bool is_beyond(struct arena *arena, const struct key_row *row, const char *range, double value)
{
    double ends[2] = {0, 0};
    return range && range_ends(arena, row, range, ends) && (value < ends[0] || value > ends[1]);
}

static void check_range(const struct take *take, double value)
{
    const struct key_row *row = take->row;
    struct arena *arena = take->checker->arena;
    if (is_beyond(arena, row, row->range, value)) {
        fault(
            take, DIAG_K009,
            arena_printf(arena, "'%s' for '%s' is not possible; it lies within %s", take->text, row->key, row->range));
        return;
    }
    if (take->entry && is_beyond(arena, row, row->usual, value)) {
        fault(take, DIAG_K014,
              arena_printf(arena, "'%s' for '%s' is out of the usual %s; if it is right, write 'ack = K014 REASON'",
                           take->text, row->key, row->usual));
    }
}

static void take_text(const struct take *take, void *field)
{
    struct text_value *value = field;
    *value = (struct text_value){.text = take->text, .at = take->entry};
}

static void take_texts(const struct take *take, void *field)
{
    struct texts_value *value = field;
    size_t count = value->count;
    if ((count & (count - 1)) == 0) { /* full at 0, 1, 2, 4, 8: room doubles */
        struct text_value *more = arena_array(take->checker->arena, count ? 2 * count : 1, sizeof *more);
        if (count)
            memcpy(more, value->item, count * sizeof *more);
        value->item = more;
    }
    value->item[value->count++] = (struct text_value){.text = take->text, .at = take->entry};
}

static void take_length(const struct take *take, void *field)
{
    struct length_value *value = field;
    const char *why = NULL;
    value->at = take->entry;
    if (!length_parse(take->text, &value->length, &why))
        refuse(take, why);
    else
        check_range(take, (double)value->length);
}

static void take_lengths(const struct take *take, void *field)
{
    struct lengths_value *value = field;
    char **part = NULL;
    size_t count = text_split(take->checker->arena, take->text, &part);
    value->at = take->entry;
    value->item = arena_array(take->checker->arena, count, sizeof *value->item);
    for (size_t i = 0; i < count; i++) {
        struct take one = *take;
        const char *why = NULL;
        one.text = part[i];
        if (!length_parse(part[i], &value->item[i], &why)) {
            refuse(&one, why);
            return;
        }
        check_range(&one, (double)value->item[i]);
        value->count++;
        if (i == 0 || value->item[i] > value->item[i - 1])
            continue;
        fault(take, DIAG_K007,
              arena_printf(take->checker->arena, "'%s' for '%s' does not come after '%s'; write the places in order",
                           part[i], take->row->key, part[i - 1]));
        return;
    }
}

/* The places of "1-5/8 in at 23 in" or "2 in from 39 in to 7 ft"; false when they are neither. */
static bool split_placed(struct arena *arena, const char *text, char **length, char **from, char **to)
{
    const char *at = strstr(text, " at "), *begin = strstr(text, " from "), *end = begin ? strstr(begin, " to ") : NULL;
    if (at && !begin) {
        *length = arena_strndup(arena, text, (size_t)(at - text));
        *from = *to = text_trim(arena, at + 4);
        return true;
    }
    if (at || !end)
        return false;
    *length = arena_strndup(arena, text, (size_t)(begin - text));
    *from = text_trim(arena, arena_strndup(arena, begin + 6, (size_t)(end - begin - 6)));
    *to = text_trim(arena, end + 4);
    return true;
}

/* One length of the list with its places; false after saying what is wrong. */
static bool take_placed_one(const struct take *take, const char *text, struct placed_length *out)
{
    char *part[3] = {NULL};
    length_t *const into[3] = {&out->length, &out->from, &out->to};
    struct take one = *take;
    if (!split_placed(take->checker->arena, text, &part[0], &part[1], &part[2])) {
        refuse(take, "not 'LENGTH at PLACE' or 'LENGTH from PLACE to PLACE'");
        return false;
    }
    for (size_t i = 3; i-- > 0;) {
        const char *why = NULL;
        one.text = part[i];
        if (!length_parse(part[i], into[i], &why)) {
            refuse(&one, why);
            return false;
        }
    }
    check_range(&one, (double)out->length);
    if (out->from >= 0 && out->to >= out->from)
        return true;
    refuse(take, "places count from end 1, and 'to' comes after 'from'");
    return false;
}

static void take_placed(const struct take *take, void *field)
{
    struct placed_lengths_value *value = field;
    struct arena *arena = take->checker->arena;
    char **part = NULL;
    size_t count = text_split(arena, take->text, &part);
    value->at = take->entry;
    value->item = arena_array(arena, count, sizeof *value->item);
    for (size_t i = 0; i < count; i++)
        if (take_placed_one(take, part[i], &value->item[value->count]))
            value->count++;
}

static void take_quantity(const struct take *take, void *field)
{
    struct quantity_value *value = field;
    const char *why = NULL;
    value->at = take->entry;
    if (!quantity_parse(take->text, &value->quantity, &why)) {
        refuse(take, why);
        return;
    }
    /* A bare 0 is an answer of any dimension. */
    enum dimension dimension = unit_dimension(value->quantity.unit);
    if (dimension != DIM_NONE && !(take->row->dims & DIM_BIT(dimension)))
        refuse(take, "");
    else if (value->quantity.millionths < 0)
        fault(take, DIAG_K009,
              arena_printf(take->checker->arena, "'%s' for '%s' is less than nothing; loads and sizes are positive",
                           take->text, take->row->key));
    else
        check_range(take, quantity_value(value->quantity));
}

static void take_money(const struct take *take, void *field)
{
    struct money_value *value = field;
    const char *why = NULL;
    value->at = take->entry;
    if (!money_parse(take->text, &value->money, &why))
        refuse(take, why);
    else
        check_range(take, (double)value->money);
}

static void take_percent(const struct take *take, void *field)
{
    struct percent_value *value = field;
    const char *why = NULL;
    value->at = take->entry;
    if (!percent_parse(take->text, &value->percent, &why))
        refuse(take, why);
    else
        check_range(take, (double)value->percent);
}

/* The number of "30 days" when the row's unit is days: the text without its unit, or NULL.  A unit may be missing only
 * where the key itself says it. */
static const char *without_unit(const struct take *take)
{
    const char *unit = take->row->unit;
    if (!unit)
        return take->text;
    if (number_alone(take->text))
        return take->row->bare ? take->text : NULL;
    size_t number = strcspn(take->text, " abcdefghijklmnopqrstuvwxyz");
    const char *word = take->text + number + strspn(take->text + number, " ");
    size_t stem = strlen(unit) - 1; /* "day" of "days" */
    if (strncmp(word, unit, stem) != 0 || (word[stem] && strcmp(word + stem, "s") != 0))
        return NULL;
    return arena_strndup(take->checker->arena, take->text, number);
}

static void take_decimal(const struct take *take, void *field)
{
    struct decimal_value *value = field;
    const char *why = "not a number with this unit";
    const char *number = without_unit(take);
    value->at = take->entry;
    if (!number || !decimal_parse(number, &value->decimal, &why))
        refuse(take, why);
    else
        check_range(take, decimal_value(value->decimal));
}

static void take_count(const struct take *take, void *field)
{
    struct count_value *value = field;
    decimal_t decimal = 0;
    const char *why = "not a number with this unit";
    const char *number = without_unit(take);
    value->at = take->entry;
    if (!number || !decimal_parse(number, &decimal, &why)) {
        refuse(take, why);
        return;
    }
    if (decimal % DECIMAL_ONE != 0 || decimal / DECIMAL_ONE > 1000000 || decimal / DECIMAL_ONE < -1000000) {
        refuse(take, "not a whole number");
        return;
    }
    value->count = (int)(decimal / DECIMAL_ONE);
    check_range(take, value->count);
}

static void take_date(const struct take *take, void *field)
{
    struct date_value *value = field;
    const char *why = NULL;
    value->at = take->entry;
    if (!date_parse(take->text, &value->date, &why))
        refuse(take, why);
}

static const char *listed(struct arena *arena, const struct words *words)
{
    struct buffer out = {.arena = arena};
    for (size_t i = 0; i < words->count; i++)
        buffer_printf(&out, "%s%s", i ? ", " : "", words->word[i]);
    return buffer_text(&out);
}

/* The number of a word, from 1; 0 after a fault. */
static int choice_of(const struct take *take)
{
    const struct words *words = take->row->of;
    struct arena *arena = take->checker->arena;
    for (size_t i = 0; i < words->count; i++)
        if (name_same(take->text, words->word[i]))
            return (int)i + 1;
    const char *near = did_you_mean(arena, take->text, words->word, words->count);
    fault(take, DIAG_K010,
          near ? arena_printf(arena, "'%s' is no choice of '%s'; did you mean '%s'?", take->text, take->row->key, near)
               : arena_printf(arena, "'%s' is no choice of '%s'; it is one of %s", take->text, take->row->key,
                              listed(arena, words)));
    return 0;
}

static void take_choice(const struct take *take, void *field)
{
    struct choice_value *value = field;
    value->at = take->entry;
    value->choice = choice_of(take);
}

static void take_choices(const struct take *take, void *field)
{
    struct choices_value *value = field;
    char **part = NULL;
    size_t count = text_split(take->checker->arena, take->text, &part);
    value->at = take->entry;
    for (size_t i = 0; i < count; i++) {
        struct take one = *take;
        one.text = part[i];
        int choice = choice_of(&one);
        if (choice)
            value->set |= 1U << (unsigned)choice;
    }
}

static void take_pitch(const struct take *take, void *field)
{
    struct pitch_value *value = field;
    value->at = take->entry;
    if (!parse_pitch(take->text, &value->rise, &value->run))
        refuse(take, "a pitch is rise/run, two numbers");
    else if (value->rise / value->run > 2)
        fault(take, DIAG_K009,
              arena_printf(take->checker->arena, "'%s' for '%s' is not possible; it lies within 0/12 to 24/12",
                           take->text, take->row->key));
}

static void take_limit(const struct take *take, void *field)
{
    struct count_value *value = field;
    value->at = take->entry;
    if (!parse_limit(take->text, &value->count)) {
        refuse(take, "a limit is L over a whole number");
        return;
    }
    check_range(take, value->count);
}

static void take_ref(const struct take *take, void *field)
{
    struct ref_value *value = field;
    value->at = take->entry;
    (void)ref_read(take->checker, take->row, take->text, take->entry, value); /* it reports */
}

static void take_refs(const struct take *take, void *field)
{
    struct refs_value *value = field;
    struct arena *arena = take->checker->arena;
    value->at = take->entry;
    value->nothing = name_same(take->text, "nothing") || name_same(take->text, "none");
    if (value->nothing)
        return;
    char **part = NULL;
    size_t count = text_split(arena, take->text, &part);
    value->item = arena_array(arena, count, sizeof *value->item);
    for (size_t i = 0; i < count; i++)
        if (ref_read(take->checker, take->row, part[i], take->entry, &value->item[value->count]))
            value->count++;
}

static void take_end(const struct take *take, void *field)
{
    end_read(take->checker, take->row, take->entry, field);
}

static void take_inner(const struct take *take, void *field)
{
    inner_read(take->checker, take->row, take->entry, field);
}

/* "4 ft carrying 96 sq ft, 12 ft carrying 96 sq ft" */
static void take_braces(const struct take *take, void *field)
{
    struct roof *roof = field;
    struct arena *arena = take->checker->arena;
    char **part = NULL;
    roof->braces.at = take->entry;
    roof->braces.none = name_same(take->text, "none") || name_same(take->text, "nothing");
    if (roof->braces.none)
        return;
    size_t count = text_split(arena, take->text, &part);
    roof->braces.item = arena_array(arena, count, sizeof *roof->braces.item);
    for (size_t i = 0; i < count; i++) {
        struct roof_brace *brace = &roof->braces.item[i];
        struct quantity area = {0};
        const char *why = "not 'PLACE carrying AREA'";
        char *word = strstr(part[i], " carrying ");
        char *place = arena_strndup(arena, part[i], word ? (size_t)(word - part[i]) : 0);
        if (!word || !length_parse(place, &brace->at, &why) || !quantity_parse(word + 10, &area, &why)) {
            refuse(take, why);
            return;
        }
        if (unit_dimension(area.unit) != DIM_AREA || area.millionths <= 0 || brace->at < 0) {
            refuse(take, "a brace stands at a place from end 1 and carries an area of roof");
            return;
        }
        brace->sqft = quantity_value(area);
        roof->braces.count++;
    }
}

/* A reference, or in words what is known.  What names a section, or nearly one, or is a kind with one word after it, is
 * a reference: a misspelt one must not pass as words. */
static bool is_reference(const struct take *take)
{
    struct checker *checker = take->checker;
    char *kind_word = NULL;
    char *id = NULL;
    enum kind kind = KIND_JOB;
    section_split(checker->arena, take->text, &kind_word, &id);
    if (!kind_find(kind_word, &kind))
        return ref_near(checker, take->row, take->text) != NULL;
    return !strchr(id, ' ') || element_find(checker->job, kind, name_fold(checker->arena, id)) != SIZE_MAX ||
           ref_near(checker, take->row, take->text) != NULL;
}

static void take_stands(const struct take *take, void *element)
{
    if (is_reference(take)) {
        take_ref(take, (char *)element + take->row->offset);
        return;
    }
    struct text_value *text = (void *)((char *)element + take->row->words);
    *text = (struct text_value){.text = take->text, .at = take->entry};
}

static void take_value(const struct take *take, void *element)
{
    static void (*const takers[])(const struct take *, void *) = {
        [TYPE_TEXT] = take_text,       [TYPE_TEXTS] = take_texts,     [TYPE_LENGTH] = take_length,
        [TYPE_LENGTHS] = take_lengths, [TYPE_PLACED] = take_placed,   [TYPE_QUANTITY] = take_quantity,
        [TYPE_MONEY] = take_money,     [TYPE_PERCENT] = take_percent, [TYPE_DECIMAL] = take_decimal,
        [TYPE_COUNT] = take_count,     [TYPE_DATE] = take_date,       [TYPE_CHOICE] = take_choice,
        [TYPE_PITCH] = take_pitch,     [TYPE_LIMIT] = take_limit,     [TYPE_REF] = take_ref,
        [TYPE_REFS] = take_refs,       [TYPE_END] = take_end,         [TYPE_CHOICES] = take_choices,
        [TYPE_INNER] = take_inner,
    };
    switch (take->row->type) {
    case TYPE_BRACES: /* into the roof as a whole: its braces have a struct of their own */
        take_braces(take, element);
        break;
    case TYPE_STANDS:
        take_stands(take, element);
        break;
    case TYPE_SET: /* alternates_read() */
        break;
    default:
        takers[take->row->type](take, (char *)element + take->row->offset);
    }
}

void value_read(struct checker *checker, const struct key_row *row, void *element, const struct entry *entry)
{
    const struct take take = {.checker = checker, .row = row, .entry = entry, .text = entry->value};
    if (!*entry->value) {
        diag_add(checker->diags, DIAG_K015, &entry->key_at, "'%s' is empty; write a value or take the line out",
                 row->type == TYPE_SET ? entry->key_as : row->key);
        return;
    }
    take_value(&take, element);
}

void value_default(struct checker *checker, const struct key_row *row, void *element)
{
    const struct take take = {.checker = checker, .row = row, .text = row->fallback};
    if (row->fallback)
        take_value(&take, element);
}
