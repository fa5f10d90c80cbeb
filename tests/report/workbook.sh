#!/bin/sh
# The workbooks of the sample jobs, written by the program.
# usage: workbook.sh files|recalc|change|again PROGRAM REPRICE VARIANTS SOURCE_DIR FOLDER PYTHON
set -eu
what=$1 program=$2 reprice=$3 variants=$4 source=$5 folder=$6 python=$7
PYTHONDONTWRITEBYTECODE=1
export PYTHONDONTWRITEBYTECODE
rm -rf "$folder"
mkdir -p "$folder"
fail() {
    echo "workbook.sh: $1" >&2
    exit 1
}

# bid JOB FILE [OPTION...]: the exit status may say that a check fails or a question is open, nothing worse.
bid() {
    job=$1 file=$2
    shift 2
    status=0
    "$program" bid "$job" -o "$file" "$@" >"$folder/stdout" 2>"$folder/stderr" || status=$?
    [ $status -le 1 ] || { cat "$folder/stderr" >&2; fail "bid $job: exit $status"; }
    ! grep -E '^\[(WARNING|ERROR)\]' "$folder/stderr" || fail "the library complained about $job"
    [ -s "$file" ] || fail "no $file"
}

samples() {
    for job in "$source"/jobs/*.ini; do
        name=$(basename "$job" .ini)
        bid "$job" "$folder/$name.xlsx" --client "$folder/$name-client.xlsx"
    done
}

# Both spellings give the same bytes, and so does the same run again.
same_bytes() {
    mkdir "$folder/again" "$folder/json"
    for job in "$source"/jobs/*.ini; do
        name=$(basename "$job" .ini)
        bid "$source/jobs/$name.json" "$folder/json/$name.xlsx" --client "$folder/json/$name-client.xlsx"
        same "$name" json
    done
    bid "$source/jobs/parlor.ini" "$folder/again/parlor.xlsx" --client "$folder/again/parlor-client.xlsx"
    same parlor again
}

same() {
    for file in "$1.xlsx" "$1-client.xlsx"; do
        cmp "$folder/$file" "$folder/$2/$file" || fail "$file differs from the one in $2"
    done
}

# Files may not grow beyond a few blocks, as on a full disk: no file is left, nor is the good one of before touched.
# Twice: where the file itself does not fit, and where only the library's own temporary files would.
full_disk() {
    job=$source/jobs/parlor.ini
    mkdir "$folder/full"
    bid "$job" "$folder/full/bid.xlsx"
    cp "$folder/full/bid.xlsx" "$folder/kept.xlsx"
    for blocks in 1 40 100; do
        status=0
        (
            trap '' XFSZ
            ulimit -f $blocks
            "$program" bid "$job" -o "$folder/full/bid.xlsx" >/dev/null 2>&1
        ) || status=$?
        [ $status -eq 4 ] || [ $status -eq 0 ] || fail "full disk at $blocks blocks: exit $status"
        [ $blocks -gt 8 ] || [ $status -eq 4 ] || fail "full disk at $blocks blocks went unnoticed"
        cmp "$folder/kept.xlsx" "$folder/full/bid.xlsx" || fail "full disk at $blocks blocks: the file changed"
        [ "$(ls -A "$folder/full")" = bid.xlsx ] || fail "full disk at $blocks blocks left a file behind"
    done
}

case $what in
files)
    samples
    same_bytes
    "$python" "$source/tests/report/client.py" "$program" "$source" "$folder"
    full_disk
    ;;
recalc)
    samples
    mkdir "$folder/variants"
    "$variants" "$folder/variants" >"$folder/names"
    set -- "$folder"/variants/*.xlsx
    for job in "$source"/jobs/*.ini; do
        set -- "$@" "$folder/$(basename "$job" .ini).xlsx"
    done
    "$python" "$source/tests/report/recalc.py" "$folder/office" "$@"
    ;;
change)
    samples
    for job in "$source"/jobs/*.ini; do
        name=$(basename "$job" .ini) how=kinds
        [ "$name" != parlor ] || how=each
        "$python" "$source/tests/report/change.py" $how "$folder/office" "$reprice" "$job" "$folder/$name.xlsx"
    done
    ;;
again)
    bid "$source/jobs/parlor.ini" "$folder/parlor.xlsx"
    "$python" "$source/tests/report/again.py" "$folder/office" "$folder/parlor.xlsx"
    ;;
*)
    fail "unknown test $what"
    ;;
esac
