# SPDX-License-Identifier: GPL-3.0-or-later
"""What the rules share: the project's own files, and how a finding is told."""
import os
import sys
from pathlib import Path

CODE = (".cpp", ".h")


def files(root, folders, suffixes=None):
    """The files beneath those folders of the project, in order, as paths from its root."""
    found = []
    for folder in folders:
        for place, below, names in os.walk(root / folder):
            below[:] = sorted(b for b in below if not b.startswith(".") and b != "__pycache__")
            for name in sorted(names):
                if suffixes is None or name.endswith(suffixes):
                    found.append((Path(place) / name).relative_to(root))
    return found


def lines(root, path):
    """The file's lines, numbered from 1."""
    return list(enumerate((root / path).read_text(encoding="utf-8").splitlines(), start=1))


def main(rule):
    """Runs a rule, a function of the root that gives findings "FILE:LINE: what"; ends with 1 if it has any."""
    root = Path(sys.argv[1] if len(sys.argv) > 1 else Path(__file__).parents[2])
    findings = rule(root)
    for finding in findings:
        print(finding)
    print(f"{len(findings)} findings")
    sys.exit(1 if findings else 0)
