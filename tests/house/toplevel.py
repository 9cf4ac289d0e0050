#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""At the top stand two pages to read, one file to build, and the folders that are subjects."""
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
from sources import main

WANTED = {"CMakeLists.txt", "README.md", "DEVELOPERS.md", "core", "tests", "fixtures", "icons"}
ALLOWED = WANTED | {"qml", "build"}


def rule(root):
    found = {entry.name for entry in root.iterdir() if not entry.name.startswith(".")}
    return [f"{name}:1: does not belong at the top" for name in sorted(found - ALLOWED)] + [
        f"{name}:1: is missing at the top" for name in sorted(WANTED - found)]


if __name__ == "__main__":
    main(rule)
