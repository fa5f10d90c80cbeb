#!/usr/bin/python3
"""One value of a sample job at a time is made wrong, and `sawbill check` must still answer well.

usage: mutate.py PROGRAM SOURCE-FOLDER [EVERY]     EVERY: take each EVERY-th change only (for slow builds)

Every key of jobs/*.ini is emptied, made zero, huge, negative, of another unit, misspelt, doubled, left out (where a key
comes again, only what matters for each place); every section is left out, and given another name.  The list is the same on each run.  A change fails when the program crashes or reports an
internal failure, takes over 20 seconds, prints a number that is none, stops without a message that says where, or leaves a
file behind.
"""

import concurrent.futures
import os
import re
import shutil
import subprocess
import sys
import tempfile

SECONDS = 20
WORST = 4  # exit status: a file that cannot be read; 5 is an internal failure

# What stands for a value, whatever it was.
VALUES = [
    "", "0", "-1", "1", "99999999999999999999", "0.0001", "nan", "inf", "1e308", "=1+1", "zzz", "a" * 300, "\u00e9\U0001f528",
    "0 ft", "1/64 in", "-3 ft", "1 ft", "7 ft", "59 ft", "1000000 ft", "12 in 12 ft", "1/0 in", "3 psf", "0 psf", "399 psf",
    "$0", "$1", "-$5", "$99999999", "$1e9", "0 %", "99 %", "100 %", "-5 %", "1000 %", "2000-01-01", "2026-13-40",
    "yes", "no", "unknown", "none", "nothing", "%s%n", "'", "a, b, c", "beam parlor", "joists hall", "post P1", "1, 2, 3",
]

NO_NUMBER = re.compile(r"(?<![\w'])-?(nan|inf(inity)?)(?![\w'])|\(null\)", re.IGNORECASE)
PLACE = r"[^:]+:\d+:\d+: "
NOWHERE = r"[^:]+: stop\[K004\]: no \["  # a section that is missing stands on no line
STOP = re.compile(rf"^({PLACE}stop\[[A-Z]\d{{3}}\]: \S|{NOWHERE})", re.MULTILINE)
WITHOUT_PLACE = re.compile(rf"^(?!{PLACE}|{NOWHERE}|sawbill: ).+$", re.MULTILINE)


def swapped(value):
    """The same number with another unit."""
    for unit, others in (("in", ("ft", "psf", "%")), ("ft", ("in", "lb")), ("psf", ("plf", "ft")), ("%", ("in", "$"))):
        if value.endswith(" " + unit):
            return [value[: -len(unit)] + other for other in others] + [value[: -len(unit) - 1]]
    return []


def changes_of_line(line, again):
    key, _, value = (part.strip() for part in line.partition("="))
    others = ["", "0", "nothing"] if again else VALUES + swapped(value) + [value[:-1], value + "x", value + ", " + value]
    for other in others:
        if other != value:
            yield f"{key} = {other}", [f"{key} = {other}"]
    yield f"{key} left out", []
    yield f"{key} twice", [line, line]
    yield f"{key} misspelt", [f"{key[1:]}{key[0]} = {value}"]


def section_end(lines, start):
    end = start + 1
    while end < len(lines) and not lines[end].startswith("["):
        end += 1
    return end


def changes(lines, seen):
    """(what, lines of the changed job) in the order of the file; seen: kinds and keys that have had every value."""
    kind = ""
    for i, line in enumerate(lines):
        if line.startswith("["):
            kind = line.strip("[]").split()[0]
            end = section_end(lines, i)
            yield f"{line} left out", lines[:i] + lines[end:]
            yield f"{line} twice", lines[:end] + lines[i:]
            yield f"{line} of another id", lines[:i] + [line[:-1] + "x]"] + lines[i + 1:]
            yield f"{line} empty", lines[: i + 1] + lines[end:]
        elif "=" in line and not line.startswith("#"):
            name = (kind, line.partition("=")[0].strip())
            for what, instead in changes_of_line(line, name in seen):
                yield f"line {i + 1}: {what}", lines[:i] + instead + lines[i + 1:]
            seen.add(name)


def faults(folder, written, status, out, err):
    if status < 0 or status > WORST:
        yield f"exit status {status}"
    found = NO_NUMBER.search(out + err)
    if found and not NO_NUMBER.search(written):  # a name may be 'nan'; it is printed as written
        yield f"'{found.group()}' in what is printed"
    if status == 3 and not STOP.search(err):
        yield "a stop without a message"
    unplaced = WITHOUT_PLACE.search(err)
    if unplaced:
        yield f"a message without a place: {unplaced.group()}"
    said = err.splitlines()
    if len(set(said)) != len(said):
        yield "a message given twice"
    if os.listdir(folder) != ["job.ini"]:
        yield f"left behind: {os.listdir(folder)}"


def try_change(program, work, number, lines):
    """The faults of one run, as text."""
    folder = os.path.join(work, f"job-{number}")
    os.mkdir(folder)
    with open(os.path.join(folder, "job.ini"), "w", encoding="utf-8") as job:
        job.write("\n".join(lines) + "\n")
    try:
        run = subprocess.run([program, "check", "job.ini"], cwd=folder, capture_output=True, timeout=SECONDS, check=False)
        out, err = run.stdout.decode(errors="replace"), run.stderr.decode(errors="replace")
        found = list(faults(folder, "\n".join(lines), run.returncode, out, err))
        if found:
            found.append(err[-3000:])
    except subprocess.TimeoutExpired:
        found = [f"takes over {SECONDS} seconds"]
    shutil.rmtree(folder)
    return found


def main(program, source, every=1):
    program, failed, ran = os.path.abspath(program), 0, 0
    with tempfile.TemporaryDirectory() as work, concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        shutil.copytree(os.path.join(source, "catalogs"), os.path.join(work, "catalogs"))
        runs, seen = [], set()
        for name in sorted(os.listdir(os.path.join(source, "jobs"))):
            if not name.endswith(".ini"):
                continue
            with open(os.path.join(source, "jobs", name), encoding="utf-8") as job:
                lines = job.read().splitlines()
            for what, changed in list(changes(lines, seen))[::every]:
                ran += 1
                runs.append((f"{name}, {what}", pool.submit(try_change, program, work, ran, changed)))
        for what, run in runs:
            if run.result():
                failed += 1
                print(f"{what[:120]}: " + "; ".join(run.result()), flush=True)
        if os.listdir(work) != ["catalogs"]:
            failed += 1
            print(f"left behind: {os.listdir(work)}")
    print(f"{ran - failed} passed, {failed} failed")
    return 1 if failed or not ran else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], sys.argv[2], *map(int, sys.argv[3:])))
