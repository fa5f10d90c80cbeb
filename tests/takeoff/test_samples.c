/* The sample jobs through the real stages: what must hold for the takeoff of any job. */
#include "support.h"

#include <string.h>

#include "sawbill/takeoff.h"

struct sample {
    struct job *job;
    struct catalog *catalog;
    struct design *design;
    struct takeoff *takeoff;
};

static char *read_file(struct arena *arena, const char *path, size_t *length)
{
    FILE *file = fopen(path, "rb");
    assert_non_null(file);
    const size_t most = 1U << 20;
    char *text = arena_alloc(arena, most + 1);
    *length = fread(text, 1, most, file);
    assert_true(fclose(file) == 0);
    return text;
}

static struct sample count_sample(struct arena *arena, const char *name)
{
    struct diags diags = {.arena = arena};
    const char *path = arena_printf(arena, "%s/jobs/%s", SOURCE_DIR, name);
    size_t length = 0;
    char *text = read_file(arena, path, &length);
    struct entries entries = {0};
    entries_read(arena, path, text, length, &entries, &diags);
    struct sample sample = {.job = job_check(arena, path, &entries, &diags)};
    sample.catalog = catalog_read(arena, SOURCE_DIR "/catalogs", NULL, &diags);
    struct selection *selection = arena_array(arena, sample.job->beam_count, sizeof *selection);
    /* A beam that is to be chosen gets two plies of the first beam member: the counts must hold for any. */
    for (size_t i = 0; i < sample.job->beam_count; i++)
        if (!sample.job->beams[i].member.text)
            selection[i] = (struct selection){catalog_member(sample.catalog, "DFL2-2X10"), 2};
    sample.design = size_job(arena, sample.job, sample.catalog, selection, &diags);
    sample.takeoff = takeoff_job(arena, sample.job, sample.catalog, sample.design, &diags);
    for (size_t i = 0; i < diags.count; i++)
        if (diags.item[i].class == DIAG_STOP)
            print_error("%s\n", diag_line(arena, &diags.item[i]));
    assert_int_equal(diag_count(&diags, DIAG_STOP), 0);
    return sample;
}

static bool begins(const char *text, const char *with)
{
    return strncmp(text, with, strlen(with)) == 0;
}

static decimal_t sum_lines(const struct takeoff *takeoff, const char *prefix, bool nails)
{
    decimal_t sum = 0;
    for (size_t i = 0; i < takeoff->count; i++)
        if (begins(takeoff->line[i].id, prefix) && (strstr(takeoff->line[i].id, "/nails") != NULL) == nails)
            sum += takeoff->line[i].count;
    return sum;
}

static int holes(const struct hanger *hanger)
{
    return hanger->carrier_count + hanger->member_count;
}

/* Hangers = joist ends + hung beam ends; nails = the holes of all of them. */
static void check_hangers(const struct sample *sample)
{
    int64_t ends = 0, nails = 0;
    for (size_t i = 0; i < sample->design->joists_count; i++) {
        const struct joist_design *joists = &sample->design->joists[i];
        ends += (int64_t)joists->count;
        for (size_t k = 0; k < joists->count; k++) {
            assert_non_null(joists->end[k].hanger);
            nails += holes(joists->end[k].hanger);
        }
    }
    for (size_t i = 0; i < sample->design->beam_count; i++)
        for (int end = 0; end < 2; end++) {
            const struct hanger *hanger = sample->design->beams[i].end_hanger[end];
            ends += hanger != NULL;
            nails += hanger ? holes(hanger) : 0;
        }
    assert_int_equal(sum_lines(sample->takeoff, "hangers/", false), ends * DECIMAL_ONE);
    assert_int_equal(sum_lines(sample->takeoff, "hangers/", true), nails * DECIMAL_ONE);
}

static void check_lines(const struct takeoff *takeoff)
{
    for (size_t i = 0; i < takeoff->count; i++) {
        const struct takeoff_line *line = &takeoff->line[i];
        assert_true(line->id && *line->id && line->what && *line->what && line->where && *line->where);
        assert_true(line->counted && *line->counted && line->unit && *line->unit);
        assert_true(line->count > 0);
        assert_true(line->is != LINE_PIECES || (line->member && line->length > 0 && line->count % DECIMAL_ONE == 0));
        for (size_t k = 0; k < i; k++)
            assert_string_not_equal(takeoff->line[k].id, line->id);
    }
}

static void counts_of_every_sample_hold(void **state)
{
    static const char *const names[] = {"parlor.ini", "attic.ini", "two-beams.ini", "parlor.json"};
    for (size_t i = 0; i < sizeof names / sizeof *names; i++) {
        struct sample sample = count_sample(*state, names[i]);
        assert_true(sample.takeoff->count > 20);
        check_hangers(&sample);
        check_lines(sample.takeoff);
    }
}

/* Parlor by hand: joists from 7 in every 16 in up to 119 in lie within a beam of 10 ft and a bit: 8 a side.  Shores of
 * 10 ft + 2 x 16 in = 152 in: 152 / 16 = 9.5, so 10 + 1 = 11 studs; 7 ft 9 in less 3 in = 7 ft 6 in. */
static void parlor_by_hand(void **state)
{
    struct sample sample = count_sample(*state, "parlor.ini");
    assert_int_equal(sum_lines(sample.takeoff, "hangers/parlor/A", false), 8 * DECIMAL_ONE);
    assert_int_equal(sum_lines(sample.takeoff, "hangers/hall/B", false), 8 * DECIMAL_ONE);
    size_t found = 0;
    for (size_t i = 0; i < sample.takeoff->count; i++) {
        const struct takeoff_line *line = &sample.takeoff->line[i];
        bool studs = !strcmp(line->id, "shores/A/studs");
        assert_true(!studs || (line->count == 11 * DECIMAL_ONE && line->length == 90 * LENGTH_INCH));
        found += studs;
    }
    assert_int_equal(found, 1);
}

static bool is_mark_clear(const struct joist_design *side, const struct beam *beam, length_t mark)
{
    for (size_t i = 0; i < side->count; i++) {
        const struct joist_end *end = &side->end[i];
        length_t off = mark > end->at ? mark - end->at : end->at - mark;
        if (off < end->width / 2 + beam->clear_of_hangers.length)
            return false;
    }
    return true;
}

/* Lapped joists of parlor: side B hangs 1-1/2 in, one joist thickness, further from end 1, so that no two hangers face
 * each other; and no ply fastener is driven within 1-1/2 in of a joist of the face that it goes into. */
static void lapped_joists_do_not_face_each_other(void **state)
{
    struct sample sample = count_sample(*state, "parlor.ini");
    const struct beam_design *design = &sample.design->beams[0];
    const struct joist_design *a = design->side[0], *b = design->side[1];
    assert_int_equal(a->count, b->count);
    for (size_t i = 0; i < a->count; i++) {
        assert_true(b->end[i].at - a->end[i].at == 3 * LENGTH_INCH / 2);
        for (size_t k = 0; k < b->count; k++)
            assert_true(a->end[i].at != b->end[k].at);
    }
    assert_int_equal(sample.takeoff->ply_layout_count, 1);
    const struct layout *layout = &sample.takeoff->ply_layout[0].layout;
    size_t marks = 0;
    for (int face = 0; face < layout->faces; face++)
        for (int row = 0; row < layout->rows; row++)
            for (size_t i = 0; i < layout->row[face][row].count; i++, marks++)
                assert_true(is_mark_clear(design->side[face], design->beam, layout->row[face][row].at[i]));
    assert_true(layout->faces == 2 && layout->rows == 2 && marks > 32); /* each 12 in at least, four rows of 128 in */
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(counts_of_every_sample_hold, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(parlor_by_hand, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(lapped_joists_do_not_face_each_other, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
