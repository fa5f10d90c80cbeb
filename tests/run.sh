#!/bin/sh
# All tests, from nothing: installs what is missing, builds, runs them.
# usage: sh tests/run.sh [--long]        --long adds what takes more than a few minutes
# BUILD_DIR and CMAKE_FLAGS may be set (the sanitizer run of .ci/run does).
set -eu
cd "$(dirname "$0")/.."
. jobs/install.sh
build=${BUILD_DIR:-build/tests}
label='-LE long'
[ "${1:-}" != --long ] || label=

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
