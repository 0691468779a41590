#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes CHANGELOG.md as Debian wants it (Debian Policy 4.4). Usage: changelog.py CHANGELOG.md"""
import datetime
import re
import sys
import textwrap

WHO = "The Tautweb developers <developers@tautweb.invalid>"


def main():
    lines = open(sys.argv[1], encoding="utf-8").read().splitlines()
    entries, said = [], None
    for line in lines:
        head = re.fullmatch(r"## (\d+\.\d+\.\d+) \((\d{4}-\d{2}-\d{2})\)", line)
        if head:
            said = []
            entries.append((head[1], datetime.date.fromisoformat(head[2]), said))
        elif said is not None and line.startswith("- "):
            said.append([line[2:]])
        elif said and line.startswith("  "):
            said[-1].append(line.strip())
        elif line.startswith("## "):
            sys.exit(f"{sys.argv[1]}: a version is headed '## 1.2.3 (2026-11-27)', not '{line}'")
    if not entries:
        sys.exit(f"{sys.argv[1]}: there is no version in it")
    for version, day, points in entries:
        print(f"tautweb ({version}) bookworm; urgency=medium\n")
        for point in points:
            print(textwrap.fill(" ".join(point), 79, initial_indent="  * ", subsequent_indent="    ", break_on_hyphens=False))
        print(f"\n -- {WHO}  {day:%a, %d %b %Y} 12:00:00 +0000\n")


main()
