/* The questions: each is asked when unanswered, and each answer settles it. */
#include "job_support.h"

static void engineered_joists(void **state)
{
    static const struct edit edits[] = {
        {"kind = sawn joist\nsize = 2x8\nspacing = 16 in\nfirst",
         "kind = roof truss\nsize = 2x8\nspacing = 16 in\nfirst",
         "job.ini:25:8: ask[Q001]: [joists east] are of kind 'roof truss', which is not cut without the drawing of its "
         "maker or an engineer; write 'repair drawing = SHEET, ENGINEER'\n"},
        {"kind = sawn joist\nsize = 2x8\nspacing = 16 in\nfirst", "kind = i-joist\nsize = 2x8\nspacing = 16 in\nfirst",
         "job.ini:25:8: ask[Q001]: [joists east] are of kind 'i-joist', which is not cut without the drawing of its "
         "maker or an engineer; write 'repair drawing = SHEET, ENGINEER'; it says the stiffeners, backers and fillers, "
         "too\n"},
        {"kind = sawn joist\nsize = 2x8\nspacing = 16 in\nfirst", "kind = unknown\nsize = 2x8\nspacing = 16 in\nfirst",
         "job.ini:25:8: ask[Q001]: what are [joists east]? open the ceiling and look: trusses, metal-web joists and "
         "i-joists are not cut as sawn ones are; write their 'kind', or 'repair drawing = SHEET, ENGINEER'\n"},
        {"kind = sawn joist\nsize = 2x8\nspacing = 16 in\nfirst",
         "kind = floor truss\nrepair drawing = R-114, R. Ames, PE\nsize = 2x8\nspacing = 16 in\nfirst", ""},
        {"kind = sawn joist\nsize = 2x8\nspacing = 16 in\nfirst", "kind = rafter\nsize = 2x8\nspacing = 16 in\nfirst",
         ""},
    };
    CHECK_EDITS(state, edits);
}

static void what_is_above(void **state)
{
    static const struct edit edits[] = {
        {"above = nothing\n", "",
         "job.ini:51:1: ask[Q002]: what stands on [beam B2] beside its joists? write 'above = nothing', or name each "
         "load and wall: 'above = load ridge post, wall W2'\n"},
        {"braces = none\n", "",
         "job.ini:17:1: ask[Q002]: do roof braces stand on the wall? write 'braces = none', or each place with the "
         "roof "
         "it carries: 'braces = 4 ft carrying 96 sq ft'\n"},
        /* answered; but then a beam carries the roof, and wind may lift it */
        {"braces = none\n", "braces = 4 ft carrying 96 sq ft\nbraces on = beam B1\nbraces own prop = yes\n",
         "job.ini:10:1: ask[Q013]: a beam carries [area roof]: how much does wind lift it beyond 0.6 of its dead load? "
         "write 'net uplift = NUMBER psf', 0 is an answer, or 'uplift engineer = NAME, SHEET' who says that there is "
         "none\n"},
        {"frame = ridge board\n", "",
         "job.ini:17:1: ask[Q002]: how is the roof above framed? write 'frame = ridge board', 'structural ridge', "
         "'trusses' or 'none above'\n"},
        {"frame = ridge board\npitch = 6/12\nspan = 26 ft\narea = area roof\nbraces = none\n",
         "frame = none above\narea = area roof\n", ""},
    };
    CHECK_EDITS(state, edits);
}

#define EAST_TIES "ties the roof = no\narea = area loft\n[joists west]\n"
static void ties(void **state)
{
    static const struct edit edits[] = {
        {EAST_TIES, "area = area loft\n[joists west]\n",
         "job.ini:24:1: ask[Q003]: do [joists east] keep the rafters from spreading? write 'ties the roof = yes' or "
         "'no' (no roof above: [roof] 'frame = none above'), or 'tie engineer = NAME, SHEET'\n"},
        {EAST_TIES, "ties the roof = unknown\narea = area loft\n[joists west]\n",
         "job.ini:30:17: ask[Q003]: do [joists east] keep the rafters from spreading? write 'ties the roof = yes' or "
         "'no' (no roof above: [roof] 'frame = none above'), or 'tie engineer = NAME, SHEET'\n"},
        {EAST_TIES, "ties the roof = yes\narea = area loft\n[joists west]\n",
         "job.ini:30:17: ask[Q003]: [joists east] tie the roof, and the beam cuts them; write 'tie strap = CODE' "
         "across "
         "the beam, or 'tie engineer = NAME, SHEET'\n"},
        {EAST_TIES, "ties the roof = yes\ntie strap = STRAP-16GA-36\narea = area loft\n[joists west]\n", ""},
        {EAST_TIES, "ties the roof = yes\ntie engineer = R. Ames, S2\narea = area loft\n[joists west]\n", ""},
        {EAST_TIES, "ties the roof = unknown\ntie engineer = R. Ames, S2\narea = area loft\n[joists west]\n", ""},
    };
    CHECK_EDITS(state, edits);
}

/* Without a [roof] section nobody has said that none stands above. */
static void ties_without_a_roof_section(void **state)
{
    static const char roof[] = "[area roof]\ndead = 15 psf\nlive = 20 psf\nlive is = roof\nsnow = 0 psf\nsnow is = on "
                               "the ground\nsnow level = allowable\n[roof]\nframe = ridge board\npitch = 6/12\nspan = "
                               "26 ft\narea = area roof\nbraces = "
                               "none\nsnow drifts = no\n";
    struct diags diags;
    char *text = edited(*state, "snow = 30 psf\n", "snow = 0 psf\n");
    memcpy(strstr(text, "snow = 900 lb"), "snow = 000 lb", strlen("snow = 000 lb"));
    char *at = strstr(text, roof);
    memmove(at, at + strlen(roof), strlen(at + strlen(roof)) + 1);
    (void)read_text(*state, "job.ini", text, strlen(text), &diags);
    assert_string_equal(messages(*state, &diags), "");

    char *tie = strstr(text, "ties the roof = no\n");
    text = arena_printf(*state, "%.*s%s", (int)(tie - text), text, tie + strlen("ties the roof = no\n"));
    (void)read_text(*state, "job.ini", text, strlen(text), &diags);
    assert_int_equal(diags.count, 1);
    assert_int_equal(diags.item[0].code, DIAG_Q003);
}

static void a_strap_needs_the_roof(void **state)
{
    struct diags diags;
    char *text = edited(*state, EAST_TIES, "ties the roof = yes\ntie strap = S\narea = area loft\n[joists west]\n");
    char *pitch = strstr(text, "pitch = 6/12\nspan = 26 ft\narea = area roof\n");
    memmove(pitch, pitch + 42, strlen(pitch + 42) + 1);
    (void)read_text(*state, "job.ini", text, strlen(text), &diags);
    assert_string_equal(
        messages(*state, &diags),
        "job.ini:17:1: stop[K017]: [roof] needs 'pitch': the tie of [joists east] is computed from it\n"
        "job.ini:17:1: stop[K017]: [roof] needs 'span': the tie of [joists east] is computed from it\n"
        "job.ini:17:1: stop[K017]: [roof] needs 'area': the tie of [joists east] is computed from it\n");
}

static void bracing(void **state)
{
    static const struct edit edits[] = {
        {"bracing = no\n", "",
         "job.ini:81:1: ask[Q004]: does [wall W1] brace the house? write 'bracing = no', or 'bracing = yes' with "
         "'bracing engineer = NAME, SHEET'\n"},
        {"bracing = no\n", "bracing = unknown\n",
         "job.ini:86:11: ask[Q004]: does [wall W1] brace the house? write 'bracing = no', or 'bracing = yes' with "
         "'bracing engineer = NAME, SHEET'\n"},
        {"bracing = no\n", "bracing = yes\n",
         "job.ini:86:11: ask[Q004]: [wall W1] braces the house, and it comes out; an engineer must say what takes its "
         "place: 'bracing engineer = NAME, SHEET'\n"},
        {"bracing = no\n", "bracing = yes\nbracing engineer = R. Ames, PE, S3\n", ""},
    };
    CHECK_EDITS(state, edits);
}

/* ASCE 7-22 gives ground snow at strength level, 7-16 at allowable level: without the basis it is a question. */
static void snow(void **state)
{
    static const struct edit edits[] = {
        {"snow is = on the ground\n", "",
         "job.ini:14:8: ask[Q005]: is the snow of [area roof] meant on the ground or on the roof? write 'snow is = on "
         "the ground' or 'on the roof'\n"},
        {"snow level = allowable\n[roof]", "[roof]",
         "job.ini:14:8: ask[Q005]: is the snow of [area roof] an allowable value (ASCE 7-16 and before) or a strength "
         "value (ASCE 7-22)? write 'snow level = allowable' or 'strength'\n"},
        {"snow = 30 psf\nsnow is = on the ground\nsnow level = allowable\n", "snow = 0 psf\n", ""},
    };
    CHECK_EDITS(state, edits);
}

static void ends(void **state)
{
    static const struct edit edits[] = {
        {"end 1 = wall plate\nbearing 1 = 3-1/2 in\n", "",
         "job.ini:51:1: ask[Q006]: what does end 1 of [beam B2] bear on? write 'end 1 = post ID', 'beam ID at LENGTH', "
         "'wall plate', 'pocket' or 'hanger'\n"},
        {"end 1 = wall plate\n", "end 1 = unknown\n",
         "job.ini:55:9: ask[Q006]: what does end 1 of [beam B2] bear on? write 'end 1 = post ID', 'beam ID at LENGTH', "
         "'wall plate', 'pocket' or 'hanger'\n"},
        {"wall at end 1 = across\n", "",
         "job.ini:40:1: ask[Q006]: does the wall with the post at end 1 of [beam B1] run in line with the beam or "
         "across it? write 'wall at end 1 = in line' or 'across'\n"},
        {"end 2 = pocket\nbearing 2 = 3 in\n", "end 2 = hanger\n", ""},
        {"bearing 2 = 3 in\n", "bearing 2 = 3 in\ninner = post P1 at 4 ft\nshore engineer = R. Ames, S4\n",
         "job.ini:59:9: ask[Q006]: does the wall with the post at inner support 1 of [beam B2] run in line with the "
         "beam "
         "or across it? write 'inner = post P1 at 4 ft, wall in line' or ', wall across'\n"},
    };
    CHECK_EDITS(state, edits);
}

static void what_is_below(void **state)
{
    static const struct edit edits[] = {
        {"stands on = block K1\n", "",
         "job.ini:68:1: ask[Q009]: what does [post P1] stand on? write 'stands on = block ID', 'footing ID', 'beam "
         "ID', "
         "'wall ID', or in words what you saw\n"},
        {"stands on = footing F1\n", "",
         "job.ini:74:1: ask[Q009]: what does [block K1] stand on? write 'stands on = block ID', 'footing ID', 'beam "
         "ID', 'wall ID', or in words what you saw\n"},
        {"stands on = block K1\n[block K1]\ndepth = 9-1/4 in\nstands on = footing F1\n[footing F1]\nstatus = new\nsize "
         "= "
         "30 in\nthickness = 12 in\n",
         "stands on = existing footing seen\n", ""},
        {"stands on = slab on ground\n", "",
         "job.ini:92:1: ask[Q009]: what does [shore A] stand on, and what is below that floor? write 'stands on' in "
         "words\n"},
        {"stands on = slab on ground\n", "stands on = old floor\nbelow = joists parallel\n",
         "job.ini:97:9: ask[Q009]: [shore A] runs along between two joists of its floor; what holds these from below? "
         "write 'held below = shore' or 'crib', with 'height below'\n"},
        {"stands on = slab on ground\n",
         "stands on = old floor\nbelow = joists parallel\nheld below = shore\nheight below = 7 ft\n", ""},
    };
    CHECK_EDITS(state, edits);
}

/* An engineer's beam is his for the span that he drew: 10 ft 0 in specified, 10 ft 3 in measured stops. */
static void specified_span(void **state)
{
    static const struct edit edits[] = {
        {"member = LVL-9.5\n",
         "member = LVL-9.5\nspecified by = R. Ames, PE\nsheet = S1\nspecified span = 10 ft 0 in\n",
         "job.ini:51:18: stop[Q008]: [beam B1] was specified for a clear span of 10' 0\", but 10' 3\" is measured; ask "
         "the engineer, and write his new sheet\n"},
        {"member = LVL-9.5\n",
         "member = LVL-9.5\nspecified by = R. Ames, PE\nsheet = S1\nspecified span = 10 ft 2 in\n", ""},
        {"member = LVL-9.5\n",
         "member = LVL-9.5\nspecified by = R. Ames, PE\nsheet = S1\nspecified span = 10 ft 4-1/16 in\n",
         "job.ini:51:18: stop[Q008]: [beam B1] was specified for a clear span of 10' 4-1/16\", but 10' 3\" is "
         "measured; "
         "ask the engineer, and write his new sheet\n"},
    };
    CHECK_EDITS(state, edits);
}

/* status = budget: the same questions are assumptions, and notes. */
static void a_budget_assumes(void **state)
{
    struct diags diags;
    char *text = edited(*state, "name = Porch wall\n", "name = Porch wall\nstatus = budget\n");
    char *no = strstr(text, "bracing = no\n");
    memmove(no, no + 13, strlen(no + 13) + 1);
    (void)read_text(*state, "job.ini", text, strlen(text), &diags);
    assert_true(diags.assume);
    assert_int_equal(diags.count, 1);
    assert_int_equal(diags.item[0].code, DIAG_Q004);
    assert_int_equal(diags.item[0].class, DIAG_NOTE);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(engineered_joists, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(what_is_above, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(ties, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(ties_without_a_roof_section, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_strap_needs_the_roof, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(bracing, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(snow, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(ends, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(what_is_below, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(specified_span, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(a_budget_assumes, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
