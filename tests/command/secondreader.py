#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Do the signed record, the signed summary and the printed pages of both demonstration sites say the same?

Source: tests/reference/refold.py, which folds the record by the pages of the formats and shares no line with the program;
compare.py holds its verdicts, proofs, readings and findings against results.csv and the text of the pages.
"""
import subprocess
import sys
import unittest

from common import MILL, ROOT, SHOP, ByWords

COMPARE = ROOT / "tests/reference/compare.py"


class SecondReader(ByWords):
    @classmethod
    def setUpClass(cls):
        super().setUpClass()
        cls.shop = cls.report(cls.walk("shop.walk", SHOP), "shop.pdf")
        cls.mill = cls.report(cls.walk("mill.walk", MILL), "mill.pdf", "--interim")

    def attached(self, pdf):
        """The record and the summary, taken out by pdfdetach of Poppler."""
        folder = self.folder / (pdf.stem + "-attached")
        folder.mkdir(exist_ok=True)
        subprocess.run(["pdfdetach", "-saveall", "-o", folder, pdf], check=True, capture_output=True)
        return folder / "record.jsonl", folder / "results.csv"

    def compared(self, record, results, pdf):
        return subprocess.run([sys.executable, "-B", COMPARE, record, results, pdf], capture_output=True, check=False,
                              text=True)

    def agree(self, pdf):
        done = self.compared(*self.attached(pdf), pdf)
        self.assertEqual((done.returncode, done.stderr), (0, ""), done.stdout)

    def test_shop(self):
        self.agree(self.shop)

    def test_mill(self):
        self.agree(self.mill)

    def test_it_would_find_a_difference(self):
        """In the summary, in the record, and on the pages."""
        record, results = self.attached(self.shop)
        other = self.folder / "other.csv"
        table = results.read_text(encoding="utf-8")
        self.assertIn(",pass,", table)
        other.write_text(table.replace(",pass,", ",fail,", 1), encoding="utf-8")
        done = self.compared(record, other, self.shop)
        self.assertEqual((done.returncode, len(done.stdout.splitlines())), (1, 1), done.stdout)

        changed = self.folder / "other.jsonl"
        lines = record.read_text(encoding="utf-8")
        changed.write_text(lines.replace('"result":"as-planned"', '"result":"not-as-planned"', 1), encoding="utf-8")
        self.assertNotEqual(changed.read_text(encoding="utf-8"), lines)
        self.assertEqual(self.compared(changed, results, self.shop).returncode, 1)

        mill_record, mill_results = self.attached(self.mill)
        done = self.compared(mill_record, mill_results, self.shop)
        self.assertEqual(done.returncode, 1)
        self.assertIn("is not printed", done.stdout)


if __name__ == "__main__":
    unittest.main()
