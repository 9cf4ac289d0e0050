#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""A room includes and links only rooms beneath it. Linking alone does not see a header that climbs, since every room
is on one include path."""
import re
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
from sources import CODE, files, lines, main

# The picture of DEVELOPERS.md, from the top. A room may use any room of a lower line, never one of its own line.
PICTURE = (
    ("qml",),  # its main.cpp hands words to command
    ("command",),
    ("report", "link", "rehearsal"),
    ("walk",),
    ("review",),
    ("plan", "catalogue", "signals", "journal"),
    ("measure",),
    ("words",),  # only turns codes into text: of core it knows base alone
    ("base",),
)
LEVEL = {room: level for level, line in enumerate(PICTURE) for room in line}
# Qt where it is the well-kept library for the work: sockets and sound, pages and charts, the program's own loop.
QT_ROOMS = {"report", "link", "command", "qml"}
WINDOW_ROOMS = {"qml"}

INCLUDE = re.compile(r'^\s*#\s*include\s*(?:"(core/([a-z]+)/[^"]*|qml/[^"]*|[^"]*)"|<([^>]*)>)')
WINDOW_HEADER = re.compile(r"^Q(ml|Quick|Q(ml|uick)[A-Z])|^Qt(Qml|Quick)")
LINK = re.compile(r"\bproofwalk_([a-z]+)\b")
TARGET = re.compile(r"add_(?:library|executable)\(\s*(proofwalk\w*)")


# Within qml each module uses only those before it; main.cpp and window.cpp, beside them, use all.
MODULES = ("parts", "models", "screens")
WITHIN = re.compile(r'^\s*(?:#\s*include\s*"qml/(parts|models|screens)/|import\s+Proofwalk\.(Parts|Models|Screens)\b)')


def room_of(path):
    return "qml" if path.parts[0] == "qml" else path.parts[1]


def within_window(root):
    for path in files(root, ["qml"], (*CODE, ".qml")):
        if path.parts[1] not in MODULES:
            continue
        for number, line in lines(root, path):
            if (found := WITHIN.match(line)) and (other := (found.group(1) or found.group(2)).lower()) != path.parts[1]:
                if MODULES.index(other) > MODULES.index(path.parts[1]):
                    yield f"{path}:{number}: {path.parts[1]} may not use {other}, which stands above it"


def allowed(room, other):
    return other == room or LEVEL[other] > LEVEL[room]


def in_file(root, path, room):
    for number, line in lines(root, path):
        found = INCLUDE.match(line)
        if not found:
            continue
        own, other, foreign = found.groups()
        if own is not None and own.startswith("qml/"):
            other = "qml"
        if own is not None and other is None and room != "qml":
            if not (root / path.parent / own).exists() and not (root / path.parent / (own + ".in")).exists():
                yield f'{path}:{number}: "{own}" does not begin with core/'
        elif other is not None and other not in LEVEL:
            yield f"{path}:{number}: {other} is no room of the picture"
        elif other is not None and not allowed(room, other):
            yield f"{path}:{number}: {room} may not include {other}, which is not beneath it"
        elif foreign and re.match(r"Qt?[A-Z]", foreign) and room not in QT_ROOMS:
            yield f"{path}:{number}: {room} may not include Qt's <{foreign}>"
        elif foreign and WINDOW_HEADER.match(foreign) and room not in WINDOW_ROOMS:
            yield f"{path}:{number}: only qml may include <{foreign}>"


def links(root):
    """A room's CMakeLists.txt names targets; each stands in the room that makes it."""
    home = {}
    listed = [p for p in files(root, ["core", "qml"], "CMakeLists.txt") if len(p.parts) > 2]
    for path in listed:
        for _, line in lines(root, path):
            for target in TARGET.findall(line):
                home[target] = room_of(path)
    for path in listed:
        room = room_of(path)
        for number, line in lines(root, path):
            for name in LINK.findall(line.split("#")[0]):
                other = home.get("proofwalk_" + name)
                if other and not allowed(room, other):
                    yield f"{path}:{number}: {room} may not link proofwalk_{name}, which is not beneath it"


def rule(root):
    findings = []
    for path in files(root, ["core", "qml"], CODE):
        room = room_of(path)
        if room not in LEVEL:
            findings.append(f"{path}:1: {room} is no room of the picture")
            continue
        findings += in_file(root, path, room)
    return findings + list(links(root)) + list(within_window(root))


if __name__ == "__main__":
    main(rule)
