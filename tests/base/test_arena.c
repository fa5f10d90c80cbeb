#include "every.h"

#include "sawbill/text.h"

static void test_zeroed_and_aligned(void **state)
{
    uint64_t random = 8;
    for (int i = 0; i < 20000; i++) {
        size_t size = (size_t)random_up_to(&random, i % 500 == 0 ? 200000 : 200);
        unsigned char *object = arena_alloc(*state, size);
        assert_non_null(object);
        assert_int_equal((uintptr_t)object % _Alignof(max_align_t), 0);
        for (size_t k = 0; k < size; k++)
            assert_int_equal(object[k], 0);
        memset(object, 0xa5, size); /* were it shared with another object, that one's zeros would be gone */
    }
    assert_non_null(arena_alloc(*state, 0));
}

static void test_objects_do_not_overlap(void **state)
{
    enum { COUNT = 3000 };
    unsigned char *objects[COUNT];
    size_t sizes[COUNT];
    uint64_t random = 9;
    for (size_t i = 0; i < COUNT; i++) {
        sizes[i] = (size_t)random_up_to(&random, i % 300 == 0 ? 100000 : 300);
        objects[i] = arena_alloc(*state, sizes[i]);
        memset(objects[i], (int)(i % 251), sizes[i]);
    }
    for (size_t i = 0; i < COUNT; i++)
        for (size_t k = 0; k < sizes[i]; k++)
            assert_int_equal(objects[i][k], i % 251);
}

static void test_growing_array(void **state)
{
    int *numbers = NULL;
    size_t count = 0, capacity = 0;
    for (int i = 0; i < 10000; i++) {
        numbers = arena_more(*state, numbers, count, &capacity, sizeof *numbers);
        assert_true(capacity > count);
        numbers[count++] = i;
    }
    for (int i = 0; i < 10000; i++)
        assert_int_equal(numbers[i], i);
}

static void test_strings(void **state)
{
    const char *text = "14' 6-1/2\"";
    char *copy = arena_strdup(*state, text);
    assert_string_equal(copy, text);
    assert_ptr_not_equal(copy, text);
    assert_string_equal(arena_strndup(*state, text, 3), "14'");
    assert_string_equal(arena_strndup(*state, "", 0), "");
    assert_string_equal(arena_printf(*state, "%s:%d", "porch.ini", 14), "porch.ini:14");
    char *long_text = arena_printf(*state, "%100000d", 7);
    assert_int_equal(strlen(long_text), 100000);
}

static void test_buffer(void **state)
{
    struct buffer buffer = {.arena = *state};
    assert_string_equal(buffer_text(&buffer), "");
    buffer_add(&buffer, "");
    assert_string_equal(buffer.text, "");
    for (int i = 0; i < 5000; i++) {
        buffer_printf(&buffer, "%d,", i % 10);
        assert_int_equal(strlen(buffer.text), buffer.length);
    }
    assert_int_equal(buffer.length, 10000);
    assert_memory_equal(buffer.text, "0,1,2,3,4,5,6,7,8,9,0,", 22);
    buffer_add_n(&buffer, "xyz", 2);
    assert_string_equal(buffer_text(&buffer) + 10000, "xy");
}

/* The hook must not return: it jumps out, as a program's own would exit. */
struct failing {
    jmp_buf away;
    int calls;
};

static void jump_away(void *owner)
{
    struct failing *failing = owner;
    failing->calls++;
    longjmp(failing->away, 1);
}

static void expect_failure(void (*ask)(struct arena *), size_t most)
{
    struct failing failing = {.calls = 0};
    struct arena *arena = arena_new(most, jump_away, &failing);
    assert_non_null(arena);
    if (setjmp(failing.away) == 0) {
        ask(arena);
        arena_free(arena);
        fail_msg("the ceiling did not hold");
    }
    assert_int_equal(failing.calls, 1);
    arena_free(arena); /* what was given out before is still freed once */
}

static void ask_much(struct arena *arena)
{
    (void)arena_alloc(arena, 2000);
}

static void ask_little_for_ever(struct arena *arena)
{
    for (int i = 0; i < 100000; i++)
        (void)arena_alloc(arena, 64);
}

static void ask_product_overflow(struct arena *arena)
{
    (void)arena_array(arena, SIZE_MAX / 8 + 2, 8);
}

static void ask_largest(struct arena *arena)
{
    (void)arena_alloc(arena, SIZE_MAX);
}

static void ask_largest_string(struct arena *arena)
{
    (void)arena_strndup(arena, "", SIZE_MAX);
}

static void ask_growth_overflow(struct arena *arena)
{
    size_t capacity = SIZE_MAX / 2 + 1;
    (void)arena_more(arena, NULL, capacity, &capacity, 1);
}

static void test_failures_reach_the_hook(void **state)
{
    (void)state;
    expect_failure(ask_much, 1000);
    expect_failure(ask_little_for_ever, 1000000);
    expect_failure(ask_product_overflow, 0);
    expect_failure(ask_largest, 0);
    expect_failure(ask_largest_string, 0);
    expect_failure(ask_growth_overflow, 0);
}

/* The ceiling counts what was asked for, not whole blocks: a small ceiling is usable to its end. */
static void test_ceiling_is_usable(void **state)
{
    (void)state;
    struct arena *arena = arena_new(4096, support_out_of_memory, NULL);
    for (int i = 0; i < 4; i++)
        (void)arena_alloc(arena, 1024);
    arena_free(arena);
    arena_free(NULL);
}

int main(int argc, char **argv)
{
    int failed = set_locale_from(argc, argv);
    if (failed)
        return failed;
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(test_zeroed_and_aligned, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_objects_do_not_overlap, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_growing_array, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_strings, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(test_buffer, support_setup, support_teardown),
        cmocka_unit_test(test_failures_reach_the_hook),
        cmocka_unit_test(test_ceiling_is_usable),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
