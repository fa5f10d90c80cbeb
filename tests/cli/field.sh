#!/bin/sh
# The crew's sheets: each folder of tests/data/field holds job.ini, its catalogs, and what `sawbill field` must print
# (want.out, exact).  Two runs print the same bytes, and neither the text nor the JSON object has money in it.
# usage: sh field.sh PROGRAM FOLDER-OF-CASES PYTHON
set -u
program=$1 cases=$2 python=$3
work=$(mktemp -d) || exit 1
trap 'rm -rf "$work"' EXIT
ran=0 failed=0

fail() { echo "$name: $1"; failed=$((failed + 1)); }
for case in "$cases"/*/; do
    name=$(basename "$case")
    ran=$((ran + 1))
    "$program" field -q --color never "${case}job.ini" -o "$work/quiet" 2>"$work/err" || fail "quiet: exit status $?"
    [ ! -e "$work/quiet" ] || fail 'quiet: printed tables'
    "$program" field "${case}job.ini" >"$work/out" 2>"$work/err" || fail "exit status $?"
    diff -u "${case}want.out" "$work/out" || fail 'the sheets differ'
    "$program" field "${case}job.ini" -o "$work/again" 2>/dev/null
    cmp -s "$work/out" "$work/again" || fail 'two runs differ'
    ! grep -q '\$' "$work/out" || fail 'money in the text'
    "$program" field --json "${case}job.ini" >"$work/json" 2>/dev/null
    "$program" field --json "${case}job.ini" 2>/dev/null | cmp -s - "$work/json" || fail 'two JSON objects differ'
    "$python" - "$work/json" <<'PY' || fail 'the JSON object does not fit'
import json, sys
text = open(sys.argv[1]).read()
book = json.loads(text)
assert "$" not in text and '"price"' not in text and '"cost"' not in text
assert book["format"] == "sawbill field 1" and book["sheets"][-1]["sheet"] == "job"
for sheet in book["sheets"][:-1]:
    assert [part["part"] for part in sheet["parts"]] == \
        "stop plan shores joists plies posts marks hardware raise lower finish".split()
    for part in sheet["parts"]:
        for item in part["items"]:
            assert item["is"] in ("say", "tick", "stop", "table")
            for row in item.get("rows", []):
                marks = row.get("marks_in")
                assert marks is None or marks == sorted(marks) and len(marks) == len(row["marks_text"])
PY
done
echo "$((ran - failed)) passed, $failed failed"
[ "$failed" = 0 ] && [ "$ran" -gt 0 ]
