/* Every K code, with its place and its words; the rules across keys. */
#include "job_support.h"

static void the_good_job_is_silent(void **state)
{
    struct diags diags;
    struct job *job = read_text(*state, "job.ini", good_job, strlen(good_job), &diags);
    assert_string_equal(messages(*state, &diags), "");
    assert_int_equal(job->beam_count, 2);
    assert_int_equal(job->beams[0].end_[1].kind, END_BEAM);
    assert_int_equal(job->beams[0].end_[1].ref.index, 1);
    assert_true(job->beams[0].end_[1].at_length == 6 * LENGTH_FOOT + 2 * LENGTH_INCH);
    assert_int_equal(job->posts[0].stands_on.kind, KIND_BLOCK);
    assert_int_equal(job->joists[1].at.count, 3);
    assert_true(job->joists[1].at.item[2] == 39 * LENGTH_INCH);
    assert_null(job->beams[0].rows.at);
    assert_int_equal(job->beams[0].rows.count, 2);
    assert_int_equal(job->beams[0].live_limit.count, 360);
    assert_int_equal(job->beams[0].above.count, 2);
    assert_true(job->beams[1].above.nothing);
    assert_int_equal(job->shores[0].holds.item[1].index, 1);
}

static void sections(void **state)
{
    static const struct edit edits[] = {
        {"[shore A]", "[shoar A]",
         "job.ini:67:11: stop[K011]: 'shore A' for 'held by' is not in this job; it takes shore ID, with a section of "
         "its own\n"
         "job.ini:92:1: stop[K001]: unknown kind 'shoar'; did you mean 'shore'?\n"},
        {"[footing F1]\n", "[footing F1]\n[chimney]\n",
         "job.ini:77:1: stop[K004]: [footing F1] needs 'status': new or existing; write 'status = new'\n"
         "job.ini:78:1: stop[K001]: unknown kind 'chimney'; kinds are job, area, roof, joists, opening, beam, load, "
         "obstruction, post, block, footing, wall, remove, shore, work, buy, sub, bid, alternate\n"},
        {"tax = 0\n", "tax = 0\n[sub]\nwhat = roofer\nprice = 12\n",
         "job.ini:104:1: stop[K005]: [sub] needs an id; write [sub ID], such as [sub 1]\n"},
        {"[bid]\n", "[bidd]\n", "job.ini:98:1: stop[K001]: unknown kind 'bidd'; did you mean 'bid'?\n"},
        {"[bid]\n", "[bid one]\n",
         "job.ini: stop[K004]: no [bid] section; a job needs it: how cost becomes a price\n"
         "job.ini:98:1: stop[K005]: a job has one bid, without an id; write [bid]\n"},
        {"tax = 0\n", "tax = 0\n[sub a/c]\nwhat = roofer\nprice = 12\n",
         "job.ini:104:1: stop[K005]: id 'a/c' may hold letters a to z, digits, blanks and hyphens only\n"},
        {"tax = 0\n", "tax = 0\n[sub the one who comes on Mondays and Tuesdays]\nwhat = roofer\nprice = 12\n",
         "job.ini:104:1: stop[K005]: id 'the one who comes on Mondays and Tuesdays' is longer than 40 letters; shorten "
         "it\n"},
        {"tax = 0\n", "tax = 0\n[BEAM b1]\nmember = X\n",
         "job.ini:104:1: stop[K006]: [beam b1] stands twice; the first is on line 40, put the keys together\n"},
    };
    CHECK_EDITS(state, edits);
}

static void keys(void **state)
{
    static const struct edit edits[] = {
        {"braced = both", "braced = both\nbraced_ = one",
         "job.ini:73:1: stop[K003]: 'braced_' stands twice in [post P1]; the first is on line 72, keep one\n"},
        {"clear span = 9 ft\n", "claer span = 9 ft\n",
         "job.ini:53:1: stop[K002]: unknown key 'claer span' in [beam B2]; did you mean 'clear span'?\n"},
        {"member = LVL-9.5\n", "membre = LVL-9.5\n",
         "job.ini:48:1: stop[K002]: unknown key 'membre' in [beam B1]; did you mean 'member'?\n"},
        {"days = 5\n", "days = 5\nweather = fair\n",
         "job.ini:98:1: stop[K002]: unknown key 'weather' in [shore A]; 'sawbill keys shore' lists them\n"},
        {"name = Porch wall\n", "",
         "job.ini:1:1: stop[K004]: [job] needs 'name': name of the job, on every page; write 'name = Parlor wall'\n"},
        {"name = Porch wall\n", "name =\n",
         "job.ini:2:1: stop[K015]: 'name' is empty; write a value or take the line "
         "out\n"},
        {"pitch = 6/12\n", "PITCH = 6/12\nPitch = 5/12\n",
         "job.ini:20:1: stop[K003]: 'Pitch' stands twice in [roof]; the first is on line 19, keep one\n"},
    };
    CHECK_EDITS(state, edits);
}

static void values(void **state)
{
    static const struct edit edits[] = {
        {"date = 2026-02-03", "date = 02/03/2026",
         "job.ini:3:8: stop[K007]: '02/03/2026' for 'date' cannot be read: not a date: write year-month-day, as "
         "2025-03-09; write it like '2026-03-02'\n"},
        {"at = 7 in, 23 in, 39 in", "at = 7 in, 39 in, 23 in",
         "job.ini:36:6: stop[K007]: '23 in' for 'at' does not come after '39 in'; write the places in order\n"},
        {"plies = 3\nply", "plies = 2.5\nply",
         "job.ini:49:9: stop[K007]: '2.5' for 'plies' cannot be read: not a whole number; write it like '3'\n"},
        {"clear span = 10 ft 3 in", "clear span = 10",
         "job.ini:41:14: stop[K008]: '10' for 'clear span' needs a unit: 10 ft or 10 in\n"},
        {"clear span = 10 ft 3 in", "clear span = 10 1/2",
         "job.ini:41:14: stop[K008]: '10 1/2' for 'clear span' needs a unit: 10 1/2 ft or 10 1/2 in\n"},
        {"clear span = 10 ft 3 in", "clear span = 10 plf",
         "job.ini:41:14: stop[K008]: '10 plf' for 'clear span' is a load along a line (plf, kN/m); it takes ft, in, m, "
         "such as 12 ft 3 in\n"},
        {"dead = 12 psf", "dead = 12 plf",
         "job.ini:7:8: stop[K008]: '12 plf' for 'dead' is a load along a line (plf, kN/m); it takes psf, kPa, such as "
         "12 psf\n"},
        {"dead = 12 psf", "dead = 12", "job.ini:7:8: stop[K008]: '12' for 'dead' needs a unit: 12 psf or 12 kPa\n"},
        {"dead = 12 psf", "dead = 12 pfs",
         "job.ini:7:8: stop[K008]: '12 pfs' for 'dead' has an unknown unit; it takes psf, kPa, such as 12 psf\n"},
        {"dead = 400 lb", "dead = 400 plf",
         "job.ini:64:8: stop[K008]: '400 plf' for 'dead' is a load along a line (plf, kN/m); a load with 'at' takes "
         "lb\n"},
        {"overhead = 12 %", "overhead = 0.12",
         "job.ini:100:12: stop[K008]: '0.12' for 'overhead' needs a unit: 0.12 %\n"},
        {"plies = 3\nheight", "plies = 12\nheight",
         "job.ini:70:9: stop[K009]: '12' for 'plies' is not possible; it lies within 1 to 8\n"},
        {"thickness = 12 in", "thickness = 4 in",
         "job.ini:80:13: stop[K009]: '4 in' for 'thickness' is not possible; it lies within 6 in to 60 in\n"},
        {"dead = 12 psf", "dead = -12 psf",
         "job.ini:7:8: stop[K009]: '-12 psf' for 'dead' is less than nothing; loads and sizes are positive\n"},
        {"end 2 = beam B2 at 6 ft 2 in", "end 2 = beam B2 at 16 ft 2 in",
         "job.ini:47:9: stop[K009]: 'end 2' stands at 16' 2\", but [beam B2] is only 9' 0\" long\n"},
        {"pitch = 6/12", "pitch = 36/12",
         "job.ini:19:9: stop[K009]: '36/12' for 'pitch' is not possible; it lies within 0/12 to 24/12\n"},
        {"braced = both", "braced = bouth",
         "job.ini:72:10: stop[K010]: 'bouth' is no choice of 'braced'; did you mean 'both'?\n"},
        {"braced = both", "braced = sideways",
         "job.ini:72:10: stop[K010]: 'sideways' is no choice of 'braced'; it is one of both, one, free\n"},
        {"end 2 = pocket", "end 2 = pokcet",
         "job.ini:57:9: stop[K010]: 'pokcet' is no answer to 'end 2'; did you mean 'pocket'? else write post ID, beam "
         "ID at LENGTH, wall plate, pocket or hanger\n"},
        {"run = 12 ft", "run = 23 ft",
         "job.ini:29:7: note[K014]: '23 ft' for 'run' is out of the usual 4 ft to 20 ft; if it is right, write 'ack = "
         "K014 REASON'\n"},
        {"braces = none", "braces = 4 ft carrying 96",
         "job.ini:22:10: stop[K007]: '4 ft carrying 96' for 'braces' cannot be read: no unit: a bare number does not "
         "say of what; write it like '4 ft carrying 96 sq ft, 12 ft carrying 96 sq ft'\n"},
    };
    CHECK_EDITS(state, edits);
}

static void references(void **state)
{
    static const struct edit edits[] = {
        {"joists A = joists east", "joists A = joists eats",
         "job.ini:42:12: stop[K011]: 'joists eats' for 'joists A' is not in this job; did you mean 'joists east'?\n"},
        {"joists A = joists east", "joists A = east",
         "job.ini:42:12: stop[K011]: 'east' for 'joists A' is not in this job; did you mean 'joists east'?\n"},
        {"area = area roof", "area = joists east",
         "job.ini:21:8: stop[K011]: 'joists east' cannot stand in 'area'; it takes area ID\n"},
        {"stands on = block K1", "stands on = block K7",
         "job.ini:73:13: stop[K011]: 'block K7' for 'stands on' is not in this job; did you mean 'block K1'?\n"},
        {"stands on = block K1", "stands on = blok K1",
         "job.ini:73:13: stop[K011]: 'blok K1' for 'stands on' is not in this job; did you mean 'block K1'?\n"},
        {"stands on = block K1\n[block K1]\ndepth = 9-1/4 in\nstands on = footing F1\n[footing F1]\nstatus = new\nsize "
         "= "
         "30 in\nthickness = 12 in\n",
         "stands on = block of oak, seen\n", ""},
        {"end 2 = beam B2 at 6 ft 2 in", "end 2 = beam B2",
         "job.ini:47:9: stop[K017]: 'beam B2' for 'end 2' does not say where; write 'beam B2 at LENGTH', from end 1 of "
         "that beam\n"},
        {"end 2 = beam B2 at 6 ft 2 in", "end 2 = beam B2 at 6",
         "job.ini:47:9: stop[K008]: '6' for 'end 2' needs a unit: 6 ft or 6 in\n"},
        {"end 2 = pocket", "end 2 = beam B1 at 5 ft",
         "job.ini:57:9: stop[K012]: beam B1 on beam B2 on beam B1: nothing carries the ring; one of them must reach "
         "the "
         "ground\n"},
        {"stands on = footing F1\n[footing F1]\nstatus = new\nsize = 30 in\nthickness = 12 in\n",
         "stands on = beam B1\n",
         "job.ini:76:13: stop[K012]: beam B1 on post P1 on block K1 on beam B1: nothing carries the ring; one of them "
         "must reach the ground\n"},
        {"end 2 = pocket", "end 2 = beam B2 at 2 ft",
         "job.ini:57:9: stop[K012]: beam B2 on beam B2: nothing carries the ring; one of them must reach the ground\n"},
        {"stands on = footing F1\n[footing F1]\nstatus = new\nsize = 30 in\nthickness = 12 in\n",
         "stands on = wall W1\n", "job.ini:76:13: stop[K013]: [block K1] stands on wall W1, which comes out\n"},
    };
    CHECK_EDITS(state, edits);
}

static void rules_of_joists_and_beams(void **state)
{
    static const struct edit edits[] = {
        {"snow = 30 psf\nsnow is = on the ground\nsnow level = allowable\n", "",
         "job.ini:10:1: stop[K004]: [area roof] is a roof and needs 'snow'; write 'snow = 0 psf' where none falls\n"},
        {"snow = 30 psf\nsnow is = on the ground\nsnow level = allowable\n", "snow = 0\n", ""},
        {"first joist = 8 in\n", "first joist = 8 in\nat = 7 in\n",
         "job.ini:29:6: stop[K013]: [joists east] has 'at' and 'first joist'; keep the one that was measured\n"},
        {"first joist = 8 in\n", "",
         "job.ini:24:1: stop[K013]: [joists east] does not say where its joists are; write 'first joist' with "
         "'spacing', or 'at' with a list\n"},
        {"spacing = 16 in\nfirst", "first",
         "job.ini:27:15: stop[K017]: [joists east] needs 'spacing': where the next joist stands, and the width that "
         "each carries\n"},
        {"size = 2x8\nspacing = 16 in\nfirst", "spacing = 16 in\nfirst",
         "job.ini:24:1: stop[K004]: [joists east] needs 'size', or 'measured depth' and 'measured width': hangers must "
         "fit\n"},
        {"run = 12 ft\n", "run = 12 ft\nfrom = 6 ft\nto = 2 ft\n",
         "job.ini:31:6: stop[K013]: 'to' of [joists east], 2' 0\", is not beyond 'from', 6' 0\"\n"},
        {"run = 12 ft\n", "run = 12 ft\ntie strap = STRAP-16GA-36\n",
         "job.ini:30:13: stop[K013]: [joists east] has a 'tie strap', but 'ties the roof = no'\n"},
        {"member = LVL-9.5\n", "member = LVL-9.5\nchoose = yes\n",
         "job.ini:48:10: stop[K013]: [beam B1] has 'choose = yes' and a member; keep one of them\n"},
        {"member = LVL-9.5\nplies = 3\n", "",
         "job.ini:40:1: stop[K004]: [beam B1] needs 'member' and 'plies', or 'choose = yes'\n"},
        {"plies = 3\nply", "ply",
         "job.ini:40:1: stop[K004]: [beam B1] needs 'plies' beside 'member'; write 'plies = 1' for one piece\n"},
        {"member = DFL2-2X10\nplies = 2\n", "choose = yes\n",
         "job.ini:59:10: stop[K013]: [beam B2] is existing: write its 'member' and 'plies', nothing is chosen\n"},
        {"ply fasteners = NAIL-16D-COMMON\n", "",
         "job.ini:40:1: stop[K017]: [beam B1] needs 'ply fasteners': the catalog code of what holds its plies "
         "together\n"},
        {"bearing 2 = 3 in\n", "",
         "job.ini:57:9: stop[K017]: 'end 2' on a pocket needs 'bearing 2': its length on the support\n"},
        {"clear span = 9 ft\n", "clear span = 9 ft\nset = upset\n",
         "job.ini:54:7: stop[K017]: 'set = upset' needs 'above joists by': how far its top stands above them\n"},
        {"clear span = 9 ft\n", "clear span = 9 ft\nabove joists by = 3 in\n",
         "job.ini:54:19: stop[K013]: [beam B2] has 'above joists by', but is not 'set = upset'\n"},
        {"clear span = 9 ft\n", "clear span = 9 ft\nkickers every = 4 ft\nkickers of = SPF2-2X4\n",
         "job.ini:54:17: stop[K013]: [beam B2] has 'kickers every', but is not 'set = upset'\n"
         "job.ini:55:14: stop[K013]: [beam B2] has 'kickers of', but is not 'set = upset'\n"},
        {"clear span = 9 ft\n", "clear span = 9 ft\nset = upset\nabove joists by = 3 in\nkickers every = 4 ft\n",
         "job.ini:56:17: stop[K017]: 'kickers every' needs 'kickers of': the catalog code of their wood\n"},
        {"clear span = 9 ft\n", "clear span = 9 ft\nset = upset\nabove joists by = 3 in\nkickers of = SPF2-2X4\n",
         "job.ini:56:14: stop[K017]: 'kickers of' needs 'kickers every': how far they are apart\n"},
        {"clear span = 9 ft\n", "clear span = 9 ft\nset = dropped\ntop hanger nail = 5 in\n",
         "job.ini:55:19: stop[K013]: [beam B2] has 'top hanger nail', but nothing hangs on the face of a dropped "
         "beam\n"},
        {"clear span = 9 ft\n", "clear span = 9 ft\nheld 1 = blocks\nheld 2 of = DFL2-2X10\n",
         "job.ini:54:10: stop[K017]: 'held 1' needs 'held 1 of': the catalog code of what holds it\n"
         "job.ini:55:13: stop[K017]: 'held 2 of' needs 'held 2': blocks, straps or king studs\n"},
        {"clear span = 9 ft\n", "clear span = 9 ft\noff center 2 = 1 in\n",
         "job.ini:54:16: stop[K017]: 'off center 2' needs 'end 2' on a post\n"},
        {"clear span = 9 ft\n", "clear span = 9 ft\nheld 2 = king studs\nheld 2 of = SPF-STUD-2X4\n",
         "job.ini:54:10: stop[K017]: 'held 2 = king studs' needs 'end 2' on a post: they stand beside it\n"},
        {"clear span = 9 ft\n", "clear span = 9 ft\nroof cut pitch = 4/12\n",
         "job.ini:54:18: stop[K017]: 'roof cut pitch' needs 'roof cut heel': the height left\n"},
        {"clear span = 9 ft\n", "clear span = 9 ft\nroof cut heel = 4 in\n",
         "job.ini:54:17: stop[K017]: 'roof cut heel' needs 'roof cut pitch': the slope of the cut\n"},
        {"clear span = 9 ft\n", "clear span = 9 ft\nnotch 1 length = 4 in\n",
         "job.ini:54:18: stop[K017]: 'notch 1 length' needs 'notch 1': its depth\n"},
        {"clear span = 9 ft\n",
         "clear span = 9 ft\nroof cut pitch = 4/12\nroof cut heel = 4 in\nroof cut at = end 2\nnotch 1 = 1 in\nnotch 2 "
         "= 1 in\n",
         "job.ini:58:11: stop[K017]: end 2 has a notch and the roof cut: an engineer must size both\n"},
        {"clear span = 9 ft\n", "clear span = 9 ft\nspecified by = R. Ames, PE\n",
         "job.ini:54:16: stop[K017]: 'specified by' needs 'specified span': his beam is his only for the span that he "
         "drew\n"
         "job.ini:54:16: stop[K017]: 'specified by' needs 'sheet': where he drew it\n"},
        {"above = load post, wall W2", "above = nothing",
         "job.ini:44:9: stop[K013]: [load post] is on [beam B1], but 'above' does not name it\n"
         "job.ini:44:9: stop[K013]: [wall W2] is on [beam B1], but 'above' does not name it\n"},
        {"above = nothing", "above = wall W2",
         "job.ini:54:9: stop[K013]: 'above' names wall W2, but that wall is not on [beam B2]\n"},
    };
    CHECK_EDITS(state, edits);
}

static void rules_of_roofs_and_loads(void **state)
{
    static const struct edit edits[] = {
        {"braces = none\n", "braces = 4 ft carrying 96 sq ft\n",
         "job.ini:22:10: stop[K017]: 'braces' needs 'braces on': the beam that takes the wall's place\n"},
        {"area = area roof\nbraces = none\n", "braces = 4 ft carrying 96 sq ft\nbraces on = beam B1\n",
         "job.ini:21:10: stop[K017]: 'braces' needs 'area': the loads that the braces bring down\n"},
        {"pitch = 6/12", "pitch = 0/12",
         "job.ini:19:9: stop[K013]: a roof with a ridge board cannot be flat; the rafters lean on each other\n"},
        {"at = 4 ft\n", "at = 4 ft\nto = 5 ft\n",
         "job.ini:63:6: stop[K013]: [load post] has 'at' and 'from' or 'to'; a load stands in one point or is "
         "spread\n"},
        {"at = 4 ft\n", "",
         "job.ini:61:1: stop[K004]: [load post] needs 'at', or 'from' and 'to': its place on the beam\n"},
        {"at = 4 ft\ndead = 400 lb\nsnow = 900 lb\nsnow level = allowable\n", "from = 4 ft\ndead = 40 plf\n",
         "job.ini:63:8: stop[K004]: [load post] needs 'from' and 'to', both\n"},
        {"at = 4 ft\ndead = 400 lb\nsnow = 900 lb\nsnow level = allowable\n", "from = 4 ft\nto = 3 ft\ndead = 40 plf\n",
         "job.ini:64:6: stop[K013]: 'to' of [load post], 3' 0\", is not beyond 'from', 4' 0\"\n"},
        {"dead = 400 lb\n", "dead = 400 lb\narea = area loft\ncarries = 40 sq ft\n",
         "job.ini:64:8: stop[K013]: [load post] has loads of its own and an 'area'; keep one of them\n"},
        {"dead = 400 lb\nsnow = 900 lb\nsnow level = allowable\n", "",
         "job.ini:61:1: stop[K004]: [load post] weighs nothing; write 'dead', 'live', 'snow', or 'area' with "
         "'carries'\n"},
        {"dead = 400 lb\nsnow = 900 lb\nsnow level = allowable\n", "area = area loft\n",
         "job.ini:64:8: stop[K004]: [load post] needs 'area' and 'carries', both\n"},
        {"thickness = 12 in\n", "", "job.ini:77:1: stop[K017]: [footing F1] is new and needs 'thickness'\n"},
        {"size = 30 in\n", "",
         "job.ini:77:1: stop[K017]: [footing F1] is new and needs 'size': the side of its square\n"},
        {"weight = 8 psf\n", "",
         "job.ini:89:6: stop[K017]: [wall W2] is on a beam and needs 'weight' of its face, such as '8 psf'\n"},
        {"under = beam B1\n", "on = beam B1\nweight = 8 psf\n",
         "job.ini:44:9: stop[K013]: [wall W1] is on [beam B1], but 'above' does not name it\n"
         "job.ini:83:6: stop[K013]: [wall W1] comes out, so it is 'under' a beam, not 'on' it\n"},
        {"length = 11 ft\n", "", "job.ini:81:1: stop[K004]: [wall W1] comes out and needs 'length'\n"},
        {"weight = 8 psf\n", "weight = 8 psf\nunder = beam B2\n",
         "job.ini:92:9: stop[K013]: [wall W2] stays, so no beam takes its place; leave 'under' out\n"},
        {"stands on = slab on ground\n", "stands on = old floor\nbelow = joists parallel\nheld below = nothing\n",
         "job.ini:98:14: stop[K013]: [shore A] stands on joists that run parallel to it and is held by nothing below; "
         "write 'held below = shore' or 'crib'\n"},
        {"stands on = slab on ground\n", "stands on = old floor\nbelow = joists across\nheld below = crib\n",
         "job.ini:98:14: stop[K017]: [shore A] is held below and needs 'height below', such as '7 ft'\n"
         "job.ini:98:14: stop[K017]: [shore A] is held by a crib and needs 'crib timber', a code of members.csv\n"},
        {"[shore A]\nholds = joists east, joists west, wall W2\n",
         "[shore A]\nholds = joists east, joists west, wall W2\n[shore B]\nholds = nothing\nstuds = "
         "SPF-STUD-2X4\nheight = 7 "
         "ft\nstands on = slab\ndays = 3\n[shore C]\nholds = joists west\n",
         "job.ini:92:1: stop[K004]: [shore A] needs 'studs': catalog code of its studs; write 'studs = "
         "SPF-STUD-2X4'\n"
         "job.ini:92:1: stop[K004]: [shore A] needs 'height': from the floor to what the shore holds, plates "
         "included; write 'height = 7 ft 8 in'\n"
         "job.ini:92:1: stop[K004]: [shore A] needs 'days': how long it stands; up to 7 days count as construction "
         "load; write 'days = 5'\n"
         "job.ini:92:1: ask[Q009]: what does [shore A] stand on, and what is below that floor? write 'stands on' in "
         "words\n"
         "job.ini:95:9: stop[K013]: [shore B] holds nothing; name the joists, loads and beams, or take it out\n"},
    };
    CHECK_EDITS(state, edits);
}

static void rules_of_money(void **state)
{
    static const struct edit edits[] = {
        {"tax = 0\n", "tax = 0\n[buy permit]\nwhat = permit\n",
         "job.ini:104:1: stop[K004]: [buy permit] needs a 'price', or an 'item' of prices.csv\n"},
        {"tax = 0\n", "tax = 0\n[buy permit]\nwhat = permit\nprice = 10\nitem = PERMIT\n",
         "job.ini:106:9: stop[K013]: [buy permit] has a 'price' and an 'item' with its own; keep one of them\n"},
        {"tax = 0\n", "tax = 0\ndraws = half on signing\n",
         "job.ini:104:9: stop[K007]: 'half on signing' is no draw; write its share and when: '30 % on signing'\n"},
        {"tax = 0\n", "tax = 0\ndraws = 30 % on signing\ndraws = 60 % at the end\n",
         "job.ini:105:9: stop[K013]: the draws come to 90 %, not to 100 %\n"},
        {"tax = 0\n", "tax = 0\ndraws = 40 % on signing\ndraws = 60 % at the end\n", ""},
        {"method = compound\noverhead = 12 %", "method = margin\noverhead = 85 %",
         "job.ini:99:10: stop[K013]: overhead, contingency and profit on labor are 100 % of the price; nothing is left "
         "for the cost\n"
         "job.ini:100:12: note[K014]: '85 %' for 'overhead' is out of the usual 0 % to 60 %; if it is right, write "
         "'ack "
         "= K014 REASON'\n"},
        {"tax = 0\n", "tax = 0\nvalid for = 30\n",
         "job.ini:104:13: stop[K008]: '30' for 'valid for' needs a unit: 30 days\n"},
    };
    CHECK_EDITS(state, edits);
}

static void acknowledgements(void **state)
{
    static const struct edit edits[] = {
        {"name = Porch wall\n", "name = Porch wall\nack = too wide, I know\n",
         "job.ini:3:7: stop[K016]: 'too wide, I know' does not start with the code of a note; write 'ack = K014 "
         "REASON'\n"},
        {"name = Porch wall\n", "name = Porch wall\nack = Q004 the plumber said so\n",
         "job.ini:3:7: stop[K016]: Q004 (is it a bracing wall) cannot be acknowledged: it must be put right; only "
         "notes "
         "can\n"},
        {"name = Porch wall\n", "name = Porch wall\nack = K014\n",
         "job.ini:3:7: stop[K016]: K014 is acknowledged without a reason; write 'ack = K014 REASON'\n"},
        {"catalogs = catalogs\n[area loft]\ndead = 12 psf",
         "catalogs = catalogs\nack = K014 old plaster\n[area loft]\n"
         "dead = 34 psf",
         ""},
    };
    CHECK_EDITS(state, edits);
}

/* The note stays in the list, so that a report can print it. */
static void acknowledged_notes_are_kept(void **state)
{
    struct diags diags;
    char *text = edited(*state, "catalogs = catalogs\n[area loft]\ndead = 12 psf",
                        "catalogs = catalogs\nack = K014 old plaster\n[area loft]\ndead = 34 psf");
    struct job *job = read_text(*state, "job.ini", text, strlen(text), &diags);
    assert_int_equal(diags.count, 1);
    assert_true(diags.item[0].acknowledged);
    assert_int_equal(diag_count(&diags, DIAG_NOTE), 0);

    diag_add(&diags, DIAG_K014, NULL, "a later one");
    diag_add(&diags, DIAG_K013, NULL, "not to be acknowledged");
    job_acknowledge(job, &diags);
    assert_true(diags.item[1].acknowledged);
    assert_false(diags.item[2].acknowledged);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(the_good_job_is_silent, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(sections, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(keys, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(values, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(references, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(rules_of_joists_and_beams, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(rules_of_roofs_and_loads, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(rules_of_money, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(acknowledgements, support_setup, support_teardown),
        cmocka_unit_test_setup_teardown(acknowledged_notes_are_kept, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
