/* The key table: whole, of one piece, and what is made from it. */
#include "job_support.h"

static void every_row_is_whole(void **state)
{
    (void)state;
    size_t required = 0;
    assert_true(key_count() > 150);
    for (size_t i = 0; i < key_count(); i++) {
        struct key_info key = key_info(i);
        assert_true(*key.key && *key.help && *key.example && *key.type);
        assert_string_equal(key.kind_name, kind_name(key.kind));
        assert_false(key.required && *key.fallback); /* a default is no requirement */
        required += key.required;
        for (size_t j = 0; j < i; j++) {
            struct key_info other = key_info(j);
            assert_false(other.kind == key.kind && name_same(other.key, key.key));
        }
    }
    assert_true(required > 20);
}

/* Folded names must not meet, and a did-you-mean of a right name is itself. */
static void kinds(void **state)
{
    (void)state;
    for (int i = 0; i < KIND_COUNT; i++) {
        enum kind kind = KIND_COUNT;
        assert_true(kind_find(kind_name((enum kind)i), &kind));
        assert_int_equal(kind, i);
        assert_true(*kind_help((enum kind)i));
    }
    enum kind kind;
    assert_true(kind_find(" BEAM ", &kind));
    assert_false(kind_find("beems", &kind));
    assert_false(kind_has_id(KIND_JOB));
    assert_false(kind_has_id(KIND_BID));
    assert_false(kind_has_id(KIND_ROOF));
    assert_true(kind_has_id(KIND_BEAM));
}

static void words_of_choices(void **state)
{
    (void)state;
    assert_string_equal(choice_name("joists", "kind", JOIST_FLOOR_TRUSS), "floor truss");
    assert_string_equal(choice_name("area", "live is", LIVE_ATTIC_NO_STORAGE), "attic no storage");
    assert_string_equal(choice_name("area", "live is", LIVE_ROOF), "roof");
    assert_string_equal(choice_name("area", "snow is", SNOW_ON_ROOF), "on the roof");
    assert_string_equal(choice_name("area", "snow level", LEVEL_STRENGTH), "strength");
    assert_string_equal(choice_name("roof", "frame", FRAME_NONE_ABOVE), "none above");
    assert_string_equal(choice_name("joists", "over the wall", OVER_CONTINUOUS), "continuous");
    assert_string_equal(choice_name("joists", "ties the roof", UNKNOWN), "unknown");
    assert_string_equal(choice_name("beam", "set", SET_DROPPED), "dropped");
    assert_string_equal(choice_name("beam", "wall at end 1", WAY_ACROSS), "across");
    assert_string_equal(choice_name("beam", "status", NE_EXISTING), "existing");
    assert_string_equal(choice_name("beam", "choose", NO), "no");
    assert_string_equal(choice_name("post", "braced", BRACED_FREE), "free");
    assert_string_equal(choice_name("wall", "status", WALL_STAYS), "stays");
    assert_string_equal(choice_name("remove", "what", REMOVE_HEADER), "header");
    assert_string_equal(choice_name("remove", "how", HOW_IN_SECTIONS), "in sections");
    assert_string_equal(choice_name("bid", "method", METHOD_MARGIN), "margin");
    assert_string_equal(choice_name("bid", "tax mode", TAX_ON_PRICE), "on price");
    assert_string_equal(choice_name("job", "status", STATUS_BUDGET), "budget");
    assert_string_equal(choice_name("job", "loads by", LOADS_ASCE_7_22), "ASCE 7-22");
    assert_string_equal(class_name(CLASS_FEES), "fees");
    assert_string_equal(choice_name("buy", "class", CLASS_ALLOWANCES), class_name(CLASS_ALLOWANCES));
    assert_string_equal(choice_name("beam", "set", 0), "");
    assert_string_equal(choice_name("beam", "set", 99), "");
}

/* Every example and every default of the table is read without a fault: tried in a job of its own, with the sections
 * that the references of the examples name. */
static void examples_are_read(void **state)
{
    static const char named[] = "[area bedroom]\n[area roof]\n[joists north]\n[joists south]\n[beam B2]\n[load ridge "
                                "post]\n[post P1]\n[block K1]\n[wall W2]\n[shore A]\n";
    for (size_t i = 0; i < key_count(); i++) {
        struct key_info key = key_info(i);
        const char *values[] = {key.example, *key.fallback ? key.fallback : key.example};
        for (size_t v = 0; v < 2 && key.kind != KIND_ALTERNATE; v++) {
            bool b1 = key.kind == KIND_BEAM;
            char *text = arena_printf(*state, "%s%s[%s%s]\n%s = %s\n", named, b1 ? "" : "[beam B1]\n", key.kind_name,
                                      !kind_has_id(key.kind) ? ""
                                      : b1                   ? " B1"
                                                             : " x",
                                      key.key, values[v]);
            struct diags diags;
            (void)read_text(*state, "job.ini", text, strlen(text), &diags);
            for (size_t d = 0; d < diags.count; d++) {
                enum diag_code code = diags.item[d].code;
                if (code == DIAG_K002 || code == DIAG_K007 || code == DIAG_K008 || code == DIAG_K009 ||
                    code == DIAG_K010 || code == DIAG_K011 || code == DIAG_K014 || code == DIAG_F005)
                    fail_msg("[%s] %s = %s: %s", key.kind_name, key.key, values[v], diag_line(*state, &diags.item[d]));
            }
        }
    }
}

/* Each end of each possible range is possible itself. */
static void ranges_hold_at_their_ends(void **state)
{
    size_t tried = 0;
    for (size_t i = 0; i < key_count(); i++) {
        struct key_info key = key_info(i);
        const char *to = strstr(key.range, " to ");
        if (!to)
            continue;
        const char *ends[] = {arena_strndup(*state, key.range, (size_t)(to - key.range)), to + 4};
        for (int e = 0; e < 2; e++) {
            struct diags diags;
            const char *where = strcmp(key.type, "lengths with places") == 0 ? " at 1 ft" : "";
            char *text = arena_printf(*state, "[%s%s]\n%s = %s%s\n", key.kind_name, kind_has_id(key.kind) ? " x" : "",
                                      key.key, ends[e], where);
            (void)read_text(*state, "job.ini", text, strlen(text), &diags);
            for (size_t d = 0; d < diags.count; d++)
                if (diags.item[d].code >= DIAG_K007 && diags.item[d].code <= DIAG_K010)
                    fail_msg("%s", diag_line(*state, &diags.item[d]));
        }
        tried++;
    }
    assert_true(tried > 50);
}

static void the_template_passes(void **state)
{
    struct diags diags;
    char *text = job_template(*state);
    struct job *job = read_text(*state, "job.ini", text, strlen(text), &diags);
    assert_string_equal(messages(*state, &diags), "");
    assert_int_equal(diags.count, 0);
    assert_int_equal(job->beam_count, 1);
    assert_string_equal(job->facts.catalogs.text, "../catalogs");
    assert_non_null(strstr(text, "; change me\ndate = "));
}

static void draws(void **state)
{
    percent_t share = 0;
    const char *when = NULL;
    assert_true(draw_parse(*state, "30 % on signing", &share, &when));
    assert_true(share == 300000);
    assert_string_equal(when, "on signing");
    assert_true(draw_parse(*state, "12.5% when hung", &share, &when));
    assert_true(share == 125000);
    assert_false(draw_parse(*state, "30 on signing", &share, &when));
    assert_false(draw_parse(*state, "30 %", &share, &when));
    assert_false(draw_parse(*state, "0 % never", &share, &when));
    assert_false(draw_parse(*state, "", &share, &when));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(every_row_is_whole, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(kinds, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(words_of_choices, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(examples_are_read, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(ranges_hold_at_their_ends, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(the_template_passes, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(draws, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
