/* The takeoff of nine jobs against counts made by hand: tests/takeoff/hand/JOB.md, each counted from the job file, the
 * catalogs and RULES.md there, before anybody had seen the program's list.
 *
 * A line of a table there is | `id` | count | unit | working |.  Both ways: what is counted by hand is in the takeoff,
 * and the other way round. */
#include "samples.h"

#define HAND SOURCE_DIR "/tests/takeoff/hand/"

struct hand_line {
    const char *id, *unit;
    decimal_t count;
    bool met;
};
struct hand_count {
    struct hand_line *item;
    size_t count, capacity;
};

/* The cell that starts at *at, blanks and quoting marks off; *at then stands on the next one. */
static const char *cell(struct arena *arena, const char **at)
{
    static const char quoting[] = " `";
    const char *end = strchr(*at, '|');
    assert_non_null(end);
    const char *first = *at + strspn(*at, quoting);
    size_t length = first < end ? (size_t)(end - first) : 0;
    while (length > 0 && strchr(quoting, first[length - 1]))
        length--;
    *at = end + 1;
    return arena_strndup(arena, first, length);
}

static void add_row(struct arena *arena, struct hand_count *hand, const char *line)
{
    const char *at = line + 1, *why = NULL;
    struct hand_line row = {.id = cell(arena, &at)};
    const char *count = cell(arena, &at);
    row.unit = cell(arena, &at);
    if (!decimal_parse(count, &row.count, &why)) {
        print_error("%s: '%s' is no count: %s\n", row.id, count, why);
        fail();
    }
    assert_true(hand->count < hand->capacity);
    hand->item[hand->count++] = row;
}

static struct hand_count read_hand(struct arena *arena, const char *name)
{
    struct hand_count hand = {.capacity = 400};
    hand.item = arena_alloc(arena, hand.capacity * sizeof *hand.item);
    const char *text = read_file(arena, arena_printf(arena, HAND "%s.md", name));
    for (const char *line = text; line && *line; line = strchr(line, '\n')) {
        line += *line == '\n';
        if (strncmp(line, "| `", 3) == 0)
            add_row(arena, &hand, line);
    }
    assert_true(hand.count > 20); /* a file that was cut short would agree with nothing */
    return hand;
}

static struct hand_line *same_id(struct hand_count *hand, const char *id)
{
    for (size_t i = 0; i < hand->count; i++)
        if (!hand->item[i].met && strcmp(hand->item[i].id, id) == 0)
            return &hand->item[i];
    return NULL;
}

/* One line of the takeoff against the hand count: faults. */
static int compare(struct arena *arena, struct hand_count *hand, const struct takeoff_line *line)
{
    struct hand_line *by_hand = same_id(hand, line->id);
    if (!by_hand) {
        print_error("  not counted by hand: %s, %s %s\n", line->id, decimal_text(arena, line->count), line->unit);
        return 1;
    }
    by_hand->met = true;
    if (by_hand->count == line->count && strcmp(by_hand->unit, line->unit) == 0)
        return 0;
    print_error("  %s: by hand %s %s, the takeoff %s %s\n", line->id, decimal_text(arena, by_hand->count),
                by_hand->unit, decimal_text(arena, line->count), line->unit);
    return 1;
}

static void equals_the_hand_count(const char *file, const char *name)
{
    struct arena *arena = arena_new(0, support_out_of_memory, NULL);
    assert_non_null(arena);
    const struct result *result = run_text(arena, file, read_file(arena, file));
    assert_true(result->outcome && result->outcome->run);
    struct hand_count hand = read_hand(arena, name);
    const struct takeoff *takeoff = result->outcome->run->takeoff;
    int faults = 0;
    for (size_t i = 0; i < takeoff->count; i++)
        faults += compare(arena, &hand, &takeoff->line[i]);
    for (size_t i = 0; i < hand.count; i++)
        if (!hand.item[i].met) {
            print_error("  not in the takeoff: %s\n", hand.item[i].id);
            faults++;
        }
    if (faults > 0)
        print_error("%s: %d lines differ\n", name, faults);
    arena_free(arena);
    assert_int_equal(faults, 0);
}

#define SAMPLE_TEST(test, name)                                                                                        \
    static void test(void **state)                                                                                     \
    {                                                                                                                  \
        (void)state;                                                                                                   \
        equals_the_hand_count(JOBS name ".ini", name);                                                                 \
    }
#define JOB_TEST(test, name)                                                                                           \
    static void test(void **state)                                                                                     \
    {                                                                                                                  \
        (void)state;                                                                                                   \
        equals_the_hand_count(HAND name ".ini", name);                                                                 \
    }
SAMPLE_TEST(parlor, "parlor")
SAMPLE_TEST(attic, "attic")
SAMPLE_TEST(two_beams, "two-beams")
JOB_TEST(one_side, "one-side")
JOB_TEST(two_sides, "two-sides")
JOB_TEST(beam_on_beam, "beam-on-beam")
JOB_TEST(two_spans, "two-spans")
JOB_TEST(dropped, "dropped")
JOB_TEST(upset, "upset")

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(parlor),    cmocka_unit_test(attic),     cmocka_unit_test(two_beams),
        cmocka_unit_test(one_side),  cmocka_unit_test(two_sides), cmocka_unit_test(beam_on_beam),
        cmocka_unit_test(two_spans), cmocka_unit_test(dropped),   cmocka_unit_test(upset),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
