/* The load path: what is described carries something or comes to something; what comes out is replaced. */
#include "job_support.h"

/* A wall that comes out and bears has a beam in its place. */
static void what_takes_its_place(void **state)
{
    static const char asked[] =
        "what takes the place of [wall W1], which comes out? write 'under = beam ID', or 'bearing = no' where nothing "
        "stands, lies or hangs on it\n";
    const struct edit edits[] = {
        {"under = beam B1\n", "", arena_printf(*state, "job.ini:81:1: ask[Q014]: %s", asked)},
        {"under = beam B1\n", "bearing = yes\n", arena_printf(*state, "job.ini:83:11: ask[Q014]: %s", asked)},
        {"under = beam B1\n", "bearing = unknown\n", arena_printf(*state, "job.ini:83:11: ask[Q014]: %s", asked)},
        {"under = beam B1\n", "bearing = no\n", ""},
        {"under = beam B1\n", "under = beam B1\nbearing = yes\n", ""},
        {"under = beam B1\n", "under = beam B1\nbearing = no\n",
         "job.ini:84:11: stop[K013]: [wall W1] bears nothing, and a beam takes its place: 'under'; keep one of them\n"},
    };
    CHECK_EDITS(state, edits);
}

static void what_carries_nothing(void **state)
{
    static const struct edit edits[] = {
        {"[block K1]\n",
         "[post P7]\nmember = SPF-STUD-2X4\nplies = 3\nheight = 7 ft\nbraced = both\nstands on = block K1\n"
         "[block K1]\n",
         "job.ini:74:1: note[K018]: [post P7] carries nothing, and is not counted; write 'end 1 = post P7' or 'end 2 = "
         "post P7' in its "
         "[beam], or take it out\n"},
        {"end 1 = post P1\n", "end 1 = post P1\ninner = post P7 at 4 ft, wall across\n",
         "job.ini:46:9: stop[K011]: 'post P7' for 'inner' is not in this job; did you mean 'post P1'?\n"},
        {"stands on = block K1\n", "stands on = footing F1\n",
         "job.ini:74:1: note[K018]: [block K1] carries nothing, and is not counted; write 'stands on = block K1' in "
         "its [post], or take it "
         "out\n"},
        {"stands on = footing F1\n", "stands on = pier, seen\n",
         "job.ini:77:1: note[K018]: [footing F1] carries nothing, and is not counted; write 'stands on = footing F1' "
         "in its [post] or "
         "[block], or take it out\n"},
        {"[roof]\n", "[area porch]\ndead = 8 psf\nlive = 60 psf\nlive is = floor\n[roof]\n",
         "job.ini:17:1: stop[K017]: [area porch] comes to nothing: no joists, load, member in the way or roof names "
         "it; "
         "write 'area = area porch' there, or take it out\n"},
    };
    CHECK_EDITS(state, edits);
}

#define HOLDS    "holds = joists east, joists west, wall W2\n"
#define ENGINEER ", or in [beam B1] 'shore engineer = NAME, SHEET'\n"
/* Whatever comes to a new beam is held until that beam is there. */
static void nothing_holds_it(void **state)
{
    static const struct edit edits[] = {
        {HOLDS, "holds = joists east, wall W2\n",
         "job.ini:43:12: stop[Q015]: nothing holds joists west while [beam B1] goes in; write in a [shore ID] 'holds = "
         "joists west'" ENGINEER},
        {HOLDS, "holds = joists east, joists west\n",
         "job.ini:87:1: stop[Q015]: nothing holds wall W2 while [beam B1] goes in; write in a [shore ID] 'holds = wall "
         "W2' or here 'comes later = yes'" ENGINEER},
        {"held by = shore A\n", "",
         "job.ini:61:1: stop[Q015]: nothing holds load post while [beam B1] goes in; write in a [shore ID] 'holds = "
         "load post' or here 'held by = shore ID' or 'comes later = yes'" ENGINEER},
        {"braces = none\n", "braces = 4 ft carrying 96 sq ft\nbraces on = beam B1\n",
         "job.ini:10:1: ask[Q013]: a beam carries [area roof]: how much does wind lift it beyond 0.6 of its dead load? "
         "write 'net uplift = NUMBER psf', 0 is an answer, or 'uplift engineer = NAME, SHEET' who says that there is "
         "none\n"
         "job.ini:22:10: stop[Q015]: nothing holds roof braces while [beam B1] goes in; write in a [shore ID] 'holds = "
         "roof braces' or in [roof] 'braces own prop = yes'" ENGINEER},
        /* an old beam that gets a new post */
        {"end 2 = pocket\n", "end 2 = post P1\nwall at end 2 = across\n",
         "job.ini:57:9: stop[Q015]: nothing holds beam B2, which is existing, while post P1, which is new, goes in "
         "under it; write in a [shore ID] 'holds = post P1', in [post P1] 'status = existing', or in [beam B2] 'shore "
         "engineer = NAME, SHEET'\n"},
    };
    CHECK_EDITS(state, edits);
}

/* Each answer settles it. */
static void something_holds_it(void **state)
{
    static const struct edit edits[] = {
        {HOLDS, "holds = joists east, joists west, wall W2, load post\n", ""},
        {"weight = 8 psf\n[shore A]\n" HOLDS,
         "weight = 8 psf\ncomes later = yes\n[shore A]\nholds = joists east, joists west\n", ""},
        {"held by = shore A\n", "comes later = yes\n", ""},
        {HOLDS, "holds = joists east, joists west, wall W2, roof braces\n",
         "job.ini:93:9: stop[K013]: [shore A] holds roof braces, and [roof] has none: 'braces'\n"},
        {HOLDS, "holds = joists east, joists west, wall W2, roof brace\n",
         "job.ini:93:9: stop[K011]: 'roof brace' for 'holds' is not in this job; did you mean 'roof braces'?\n"},
        {"member = LVL-9.5\n", "member = LVL-9.5\nshore engineer = R. Ames, S4\n", ""},
    };
    CHECK_EDITS(state, edits);
    struct diags diags;
    char *text = edited(*state, "member = LVL-9.5\n", "member = LVL-9.5\nshore engineer = R. Ames, S4\n");
    char *holds = strstr(text, HOLDS);
    text = arena_printf(*state, "%.*sholds = joists east\n%s", (int)(holds - text), text, holds + strlen(HOLDS));
    (void)read_text(*state, "job.ini", text, strlen(text), &diags);
    assert_string_equal(messages(*state, &diags), "");
}

/* A dropped beam over which all goes on and under which nothing comes out takes nothing over. */
static void what_goes_in_below(void **state)
{
    struct diags diags;
    char *text = edited(*state, HOLDS, "holds = joists east\n");
    char *set = strstr(text, "member = LVL-9.5\n");
    text = arena_printf(*state, "%.*sset = dropped\n%s", (int)(set - text), text, set);
    (void)read_text(*state, "job.ini", text, strlen(text), &diags);
    assert_true(diag_has_stop(&diags));
    char *out = strstr(text, "under = beam B1\n");
    text = arena_printf(*state, "%.*sbearing = no\n%s", (int)(out - text), text, out + strlen("under = beam B1\n"));
    (void)read_text(*state, "job.ini", text, strlen(text), &diags);
    assert_string_equal(messages(*state, &diags), "");
    text = arena_printf(*state, "%s[remove old]\nwhat = post\nlength = 7 ft\n", text);
    (void)read_text(*state, "job.ini", text, strlen(text), &diags);
    assert_true(diag_has_stop(&diags));
}

/* A budget has no shores yet. */
static void a_budget_assumes_them(void **state)
{
    struct diags diags;
    char *text = edited(*state, HOLDS, "holds = joists east, wall W2\n");
    char *no = strstr(text, "unusual = none\n");
    text = arena_printf(*state, "%.*sstatus = budget\n%s", (int)(no - text), text, no);
    (void)read_text(*state, "job.ini", text, strlen(text), &diags);
    assert_int_equal(diags.count, 1);
    assert_int_equal(diags.item[0].code, DIAG_Q007);
    assert_int_equal(diags.item[0].class, DIAG_NOTE);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(what_takes_its_place, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(nothing_holds_it, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(something_holds_it, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(what_goes_in_below, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_budget_assumes_them, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(what_carries_nothing, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
