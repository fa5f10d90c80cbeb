"""The client's file holds the price and nothing of what it is made of.

usage: client.py PROGRAM SOURCE_DIR FOLDER        FOLDER holds NAME.xlsx and NAME-client.xlsx of each sample job
"""
import json
import pathlib
import re
import subprocess
import sys
import zipfile

import openpyxl

WORDS = ["overhead", "contingency", "profit", "markup", "margin", "wage", "burden", "hour", "ratio", "INTERNAL", "cost of"]


def cents(value):
    return round(float(value) * 100)


def cost_figures(book):
    """Every amount of money of the cost workbook, in cents, small change left out (it is everywhere)."""
    figures = set()
    for sheet in openpyxl.load_workbook(book, data_only=True).worksheets:
        for row in sheet.iter_rows():
            for cell in row:
                if isinstance(cell.value, (int, float)) and ("$" in cell.number_format or sheet.title == "Prices"):
                    figures.add(cents(cell.value))
    return {figure for figure in figures if abs(figure) >= 1000}


def said_to_client(program, job):
    """Amounts that the client may see, by the program's own account: price, tax shown, draws, allowances, alternates."""
    done = subprocess.run([program, "bid", "--json", job, "-o", "/dev/null/nowhere"], capture_output=True, text=True)
    report = json.loads(done.stdout)
    bid, lines = report["bid"], report["estimate"]["lines"]
    allowed = {cents(bid["price"])}
    allowed |= {cents(draw["amount"]) for draw in bid.get("draws", [])}
    allowed |= {cents(line["total"]) for line in lines if line["class"] == "allowances"}
    allowed |= {abs(cents(one["difference"])) for one in report.get("alternates", bid.get("alternates", []))
                if one.get("difference") is not None}
    if "tax" in bid:
        allowed.add(cents(bid["tax"]))
    return allowed


def check_package(path, faults):
    with zipfile.ZipFile(path) as package:
        names = package.namelist()
        for word in ("comment", "externalLink", "drawing", "calcChain", "hyperlink"):
            if any(word in name for name in names):
                faults.append(f"a part of {word}")
        workbook = package.read("xl/workbook.xml").decode()
        if "<definedName" in workbook or 'state="hidden"' in workbook:
            faults.append("defined names or hidden sheets")
        for name in names:
            if name.startswith("xl/worksheets/") and b"<f>" in package.read(name):
                faults.append("a formula")
            if b"hyperlink" in package.read(name):
                faults.append("a link")


def check_cells(path, costs, allowed, faults):
    shown = set()
    for sheet in openpyxl.load_workbook(path).worksheets:
        for row in sheet.iter_rows():
            for cell in row:
                if isinstance(cell.value, (int, float)):
                    shown.add(cents(cell.value))
                    if cents(cell.value) not in allowed:
                        faults.append(f"{cell.coordinate}: {cell.value} is no price, draw, allowance or alternate")
                elif cell.value:
                    check_text(cell, costs - allowed, faults)
    return shown


def check_text(cell, costs, faults):
    for word in WORDS:
        if word.lower() in cell.value.lower():
            faults.append(f"{cell.coordinate}: speaks of {word}: {cell.value}")
    for amount in re.findall(r"\d[\d,]*\.\d\d\b", cell.value):
        if cents(amount.replace(",", "")) in costs:
            faults.append(f"{cell.coordinate}: a cost figure: {cell.value}")
    if "$" in cell.value:
        faults.append(f"{cell.coordinate}: money as text: {cell.value}")


def main():
    program, source, folder = sys.argv[1], pathlib.Path(sys.argv[2]), pathlib.Path(sys.argv[3])
    bad = 0
    for job in sorted(source.glob("jobs/*.ini")):
        faults = []
        client = folder / f"{job.stem}-client.xlsx"
        costs = cost_figures(folder / f"{job.stem}.xlsx")
        allowed = said_to_client(program, str(job))
        check_package(client, faults)
        shown = check_cells(client, costs, allowed, faults)
        if len(costs) < 50 or not shown & allowed:
            faults.append(f"nothing to compare: {len(costs)} cost figures, {len(shown)} amounts shown")
        print(f"{client.name}: {len(shown)} amounts, none of {len(costs - allowed)} cost figures; {len(faults)} faults")
        for fault in faults:
            print(f"    {fault}")
        bad += len(faults)
    sys.exit(1 if bad else 0)


if __name__ == "__main__":
    main()
