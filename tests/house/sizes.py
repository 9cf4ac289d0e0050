#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""In core no file over 400 lines, no function over 80, no line over 120 signs; nowhere a tab or white space at the end
of a line. A limit guards no subject, but what breaks it is worth a second look; exceptions.txt names what had one."""
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
from exceptions import without_excepted
from sources import CODE, files, lines, main

FILE_LINES = 400
FUNCTION_LINES = 80
LINE_SIGNS = 120


def functions(numbered):
    """(line of the brace, length) of each body whose braces stand alone at the start of a line, or of a class's member."""
    opened = {}
    for number, line in numbered:
        if line in ("{", "    {"):
            opened[len(line) - 1] = number
        elif line in ("}", "    }") and len(line) - 1 in opened:
            start = opened.pop(len(line) - 1)
            yield start, number - start - 1


def rule(root):
    findings = []
    for path in files(root, ["core", "qml", "tests"], (*CODE, ".qml")):
        numbered = lines(root, path)
        in_core = path.parts[0] == "core"
        if in_core and len(numbered) > FILE_LINES:
            findings.append(("file", path, f"{path}:{FILE_LINES + 1}: {len(numbered)} lines, more than {FILE_LINES}"))
        for start, length in functions(numbered) if in_core else ():
            if length > FUNCTION_LINES:
                findings.append(("function", path,
                                 f"{path}:{start}: a function of {length} lines, more than {FUNCTION_LINES}"))
        for number, line in numbered:
            if in_core and len(line) > LINE_SIGNS:
                findings.append(("line", path, f"{path}:{number}: {len(line)} signs, more than {LINE_SIGNS}"))
            if "\t" in line or line != line.rstrip():
                findings.append(("line", path, f"{path}:{number}: a tab, or white space at the end"))
    return without_excepted(root, ("file", "function", "line"), findings)


if __name__ == "__main__":
    main(rule)
