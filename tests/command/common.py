# SPDX-License-Identifier: GPL-3.0-or-later
"""What the tests by words share: the program, run as anybody runs it, in a folder of the test's own.

PROOFWALK_PROGRAM is the program. Each class has a folder, and in it a home for the machine's key, so that nothing of the
machine's own is touched. Nothing is taken from the program's code: expected words are those of README.md, COMMANDS.md,
EVENTS.md and FORMAT.md.
"""
import contextlib
import json
import os
import random
import shutil
import sqlite3
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

sys.dont_write_bytecode = True

ROOT = Path(__file__).resolve().parents[2]
SHOP = ROOT / "fixtures/corner-shop"
MILL = ROOT / "fixtures/lantern-mill"
PROGRAM = os.environ.get("PROOFWALK_PROGRAM", "")
LONG = os.environ.get("PROOFWALK_LONG", "") not in ("", "0")
PASSPHRASE = "a lantern by the weir"
WELL, NO, CANNOT = 0, 1, 2


class Ran:
    """How a run ended: exit status and both streams as text."""

    def __init__(self, done):
        self.status = done.returncode
        self.out = done.stdout.decode("utf-8")
        self.err = done.stderr.decode("utf-8")

    @property
    def answer(self):
        """The answer of a run with --json: its last line."""
        return json.loads(self.out.splitlines()[-1])

    @property
    def errors(self):
        """What a failed run with --json told: an object a line."""
        return [json.loads(line)["error"] for line in self.err.splitlines()]

    def __str__(self):
        return f"exit status {self.status}\n--- out\n{self.out}\n--- err\n{self.err}"


def seeded(name):
    """A source of chance that can be had again: the seed is printed, and taken from PROOFWALK_SEED."""
    seed = int(os.environ.get("PROOFWALK_SEED") or random.SystemRandom().randrange(2**31))
    print(f"{name}: PROOFWALK_SEED={seed}", file=sys.stderr)
    return random.Random(seed)


class ByWords(unittest.TestCase):
    """A folder, a home, the program."""

    @classmethod
    def setUpClass(cls):
        if not PROGRAM:
            raise RuntimeError("Set PROOFWALK_PROGRAM to the program that is to be tried.")
        cls.folder = Path(tempfile.mkdtemp(prefix="proofwalk-words-"))
        cls.addClassCleanup(shutil.rmtree, cls.folder, ignore_errors=True)
        cls.home = cls.folder / "home"
        (cls.folder / "runtime").mkdir(mode=0o700)
        # No display, no terminal's settings, no home but this: what a bare machine has.
        cls.bare = {"PATH": os.environ["PATH"], "PROOFWALK_HOME": str(cls.home), "TZ": "UTC"}
        for kept in ("PROOFWALK_DATA", "ASAN_OPTIONS", "UBSAN_OPTIONS", "LD_LIBRARY_PATH"):
            if kept in os.environ:
                cls.bare[kept] = os.environ[kept]
        cls.environment = {**cls.bare, "QT_QPA_PLATFORM": "offscreen", "LC_ALL": "C.UTF-8",
                           "XDG_RUNTIME_DIR": str(cls.folder / "runtime")}

    @classmethod
    def run_words(cls, *words, environment=None, given=None, **how):
        """Runs the program; no terminal stands behind it, so that nothing can ask."""
        return Ran(subprocess.run([PROGRAM, *map(str, words)], input=(given or "").encode(), capture_output=True,
                                  env=cls.environment if environment is None else environment, cwd=cls.folder,
                                  start_new_session=True, timeout=120, check=False, **how))

    @classmethod
    def must(cls, *words, ends=WELL, **how):
        """Runs the program; any other exit status than `ends` is an error of the test."""
        ran = cls.run_words(*words, **how)
        if ran.status != ends:
            raise AssertionError(f"proofwalk {' '.join(map(str, words))}: wanted {ends}, {ran}")
        return ran

    # --- Jobs and reports ---

    @classmethod
    def make_signer(cls, name="signer"):
        (cls.folder / "passphrase").write_text(PASSPHRASE + "\n")
        cls.must("signer", name, "--name", "Installer", "--firm", "Test", "--passphrase-file", "passphrase")
        return cls.folder / name

    @classmethod
    def start(cls, name, plan=SHOP):
        cls.must("start", name, "--plan", plan)
        return cls.folder / name

    @classmethod
    def walk(cls, name, plan=SHOP):
        """A job with the whole day of the demonstration site in it."""
        job = cls.start(name, plan)
        cls.must("take", job, "--from", plan / "walk.jsonl")
        return job

    @classmethod
    def report(cls, job, name, *more):
        if not (cls.folder / "signer").exists():
            cls.make_signer()
        cls.must("report", job, "--out", name, "--signed-by", "signer", "--passphrase-file", "passphrase", *more)
        return cls.folder / name

    def copied(self, file, name):
        """A copy to do harm to."""
        copy = self.folder / name
        shutil.copyfile(file, copy)
        return copy

    def take(self, job, *commands, ends=WELL):
        """Takes commands, each an object, from standard input."""
        lines = "".join(json.dumps(command) + "\n" for command in commands)
        return self.must("take", job, "--from", "-", "--json", given=lines, ends=ends)

    # --- What is expected ---

    def refused(self, code, *words, ends=CANNOT, **how):
        """Wants the run refused with that code, told in one line of words that says where and what to do."""
        ran = self.run_words(*words, **how)
        told = self.run_words(*words, "--json", **how)
        self.assertEqual(ran.status, ends, f"{words}: {ran}")
        self.assertEqual(told.status, ends, f"{words}: {told}")
        self.assertIn(code, [error["code"] for error in told.errors], str(told))
        for line in ran.err.splitlines():
            self.assertRegex(line, r"^([^{}]+: )?[^{}]{12,}[.?]$")
        for error in told.errors:
            self.assertEqual(error.keys(), {"code", "where", "arguments", "sentence"})
        return ran


def rows(job, query, *values):
    """What a query of the job file gives, by SQLite itself (format: core/journal/FORMAT.md)."""
    with contextlib.closing(sqlite3.connect(job)) as database:
        return database.execute(query, values).fetchall()


def change(job, *statements):
    """Does to the job file what anybody with SQLite can do: (statement, values…) one after another."""
    with contextlib.closing(sqlite3.connect(job)) as database:
        touched = 0
        for statement, *values in statements:
            touched += database.execute(statement, values).rowcount
        database.commit()
    return touched


def bytes_of(folder):
    """Every file beneath a folder, to see that nothing was touched."""
    return {str(path.relative_to(folder)): path.read_bytes() for path in sorted(folder.rglob("*")) if path.is_file()}
