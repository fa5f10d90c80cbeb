"""A change typed into a workbook moves its totals as the price stage, run again on the same order, says.

usage: change.py each|kinds FOLDER REPRICE JOB WORKBOOK
Each input of sheet Prices is raised by 1 % (percentages by one point), one at a time or kind by kind; then hours, work,
a loss of the order; then all together.  LibreOffice, forced to recalculate, and report_reprice must agree to the cent on the price,
the direct cost and the totals of every class.
"""
import pathlib
import subprocess
import sys
from decimal import Decimal

import openpyxl

from recalc import PROFILE

FIRST_ROW = 5
KIND, WHAT, WHO, LENGTH, UNIT, PACK, VALUE = range(7)


def text(value):
    """A cell as reprice reads it."""
    if value is None:
        return ""
    return str(Decimal(repr(value)).normalize().to_eng_string()) if isinstance(value, float) else str(value)


def plain(number):
    return format(number.normalize(), "f")


def raised(cell, kind):
    """(value for the cell, value for reprice) of an input raised a little."""
    old = Decimal(repr(float(cell.value)))
    if "%" in cell.number_format:
        # A point of loss may stay within the packs that are bought anyway.
        new = old + (Decimal("19") if kind == "fastener loss" else Decimal("0.01"))
        return float(new), plain(new * 100) + " %"
    new = (old * Decimal("1.01")).quantize(Decimal("0.0001")) if old else Decimal("25")
    return float(new), plain(new)


class Change:
    def __init__(self, sheet, cell, value, line):
        self.sheet, self.cell, self.value, self.line = sheet, cell, value, line


def price_changes(book):
    sheet = book["Prices"]
    changes = []
    for row in sheet.iter_rows(min_row=FIRST_ROW):
        cell = row[VALUE]
        if cell.value is None or cell.data_type == "f":
            continue
        value, said = raised(cell, row[KIND].value)
        fields = [text(c.value) for c in row[:VALUE]] + [said]
        changes.append(Change("Prices", cell.coordinate, value, "\t".join(fields)))
    return changes


def column(sheet, head, row=FIRST_ROW - 1):
    for cell in sheet[row]:
        if cell.value == head:
            return cell.column
    sys.exit(f"change.py: no column {head} on {sheet.title}")


def labor_changes(book):
    """Hours of the first task, and of the first work of the job (which has them in the count)."""
    sheet = book["Labor"]
    count, each = column(sheet, "Count"), column(sheet, "Hours each")
    fills = {c: sheet.cell(FIRST_ROW, c).fill.fgColor.rgb for c in (count, each)}
    changes, kinds = [], set()
    for row in range(FIRST_ROW, sheet.max_row):
        what = sheet.cell(row, 1).value
        work = sheet.cell(row, each).fill.fgColor.rgb != fills[each]
        kind, cell = ("work hours", sheet.cell(row, count)) if work else ("hours each", sheet.cell(row, each))
        if kind in kinds or cell.value is None:
            continue
        kinds.add(kind)
        new = Decimal(repr(float(cell.value))) + Decimal("1.25")
        changes.append(Change("Labor", cell.coordinate, float(new), f"{kind}\t{what}\t\t\t\t\t{plain(new)}"))
    return changes


def loss_change(book):
    """The first line of the order without loss gets so much that more packs are needed; its item stands there once."""
    sheet = book["Order"]
    item, loss = column(sheet, "Item"), column(sheet, "Loss")
    items = [sheet.cell(row, item).value for row in range(FIRST_ROW, sheet.max_row + 1)]
    for row in range(FIRST_ROW, sheet.max_row + 1):
        cell = sheet.cell(row, loss)
        if cell.data_type == "n" and cell.value == 0 and items.count(sheet.cell(row, item).value) == 1:
            line = f"order loss\t{sheet.cell(row, item).value}\t\t\t\t\t1900 %"
            return [Change("Order", cell.coordinate, 19.0, line)]
    return []


def write_changed(book, target, changes):
    before = [(book[change.sheet][change.cell], book[change.sheet][change.cell].value) for change in changes]
    for change in changes:
        book[change.sheet][change.cell].value = change.value
    book.save(target)
    for cell, value in before:
        cell.value = value


def by_kind(changes):
    kinds = {}
    for change in changes:
        kinds.setdefault(change.line.split("\t")[0], []).append(change)
    return list(kinds.values())


def recalculate_all(folder, books):
    profile = folder / "profile"
    (profile / "user").mkdir(parents=True, exist_ok=True)
    (profile / "user" / "registrymodifications.xcu").write_text(PROFILE)
    out = folder / "recalculated"
    for book in books:
        (out / book.name).unlink(missing_ok=True)
    subprocess.run(["soffice", "--headless", f"-env:UserInstallation=file://{profile}", "--convert-to", "xlsx", "--outdir",
                    str(out)] + [str(book) for book in books],
                   check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, timeout=900)
    return [out / book.name for book in books]


def sheet_totals(path):
    """{name: cents} as the recalculated Recap shows them."""
    book = openpyxl.load_workbook(path, data_only=True, read_only=True)
    sheet = book["Recap"]
    table = list(sheet.iter_rows(values_only=True))

    def named(name):
        where, cell = book.defined_names[name].attr_text.replace("$", "").split("!")
        assert where.strip("'") == "Recap", where
        row, column = openpyxl.utils.cell.coordinate_to_tuple(cell)
        return table[row - 1][column - 1]

    totals = {"price": named("bid_price"), "direct": named("direct_cost")}
    rows = iter(table)
    for row in rows:
        if row[0] == "Class":
            break
    for row in rows:
        if row[0] == "All classes":
            break
        totals["direct of " + row[0]] = row[1]
        totals["price of " + row[0]] = row[8]
    return {name: round(value * 100) for name, value in totals.items()}


def repriced_totals(program, job, scenarios):
    lines = []
    for changes in scenarios:
        lines += [change.line for change in changes] + [""]
    done = subprocess.run([program, job], input="\n".join(lines) + "\n", text=True, capture_output=True, timeout=900)
    if done.returncode:
        sys.exit(f"change.py: {done.stderr}")
    result = []
    for block in done.stdout.strip("\n").split("\n\n"):
        pairs = [line.split("\t", 1) for line in block.split("\n")]
        result.append({name: round(Decimal(amount) * 100) for amount, name in pairs})
    return result


def main():
    how, folder, program, job, workbook = sys.argv[1], pathlib.Path(sys.argv[2]).resolve(), *sys.argv[3:6]
    changed = folder / "changed"
    changed.mkdir(parents=True, exist_ok=True)
    book = openpyxl.load_workbook(workbook)
    prices = price_changes(book)
    others = labor_changes(book) + loss_change(book)
    some = by_kind(prices) if how == "kinds" else [[change] for change in prices]
    scenarios = [[]] + some + [[change] for change in others] + [prices + others]
    books = []
    for number, changes in enumerate(scenarios):
        books.append(changed / f"{pathlib.Path(workbook).stem}-{number:03}.xlsx")
        write_changed(book, books[-1], changes)
    shown = [sheet_totals(path) for path in recalculate_all(folder, books)]
    wanted = repriced_totals(program, job, scenarios)
    assert len(shown) == len(wanted) == len(scenarios)
    bad = moved = 0
    for changes, got, want in zip(scenarios, shown, wanted):
        name = changes[0].line.replace("\t", " | ") if len(changes) == 1 else f"{len(changes)} changes"
        if got != want:
            bad += 1
            for key in sorted(set(got) | set(want)):
                if got.get(key) != want.get(key):
                    print(f"    {name}: {key}: sheet {got.get(key)}, price stage {want.get(key)} (cents)")
        # Each input must do something: a cell that moves nothing is a dead one.  Rounding alone may fall on the same.
        if changes and got == shown[0] and not (len(changes) == 1 and changes[0].line.startswith("rounding")):
            bad += 1
            print(f"    {name}: moves nothing")
        moved += got != shown[0]
    print(f"{pathlib.Path(workbook).name}: {len(scenarios)} changes, {moved} move the totals, {bad} faults")
    sys.exit(1 if bad or len(prices) < 20 or not others else 0)


if __name__ == "__main__":
    main()
