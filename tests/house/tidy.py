#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""clang-tidy over the sources of core and qml, with the commands of a build folder that has no precompiled headers.

    tidy.py BUILD [FOLDER...]     FOLDER: core/base, for one room alone

A file that was clean is not read again until it, something it includes, its command or the settings change: the
preprocessed text is the key, kept in BUILD/tidy. Told are all findings; ends with 1 if there are any."""
import hashlib
import json
import os
import re
import shlex
import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
TIDY = "clang-tidy-19"


def commands(build, folders):
    """(file, compile command as words) of each source asked for, without the compiler cache and the output."""
    for entry in json.loads((build / "compile_commands.json").read_text(encoding="utf-8")):
        file = Path(entry["file"])
        if not file.is_relative_to(ROOT) or str(file.relative_to(ROOT)).startswith("build/"):
            continue
        if not any(file.is_relative_to(ROOT / folder) for folder in folders):
            continue
        words = shlex.split(entry["command"])
        if words[0].endswith("ccache"):
            words.pop(0)
        at = words.index("-o")
        yield file, words[:at] + words[at + 2:]


def key(build, words, settings):
    """What the result hangs on; comments count, since a NOLINT is one."""
    text = subprocess.run([*words, "-E", "-C"], cwd=build, check=True, stdout=subprocess.PIPE).stdout
    return hashlib.sha256(settings + repr(words).encode() + text).hexdigest()


def look(build, file, words, settings):
    """The findings in one file, as text; empty if there are none."""
    mark = build / "tidy" / key(build, words, settings)
    if mark.exists():
        return ""
    ran = subprocess.run([TIDY, "-p", str(build), "--quiet", str(file)], text=True,
                         stdout=subprocess.PIPE, stderr=subprocess.PIPE)
    # What clang makes of a library's headers (libstdc++ 12, qpdf in C++23) is not ours to mend.
    ours = [line for line in ran.stdout.splitlines() if re.match(r"(/\S+):\d+:\d+: (error|warning): ", line)
            and line.startswith(str(ROOT))]
    strange = ran.returncode != 0 and not ran.stdout.strip()
    if not ours and not strange:
        mark.touch()
        return ""
    return "\n".join(ours) or ran.stderr.strip() or f"{file}: {TIDY} ended with {ran.returncode}"


def main():
    build = Path(sys.argv[1]).resolve()
    folders = sys.argv[2:] or ["core", "qml"]
    (build / "tidy").mkdir(exist_ok=True)
    version = subprocess.run([TIDY, "--version"], check=True, stdout=subprocess.PIPE).stdout
    settings = version + (ROOT / ".clang-tidy").read_bytes()
    jobs = int(os.environ.get("PROOFWALK_JOBS") or os.cpu_count())
    sources = list(commands(build, folders))
    if not sources:
        sys.exit(f"{build}/compile_commands.json names no source of {' '.join(folders)}")
    with ThreadPoolExecutor(jobs) as pool:
        unclean = 0
        for text in pool.map(lambda one: look(build, *one, settings), sources):
            if text:
                unclean += 1
                print(text, flush=True)
    print(f"{len(sources)} files, {unclean} with findings")
    sys.exit(1 if unclean else 0)


if __name__ == "__main__":
    main()
