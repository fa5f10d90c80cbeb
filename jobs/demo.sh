#!/bin/sh
# The main job on the sample, from nothing: installs what is missing, builds, bids, shows the bid.
# usage: sh jobs/demo.sh [JOB]
set -eu
cd "$(dirname "$0")/.."
. jobs/install.sh
job=${1:-jobs/parlor.ini}

install_packages $build_packages
mkdir -p build
cmake -S . -B build/demo -DSAWBILL_TESTS=OFF >build/demo.log 2>&1 && cmake --build build/demo -j"$(nproc)" >>build/demo.log 2>&1 ||
    { cat build/demo.log >&2; exit 1; }

name=$(basename "$job"); name=${name%.*}
status=0
build/demo/sawbill bid "$job" --client "jobs/$name-client.xlsx" || status=$?
[ "$status" -le 1 ] || exit "$status"
exit 0
