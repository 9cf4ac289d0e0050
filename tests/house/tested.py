#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""core/ROOM/NAME.cpp has tests/ROOM/NAME.cpp; or a test of that room includes its header; or tested-through.txt names
the test that reaches it, since a file may be a private part of what its room gives out."""
import re
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
from sources import CODE, files, lines, main

LIST = Path("tests/house/tested-through.txt")
INCLUDE = re.compile(r'^\s*#\s*include\s*"(core/[^"]+)"')


def named(root):
    """What the list says, "TEST: NAME NAME", names of the test's own room: file of core -> (line number, test)."""
    result = {}
    for number, line in lines(root, LIST) if (root / LIST).exists() else []:
        if line.strip() and not line.startswith("#"):
            test, _, names = line.partition(":")
            for name in names.split():
                result[f"core/{Path(test).parts[1]}/{name}.cpp"] = (number, test)
    return result


def rule(root):
    included = {}
    for path in files(root, ["tests"], CODE):
        for _, line in lines(root, path):
            if found := INCLUDE.match(line):
                included.setdefault(found.group(1), set()).add(path.parts[1])
    through = named(root)
    findings = []
    for path in files(root, ["core"], ".cpp"):
        room = path.parts[1]
        own = (root / "tests" / path.relative_to("core")).exists()
        own = own or room in included.get(str(path.with_suffix(".h")), ())
        number, test = through.pop(str(path), (None, None))
        if own and number:
            findings.append(f"{LIST}:{number}: {path} has a test of its own")
        elif not own and not number:
            findings.append(f"{path}:1: has no test in tests/{room}, and {LIST} names none that reaches it")
        elif number and not (root / test).exists():
            findings.append(f"{LIST}:{number}: there is no {test}")
    findings += [f"{LIST}:{number}: there is no {path}" for path, (number, _) in through.items()]
    return findings


if __name__ == "__main__":
    main(rule)
