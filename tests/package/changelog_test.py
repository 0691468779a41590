#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Holds what changelog.py writes against dpkg's own reader. Usage: changelog_test.py SOURCE VERSION"""
import pathlib
import subprocess
import sys
import tempfile
import unittest

SOURCE, VERSION = pathlib.Path(sys.argv[1]), sys.argv[2]
CHANGELOG = SOURCE / "packaging" / "CHANGELOG.md"


def written(text):
    with tempfile.TemporaryDirectory() as folder:
        file = pathlib.Path(folder) / "CHANGELOG.md"
        file.write_text(text, encoding="utf-8")
        return subprocess.run([sys.executable, SOURCE / "packaging" / "changelog.py", file], capture_output=True, text=True)


def read(changelog, *options):
    """As dpkg reads it; what it cannot parse it says on the error stream."""
    with tempfile.NamedTemporaryFile("w", encoding="utf-8") as file:
        file.write(changelog)
        file.flush()
        ran = subprocess.run(["dpkg-parsechangelog", "-l", file.name, *options], capture_output=True, text=True)
    return ran.stdout, ran.stderr


class Changelog(unittest.TestCase):
    def test_dpkg_reads_every_version_and_every_point(self):
        # Debian Policy 4.4, "Debian changelog".
        ours = CHANGELOG.read_text(encoding="utf-8")
        changelog = written(ours).stdout
        said, complaints = read(changelog, "--all")
        self.assertEqual(complaints, "")
        self.assertEqual(read(changelog, "-S", "Version")[0].strip(), VERSION)
        points = ours.split("\n- ")[1:]
        self.assertGreater(len(points), 3)
        for point in points:
            self.assertIn("* " + " ".join(point.split("\n## ")[0].split()), " ".join(said.split()))
        self.assertLess(max(len(line) for line in changelog.splitlines() if not line.startswith(" -- ")), 80)

    def test_versions_stand_newest_first_each_with_its_day(self):
        changelog = written("# T\n\n## 1.2.0 (2027-03-01)\n- New,\n  and more.\n\n## 1.1.0 (2026-12-31)\n- Old.\n").stdout
        said, complaints = read(changelog, "--all", "--format", "rfc822")
        self.assertEqual(complaints, "")
        self.assertEqual([line for line in said.splitlines() if line.startswith("Version:")], ["Version: 1.2.0", "Version: 1.1.0"])
        self.assertEqual([line for line in said.splitlines() if line.startswith("Date:")],
                         ["Date: Mon, 01 Mar 2027 12:00:00 +0000", "Date: Thu, 31 Dec 2026 12:00:00 +0000"])

    def test_a_heading_that_is_none_is_refused(self):
        for text in ("# T\n\n## next\n- New.\n", "# T\n\nNothing yet.\n"):
            ran = written(text)
            self.assertNotEqual(ran.returncode, 0)
            self.assertEqual(ran.stdout, "")
            self.assertIn("CHANGELOG.md", ran.stderr)


unittest.main(argv=sys.argv[:1], verbosity=1)
