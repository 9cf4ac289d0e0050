#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""core/ROOM/NAME.cpp has tests/ROOM/NAME.cpp; or a test of that room includes its header; or tested-through.txt names
the test that reaches it, since a file may be a private part of what its room gives out. Likewise qml/models/NAME.cpp and
tests/qml/models. A part stands, by its name as QML has it, in a page of tests/qml. Screens are held by proofwalk-screens,
which tells of those that no state shows."""
import re
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
from sources import CODE, files, lines, main

LIST = Path("tests/house/tested-through.txt")
INCLUDE = re.compile(r'^\s*#\s*include\s*"((?:core|qml)/[^"]+)"')


def named(root):
    """What the list says, "TEST: NAME NAME", names of the test's own room: file of core -> (line number, test)."""
    result = {}
    for number, line in lines(root, LIST) if (root / LIST).exists() else []:
        if line.strip() and not line.startswith("#"):
            test, _, names = line.partition(":")
            for name in names.split():
                room = f"qml/{Path(test).parts[2]}" if test.startswith("tests/qml/") else f"core/{Path(test).parts[1]}"
                result[f"{room}/{name}.cpp"] = (number, test)
    return result


def parts_unseen(root):
    """Parts that no page of tests/qml has. A drawn part's file is named as its type, in lower case."""
    pages = "".join((root / path).read_text(encoding="utf-8") for path in files(root, ["tests/qml"], (".qml", ".cpp")))
    used = {name.lower() for name in re.findall(r"\b([A-Z]\w+)\s*\{", pages)}
    used |= {Path(name).stem for name in re.findall(r'#\s*include\s*"qml/parts/([^"]+)"', pages)}
    parts = files(root, ["qml/parts"], ".qml")
    # Of the drawn ones those that QML can name: the rest is what they are made of.
    parts += [path.with_suffix(".cpp") for path in files(root, ["qml/parts"], ".h")
              if re.search(r"\bQML_ELEMENT\b", (root / path).read_text(encoding="utf-8"))
              and not re.search(r"\bQML_SINGLETON\b", (root / path).read_text(encoding="utf-8"))]
    within = "".join((root / path).read_text(encoding="utf-8") for path in files(root, ["qml/parts"], ".qml"))
    used |= {name.lower() for name in re.findall(r"\b([A-Z]\w+)\s*\{", within)}
    return [path for path in parts if path.stem.lower() not in used]


def rule(root):
    included = {}
    for path in files(root, ["tests"], CODE):
        for _, line in lines(root, path):
            if found := INCLUDE.match(line):
                included.setdefault(found.group(1), set()).add(path.parts[1])
    through = named(root)
    findings = []
    for path in files(root, ["core", "qml/models"], ".cpp"):
        of_window = path.parts[0] == "qml"
        room = "qml" if of_window else path.parts[1]
        own = (root / "tests" / (path if of_window else path.relative_to("core"))).exists()
        own = own or room in included.get(str(path.with_suffix(".h")), ())
        number, test = through.pop(str(path), (None, None))
        if own and number:
            findings.append(f"{LIST}:{number}: {path} has a test of its own")
        elif not own and not number:
            findings.append(f"{path}:1: has no test in tests/{room}, and {LIST} names none that reaches it")
        elif number and not (root / test).exists():
            findings.append(f"{LIST}:{number}: there is no {test}")
    findings += [f"{path}:1: stands in no page of tests/qml" for path in parts_unseen(root)]
    findings += [f"{LIST}:{number}: there is no {path}" for path, (number, _) in through.items()]
    return findings


if __name__ == "__main__":
    main(rule)
