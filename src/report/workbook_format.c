/* One row a look.  Inputs are warm and dotted, results are plain, totals have a line above. */
#include "workbook_format.h"

enum { INK = 0x26302A, BAR = 0x37523F, BAND = 0xE4EBDD, WARM = 0xFCEBCF, BROWN = 0x6B3E00, GRAY = 0x7A7F7A };
enum { BLACK = 0x010101, SHADE = 0xE8E8E8 }; /* to be printed without color */
enum { RED = 0x9C1C1C, WHITE = 0xFFFFFF, LINE = 0xB9C2B4, PALE = 0xF4F6F1 };

enum edge { EDGE_NONE, EDGE_THIN, EDGE_DOTTED, EDGE_TOP, EDGE_BOTTOM, EDGE_BOX, EDGE_RULE };
struct look_row {
    enum look look;
    const char *number; /* number format; NULL: general */
    int size;           /* points; 0: the default of 11 */
    int ink, fill;      /* 0: none */
    bool bold, italic, wrap, right, center, input, indent;
    enum edge edge;
};

static const char MONEY[] = "$#,##0.00;-$#,##0.00";
static const char PERCENT[] = "0.0###%";
static const char HOURS[] = "#,##0.00";

static const struct look_row LOOKS[] = {
    {.look = LOOK_PLAIN, .ink = INK},
    {.look = LOOK_PLAIN_WRAP, .ink = INK, .wrap = true},
    {.look = LOOK_TITLE, .ink = BAR, .bold = true, .size = 16},
    {.look = LOOK_UNDER_TITLE, .ink = GRAY},
    {.look = LOOK_SECTION, .ink = BAR, .bold = true, .size = 12, .edge = EDGE_BOTTOM},
    {.look = LOOK_HEAD, .indent = true, .ink = WHITE, .fill = BAR, .bold = true, .wrap = true, .edge = EDGE_THIN},
    {.look = LOOK_HEAD_NUMBER, .ink = WHITE, .fill = BAR, .bold = true, .wrap = true, .right = true, .edge = EDGE_THIN},
    {.look = LOOK_TEXT, .indent = true, .ink = INK, .edge = EDGE_THIN},
    {.look = LOOK_WRAP, .indent = true, .ink = INK, .wrap = true, .edge = EDGE_THIN},
    {.look = LOOK_NOTE, .ink = GRAY, .wrap = true, .italic = true, .size = 10},
    {.look = LOOK_WARN, .ink = RED, .bold = true, .wrap = true},
    {.look = LOOK_CENTER, .ink = INK, .center = true, .edge = EDGE_THIN},
    {.look = LOOK_NUMBER, .number = "General", .ink = INK, .edge = EDGE_THIN, .fill = PALE, .right = true},
    {.look = LOOK_HOURS, .number = HOURS, .ink = INK, .edge = EDGE_THIN},
    {.look = LOOK_TENTHS, .number = "#,##0.0", .ink = INK, .edge = EDGE_THIN, .fill = PALE},
    {.look = LOOK_INCHES, .number = "0.000", .ink = INK, .edge = EDGE_THIN, .fill = PALE},
    {.look = LOOK_RATIO, .number = "0.00", .ink = INK, .bold = true, .edge = EDGE_THIN, .fill = PALE},
    {.look = LOOK_MONEY, .number = MONEY, .ink = INK, .edge = EDGE_THIN},
    {.look = LOOK_SHARE, .number = "0.00%", .ink = INK, .edge = EDGE_THIN},
    {.look = LOOK_PERCENT, .number = PERCENT, .ink = INK, .edge = EDGE_THIN},
    {.look = LOOK_IN_MONEY,
     .number = "$#,##0.00##;-$#,##0.00##",
     .ink = BROWN,
     .fill = WARM,
     .edge = EDGE_DOTTED,
     .input = true},
    {.look = LOOK_IN_PERCENT, .number = PERCENT, .ink = BROWN, .fill = WARM, .edge = EDGE_DOTTED, .input = true},
    {.look = LOOK_IN_NUMBER, .number = "General", .ink = BROWN, .fill = WARM, .edge = EDGE_DOTTED, .input = true},
    {.look = LOOK_WAS_MONEY, .number = "#,##0.00##", .ink = GRAY, .edge = EDGE_THIN, .fill = PALE},
    {.look = LOOK_WAS_PERCENT, .number = PERCENT, .ink = GRAY, .edge = EDGE_THIN, .fill = PALE},
    {.look = LOOK_WAS_NUMBER, .number = "General", .ink = GRAY, .edge = EDGE_THIN, .fill = PALE},
    {.look = LOOK_SUM_TEXT, .indent = true, .ink = INK, .bold = true, .fill = BAND, .edge = EDGE_TOP},
    {.look = LOOK_SUM_WRAP, .indent = true, .ink = INK, .fill = BAND, .edge = EDGE_TOP, .wrap = true},
    {.look = LOOK_SUM_MONEY, .number = MONEY, .ink = INK, .bold = true, .fill = BAND, .edge = EDGE_TOP},
    {.look = LOOK_SUM_HOURS, .number = HOURS, .ink = INK, .bold = true, .fill = BAND, .edge = EDGE_TOP},
    {.look = LOOK_PRICE_TEXT, .ink = BAR, .bold = true, .size = 16},
    {.look = LOOK_PRICE, .number = MONEY, .ink = BAR, .bold = true, .size = 16},
    {.look = LOOK_FIXED_MONEY, .number = MONEY, .ink = INK, .edge = EDGE_THIN},
    {.look = LOOK_FIXED_PRICE, .number = MONEY, .ink = BAR, .bold = true, .size = 16},
    {.look = LOOK_SIGN, .ink = INK, .edge = EDGE_BOTTOM},
    {.look = LOOK_CREW_BEAM, .ink = BLACK, .bold = true, .size = 16, .wrap = true},
    {.look = LOOK_CREW_PART, .ink = BLACK, .fill = SHADE, .bold = true, .size = 12, .edge = EDGE_RULE},
    {.look = LOOK_CREW_SAY, .ink = BLACK, .size = 10, .wrap = true},
    {.look = LOOK_CREW_STOP, .ink = BLACK, .bold = true, .wrap = true, .edge = EDGE_BOX},
    {.look = LOOK_CREW_TITLE, .ink = BLACK, .bold = true},
    {.look = LOOK_CREW_HEAD, .ink = BLACK, .size = 10, .bold = true, .wrap = true, .edge = EDGE_BOX},
    {.look = LOOK_CREW_CELL, .ink = BLACK, .size = 10, .wrap = true, .edge = EDGE_BOX},
};

static lxw_color_t color_of(enum edge edge)
{
    if (edge == EDGE_BOX || edge == EDGE_RULE)
        return BLACK;
    return edge == EDGE_DOTTED ? BROWN : LINE;
}

static void set_edge(lxw_format *format, enum edge edge)
{
    switch (edge) {
    case EDGE_THIN:
        format_set_border(format, LXW_BORDER_HAIR);
        break;
    case EDGE_DOTTED:
        format_set_border(format, LXW_BORDER_DOTTED);
        break;
    case EDGE_TOP:
        format_set_top(format, LXW_BORDER_THIN);
        break;
    case EDGE_BOTTOM:
        format_set_bottom(format, LXW_BORDER_THIN);
        break;
    case EDGE_BOX:
        format_set_border(format, LXW_BORDER_THIN);
        break;
    case EDGE_RULE:
        format_set_top(format, LXW_BORDER_MEDIUM);
        format_set_bottom(format, LXW_BORDER_THIN);
        break;
    case EDGE_NONE:
        return;
    }
    format_set_border_color(format, color_of(edge));
}

static void set_look(lxw_format *format, const struct look_row *row)
{
    if (row->number)
        format_set_num_format(format, row->number);
    if (row->size)
        format_set_font_size(format, row->size);
    format_set_font_color(format, (lxw_color_t)row->ink);
    if (row->fill) {
        format_set_pattern(format, LXW_PATTERN_SOLID);
        format_set_bg_color(format, (lxw_color_t)row->fill);
    }
    if (row->bold)
        format_set_bold(format);
    if (row->italic)
        format_set_italic(format);
    if (row->wrap)
        format_set_text_wrap(format);
    if (row->right)
        format_set_align(format, LXW_ALIGN_RIGHT);
    if (row->indent)
        format_set_indent(format, 1);
    if (row->center)
        format_set_align(format, LXW_ALIGN_CENTER);
    format_set_align(format, LXW_ALIGN_VERTICAL_TOP);
    set_edge(format, row->edge);
    if (row->input)
        format_set_unlocked(format);
}

bool formats_make(lxw_workbook *workbook, lxw_format *formats[LOOK_COUNT])
{
    for (size_t i = 0; i < sizeof LOOKS / sizeof *LOOKS; i++) {
        lxw_format *format = workbook_add_format(workbook);
        if (!format)
            return false;
        set_look(format, &LOOKS[i]);
        formats[LOOKS[i].look] = format;
    }
    return true;
}

static const struct look_row *find_look(enum look look)
{
    for (size_t i = 0; i < sizeof LOOKS / sizeof *LOOKS; i++)
        if (LOOKS[i].look == look)
            return &LOOKS[i];
    return &LOOKS[0];
}

bool look_wraps(enum look look)
{
    return find_look(look)->wrap;
}

double look_points(enum look look)
{
    int size = find_look(look)->size;
    return size ? size : 11;
}
