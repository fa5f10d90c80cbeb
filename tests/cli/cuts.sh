#!/bin/sh
# Bare lists: each folder of tests/data/cuts holds pieces.csv, stock.csv, the options (args), and what `sawbill cuts` must
# print (want.out where it is kept, want.err), with its exit status.  What is planned must pass the checker of
# certificates, which shares nothing with the program.
# usage: sh cuts.sh PROGRAM FOLDER-OF-CASES CHECKER PYTHON
set -u
program=$1 cases=$2 checker=$3 python=$4
work=$(mktemp -d) || exit 1
trap 'rm -rf "$work"' EXIT
ran=0 failed=0
PYTHONDONTWRITEBYTECODE=1
export PYTHONDONTWRITEBYTECODE

fail() { echo "$name: $1"; failed=$((failed + 1)); }
for case in "$cases"/*/; do
    name=$(basename "$case")
    ran=$((ran + 1))
    rm -rf "$work/case"
    cp -r "$case" "$work/case"
    cd "$work/case" || exit 1
    args=$(cat args)
    # shellcheck disable=SC2086 # the options are words
    "$program" cuts pieces.csv --stock stock.csv $args --certificate ../certificate.json >../out 2>../err
    status=$?
    [ "$status" = "$(cat status)" ] || fail "exit status $status, not $(cat status)"
    diff -u want.err ../err || fail 'messages differ'
    if [ "$status" = 0 ]; then
        [ ! -e want.out ] || diff -u want.out ../out || fail 'the plan differs'
        "$python" "$checker" ../certificate.json >../checked || { cat ../checked; fail 'the certificate does not hold'; }
        # The checker sees a plan that costs too much, a bound that is too high, and a value that is too great.
        for change in cost bound value; do
            "$python" - "$change" <<'PY'
import json, sys
book = json.load(open("../certificate.json"))
problem = book["problems"][0]
if sys.argv[1] == "cost":
    problem["cost"] += 1
elif sys.argv[1] == "bound":
    problem["proofs"][0]["bound"] += 1
else:
    for value in problem["proofs"][0]["values"]:
        value["value"] *= 2
json.dump(book, open("../changed.json", "w"))
PY
            if "$python" "$checker" ../changed.json >/dev/null 2>&1; then fail "the checker overlooks a changed $change"; fi
        done
    else
        [ ! -s ../out ] || fail 'printed a plan'
        [ ! -e ../certificate.json ] || fail 'wrote a certificate'
    fi
    rm -f ../certificate.json
    # shellcheck disable=SC2086
    "$program" cuts pieces.csv --stock stock.csv $args --json >../json 2>/dev/null
    "$python" - "$status" <<'PY' || fail 'the JSON object does not fit'
import json, sys
book, status = json.load(open("../json")), sys.argv[1]
assert book["format"] == "sawbill 1"
assert (status != "0") == any(m["class"] == "stop" for m in book["messages"]), book["messages"]
cuts = book.get("cuts")
if cuts is None:
    assert status == "3"
elif status == "0":
    cents = lambda text: round(float(text) * 10000)
    assert cuts["verdict"] in ("proved optimal", "best found")
    assert cents(cuts["cost"]) == sum(cents(s["cost"]) for s in cuts["sticks"]) == sum(cents(m["cost"]) for m in cuts["members"])
    assert (cents(cuts["bound"]) == cents(cuts["cost"])) == (cuts["verdict"] == "proved optimal")
    for m in cuts["members"]:
        shares = ("net", "kerf_lost", "trim", "kept", "waste")
        assert sum(cents(m[s]) for s in shares) == cents(m["cost"])
        assert abs(sum(m[s + "_in"] for s in shares) - m["bought_in"]) < 1e-6
else:
    assert cuts["verdict"] == "infeasible" and cuts["cost"] is None
PY
done
echo "$((ran - failed)) passed, $failed failed"
[ "$failed" = 0 ] && [ "$ran" -gt 0 ]
