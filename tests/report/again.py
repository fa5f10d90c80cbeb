"""A price that could change the cut plan makes sheet Cuts say 'run again'; what cannot leaves it 'as planned'.

usage: again.py FOLDER WORKBOOK
Inputs of sheet Prices are changed, one at a time, and LibreOffice recalculates: all of the members that are cut, every
fourth of the others.  The samples buy from more than one supplier, so each price of a thing that is bought, delivery
and tax may lead to another set of suppliers, and that to other lumber.
"""
import pathlib
import sys

import openpyxl

from change import FIRST_ROW, KIND, VALUE, WHAT, recalculate_all

DECIDING = {"material", "cut charge", "shop stock", "delivery", "tax"}


def says(path):
    """{member: what the sheet says} of every plan."""
    sheet = openpyxl.load_workbook(path, data_only=True)["Cuts"]
    heads = {cell.value: cell.column - 1 for cell in sheet[FIRST_ROW - 1]}
    now = heads["At today's prices"]
    return {row[0]: row[now] for row in sheet.iter_rows(min_row=FIRST_ROW, values_only=True) if row[now]}


def main():
    folder, workbook = pathlib.Path(sys.argv[1]).resolve(), sys.argv[2]
    changed = folder / "again"
    changed.mkdir(parents=True, exist_ok=True)
    book = openpyxl.load_workbook(workbook)
    books, rows = [changed / "000.xlsx"], [None]
    book.save(books[0])
    members = {row[0].value for row in book["Cuts"].iter_rows(min_row=FIRST_ROW)}
    for number, row in enumerate(book["Prices"].iter_rows(min_row=FIRST_ROW)):
        cell = row[VALUE]
        if cell.value is None or cell.data_type == "f" or not (row[WHAT].value in members or number % 4 == 0):
            continue
        old, cell.value = cell.value, cell.value + 0.01
        books.append(changed / f"{len(books):03}.xlsx")
        rows.append((row[KIND].value, row[WHAT].value))
        book.save(books[-1])
        cell.value = old
    bad = again = 0
    for what, path in zip(rows, recalculate_all(folder, books)):
        want = "run again" if what and what[0] in DECIDING else "as planned"
        got = says(path)
        again += want == "run again"
        if not got or set(got.values()) != {want}:
            bad += 1
            print(f"    {what}: {got}, not '{want}'")
    print(f"{pathlib.Path(workbook).name}: {len(books)} changes, {again} of them decide, {bad} faults")
    sys.exit(1 if bad or again < 8 or again == len(books) else 0)


if __name__ == "__main__":
    main()
