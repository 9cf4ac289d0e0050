#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""clang-tidy over the sources of core and qml, with the commands of a build folder but without its precompiled headers.

    tidy.py BUILD [FOLDER...]     FOLDER: core/base, for one room alone

A file that was clean is not read again until it, something it includes, its command or the settings change: the
preprocessed text is the key, kept in BUILD/tidy. Most of the time goes into the headers of libraries, so several files
are read as one; those that cannot be (two of them have helpers of one name) are read in smaller heaps, at last alone.
Told are all findings; ends with 1 if there are any."""
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
HEAP = 6
OURS = re.compile(re.escape(str(ROOT)) + r"/(?!build/)\S+:\d+:\d+: (error|warning): ")


def commands(build, folders):
    """(file, compile command as words) of each source asked for, without cache, output and precompiled header."""
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
        del words[at:at + 2]
        while "-include" in words and words[(at := words.index("-include")) + 1].endswith("cmake_pch.hxx"):
            del words[at:at + 2]
        yield file, [word for word in words if word not in ("-Winvalid-pch", "-fpch-preprocess")]


def key(build, words, settings):
    """What the result hangs on; comments count, since a NOLINT is one."""
    text = subprocess.run([*words, "-E", "-C"], cwd=build, check=True, stdout=subprocess.PIPE).stdout
    return hashlib.sha256(settings + repr(words).encode() + text).hexdigest()


def heaps(todo):
    """[(files and marks, options)]: those with the same options together, HEAP at most."""
    alike = {}
    for file, words, mark in todo:
        options = tuple(word for word in words[1:] if word not in ("-c", str(file)))
        alike.setdefault((file.parent, options), []).append((file, mark))
    for (_, options), some in alike.items():
        for start in range(0, len(some), HEAP):
            yield some[start:start + HEAP], options


def look(build, heap, options):
    """The findings in those files, as text; empty if there are none."""
    read = heap[0][0]
    if len(heap) > 1:
        # Two files' helpers may share a name with a variable; g++ has looked for that in each of them alone.
        options = (*options, "-Wno-shadow")
        together = "".join(f'#include "{file}"\n' for file, _ in heap)
        read = build / "tidy" / f"{hashlib.sha256(together.encode()).hexdigest()[:16]}.cpp"
        read.write_text(together, encoding="utf-8")
    ran = subprocess.run([TIDY, "--quiet", r"--header-filter=(core|qml)/.*\.(h|cpp)$", str(read), "--", *options],
                         cwd=build, text=True, stdout=subprocess.PIPE, stderr=subprocess.PIPE)
    # What clang makes of a library's headers (libstdc++ 12, qpdf in C++23) is not ours to mend, nor is the heap itself.
    ours = [line for line in ran.stdout.splitlines() if OURS.match(line)]
    if len(heap) > 1 and any("[clang-diagnostic-error" in line for line in ours):
        half = len(heap) // 2
        return "\n".join(filter(None, (look(build, part, options) for part in (heap[:half], heap[half:]))))
    strange = ran.returncode != 0 and not ran.stdout.strip()
    if not ours and not strange:
        for _, mark in heap:
            mark.touch()
        return ""
    return "\n".join(ours) or ran.stderr.strip() or f"{read}: {TIDY} ended with {ran.returncode}"


def main():
    build = Path(sys.argv[1]).resolve()
    folders = sys.argv[2:] or ["core", "qml"]
    (build / "tidy").mkdir(exist_ok=True)
    version = subprocess.run([TIDY, "--version"], check=True, stdout=subprocess.PIPE).stdout
    settings = version + b"".join(path.read_bytes() for path in (ROOT / ".clang-tidy", ROOT / "qml/.clang-tidy"))
    jobs = int(os.environ.get("PROOFWALK_JOBS") or os.cpu_count())
    sources = list(commands(build, folders))
    if not sources:
        sys.exit(f"{build}/compile_commands.json names no source of {' '.join(folders)}")
    with ThreadPoolExecutor(jobs) as pool:
        marks = pool.map(lambda one: build / "tidy" / key(build, one[1], settings), sources)
        todo = [(file, words, mark) for (file, words), mark in zip(sources, marks) if not mark.exists()]
        told = set()
        for text in pool.map(lambda one: look(build, *one), heaps(todo)):
            for line in text.splitlines():
                if line not in told:
                    print(line, flush=True)
                told.add(line)
    print(f"{len(sources)} files, {len(todo)} of them read, {len(told)} findings")
    sys.exit(1 if told else 0)


if __name__ == "__main__":
    main()
