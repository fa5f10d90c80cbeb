#!/bin/sh
# What compilers and analysers do not see: banned functions, the word stderr below the program, changing variables at file scope.
set -eu
cd "$(dirname "$0")/.."
bad=0
complain() { echo "lint: $1"; echo "$2" | sed 's/^/    /'; bad=1; }

found=$(git grep -nE '\b(strcpy|strcat|sprintf|vsprintf|strtok|atoi|atof|gets|setlocale)\(' -- 'src/*.c' 'src/*.h' || true)
[ -z "$found" ] || complain 'a banned function' "$found"
found=$(git grep -nwE 'stderr|getenv|time|clock|rand' -- 'src/*.c' 'src/*.h' ':!src/cli' | grep -vE '^[^:]+:[0-9]+: *(/?\*|//)' | grep -E 'stderr|(getenv|time|clock|rand)\(' || true)
[ -z "$found" ] || complain 'only src/cli writes to stderr or asks the environment or a clock' "$found"
# The core touches no file and prints nothing: jobs come in as text, catalogs are read by src/catalog, results written by src/report.
io='\b(FILE|stdin|stdout)\b|\b(v?printf|v?fprintf|v?dprintf|v?f?scanf|perror|puts|putchar|remove|rename|tmpfile|system|popen|opendir|open|openat|creat|read|write|unlink|mkdir|f(open|dopen|reopen|close|read|write|puts|putc|gets|getc|flush|seek))\('
found=$(git grep -nE "$io" -- src ':!src/cli' ':!src/catalog' ':!src/report' | grep -vE '^[^:]+:[0-9]+: *(/?\*|//)' || true)
[ -z "$found" ] || complain 'only src/cli, src/catalog and src/report open files or print' "$found"
found=$(git grep -nE '^(static )?(struct [a-z_]+|int|long|size_t|double|bool|char|unsigned)[ *]+[a-z_]+(\[[^]]*\])*( =.*)?;' -- 'src/*.c' | grep -v const || true)
[ -z "$found" ] || complain 'a variable at file scope that may change' "$found"
found=$(git grep -nwE '[T]ODO|[F]IXME|[X]XX|[H]ACK' -- src include tests ':!tests/lint.sh' || true)
[ -z "$found" ] || complain 'unfinished' "$found"
exit $bad
