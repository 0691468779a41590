#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The rules of the house, checked (DEVELOPERS.md). Usage: house_rules.py ROOT; prints each breach, exit 1 when there is one."""
import pathlib
import re
import subprocess
import sys

CORE = "base units stats physics people inputs targets procedure verdict run seal report records history practice logbook plant".split()
APP = "text seams made drawing widgets models sessions print pages shell verbs main".split()
TOP = {"CMakeLists.txt", "CMakePresets.json", "README.md", "DEVELOPERS.md", "LICENSE", "app", "core", "resources", "tests", "packaging"}
REQUIREMENTS = "tests/published/requirements.md"
HEADER_MOST, SOURCE_MOST, TEST_MOST = 260, 400, 600


def room(parts):
    """The folder that a file counts as: for app, pages/run counts as pages, and main.cpp as main."""
    return "main" if parts[1] == "main.cpp" else parts[1]


def breaches_of(path, text):
    parts = path.split("/")
    lines = text.split("\n")
    if not lines[0].startswith("// SPDX-License-Identifier:"):
        yield 1, "the first line is the licence line"
    most = TEST_MOST if parts[0] == "tests" else HEADER_MOST if path.endswith(".h") else SOURCE_MOST
    if len(lines) - 1 > most:
        yield len(lines), f"{len(lines) - 1} lines, at most {most}: is it still one concept? (R5)"
    if path.endswith(".h") and "#pragma once" not in text:
        yield 1, "no #pragma once"
    # A name may stand on the line after TEST_CASE( and in several pieces; ctest cuts it at a semicolon.
    for case in re.finditer(r'\b(?:TEST_CASE|SECTION|TEMPLATE_TEST_CASE|SCENARIO)\s*\(\s*((?:"(?:[^"\\]|\\.)*"\s*)+)', text):
        if ";" in case.group(1):
            yield text.count("\n", 0, case.start()) + 1, "a test's name holds no semicolon"
    for number, line in enumerate(lines, 1):
        include = re.match(r'\s*#\s*include\s*([<"])([^>"]+)[>"]', line)
        if include:
            kind, what = include.groups()
            target = what.split("/")
            if parts[0] == "core":
                if kind == "<" and re.match(r"Q[A-Z]|Qt", what):
                    yield number, f"core includes no Qt: {what} (R1)"
                if kind == '"' and target[0] != "core":
                    yield number, f"core includes only core: {what} (R1)"
                if kind == '"' and target[0] == "core" and len(target) > 2 and len(parts) > 2:
                    if CORE.index(target[1]) > CORE.index(parts[1]):
                        yield number, f"{parts[1]} may not include {target[1]} (R2)"
                    if parts[1] in ("history", "practice") and target[1] in ("logbook", "plant"):
                        yield number, f"{parts[1]} sees no store (R2)"
            if parts[0] == "app" and kind == '"' and target[0] == "app":
                here, there = room(parts), room(target)
                if APP.index(there) > APP.index(here):
                    yield number, f"app/{here} may not include app/{there} (R3)"
                if here == there == "pages" and parts[2] != target[2]:
                    yield number, f"pages never include each other: {what} (R3)"
            if what in ("QtWidgets", "QtTest", "QtCore", "QtGui", "QtConcurrent"):
                yield number, f"umbrella include {what} (narrow ones compile three times faster)"
            if re.match(r"SQLiteCpp|sqlite3", what) and parts[0] in ("core", "app") and parts[1] not in ("logbook", "plant"):
                yield number, "SQL only in core/logbook and core/plant (R4)"
            continue
        if parts[0] == "core":
            if re.search(r"\bsystem_clock\b|\btime\(nullptr\)|\bgettimeofday\b", line) and not path.startswith("core/base/clock"):
                yield number, "wall clock only through base/clock.h (R4)"
            if re.search(r"\brandom_device\b", line) or ("randombytes" in line and not path.startswith("core/base/")):
                yield number, "random ids only through base/id_source.h (R4)"
            if re.search(r"\btr\(\s*\"", line):
                yield number, "tr() only in app (R4)"
        if path.startswith("app/sessions/") and re.search(r"\b(?:secret|pin|passphrase|code)\.toStdString\(", line):
            yield number, "PINs, passphrases and codes reach core only through text/secret.h (R8)"
        if parts[0] == "app" and "QLocale" in line and parts[1] != "text":
            yield number, "QLocale only in app/text (R4)"


def absent_cases(root, files):
    """Yields (line, name) for every test that the list of requirements names and nobody has written."""
    listing = root / REQUIREMENTS
    if not listing.is_file():
        return
    cases = {pathlib.Path(f).name for f in files}
    for name in files:
        if name.startswith("tests/") and name.endswith(".cpp") and (root / name).is_file():
            for parts in re.findall(r'TEST_CASE\(((?:\s*"(?:[^"\\]|\\.)*")+)', (root / name).read_text(encoding="utf-8")):
                cases.add("".join(re.findall(r'"((?:[^"\\]|\\.)*)"', parts)))
    for number, line in enumerate(listing.read_text(encoding="utf-8").split("\n"), 1):
        for quoted in re.findall(r"`([^`]+)`", line):
            if quoted not in cases:
                yield number, quoted


def main(root):
    root = pathlib.Path(root)
    listed = subprocess.run(["git", "-C", str(root), "ls-files", "-co", "--exclude-standard"], capture_output=True, text=True)
    files = listed.stdout.split("\n") if listed.returncode == 0 and listed.stdout else \
        [str(p.relative_to(root)) for p in root.rglob("*") if p.is_file()]
    found = 0
    for name in sorted(filter(None, files)):
        top = name.split("/")[0]
        if top not in TOP and not top.startswith("."):
            print(f"{name}: not part of the agreed top level")
            found += 1
        if not (root / name).is_file():
            continue
        if name.split("/")[0] in ("core", "app", "tests") and name.endswith((".h", ".cpp")):
            for line, what in breaches_of(name, (root / name).read_text(encoding="utf-8")):
                print(f"{name}:{line}: {what}")
                found += 1
    for line, name in absent_cases(root, files):
        print(f"{REQUIREMENTS}:{line}: no test is called \"{name}\"")
        found += 1
    print(f"{found} breaches of the house rules in {len(files)} files")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
