#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Walks by chance, folded twice: by the program and by refold.py. Where they differ, one of them or the page is wrong.

    chance.py PROOFWALK JOB.walk [ROUNDS [SEED]]

PROOFWALK is the program, JOB.walk any job it began: its plan and sheets are the ground. Each round writes a new job
file by core/journal/FORMAT.md, in which up to four phones answer, repair, withdraw, accept and see each other's heads
by chance, and compares `where --json` with refold.py: verdicts, proofs, core steps and how many were answered, findings.
Differences are printed with their seed, and the job file kept. Exit 1 on any.
"""
import json
import random
import sqlite3
import subprocess
import sys
import tempfile
from pathlib import Path

sys.dont_write_bytecode = True
sys.path.insert(0, str(Path(__file__).parent))
import record  # noqa: E402
import refold  # noqa: E402
from refold_selftest import KEY, Walk, name_id, sealed, sign  # noqa: E402

SCHEMA = """
CREATE TABLE job(id TEXT NOT NULL PRIMARY KEY) STRICT, WITHOUT ROWID;
CREATE TABLE events(hash TEXT NOT NULL PRIMARY KEY, chain TEXT NOT NULL, n INTEGER NOT NULL, text TEXT NOT NULL) STRICT;
CREATE INDEX events_in_order ON events(chain, n, hash);
CREATE TABLE contents(hash TEXT NOT NULL PRIMARY KEY, bytes BLOB NOT NULL) STRICT;
CREATE TABLE private(commitment TEXT NOT NULL PRIMARY KEY, salt TEXT NOT NULL, value TEXT NOT NULL) STRICT;
CREATE TABLE photographs(hash TEXT NOT NULL PRIMARY KEY, bytes BLOB NOT NULL) STRICT;
CREATE TABLE heads(chain TEXT NOT NULL PRIMARY KEY, n INTEGER NOT NULL, hash TEXT NOT NULL REFERENCES events(hash), \
signature TEXT NOT NULL) STRICT, WITHOUT ROWID;
PRAGMA application_id = 1347898443;
PRAGMA user_version = 1;
"""


class ByChance(Walk):
    """A job on the ground of another, filled by throwing dice."""

    def __init__(self, ground, dice):
        with sqlite3.connect(f"file:{ground}?immutable=1", uri=True) as file:
            self.contents = {hash_: data.decode() for hash_, data in file.execute("SELECT hash, bytes FROM contents")}
            first = next(json.loads(text) for text, in file.execute("SELECT text FROM events WHERE n = 1")
                         if '"kind":"start"' in text)
        self.job, self.clock, self.chains, self.dice = name_id("by chance"), 100, {}, dice
        self.say("a", "start", {**first["body"], "key": KEY})
        scope = refold.scope_of(record.Record(self.bytes()))
        self.devices = dice.sample(scope.devices, min(3, len(scope.devices)))
        self.limits, self.steps = scope.limits, scope.steps
        self.keys = sorted({key for device in self.devices for key, _ in device.steps})
        self.timers = [key for key in scope.steps if key not in {k for d in scope.devices for k, _ in d.steps}]
        self.keys += dice.sample(self.timers, min(2, len(self.timers)))
        self.touched = []  # steps that something happened to: what follows keeps to them, so that things collide
        for _ in range(dice.randint(5, 40)):
            self.throw()

    def news(self, chain):
        """Heads of other chains that this one may come to see now."""
        known = {}
        for text, _ in self.chains.get(chain, []):
            for other, n, _ in json.loads(text)["seen"]:
                known[other] = max(n, known.get(other, 0))
        return [events[-1][1] for other, events in sorted(self.chains.items()) if other != chain
                and events[-1][1][1] > known.get(name_id(other), 0) and self.dice.random() < 0.4]

    def a_step(self):
        if self.touched and self.dice.random() < 0.6:
            return self.dice.choice(self.touched)
        self.touched.append(self.dice.choice(self.keys))
        return self.touched[-1]

    def some_steps(self):
        return [list(key) for key in sorted({self.a_step() for _ in range(self.dice.randint(1, 3))})]

    def throw(self):
        chain, dice = self.dice.choice("aaabbcd"), self.dice
        if chain not in self.chains:
            self.say(chain, "open", {"key": KEY, "program": "by chance"}, self.news(chain))
        act = dice.choices(("answer", "prove", "repair", "withdraw", "finding", "accept", "no-access", "omen"),
                           (50, 8, 12, 8, 4, 5, 2, 1))[0]
        seen = self.news(chain)
        if act == "answer":
            self.answer_one(chain, self.a_step(), seen)
        elif act == "prove":
            for key, step in dice.choice(self.devices).steps:
                if step["core"]:
                    self.answer(chain, list(key), "as-planned", seen, dice.choice(step["states"]))
                    seen = []
        elif act == "repair":
            self.repair(chain, self.some_steps(), self.some_steps(), seen)
        elif act == "withdraw":
            events = [head for events in self.chains.values() for _, head in events if head[1] > 1]
            if events:
                self.withdraw(chain, dice.choice(events), seen)
        elif act == "finding":
            grade = dice.choice(("deficiency", "recommendation"))
            self.say(chain, "finding", {"step": list(self.a_step()), "grade": grade, "words": sealed()}, seen)
        elif act == "accept":
            self.say(chain, "accept", {"findings": self.some_steps(), "name": sealed(), "words": sealed()}, seen)
        elif act == "no-access":
            self.say(chain, "no-access", {"subject": dice.choice(self.devices).id, "reason": sealed()}, seen)
        else:
            self.say(chain, "omen", {}, seen)

    def answer_one(self, chain, key, seen):
        dice, step = self.dice, self.steps[key]
        state = dice.choice(step["states"]) if dice.random() < 0.95 else dice.choice(
            ("unpowered", "unset", "walk-test", "set"))
        result = dice.choices(("as-planned", "not-as-planned", "value", "not-applicable", "no-access", "started"),
                              (8, 4, 12 if step["kind"] in ("read", "time", "trial") else 0, 2, 1, 1))[0]
        more = {}
        if result == "value" and step["kind"] == "trial":
            tries = step["tries"] + dice.randint(-1, 1)
            more = {"hits": min(tries, dice.randint(step["needed"] - 1, step["tries"])), "tries": tries}
        elif result == "value":
            # At and about the limits, in any unit of the quantity that is a power of ten of the base unit.
            limit = self.limits[key]
            ends = [end for end in (limit.lower, limit.upper) if end is not None] or [refold.Decimal(1)]
            near = int(dice.choice(ends).scaleb(4)) + dice.choice((-11, -10, -9, -1, 0, 1, 9, 10, 11))
            units = {unit: refold.Decimal(scale).adjusted() for unit, (quantity, scale) in refold.UNITS.items()
                     if quantity == refold.UNITS[step["unit"]][0] and scale not in ("60", "3600")}
            unit = dice.choice(sorted(units))
            more["reading"] = {"m": near, "e": -4 - units[unit], "unit": unit}
            if dice.random() < 0.6:
                more["uncertainty"] = {"m": dice.choice((0, 1, 10)), "e": -4 - units[unit]}
        how = dice.choices(("singly", "bulk", "ear", "partner"), (8, 2, 1, 1))[0]
        self.answer(chain, list(key), result, seen, state, how, **more)

    def write(self, path):
        with sqlite3.connect(path) as file:
            file.executescript(SCHEMA)
            file.execute("INSERT INTO job VALUES (?)", (self.job,))
            file.executemany("INSERT INTO contents VALUES (?, ?)",
                             [(hash_, text.encode()) for hash_, text in self.contents.items()])
            for events in self.chains.values():
                file.executemany("INSERT INTO events VALUES (?, ?, ?, ?)",
                                 [(hash_, chain, n, text) for text, (chain, n, hash_) in events])
                chain, n, hash_ = events[-1][1]
                signed = f"proofwalk/head/1\n{self.job}\n{chain}\n{n}\n{hash_}\n".encode()
                file.execute("INSERT INTO heads VALUES (?, ?, ?, ?)", (chain, n, hash_, sign(signed).hex()))
        file.close()
        path.chmod(0o600)


def by_program(program, path):
    """What `where --json` says, in the form of by_page()."""
    run = subprocess.run([program, "where", str(path), "--json"], capture_output=True, text=True, check=False)
    if run.returncode not in (0, 1):
        return {"refused": run.stdout + run.stderr}
    told = json.loads(run.stdout)
    return {**{device["tag"]: [device["verdict"], {name: "lit" if proof["state"] == "by-its-like" else proof["state"]
                                                   for name, proof in device["proofs"].items()},
                               device["answered"], device["steps"]] for device in told["devices"]},
            "findings": sorted([each["subject"], each["step"], each["status"], each["accepted"]]
                               for each in told["findings"]), "sound": told["sound"]}


def by_page(walk):
    folded = refold.refold(walk.bytes())
    core = {device.id: {key for key, step in device.steps if step["core"]}
            for device in refold.scope_of(record.Record(walk.bytes())).devices}
    answer = {"findings": sorted([each["subject"], each["name"], each["finding"], each["accepted"]]
                                 for each in folded["findings"]), "sound": not folded["problems"]}
    for device in folded["devices"]:
        names = {(signal, name) for _, signal, name in core[device["id"]]}
        steps = [step for step in device["steps"] if (step["signal"], step["name"]) in names]
        answered = sum(step["at"] != "" for step in steps)
        answer[device["tag"]] = [device["verdict"], device["proofs"], answered, len(steps)]
    return answer


def main(arguments):
    if not 2 <= len(arguments) <= 4:
        print(__doc__, file=sys.stderr)
        return 2
    program, ground = arguments[:2]
    rounds, first = ([int(each) for each in arguments[2:]] + [100, 1][len(arguments) - 2:])
    differing = 0
    for seed in range(first, first + rounds):
        walk = ByChance(ground, random.Random(seed))
        path = Path(tempfile.mkdtemp()) / f"chance-{seed}.walk"
        walk.write(path)
        theirs, ours = by_program(program, path), by_page(walk)
        wrong = [f"  {key}: the program {theirs.get(key)}\n  {' ' * len(key)}  the page    {ours.get(key)}"
                 for key in sorted(theirs.keys() | ours.keys()) if theirs.get(key) != ours.get(key)]
        if wrong:
            print(f"seed {seed}, {path}:", *wrong, sep="\n")
            differing += 1
        else:
            path.unlink()
            path.parent.rmdir()
    print(f"{rounds} walks by chance, from seed {first}: {differing} differ.")
    return 1 if differing else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
