#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""kill -9 between taps, many times: what was published is in the file, and the window opens again where it was.

A killed process leaves its written pages to the kernel: this says nothing of a power cut. PROOFWALK_SEED repeats a run.

    killed.py TAPPER PROOFWALK FIXTURES"""
import os
import random
import shutil
import signal
import sqlite3
import subprocess
import sys
import tempfile
from pathlib import Path

ROUNDS = 50
TAPPER, PROGRAM, FIXTURES = sys.argv[1], sys.argv[2], Path(sys.argv[3])


def events(job):
    """The hashes of the file's events, read by SQLite itself: from a copy with what stands beside it, so that the program
    finds what it left."""
    with tempfile.TemporaryDirectory() as name:
        for path in job.parent.glob(job.name + "*"):
            shutil.copyfile(path, Path(name) / path.name)
        database = sqlite3.connect(Path(name) / job.name)
        try:
            return {row[0] for row in database.execute("SELECT hash FROM events")}
        finally:
            database.close()


def fresh(folder, env):
    """A job of the corner shop as far as its doors."""
    job = folder / "shop.walk"
    lines = (FIXTURES / "corner-shop/walk.jsonl").read_text(encoding="utf-8").split("\n# Walking: doors")[0] + "\n"
    (folder / "some.jsonl").write_text(lines, encoding="utf-8")
    for picture in (FIXTURES / "corner-shop").glob("*.jpg"):
        (folder / picture.name).write_bytes(picture.read_bytes())
    subprocess.run([PROGRAM, "start", job, "--plan", FIXTURES / "corner-shop"], env=env, check=True, stdout=subprocess.DEVNULL)
    subprocess.run([PROGRAM, "take", job, "--from", folder / "some.jsonl"], env=env, check=True, stdout=subprocess.DEVNULL)
    return job


def tap_and_kill(env, chance, seed):
    """(where it opened, where it last stood with nothing under way or None, hashes told) of one life."""
    steps = chance.randrange(1, 12)
    with subprocess.Popen([TAPPER], env=dict(env, PROOFWALK_SEED=str(seed)), stdout=subprocess.PIPE, text=True) as process:
        first = last = None
        told = set()
        for line in process.stdout:
            kind, _, rest = line.rstrip("\n").partition(" ")
            if kind == "event":
                told.add(rest)
            elif kind == "going":
                last = None
            elif kind == "at":
                last = rest
                first = first or rest
                steps -= 1
                if steps == 0:
                    process.send_signal(signal.SIGKILL)
        # What was told before the blow counts too; a line cut short does not.
        status = process.wait()
    if first is None:
        sys.exit(f"it did not open: exit status {status}")
    return first, last, told


def main():
    seed = int(os.environ.get("PROOFWALK_SEED") or random.randrange(1 << 31))
    print(f"PROOFWALK_SEED={seed}", flush=True)
    chance = random.Random(seed)
    acknowledged, compared, stood = set(), 0, None
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        env = dict(os.environ, HOME=name, XDG_CONFIG_HOME=name, XDG_DATA_HOME=name, XDG_CACHE_HOME=name,
                   XDG_RUNTIME_DIR=name, PROOFWALK_HOME=name + "/proofwalk", PROOFWALK_JOB=name + "/shop.walk")
        job = fresh(folder, env)
        begun = len(events(job))
        for number in range(ROUNDS):
            first, last, told = tap_and_kill(env, chance, chance.randrange(1 << 31))
            acknowledged |= told
            if lost := acknowledged - events(job):
                sys.exit(f"round {number}: {len(lost)} events were published and are not in the file: {sorted(lost)[0]}")
            if stood is not None:
                compared += 1
                if first != stood:
                    sys.exit(f"round {number}: it stood at ({stood}) when it was killed and opened at ({first})")
            stood = last
        grown = len(events(job)) - begun
        verified = subprocess.run([PROGRAM, "verify", job], env=env, stdout=subprocess.PIPE, text=True)
    print(f"{ROUNDS} times killed, {grown} events recorded, {len(acknowledged)} told and found, {compared} places compared")
    if verified.returncode != 0:
        sys.exit("the file does not verify afterwards:\n" + verified.stdout)
    if grown == 0 or compared < ROUNDS // 3:
        sys.exit("too little happened to say anything")


if __name__ == "__main__":
    main()
