#!/bin/sh
# All tests, from nothing: installs what is missing, builds, runs them.
# usage: sh tests/run.sh [--long] [--published DIR]
#   --long           adds what takes more than a few minutes
#   --published DIR  runs the published values of a folder of your own, too (tests/data/published/README.md)
# BUILD_DIR and CMAKE_FLAGS may be set (the sanitizer run of .ci/run does).
set -eu
published=
label='-LE long'
while [ $# -gt 0 ]; do
    case $1 in
    --long) label= ;;
    --published)
        [ -d "${2:-}" ] || { echo 'usage: sh tests/run.sh [--long] [--published DIR]' >&2; exit 2; }
        published=$(cd "$2" && pwd)
        shift
        ;;
    *) echo 'usage: sh tests/run.sh [--long] [--published DIR]' >&2; exit 2 ;;
    esac
    shift
done
cd "$(dirname "$0")/.."
. jobs/install.sh
build=${BUILD_DIR:-build/tests}

install_packages $build_packages g++ libcmocka-dev libreoffice-calc python3 python3-openpyxl poppler-utils libxml2-utils \
    unzip valgrind locales fonts-dejavu-core

# A locale with a decimal comma, for the tests that run under one; private to the build folder.
mkdir -p "$build/locale"
[ -e "$build/locale/de_DE.UTF-8" ] || localedef --no-archive -i de_DE -f UTF-8 "$build/locale/de_DE.UTF-8"
LOCPATH=$PWD/$build/locale
export LOCPATH

cmake -S . -B "$build" ${CMAKE_FLAGS:-} >"$build/build.log" 2>&1 && cmake --build "$build" -j"$(nproc)" >>"$build/build.log" 2>&1 ||
    { cat "$build/build.log" >&2; exit 1; }
ctest --test-dir "$build" -j"$(nproc)" --output-on-failure $label

# What the published values say, also when all is well: those shipped, or all of the folder given.
"$build"/tests/published_values "${published:-tests/data/published}" .
