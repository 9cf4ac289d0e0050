#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""kill -9 while `take` records, many times, at random moments: every acknowledged line is in the job.

Source: core/walk/COMMANDS.md (each line is durable before the next is read; with --json it is told line by line) and
core/journal/FORMAT.md, "What survives". A killed process leaves its written pages to the kernel: this says nothing of a
power cut. PROOFWALK_SEED repeats a run, PROOFWALK_LONG makes it longer.
"""
import json
import shutil
import signal
import subprocess
import time
import unittest

from common import LONG, PROGRAM, ByWords, rows, seeded

JOBS = 6 if LONG else 1
ROUNDS = 50
LINES = 60


class Killed(ByWords):
    def setUp(self):
        self.job = self.folder / "shop.walk"
        self.chance = seeded("killed")

    def take_and_kill(self, start):
        """Takes notes numbered from `start`, kills the program, gives how many it had acknowledged, and whether it was
        killed before it had ended by itself."""
        with open(self.folder / "notes.jsonl", "w") as file:
            for number in range(start, start + LINES):
                file.write(json.dumps({"do": "note", "words": f"note {number}"}) + "\n")
        with subprocess.Popen([PROGRAM, "take", self.job, "--from", "notes.jsonl", "--json"], cwd=self.folder,
                              env=self.environment, stdin=subprocess.DEVNULL, stdout=subprocess.PIPE,
                              stderr=subprocess.DEVNULL, start_new_session=True) as process:
            # Half of them from the start on (while it opens the job), half after some line, and a moment.
            first = b""
            if self.chance.random() < 0.5:
                for _ in range(self.chance.randrange(1, LINES - 5)):
                    first += process.stdout.readline()
                time.sleep(self.chance.uniform(0, 0.004))
            else:
                time.sleep(self.chance.uniform(0, 0.25))
            process.send_signal(signal.SIGKILL)
            told = first + process.stdout.read()
            status = process.wait()
        # A line is acknowledged once its end is there.
        lines = [json.loads(line) for line in told.split(b"\n")[:-1]]
        return len([line for line in lines if "line" in line]), status == -signal.SIGKILL

    def notes(self):
        """The numbers of the notes in the job, read by SQLite from a copy with what stands beside it, so that the
        program itself finds what it left."""
        for path in self.folder.glob("shop.walk*"):
            shutil.copyfile(path, self.folder / path.name.replace("shop", "copy"))
        found = rows(self.folder / "copy.walk", "SELECT value FROM private WHERE value LIKE 'note %'")
        events = rows(self.folder / "copy.walk", "SELECT count(*) FROM events WHERE text LIKE '%\"kind\":\"note\"%'")[0][0]
        self.assertEqual(events, len(found))
        for path in self.folder.glob("copy.walk*"):
            path.unlink()
        return sorted(int(value.split()[1]) for (value,) in found)

    def test_every_acknowledged_line_is_there(self):
        for _ in range(JOBS):
            self.start("shop.walk")
            self.record_and_kill()
            self.job.unlink()

    def record_and_kill(self):
        standing, killed, amid = 0, 0, 0
        for number in range(ROUNDS):
            acknowledged, was_killed = self.take_and_kill(standing + 1)
            notes = self.notes()
            # Nothing is lost or twice there, and beyond what was acknowledged there is one line at most.
            self.assertEqual(notes, list(range(1, len(notes) + 1)))
            self.assertIn(len(notes) - standing - acknowledged, (0, 1), f"round {number}, {acknowledged} acknowledged")
            killed += was_killed
            amid += was_killed and 0 < acknowledged < LINES
            standing = len(notes)
            if number % 10 == 9:
                seen = self.must("verify", self.job, "--json").answer
                self.assertTrue(seen["sound"], seen)
        # The harness can kill, and does so while lines are taken.
        self.assertGreater(killed, ROUNDS // 2)
        self.assertGreater(amid, ROUNDS // 5)
        # Taking goes on.
        self.take(self.job, {"do": "note", "words": f"note {standing + 1}"}, {"do": "note", "words": f"note {standing + 2}"})
        self.assertEqual(self.notes(), list(range(1, standing + 3)))
        self.assertTrue(self.must("verify", self.job, "--json").answer["sound"])
        self.assertEqual([path.name for path in self.folder.glob("shop.walk*")], ["shop.walk"])


class WhileReporting(ByWords):
    def test_no_half_report(self):
        """Killed while it makes a report: there is a whole one or none, and the job is sound."""
        chance = seeded("killed")
        job = self.walk("shop.walk")
        self.make_signer()
        for number in range(40 if LONG else 6):
            out = self.folder / f"report{number}.pdf"
            with subprocess.Popen([PROGRAM, "report", job, "--out", out, "--signed-by", "signer", "--passphrase-file",
                                   "passphrase"], cwd=self.folder, env=self.environment, stdin=subprocess.DEVNULL,
                                  stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, start_new_session=True) as process:
                time.sleep(chance.uniform(0.05, 1.5))
                process.kill()
            if out.exists():
                self.assertTrue(self.must("verify", out, "--json").answer["sound"])
            self.assertTrue(self.must("verify", job, "--json").answer["sound"])
        self.report(job, "last.pdf")
        self.must("verify", "last.pdf")


if __name__ == "__main__":
    unittest.main()
