/* What assemblies count by, on the invented house; and what holds for every line of every takeoff. */
#include "house.h"

#include "sawbill/text.h"

/* Counts by hand, in hundredths. */
static const struct {
    const char *per;
    int hundredths;
} counts[] = {
    {"job", 100},
    {"day of shoring", 500},
    {"foot of wall out", 2000},         /* W1 14 ft, W2 from 1 ft to 7 ft; W3 stays */
    {"square foot of wall out", 16000}, /* 14 x 8 + 6 x 8 */
    {"square foot of plaster on lath", 11200},
    {"square foot of gypsum board", 20800}, /* W1 face B 112, W2 both faces 2 x 48; W3 stays */
    {"square foot of cork", 0},
    /* B1 175 x (4-1/2 + 32) = 6,387.5; B2 98-7/8 x (3 + 32) = 3,460.625; together 9,848.125 sq in / 144 = 68.39 */
    {"square foot of ceiling opened", 6839},
    {"beam", 200},
    {"foot of beam", 2282}, /* 273-7/8 in = 22.823 ft */
    {"ply", 500},
    {"ply lifted", 500},
    {"beam raised whole", 0},
    {"joist end", 2100},
    {"joist end high", 100},
    {"joist end low", 200},
    {"joist bay", 1900}, /* 10 and 9 */
    {"hanger", 2200},
    {"strap", 1100},
    {"post", 100},
    {"foot of post", 717}, /* 86 in = 7.1667 ft */
    {"beam end in a pocket", 100},
    {"beam end on a hanger", 100},
    {"shore", 100},
    {"foot of shore", 1667}, /* 200 in = 16.667 ft */
    {"shore stud", 1400},
    {"block", 100},
    {"footing", 100},
    {"cubic foot of footing", 400}, /* 2 x 2 x 1 ft */
    {"opening framed", 100},        /* the other is there already */
    {"kicker", 300},
    {"beam end held", 200}, /* one by blocks, one by straps */
    {"beam end held by wood", 100},
    {"member in the way", 500}, /* a tail, a strut, a nailer; two roof braces */
    {"member propped", 300},    /* the tail and the braces */
    {"member landed", 300},
    {"member headered off", 100},
    {"service", 300},
    {"beam removed", 100},
    {"post removed", 0},
    {"header removed", 100},
    {"foot removed", 1550}, /* 5 ft and 10 ft 6 in */
    {"foot cut in sections", 1050},
    {"removed whole", 100},
    {"jack day", 2000}, /* 4 jack posts x 5 days */
    {"crib", 0},
    {"square foot of floor protected", 12050},
    {"trip", 200},
    {"cubic foot of debris", 0}, /* no debris.csv here: one load */
    {"dump run", 100},
    {"dumpster", 0},
    {"square foot of insulation put back", 0},
    {"square foot of gypsum board ceiling", 6839}, /* what a ceiling is taken for when nothing is said */
    {"square foot of plaster ceiling", 0},
    {"foot of strip floor", 0},
    {"square foot painted", 10259}, /* 68.39 x 1.5 = 102.585 */
    {"wall end", 300},              /* both of B1, the pocket of B2; its other end hangs in the room */
    {"post boxed", 0},
    {"foot of furring", 0}, /* no wall is said to come out under a beam: see test_fit_up.c */
    {"square foot of filler", 0},
    {"plate gap", 0},
    {"cap plate", 0},
    {"block beside a beam", 0},
    {"joist added", 0},
};

static struct assembly_line *add_part(struct house *house, const char *assembly, const char *per, const char *item,
                                      decimal_t count)
{
    struct assembly_line *part = &house->assembly[house->catalog.assembly_count++];
    assert_true(house->catalog.assembly_count <= COUNT_OF(house->assembly));
    *part = (struct assembly_line){
        .assembly = assembly, .per = per, .item = item, .count = count, .at = {"assemblies.csv", 2, 1, NULL}};
    return part;
}

static void every_word_counts(void **state)
{
    for (size_t i = 0; i < COUNT_OF(counts); i++) {
        struct house *house = house_new(*state);
        add_part(house, "patch", counts[i].per, "THING", DECIMAL_ONE);
        const struct takeoff_line *line = line_find(house_count(house), "assembly/patch/THING");
        decimal_t got = line ? line->count : 0;
        if (got != counts[i].hundredths * DECIMAL_ONE / 100)
            print_error("%s: got %lld\n", counts[i].per, (long long)got);
        assert_int_equal(got, counts[i].hundredths * DECIMAL_ONE / 100);
        assert_true((line != NULL) == (counts[i].hundredths > 0));
    }
}

/* Two footings 26 in square and 12 in thick: 2 x 26 x 26 x 12 / 1,728 = 9.389 cu ft, by hand. */
static void odd_inches_of_concrete_are_not_lost(void **state)
{
    struct house *house = house_new(*state);
    for (size_t i = 0; i < COUNT_OF(house->footing); i++) {
        house->footing[i].status.choice = NE_NEW;
        house->footing[i].size.length = 26 * LENGTH_INCH;
        house->footing[i].thickness.length = 12 * LENGTH_INCH;
    }
    add_part(house, "footing", "cubic foot of footing", "CONCRETE", DECIMAL_ONE);
    assert_int_equal(line_of(house_count(house), "assembly/footing/CONCRETE")->count, 939 * DECIMAL_ONE / 100);
}

/* Beam B1 lands on post P1 with both ends: P2 and footing F2 under it carry nothing, new as they are.  Turned round,
 * P1, block K1 and footing F1 carry nothing, and both posts are new: P2 alone is counted, 86 in = 7.17 ft, no block. */
static void what_carries_nothing_is_not_counted(void **state)
{
    static const char *const per[] = {"post", "foot of post", "block", "footing", "cubic foot of footing"};
    static const decimal_t want[2][5] = {{100, 717, 100, 100, 400}, {100, 717, 0, 100, 400}};
    for (size_t only = 0; only < 2; only++) {
        struct house *house = house_new(*state);
        house->beam[0].end_[0].ref.index = house->beam[0].end_[1].ref.index = only;
        house->post[1].status.choice = house->footing[0].status.choice = NE_NEW;
        for (size_t i = 0; i < 5; i++)
            add_part(house, "carried", per[i], arena_printf(*state, "PART-%zu", i), DECIMAL_ONE);
        const struct takeoff *takeoff = house_count(house);
        for (size_t i = 0; i < 5; i++) {
            const struct takeoff_line *line = line_find(takeoff, arena_printf(*state, "assembly/carried/PART-%zu", i));
            assert_int_equal(line ? line->count : 0, want[only][i] * DECIMAL_ONE / 100);
        }
        assert_non_null(line_find(takeoff, only ? "posts/P2" : "posts/P1"));
        assert_null(line_find(takeoff, only ? "posts/P1" : "posts/P2"));
        assert_true(only == !line_find(takeoff, "blocks/K1/P1"));
    }
}

/* Two roof braces that a shore holds have no props: the tail's is left. */
static void braces_on_a_shore_have_no_props(void **state)
{
    struct house *house = house_new(*state);
    house->job.roof.braces_own_prop.choice = 0;
    add_part(house, "props", "member propped", "PROP", DECIMAL_ONE);
    assert_count(house_count(house), "assembly/props/PROP", 1);
}

/* No word of the catalogs is without a function here, and each is tested above. */
static void no_word_is_forgotten(void **state)
{
    (void)state;
    assert_int_equal(per_count(), catalog_per_count() + 3); /* and those with a finish in them */
    for (size_t i = 0; i < catalog_per_count(); i++) {
        bool tested = false;
        for (size_t k = 0; k < COUNT_OF(counts); k++)
            tested = tested || name_same(counts[k].per, per_info(i).per);
        if (!tested)
            print_error("not tested: %s\n", per_info(i).per);
        assert_true(tested);
    }
}

/* 14 studs x 2.5 screws = 35, 21 joist ends x 0.3333 = 6.9993, rounded to 7.00. */
static void parts_are_multiplied_and_rounded(void **state)
{
    struct house *house = house_new(*state);
    add_part(house, "shoring", "shore stud", "SCREWS", 25000);
    struct assembly_line *part = add_part(house, "hang", "joist end", NULL, 3333);
    part->task = "hang joist";
    add_part(house, "patch", "square foot of ceiling opened", "GYPSUM", 11000);
    add_part(house, "rent", "day of shoring", "JACK", DECIMAL_ONE)->class_of_item = PART_RENTAL;
    add_part(house, "permit", "job", "FEE", DECIMAL_ONE)->class_of_item = PART_FEE;
    const struct takeoff *takeoff = house_count(house);
    const struct takeoff_line *line = line_of(takeoff, "assembly/shoring/SCREWS");
    assert_int_equal(line->count, 35 * DECIMAL_ONE);
    assert_string_equal(line->unit, "each");
    assert_int_equal(line->is, LINE_ITEM);
    assert_string_equal(line->counted, "14 (studs of the temporary walls) x 2.5");
    line = line_of(takeoff, "assembly/hang/hang joist");
    assert_int_equal(line->count, 7 * DECIMAL_ONE);
    assert_int_equal(line->is, LINE_LABOR);
    assert_int_equal(line->class, CLASS_LABOR);
    assert_ptr_equal(line->task, &house->task[0]);
    assert_string_equal(line->unit, "joist end");
    assert_string_equal(line_of(takeoff, "assembly/shoring/SCREWS")->what, "SCREWS"); /* no price row says more */
    assert_string_equal(line_of(takeoff, "assembly/patch/GYPSUM")->what, "gypsum board, 1/2 in");
    assert_string_equal(line_of(takeoff, "assembly/patch/GYPSUM")->unit, "sq ft");
    assert_int_equal(line_of(takeoff, "assembly/rent/JACK")->class, CLASS_RENTALS);
    assert_int_equal(line_of(takeoff, "assembly/permit/FEE")->class, CLASS_FEES);
}

/* One item twice in an assembly: the second line says what it is counted by. */
static void ids_stay_unique(void **state)
{
    struct house *house = house_new(*state);
    add_part(house, "shoring", "shore stud", "SCREWS", 4 * DECIMAL_ONE);
    add_part(house, "shoring", "foot of shore", "SCREWS", DECIMAL_ONE);
    const struct takeoff *takeoff = house_count(house);
    assert_count(takeoff, "assembly/shoring/SCREWS", 56);
    assert_int_equal(line_of(takeoff, "assembly/shoring/SCREWS/foot of shore")->count, 166700);
}

static void a_finish_without_an_assembly_is_noted(void **state)
{
    struct house *house = house_new(*state);
    add_part(house, "demo", "square foot of Gypsum_Board", "BAGS", 100);
    house_count(house);
    int notes = 0;
    for (size_t i = 0; i < house->diags.count; i++)
        if (strstr(house->diags.item[i].text, "no assembly counts the finish")) {
            notes++;
            assert_non_null(strstr(house->diags.item[i].text, "'plaster on lath' of 'wall W1'"));
        }
    assert_int_equal(notes, 1);
}

static void no_assembly_at_all_is_a_stop(void **state)
{
    struct house *house = house_new(*state);
    house_count(house);
    assert_int_equal(diag_count(&house->diags, DIAG_STOP), 1);
    for (size_t i = 0; i < house->diags.count; i++)
        if (house->diags.item[i].class == DIAG_STOP)
            assert_non_null(strstr(house->diags.item[i].text, "assemblies.csv has no row"));
}

static void an_unknown_word_is_a_stop(void **state)
{
    struct house *house = house_new(*state);
    add_part(house, "demo", "fortnight", "BAGS", DECIMAL_ONE);
    house_count(house);
    assert_int_equal(diag_count(&house->diags, DIAG_STOP), 1);
}

static void every_line_is_whole(void **state)
{
    struct house *house = house_new(*state);
    for (size_t i = 0; i < COUNT_OF(counts); i++)
        add_part(house, "all", counts[i].per, "THING", 12345);
    const struct takeoff *takeoff = house_count(house);
    assert_true(takeoff->count > 40);
    for (size_t i = 0; i < takeoff->count; i++) {
        const struct takeoff_line *line = &takeoff->line[i];
        assert_true(line->id && *line->id && line->what && *line->what && line->where && *line->where);
        assert_true(line->counted && *line->counted && line->unit && *line->unit);
        assert_true(line->count > 0);
        assert_int_equal(line->count % 100, 0); /* at most two decimals */
        assert_true(line->class > CLASS_UNANSWERED && line->class < CLASS_COUNT);
        assert_non_null(line->at.file);
        for (size_t k = 0; k < i; k++)
            assert_string_not_equal(takeoff->line[k].id, line->id);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(every_word_counts, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(odd_inches_of_concrete_are_not_lost, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(braces_on_a_shore_have_no_props, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(what_carries_nothing_is_not_counted, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(no_word_is_forgotten, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(parts_are_multiplied_and_rounded, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(ids_stay_unique, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_finish_without_an_assembly_is_noted, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(an_unknown_word_is_a_stop, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(no_assembly_at_all_is_a_stop, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(every_line_is_whole, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
