#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""What every command has: --help, --json, an exit status of 0, 1 or 2, and words without a display.

Source: README.md, "A walk by words", which lists the commands with their words and options.
"""
import json
import re
import stat
import unittest

from common import CANNOT, MILL, NO, ROOT, SHOP, WELL, ByWords

# "    proofwalk start JOB.walk --plan PLAN    a new job; …"
LINE = re.compile(r"^    proofwalk ([a-z]+)(.*)$", re.MULTILINE)
LISTED = {name: set(re.findall(r"--[a-z-]+", rest))
          for name, rest in LINE.findall((ROOT / "README.md").read_text(encoding="utf-8"))}


class Helps(ByWords):
    def test_readme_lists_eleven(self):
        self.assertEqual(set(LISTED), {"check", "kinds", "start", "order", "take", "where", "signer", "report", "verify",
                                       "work", "listen"})

    def test_the_whole(self):
        for words in (["--help"], ["help"]):
            ran = self.must(*words)
            for command in LISTED:
                self.assertIn(f"proofwalk {command}", ran.out)
        # With neither display nor platform: with one it would open the window.
        nowhere = {k: v for k, v in self.bare.items() if k not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")}
        nothing = self.run_words(environment=nowhere)
        self.assertEqual(nothing.status, CANNOT)
        self.assertIn("proofwalk check", nothing.out + nothing.err)
        self.assertRegex(self.must("--version").out, r"^proofwalk \d+\.\d+\.\d+\n$")

    def test_each_command(self):
        for command, options in LISTED.items():
            with self.subTest(command):
                ran = self.must(command, "--help")
                self.assertEqual(ran.err, "")
                usage, short, _, rest = ran.out.split("\n", 3)
                self.assertTrue(usage.startswith(f"proofwalk {command}"), usage)
                self.assertGreater(len(short), 10)
                for option in options | set(re.findall(r"--[a-z-]+", usage)):
                    self.assertIn(option, usage)
                    self.assertRegex(rest, rf"(?m)^  {option}( [A-Za-z.]+)?  \S+ \S+", f"{option} is not explained")
                self.assertIn("--json", rest)
                self.assertNotRegex(ran.out, r"help\.[a-z]|[{}]", "a phrase is missing")

    def test_help_as_json(self):
        for words in (["--help"], ["--version"], *([command, "--help"] for command in LISTED)):
            with self.subTest(words):
                answer = self.must(*words, "--json").answer
                self.assertEqual(answer["format"], 1)
                self.assertIn("command", answer)

    def test_help_needs_nothing_else(self):
        for words in (["start", "--help", "job"], ["report", "--help", "--interim"], ["verify", "a", "--help"]):
            self.must(*words)


class Mistakes(ByWords):
    def test_nearest_command(self):
        for typed, meant in (("verfy", "verify"), ("chek", "check"), ("ordre", "order"), ("Report", "report")):
            ran = self.refused("word.unknown-command", typed)
            self.assertIn(meant, ran.err)
            self.assertEqual(ran.out, "")

    def test_nearest_option(self):
        for words, meant in ((["start", "job.walk", "--plam", "x"], "--plan"), (["take", "j", "--form", "x"], "--from"),
                             (["report", "j", "--out", "r", "--signd-by", "x"], "--signed-by"),
                             (["where", "j", "-catalogue", "x"], "--catalogue")):
            ran = self.refused("option.unknown", *words)
            self.assertIn(meant, ran.err)
            self.assertNotIn("?.", ran.err)

    def test_words_too_few_or_many(self):
        self.assertIn("JOB.walk", self.refused("word.missing", "start", "--plan", "x").err)
        self.assertIn("FILE", self.refused("word.missing", "verify").err)
        self.assertIn("--plan FOLDER", self.refused("option.missing", "start", "job.walk").err)
        self.assertIn("--from FILE", self.refused("option.missing", "take", "job.walk").err)
        self.assertIn("more", self.refused("word.extra", "order", "job.walk", "more").err)
        self.assertIn("FOLDER", self.refused("option.value-missing", "start", "job.walk", "--plan").err)
        self.assertIn("--plan", self.refused("option.twice", "start", "j", "--plan", "x", "--plan", "y").err)

    def test_nothing_was_made(self):
        self.run_words("start", "job.walk", "--plam", SHOP)
        self.assertEqual(sorted(path.name for path in self.folder.iterdir()), ["runtime"])


class AsJson(ByWords):
    """Each command once, with --json and without; exit status by what the answer is."""

    @classmethod
    def setUpClass(cls):
        super().setUpClass()
        cls.make_signer()
        cls.job = cls.walk("shop.walk")
        cls.mill = cls.start("mill.walk", MILL)

    def answer(self, command, *words, ends=WELL, members=()):
        ran = self.run_words(command, *words, "--json")
        self.assertEqual(ran.status, ends, str(ran))
        for line in ran.out.splitlines():
            json.loads(line)
        answer = ran.answer
        self.assertEqual(answer["command"], command)
        self.assertEqual(answer["format"], 1)
        for member in members:
            self.assertIn(member, answer)
        if ends == WELL:
            self.assertEqual(ran.err, "")
        return answer

    def test_check(self):
        answer = self.answer("check", SHOP, members=("assumed", "unused"))
        self.assertEqual((answer["errors"], answer["warnings"], answer["remarks"]), (0, 0, []))

    def test_kinds(self):
        kinds = {kind["kind"] for kind in self.answer("kinds")["kinds"]}
        self.assertLessEqual({"contact-surface", "motion-infrared", "smoke-four-wire", "heat-fixed", "flood",
                              "sounder-inside", "holdup-button"}, kinds)
        for kind in kinds:
            steps = self.answer("kinds", kind)["steps"]
            self.assertGreater(len(steps), 2)
            self.assertTrue(all(step["act"] or step["expect"] for step in steps), kind)
            self.assertIn(steps[0]["step"], self.must("kinds", kind).out)

    def test_start_take_order(self):
        answer = self.answer("start", "other.walk", "--plan", SHOP, members=("job",))
        self.assertEqual((answer["devices"], answer["zones"], answer["without_sheet"]), (10, 9, 0))
        answer = self.answer("take", "other.walk", "--from", SHOP / "walk.jsonl")
        lines = [line for line in (SHOP / "walk.jsonl").read_text(encoding="utf-8").splitlines()
                 if line and not line.startswith("#")]
        self.assertEqual(answer["lines"], len(lines))
        stops = self.answer("order", "other.walk")["stops"]
        self.assertEqual(sorted(stop["tag"] for stop in stops), [f"GR-{n:02}" for n in range(1, 11)])

    def test_where(self):
        answer = self.answer("where", self.job, members=("findings", "rungs", "under_newer_sheets"))
        self.assertEqual((answer["standing"], answer["sound"], len(answer["devices"])), ("complete", True, 10))
        answer = self.answer("where", self.mill, ends=NO)
        self.assertEqual(answer["standing"], "not-ready")
        self.assertTrue(any(rung["blocking"] for rung in answer["rungs"]))

    def test_signer(self):
        answer = self.answer("signer", "another", "--name", "Owner", "--firm", "Test", "--passphrase-file", "passphrase")
        self.assertRegex(answer["root"], "^[0-9a-f]{64}$")
        modes = [stat.S_IMODE(path.stat().st_mode) for path in (self.folder / "another").iterdir()]
        self.assertIn(0o600, modes)

    def test_report_and_verify(self):
        signing = ("--signed-by", "signer", "--passphrase-file", "passphrase")
        made = self.answer("report", self.job, "--out", "shop.pdf", *signing, members=("sha256", "standing"))
        self.assertEqual(made["form"], "final")
        seen = self.answer("verify", "shop.pdf", members=("root", "signed_at", "vouched", "sound_events"))
        self.assertEqual((seen["sound"], seen["problems"], seen["record"]), (True, [], made["record"]))
        self.assertTrue(self.answer("verify", self.job)["sound"])
        made = self.answer("report", self.mill, "--out", "mill.pdf", "--interim", *signing)
        self.assertEqual(made["form"], "interim")
        refused = self.run_words("report", self.mill, "--out", "final.pdf", *signing, "--json")
        self.assertEqual(refused.status, NO)
        self.assertEqual([error["code"] for error in refused.errors], ["report.refused"])
        self.assertFalse((self.folder / "final.pdf").exists())


class BareMachine(ByWords):
    def test_no_display_and_no_questions(self):
        """A walk with nothing in the environment but the path and a home, from the first use on."""
        home = self.folder / "person"
        home.mkdir()
        bare = {**self.bare, "HOME": str(home)}
        del bare["PROOFWALK_HOME"]
        (self.folder / "passphrase").write_text("four words that differ\n")
        signing = ("--passphrase-file", "passphrase")
        for words in (["check", SHOP], ["kinds"], ["start", "shop.walk", "--plan", SHOP], ["order", "shop.walk"],
                      ["take", "shop.walk", "--from", SHOP / "walk.jsonl"], ["where", "shop.walk"],
                      ["signer", "signer", "--name", "Installer", "--firm", "Test", *signing],
                      ["report", "shop.walk", "--out", "shop.pdf", "--signed-by", "signer", *signing],
                      ["verify", "shop.pdf"], ["verify", "shop.walk"]):
            ran = self.must(*words, environment=bare)
            self.assertNotEqual(ran.out, "", words)
            self.assertEqual(ran.err, "", f"{words}: something was muttered")
        key = home / ".local/share/proofwalk/machine.key"
        self.assertEqual(stat.S_IMODE(key.stat().st_mode), 0o600)

    def test_no_home_at_all(self):
        bare = {name: value for name, value in self.bare.items() if name != "PROOFWALK_HOME"}
        ran = self.refused("place.no-home", "start", "job.walk", "--plan", SHOP, environment=bare)
        self.assertIn("PROOFWALK_HOME", ran.err)
        self.assertFalse((self.folder / "job.walk").exists())


if __name__ == "__main__":
    unittest.main()
