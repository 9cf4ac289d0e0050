#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Do the attached record, the attached table and the printed pages say the same?

    compare.py record.jsonl results.csv report.pdf

refold.py folds the record by the pages of the formats; its verdicts, proofs and readings are compared with the rows of
results.csv and with the text of the PDF (pdftotext -layout, of Poppler). Every difference is a line; exit 1 on any,
0 on none, 2 if it could not be compared.
"""
import csv
import re
import subprocess
import sys
from decimal import Decimal
from pathlib import Path

sys.dont_write_bytecode = True
sys.path.insert(0, str(Path(__file__).parent))
import refold  # noqa: E402

# How the pages write what the record says in words and UCUM codes.
PRINTED = {"too-close": "too close", "no-access": "no access", "to-do": "to do"}
UNIT = {"Ohm": "Ω", "kOhm": "kΩ", "MOhm": "MΩ", "A.h": "Ah", "Cel": "°C", "dB[SPL]": "dB(A)", "[ppm]": "ppm",
        "%{LEL}": "% LEL", "1": ""}


def table_differences(folded, rows):
    """The rows of results.csv (core/walk/results.h): devices, steps, findings."""
    wanted = {}
    for device in folded["devices"]:
        proofs = dict(device["proofs"])
        if device["byItsLike"]:
            proofs["response"] = "by-its-like"
        wanted["device", device["tag"], "", ""] = {"verdict": device["verdict"], **proofs}
    for step in [step for device in folded["devices"] for step in device["steps"]] + folded["sequences"]:
        figure, unit = step["reading"], ""
        if " of " not in figure:
            figure, _, unit = figure.partition(" ")
        wanted["step", step["subject"], step["signal"], step["name"]] = {
            "verdict": step["verdict"], "reading": figure, "unit": unit, "uncertainty": step["uncertainty"],
            "lower": size(step.get("lower")), "upper": size(step.get("upper")), "at": step["at"]}
    for step in folded["findings"]:
        wanted["finding", step["subject"], step["signal"], step["name"]] = {"verdict": step["finding"]}
    found = {}
    for row in rows:
        key = row["row"], row["tag"].removesuffix(", "), row["signal"], row["step"]
        if key in found:
            yield f"results.csv: {' '.join(key)} stands there twice"
        found[key] = {**row, "lower": size(row["lower"]), "upper": size(row["upper"])}
    for key in sorted(wanted.keys() | found.keys()):
        name = " ".join(part for part in key if part)
        if key not in found:
            yield f"results.csv: {name} is missing"
        elif key not in wanted:
            yield f"results.csv: {name} stands there and is not in the record"
        else:
            for column, value in wanted[key].items():
                if found[key][column] != value:
                    yield f"results.csv: {name}: {column} is {found[key][column]}; refolded it is {value}"


def size(text):
    """A limit: 3.40 and 3.4 are the same wall."""
    return Decimal(text) if text else None


def page_differences(folded, text):
    lines = text.split("\n")
    for device in folded["devices"]:
        word = PRINTED.get(device["verdict"], device["verdict"])
        mine = [line for line in lines if re.search(rf"(?<!\S){re.escape(device['tag'])}(?!\S)", line)]
        if not mine:
            yield f"pages: {device['tag']} is not printed"
        elif not any(re.search(rf"(?<!\w){re.escape(word)}(?!\w)", line) for line in mine):
            yield f"pages: {device['tag']} is not printed as {word}"
    squeezed = re.sub(r"\s+", " ", text)
    steps = [(device["tag"], step) for device in folded["devices"] for step in device["steps"]]
    for subject, step in steps + [(step["subject"], step) for step in folded.get("sequences", [])]:
        if step["reading"] and not re.search(printed_reading(step["reading"]), squeezed):
            yield f"pages: the reading {step['reading']} of {subject}, {step['name']}, is not printed"


def printed_reading(reading):
    """The pattern of "3.35 kOhm": the digits as typed, perhaps an uncertainty, the unit as people write it."""
    figure, _, unit = reading.partition(" ")
    if unit.startswith("of "):
        return rf"(?<![\d.]){re.escape(reading)}(?![\d.])"
    figure = figure.replace("-", "[-−]")
    return rf"(?<![\d.]){figure.replace('.', '[.]')}( ± [\d.]+)? ?{re.escape(UNIT.get(unit, unit))}"


def compare(record, results, pdf):
    folded = refold.refold(Path(record).read_bytes())
    yield from (f"record: {problem}" for problem in folded["problems"])
    with open(results, encoding="utf-8", newline="") as file:
        yield from table_differences(folded, csv.DictReader(file))
    printed = subprocess.run(["pdftotext", "-layout", "-enc", "UTF-8", pdf, "-"], capture_output=True, check=True)
    yield from page_differences(folded, printed.stdout.decode("utf-8"))


def main(arguments):
    if len(arguments) != 3:
        print(__doc__, file=sys.stderr)
        return 2
    try:
        found = list(compare(*arguments))
    except (OSError, ValueError, KeyError, refold.Unreadable, subprocess.CalledProcessError) as error:
        print(f"compare.py: {type(error).__name__}: {error}", file=sys.stderr)
        return 2
    print("\n".join(found) if found else "The record, the table and the pages agree.")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
