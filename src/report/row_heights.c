/* How high each row must be for its wrapped texts. */
#include <math.h>

#include "sawbill/text.h"
#include "workbook_format.h"

/* Points of one line for a point of type; the default height of a row; letters of running text where the width of a
 * column counts one digit, on the safe side for the wider office fonts. */
static const double LINE_OF_TYPE = 1.3, DEFAULT_HEIGHT = 15.0, LETTERS_OF_WIDTH = 1.08;

static size_t word_letters(const char **text)
{
    const char *start = *text;
    while (**text && **text != ' ' && **text != '\n')
        (*text)++;
    return utf8_count(start, (size_t)(*text - start));
}

/* Lines of the text, broken between words and inside those that are too long, in a column of so many letters. */
static double lines_of(const char *text, double letters)
{
    double lines = 1, used = 0;
    while (*text) {
        if (*text == '\n') {
            lines++;
            used = 0;
            text++;
            continue;
        }
        if (*text == ' ') {
            used++;
            text++;
            continue;
        }
        double word = (double)word_letters(&text);
        if (used > 0 && used + word > letters) {
            lines++;
            used = 0;
        }
        lines += floor(word / (letters + 1));
        used += fmod(word, letters + 1);
    }
    return lines;
}

static double width_of(const struct page *page, int first, int last)
{
    double width = 0;
    for (int i = first; i <= last; i++)
        width += i < page->columns ? page->width[i] : 9.0;
    return width;
}

static void raise_row(double *height, const char *text, enum look look, double width)
{
    double points = look_points(look);
    double letters = fmax(4.0, width * LETTERS_OF_WIDTH * 11.0 / points - 1.0); /* one is lost to the margins */
    double lines = look_wraps(look) && text ? lines_of(text, letters) : 1.0;
    double need = lines * points * LINE_OF_TYPE + 1.0;
    if (need > DEFAULT_HEIGHT + 1.0 && need > *height)
        *height = fmin(need, 400.0);
}

int row_heights(const struct page *page, double **height)
{
    int rows = 0;
    for (size_t i = 0; i < page->count; i++)
        rows = page->slot[i].row >= rows ? page->slot[i].row + 1 : rows;
    for (size_t i = 0; i < page->span_count; i++)
        rows = page->span[i].row >= rows ? page->span[i].row + 1 : rows;
    *height = arena_array(page->book->arena, (size_t)rows, sizeof **height);
    for (size_t i = 0; i < page->count; i++) {
        const struct slot *slot = &page->slot[i];
        raise_row(&(*height)[slot->row], slot->text, slot->look, width_of(page, slot->column, slot->column));
    }
    for (size_t i = 0; i < page->span_count; i++) {
        const struct span *span = &page->span[i];
        raise_row(&(*height)[span->row], span->text, span->look, width_of(page, span->first, span->last));
    }
    return rows;
}
