/* Alternates: their settings are checked as the job would be with them, and faults name their line. */
#include "job_support.h"

#define WITH(lines)                                                                                                    \
    {                                                                                                                  \
        "tax = 0\n", "tax = 0\n[alternate sawn]\nwhat = sawn beam\n" lines

static void faults_name_the_line(void **state){
    static const struct edit edits[] =
        {WITH("set beam B1 member = DFL2-2X12\nset BEAM b1 plies = 4\nset bid overhead = 15 %\n"), ""},
    WITH(""),
    "job.ini:104:1: stop[K004]: [alternate sawn] needs 'set KIND ID KEY': a value put in the place of "
    "the job's own; write 'set KIND ID KEY = DFL2-2X10'\n"},
    WITH("set beem B1 member = X\n"),
    "job.ini:106:1: stop[K001]: unknown kind 'beem' in 'set beem B1 member'; did you mean 'beam'?\n"
}
, WITH("set beam B11 member = X\n"),
    "job.ini:106:1: stop[K011]: 'set beam B11 member' names no beam of this job; did you mean 'B1'?\n"
}
, WITH("set beam B1 membre = X\n"),
    "job.ini:106:1: stop[K002]: unknown key 'membre' of beam B1 in 'set beam B1 membre'; did you mean 'member'?\n"
}
, WITH("set alternate sawn what = X\n"), "job.ini:106:1: stop[K013]: an alternate cannot set another alternate\n"
}
, WITH("set beam B1 clear span = 11\n"),
    "job.ini:106:26: stop[K008]: '11' for 'clear span' needs a unit: 11 ft or 11 in\n"
}
, WITH("set beam B1 joists A = joists eats\n"),
    "job.ini:106:24: stop[K011]: 'joists eats' for 'joists A' is not in this job; did you mean 'joists east'?\n"
}
, WITH("set beam B1 choose = yes\n"),
    "job.ini:104:1: stop[K013]: with this alternate, line 48: [beam B1] has 'choose = yes' and a member; keep one "
    "of them\n"
}
, WITH("set wall W1 bracing = unknown\n"),
    "job.ini:106:23: ask[Q004]: does [wall W1] brace the house? write 'bracing = no', or 'bracing = yes' with "
    "'bracing engineer = NAME, SHEET'\n"
}
, WITH("set beam B1 plies = 4\nset beam B1 plies = 5\n"),
    "job.ini:107:1: stop[K003]: 'set beam B1 plies' stands twice in [alternate sawn]; the first is on line 106, keep "
    "one\n"
}
,
}
;
CHECK_EDITS(state, edits);
}

/* A setting replaces the job's own value where it stands, or is added to its section. */
static void settings_are_put_in(void **state)
{
    struct diags diags;
    char *text = edited(*state, "tax = 0\n",
                        "tax = 0\n[alternate sawn]\nwhat = sawn beam\nset beam B1 member = DFL2-2X12\n"
                        "set beam B1 stagger = 6 in\n");
    struct job *job = read_text(*state, "job.ini", text, strlen(text), &diags);
    assert_string_equal(messages(*state, &diags), "");
    assert_int_equal(job->alternate_count, 1);
    assert_int_equal(job->alternates[0].count, 2);

    struct entries entries = entries_with(*state, &job->entries, &job->alternates[0]);
    assert_int_equal(entries.count, job->entries.count + 1);
    struct job *other = job_check(*state, "job.ini", &entries, &diags);
    assert_int_equal(diags.count, 0);
    assert_string_equal(other->beams[0].member.text, "DFL2-2X12");
    assert_int_equal(other->beams[0].member.at->at.line, 106);
    assert_true(other->beams[0].stagger.length == 6 * LENGTH_INCH);
    assert_string_equal(other->beams[1].member.text, "DFL2-2X10");
    assert_string_equal(job->beams[0].member.text, "LVL-9.5");
}

/* The JSON spelling of the same alternate. */
static void in_json(void **state)
{
    static const char json[] = "{\"alternate\": {\"a\": {\"what\": \"x\",\n\"set bid tax\": 7}}, \"bid\": {\"method\": "
                               "\"add\", \"overhead\": 0, \"contingency\": 0, \"profit\": 0, \"tax\": 0}, \"job\": "
                               "{\"name\": \"x\", \"date\": \"2026-01-01\", \"catalogs\": \"c\"}}";
    struct diags diags;
    (void)read_text(*state, "job.json", json, strlen(json), &diags);
    assert_string_equal(messages(*state, &diags), "job.json:2:16: stop[K008]: '7' for 'tax' needs a unit: 7 %\n");
    assert_string_equal(diags.item[0].at.pointer, "/alternate/a/set bid tax");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(faults_name_the_line, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(settings_are_put_in, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(in_json, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
