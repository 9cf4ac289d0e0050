#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""What general-purpose tools say of a report: pdfsig, pdffonts, pdftotext and pdfdetach of Poppler, qpdf, openssl.

Sources: ISO 32000-1, 12.8.1 (byte range and contents of a signature, from memory); RFC 5652 (CMS) as openssl reads it.
The public test source is each tool's own output.
"""
import csv
import hashlib
import io
import json
import re
import subprocess
import unittest

from common import MILL, SHOP, ByWords, rows

# EVENTS.md, "Verdict of a device", in the words of the pages.
WORDS = {"too-close": "too close", "no-access": "no access", "to-do": "to do"}


def tool(*words, status=0, given=None):
    """The output of a tool, which must end with that status."""
    done = subprocess.run([str(word) for word in words], capture_output=True, check=False, input=given)
    if done.returncode != status:
        raise AssertionError(f"{words}: exit status {done.returncode}\n{done.stdout.decode()}{done.stderr.decode()}")
    return done.stdout


class Signature:
    """The signature dictionary's byte range and contents, found in the bytes themselves."""

    def __init__(self, pdf):
        self.bytes = pdf.read_bytes()
        found = list(re.finditer(rb"/ByteRange \[(\d+) (\d+) (\d+) (\d+)\s*\]", self.bytes))
        assert len(found) == 1, "there is not one signature"
        self.range = tuple(int(number) for number in found[0].groups())
        start, length, after, rest = self.range
        self.signed = self.bytes[start:start + length] + self.bytes[after:after + rest]
        gap = self.bytes[start + length:after]
        assert gap[:1] == b"<" and gap[-1:] == b">"
        padded = bytes.fromhex(gap[1:-1].decode("ascii"))
        # A DER SEQUENCE of a length in two bytes; what follows it is padding.
        assert padded[:2] == b"\x30\x82"
        end = 4 + int.from_bytes(padded[2:4])
        assert not any(padded[end:]), "something stands in the padding"
        self.cms = padded[:end]


class Outsiders(ByWords):
    @classmethod
    def setUpClass(cls):
        super().setUpClass()
        cls.job = cls.walk("shop.walk", SHOP)
        cls.shop = cls.report(cls.job, "shop.pdf")
        cls.mill = cls.report(cls.walk("mill.walk", MILL), "mill.pdf", "--interim")
        cls.both = (cls.shop, cls.mill)

    def changed(self, pdf):
        """A copy with one bit changed in the middle of a page's stream."""
        data = bytearray(pdf.read_bytes())
        data[len(data) // 3] ^= 1
        other = self.folder / "changed.pdf"
        other.write_bytes(data)
        return other

    def test_pdfsig(self):
        # Its exit status is 0 for a changed file too: its words count.
        for pdf in self.both:
            words = tool("pdfsig", "-nocert", pdf).decode()
            self.assertEqual(words.count("Signature Validation:"), 1)
            self.assertIn("Signature Validation: Signature is Valid.", words)
            self.assertIn("Total document signed", words)
            self.assertIn("Signature Type: ETSI.CAdES.detached", words)
            self.assertIn("Signing Hash Algorithm: SHA-256", words)
            self.assertIn("CN=Installer,O=Test", words)
            words = tool("pdfsig", "-nocert", self.changed(pdf)).decode()
            self.assertIn("Signature Validation: Digest Mismatch.", words)
            self.assertNotIn("Signature is Valid", words)

    def test_pdfsig_on_what_was_appended(self):
        other = self.folder / "longer.pdf"
        other.write_bytes(self.shop.read_bytes() + b"\n% more\n")
        self.assertNotIn("Total document signed", tool("pdfsig", "-nocert", other).decode())

    def test_openssl(self):
        for pdf in self.both:
            signature = Signature(pdf)
            self.assertEqual(signature.range[0], 0)
            self.assertEqual(signature.range[2] + signature.range[3], len(signature.bytes))
            cms, content = self.folder / "signature.der", self.folder / "signed.bin"
            cms.write_bytes(signature.cms)
            content.write_bytes(signature.signed)
            # The root is the one in the signer's folder, which its owner gives to whoever checks.
            root = self.folder / "signer" / "root.pem"
            verify = ["openssl", "cms", "-verify", "-cades", "-binary", "-inform", "DER", "-in", cms, "-content", content,
                      "-CAfile", root, "-purpose", "any", "-out", "/dev/null"]
            tool(*verify)
            content.write_bytes(signature.signed[:-1] + bytes([signature.signed[-1] ^ 1]))
            tool(*verify, status=4)
            # Another root does not hold for it.
            if not (self.folder / "stranger").exists():
                self.must("signer", "stranger", "--name", "Installer", "--firm", "Test", "--passphrase-file", "passphrase")
            content.write_bytes(signature.signed)
            verify[verify.index(root)] = self.folder / "stranger" / "root.pem"
            tool(*verify, status=4)

    def test_signing_time_is_not_in_the_cms(self):
        # ETSI EN 319 142-1: a PAdES baseline signature has its time in the dictionary (from memory).
        (self.folder / "signature.der").write_bytes(Signature(self.shop).cms)
        printed = tool("openssl", "cms", "-cmsout", "-print", "-noout", "-inform", "DER", "-in",
                       self.folder / "signature.der").decode()
        self.assertIn("signingCertificateV2", printed)
        self.assertNotIn("signingTime", printed)

    def test_fingerprint_of_the_root(self):
        told = self.must("verify", self.shop, "--json").answer["root"]
        printed = tool("openssl", "x509", "-in", self.folder / "signer/root.pem", "-noout", "-fingerprint", "-sha256")
        self.assertEqual(printed.decode().strip().split("=")[1].replace(":", "").lower(), told)

    def test_qpdf(self):
        for pdf in self.both:
            printed = tool("qpdf", "--check", pdf).decode()
            self.assertIn("No syntax or stream encoding errors found", printed)
            self.assertNotIn("WARNING", printed)

    def test_fonts(self):
        for pdf in self.both:
            lines = tool("pdffonts", pdf).decode().splitlines()[2:]
            self.assertGreaterEqual(len(lines), 2)
            names = set()
            for line in lines:
                # name … emb sub uni object ID
                name, *_, embedded, subset, unicode_, _, _ = line.split()
                self.assertEqual((embedded, subset, unicode_), ("yes", "yes", "yes"), line)
                names.add(name.split("+")[1])
            self.assertTrue(any("B612" in name for name in names), names)
            self.assertTrue(any(name.startswith("ClearSans") for name in names), names)

    def test_built_as_an_archive(self):
        for pdf in self.both:
            printed = tool("pdfinfo", "-meta", pdf).decode()
            self.assertRegex(printed, r"pdfaid:part>3<|pdfaid:part=.3.")
            printed = tool("pdfinfo", pdf).decode()
            self.assertRegex(printed, r"(?m)^Encrypted: +no$")
            self.assertRegex(printed, r"(?m)^JavaScript: +no$")
            self.assertNotRegex(printed, r"(?m)^Title: *$")

    def test_text_can_be_searched(self):
        """Each tag with its verdict word on one line of it; the whole words, without a ligature that breaks a search."""
        for pdf, plan in ((self.shop, SHOP), (self.mill, MILL)):
            text = tool("pdftotext", "-layout", "-enc", "UTF-8", pdf, "-").decode()
            self.assertNotRegex(text, "[\ufb00-\ufb06\ufffd]")
            results = csv.DictReader(io.StringIO(tool("qpdf", "--show-attachment=results.csv", pdf).decode()))
            verdicts = {row["tag"]: row["verdict"] for row in results if row["row"] == "device"}
            with open(plan / "devices.csv", encoding="utf-8", newline="") as file:
                tags = [row["tag"] for row in csv.DictReader(file)]
            self.assertEqual(sorted(verdicts), sorted(tags))
            for tag in tags:
                mine = [line for line in text.splitlines() if re.search(rf"(?<!\S){re.escape(tag)}(?!\S)", line)]
                word = WORDS.get(verdicts[tag], verdicts[tag])
                self.assertTrue(any(re.search(rf"\b{word}\b", line) for line in mine), f"{tag}, {word}: {mine}")
            for word in ("Fingerprint", "certificate", "verif"):
                self.assertRegex(text, rf"(?i){word}")

    def test_pages_say_interim_or_not(self):
        first = tool("pdftotext", "-layout", "-l", "1", self.mill, "-").decode()
        self.assertRegex(first, r"(?i)interim")
        first = tool("pdftotext", "-layout", "-l", "1", self.shop, "-").decode()
        self.assertNotRegex(first, r"(?i)interim")
        self.assertIn("The Corner Shop", first)

    def test_attachments(self):
        """Poppler and qpdf take out the same bytes; the record's are those that are printed and told, event for event those
        of the job file; each photograph has its name's hash."""
        for pdf in self.both:
            listed = dict(re.findall(r"(?m)^(\d+): (.+)$", tool("pdfdetach", "-list", pdf).decode()))
            self.assertLessEqual({"record.jsonl", "results.csv"}, set(listed.values()))
            for number, name in listed.items():
                out = self.folder / "attachment"
                tool("pdfdetach", "-save", number, "-o", out, pdf)
                self.assertEqual(out.read_bytes(), tool("qpdf", f"--show-attachment={name}", pdf), name)
                if name.endswith((".jpg", ".png")):
                    self.assertEqual(hashlib.sha256(out.read_bytes()).hexdigest(), name.split(".")[0])
                if name == "record.jsonl":
                    self.assertEqual(hashlib.sha256(out.read_bytes()).hexdigest(),
                                     self.must("verify", pdf, "--json").answer["record"])

    def test_record_is_the_jobs(self):
        lines = tool("qpdf", "--show-attachment=record.jsonl", self.shop).decode().splitlines()
        attached = [line for line in lines if line.startswith('{"alg":')]
        stored = [text for (text,) in rows(self.job, "SELECT text FROM events ORDER BY chain, n, hash")]
        # What the job has besides: that the report was handed over, with the report's own hash.
        besides = [json.loads(text) for text in stored if text not in attached]
        self.assertEqual([text for text in stored if text in attached], attached)
        self.assertEqual([event["kind"] for event in besides], ["handed-over"])
        self.assertEqual(besides[0]["body"], {"report": hashlib.sha256(self.shop.read_bytes()).hexdigest(), "form": "final"})
        photographs = rows(self.job, "SELECT hash, bytes FROM photographs")
        self.assertTrue(photographs)
        for hash_, bytes_ in photographs:
            name = next(name for name in tool("pdfdetach", "-list", self.shop).decode().split() if hash_ in name)
            self.assertEqual(tool("qpdf", f"--show-attachment={name}", self.shop), bytes_)

    def test_digits_printed_beside_the_code(self):
        """The record's fingerprint as the pages print it: the first digits in groups of four."""
        told = self.must("verify", self.shop, "--json").answer["record"]
        first = tool("pdftotext", "-layout", "-l", "1", self.shop, "-").decode()
        groups = "".join(re.findall(r"(?<![0-9A-Za-z])[0-9A-Fa-f]{4}(?![0-9A-Za-z])", first)).lower()
        self.assertIn(told[:32], groups)


if __name__ == "__main__":
    unittest.main()
