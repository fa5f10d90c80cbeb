#!/bin/sh
# One bid under valgrind: no wrong access, nothing uninitialised, nothing left allocated.
# usage: sh valgrind.sh PROGRAM SOURCE-FOLDER
set -eu
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cp -r "$2/jobs" "$2/catalogs" "$work"
cd "$work/jobs"
valgrind -q --leak-check=full --show-leak-kinds=all --errors-for-leak-kinds=all --error-exitcode=99 \
    "$1" bid parlor.ini -o bid.xlsx --client client.xlsx >"$work/out" 2>"$work/err" || { cat "$work/err"; exit 1; }
if grep -q '^==' "$work/err"; then cat "$work/err"; exit 1; fi
[ -s bid.xlsx ] && [ -s client.xlsx ]
