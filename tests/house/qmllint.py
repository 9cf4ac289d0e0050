#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""qmllint over the QML of the three modules and of the tests, with the types of a build folder that has built them.

    qmllint.py BUILD

Warnings and unused imports alike are findings; ends with 1 if there are any."""
import subprocess
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
from sources import files

ROOT = Path(__file__).resolve().parents[2]


def lint():
    """Debian keeps Qt's tools out of the path."""
    bins = subprocess.run(["qmake6", "-query", "QT_INSTALL_BINS"], check=True, text=True, stdout=subprocess.PIPE).stdout
    return Path(bins.strip()) / "qmllint"


def main():
    modules = Path(sys.argv[1]).resolve() / "qmlmodules"
    missing = [name for name in ("Parts", "Models", "Screens") if not (modules / "Proofwalk" / name / "qmldir").exists()]
    if missing:
        sys.exit(f"{modules} has no {', '.join(missing)}: build it first")
    resources = [word for path in sorted(modules.parent.glob("qml/*/.rcc/*.qrc")) for word in ("--resource", path)]
    sources = [ROOT / path for path in files(ROOT, ["qml", "tests"], ".qml")]
    ran = subprocess.run([lint(), "--unused-imports", "warning", "-I", modules, *resources, *sources])
    print(f"{len(sources)} files, {'with' if ran.returncode else 'no'} findings")
    sys.exit(1 if ran.returncode else 0)


if __name__ == "__main__":
    main()
