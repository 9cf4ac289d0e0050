#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The demonstration command of README.md, whole; it builds the release, so only with PROOFWALK_LONG=1."""
import subprocess
import unittest

from common import LONG, ROOT


@unittest.skipUnless(LONG, "only with PROOFWALK_LONG=1")
class Demonstration(unittest.TestCase):
    def test_two_commands(self):
        done = subprocess.run(["sh", ROOT / "fixtures/demo.sh"], capture_output=True, check=False, text=True,
                              stdin=subprocess.DEVNULL)
        self.assertEqual(done.returncode, 0, done.stdout[-3000:] + done.stderr[-3000:])
        for name in ("corner-shop.pdf", "lantern-mill.pdf", "lantern-mill.walk"):
            self.assertTrue((ROOT / "build/demo" / name).stat().st_size > 0)
            self.assertIn(f"build/demo/{name}", done.stdout)
        self.assertEqual(done.stdout.count("Not sound:"), 2)
        self.assertEqual(done.stdout.count("Signature is Valid."), 2)
        self.assertEqual(done.stdout.count("Digest Mismatch."), 1)


if __name__ == "__main__":
    unittest.main()
