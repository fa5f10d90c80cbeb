/* Problems made by cutting sticks up without any waste, each stock at the same price a unit of length: what the sticks
 * of the making cost is the total length of the pieces, and no plan can cost less.  That follows from the making; it
 * needs no other source. */
#include "support.h"

#include <string.h>

#include "form_check.h"

enum { STOCKS = 6, STICKS = 12, MOST_PIECES = 90, CASES = 4 };

static unsigned draw(uint64_t *seed, unsigned below)
{
    *seed = *seed * 6364136223846793005u + 1442695040888963407u;
    return (unsigned)((*seed >> 33) % below);
}

struct made {
    struct form form;
    struct form_type type[MOST_PIECES];
    struct form_stock stock[STOCKS];
    int64_t total;
};

static void cut_up(uint64_t *seed, struct made *made, int64_t left)
{
    while (left > 0) {
        int64_t piece = 20 + draw(seed, 450);
        piece = left - piece < 20 || made->form.type_count + 20 > MOST_PIECES ? left : piece;
        made->type[made->form.type_count++] = (struct form_type){piece, 1};
        left -= piece;
    }
}

static void make(uint64_t *seed, struct made *made)
{
    memset(made, 0, sizeof *made);
    made->form = (struct form){.type = made->type, .stock = made->stock, .stock_count = STOCKS};
    for (int s = 0; s < STOCKS; s++) {
        int64_t length = 1200 + draw(seed, 1200);
        made->stock[s] = (struct form_stock){length, 3 * length, 3};
    }
    for (int i = 0; i < STICKS; i++) {
        const struct form_stock *stock = &made->stock[i / 3];
        made->total += stock->length;
        cut_up(seed, made, stock->length);
    }
}

static void waste_free_plans_are_found(void **state)
{
    uint64_t seed = 53;
    for (int n = 0; n < CASES; n++) {
        struct made made;
        struct form_result result;
        make(&seed, &made);
        assert_true(form_solve(*state, &made.form, NULL, &result));
        assert_int_equal(result.verdict, FORM_PROVED);
        assert_int_equal(result.cost, 3 * made.total);
        assert_null(form_check(&made.form, &result));
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(waste_free_plans_are_found, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
