/* What jobs of this kind usually forget to price: each line of forgotten.csv is priced, costs nothing, or is excluded
 * and said so on the bid.  None is left blank. */
#include "counting.h"

#include <string.h>

#include "sawbill/text.h"

struct answer {
    const char *line, *rest; /* rest: the reason, or "buy permit" */
    const struct text_value *from;
    enum forgotten_state state;
};
struct answers {
    struct answer *item;
    size_t count, capacity;
};

const char *forgotten_word(enum forgotten_state state)
{
    static const char *const words[] = {"left blank", "priced", "costs nothing", "excluded"};
    return words[state];
}

static char *trimmed(struct arena *arena, const char *text, size_t length)
{
    while (length > 0 && *text == ' ')
        text++, length--;
    while (length > 0 && text[length - 1] == ' ')
        length--;
    return arena_strndup(arena, text, length);
}

/* "parking: the drive is free", "permit fee by buy permit". */
static struct answer answer_of(struct arena *arena, const struct text_value *from, enum forgotten_state state)
{
    const char *text = from->text, *mark = state == FORGOTTEN_PRICED ? strstr(text, " by ") : strchr(text, ':');
    size_t length = mark ? (size_t)(mark - text) : strlen(text);
    const char *rest = mark ? mark + (state == FORGOTTEN_PRICED ? 4 : 1) : "";
    return (struct answer){trimmed(arena, text, length), trimmed(arena, rest, strlen(rest)), from, state};
}

static const struct forgotten *row_of(const struct catalog *catalog, const char *line)
{
    for (size_t i = 0; i < catalog->forgotten_count; i++)
        if (name_same(catalog->forgotten[i].line, line))
            return &catalog->forgotten[i];
    return NULL;
}

static void add_answers(struct counting *counting, const struct texts_value *texts, enum forgotten_state state,
                        struct answers *answers)
{
    for (size_t i = 0; i < texts->count; i++) {
        struct answer answer = answer_of(counting->arena, &texts->item[i], state);
        bool twice = false;
        for (size_t k = 0; k < answers->count; k++)
            twice |= name_same(answers->item[k].line, answer.line);
        if (!row_of(counting->catalog, answer.line))
            diag_add(counting->diags, DIAG_T009, &answer.from->at->at, "forgotten.csv has no line '%s'", answer.line);
        else if (twice)
            diag_add(counting->diags, DIAG_T009, &answer.from->at->at, "'%s' of forgotten.csv is answered twice",
                     answer.line);
        answers->item = arena_more(counting->arena, answers->item, answers->count, &answers->capacity, sizeof answer);
        answers->item[answers->count++] = answer;
    }
}

/* The first counted line whose id begins as one of "assembly/paint; sub/painter". */
static const struct takeoff_line *counted_by(const struct takeoff *takeoff, const char *starts)
{
    while (*starts) {
        size_t length = strcspn(starts, ";");
        const char *from = starts + strspn(starts, " ");
        size_t part = length - (size_t)(from - starts);
        for (size_t i = 0; i < takeoff->count && part > 0; i++)
            if (strncmp(takeoff->line[i].id, from, part) == 0)
                return &takeoff->line[i];
        starts += length + (starts[length] == ';');
    }
    return NULL;
}

/* "buy permit" -> the line buy/permit. */
static const struct takeoff_line *counted_of_job(struct counting *counting, const char *rest)
{
    const char *space = strchr(rest, ' ');
    if (!space)
        return NULL;
    const char *id = arena_printf(counting->arena, "%.*s/%s", (int)(space - rest), rest, space + 1);
    for (size_t i = 0; i < counting->takeoff->count; i++)
        if (name_same(counting->takeoff->line[i].id, id))
            return &counting->takeoff->line[i];
    return NULL;
}

static const char *buy_at_own_price(struct counting *counting, const struct forgotten *row)
{
    struct arena *arena = counting->arena;
    const char *id = arena_printf(arena, "forgotten/%s", row->line);
    line_add(counting,
             (struct takeoff_line){.id = id,
                                   .what = row->line,
                                   .where = "job",
                                   .count = DECIMAL_ONE,
                                   .unit = "each",
                                   .counted = "1 of it: usually forgotten, at its price in forgotten.csv",
                                   .is = LINE_BUY,
                                   .class = (enum cost_class)row->class,
                                   .price = row->price,
                                   .cost_code = row->cost_code,
                                   .at = row->at},
             NULL);
    return id;
}

static void answer_priced(struct counting *counting, const struct answer *answer, struct takeoff_forgotten *out)
{
    const struct takeoff_line *line =
        *answer->rest ? counted_of_job(counting, answer->rest) : counted_by(counting->takeoff, out->row->priced_by);
    if (line)
        out->by = line->id;
    else if (!*answer->rest && out->row->has_price)
        out->by = buy_at_own_price(counting, out->row);
    else
        diag_add(
            counting->diags, DIAG_T009, &answer->from->at->at,
            "'%s' is said to be priced%s%s%s, and nothing of the job prices it; write '%s by buy ID', 'by sub ID' or "
            "'by work ID'",
            answer->line, *answer->rest ? " by '" : "", answer->rest, *answer->rest ? "'" : "", answer->line);
}

static void answer_other(struct counting *counting, const struct answer *answer, struct takeoff_forgotten *out)
{
    const struct takeoff_line *line = counted_by(counting->takeoff, out->row->priced_by);
    out->why = answer->rest;
    if (line)
        diag_add(counting->diags, DIAG_T009, &answer->from->at->at, "'%s' is said to %s, and '%s' prices it",
                 answer->line, answer->state == FORGOTTEN_ZERO ? "cost nothing" : "be excluded", line->id);
}

static void settle(struct counting *counting, const struct answers *answers, struct takeoff_forgotten *out)
{
    out->by = out->why = "";
    for (size_t i = 0; i < answers->count; i++)
        if (name_same(answers->item[i].line, out->row->line)) {
            out->state = answers->item[i].state;
            if (out->state == FORGOTTEN_PRICED)
                answer_priced(counting, &answers->item[i], out);
            else
                answer_other(counting, &answers->item[i], out);
            return;
        }
    const struct takeoff_line *line = counted_by(counting->takeoff, out->row->priced_by);
    if (line) {
        out->state = FORGOTTEN_PRICED;
        out->by = line->id;
    }
}

static void ask_blank(struct counting *counting)
{
    const struct takeoff *takeoff = counting->takeoff;
    struct buffer blank = {.arena = counting->arena};
    for (size_t i = 0; i < takeoff->forgotten_count; i++)
        if (takeoff->forgotten[i].state == FORGOTTEN_BLANK)
            buffer_printf(&blank, "%s'%s'", blank.length ? ", " : "", takeoff->forgotten[i].row->line);
    if (blank.length > 0)
        diag_add(
            counting->diags, DIAG_T008, &counting->job->bid.head.at,
            "what is usually forgotten is left blank: %s; write for each, in [bid], 'forgotten priced', 'forgotten "
            "zero' or 'forgotten excluded'",
            buffer_text(&blank));
}

void count_forgotten(struct counting *counting)
{
    const struct bid *bid = &counting->job->bid;
    struct takeoff *takeoff = counting->takeoff;
    struct answers answers = {0};
    add_answers(counting, &bid->forgotten_priced, FORGOTTEN_PRICED, &answers);
    add_answers(counting, &bid->forgotten_zero, FORGOTTEN_ZERO, &answers);
    add_answers(counting, &bid->forgotten_excluded, FORGOTTEN_EXCLUDED, &answers);
    takeoff->forgotten_count = counting->catalog->forgotten_count;
    takeoff->forgotten = arena_array(counting->arena, takeoff->forgotten_count, sizeof *takeoff->forgotten);
    for (size_t i = 0; i < takeoff->forgotten_count; i++) {
        takeoff->forgotten[i].row = &counting->catalog->forgotten[i];
        settle(counting, &answers, &takeoff->forgotten[i]);
    }
    ask_blank(counting);
}
