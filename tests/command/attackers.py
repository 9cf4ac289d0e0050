#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Whoever has the file and SQLite, or the report and qpdf, and wants another result than the one that was recorded.

Source: core/journal/FORMAT.md ("Hash", "Signatures", "What each proves", "Checking a record"): from it alone this forges
events and signs them with openssl. `verify` must end with 1 and name what was done, or say what nobody can know.
"""
import hashlib
import json
import re
import shutil
import subprocess
import unittest

from common import LONG, NO, WELL, ByWords, change, rows, seeded


def canonical(value):
    """RFC 8785 for what events hold: integers, strings, ASCII keys."""
    return json.dumps(value, sort_keys=True, separators=(",", ":"), ensure_ascii=False)


def sha256(text):
    return hashlib.sha256(text.encode("utf-8")).hexdigest()


class Record:
    """The events of a job, to be changed and written back."""

    def __init__(self, job):
        self.job = job
        self.id = rows(job, "SELECT id FROM job")[0][0]
        self.events = {hash_: json.loads(text) for hash_, text in rows(job, "SELECT hash, text FROM events")}

    def chains(self):
        """Each chain as its hashes in order, the oldest chain first."""
        found = {}
        for hash_, event in self.events.items():
            found.setdefault(event["chain"], []).append(hash_)
        for hashes in found.values():
            hashes.sort(key=lambda hash_: self.events[hash_]["n"])
        return sorted(found.values(), key=lambda hashes: self.events[hashes[0]]["stamp"])

    def answer(self):
        """The first answer that was as planned: what an attacker turns, or makes of a failure."""
        for hashes in self.chains():
            for hash_ in hashes:
                event = self.events[hash_]
                if event["kind"] == "answer" and event["body"]["result"] == "as-planned":
                    return hash_
        raise AssertionError("there is no such answer")

    def renamed(self, old, event):
        """Puts the event in the place of the old one, under its right hash; gives that."""
        new = sha256(canonical(event))
        change(self.job, ("UPDATE events SET hash = ?, text = ?, n = ? WHERE hash = ?", new, canonical(event),
                          event["n"], old))
        self.events[new] = event
        if new != old:
            del self.events[old]
        return new

    def relinked(self, old, event, chains):
        """Changes an event and mends every `prev`, `seen`, reference and head of those chains that comes after it."""
        new_of = {old: self.renamed(old, event)}
        for hashes in chains:
            for hash_ in hashes:
                if hash_ in new_of or hash_ not in self.events:
                    continue
                text = canonical(self.events[hash_])
                for before, after in new_of.items():
                    text = text.replace(before, after)
                if text != canonical(self.events[hash_]):
                    new_of[hash_] = self.renamed(hash_, json.loads(text))
        for chain, hash_ in rows(self.job, "SELECT chain, hash FROM heads"):
            if hash_ in new_of:
                change(self.job, ("UPDATE heads SET hash = ? WHERE chain = ?", new_of[hash_], chain))
        return new_of


def signed(key, job, chain, n, hash_):
    """The signature of a head in hex, made by openssl."""
    lines = "".join(f"{line}\n" for line in ("proofwalk/head/1", job, chain, n, hash_))
    return subprocess.run(["openssl", "dgst", "-sha256", "-sign", key], input=lines.encode(), capture_output=True,
                          check=True).stdout.hex()


class Jobs(ByWords):
    @classmethod
    def setUpClass(cls):
        super().setUpClass()
        cls.sound = cls.walk("shop.walk")
        cls.report(cls.sound, "shop.pdf")
        # Nothing in `sound` may change from here on; what verify says of it, for comparison.
        cls.said = cls.must("verify", cls.sound).out

    def setUp(self):
        self.job = self.copied(self.sound, "attacked.walk")
        self.record = Record(self.job)

    def caught(self, *codes, says=None):
        """verify ends with 1, names the codes, the event or chain, and where all is sound."""
        told = self.run_words("verify", self.job, "--json")
        self.assertEqual(told.status, NO, str(told))
        self.assertFalse(told.answer["sound"])
        found = [problem["code"] for problem in told.answer["problems"]]
        for code in codes:
            self.assertIn(code, found)
        spoken = self.run_words("verify", self.job)
        self.assertEqual(spoken.status, NO)
        self.assertIn("Not sound:", spoken.out)
        if says:
            self.assertRegex(spoken.out, says)
        self.assertNotEqual(self.run_words("where", self.job).status, WELL)
        return told.answer["problems"]

    def turned(self, hash_):
        """The event with its result turned."""
        event = json.loads(canonical(self.record.events[hash_]))
        event["body"]["result"] = "not-applicable"
        return event

    def test_before(self):
        self.assertIn("Sound", self.said)

    def test_event_changed(self):
        hash_ = self.record.answer()
        event = self.record.events[hash_]
        change(self.job, ("UPDATE events SET text = ? WHERE hash = ?", canonical(self.turned(hash_)), hash_))
        problems = self.caught("record.event-hash", says=rf"{event['n']}\b")
        self.assertTrue(any(event["chain"][:8] in problem["where"] for problem in problems), problems)

    def test_event_changed_and_its_hash(self):
        hash_ = self.record.answer()
        self.record.renamed(hash_, self.turned(hash_))
        self.caught("record.prev")

    def test_chain_recomputed_without_the_key(self):
        """Every hash fits, in all chains; only the signatures are the old ones."""
        hash_ = self.record.answer()
        changed = self.record.relinked(hash_, self.turned(hash_), self.record.chains())
        self.assertGreater(len(changed), 10)
        problems = self.caught("record.head-signature")
        self.assertEqual({problem["code"] for problem in problems}, {"record.head-signature"})

    def test_chain_recomputed_old_head_kept(self):
        """The heads still name the events that were signed."""
        hash_ = self.record.answer()
        heads = rows(self.job, "SELECT chain, hash FROM heads")
        self.record.relinked(hash_, self.turned(hash_), self.record.chains())
        for chain, old in heads:
            change(self.job, ("UPDATE heads SET hash = ? WHERE chain = ?", old, chain))
        self.caught("record.head-other")

    def test_chain_recomputed_later_chains_left(self):
        """The chain is made anew up to its head, and signed with the key; but a later chain had seen the old one."""
        hash_ = self.record.answer()
        mine = next(chain for chain in self.record.chains() if hash_ in chain)
        self.record.relinked(hash_, self.turned(hash_), [mine])
        self.sign_all()
        self.caught("record.seen-missing")

    def sign_all(self):
        key = self.home / "machine.key"
        for chain, n, hash_ in rows(self.job, "SELECT chain, n, hash FROM heads"):
            change(self.job, ("UPDATE heads SET signature = ? WHERE chain = ?",
                              signed(key, self.record.id, chain, n, hash_), chain))

    def test_all_made_anew_with_the_key(self):
        """The key's holder makes everything anew: nothing in the file can show it, and verify says so. But a report that
        was given away has another record, and its fingerprint."""
        hash_ = self.record.answer()
        self.record.relinked(hash_, self.turned(hash_), self.record.chains())
        self.sign_all()
        ran = self.must("verify", self.job)
        self.assertRegex(ran.out, r"nobody can know.*made it anew")
        given = self.must("verify", "shop.pdf", "--json").answer
        self.report(self.job, "anew.pdf")
        self.addCleanup((self.folder / "anew.pdf").unlink)
        anew = self.must("verify", "anew.pdf", "--json").answer
        self.assertNotEqual(given["record"], anew["record"])

    def test_tail_dropped(self):
        last = self.record.chains()[-2][-3:]
        change(self.job, *(("DELETE FROM events WHERE hash = ?", hash_) for hash_ in last))
        problems = self.caught("record.tail-missing")
        first, end = (self.record.events[last[at]]["n"] for at in (0, -1))
        told = next(problem for problem in problems if problem["code"] == "record.tail-missing")
        self.assertEqual((told["arguments"]["from"], told["arguments"]["to"]), (first, end))

    def test_tail_dropped_with_its_signature(self):
        *_, mine, _ = self.record.chains()
        chain = self.record.events[mine[0]]["chain"]
        change(self.job, *(("DELETE FROM events WHERE hash = ?", hash_) for hash_ in mine[-3:]),
               ("DELETE FROM heads WHERE chain = ?", chain))
        self.caught("record.no-head")

    def test_last_chain_dropped(self):
        """The newest chain whole, with its signature: nothing in the file shows it, and verify says what nobody can know."""
        mine = self.record.chains()[-1]
        chain = self.record.events[mine[0]]["chain"]
        change(self.job, ("DELETE FROM events WHERE chain = ?", chain), ("DELETE FROM heads WHERE chain = ?", chain))
        ran = self.run_words("verify", self.job)
        if ran.status == WELL:
            self.assertRegex(ran.out, r"nobody can know.*(end|last|newest)")
        else:
            self.assertEqual(ran.status, NO)

    def test_gap(self):
        mine = self.record.chains()[1]
        change(self.job, ("DELETE FROM events WHERE hash = ?", mine[len(mine) // 2]))
        self.caught("record.gap")

    def test_event_put_behind_the_head(self):
        mine = self.record.chains()[-1]
        event = json.loads(canonical(self.record.events[mine[-1]]))
        event.update(n=event["n"] + 1, prev=mine[-1], stamp=[event["stamp"][0] + 5, 0], kind="note", seen=[],
                     body={"words": {"private": "0" * 64}})
        change(self.job, ("INSERT INTO events VALUES (?, ?, ?, ?)", sha256(canonical(event)), event["chain"], event["n"],
                          canonical(event)))
        self.caught("record.tail-unsigned")

    def added_chain(self, kind="open"):
        """A chain of one event that names a key of the attacker's own and is signed by it."""
        key = self.folder / "attacker.key"
        subprocess.run(["openssl", "genpkey", "-algorithm", "EC", "-pkeyopt", "ec_paramgen_curve:P-256", "-out", key],
                       check=True, capture_output=True)
        public = subprocess.run(["openssl", "pkey", "-in", key, "-pubout", "-outform", "DER"], check=True,
                                capture_output=True).stdout.hex()
        newest = self.record.chains()[-1]
        event = json.loads(canonical(self.record.events[newest[-1]]))
        old = (event["chain"], event["n"], newest[-1])
        event.update(chain="ab" * 16, n=1, prev="", seen=[list(old)], stamp=[event["stamp"][0] + 5, 0], kind=kind,
                     body={"key": public, "program": "proofwalk 0.1.0"})
        text = canonical(event)
        change(self.job, ("INSERT INTO events VALUES (?, ?, 1, ?)", sha256(text), event["chain"], text))
        return event, key

    def test_chain_added_unsigned(self):
        event, _ = self.added_chain()
        problems = self.caught("record.no-head")
        self.assertIn(event["chain"][:8], problems[0]["where"])

    def test_chain_added_and_signed_by_another_key(self):
        """It is a chain of a machine for which nobody answers: sound, as any second machine's would be, and told."""
        event, key = self.added_chain()
        hash_ = sha256(canonical(event))
        change(self.job, ("INSERT INTO heads VALUES (?, 1, ?, ?)", event["chain"], hash_,
                          signed(key, self.record.id, event["chain"], 1, hash_)))
        ran = self.run_words("verify", self.job)
        answer = self.run_words("verify", self.job, "--json").answer
        self.assertNotIn(event["chain"], [each["chain"] for each in answer["vouched"]])
        self.assertNotRegex(ran.out, rf"Installer answers for .*{event['chain'][:12]}")
        self.assertRegex(ran.out, rf"(?i)nobody answers for .*{event['chain'][:12]}")
        self.assertEqual([each for each in answer["unvouched"]], [event["chain"]])

    def test_chain_added_that_begins_the_job_anew(self):
        self.added_chain(kind="start")
        self.caught("record.start-twice")

    def test_chain_of_another_job(self):
        other = self.start("other.walk")
        chain, n, hash_, signature = rows(other, "SELECT * FROM heads")[0]
        text = rows(other, "SELECT text FROM events WHERE hash = ?", hash_)[0][0]
        change(self.job, ("INSERT INTO events VALUES (?, ?, ?, ?)", hash_, chain, n, text),
               ("INSERT INTO heads VALUES (?, ?, ?, ?)", chain, n, hash_, signature))
        other.unlink()
        self.caught("record.other-job")

    def test_fork(self):
        """Two events with one number: none of them is judged."""
        hash_ = self.record.answer()
        text = canonical(self.turned(hash_))
        event = self.record.events[hash_]
        change(self.job, ("INSERT INTO events VALUES (?, ?, ?, ?)", sha256(text), event["chain"], event["n"], text))
        self.caught("record.fork")

    def test_content_changed(self):
        """A sheet in the job is made milder."""
        hash_, bytes_ = next((hash_, bytes_) for hash_, bytes_ in rows(self.job, "SELECT hash, bytes FROM contents")
                             if b'step = "boundary-walk"' in bytes_)
        change(self.job, ("UPDATE contents SET bytes = ? WHERE hash = ?", bytes_.replace(b"needed = 3", b"needed = 1"),
                          hash_))
        problems = self.run_words("verify", self.job, "--json")
        self.assertEqual(problems.status, NO, str(problems))
        self.assertIn("record.content-hash", [problem["code"] for problem in problems.answer["problems"]])

    def test_private_words_changed(self):
        change(self.job, ("UPDATE private SET value = 'all well' WHERE commitment = (SELECT min(commitment) FROM private)",))
        self.caught("record.private-commitment")

    def test_private_words_erased(self):
        """That is allowed: the record is as sound as before."""
        self.assertEqual(change(self.job, ("DELETE FROM private WHERE value LIKE '%READY%'",)), 1)
        self.assertTrue(self.must("verify", self.job, "--json").answer["sound"])

    def test_photograph_changed(self):
        self.assertEqual(change(self.job, ("UPDATE photographs SET bytes = substr(bytes, 1, length(bytes) - 1)",)), 1)
        self.caught("record.photograph-hash")

    def test_bytes_of_the_file(self):
        """Any byte: it is told, or it stood where nothing is kept. Never a crash, never another result."""
        chance = seeded("attackers")
        whole = self.sound.read_bytes()
        told = 0
        for _ in range(300 if LONG else 25):
            spoilt, at = bytearray(whole), chance.randrange(100, len(whole))
            spoilt[at] ^= 1 << chance.randrange(8)
            self.job.write_bytes(spoilt)
            ran = self.run_words("verify", self.job)
            self.assertIn(ran.status, (0, 1, 2), f"byte {at}: {ran}")
            told += ran.status != WELL
            if ran.status == WELL:
                self.assertEqual(ran.out, self.said.replace("shop.walk", "attacked.walk"), f"byte {at}")
        self.assertGreater(told, 5)

    def test_looking_changes_nothing(self):
        before = self.sound.read_bytes()
        for command in ("verify", "where", "order"):
            self.run_words(command, self.sound)
        self.assertEqual(self.sound.read_bytes(), before)
        self.assertEqual([path.name for path in self.folder.glob("shop.walk*")], ["shop.walk"])


class Reports(ByWords):
    @classmethod
    def setUpClass(cls):
        super().setUpClass()
        cls.sound = cls.report(cls.walk("shop.walk"), "shop.pdf")
        cls.whole = cls.sound.read_bytes()

    def caught(self, bytes_, *codes):
        attacked = self.folder / "attacked.pdf"
        attacked.write_bytes(bytes_)
        told = self.run_words("verify", attacked, "--json")
        self.assertEqual(told.status, NO, str(told))
        found = [problem["code"] for problem in told.answer["problems"]]
        self.assertTrue(found)
        if codes:
            self.assertTrue(set(codes) & set(found), f"{found}, wanted one of {codes}")
        spoken = self.run_words("verify", attacked)
        self.assertEqual(spoken.status, NO)
        self.assertNotRegex(spoken.out, r"(?m)^Sound")
        return found

    def ranges(self):
        a, b, c, d = map(int, re.findall(rb"/ByteRange \[(\d+) (\d+) (\d+) (\d+)", self.whole)[-1])
        self.assertEqual((a, c + d), (0, len(self.whole)))
        return b, c

    def test_byte_changed(self):
        chance = seeded("attackers")
        gap, after = self.ranges()
        places = [chance.randrange(1024, gap) for _ in range(200 if LONG else 8)]
        for at in (*places, gap - 1, after, after + 1):
            spoilt = bytearray(self.whole)
            spoilt[at] ^= 1 << chance.randrange(8)
            with self.subTest(byte=at):
                self.caught(bytes(spoilt))

    def spoilt_at(self, at):
        spoilt = bytearray(self.whole)
        spoilt[at] ^= 1
        return bytes(spoilt)

    def test_byte_of_the_contents(self):
        longest = max(re.finditer(rb"stream\r?\n(.*?)endstream", self.whole, re.DOTALL), key=lambda at: len(at.group(1)))
        self.caught(self.spoilt_at((longest.start(1) + longest.end(1)) // 2), "seal.digest")

    def test_byte_of_the_structure(self):
        ends = [at.start() for at in re.finditer(rb"endobj", self.whole)]
        self.caught(self.spoilt_at(ends[len(ends) // 2]), "seal.syntax")

    def test_signature_changed(self):
        """The signature's own bytes, which it cannot cover; and the zeros behind it."""
        gap, after = self.ranges()
        for at in (gap + 40, gap + 200, gap + 900, after - 2):
            spoilt = bytearray(self.whole)
            spoilt[at] = ord("1") if spoilt[at] != ord("1") else ord("2")
            with self.subTest(byte=at - gap):
                self.caught(bytes(spoilt))

    def test_bytes_appended(self):
        for more in (b"\n", b"%%EOF\n", b" " * 5000, b"\n1 0 obj\n<<>>\nendobj\n%%EOF\n"):
            with self.subTest(more=more[:8]):
                self.caught(self.whole + more, "seal.appended", "seal.cut-short", "seal.byte-range")

    def test_page_laid_over(self):
        """An incremental update, as a reader would make it, that shows another first page: the signed bytes are all there."""
        number = max(map(int, re.findall(rb"(?m)^(\d+) 0 obj", self.whole))) + 1
        start = len(self.whole)
        previous = int(re.findall(rb"startxref\s+(\d+)", self.whole)[-1])
        root = re.findall(rb"/Root (\d+) 0 R", self.whole)[-1].decode()
        update = f"{number} 0 obj\n<< /Type /Metadata >>\nendobj\n"
        table = start + len(update)
        update += (f"xref\n{number} 1\n{start:010} 00000 n \ntrailer\n<< /Size {number + 1} /Root {root} 0 R "
                   f"/Prev {previous} >>\nstartxref\n{table}\n%%EOF\n")
        self.caught(self.whole + update.encode(), "seal.appended", "seal.byte-range")

    def with_attachment(self, name, change_):
        """The report with an attachment swapped by qpdf, which writes the whole file anew."""
        if not shutil.which("qpdf"):
            self.skipTest("qpdf is not installed")
        got = subprocess.run(["qpdf", f"--show-attachment={name}", self.sound], capture_output=True, check=True).stdout
        changed = change_(got)
        self.assertNotEqual(changed, got)
        (self.folder / name).write_bytes(changed)
        subprocess.run(["qpdf", self.sound, f"--remove-attachment={name}", "--add-attachment", self.folder / name,
                        "--replace", "--", self.folder / "swapped.pdf"], capture_output=True, check=True)
        return (self.folder / "swapped.pdf").read_bytes()

    def test_record_swapped(self):
        swapped = self.with_attachment("record.jsonl", lambda lines: lines.replace(b'"as-planned"', b'"not-applicable"', 1))
        self.caught(swapped)

    def test_results_swapped(self):
        self.caught(self.with_attachment("results.csv", lambda table: table.replace(b",pass,", b",fail,", 1)))

    def test_only_written_anew(self):
        """Nothing changed but the way it is written: the signature covers bytes, so that is told too."""
        again = self.folder / "again.pdf"
        subprocess.run(["qpdf", self.sound, again], capture_output=True, check=True)
        self.caught(again.read_bytes())

    def test_signature_taken_out(self):
        """Cut back to the sheets before they were signed."""
        ends = [match.end() for match in re.finditer(rb"%%EOF\n", self.whole)]
        self.assertGreater(len(ends), 1)
        self.caught(self.whole[:ends[-2]], "seal.not-signed")

    def test_another_signer(self):
        """A whole report of the same job by another key is sound; its root and record are other ones, and told."""
        self.must("signer", "second", "--name", "Installer", "--firm", "Test", "--passphrase-file", "passphrase")
        self.must("report", "shop.walk", "--out", "second.pdf", "--signed-by", "second", "--passphrase-file", "passphrase")
        first = self.must("verify", self.sound, "--json").answer
        second = self.must("verify", "second.pdf", "--json").answer
        self.assertNotEqual(first["root"], second["root"])
        self.assertIn(second["root"], self.must("verify", "second.pdf").out)


if __name__ == "__main__":
    unittest.main()
