#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""What bad input gets: one clear line with its place, exit status 2 (1 where the answer is no), and nothing lost.

Sources: core/plan/FORMAT.md (columns and their domains), core/walk/COMMANDS.md (what is refused), core/journal/FORMAT.md
("The file", "What survives").
"""
import json
import os
import shutil
import subprocess
import unittest

from common import CANNOT, NO, PROGRAM, SHOP, ByWords, bytes_of, change, rows

NOBODY = 65534


class BadPlans(ByWords):
    def plan(self, file, old, new):
        """The shop's plan with one thing changed in it."""
        folder = self.folder / "plan"
        shutil.rmtree(folder, ignore_errors=True)
        shutil.copytree(SHOP, folder)
        text = (folder / file).read_text(encoding="utf-8")
        self.assertIn(old, text)
        (folder / file).write_text(text.replace(old, new, 1), encoding="utf-8")
        return folder

    def unreadable(self, code, where, *changed):
        """The plan cannot be read: check and start both say why and where, and no job is made."""
        plan = self.plan(*changed)
        ran = self.refused(code, "check", plan)
        self.assertTrue(any(line.startswith(where + ": ") for line in ran.err.splitlines()), ran.err)
        self.refused(code, "start", "job.walk", "--plan", plan)
        self.assertFalse((self.folder / "job.walk").exists())
        return ran

    def remarked(self, code, where, *changed):
        """The plan can be read and is wrong: check remarks on it, start refuses it."""
        plan = self.plan(*changed)
        found = [remark for remark in self.must("check", plan, "--json", ends=NO).answer["remarks"]
                 if remark["code"] == code]
        self.assertEqual(len(found), 1, code)
        self.assertEqual((found[0]["severity"], found[0]["where"]), ("error", where))
        self.refused("start.plan-has-errors", "start", "job.walk", "--plan", plan)
        self.assertFalse((self.folder / "job.walk").exists())
        return found[0]["sentence"]

    def test_column_missing(self):
        ran = self.unreadable("plan.column-missing", "devices.csv", "devices.csv", "tag,kind,", "tag,sort,")
        self.assertIn("kind", ran.err)

    def test_number_with_comma(self):
        # Line 2 is the first row after the header line.
        self.unreadable("plan.cell-not-a-number", "zones.csv:2, column cable_m", "zones.csv", "0.22 mm2,12\n",
                        '0.22 mm2,"12,5"\n')

    def test_number_in_words(self):
        self.unreadable("plan.cell-not-a-number", "power.csv:2, column battery_ah", "power.csv", "main,7,", "main,seven,")

    def test_slipped_decimal_point(self):
        self.unreadable("plan.cell-range", "power.csv:2, column battery_ah", "power.csv", "main,7,", "main,7000000,")

    def test_every_bad_cell_at_once(self):
        plan = self.plan("zones.csv", "0.22 mm2,12\n", "0.22 mm2,twelve\n")
        text = (plan / "zones.csv").read_text(encoding="utf-8").replace("0.22 mm2,9\n", "0.22 mm2,nine\n")
        (plan / "zones.csv").write_text(text, encoding="utf-8")
        errors = self.run_words("check", plan, "--json").errors
        self.assertEqual([error["where"] for error in errors],
                         ["zones.csv:2, column cable_m", "zones.csv:3, column cable_m"])

    def test_word_that_may_not_stand_there(self):
        ran = self.unreadable("plan.cell-word", "zones.csv:2, column purpose", "zones.csv", "intrusion,entry",
                              "intrusoin,entry")
        self.assertIn("intrusion", ran.err)

    def test_quotation_mark_open(self):
        self.refused("csv.quote", "check", self.plan("devices.csv", '"street door', '"street" door'))

    def test_not_utf8(self):
        plan = self.plan("zones.csv", "Street door", "Street door")
        data = (plan / "zones.csv").read_bytes().replace(b"Street door", b"Stra\xdfe")
        (plan / "zones.csv").write_bytes(data)
        self.refused("csv.utf8", "check", plan)

    def test_kind_unknown(self):
        sentence = self.remarked("review.kind-unknown", "devices.csv:3, GR-02", "devices.csv", "motion-infrared",
                                 "motion-infrard")
        self.assertIn("motion-infrared", sentence)

    def test_two_devices_with_one_tag(self):
        sentence = self.remarked("review.tag-twice", "devices.csv:3, GR-01", "devices.csv", "\nGR-02", "\nGR-01")
        self.assertIn("line 2", sentence)

    def test_zone_that_does_not_exist(self):
        sentence = self.remarked("review.zone-unknown", "devices.csv:4, GR-03", "devices.csv", "holdup-button,3,",
                                 "holdup-button,33,")
        self.assertIn("33", sentence)

    def test_no_plan_there(self):
        (self.folder / "empty").mkdir(exist_ok=True)
        for there in ("empty", "missing", SHOP / "devices.csv"):
            self.refused("plan.no-devices", "check", there)


class BadCommands(ByWords):
    """Each is refused with its line, and the job is as long afterwards as before."""

    @classmethod
    def setUpClass(cls):
        super().setUpClass()
        cls.job = cls.start("shop.walk")
        cls.must("take", cls.job, "--from", "-", given='{"do":"state","area":"shop","state":"walk-test"}\n')

    def count(self):
        return rows(self.job, "SELECT count(*) FROM events")[0][0]

    def refuse(self, code, command, *told):
        before = self.count()
        line = command if isinstance(command, str) else json.dumps(command)
        ran = self.refused(code, "take", self.job, "--from", "-", given=line + "\n")
        self.assertTrue(ran.err.startswith("-:1"), ran.err)
        self.assertEqual(self.count(), before)
        for words in told:
            self.assertIn(words, ran.err)

    def test_device_unknown(self):
        self.refuse("walk.device-unknown", {"do": "answer", "device": "GR-0l", "step": "opened", "result": "as-planned"},
                    "GR-0l", "GR-0")
        self.refuse("walk.zone-unknown", {"do": "answer", "zone": "99", "step": "loop-open", "result": "as-planned"})
        self.refuse("walk.area-unknown", {"do": "state", "area": "shp", "state": "unset"}, "shop")

    def test_step_unknown(self):
        self.refuse("walk.step-unknown", {"do": "answer", "device": "GR-02", "step": "boundry-walk", "hits": 5, "tries": 5},
                    "boundary-walk")

    def test_state_where_it_means_nothing(self):
        # "really-set" of the entry and exit sequence is seen in a system that is set; this one is in walk test.
        self.refuse("walk.state-wrong", {"do": "answer", "area": "shop", "step": "really-set", "result": "as-planned"},
                    "walk-test")

    def test_figures(self):
        self.must("take", self.job, "--from", "-", given='{"do":"state","area":"shop","state":"unset"}\n')
        self.addCleanup(self.must, "take", self.job, "--from", "-",
                        given='{"do":"state","area":"shop","state":"walk-test"}\n')
        reading = {"do": "answer", "zone": "1", "step": "loop-ohms"}
        self.refuse("walk.unit-mismatch", {**reading, "value": "4.70 V"})
        self.refuse("base.unit-unknown", {**reading, "value": "4.70 kOhn"}, "kOhm")
        self.refuse("base.decimal-form", {**reading, "value": "4,70 kOhm"}, "full stop")
        self.refuse("base.quantity-form", {**reading, "value": "4.70kOhm"})
        self.refuse("walk.instrument-unknown", {**reading, "value": "4.70 kOhm", "instrument": "meter B"})
        self.refuse("walk.reading-missing", {**reading, "result": "as-planned"})
        self.refuse("walk.trials-form", {"do": "answer", "device": "GR-02", "step": "boundary-walk", "hits": 6, "tries": 5})

    def test_not_a_command(self):
        self.refuse("json.syntax", '{"do":"note",')
        self.refuse("command.unknown", {"do": "anser"}, "answer")
        self.refuse("command.key-unknown", {"do": "note", "words": "x", "devise": "GR-01"}, "device")
        self.refuse("command.key-missing", {"do": "note"}, "words")
        self.refuse("json.key-twice", '{"do":"note","words":"a","words":"b"}')

    def test_photograph(self):
        (self.folder / "words.jpg").write_text("no picture")
        command = {"do": "photograph", "device": "GR-01", "step": "opened", "file": "words.jpg"}
        self.refuse("photograph.format", command)
        self.refuse("file.missing", {**command, "file": "missing.jpg"})
        for outside in ("../words.jpg", "/etc/hostname"):
            before = self.count()
            self.assertEqual(self.run_words("take", self.job, "--from", "-",
                                            given=json.dumps({**command, "file": outside})).status, CANNOT)
            self.assertEqual(self.count(), before)

    def test_refused_line_leaves_what_stands_before(self):
        """The second of four is refused: the first stands, the third is not read, line 5 of the file is named."""
        lines = ["# by hand", '{"do":"note","words":"one"}', "", "", '{"do":"note","device":"GR-77","words":"two"}',
                 '{"do":"note","words":"three"}']
        (self.folder / "day.jsonl").write_text("\n".join(lines) + "\n")
        before = self.count()
        ran = self.run_words("take", self.job, "--from", "day.jsonl")
        self.assertEqual(ran.status, CANNOT)
        self.assertTrue(ran.err.startswith("day.jsonl:5"), ran.err)
        self.assertIn("GR-77", ran.err)
        # The chain's `open` and the note.
        self.assertEqual(self.count(), before + 2)
        told = self.run_words("take", self.job, "--from", "day.jsonl", "--json")
        self.assertEqual([json.loads(line)["line"] for line in told.out.splitlines()], [2])
        self.assertTrue(told.errors[0]["where"].startswith("day.jsonl:5"), told.err)
        self.assertTrue(self.must("verify", self.job, "--json").answer["sound"])


class BadJobs(ByWords):
    COMMANDS = (["where"], ["order"], ["verify"], ["take", "--from", "-"])

    @classmethod
    def setUpClass(cls):
        super().setUpClass()
        cls.job = cls.start("shop.walk")

    def refuse_all(self, code, file):
        before = file.read_bytes() if file.is_file() else None
        for command, *rest in self.COMMANDS:
            with self.subTest(f"{command} {file.name}"):
                self.refused(code, command, file, *rest)
        if before is not None:
            self.assertEqual(file.read_bytes(), before, "it was changed")

    def test_missing(self):
        self.refuse_all("file.missing", self.folder / "no.walk")

    def test_truncated(self):
        whole = self.job.read_bytes()
        for length in (len(whole) // 2, len(whole) - 1, 4096, 600):
            cut = self.folder / "cut.walk"
            cut.write_bytes(whole[:length])
            self.refuse_all("journal.damaged", cut)

    def test_cut_before_it_is_a_database(self):
        for length in (0, 10, 60):
            cut = self.folder / "cut.walk"
            cut.write_bytes(self.job.read_bytes()[:length])
            for command, *rest in self.COMMANDS:
                self.assertEqual(self.run_words(command, cut, *rest).status, CANNOT, f"{command}, {length} bytes")

    def test_foreign(self):
        other = self.folder / "other.walk"
        change(other, ("CREATE TABLE shopping(what)",), ("INSERT INTO shopping VALUES ('milk')",))
        self.refuse_all("journal.foreign", other)
        words = self.folder / "words.walk"
        words.write_text("Dear diary,\n")
        for command in ("where", "order"):
            self.refused("journal.foreign", command, words)
        self.refused("verify.foreign", "verify", words)

    def test_job_with_something_put_in(self):
        # FORMAT.md: a file with any other table, view, trigger or index is refused.
        for number, statement in enumerate(("CREATE TABLE more(x)", "CREATE VIEW seen AS SELECT * FROM events",
                                            "CREATE TRIGGER t AFTER INSERT ON events BEGIN DELETE FROM heads; END")):
            odd = self.copied(self.job, f"odd{number}.walk")
            change(odd, (statement,))
            self.refuse_all("journal.damaged", odd)

    def test_newer_version(self):
        newer = self.copied(self.job, "newer.walk")
        change(newer, ("PRAGMA user_version = 2",))
        self.refuse_all("journal.newer", newer)

    def test_started_twice(self):
        before = self.job.read_bytes()
        self.refused("journal.exists", "start", self.job, "--plan", SHOP)
        self.assertEqual(self.job.read_bytes(), before)


class BadSigning(ByWords):
    @classmethod
    def setUpClass(cls):
        super().setUpClass()
        cls.make_signer()
        cls.job = cls.walk("shop.walk")
        cls.pdf = cls.report(cls.job, "good.pdf")

    def refuse(self, code, *, out="never.pdf", signer="signer", passphrase="passphrase"):
        before = self.job.read_bytes()
        ran = self.refused(code, "report", self.job, "--out", out, "--signed-by", signer,
                           *(["--passphrase-file", passphrase] if passphrase else []))
        self.assertFalse((self.folder / "never.pdf").exists())
        self.assertEqual(self.job.read_bytes(), before, "the job was changed")
        return ran

    def test_no_key(self):
        self.refuse("identity.missing", signer="nobody")

    def test_part_of_a_key(self):
        for file in sorted((self.folder / "signer").iterdir()):
            part = self.folder / "part"
            shutil.rmtree(part, ignore_errors=True)
            shutil.copytree(self.folder / "signer", part)
            (part / file.name).unlink()
            if file.name == "root.key":  # needed to issue, not to sign
                continue
            self.refuse("identity.incomplete", signer="part")

    def test_key_that_others_can_read(self):
        loose = self.folder / "loose"
        shutil.copytree(self.folder / "signer", loose)
        for key in loose.glob("*.key"):
            key.chmod(0o644)
        self.refuse("identity.readable-by-others", signer="loose")

    def test_wrong_passphrase(self):
        (self.folder / "wrong").write_text("a lantern by the wier\n")
        self.refuse("identity.wrong-passphrase", passphrase="wrong")

    def test_no_passphrase(self):
        (self.folder / "blank").write_text("\n")
        self.refuse("passphrase.empty", passphrase="blank")
        self.refuse("file.missing", passphrase="missing")
        self.refuse("passphrase.no-terminal", passphrase=None)

    def test_passphrase_too_short(self):
        (self.folder / "short").write_text("abc\n")
        self.refused("identity.passphrase-short", "signer", "weak", "--name", "A", "--firm", "B",
                     "--passphrase-file", "short")
        self.assertFalse((self.folder / "weak").exists())

    def test_signer_is_never_written_over(self):
        before = bytes_of(self.folder / "signer")
        self.refused("identity.exists", "signer", "signer", "--name", "A", "--firm", "B", "--passphrase-file", "passphrase")
        self.assertEqual(bytes_of(self.folder / "signer"), before)

    def test_report_is_never_written_over(self):
        before = self.pdf.read_bytes()
        self.refuse("report.exists", out="good.pdf")
        self.assertEqual(self.pdf.read_bytes(), before)

    def test_out_in_no_folder(self):
        self.refused("report.no-folder", "report", self.job, "--out", "no/such/r.pdf", "--signed-by", "signer",
                     "--passphrase-file", "passphrase")

    def test_half_a_report(self):
        whole = self.pdf.read_bytes()
        for length in (len(whole) // 2, len(whole) - 1, len(whole) - 1000, 20000, 9):
            half = self.folder / "half.pdf"
            half.write_bytes(whole[:length])
            ran = self.run_words("verify", half, "--json")
            self.assertEqual(ran.status, NO, f"{length} bytes: {ran}")
            self.assertEqual([problem["code"] for problem in ran.answer["problems"]], ["seal.cut-short"])
            self.assertIn("cut off", self.run_words("verify", half).out)


class NoRoom(ByWords):
    """Folders and disks that take nothing."""

    def setUp(self):
        self.folder.chmod(0o755)
        self.shelf = self.folder / "shelf"
        shutil.rmtree(self.shelf, ignore_errors=True)
        self.shelf.mkdir()

    def as_somebody(self):
        """What to put before a command so that a folder's permissions hold: root may write everywhere."""
        if os.getuid() != 0:
            return []
        somebody = ["setpriv", f"--reuid={NOBODY}", f"--regid={NOBODY}", "--clear-groups"]
        if not shutil.which("setpriv") or subprocess.run([*somebody, PROGRAM, "kinds"], capture_output=True,
                                                         env=self.environment, check=False).returncode:
            self.skipTest("as root, and setpriv cannot run the program as nobody")
        return somebody

    def test_read_only_folder(self):
        somebody = self.as_somebody()
        home = self.folder / "theirs"
        home.mkdir(exist_ok=True)
        job = self.walk("shelf/shop.walk")
        if somebody:
            for path in (job, home, self.folder / "runtime"):
                os.chown(path, NOBODY, NOBODY)
        self.shelf.chmod(0o555)
        self.addCleanup(self.shelf.chmod, 0o755)
        before = bytes_of(self.shelf)

        def run(*words):
            return subprocess.run([*somebody, PROGRAM, *map(str, words), "--json"], capture_output=True, cwd=self.folder,
                                  env={**self.environment, "PROOFWALK_HOME": str(home)}, check=False,
                                  input=b'{"do":"note","words":"x"}\n', start_new_session=True)

        # FORMAT.md: a reader leaves nothing beside a closed job and works in a folder that cannot be written to.
        for words in (["where", job], ["order", job], ["verify", job]):
            done = run(*words)
            self.assertEqual(done.returncode, 0, f"{words}: {done}")
        for code, *words in (("journal.read-only", "take", job, "--from", "-"),
                             ("journal.unwritable", "start", "shelf/new.walk", "--plan", SHOP),):
            done = run(*words)
            self.assertEqual(done.returncode, CANNOT, f"{words}: {done}")
            self.assertEqual(json.loads(done.stderr)["error"]["code"], code)
        home.chmod(0o555)
        done = run("signer", "shelf/signer", "--name", "A", "--firm", "B", "--passphrase-file", SHOP / "site.csv")
        self.assertEqual((done.returncode, json.loads(done.stderr)["error"]["code"]), (CANNOT, "key.folder"))
        self.assertEqual(bytes_of(self.shelf), before)

    def test_full_disk(self):
        """A disk of memory that only this run sees fills up while notes are taken."""
        for apart in (["unshare", "-m"], ["unshare", "-r", "-m"]):
            probe = subprocess.run([*apart, "sh", "-c", f"mount -t tmpfs -o size=1m none '{self.shelf}'"],
                                   capture_output=True, check=False)
            if probe.returncode == 0:
                break
        else:
            self.skipTest("no small disk can be had here: " + probe.stderr.decode().strip())
        with open(self.folder / "notes.jsonl", "w") as file:
            for number in range(1, 2001):
                file.write(json.dumps({"do": "note", "words": f"{number} " + "w" * 1500}) + "\n")
        (self.folder / "one.jsonl").write_text('{"do":"note","words":"there is room again"}\n')
        script = """
            set -u; d=shelf
            mount -t tmpfs -o size=2500k none "$d" || exit 90
            head -c 400000 /dev/zero > "$d/ballast"
            "$P" start "$d/shop.walk" --plan "$SHOP" || exit 91
            "$P" take "$d/shop.walk" --from notes.jsonl --json > full.out 2> full.err; echo $? > full.rc
            "$P" verify "$d/shop.walk" --json > verify.out; echo $? > verify.rc
            "$P" start "$d/other.walk" --plan "$SHOP" --json 2> start.err; echo $? > start.rc
            "$P" report "$d/shop.walk" --interim --out "$d/r.pdf" --signed-by signer --passphrase-file passphrase \\
                --json 2> report.err; echo $? > report.rc
            rm "$d/ballast"
            "$P" take "$d/shop.walk" --from one.jsonl; echo $? > again.rc
            cp "$d/shop.walk" after.walk; ls "$d" > left
        """
        self.make_signer()
        done = subprocess.run([*apart, "sh", "-c", script], cwd=self.folder, capture_output=True, check=False,
                              env={**self.environment, "P": PROGRAM, "SHOP": str(SHOP)}, timeout=120)
        self.assertEqual(done.returncode, 0, done)

        def said(name):
            return (self.folder / name).read_text().strip()

        self.assertEqual([said(f"{name}.rc") for name in ("full", "verify", "start", "report", "again")],
                         ["2", "0", "2", "2", "0"], [said("full.err"), said("start.err"), said("report.err"), done])
        error = json.loads(said("full.err"))["error"]
        self.assertEqual(error["code"], "journal.full")
        acknowledged = len(said("full.out").splitlines())
        self.assertGreater(acknowledged, 20)
        self.assertTrue(error["where"].startswith(f"notes.jsonl:{acknowledged + 1}"), error["where"])
        words = {value for (value,) in rows(self.folder / "after.walk", "SELECT value FROM private")}
        for number in range(1, acknowledged + 1):
            self.assertTrue(any(value.startswith(f"{number} www") for value in words), f"note {number} is lost")
        self.assertTrue(any(value == "there is room again" for value in words))
        self.assertEqual(said("left").split(), ["shop.walk"], "something half done was left")
        self.assertTrue(self.must("verify", "after.walk", "--json").answer["sound"])


if __name__ == "__main__":
    unittest.main()
