#!/bin/sh
# Golden cases: each folder of tests/data/bad holds job.ini or job.json (and what it needs), the messages that `sawbill bid`
# must print (want.err, exact) and its exit status (status, one number).  After a stop nothing else may be printed or left
# behind.  A case that ends without a stop needs catalogs: the shipped ones are put beside it, unless it has its own.
# usage: sh golden.sh PROGRAM FOLDER-OF-CASES CATALOGS
set -u
program=$1 cases=$2 catalogs=$3
work=$(mktemp -d) || exit 1
trap 'rm -rf "$work"' EXIT
ran=0 failed=0

for case in "$cases"/*/; do
    name=$(basename "$case")
    rm -rf "$work/case"
    cp -r "$case" "$work/case"
    [ "$(cat "$case/status")" -ge 3 ] || [ -e "$case/catalogs" ] || cp -r "$catalogs" "$work/case/catalogs"
    for job in job.ini job.json; do
        [ -e "$work/case/$job" ] || continue
        ran=$((ran + 1))
        (cd "$work/case" && ls -R . >../before && "$program" bid "$job" >../out 2>../err; echo $? >../status; ls -R . >../after)
        want=$work/case/want.err
        [ ! -e "$work/case/want.$job.err" ] || want=$work/case/want.$job.err
        if ! diff -u "$want" "$work/err" >"$work/diff"; then
            echo "$name/$job: messages differ"; cat "$work/diff"; failed=$((failed + 1))
        elif [ "$(cat "$work/status")" != "$(cat "$work/case/status")" ]; then
            echo "$name/$job: exit status $(cat "$work/status"), not $(cat "$work/case/status")"; failed=$((failed + 1))
        elif [ -s "$work/out" ] && [ "$(cat "$work/case/status")" -ge 3 ]; then
            echo "$name/$job: printed a result"; failed=$((failed + 1))
        elif ! cmp -s "$work/before" "$work/after" && [ "$(cat "$work/case/status")" -ge 3 ]; then
            echo "$name/$job: left a file"; failed=$((failed + 1))
        fi
    done
done
echo "$((ran - failed)) passed, $failed failed"
[ "$failed" = 0 ] && [ "$ran" -gt 0 ]
