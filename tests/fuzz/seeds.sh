#!/bin/sh
# seeds.sh FOLDER: starting inputs for the fuzz targets, from the sample jobs and catalogs.
set -eu
[ $# -eq 1 ] || { echo "usage: seeds.sh FOLDER" >&2; exit 2; }
root=$(cd "$(dirname "$0")/../.." && pwd)
mkdir -p "$1/values" "$1/job" "$1/catalog"

n=0
while IFS= read -r text; do
    n=$((n + 1))
    printf '%s' "$text" >"$1/values/$n"
done <<'END'
14' 6-1/2"
14'-6 1/2"
14 ft 6.5 in
14.54 ft
4430 mm
14′ 6½″
$1,234.50
8.25 %
0.35
40 psf
1,250 lb
2025-03-09
clear span
END

for file in "$root"/jobs/*.ini; do
    { printf 'I'; cat "$file"; } >"$1/job/$(basename "$file")"
done
for file in "$root"/jobs/*.json; do
    { printf 'J'; cat "$file"; } >"$1/job/$(basename "$file")"
done
# The letters A to J cover every table, whatever their order.
for file in "$root"/catalogs/*.csv; do
    for first in A B C D E F G H I J; do
        { printf '%s' "$first"; cat "$file"; } >"$1/catalog/$first-$(basename "$file")"
    done
done
