/* Every message code, in order of the stage that gives it: DIAG_ROW(code, class, may be acknowledged, title).
 * Included by diag.h (the enum) and src/base/diag.c (the table).  Codes are documented and never reused;
 * a row is never removed.  No include guard: it is a list. */

/* F: reading a file, of any kind */
DIAG_ROW(F001, STOP, false, "file cannot be read")
DIAG_ROW(F002, STOP, false, "not UTF-8")
DIAG_ROW(F003, STOP, false, "character that a text file may not hold")
DIAG_ROW(F004, STOP, false, "file or line too long")
DIAG_ROW(F005, STOP, false, "syntax of the file")

/* K: kinds, keys and values of the job file */
DIAG_ROW(K001, STOP, false, "unknown kind")
DIAG_ROW(K002, STOP, false, "unknown key")
DIAG_ROW(K003, STOP, false, "key given twice")
DIAG_ROW(K004, STOP, false, "required key missing")
DIAG_ROW(K005, STOP, false, "id missing, not wanted or not a good id")
DIAG_ROW(K006, STOP, false, "section given twice")
DIAG_ROW(K007, STOP, false, "value cannot be read")
DIAG_ROW(K008, STOP, false, "unit missing or of the wrong kind")
DIAG_ROW(K009, STOP, false, "value out of the possible range")
DIAG_ROW(K010, STOP, false, "word that is not one of the choices")
DIAG_ROW(K011, STOP, false, "reference to something that is not there")
DIAG_ROW(K012, STOP, false, "references go round in a circle")
DIAG_ROW(K013, STOP, false, "keys that contradict each other")
DIAG_ROW(K014, NOTE, true, "value out of the usual range of the trade")
DIAG_ROW(K015, STOP, false, "empty value")
DIAG_ROW(K016, STOP, false, "acknowledgement that does not fit")
DIAG_ROW(K017, STOP, false, "key that needs another key")
DIAG_ROW(K018, NOTE, true, "section that carries nothing")

/* Q: the questions that keep a house standing */
DIAG_ROW(Q001, ASK, false, "engineered joists are not cut without their repair drawing")
DIAG_ROW(Q002, ASK, false, "what stands above and braces on the wall")
DIAG_ROW(Q003, ASK, false, "do the joists tie the rafters")
DIAG_ROW(Q004, ASK, false, "is it a bracing wall")
DIAG_ROW(Q005, ASK, false, "what the snow load means")
DIAG_ROW(Q006, ASK, false, "how a beam end bears")
DIAG_ROW(Q007, ASK, false, "who holds the load while the wall is out")
DIAG_ROW(Q008, STOP, false, "the job differs from what the engineer specified")
DIAG_ROW(Q009, ASK, false, "where the load goes below")
DIAG_ROW(Q010, ASK, false, "ridge board under a flat roof")
DIAG_ROW(Q011, ASK, false, "what this program leaves to an engineer")
DIAG_ROW(Q012, ASK, false, "snow that drifts onto the roof")
DIAG_ROW(Q013, ASK, false, "how much wind lifts a roof")
DIAG_ROW(Q014, ASK, false, "what takes the place of a wall")
DIAG_ROW(Q015, STOP, false, "nothing holds the load while the beam goes in")

/* C: catalogs */
DIAG_ROW(C001, STOP, false, "catalog column missing, unknown or twice")
DIAG_ROW(C002, STOP, false, "catalog cell cannot be read")
DIAG_ROW(C003, STOP, false, "catalog code given twice")
DIAG_ROW(C004, STOP, false, "catalog reference to something that is not there")
DIAG_ROW(C005, STOP, false, "catalog row with too many or too few cells")
DIAG_ROW(C006, STOP, false, "something the job needs is not in the catalogs")
DIAG_ROW(C007, NOTE, true, "catalog price is old")
DIAG_ROW(C008, NOTE, true, "value not read in its source: unverified")

/* S: sizing */
DIAG_ROW(S001, STOP, false, "load that cannot be placed")
DIAG_ROW(S002, NOTE, false, "a check fails")
DIAG_ROW(S003, NOTE, false, "no member passes")
DIAG_ROW(S004, NOTE, true, "result outside what this program checks: engineer")
DIAG_ROW(S005, ASK, false, "cut or hung so that an engineer must say")
DIAG_ROW(S006, STOP, false, "opening that does not fit its joists")
DIAG_ROW(S007, ASK, false, "beyond what is sized without an engineer")
DIAG_ROW(S008, ASK, false, "what keeps a beam end from rolling over")
DIAG_ROW(S009, STOP, false, "support that cannot be placed")
DIAG_ROW(S010, ASK, false, "wood that has no values for how it serves")
DIAG_ROW(S011, ASK, false, "post loaded off its center")
DIAG_ROW(S012, NOTE, true, "connector in treated wood without a known coating")

/* T: takeoff and cutting */
DIAG_ROW(T001, STOP, false, "piece longer than any stock")
DIAG_ROW(T002, NOTE, true, "nothing counted")
DIAG_ROW(T003, NOTE, true, "heavier than the crew lifts")
DIAG_ROW(T004, ASK, false, "does not go in as measured")
DIAG_ROW(T005, STOP, false, "order of work that does not fit the work")
DIAG_ROW(T006, ASK, false, "ply fasteners do not clear the hangers")
DIAG_ROW(T007, STOP, false, "joists cut too short for their hangers")
DIAG_ROW(T008, ASK, false, "what is usually forgotten is left blank")
DIAG_ROW(T009, STOP, false, "answer to what is usually forgotten that does not fit")
DIAG_ROW(T010, ASK, false, "hangers that overlap on a face of a beam")
DIAG_ROW(T011, NOTE, true, "beam wider than the wall in line with it")

/* P: prices */
DIAG_ROW(P001, STOP, false, "no price for something the job needs")
DIAG_ROW(P002, STOP, false, "sum too large")
DIAG_ROW(P003, STOP, false, "markup rates that leave nothing")
DIAG_ROW(P004, NOTE, true, "order below the least order of its supplier")
DIAG_ROW(P005, NOTE, true, "bought for nothing")

/* W: writing */
DIAG_ROW(W001, STOP, false, "file cannot be written")
DIAG_ROW(W002, NOTE, false, "file changed by hand since it was written: kept")
