# SPDX-License-Identifier: GPL-3.0-or-later
"""exceptions.txt: what may break a rule, a line each: RULE PATH REASON. One that excepts nothing is itself a finding."""
from pathlib import Path

LIST = Path("tests/house/exceptions.txt")


def read(root):
    """(line number, rule, path, reason) of each exception."""
    place = root / LIST
    for number, line in enumerate(place.read_text(encoding="utf-8").splitlines() if place.exists() else [], start=1):
        if line.strip() and not line.startswith("#"):
            rule, path, *reason = line.split(maxsplit=2)
            yield number, rule, path, "".join(reason)


def without_excepted(root, rules, findings):
    """The texts of those findings (rule, path, text) that no exception covers, and the exceptions without use or reason."""
    excepted = {}
    told = []
    for number, rule, path, reason in read(root):
        if rule in rules:
            excepted[rule, path] = number
            if not reason:
                told.append(f"{LIST}:{number}: gives no reason")
    used = {(rule, str(path)) for rule, path, _ in findings}
    told += [text for rule, path, text in findings if (rule, str(path)) not in excepted]
    told += [f"{LIST}:{number}: {key[1]} breaks the rule no longer"
             for key, number in excepted.items() if key not in used]
    return told
