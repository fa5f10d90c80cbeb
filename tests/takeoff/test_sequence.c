/* The order of work, shores of one set that stand at once or after each other, and what comes back. */
#include "house.h"

enum { BUILD, HANG, DEMO, CLEAN, TASKS };

static struct house *working_house(struct arena *arena, const char *sequence)
{
    static const char *const names[] = {"build shore", "hang joist", "demo wall", "clean"};
    struct house *house = house_new(arena);
    struct task *task = arena_array(arena, TASKS, sizeof *task);
    for (size_t i = 0; i < TASKS; i++) {
        task[i] = (struct task){
            .task = names[i], .trade = "carpenter", .per = "each", .likely = DECIMAL_ONE, .order = 10 * (int)(i + 1)};
        house->assembly[i] = (struct assembly_line){
            .assembly = "house", .per = "job", .task = names[i], .count = DECIMAL_ONE, .at = {"a.csv", 2, 1, NULL}};
    }
    house->catalog.tasks = task;
    house->catalog.task_count = TASKS;
    house->catalog.assembly_count = CLEAN; /* nobody cleans */
    if (sequence) {
        struct text_value *item = arena_alloc(arena, sizeof *item);
        *item = (struct text_value){sequence, &house->written};
        house->job.facts.sequence = (struct texts_value){item, 1};
    }
    return house;
}

/* The message of the order of work with that number, or NULL; the finishes of this house have notes of their own. */
static const char *message(const struct house *house, size_t number)
{
    for (size_t i = 0; i < house->diags.count; i++)
        if (house->diags.item[i].code == DIAG_T005 && number-- == 0)
            return house->diags.item[i].text;
    return NULL;
}

static void as_the_catalog_ships_it(void **state)
{
    struct house *house = working_house(*state, NULL);
    const struct takeoff *takeoff = house_count(house);
    assert_int_equal(line_of(takeoff, "assembly/house/build shore")->in_work, 10);
    assert_int_equal(line_of(takeoff, "assembly/house/demo wall")->in_work, 30);
    assert_null(message(house, 0));
}

/* The wall comes out after the beam is hung, or before it; a task that is not done may be named. */
static void as_the_job_says(void **state)
{
    struct house *house = working_house(*state, "Build_shore , demo wall,hang joist, clean");
    struct work *work = arena_alloc(*state, sizeof *work);
    *work = (struct work){.head = head_of("piano"), .hours = {DECIMAL_ONE, &house->written}};
    house->job.works = work;
    house->job.work_count = 1;
    const struct takeoff *takeoff = house_count(house);
    assert_null(message(house, 0));
    assert_int_equal(line_of(takeoff, "assembly/house/build shore")->in_work, 0);
    assert_int_equal(line_of(takeoff, "assembly/house/demo wall")->in_work, 1);
    assert_int_equal(line_of(takeoff, "assembly/house/hang joist")->in_work, 2);
    assert_true(line_of(takeoff, "work/piano")->in_work > 2);
    house->job.facts.sequence.item[0].text = "work piano, build shore, demo wall, hang joist";
    assert_int_equal(line_of(house_count(house), "work/piano")->in_work, 0);
    assert_null(message(house, 0));
}

/* Work that the order does not name comes before the first task named "final ...", or right after the task it says. */
static void own_work_has_its_place(void **state)
{
    struct house *house = working_house(*state, NULL);
    struct work work = {.head = head_of("piano"), .hours = {DECIMAL_ONE, &house->written}};
    house->job.works = &work;
    house->job.work_count = 1;
    ((struct task *)house->catalog.tasks)[CLEAN].task = "Final clean"; /* order 40 */
    const struct takeoff_line *line = line_of(house_count(house), "work/piano");
    assert_int_equal(line->in_work, 39);
    work.after_task = (struct text_value){"hang joist", &house->written};
    const struct takeoff *takeoff = house_count(house);
    const struct takeoff_line *hang = line_of(takeoff, "assembly/house/hang joist");
    line = line_of(takeoff, "work/piano");
    assert_int_equal(line->in_work, 20);
    assert_int_equal(hang->in_work, 20);
    assert_true(hang < line); /* equal places stay as they are counted */
    assert_null(message(house, 0));
    work.after_task.text = "hang joists";
    (void)house_count(house);
    assert_non_null(strstr(message(house, 0), "'after task' of 'work piano'"));
}

/* One message for all unknown names, one for all that is left out, one for all twice. */
static void one_message_each(void **state)
{
    struct house *house = working_house(*state, "hang joists, work piano, demo wall, demo wall");
    (void)house_count(house);
    assert_non_null(strstr(message(house, 0), "no work of this job: 'hang joists', 'work piano'"));
    assert_non_null(strstr(message(house, 1), "more than once: 'demo wall'"));
    assert_non_null(strstr(message(house, 2), "leaves out work that this job has: 'build shore', 'hang joist'"));
    assert_null(message(house, 3));
}

static struct house *shores_from_to(struct arena *arena, const char *const from_to[][2], size_t count)
{
    struct house *house = working_house(arena, NULL);
    house->job.shores = arena_array(arena, count, sizeof(struct shore));
    house->design.shores = arena_array(arena, count, sizeof(struct shore_design));
    for (size_t i = 0; i < count; i++) {
        struct shore *shore = &house->job.shores[i];
        *shore = house->shore[0];
        shore->head = head_of(arena_printf(arena, "S%zu", i + 1));
        shore->set = (struct text_value){"east", &house->written};
        shore->from_task = (struct text_value){from_to[i][0], from_to[i][0] ? &house->written : NULL};
        shore->to_task = (struct text_value){from_to[i][1], from_to[i][1] ? &house->written : NULL};
        house->design.shores[i] = house->shore_design[0];
        house->design.shores[i].shore = shore;
    }
    house->job.shore_count = house->design.shore_count = count;
    return house;
}

static int64_t studs_bought(const struct takeoff *takeoff)
{
    int64_t sum = 0;
    for (size_t i = 0; i < takeoff->count; i++)
        if (strstr(takeoff->line[i].id, "/studs"))
            sum += takeoff->line[i].count / DECIMAL_ONE;
    return sum;
}

/* 14 studs each.  1 and 2 stand through the hanging together, 3 comes when 1 is down: at most two at once, 28, not 42.
 * All one after the other: 14.  All at once: 42. */
static void the_peak_is_bought(void **state)
{
    static const char *const two[][2] = {
        {"build shore", "hang joist"}, {"hang joist", "clean"}, {"demo wall", "clean"}};
    static const char *const one[][2] = {
        {"build shore", "build shore"}, {"hang joist", "demo wall"}, {"clean", "clean"}};
    static const char *const all[][2] = {{"build shore", NULL}, {NULL, "demo wall"}, {"hang joist", "hang joist"}};
    static const char *const untold[][2] = {{"build shore", "clean"}, {NULL, NULL}, {NULL, NULL}};
    const struct takeoff *takeoff = house_count(shores_from_to(*state, two, 3));
    assert_int_equal(studs_bought(takeoff), 28);
    assert_count(takeoff, "shores/S2/studs", 14);
    assert_non_null(strstr(line_of(takeoff, "shores/S2/studs")->counted, "at the same time as shore S1"));
    assert_null(line_find(takeoff, "shores/S3/studs"));
    assert_int_equal(studs_bought(house_count(shores_from_to(*state, one, 3))), 14);
    assert_int_equal(studs_bought(house_count(shores_from_to(*state, all, 3))), 42);
    assert_int_equal(studs_bought(house_count(shores_from_to(*state, untold, 3))), 14);
}

static void tasks_of_a_shore_are_known(void **state)
{
    static const char *const unknown[][2] = {{"build shores", "clean"}};
    static const char *const turned[][2] = {{"demo wall", "build shore"}};
    struct house *house = shores_from_to(*state, unknown, 1);
    (void)house_count(house);
    assert_null(message(house, 1));
    assert_non_null(strstr(message(house, 0), "'build shores'"));
    house = shores_from_to(*state, turned, 1);
    (void)house_count(house);
    assert_null(message(house, 1));
    assert_non_null(strstr(message(house, 0), "built for 'demo wall' and down before it"));
}

/* Two shores of no set, 14 studs of 90 in each: 28 come back, and 2 x 4 jack posts. */
static void what_comes_back(void **state)
{
    static const char *const none[][2] = {{NULL, NULL}, {NULL, NULL}};
    struct house *house = shores_from_to(*state, none, 2);
    house->job.shores[0].set.at = house->job.shores[1].set.at = NULL;
    const struct takeoff *takeoff = house_count(house);
    const struct takeoff_return *studs = NULL, *jacks = NULL;
    for (size_t i = 0; i < takeoff->back_count; i++) {
        const struct takeoff_return *back = &takeoff->back[i];
        if (back->member && back->length == INCHES(90))
            studs = back;
        if (!back->member)
            jacks = back;
    }
    assert_non_null(studs);
    assert_int_equal(studs->count, 28);
    assert_string_equal(studs->from, "shore S1, shore S2");
    assert_non_null(jacks);
    assert_int_equal(jacks->count, 8);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(as_the_catalog_ships_it, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(as_the_job_says, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(own_work_has_its_place, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(one_message_each, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(the_peak_is_bought, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(tasks_of_a_shore_are_known, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(what_comes_back, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
