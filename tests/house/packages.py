#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""tests/packages.sh lists the Debian package behind each find_package, pkg_check_modules, find_library and QML import.
A missing QML module lets the build succeed and the program fail, so it is looked for here."""
import re
import subprocess
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
from sources import files, lines, main

# What a build file may name, and the Debian 12 package that brings it (dpkg -S of its file, Debian 12).
NAMED = {
    "Qt6::Core": "qt6-base-dev", "Qt6::Gui": "qt6-base-dev", "Qt6::Widgets": "qt6-base-dev",
    "Qt6::Network": "qt6-base-dev", "Qt6::Test": "qt6-base-dev", "Qt6::Svg": "qt6-svg-dev",
    "Qt6::Charts": "qt6-charts-dev", "Qt6::Qml": "qt6-declarative-dev", "Qt6::Quick": "qt6-declarative-dev",
    "Qt6::QmlModels": "qt6-declarative-dev", "Qt6::Pdf": "qt6-pdf-dev", "Qt6::GuiPrivate": "qt6-base-private-dev", "Qt6::QuickTest": "qt6-declarative-dev",
    "fmt": "libfmt-dev", "simdjson": "libsimdjson-dev", "OpenSSL": "libssl-dev", "SQLite3": "libsqlite3-dev",
    "JPEG": "libjpeg-dev", "PNG": "libpng-dev", "PkgConfig": "pkg-config", "tomlplusplus": "libtomlplusplus-dev",
    "libqpdf": "libqpdf-dev", "libqrencode": "libqrencode-dev", "csv": "libcsv-dev", "Boost": "libboost-dev",
    "Python3": "python3", "rapidcheck": "librapidcheck-dev", "ccache": "ccache", "sndfile": "libsndfile1-dev", "kissfft": "libkissfft-dev",
}
CALL = re.compile(r"\b(find_package|pkg_check_modules|find_library|find_program)\(([^)]*)\)")
IMPORT = re.compile(r"^\s*import\s+(Qt[\w.]*)")
KEYWORDS = {"REQUIRED", "COMPONENTS", "IMPORTED_TARGET", "QUIET", "CONFIG", "NAMES"}


def wanted(kind, text):
    """The things one call asks for, as NAMED spells them."""
    words = [w for w in text.split() if w not in KEYWORDS and not re.fullmatch(r"[\d.]+", w)]
    if kind != "find_package":
        return words[1:]  # the first is the variable
    if words[0] == "Qt6":
        return ["Qt6::" + w for w in words[1:]]
    return words[:1]


def qml_package(module):
    """Named as the import, lower case, dots to dashes (Debian's own rule)."""
    return "qml6-module-" + module.lower().replace(".", "-")


def rule(root, listed=None):
    if listed is None:
        listed = set(subprocess.run(["sh", "tests/packages.sh", "list"], cwd=root, check=True, text=True,
                                    stdout=subprocess.PIPE).stdout.split())
    findings = []
    for path in [Path("CMakeLists.txt"), *files(root, ["core", "qml", "tests"], "CMakeLists.txt")]:
        text = (root / path).read_text(encoding="utf-8")
        for call in CALL.finditer(re.sub(r"#.*", lambda m: " " * len(m.group()), text)):
            number = text.count("\n", 0, call.start()) + 1
            for name in wanted(*call.groups()):
                package = NAMED.get(name)
                if package is None:
                    findings.append(f"{path}:{number}: which package brings {name}? Say so in packages.py")
                elif package not in listed:
                    findings.append(f"{path}:{number}: {name} needs {package}, which tests/packages.sh does not list")
    for path in files(root, ["qml"], ".qml"):
        for number, line in lines(root, path):
            if (found := IMPORT.match(line)) and qml_package(found.group(1)) not in listed:
                findings.append(f"{path}:{number}: import {found.group(1)} needs {qml_package(found.group(1))}, "
                                "which tests/packages.sh does not list")
    return findings


if __name__ == "__main__":
    main(rule)
