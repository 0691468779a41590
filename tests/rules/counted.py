#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Counts the tests of a build by label and fails where there are fewer than there have to be: a test that is not found
any more is else missed by nobody. Says what is left out, and why. Usage: counted.py BUILD_FOLDER"""
import collections
import json
import subprocess
import sys

# A few less than there were when somebody looked last; raised when there are many more.
LEAST = {"app": 540, "core": 1200, "published": 150, "faults": 18, "fuzz": 7, "package": 2, "rules": 3}


def main(folder):
    listed = subprocess.run(["ctest", "--test-dir", folder, "--show-only=json-v1"], capture_output=True, text=True, check=True)
    counts, left_out = collections.Counter(), []
    for test in json.loads(listed.stdout)["tests"]:
        properties = {p["name"]: p["value"] for p in test.get("properties", [])}
        counts.update(properties.get("LABELS", ["without a label"]))
        if properties.get("DISABLED"):
            left_out.append(test["name"])
    short = [label for label, least in LEAST.items() if counts[label] < least]
    for label, count in sorted(counts.items()):
        least = LEAST.get(label)
        print(f"{count:6} {label}" + (f" (at least {least})" if least else ""))
    for name in left_out:
        print(f"left out: {name}")
    print("left out of the short form (--long has them): larger screens and dark ground in each language; two of three calls to a failing disk")
    for label in short:
        print(f"too few tests of {label}: {counts[label]}, not {LEAST[label]}. Are they built, and named as before?")
    if "without a label" in counts:
        print("every test has a label, so that it can be counted")
    return 1 if short or "without a label" in counts else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
