#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""A job is judged by the sheets it was begun with, whatever the program's sheets are today; the difference is shown.

Source: core/walk/EVENTS.md (`start` names everything the job is judged by) and core/journal/FORMAT.md (contents).
"""
import re
import shutil
import unittest

from common import NO, ROOT, SHOP, WELL, ByWords


class Judged(ByWords):
    @classmethod
    def setUpClass(cls):
        super().setUpClass()
        cls.job = cls.walk("shop.walk")
        cls.pdf = cls.report(cls.job, "shop.pdf")
        cls.before = cls.verdicts(cls.job)

    @classmethod
    def verdicts(cls, job, *more, ends=WELL):
        answer = cls.must("where", job, *more, "--json", ends=ends).answer
        return {device["tag"]: device["verdict"] for device in answer["devices"]}, answer["under_newer_sheets"]

    def catalogue(self, file, old, new):
        """A copy of the program's sheets with one thing changed in it."""
        folder = self.folder / "sheets"
        shutil.rmtree(folder, ignore_errors=True)
        shutil.copytree(ROOT / "core/catalogue", folder)
        text = (folder / file).read_text(encoding="utf-8")
        changed, count = re.subn(old, new, text, count=1)
        self.assertEqual(count, 1, f"{file} has no {old}")
        (folder / file).write_text(changed, encoding="utf-8")
        return folder

    def holds(self, sheets, different):
        """where and verify give the old verdicts, of job and report, and say which devices would be judged otherwise."""
        verdicts, newer = self.verdicts(self.job, "--catalogue", sheets)
        self.assertEqual(verdicts, self.before[0])
        self.assertEqual({line.split(":")[0] for line in newer}, different)
        for file in (self.job, self.pdf):
            spoken = self.must("verify", file, "--catalogue", sheets).out
            self.assertIn("10 pass", spoken)
            self.assertIn("The verdicts above stand", spoken)
            told = self.must("verify", file, "--catalogue", sheets, "--json").answer
            self.assertTrue(told["sound"])
            self.assertEqual(told["under_newer_sheets"], newer)
            for tag in different:
                self.assertRegex(spoken, rf"{tag}: pass, would be ")

    def test_as_it_stands(self):
        self.assertEqual(set(self.before[0].values()), {"pass"})
        self.assertEqual(self.before[1], [])
        self.assertNotIn("The verdicts above stand", self.must("verify", self.job).out)

    def test_more_trials_wanted(self):
        # The two infrared detectors were walked before with fewer tries than this.
        sheets = self.catalogue("kinds/motion-infrared.toml", r'(step = "boundary-walk"[^\[]*\[[^\[]*)tries = \d+\nneeded = \d+',
                                r"\1tries = 40\nneeded = 40")
        self.holds(sheets, {"GR-02", "GR-07"})

    def test_limit_narrowed(self):
        # The shop's one sounder was measured at 84.3 dB(A) on a fire signal.
        sheets = self.catalogue("rules/fire-uk.toml", r'(quantity = "sound-level-fire"\nunit = "dB\[SPL\]"\nlower = )"65"',
                                r'\1"95"')
        self.holds(sheets, {"GR-05"})

    def test_words_alone(self):
        """Other words change no verdict, and it is still said that the sheets differ."""
        sheets = self.catalogue("kinds/flood.toml", r'title = "[^"]*"', 'title = "Water feeler"')
        self.holds(sheets, set())

    def test_kind_without_its_sheet(self):
        sheets = self.catalogue("kinds/flood.toml", "format", "format")
        (sheets / "kinds/flood.toml").unlink()
        self.holds(sheets, {"GR-10"})

    def test_begun_under_the_changed_sheets(self):
        """A job begun with them is judged by them, and the program's own are the other ones."""
        sheets = self.catalogue("kinds/motion-infrared.toml",
                                r'(step = "boundary-walk"[^\[]*\[[^\[]*)tries = \d+\nneeded = \d+', r"\1tries = 40\nneeded = 40")
        self.must("start", "strict.walk", "--plan", SHOP, "--catalogue", sheets)
        self.must("take", "strict.walk", "--from", SHOP / "walk.jsonl")
        verdicts, newer = self.verdicts("strict.walk", ends=NO)
        self.assertEqual({tag for tag, verdict in verdicts.items() if verdict != "pass"}, {"GR-02", "GR-07"})
        self.assertEqual({line.split(":")[0] for line in newer}, {"GR-02", "GR-07"})

    def test_sheets_that_cannot_be_read(self):
        sheets = self.catalogue("kinds/flood.toml", "format", "fromat")
        ran = self.run_words("verify", self.job, "--catalogue", sheets)
        self.assertEqual(ran.status, 2)
        self.assertIn("flood.toml", ran.err)


if __name__ == "__main__":
    unittest.main()
