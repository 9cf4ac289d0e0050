#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""contrasts.csv, reckoned from the design's sheet of colours by WCAG 2.2's formula a second time, in another language.

    contrasts.py           does the file say what is reckoned here, and what the sheet printed?
    contrasts.py --write   writes it
"""
import sys
from pathlib import Path

FILE = Path(__file__).with_name("contrasts.csv")

# The design's sheet: light, dark, high contrast.
COLOURS = {
    "film": "E9EFED 0C1317 FFFFFF", "paper": "FCFDFB 18232A FFFFFF", "ink": "12202A EAF1F2 000000",
    "ink2": "455762 A9BAC1 000000", "here": "FFD63D 4A3900 FFE100", "sign": "FFD63D 4A3900 FFE100",
    "signInk": "12202A FFDE66 000000", "openBg": "FFF3C2 352A04 FFFFFF", "band": "12202A 25343D 000000",
    "bandInk": "FCFDFB EAF1F2 FFFFFF", "pick": "F6E3EC 3A1A2C FFFFFF", "route": "9A1458 FF8CC4 7A0044",
    "routeBtn": "9A1458 A3246A 7A0044", "btnInk": "FFFFFF FFFFFF FFFFFF", "done": "C4E4D6 123F32 D9D9D9",
    "failT": "F8D8C7 54230E FFFFFF", "nrT": "CFE6F4 14374C FFFFFF", "undT": "FBE9C4 4A3606 FFFFFF",
    "passC": "006B4C 4CCFA0 00503A", "passInk": "FFFFFF 06231A FFFFFF", "passBtn": "006B4C 0F6B4F 00503A",
    "failC": "A93600 FF8A50 8F2A00", "failBtn": "A93600 A23A0A 8F2A00", "undC": "8A5200 FFBE45 663C00",
    "nrC": "17618E 7CC6F2 00476F", "runC": "005F9E 74BDF5 003F75",
}
LOOKS = ("light", "dark", "high contrast")
# What the sheet prints beside them, foreground by background: a few of each look, read by a person.
PRINTED = {
    ("light", "ink", "film"): 14.2, ("light", "undC", "here"): 4.5, ("light", "runC", "failT"): 5.0,
    ("light", "btnInk", "routeBtn"): 8.0, ("light", "ink", "pick"): 13.5, ("light", "ink2", "undT"): 6.3,
    ("dark", "ink", "film"): 16.4, ("dark", "failC", "here"): 4.8, ("dark", "btnInk", "failBtn"): 6.7,
    ("dark", "signInk", "sign"): 8.5, ("dark", "route", "pick"): 7.2, ("dark", "ink2", "openBg"): 7.1,
    ("high contrast", "ink", "here"): 16.0, ("high contrast", "route", "done"): 7.8,
    ("high contrast", "btnInk", "passBtn"): 9.5, ("high contrast", "failC", "film"): 8.4,
}
WORDS = ("ink", "ink2", "route", "passC", "failC", "undC", "nrC", "runC")
GROUNDS = ("film", "paper", "here", "done", "nrT", "failT")
MORE = (("btnInk", "passBtn"), ("btnInk", "failBtn"), ("btnInk", "routeBtn"), ("signInk", "sign"), ("passInk", "passC"),
        ("ink", "openBg"), ("ink", "undT"), ("paper", "ink"), ("ink", "pick"), ("route", "pick"), ("ink2", "undT"),
        ("runC", "openBg"), ("ink2", "openBg"), ("bandInk", "band"))
TEXT = 4.5  # WCAG 2.2, 1.4.3; every pair may carry words


def luminance(colour):
    """WCAG 2.2, "relative luminance"; from memory."""
    channels = (int(colour[at:at + 2], 16) / 255 for at in (0, 2, 4))
    red, green, blue = (c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def ratio(one, other):
    dark, light = sorted((luminance(one), luminance(other)))
    return (light + 0.05) / (dark + 0.05)


def rows():
    yield "look,foreground,background,ratio,least"
    for at, look in enumerate(LOOKS):
        for fore, ground in [(w, g) for w in WORDS for g in GROUNDS] + list(MORE):
            found = ratio(*(COLOURS[name].split()[at] for name in (fore, ground)))
            yield f"{look},{fore},{ground},{found:.1f},{TEXT}"


def main():
    text = "\n".join(rows()) + "\n"
    if sys.argv[1:] == ["--write"]:
        FILE.write_text(text, encoding="utf-8")
        return 0
    wrong = [] if FILE.read_text(encoding="utf-8") == text else [f"{FILE.name} is not what is reckoned"]
    for (look, fore, ground), printed in PRINTED.items():
        found = ratio(*(COLOURS[name].split()[LOOKS.index(look)] for name in (fore, ground)))
        if abs(found - printed) > 0.051:
            wrong.append(f"{look}: {fore} on {ground} is {found:.2f}, printed {printed}")
    if abs(ratio("000000", "FFFFFF") - 21) > 1e-9:
        wrong.append("black on white is not 21")
    print("\n".join(wrong) or f"{text.count(chr(10)) - 1} pairs")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
