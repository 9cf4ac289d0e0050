#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Each source file says under which licence it stands, in its first line, or its second under an interpreter's line.
And core/LICENSE holds that licence's text."""
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
from sources import files, lines, main

LINE = "SPDX-License-Identifier: GPL-3.0-or-later"
SOURCES = (".cpp", ".h", ".h.in", ".qml", ".py", ".sh", ".js", ".cmake", ".toml", "CMakeLists.txt")


def rule(root):
    findings = []
    for path in [Path("CMakeLists.txt"), *files(root, ["core", "qml", "tests", "fixtures"], SOURCES)]:
        head = [line for _, line in lines(root, path)[:2]]
        if head and head[0].startswith("#!"):
            head.pop(0)
        if not head or LINE not in head[0]:
            findings.append(f"{path}:1: the first line does not say {LINE}")
    text = root / "core/LICENSE"
    if not text.exists() or "GNU GENERAL PUBLIC LICENSE" not in text.read_text(encoding="utf-8")[:200]:
        findings.append("core/LICENSE:1: is not the GNU General Public License")
    return findings


if __name__ == "__main__":
    main(rule)
