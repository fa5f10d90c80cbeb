/* The catalogs that come with the program: read without a message, complete, and true to the published tables. */
#include "support.h"

#include <string.h>

#include "sawbill/catalog.h"
#include "sawbill/text.h"

static struct catalog *shipped(void **state, struct diags *diags)
{
    *diags = (struct diags){.arena = *state};
    return catalog_read(*state, SOURCE_DIR "/catalogs", NULL, diags);
}

static void test_no_message(void **state)
{
    struct diags diags;
    (void)shipped(state, &diags);
    for (size_t i = 0; i < diags.count; i++)
        print_error("%s\n", diag_line(*state, &diags.item[i]));
    assert_int_equal(diags.count, 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(test_no_message, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
