#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""proofwalk work as a person or a script runs it: what README.md shows, and figures met in print, through the program.

Sources stand beside each vector in tests/reference/measure-vectors.json; "-pub" are those that were met in print.
"""
import json
import re
import shlex
import unittest

from common import CANNOT, ROOT, WELL, ByWords

SHOWN = re.findall(r"^    proofwalk (work [a-z]+ .*=.*)$", (ROOT / "README.md").read_text(encoding="utf-8"), re.MULTILINE)
VECTORS = {each["id"]: each for each in
           json.loads((ROOT / "tests/reference/measure-vectors.json").read_text(encoding="utf-8"))}


class Works(ByWords):
    def results(self, topic, **inputs):
        words = [f"{name}={value}" for name, value in inputs.items()]
        return self.must("work", topic, *words, "--json").answer["results"]

    def near(self, vector, letter, value):
        vector = VECTORS[vector]
        room = vector["tolerance"].get("absolute", 0)
        room = room[letter] if isinstance(room, dict) else room
        room = max(room, vector["tolerance"].get("relative", 0) * abs(vector["expected"][letter]))
        self.assertAlmostEqual(value, vector["expected"][letter], delta=room, msg=vector["source"])

    def test_what_the_readme_shows(self):
        self.assertGreaterEqual(len(SHOWN), 5)
        for line in SHOWN:
            with self.subTest(line):
                ran = self.must(*shlex.split(line))
                self.assertEqual(ran.err, "")
                self.assertNotRegex(ran.out, r"work\.[a-z]|\{[a-z_]+\}")

    def test_the_topics(self):
        topics = {each["topic"] for each in self.must("work", "--json").answer["topics"]}
        self.assertEqual(topics, {vector["topic"] for vector in VECTORS.values()})
        for topic in topics:
            told = self.must("work", topic, "--help", "--json").answer
            self.assertTrue(told["computations"], topic)
            for computation in told["computations"]:
                self.assertEqual(shlex.split(computation["example"])[:3], ["proofwalk", "work", topic])

    def test_figures_met_in_print(self):
        trials = self.results("trials", hits=7, tries=50)
        self.near("trials-07-pub", "cp_lo", trials["exact_lower"])
        self.near("trials-07-pub", "cp_hi", trials["exact_upper"])
        self.near("trials-13-pub", "n95_999", self.results("trials", reliability=0.999)["tries"])
        self.near("sound-03-pub", "two80", self.results("sound", levels_db="80,80")["sum_db"])
        self.near("sound-03-pub", "sum3", self.results("sound", levels_db="74,80,82")["sum_db"])
        self.near("timer-01-pub", "u_diff", self.results("timer", shown_s=30)["standard_s"])
        for celsius, letter in ((-200, "m200"), (-10, "m10"), (500, "p500"), (1372, "p1372")):
            found = self.results("temperature", what="type-k", temperature_c=celsius)
            self.near("temp-08-pub", letter, found["reference_mv"])
        self.near("temp-07-pub", "f41", self.results("temperature", value_f=41)["value_c"])

    def test_an_instrument_past_its_calibration_gives_no_verdict(self):
        # conf-06: U = 29.58 ohm; 4723 lies more than that inside 4653 to 4787, and 4700 to 4787 leaves it undecided.
        sheet = {"reading_ohm": 4723, "accuracy_pct": 0.5, "digits": 2, "last_place_ohm": 1, "upper_ohm": 4787,
                 "read_on": "2026-11-25"}
        within = self.results("conformity", **sheet, lower_ohm=4653, calibrated="2026-03-02")
        self.near("conf-06", "U", within["expanded_ohm"])
        self.assertEqual(within["verdict"], "pass")
        self.assertEqual(self.results("conformity", **sheet, lower_ohm=4700)["verdict"], "undecided")
        self.assertEqual(self.results("conformity", **sheet, lower_ohm=4760)["verdict"], "fail")
        overdue = self.must("work", "conformity", *(f"{k}={v}" for k, v in sheet.items()), "lower_ohm=4653",
                            "calibrated=2024-03-02", "--json").answer
        self.assertNotIn("verdict", overdue["results"])
        self.assertTrue(any("overdue" in remark for remark in overdue["remarks"]))

    def test_other_units_in_the_name(self):
        """The same length in feet, the same time in minutes, the same level in no other unit."""
        one = self.results("optics", speed_m_per_s=1, range_m=8, pitch_deg=5)
        other = self.results("optics", speed_m_per_s=1, range_ft=8 / 0.3048, pitch_deg=5)
        self.assertEqual(one.keys(), other.keys())
        for name, value in one.items():
            self.assertAlmostEqual(value, other[name], places=9)
        self.assertAlmostEqual(self.results("timer", shown_min=0.5)["duration_s"], 30)
        self.refused("work.unit-other", "work", "optics", "speed_m_per_s=1", "range_db=8")
        self.refused("work.unit-missing", "work", "optics", "speed_m_per_s=1", "range=8")
        self.refused("work.unit-other", "work", "sound", "levels_dba=80,80")

    def test_refusals_end_in_two(self):
        for words in (["sound"], ["sound", "levels_db="], ["sound", "levels_db=80,x"], ["trials", "hits=6", "tries=5"],
                      ["radio", "building=office", "frequency_mhz=433", "distance_m=10"]):
            with self.subTest(words):
                ran = self.run_words("work", *words)
                self.assertEqual((ran.status, ran.out), (CANNOT, ""))
                self.assertEqual(len(ran.err.splitlines()), 1)
        self.assertEqual(self.run_words("work").status, WELL)


if __name__ == "__main__":
    unittest.main()
