/* Board feet of a nominal size, and prices by the thousand of them. */
#include "sawbill/catalog.h"
#include "sawbill/text.h"
#include "sawbill/wide.h"

/* No sawn member is so thick or wide (inches). */
enum { NOMINAL_MOST = 999 };

/* Digits from *text on, which moves behind them; 0: none, or too many. */
static int whole_number(const char **text)
{
    int value = 0;
    for (; **text >= '0' && **text <= '9' && value <= NOMINAL_MOST; ++*text)
        value = 10 * value + (**text - '0');
    return value <= NOMINAL_MOST ? value : 0;
}

static void skip_blanks(const char **text)
{
    while (**text == ' ')
        ++*text;
}

/* "2x10", "5/4 x 6": thickness in fractions of an inch, width in whole inches. */
struct nominal {
    int thickness, parts, width; /* thickness / parts */
};

static bool nominal_of(const char *size, struct nominal *out)
{
    if (!size)
        return false;
    struct nominal nominal = {.thickness = whole_number(&size), .parts = 1};
    if (*size == '/') {
        size++;
        nominal.parts = whole_number(&size);
    }
    skip_blanks(&size);
    if (*size != 'x' && *size != 'X')
        return false;
    size++;
    skip_blanks(&size);
    nominal.width = whole_number(&size);
    if (*size != '\0' || nominal.thickness == 0 || nominal.parts == 0 || nominal.width == 0)
        return false;
    if (nominal.thickness < nominal.parts) /* thinner than an inch counts as an inch */
        nominal.thickness = nominal.parts;
    *out = nominal;
    return true;
}

/* value x board feet of `length`, rounded once. */
static int64_t of_board_feet(const char *size, length_t length, wide_t value, int64_t divisor)
{
    enum { INCHES_OF_A_BOARD_FOOT = 12 };
    const length_t foot = LENGTH_FOOT;
    struct nominal nominal;
    if (!nominal_of(size, &nominal))
        return 0;
    wide_t product = value * nominal.thickness * nominal.width * length;
    return (int64_t)divide_round(product, (wide_t)INCHES_OF_A_BOARD_FOOT * nominal.parts * foot * divisor);
}

decimal_t board_feet_of_size(const char *size, length_t length)
{
    return of_board_feet(size, length, DECIMAL_ONE, 1);
}

decimal_t board_feet(const struct member *member, length_t length)
{
    return member && member->wood == WOOD_SAWN ? board_feet_of_size(member->size, length) : 0;
}

money_t board_feet_price(const char *size, length_t length, money_t thousand)
{
    enum { THOUSAND = 1000 };
    return of_board_feet(size, length, thousand, THOUSAND);
}

char *board_feet_text(struct arena *arena, decimal_t feet)
{
    return arena_printf(arena, "%s board feet", decimal_text(arena, decimal_round(feet, 2)));
}
