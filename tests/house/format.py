#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""clang-format-19 finds nothing to change in core, qml and tests. `format.py --mend` changes what it finds."""
import re
import subprocess
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
from sources import CODE, files, main

FORMAT = "clang-format-19"
PLACE = re.compile(r"^(.*?:\d+):\d+: error: code should be clang-formatted")


def rule(root):
    ran = subprocess.run([FORMAT, "--dry-run", "-Werror", *map(str, files(root, ["core", "qml", "tests"], CODE))],
                         cwd=root, text=True, stderr=subprocess.PIPE)
    findings = [f"{found.group(1)}: is not as clang-format would write it"
                for line in ran.stderr.splitlines() if (found := PLACE.match(line))]
    if ran.returncode != 0 and not findings:
        findings = [ran.stderr.strip() or f"{FORMAT} ended with {ran.returncode}"]
    return findings


if __name__ == "__main__":
    if sys.argv[1:] == ["--mend"]:
        here = Path(__file__).resolve().parents[2]
        sys.exit(subprocess.run([FORMAT, "-i", *map(str, files(here, ["core", "qml", "tests"], CODE))], cwd=here).returncode)
    main(rule)
