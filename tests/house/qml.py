#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""What a QML file may hold. In screens: controls only from parts, no colours and sizes of type but the Theme's. Anywhere:
no "property var". And every code of a phrase that qml names has its words in core/words/english."""
import re
import sys
import tomllib
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
from exceptions import without_excepted
from sources import CODE, files, lines, main

# Elements that are worked, or that hold words: parts has ours, with name, role, press action and edge.
BARE = ("AbstractButton Button CheckBox ComboBox Control Dialog Flickable Label MouseArea Popup RadioButton ScrollView "
        "Slider SpinBox Switch TapHandler Text TextArea TextEdit TextField TextInput ToolButton").split()
ELEMENT = re.compile(r"(?:^|[\s:{])(" + "|".join(BARE) + r")\s*\{")
IMPORT = re.compile(r"^\s*import\s+(QtQuick\.(?:Controls|Templates|Dialogs)\S*)")
VAR = re.compile(r"\bproperty\s+var\b")
COLOUR = re.compile(r"\"#(?:[0-9A-Fa-f]{3,4}|[0-9A-Fa-f]{6}|[0-9A-Fa-f]{8})\"|\bQt\.(?:rgba|hsla|hsva|tint)\(")
NAMED_COLOUR = re.compile(r"\bcolor\w*:\s*\"[a-z]+\"")
TYPE = re.compile(r"\b(?:pixelSize|pointSize):\s*[\d.]+|\bfont\.family:\s*\"")
# A code handed to the words, or one that looks like the window's own wherever it stands.
ASKED = re.compile(r"\b(?:Words\.(?:of|with)|phrase)\(\s*\"([^\"]+)\"(\s*\+)?")
OWN = re.compile(r"\"(window\.[a-z0-9.-]+)\"(\s*\+)?")


def phrases(root):
    """All codes that have words."""
    known = set()
    for path in files(root, ["core/words/english"], ".toml"):
        for table in tomllib.loads((root / path).read_text(encoding="utf-8")).values():
            if isinstance(table, dict):
                known |= set(table)
    return known


def has_words(code, goes_on, known):
    """A literal that is added to is the beginning of codes; one that is not may still be: `code + ".one"` elsewhere."""
    if code in known:
        return True
    return any(other.startswith(code if goes_on or code.endswith(".") else code + ".") for other in known)


def in_screen(path, number, code):
    if found := IMPORT.match(code):
        yield "bare", f"{path}:{number}: imports {found.group(1)}; controls come from parts"
    for found in ELEMENT.finditer(code):
        yield "bare", f"{path}:{number}: a bare {found.group(1)}; parts has ours"
    if COLOUR.search(code) or NAMED_COLOUR.search(code) and "transparent" not in code:
        yield "colour", f"{path}:{number}: a colour that is not the Theme's"
    if TYPE.search(code):
        yield "type", f"{path}:{number}: a size or family of type that is not the Theme's"


def rule(root):
    known = phrases(root)
    findings = []
    for path in files(root, ["qml"], (*CODE, ".qml")):
        for number, line in lines(root, path):
            code = re.sub(r"(^|\s)//.*", "", line)
            if path.suffix == ".qml":
                if VAR.search(code):
                    findings.append(("var", path, f"{path}:{number}: property var; give it a type"))
                if path.parts[1] == "screens":
                    findings += [(kind, path, text) for kind, text in in_screen(path, number, code)]
                elif COLOUR.search(code):
                    findings.append(("colour", path, f"{path}:{number}: a colour that is not the Theme's"))
            for found in {*ASKED.findall(code), *OWN.findall(code)}:
                if not has_words(found[0], bool(found[1]), known):
                    findings.append(("words", path, f"{path}:{number}: {found[0]} has no words in core/words/english"))
    return without_excepted(root, ("bare", "var", "colour", "type", "words"), findings)


if __name__ == "__main__":
    main(rule)
