"""Every value stored in a workbook equals what LibreOffice, forced to recalculate, works out from its formulas.

usage: recalc.py FOLDER WORKBOOK...
FOLDER is for the recalculated copies and LibreOffice's own profile; nothing outside it is touched.
"""
import os
import pathlib
import subprocess
import sys
import zipfile
import xml.etree.ElementTree as ET

import openpyxl

# OOXMLRecalcMode 0: always recalculate when a file is loaded.
PROFILE = """<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load">
<prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>
"""


def recalculate(folder, book):
    """The path of a recalculated copy of the workbook."""
    profile = pathlib.Path(folder).resolve() / "profile"
    (profile / "user").mkdir(parents=True, exist_ok=True)
    settings = profile / "user" / "registrymodifications.xcu"
    if not settings.exists():
        settings.write_text(PROFILE)
    out = pathlib.Path(folder).resolve() / "recalculated"
    copy = out / pathlib.Path(book).name
    copy.unlink(missing_ok=True)
    command = ["soffice", "--headless", f"-env:UserInstallation=file://{profile}", "--convert-to", "xlsx",
               "--outdir", str(out), str(book)]
    subprocess.run(command, check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, timeout=180)
    if not copy.exists():  # it exits 0 when it failed, too
        sys.exit(f"recalc.py: LibreOffice wrote nothing for {book}")
    return copy


def check_whole(book):
    """Each XML part of the package parses to its end."""
    with zipfile.ZipFile(book) as package:
        assert package.testzip() is None, book
        for name in package.namelist():
            if name.endswith((".xml", ".rels", ".vml")):
                ET.fromstring(package.read(name))


def is_money(cell):
    return "$" in (cell.number_format or "")


def same(stored, fresh, money):
    if isinstance(fresh, str) and fresh.startswith("#"):
        return False
    if isinstance(stored, (int, float)) and isinstance(fresh, (int, float)):
        if money and round(stored * 100) != round(fresh * 100):
            return False
        return abs(stored - fresh) <= 1e-9 * max(1.0, abs(stored))
    return (stored or "") == (fresh or "") and stored is not None


def compare(book, fresh_book):
    """(formulas, faults) of a workbook against its recalculated copy."""
    formulas = openpyxl.load_workbook(book)
    stored = openpyxl.load_workbook(book, data_only=True)
    fresh = openpyxl.load_workbook(fresh_book, data_only=True)
    count, faults = 0, []
    for sheet in formulas.worksheets:
        for row in sheet.iter_rows():
            for cell in row:
                if cell.data_type != "f":
                    continue
                count += 1
                x = stored[sheet.title][cell.coordinate].value
                y = fresh[sheet.title][cell.coordinate].value
                if not same(x, y, is_money(cell)):
                    faults.append(f"{sheet.title}!{cell.coordinate}: {cell.value} stored {x!r}, recalculated {y!r}")
    return count, faults


def constants_of_money(book):
    """Money typed into a cell: allowed on Prices alone."""
    faults = []
    for sheet in openpyxl.load_workbook(book).worksheets:
        if sheet.title == "Prices":
            continue
        for row in sheet.iter_rows():
            for cell in row:
                if cell.data_type == "n" and cell.value is not None and is_money(cell):
                    faults.append(f"{sheet.title}!{cell.coordinate}: money without a reference: {cell.value!r}")
    return faults


def main():
    folder, books = sys.argv[1], sys.argv[2:]
    os.makedirs(folder, exist_ok=True)
    bad = not books
    for book in books:
        check_whole(book)
        count, faults = compare(book, recalculate(folder, book))
        faults += constants_of_money(book)
        if count < 50:
            faults.append(f"only {count} formulas: this is no live workbook")
        print(f"{os.path.basename(book)}: {count} formulas, {len(faults)} faults")
        for fault in faults:
            print(f"    {fault}")
        bad = bad or bool(faults)
    sys.exit(1 if bad else 0)


if __name__ == "__main__":
    main()
