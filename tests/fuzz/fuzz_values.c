/* Lengths, money, percentages, counts, quantities, dates, numbers and names from any bytes: whatever is read prints in
 * a form that reads back to the same value, and whatever is refused says why. */
#include "fuzz.h"

#include "sawbill/date.h"
#include "sawbill/length.h"
#include "sawbill/money.h"
#include "sawbill/quantity.h"
#include "sawbill/text.h"

static void check_length(struct arena *arena, const char *text)
{
    const char *why = NULL;
    length_t value = 0, back = 0;
    if (!length_parse(text, &value, &why)) {
        fuzz_expect(why != NULL && *why != '\0', "refused without a reason", text);
        return;
    }
    fuzz_expect(value >= -LENGTH_MOST && value <= LENGTH_MOST, "length out of range", text);
    const char *exact = length_exact(arena, value), *tape = length_tape(arena, value);
    fuzz_expect(length_parse(exact, &back, &why) && back == value, "exact length does not read back", exact);
    bool beyond = value > LENGTH_MOST - LENGTH_INCH || value < -LENGTH_MOST + LENGTH_INCH;
    fuzz_expect(beyond || length_parse(tape, &back, &why), "tape does not read back", tape);
    fuzz_expect(beyond || llabs(back - value) <= LENGTH_INCH / 32, "tape is off", tape);
}

static void check_money(struct arena *arena, const char *text)
{
    const char *why = NULL;
    int64_t value = 0, back = 0;
    if (money_parse(text, &value, &why)) {
        fuzz_expect(value >= -MONEY_MOST && value <= MONEY_MOST, "money out of range", text);
        fuzz_expect(money_parse(money_text(arena, value), &back, &why) && back == value, "money text", text);
        fuzz_expect(money_parse(money_show(arena, value), &back, &why) && back == value, "money shown", text);
        fuzz_expect(llabs(money_round(value) - value) <= 50, "rounding", text);
        (void)money_times(value, value);
    } else {
        fuzz_expect(why != NULL, "refused without a reason", text);
    }
    if (percent_parse(text, &value, &why))
        fuzz_expect(percent_parse(percent_text(arena, value), &back, &why) && back == value, "percent", text);
    if (decimal_parse(text, &value, &why))
        fuzz_expect(decimal_parse(decimal_text(arena, value), &back, &why) && back == value, "decimal", text);
}

static void check_others(struct arena *arena, const char *text)
{
    const char *why = NULL;
    struct quantity quantity, back;
    if (quantity_parse(text, &quantity, &why)) {
        const char *written = quantity_text(arena, quantity);
        fuzz_expect(quantity_parse(written, &back, &why), "quantity does not read back", written);
        fuzz_expect(back.millionths == quantity.millionths && back.unit == quantity.unit, "quantity", written);
    }
    struct date date, same;
    if (date_parse(text, &date, &why)) {
        fuzz_expect(date_parse(date_text(arena, date), &same, &why), "date does not read back", text);
        fuzz_expect(date_days(date) == date_days(same), "date", text);
    }
    double number = 0;
    if (number_parse(text, &number) &&
        number < 1e15) /* 15 digits are kept; what is larger may print with more than 18 */
        fuzz_expect(number_parse(number_text(arena, number, 6), &number), "number does not read back", text);
}

static void check_names(struct arena *arena, const char *text)
{
    static const char *const NAMES[] = {"clear span", "spacing", "first joist", "depth"};
    const char *folded = name_fold(arena, text);
    fuzz_expect(name_same(folded, text) && strcmp(name_fold(arena, folded), folded) == 0, "folding", text);
    (void)did_you_mean(arena, text, NAMES, sizeof NAMES / sizeof *NAMES);
    char **parts = NULL;
    (void)text_split(arena, text, &parts);
    size_t good = utf8_check(text, strlen(text));
    fuzz_expect(utf8_check(text, good) == good && utf8_count(text, good) <= good, "UTF-8", text);
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    struct arena *arena = fuzz_arena();
    const char *text = arena_strndup(arena, (const char *)data, size);
    check_length(arena, text);
    check_money(arena, text);
    check_others(arena, text);
    check_names(arena, text);
    arena_free(arena);
    return 0;
}
